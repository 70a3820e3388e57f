"""What a look back is made of: each batch that ever soured, its bottles, what was lost.

Reading it all is slow for years of records: run it as a job, and hand in what is known
already of batches that have not changed.
"""

from __future__ import annotations

import statistics
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, tzinfo
from typing import TYPE_CHECKING

from brewdesk.services.door import Door
from brewdesk.services.jarcourse import DAY, START_SLACK, JarCourse, taste_of, temperatures_of
from brewdesk.services.lineage import generations
from brewdesk.services.placecourse import SampleMeans
from brewdesk.services.surroundings import Whereabouts, stays_of, surroundings_of
from brewdesk.store.records import Batch, Bottling, Culture, Reading, Transfer, Vessel, VesselMove
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    BottlingState,
    CheckKind,
    CultureState,
    Look,
    Opened,
    Quantity,
    TasteMark,
    TeaKind,
    TransferKind,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

BATCHES_AT_A_TIME = 40  # in one view of the store: others want to read and write meanwhile
_READ = (Quantity.PH, Quantity.TASTE, Quantity.TEMPERATURE_C, Quantity.LOOK)
_BEGUN = (
    BatchStage.BREWING,
    BatchStage.SOURING,
    BatchStage.DRAWN_OFF,
    BatchStage.CLOSED,
    BatchStage.DISCARDED,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class PastBatch:
    """One batch that has begun to sour, as a look back sees it.

    ``place_id`` is where it stood longest. ``temperature_c`` is the mean of its days, from
    the place's log and its own thermometer; where nothing was measured it is the place's
    usual one and ``is_measured`` says no. ``ph`` is (day, pH) in order of time.
    """

    batch_id: int
    name: str
    tea_kind: TeaKind
    stage: BatchStage
    purpose: BatchPurpose
    started_at: datetime
    ended_at: datetime | None
    end_reason: str
    culture_id: int | None
    culture_name: str
    generation: int | None
    culture_age_days: float | None
    place_id: int
    place_name: str
    temperature_c: float
    is_measured: bool
    starter_share: float
    start_ph: float
    start_ph_low: float
    ph: tuple[tuple[float, float], ...]
    tastes: tuple[tuple[datetime, TasteMark], ...]
    saw_mold: bool
    lost_l: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PastBottling:
    """The bottles of one filling: how they opened, how they ended."""

    bottling_id: int
    batch_id: int
    name: str
    filled_at: datetime
    state: BottlingState
    ended_at: datetime | None
    end_reason: str
    opened: tuple[tuple[datetime, Opened, int], ...]
    vented: int
    left_count: int
    left_l: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LostCulture:
    """A culture that was lost, and why."""

    culture_id: int
    name: str
    at: datetime
    reason: str


@dataclass(frozen=True, slots=True)
class Drunk:
    """Litres that were drunk or given away: out of the jar, or out of bottles."""

    at: datetime
    batch_id: int
    volume_l: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Past:
    """All that a look back is made of, as it was at ``now``."""

    now: datetime
    zone: tzinfo
    batches: tuple[PastBatch, ...] = ()
    bottlings: tuple[PastBottling, ...] = ()
    lost_cultures: tuple[LostCulture, ...] = ()
    drunk: tuple[Drunk, ...] = ()


@dataclass(frozen=True, slots=True)
class _Known:
    """Names and kin, read once for all batches."""

    vessels: Mapping[int, Vessel]
    places: Mapping[int, str]
    cultures: Mapping[int, Culture]
    generations: Mapping[int, int]


def gather(door: Door, means: SampleMeans, known: Mapping[int, PastBatch]) -> Past:
    """Read the whole past; batches in ``known`` are taken from there. Slow: run it as a job.

    Raises
    ------
    StoreTrouble
        If the store cannot be read.
    """
    now = door.clock.now()
    whereabouts = Whereabouts()
    with door.store.read() as unit:
        begun = [
            batch
            for batch in unit.batches.where(stage=_BEGUN, order_by=("started_at", "id"))
            if batch.started_at is not None
        ]
        names = _names(unit)
    whereabouts.note(names.vessels.values())
    # One that still sours has a later end, and so another mean, each time.
    fresh = [batch for batch in begun if batch.id not in known or batch.stage.is_live]
    read: dict[int, PastBatch] = {}
    for first in range(0, len(fresh), BATCHES_AT_A_TIME):
        some = fresh[first : first + BATCHES_AT_A_TIME]
        with door.store.read() as unit:
            read.update(_read(unit, means, whereabouts, some, names, now))
    with door.store.read() as unit:
        bottlings, drunk = _bottles(unit)
        lost = _lost_cultures(unit)
    batches = [read.get(batch.id) or known.get(batch.id) for batch in begun]
    return Past(
        now=now,
        zone=door.clock.zone(),
        batches=tuple(one for one in batches if one is not None),
        bottlings=bottlings,
        lost_cultures=lost,
        drunk=drunk,
    )


def _names(unit: ReadUnit) -> _Known:
    cultures = {row.id: row for row in unit.cultures.where()}
    parents: dict[int, list[int]] = {}
    for link in unit.culture_parents.where():
        parents.setdefault(link.culture_id, []).append(link.parent_id)
    return _Known(
        vessels={row.id: row for row in unit.vessels.where()},
        places={row.id: row.name for row in unit.places.where()},
        cultures=cultures,
        generations=generations(tuple(cultures), parents),
    )


def _read(
    unit: ReadUnit,
    means: SampleMeans,
    whereabouts: Whereabouts,
    batches: Sequence[Batch],
    known: _Known,
    now: datetime,
) -> dict[int, PastBatch]:
    ids = tuple(batch.id for batch in batches)
    readings: dict[int, list[Reading]] = {}
    for row in unit.readings.where(batch_id=ids, quantity=_READ, order_by=("at", "id")):
        readings.setdefault(row.batch_id, []).append(row)
    moves: dict[int, list[VesselMove]] = {}
    for move in unit.vessel_moves.where(batch_id=ids, order_by=("at", "id")):
        moves.setdefault(move.batch_id, []).append(move)
    lost: dict[int, float] = {}
    for out in unit.transfers.where(from_batch_id=ids, kind=TransferKind.LOSS):
        if out.from_batch_id is not None:
            lost[out.from_batch_id] = lost.get(out.from_batch_id, 0.0) + out.volume_l
    found = {}
    for batch in batches:
        own = moves.get(batch.id, ())
        stays = stays_of(unit, batch, moves=own, whereabouts=whereabouts)
        longest = max(stays, key=lambda stay: min(stay.to_at, now) - stay.from_at, default=None)
        vessel = known.vessels[batch.vessel_id]
        course = JarCourse(
            batch,
            vessel,
            tuple(readings.get(batch.id, ())),
            surroundings=surroundings_of(unit, means, batch, moves=own, whereabouts=whereabouts),
        )
        place_id = vessel.place_id if longest is None else longest.place_id
        found[batch.id] = _past_batch(course, known, place_id, lost.get(batch.id, 0.0))
    return found


def _past_batch(course: JarCourse, known: _Known, place_id: int, lost_l: float) -> PastBatch:
    batch = course.batch
    culture = None if batch.culture_id is None else known.cultures.get(batch.culture_id)
    temperature_c = _mean_c(course)
    tastes = [(row.at, taste_of(row)) for row in course.readings]
    return PastBatch(
        batch_id=batch.id,
        name=batch.name,
        tea_kind=batch.tea_kind,
        stage=batch.stage,
        purpose=batch.purpose,
        started_at=course.start,
        ended_at=batch.ended_at,
        end_reason=batch.end_reason,
        culture_id=None if culture is None else culture.id,
        culture_name="" if culture is None else culture.name,
        generation=None if culture is None else known.generations.get(culture.id),
        culture_age_days=(
            None if culture is None else max((course.start - culture.born_at) / DAY, 0.0)
        ),
        place_id=place_id,
        place_name=known.places.get(place_id, ""),
        temperature_c=batch.place_temperature_c if temperature_c is None else temperature_c,
        is_measured=temperature_c is not None,
        starter_share=batch.starter_volume_l / batch.fill_volume_l,
        start_ph=batch.start_ph,
        start_ph_low=batch.start_ph_low,
        ph=tuple(_ph_points(course)),
        tastes=tuple((at, mark) for at, mark in tastes if mark is not None),
        saw_mold=any(
            row.quantity is Quantity.LOOK and row.text == Look.MOLD.value for row in course.readings
        ),
        lost_l=lost_l,
    )


def _ph_points(course: JarCourse) -> list[tuple[float, float]]:
    end = course.batch.ended_at
    return [
        (max((row.at - course.start) / DAY, 0.0), row.value)
        for row in course.readings
        if row.quantity is Quantity.PH
        and row.value is not None
        and row.at >= course.start - START_SLACK
        and (end is None or row.at <= end)
    ]


def _mean_c(course: JarCourse) -> float | None:
    """Return the mean of the days' means, so that a day read often counts once."""
    by_day: dict[int, list[float]] = {}
    for day, celsius in temperatures_of(course):
        by_day.setdefault(int(day // 1), []).append(celsius)
    if not by_day:
        return None
    return statistics.fmean(statistics.fmean(values) for values in by_day.values())


def _bottles(unit: ReadUnit) -> tuple[tuple[PastBottling, ...], tuple[Drunk, ...]]:
    counts: dict[int, int] = {}
    for group in unit.bottle_groups.where():
        counts[group.bottling_id] = counts.get(group.bottling_id, 0) + group.bottle_count
    opened: dict[int, list[tuple[datetime, Opened | None, int]]] = {}
    vents: dict[int, int] = {}
    for check in unit.bottle_checks.where(kind=(CheckKind.OPENED, CheckKind.VENTED)):
        if check.kind is CheckKind.VENTED:
            vents[check.bottling_id] = vents.get(check.bottling_id, 0) + 1
        else:
            entry = (check.at, check.opened, max(check.bottle_count, 1))
            opened.setdefault(check.bottling_id, []).append(entry)
    bottlings = unit.bottlings.where(order_by=("filled_at", "id"))
    drunk = [
        Drunk(row.at, row.from_batch_id or 0, row.volume_l)
        for row in _to_drink(unit, {bottling.transfer_id for bottling in bottlings})
    ]
    found = []
    for bottling in bottlings:
        own = opened.get(bottling.id, [])
        count = max(counts.get(bottling.id, 0), 1)
        each_l = bottling.drink_volume_l / count
        left = max(count - sum(number for _, _, number in own), 0)
        drunk += [Drunk(at, bottling.batch_id, number * each_l) for at, _, number in own]
        if bottling.state is BottlingState.FINISHED and bottling.ended_at is not None and left:
            drunk.append(Drunk(bottling.ended_at, bottling.batch_id, left * each_l))
        found.append(_past_bottling(bottling, own, vents.get(bottling.id, 0), left, each_l))
    return tuple(found), tuple(drunk)


def _to_drink(unit: ReadUnit, into_bottles: Collection[int | None]) -> list[Transfer]:
    """Return what was drawn off to drink, but for what went into bottles."""
    rows = unit.transfers.where(kind=TransferKind.DRINK)
    return [row for row in rows if row.id not in into_bottles and row.from_batch_id is not None]


def _past_bottling(
    bottling: Bottling,
    opened: Sequence[tuple[datetime, Opened | None, int]],
    vented: int,
    left: int,
    each_l: float,
) -> PastBottling:
    return PastBottling(
        bottling_id=bottling.id,
        batch_id=bottling.batch_id,
        name=bottling.name,
        filled_at=bottling.filled_at,
        state=bottling.state,
        ended_at=bottling.ended_at,
        end_reason=bottling.end_reason,
        opened=tuple((at, how, count) for at, how, count in opened if how is not None),
        vented=vented,
        left_count=left,
        left_l=left * each_l,
    )


def _lost_cultures(unit: ReadUnit) -> tuple[LostCulture, ...]:
    return tuple(
        LostCulture(culture_id=row.id, name=row.name, at=row.gone_at, reason=row.gone_to)
        for row in unit.cultures.where(state=CultureState.LOST, order_by=("gone_at", "id"))
        if row.gone_at is not None
    )
