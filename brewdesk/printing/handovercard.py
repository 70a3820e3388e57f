"""Paints the card that goes with a culture to its new keeper: black on white, cut out and kept.

Knows where things go on paper and nothing else: every word comes in a ``HandOverCard``.
Lengths are millimetres; the device's resolution turns them into dots.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QFont, QPageLayout, QPageSize, QPainter, QPen

from brewdesk.printing.paperflow import (
    INK,
    LINE,
    MM_PER_INCH,
    MUTED,
    SHADE,
    PaperFlow,
    largest_fit,
    upright_page,
)

MARGIN_MM = 12.0
# An A5 and an A6 sheet, less what a knife takes: both fit A4 and Letter upright.
CARD_SIZES_MM: dict[str, tuple[float, float]] = {"a5": (146.0, 208.0), "a6": (103.0, 146.0)}
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
    return upright_page(size, MARGIN_MM)


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
    dots = device.logicalDpiY() / MM_PER_INCH
    width_mm, height_mm = CARD_SIZES_MM[card_size]
    size = QSizeF(min(width_mm * dots, room.width()), min(height_mm * dots, room.height()))
    frame = QRectF(room.topLeft(), size)
    pad = _PAD_MM * dots
    inner = frame.adjusted(pad, pad, -pad, -pad)
    face = largest_fit(
        lambda scale: _Face(painter, card, inner, scale, family or QFont().family()),
        inner.height(),
        largest=_LARGEST * (1.0 if card_size == "a5" else 0.78),
        smallest=_SMALLEST,
        step=_STEP,
    )
    _paint_cut_marks(painter, frame, dots)
    face.draw()
    return frame


class _Face(PaperFlow):
    """One attempt at laying the card out, at one type scale."""

    def __init__(
        self, painter: QPainter, card: HandOverCard, room: QRectF, scale: float, family: str
    ) -> None:
        super().__init__(painter, room, scale, family)
        self._card = card

    def flow(self) -> None:
        """Put head, facts, lineage, care and cautions below each other."""
        self._head()
        self._facts()
        self.line(self._card.lineage_title, 10.5, INK, bold=True)
        self.line(self._card.lineage, 10.0, INK)
        self.y += self.mm(3.0)
        self.line(self._card.care_title, 10.5, INK, bold=True)
        self._numbered()
        self._feed_by()
        self._cautions()

    def _head(self) -> None:
        card = self._card
        self.y += self.ends(card.kind, card.made_on, 9.0) + self.mm(1.0)
        self.line(card.title, 19.0, INK, bold=True)
        self.y += self.mm(1.2)
        self.rule(self.y, 0.5, INK)
        self.y += self.mm(2.5)

    def _facts(self) -> None:
        """Set labels and values in two columns."""
        gap = self.mm(5)
        width = (self.room.width() - gap) / 2
        facts = self._card.facts
        for first in range(0, len(facts), 2):
            used = 0.0
            for column, (label, value) in enumerate(facts[first : first + 2]):
                left = self.room.left() + column * (width + gap)
                took = self.text(label, left, self.y, width, 8.5, MUTED)
                took += self.text(value, left, self.y + took, width, 11.0, INK, bold=True)
                used = max(used, took)
            self.y += used + self.mm(1.6)
        self.y += self.mm(1.0)

    def _numbered(self) -> None:
        indent = self.mm(5.5)
        self.y += self.mm(0.6)
        for number, step in enumerate(self._card.care, start=1):
            self.marked(f"{number}", step, indent, 10.0, bold=True)
            self.y += self.mm(1.0)
        self.y += self.mm(1.0)

    def _feed_by(self) -> None:
        """Draw the framed date, the one thing to be found at a glance."""
        pad = self.mm(2.2)
        left, width = self.room.left() + pad, self.room.width() - 2 * pad
        card = self._card
        with self.measuring():
            label = self.text(card.feed_by_label, left, 0, width, 9.0, MUTED)
            value = self.text(card.feed_by, left, 0, width, 13.0, INK, bold=True)
        box = QRectF(self.room.left(), self.y, self.room.width(), label + value + 2 * pad)
        self.box(box, SHADE, INK, 0.5)
        self.text(card.feed_by_label, left, self.y + pad, width, 9.0, MUTED)
        self.text(card.feed_by, left, self.y + pad + label, width, 13.0, INK, bold=True)
        self.y = box.bottom() + self.mm(2.5)

    def _cautions(self) -> None:
        self.line(self._card.cautions_title, 10.0, INK, bold=True)
        self.bullets(self._card.cautions, self.mm(3.5), 9.0)
        self.y += self.mm(0.8)
        self.line(self._card.footer, 8.0, MUTED)


def _paint_cut_marks(painter: QPainter, frame: QRectF, dots_per_mm: float) -> None:
    painter.save()
    painter.setPen(QPen(LINE, max(1.0, 0.2 * dots_per_mm)))
    length = _CUT_MM * dots_per_mm
    for corner, x, y in (
        (frame.topLeft(), length, length),
        (frame.topRight(), -length, length),
        (frame.bottomLeft(), length, -length),
        (frame.bottomRight(), -length, -length),
    ):
        painter.drawLine(corner, corner + QPointF(x, 0))
        painter.drawLine(corner, corner + QPointF(0, y))
    painter.restore()
