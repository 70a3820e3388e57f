"""A supply as it stands: what is left in which lots, what it last cost, what is to come."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from fractions import Fraction
from typing import TYPE_CHECKING

from brewdesk.services.stockdraws import stock_of
from brewdesk.store.stockrecords import BatchSupply, Supply, SupplyDraw, SupplyLot
from culturecore.stages import DrawReason, SupplyMeasure
from culturecore.stockcost import LotStock, exact, left_in

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

_NOTHING = Fraction(0)
# Prices are compared by these: a kilogram, a litre, a piece.
PRICED_BY = {
    SupplyMeasure.MASS_G: 1000,
    SupplyMeasure.VOLUME_L: 1,
    SupplyMeasure.PIECES: 1,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class UnitPrice:
    """What a kilogram, a litre or a piece cost, in smallest coins."""

    minor: Fraction
    currency: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LotView:
    """One purchase with what is left of it, in the supply's measure."""

    lot: SupplyLot
    left: float
    unit_price: UnitPrice | None
    is_past_best: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class StockView:
    """A supply with its lots (newest first) and draws (newest first).

    ``left`` is what was bought less what was drawn; ``unbooked`` was used beyond what was
    written down as bought; ``planned`` is what plans will take; ``out`` are bottles that
    are not back yet. ``capacity`` is what the lots held that are not used up.
    """

    supply: Supply
    lots: tuple[LotView, ...]
    draws: tuple[SupplyDraw, ...]
    left: float
    bought: float
    unbooked: float
    planned: float
    out: float
    capacity: float
    last_price: UnitPrice | None
    best_before: datetime | None
    last_used_at: datetime | None

    @property
    def share_left(self) -> float:
        """How much of the lots that are not used up is left, 0 to 1."""
        return self.left / self.capacity if self.capacity else 0.0

    @property
    def is_low(self) -> bool:
        """Whether less is left than the maker's mark; retired ones are never low."""
        mark = self.supply.low_amount
        return self.supply.retired_at is None and mark is not None and self.left < mark

    def is_past_best(self, now: datetime) -> bool:
        """Whether something that is left is past the date its seller gave."""
        return self.best_before is not None and self.best_before < now


def views_in(unit: ReadUnit, supplies: Iterable[Supply], now: datetime) -> tuple[StockView, ...]:
    """Return supplies as they stand, in their order."""
    wanted = tuple(supplies)
    ids = [supply.id for supply in wanted]
    lots: dict[int, list[SupplyLot]] = {supply_id: [] for supply_id in ids}
    draws: dict[int, list[SupplyDraw]] = {supply_id: [] for supply_id in ids}
    plans: dict[int, list[BatchSupply]] = {supply_id: [] for supply_id in ids}
    for lot in unit.supply_lots.where(supply_id=ids, order_by=("bought_at", "id")):
        lots[lot.supply_id].append(lot)
    for draw in unit.supply_draws.where(supply_id=ids, order_by=("at", "id")):
        draws[draw.supply_id].append(draw)
    for plan in unit.batch_supplies.where(supply_id=ids):
        plans[plan.supply_id].append(plan)
    return tuple(
        _view(supply, lots[supply.id], draws[supply.id], plans[supply.id], now) for supply in wanted
    )


def _view(
    supply: Supply,
    lots: list[SupplyLot],
    draws: list[SupplyDraw],
    plans: list[BatchSupply],
    now: datetime,
) -> StockView:
    stock = stock_of(lots, draws)
    left_by_id = {one.key: one.left for one in stock}
    open_lots = [one for one in stock if one.left > 0]
    per = PRICED_BY[supply.measure]
    priced = [one for one in stock if one.price_minor is not None]
    dates = [
        lot.best_before for lot in lots if lot.best_before is not None and left_by_id[lot.id] > 0
    ]
    used = [one.at for one in draws if one.amount > 0 and one.reason is not DrawReason.COUNTED]
    return StockView(
        supply=supply,
        lots=tuple(
            LotView(
                lot=lot,
                left=float(left_by_id[lot.id]),
                unit_price=unit_price(one, per),
                is_past_best=lot.best_before is not None
                and lot.best_before < now
                and left_by_id[lot.id] > 0,
            )
            for lot, one in reversed(list(zip(lots, stock, strict=True)))
        ),
        draws=tuple(reversed(draws)),
        left=float(left_in(stock)),
        bought=float(sum((one.amount for one in stock), _NOTHING)),
        unbooked=_sum(one for one in draws if one.lot_id is None),
        planned=float(sum((exact(plan.amount) for plan in plans), _NOTHING)),
        out=_sum(
            one
            for one in draws
            if one.lot_id is not None and one.reason in (DrawReason.BOTTLED, DrawReason.RETURNED)
        ),
        capacity=float(sum((one.amount for one in open_lots), _NOTHING)),
        last_price=unit_price(priced[-1], per) if priced else None,
        best_before=min(dates) if dates else None,
        last_used_at=max(used) if used else None,
    )


def unit_price(lot: LotStock, per: int) -> UnitPrice | None:
    """Return what so many units of a lot cost; None without a price."""
    if lot.price_minor is None:
        return None
    return UnitPrice(minor=lot.price_minor * per / lot.amount, currency=lot.currency)


def _sum(draws: Iterable[SupplyDraw]) -> float:
    return float(sum((exact(draw.amount) for draw in draws), _NOTHING))
