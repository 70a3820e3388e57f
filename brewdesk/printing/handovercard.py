"""Paints the card that goes with a culture to its new keeper: black on white, cut out and kept.

Knows where things go on paper and nothing else: every word comes in a ``HandOverCard``.
Lengths are millimetres; the device's resolution turns them into dots.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QMarginsF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QPageLayout,
    QPageSize,
    QPainter,
    QPen,
    QTextOption,
)

MARGIN_MM = 12.0
# An A5 and an A6 sheet, less what a knife takes: both fit A4 and Letter upright.
CARD_SIZES_MM: dict[str, tuple[float, float]] = {"a5": (146.0, 208.0), "a6": (103.0, 146.0)}
INK = QColor("#1c1a17")
MUTED = QColor("#5b544a")
LINE = QColor("#8d8578")
SHADE = QColor("#f1ede6")
_MM_PER_INCH = 25.4
_PT_PER_INCH = 72.0
_LARGEST = 1.15
_SMALLEST = 0.45
_STEP = 0.03
_PAD_MM = 7.0
_CUT_MM = 4.0  # length of the marks at the corners


@dataclass(frozen=True, slots=True, kw_only=True)
class HandOverCard:
    """Every word on the card, ready to be painted."""

    kind: str  # what this paper is
    title: str
    made_on: str
    facts: tuple[tuple[str, str], ...]  # (label, value)
    lineage_title: str
    lineage: str
    care_title: str
    care: tuple[str, ...]
    feed_by_label: str
    feed_by: str
    cautions_title: str
    cautions: tuple[str, ...]
    footer: str


def page_layout(size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4) -> QPageLayout:
    """Upright page with the card's margins."""
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    return QPageLayout(
        QPageSize(size), QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter
    )


def paint_hand_over_card(
    painter: QPainter,
    card: HandOverCard,
    room: QRectF | None = None,
    family: str = "",
    card_size: str = "a5",
) -> QRectF:
    """Paint ``card`` in the upper left of ``room`` and return the rectangle it took, in dots.

    Type shrinks step by step until everything fits on the card. Marks at the corners show
    where to cut.
    """
    device = painter.device()
    if room is None:
        room = QRectF(0, 0, device.width(), device.height())
    dots = device.logicalDpiY() / _MM_PER_INCH
    width_mm, height_mm = CARD_SIZES_MM[card_size]
    size = QSizeF(min(width_mm * dots, room.width()), min(height_mm * dots, room.height()))
    frame = QRectF(room.topLeft(), size)
    scale = _LARGEST * (1.0 if card_size == "a5" else 0.78)
    face = _Face(painter, card, frame, scale, family or QFont().family())
    while face.height() > frame.height() and scale > _SMALLEST:
        scale -= _STEP
        face = _Face(painter, card, frame, scale, family or QFont().family())
    painter.save()
    face.draw()
    painter.restore()
    return frame


class _Face:
    """One attempt at laying the card out, at one type scale."""

    def __init__(
        self, painter: QPainter, card: HandOverCard, frame: QRectF, scale: float, family: str
    ) -> None:
        self._painter = painter
        self._card = card
        self._frame = frame
        self._scale = scale
        self._family = family
        self._dots_per_mm = painter.device().logicalDpiY() / _MM_PER_INCH
        self._dots_per_pt = painter.device().logicalDpiY() / _PT_PER_INCH
        pad = _PAD_MM * self._dots_per_mm
        self._inner = frame.adjusted(pad, pad, -pad, -pad)
        self._is_drawing = False
        self._y = 0.0

    def height(self) -> float:
        """Dots this attempt needs, padding included."""
        self._is_drawing = False
        self._flow()
        return self._y - self._inner.top() + 2 * _PAD_MM * self._dots_per_mm

    def draw(self) -> None:
        """Put it on the device."""
        self._is_drawing = True
        self._cut_marks()
        self._flow()

    def _flow(self) -> None:
        self._y = self._inner.top()
        self._head()
        self._facts()
        self._line(self._card.lineage_title, 10.5, INK, bold=True)
        self._line(self._card.lineage, 10.0, INK)
        self._y += self._mm(3.0)
        self._line(self._card.care_title, 10.5, INK, bold=True)
        self._numbered()
        self._feed_by()
        self._cautions()

    def _head(self) -> None:
        card, inner = self._card, self._inner
        half = inner.width() / 2
        used = self._text(card.kind, inner.left(), self._y, half, 9.0, MUTED, bold=True)
        right = Qt.AlignmentFlag.AlignRight
        made = self._text(card.made_on, inner.left() + half, self._y, half, 9.0, MUTED, align=right)
        self._y += max(used, made) + self._mm(1.0)
        self._line(card.title, 19.0, INK, bold=True)
        self._y += self._mm(1.2)
        self._stroke(self._y, 0.5, INK)
        self._y += self._mm(2.5)

    def _facts(self) -> None:
        """Set labels and values in two columns."""
        gap = self._mm(5)
        width = (self._inner.width() - gap) / 2
        facts = self._card.facts
        for first in range(0, len(facts), 2):
            used = 0.0
            for column, (label, value) in enumerate(facts[first : first + 2]):
                left = self._inner.left() + column * (width + gap)
                took = self._text(label, left, self._y, width, 8.5, MUTED)
                took += self._text(value, left, self._y + took, width, 11.0, INK, bold=True)
                used = max(used, took)
            self._y += used + self._mm(1.6)
        self._y += self._mm(1.0)

    def _numbered(self) -> None:
        indent = self._mm(5.5)
        self._y += self._mm(0.6)
        for number, step in enumerate(self._card.care, start=1):
            self._text(f"{number}", self._inner.left(), self._y, indent, 10.0, INK, bold=True)
            self._y += self._text(
                step,
                self._inner.left() + indent,
                self._y,
                self._inner.width() - indent,
                10.0,
                INK,
            )
            self._y += self._mm(1.0)
        self._y += self._mm(1.0)

    def _feed_by(self) -> None:
        """Draw the framed date, the one thing to be found at a glance."""
        pad = self._mm(2.2)
        left, width = self._inner.left() + pad, self._inner.width() - 2 * pad
        card = self._card
        was_drawing, self._is_drawing = self._is_drawing, False
        label = self._text(card.feed_by_label, left, 0, width, 9.0, MUTED)
        value = self._text(card.feed_by, left, 0, width, 13.0, INK, bold=True)
        self._is_drawing = was_drawing
        box = QRectF(self._inner.left(), self._y, self._inner.width(), label + value + 2 * pad)
        if self._is_drawing:
            self._painter.setPen(QPen(INK, self._hair(0.5)))
            self._painter.setBrush(SHADE)
            self._painter.drawRect(box)
        self._text(card.feed_by_label, left, self._y + pad, width, 9.0, MUTED)
        self._text(card.feed_by, left, self._y + pad + label, width, 13.0, INK, bold=True)
        self._y = box.bottom() + self._mm(2.5)

    def _cautions(self) -> None:
        self._line(self._card.cautions_title, 10.0, INK, bold=True)
        indent = self._mm(3.5)
        for caution in self._card.cautions:
            self._text("•", self._inner.left(), self._y, indent, 9.0, INK)
            self._y += self._text(
                caution,
                self._inner.left() + indent,
                self._y,
                self._inner.width() - indent,
                9.0,
                INK,
            )
            self._y += self._mm(0.5)
        self._y += self._mm(0.8)
        self._line(self._card.footer, 8.0, MUTED)

    # pieces

    def _line(self, text: str, size: float, colour: QColor, *, bold: bool = False) -> None:
        self._y += self._text(
            text, self._inner.left(), self._y, self._inner.width(), size, colour, bold=bold
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
        # As on the run sheet: local letter forms cannot be searched or read aloud in a PDF.
        font.setFeature(QFont.Tag("locl"), 0)
        self._painter.setFont(font)
        option = QTextOption(align)
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        took = self._painter.boundingRect(QRectF(left, top, width, 1e6), text, option)
        if self._is_drawing:
            self._painter.setPen(colour)
            self._painter.drawText(QRectF(left, top, width, took.height() + 2), text, option)
        return took.height()

    def _stroke(self, y: float, width_mm: float, ink: QColor) -> None:
        if self._is_drawing:
            self._painter.setPen(QPen(ink, self._hair(width_mm)))
            self._painter.drawLine(QPointF(self._inner.left(), y), QPointF(self._inner.right(), y))

    def _cut_marks(self) -> None:
        self._painter.setPen(QPen(LINE, self._hair(0.2)))
        length = _CUT_MM * self._dots_per_mm
        frame = self._frame
        for corner, x, y in (
            (frame.topLeft(), length, length),
            (frame.topRight(), -length, length),
            (frame.bottomLeft(), length, -length),
            (frame.bottomRight(), -length, -length),
        ):
            self._painter.drawLine(corner, corner + QPointF(x, 0))
            self._painter.drawLine(corner, corner + QPointF(0, y))

    def _hair(self, width_mm: float) -> float:
        return max(1.0, width_mm * self._dots_per_mm)

    def _mm(self, length: float) -> float:
        return length * self._scale * self._dots_per_mm
