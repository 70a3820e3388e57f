"""Verdicts on a bottling as a whole: before it is filled, while it stands, in the cold."""

from __future__ import annotations

from typing import Final

from culturecore.bottlecourse import BottleCourse, Curve
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.safety import LIMITS, limit

# Chilling takes hours: bottles that may be in danger sooner cannot be saved by it.
LEAST_DAYS_TO_CHILL: Final = 0.25
_PACE_SOURCES: Final = ("bottle_yeast_assumption", "british_glass_tec_7")

VERDICT_CODES: Final = frozenset(
    {
        "bottling_no_time", "bottling_unrated", "bottling_no_test", "bottling_alcohol",
        "bottling_glass", "bottles_hard", "bottles_over_in_the_cold",
    }
)  # fmt: skip


def no_time_verdict(course: BottleCourse) -> Verdict | None:
    """STOP bottles that may pass their ceiling before anybody can chill them; else None."""
    first_day = course.chill_by_day
    if first_day is None or first_day >= LEAST_DAYS_TO_CHILL:
        return None
    numbers = {"hours": 24.0 * first_day, "least_hours": 24.0 * LEAST_DAYS_TO_CHILL}
    sources = ("bottle_yeast_assumption", "safety_choice")
    return Verdict("bottling_no_time", Level.STOP, numbers, sources)


def unrated_verdict() -> Verdict:
    """Say that bottles without a rating are reckoned with the cautious ceiling."""
    found = LIMITS["bottle_ceiling_bar"]
    numbers = {"ceiling_bar": found.value}
    return Verdict("bottling_unrated", Level.INFORM, numbers, found.source_keys)


def no_test_verdict() -> Verdict:
    """Say that there is no bottle to be felt."""
    return Verdict("bottling_no_test", Level.INFORM, sources=("safety_choice",))


def alcohol_verdict(gained_abv: Estimate, most_abv: float) -> Verdict:
    """WARN of the alcohol that is made in the bottle; none of it certifies anything."""
    numbers = {
        "low_abv": gained_abv.low,
        "high_abv": gained_abv.high,
        "most_abv": most_abv,
        "threshold_abv": limit("abv_us"),
    }
    sources = ("stoichiometry", "ttb_kombucha", "talebi_2017")
    return Verdict("bottling_alcohol", Level.WARN, numbers, sources)


def handling_verdict(*, is_glass: bool) -> Verdict:
    """Say how bottles under pressure are handled, louder for glass."""
    if is_glass:
        return Verdict("bottling_glass", Level.WARN, sources=("kuhn_2004",))
    return Verdict("bottle_handling", Level.INFORM, sources=("kuhn_2004",))


def not_for_pressure_verdict() -> Verdict:
    """STOP bottles that were filled in spite of what they are."""
    return Verdict("bottle_not_for_pressure", Level.STOP, sources=("safety_choice",))


def standing_verdict(course: BottleCourse, *, day: float, target_volumes: float) -> Verdict:
    """Judge on a day whether bottles should be in the cold, by a course that knows the checks.

    Codes as :func:`culturecore.bottleverdicts.chill_verdict`.
    """
    by_day = course.chill_by_day
    if by_day is not None and day >= by_day:
        numbers = {"days": day, "chill_by_days": by_day}
        return Verdict("chill_now", Level.WARN, numbers, _PACE_SOURCES)
    volumes = course.volumes
    if volumes.at(day).high < target_volumes:
        return Verdict("chill_later", Level.INFORM, {"days": day}, _PACE_SOURCES)
    last_day = first_day(volumes.days, volumes.low, target_volumes)
    numbers = {
        "days": day,
        "low_days": min(earliest_day(volumes, target_volumes), day),
        "high_days": volumes.days[-1] if last_day is None else last_day,
    }
    return Verdict("chill_once_right", Level.WARN, numbers, _PACE_SOURCES)


def hard_verdict(*, day: float) -> Verdict:
    """WARN that the test bottle was felt to be hard."""
    return Verdict("bottles_hard", Level.WARN, {"days": day}, ("bottle_feel_assumption",))


def cold_verdict(course: BottleCourse, *, day: float) -> Verdict | None:
    """WARN of bottles that may have passed their ceiling even in the cold; else None."""
    by_day = course.chill_by_day
    if by_day is None or day < by_day:
        return None
    numbers = {"days": day, "chill_by_days": by_day}
    return Verdict("bottles_over_in_the_cold", Level.WARN, numbers, _PACE_SOURCES)


def earliest_day(volumes: Curve, wanted: float) -> float:
    """Return the day on which the fastest draws hold so many volumes; the last if none does."""
    found = first_day(volumes.days, volumes.high, wanted)
    return volumes.days[-1] if found is None else found


def first_day(days: tuple[float, ...], line: tuple[float, ...], wanted: float) -> float | None:
    """Return the day on which a line first reaches a value, straight between days."""
    for place, value in enumerate(line):
        if value >= wanted:
            if place == 0:
                return days[0]
            before = line[place - 1]
            share = (wanted - before) / (value - before)
            return days[place - 1] + share * (days[place] - days[place - 1])
    return None
