"""Keep the calibration that was just reckoned, so that the next one is asked for in time."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtWidgets import QFrame, QLineEdit, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.meters import NAME_LIMIT, calibration_of
from brewdesk.services.reckoner.question import Answer, Value
from brewdesk.services.records import CalibrationDraft, ImpossibleInput, StoreTrouble
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.fields import FieldRow, announce, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class KeepCalibration(QFrame):
    """The meter's name and one button; hidden where there is nothing to keep."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._draft: CalibrationDraft | None = None
        set_role(self, "card")
        self.name = QLineEdit()
        self.name.setObjectName("keep_meter")
        self.name.setMaxLength(NAME_LIMIT)
        self.button = QPushButton(self.tr("Keep this calibration"))
        self.button.setObjectName("keep_calibration")
        self.row = FieldRow(
            self.tr("Name of the meter"), self.name, self, beside=self.button, lines=1
        )
        self.said = plain_label("", "muted", self, wraps=True)
        self.said.setObjectName("keep_said")
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        column.setSpacing(0)
        column.addWidget(self.row)
        column.addWidget(self.said)
        self.button.clicked.connect(self._on_keep)
        self.hide()

    def offer(self, answer: Answer, values: Mapping[str, Value]) -> None:
        """Offer to keep what was reckoned."""
        draft = calibration_of(answer, values, meter="", at=self._desk.clock.now())
        if self.isHidden() or self._draft is None:
            self._say_last()
        self._draft = draft
        self.button.setEnabled(True)
        self.show()

    def withdraw(self) -> None:
        """Offer nothing: another question, or an answer that does not belong to the entries."""
        self._draft = None
        self.hide()

    def _say_last(self) -> None:
        last = self._desk.meters.last()
        if not self.name.text():
            self.name.setText(self.tr("pH meter") if last is None else last.meter)
        if last is None:
            words = self.tr("None is kept yet. From then on the next one is asked for in time.")
        else:
            day = date_words(last.at, self._desk.clock.zone())
            words = self.tr("Last kept: {meter}, {day}.").format(meter=last.meter, day=day)
        self.said.setText(words)

    def _on_keep(self) -> None:
        if self._draft is None:
            return
        self.row.set_problem("")
        draft = replace(self._draft, meter=self.name.text(), at=self._desk.clock.now())
        try:
            kept = self._desk.meters.record(draft)
        except ImpossibleInput as problem:
            self.row.set_problem(impossible_words(problem))
            return
        except StoreTrouble as trouble:
            self.row.set_problem(trouble_words(trouble))
            return
        self.button.setEnabled(False)  # kept once; another answer can be kept again
        self.said.setText(self.tr("Kept for {meter}.").format(meter=kept.meter))
        announce(self.said, self.said.text())
