"""One form for everything that is carried: where to, what is meant, how much."""

from __future__ import annotations

from collections.abc import Collection

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QComboBox, QDialog, QLineEdit, QVBoxLayout, QWidget

from brewdesk.services.brewing import StepShut
from brewdesk.services.carrying import Answers
from brewdesk.services.desk import Desk
from brewdesk.services.drops import (
    Carried,
    CarriedKind,
    Choice,
    ChoiceKind,
    Drop,
    Target,
    Tray,
    choices,
)
from brewdesk.services.records import ImpossibleInput, Kind, StoreTrouble
from brewdesk.services.wording.drops import choice_detail, choice_words, refusal_words, tray_words
from brewdesk.services.wording.liquids import suggestion_words
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.balancewords import balance_words, blend_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import FieldRow, MessageLine, plain_label
from brewdesk.widgets.millimetres import MillimetreReader
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard

_WITH_AMOUNT = frozenset(
    {
        ChoiceKind.LEND,
        ChoiceKind.MERGE_PART,
        ChoiceKind.KEEP,
        ChoiceKind.DRAW_PART,
        ChoiceKind.REST,
        ChoiceKind.SPLIT_CULTURE,
    }
)
_OPTIONAL_AMOUNT = frozenset({ChoiceKind.SPLIT_CULTURE})
_ASKS_NOTHING = frozenset(
    {
        ChoiceKind.MOVE_CULTURE,
        ChoiceKind.USE_IN_PLAN,
        ChoiceKind.PUT_IN,
        ChoiceKind.POUR_OVER,
    }
)
# Where a whole batch ends, or is bottled, more is asked than here.
ENDS_BATCH = ChoiceKind.DRAW_OFF
FILLS_BOTTLES = ChoiceKind.FILL_BOTTLES
_FIELD_OF = {
    "volume_l": "volume",
    "rest_volume_l": "volume",
    "name": "name",
    "culture_name": "name",
    "pellicle_mm": "pellicle",
    "vessel_id": "where",
    "culture_id": "store",
    "starter_volume_l": "volume",
}


def asks_nothing(choice: Choice) -> bool:
    """Whether a choice can be done as it is."""
    if choice.kind is ChoiceKind.MERGE_ALL:
        return not choice.may_join_cultures
    return choice.kind in _ASKS_NOTHING


class CarryDialog(QDialog):
    """Asks what is not known yet. With ``target`` and ``choice`` settled only the amounts.

    ``kinds`` are the choices on offer; other ones, and targets without any, are left out.
    ``end_wanted`` carries the id of a batch that is to be drawn off whole, ``bottle_wanted``
    of one that is to be bottled.
    """

    done_with = Signal()
    end_wanted = Signal(int)
    bottle_wanted = Signal(int)

    def __init__(
        self,
        desk: Desk,
        carried: Carried,
        parent: QWidget | None = None,
        *,
        title: str = "",
        target: Target | None = None,
        choice: Choice | None = None,
        kinds: Collection[ChoiceKind] = tuple(ChoiceKind),
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._carried = carried
        self._kinds = frozenset(kinds)
        self._facts = desk.carrying.facts()
        self._target = target if target is not None else (choice.target if choice else None)
        self._settled = choice
        self.setObjectName("carry_dialog")
        self.setMinimumWidth(480)
        self._make_fields()
        self._lay_out(title)
        self._fill_targets()

    # --- building --------------------------------------------------------------------

    def _make_fields(self) -> None:
        quantities = self._desk.quantities
        self.where = QComboBox()
        self.where.setObjectName("carry_where")
        self.what = QComboBox()
        self.what.setObjectName("carry_what")
        self.store = QComboBox()
        self.store.setObjectName("carry_store")
        self.resting = QComboBox()
        self.resting.setObjectName("carry_vessel")
        self.volume = QuantityEdit(quantities, Kind.VOLUME, lines=2)
        self.volume.line.setObjectName("carry_volume")
        self.name = QLineEdit()
        self.name.setObjectName("carry_name")
        self.pellicle = QuantityEdit(
            MillimetreReader(quantities), Kind.LENGTH, required=False, lines=1
        )
        self.pellicle.line.setObjectName("carry_pellicle")
        self.rows = {
            "where": FieldRow(self.tr("Where to"), self.where, lines=1),
            "what": FieldRow(self.tr("What is meant"), self.what, lines=1),
            "store": FieldRow(self.tr("With which culture"), self.store, lines=1),
            "vessel": FieldRow(self.tr("In which vessel"), self.resting, lines=1),
            "name": FieldRow(self.tr("Name"), self.name, lines=1),
            "pellicle": FieldRow(self.tr("Thickness of its pellicle"), self.pellicle, lines=1),
            "volume": FieldRow(self.tr("How much"), self.volume),
        }
        self.where.currentIndexChanged.connect(self._on_where)
        self.what.currentIndexChanged.connect(self._on_what)
        self.store.currentIndexChanged.connect(self._refresh)
        self.volume.value_changed.connect(self._refresh)

    def _lay_out(self, title: str) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        self.heading = plain_label(title, "heading", wraps=True)
        column.addWidget(self.heading)
        self._title = title
        for row in self.rows.values():
            column.addWidget(row)
        self.balance = plain_label("", "muted", wraps=True)
        self.balance.setObjectName("carry_balance")
        column.addWidget(self.balance)
        self._verdicts = QVBoxLayout()
        column.addLayout(self._verdicts)
        self.outcome = MessageLine(self, lines=1)
        self.outcome.setObjectName("carry_result")
        column.addWidget(self.outcome)
        column.addStretch(1)  # rows that are not asked for leave no gaps between the others
        buttons, self.go = go_and_leave(
            self, self.tr("Do it"), self.tr("Cancel"), go_name="carry_go"
        )
        self.go.clicked.connect(self._on_go)
        column.addWidget(buttons)

    def showEvent(self, event: QShowEvent) -> None:
        """Begin as high as what is asked for needs."""
        super().showEvent(event)
        self.adjustSize()

    # --- what can be chosen ------------------------------------------------------------

    def _fill_targets(self) -> None:
        """List the targets that take it; of the others say why not, where there is none."""
        targets = [Target(vessel_id=vessel_id) for vessel_id in self._facts.jars]
        trays = list(Tray)
        if self._carried.kind is CarriedKind.BATCH:
            trays.remove(Tray.RESTING)  # the vessels where cultures rest are listed themselves
        targets += [Target(tray=tray) for tray in trays]
        if self._target is not None:
            targets = [self._target]
        refusals = []
        for target in targets:
            drop = self._drop_at(target)
            if drop.choices:
                self.where.addItem(self._name_of(target), target)
            elif drop.refusal is not None:
                refusals.append(refusal_words(drop, self._desk.quantities.show))
        self.rows["where"].setVisible(self._target is None and self.where.count() > 1)
        if self.where.count() == 0:
            for row in self.rows.values():
                row.hide()
            self.go.setEnabled(False)
            words = dict.fromkeys(refusals)
            text = next(iter(words), "") if self._target is not None else self._nowhere(words)
            self.outcome.say(text, "error")
        self._on_where()

    def _nowhere(self, refusals: Collection[str]) -> str:
        if len(refusals) == 1:
            return next(iter(refusals))
        return self.tr("There is no vessel for this now.")

    def _drop_at(self, target: Target) -> Drop:
        if self._settled is not None:
            drop = choices(self._facts, self._carried, target)
            return Drop(choices=(self._settled,), names=drop.names)
        drop = choices(self._facts, self._carried, target)
        found = tuple(choice for choice in drop.choices if choice.kind in self._kinds)
        return Drop(choices=found, refusal=drop.refusal, names=drop.names)

    def _name_of(self, target: Target) -> str:
        if target.tray is not None:
            return tray_words(target.tray)[0]
        jar = self._facts.jars[target.vessel_id or 0]
        if jar.batch is not None:
            return self.tr("{vessel} · {batch}").format(
                vessel=jar.vessel.name, batch=jar.batch.name
            )
        if jar.resting:
            return self.tr("{vessel} · {batch}").format(
                vessel=jar.vessel.name, batch=jar.resting[0].name
            )
        return jar.vessel.name

    def drop(self) -> Drop:
        """What can be done at the target chosen."""
        target = self.where.currentData()
        return Drop() if target is None else self._drop_at(target)

    def choice(self) -> Choice | None:
        """What is chosen."""
        found: Choice | None = self.what.currentData()
        return found

    def _on_where(self) -> None:
        drop = self.drop()
        self.what.blockSignals(True)
        self.what.clear()
        for choice in drop.choices:
            self.what.addItem(choice_words(choice, drop.names).rstrip("…"), choice)
        self.what.blockSignals(False)
        self.rows["what"].setVisible(self._settled is None and len(drop.choices) > 1)
        self._on_what()

    def _on_what(self) -> None:
        choice = self.choice()
        self._show_rows(choice)
        if choice is not None:
            names = self.drop().names
            if not self._title:
                self.heading.setText(self._heading(choice))
            self.setWindowTitle(self.heading.text())
            detail = choice_detail(choice, names, self._desk.quantities.show)
            self.rows["what"].set_hint(detail)
            self.go.setText(choice_words(choice, names).rstrip("…"))
            self.volume.set_value(choice.usual_l)
            if choice.kind in _OPTIONAL_AMOUNT:
                self.volume.set_value(None)
                self.volume.set_placeholder(self.tr("may stay empty"))
            self.outcome.say("")
        self._refresh()

    def _heading(self, choice: Choice) -> str:
        names = self.drop().names
        words = choice_words(choice, names).rstrip("…")
        target = self.where.currentText()
        if choice.target.tray is Tray.BOTTLES or choice.kind is ChoiceKind.REST:
            return words
        if names["carried"] in words:
            return self.tr("{what}, into {target}").format(what=words, target=target)
        return self.tr("{what}: {carried} to {target}").format(
            what=words, carried=names["carried"], target=target
        )

    def _show_rows(self, choice: Choice | None) -> None:
        kind = choice.kind if choice is not None else None
        self.rows["volume"].setVisible(kind in _WITH_AMOUNT)
        self.rows["pellicle"].setVisible(kind is ChoiceKind.SPLIT_CULTURE)
        joins = choice is not None and choice.may_join_cultures
        self.rows["name"].setVisible(kind is ChoiceKind.SPLIT_CULTURE or joins)
        self.rows["name"].label.setText(
            self.tr("One name for both cultures, if they shall be one (may stay empty)")
            if joins
            else self.tr("Name of the daughter")
        )
        self.rows["volume"].label.setText(
            self.tr("Liquid it rests in (may stay empty)")
            if kind is ChoiceKind.SPLIT_CULTURE
            else self.tr("How much")
        )
        self._fill(self.store, self._stores(choice))
        self._fill(self.resting, self._vessels(choice))
        self.rows["store"].setVisible(self.store.count() > 1)
        self.rows["vessel"].setVisible(self.resting.count() > 0)
        self._show_verdict(choice)

    def _stores(self, choice: Choice | None) -> list[tuple[str, int]]:
        ids = choice.store_ids if choice is not None else ()
        return [(self._facts.cultures[store_id].name, store_id) for store_id in ids]

    def _vessels(self, choice: Choice | None) -> list[tuple[str, int]]:
        ids = choice.vessel_ids if choice is not None else ()
        return [(self._facts.jars[vessel_id].vessel.name, vessel_id) for vessel_id in ids]

    def _fill(self, combo: QComboBox, entries: list[tuple[str, int]]) -> None:
        combo.blockSignals(True)
        combo.clear()
        for name, row_id in entries:
            combo.addItem(name, row_id)
        combo.blockSignals(False)

    def _show_verdict(self, choice: Choice | None) -> None:
        while (item := self._verdicts.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        drawn = (ChoiceKind.FILL_BOTTLES, ChoiceKind.DRAW_PART, ChoiceKind.DRAW_OFF)
        if choice is not None and choice.kind in drawn and choice.from_batch_id is not None:
            verdict = self._desk.batches.drinkable_verdict(choice.from_batch_id)
            self._verdicts.addWidget(VerdictCard(verdict, self, show=self._desk.quantities.show))

    # --- amounts -----------------------------------------------------------------------

    def _refresh(self) -> None:
        choice = self.choice()
        if choice is None:
            self.balance.setText("")
            return
        volume_l = self.volume.value() if choice.kind in _WITH_AMOUNT else None
        self.balance.setText(
            " ".join(
                part
                for part in (
                    self._suggestion(choice),
                    balance_words(
                        self._desk, self._facts, choice, volume_l, self.store.currentData()
                    ),
                    blend_words(self._desk, choice, volume_l),
                )
                if part
            )
        )
        self.balance.setVisible(bool(self.balance.text()))
        self.resize(self.width(), self.sizeHint().height())

    def _suggestion(self, choice: Choice) -> str:
        jar = self._facts.jar_of_batch(choice.from_batch_id or 0)
        if choice.kind is not ChoiceKind.KEEP or jar is None:
            return ""
        found = self._desk.liquids.starter_suggestion(jar.vessel.id)
        return suggestion_words(found.volume_l, found.plan_name, self._desk.quantities.show)

    def _answers(self, choice: Choice) -> Answers:
        pellicle_cm = self.pellicle.value()
        return Answers(
            volume_l=self.volume.value() if choice.kind in _WITH_AMOUNT else None,
            name=self.name.text(),
            pellicle_mm=None if pellicle_cm is None else 10.0 * pellicle_cm,
            vessel_id=self.resting.currentData(),
            store_id=self.store.currentData(),
        )

    def _on_go(self) -> None:
        choice = self.choice()
        if choice is None:
            return
        if choice.kind is ENDS_BATCH and choice.from_batch_id is not None:
            self.accept()
            self.end_wanted.emit(choice.from_batch_id)
            return
        if choice.kind is FILLS_BOTTLES and choice.from_batch_id is not None:
            self.accept()
            self.bottle_wanted.emit(choice.from_batch_id)
            return
        for row in self.rows.values():
            row.set_problem("")
        self.outcome.say("")
        needs_volume = choice.kind in _WITH_AMOUNT - _OPTIONAL_AMOUNT
        if not self.volume.is_valid() and (needs_volume or self.volume.text().strip()):
            self.volume.point_out()
            self.volume.line.setFocus()
            return
        try:
            self._desk.carrying.perform(choice, self._answers(choice))
        except ImpossibleInput as problem:
            self._show_problem(problem)
            return
        except StepShut as shut:
            words = verdict_words(shut.verdict, self._desk.quantities.show)
            self.outcome.say(f"{words.fact} {words.what_to_do}", "error")
            return
        except StoreTrouble as trouble:
            self.outcome.say(trouble_words(trouble), "error")
            return
        self.accept()
        self.done_with.emit()

    def _show_problem(self, problem: ImpossibleInput) -> None:
        text = impossible_words(problem, self._desk.quantities.show)
        row = self.rows.get(_FIELD_OF.get(problem.field, ""))
        if row is None or not row.isVisible():
            self.outcome.say(text, "error")
            return
        row.set_problem(text)
        row.focus_widget.setFocus()
