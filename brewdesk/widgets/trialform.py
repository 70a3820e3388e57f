"""Plan a trial: its one factor, its levels, its jars, and whether it is tasted by code."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QComboBox, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Trial, TrialFactor
from brewdesk.services.trialplan import BY_HAND, TrialWish
from brewdesk.services.trials import NAME_MOST
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.trials import blind_words
from brewdesk.widgets.armentries import ArmEntries
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.vesselpicks import VesselPicks

_ROOMY = 4  # jars of each level, from which on something can be shown


class TrialDialog(CareDialog):
    """Opened with ``open()``; ``done_with`` carries the trial."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Plan a trial"),
            self.tr("Draw lots and plan it"),
            name="trial_form",
            parent=parent,
        )
        self.setMinimumWidth(640)
        self.name = self.add_line("name", self.tr("&Name"))
        self.name.setMaxLength(NAME_MOST)
        self.question = self.add_line("question", self.tr("What you want to &know"))
        self.factor = QComboBox()
        for factor in TrialFactor:
            self.factor.addItem(name_of(factor), factor)
        self.add_row("factor", self.tr("The one thing in which the jars &differ"), self.factor)
        self.arms = ArmEntries(desk, self)
        self.add_row("arms", self.tr("Its levels"), self.arms)
        self.rows["level"] = self.rows["arm_name"] = self.rows["arms"]
        self.vessels = VesselPicks(desk, self)
        self.add_row("vessels", self.tr("Vessels, alike if possible"), self.vessels)
        self.rows["by_hand"] = self.rows["vessel_id"] = self.rows["vessels"]
        self.hand = QCheckBox(self.tr("I say myself which vessel gets which level"))
        self.hand.setObjectName("trial_by_hand")
        self.body.addWidget(self.hand)
        self.blind = QCheckBox(self.tr("Taste blind: codes on jars and page until they are opened"))
        self.blind.setObjectName("trial_blind")
        self.blind.setChecked(True)
        self.body.addWidget(self.blind)
        self.body.addWidget(plain_label(blind_words(), "muted", self, wraps=True))
        self.outcome = self.add_words("", "")
        self.outcome.setObjectName("trial_outcome")
        self.body.addSpacing(SPACE)
        self.factor.currentIndexChanged.connect(self._on_factor)
        self.arms.changed.connect(self._on_arms)
        self.vessels.changed.connect(self._tell_outcome)
        self.hand.toggled.connect(self.vessels.set_by_hand)
        self._on_factor()

    def wish(self) -> TrialWish:
        """Return what the form asks for."""
        return TrialWish(
            name=self.name.text(),
            question=self.question.text(),
            factor=TrialFactor(self.factor.currentData()),
            arms=self.arms.wishes(),
            vessel_ids=tuple(vessel.id for vessel in self.vessels.chosen()),
            is_blind=self.blind.isChecked(),
            by_hand=self.vessels.by_hand(),
        )

    def act(self) -> Trial:
        """Plan it."""
        return self._desk.trials.plan(self.wish())

    def _on_factor(self) -> None:
        factor = TrialFactor(self.factor.currentData())
        self.arms.set_factor(factor)
        must = factor in BY_HAND
        self.hand.setChecked(must or self.hand.isChecked())
        self.hand.setEnabled(not must)
        self._on_arms()
        self.fit()

    def _on_arms(self) -> None:
        self.vessels.set_levels(tuple(wish.name for wish in self.arms.wishes()))
        self._tell_outcome()
        if self.isVisible():
            self.fit()

    def _tell_outcome(self) -> None:
        jars, arms = len(self.vessels.chosen()), len(self.arms.entries)
        if not jars:
            words = self.tr(
                "No vessel chosen: batches that there are already can be taken in later. What "
                "differs between them is listed then."
            )
        elif jars < arms:
            words = self.tr("Choose at least one vessel for each level.")
        elif jars < 2 * arms:
            words = self.tr(
                "One jar of a level cannot be told from the level itself. Take several of each, "
                "if you can."
            )
        elif jars < _ROOMY * arms:
            words = self.tr(
                "{jars} jars: an interval, but no more than a hint. From {count} of each on, a "
                "difference can be shown."
            ).format(jars=jars, count=_ROOMY)
        else:
            words = self.tr("{jars} jars, dealt out evenly.").format(jars=jars)
        self.outcome.setText(words)
