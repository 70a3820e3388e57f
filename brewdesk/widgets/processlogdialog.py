"""Ask for the span of a process log, then show it."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import (
    QDateEdit,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.jobs import Pool
from brewdesk.services.paperdoc import Document
from brewdesk.services.processlog import process_log
from brewdesk.services.records import StoreTrouble
from brewdesk.services.wording.problems import trouble_words
from brewdesk.services.wording.processlog import process_document
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_USUAL_DAYS = 90


class ProcessLogDialog(QDialog):
    """Two dates and "Show it". ``made`` carries the `Document`."""

    made = Signal(object)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName("process_log_dialog")
        self.setWindowTitle(self.tr("Process log"))
        self.setModal(True)
        words = plain_label(
            self.tr(
                "The log lists the batches of a span of time with their start pH and the day "
                "they were first read at or below pH 4.2, calibrations, overridden warnings "
                "with your reasons, looks and discards. It shows what was entered, no more."
            ),
            "",
            wraps=True,
        )
        today = desk.clock.now().astimezone(desk.clock.zone()).date()
        begin = today - timedelta(days=_USUAL_DAYS)
        self.first = _date_edit("process_first", begin, self.tr("First day"))
        self.last = _date_edit("process_last", today, self.tr("Last day"))
        line = QHBoxLayout()
        line.setSpacing(2 * SPACE)
        line.addWidget(FieldRow(self.tr("&From"), self.first, lines=0))
        line.addWidget(FieldRow(self.tr("&To"), self.last, lines=0))
        line.addStretch(1)
        self.message = plain_label("", "error", wraps=True)
        self.message.hide()
        self.go = QPushButton(self.tr("Show it"))
        self.go.setObjectName("process_go")
        self.go.setDefault(True)
        set_role(self.go, "primary")
        buttons = QDialogButtonBox(self)
        buttons.addButton(self.go, QDialogButtonBox.ButtonRole.AcceptRole)
        leave = QPushButton(self.tr("Cancel"))
        leave.setAutoDefault(False)
        buttons.addButton(leave, QDialogButtonBox.ButtonRole.RejectRole)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.tr("Process log"), "title"))
        column.addWidget(words)
        column.addLayout(line)
        column.addWidget(self.message)
        column.addStretch(1)
        column.addWidget(buttons)
        self.setMinimumWidth(70 * SPACE)
        self.go.clicked.connect(self._on_go)
        buttons.rejected.connect(self.reject)

    def span(self) -> tuple[datetime, datetime]:
        """Return the first and the last instant of the days chosen."""
        zone = self._desk.clock.zone()
        first, last = _day_of(self.first), _day_of(self.last)
        return datetime.combine(first, time.min, zone), datetime.combine(last, time.max, zone)

    def _on_go(self) -> None:
        first_at, last_at = self.span()
        if first_at > last_at:
            self._say(self.tr("The first day is after the last. Please change one of them."))
            return
        self.go.setEnabled(False)
        desk = self._desk
        self._desk.jobs.run(
            lambda: process_log(desk.door, first_at, last_at, is_demo=desk.store.info.is_demo),
            lambda log: self._on_made(
                process_document(log, desk.quantities.show, desk.clock.zone())
            ),
            self._on_failed,
            key="process-log",
            pool=Pool.STORE,
        )

    def _on_made(self, document: Document) -> None:
        self.made.emit(document)
        self.accept()

    def _on_failed(self, error: BaseException) -> None:
        if not isinstance(error, StoreTrouble):
            raise error
        self.go.setEnabled(True)
        self._say(trouble_words(error))

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message.show()


def _day_of(edit: QDateEdit) -> date:
    day = edit.date()
    return date(day.year(), day.month(), day.day())


def _date_edit(name: str, day: date, spoken: str) -> QDateEdit:
    edit = QDateEdit()
    edit.setObjectName(name)
    edit.setAccessibleName(spoken)
    edit.setCalendarPopup(True)
    edit.setDisplayFormat("d MMM yyyy")
    edit.setMinimumWidth(20 * SPACE)
    edit.setDate(QDate(day.year, day.month, day.day))
    return edit
