"""A sheet of labels, drawn small: a click or the arrow keys say where the first label goes."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.services.labelgeometry import LabelSheet, RectMm, cell_at, cell_mm
from brewdesk.widgets.theme import SPACE, tokens

_HEIGHT_PX = 220
_PAPER, _CELL, _EDGE = "#ffffff", "#f1ede6", "#8d8578"  # paper is light in every scheme


class SheetGrid(QWidget):
    """``start_chosen`` carries the position, from 0, row by row."""

    start_chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None, *, is_picture: bool = False) -> None:
        super().__init__(parent)
        self._is_picture = is_picture  # to look at only: no start, no keys
        self._sheet: LabelSheet | None = None
        self._start = 0
        self._labels = 0
        self.setObjectName("sheet_grid")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        if not is_picture:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.setCursor(Qt.CursorShape.PointingHandCursor)
        self._tell()

    @property
    def start(self) -> int:
        """The position of the first label."""
        return self._start

    def set_sheet(self, sheet: LabelSheet) -> None:
        """Draw a sheet; a start that it does not have becomes the first."""
        self._sheet = sheet
        if self._start >= sheet.per_page:
            self._start = 0
        self._tell()
        self.update()

    def set_labels(self, count: int) -> None:
        """Show how far so many labels reach on the first page."""
        self._labels = count
        self.update()

    def choose(self, start: int) -> None:
        """Begin at a position; one outside the sheet changes nothing."""
        if self._sheet is None or not 0 <= start < self._sheet.per_page or start == self._start:
            return
        self._start = start
        self._tell()
        self.update()
        self.start_chosen.emit(start)

    def cell_px(self, position: int) -> QRectF:
        """Return where a label is drawn."""
        assert self._sheet is not None  # asked for only while a sheet is drawn
        return self._in_px(cell_mm(self._sheet, position))

    def sizeHint(self) -> QSize:
        """Ask for a fixed height."""
        return QSize(_HEIGHT_PX, _HEIGHT_PX)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin at the label that is clicked."""
        if self._sheet is None or self._is_picture or event.button() != Qt.MouseButton.LeftButton:
            return
        at = (event.position() - self._corner()) / self._px_per_mm()
        position = cell_at(self._sheet, at.x(), at.y())
        if position is not None:
            self.choose(position)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Walk with the arrow keys, Home and End."""
        if self._sheet is None:
            super().keyPressEvent(event)
            return
        columns, last = self._sheet.columns, self._sheet.per_page - 1
        steps = {
            Qt.Key.Key_Left: self._start - 1,
            Qt.Key.Key_Right: self._start + 1,
            Qt.Key.Key_Up: self._start - columns,
            Qt.Key.Key_Down: self._start + columns,
            Qt.Key.Key_Home: 0,
            Qt.Key.Key_End: last,
        }
        wanted = steps.get(Qt.Key(event.key()))
        if wanted is None:
            super().keyPressEvent(event)
            return
        self.choose(wanted)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw paper, labels, and which of them will be used on the first page."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        sheet = self._sheet
        if sheet is None:
            return
        width, height = sheet.page_mm
        painter.setPen(QPen(QColor(_EDGE), 1))
        painter.setBrush(QColor(_PAPER))
        painter.drawRect(self._in_px(RectMm(0, 0, width, height)))
        accent = QColor("#1c625b")  # the light scheme's: the paper is light
        for position in range(sheet.per_page):
            is_used = self._start <= position < self._start + self._labels
            is_start = position == self._start and not self._is_picture
            painter.setPen(QPen(accent if is_start else QColor(_EDGE), 1))
            if is_start:
                painter.setBrush(accent)
            else:
                painter.setBrush(QColor("#a9cdc6") if is_used else QColor(_CELL))
            corner = sheet.corner_mm * self._px_per_mm()
            cell = self.cell_px(position).adjusted(0.5, 0.5, -0.5, -0.5)
            painter.drawRoundedRect(cell, corner, corner)
        if self.hasFocus():
            painter.setPen(QPen(QColor(tokens().focus), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)

    def _px_per_mm(self) -> float:
        assert self._sheet is not None  # asked for only while a sheet is drawn
        width, height = self._sheet.page_mm
        room_x, room_y = self.width() - 2 * SPACE, self.height() - 2 * SPACE
        return max(0.01, min(room_x / width, room_y / height))

    def _corner(self) -> QPointF:
        assert self._sheet is not None  # asked for only while a sheet is drawn
        height = self._sheet.page_mm[1] * self._px_per_mm()
        return QPointF(SPACE, (self.height() - height) / 2)

    def _in_px(self, place: RectMm) -> QRectF:
        scale, corner = self._px_per_mm(), self._corner()
        return QRectF(
            corner.x() + place.x * scale,
            corner.y() + place.y * scale,
            place.width * scale,
            place.height * scale,
        )

    def _tell(self) -> None:
        sheet = self._sheet
        if self._is_picture:
            self.setAccessibleName(self.tr("The sheet with these measures"))
            return
        self.setAccessibleName(self.tr("Where the first label goes"))
        if sheet is None:
            return
        row, column = divmod(self._start, sheet.columns)
        self.setAccessibleDescription(
            self.tr("Row {row}, column {column}. The arrow keys move it.").format(
                row=row + 1, column=column + 1
            )
        )
