"""Which tea and sugar of the stores a plan takes, and whether there is enough of it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Batch, SupplyKind, SupplyMeasure, TeaKind
from brewdesk.services.stockdraws import PlanSupplies
from brewdesk.services.wording.stores import enough_words, short_words
from brewdesk.widgets.fields import FieldRow, choose
from brewdesk.widgets.theme import SPACE

_FIELDS = {SupplyKind.TEA: "tea_supply_id", SupplyKind.SUGAR: "sugar_supply_id"}
_NOTHING_OF = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class Needs:
    """What a plan weighs out."""

    tea_g: float
    tea_bags: int
    sugar_g: float


class PlanStores(QWidget):
    """Two choices, shown once the stores hold a tea or a sugar. ``changed`` after a choice."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._batch: Batch | None = None
        self._is_filling = False
        self._by_hand: set[SupplyKind] = set()
        self._tea_kind: TeaKind | None = None
        self.combos: dict[SupplyKind, QComboBox] = {}
        self.rows: dict[str, FieldRow] = {}
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * SPACE)
        words = {SupplyKind.TEA: self.tr("Tea from"), SupplyKind.SUGAR: self.tr("Sugar from")}
        for column, (kind, field) in enumerate(_FIELDS.items()):
            combo = QComboBox(self)
            combo.setObjectName(f"plan_{field}")
            combo.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            combo.setMinimumContentsLength(10)
            self.combos[kind] = combo
            self.rows[field] = FieldRow(words[kind], combo, self)
            grid.addWidget(self.rows[field], 0, column)
            grid.setColumnStretch(column, 1)
            combo.currentIndexChanged.connect(lambda _index, kind=kind: self._on_chosen(kind))
        self.reload()

    # --- filling ---------------------------------------------------------------------

    def begin(self, batch: Batch | None, tea_kind: TeaKind | None) -> None:
        """Begin with what a plan takes, or with what is usual for a new one."""
        self._batch = batch
        self._by_hand.clear()
        self._tea_kind = tea_kind
        self.reload()
        if batch is None:
            self._suggest()
            return
        planned = self._desk.stores.planned_for(batch.id)
        self._is_filling = True
        for kind, combo in self.combos.items():
            self._by_hand.add(kind)
            combo.setCurrentIndex(max(combo.findData(planned.get(kind)), 0))
        self._is_filling = False

    def follow_tea(self, tea_kind: TeaKind) -> None:
        """Offer another tea of the stores for another kind of tea, unless one was chosen."""
        if tea_kind is not self._tea_kind:
            self._tea_kind = tea_kind
            self._suggest()

    def reload(self) -> None:
        """Read again what the stores hold; the choices stay."""
        self._is_filling = True
        for kind, combo in self.combos.items():
            chosen = combo.currentData()
            combo.clear()
            combo.addItem(self.tr("Not from the stores"), None)
            for view in self._desk.stores.of_kind(kind):
                combo.addItem(" ".join(view.supply.name.split()), view.supply.id)
            choose(combo, chosen)
        self._is_filling = False
        self.setVisible(any(combo.count() > 1 for combo in self.combos.values()))

    def _suggest(self) -> None:
        stores = self._desk.stores
        usual = {
            SupplyKind.TEA: stores.usual(SupplyKind.TEA, self._tea_kind),
            SupplyKind.SUGAR: stores.usual(SupplyKind.SUGAR),
        }
        self._is_filling = True
        for kind, combo in self.combos.items():
            if kind not in self._by_hand:
                combo.setCurrentIndex(max(combo.findData(usual[kind]), 0))
        self._is_filling = False

    # --- reading ---------------------------------------------------------------------

    def supplies(self) -> PlanSupplies:
        """Return what is chosen."""
        return PlanSupplies(
            tea_id=self.combos[SupplyKind.TEA].currentData(),
            sugar_id=self.combos[SupplyKind.SUGAR].currentData(),
        )

    def show_needs(self, needs: Needs | None) -> None:
        """Say beside each choice whether there is enough; it stops nothing."""
        for kind, field in _FIELDS.items():
            supply_id = self.combos[kind].currentData()
            row = self.rows[field]
            if supply_id is None or needs is None:
                row.message.say("")
                row.focus_widget.setAccessibleDescription("")
                continue
            view = self._desk.stores.get(int(supply_id))
            measure = view.supply.measure
            needed = needs.sugar_g
            if kind is SupplyKind.TEA:
                in_bags = measure is SupplyMeasure.PIECES
                needed = float(needs.tea_bags) if in_bags else needs.tea_g
            show = self._desk.quantities.show
            # What other plans are going to take is spoken for; this one's own share is not.
            left = max(view.left - self._taken_by_others(view.planned, int(supply_id)), 0.0)
            is_short = needed > left + _NOTHING_OF
            if is_short:
                words = short_words(view.supply.name, left, needed, measure, show)
            else:
                words = enough_words(left, needed, measure, show)
            row.message.say(words, "warn" if is_short else "label")
            row.focus_widget.setAccessibleDescription(words)

    def _taken_by_others(self, planned: float, supply_id: int) -> float:
        if self._batch is None:
            return planned
        own = self._desk.stores.planned_amounts(self._batch.id)
        return max(planned - own.get(supply_id, 0.0), 0.0)

    def _on_chosen(self, kind: SupplyKind) -> None:
        if not self._is_filling:
            self._by_hand.add(kind)
            self.changed.emit()
