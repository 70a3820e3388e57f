"""What is to be written so that the kept reminders agree with the pantry of now.

Reads the facts of batches, cultures, bottlings and the meter, asks the rules, and compares.
Nothing is written here.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, time, tzinfo
from typing import TYPE_CHECKING

from brewdesk.services.bottle_reminder_rules import (
    BottlingFacts,
    merge_of_bottling,
    wanted_of_bottling,
)
from brewdesk.services.clock_doubt import FAR_AHEAD
from brewdesk.services.culture_reminder_rules import (
    CultureFacts,
    RestRhythm,
    film_looks,
    merge_of_culture,
    wanted_of_culture,
)
from brewdesk.services.meter_reminder_rules import MeterFacts, merge_of_meter, wanted_of_meter
from brewdesk.services.reminder_facts import ReadingsBook, ReadingsTaken
from brewdesk.services.reminder_rules import (
    BatchFacts,
    Merge,
    TastingWindow,
    merge,
    wanted,
)
from brewdesk.services.restingliquid import is_stated
from brewdesk.services.stock_reminder_rules import LowSupply, is_of_stock, merge_of_stock
from brewdesk.services.stockdraws import lots_in
from brewdesk.store.records import Batch, Care, Culture, Reading, Reminder
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    BottlingState,
    CareKind,
    CultureState,
    Method,
    Quantity,
    ReminderKind,
    ReminderState,
)
from culturecore.stockcost import exact, left_in

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

OPEN_STATES = (ReminderState.WAITING, ReminderState.SHOWN, ReminderState.SNOOZED)
LIVE_STAGES = tuple(stage for stage in BatchStage if stage.is_live)
_NOTHING_TAKEN = ReadingsTaken()
_ENDED_BOTTLINGS = (BottlingState.FINISHED, BottlingState.DISCARDED)


@dataclass(frozen=True, slots=True, kw_only=True)
class Moment:
    """The instant, the zone and the maker's settings under which the rules are asked."""

    now: datetime
    zone: tzinfo
    hour: time
    rhythm: RestRhythm
    calibrate_days: float
    window_of: Callable[[int], TastingWindow | None]
    readings: ReadingsBook


def batches_kept(unit: ReadUnit | UnitOfWork, still_open: Iterable[Reminder]) -> tuple[Batch, ...]:
    """Return the batches that want reminders or still have some."""
    batches = {row.id: row for row in unit.batches.where(stage=LIVE_STAGES)}
    others = {
        row.batch_id
        for row in still_open
        if row.batch_id is not None and row.batch_id not in batches
    }
    if others:
        batches.update({row.id: row for row in unit.batches.where(id=tuple(others))})
    return tuple(batches.values())


def batch_merges(
    unit: ReadUnit | UnitOfWork, batches: Sequence[Batch], moment: Moment
) -> tuple[Merge, ...]:
    """Return what these batches ask to be written."""
    readings = moment.readings.of(unit, batches)
    rows: dict[int | None, list[Reminder]] = {}
    for row in unit.reminders.where(batch_id=tuple(batch.id for batch in batches)):
        rows.setdefault(row.batch_id, []).append(row)
    merges = []
    for batch in batches:
        facts = _facts_of(batch, readings.get(batch.id, _NOTHING_TAKEN), moment)
        kept = rows.get(batch.id, ())
        asked = wanted(facts, now=moment.now, zone=moment.zone, hour=moment.hour)
        if batch.purpose is BatchPurpose.CULTURE and facts.stage is BatchStage.SOURING:
            asked += film_looks(
                facts.started_at, now=moment.now, zone=moment.zone, hour=moment.hour
            )
        merges.append(merge(facts, kept, asked))
    return tuple(one for one in merges if not one.is_empty())


def other_merges(
    unit: ReadUnit | UnitOfWork,
    still_open: Sequence[Reminder],
    bottlings: Iterable[BottlingFacts],
    moment: Moment,
) -> tuple[Merge, ...]:
    """Return what all but the batches ask to be written.

    First what a clock that ran far ahead has shown before its time, since the rules may
    have more to say of the same rows.
    """
    merges = (
        _shown_too_early(still_open, moment.now),
        *_culture_merges(unit, still_open, moment),
        *_bottling_merges(unit, still_open, bottlings, moment),
        *_meter_merges(unit, still_open, moment),
        *_stock_merges(unit, still_open, moment),
    )
    return tuple(one for one in merges if not one.is_empty())


def _shown_too_early(still_open: Iterable[Reminder], now: datetime) -> Merge:
    """Let wait again what was shown, or put off, by a clock that ran far ahead of the present."""
    change: dict[int, dict[str, object]] = {}
    for row in still_open:
        if row.shown_at is None or row.shown_at - now <= FAR_AHEAD:
            continue
        is_to_come = row.state is ReminderState.SHOWN and row.due_at > now
        if row.state is ReminderState.SNOOZED or is_to_come:
            change[row.id] = {
                "state": ReminderState.WAITING,
                "shown_at": None,
                "snoozed_until": None,
            }
    return Merge(change=change)


def _culture_merges(
    unit: ReadUnit | UnitOfWork, still_open: Iterable[Reminder], moment: Moment
) -> list[Merge]:
    resting = {row.id: row for row in unit.cultures.where(state=CultureState.RESTING)}
    ids = resting.keys() | {row.culture_id for row in still_open if row.culture_id is not None}
    if not ids:
        return []
    kept: dict[int, list[Reminder]] = {}
    for row in unit.reminders.where(culture_id=tuple(ids)):
        kept.setdefault(row.culture_id or 0, []).append(row)
    others = tuple(ids - resting.keys())
    cultures = resting | {row.id: row for row in unit.cultures.where(id=others) if others}
    care: dict[int, list[Care]] = {}
    for one in unit.care.where(culture_id=tuple(ids), order_by="at"):
        care.setdefault(one.culture_id, []).append(one)
    ended: dict[int, list[datetime]] = {}
    for batch in unit.batches.where(culture_id=tuple(ids)):
        if batch.culture_id is not None and batch.ended_at is not None:
            ended.setdefault(batch.culture_id, []).append(batch.ended_at)
    merges = []
    for culture_id in sorted(ids):
        culture = cultures[culture_id]
        asked = wanted_of_culture(
            _culture_facts(culture, care.get(culture_id, ()), ended.get(culture_id, ())),
            moment.rhythm,
            now=moment.now,
            zone=moment.zone,
            hour=moment.hour,
        )
        merges.append(merge_of_culture(culture, kept.get(culture_id, ()), asked))
    return merges


def _bottling_merges(
    unit: ReadUnit | UnitOfWork,
    still_open: Iterable[Reminder],
    bottlings: Iterable[BottlingFacts],
    moment: Moment,
) -> list[Merge]:
    """Follow the facts; of bottlings without any only those that have ended are tidied up.

    What state a bottling is in the rows say: facts may be older.
    """
    told = {facts.bottling_id: facts for facts in bottlings}
    ids = told.keys() | {row.bottling_id for row in still_open if row.bottling_id is not None}
    if not ids:
        return []
    known: list[BottlingFacts] = []
    for row in unit.bottlings.where(id=tuple(ids)):
        facts = told.get(row.id)
        if facts is not None:
            known.append(replace(facts, state=row.state))
        elif row.state in _ENDED_BOTTLINGS:
            known.append(
                BottlingFacts(bottling_id=row.id, state=row.state, filled_at=row.filled_at)
            )
    kept: dict[int, list[Reminder]] = {}
    for reminder in unit.reminders.where(bottling_id=tuple(facts.bottling_id for facts in known)):
        kept.setdefault(reminder.bottling_id or 0, []).append(reminder)
    merges = []
    for facts in known:
        rows = kept.get(facts.bottling_id, [])
        asked = wanted_of_bottling(facts, rows, now=moment.now, zone=moment.zone, hour=moment.hour)
        merges.append(merge_of_bottling(facts, rows, asked))
    return merges


def _meter_merges(
    unit: ReadUnit | UnitOfWork, still_open: Iterable[Reminder], moment: Moment
) -> list[Merge]:
    last = _by_meter(unit, "-at")
    if not last and all(row.kind is not ReminderKind.CALIBRATE for row in still_open):
        return []
    calibrated = unit.calibrations.where(order_by="-at", limit=1)
    first = () if calibrated or not last else _by_meter(unit, "at")
    facts = MeterFacts(
        calibrated_at=calibrated[0].at if calibrated else None,
        first_read_at=first[0].at if first else None,
        last_read_at=last[0].at if last else None,
    )
    asked = wanted_of_meter(
        facts, moment.calibrate_days, now=moment.now, zone=moment.zone, hour=moment.hour
    )
    return [merge_of_meter(unit.reminders.where(kind=ReminderKind.CALIBRATE), asked)]


def _stock_merges(
    unit: ReadUnit | UnitOfWork, still_open: Iterable[Reminder], moment: Moment
) -> list[Merge]:
    marked = [row for row in unit.supplies.where(retired_at=None) if row.low_amount is not None]
    low = []
    for supply in marked:
        lots = lots_in(unit, supply.id)
        # What was never bought does not run low.
        if lots and left_in(lots) < exact(supply.low_amount or 0.0):
            low.append(LowSupply(supply_id=supply.id, name=supply.name, lot_count=len(lots)))
    if not low and not any(is_of_stock(row) for row in still_open):
        return []
    kept = unit.reminders.where(kind=ReminderKind.OWN, batch_id=None)
    return [merge_of_stock(kept, low, now=moment.now, zone=moment.zone, hour=moment.hour)]


def _by_meter(unit: ReadUnit | UnitOfWork, order_by: str) -> tuple[Reading, ...]:
    return unit.readings.where(
        quantity=Quantity.PH, method=Method.METER, order_by=order_by, limit=1
    )


def _facts_of(batch: Batch, readings: ReadingsTaken, moment: Moment) -> BatchFacts:
    is_souring = batch.stage is BatchStage.SOURING
    return BatchFacts(
        batch_id=batch.id,
        stage=batch.stage,
        started_at=batch.started_at,
        ended_at=batch.ended_at,
        ph_readings=tuple(readings.ph),
        window=moment.window_of(batch.id) if is_souring else None,
        purpose=batch.purpose,
        looks=tuple(readings.looks),
    )


def _culture_facts(
    culture: Culture, care: Sequence[Care], ended: Sequence[datetime]
) -> CultureFacts:
    rested = [row.at for row in care if is_stated(row)]
    begun = max([*rested, *ended], default=culture.born_at)
    fed = [row.at for row in care if row.kind is CareKind.FED]
    poured = [row.at for row in care if row.volume_l is not None]
    return CultureFacts(
        culture_id=culture.id,
        state=culture.state,
        fed_at=max([begun, *fed]),
        poured_at=max([begun, *poured]),
        is_in_vessel=culture.vessel_id is not None,
    )
