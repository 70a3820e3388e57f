"""What is shown of a place: facts in words, entries to list, and its course ready to draw."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, time, timedelta, tzinfo
from enum import Enum

from brewdesk.services.door import Door
from brewdesk.services.placecourse import CoursePoint, PlaceCourse
from brewdesk.services.placelog import PlaceLog
from brewdesk.services.quantities import Quantities
from brewdesk.services.reminder_rules import wall_instant
from brewdesk.services.wording.loggers import count_text
from brewdesk.services.wording.moments import date_words, stamp_words
from brewdesk.services.wording.places import (
    course_words,
    liked_words,
    short_words,
    standing_words,
    suggestion_words,
    usual_words,
)
from brewdesk.store.records import Place
from culturecore import safety
from culturecore.units import Kind, from_canonical

DAY = timedelta(days=1)


class Span(Enum):
    """How far a picture reaches back."""

    DAY = 1
    WEEK = 7
    MONTH = 30
    ALL = 0


@dataclass(frozen=True, slots=True)
class PlaceLine:
    """One place in a list."""

    place: Place
    text: str


@dataclass(frozen=True, slots=True)
class PlaceEntry:
    """One typed temperature or one logger's file, to list and to take out."""

    key: tuple[str, int]
    what: str
    when: str


@dataclass(frozen=True, slots=True)
class PlaceFacts:
    """What is said of one place. ``suggestion`` is "" where nothing is proposed."""

    place: Place
    usual: str
    standing: str
    suggestion: str
    suggested_c: float | None
    entries: tuple[PlaceEntry, ...]


@dataclass(frozen=True, slots=True)
class CurveSample:
    """One step of a course: days since the picture's first midnight, in the maker's unit."""

    day: float
    value: float
    low: float
    high: float
    text: str
    is_typed: bool


@dataclass(frozen=True, slots=True)
class PlaceCurve:
    """A course ready to draw, in the maker's unit.

    ``origin`` is midnight on the maker's clock; days count from it. ``runs`` are the
    stretches without a gap. ``liked`` are the bounds of what suits a souring jar.
    """

    origin: datetime
    day_range: tuple[float, float]
    now_day: float
    runs: tuple[tuple[CurveSample, ...], ...]
    typed: tuple[CurveSample, ...]
    usual: float
    liked: tuple[float, float]
    unit: str
    step_h: int
    summary: str


class PlaceViews:
    """Looks at places for the window."""

    def __init__(self, door: Door, place_log: PlaceLog, quantities: Quantities) -> None:
        self._door = door
        self._log = place_log
        self._quantities = quantities

    def lines(self) -> tuple[PlaceLine, ...]:
        """Return the places for a list, oldest first."""
        with self._door.store.read() as unit:
            places = unit.places.where(order_by="id")
            vessels = unit.vessels.where(retired_at=None)
        show = self._quantities.show
        return tuple(
            PlaceLine(
                place,
                short_words(
                    place,
                    self._log.latest(place.id),
                    sum(vessel.place_id == place.id for vessel in vessels),
                    show,
                ),
            )
            for place in places
        )

    def facts(self, place: Place) -> PlaceFacts:
        """Return what is said of one place."""
        show, zone = self._quantities.show, self._door.clock.zone()
        with self._door.store.read() as unit:
            vessels = unit.vessels.where(
                order_by=("shelf_order", "id"), place_id=place.id, retired_at=None
            )
        found = self._log.suggestion(place)
        return PlaceFacts(
            place=place,
            usual=usual_words(place, self._log.latest(place.id), zone, show),
            standing=standing_words([vessel.name for vessel in vessels]),
            suggestion=suggestion_words(found, show) if found is not None else "",
            suggested_c=found.mean_c if found is not None else None,
            entries=self._entries(place.id),
        )

    def curve(self, place: Place, span: Span) -> PlaceCurve:
        """Return the course of a place ready to draw; without samples if there are none."""
        zone, now = self._door.clock.zone(), self._door.clock.now()
        from_at, to_at = self._bounds(place.id, span, now)
        course = self._log.course_of(place.id, from_at, to_at)
        origin = wall_instant(from_at.astimezone(zone).date(), time(0), zone)
        scale, unit = self._scale()
        samples = [self._sample(point, origin, scale, zone) for point in course.points]
        gap = 2.5 * course.step_h / 24.0
        low_c, high_c = safety.limit("place_low_c"), safety.limit("place_high_c")
        return PlaceCurve(
            origin=origin.astimezone(zone),
            day_range=((from_at - origin) / DAY, (to_at - origin) / DAY),
            now_day=(now - origin) / DAY,
            runs=_runs([sample for sample in samples if not sample.is_typed], gap),
            typed=tuple(self._typed(place.id, from_at, to_at, origin, scale)),
            usual=scale(place.temperature_c),
            liked=(scale(low_c), scale(high_c)),
            unit=unit,
            step_h=course.step_h,
            summary=self._summary(course, low_c, high_c),
        )

    def _summary(self, course: PlaceCourse, low_c: float, high_c: float) -> str:
        if not course.points:
            return ""
        show = self._quantities.show
        words = course_words(course, self._door.clock.zone(), show)
        is_liked = all(low_c <= point.low_c <= point.high_c <= high_c for point in course.points)
        return words if is_liked else f"{words} {liked_words(low_c, high_c, show)}"

    def span_with_news(self, place: Place) -> Span:
        """Return the narrowest span, from a week on, that shows something."""
        found = self._log.span(place.id)
        now = self._door.clock.now()
        if found is None:
            return Span.WEEK
        for span in (Span.WEEK, Span.MONTH):
            if found[1] >= now - span.value * DAY:
                return span
        return Span.ALL

    def _bounds(self, place_id: int, span: Span, now: datetime) -> tuple[datetime, datetime]:
        if span is not Span.ALL:
            return now - span.value * DAY, now
        found = self._log.span(place_id)
        if found is None:
            return now - Span.MONTH.value * DAY, now
        first, last = found[0], max(found[1], min(now, found[1] + DAY))
        return min(first, last - DAY), last

    def _scale(self) -> tuple[Callable[[float], float], str]:
        """Return how degC become the maker's unit; both scales are straight lines."""
        unit = self._quantities.unit(Kind.TEMPERATURE)
        zero = from_canonical(0.0, unit, Kind.TEMPERATURE)
        slope = (from_canonical(100.0, unit, Kind.TEMPERATURE) - zero) / 100.0
        return lambda celsius: zero + slope * celsius, unit

    def _sample(
        self,
        point: CoursePoint,
        origin: datetime,
        scale: Callable[[float], float],
        zone: tzinfo,
    ) -> CurveSample:
        return CurveSample(
            day=(point.at - origin) / DAY,
            value=scale(point.temperature_c),
            low=scale(point.low_c),
            high=scale(point.high_c),
            text=stamp_words(point.at, zone),
            is_typed=point.is_typed,
        )

    def _typed(
        self,
        place_id: int,
        from_at: datetime,
        to_at: datetime,
        origin: datetime,
        scale: Callable[[float], float],
    ) -> list[CurveSample]:
        zone = self._door.clock.zone()
        return [
            self._sample(
                CoursePoint(row.at, row.temperature_c, row.temperature_c, row.temperature_c, True),
                origin,
                scale,
                zone,
            )
            for row in reversed(self._log.typed(place_id))
            if from_at <= row.at <= to_at
        ]

    def _entries(self, place_id: int) -> tuple[PlaceEntry, ...]:
        zone, show = self._door.clock.zone(), self._quantities.show
        logs = [
            PlaceEntry(
                ("log", log.id),
                f"{log.name} ({count_text(log.sample_count)})",
                f"{date_words(log.first_at, zone)} – {date_words(log.last_at, zone)}",
            )
            for log in self._log.logs(place_id)
        ]
        typed = [
            PlaceEntry(
                ("typed", row.id),
                show(row.temperature_c, Kind.TEMPERATURE),
                stamp_words(row.at, zone),
            )
            for row in self._log.typed(place_id)
        ]
        return (*logs, *typed)


def _runs(samples: list[CurveSample], gap_days: float) -> tuple[tuple[CurveSample, ...], ...]:
    """Split a course where nothing was logged for longer than ``gap_days``."""
    runs: list[list[CurveSample]] = []
    for sample in samples:
        if not runs or sample.day - runs[-1][-1].day > gap_days:
            runs.append([])
        runs[-1].append(sample)
    return tuple(tuple(run) for run in runs)
