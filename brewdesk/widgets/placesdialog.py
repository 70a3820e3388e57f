"""The places in which vessels stand: a list, and beside it the place chosen."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFontMetrics, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.placeform import PlaceDialog
from brewdesk.widgets.placesheet import PlaceSheet
from brewdesk.widgets.theme import SPACE

_TOPICS = Topic.PLACES | Topic.VESSELS | Topic.SETTINGS
_LIST_LETTERS = 24  # the list is that many letters wide


class PlacesDialog(QDialog):
    """Look at places, add, change and remove them, and enter how warm they are.

    Every change is kept at once and can be undone; there is nothing to save at the end.
    """

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName("places_dialog")
        self.setWindowTitle(self.tr("Places"))
        self.setModal(True)
        self.list = QListWidget()
        self.list.setObjectName("places_list")
        self.list.setAccessibleName(self.tr("Places"))
        self.list.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setWordWrap(True)
        self.list.setStyleSheet(
            f"QListWidget {{ padding: {SPACE // 2}px; }}"
            f"QListWidget::item {{ padding: 0 {SPACE}px; }}"
        )
        self.add_button = QPushButton(self.tr("Add a place…"))
        self.add_button.setObjectName("place_add")
        self.add_button.setAutoDefault(False)
        self.sheet = PlaceSheet(desk)
        self.empty = plain_label(
            self.tr(
                "No place yet. Add the pantry, kitchen or cellar where your vessels stand: how "
                "warm it is there decides how fast a batch sours."
            ),
            "muted",
            wraps=True,
        )
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.empty.setMargin(4 * SPACE)
        self._build()
        self._connect()
        self.refresh()
        self._fit()
        self.list.setFocus()

    def refresh(self) -> None:
        """Read the places anew; the one chosen stays chosen while it is there."""
        lines = self._desk.place_views.lines()
        chosen = self.chosen_id()
        self.list.blockSignals(True)
        self.list.clear()
        for line in lines:
            item = QListWidgetItem(f"{line.place.name}\n{line.text}")
            item.setData(Qt.ItemDataRole.UserRole, line.place.id)
            item.setSizeHint(self._row_size())
            self.list.addItem(item)
        self.list.blockSignals(False)
        ids = [line.place.id for line in lines]
        if ids:
            self.list.setCurrentRow(ids.index(chosen) if chosen in ids else 0)
        self._stack.setCurrentWidget(self.sheet if ids else self.empty)
        self._show_chosen()

    def chosen_id(self) -> int | None:
        """Return the id of the place chosen."""
        item = self.list.currentItem()
        return None if item is None else int(item.data(Qt.ItemDataRole.UserRole))

    def choose(self, place_id: int) -> None:
        """Choose a place."""
        for row in range(self.list.count()):
            if self.list.item(row).data(Qt.ItemDataRole.UserRole) == place_id:
                self.list.setCurrentRow(row)

    def _build(self) -> None:
        self._stack = QStackedWidget()
        self._stack.addWidget(self.sheet)
        self._stack.addWidget(self.empty)
        left = QVBoxLayout()
        left.setSpacing(SPACE)
        left.addWidget(self.list, 1)
        left.addWidget(self.add_button)
        middle = QHBoxLayout()
        middle.setSpacing(3 * SPACE)
        middle.addLayout(left)
        middle.addWidget(self._stack, 1)
        buttons = QDialogButtonBox(self)
        close = QPushButton(self.tr("Close"))
        close.setObjectName("places_close")
        close.setAutoDefault(False)
        buttons.addButton(close, QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.tr("Where your vessels stand"), "title"))
        column.addLayout(middle, 1)
        column.addWidget(buttons)
        self.list.setFixedWidth(self._list_width())

    def _connect(self) -> None:
        self.list.currentRowChanged.connect(lambda _row: self._show_chosen())
        self.add_button.clicked.connect(self._on_add)
        self.sheet.edit_wanted.connect(self._on_edit)
        self.sheet.import_wanted.connect(self._on_import)
        self._desk.changes.changed.connect(self._on_changed)
        # The window's own menu cannot be reached while the dialog is open.
        for keys, act in (
            (QKeySequence.StandardKey.Undo, self._desk.history.undo),
            (QKeySequence.StandardKey.Redo, self._desk.history.redo),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(act)

    def _row_size(self) -> QSize:
        height = 2 * QFontMetrics(self.list.font()).lineSpacing() + 2 * SPACE
        return QSize(0, height)

    def _list_width(self) -> int:
        return QFontMetrics(self.font()).averageCharWidth() * _LIST_LETTERS + 4 * SPACE

    def _fit(self) -> None:
        """Take most of the window, so that the course has room."""
        parent = self.parentWidget()
        room = parent.window().size() if parent is not None else QSize(1280, 800)
        self.resize(
            min(max(room.width() - 10 * SPACE, 90 * SPACE), 160 * SPACE),
            min(max(room.height() - 6 * SPACE, 70 * SPACE), 110 * SPACE),
        )

    def _show_chosen(self) -> None:
        place_id = self.chosen_id()
        place = next((row for row in self._desk.vessels.places() if row.id == place_id), None)
        if place is not None:
            self.sheet.show_place(place)

    def _on_add(self) -> None:
        dialog = PlaceDialog(self._desk, None, self)
        dialog.saved.connect(self.choose)
        self._open(dialog)

    def _on_edit(self) -> None:
        place = self.sheet.place()
        if place is not None:
            self._open(PlaceDialog(self._desk, place, self))

    def _on_import(self) -> None:
        from brewdesk.widgets.loggerdialog import LoggerDialog

        place = self.sheet.place()
        if place is not None:
            dialog = LoggerDialog(self._desk, place, self)
            self._open(dialog)
            dialog.choose_file()

    def _open(self, dialog: QDialog) -> None:
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_TOPICS):
            self.refresh()
