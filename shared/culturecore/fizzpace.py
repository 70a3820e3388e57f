"""How fast yeast works in closed bottles: what is believed, and what earlier bottles taught.

The pace at 22 degC is one number per bottling. Its logarithm is taken as normal, as wide as
the assumption behind it. Half of that width is between kitchens and half between the
bottlings of one kitchen: earlier bottlings of the same pantry settle the first half only,
so that no number of them makes the next one certain.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import NormalDist
from typing import Final

from culturecore.conditioning import (
    RATE_HIGH_G_PER_L_DAY,
    RATE_LOW_G_PER_L_DAY,
    TENFOLD_HIGH,
    TENFOLD_LOW,
)
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate

_Z80: Final = 1.2815515655446004  # half of a central 80 % interval, in standard deviations
# bottle_yeast_assumption: its bounds are read as a central 80 %
PRIOR_LOG_RATE: Final = 0.5 * math.log(RATE_LOW_G_PER_L_DAY * RATE_HIGH_G_PER_L_DAY)
PRIOR_SD: Final = 0.5 * math.log(RATE_HIGH_G_PER_L_DAY / RATE_LOW_G_PER_L_DAY) / _Z80
TENFOLD_LOG: Final = 0.5 * math.log(TENFOLD_LOW * TENFOLD_HIGH)
TENFOLD_SD: Final = 0.5 * math.log(TENFOLD_HIGH / TENFOLD_LOW) / _Z80
SHARE_BETWEEN_PANTRIES: Final = 0.5  # of the variance; bottle_pooling_assumption
BINS: Final = 24
_LEAST_SAID: Final = 0.01
_GRID, _GRID_SDS = 61, 4.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Pace:
    """A belief about the pace: normal in the logarithm of g/L a day at 22 degC."""

    log_rate: float = PRIOR_LOG_RATE
    sd: float = PRIOR_SD

    @property
    def rate_g_per_l_day(self) -> Estimate:
        """The pace at 22 degC with its central 80 %."""
        return Estimate(
            math.exp(self.log_rate),
            math.exp(self.log_rate - _Z80 * self.sd),
            math.exp(self.log_rate + _Z80 * self.sd),
            caveats=(Caveat.RECIPE_ONLY,),
            sources=("bottle_yeast_assumption", "bottle_pooling_assumption"),
        )


def bin_edges(pace: Pace) -> tuple[float, ...]:
    """Return the inner edges that part a belief into :data:`BINS` parts of equal weight."""
    normal = NormalDist(pace.log_rate, pace.sd)
    return tuple(normal.inv_cdf(number / BINS) for number in range(1, BINS))


def pooled(lessons: Iterable[Sequence[float]]) -> Pace:
    """Return the pace to expect of the next bottling of a pantry.

    Parameters
    ----------
    lessons : iterable of sequences of float
        For each earlier bottling the weight that its checks left in each of the parts of
        the plain belief (see :func:`bin_edges`); they are put to a sum of 1.

    Returns
    -------
    Pace
        Never narrower than the bottlings of one kitchen differ among themselves; the plain
        belief without lessons.

    Raises
    ------
    ImpossibleInput
        For a lesson that has not one weight a part, or weights below 0 or all 0.

    Notes
    -----
    Partial pooling: what the checks said of a part is the weight they left there over the
    weight it had. The kitchen's own middle is summed over a grid, each bottling scattered
    around it; no prior counts twice.
    """
    between = math.sqrt(SHARE_BETWEEN_PANTRIES) * PRIOR_SD
    within = math.sqrt(1.0 - SHARE_BETWEEN_PANTRIES) * PRIOR_SD
    edges = bin_edges(Pace())
    middles = [
        PRIOR_LOG_RATE + between * _GRID_SDS * (2.0 * number / (_GRID - 1) - 1.0)
        for number in range(_GRID)
    ]
    weights = [math.exp(-0.5 * ((middle - PRIOR_LOG_RATE) / between) ** 2) for middle in middles]
    kitchens = [NormalDist(middle, within) for middle in middles]
    parts = [[kitchen.cdf(edge) for edge in edges] for kitchen in kitchens]
    for lesson in lessons:
        said = _said(lesson)
        for number, below in enumerate(parts):
            steps = (b - a for a, b in pairwise((0.0, *below, 1.0)))
            weights[number] *= sum(one * step for one, step in zip(said, steps, strict=True))
    total = sum(weights)
    mean = sum(w * m for w, m in zip(weights, middles, strict=True)) / total
    spread = sum(w * (m - mean) ** 2 for w, m in zip(weights, middles, strict=True)) / total
    return Pace(log_rate=mean, sd=math.sqrt(spread + within**2))


def _said(lesson: Sequence[float]) -> list[float]:
    total = math.fsum(lesson)
    if len(lesson) != BINS or min(lesson) < 0.0 or not 0.0 < total < math.inf:
        raise ImpossibleInput("lesson", tuple(lesson), low=0.0)
    # draws are few in the far parts: none there is no proof that nothing could be there
    return [max(BINS * share / total, _LEAST_SAID) for share in lesson]
