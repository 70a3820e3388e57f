"""Fizz by day in closed bottles, what the checks say of it, and by when to chill.

Every course that the bottles may take is drawn: how lively the yeast is, how much sugar
there is, how much gas the drink held, how warm the days ahead are. The checks weigh the
draws. The day to chill by is the earliest on which more than :data:`DANGER_PROBABILITY` of
them pass the bottles' ceiling, were the bottles at their warmest.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from culturecore.bottle import pressure
from culturecore.bottled import Bottled, check_bottled
from culturecore.bottleverdicts import PRESSURE_DOUBT_SHARE
from culturecore.co2 import MODEL_TOP_BAR
from culturecore.fizzpace import BINS, Pace, bin_edges
from culturecore.outcome import Caveat, Estimate

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.bottledraws import Case, Gas
    from culturecore.reweighting import WeightedDraws

    Floats: TypeAlias = NDArray[float64]

DANGER_PROBABILITY: Final = 0.05  # safety_choice: one bottling in twenty
HORIZON_DAYS: Final = 35.0
SEED: Final = 20261125
_ENDS: Final = (DANGER_PROBABILITY, 0.5, 1.0 - DANGER_PROBABILITY)
_LEVEL: Final = 1.0 - 2.0 * DANGER_PROBABILITY
_DRAWS: Final = 1200
_FURTHER: Final = 900
_ENOUGH: Final = 150.0
_CURVES: Final = 500
_WEEK: Final = 7
_SOURCES: Final = (
    "bottle_yeast_assumption",
    "bottle_feel_assumption",
    "weiss_1974",
    "stoichiometry",
)
# Fine while it goes fast, coarse later.
_GRID: Final = (
    *(0.25 * step for step in range(8)),
    *(2.0 + 0.5 * step for step in range(8)),
    *(6.0 + step for step in range(8)),
    *(14.0 + 2.0 * step for step in range(11)),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """A quantity by day: its 5, 50 and 95 % ends."""

    days: tuple[float, ...]
    low: tuple[float, ...]
    likely: tuple[float, ...]
    high: tuple[float, ...]

    def at(self, day: float) -> Estimate:
        """Return the value on a day, straight between days and level beyond both ends."""
        value, low, high = (
            _between(self.days, line, day) for line in (self.likely, self.low, self.high)
        )
        return Estimate(value, low, high, level=_LEVEL, sources=_SOURCES)


@dataclass(frozen=True, slots=True, kw_only=True)
class BottleCourse:
    """What the bottles may do by day.

    ``gauge_bar`` is at the place's temperature (in the cold, at that of the cold): its low
    end with the air dissolved, its high end with all the air trapped and the doubt of the
    calculation on top; it ends at 8 bar, which stands for everything above.
    ``over_ceiling_day`` is when they may pass the ceiling at their warmest: low is the day to
    chill by; value and high end at the horizon. None when fewer than one draw in twenty does.
    ``pace`` is what the checks leave of the pace, ``lesson`` the same as weights in the parts
    of what was believed before (`culturecore.fizzpace.bin_edges`).
    """

    gauge_bar: Curve
    volumes: Curve
    ethanol_abv: Curve
    over_ceiling_day: Estimate | None
    pace: Pace
    lesson: tuple[float, ...]
    effective_draws: float

    @property
    def chill_by_day(self) -> float | None:
        """The earliest day of danger; None when there is none within the horizon."""
        return None if self.over_ceiling_day is None else self.over_ceiling_day.low


def course_of(
    bottled: Bottled, *, horizon_days: float = HORIZON_DAYS, seed: int = SEED
) -> BottleCourse:
    """Draw what the bottles may do, weighed by the checks.

    Parameters
    ----------
    bottled : Bottled
        The bottles, their surroundings and checks.
    horizon_days : float
        How far to look, counted from filling [d], 1 to 400.
    seed : int
        Of the draws: the same question gets the same answer.

    Raises
    ------
    ImpossibleInput
        As :func:`culturecore.bottled.check_bottled`, and for bottles as
        :func:`culturecore.bottle.pressure`.

    Notes
    -----
    Assumptions: pace as :mod:`culturecore.fizzpace`; it keeps up until the sugar is gone.
    Gas at filling between none and all an open jar holds, more likely much. Days ahead
    between the place's usual temperature and the warmest, more likely near the usual.
    Venting lets out between the gas of the headspace and all that a flat drink would lose.
    """
    check_bottled(bottled, horizon_days)
    pressure(bottled.filling, co2_g_per_l=0.0, temperature_c=20.0)  # refuses bottles that cannot be
    import numpy as np

    from culturecore.bottledraws import Case
    from culturecore.reweighting import equal_draws, reweigh

    case, days = Case(bottled), _days_of(bottled, horizon_days)
    draws = reweigh(
        case.log_likelihood,
        dimensions=case.dimensions,
        first_draws=_DRAWS,
        further_draws=_FURTHER,
        enough_effective=_ENOUGH,
        rng=np.random.default_rng(seed),
    )
    gas = case.grow(draws.latents[equal_draws(draws.weights, _CURVES)], days)
    gauge_bar, volumes = _seen(case, bottled, gas, days)
    crossing = case.over_ceiling(draws.latents, days)
    return BottleCourse(
        gauge_bar=gauge_bar,
        volumes=volumes,
        ethanol_abv=_curve(days, gas.ethanol_abv, gas.ethanol_abv, gas.ethanol_abv),
        over_ceiling_day=_danger(crossing, draws.weights, horizon_days),
        pace=_learnt(bottled.pace, draws),
        lesson=_lesson(draws),
        effective_draws=draws.effective_draws,
    )


def _days_of(bottled: Bottled, horizon_days: float) -> tuple[float, ...]:
    days = {day for day in _GRID if day < horizon_days} | {0.0, horizon_days}
    days |= {float(day) for day in range(36, math.ceil(horizon_days), _WEEK)}
    days |= {step.day for step in bottled.steps} | {check.day for check in bottled.checks}
    if bottled.chilled_day is not None:
        days.add(bottled.chilled_day)
    return tuple(sorted(days))


def _seen(case: Case, bottled: Bottled, gas: Gas, days: tuple[float, ...]) -> tuple[Curve, Curve]:
    import numpy as np

    shown = case.shown(gas, [bottled.likely_c(day) for day in days])
    doubtful = shown.trapped_bar + PRESSURE_DOUBT_SHARE * (shown.trapped_bar + 1.0)
    highest = np.minimum(doubtful, MODEL_TOP_BAR)
    middle = 0.5 * (shown.settled_bar + shown.trapped_bar)
    gauge_bar = _curve(days, shown.settled_bar, middle, highest)
    return gauge_bar, _curve(days, shown.volumes, shown.volumes, shown.volumes)


def _curve(days: tuple[float, ...], low: Floats, likely: Floats, high: Floats) -> Curve:
    import numpy as np

    lines = (
        tuple(float(number) for number in np.quantile(draws, end, axis=0))
        for draws, end in zip((low, likely, high), _ENDS, strict=True)
    )
    first, middle, last = lines
    return Curve(days=days, low=first, likely=middle, high=last)


def _danger(crossing: Floats, weights: Floats, horizon_days: float) -> Estimate | None:
    import numpy as np

    order = np.argsort(crossing, kind="stable")
    reached = np.cumsum(weights[order])
    low, value, high = (
        float(crossing[order][min(int(np.searchsorted(reached, end)), len(order) - 1)])
        for end in _ENDS
    )
    if math.isinf(low):
        return None
    return Estimate(
        min(value, horizon_days),
        low,
        min(high, horizon_days),
        level=_LEVEL,
        caveats=(Caveat.RECIPE_ONLY,),
        sources=_SOURCES,
    )


def _learnt(before: Pace, draws: WeightedDraws) -> Pace:
    """Return what is believed of the pace after the checks; the same if they say nothing."""
    import numpy as np

    latent, weights = draws.latents[:, 0], draws.weights
    if np.ptp(weights) == 0.0:
        return before
    middle = float(weights @ latent)
    spread = math.sqrt(max(float(weights @ (latent - middle) ** 2), 1e-6))
    return Pace(log_rate=before.log_rate + before.sd * middle, sd=before.sd * spread)


def _lesson(draws: WeightedDraws) -> tuple[float, ...]:
    """Return the weight of the draws in each part of what was believed before."""
    import numpy as np

    edges = np.array(bin_edges(Pace(log_rate=0.0, sd=1.0)))
    parts = np.searchsorted(edges, draws.latents[:, 0])
    shares = np.bincount(parts, weights=draws.weights, minlength=BINS)
    return tuple(float(share) for share in shares)


def _between(days: tuple[float, ...], line: tuple[float, ...], day: float) -> float:
    place = bisect_right(days, day)
    if place == 0:
        return line[0]
    if place == len(days):
        return line[-1]
    share = (day - days[place - 1]) / (days[place] - days[place - 1])
    return line[place - 1] + share * (line[place] - line[place - 1])
