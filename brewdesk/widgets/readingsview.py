"""The table of a batch's readings: look, correct, take out."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QPushButton,
    QStackedLayout,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.readings import VALUE, ReadingsModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import Reading, StoreTrouble
from brewdesk.services.wording.problems import trouble_words
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.plaintable import PlainTable
from brewdesk.widgets.readingdialog import ReadingDialog
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_LEAST_PX = 176


class ReadingsView(QWidget):
    """Readings of one batch, newest first. Everything done here can be undone."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("readings_view")
        self._desk = desk
        self._batch_id: int | None = None
        self._is_stale = False
        self.dialog: QDialog | None = None
        self.model = ReadingsModel(desk.quantities, desk.clock, self)
        self._build()
        self._connect()
        self._show_state()

    def set_batch(self, batch_id: int | None) -> None:
        """Show the readings of this batch."""
        self._batch_id = batch_id
        self.refresh()

    def chosen(self) -> Reading | None:
        """Return the reading of the selected row."""
        rows = self.table.selectionModel().selectedRows()
        return self.model.row_at(rows[0]) if rows else None

    def refresh(self) -> None:
        """Read the readings anew; rows that stayed keep their selection."""
        self._is_stale = False
        rows: tuple[Reading, ...] = ()
        if self._batch_id is not None:
            rows = self._desk.readings.of_batch(self._batch_id)[::-1]
        self.model.set_rows(rows)
        self._show_state()

    def edit_chosen(self) -> None:
        """Open the selected reading for correction."""
        reading = self.chosen()
        if reading is None or self.dialog is not None:
            return
        self.dialog = ReadingDialog(self._desk, reading, self)
        self.dialog.finished.connect(self._on_dialog_finished)
        self.dialog.open()

    def show_photos(self) -> None:
        """Open the photos of the selected reading."""
        from brewdesk.widgets.readingphotos import ReadingPhotosDialog

        reading = self.chosen()
        if reading is None or self.dialog is not None:
            return
        self.dialog = ReadingPhotosDialog(self._desk, reading, self)
        self.dialog.finished.connect(self._on_dialog_finished)
        self.dialog.open()

    def remove_chosen(self) -> None:
        """Take the selected reading out; undo brings it back."""
        reading = self.chosen()
        if reading is None:
            return
        row = self.model.index_of(reading.id).row()
        self._say("")
        try:
            self._desk.readings.remove(reading.id)
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
            return
        last = self.model.rowCount() - 1
        if last >= 0:
            self.table.selectRow(min(row, last))

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        if self._is_stale:
            self.refresh()

    def _build(self) -> None:
        self.table = PlainTable(self.model, stretched=VALUE)
        self.table.setObjectName("readings_table")
        self.table.setAccessibleName(self.tr("Readings, newest first"))
        self.table.setMinimumHeight(_LEAST_PX)
        self.empty = plain_label(
            self.tr("No readings yet. Enter the first one above."), "muted", wraps=True
        )
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._stack = QStackedLayout()
        self._stack.addWidget(self.table)
        self._stack.addWidget(self.empty)
        self.edit_button = QPushButton(self.tr("Change…"))
        self.edit_button.setObjectName("readings_edit")
        self.remove_button = QPushButton(self.tr("Take out"))
        self.remove_button.setObjectName("readings_remove")
        self.photos_button = QPushButton(self.tr("Photos…"))
        self.photos_button.setObjectName("readings_photos")
        for button in (self.photos_button, self.edit_button, self.remove_button):
            set_role(button, "quiet")
        self.problem = plain_label("", "error", wraps=True)
        self.problem.setObjectName("readings_problem")
        line = QHBoxLayout()
        line.setSpacing(SPACE)
        line.addWidget(self.problem, 1)
        line.addWidget(self.photos_button)
        line.addWidget(self.edit_button)
        line.addWidget(self.remove_button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE // 2)
        layout.addLayout(self._stack, 1)
        layout.addLayout(line)

    def _connect(self) -> None:
        self.table.open_wanted.connect(self.edit_chosen)
        self.table.remove_wanted.connect(self.remove_chosen)
        self.table.selectionModel().selectionChanged.connect(self._show_state)
        self.edit_button.clicked.connect(self.edit_chosen)
        self.photos_button.clicked.connect(self.show_photos)
        self.remove_button.clicked.connect(self.remove_chosen)
        self._desk.changes.changed.connect(self._on_changed)

    def _show_state(self) -> None:
        has_rows = self.model.rowCount() > 0
        self._stack.setCurrentWidget(self.table if has_rows else self.empty)
        is_chosen = self.chosen() is not None
        for button in (self.photos_button, self.edit_button, self.remove_button):
            button.setEnabled(is_chosen)
            button.setVisible(has_rows)

    def _say(self, problem: str) -> None:
        self.problem.setText(problem)
        announce(self, problem)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.SETTINGS):
            self.model.refresh()
        if self._batch_id is None or not change.concerns(Topic.READINGS):
            return
        if not change.concerns_batch(self._batch_id):
            return
        if self.isVisible():
            self.refresh()
        else:
            self._is_stale = True

    def _on_dialog_finished(self) -> None:
        if self.dialog is not None:
            self.dialog.deleteLater()
            self.dialog = None
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)
