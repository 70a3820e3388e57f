"""How many jars it takes to see a difference, and how often so many would see it."""

from __future__ import annotations

import math
from functools import lru_cache

from culturecore.errors import ImpossibleInput
from culturecore.rootfinding import root_of_rising
from culturecore.studentt import noncentral_t_cdf, t_quantile

MOST_JARS = 1000  # of each arm; more is no trial at home
_LEVEL = 0.95


@lru_cache(maxsize=256)
def power_of(difference: float, scatter: float, jars: int, *, level: float = _LEVEL) -> float:
    """Return how often a trial sees a difference that is truly there.

    Two arms of ``jars`` jars each, compared by Student's two-sided test. Cohen, J. 1988,
    Statistical Power Analysis, ch. 2: the statistic follows the noncentral t.

    Parameters
    ----------
    difference : float
        Of the true means, in any unit.
    scatter : float
        Standard deviation of like jars, in the same unit; above 0.
    jars : int
        Of each arm, at least 2.
    level : float
        0.95 lets a trial without any difference see one in 5 of 100.
    """
    _check(difference, scatter, level)
    if jars < 2:
        raise ImpossibleInput("jars", jars, low=2)
    df = 2.0 * jars - 2.0
    shift = abs(difference) / scatter * math.sqrt(jars / 2.0)
    limit = t_quantile(0.5 + level / 2.0, df)
    return 1.0 - noncentral_t_cdf(limit, df, shift) + noncentral_t_cdf(-limit, df, shift)


def jars_needed(
    difference: float, scatter: float, *, power: float = 0.8, level: float = _LEVEL
) -> int | None:
    """Return the jars of each arm with which a difference is seen in ``power`` of trials.

    None if it takes more than a thousand.
    """
    _check(difference, scatter, level)
    if difference == 0.0:
        raise ImpossibleInput("difference", difference, reason="zero")
    if not 0.0 < power < 1.0:
        raise ImpossibleInput("power", power, low=0.0, high=1.0)
    low, high = 1, 2
    while power_of(difference, scatter, high, level=level) < power:
        if high >= MOST_JARS:
            return None
        low, high = high, min(2 * high, MOST_JARS)
    while high - low > 1:
        middle = (low + high) // 2
        if power_of(difference, scatter, middle, level=level) < power:
            low = middle
        else:
            high = middle
    return high


def difference_seen(
    scatter: float, jars: int, *, power: float = 0.8, level: float = _LEVEL
) -> float:
    """Return the smallest true difference that so many jars see in ``power`` of trials."""
    _check(1.0, scatter, level)
    if not level < 1.0 or not 1.0 - level < power < 1.0:
        raise ImpossibleInput("power", power, low=1.0 - level, high=1.0)
    high = scatter
    while power_of(high, scatter, jars, level=level) < power:
        high *= 2.0
    return root_of_rising(
        lambda gap: power_of(gap, scatter, jars, level=level) - power,
        0.0,
        high,
        tolerance=1e-4 * scatter,
    )


def _check(difference: float, scatter: float, level: float) -> None:
    if not math.isfinite(difference):
        raise ImpossibleInput("difference", difference, reason="not_finite")
    if not scatter > 0.0 or math.isinf(scatter):
        raise ImpossibleInput("scatter", scatter, low=0.0)
    if not 0.0 < level < 1.0:
        raise ImpossibleInput("level", level, low=0.0, high=1.0)
