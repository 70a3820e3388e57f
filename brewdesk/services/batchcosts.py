"""What batches cost by what was drawn for them, and what a year saved against the shop.

A bottle comes back, so one filling costs it the share that the maker's own estimate of how
often it is filled gives. What did not come from the stores has no price: the sum is "at least"
then, and a saving "at most".
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, tzinfo
from fractions import Fraction
from typing import TYPE_CHECKING

from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.money import own_currency
from brewdesk.services.settings import CURRENCY, Settings
from brewdesk.services.stockchecks import PRICE_MAX_MINOR, is_currency
from brewdesk.services.stockdraws import stock_of
from brewdesk.store.records import Addition, Batch, Bottling, Transfer
from brewdesk.store.stockrecords import Supply, SupplyDraw
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    BatchStage,
    BottlingState,
    DrawReason,
    SupplyKind,
    TransferKind,
)
from culturecore.stockcost import (
    FREE,
    UNKNOWN,
    Cost,
    LotStock,
    Portion,
    Saving,
    cost_of,
    exact,
    saved,
    total_cost,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

__all__ = ["TOPICS", "BatchCost", "BatchCosts", "Cost", "Saving", "ShopPrice", "YearCost"]

TOPICS = Topic.STORES | Topic.BATCHES | Topic.BOTTLINGS | Topic.CULTURES | Topic.SETTINGS
# Kept beside the settings, but asked for where the costs are: facts rather than likings.
_SHOP_KEY, _USES_KEY = "shop_price_per_l", "bottle_uses"
# How often a bottle is filled before it is worn out or broken; an assumption, no source.
ASSUMED_USES = 20
USES_MOST = 1000
_NOTHING = Fraction(0)
# In the bottles rather than in the jar.
_IN_BOTTLES = (SupplyKind.FLAVOURING, SupplyKind.BOTTLE, SupplyKind.CLOSURE)


@dataclass(frozen=True, slots=True, kw_only=True)
class ShopPrice:
    """What a litre costs in the shop, in smallest coins."""

    minor: int
    currency: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchCost:
    """What a batch cost. ``parts`` are by kind of supply and add up to ``total``.

    ``missing`` had no price. ``drink_l`` is what was drawn off to drink, less what was poured
    away in bottles; the rest of a live batch is still to come.
    """

    batch: Batch
    parts: tuple[tuple[SupplyKind, Cost], ...]
    total: Cost
    missing: tuple[SupplyKind, ...]
    drink_l: float
    bottle_count: int
    per_litre: Cost | None
    per_bottle: Cost | None
    saving: Saving | None


@dataclass(frozen=True, slots=True, kw_only=True)
class YearCost:
    """The batches begun in one year of the maker's calendar, newest first, and their sums.

    ``total`` is all that was spent. ``per_litre`` and ``saving`` leave out the batches still
    ``to_come``: they are paid for, and nothing of them could be drunk yet.
    """

    year: int
    batches: tuple[BatchCost, ...]
    total: Cost
    to_come: int
    drink_l: float
    per_litre: Cost | None
    shop: ShopPrice | None
    saving: Saving | None


@dataclass(frozen=True, slots=True, kw_only=True)
class _Book:
    """All rows that costs are made of, read at once."""

    supplies: dict[int, Supply]
    stock: dict[int, tuple[LotStock, ...]]
    draws: dict[int, list[SupplyDraw]]  # by batch
    transfers: dict[int, list[Transfer]]
    bottlings: dict[int, list[Bottling]]
    additions: dict[int, list[Addition]]  # by bottling
    bottles: dict[int, int]  # filled, by bottling


class BatchCosts:
    """Work costs out from the records; nothing is kept."""

    def __init__(self, door: Door, settings: Settings) -> None:
        self._door = door
        self._settings = settings

    def currency(self) -> str:
        """Return the currency in which prices are typed."""
        return self._settings.get(CURRENCY) or own_currency()

    def shop_price(self) -> ShopPrice | None:
        """Return what a litre costs in the shop, if the maker has said it."""
        minor, _, code = self._kept(_SHOP_KEY).partition(" ")
        if not (minor.isascii() and minor.isdecimal() and is_currency(code)):
            return None
        return ShopPrice(minor=min(int(minor), PRICE_MAX_MINOR), currency=code)

    def put_shop_price(self, price: ShopPrice | None) -> None:
        """Keep what a litre costs in the shop; None forgets it.

        Raises
        ------
        ImpossibleInput
            Field "shop_price" for a price beyond what can be kept.
        """
        if price is not None and not 0 <= price.minor <= PRICE_MAX_MINOR:
            raise ImpossibleInput("shop_price", price.minor, low=0.0, high=float(PRICE_MAX_MINOR))
        self._keep(_SHOP_KEY, f"{price.minor} {price.currency}" if price else "")

    def bottle_uses(self) -> int:
        """Return how often a bottle is filled, as the maker says or as is assumed."""
        text = self._kept(_USES_KEY)
        is_said = text.isascii() and text.isdecimal() and 1 <= int(text) <= USES_MOST
        return int(text) if is_said else ASSUMED_USES

    def are_uses_assumed(self) -> bool:
        """Whether the maker has not said how often a bottle is filled."""
        return not self._kept(_USES_KEY)

    def put_bottle_uses(self, uses: int) -> None:
        """Keep how often a bottle is filled.

        Raises
        ------
        ImpossibleInput
            Field "bottle_uses" outside 1 to 1000.
        """
        if not 1 <= uses <= USES_MOST:
            raise ImpossibleInput("bottle_uses", uses, low=1.0, high=float(USES_MOST))
        self._keep(_USES_KEY, str(uses))

    def _kept(self, key: str) -> str:
        with self._door.store.read() as unit:
            return unit.settings.get(key) or ""

    def _keep(self, key: str, text: str) -> None:
        with self._door.store.write() as unit:
            unit.settings.put(key, text)
        self._door.changes.announce(Topic.SETTINGS)

    def years(self) -> tuple[int, ...]:
        """Return the years in which batches were begun, the newest first; always this one."""
        zone = self._door.clock.zone()
        with self._door.store.read() as unit:
            begun = [begun_at(batch) for batch in unit.batches.where() if _is_begun(batch)]
        found = {moment.astimezone(zone).year for moment in begun}
        return tuple(sorted(found | {self._door.clock.now().astimezone(zone).year}, reverse=True))

    def year(self, year: int) -> YearCost:
        """Return what the batches begun in a year cost, and what they saved."""
        zone, shop = self._door.clock.zone(), self.shop_price()
        with self._door.store.read() as unit:
            batches = [batch for batch in unit.batches.where() if _is_in(batch, year, zone)]
            book = _read(unit, batches)
        ordered = sorted(batches, key=lambda batch: (begun_at(batch), batch.id), reverse=True)
        rows = tuple(self._cost(batch, book, shop) for batch in ordered)
        given = [row for row in rows if row.drink_l or not row.batch.stage.is_live]
        of_given = total_cost(row.total for row in given)
        drink = sum((exact(row.drink_l) for row in rows), _NOTHING)
        return YearCost(
            year=year,
            batches=rows,
            total=total_cost(row.total for row in rows),
            to_come=len(rows) - len(given),
            drink_l=float(drink),
            per_litre=_per(of_given, drink),
            shop=shop,
            saving=_saved(of_given, drink, shop),
        )

    def of_batch(self, batch_id: int) -> BatchCost:
        """Return what one batch cost.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            book = _read(unit, (batch,))
        return self._cost(batch, book, self.shop_price())

    def _cost(self, batch: Batch, book: _Book, shop: ShopPrice | None) -> BatchCost:
        draws = book.draws.get(batch.id, [])
        uses = Fraction(self.bottle_uses())
        parts: dict[SupplyKind, Cost] = {}
        for draw in draws:
            kind = book.supplies[draw.supply_id].kind
            cost = _draw_cost(draw, book)
            if kind is SupplyKind.BOTTLE:
                cost = cost.times(1 / uses)
            parts[kind] = parts.get(kind, FREE) + cost
        missing = _missing(batch, book, draws)
        unpriced = {kind for kind, cost in parts.items() if not cost.is_complete}
        for kind in missing:
            parts[kind] = parts.get(kind, FREE) + UNKNOWN
        order = list(SupplyKind)
        told = tuple(sorted(parts.items(), key=lambda part: order.index(part[0])))
        total = total_cost(cost for _, cost in told)
        bottlings = [
            one
            for one in book.bottlings.get(batch.id, [])
            if one.state is not BottlingState.DISCARDED
        ]
        bottled = sum((exact(one.drink_volume_l) for one in bottlings), _NOTHING)
        count = sum(book.bottles.get(one.id, 0) for one in bottlings)
        drink = _drink(batch, book)
        return BatchCost(
            batch=batch,
            parts=told,
            total=total,
            missing=tuple(kind for kind in order if kind in missing or kind in unpriced),
            drink_l=float(drink),
            bottle_count=count,
            per_litre=_per(total, drink),
            per_bottle=_per_bottle(told, bottled, drink, count),
            saving=_saved(total, drink, shop),
        )


def begun_at(batch: Batch) -> datetime:
    """Return when a batch was begun: souring, or else planned and brewed."""
    return batch.started_at or batch.planned_at


def _is_begun(batch: Batch) -> bool:
    return batch.stage is not BatchStage.PLANNED


def _is_in(batch: Batch, year: int, zone: tzinfo) -> bool:
    return _is_begun(batch) and begun_at(batch).astimezone(zone).year == year


def _read(unit: ReadUnit, batches: Iterable[Batch]) -> _Book:
    ids = [batch.id for batch in batches]
    draws: dict[int, list[SupplyDraw]] = {}
    for draw in unit.supply_draws.where(batch_id=ids):
        draws.setdefault(draw.batch_id or 0, []).append(draw)
    supply_ids = {draw.supply_id for rows in draws.values() for draw in rows}
    supplies = {row.id: row for row in unit.supplies.where(id=supply_ids)}
    transfers: dict[int, list[Transfer]] = {}
    for transfer in unit.transfers.where(from_batch_id=ids, kind=TransferKind.DRINK):
        transfers.setdefault(transfer.from_batch_id or 0, []).append(transfer)
    bottlings: dict[int, list[Bottling]] = {}
    for bottling in unit.bottlings.where(batch_id=ids):
        bottlings.setdefault(bottling.batch_id, []).append(bottling)
    bottling_ids = [one.id for rows in bottlings.values() for one in rows]
    additions: dict[int, list[Addition]] = {}
    for addition in unit.additions.where(bottling_id=bottling_ids):
        additions.setdefault(addition.bottling_id, []).append(addition)
    bottles: dict[int, int] = {}
    for group in unit.bottle_groups.where(bottling_id=bottling_ids):
        before = bottles.get(group.bottling_id, 0)
        bottles[group.bottling_id] = before + group.bottle_count
    return _Book(
        supplies=supplies,
        # The price of a lot does not depend on what is left of it.
        stock={key: stock_of(unit.supply_lots.where(supply_id=key), ()) for key in supplies},
        draws=draws,
        transfers=transfers,
        bottlings=bottlings,
        additions=additions,
        bottles=bottles,
    )


def _draw_cost(draw: SupplyDraw, book: _Book) -> Cost:
    """Return what a draw cost; emptied bottles that come back cost nothing and give nothing."""
    if draw.amount <= 0 or draw.reason not in (DrawReason.BREWED, DrawReason.BOTTLED):
        return FREE
    portion = Portion(draw.lot_id, exact(draw.amount))
    return cost_of((portion,), book.stock[draw.supply_id])


def _missing(batch: Batch, book: _Book, draws: list[SupplyDraw]) -> set[SupplyKind]:
    """Return what the batch is known to have used that did not come from the stores."""
    missing: set[SupplyKind] = set()
    brewed = {
        book.supplies[draw.supply_id].kind for draw in draws if draw.reason is DrawReason.BREWED
    }
    if batch.tea_g > 0 and SupplyKind.TEA not in brewed:
        missing.add(SupplyKind.TEA)
    if batch.sugar_g > 0 and SupplyKind.SUGAR not in brewed:
        missing.add(SupplyKind.SUGAR)
    for bottling in book.bottlings.get(batch.id, []):
        taken = [draw for draw in draws if draw.bottling_id == bottling.id and draw.amount > 0]
        kinds = [book.supplies[draw.supply_id].kind for draw in taken]
        if bottling.priming_sugar_g > 0 and SupplyKind.SUGAR not in kinds:
            missing.add(SupplyKind.SUGAR)
        flavours = {
            draw.supply_id
            for draw, kind in zip(taken, kinds, strict=True)
            if kind is SupplyKind.FLAVOURING
        }
        if len(book.additions.get(bottling.id, [])) > len(flavours):
            missing.add(SupplyKind.FLAVOURING)
        bottles = sum(
            draw.amount
            for draw, kind in zip(taken, kinds, strict=True)
            if kind is SupplyKind.BOTTLE
        )
        if bottles < book.bottles.get(bottling.id, 0):
            missing.add(SupplyKind.BOTTLE)
    return missing


def _drink(batch: Batch, book: _Book) -> Fraction:
    """Return the litres that went out to be drunk."""
    poured_away = {
        one.transfer_id
        for one in book.bottlings.get(batch.id, [])
        if one.state is BottlingState.DISCARDED
    }
    return sum(
        (
            exact(transfer.volume_l)
            for transfer in book.transfers.get(batch.id, [])
            if transfer.id not in poured_away
        ),
        _NOTHING,
    )


def _per(cost: Cost, litres: Fraction) -> Cost | None:
    return cost.times(1 / litres) if litres > 0 else None


def _per_bottle(
    parts: tuple[tuple[SupplyKind, Cost], ...], bottled: Fraction, drink: Fraction, count: int
) -> Cost | None:
    """Return the cost of a bottle: its share of the jar, and of what went into the bottles."""
    if not count or drink <= 0:
        return None
    jar = total_cost(cost for kind, cost in parts if kind not in _IN_BOTTLES)
    bottles = total_cost(cost for kind, cost in parts if kind in _IN_BOTTLES)
    share = min(bottled / drink, Fraction(1))
    return (jar.times(share) + bottles).times(Fraction(1, count))


def _saved(cost: Cost, litres: Fraction, shop: ShopPrice | None) -> Saving | None:
    if shop is None or litres <= 0:
        return None
    minor = Fraction(shop.minor)
    return saved(cost, litres=litres, shop_minor_per_l=minor, currency=shop.currency)
