"""How bottlings stand now: pressure, fizz, alcohol, and by when to chill.

What the checks of one bottling say of its pace teaches the next ones of the same pantry, as
far as bottlings of one kitchen are alike; see culturecore.fizzpace.
"""

from __future__ import annotations

import math
from collections import OrderedDict
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import Enum
from typing import TYPE_CHECKING

from brewdesk.services.bottle_reminder_rules import BottlingFacts
from brewdesk.services.bottlingparts import BottlingParts, kitchen_c, parts_in
from brewdesk.services.bottlingplan import DAY, ceiling_of, filling_of
from brewdesk.services.bottlings import OPEN_STATES, USUAL_COLD_C
from brewdesk.services.bottlingwish import BottleGroupWish
from brewdesk.services.door import Door
from brewdesk.services.wording.bottlingnow import now_words
from brewdesk.store.records import BottleCheck, BottleGroup, Bottling
from culturecore import bottleverdicts, bottlingverdicts, drinkverdicts
from culturecore.bottlecourse import BottleCourse, course_of
from culturecore.bottled import Bottled, Check, WarmStep
from culturecore.fizzpace import Pace, pooled
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.safety import limit
from culturecore.stages import BottlingState, CheckKind, Feel

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

WarmthOf = Callable[["ReadUnit", int, datetime, datetime], Sequence[tuple[datetime, float]]]

_ROUGH_GAUGE_SD_BAR = 0.2  # of a gauge cap without its own doubt; an assumption
_HOLDS_DAYS = 1.5  # how long one look at a thermometer tells of a place
_MOST_LESSONS = 12  # earlier bottlings beyond these change next to nothing
_AHEAD_DAYS = 35.0  # the picture goes on so far after today
_MOST_DAYS = 400.0
_KEPT = 128
SOON = timedelta(hours=24)


class Urgency(Enum):
    """How soon bottles need their maker."""

    CALM = "calm"
    SOON = "soon"
    NOW = "now"


@dataclass(frozen=True, slots=True, kw_only=True)
class BottlingView:
    """How a bottling stands now. ``chill_by_at`` is the earliest danger, None if there is none.

    All of it is of ``group``, the kind of bottles that is in danger first. After chilling
    ``chill_by_at`` is when even in the cold they may pass their ceiling.
    """

    parts: BottlingParts
    group: BottleGroup
    course: BottleCourse
    now_day: float
    ceiling_bar: float | None
    gauge_bar: Estimate
    volumes: Estimate
    ethanol_abv: Estimate
    chill_by_at: datetime | None
    chill_likely_at: datetime | None
    right_at: datetime | None
    best_before: datetime | None
    verdicts: tuple[Verdict, ...]
    urgency: Urgency
    summary: str

    @property
    def bottling(self) -> Bottling:
        """The stored row."""
        return self.parts.bottling

    @property
    def verdict(self) -> Verdict:
        """The loudest verdict."""
        return self.verdicts[0]

    @property
    def is_urgent(self) -> bool:
        """Whether the bottles should be in the cold now, or be looked at now."""
        return self.urgency is Urgency.NOW


def typed_warmth(
    unit: ReadUnit, place_id: int, since: datetime, until: datetime
) -> Sequence[tuple[datetime, float]]:
    """Return the temperatures of a place that the maker read between two instants."""
    rows = unit.place_temperatures.where(place_id=place_id, order_by=("at", "id"))
    return [(row.at, row.temperature_c) for row in rows if since <= row.at <= until]


class FizzForecasts:
    """The newest view of each bottling; what was worked out is kept for as long as it holds."""

    def __init__(self, door: Door, *, warmth_of: WarmthOf = typed_warmth) -> None:
        self._door = door
        self._warmth_of = warmth_of
        self._courses: OrderedDict[tuple[Bottled, float], BottleCourse] = OrderedDict()

    def now(self, bottling_id: int) -> BottlingView:
        """Return how a bottling stands now.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            parts = parts_in(unit, bottling_id)
            warmth = self._warmth(unit, parts.bottling, now)
            pace = self._pace(unit, before=parts.bottling)
        return self._view(parts, warmth, pace, now)

    def all_open(self) -> tuple[BottlingView, ...]:
        """Return all bottlings that are conditioning or chilled, the most urgent first."""
        with self._door.store.read() as unit:
            rows = unit.bottlings.where(state=OPEN_STATES, order_by=("-filled_at", "-id"))
        views = [self.now(row.id) for row in rows]
        loudness = list(Urgency)
        return tuple(sorted(views, key=lambda view: -loudness.index(view.urgency)))

    def pace(self) -> Pace:
        """Return how lively the next bottling of this pantry is likely to be."""
        with self._door.store.read() as unit:
            return self._pace(unit, before=None)

    def reminder_facts(self) -> tuple[BottlingFacts, ...]:
        """Return what reminders of the open bottlings are made from."""
        return tuple(facts_of(view) for view in self.all_open())

    # --- how it is worked out -----------------------------------------------------------------

    def _pace(self, unit: ReadUnit, *, before: Bottling | None) -> Pace:
        """Return what earlier bottlings teach; one that has no checks teaches nothing."""
        rows = unit.bottlings.where(order_by=("-filled_at", "-id"))
        lessons: list[tuple[float, ...]] = []
        for row in rows:
            is_later = before is not None and (row.filled_at, row.id) >= (
                before.filled_at,
                before.id,
            )
            if is_later or len(lessons) == _MOST_LESSONS:
                continue
            parts = parts_in(unit, row.id)
            if not any(check.kind in _TEACHING for check in parts.checks):
                continue
            until = max(check.at for check in parts.checks)
            warmth = self._warmth(unit, row, until)
            bottled = self._bottled(parts, parts.groups[0], warmth, Pace(), until)
            # Longer than any check, and the same whenever it is asked for: found again.
            course = self._course(bottled, _horizon((until - row.filled_at) / DAY))
            lessons.append(course.lesson)
        return pooled(lessons)

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
        ceiling = ceiling_of(_wish_of(group))
        chilled = bottling.chilled_at
        return Bottled(
            filling=filling_of(_wish_of(group), bottling.place_temperature_c),
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

    def _course(self, bottled: Bottled, horizon_days: float) -> BottleCourse:
        key = (bottled, horizon_days)
        found = self._courses.get(key)
        if found is None:
            found = course_of(bottled, horizon_days=horizon_days)
            self._courses[key] = found
            if len(self._courses) > _KEPT:
                self._courses.popitem(last=False)
        else:
            self._courses.move_to_end(key)
        return found

    def _view(
        self,
        parts: BottlingParts,
        warmth: Sequence[tuple[datetime, float]],
        pace: Pace,
        now: datetime,
    ) -> BottlingView:
        bottling = parts.bottling
        end = min(now, bottling.ended_at or now)
        now_day = max((end - bottling.filled_at) / DAY, 0.0)
        horizon = _horizon(now_day)
        found = []
        for group in parts.groups:
            bottled = self._bottled(parts, group, warmth, pace, now)
            found.append((group, self._course(bottled, horizon)))
        group, course = min(found, key=lambda pair: _danger_order(*pair))
        over = course.over_ceiling_day
        chill_by_at = None if over is None else bottling.filled_at + DAY * over.low
        ceiling = ceiling_of(_wish_of(group))
        right_day = _right_day(course, bottling.target_volumes)
        verdicts = _verdicts(parts, course, now_day, ceiling)
        urgency = _urgency(parts, verdicts, chill_by_at, now)
        gauge, volumes = course.gauge_bar.at(now_day), course.volumes.at(now_day)
        return BottlingView(
            parts=parts,
            group=group,
            course=course,
            now_day=now_day,
            ceiling_bar=ceiling,
            gauge_bar=gauge,
            volumes=volumes,
            ethanol_abv=course.ethanol_abv.at(now_day),
            chill_by_at=chill_by_at,
            chill_likely_at=None if over is None else bottling.filled_at + DAY * over.value,
            right_at=None if right_day is None else bottling.filled_at + DAY * right_day,
            best_before=_best_before(bottling, chill_by_at),
            verdicts=verdicts,
            urgency=urgency,
            summary=now_words(
                bottling,
                gauge=gauge,
                volumes=volumes,
                chill_by_at=chill_by_at,
                best_before=_best_before(bottling, chill_by_at),
                now=now,
                zone=self._door.clock.zone(),
            ),
        )


_TEACHING = (CheckKind.FEEL, CheckKind.GAUGE, CheckKind.OPENED)


def facts_of(view: BottlingView) -> BottlingFacts:
    """Return what reminders of one bottling are made from."""
    bottling, checks = view.bottling, view.parts.checks
    opened = [check.at for check in checks if check.kind is CheckKind.OPENED]
    return BottlingFacts(
        bottling_id=bottling.id,
        state=bottling.state,
        filled_at=bottling.filled_at,
        chill_by_low_at=view.chill_by_at,
        chill_by_at=view.chill_likely_at,
        is_urgent=view.is_urgent,
        last_check_at=max((check.at for check in checks), default=None),
        best_before=view.best_before,
        name=bottling.name,
        opened_at=max(opened, default=None),
    )


def _verdicts(
    parts: BottlingParts, course: BottleCourse, now_day: float, ceiling: float | None
) -> tuple[Verdict, ...]:
    """Judge how it stands, loudest first."""
    bottling, found = parts.bottling, []
    if ceiling is None:
        found.append(bottlingverdicts.not_for_pressure_verdict())
    if bottling.state is BottlingState.CHILLED:
        found += _verdicts_in_the_cold(bottling, course, now_day)
    else:
        found.append(
            bottlingverdicts.standing_verdict(
                course, day=now_day, target_volumes=bottling.target_volumes
            )
        )
        last = _last_look(parts)
        if last is not None and last.gauge_bar is not None:
            found.append(
                bottleverdicts.gauge_verdict(
                    gauge_bar=last.gauge_bar,
                    sd_bar=_ROUGH_GAUGE_SD_BAR if last.sd_bar is None else last.sd_bar,
                    ceiling=limit("bottle_ceiling_bar") if ceiling is None else ceiling,
                )
            )
        if last is not None and last.feel is Feel.HARD:
            found.append(bottlingverdicts.hard_verdict(day=now_day))
    loudness = list(Level)
    return tuple(sorted(found, key=lambda verdict: -loudness.index(verdict.level)))


def _verdicts_in_the_cold(
    bottling: Bottling, course: BottleCourse, now_day: float
) -> list[Verdict]:
    cold_c = USUAL_COLD_C if bottling.cold_temperature_c is None else bottling.cold_temperature_c
    chilled_day = 0.0 if bottling.chilled_at is None else _day(bottling, bottling.chilled_at)
    found = [
        drinkverdicts.storage_verdict(cold_c),
        drinkverdicts.keeping_verdict(max(now_day - chilled_day, 0.0)),
    ]
    over = bottlingverdicts.cold_verdict(course, day=now_day)
    if over is not None:
        found.append(over)
    return found


_URGENT = {
    "chill_now", "gauge_over_ceiling", "gauge_chill", "bottles_hard", "bottles_over_in_the_cold",
    "bottle_not_for_pressure", "keeping_long",
}  # fmt: skip


def _urgency(
    parts: BottlingParts,
    verdicts: tuple[Verdict, ...],
    chill_by_at: datetime | None,
    now: datetime,
) -> Urgency:
    if parts.bottling.state not in OPEN_STATES or not parts.bottles_left:
        return Urgency.CALM
    codes = {verdict.code for verdict in verdicts}
    if codes & _URGENT:
        return Urgency.NOW
    if parts.bottling.state is BottlingState.CHILLED:
        return Urgency.CALM
    is_near = chill_by_at is not None and chill_by_at - now <= SOON
    return Urgency.SOON if is_near or "chill_once_right" in codes else Urgency.CALM


def _best_before(bottling: Bottling, chill_by_at: datetime | None) -> datetime | None:
    """Return the keeping limit after chilling, or the earliest danger in the cold before it."""
    if bottling.best_before is None:
        return None
    return bottling.best_before if chill_by_at is None else min(bottling.best_before, chill_by_at)


def _last_look(parts: BottlingParts) -> BottleCheck | None:
    """Return the newest look at the pressure; a venting since makes it void."""
    for check in reversed(parts.checks):
        if check.kind is CheckKind.VENTED:
            return None
        if check.kind in (CheckKind.FEEL, CheckKind.GAUGE):
            return check
    return None


def _right_day(course: BottleCourse, target: float) -> float | None:
    """Return the day on which the drink is likely as fizzy as it was meant to be."""
    return bottlingverdicts.first_day(course.volumes.days, course.volumes.likely, target)


def _danger_order(group: BottleGroup, course: BottleCourse) -> tuple[float, float]:
    day, ceiling = course.chill_by_day, ceiling_of(_wish_of(group))
    if ceiling is None:  # any pressure is too much
        return (-1.0, 0.0)
    return (float("inf") if day is None else day, ceiling)


def _wish_of(group: BottleGroup) -> BottleGroupWish:
    return BottleGroupWish(
        bottle_count=group.bottle_count,
        kind=group.kind,
        brim_volume_l=group.brim_volume_l,
        headspace_share=group.headspace_share,
        rated_bar=group.rated_bar,
        is_test=group.is_test,
        name=group.name,
    )


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
        sd_bar=min(_ROUGH_GAUGE_SD_BAR if check.sd_bar is None else check.sd_bar, 5.0),
        opened=check.opened,
        temperature_c=None if temperature_c is None else kitchen_c(temperature_c),
    )


def _day(bottling: Bottling, at: datetime) -> float:
    return min(max((at - bottling.filled_at) / DAY, 0.0), _MOST_DAYS)


def _horizon(now_day: float) -> float:
    """Return how far to look: a whole number of weeks past today, so that it seldom changes."""
    weeks = int(now_day // 7.0) + 1
    return min(_AHEAD_DAYS + 7.0 * weeks, _MOST_DAYS)
