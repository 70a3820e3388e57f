"""Paints a document on paper, on one page or on as many as it needs, black on white.

Knows where things go and nothing else: every word comes in a `Document`. Type shrinks step
by step until a document that has to be on one page is.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QMarginsF, QPointF, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QPageLayout,
    QPageSize,
    QPainter,
    QPen,
    QPolygonF,
    QTextOption,
)

from brewdesk.services.paperdoc import (
    COLOURS,
    Block,
    Document,
    Dot,
    Drawing,
    Facts,
    Grid,
    Halves,
    Heading,
    Ink,
    Label,
    Para,
    Stroke,
)

MARGIN_MM = 14.0
UNITS_PER_INCH = 600.0
_MM_PER_INCH, _PT_PER_INCH = 25.4, 72.0
_LARGEST, _SMALLEST, _STEP = 1.1, 0.5, 0.04
_MOST_LETTERS = 160  # of one cell on a page that has to hold everything


def page_layout(size: QPageSize.PageSizeId = QPageSize.PageSizeId.A4) -> QPageLayout:
    """Upright page with the document's margins."""
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    return QPageLayout(
        QPageSize(size), QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter
    )


def count_pages(
    painter: QPainter, document: Document, size: QPageSize.PageSizeId, family: str
) -> int:
    """Return how many pages a document takes on paper of a size, on whatever device."""
    inches = page_layout(size).paintRect(QPageLayout.Unit.Inch)
    room = QRectF(0, 0, inches.width() * UNITS_PER_INCH, inches.height() * UNITS_PER_INCH)
    return _fitting(painter, document, room, family)[1]


def paint_document(
    painter: QPainter,
    document: Document,
    room: QRectF | None = None,
    family: str = "",
    *,
    only_page: int | None = None,
    new_page: Callable[[], object] = lambda: None,
) -> int:
    """Paint a document with an active painter; return how many pages it has.

    Parameters
    ----------
    painter, document
        Where to, and what.
    room
        The space inside the margins, in dots; by default all that the device shows.
    family
        The typeface.
    only_page
        The one page to paint, counted from 1; None is all of them.
    new_page
        Called between pages when all are painted.
    """
    device = painter.device()
    if room is None:
        room = QRectF(0, 0, device.width(), device.height())
    family = family or QFont().family()
    painter.save()
    # Laid out in the same units everywhere: what is seen breaks where what is printed does.
    unit = device.logicalDpiY() / UNITS_PER_INCH
    painter.scale(unit, unit)
    room = QRectF(room.left() / unit, room.top() / unit, room.width() / unit, room.height() / unit)
    scale, pages = _fitting(painter, document, room, family)
    flow = _Flow(painter, document, room, scale, family)
    flow.draw(pages, only_page, new_page)
    painter.restore()
    return pages


def _fitting(painter: QPainter, document: Document, room: QRectF, family: str) -> tuple[float, int]:
    scale = _LARGEST if document.is_one_page else 1.0
    pages = _Flow(painter, document, room, scale, family).measure()
    while document.is_one_page and pages > 1 and scale > _SMALLEST:
        scale -= _STEP
        pages = _Flow(painter, document, room, scale, family).measure()
    return scale, pages


class _Flow:
    """One attempt at laying a document out, at one type scale."""

    def __init__(
        self, painter: QPainter, document: Document, room: QRectF, scale: float, family: str
    ) -> None:
        self._painter = painter
        self._document = document
        self._room = room
        self._scale = scale
        self._family = family
        self._dots_per_mm = UNITS_PER_INCH / _MM_PER_INCH
        self._dots_per_pt = UNITS_PER_INCH / _PT_PER_INCH
        self._page = 1
        self._pages = 0
        self._is_all = False
        self._wanted: int | None = 0  # 0: none, only measure
        self._new_page: Callable[[], object] = lambda: None
        self._y = room.top()

    def measure(self) -> int:
        """Return how many pages it takes."""
        self._run()
        return self._page

    def draw(self, pages: int, only: int | None, new_page: Callable[[], object]) -> None:
        """Put it on the device."""
        self._pages, self._wanted, self._is_all, self._new_page = (
            pages,
            only,
            only is None,
            new_page,
        )
        self._run()

    @property
    def _is_drawing(self) -> bool:
        return self._is_all or self._wanted == self._page

    def _run(self) -> None:
        self._y, self._page = self._room.top(), 1
        self._head()
        for block in self._document.blocks:
            self._block(block, self._room.left(), self._room.width())
        self._foot()

    @property
    def _bottom(self) -> float:
        return self._room.bottom() - self._foot_height()

    def _foot_height(self) -> float:
        words = self._measure(self._document.footer, self._room.width(), 8.0)
        return words + self._pt(8.0 * 1.5) + self._mm(3)

    def _foot(self) -> None:
        left, width = self._room.left(), self._room.width()
        y = self._bottom + self._mm(1)
        self._line(left, left + width, y, 0.4, "line")
        y += self._mm(1)
        y += self._text(self._document.footer, left, y, width, 8.0, "muted")
        words = self._document.page_words.format(page=self._page, pages=max(1, self._pages))
        self._text(words, left, y, width, 8.0, "muted", align=Qt.AlignmentFlag.AlignRight)

    def _break(self, height: float) -> bool:
        """Go to the next page if ``height`` does not fit any more; say whether it was done."""
        if self._y + height <= self._bottom or self._y <= self._room.top():
            return False
        self._foot()
        if self._is_all:
            self._new_page()
        self._page += 1
        self._y = self._room.top()
        return True

    def _head(self) -> None:
        document, left, width = self._document, self._room.left(), self._room.width()
        right = Qt.AlignmentFlag.AlignRight
        self._text(document.made_on, left, self._y, width, 9.0, "muted", align=right)
        self._y += self._text(document.kind, left, self._y, width * 0.7, 9.0, "muted")
        self._y += self._text(
            self._cut(document.title), left, self._y, width, 19.0, "ink", bold=True
        )
        if document.subtitle:
            self._y += self._text(self._cut(document.subtitle), left, self._y, width, 10.5, "ink")
        self._y += self._mm(2)
        self._line(left, left + width, self._y, 0.8, "ink")
        self._y += self._mm(2)

    # blocks

    def _block(self, block: Block, left: float, width: float) -> None:
        if isinstance(block, Heading):
            height = self._measure(block.text, width, 12.0, bold=True) + self._mm(2.5)
            # A heading stands above something, never alone at the foot.
            if not self._break(height + self._pt(40)):
                self._y += self._mm(2.5)
            self._y += self._text(block.text, left, self._y, width, 12.0, "ink", bold=True)
            self._y += self._mm(0.8)
        elif isinstance(block, Para):
            size, ink = (8.5, "muted") if block.is_muted else (10.0, "ink")
            words = self._cut(block.text, 600)
            self._break(self._measure(words, width, size))
            self._y += self._text(words, left, self._y, width, size, ink)  # type: ignore[arg-type]  # one of two inks
            self._y += self._mm(1.2)
        elif isinstance(block, Facts):
            self._facts(block, left, width)
        elif isinstance(block, Grid):
            self._grid(block, left, width)
        elif isinstance(block, Halves):
            self._halves(block, left, width)
        else:
            self._drawing(block, left, width)

    def _facts(self, facts: Facts, left: float, width: float) -> None:
        per_row = 3
        cell = width / per_row
        for start in range(0, len(facts.pairs), per_row):
            pairs = [(a, self._cut(b)) for a, b in facts.pairs[start : start + per_row]]
            height = max(
                self._measure(a, cell - self._mm(3), 8.5)
                + self._measure(b, cell - self._mm(3), 11.0, bold=True)
                for a, b in pairs
            )
            self._break(height)
            for number, (name, value) in enumerate(pairs):
                x = left + number * cell
                used = self._text(name, x, self._y, cell - self._mm(3), 8.5, "muted")
                self._text(value, x, self._y + used, cell - self._mm(3), 11.0, "ink", bold=True)
            self._y += height + self._mm(1.8)

    def _grid(self, grid: Grid, left: float, width: float) -> None:
        rows = grid.on_paper() if self._document.is_one_page else grid.rows
        self._row(grid.headers, grid, left, width, is_head=True)
        for row in rows:
            cells = tuple(self._cut(cell) for cell in row)
            if self._break(self._row_height(cells, grid, width)):
                self._row(grid.headers, grid, left, width, is_head=True)
            self._row(cells, grid, left, width)
        thinned = grid.thinned_words() if self._document.is_one_page else ""
        if thinned:
            self._y += self._text(thinned, left, self._y, width, 8.5, "muted")
        self._y += self._mm(1.5)

    def _row_height(self, cells: Sequence[str], grid: Grid, width: float) -> float:
        pad = self._mm(2.5)
        return self._mm(1.2) + max(
            self._measure(cell, share * width - pad, 9.5)
            for cell, share in zip(cells, grid.shares, strict=True)
        )

    def _row(
        self, cells: Sequence[str], grid: Grid, left: float, width: float, *, is_head: bool = False
    ) -> None:
        size, ink = (8.5, "muted") if is_head else (9.5, "ink")
        pad, x, used = self._mm(2.5), left, 0.0
        for number, (cell, share) in enumerate(zip(cells, grid.shares, strict=True)):
            is_number = number in grid.numbers
            align = Qt.AlignmentFlag.AlignRight if is_number else Qt.AlignmentFlag.AlignLeft
            room = share * width - pad
            height = self._text(cell, x, self._y, room, size, ink, bold=is_head, align=align)  # type: ignore[arg-type]  # one of two inks
            used = max(used, height)
            x += share * width
        self._y += used + self._mm(0.6)
        self._line(left, left + width, self._y, 0.5 if is_head else 0.3, "line")
        self._y += self._mm(0.6)

    def _halves(self, halves: Halves, left: float, width: float) -> None:
        gap = self._mm(8)
        half = (width - gap) / 2
        top, ends = self._y, []
        # Side by side only on a page that holds everything, so no break can part them.
        for blocks, x in ((halves.left, left), (halves.right, left + half + gap)):
            self._y = top
            for block in blocks:
                self._block(block, x, half)
            ends.append(self._y)
        self._y = max(ends)

    def _drawing(self, drawing: Drawing, left: float, width: float) -> None:
        unit = width / drawing.width
        height = drawing.height * unit * self._scale
        self._break(height + self._measure(self._cut(drawing.words, 600), width, 8.5))
        if self._is_drawing:
            self._painter.save()
            self._painter.translate(left, self._y)
            self._painter.scale(1.0, self._scale)
            for shape in drawing.shapes:
                self._shape(shape, unit)
            self._painter.restore()
        self._y += height
        self._y += self._text(self._cut(drawing.words, 600), left, self._y, width, 8.5, "muted")
        self._y += self._mm(1)

    def _shape(self, shape: Stroke | Dot | Label, unit: float) -> None:
        painter, colour = self._painter, QColor(COLOURS[shape.ink])
        if isinstance(shape, Label):
            painter.setFont(
                self._font(shape.size * unit / self._dots_per_pt, bold=False, fixed=True)
            )
            painter.setPen(colour)
            painter.save()
            painter.translate(shape.x * unit, shape.y * unit)
            painter.scale(1.0, 1.0 / self._scale)
            advance = painter.fontMetrics().horizontalAdvance(shape.text)
            shift = {"start": 0.0, "middle": advance / 2, "end": float(advance)}[shape.anchor]
            painter.drawText(QPointF(-shift, 0.0), shape.text)
            painter.restore()
            return
        if isinstance(shape, Dot):
            painter.setPen(QPen(colour, 0.8 * unit))
            painter.setBrush(QColor("white") if shape.is_hollow else colour)
            radius = shape.radius * unit
            painter.drawEllipse(
                QPointF(shape.x * unit, shape.y * unit), radius, radius / self._scale
            )
            return
        points = QPolygonF([QPointF(x * unit, y * unit) for x, y in shape.points])
        if shape.is_filled:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour)
            painter.drawPolygon(points)
            return
        pen = QPen(colour, shape.width * unit)
        if shape.is_dashed:
            pen.setDashPattern([5, 4])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(points)

    # pieces

    def _cut(self, words: str, most: int = _MOST_LETTERS) -> str:
        plain = " ".join("".join(c if c.isprintable() else " " for c in words).split())
        if not self._document.is_one_page or len(plain) <= most:
            return plain
        return f"{plain[:most].rstrip()}…"

    def _font(self, size_pt: float, *, bold: bool, fixed: bool = False) -> QFont:
        font = QFont(self._family)
        scale = 1.0 if fixed else self._scale
        font.setPixelSize(max(1, round(size_pt * scale * self._dots_per_pt)))
        font.setWeight(QFont.Weight.DemiBold if bold else QFont.Weight.Normal)
        font.setFeature(QFont.Tag("locl"), 0)  # else the PDF cannot be searched for some letters
        return font

    def _measure(self, text: str, width: float, size: float, *, bold: bool = False) -> float:
        if not text:
            return 0.0
        self._painter.setFont(self._font(size, bold=bold))
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        return self._painter.boundingRect(QRectF(0, 0, width, 1e6), text, option).height()

    def _text(
        self,
        text: str,
        left: float,
        top: float,
        width: float,
        size: float,
        ink: Ink,
        *,
        bold: bool = False,
        align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignLeft,
    ) -> float:
        """Set ``text`` in ``width``, broken where it must be; return the height it takes."""
        height = self._measure(text, width, size, bold=bold)
        if text and self._is_drawing:
            option = QTextOption(align)
            option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
            self._painter.setPen(QColor(COLOURS[ink]))
            self._painter.drawText(QRectF(left, top, width, height + 2), text, option)
        return height

    def _line(self, left: float, right: float, y: float, width_pt: float, ink: Ink) -> None:
        if self._is_drawing:
            self._painter.setPen(QPen(QColor(COLOURS[ink]), max(1.0, width_pt * self._dots_per_pt)))
            self._painter.drawLine(QPointF(left, y), QPointF(right, y))

    def _mm(self, length: float) -> float:
        return length * self._scale * self._dots_per_mm

    def _pt(self, size: float) -> float:
        return size * self._scale * self._dots_per_pt
