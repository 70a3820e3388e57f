"""What the maker wishes to bottle: the left half of the bottle page. Holds entries only."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QGridLayout,
    QLineEdit,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.bottlingwish import BottlingWish
from brewdesk.services.desk import Desk
from brewdesk.services.records import Kind, StoreTrouble, SugarKind, SupplyKind
from brewdesk.services.wording.bottlings import volumes_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.bottleadditions import BottleAdditions
from brewdesk.widgets.bottlegroups import TEST, BottleGroups
from brewdesk.widgets.bottlestock import (
    StockHints,
    bottles,
    flavourings,
    in_usual_bottles,
    offer_stock,
)
from brewdesk.widgets.fields import Disclosure, FieldRow, card, choose, plain_label
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE, TOUCH
from brewdesk.widgets.wheelpass import pass_wheel_on

NAME_MAX = 80
_LEAST_TENTHS, _MOST_TENTHS = 10, 40  # volumes of the slider
_QUANTITIES = (
    ("drink_volume_l", Kind.VOLUME, False),
    ("starter_kept_l", Kind.VOLUME, False),
    ("priming_sugar_g", Kind.MASS, False),
    ("place_temperature_c", Kind.TEMPERATURE, True),
    ("warmest_c", Kind.TEMPERATURE, True),
    ("residual_sugar_low_g_per_l", Kind.SUGAR, False),
    ("residual_sugar_high_g_per_l", Kind.SUGAR, False),
    ("open_jar_c", Kind.TEMPERATURE, True),
)


class BottleForm(QWidget):
    """Batch, amounts, bottles, additions, fizz and place. ``changed`` after every change."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._is_filling = False
        self._base: BottlingWish | None = None
        self._make_fields()
        self._lay_out()
        self._connect()

    # making

    def _make_fields(self) -> None:
        desk, tr = self._desk, self.tr
        self.batch = _combo("bottle_batch", self)
        self.name = QLineEdit(self)
        self.name.setObjectName("bottle_name")
        self.name.setMaxLength(NAME_MAX)
        self.edits: dict[str, QuantityEdit] = {}
        for field, kind, required in _QUANTITIES:
            edit = QuantityEdit(desk.quantities, kind, self, required=required, lines=1)
            edit.line.setObjectName(f"bottle_{field}")
            self.edits[field] = edit
        for field, words in (
            ("drink_volume_l", tr("what fits, less the starter")),
            ("starter_kept_l", tr("none")),
            ("priming_sugar_g", tr("as reckoned")),
            ("residual_sugar_low_g_per_l", tr("as forecast")),
            ("residual_sugar_high_g_per_l", tr("as forecast")),
        ):
            self.edits[field].set_placeholder(words)
        self.starter_to = _combo("bottle_starter_to", self)
        self.closes = QCheckBox(tr("The jar is emptied, and the batch is over"), self)
        self.closes.setObjectName("bottle_closes")
        self.groups = BottleGroups(desk.quantities, self)
        self.additions = BottleAdditions(desk.quantities, self)
        self.fizz = QSlider(Qt.Orientation.Horizontal, self)
        self.fizz.setObjectName("bottle_fizz")
        self.fizz.setRange(_LEAST_TENTHS, _MOST_TENTHS)
        self.fizz.setPageStep(5)
        self.fizz.setMinimumHeight(TOUCH - SPACE)
        pass_wheel_on(self.fizz)
        self.priming_kind = _combo("bottle_priming_kind", self)
        for sugar in SugarKind:
            self.priming_kind.addItem(name_of(sugar), sugar)
        self.priming_supply = _combo("bottle_priming_supply", self)
        self.closures = _combo("bottle_closures", self)
        self.hints = StockHints(desk)
        self.place = _combo("bottle_place", self)
        self.note = QLineEdit(self)
        self.note.setObjectName("bottle_note")

    def _lay_out(self) -> None:
        tr, edits = self.tr, self.edits
        self.rows = {
            "batch_id": FieldRow(tr("From which batch"), self.batch, self, lines=1),
            "name": FieldRow(tr("Name of the bottling"), self.name, self, lines=1),
            "drink_volume_l": FieldRow(tr("Drink to bottle"), edits["drink_volume_l"], self),
            "starter_kept_l": FieldRow(tr("Starter kept back"), edits["starter_kept_l"], self),
            "starter_culture_id": FieldRow(tr("Kept where"), self.starter_to, self, lines=1),
            "target_volumes": FieldRow(tr("How fizzy"), self.fizz, self, lines=1),
            "priming_sugar_g": FieldRow(tr("Sugar in all bottles"), edits["priming_sugar_g"], self),
            "priming_kind": FieldRow(tr("Which sugar"), self.priming_kind, self, lines=1),
            "priming_supply_id": FieldRow(tr("Sugar from"), self.priming_supply, self, lines=1),
            "closure_supply_id": FieldRow(tr("Caps or corks from"), self.closures, self, lines=1),
            "place_id": FieldRow(tr("Where they stand"), self.place, self, lines=1),
            "place_temperature_c": FieldRow(
                tr("Usually, there"), edits["place_temperature_c"], self
            ),
            "warmest_c": FieldRow(tr("At the warmest"), edits["warmest_c"], self),
            "residual_sugar_low_g_per_l": FieldRow(
                tr("Sugar left in the drink, at least"), edits["residual_sugar_low_g_per_l"], self
            ),
            "residual_sugar_high_g_per_l": FieldRow(
                tr("Sugar left in the drink, at most"), edits["residual_sugar_high_g_per_l"], self
            ),
            "open_jar_c": FieldRow(tr("Warmest the jar has been"), edits["open_jar_c"], self),
            "note": FieldRow(tr("Note"), self.note, self, lines=0),
        }
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2 * SPACE)
        column.addWidget(self._section(tr("The drink"), self._drink_grid()))
        column.addWidget(self._heading(tr("The bottles")))
        column.addWidget(self.groups)
        column.addWidget(self._heading(tr("What goes in")))
        column.addWidget(self.additions)
        column.addWidget(self._section(tr("The fizz"), self._fizz_grid()))
        column.addWidget(self._section(tr("Where they stand"), self._place_grid()))
        self.more = Disclosure(tr("More to set"), self)
        self.more.body.setLayout(self._more_grid())
        column.addWidget(self.more)

    def _heading(self, words: str) -> QWidget:
        return plain_label(words, "heading", self)

    def _section(self, words: str, grid: QGridLayout) -> QWidget:
        frame, column = card(self)
        column.addWidget(plain_label(words, "heading", self))
        column.addLayout(grid)
        return frame

    def _drink_grid(self) -> QGridLayout:
        grid = _grid()
        grid.addWidget(self.rows["batch_id"], 0, 0)
        grid.addWidget(self.rows["name"], 0, 1)
        grid.addWidget(self.rows["drink_volume_l"], 1, 0)
        grid.addWidget(self.rows["starter_kept_l"], 1, 1)
        grid.addWidget(self.closes, 2, 0, Qt.AlignmentFlag.AlignVCenter)
        grid.addWidget(self.rows["starter_culture_id"], 2, 1)
        return grid

    def _fizz_grid(self) -> QGridLayout:
        grid = _grid()
        grid.addWidget(self.rows["target_volumes"], 0, 0, 1, 2)
        grid.addWidget(self.rows["priming_sugar_g"], 1, 0)
        grid.addWidget(self.rows["priming_kind"], 1, 1)
        grid.addWidget(self.rows["priming_supply_id"], 2, 0)
        grid.addWidget(self.rows["closure_supply_id"], 2, 1)
        return grid

    def _place_grid(self) -> QGridLayout:
        grid = _grid()
        grid.addWidget(self.rows["place_id"], 0, 0, 1, 2)
        grid.addWidget(self.rows["place_temperature_c"], 1, 0)
        grid.addWidget(self.rows["warmest_c"], 1, 1)
        return grid

    def _more_grid(self) -> QGridLayout:
        grid = _grid()
        grid.addWidget(self.rows["residual_sugar_low_g_per_l"], 0, 0)
        grid.addWidget(self.rows["residual_sugar_high_g_per_l"], 0, 1)
        grid.addWidget(self.rows["open_jar_c"], 1, 0)
        grid.addWidget(self.rows["note"], 1, 1)
        return grid

    def _connect(self) -> None:
        self.batch.activated.connect(self._on_batch)
        self.place.activated.connect(self._on_place)
        self.fizz.valueChanged.connect(self._on_fizz)
        for edit in self.edits.values():
            edit.value_changed.connect(self._on_entry)
        for combo in (self.starter_to, self.priming_kind, self.priming_supply, self.closures):
            combo.currentIndexChanged.connect(self._on_entry)
        self.closes.toggled.connect(self._on_entry)
        self.name.textChanged.connect(self._on_entry)
        self.groups.changed.connect(self._on_entry)
        self.additions.changed.connect(self._on_entry)

    # what it holds

    def batch_id(self) -> int | None:
        """Return the batch chosen."""
        found = self.batch.currentData()
        return found if isinstance(found, int) else None

    def begin(self, batch_id: int | None = None) -> None:
        """Begin anew, with a batch or the first there is; what stood here is dropped."""
        self.refresh_choices()
        if batch_id is not None:
            choose(self.batch, batch_id)
        self._start_from_batch()

    def refresh_choices(self) -> None:
        """Offer the batches, places and stores there are now; what is chosen stays."""
        self._is_filling = True
        try:
            _refill(
                self.batch,
                [(batch.name, batch.id) for batch in self._desk.bottlings.candidates()],
            )
            stores = [(store.name, store.id) for store in self._desk.liquids.stores()]
            here = (self.tr("In the jar, with its culture"), None)
            _refill(self.starter_to, [here, *stores])
            places = [(place.name, place.id) for place in self._desk.vessels.places()]
            _refill(self.place, places)
            for combo, field, kind in (
                (self.priming_supply, "priming_supply_id", SupplyKind.SUGAR),
                (self.closures, "closure_supply_id", SupplyKind.CLOSURE),
            ):
                offer_stock(self._desk, combo, kind)
                self.rows[field].setVisible(combo.count() > 1)
            self.groups.offer_stock(bottles(self._desk))
            self.additions.stock = flavourings(self._desk)
        finally:
            self._is_filling = False

    def refresh_units(self) -> None:
        """Show amounts in the units in use."""
        for edit in self.edits.values():
            edit.refresh_unit()

    def wish(self) -> BottlingWish | None:
        """Return the wish as it stands; None while an entry cannot be read."""
        batch_id, groups = self.batch_id(), self.groups.groups()
        additions = self.additions.additions()
        unread = any(not edit.is_valid() for edit in self.edits.values())
        if self._base is None or batch_id is None or groups is None or additions is None or unread:
            return None
        values = {field: edit.value() for field, edit in self.edits.items()}
        place_id = self.place.currentData()
        store = self.starter_to.currentData()
        return replace(
            self._base,
            batch_id=batch_id,
            name=self.name.text(),
            groups=groups,
            additions=additions,
            drink_volume_l=values["drink_volume_l"],
            target_volumes=self.fizz.value() / 10.0,
            priming_kind=SugarKind(self.priming_kind.currentData()),
            priming_sugar_g=values["priming_sugar_g"],
            priming_supply_id=self.priming_supply.currentData(),
            closure_supply_id=self.closures.currentData(),
            residual_sugar_low_g_per_l=values["residual_sugar_low_g_per_l"],
            residual_sugar_high_g_per_l=values["residual_sugar_high_g_per_l"],
            place_id=place_id if isinstance(place_id, int) else None,
            place_temperature_c=_given(values["place_temperature_c"], 22.0),
            warmest_c=_given(values["warmest_c"], 28.0),
            open_jar_c=_given(values["open_jar_c"], 22.0),
            starter_kept_l=_given(values["starter_kept_l"], 0.0),
            starter_culture_id=store if isinstance(store, int) else None,
            closes_batch=self.closes.isChecked(),
            note=self.note.text(),
        )

    def point_out(self) -> bool:
        """Say beside each entry what is wrong with it; return whether all can be read."""
        fine = [edit.point_out() for edit in self.edits.values()]
        fine += [row.brim.point_out() for row in self.groups.rows]
        fine += [row.mass.point_out() for row in self.additions.rows]
        for row in self.additions.rows:
            if row.choice() is None and not row.name.text().strip():
                row.rows["name"].set_problem(self.tr("Please give it a name."))
                fine.append(False)
        return all(fine)

    def set_problem(self, field: str, words: str, *, go_there: bool = False) -> bool:
        """Say ``words`` beside the entry they belong to; False if it has none."""
        row = self.rows.get(field)
        if row is None:
            return self.groups.set_problem(field, words) or self.additions.set_problem(field, words)
        if field in ("residual_sugar_low_g_per_l", "residual_sugar_high_g_per_l", "open_jar_c"):
            self.more.set_open(True)
        row.set_problem(words)
        if go_there:
            row.focus_widget.setFocus()
        return True

    def show_stock(self, priming_sugar_g: float) -> None:
        """Say beside the choices whether the stores hold enough; it stops nothing."""
        self.hints.begin()
        for row in self.groups.rows:
            group = row.group()
            if group is not None:
                self.hints.tell(row.rows["source"], group.supply_id, float(group.bottle_count))
        for addition_row in self.additions.rows:
            addition = addition_row.addition()
            if addition is not None:
                self.hints.tell_addition(addition_row.rows["what"], addition)
        count = sum(group.bottle_count for group in self.groups.groups() or ())
        closures = self.closures.currentData()
        self.hints.tell(self.rows["closure_supply_id"], closures, float(count))
        chosen = self.priming_supply.currentData()
        self.hints.tell(self.rows["priming_supply_id"], chosen, priming_sugar_g)

    def clear_problems(self) -> None:
        """Take back what was said beside the entries."""
        for field, row in self.rows.items():
            if field not in ("target_volumes", "note"):
                row.set_problem("")
        self.groups.clear_problems()
        self.additions.clear_problems()

    # what happens

    def _start_from_batch(self) -> None:
        """Take over what is known of the chosen batch."""
        batch_id = self.batch_id()
        if batch_id is None:
            self._base = None
            return
        try:
            self._base = base = self._desk.bottlings.wish_for(batch_id)
        except StoreTrouble:  # it was taken back meanwhile
            self._base = None
            return
        suggestion = self._desk.liquids.suggested_starter_l(
            self._desk.batches.get(batch_id).vessel_id
        )
        self._is_filling = True
        try:
            self.name.setText(base.name)
            for field, edit in self.edits.items():
                edit.set_value(getattr(base, field))
            self.edits["starter_kept_l"].set_value(suggestion or None)
            self.starter_to.setCurrentIndex(0)
            # without a culture nothing could keep the starter in an emptied jar
            keeps = self._desk.bottlings.may_keep_in_jar(batch_id)
            self.closes.setChecked(keeps or not suggestion)
            group = in_usual_bottles(self._desk, base.groups[0])
            count = max(group.bottle_count - 1, 1)
            self.groups.set_groups((replace(group, bottle_count=count), TEST))
            self.additions.clear()
            self.fizz.setValue(round(10.0 * base.target_volumes))
            choose(self.priming_kind, base.priming_kind)
            choose(self.priming_supply, self._desk.stores.usual(SupplyKind.SUGAR))
            # swing tops need no caps, so having some is no reason to take them
            caps = self._desk.stores.usual(SupplyKind.CLOSURE, only_used=True)
            choose(self.closures, caps)
            choose(self.place, base.place_id)
            self.note.clear()
        finally:
            self._is_filling = False
        self._show_fizz()
        self.changed.emit()

    def _on_batch(self, _index: int) -> None:
        self._start_from_batch()

    def _on_place(self, _index: int) -> None:
        """Take the usual temperature of another place, and keep the margin above it."""
        place_id = self.place.currentData()
        place = next((one for one in self._desk.vessels.places() if one.id == place_id), None)
        usual, warmest = self.edits["place_temperature_c"], self.edits["warmest_c"]
        if place is not None:
            before, top = usual.value(), warmest.value()
            margin = 5.0 if before is None or top is None else max(top - before, 0.0)
            usual.set_value(place.temperature_c)
            warmest.set_value(min(place.temperature_c + margin, 40.0))
        self._on_entry()

    def _on_fizz(self, _tenths: int) -> None:
        self._show_fizz()
        self._on_entry()

    def _show_fizz(self) -> None:
        words = volumes_words(self.fizz.value() / 10.0)
        self.rows["target_volumes"].set_hint(words)
        self.fizz.setAccessibleDescription(words)

    def _on_entry(self, _value: object = None) -> None:
        if not self._is_filling:
            self.changed.emit()


def _given(value: float | None, usual: float) -> float:
    return usual if value is None else value


def _combo(name: str, parent: QWidget) -> QComboBox:
    combo = QComboBox(parent)
    combo.setObjectName(name)
    combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    combo.setMinimumContentsLength(10)
    return combo


def _refill(combo: QComboBox, entries: Sequence[tuple[str, int | None]]) -> None:
    """Offer ``entries``; the choice stays where it is still offered."""
    chosen = combo.currentData()
    combo.clear()
    for text, data in entries:
        combo.addItem(text, data)
    choose(combo, chosen)


def _grid() -> QGridLayout:
    grid = QGridLayout()
    grid.setContentsMargins(0, 0, 0, 0)
    grid.setHorizontalSpacing(2 * SPACE)
    grid.setVerticalSpacing(SPACE // 2)
    for column in range(2):
        grid.setColumnStretch(column, 1)
    return grid
