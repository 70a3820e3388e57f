"""The pages of labels as they will be printed, in any size."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPixmap, QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.printing.sheetpainter import SheetPainter
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.theme import SPACE

_MM_PER_INCH = 25.4
_SHADOW_PX = 3
_LARGEST_PX = 6000  # of a side: a long roll at four times its size is cut down to this
_ZOOMS = (0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 4.0)


class LabelPreview(QWidget):
    """Turns pages and zooms. ``page_changed`` carries the page on show, from 0."""

    page_changed = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._painter: SheetPainter | None = None
        self._page = 0
        self.canvas = _Canvas(self)
        self.area = QScrollArea(self)
        self.area.setObjectName("label_preview")
        self.area.setAccessibleName(self.tr("Preview of the labels"))
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        self.area.setWidget(self.canvas)
        self.zoom = QComboBox(self)
        self.zoom.setObjectName("label_zoom")
        self.zoom.setAccessibleName(self.tr("Size of the preview"))
        self.zoom.addItem(self.tr("Page width"), -1.0)
        self.zoom.addItem(self.tr("Whole page"), 0.0)
        for factor in _ZOOMS:
            self.zoom.addItem(self.tr("{percent} %").format(percent=round(100 * factor)), factor)
        self.back = self._button("‹", "label_page_back", self.tr("Previous page"))
        self.on = self._button("›", "label_page_on", self.tr("Next page"))
        self.page_words = plain_label("", "muted", self)
        bar = QHBoxLayout()
        bar.setSpacing(SPACE)
        bar.addWidget(self.zoom)
        bar.addStretch(1)
        bar.addWidget(self.back)
        bar.addWidget(self.page_words)
        bar.addWidget(self.on)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addLayout(bar)
        column.addWidget(self.area, 1)
        self.zoom.currentIndexChanged.connect(lambda _index: self.refresh())
        self.back.clicked.connect(lambda: self.show_page(self._page - 1))
        self.on.clicked.connect(lambda: self.show_page(self._page + 1))

    def _button(self, sign: str, name: str, words: str) -> QToolButton:
        made = QToolButton(self)
        made.setText(sign)
        made.setObjectName(name)
        made.setAccessibleName(words)
        made.setToolTip(words)
        return made

    @property
    def page(self) -> int:
        """The page on show, from 0."""
        return self._page

    def set_painter(self, painter: SheetPainter) -> None:
        """Show other labels; the page stays, if there still is one."""
        self._painter = painter
        self._page = min(self._page, max(0, painter.pages - 1))
        self.refresh()

    def show_page(self, page: int) -> None:
        """Turn to a page."""
        if self._painter is None or not 0 <= page < max(1, self._painter.pages):
            return
        self._page = page
        self.refresh()
        self.page_changed.emit(page)

    def refresh(self) -> None:
        """Draw the page again."""
        painter = self._painter
        if painter is None:
            return
        pages = max(1, painter.pages)
        self.page_words.setText(
            self.tr("Page {page} of {pages}").format(page=self._page + 1, pages=pages)
        )
        self.back.setEnabled(self._page > 0)
        self.on.setEnabled(self._page + 1 < pages)
        self.canvas.show_page(painter, self._page, self._px_per_mm(painter))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Follow the window while the whole page is shown."""
        super().resizeEvent(event)
        if float(self.zoom.currentData()) <= 0:
            self.refresh()

    def _px_per_mm(self, painter: SheetPainter) -> float:
        width, height = painter.job.sheet.page_mm
        factor = float(self.zoom.currentData())
        largest = _LARGEST_PX / max(width, height)
        if factor > 0:
            return min(largest, factor * self.logicalDpiX() / _MM_PER_INCH)
        room = self.area.maximumViewportSize()
        across = max(40, room.width() - 2 * _SHADOW_PX) / width
        down = max(40, room.height() - 2 * _SHADOW_PX) / height
        if across > down:
            # A page as wide as all the room is taller than it: the bar beside it takes its share.
            bar_px = self.area.verticalScrollBar().sizeHint().width()
            across = max(40, room.width() - bar_px - 2 * _SHADOW_PX) / width
        # A small roll's page is not blown up beyond twice its size.
        twice = 2 * self.logicalDpiX() / _MM_PER_INCH
        return min(across, twice if factor < 0 else min(down, twice), largest)


class _Canvas(QWidget):
    """One page with its shadow, dark on light in every scheme."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._shown = QPixmap()
        self._size = QSize()

    def show_page(self, painter: SheetPainter, page: int, px_per_mm: float) -> None:
        """Draw a page at a scale."""
        width, height = painter.job.sheet.page_mm
        self._size = QSize(max(1, round(width * px_per_mm)), max(1, round(height * px_per_mm)))
        ratio = self.devicePixelRatioF()
        picture = QPixmap(self._size * ratio)
        picture.setDevicePixelRatio(ratio)
        picture.fill(Qt.GlobalColor.white)
        brush = QPainter(picture)
        brush.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.paint_page(brush, page, dots_per_mm=px_per_mm)
        brush.end()
        self._shown = picture
        self.setFixedSize(self._size + QSize(2 * _SHADOW_PX, 2 * _SHADOW_PX))
        self.update()

    def picture(self) -> QPixmap:
        """Return the page as it is drawn."""
        return self._shown

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the page."""
        painter = QPainter(self)
        at = self.rect().topLeft()
        painter.fillRect(self.rect().adjusted(_SHADOW_PX, _SHADOW_PX, 0, 0), QColor(0, 0, 0, 40))
        painter.drawPixmap(at, self._shown)
