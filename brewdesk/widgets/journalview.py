"""What happened to a batch, line by line."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QStackedLayout, QWidget

from brewdesk.models.journal import WHAT, JournalModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.journal import JournalLine
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.plaintable import PlainTable


class JournalView(QWidget):
    """The acts of one batch, newest first."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("journal_view")
        self._desk = desk
        self._batch_id: int | None = None
        self._is_stale = False
        self.model = JournalModel(desk.clock, self)
        self.table = PlainTable(self.model, stretched=WHAT, wraps=True)
        self.table.setObjectName("journal_table")
        self.table.setAccessibleName(self.tr("Journal, newest first"))
        self.empty = plain_label(
            self.tr("Nothing has been written down yet. Whatever you do with this batch will be."),
            "muted",
            wraps=True,
        )
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._stack = QStackedLayout(self)
        self._stack.setContentsMargins(0, 0, 0, 0)
        self._stack.addWidget(self.table)
        self._stack.addWidget(self.empty)
        desk.changes.changed.connect(self._on_changed)
        self._show_state()

    def set_batch(self, batch_id: int | None) -> None:
        """Show the journal of this batch."""
        self._batch_id = batch_id
        self.refresh()

    def refresh(self) -> None:
        """Read the journal anew, or note that it is stale while nobody looks."""
        self._is_stale = not self.isVisible()
        if self._is_stale:
            return
        lines: tuple[JournalLine, ...] = ()
        if self._batch_id is not None:
            lines = self._desk.journal.of_batch(self._batch_id)
        self.model.set_rows(lines)
        self._show_state()

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        if self._is_stale:
            self.refresh()

    def _show_state(self) -> None:
        self._stack.setCurrentWidget(self.table if self.model.rowCount() else self.empty)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.SETTINGS):
            self.model.refresh()
        if self._batch_id is not None and change.concerns_batch(self._batch_id):
            self.refresh()
