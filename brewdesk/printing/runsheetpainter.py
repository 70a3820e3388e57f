"""Paints a run sheet, to be ticked off with wet hands: one page, black on white.

Knows where things go on paper and nothing else: every word comes in a ``RunSheet``.
Lengths are millimetres; the device's resolution turns them into dots.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPageLayout, QPageSize, QPainter

from brewdesk.printing.paperflow import (
    INK,
    LINE,
    MUTED,
    SHADE,
    PaperFlow,
    largest_fit,
    upright_page,
)

MARGIN_MM = 15.0
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
    return upright_page(size, MARGIN_MM)


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
    page = largest_fit(
        lambda scale: _Page(painter, sheet, room, scale, family),
        room.height(),
        largest=_LARGEST,
        smallest=_SMALLEST,
        step=_STEP,
    )
    page.draw()
    return QRectF(room.left(), room.top(), room.width(), page.y - room.top())


class _Page(PaperFlow):
    """One attempt at laying the sheet out, at one type scale."""

    def __init__(
        self, painter: QPainter, sheet: RunSheet, room: QRectF, scale: float, family: str
    ) -> None:
        super().__init__(painter, room, scale, family)
        self._sheet = sheet

    def flow(self) -> None:
        """Put head, amounts, steps and cautions below each other."""
        self._head()
        self._amounts_and_facts()
        self._steps()
        self._cautions()

    # blocks

    def _head(self) -> None:
        sheet = self._sheet
        self.y += self.ends(sheet.kind, sheet.made_on, 9.5) + self.mm(1.5)
        self.line(sheet.title, 20.0, INK, bold=True)
        self.line(sheet.vessel, 11.5, INK)
        self.y += self.mm(2.5)
        self.rule(self.y, 0.5, INK)
        self.y += self.mm(4)

    def _amounts_and_facts(self) -> None:
        top, gap = self.y, self.mm(7)
        left_width = (self.room.width() - gap) * 0.72
        facts_left = self.room.left() + left_width + gap
        bottom = self._amounts(top, left_width)
        facts_bottom = self._facts(top, facts_left, self.room.right() - facts_left)
        self.y = max(bottom, facts_bottom) + self.mm(5)

    def _amounts(self, top: float, width: float) -> float:
        shares = (0.31, 0.10, 0.11, 0.11, 0.37)
        sheet = self._sheet
        y = top + self._row(sheet.headers, shares, top, width, 9.0, MUTED, bold=True)
        self.rule(y + self.mm(0.6), 0.25, LINE, width)
        y += self.mm(1.6)
        for row in sheet.amounts:
            y += self._row(row, shares, y, width, 11.0, INK) + self.mm(1.2)
        self.rule(y, 0.5, INK, width)
        y += self.mm(1.2)
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
        left, used = self.room.left(), 0.0
        for index, (cell, share) in enumerate(zip(cells, shares, strict=True)):
            is_number = index in (1, 2, 3)
            pad = self.mm(2.5)
            align = Qt.AlignmentFlag.AlignRight if is_number else Qt.AlignmentFlag.AlignLeft
            x = left + (pad if index == 4 else 0.0)
            room = share * width - (pad if index in (0, 4) else 0.0)
            used = max(used, self.text(cell, x, top, room, size, colour, bold=bold, align=align))
            left += share * width
        return used

    def _facts(self, top: float, left: float, width: float) -> float:
        pad = self.mm(3)
        inner = width - 2 * pad

        def flow() -> float:
            y = top + pad
            for label, value in self._sheet.facts:
                y += self.text(label, left + pad, y, inner, 9.0, MUTED)
                y += self.text(value, left + pad, y, inner, 11.5, INK, bold=True)
                y += self.mm(1.8)
            return y - self.mm(1.8) + pad

        with self.measuring():
            bottom = flow()
        self.box(QRectF(left, top, width, bottom - top), SHADE, LINE)
        return flow()

    def _steps(self) -> None:
        sheet = self._sheet
        time_width = self.mm(30)
        text_left = self.room.left() + self.mm(15)
        text_width = self.room.right() - time_width - self.mm(3) - text_left
        top = self.y
        used = self.text(sheet.steps_title, self.room.left(), top, text_width, 12.5, INK, bold=True)
        self.text(
            sheet.time_label,
            self.room.right() - time_width,
            top + self.pt(3),
            time_width,
            9.0,
            MUTED,
            bold=True,
        )
        self.y = top + used + self.mm(1.5)
        for number, step in enumerate(sheet.steps, start=1):
            if step.blank:
                self._blank(step.blank)
            self._step(number, step, text_left, text_width, time_width)
        self._blank(sheet.closing)

    def _step(
        self, number: int, step: RunStep, left: float, width: float, time_width: float
    ) -> None:
        top = self.y + self.mm(1.4)
        box = self.mm(5.0)
        self.box(QRectF(self.room.left(), top, box, box), None, INK, 0.4)
        right = Qt.AlignmentFlag.AlignRight
        self.text(
            f"{number}",
            self.room.left() + box,
            top,
            self.mm(7.5),
            11.5,
            INK,
            bold=True,
            align=right,
        )
        used = self.text(step.text, left, top, width, 11.5, INK, bold=True)
        if step.detail:
            used += self.text(step.detail, left, top + used, width, 9.5, MUTED)
        used = max(used, box + self.mm(0.8))
        line_y = top + box
        end = QPointF(self.room.right(), line_y)
        self.stroke(end - QPointF(time_width, 0), end, 0.3, LINE)
        self.y = top + used + self.mm(1.0)

    def _blank(self, words: str) -> None:
        """Draw the framed line that must be filled in before the next step."""
        pad = self.mm(2.5)
        left, width = self.room.left(), self.room.width()
        blank_width = self.mm(34)
        text_width = width - 2 * pad - blank_width - self.mm(4)
        top = self.y + self.mm(1.5)
        with self.measuring():
            used = self.text(words, left + pad, top + pad, text_width, 11.0, INK, bold=True)
        height = max(used, self.mm(7)) + 2 * pad
        self.box(QRectF(left, top, width, height), SHADE, INK, 0.6)
        offset = (height - used) / 2
        self.text(words, left + pad, top + offset, text_width, 11.0, INK, bold=True)
        end = QPointF(left + width - pad, top + height - pad)
        self.stroke(end - QPointF(blank_width, 0), end, 0.5, INK)
        self.y = top + height + self.mm(0.8)

    def _cautions(self) -> None:
        self.y += self.mm(3)
        self.rule(self.y, 0.25, LINE)
        self.y += self.mm(2)
        self.line(self._sheet.cautions_title, 11.0, INK, bold=True)
        self.bullets(self._sheet.cautions, self.mm(4), 9.5)
        self.y += self.mm(1)
        self.line(self._sheet.footer, 8.5, MUTED)
