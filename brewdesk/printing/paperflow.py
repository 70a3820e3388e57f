"""Words that flow down one piece of paper, set smaller until they fit: black on white.

Lengths are millimetres and sizes of type points; both shrink with the scale of an attempt.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import TypeVar

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

INK = QColor("#1c1a17")
MUTED = QColor("#5b544a")  # 7:1 on white, and still dark enough on a poor printer
LINE = QColor("#8d8578")
SHADE = QColor("#f1ede6")
MM_PER_INCH = 25.4
_PT_PER_INCH = 72.0


def upright_page(size: QPageSize.PageSizeId, margin_mm: float) -> QPageLayout:
    """Return an upright page with the same margin on all sides."""
    margins = QMarginsF(margin_mm, margin_mm, margin_mm, margin_mm)
    return QPageLayout(
        QPageSize(size), QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter
    )


class PaperFlow(ABC):
    """One attempt at laying something out, at one scale.

    ``room`` is where words may stand, in dots; ``y`` how far down they have come. A flow runs
    twice: once to be measured, once to be drawn.
    """

    def __init__(self, painter: QPainter, room: QRectF, scale: float, family: str) -> None:
        self.painter = painter
        self.room = room
        self.scale = scale
        self.y = room.top()
        self._family = family
        self._is_drawing = False
        self._dots_per_mm = painter.device().logicalDpiY() / MM_PER_INCH
        self._dots_per_pt = painter.device().logicalDpiY() / _PT_PER_INCH

    @abstractmethod
    def flow(self) -> None:
        """Put everything in its place, from ``y`` on downwards."""

    def height(self) -> float:
        """Dots this attempt needs from top to bottom."""
        with self.measuring():
            self._run()
        return self.y - self.room.top()

    def draw(self) -> None:
        """Put it on the device."""
        self.painter.save()
        self._is_drawing = True
        self._run()
        self.painter.restore()

    def _run(self) -> None:
        self.y = self.room.top()
        self.flow()

    @contextmanager
    def measuring(self) -> Iterator[None]:
        """Draw nothing inside the block."""
        was_drawing, self._is_drawing = self._is_drawing, False
        yield
        self._is_drawing = was_drawing

    # words

    def line(self, text: str, size: float, colour: QColor, *, bold: bool = False) -> None:
        """Set a paragraph over the whole width and go below it."""
        self.y += self.text(
            text, self.room.left(), self.y, self.room.width(), size, colour, bold=bold
        )

    def marked(self, mark: str, text: str, indent: float, size: float, *, bold: bool) -> None:
        """Set a paragraph beside its mark (a bullet, a number) and go below it."""
        left, width = self.room.left(), self.room.width()
        self.text(mark, left, self.y, indent, size, INK, bold=bold)
        self.y += self.text(text, left + indent, self.y, width - indent, size, INK)

    def bullets(self, texts: Sequence[str], indent: float, size: float) -> None:
        """Set paragraphs with a bullet each."""
        for text in texts:
            self.marked("•", text, indent, size, bold=False)
            self.y += self.mm(0.5)

    def ends(self, left: str, right: str, size: float) -> float:
        """Set two words at the ends of one line; return the height they take."""
        half = self.room.width() / 2
        first = self.text(left, self.room.left(), self.y, half, size, MUTED, bold=True)
        second = self.text(
            right,
            self.room.left() + half,
            self.y,
            half,
            size,
            MUTED,
            align=Qt.AlignmentFlag.AlignRight,
        )
        return max(first, second)

    def text(
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
        font.setPixelSize(max(1, round(size * self.scale * self._dots_per_pt)))
        font.setWeight(QFont.Weight.DemiBold if bold else QFont.Weight.Normal)
        # Local letter forms have no character of their own: a PDF made with them could not
        # be searched or read aloud ("A" of the program's type was missing).
        font.setFeature(QFont.Tag("locl"), 0)
        self.painter.setFont(font)
        option = QTextOption(align)
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        took = self.painter.boundingRect(QRectF(left, top, width, 1e6), text, option)
        if self._is_drawing:
            self.painter.setPen(colour)
            # A little more height than measured: rounding must not cut the last line.
            self.painter.drawText(QRectF(left, top, width, took.height() + 2), text, option)
        return took.height()

    # lines

    def box(self, box: QRectF, fill: QColor | None, edge: QColor, width_mm: float = 0.25) -> None:
        """Draw a rectangle."""
        if not self._is_drawing:
            return
        self.painter.setPen(QPen(edge, self.hair(width_mm)))
        self.painter.setBrush(fill if fill is not None else Qt.BrushStyle.NoBrush)
        self.painter.drawRect(box)

    def rule(self, y: float, width_mm: float, colour: QColor, length: float = 0.0) -> None:
        """Draw a line across, from the left; over the whole width by default."""
        left = self.room.left()
        self.stroke(
            QPointF(left, y), QPointF(left + (length or self.room.width()), y), width_mm, colour
        )

    def stroke(self, start: QPointF, end: QPointF, width_mm: float, ink: QColor) -> None:
        """Draw a line."""
        if self._is_drawing:
            self.painter.setPen(QPen(ink, self.hair(width_mm)))
            self.painter.drawLine(start, end)

    # lengths

    def hair(self, width_mm: float) -> float:
        """Return the width of a line in dots: never less than one, whatever the scale."""
        return max(1.0, width_mm * self._dots_per_mm)

    def mm(self, length: float) -> float:
        """Return a length in dots, at this scale."""
        return length * self.scale * self._dots_per_mm

    def pt(self, size: float) -> float:
        """Return a size of type in dots, at this scale."""
        return size * self.scale * self._dots_per_pt


Flow = TypeVar("Flow", bound=PaperFlow)


def largest_fit(
    make: Callable[[float], Flow], height: float, *, largest: float, smallest: float, step: float
) -> Flow:
    """Return the attempt with the largest scale that is no higher than ``height``, in dots."""
    scale = largest
    made = make(scale)
    while made.height() > height and scale > smallest:
        scale -= step
        made = make(scale)
    return made
