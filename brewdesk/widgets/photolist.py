"""Small pictures in rows, the newest first, each day named over its first."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import (
    QEvent,
    QMimeData,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import (
    QColor,
    QDrag,
    QFont,
    QFontMetrics,
    QKeyEvent,
    QPainter,
    QPainterPath,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from brewdesk.models.photomime import mime_of_file
from brewdesk.models.photos import DAY_ROLE, PHOTO_ROLE, PIXMAP_ROLE, STATE_ROLE, PhotosModel
from brewdesk.services.photofiles import FileState
from brewdesk.services.records import Photo
from brewdesk.services.wording.photos import state_words
from brewdesk.widgets.theme import SPACE, tokens

SIDE_PX = 136
_CROP_SPARE = 1.5  # the short side of most photos then still fills the square
_RADIUS = 8.0

Index = QModelIndex | QPersistentModelIndex


class PhotoDelegate(QStyledItemDelegate):
    """Paints one photo: day, picture, caption."""

    def sizeHint(self, option: QStyleOptionViewItem, _index: Index) -> QSize:
        """Give all cells the same room, so that days stand level."""
        line = QFontMetrics(option.font).height()
        return QSize(SIDE_PX + 2 * SPACE, SIDE_PX + 2 * line + 3 * SPACE)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint the cell."""
        t = tokens()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        metrics = QFontMetrics(option.font)
        cell = QRectF(option.rect).adjusted(SPACE / 2, SPACE / 2, -SPACE / 2, -SPACE / 2)
        line = float(metrics.height())
        day = str(index.data(DAY_ROLE) or "")
        if day:
            font = QFont(option.font)
            font.setWeight(QFont.Weight.DemiBold)
            painter.setFont(font)
            painter.setPen(QColor(t.ink))
            self._line(painter, QRectF(cell.left() + SPACE / 2, cell.top(), SIDE_PX, line), day)
        top = cell.top() + line + SPACE / 2
        box = QRectF(cell.left() + SPACE / 2, top, SIDE_PX, SIDE_PX)
        self._picture(painter, box, index)
        is_chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        if is_chosen:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(t.focus), 3))
            painter.drawRoundedRect(box.adjusted(-3, -3, 3, 3), _RADIUS + 2, _RADIUS + 2)
        painter.setFont(option.font)
        painter.setPen(QColor(t.ink if is_chosen else t.muted))
        words = QRectF(cell.left() + SPACE / 2, box.bottom() + SPACE / 2 + 1, SIDE_PX, line)
        self._line(painter, words, str(index.data() or ""))
        painter.restore()

    def _line(self, painter: QPainter, rect: QRectF, text: str) -> None:
        shown = painter.fontMetrics().elidedText(
            text, Qt.TextElideMode.ElideRight, int(rect.width())
        )
        painter.drawText(rect, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, shown)

    def _picture(self, painter: QPainter, box: QRectF, index: Index) -> None:
        t = tokens()
        path = QPainterPath()
        path.addRoundedRect(box, _RADIUS, _RADIUS)
        pixmap = index.data(PIXMAP_ROLE)
        if isinstance(pixmap, QPixmap) and not pixmap.isNull():
            painter.save()
            painter.setClipPath(path)
            painter.fillRect(box, QColor("#ffffff"))
            painter.drawPixmap(box, pixmap, _middle_square(pixmap))
            painter.restore()
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(t.line), 1))
            painter.drawPath(path)
            return
        state = index.data(STATE_ROLE)
        is_lost = isinstance(state, FileState) and state is not FileState.FINE
        painter.setBrush(QColor(t.danger_soft if is_lost else t.ground))
        painter.setPen(QPen(QColor(t.danger if is_lost else t.line), 1.4, Qt.PenStyle.DashLine))
        painter.drawPath(path)
        if isinstance(state, FileState) and is_lost:
            painter.setPen(QColor(t.danger))
            flags = Qt.AlignmentFlag.AlignCenter.value | Qt.TextFlag.TextWordWrap.value
            painter.drawText(box.adjusted(SPACE, SPACE, -SPACE, -SPACE), flags, state_words(state))
        else:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(t.edge))
            for step in (-1, 0, 1):  # it is on its way
                painter.drawEllipse(box.center() + QPointF(step * 12.0, 0.0), 3.0, 3.0)


def _middle_square(pixmap: QPixmap) -> QRectF:
    side = float(min(pixmap.width(), pixmap.height()))
    return QRectF((pixmap.width() - side) / 2, (pixmap.height() - side) / 2, side, side)


class PhotoListView(QListView):
    """Choose, open, word, take out, drag out. Drops are the business of what holds the list."""

    open_wanted = Signal()
    words_wanted = Signal()
    remove_wanted = Signal()

    def __init__(
        self,
        model: PhotosModel,
        copy_for_drag: Callable[[Photo], Path | None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._photos = model
        self._copy_for_drag = copy_for_drag
        self.setModel(model)
        self.setItemDelegate(PhotoDelegate(self))
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setMovement(QListView.Movement.Static)
        self.setUniformItemSizes(True)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setDragEnabled(True)
        self.setMouseTracking(False)
        self.setMinimumHeight(SIDE_PX + 10 * SPACE)
        self.activated.connect(self._on_activated)
        self._ask_size()

    def chosen(self) -> Photo | None:
        """Return the photo that is chosen."""
        indexes = self.selectionModel().selectedIndexes()
        found = indexes[0].data(PHOTO_ROLE) if indexes else None
        return found if isinstance(found, Photo) else None

    def choose(self, row: int) -> None:
        """Make the photo in ``row`` the chosen one."""
        self.setCurrentIndex(self._photos.index(row))

    def drag_data(self) -> QMimeData | None:
        """Return what a drag of the chosen photo carries: a copy of its file."""
        photo = self.chosen()
        path = self._copy_for_drag(photo) if photo is not None else None
        return mime_of_file(path) if path is not None else None

    def startDrag(self, _actions: Qt.DropAction) -> None:
        """Hand out a copy; what is kept stays where it is."""
        mime = self.drag_data()
        if mime is None:
            return
        drag = QDrag(self)
        drag.setMimeData(mime)
        pixmap = self.currentIndex().data(PIXMAP_ROLE)
        if isinstance(pixmap, QPixmap):
            drag.setPixmap(pixmap.scaled(QSize(96, 96), Qt.AspectRatioMode.KeepAspectRatio))
        drag.exec(Qt.DropAction.CopyAction)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Turn the usual keys into wishes; arrows walk."""
        has_photo = self.chosen() is not None
        if has_photo and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.open_wanted.emit()
        elif has_photo and event.key() == Qt.Key.Key_F2:
            self.words_wanted.emit()
        elif has_photo and event.key() == Qt.Key.Key_Delete:
            self.remove_wanted.emit()
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        """Follow the type size and the screen's resolution."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self.scheduleDelayedItemsLayout()

    def event(self, event: QEvent) -> bool:
        """Ask for sharper pictures on a finer screen."""
        if event.type() == QEvent.Type.DevicePixelRatioChange:
            self._ask_size()
        return super().event(event)

    def _ask_size(self) -> None:
        self._photos.set_side(round(SIDE_PX * _CROP_SPARE * self.devicePixelRatioF()))

    def _on_activated(self) -> None:
        if self.chosen() is not None:
            self.open_wanted.emit()
