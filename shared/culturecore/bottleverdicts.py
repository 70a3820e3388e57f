"""Verdicts on bottles under pressure: may this go in, what if nobody chills, when to chill.

The upper bound of the pressure, with the doubt of the calculation on top, is what is held
against the ceiling. No verdict promises that a bottle will hold: glass ages and chips.
"""

from __future__ import annotations

import math
from typing import Final

from culturecore.bottle import BottlePressure, Filling
from culturecore.co2 import MODEL_TOP_BAR
from culturecore.conditioning import FizzPlan
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Level, Verdict
from culturecore.safety import LIMITS, limit
from culturecore.stages import BottleKind as BottleKind

# wroblewski_1882: the solubility is 4 % off at the top of the range, of absolute pressure
PRESSURE_DOUBT_SHARE: Final = 0.04
_ABSOLUTE_BAR: Final = 1.0


VERDICT_CODES: Final = frozenset(
    {
        "bottle_not_for_pressure", "bottle_damaged", "bottle_too_large", "bottle_no_room",
        "bottle_over_8_bar", "bottle_over_ceiling", "bottle_near_ceiling",
        "bottle_within_ceiling", "bottle_too_fizzy", "bottle_very_fizzy",
        "all_sugar_over_8_bar", "all_sugar_over_ceiling",
        "headspace_small", "headspace_large", "bottle_handling",
        "chill_now", "chill_once_right", "chill_later",
        "gauge_over_ceiling", "gauge_chill", "gauge_within",
    }
)  # fmt: skip


def ceiling_bar(kind: BottleKind, rated_bar: float | None = None) -> float:
    """Return the gauge pressure that a bottle must not pass [bar].

    The maker's rating, up to 8 bar; without one, the cautious reading of the trade's figure
    for fizzy-drink glass (4.7 bar taken as absolute), for plastic too.

    Raises
    ------
    NotAssessed
        "not_for_pressure"; "rating_unknown" for a rated bottle without its rating.
    ImpossibleInput
        For a rating outside 0.1 to 30 bar.
    """
    if kind is BottleKind.NOT_FOR_PRESSURE:
        raise NotAssessed("not_for_pressure")
    if kind is not BottleKind.RATED:
        return limit("bottle_ceiling_bar")
    if rated_bar is None or math.isnan(rated_bar):
        raise NotAssessed("rating_unknown")
    if not 0.1 <= rated_bar <= 30.0:
        raise ImpossibleInput("rated_bar", rated_bar, low=0.1, high=30.0, unit="bar")
    return min(rated_bar, MODEL_TOP_BAR)


def bottle_verdicts(
    kind: BottleKind,
    filling: Filling,
    plan: FizzPlan,
    *,
    rated_bar: float | None = None,
    is_damaged: bool = False,
) -> tuple[Verdict, ...]:
    """Judge a plan for bottles of one kind, loudest first.

    Parameters
    ----------
    kind : BottleKind
        With ``rated_bar`` [bar gauge] for a rated one.
    filling : Filling
        The filling that the plan was made for.
    plan : FizzPlan
        With both its pressures at the warmest.
    is_damaged : bool
        Chipped, scratched, cracked.

    Raises
    ------
    NotAssessed, ImpossibleInput
        As :func:`ceiling_bar`, except that a bottle not for pressure gets its STOP.
    """
    found = list(_bottle_itself(kind, filling, is_damaged=is_damaged))
    if kind is not BottleKind.NOT_FOR_PRESSURE:
        ceiling = ceiling_bar(kind, rated_bar)
        found.append(_target_verdict(kind, plan.on_target, ceiling))
        found += _all_sugar(plan.all_sugar, ceiling)
    found += _headspace(filling)
    found.append(Verdict("bottle_handling", Level.INFORM, sources=("kuhn_2004",)))
    loudness = list(Level)
    return tuple(sorted(found, key=lambda verdict: -loudness.index(verdict.level)))


def chill_verdict(plan: FizzPlan, *, day: float) -> Verdict:
    """Judge on a day after bottling whether the bottles should be in the cold.

    Returns
    -------
    Verdict
        WARN "chill_now" once the fastest yeast could pass the ceiling, WARN
        "chill_once_right" once it could have reached the target, INFORM "chill_later".

    Raises
    ------
    NotAssessed
        "day_unknown" for NaN.
    ImpossibleInput
        For a day before bottling.
    """
    if math.isnan(day):
        raise NotAssessed("day_unknown")
    if day < 0.0:
        raise ImpossibleInput("day", day, low=0.0, unit="d")
    sources = ("bottle_yeast_assumption", "british_glass_tec_7")
    if plan.chill_by_day is not None and day >= plan.chill_by_day:
        numbers = {"days": day, "chill_by_days": plan.chill_by_day}
        return Verdict("chill_now", Level.WARN, numbers, sources)
    target = plan.days_to_target
    if target is not None and day >= target.low:
        numbers = {"days": day, "low_days": target.low, "high_days": target.high}
        return Verdict("chill_once_right", Level.WARN, numbers, sources)
    return Verdict("chill_later", Level.INFORM, {"days": day}, sources)


def gauge_verdict(*, gauge_bar: float, sd_bar: float, ceiling: float) -> Verdict:
    """Judge a gauge on one of the bottles; the reading plus its doubt counts.

    Raises
    ------
    NotAssessed
        "pressure_unknown" for NaN.
    ImpossibleInput
        For a reading outside -1 to 30 bar, a doubt outside 0 to 5 bar.
    """
    if any(math.isnan(number) for number in (gauge_bar, sd_bar, ceiling)):
        raise NotAssessed("pressure_unknown")
    if not -1.0 <= gauge_bar <= 30.0:
        raise ImpossibleInput("gauge_bar", gauge_bar, low=-1.0, high=30.0, unit="bar")
    if not 0.0 <= sd_bar <= 5.0:
        raise ImpossibleInput("sd_bar", sd_bar, low=0.0, high=5.0, unit="bar")
    highest = gauge_bar + sd_bar
    numbers = {"gauge_bar": gauge_bar, "ceiling_bar": ceiling}
    if highest > ceiling:
        sources = LIMITS["bottle_ceiling_bar"].source_keys
        return Verdict("gauge_over_ceiling", Level.STOP, numbers, sources)
    sources = LIMITS["bottle_chill_bar"].source_keys
    if highest >= limit("bottle_chill_bar"):
        return Verdict("gauge_chill", Level.WARN, numbers, sources)
    return Verdict("gauge_within", Level.INFORM, numbers, sources)


def _bottle_itself(kind: BottleKind, filling: Filling, *, is_damaged: bool) -> list[Verdict]:
    found = []
    if kind is BottleKind.NOT_FOR_PRESSURE:
        found.append(Verdict("bottle_not_for_pressure", Level.STOP, sources=("safety_choice",)))
    if is_damaged:
        found.append(Verdict("bottle_damaged", Level.STOP, sources=("safety_choice",)))
    largest = limit("glass_max_l")
    if kind is BottleKind.FIZZY_GLASS and filling.brim_volume_l > largest:
        numbers = {"brim_l": filling.brim_volume_l, "largest_l": largest}
        sources = LIMITS["glass_max_l"].source_keys
        found.append(Verdict("bottle_too_large", Level.STOP, numbers, sources))
    return found


def _target_verdict(kind: BottleKind, target: BottlePressure, ceiling: float) -> Verdict:
    sources = ("weiss_1974", *LIMITS["bottle_ceiling_bar"].source_keys)
    if target.is_brimful:
        return Verdict("bottle_no_room", Level.STOP, sources=("emmerich_icumsa",))
    if target.air_trapped_bar is None or target.volumes is None:
        return Verdict("bottle_over_8_bar", Level.STOP, {"ceiling_bar": ceiling}, sources)
    highest = target.air_trapped_bar
    highest += PRESSURE_DOUBT_SHARE * (highest + _ABSOLUTE_BAR)
    numbers = {"highest_bar": highest, "ceiling_bar": ceiling, "volumes": target.volumes}
    rated = kind is BottleKind.RATED
    warn_bar = ceiling * limit("bottle_rated_share") if rated else limit("bottle_warn_bar")
    if highest > ceiling:
        return Verdict("bottle_over_ceiling", Level.STOP, numbers, sources)
    if not rated and target.volumes >= limit("bottle_ceiling_volumes"):
        return _too_fizzy("bottle_too_fizzy", Level.STOP, target.volumes, "bottle_ceiling_volumes")
    if highest > warn_bar:
        return Verdict("bottle_near_ceiling", Level.WARN, numbers, sources)
    if not rated and target.volumes >= limit("bottle_warn_volumes"):
        return _too_fizzy("bottle_very_fizzy", Level.WARN, target.volumes, "bottle_warn_volumes")
    return Verdict("bottle_within_ceiling", Level.INFORM, numbers, sources)


def _too_fizzy(code: str, level: Level, volumes: float, key: str) -> Verdict:
    numbers = {"volumes": volumes, "limit_volumes": limit(key)}
    return Verdict(code, level, numbers, LIMITS[key].source_keys)


def _all_sugar(all_sugar: BottlePressure, ceiling: float) -> list[Verdict]:
    sources = ("stoichiometry", "weiss_1974", *LIMITS["bottle_ceiling_bar"].source_keys)
    highest = all_sugar.air_trapped_bar
    if highest is None:
        numbers = {"ceiling_bar": ceiling}
        return [Verdict("all_sugar_over_8_bar", Level.WARN, numbers, sources)]
    highest += PRESSURE_DOUBT_SHARE * (highest + _ABSOLUTE_BAR)
    if highest <= ceiling:
        return []
    numbers = {"highest_bar": highest, "ceiling_bar": ceiling}
    return [Verdict("all_sugar_over_ceiling", Level.WARN, numbers, sources)]


def _headspace(filling: Filling) -> list[Verdict]:
    share = filling.headspace_share
    numbers = {
        "share": share,
        "least_share": limit("headspace_share_min"),
        "most_share": limit("headspace_share_max"),
    }
    if share < numbers["least_share"]:
        sources = LIMITS["headspace_share_min"].source_keys
        return [Verdict("headspace_small", Level.WARN, numbers, sources)]
    if share > numbers["most_share"]:
        sources = LIMITS["headspace_share_max"].source_keys
        return [Verdict("headspace_large", Level.INFORM, numbers, sources)]
    return []
