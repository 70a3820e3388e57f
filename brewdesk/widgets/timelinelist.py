"""A time line to read: days as headings, the time beside what happened."""

from __future__ import annotations

import re

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from brewdesk.models.rowtable import ROW_ROLE
from brewdesk.models.timeline import DayHeading, TimelineModel, TimelineRow
from brewdesk.services.timeline import TimelineLine
from brewdesk.widgets.findslist import paint_ground
from brewdesk.widgets.theme import SPACE, tokens

Index = QModelIndex | QPersistentModelIndex
_WRAP = int(Qt.TextFlag.TextWordWrap)
_LONG_WORD = re.compile(r"\S{24}(?=\S)")
_MOST_LETTERS = 1200  # of one line; a longer note can be read where it stands
_WIDE_TIME = "00:00"


class _Rows(QStyledItemDelegate):
    """Headings strong, sentences wrapped, what they lead to in a quiet line below."""

    def __init__(self, model: TimelineModel, view: TimelineList) -> None:
        super().__init__(view)
        self._model = model
        self._view = view

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        row: TimelineRow = index.data(ROW_ROLE)
        metrics = QFontMetrics(option.font)
        width = self._view.viewport().width()
        if isinstance(row, DayHeading):
            return QSize(width, metrics.height() + (3 * SPACE if index.row() else 2 * SPACE))
        text = self._text_box(QRect(0, 0, width, 0), metrics)
        height = _height(metrics, text.width(), _short(row.text))
        aside = self._model.aside(row)
        if aside:
            height += _height(metrics, text.width(), _short(aside))
        return QSize(width, height + SPACE + 2)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        row: TimelineRow = index.data(ROW_ROLE)
        painter.save()
        if isinstance(row, DayHeading):
            self._paint_heading(painter, option, index)
        else:
            paint_ground(painter, option)
            self._paint_line(painter, option, row)
        painter.restore()

    def _paint_heading(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        strong = QFont(option.font)
        strong.setWeight(QFont.Weight.DemiBold)
        painter.setFont(strong)
        painter.setPen(QColor(tokens().ink))
        box = option.rect.adjusted(2 * SPACE, 0, -2 * SPACE, -SPACE // 2)
        where = Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft
        painter.drawText(box, where, str(index.data()))

    def _paint_line(
        self, painter: QPainter, option: QStyleOptionViewItem, line: TimelineLine
    ) -> None:
        metrics = QFontMetrics(option.font)
        box = self._text_box(option.rect, metrics)
        box.setTop(box.top() + SPACE // 2)
        painter.setFont(option.font)
        painter.setPen(QColor(tokens().muted))
        at = QRect(option.rect.left() + 2 * SPACE, box.top(), box.left(), metrics.height())
        painter.drawText(at, Qt.AlignmentFlag.AlignLeft, self._model.time(line))
        text = _short(line.text)
        height = _height(metrics, box.width(), text)
        painter.setPen(QColor(tokens().ink))
        painter.drawText(QRect(box.left(), box.top(), box.width(), height), _WRAP, text)
        aside = self._model.aside(line)
        if aside:
            below = QRect(box.left(), box.top() + height, box.width(), 100 * metrics.height())
            painter.setPen(QColor(tokens().accent if line.about is not None else tokens().muted))
            painter.drawText(below, _WRAP, _short(aside))

    def _text_box(self, row: QRect, metrics: QFontMetrics) -> QRect:
        left = 2 * SPACE + metrics.horizontalAdvance(_WIDE_TIME) + 2 * SPACE
        return row.adjusted(left, 0, -2 * SPACE, 0)


def _short(text: str) -> str:
    """Cut a very long text, and let very long words break where nobody sees why not."""
    cut = text if len(text) <= _MOST_LETTERS else text[:_MOST_LETTERS] + "…"
    return _LONG_WORD.sub("\\g<0>\u200b", cut)


def _height(metrics: QFontMetrics, width: int, text: str) -> int:
    return metrics.boundingRect(0, 0, max(width, 8 * SPACE), 100_000, _WRAP, text).height()


class TimelineList(QListView):
    """The lines. Enter or a double click follows one, Escape goes back to what was found."""

    followed = Signal(object)  # a Subject
    left = Signal()

    def __init__(self, model: TimelineModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("history_timeline")
        self.setAccessibleName(self.tr("Time line, newest first"))
        self.setModel(model)
        self.setItemDelegate(_Rows(model, self))
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.doubleClicked.connect(self._on_followed)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Turn Enter and Escape into wishes."""
        index = self.currentIndex()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and index.isValid():
            self._on_followed(index)
        elif event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the sentences anew for another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()

    def let_see(self, index: Index) -> None:
        """Choose a line and scroll to it."""
        if index.isValid():
            self.setCurrentIndex(index)
            self.scrollTo(index, QAbstractItemView.ScrollHint.PositionAtCenter)

    def _on_followed(self, index: Index) -> None:
        row = index.data(ROW_ROLE)
        if isinstance(row, TimelineLine) and row.about is not None:
            self.followed.emit(row.about)
