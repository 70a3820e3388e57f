"""A planned batch that already stands in its jar: when it began, and how warm it was."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.brewing import StepShut
from brewdesk.services.desk import Desk
from brewdesk.services.records import Batch, ImpossibleInput, Kind, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.whenedit import WhenEdit


class AlreadyInDialog(QDialog):
    """Asks what the run sheet would have asked: the moment, and the temperature or a reason."""

    entered = Signal(int)

    def __init__(self, desk: Desk, batch: Batch, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._batch = batch
        self.setObjectName("already_in_dialog")
        self.setWindowTitle(self.tr("Already in the jar"))
        self.setMinimumWidth(520)
        self.when = WhenEdit(desk.clock, self)
        self.when.line.setObjectName("already_when")
        self.temperature = QuantityEdit(desk.quantities, Kind.TEMPERATURE, required=False, lines=1)
        self.temperature.line.setObjectName("already_temperature")
        self.reason = QLineEdit()
        self.reason.setObjectName("already_reason")
        self.rows = {
            "started_at": FieldRow(self.tr("Starter and culture went in"), self.when, lines=1),
            "temperature_c": FieldRow(
                self.tr("How warm the tea was then"), self.temperature, lines=1
            ),
            "reason": FieldRow(
                self.tr("If you did not measure: why it goes in all the same"),
                self.reason,
                lines=3,
            ),
        }
        self._lay_out()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        title = self.tr("{name} is already in the jar").format(name=self._batch.name)
        column.addWidget(plain_label(title, "heading", wraps=True))
        column.addWidget(
            plain_label(
                self.tr("Reminders and forecast count from the moment starter or culture went in."),
                "muted",
                wraps=True,
            )
        )
        for row in self.rows.values():
            column.addWidget(row)
        buttons, self.go = go_and_leave(
            self, self.tr("It is souring"), self.tr("Cancel"), go_name="already_go"
        )
        self.go.clicked.connect(self._on_go)
        column.addWidget(buttons)

    def _on_go(self) -> None:
        for row in self.rows.values():
            row.set_problem("")
        if not self.temperature.is_valid():
            self.temperature.point_out()
            return
        try:
            self._desk.brewing.note_already_in(
                self._batch.id,
                self.when.instant(),
                self.temperature.value(),
                self.reason.text(),
            )
        except StepShut as shut:
            words = verdict_words(shut.verdict, self._desk.quantities.show)
            self.rows["reason"].set_problem(f"{words.fact} {words.what_to_do}")
            self.reason.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        except ImpossibleInput as problem:
            row = self.rows.get(problem.field, self.rows["reason"])
            row.set_problem(impossible_words(problem, self._desk.quantities.show))
            return
        except StoreTrouble as trouble:
            self.rows["reason"].set_problem(trouble_words(trouble))
            return
        self.accept()
        self.entered.emit(self._batch.id)
