"""Paints a run sheet, to be ticked off with wet hands: one page, black on white.

Knows where things go on paper and nothing else: every word comes in a ``RunSheet``.
Lengths are millimetres; the device's resolution turns them into dots.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QMarginsF, QPointF, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QPageLayout,
    QPageSize,
    QPainter,
    QPen,
    QTextOption,
)

MARGIN_MM = 15.0
INK = QColor("#1c1a17")
MUTED = QColor("#5b544a")  # 7:1 on white, and still dark enough on a poor printer
LINE = QColor("#8d8578")
SHADE = QColor("#f1ede6")
_MM_PER_INCH = 25.4
_PT_PER_INCH = 72.0
_LARGEST = 1.2  # a sheet with little on it may fill its page
_SMALLEST = 0.5  # below this share of the usual type nobody could read it; stop shrinking
_STEP = 0.04


@dataclass(frozen=True, slots=True, kw_only=True)
class RunStep:
    """One numbered step. ``blank`` is a line to be filled in before it, if any."""

    text: str
    detail: str = ""
    blank: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class RunSheet:
    """Every word on the page, ready to be painted."""

    kind: str  # what this paper is: "Run sheet"
    title: str
    vessel: str
    made_on: str
    headers: tuple[str, str, str, str, str]
    amounts: tuple[tuple[str, str, str, str, str], ...]
    total: tuple[str, str, str, str, str]
    facts: tuple[tuple[str, str], ...]  # (label, value): start pH, target, temperatures
    steps_title: str
    time_label: str
    steps: tuple[RunStep, ...]
    closing: str  # the line to be filled in days later
    cautions_title: str
    cautions: tuple[str, ...]
    footer: str


def page_layout(size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4) -> QPageLayout:
    """Upright page with the sheet's margins."""
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    return QPageLayout(
        QPageSize(size), QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter
    )


def paint_run_sheet(
    painter: QPainter, sheet: RunSheet, room: QRectF | None = None, family: str = ""
) -> QRectF:
    """Paint ``sheet`` with an active ``painter`` and return the rectangle it took.

    ``room`` is the space inside the margins, in dots; by default all that the device
    shows. Type shrinks step by step until everything fits on the one page.
    """
    device = painter.device()
    if room is None:
        room = QRectF(0, 0, device.width(), device.height())
    family = family or QFont().family()
    scale = _LARGEST
    page = _Page(painter, sheet, room, scale, family)
    while page.height() > room.height() and scale > _SMALLEST:
        scale -= _STEP
        page = _Page(painter, sheet, room, scale, family)
    painter.save()
    page.draw()
    painter.restore()
    return QRectF(room.left(), room.top(), room.width(), page.bottom - room.top())


class _Page:
    """One attempt at laying the sheet out, at one type scale."""

    def __init__(
        self, painter: QPainter, sheet: RunSheet, room: QRectF, scale: float, family: str
    ) -> None:
        self._painter = painter
        self._sheet = sheet
        self._room = room
        self._scale = scale
        self._family = family
        self._dots_per_mm = painter.device().logicalDpiY() / _MM_PER_INCH
        self._dots_per_pt = painter.device().logicalDpiY() / _PT_PER_INCH
        self._is_drawing = False
        self.bottom = room.top()

    def height(self) -> float:
        """Dots this attempt needs from top to bottom."""
        self._is_drawing = False
        self._flow()
        return self.bottom - self._room.top()

    def draw(self) -> None:
        """Put it on the device."""
        self._is_drawing = True
        self._flow()

    def _flow(self) -> None:
        self.bottom = self._room.top()
        self._head()
        self._amounts_and_facts()
        self._steps()
        self._cautions()

    # blocks

    def _head(self) -> None:
        sheet, top = self._sheet, self.bottom
        half = self._room.width() / 2
        self._text(sheet.kind, self._room.left(), top, half, 9.5, MUTED, bold=True)
        right = Qt.AlignmentFlag.AlignRight
        used = self._text(
            sheet.made_on, self._room.left() + half, top, half, 9.5, MUTED, align=right
        )
        self.bottom = top + used + self._mm(1.5)
        self._line(sheet.title, 20.0, INK, bold=True)
        self._line(sheet.vessel, 11.5, INK)
        self.bottom += self._mm(2.5)
        self._rule(self.bottom, 0.5, INK)
        self.bottom += self._mm(4)

    def _amounts_and_facts(self) -> None:
        top, gap = self.bottom, self._mm(7)
        left_width = (self._room.width() - gap) * 0.72
        facts_left = self._room.left() + left_width + gap
        bottom = self._amounts(top, left_width)
        facts_bottom = self._facts(top, facts_left, self._room.right() - facts_left)
        self.bottom = max(bottom, facts_bottom) + self._mm(5)

    def _amounts(self, top: float, width: float) -> float:
        shares = (0.31, 0.10, 0.11, 0.11, 0.37)
        sheet = self._sheet
        y = top + self._row(sheet.headers, shares, top, width, 9.0, MUTED, bold=True)
        self._rule(y + self._mm(0.6), 0.25, LINE, width)
        y += self._mm(1.6)
        for row in sheet.amounts:
            y += self._row(row, shares, y, width, 11.0, INK) + self._mm(1.2)
        self._rule(y, 0.5, INK, width)
        y += self._mm(1.2)
        return y + self._row(sheet.total, shares, y, width, 11.0, INK, bold=True)

    def _row(
        self,
        cells: Sequence[str],
        shares: Sequence[float],
        top: float,
        width: float,
        size: float,
        colour: QColor,
        *,
        bold: bool = False,
    ) -> float:
        left, used = self._room.left(), 0.0
        for index, (cell, share) in enumerate(zip(cells, shares, strict=True)):
            is_number = index in (1, 2, 3)
            pad = self._mm(2.5)
            align = Qt.AlignmentFlag.AlignRight if is_number else Qt.AlignmentFlag.AlignLeft
            x = left + (pad if index == 4 else 0.0)
            room = share * width - (pad if index in (0, 4) else 0.0)
            used = max(used, self._text(cell, x, top, room, size, colour, bold=bold, align=align))
            left += share * width
        return used

    def _facts(self, top: float, left: float, width: float) -> float:
        pad = self._mm(3)
        inner = width - 2 * pad

        def flow() -> float:
            y = top + pad
            for label, value in self._sheet.facts:
                y += self._text(label, left + pad, y, inner, 9.0, MUTED)
                y += self._text(value, left + pad, y, inner, 11.5, INK, bold=True)
                y += self._mm(1.8)
            return y - self._mm(1.8) + pad

        was_drawing, self._is_drawing = self._is_drawing, False
        bottom = flow()
        self._is_drawing = was_drawing
        self._box(QRectF(left, top, width, bottom - top), SHADE, LINE)
        return flow()

    def _steps(self) -> None:
        sheet = self._sheet
        time_width = self._mm(30)
        text_left = self._room.left() + self._mm(15)
        text_width = self._room.right() - time_width - self._mm(3) - text_left
        top = self.bottom
        used = self._text(
            sheet.steps_title, self._room.left(), top, text_width, 12.5, INK, bold=True
        )
        self._text(
            sheet.time_label,
            self._room.right() - time_width,
            top + self._pt(3),
            time_width,
            9.0,
            MUTED,
            bold=True,
        )
        self.bottom = top + used + self._mm(1.5)
        for number, step in enumerate(sheet.steps, start=1):
            if step.blank:
                self._blank(step.blank)
            self._step(number, step, text_left, text_width, time_width)
        self._blank(sheet.closing)

    def _step(
        self, number: int, step: RunStep, left: float, width: float, time_width: float
    ) -> None:
        top = self.bottom + self._mm(1.4)
        box = self._mm(5.0)
        self._box(QRectF(self._room.left(), top, box, box), None, INK, 0.4)
        right = Qt.AlignmentFlag.AlignRight
        self._text(
            f"{number}",
            self._room.left() + box,
            top,
            self._mm(7.5),
            11.5,
            INK,
            bold=True,
            align=right,
        )
        used = self._text(step.text, left, top, width, 11.5, INK, bold=True)
        if step.detail:
            used += self._text(step.detail, left, top + used, width, 9.5, MUTED)
        used = max(used, box + self._mm(0.8))
        line_y = top + box
        self._stroke(self._room.right() - time_width, self._room.right(), line_y, 0.3, LINE)
        self.bottom = top + used + self._mm(1.0)

    def _blank(self, words: str) -> None:
        """Draw the framed line that must be filled in before the next step."""
        pad = self._mm(2.5)
        left, width = self._room.left(), self._room.width()
        blank_width = self._mm(34)
        text_width = width - 2 * pad - blank_width - self._mm(4)
        top = self.bottom + self._mm(1.5)
        was_drawing, self._is_drawing = self._is_drawing, False
        used = self._text(words, left + pad, top + pad, text_width, 11.0, INK, bold=True)
        self._is_drawing = was_drawing
        height = max(used, self._mm(7)) + 2 * pad
        self._box(QRectF(left, top, width, height), SHADE, INK, 0.6)
        offset = (height - used) / 2
        self._text(words, left + pad, top + offset, text_width, 11.0, INK, bold=True)
        right = left + width - pad
        self._stroke(right - blank_width, right, top + height - pad, 0.5, INK)
        self.bottom = top + height + self._mm(0.8)

    def _cautions(self) -> None:
        self.bottom += self._mm(3)
        self._rule(self.bottom, 0.25, LINE)
        self.bottom += self._mm(2)
        self._line(self._sheet.cautions_title, 11.0, INK, bold=True)
        indent = self._mm(4)
        for caution in self._sheet.cautions:
            self._text("•", self._room.left(), self.bottom, indent, 9.5, INK)
            self.bottom += self._text(
                caution,
                self._room.left() + indent,
                self.bottom,
                self._room.width() - indent,
                9.5,
                INK,
            )
            self.bottom += self._mm(0.5)
        self.bottom += self._mm(1)
        self._line(self._sheet.footer, 8.5, MUTED)

    # pieces

    def _line(self, text: str, size: float, colour: QColor, *, bold: bool = False) -> None:
        self.bottom += self._text(
            text, self._room.left(), self.bottom, self._room.width(), size, colour, bold=bold
        )

    def _text(
        self,
        text: str,
        left: float,
        top: float,
        width: float,
        size: float,
        colour: QColor,
        *,
        bold: bool = False,
        align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignLeft,
    ) -> float:
        """Set ``text`` in ``width``, broken where it must be; return the height it takes."""
        if not text:
            return 0.0
        font = QFont(self._family)
        font.setPixelSize(max(1, round(size * self._scale * self._dots_per_pt)))
        font.setWeight(QFont.Weight.DemiBold if bold else QFont.Weight.Normal)
        # Local letter forms have no character of their own: a PDF made with them could not
        # be searched or read aloud ("A" of the program's type was missing).
        font.setFeature(QFont.Tag("locl"), 0)
        self._painter.setFont(font)
        option = QTextOption(align)
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        endless = QRectF(left, top, width, 1e6)
        took = self._painter.boundingRect(endless, text, option)
        if self._is_drawing:
            self._painter.setPen(colour)
            # A little more height than measured: rounding must not cut the last line.
            self._painter.drawText(QRectF(left, top, width, took.height() + 2), text, option)
        return took.height()

    def _box(self, box: QRectF, fill: QColor | None, edge: QColor, width_mm: float = 0.25) -> None:
        if not self._is_drawing:
            return
        self._painter.setPen(QPen(edge, self._hair(width_mm)))
        self._painter.setBrush(fill if fill is not None else Qt.BrushStyle.NoBrush)
        self._painter.drawRect(box)

    def _rule(self, y: float, width_mm: float, colour: QColor, length: float = 0.0) -> None:
        left = self._room.left()
        self._stroke(left, left + (length or self._room.width()), y, width_mm, colour)

    def _stroke(self, left: float, right: float, y: float, width_mm: float, ink: QColor) -> None:
        if self._is_drawing:
            self._painter.setPen(QPen(ink, self._hair(width_mm)))
            self._painter.drawLine(QPointF(left, y), QPointF(right, y))

    def _hair(self, width_mm: float) -> float:
        return max(1.0, width_mm * self._dots_per_mm)

    def _mm(self, length: float) -> float:
        return length * self._scale * self._dots_per_mm

    def _pt(self, size: float) -> float:
        return size * self._scale * self._dots_per_pt
