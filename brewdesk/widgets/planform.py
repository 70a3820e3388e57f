"""What the maker wishes for a batch: the left half of the plan page.

Holds entries only. What a wish amounts to is reckoned by the page.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QComboBox,
    QGridLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Batch,
    Kind,
    Starter,
    StarterTaste,
    TeaKind,
    Wish,
)
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.cultureentry import CultureEntry
from brewdesk.widgets.fields import Disclosure, FieldRow, card, choose, plain_label
from brewdesk.widgets.plandefaults import first_culture, first_wish, free_vessels
from brewdesk.widgets.planstores import PlanStores
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.teastrength import TeaStrengthEdit
from brewdesk.widgets.theme import SPACE

NAME_MAX = 60
# Figures that belong to the vessel, its place and the settings, and follow them.
_FOLLOWED = ("fill_volume_l", "place_temperature_c", "culture_limit_c")
_EXACT = (
    "water_alkalinity_meq_per_l",
    "hot_water_c",
    "cold_water_c",
    "culture_limit_c",
    "place_temperature_c",
    "starter_volume_l",
    "bag_g",
)


class PlanForm(QWidget):
    """Vessel, name and wish. ``changed`` fires after every change of any entry."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._batch: Batch | None = None  # the plan being changed, if any
        self._base: Wish | None = None
        self._is_filling = False
        self._make_fields()
        self._lay_out()
        self._connect()

    # making

    def _make_fields(self) -> None:
        self.vessel = _combo("plan_vessel", self)
        self.name = QLineEdit(self)
        self.name.setObjectName("plan_name")
        self.name.setMaxLength(NAME_MAX)
        self._name_given = ""  # the suggestion, as long as nothing else was typed
        self.tea_kind = _combo("plan_tea_kind", self)
        for tea in TeaKind:
            self.tea_kind.addItem(name_of(tea), tea)
        self.tea = TeaStrengthEdit(self._desk.quantities, 2.0, self)
        self.tea.line.setObjectName("plan_tea")
        self.culture = CultureEntry(self._desk, self)
        self.stores = PlanStores(self._desk, self)
        self.taste = _combo("plan_starter_taste", self)
        self.taste.addItem(self.tr("Not tasted"), None)
        for taste in StarterTaste:
            self.taste.addItem(name_of(taste), taste)
        self._quantities: dict[str, QuantityEdit] = {}
        for field, kind, required in (
            ("fill_volume_l", Kind.VOLUME, True),
            ("sugar_g_per_l", Kind.SUGAR, True),
            ("target_start_ph", Kind.PH, True),
            ("starter_ph", Kind.PH, False),
            ("starter_ta_g_per_l", Kind.ACIDITY, False),
            ("starter_volume_l", Kind.VOLUME, False),
            ("water_alkalinity_meq_per_l", Kind.ALKALINITY, True),
            ("hot_water_c", Kind.TEMPERATURE, True),
            ("cold_water_c", Kind.TEMPERATURE, True),
            ("culture_limit_c", Kind.TEMPERATURE, True),
            ("place_temperature_c", Kind.TEMPERATURE, True),
            ("bag_g", Kind.MASS, True),
        ):
            edit = QuantityEdit(self._desk.quantities, kind, self, required=required)
            edit.line.setObjectName(f"plan_{field}")
            self._quantities[field] = edit
        for field in ("starter_ph", "starter_ta_g_per_l"):
            self._quantities[field].set_placeholder(self.tr("not known"))
        self._quantities["starter_volume_l"].set_placeholder(self.tr("as reckoned"))

    def _lay_out(self) -> None:
        edits = self._quantities
        tr = self.tr
        self.rows = {
            "vessel_id": FieldRow(tr("&Vessel"), self.vessel, self),
            "name": FieldRow(tr("&Name of the batch"), self.name, self),
            "fill_volume_l": FieldRow(tr("&Fill"), edits["fill_volume_l"], self),
            "sugar_g_per_l": FieldRow(tr("&Sugar in the sweet tea"), edits["sugar_g_per_l"], self),
            "tea_g_per_l": FieldRow(tr("Tea st&rength"), self.tea, self),
            "tea_kind": FieldRow(tr("&Tea"), self.tea_kind, self),
            "target_start_ph": FieldRow(tr("p&H to start at"), edits["target_start_ph"], self),
            "starter_taste": FieldRow(tr("Starter tastes"), self.taste, self),
            "starter_ph": FieldRow(tr("Its pH, if you know"), edits["starter_ph"], self),
            "starter_ta_g_per_l": FieldRow(
                tr("Its acidity, if you know"), edits["starter_ta_g_per_l"], self
            ),
            "water_alkalinity_meq_per_l": FieldRow(
                tr("Water alkalinity"), edits["water_alkalinity_meq_per_l"], self
            ),
            "hot_water_c": FieldRow(tr("Hot water at"), edits["hot_water_c"], self),
            "cold_water_c": FieldRow(tr("Cold water at"), edits["cold_water_c"], self),
            "culture_limit_c": FieldRow(
                tr("Warmest for the culture"), edits["culture_limit_c"], self
            ),
            "starter_volume_l": FieldRow(tr("Amount of starter"), edits["starter_volume_l"], self),
            "place_temperature_c": FieldRow(
                tr("Temperature of the place"), edits["place_temperature_c"], self
            ),
            "bag_g": FieldRow(tr("Tea in one bag"), edits["bag_g"], self),
            "culture_id": self.culture.row,
            **self.stores.rows,
        }
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self._batch_card())
        column.addWidget(self._starter_card())
        column.addWidget(self._exact_card())
        column.addStretch(1)
        self._order_tabs()

    def _batch_card(self) -> QWidget:
        frame, column = card(self)
        grid = _grid()
        grid.addWidget(self.rows["vessel_id"], 0, 0)
        grid.addWidget(self.rows["name"], 0, 1)
        grid.addWidget(self.rows["fill_volume_l"], 1, 0)
        grid.addWidget(self.rows["sugar_g_per_l"], 1, 1)
        grid.addWidget(self.rows["tea_kind"], 2, 0)
        grid.addWidget(self.rows["tea_g_per_l"], 2, 1)
        grid.addWidget(self.stores, 3, 0, 1, 2)
        column.addLayout(grid)
        _end_with_messages(column)
        return frame

    def _starter_card(self) -> QWidget:
        frame, column = card(self)
        column.addWidget(plain_label(self.tr("Culture and starter liquid"), "heading", self))
        grid = _grid(3)
        grid.addWidget(self.culture, 0, 0, 1, 2)
        grid.addWidget(self.rows["target_start_ph"], 0, 2)
        grid.addWidget(self.culture.form, 1, 0, 1, 3)
        grid.addWidget(self.rows["starter_taste"], 2, 0)
        grid.addWidget(self.rows["starter_ph"], 2, 1)
        grid.addWidget(self.rows["starter_ta_g_per_l"], 2, 2)
        column.addLayout(grid)
        _end_with_messages(column)
        return frame

    def _exact_card(self) -> QWidget:
        self.exact = Disclosure(self.tr("Exact: water, temperatures, own amounts"), self)
        self.exact.button.setObjectName("plan_exact")
        grid = _grid(3)
        for index, field in enumerate(_EXACT):
            grid.addWidget(self.rows[field], index // 3, index % 3)
        self.exact.body.setLayout(grid)
        grid.setContentsMargins(SPACE, 0, SPACE, 0)
        return self.exact

    def _order_tabs(self) -> None:
        """Let Tab walk as the eye does.

        Whole entries are put in order, not the lines in them: a container that stays
        behind hands the keyboard to its line, from wherever it stands.
        """
        edits = self._quantities
        walk: list[QWidget] = [
            self.vessel,
            self.name,
            edits["fill_volume_l"],
            edits["sugar_g_per_l"],
            self.tea_kind,
            self.tea.entry,
            self.tea.units.button(False),
            self.tea.units.button(True),
            *self.stores.combos.values(),
            self.culture.combo,
            self.culture.new,
            edits["target_start_ph"],
            self.culture.name,
            self.culture.origin,
            self.culture.keep,
            self.taste,
            edits["starter_ph"],
            edits["starter_ta_g_per_l"],
            self.exact.button,
            *(edits[field] for field in _EXACT),
        ]
        for before, after in pairwise(walk):
            QWidget.setTabOrder(before, after)

    def _connect(self) -> None:
        for edit in self._edits():
            edit.value_changed.connect(self._on_entry)
        self.vessel.currentIndexChanged.connect(self._on_vessel)
        self.tea_kind.currentIndexChanged.connect(self._on_tea_kind)
        self.taste.currentIndexChanged.connect(self._on_entry)
        self.name.textChanged.connect(self._on_name)
        self.culture.changed.connect(self._on_entry)
        self.stores.changed.connect(self._on_entry)
        self._quantities["bag_g"].value_changed.connect(self._on_bag)

    # filling

    def reload(self) -> None:
        """Read vessels and cultures anew; choices and typed text stay."""
        chosen = self.vessel_id()
        show = self._desk.quantities.show
        was_filling, self._is_filling = self._is_filling, True
        self.vessel.clear()
        own = None if self._batch is None else self._batch.vessel_id
        for vessel in free_vessels(self._desk, own):
            words = self.tr("{name} – {volume}").format(
                name=vessel.name, volume=show(vessel.working_volume_l, Kind.VOLUME)
            )
            self.vessel.addItem(words, vessel.id)
        choose(self.vessel, chosen)
        self._is_filling = was_filling
        self.culture.reload()
        self.stores.reload()
        if self.vessel_id() != chosen:
            self._fill_for_vessel()
        elif chosen is not None:
            self._follow_vessel(chosen)

    def begin(self, vessel_id: int | None = None) -> None:
        """Begin a new plan, for ``vessel_id`` if given, as the last batch was planned."""
        self._batch = None
        self.culture.own_plan = None
        self.reload()
        choose(self.vessel, vessel_id)
        self._forget_typing()
        self._fill_for_vessel()
        self.stores.begin(None, self._tea_kind())

    def begin_edit(self, batch: Batch) -> None:
        """Fill the form with a plan to be changed."""
        self._batch = batch
        self.culture.own_plan = batch
        self.reload()
        wish = self._desk.batches.wish_of(batch)
        self._is_filling = True
        choose(self.vessel, batch.vessel_id)
        self._is_filling = False
        self._forget_typing()
        self._fill(wish)
        self.name.setText(batch.name)
        self.culture.choose(batch.culture_id)
        self.stores.begin(batch, batch.tea_kind)

    def choose_vessel(self, vessel_id: int) -> None:
        """Choose a vessel; what was typed elsewhere stays."""
        self.reload()
        choose(self.vessel, vessel_id)

    def _forget_typing(self) -> None:
        self._name_given = ""
        self.name.clear()
        self.culture.is_chosen_by_hand = False
        for row in self.rows.values():
            row.set_problem("")
        for edit in self._edits():
            edit.set_value(None)

    def _fill_for_vessel(self) -> None:
        """Put in what a plan for the chosen vessel begins with, but over nothing typed."""
        vessel_id = self.vessel_id()
        if vessel_id is None:
            self._base = None
            self._on_entry()
            return
        self._fill(first_wish(self._desk, vessel_id))
        if not self.culture.is_chosen_by_hand:
            self.culture.suggest(first_culture(self._desk, vessel_id))

    def _follow_vessel(self, vessel_id: int) -> None:
        """Take over what was changed at the vessel, its place or the settings meanwhile."""
        if self._base is None:
            return
        now = self._desk.batches.default_wish(vessel_id)
        self._base = replace(self._base, working_volume_l=now.working_volume_l)
        if self._batch is not None:
            return
        for field in _FOLLOWED:
            edit = self._quantities[field]
            if not edit.is_touched():
                edit.set_value(getattr(now, field))

    def _fill(self, wish: Wish) -> None:
        self._base = wish
        self._is_filling = True
        for field, edit in self._quantities.items():
            if edit.is_touched():
                continue
            source = wish.starter if field in ("starter_ph", "starter_ta_g_per_l") else wish
            name = field.removeprefix("starter_") if source is wish.starter else field
            edit.set_value(getattr(source, name))
        self.tea.set_bag(self._bag_g())
        if not self.tea.is_touched():
            self.tea.set_value(wish.tea_g_per_l)
        choose(self.tea_kind, wish.tea_kind)
        choose(self.taste, wish.starter.taste)
        self._is_filling = False
        self._suggest_name()
        self._on_entry()

    def _suggest_name(self) -> None:
        if self._batch is None and self.name.text() == self._name_given:
            self._name_given = self._desk.batches.suggested_name(self._tea_kind())
            self.name.setText(self._name_given)

    # reading

    def vessel_id(self) -> int | None:
        """Return the chosen vessel, or None when there is none to choose."""
        data = self.vessel.currentData()
        return None if data is None else int(data)

    def culture_id(self) -> int | None:
        """Return the chosen culture; None is starter liquid alone."""
        return self.culture.value()

    def batch_name(self) -> str:
        """Return the name as typed, without the space around it."""
        return self.name.text().strip()

    def editing(self) -> Batch | None:
        """Return the plan being changed, or None for a new one."""
        return self._batch

    def wish(self) -> Wish | None:
        """Return what the entries say, or None while one of them cannot be read."""
        if self._base is None or not self.is_readable():
            return None
        values: dict[str, Any] = {f: edit.value() for f, edit in self._quantities.items()}
        values["tea_g_per_l"] = self.tea.value()
        starter = Starter(
            ph=values.pop("starter_ph"),
            ta_g_per_l=values.pop("starter_ta_g_per_l"),
            taste=self.taste.currentData(),
        )
        return replace(
            self._base,
            **values,
            tea_kind=self._tea_kind(),
            starter=starter,
        )

    def is_readable(self) -> bool:
        """Whether every entry can be read."""
        return all(edit.is_valid() for edit in self._edits())

    def point_out(self) -> bool:
        """Say beside each field what is wrong with it; go to the first; True if all is well."""
        bad: list[str] = []
        for field, row in self.rows.items():
            edit = row.editor
            if isinstance(edit, QuantityEdit | TeaStrengthEdit) and not edit.point_out():
                bad.append(field)
        if not self.batch_name():
            self.rows["name"].set_problem(self.tr("Give the batch a name."))
            bad.insert(0, "name")
        if bad:
            self._go_to(bad[0])
        return not bad

    def set_problem(self, field: str, words: str, *, go_there: bool = False) -> bool:
        """Show a problem beside its field; False if there is no such field here."""
        row = self.rows.get(_ALIASES.get(field, field))
        if row is None:
            return False
        row.set_problem(words)
        if go_there:
            self._go_to(_ALIASES.get(field, field))
        return True

    def clear_problems(self) -> None:
        """Take back the problems shown by ``set_problem``."""
        for row in self.rows.values():
            row.set_problem("")
        self.culture.hint()
        self.stores.show_needs(None)

    def refresh_units(self) -> None:
        """Show untouched amounts in the unit the maker has chosen since."""
        for edit in self._edits():
            edit.refresh_unit()
        self.reload()

    def _go_to(self, field: str) -> None:
        row = self.rows[field]
        if self.exact.isAncestorOf(row):
            self.exact.set_open(True)
        row.focus_widget.setFocus()

    def _edits(self) -> list[QuantityEdit | TeaStrengthEdit]:
        return [*self._quantities.values(), self.tea]

    def _tea_kind(self) -> TeaKind:
        return TeaKind(self.tea_kind.currentData())

    def _bag_g(self) -> float:
        return self._quantities["bag_g"].value() or 2.0

    # what happens

    def _on_entry(self, _value: object = None) -> None:
        if not self._is_filling:
            self.changed.emit()

    def _on_vessel(self, _index: int) -> None:
        if not self._is_filling:
            self._fill_for_vessel()

    def _on_tea_kind(self, _index: int) -> None:
        if not self._is_filling:
            self._suggest_name()
            self.stores.follow_tea(self._tea_kind())
            self.changed.emit()

    def _on_name(self, _text: str) -> None:
        self.rows["name"].set_problem("")
        self._on_entry()

    def _on_bag(self, bag_g: float | None) -> None:
        if bag_g is not None and bag_g > 0.0:
            self.tea.set_bag(bag_g)


# The starter's own fields are told apart from the wish's by their names here.
_ALIASES = {
    "ph": "starter_ph",
    "ta_g_per_l": "starter_ta_g_per_l",
    "taste": "starter_taste",
    "starter": "starter_ph",
    "working_volume_l": "fill_volume_l",
}


def _end_with_messages(column: QVBoxLayout) -> None:
    """Let the space kept for messages serve as the card's lower margin."""
    margins = column.contentsMargins()
    margins.setBottom(0)
    column.setContentsMargins(margins)


def _combo(name: str, parent: QWidget) -> QComboBox:
    combo = QComboBox(parent)
    combo.setObjectName(name)
    combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    combo.setMinimumContentsLength(10)
    return combo


def _grid(columns: int = 2) -> QGridLayout:
    grid = QGridLayout()
    grid.setHorizontalSpacing(2 * SPACE)
    grid.setVerticalSpacing(SPACE // 2)
    for column in range(columns):
        grid.setColumnStretch(column, 1)
        grid.setColumnMinimumWidth(column, 10 * SPACE)
    return grid
