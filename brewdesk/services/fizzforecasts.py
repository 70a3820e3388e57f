"""How bottlings stand now: pressure, fizz, alcohol, and by when to chill.

What the checks of one bottling say of its pace teaches the next ones of the same pantry, as
far as bottlings of one kitchen are alike; see culturecore.fizzpace.
"""

from __future__ import annotations

import math
from collections import OrderedDict
from collections.abc import Callable, Sequence
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.bottle_reminder_rules import BottlingFacts
from brewdesk.services.bottlingparts import BottlingParts, kitchen_c, parts_in
from brewdesk.services.bottlingplan import DAY, ceiling_of, filling_of
from brewdesk.services.bottlings import OPEN_STATES, USUAL_COLD_C
from brewdesk.services.bottlingview import (
    ROUGH_GAUGE_SD_BAR,
    Worked,
    facts_of,
    now_day_of,
    view_of,
    wish_of_group,
)
from brewdesk.services.bottlingview import BottlingView as BottlingView
from brewdesk.services.bottlingview import Urgency as Urgency
from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.fizzwork import CourseKey, courses_of
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.store.records import BottleCheck, BottleGroup, Bottling
from culturecore.bottlecourse import BottleCourse
from culturecore.bottled import Bottled, Check, WarmStep
from culturecore.fizzpace import Pace, pooled
from culturecore.safety import limit
from culturecore.stages import CheckKind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

WarmthOf = Callable[["ReadUnit", int, datetime, datetime], Sequence[tuple[datetime, float]]]

_HOLDS_DAYS = 1.5  # how long one look at a thermometer tells of a place
_MOST_LESSONS = 12  # earlier bottlings beyond these change next to nothing
_AHEAD_DAYS = 35.0  # the picture goes on so far after today
_MOST_DAYS = 400.0
_KEPT = 128


def typed_warmth(
    unit: ReadUnit, place_id: int, since: datetime, until: datetime
) -> Sequence[tuple[datetime, float]]:
    """Return the temperatures of a place that the maker read between two instants."""
    rows = unit.place_temperatures.where(place_id=place_id, order_by=("at", "id"))
    return [(row.at, row.temperature_c) for row in rows if since <= row.at <= until]


class _NotYet(Exception):  # noqa: N818  # no fault: it is being worked out
    """Something is not worked out yet."""


class FizzForecasts(QObject):
    """The newest view of each bottling; what was worked out is kept for as long as it holds.

    ``ready`` says that something has been worked out since `all_open` was asked. Without
    ``jobs`` all is worked out at once, on the caller's thread.
    """

    ready = Signal()

    def __init__(
        self,
        door: Door,
        *,
        warmth_of: WarmthOf = typed_warmth,
        jobs: JobRunner | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._warmth_of = warmth_of
        self._jobs = jobs
        self._courses: OrderedDict[CourseKey, BottleCourse] = OrderedDict()
        self._parts: dict[int, BottlingParts] = {}
        self._last: dict[int, Worked] = {}
        self._missing: dict[CourseKey, None] | None = None  # while none is worked out here
        self._wanted: dict[CourseKey, None] = {}
        self._asked: set[CourseKey] = set()
        self._is_asking = False
        door.changes.changed.connect(self._on_changed)

    def now(self, bottling_id: int) -> BottlingView:
        """Return how a bottling stands now. Slow, if that has not been worked out yet.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            return view_of(self._worked(unit, bottling_id, now), now, self._door.clock.zone())

    def all_open(self) -> tuple[BottlingView, ...]:
        """Return all bottlings that are conditioning or chilled, the most urgent first.

        Those of which nothing is known yet are left out, see `being_worked_out`; one whose
        newest figures are on their way stands as it was last worked out.
        """
        now, zone = self._door.clock.now(), self._door.clock.zone()
        found = self._look(now).values()
        views = [view_of(worked, now, zone) for worked in found if worked is not None]
        loudness = list(Urgency)
        return tuple(sorted(views, key=lambda view: -loudness.index(view.urgency)))

    def being_worked_out(self) -> tuple[Bottling, ...]:
        """Return the open bottlings of which nothing is known yet."""
        found = self._look(self._door.clock.now())
        with self._door.store.read() as unit:
            return tuple(
                self._parts_in(unit, one).bottling for one, worked in found.items() if not worked
            )

    def pace(self) -> Pace:
        """Return how lively the next bottling of this pantry is likely to be.

        Slow, if what earlier ones teach has not been worked out yet.
        """
        with self._door.store.read() as unit:
            return self._pace(unit, before=None)

    def reminder_facts(self) -> tuple[BottlingFacts, ...]:
        """Return what reminders of the open bottlings are made from, as far as it is known."""
        return tuple(facts_of(view) for view in self.all_open())

    # --- working out apart ----------------------------------------------------------------------

    def _look(self, now: datetime) -> dict[int, Worked | None]:
        """Return what is known of the open bottlings, and have worked out what is missing."""
        with self._door.store.read() as unit:
            rows = unit.bottlings.where(state=OPEN_STATES, order_by=("-filled_at", "-id"))
            found = {row.id: self._known(unit, row.id, now) for row in rows}
        self._last = {one: worked for one, worked in self._last.items() if one in found}
        return self._look(now) if self._is_answered_at_once() else found

    def _known(self, unit: ReadUnit, bottling_id: int, now: datetime) -> Worked | None:
        """Return what is worked out of a bottling, noting what is missing of the newest."""
        if self._jobs is None:
            return self._worked(unit, bottling_id, now)
        self._missing = {}
        try:
            self._last[bottling_id] = self._worked(unit, bottling_id, now)
        except _NotYet:
            self._wanted.update(self._missing)
        finally:
            self._missing = None
        last = self._last.get(bottling_id)
        # A course of an hour ago is nearly true; after a new look at the bottles it is not.
        is_true = last is not None and last.parts == self._parts_in(unit, bottling_id)
        return last if is_true else None

    def _is_answered_at_once(self) -> bool:
        """Have worked out what is missing and not on its way; whether that is done already."""
        wanted, self._wanted = self._wanted, {}
        keys = tuple(key for key in wanted if key not in self._asked)
        if not keys or self._jobs is None:
            return False
        self._asked.update(keys)
        self._is_asking = True
        self._jobs.run(
            partial(courses_of, keys),
            partial(self._on_done, keys),
            partial(self._on_failed, keys),
            pool=Pool.APART,
            is_urgent=True,
        )
        self._is_asking = False
        return self._asked.isdisjoint(keys)

    def _on_done(self, keys: tuple[CourseKey, ...], courses: tuple[BottleCourse, ...]) -> None:
        self._asked.difference_update(keys)
        for key, course in zip(keys, courses, strict=True):
            self._keep(key, course)
        if not self._is_asking:
            self.ready.emit()

    def _on_failed(self, keys: tuple[CourseKey, ...], error: BaseException) -> None:
        self._asked.difference_update(keys)
        raise error

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.BOTTLINGS):
            self._parts.clear()

    # --- how it is worked out -----------------------------------------------------------------

    def _pace(self, unit: ReadUnit, *, before: Bottling | None) -> Pace:
        """Return what earlier bottlings teach; one that has no checks teaches nothing."""
        rows = unit.bottlings.where(order_by=("-filled_at", "-id"))
        lessons: list[tuple[float, ...]] = []
        is_whole = True
        for row in rows:
            is_later = before is not None and (row.filled_at, row.id) >= (
                before.filled_at,
                before.id,
            )
            if is_later or len(lessons) == _MOST_LESSONS:
                continue
            parts = self._parts_in(unit, row.id)
            if not any(check.kind in _TEACHING for check in parts.checks):
                continue
            until = max(check.at for check in parts.checks)
            warmth = self._warmth(unit, row, until)
            bottled = self._bottled(parts, parts.groups[0], warmth, Pace(), until)
            # Longer than any check, and the same whenever it is asked for: found again.
            course = self._course(bottled, _horizon((until - row.filled_at) / DAY))
            is_whole = is_whole and course is not None
            lessons.append(() if course is None else course.lesson)
        if not is_whole:
            raise _NotYet
        return pooled(lessons)

    def _parts_in(self, unit: ReadUnit, bottling_id: int) -> BottlingParts:
        if bottling_id not in self._parts:
            self._parts[bottling_id] = parts_in(unit, bottling_id)
        return self._parts[bottling_id]

    def _warmth(
        self, unit: ReadUnit, bottling: Bottling, until: datetime
    ) -> tuple[tuple[datetime, float], ...]:
        if bottling.place_id is None:
            return ()
        end = min(until, bottling.chilled_at or until)
        return tuple(self._warmth_of(unit, bottling.place_id, bottling.filled_at, end))

    def _bottled(
        self,
        parts: BottlingParts,
        group: BottleGroup,
        warmth: Sequence[tuple[datetime, float]],
        pace: Pace,
        now: datetime,
    ) -> Bottled:
        bottling = parts.bottling
        low, high = _sugar(parts)
        ceiling = ceiling_of(wish_of_group(group))
        chilled = bottling.chilled_at
        return Bottled(
            filling=filling_of(wish_of_group(group), bottling.place_temperature_c),
            ceiling_bar=limit("bottle_ceiling_bar") if ceiling is None else ceiling,
            sugar_low_g_per_l=low,
            sugar_high_g_per_l=high,
            open_jar_c=kitchen_c(bottling.open_jar_c),
            place_temperature_c=kitchen_c(bottling.place_temperature_c),
            warmest_c=kitchen_c(max(bottling.warmest_c, bottling.place_temperature_c)),
            steps=_steps(bottling, warmth, now),
            checks=tuple(_check_of(bottling, check) for check in parts.checks),
            chilled_day=None if chilled is None else _day(bottling, chilled),
            cold_c=kitchen_c(
                USUAL_COLD_C if bottling.cold_temperature_c is None else bottling.cold_temperature_c
            ),
            pace=pace,
        )

    def _course(self, bottled: Bottled, horizon_days: float) -> BottleCourse | None:
        """Return a course; None if it is only to be noted that it is missing."""
        key = (bottled, horizon_days)
        found = self._courses.get(key)
        if found is None:
            if self._missing is not None:
                self._missing[key] = None
                return None
            (found,) = courses_of((key,))
        self._keep(key, found)
        return found

    def _keep(self, key: CourseKey, course: BottleCourse) -> None:
        self._courses[key] = course
        self._courses.move_to_end(key)
        if len(self._courses) > _KEPT:
            self._courses.popitem(last=False)

    def _worked(self, unit: ReadUnit, bottling_id: int, now: datetime) -> Worked:
        """Return what is worked out of a bottling's kinds of bottles. Raises `_NotYet`."""
        parts = self._parts_in(unit, bottling_id)
        warmth = self._warmth(unit, parts.bottling, now)
        pace = self._pace(unit, before=parts.bottling)
        horizon = _horizon(now_day_of(parts.bottling, now))
        found = []
        is_whole = True
        for group in parts.groups:
            course = self._course(self._bottled(parts, group, warmth, pace, now), horizon)
            if course is None:
                is_whole = False
            else:
                found.append((group, course))
        if not is_whole:
            raise _NotYet
        return Worked(parts, tuple(found))


_TEACHING = (CheckKind.FEEL, CheckKind.GAUGE, CheckKind.OPENED)


def _sugar(parts: BottlingParts) -> tuple[float, float]:
    bottling = parts.bottling
    added = bottling.priming_sugar_g / bottling.drink_volume_l
    low, high = bottling.residual_sugar_low_g_per_l, bottling.residual_sugar_high_g_per_l
    for addition in parts.additions:
        low += addition.mass_g * addition.sugar_share_low / bottling.drink_volume_l
        high += addition.mass_g * addition.sugar_share_high / bottling.drink_volume_l
    return low + added, high + added


def _steps(
    bottling: Bottling, warmth: Sequence[tuple[datetime, float]], now: datetime
) -> tuple[WarmStep, ...]:
    """Return the temperatures that were read, each for as long as it tells something."""
    found: dict[float, float | None] = {}
    # In whole hours: what was worked out then holds for the hour, not for a minute.
    last_day = math.ceil(24.0 * _day(bottling, now)) / 24.0
    if bottling.chilled_at is not None:
        last_day = _day(bottling, min(now, bottling.chilled_at))
    for place, (at, celsius) in enumerate(warmth):
        day = _day(bottling, at)
        found[day] = kitchen_c(celsius)
        following = _day(bottling, warmth[place + 1][0]) if place + 1 < len(warmth) else last_day
        if following - day > _HOLDS_DAYS or place + 1 == len(warmth):
            found.setdefault(min(day + _HOLDS_DAYS, max(last_day, day + 1e-6)), None)
    return tuple(WarmStep(day=day, temperature_c=found[day]) for day in sorted(found))


def _check_of(bottling: Bottling, check: BottleCheck) -> Check:
    temperature_c = check.temperature_c
    return Check(
        day=_day(bottling, check.at),
        kind=check.kind,
        feel=check.feel,
        gauge_bar=check.gauge_bar,
        sd_bar=min(ROUGH_GAUGE_SD_BAR if check.sd_bar is None else check.sd_bar, 5.0),
        opened=check.opened,
        temperature_c=None if temperature_c is None else kitchen_c(temperature_c),
    )


def _day(bottling: Bottling, at: datetime) -> float:
    return min(max((at - bottling.filled_at) / DAY, 0.0), _MOST_DAYS)


def _horizon(now_day: float) -> float:
    """Return how far to look: a whole number of weeks past today, so that it seldom changes."""
    weeks = int(now_day // 7.0) + 1
    return min(_AHEAD_DAYS + 7.0 * weeks, _MOST_DAYS)
