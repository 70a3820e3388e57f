"""Starter from a souring jar or a resting store: into a plan, or into an empty vessel."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from typing import TYPE_CHECKING, Any

from brewdesk.services.jarnow import StarterKnown, starter_of_batch, starter_of_store
from brewdesk.services.ledger import ROUNDING_L, balance_in, check_part, check_volume
from brewdesk.services.movingover import check_clean, check_souring
from brewdesk.services.restingliquid import after_pouring, liquid_of
from brewdesk.services.stockdraws import lay_out
from brewdesk.store.records import Batch, CareDraft, Culture, Transfer, TransferDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, CareKind, CultureState, TransferKind
from culturecore.sweettea import Starter, Wish

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork


@dataclass(frozen=True, slots=True, kw_only=True)
class Lender:
    """Where starter comes from: a souring batch, or a culture at rest in its liquid."""

    batch: Batch | None = None
    culture: Culture | None = None

    @property
    def name(self) -> str:
        """What the maker calls it."""
        row = self.batch or self.culture
        return "" if row is None else row.name

    @property
    def columns(self) -> dict[str, int]:
        """Where a batch keeps who lent its starter."""
        found = {}
        if self.batch is not None:
            found["starter_batch_id"] = self.batch.id
        culture_id = self.culture.id if self.culture is not None else None
        if culture_id is None and self.batch is not None:
            culture_id = self.batch.culture_id
        if culture_id is not None:
            found["starter_culture_id"] = culture_id
        return found


@dataclass(frozen=True, slots=True, kw_only=True)
class StarterSuggestion:
    """How much starter to keep back, and for what: the next plan's name, or a refill."""

    volume_l: float
    plan_name: str | None = None


def find_lender(unit: ReadUnit, batch_id: int | None, culture_id: int | None) -> Lender:
    """Return who lends, refusing what has nothing to lend.

    Raises
    ------
    ImpossibleInput
        Field "from_batch_id" or "from_culture_id" with reason "no_liquid" or "suspect".
    """
    if batch_id is not None:
        batch = unit.batches.get(batch_id)
        check_souring("from_batch_id", batch)
        check_clean("from_batch_id", batch)
        return Lender(batch=batch)
    if culture_id is None:
        raise ImpossibleInput("from_batch_id", None, reason="no_liquid")
    culture = unit.cultures.get(culture_id)
    check_store("from_culture_id", culture)
    return Lender(culture=culture)


def check_store(field: str, culture: Culture) -> None:
    """Refuse a culture that does not rest in liquid of its own.

    Raises
    ------
    ImpossibleInput
        Field ``field`` with reason "no_liquid" or "suspect".
    """
    if culture.state is not CultureState.RESTING or culture.vessel_id is None:
        raise ImpossibleInput(field, culture.id, reason="no_liquid")
    if culture.suspect_at is not None:
        raise ImpossibleInput(field, culture.id, reason="suspect")


def may_keep(culture: Culture) -> bool:
    """Whether starter may be kept with a culture."""
    is_there = culture.state is CultureState.RESTING and culture.vessel_id is not None
    return is_there and culture.suspect_at is None


def find_plan(unit: ReadUnit, batch_id: int | None, vessel_id: int | None) -> Batch | None:
    """Return the plan that starter is lent to; None if one has to be opened for a vessel.

    Raises
    ------
    ImpossibleInput
        Field "to_batch_id" with reason "not_planned".
    """
    if batch_id is None:
        if vessel_id is None:
            raise ImpossibleInput("to_batch_id", None, reason="not_planned")
        return None
    plan = unit.batches.get(batch_id)
    if plan.stage is not BatchStage.PLANNED:
        raise ImpossibleInput("to_batch_id", plan.id, reason="not_planned")
    return plan


def keep_with(
    unit: UnitOfWork, batch: Batch, culture: Culture, volume_l: float, now: datetime
) -> Transfer:
    """Pour starter to a culture at rest, within a unit of work."""
    after_l = after_pouring(unit, culture, volume_l, now)
    unit.cultures.change(culture.id, rest_volume_l=volume_l if after_l is None else after_l)
    unit.care.add(
        CareDraft(culture_id=culture.id, at=now, kind=CareKind.TOPPED_UP, volume_l=volume_l)
    )
    return unit.transfers.add(
        TransferDraft(
            at=now,
            kind=TransferKind.STARTER,
            volume_l=volume_l,
            from_batch_id=batch.id,
            to_culture_id=culture.id,
        )
    )


def check_loan(unit: ReadUnit, lender: Lender, volume_l: float, now: datetime) -> float:
    """Return a volume that the lender has; a souring jar is never lent empty.

    Raises
    ------
    ImpossibleInput
        Field "volume_l".
    """
    if lender.batch is not None:
        return check_part("volume_l", volume_l, balance_in(unit, lender.batch).now_l)
    return check_volume("volume_l", volume_l, resting_now_l(unit, lender.culture, now))


def resting_now_l(unit: ReadUnit | UnitOfWork, culture: Culture | None, now: datetime) -> float:
    """Return what a culture rests in, less what has likely evaporated; 0 if nothing is known."""
    liquid = None if culture is None else liquid_of(unit, culture, now)
    return 0.0 if liquid is None else liquid.now_l.value


def known_of(unit: ReadUnit, lender: Lender) -> StarterKnown:
    """Return what was measured of what is lent."""
    if lender.batch is not None:
        return starter_of_batch(unit, lender.batch)
    return starter_of_store(unit, lender.culture.id) if lender.culture else StarterKnown()


def with_starter(wish: Wish, known: StarterKnown, volume_l: float) -> Wish:
    """Return a wish with this starter and this much of it."""
    starter = wish.starter
    if known.ph is not None:
        starter = Starter(ph=known.ph, ta_g_per_l=known.ta_g_per_l, taste=starter.taste)
    return replace(wish, starter=starter, starter_volume_l=volume_l)


def lent_already_l(unit: ReadUnit | UnitOfWork, batch_id: int) -> float:
    """Return how much starter was lent to a plan before."""
    rows = unit.transfers.where(to_batch_id=batch_id, kind=TransferKind.STARTER)
    return sum(row.volume_l for row in rows)


def lend(
    unit: UnitOfWork,
    lender: Lender,
    batch: Batch,
    volume_l: float,
    *,
    known: StarterKnown,
    plan: dict[str, Any],
    now: datetime,
) -> Batch:
    """Write down a loan within a unit of work; ``plan`` are the columns that change with it."""
    culture = lender.culture
    unit.transfers.add(
        TransferDraft(
            at=now,
            kind=TransferKind.STARTER,
            volume_l=volume_l,
            from_batch_id=None if lender.batch is None else lender.batch.id,
            from_culture_id=None if culture is None else culture.id,
            to_batch_id=batch.id,
            ph=known.ph,
            ta_g_per_l=known.ta_g_per_l,
        )
    )
    if culture is not None:
        left_l = resting_now_l(unit, culture, now) - volume_l
        unit.cultures.change(culture.id, rest_volume_l=0.0 if left_l < ROUNDING_L else left_l)
        unit.care.add(
            CareDraft(culture_id=culture.id, at=now, kind=CareKind.STARTER_TAKEN, volume_l=volume_l)
        )
    changed = unit.batches.change(batch.id, **(plan | lender.columns))
    lay_out(unit, changed, None)
    return changed
