"""How one bottling stands, from what was worked out of its bottles: figures, verdicts, words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from enum import Enum

from brewdesk.services.bottle_reminder_rules import BottlingFacts
from brewdesk.services.bottlingparts import BottlingParts
from brewdesk.services.bottlingplan import DAY, ceiling_of
from brewdesk.services.bottlings import OPEN_STATES, USUAL_COLD_C
from brewdesk.services.bottlingwish import BottleGroupWish
from brewdesk.services.wording.bottlingnow import now_words
from brewdesk.store.records import BottleCheck, BottleGroup, Bottling
from culturecore import bottleverdicts, bottlingverdicts, drinkverdicts
from culturecore.bottlecourse import BottleCourse
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.safety import limit
from culturecore.stages import BottlingState, CheckKind, Feel

ROUGH_GAUGE_SD_BAR = 0.2  # of a gauge cap without its own doubt; an assumption
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


@dataclass(frozen=True, slots=True)
class Worked:
    """The courses of a bottling's kinds of bottles, and of what they were worked out."""

    parts: BottlingParts
    courses: tuple[tuple[BottleGroup, BottleCourse], ...]


def view_of(worked: Worked, now: datetime, zone: tzinfo) -> BottlingView:
    """Say how a bottling stands, by its kind of bottles that is in danger first."""
    parts, found = worked.parts, worked.courses
    bottling = parts.bottling
    now_day = now_day_of(bottling, now)
    group, course = min(found, key=lambda pair: _danger_order(*pair))
    over = course.over_ceiling_day
    chill_by_at = None if over is None else bottling.filled_at + DAY * over.low
    ceiling = ceiling_of(wish_of_group(group))
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
            zone=zone,
        ),
    )


def now_day_of(bottling: Bottling, now: datetime) -> float:
    """Return the days since the bottles were filled, until they were gone."""
    end = min(now, bottling.ended_at or now)
    return max((end - bottling.filled_at) / DAY, 0.0)


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
                    sd_bar=ROUGH_GAUGE_SD_BAR if last.sd_bar is None else last.sd_bar,
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
    chilled_day = 0.0 if bottling.chilled_at is None else now_day_of(bottling, bottling.chilled_at)
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
    day, ceiling = course.chill_by_day, ceiling_of(wish_of_group(group))
    if ceiling is None:  # any pressure is too much
        return (-1.0, 0.0)
    return (float("inf") if day is None else day, ceiling)


def wish_of_group(group: BottleGroup) -> BottleGroupWish:
    """Return the wish that a kind of bottles came from."""
    return BottleGroupWish(
        bottle_count=group.bottle_count,
        kind=group.kind,
        brim_volume_l=group.brim_volume_l,
        headspace_share=group.headspace_share,
        rated_bar=group.rated_bar,
        is_test=group.is_test,
        name=group.name,
    )
