"""Paints pages of labels, and the test page that shows how true a printer prints.

Everything is placed in mm from the paper's corner; the sheet's correction (move, scale) is
applied to the whole page, and only where something is really printed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QMarginsF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QPagedPaintDevice,
    QPageLayout,
    QPageSize,
    QPainter,
    QPen,
    QTextOption,
)

from brewdesk.printing.labelfitting import (
    LEAST_PT,
    UNITS_PER_MM,
    FitNote,
    FittedLabel,
    fit_label,
)
from brewdesk.printing.labelpainter import INK, paint_frame, paint_label, paint_stamp
from brewdesk.services.labelgeometry import RULER_MM, LabelSheet, cell_mm, page_count
from brewdesk.services.labels import LabelContent

PAPER = QColor("#ffffff")
_MM_PER_INCH = 25.4
_MM_PER_PT = 25.4 / 72.0
_RULERS_MM = (RULER_MM, 50.0, 20.0, 10.0, 5.0, 4.0)
_TICK_MM, _LONG_TICK_MM = 2.0, 3.5
_LINE_MM = 0.2


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelJob:
    """Labels for a sheet, copies and all, the first at position ``start`` of the first page.

    ``stamp`` stands across each label: a word that says that it is only a sample.
    """

    sheet: LabelSheet
    labels: tuple[LabelContent, ...]
    start: int = 0
    has_frames: bool = True
    stamp: str = ""


def page_layout(sheet: LabelSheet) -> QPageLayout:
    """Return the page without margins, counted from the paper's own corner.

    Paper that is no standard's is taken a little more than a whole number of points large. Qt
    writes the nearest whole number and CUPS takes the one below; were they two, CUPS's filter
    would put the one page in the middle of the other, half a point (0.18 mm) aside.
    """
    size = QPageSize(QSizeF(*sheet.page_mm), QPageSize.Unit.Millimeter)
    if size.id() is QPageSize.PageSizeId.Custom:
        sides = (_MM_PER_PT * (int(side / _MM_PER_PT) + 0.2) for side in sheet.page_mm)
        size = QPageSize(QSizeF(*sides), QPageSize.Unit.Millimeter)
    layout = QPageLayout(
        size, QPageLayout.Orientation.Portrait, QMarginsF(), QPageLayout.Unit.Millimeter
    )
    layout.setMode(QPageLayout.Mode.FullPageMode)
    return layout


class SheetPainter:
    """The pages of one job. Each different label is fitted once, however many copies there are."""

    def __init__(self, job: LabelJob, family: str) -> None:
        self.job = job
        self._family = family
        self._fitted: dict[LabelContent, FittedLabel] = {}

    @property
    def pages(self) -> int:
        """How many pages there are."""
        return page_count(self.job.sheet, len(self.job.labels), self.job.start)

    def fitted(self, content: LabelContent) -> FittedLabel:
        """Return a label as it fits into the sheet's labels."""
        if content not in self._fitted:
            sheet = self.job.sheet
            self._fitted[content] = fit_label(
                content, sheet.label_width_mm, sheet.label_height_mm, self._family, sheet.corner_mm
            )
        return self._fitted[content]

    def notes(self) -> tuple[tuple[LabelContent, FitNote], ...]:
        """Return what does not fit, label by label, copies told once."""
        different = dict.fromkeys(self.job.labels)
        return tuple((each, note) for each in different for note in self.fitted(each).notes)

    def on_page(self, page: int) -> tuple[tuple[int, LabelContent], ...]:
        """Return the positions on a page (from 0) with their labels."""
        per_page = self.job.sheet.per_page
        first = page * per_page
        return tuple(
            (place - first, self.job.labels[place - self.job.start])
            for place in range(max(first, self.job.start), first + per_page)
            if place - self.job.start < len(self.job.labels)
        )

    def paint_page(self, painter: QPainter, page: int, *, dots_per_mm: float | None = None) -> None:
        """Paint one page; given ``dots_per_mm`` as the paper should look, else corrected."""
        painter.save()
        _count_in_mm(painter, self.job.sheet, dots_per_mm)
        for position, content in self.on_page(page):
            cell = cell_mm(self.job.sheet, position)
            painter.save()
            painter.translate(cell.x, cell.y)
            paint_label(painter, self.fitted(content), has_frame=self.job.has_frames)
            if self.job.stamp:
                paint_stamp(painter, self.job.stamp, cell.width, cell.height, self._family)
            painter.restore()
        painter.restore()

    def paint_all(self, device: QPagedPaintDevice) -> bool:
        """Paint every page on paper or into a file; False if it could not be begun."""
        painter = QPainter()
        if not painter.begin(device):
            return False
        try:
            for page in range(self.pages):
                if page:
                    device.newPage()
                self.paint_page(painter, page)
        finally:
            painter.end()
        return True


def paint_test_page(
    painter: QPainter, sheet: LabelSheet, words: Sequence[str], family: str
) -> None:
    """Paint the frames with the sheet's correction, and two rulers without any.

    ``words`` are paragraphs that stand below the ruler across.
    """
    painter.save()
    _count_in_mm(painter, sheet, None)
    for position in range(sheet.per_page):
        paint_frame(painter, cell_mm(sheet, position), sheet.corner_mm)
    painter.restore()
    painter.save()
    dots = _dots_per_mm(painter)
    painter.scale(*dots)
    width, height = sheet.page_mm
    across, down = ruler_mm(width), ruler_mm(height)
    # Aside of the middle, where the edges of labels often lie.
    at = QPointF((width - across) / 2, height * 0.45)
    _paint_ruler(painter, at, across, is_down=False)
    _paint_ruler(painter, QPointF(at.x() / 2, (height - down) * 0.4), down, is_down=True)
    left = max(at.x(), at.x() / 2 + _LONG_TICK_MM) + 1.0  # beside the ruler down
    top = at.y() + _LONG_TICK_MM + 0.5
    room = QRectF(left, top, at.x() + across - left, height - top - 0.5)
    _paint_words(painter, room, words, family)
    painter.restore()


def ruler_mm(side_mm: float) -> float:
    """Return how long a ruler fits along a side of the paper, of 5 mm at least."""
    return next(length for length in _RULERS_MM if length <= 0.9 * side_mm)


def _paint_ruler(painter: QPainter, at: QPointF, length_mm: float, *, is_down: bool) -> None:
    """Draw a line with a tick every 10 mm; its ends are the middles of the outer ticks."""
    pen = QPen(INK, _LINE_MM)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    along = QPointF(0, 1) if is_down else QPointF(1, 0)
    aside = QPointF(1, 0) if is_down else QPointF(0, 1)
    painter.drawLine(at, at + along * length_mm)
    step_mm = min(10.0, length_mm)
    last = round(length_mm / step_mm)
    for tick in range(last + 1):
        is_long = tick in (0, last) or tick % 5 == 0
        foot = at + along * (step_mm * tick)
        painter.drawLine(foot, foot + aside * (_LONG_TICK_MM if is_long else _TICK_MM))


def _paint_words(painter: QPainter, room: QRectF, words: Sequence[str], family: str) -> None:
    text = "\n".join(each for each in words if each)
    painter.scale(1 / UNITS_PER_MM, 1 / UNITS_PER_MM)
    room = QRectF(room.topLeft() * UNITS_PER_MM, room.size() * UNITS_PER_MM)
    option = QTextOption(Qt.AlignmentFlag.AlignLeft)
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    painter.setPen(INK)
    for size_pt in (9.0, 7.5, 6.0, LEAST_PT):
        font = QFont(family)
        font.setPixelSize(round(size_pt * _MM_PER_PT * UNITS_PER_MM))
        font.setFeature(QFont.Tag("locl"), 0)
        painter.setFont(font)
        took = painter.boundingRect(room, text, option)
        if took.height() <= room.height():
            break
    painter.fillRect(took, PAPER)  # the frames must not run through the words
    painter.drawText(room, text, option)


def _dots_per_mm(painter: QPainter) -> tuple[float, float]:
    device = painter.device()
    return device.logicalDpiX() / _MM_PER_INCH, device.logicalDpiY() / _MM_PER_INCH


def _count_in_mm(painter: QPainter, sheet: LabelSheet, dots_per_mm: float | None) -> None:
    """Make the painter count in mm from the paper's corner, corrected unless it is a picture."""
    if dots_per_mm is not None:
        painter.scale(dots_per_mm, dots_per_mm)
        return
    across, down = _dots_per_mm(painter)
    scale_x, scale_y = sheet.scale
    painter.translate(sheet.shift_x_mm * across, sheet.shift_y_mm * down)
    painter.scale(across * scale_x, down * scale_y)
