"""What a bottling takes out of the stores: what is offered, and whether there is enough."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QComboBox

from brewdesk.services.additionchoices import AdditionChoice, supply_choices
from brewdesk.services.bottledraws import needed_of
from brewdesk.services.bottlingwish import AdditionWish, BottleGroupWish
from brewdesk.services.desk import Desk
from brewdesk.services.records import Supply, SupplyKind
from brewdesk.services.wording.stores import enough_words, short_words
from brewdesk.widgets.fields import FieldRow, choose

_NOTHING_OF = 1e-9


def _t(text: str) -> str:
    return QCoreApplication.translate("BottleStock", text)


def flavourings(desk: Desk) -> tuple[AdditionChoice, ...]:
    """Return the flavourings of the stores as choices."""
    return supply_choices(view.supply for view in desk.stores.of_kind(SupplyKind.FLAVOURING))


def bottles(desk: Desk) -> tuple[Supply, ...]:
    """Return the bottles of the stores."""
    return tuple(view.supply for view in desk.stores.of_kind(SupplyKind.BOTTLE))


def offer_stock(desk: Desk, combo: QComboBox, kind: SupplyKind) -> None:
    """Offer the supplies of a kind; the choice stays."""
    chosen = combo.currentData()
    combo.clear()
    combo.addItem(_t("Not from the stores"), None)
    for view in desk.stores.of_kind(kind):
        combo.addItem(" ".join(view.supply.name.split()), view.supply.id)
    choose(combo, chosen)


def in_usual_bottles(desk: Desk, group: BottleGroupWish) -> BottleGroupWish:
    """Return a group in the maker's usual bottles of the stores; as it is without any."""
    supply_id = desk.stores.usual(SupplyKind.BOTTLE)
    supply = next((one for one in bottles(desk) if one.id == supply_id), None)
    if supply is None:
        return group
    volume_l = group.bottle_count * group.filled_l
    made = replace(
        group,
        supply_id=supply.id,
        kind=supply.bottle_kind or group.kind,
        brim_volume_l=supply.brim_volume_l or group.brim_volume_l,
        rated_bar=supply.rated_bar,
    )
    return replace(made, bottle_count=max(int(volume_l / made.filled_l + _NOTHING_OF), 1))


class StockHints:
    """Says beside the choices of one bottling whether the stores hold enough.

    What several rows take of one supply adds up.
    """

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._taken: dict[int, float] = {}

    def begin(self) -> None:
        """Count anew."""
        self._taken.clear()

    def tell(self, row: FieldRow, supply_id: int | None, needed: float) -> None:
        """Say beside ``row`` whether ``needed`` more is there; nothing without a supply."""
        if supply_id is None or needed <= 0.0:
            row.set_hint("")
            return
        view = self._desk.stores.get(supply_id)
        left = max(view.left - self._taken.get(supply_id, 0.0), 0.0)
        self._taken[supply_id] = self._taken.get(supply_id, 0.0) + needed
        measure, show = view.supply.measure, self._desk.quantities.show
        if row.message.is_error:
            return
        is_short = needed > left + _NOTHING_OF
        if is_short:
            words = short_words(view.supply.name, left, needed, measure, show)
        else:
            words = enough_words(left, needed, measure, show)
        row.message.say(words, "warn" if is_short else "label")
        row.focus_widget.setAccessibleDescription(words)

    def tell_addition(self, row: FieldRow, addition: AdditionWish) -> None:
        """Say it of an addition; it is weighed, and may be kept by the litre."""
        needed = 0.0
        if addition.supply_id is not None:
            supply = self._desk.stores.get(addition.supply_id).supply
            needed = needed_of(supply, addition)
        self.tell(row, addition.supply_id, needed)
