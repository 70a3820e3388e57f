"""The temperature of places over time: typed and logged together, in steps of hours.

Hourly means of a logger's file are worked out once and kept in memory under the hash of its
content: what has the same hash is the same for ever.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from brewdesk.services.packedsamples import SECONDS_PER_HOUR, HourlyMeans, hourly
from brewdesk.store.records import PlaceTemperature, TemperatureLog

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

HOUR = timedelta(hours=1)
# An hour shows what a door left open does, six hours the swing of day and night.
STEPS_H = (1, 6, 24)
_MOST_POINTS = 1200  # more than a picture has room for


@dataclass(frozen=True, slots=True)
class CoursePoint:
    """What a place was like in one step of time; ``at`` is the middle of the step.

    ``low_c`` and ``high_c`` are the ends of what was logged in it. ``is_typed`` says that no
    logger saw it: the temperatures were read by the maker.
    """

    at: datetime
    temperature_c: float
    low_c: float
    high_c: float
    is_typed: bool = False


@dataclass(frozen=True, slots=True)
class PlaceCourse:
    """The course of a place's temperature in even steps; steps without a value are left out."""

    step_h: int
    points: tuple[CoursePoint, ...] = ()


class SampleMeans:
    """The hourly means of logs, by the hash of their content."""

    def __init__(self) -> None:
        self._means: dict[str, HourlyMeans] = {}

    def of(self, unit: ReadUnit, content_hash: str) -> HourlyMeans:
        """Return the hourly means of one content; slow the first time."""
        found = self._means.get(content_hash)
        if found is None:
            found = hourly(unit.temperature_samples.chunks(content_hash))
            self._means[content_hash] = found
        return found

    def reckon(self, content_hash: str, chunks: Sequence[bytes]) -> None:
        """Work the means of a content out beforehand. Slow: run it as a job."""
        if content_hash not in self._means:
            self._means[content_hash] = hourly(chunks)


@dataclass(slots=True)
class _Bin:
    total_c: float = 0.0
    count: int = 0
    low_c: float = float("inf")
    high_c: float = float("-inf")

    def add(self, mean_c: float, low_c: float, high_c: float, count: int) -> None:
        self.total_c += mean_c * count
        self.count += count
        self.low_c = min(self.low_c, low_c)
        self.high_c = max(self.high_c, high_c)


def step_for(from_at: datetime, to_at: datetime) -> int:
    """Return the finest step [h] that does not give more points than a picture has room for."""
    hours = (to_at - from_at) / HOUR
    if hours <= 8 * 24:
        return STEPS_H[0]
    return STEPS_H[1] if hours / STEPS_H[1] <= _MOST_POINTS else STEPS_H[2]


def course_between(
    typed: Sequence[PlaceTemperature],
    logs: Iterable[tuple[TemperatureLog, HourlyMeans]],
    from_at: datetime,
    to_at: datetime,
    step_h: int,
) -> PlaceCourse:
    """Merge what was typed and logged between two instants into steps of ``step_h`` hours.

    Several logs of one step count by their samples. A typed temperature holds for its step
    only where no logger saw it: one look at a thermometer says less than a logger's mean.
    """
    first, last = _hour_of(from_at), _hour_of(to_at)
    logged: dict[int, _Bin] = {}
    for _, means in logs:
        start = bisect_left(means.hours, first)
        for n in range(start, len(means.hours)):
            hour = means.hours[n]
            if hour > last:
                break
            place = logged.setdefault(hour // step_h, _Bin())
            place.add(means.means_c[n], means.lows_c[n], means.highs_c[n], means.counts[n])
    read: dict[int, _Bin] = {}
    for entry in typed:
        number = _hour_of(entry.at) // step_h
        if from_at <= entry.at <= to_at and number not in logged:
            celsius = entry.temperature_c
            read.setdefault(number, _Bin()).add(celsius, celsius, celsius, 1)
    points = [_point(number, step_h, found, False) for number, found in logged.items()]
    points += [_point(number, step_h, found, True) for number, found in read.items()]
    return PlaceCourse(step_h, tuple(sorted(points, key=lambda point: point.at)))


@dataclass(frozen=True, slots=True)
class PlaceSeries:
    """What was written down of a place's temperature: typed, and the logs it has."""

    typed: tuple[PlaceTemperature, ...]
    logs: tuple[TemperatureLog, ...]


def series_of(unit: ReadUnit, place_id: int) -> PlaceSeries:
    """Read what was written down of a place's temperature, without the logs' samples."""
    return PlaceSeries(
        unit.place_temperatures.where(order_by="at", place_id=place_id),
        unit.temperature_logs.where(place_id=place_id),
    )


def course_in(
    unit: ReadUnit,
    means: SampleMeans,
    series: PlaceSeries,
    from_at: datetime,
    to_at: datetime,
    *,
    step_h: int | None = None,
) -> PlaceCourse:
    """Return the course of a place's temperature between two instants, as one reading sees it."""
    logs = [
        (log, means.of(unit, log.content_hash))
        for log in series.logs
        if log.last_at >= from_at and log.first_at <= to_at
    ]
    return course_between(series.typed, logs, from_at, to_at, step_h or step_for(from_at, to_at))


def _point(number: int, step_h: int, found: _Bin, is_typed: bool) -> CoursePoint:
    middle_s = (number + 0.5) * step_h * SECONDS_PER_HOUR
    return CoursePoint(
        at=datetime.fromtimestamp(middle_s, UTC),
        temperature_c=found.total_c / found.count,
        low_c=found.low_c,
        high_c=found.high_c,
        is_typed=is_typed,
    )


def _hour_of(instant: datetime) -> int:
    return int(instant.timestamp() // SECONDS_PER_HOUR)
