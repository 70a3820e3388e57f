"""The temperatures of places: typed, and read from loggers' files.

An import keeps its samples under the hash of their content and adds one entry that names
them. Taking the import back takes the entry only, so that it can be done again.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.packedsamples import SAMPLE_BYTES, Packed, last_of
from brewdesk.services.placecourse import PlaceCourse, SampleMeans, course_in, series_of
from brewdesk.store.records import (
    Place,
    PlaceTemperature,
    PlaceTemperatureDraft,
    TemperatureLog,
    TemperatureLogDraft,
)
from culturecore.errors import ImpossibleInput

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

# What a thermometer in a room, a cellar or an outhouse can show; the rest is a slip or a
# broken sensor. Our choice.
LEAST_C, MOST_C = -40.0, 60.0
AHEAD = timedelta(days=1)  # clocks and zones differ; what is later still has not happened
WARMTH_STEP_H = 6
SUGGESTED_OVER = timedelta(days=30)
_LEAST_DAYS = 3  # fewer say nothing of what is usual
_LEAST_DIFFERENCE_C = 0.5  # less is not worth asking about
_LOG_NAME_LENGTH = 200
# Typed temperatures of several places looked through for the newest of each: weeks of them.
_LOOKED_BACK = 300
_NAMING = (ActKind.IMPORT_TEMPERATURES, ActKind.DROP_TEMPERATURES, ActKind.REMOVE_PLACE)


@dataclass(frozen=True, slots=True)
class LatestTemperature:
    """The newest temperature known of a place."""

    at: datetime
    temperature_c: float
    is_typed: bool


@dataclass(frozen=True, slots=True)
class UsualSuggestion:
    """Another usual temperature than the one set, as the log has it."""

    mean_c: float
    days: int
    usual_c: float


class PlaceLog:
    """Keep the temperatures of places."""

    def __init__(self, door: Door, means: SampleMeans | None = None) -> None:
        self._door = door
        self.means = means if means is not None else SampleMeans()

    # looking ---------------------------------------------------------------------------

    def typed(self, place_id: int) -> tuple[PlaceTemperature, ...]:
        """Return the temperatures the maker read in a place, newest first."""
        with self._door.store.read() as unit:
            return unit.place_temperatures.where(order_by=("-at", "-id"), place_id=place_id)

    def logs(self, place_id: int) -> tuple[TemperatureLog, ...]:
        """Return the loggers' files of a place, the one that reaches furthest first."""
        with self._door.store.read() as unit:
            return unit.temperature_logs.where(order_by=("-last_at", "-id"), place_id=place_id)

    def latest(self, place_id: int) -> LatestTemperature | None:
        """Return the newest temperature known of a place."""
        with self._door.store.read() as unit:
            return latest_of(unit, place_id)

    def span(self, place_id: int) -> tuple[datetime, datetime] | None:
        """Return when the temperatures of a place begin and end; None without any."""
        with self._door.store.read() as unit:
            instants = [row.at for row in unit.place_temperatures.where(place_id=place_id)]
            for log in unit.temperature_logs.where(place_id=place_id):
                instants += (log.first_at, log.last_at)
        return (min(instants), max(instants)) if instants else None

    def course_of(
        self, place_id: int, from_at: datetime, to_at: datetime, *, step_h: int | None = None
    ) -> PlaceCourse:
        """Return the course of a place's temperature between two instants, typed and logged.

        ``step_h`` is the width of the steps [h]; without it the finest that fits a picture.
        """
        with self._door.store.read() as unit:
            series = series_of(unit, place_id)
            return course_in(unit, self.means, series, from_at, to_at, step_h=step_h)

    def warmth_of(
        self, unit: ReadUnit, place_id: int, from_at: datetime, to_at: datetime
    ) -> tuple[tuple[datetime, float], ...]:
        """Return means of six hours by the instant in their middle, as one reading sees them."""
        series = series_of(unit, place_id)
        course = course_in(unit, self.means, series, from_at, to_at, step_h=WARMTH_STEP_H)
        return tuple(
            (point.at, point.temperature_c)
            for point in course.points
            if from_at <= point.at <= to_at
        )

    def suggestion(self, place: Place) -> UsualSuggestion | None:
        """Return what the last days say of a place's usual temperature, if it is another.

        The days count alike, whether each was logged by the minute or read once.
        """
        now = self._door.clock.now()
        course = self.course_of(place.id, now - SUGGESTED_OVER, now, step_h=24)
        if len(course.points) < _LEAST_DAYS:
            return None
        mean_c = sum(point.temperature_c for point in course.points) / len(course.points)
        if abs(mean_c - place.temperature_c) < _LEAST_DIFFERENCE_C:
            return None
        return UsualSuggestion(mean_c, len(course.points), place.temperature_c)

    # doing -----------------------------------------------------------------------------

    def read_place(
        self, place_id: int, temperature_c: float, at: datetime | None = None
    ) -> PlaceTemperature:
        """Keep a temperature that the maker read in a place.

        Raises
        ------
        ImpossibleInput
            For a temperature no room has, or an instant that is still to come.
        """
        now = self._door.clock.now()
        at = now if at is None else at.astimezone(UTC)
        if not (math.isfinite(temperature_c) and LEAST_C <= temperature_c <= MOST_C):
            raise ImpossibleInput(
                "temperature_c", temperature_c, low=LEAST_C, high=MOST_C, unit="degC"
            )
        if at > now + timedelta(minutes=1):
            raise ImpossibleInput("at", at, reason="in_future")
        draft = PlaceTemperatureDraft(place_id=place_id, at=at, temperature_c=temperature_c)
        return self._door.perform(
            ActKind.READ_PLACE,
            {"name": self._name_of(place_id), "temperature_c": temperature_c},
            lambda unit: unit.place_temperatures.add(draft),
            topics=Topic.PLACES,
        )

    def drop_reading(self, reading_id: int) -> None:
        """Take out a temperature that the maker read.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        with self._door.store.read() as unit:
            row = unit.place_temperatures.get(reading_id)
        self._door.perform(
            ActKind.DROP_PLACE_READING,
            {"name": self._name_of(row.place_id), "temperature_c": row.temperature_c},
            lambda unit: unit.place_temperatures.remove(reading_id),
            topics=Topic.PLACES,
        )

    def keep_samples(self, packed: Packed) -> None:
        """Keep samples before their entry is made. No act; slow for many: run it as a job."""
        with self._door.store.write() as unit:
            if not unit.temperature_samples.is_kept(packed.content_hash):
                unit.temperature_samples.keep(packed.content_hash, packed.chunks)

    def add_log(self, place_id: int, name: str, packed: Packed) -> TemperatureLog:
        """Enter a logger's file whose samples are packed; they are kept if they are not yet.

        Raises
        ------
        ImpossibleInput
            Field "samples", reason "empty" or "taken": the same samples are entered already.
        """
        if not packed.count:
            raise ImpossibleInput("samples", 0, reason="empty")
        first, last = last_of(packed.chunks[0][:SAMPLE_BYTES]), last_of(packed.chunks[-1])
        assert first is not None
        assert last is not None
        draft = TemperatureLogDraft(
            place_id=place_id,
            name=" ".join(name.split())[:_LOG_NAME_LENGTH] or packed.content_hash[:8],
            content_hash=packed.content_hash,
            sample_count=packed.count,
            first_at=datetime.fromtimestamp(first[0], UTC),
            last_at=datetime.fromtimestamp(last[0], UTC),
        )
        self.keep_samples(packed)

        def work(unit: UnitOfWork) -> TemperatureLog:
            same = unit.temperature_logs.where(place_id=place_id, content_hash=packed.content_hash)
            if same:
                raise ImpossibleInput("samples", same[0].name, reason="taken")
            return unit.temperature_logs.add(draft)

        return self._door.perform(
            ActKind.IMPORT_TEMPERATURES,
            {"name": self._name_of(place_id), "file": draft.name, "count": packed.count},
            work,
            topics=Topic.PLACES,
        )

    def drop_log(self, log_id: int) -> None:
        """Take out a logger's file.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        with self._door.store.read() as unit:
            row = unit.temperature_logs.get(log_id)
        self._door.perform(
            ActKind.DROP_TEMPERATURES,
            {"name": self._name_of(row.place_id), "file": row.name, "count": row.sample_count},
            lambda unit: unit.temperature_logs.remove(log_id),
            topics=Topic.PLACES,
        )

    def remove_place(self, place_id: int) -> None:
        """Remove a place with its temperatures.

        Raises
        ------
        ImpossibleInput
            Field "place_id", reason "vessels_here" or, if all of them are off the shelf,
            "retired_vessels_here"; the value is how many.
        """
        with self._door.store.read() as unit:
            place = unit.places.get(place_id)
            standing = unit.vessels.where(place_id=place_id)
        if standing:
            on_shelf = [vessel for vessel in standing if vessel.retired_at is None]
            reason = "vessels_here" if on_shelf else "retired_vessels_here"
            raise ImpossibleInput("place_id", len(on_shelf or standing), reason=reason)
        self._door.perform(
            ActKind.REMOVE_PLACE,
            {"name": place.name},
            lambda unit: _remove(unit, place_id),
            topics=Topic.PLACES,
        )

    # keeping house ---------------------------------------------------------------------

    def prepare(self) -> None:
        """Let go of samples that nothing names any more, and reckon the means of the rest.

        Samples stay while an act that can be undone or redone names them. Slow: run it as
        a job once the store is open.
        """
        with self._door.store.read() as unit:
            wanted = _named_by_acts(unit)
        with self._door.store.write() as writing:
            writing.temperature_samples.sweep(wanted)
        with self._door.store.read() as unit:
            for log in unit.temperature_logs.where():
                self.means.of(unit, log.content_hash)

    def _name_of(self, place_id: int) -> str:
        with self._door.store.read() as unit:
            return unit.places.get(place_id).name


def latest_of(unit: ReadUnit, place_id: int) -> LatestTemperature | None:
    """Return the newest temperature known of a place, without reading whole logs."""
    return latest_in(unit, (place_id,)).get(place_id)


def latest_in(unit: ReadUnit, place_ids: Iterable[int]) -> dict[int, LatestTemperature]:
    """Return the newest temperature of each place that has any; two reads and one a log."""
    wanted = tuple(place_ids)
    if not wanted:
        return {}
    found: dict[int, LatestTemperature] = {}
    typed = unit.place_temperatures.where(
        order_by=("-at", "-id"), limit=_LOOKED_BACK if len(wanted) > 1 else 1, place_id=wanted
    )
    for row in typed:
        found.setdefault(row.place_id, LatestTemperature(row.at, row.temperature_c, True))
    logs: dict[int, TemperatureLog] = {}
    for log in unit.temperature_logs.where(order_by=("-last_at", "-id"), place_id=wanted):
        logs.setdefault(log.place_id, log)
    for place_id, log in logs.items():
        if place_id in found and found[place_id].at >= log.last_at:
            continue
        last = last_of(unit.temperature_samples.tail(log.content_hash, SAMPLE_BYTES))
        if last is not None:
            found[place_id] = LatestTemperature(log.last_at, last[1], False)
    return found


def _remove(unit: UnitOfWork, place_id: int) -> None:
    for reading in unit.place_temperatures.where(place_id=place_id):
        unit.place_temperatures.remove(reading.id)
    for log in unit.temperature_logs.where(place_id=place_id):
        unit.temperature_logs.remove(log.id)
    unit.places.remove(place_id)


def _named_by_acts(unit: ReadUnit) -> Sequence[str]:
    named: set[str] = set()
    for act in unit.acts.repeatable([kind.value for kind in _NAMING]):
        for delta in unit.acts.deltas(act.id):
            for row in (delta.before, delta.after):
                if delta.table == "temperature_log" and row is not None:
                    named.add(str(row["content_hash"]))
    return sorted(named)
