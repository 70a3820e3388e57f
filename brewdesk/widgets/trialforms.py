"""The small forms of a trial: start it, take a batch in, leave a jar out, end it."""

from __future__ import annotations

from PySide6.QtWidgets import QComboBox, QLineEdit, QPlainTextEdit, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    ImpossibleInput,
    Kind,
    Starter,
    StarterTaste,
    TeaKind,
    TrialFactor,
)
from brewdesk.services.trialplan import TrialRecipe
from brewdesk.services.trialview import TrialJarView, TrialView
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.armentries import share_of
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.quantityedit import QuantityEdit

_USUAL = TrialRecipe()


class StartDialog(CareDialog):
    """The recipe that all jars share; starting plans one batch a jar."""

    def __init__(self, desk: Desk, view: TrialView, parent: QWidget | None = None) -> None:
        jars = sum(jar.batch is None and jar.is_counted for jar in view.jars)
        super().__init__(
            desk,
            self.tr("Start {name}").format(name=view.trial.name),
            self.tr("Plan {count} batches").format(count=jars),
            name="trial_start",
            parent=parent,
        )
        self._view = view
        factor = view.trial.factor
        self.add_words(
            self.tr(
                "The recipe all jars share. What the trial is about is set by each jar's level. "
                "The batches stand on the shelf as plans then, named by their codes; brew them "
                "on one day if you can. One undo takes all of them back."
            )
        )
        self.tea = QComboBox()
        for kind in TeaKind:
            self.tea.addItem(name_of(kind), kind)
        self.tea.setCurrentIndex(self.tea.findData(_USUAL.tea_kind))
        self.strength = QuantityEdit(desk.quantities, Kind.TEA, lines=1)
        self.strength.set_value(_USUAL.tea_g_per_l)
        self.sugar = QuantityEdit(desk.quantities, Kind.SUGAR, lines=1)
        self.sugar.set_value(_USUAL.sugar_g_per_l)
        self.share = QLineEdit("12")
        self.ph = QuantityEdit(desk.quantities, Kind.PH, required=False, lines=1)
        self.ph.set_placeholder(self.tr("not known"))
        self.fill = QuantityEdit(desk.quantities, Kind.VOLUME, required=False, lines=1)
        self.fill.set_placeholder(self.tr("each to its working volume"))
        for field, label, editor, owner in (
            ("tea_kind", self.tr("Tea"), self.tea, TrialFactor.TEA),
            ("tea_g_per_l", self.tr("Tea in a litre"), self.strength, TrialFactor.TEA_STRENGTH),
            ("sugar_g_per_l", self.tr("Sugar in a litre"), self.sugar, TrialFactor.SUGAR),
            ("starter_share", self.tr("Starter, percent"), self.share, TrialFactor.STARTER_SHARE),
        ):
            row = self.add_row(field, label, editor)
            row.setVisible(factor is not owner)
        self.add_row("starter_ph", self.tr("pH of the starter, the same for all"), self.ph)
        self.add_row("fill_volume_l", self.tr("Fill each to"), self.fill)

    def recipe(self) -> TrialRecipe:
        """Return the recipe as it stands."""
        share = share_of(self.share.text())
        if share is None:
            raise ImpossibleInput("starter_share", self.share.text())
        ph = self.ph.value()
        return TrialRecipe(
            tea_kind=TeaKind(self.tea.currentData()),
            tea_g_per_l=self.strength.value() or _USUAL.tea_g_per_l,
            sugar_g_per_l=self.sugar.value() or _USUAL.sugar_g_per_l,
            starter_share=share,
            starter=Starter(ph=ph, ta_g_per_l=None, taste=None if ph else StarterTaste.SOUR),
            fill_volume_l=self.fill.value(),
        )

    def act(self) -> object:
        """Plan the batches."""
        return self._desk.trials.start(self._view.trial.id, self.recipe())


class AttachDialog(CareDialog):
    """Take a batch that there is already into the trial."""

    def __init__(self, desk: Desk, view: TrialView, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Take a batch in"),
            self.tr("Take it in"),
            name="trial_attach",
            parent=parent,
        )
        self._trial_id = view.trial.id
        self.add_words(
            self.tr(
                "A batch brewed without the trial in mind often differs in more than one thing. "
                "What differs is listed on the trial's sheet."
            )
        )
        self.batch = QComboBox()
        for batch_id, name in desk.trials.batches_to_attach():
            self.batch.addItem(name, batch_id)
        self.add_row("batch_id", self.tr("Batch"), self.batch)
        self.arm = QComboBox()
        for arm in desk.trials.arms(view.trial.id):
            self.arm.addItem(arm.name, arm.id)
        self.add_row("arm_id", self.tr("Its level"), self.arm)
        if self.batch.count() == 0:
            self.refuse("batch_id", self.tr("There is no batch that could join."))

    def act(self) -> object:
        """Take it in."""
        return self._desk.trials.attach(
            self._trial_id, int(self.arm.currentData()), int(self.batch.currentData())
        )


class LeaveOutDialog(CareDialog):
    """Leave a jar out of the results, with the reason."""

    def __init__(self, desk: Desk, jar: TrialJarView, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Leave {code} out").format(code=jar.jar.code),
            self.tr("Leave it out"),
            name="trial_leave_out",
            parent=parent,
        )
        self._jar_id = jar.jar.id
        self.add_words(
            self.tr(
                "It counts in no result then; the reason stands in the report. Leave out what went "
                "wrong, such as mold or a spill, never what came out unexpectedly."
            )
        )
        self.reason = self.add_line("reason", self.tr("Why"))

    def act(self) -> object:
        """Leave it out."""
        return self._desk.trials.leave_out(self._jar_id, self.reason.text())


class EndDialog(CareDialog):
    """End a trial with a conclusion in the maker's own words, or give it up."""

    def __init__(
        self, desk: Desk, view: TrialView, parent: QWidget | None = None, *, gives_up: bool = False
    ) -> None:
        title = self.tr("Give {name} up") if gives_up else self.tr("End {name}")
        super().__init__(
            desk,
            title.format(name=view.trial.name),
            self.tr("Give it up") if gives_up else self.tr("End the trial"),
            name="trial_end",
            parent=parent,
            role="danger" if gives_up else "primary",
        )
        self._trial_id, self._gives_up = view.trial.id, gives_up
        if view.is_hidden:
            self.add_words(self.tr("The codes are opened with it."))
        self.add_words(self.tr("Its batches go on as any others."))
        self.conclusion = QPlainTextEdit()
        self.conclusion.setTabChangesFocus(True)
        self.conclusion.setMinimumHeight(110)
        label = self.tr("Why") if gives_up else self.tr("What you conclude")
        self.add_row("conclusion", label, self.conclusion)

    def act(self) -> object:
        """End it."""
        words = self.conclusion.toPlainText()
        if self._gives_up:
            return self._desk.trials.drop(self._trial_id, words)
        return self._desk.trials.end(self._trial_id, words)


class EditTrialDialog(CareDialog):
    """What a trial is called and asks."""

    def __init__(self, desk: Desk, view: TrialView, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Change {name}").format(name=view.trial.name),
            self.tr("Save"),
            name="trial_edit",
            parent=parent,
        )
        self._trial = view.trial
        self.name = self.add_line("name", self.tr("Name"), view.trial.name)
        self.question = self.add_line(
            "question", self.tr("What you want to know"), view.trial.question
        )
        self.note = QPlainTextEdit(view.trial.note)
        self.note.setTabChangesFocus(True)
        self.note.setMinimumHeight(90)
        self.add_row("note", self.tr("Note"), self.note)

    def act(self) -> object:
        """Save it."""
        return self._desk.trials.edit(
            self._trial.id,
            name=self.name.text(),
            question=self.question.text(),
            note=self.note.toPlainText(),
        )
