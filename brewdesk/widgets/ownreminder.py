"""Add a reminder in the maker's own words."""

from __future__ import annotations

from datetime import datetime, timedelta

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QLineEdit, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import BatchStage, ImpossibleInput, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.duecard import MORNING
from brewdesk.widgets.fields import FieldRow
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.whenedit import WhenEdit


class OwnReminderForm(QWidget):
    """What, when, and for which jar. ``added`` carries the new reminder's id."""

    added = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.text = QLineEdit()
        self.text.setObjectName("own_text")
        self.text.setPlaceholderText(self.tr("Wash the cloths, buy sugar …"))
        self.text_row = FieldRow(self.tr("Remind me to"), self.text, lines=1)
        self.when = WhenEdit(desk.clock, follows=False)
        self.when.line.setObjectName("own_when")
        self.when_row = FieldRow(self.tr("When"), self.when, lines=1)
        self.jar = QComboBox()
        self.jar.setObjectName("own_jar")
        self.jar_row = FieldRow(self.tr("For"), self.jar, lines=1)
        self.add_button = QPushButton(self.tr("Add the reminder"))
        self.add_button.setObjectName("own_add")
        set_role(self.add_button, "primary")
        pairs = PairGrid()
        pairs.add(self.text_row)
        pairs.add(self.when_row, self.jar_row)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(pairs)
        column.addWidget(self.add_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.text.returnPressed.connect(self.add)
        self.when.submitted.connect(self.add)
        self.add_button.clicked.connect(self.add)
        self.refresh()
        self._propose_time()

    def refresh(self) -> None:
        """Offer the jars that have a batch now; the one chosen stays if it is still there."""
        chosen = self.jar.currentData()
        self.jar.clear()
        self.jar.addItem(self.tr("no jar in particular"), None)
        live = tuple(stage for stage in BatchStage if stage.is_live)
        for batch in self._desk.batches.all(stages=live):
            self.jar.addItem(batch.name, batch.id)
        found = self.jar.findData(chosen) if chosen is not None else 0
        self.jar.setCurrentIndex(max(0, found))

    def add(self) -> None:
        """Keep the reminder, or say what is missing."""
        self.text_row.set_problem("")
        self.when_row.set_problem("")
        at = self.when.instant()
        if at <= self._desk.clock.now():
            self.when_row.set_problem(self.tr("Please choose a time that is still to come."))
            self.when.setFocus()
            return
        try:
            kept = self._desk.reminders.add_own(self.jar.currentData(), at, self.text.text())
        except ImpossibleInput as fault:
            self.text_row.set_problem(impossible_words(fault))
            self.text.setFocus()
        except StoreTrouble as trouble:
            self.text_row.set_problem(trouble_words(trouble))
        else:
            self.text.clear()
            self._propose_time()
            self.added.emit(kept.id)

    def _propose_time(self) -> None:
        zone = self._desk.clock.zone()
        today = self._desk.clock.now().astimezone(zone).date()
        self.when.set_instant(datetime.combine(today + timedelta(days=1), MORNING, tzinfo=zone))
