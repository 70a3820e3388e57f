"""Taking things out of the stores and putting them back, within a unit of work.

Nothing is kept twice: what is left of a lot is what was bought less what was drawn. A draw
names the lots it took from; what no lot had is drawn from no lot, and has no known price.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from fractions import Fraction
from typing import TYPE_CHECKING

from brewdesk.store.records import Batch
from brewdesk.store.stockrecords import (
    BatchSupplyDraft,
    Supply,
    SupplyDraw,
    SupplyDrawDraft,
    SupplyLot,
)
from culturecore.errors import ImpossibleInput
from culturecore.stages import DrawReason, SupplyKind, SupplyMeasure
from culturecore.stockcost import LotStock, Portion, exact, take

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

_ALMOST_A_BAG = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanSupplies:
    """Which tea and sugar of the stores a batch takes; None: not from the stores."""

    tea_id: int | None = None
    sugar_id: int | None = None


def lots_in(unit: ReadUnit | UnitOfWork, supply_id: int) -> tuple[LotStock, ...]:
    """Return a supply's lots with what is left of each, the oldest first."""
    lots = unit.supply_lots.where(supply_id=supply_id, order_by=("bought_at", "id"))
    return stock_of(lots, unit.supply_draws.where(supply_id=supply_id))


def stock_of(lots: Iterable[SupplyLot], draws: Iterable[SupplyDraw]) -> tuple[LotStock, ...]:
    """Return lots, in their order, with what ``draws`` have left of them."""
    drawn: dict[int | None, Fraction] = {}
    for draw in draws:
        drawn[draw.lot_id] = drawn.get(draw.lot_id, Fraction(0)) + exact(draw.amount)
    return tuple(
        LotStock(
            key=lot.id,
            amount=exact(lot.amount),
            left=exact(lot.amount) - drawn.get(lot.id, Fraction(0)),
            price_minor=lot.price_minor,
            currency=lot.currency,
        )
        for lot in lots
    )


def draw(unit: UnitOfWork, like: SupplyDrawDraft) -> tuple[SupplyDraw, ...]:
    """Take ``like.amount`` out of a supply, oldest lots first, as draws like this one.

    Lots bought after ``like.at`` are left alone: it cannot have come from them.
    """
    wanted = exact(like.amount)
    bought = {lot.id: lot.bought_at for lot in unit.supply_lots.where(supply_id=like.supply_id)}
    lots = [lot for lot in lots_in(unit, like.supply_id) if bought[lot.key] <= like.at]
    return write_portions(unit, like, take(lots, wanted))


def write_portions(
    unit: UnitOfWork, like: SupplyDrawDraft, portions: Iterable[Portion], *, sign: int = 1
) -> tuple[SupplyDraw, ...]:
    """Write portions down as draws like this one; with ``sign`` -1 they come back."""
    return tuple(
        unit.supply_draws.add(
            SupplyDrawDraft(
                supply_id=like.supply_id,
                lot_id=portion.lot_key,
                batch_id=like.batch_id,
                bottling_id=like.bottling_id,
                at=like.at,
                amount=sign * float(portion.amount),
                reason=like.reason,
                text=like.text,
            )
        )
        for portion in portions
    )


def needed_for(supply: Supply, batch: Batch) -> float:
    """Return what a batch needs of a supply, in the supply's measure.

    Tea in pieces is bags: whole ones.

    Raises
    ------
    ImpossibleInput
        Field "tea_supply_id" or "sugar_supply_id" with reason "measure", for what is counted
        in a way that no recipe is.
    """
    field = "tea_supply_id" if supply.kind is SupplyKind.TEA else "sugar_supply_id"
    grams = batch.tea_g if supply.kind is SupplyKind.TEA else batch.sugar_g
    if supply.measure is SupplyMeasure.MASS_G:
        return float(exact(grams))
    if supply.kind is SupplyKind.TEA and supply.measure is SupplyMeasure.PIECES:
        return float(math.ceil(grams / batch.bag_g - _ALMOST_A_BAG))
    raise ImpossibleInput(field, supply.name, reason="measure")


def check_supplies(unit: ReadUnit | UnitOfWork, supplies: PlanSupplies | None) -> None:
    """Refuse what a batch cannot be brewed from.

    Raises
    ------
    ImpossibleInput
        Field "tea_supply_id" or "sugar_supply_id" with reason "retired", "wrong_kind" or
        "measure".
    """
    if supplies is None:
        return
    for field, supply_id, kind in (
        ("tea_supply_id", supplies.tea_id, SupplyKind.TEA),
        ("sugar_supply_id", supplies.sugar_id, SupplyKind.SUGAR),
    ):
        if supply_id is not None:
            check_supply(unit, field, supply_id, kind)


def check_supply(
    unit: ReadUnit | UnitOfWork, field: str, supply_id: int, kind: SupplyKind
) -> Supply:
    """Return a supply that can be used as ``kind``.

    Raises
    ------
    ImpossibleInput
        Field ``field`` with reason "retired", "wrong_kind" or "measure".
    """
    supply = unit.supplies.get(supply_id)
    if supply.kind is not kind:
        raise ImpossibleInput(field, supply.name, reason="wrong_kind")
    if supply.retired_at is not None:
        raise ImpossibleInput(field, supply.name, reason="retired")
    if supply.measure not in MEASURES[kind]:
        raise ImpossibleInput(field, supply.name, reason="measure")
    return supply


# How each kind is counted where it is used; the first is the usual one.
MEASURES: dict[SupplyKind, tuple[SupplyMeasure, ...]] = {
    SupplyKind.TEA: (SupplyMeasure.MASS_G, SupplyMeasure.PIECES),
    SupplyKind.SUGAR: (SupplyMeasure.MASS_G,),
    SupplyKind.FLAVOURING: (SupplyMeasure.MASS_G, SupplyMeasure.VOLUME_L),
    SupplyKind.BOTTLE: (SupplyMeasure.PIECES,),
    SupplyKind.CLOSURE: (SupplyMeasure.PIECES,),
    SupplyKind.OTHER: (SupplyMeasure.PIECES, SupplyMeasure.MASS_G, SupplyMeasure.VOLUME_L),
}


def lay_out(unit: UnitOfWork, batch: Batch, supplies: PlanSupplies | None) -> None:
    """Write down what a planned batch will take.

    Without ``supplies`` it stays with those it has; the amounts follow the plan.
    """
    rows = unit.batch_supplies.where(batch_id=batch.id)
    if supplies is None:
        wanted = [row.supply_id for row in rows]
    else:
        wanted = [one for one in (supplies.tea_id, supplies.sugar_id) if one is not None]
    kept: set[int] = set()
    for row in rows:
        if row.supply_id not in wanted or row.supply_id in kept:
            unit.batch_supplies.remove(row.id)
            continue
        kept.add(row.supply_id)
        amount = needed_for(unit.supplies.get(row.supply_id), batch)
        if amount <= 0.0:
            unit.batch_supplies.remove(row.id)
        elif amount != row.amount:
            unit.batch_supplies.change(row.id, amount=amount)
    for supply_id in wanted:
        if supply_id in kept:
            continue
        kept.add(supply_id)
        amount = needed_for(unit.supplies.get(supply_id), batch)
        if amount > 0.0:
            unit.batch_supplies.add(
                BatchSupplyDraft(batch_id=batch.id, supply_id=supply_id, amount=amount)
            )


def drop_plan_supplies(unit: UnitOfWork, batch_id: int) -> None:
    """Forget what a plan would have taken."""
    for row in unit.batch_supplies.where(batch_id=batch_id):
        unit.batch_supplies.remove(row.id)


def draw_for_batch(unit: UnitOfWork, batch: Batch, at: datetime) -> None:
    """Take out of the stores what a batch was planned with; the plan is done with then."""
    for row in unit.batch_supplies.where(batch_id=batch.id):
        unit.batch_supplies.remove(row.id)
        draw(
            unit,
            SupplyDrawDraft(
                supply_id=row.supply_id,
                at=at,
                amount=row.amount,
                reason=DrawReason.BREWED,
                batch_id=batch.id,
            ),
        )
