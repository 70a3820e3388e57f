"""The stores: what is bought for brewing and bottling, and where it went. Each act undoable."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.names import is_same_name, tidy_name
from brewdesk.services.stockchecks import check_lot, check_supply_draft
from brewdesk.services.stockdraws import MEASURES, draw, lots_in, write_portions
from brewdesk.services.stockviews import StockView, views_in
from brewdesk.services.wording.stores import found_words
from brewdesk.store.stockrecords import (
    Supply,
    SupplyDraft,
    SupplyDraw,
    SupplyDrawDraft,
    SupplyLot,
    SupplyLotDraft,
)
from culturecore.errors import ImpossibleInput
from culturecore.stages import BottlingState, DrawReason, SupplyKind, SupplyMeasure, TeaKind
from culturecore.stockcost import Portion, exact, give_back, left_in, take

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

_ENDED = (BottlingState.FINISHED, BottlingState.DISCARDED)
_BY_HAND = (DrawReason.SPOILED, DrawReason.OTHER)
_TEXT_MAX = 2000
_UNITS = {SupplyMeasure.MASS_G: "g", SupplyMeasure.VOLUME_L: "L", SupplyMeasure.PIECES: ""}


class Stores:
    """Keep the shelf of supplies true."""

    def __init__(self, door: Door) -> None:
        self._door = door

    # --- what is there ------------------------------------------------------------------

    def all(self, *, include_retired: bool = False) -> tuple[StockView, ...]:
        """Return the supplies as they stand, by kind and name."""
        order = list(SupplyKind)
        with self._door.store.read() as unit:
            rows = unit.supplies.where() if include_retired else _in_use(unit)
            rows = tuple(
                sorted(rows, key=lambda row: (order.index(row.kind), row.name.casefold(), row.id))
            )
            return views_in(unit, rows, self._door.clock.now())

    def get(self, supply_id: int) -> StockView:
        """Return one supply as it stands.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        with self._door.store.read() as unit:
            row = unit.supplies.get(supply_id)
            return views_in(unit, (row,), self._door.clock.now())[0]

    def of_kind(self, kind: SupplyKind) -> tuple[StockView, ...]:
        """Return the supplies of a kind that can be used for it, by name."""
        return tuple(
            view
            for view in self.all()
            if view.supply.kind is kind and view.supply.measure in MEASURES[kind]
        )

    def usual(
        self, kind: SupplyKind, tea_kind: TeaKind | None = None, *, only_used: bool = False
    ) -> int | None:
        """Return the supply to offer first: the last used one of that kind, or the only one.

        ``only_used``: being the only one is not enough.
        """
        views = [
            view
            for view in self.of_kind(kind)
            if tea_kind is None or view.supply.tea_kind is tea_kind
        ]
        used = [(view.last_used_at, view.supply.id) for view in views if view.last_used_at]
        if used:
            return max(used)[1]
        return views[0].supply.id if len(views) == 1 and not only_used else None

    def planned_for(self, batch_id: int) -> dict[SupplyKind, int]:
        """Return which supplies a plan will take, by kind."""
        with self._door.store.read() as unit:
            rows = unit.batch_supplies.where(batch_id=batch_id)
            return {unit.supplies.get(row.supply_id).kind: row.supply_id for row in rows}

    def planned_amounts(self, batch_id: int) -> dict[int, float]:
        """Return how much of which supply a plan will take."""
        with self._door.store.read() as unit:
            rows = unit.batch_supplies.where(batch_id=batch_id)
        return {row.supply_id: row.amount for row in rows}

    def batch_names(self, draws: Iterable[SupplyDraw]) -> dict[int, str]:
        """Return the names of the batches that draws were for, by id."""
        ids = {row.batch_id for row in draws if row.batch_id is not None}
        if not ids:
            return {}
        with self._door.store.read() as unit:
            return {row.id: row.name for row in unit.batches.where(id=ids)}

    # --- supplies -----------------------------------------------------------------------

    def add(self, draft: SupplyDraft) -> Supply:
        """Put something new on the list; nothing of it is there yet.

        Raises
        ------
        ImpossibleInput
            Field "name" with reason "empty", "too_long" or "taken"; "measure"; shares,
            volumes and marks out of range.
        """
        draft = check_supply_draft(draft)
        with self._door.store.read() as unit:
            _check_name(unit, draft.name, None)
        return self._door.perform(
            ActKind.ADD_SUPPLY,
            {"name": draft.name, "kind": draft.kind.value},
            lambda unit: unit.supplies.add(draft),
            topics=Topic.STORES,
        )

    def edit(self, supply_id: int, **fields: Any) -> Supply:  # noqa: ANN401  # column values
        """Change fields of a supply.

        Raises
        ------
        ImpossibleInput
            As `add`; "kind" or "measure" with reason "has_lots" once some was bought.
        """
        with self._door.store.read() as unit:
            old = unit.supplies.get(supply_id)
            is_bought = bool(unit.supply_lots.where(supply_id=supply_id, limit=1))
            is_used = is_bought or bool(unit.supply_draws.where(supply_id=supply_id, limit=1))
            is_used = is_used or bool(unit.batch_supplies.where(supply_id=supply_id, limit=1))
        draft = check_supply_draft(replace(_draft_of(old), **fields))
        for field in ("kind", "measure"):
            if is_used and getattr(draft, field) is not getattr(old, field):
                raise ImpossibleInput(field, getattr(draft, field), reason="has_lots")
        with self._door.store.read() as unit:
            _check_name(unit, draft.name, supply_id)
        changed = {
            field: getattr(draft, field)
            for field in SupplyDraft.__dataclass_fields__
            if getattr(draft, field) != getattr(old, field)
        }
        return self._door.perform(
            ActKind.EDIT_SUPPLY,
            {"name": draft.name, "old_name": old.name},
            lambda unit: unit.supplies.change(supply_id, **changed),
            topics=Topic.STORES,
        )

    def retire(self, supply_id: int) -> Supply:
        """Take a supply off the list; its lots and what they cost stay on record.

        Raises
        ------
        ImpossibleInput
            Field "supply_id" with reason "planned" while a plan is going to use it.
        """
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            supply = unit.supplies.get(supply_id)
            plans = unit.batch_supplies.where(supply_id=supply_id)
            if plans:
                name = unit.batches.get(plans[0].batch_id).name
                raise ImpossibleInput("supply_id", name, reason="supply_planned")
        return self._door.perform(
            ActKind.RETIRE_SUPPLY,
            {"name": supply.name},
            lambda unit: unit.supplies.change(supply_id, retired_at=supply.retired_at or now),
            topics=Topic.STORES,
        )

    def restore(self, supply_id: int) -> Supply:
        """Put a retired supply back on the list.

        Raises
        ------
        ImpossibleInput
            Field "name" with reason "taken" if another has its name by now.
        """
        with self._door.store.read() as unit:
            supply = unit.supplies.get(supply_id)
            _check_name(unit, supply.name, supply_id)
        return self._door.perform(
            ActKind.RESTORE_SUPPLY,
            {"name": supply.name},
            lambda unit: unit.supplies.change(supply_id, retired_at=None),
            topics=Topic.STORES,
        )

    # --- lots ---------------------------------------------------------------------------

    def buy(self, draft: SupplyLotDraft) -> SupplyLot:
        """Write a purchase down. What was used of it before it was written down is settled.

        Raises
        ------
        ImpossibleInput
            Field "amount", "price_minor", "currency"; "bought_at" with reason "in_future".
        """
        draft = check_lot(draft, self._door.clock.now())
        with self._door.store.read() as unit:
            supply = unit.supplies.get(draft.supply_id)

        def work(unit: UnitOfWork) -> SupplyLot:
            lot = unit.supply_lots.add(draft)
            _settle(unit, lot)
            return lot

        return self._door.perform(
            ActKind.BUY_SUPPLY, _lot_facts(supply, draft), work, topics=Topic.STORES
        )

    def edit_lot(self, lot_id: int, **fields: Any) -> SupplyLot:  # noqa: ANN401  # column values
        """Correct a purchase; what was drawn from it stays drawn from it.

        Raises
        ------
        ImpossibleInput
            As `buy`; "amount" with reason "below_drawn"; "bought_at" with reason
            "drawn_before".
        """
        with self._door.store.read() as unit:
            old = unit.supply_lots.get(lot_id)
            supply = unit.supplies.get(old.supply_id)
            draws = unit.supply_draws.where(lot_id=lot_id, order_by="at")
            stock = {one.key: one for one in lots_in(unit, supply.id)}[lot_id]
        draft = check_lot(replace(_lot_draft_of(old), **fields), self._door.clock.now())
        drawn = stock.amount - stock.left
        if exact(draft.amount) < drawn:
            raise ImpossibleInput(
                "amount",
                draft.amount,
                low=float(drawn),
                unit=_UNITS[supply.measure],
                reason="below_drawn",
            )
        if draws and draft.bought_at > draws[0].at:
            raise ImpossibleInput("bought_at", draft.bought_at, reason="drawn_before")
        changed = {
            field: getattr(draft, field)
            for field in SupplyLotDraft.__dataclass_fields__
            if getattr(draft, field) != getattr(old, field)
        }
        return self._door.perform(
            ActKind.EDIT_LOT,
            _lot_facts(supply, draft),
            lambda unit: unit.supply_lots.change(lot_id, **changed),
            topics=Topic.STORES,
        )

    def remove_lot(self, lot_id: int) -> None:
        """Take a purchase out again that nothing was drawn from.

        Raises
        ------
        ImpossibleInput
            Field "lot_id" with reason "drawn_from".
        """
        with self._door.store.read() as unit:
            lot = unit.supply_lots.get(lot_id)
            supply = unit.supplies.get(lot.supply_id)
            if unit.supply_draws.where(lot_id=lot_id, limit=1):
                raise ImpossibleInput("lot_id", lot_id, reason="drawn_from")
        self._door.perform(
            ActKind.REMOVE_LOT,
            _lot_facts(supply, lot),
            lambda unit: unit.supply_lots.remove(lot_id),
            topics=Topic.STORES,
        )

    # --- draws --------------------------------------------------------------------------

    def use(
        self, supply_id: int, amount: float, reason: DrawReason, text: str = ""
    ) -> tuple[SupplyDraw, ...]:
        """Take something out by hand: spoiled, broken, given away.

        Raises
        ------
        ImpossibleInput
            Field "amount": nothing, or with reason "not_in_stores" more than is left; "reason"
            for one that has an act of its own.
        """
        if reason not in _BY_HAND:
            raise ImpossibleInput("reason", reason.value, reason="not_offered")
        view = self.get(supply_id)
        wanted = exact(amount)
        if wanted <= 0:
            raise ImpossibleInput("amount", amount, reason="nothing")
        if wanted > exact(view.left):
            raise ImpossibleInput(
                "amount",
                amount,
                high=view.left,
                unit=_UNITS[view.supply.measure],
                reason="not_in_stores",
            )
        like = SupplyDrawDraft(
            supply_id=supply_id,
            at=self._door.clock.now(),
            amount=float(wanted),
            reason=reason,
            text=_tidy_text(text),
        )
        return self._door.perform(
            ActKind.USE_SUPPLY,
            {**_facts(view.supply, like.amount), "reason": reason.value, "text": like.text},
            lambda unit: draw(unit, like),
            topics=Topic.STORES,
        )

    def count(self, supply_id: int, counted: float, text: str = "") -> None:
        """Correct the books by what a count of the shelf found.

        Less than the books say was used unseen, oldest first. More goes back to the newest
        lots that were drawn from; what no lot ever held becomes a lot without a price.

        Raises
        ------
        ImpossibleInput
            Field "amount" below 0.
        """
        found = exact(counted)
        if found < 0:
            raise ImpossibleInput("amount", counted, low=0.0)
        supply, now = self.get(supply_id).supply, self._door.clock.now()
        like = SupplyDrawDraft(
            supply_id=supply_id,
            at=now,
            amount=0.0,
            reason=DrawReason.COUNTED,
            text=_tidy_text(text),
        )

        def work(unit: UnitOfWork) -> None:
            lots = lots_in(unit, supply_id)
            missing = left_in(lots) - found
            if missing >= 0:
                write_portions(unit, like, take(lots, missing))
                return
            portions = give_back(lots, -missing)
            known = [portion for portion in portions if portion.lot_key is not None]
            write_portions(unit, like, known, sign=-1)
            for portion in portions:
                if portion.lot_key is None:
                    unit.supply_lots.add(
                        SupplyLotDraft(
                            supply_id=supply_id,
                            bought_at=now,
                            amount=float(portion.amount),
                            note=found_words(),
                        )
                    )

        self._door.perform(
            ActKind.COUNT_SUPPLY, _facts(supply, float(found)), work, topics=Topic.STORES
        )

    def bottles_out(self) -> dict[int, int]:
        """Return how many emptied bottles of the stores each ended bottling holds, by its id."""
        with self._door.store.read() as unit:
            ids = [row.id for row in unit.supplies.where(kind=SupplyKind.BOTTLE)]
            draws = unit.supply_draws.where(supply_id=ids) if ids else ()
        held: dict[int, Fraction] = {}
        for row in draws:
            if row.bottling_id is not None and row.lot_id is not None:
                before = held.get(row.bottling_id, Fraction(0))
                held[row.bottling_id] = before + exact(row.amount)
        with self._door.store.read() as unit:
            ended = unit.bottlings.where(id=list(held), state=_ENDED, order_by="-ended_at")
        return {row.id: int(held[row.id]) for row in ended if held[row.id] >= 1}

    def return_bottles(self, bottling_id: int) -> int:
        """Put the emptied, washed bottles of a bottling back; return how many.

        Raises
        ------
        ImpossibleInput
            Field "bottling_id" with reason "not_emptied", or "no_bottles_out".
        """
        with self._door.store.read() as unit:
            bottling = unit.bottlings.get(bottling_id)
            back = _bottles_of(unit, bottling_id)
        count = int(sum(portion.amount for _, portion in back))
        if bottling.state not in _ENDED:
            raise ImpossibleInput("bottling_id", bottling_id, reason="not_emptied")
        if not count:
            raise ImpossibleInput("bottling_id", bottling_id, reason="no_bottles_out")
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> None:
            for supply_id, portion in back:
                like = SupplyDrawDraft(
                    supply_id=supply_id,
                    at=now,
                    amount=0.0,
                    reason=DrawReason.RETURNED,
                    batch_id=bottling.batch_id,
                    bottling_id=bottling_id,
                )
                write_portions(unit, like, (portion,), sign=-1)

        self._door.perform(
            ActKind.RETURN_BOTTLES,
            {"name": bottling.name, "count": count},
            work,
            topics=Topic.STORES,
            batch_id=bottling.batch_id,
        )
        return count


def _in_use(unit: ReadUnit) -> tuple[Supply, ...]:
    return unit.supplies.where(retired_at=None)


def _check_name(unit: ReadUnit, name: str, own_id: int | None) -> None:
    if any(row.id != own_id and is_same_name(row.name, name) for row in _in_use(unit)):
        raise ImpossibleInput("name", tidy_name(name), reason="taken")


def _settle(unit: UnitOfWork, lot: SupplyLot) -> None:
    """Take from a new lot what was used since it was bought and could be taken from none."""
    rest = exact(lot.amount)
    open_draws = unit.supply_draws.where(
        supply_id=lot.supply_id, lot_id=None, order_by=("at", "id")
    )
    for row in open_draws:
        if rest <= 0 or row.at < lot.bought_at:
            continue
        part = min(rest, exact(row.amount))
        rest -= part
        over = exact(row.amount) - part
        if not over:
            unit.supply_draws.change(row.id, lot_id=lot.id)
            continue
        unit.supply_draws.change(row.id, amount=float(over))
        like = replace(_draw_draft_of(row), amount=float(part))
        write_portions(unit, like, (Portion(lot.id, part),))


def _bottles_of(unit: ReadUnit, bottling_id: int) -> list[tuple[int, Portion]]:
    """Return the bottles a bottling still holds, by supply and lot."""
    held: dict[tuple[int, int], Fraction] = {}
    for row in unit.supply_draws.where(bottling_id=bottling_id, order_by="id"):
        if row.lot_id is None or unit.supplies.get(row.supply_id).kind is not SupplyKind.BOTTLE:
            continue
        key = (row.supply_id, row.lot_id)
        held[key] = held.get(key, Fraction(0)) + exact(row.amount)
    return [
        (supply_id, Portion(lot_id, amount))
        for (supply_id, lot_id), amount in held.items()
        if amount > 0
    ]


def _facts(supply: Supply, amount: float) -> dict[str, object]:
    return {"name": supply.name, "amount": amount, "measure": supply.measure.value}


def _lot_facts(supply: Supply, lot: SupplyLotDraft) -> dict[str, object]:
    price = {"price_minor": lot.price_minor, "currency": lot.currency}
    return {**_facts(supply, lot.amount), **price}


def _tidy_text(text: str) -> str:
    tidy = text.strip()
    if len(tidy) > _TEXT_MAX:
        raise ImpossibleInput("text", len(tidy), high=_TEXT_MAX, reason="too_long")
    return tidy


def _draft_of(supply: Supply) -> SupplyDraft:
    return SupplyDraft(
        **{field: getattr(supply, field) for field in SupplyDraft.__dataclass_fields__}
    )


def _lot_draft_of(lot: SupplyLot) -> SupplyLotDraft:
    return SupplyLotDraft(
        **{field: getattr(lot, field) for field in SupplyLotDraft.__dataclass_fields__}
    )


def _draw_draft_of(row: SupplyDraw) -> SupplyDrawDraft:
    return SupplyDrawDraft(
        **{field: getattr(row, field) for field in SupplyDrawDraft.__dataclass_fields__}
    )
