"""Where a batch stood while it soured, and how warm it was there.

A batch goes from place to place by being poured over into another vessel, or because its
vessel was carried elsewhere (an edit of the vessel).
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from itertools import pairwise
from typing import TYPE_CHECKING

from brewdesk.services.acts import ActKind
from brewdesk.services.jarcourse import Surroundings
from brewdesk.services.placecourse import PlaceSeries, SampleMeans, course_in, series_of
from brewdesk.store.records import Batch, Vessel, VesselMove

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

STEP_H = 6  # the forecast's own clock goes by a quarter of a day
# What a forecast takes; a jar indoors is warmer than a sensor in the frost outside.
_LEAST_C, _MOST_C = 0.0, 60.0
_EVER = datetime.max.replace(tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Stay:
    """A batch in one place, from one instant to another."""

    place_id: int
    from_at: datetime
    to_at: datetime


class Whereabouts:
    """Where vessels stood over time and what is known of the places; kept until told to forget."""

    def __init__(self) -> None:
        self._moved: dict[int, tuple[tuple[datetime, int, int], ...]] = {}
        self._place_of: dict[int, int] = {}
        self._series: dict[int, PlaceSeries] = {}

    def carried(self, unit: ReadUnit, vessel_id: int) -> tuple[tuple[datetime, int, int], ...]:
        """Return when a vessel was carried, from which place and to which, in order."""
        found = self._moved.get(vessel_id)
        if found is None:
            found = self._moved[vessel_id] = _carried(unit, vessel_id)
        return found

    def place_of(self, unit: ReadUnit, vessel_id: int) -> int:
        """Return the id of the place where a vessel stands now."""
        found = self._place_of.get(vessel_id)
        if found is None:
            found = self._place_of[vessel_id] = unit.vessels.get(vessel_id).place_id
        return found

    def note(self, vessels: Iterable[Vessel]) -> None:
        """Take over where vessels stand from rows that were read anyway."""
        self._place_of.update({vessel.id: vessel.place_id for vessel in vessels})

    def series(self, unit: ReadUnit, place_id: int) -> PlaceSeries:
        """Return what was written down of a place's temperature."""
        found = self._series.get(place_id)
        if found is None:
            found = self._series[place_id] = series_of(unit, place_id)
        return found

    def forget_vessels(self, vessel_ids: Collection[int] = ()) -> None:
        """Look at these vessels anew, or at all if none is named."""
        for vessel_id in tuple(vessel_ids or self._moved.keys() | self._place_of.keys()):
            self._moved.pop(vessel_id, None)
            self._place_of.pop(vessel_id, None)

    def forget_places(self) -> None:
        """Read what is known of the places anew."""
        self._series.clear()


def surroundings_of(
    unit: ReadUnit,
    means: SampleMeans,
    batch: Batch,
    *,
    moves: Sequence[VesselMove] | None = None,
    whereabouts: Whereabouts | None = None,
) -> Surroundings:
    """Return how warm it was around a batch that has begun to sour.

    Its ``moves`` from vessel to vessel, in order, are read if they are not given.
    """
    known = whereabouts if whereabouts is not None else Whereabouts()
    stays = stays_of(unit, batch, moves=moves, whereabouts=known)
    if not stays:
        return Surroundings()
    found: list[tuple[datetime, float]] = []
    for stay in stays:
        series = known.series(unit, stay.place_id)
        course = course_in(unit, means, series, stay.from_at, stay.to_at, step_h=STEP_H)
        found += [
            (point.at, min(max(point.temperature_c, _LEAST_C), _MOST_C))
            for point in course.points
            if stay.from_at <= point.at < stay.to_at
        ]
    if len(stays) == 1:
        return Surroundings(tuple(found))
    usual_c = unit.places.get(stays[-1].place_id).temperature_c
    return Surroundings(tuple(found), stays[-1].from_at, usual_c)


def stays_of(
    unit: ReadUnit,
    batch: Batch,
    *,
    moves: Sequence[VesselMove] | None = None,
    whereabouts: Whereabouts | None = None,
) -> tuple[Stay, ...]:
    """Return the places in which a batch has stood since it began to sour, in order."""
    if batch.started_at is None:
        return ()
    start, end = batch.started_at, batch.ended_at or _EVER
    if moves is None:
        moves = unit.vessel_moves.where(order_by=("at", "id"), batch_id=batch.id)
    known = whereabouts if whereabouts is not None else Whereabouts()
    vessel_ids = [move.from_vessel_id for move in moves] + [batch.vessel_id]
    edges = [start, *(min(max(move.at, start), end) for move in moves), end]
    found: list[Stay] = []
    for vessel_id, (since, until) in zip(vessel_ids, pairwise(edges), strict=True):
        found += _places_of(unit, known, vessel_id, since, until)
    return tuple(_joined(stay for stay in found if stay.from_at < stay.to_at))


def _places_of(
    unit: ReadUnit, known: Whereabouts, vessel_id: int, since: datetime, until: datetime
) -> Iterable[Stay]:
    """Return the places of a vessel between two instants."""
    changes = known.carried(unit, vessel_id)
    edges = [since, *(min(max(at, since), until) for at, _, _ in changes), until]
    places = [was for _, was, _ in changes] + [known.place_of(unit, vessel_id)]
    return [
        Stay(place, first, last)
        for place, (first, last) in zip(places, pairwise(edges), strict=True)
    ]


def _carried(unit: ReadUnit, vessel_id: int) -> tuple[tuple[datetime, int, int], ...]:
    changes: list[tuple[datetime, int, int]] = []
    for act in unit.acts.about("vessel", vessel_id, kinds=(ActKind.EDIT_VESSEL.value,)):
        for delta in unit.acts.deltas(act.id):
            if delta.table != "vessel" or delta.row_id != vessel_id:
                continue
            before, after = delta.before or {}, delta.after or {}
            was, became = before.get("place_id"), after.get("place_id")
            if isinstance(was, int) and isinstance(became, int) and was != became:
                changes.append((act.at, was, became))
    return tuple(sorted(changes))


def _joined(stays: Iterable[Stay]) -> list[Stay]:
    """Join stays in the same place that follow one another."""
    found: list[Stay] = []
    for stay in stays:
        if found and found[-1].place_id == stay.place_id:
            found[-1] = Stay(stay.place_id, found[-1].from_at, stay.to_at)
        else:
            found.append(stay)
    return found
