"""What was found, one thing a row: its name and day, below what it is and says."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from brewdesk.models.finds import FindsModel
from brewdesk.models.rowtable import ROW_ROLE
from brewdesk.services.searchwords import Find
from brewdesk.widgets.theme import SPACE, tokens

Index = QModelIndex | QPersistentModelIndex


def paint_ground(painter: QPainter, option: QStyleOptionViewItem) -> None:
    """Paint the ground of a row: soft where it is chosen, framed where the keyboard is."""
    chosen = bool(option.state & QStyle.StateFlag.State_Selected)
    if chosen:
        painter.fillRect(option.rect, QColor(tokens().accent_soft))
    if chosen and option.state & QStyle.StateFlag.State_HasFocus:
        bar = QRect(option.rect)
        bar.setWidth(SPACE // 2)
        painter.fillRect(bar, QColor(tokens().accent))


class _Rows(QStyledItemDelegate):
    """Two lines a row; what is too long ends in an ellipsis."""

    def __init__(self, model: FindsModel, parent: QWidget) -> None:
        super().__init__(parent)
        self._model = model

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        del index
        return QSize(20 * SPACE, 2 * QFontMetrics(option.font).height() + 2 * SPACE)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        find: Find = index.data(ROW_ROLE)
        painter.save()
        paint_ground(painter, option)
        box = option.rect.adjusted(2 * SPACE, SPACE - 1, -2 * SPACE, -SPACE)
        plain = QFontMetrics(option.font)
        day = self._model.date(find)
        day_width = plain.horizontalAdvance(day)
        upper = QRect(box.left(), box.top(), box.width(), plain.height())
        lower = upper.translated(0, plain.height())
        painter.setFont(option.font)
        painter.setPen(QColor(tokens().muted))
        painter.drawText(upper, Qt.AlignmentFlag.AlignRight, day)
        painter.drawText(
            lower, Qt.AlignmentFlag.AlignLeft, _cut(plain, self._model.detail(find), box.width())
        )
        strong = QFont(option.font)
        strong.setWeight(QFont.Weight.DemiBold)
        painter.setFont(strong)
        painter.setPen(QColor(tokens().ink))
        room = box.width() - day_width - 2 * SPACE
        name = " ".join(find.name.split()) or self._model.detail(find)
        painter.drawText(upper, Qt.AlignmentFlag.AlignLeft, _cut(QFontMetrics(strong), name, room))
        painter.restore()


def _cut(metrics: QFontMetrics, text: str, width: int) -> str:
    return metrics.elidedText(text[:500], Qt.TextElideMode.ElideRight, width)


class FindsList(QListView):
    """The finds. Enter or a double click asks to open one, Escape to go back to the words."""

    opened = Signal(object)  # a Find
    left = Signal()

    def __init__(self, model: FindsModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("history_finds")
        self.setAccessibleName(self.tr("What was found"))
        self.setModel(model)
        self.setItemDelegate(_Rows(model, self))
        self.setUniformItemSizes(True)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.doubleClicked.connect(self._on_opened)

    def chosen(self) -> Find | None:
        """Return the find of the current row."""
        index = self.currentIndex()
        return index.data(ROW_ROLE) if index.isValid() else None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Turn Enter and Escape into wishes, and go back up to the words from the first row."""
        index = self.currentIndex()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and index.isValid():
            self._on_opened(index)
        elif event.key() == Qt.Key.Key_Escape or self._is_up_and_out(event.key()):
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def _is_up_and_out(self, key: int) -> bool:
        return key == Qt.Key.Key_Up and self.currentIndex().row() <= 0

    def _on_opened(self, index: Index) -> None:
        self.opened.emit(index.data(ROW_ROLE))
