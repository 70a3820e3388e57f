"""Taste the jars of a trial by code, in an order that lots decide."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import ImpossibleInput, Level, TasteMark
from brewdesk.services.trials import ScoreEntry
from brewdesk.services.trialview import TrialView
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import card, plain_label
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictLine


class TastingRow(QWidget):
    """One glass: its code, how much it is liked, the verdict, words."""

    def __init__(self, jar_id: int, code: str, number: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.jar_id, self.code = jar_id, code
        frame, inside = card(self)
        self._inside = inside
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(frame)
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(plain_label(code, "figure"))
        head.addWidget(plain_label(self.tr("glass {number}").format(number=number), "muted"), 1)
        inside.addLayout(head)
        self.liking = QLineEdit(self)
        self.liking.setObjectName(f"liking_{code}")
        self.liking.setPlaceholderText("0–10")
        self.liking.setMaximumWidth(96)
        self.liking.setAccessibleName(self.tr("Liking of {code}, 0 to 10").format(code=code))
        self.mark = ChoiceBar(
            [(mark, name_of(mark)) for mark in TasteMark],
            self.tr("Verdict on {code}").format(code=code),
            may_be_none=True,
        )
        self.mark.setObjectName(f"mark_{code}")
        line = QHBoxLayout()
        line.setSpacing(2 * SPACE)
        line.addWidget(plain_label(self.tr("Liking"), "label"))
        line.addWidget(self.liking)
        self.words = QLineEdit(self)
        self.words.setObjectName(f"words_{code}")
        self.words.setPlaceholderText(self.tr("in your words (optional)"))
        self.words.setAccessibleName(self.tr("Words on {code}").format(code=code))
        line.addWidget(self.words, 1)
        inside.addLayout(line)
        inside.addWidget(self.mark)

    def warn(self, line: QWidget) -> None:
        """Put a warning below the code; a blind trial hides none."""
        self._inside.insertWidget(1, line)

    def entry(self) -> ScoreEntry:
        """Return what is said of this glass.

        Raises
        ------
        ImpossibleInput
            Field "liking" for what is no number from 0 to 10.
        """
        text = self.liking.text().strip().replace(",", ".")
        liking = None
        if text:
            try:
                liking = float(text)
            except ValueError:
                raise ImpossibleInput("liking", text, low=0.0, high=10.0) from None
            if not 0.0 <= liking <= 10.0:
                raise ImpossibleInput("liking", liking, low=0.0, high=10.0)
        mark = self.mark.value()
        return ScoreEntry(
            jar_id=self.jar_id,
            liking=liking,
            mark=mark if isinstance(mark, TasteMark) else None,
            text=self.words.text(),
        )


class TastingDialog(CareDialog):
    """One taster's round through all glasses."""

    def __init__(self, desk: Desk, view: TrialView, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Taste {name}").format(name=view.trial.name),
            self.tr("Enter the tasting"),
            name="trial_tasting",
            parent=parent,
        )
        self.setMinimumWidth(720)
        self._trial_id = view.trial.id
        self.add_words(
            self.tr(
                "Taste in this order, a sip of water in between. Discard, untasted, whatever shows "
                "mold. Leave empty what you did not taste."
            )
        )
        self.taster = self.add_line("taster", self.tr("Who tastes (optional)"))
        verdicts = desk.trials.glass_verdicts(view.trial.id)
        for shown in view.jars:
            verdict = verdicts.get(shown.jar.id)
            if verdict is not None and verdict.level is Level.STOP:
                words = self.tr("{code} is not to be tasted.").format(code=shown.jar.code)
                self.body.addWidget(plain_label(words, "error", self))
                self.add_verdict(verdict)
        self.glasses = [
            TastingRow(jar.id, jar.code, n + 1, self)
            for n, jar in enumerate(desk.trials.tasting_order(view.trial.id))
        ]
        for glass in self.glasses:
            verdict = verdicts[glass.jar_id]
            if verdict.level is Level.WARN:
                glass.warn(VerdictLine(verdict, glass, show=desk.quantities.show))
            self.body.addWidget(glass)
        if not self.glasses:
            self.said.say(self.tr("There is nothing to taste yet."), "error")
            self.go.setEnabled(False)

    def act(self) -> object:
        """Enter it."""
        entries = []
        for glass in self.glasses:
            try:
                entries.append(glass.entry())
            except ImpossibleInput:
                glass.liking.setFocus()
                raise
        return self._desk.trials.score(self._trial_id, self.taster.text(), entries)
