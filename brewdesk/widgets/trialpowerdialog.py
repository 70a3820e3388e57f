"""How many jars a trial takes: asked before it is planned."""

from __future__ import annotations

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QComboBox, QDialog, QDialogButtonBox, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput
from brewdesk.services.trialpower import (
    GUESSED_DIFFERENCE,
    GUESSED_SCATTER,
    USUAL_POWER,
    power_answer,
)
from brewdesk.services.trialview import TrialOutcome
from brewdesk.services.wording.problems import impossible_words
from brewdesk.services.wording.trials import (
    few_jars_words,
    outcome_name,
    power_of_words,
    power_words,
    scatter_words,
)
from brewdesk.widgets.fields import FieldRow, card, plain_label
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.theme import SPACE

_MOST_JARS = 1000


class PowerDialog(QDialog):
    """Opened with ``open()``; nothing is kept."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName("trial_power")
        self.setModal(True)
        self.setWindowTitle(self.tr("How many jars?"))
        self.setMinimumWidth(600)
        self.outcome = QComboBox()
        self.outcome.setObjectName("power_outcome")
        for outcome in TrialOutcome:
            self.outcome.addItem(outcome_name(outcome), outcome)
        self.difference, self.scatter, self.jars = QLineEdit(), QLineEdit(), QLineEdit("4")
        self.rows = {
            "outcome": FieldRow(self.tr("Compared by"), self.outcome, lines=0),
            "jars": FieldRow(self.tr("Jars of each at hand"), self.jars, lines=1),
            "difference": FieldRow(
                self.tr("Difference that matters to you"), self.difference, lines=1
            ),
            "scatter": FieldRow(self.tr("How far like jars lie apart"), self.scatter, lines=1),
        }
        for key in ("difference", "scatter", "jars"):
            self.rows[key].focus_widget.setObjectName(f"power_{key}")
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("How many jars does it take to be sure?"), "heading"))
        grid = PairGrid()
        grid.add(self.rows["outcome"], self.rows["jars"])
        grid.add(self.rows["difference"], self.rows["scatter"])
        column.addWidget(grid)
        self.known = plain_label("", "muted", wraps=True)
        column.addWidget(self.known)
        frame, inside = card()
        self.answer = plain_label("", "", wraps=True)
        self.answer.setObjectName("power_answer")
        self.at_hand = plain_label("", "", wraps=True)
        self.at_hand.setObjectName("power_at_hand")
        for label in (
            self.answer,
            self.at_hand,
            plain_label(few_jars_words(), "muted", wraps=True),
        ):
            inside.addWidget(label)
        column.addWidget(frame)
        column.addStretch(1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)
        self.outcome.currentIndexChanged.connect(self._on_outcome)
        for line in (self.difference, self.scatter, self.jars):
            line.textChanged.connect(self._reckon)
        self._on_outcome()

    def _on_outcome(self) -> None:
        outcome = TrialOutcome(self.outcome.currentData())
        scatter, count = self._desk.trials.scatter(outcome)
        self.known.setText(scatter_words(outcome, scatter, count))
        unit = {
            TrialOutcome.DAYS_TO_PH: self.tr("days"),
            TrialOutcome.ACIDITY: self.tr("g/L"),
            TrialOutcome.PELLICLE: self.tr("mm"),
            TrialOutcome.LIKING: self.tr("points"),
        }[outcome]
        for key, text in (
            ("difference", self.tr("Difference that matters to you, {unit}")),
            ("scatter", self.tr("How far like jars lie apart, {unit}")),
        ):
            self.rows[key].label.setText(text.format(unit=unit))
            self.rows[key].focus_widget.setAccessibleName(text.format(unit=unit))
        self.scatter.setText(_written(scatter or GUESSED_SCATTER[outcome]))
        self.difference.setText(_written(GUESSED_DIFFERENCE[outcome]))
        self._reckon()

    def _reckon(self) -> None:
        outcome = TrialOutcome(self.outcome.currentData())
        read = {key: _number(line.text()) for key, line in self._lines().items()}
        for key, value in read.items():
            words = self.tr("Please type a number.") if value is None else ""
            if key == "jars" and value is not None and not 2 <= value <= _MOST_JARS:
                words, read["jars"] = self.tr("From 2 to 1000 jars of each."), None
            self.rows[key].set_problem(words)
        difference, scatter, jars = read["difference"], read["scatter"], read["jars"]
        if difference is None or scatter is None or jars is None:
            self.answer.setText("")
            self.at_hand.setText("")
            return
        try:
            found = power_answer(difference=difference, scatter=scatter, jars_at_hand=int(jars))
        except ImpossibleInput as problem:
            self.rows[problem.field if problem.field in self.rows else "scatter"].set_problem(
                impossible_words(problem)
            )
            return
        self.answer.setText(power_words(outcome, difference, scatter, found.jars, USUAL_POWER))
        self.at_hand.setText(
            power_of_words(outcome, int(jars), found.share_at_hand, found.smallest_at_hand)
        )

    def _lines(self) -> dict[str, QLineEdit]:
        return {"difference": self.difference, "scatter": self.scatter, "jars": self.jars}


def _written(value: float) -> str:
    return QLocale().toString(value, "f", 1)


def _number(text: str) -> float | None:
    try:
        value = float(text.strip().replace(",", "."))
    except ValueError:
        return None
    return value if 0.0 < value < 1e6 else None
