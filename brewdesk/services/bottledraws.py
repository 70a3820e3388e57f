"""What a bottling takes out of the stores: bottles, flavouring, the sugar for the fizz."""

from __future__ import annotations

from typing import TYPE_CHECKING

from brewdesk.services.bottlingplan import density_kg_per_l
from brewdesk.services.bottlingwish import AdditionWish, BottlingWish
from brewdesk.services.stockdraws import check_supply, draw
from brewdesk.store.records import Bottling
from brewdesk.store.stockrecords import Supply, SupplyDrawDraft
from culturecore.stages import DrawReason, SupplyKind, SupplyMeasure
from culturecore.stockcost import exact

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork


def check_bottling_supplies(unit: ReadUnit | UnitOfWork, wish: BottlingWish) -> None:
    """Refuse what cannot be used for bottling.

    Raises
    ------
    ImpossibleInput
        Field "what" for an addition, "source" for bottles, "priming_supply_id",
        "closure_supply_id", with reason "retired", "wrong_kind" or "measure".
    """
    for addition in wish.additions:
        if addition.supply_id is not None:
            check_supply(unit, "what", addition.supply_id, SupplyKind.FLAVOURING)
    for group in wish.groups:
        if group.supply_id is not None:
            check_supply(unit, "source", group.supply_id, SupplyKind.BOTTLE)
    if wish.priming_supply_id is not None:
        check_supply(unit, "priming_supply_id", wish.priming_supply_id, SupplyKind.SUGAR)
    if wish.closure_supply_id is not None:
        check_supply(unit, "closure_supply_id", wish.closure_supply_id, SupplyKind.CLOSURE)


def needed_of(supply: Supply, addition: AdditionWish) -> float:
    """Return how much of a supply an addition takes, in the supply's measure."""
    if supply.measure is SupplyMeasure.VOLUME_L:
        return addition.mass_g / (1000.0 * density_kg_per_l(addition.kind))
    return addition.mass_g


def draw_for_bottling(unit: UnitOfWork, wish: BottlingWish, bottling: Bottling) -> None:
    """Take out of the stores what a bottling uses, within its unit of work."""
    taken: dict[int, float] = {}
    for group in wish.groups:
        if group.supply_id is not None:
            taken[group.supply_id] = taken.get(group.supply_id, 0.0) + group.bottle_count
    for addition in wish.additions:
        if addition.supply_id is not None:
            amount = needed_of(unit.supplies.get(addition.supply_id), addition)
            taken[addition.supply_id] = taken.get(addition.supply_id, 0.0) + amount
    if wish.priming_supply_id is not None:
        before = taken.get(wish.priming_supply_id, 0.0)
        taken[wish.priming_supply_id] = before + bottling.priming_sugar_g
    if wish.closure_supply_id is not None:
        count = float(sum(group.bottle_count for group in wish.groups))
        taken[wish.closure_supply_id] = taken.get(wish.closure_supply_id, 0.0) + count
    for supply_id, amount in taken.items():
        if exact(amount) > 0:
            draw(
                unit,
                SupplyDrawDraft(
                    supply_id=supply_id,
                    at=bottling.filled_at,
                    amount=amount,
                    reason=DrawReason.BOTTLED,
                    batch_id=bottling.batch_id,
                    bottling_id=bottling.id,
                ),
            )
