"""Put something on the list of the stores, or change what is known of it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDoubleSpinBox,
    QGridLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.additionchoices import addition_choices
from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    AdditionKind,
    BottleKind,
    ImpossibleInput,
    Kind,
    StoreTrouble,
    Supply,
    SupplyDraft,
    SupplyKind,
    SupplyMeasure,
    TeaKind,
)
from brewdesk.services.stockdraws import MEASURES
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.stores import kind_words, measure_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.dialogfit import fit_height, set_letters
from brewdesk.widgets.fields import FieldRow, choose, plain_label
from brewdesk.widgets.plainspin import make_plain
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stockamount import StockReader
from brewdesk.widgets.theme import SPACE

_PERCENT = 100.0
_OF_KIND = {
    "tea_kind": SupplyKind.TEA,
    "known": SupplyKind.FLAVOURING,
    "sugar_share_low": SupplyKind.FLAVOURING,
    "sugar_share_high": SupplyKind.FLAVOURING,
    "bottle_kind": SupplyKind.BOTTLE,
    "brim_volume_l": SupplyKind.BOTTLE,
}


class SupplyDialog(QDialog):
    """One form for all kinds; what a kind does not have is not asked. ``saved`` has the id."""

    saved = Signal(int)

    def __init__(
        self,
        desk: Desk,
        supply: Supply | None = None,
        parent: QWidget | None = None,
        *,
        kind: SupplyKind = SupplyKind.TEA,
        is_used: bool = False,
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._supply = supply
        self.setObjectName("supply_dialog")
        title = self.tr("Add to the stores") if supply is None else self.tr("Change a supply")
        self.setWindowTitle(title)
        set_letters(self, 72)
        self._make_controls()
        self._lay_out(title)
        self.kind.currentIndexChanged.connect(self._on_kind)
        self.measure.currentIndexChanged.connect(self._on_measure)
        self.known.currentIndexChanged.connect(self._on_known)
        self.bottle_kind.currentIndexChanged.connect(self._show_rows)
        choose(self.kind, kind if supply is None else supply.kind)
        self._on_kind()
        self._on_known()
        if supply is not None:
            self._fill(supply)
        for combo in (self.kind, self.measure):
            combo.setEnabled(not is_used)
        if is_used:
            self.rows["measure"].set_hint(self.tr("It stays so: some of it is on record."))

    # --- building --------------------------------------------------------------------

    def _make_controls(self) -> None:
        self.name = _line("supply_name")
        self.kind, self.measure = _combo("supply_kind"), _combo("supply_measure")
        for kind in SupplyKind:
            self.kind.addItem(kind_words(kind), kind)
        self.tea_kind = _combo("supply_tea_kind")
        for tea in TeaKind:
            self.tea_kind.addItem(name_of(tea), tea)
        choose(self.tea_kind, TeaKind.BLACK)
        self.choices = {choice.key: choice for choice in addition_choices()}
        self.known = _combo("supply_known")
        self.known.addItem(self.tr("Please choose"), None)
        for choice in sorted(self.choices.values(), key=lambda one: one.name):
            self.known.addItem(choice.name, choice.key)
        self.known.addItem(self.tr("Something else"), "")
        self.low_share, self.high_share = _percent("supply_low"), _percent("supply_high")
        self.bottle_kind = _combo("supply_bottle_kind")
        for bottle in BottleKind:
            self.bottle_kind.addItem(name_of(bottle), bottle)
        choose(self.bottle_kind, BottleKind.FIZZY_GLASS)
        quantities = self._desk.quantities
        self.brim = QuantityEdit(quantities, Kind.VOLUME, required=False, lines=1)
        self.brim.line.setObjectName("supply_brim")
        self.rated = QDoubleSpinBox()
        self.rated.setObjectName("supply_rated")
        self.rated.setRange(0.0, 30.0)
        self.rated.setDecimals(1)
        self.rated.setSuffix(self.tr(" bar"))
        self.rated.setSpecialValueText(self.tr("not known"))
        make_plain(self.rated)
        self.low = QuantityEdit(
            StockReader(quantities, SupplyMeasure.MASS_G), Kind.MASS, required=False, lines=1
        )
        self.low.line.setObjectName("supply_low_amount")
        self.ingredients, self.allergens = _line("supply_ingredients"), _line("supply_allergens")
        self.note = _line("supply_note")

    def _lay_out(self, title: str) -> None:
        tr = self.tr
        self.rows = {
            "name": FieldRow(tr("&Name"), self.name, lines=1),
            "kind": FieldRow(tr("What it is &for"), self.kind, lines=1),
            "measure": FieldRow(tr("How it is &counted"), self.measure, lines=1),
            "tea_kind": FieldRow(tr("Which &tea"), self.tea_kind, lines=1),
            "known": FieldRow(tr("What it is"), self.known, lines=1),
            "sugar_share_low": FieldRow(tr("Sugar, at least"), self.low_share, lines=1),
            "sugar_share_high": FieldRow(tr("Sugar, at most"), self.high_share, lines=1),
            "bottle_kind": FieldRow(tr("What is known of them"), self.bottle_kind, lines=1),
            "brim_volume_l": FieldRow(tr("Volume to the brim"), self.brim, lines=1),
            "rated_bar": FieldRow(tr("Rating, over the air's"), self.rated, lines=1),
            "low_amount": FieldRow(tr("Note when less is &left than"), self.low, lines=1),
            "ingredients": FieldRow(tr("Ingredients, as on its label"), self.ingredients, lines=1),
            "allergens": FieldRow(tr("Allergens"), self.allergens, lines=1),
            "note": FieldRow(tr("Note"), self.note, lines=1),
        }
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(title, "heading"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(0)
        for key, row, left, span in (
            ("name", 0, 0, 2),
            ("kind", 1, 0, 1),
            ("measure", 1, 1, 1),
            ("tea_kind", 2, 0, 1),
            ("known", 2, 0, 1),
            ("bottle_kind", 2, 0, 1),
            ("low_amount", 2, 1, 1),
            ("sugar_share_low", 3, 0, 1),
            ("sugar_share_high", 3, 1, 1),
            ("brim_volume_l", 3, 0, 1),
            ("rated_bar", 3, 1, 1),
            ("ingredients", 4, 0, 1),
            ("allergens", 4, 1, 1),
            ("note", 5, 0, 2),
        ):
            grid.addWidget(self.rows[key], row, left, 1, span)
        for side in range(2):
            grid.setColumnStretch(side, 1)
        column.addLayout(grid)
        buttons, self.save = go_and_leave(
            self, self.tr("Save"), self.tr("Cancel"), go_name="save_supply"
        )
        self.save.clicked.connect(self._on_save)
        column.addWidget(buttons)

    # --- filling ---------------------------------------------------------------------

    def _fill(self, supply: Supply) -> None:
        self.name.setText(supply.name)
        choose(self.measure, supply.measure)
        choose(self.tea_kind, supply.tea_kind)
        self.known.setCurrentIndex(self.known.findData(""))
        for choice in self.choices.values():
            if choice.kind is supply.addition_kind and choice.name == supply.name:
                choose(self.known, choice.key)
        for spin, share in (
            (self.low_share, supply.sugar_share_low),
            (self.high_share, supply.sugar_share_high),
        ):
            spin.setValue(_PERCENT * (share or 0.0))
        choose(self.bottle_kind, supply.bottle_kind)
        self.brim.set_value(supply.brim_volume_l)
        self.rated.setValue(supply.rated_bar or 0.0)
        self._on_measure()
        self.low.set_value(supply.low_amount)
        self.ingredients.setText(supply.ingredients)
        self.allergens.setText(supply.allergens)
        self.note.setText(supply.note)

    # --- what happens ----------------------------------------------------------------

    def _on_kind(self) -> None:
        kind = SupplyKind(self.kind.currentData())
        chosen = self.measure.currentData()
        self.measure.blockSignals(True)
        self.measure.clear()
        for measure in MEASURES[kind]:
            self.measure.addItem(measure_words(measure), measure)
        choose(self.measure, chosen)
        self.measure.blockSignals(False)
        self._on_measure()
        self._show_rows()

    def _on_measure(self) -> None:
        measure = SupplyMeasure(self.measure.currentData())
        self.low.set_reader(StockReader(self._desk.quantities, measure))

    def _on_known(self) -> None:
        choice = self.choices.get(str(self.known.currentData()))
        if choice is None:
            if self.known.currentData() == "" and not self.high_share.value():
                self.high_share.setValue(_PERCENT)
            return
        self.low_share.setValue(_PERCENT * choice.sugar_share_low)
        self.high_share.setValue(_PERCENT * choice.sugar_share_high)
        names = {one.name for one in self.choices.values()}
        is_flavouring = self.kind.currentData() is SupplyKind.FLAVOURING
        if is_flavouring and self.name.text() in names | {""}:
            self.name.setText(choice.name)

    def _show_rows(self) -> None:
        kind = SupplyKind(self.kind.currentData())
        for field, of_kind in _OF_KIND.items():
            self.rows[field].setVisible(kind is of_kind)
        is_rated = self.bottle_kind.currentData() is BottleKind.RATED
        self.rows["rated_bar"].setVisible(kind is SupplyKind.BOTTLE and is_rated)
        is_food = kind in (SupplyKind.TEA, SupplyKind.SUGAR, SupplyKind.FLAVOURING)
        for field in ("ingredients", "allergens"):
            self.rows[field].setVisible(is_food)
        layout = self.layout()
        if layout is not None and self.isVisible():
            layout.activate()
            self.resize(self.width(), self.sizeHint().height())

    def _draft(self) -> SupplyDraft:
        choice = self.choices.get(str(self.known.currentData()))
        return SupplyDraft(
            name=self.name.text(),
            kind=SupplyKind(self.kind.currentData()),
            measure=SupplyMeasure(self.measure.currentData()),
            tea_kind=self.tea_kind.currentData(),
            addition_kind=AdditionKind.OTHER if choice is None else choice.kind,
            sugar_share_low=self.low_share.value() / _PERCENT,
            sugar_share_high=self.high_share.value() / _PERCENT,
            bottle_kind=self.bottle_kind.currentData(),
            brim_volume_l=self.brim.value(),
            rated_bar=self.rated.value() or None,
            low_amount=self.low.value(),
            ingredients=self.ingredients.text(),
            allergens=self.allergens.text(),
            note=self.note.text(),
        )

    def _on_save(self) -> None:
        for row in self.rows.values():
            row.set_problem("")
        for edit in (self.low, self.brim):
            if not edit.point_out():
                edit.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        is_flavouring = self.kind.currentData() is SupplyKind.FLAVOURING
        if is_flavouring and self.known.currentData() is None:
            # Its sugar decides about the pressure in the bottles: it is not guessed.
            self.rows["known"].set_problem(
                self.tr("Choose what it is, or “Something else” and type its share of sugar.")
            )
            self.known.setFocus(Qt.FocusReason.OtherFocusReason)
            fit_height(self)
            return
        try:
            kept = self._keep(self._draft())
        except ImpossibleInput as problem:
            row = self.rows.get(problem.field, self.rows["name"])
            row.set_problem(impossible_words(problem, self._desk.quantities.show))
            row.focus_widget.setFocus(Qt.FocusReason.OtherFocusReason)
            fit_height(self)
            return
        except StoreTrouble as trouble:
            self.rows["name"].set_problem(trouble_words(trouble))
            return
        self.accept()
        self.saved.emit(kept.id)

    def _keep(self, draft: SupplyDraft) -> Supply:
        if self._supply is None:
            return self._desk.stores.add(draft)
        fields = {
            field: getattr(draft, field)
            for field in SupplyDraft.__dataclass_fields__
            if field != "retired_at"
        }
        return self._desk.stores.edit(self._supply.id, **fields)


def _line(name: str) -> QLineEdit:
    line = QLineEdit()
    line.setObjectName(name)
    return line


def _combo(name: str) -> QComboBox:
    combo = QComboBox()
    combo.setObjectName(name)
    combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    combo.setMinimumContentsLength(10)
    return combo


def _percent(name: str) -> QDoubleSpinBox:
    spin = QDoubleSpinBox()
    spin.setObjectName(name)
    spin.setRange(0.0, _PERCENT)
    spin.setDecimals(1)
    spin.setSuffix(" %")
    make_plain(spin)
    return spin
