"""A quiet table for reading: whole rows, room for fingers, no grid."""

from __future__ import annotations

from PySide6.QtCore import QAbstractItemModel, QEvent, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from brewdesk.widgets.theme import SPACE


class PlainTable(QTableView):
    """Rows to choose from. Enter, F2 or a double click asks to open one, Delete to remove one."""

    open_wanted = Signal()
    remove_wanted = Signal()

    def __init__(
        self,
        model: QAbstractItemModel,
        parent: QWidget | None = None,
        *,
        stretched: int,
        wraps: bool = False,
    ) -> None:
        self._wraps = wraps  # Qt speaks of style changes before this constructor is through
        super().__init__(parent)
        self.setModel(model)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setStyleSheet(f"QTableView::item {{ padding: {SPACE - 2}px {SPACE}px; }}")
        self.setWordWrap(wraps)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionsClickable(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(stretched, QHeaderView.ResizeMode.Stretch)
        self._size_rows()
        self.doubleClicked.connect(self._on_double_clicked)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Turn the usual keys into wishes."""
        has_row = self.currentIndex().isValid()
        if has_row and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_F2):
            self.open_wanted.emit()
        elif has_row and event.key() == Qt.Key.Key_Delete:
            self.remove_wanted.emit()
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        """Follow the type size."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._size_rows()

    def _size_rows(self) -> None:
        height = QFontMetrics(self.font()).height() + 2 * SPACE
        rows = self.verticalHeader()
        rows.setMinimumSectionSize(height)
        rows.setDefaultSectionSize(height)
        if self._wraps:
            rows.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)

    def _on_double_clicked(self) -> None:
        self.open_wanted.emit()
