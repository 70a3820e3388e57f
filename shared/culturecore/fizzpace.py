"""How fast yeast works in closed bottles: what is believed, and what earlier bottles taught.

The pace at 22 degC is one number per bottling. Its logarithm is taken as normal, as wide as
the assumption behind it. Half of that width is between kitchens and half between the
bottlings of one kitchen: earlier bottlings of the same pantry settle the first half only,
so that no number of them makes the next one certain.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
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
_LEAST_GAIN: Final = 1e-3  # a bottling that taught less than this taught nothing


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


def pooled(lessons: Iterable[tuple[Pace, Pace]]) -> Pace:
    """Return the pace to expect of the next bottling of a pantry.

    Parameters
    ----------
    lessons : iterable of pairs of Pace
        For each earlier bottling what was believed before its checks, and after them.

    Returns
    -------
    Pace
        Never narrower than the bottlings of one kitchen differ among themselves; the plain
        belief without lessons. A bottling whose checks left the belief as wide as it was
        teaches nothing.

    Raises
    ------
    ImpossibleInput
        For a width that is not above 0.

    Notes
    -----
    Normal-normal partial pooling: what the checks said is taken out of the change of
    belief, so that no prior counts twice.
    """
    between = SHARE_BETWEEN_PANTRIES * PRIOR_SD**2
    within = PRIOR_SD**2 - between
    precision, weighted = 1.0 / between, PRIOR_LOG_RATE / between
    for before, after in lessons:
        for belief in (before, after):
            if not 0.0 < belief.sd < math.inf:
                raise ImpossibleInput("sd", belief.sd, low=0.0)
        gain = 1.0 / after.sd**2 - 1.0 / before.sd**2
        if gain < _LEAST_GAIN:
            continue
        said = (after.log_rate / after.sd**2 - before.log_rate / before.sd**2) / gain
        worth = 1.0 / (1.0 / gain + within)
        precision += worth
        weighted += worth * said
    return Pace(log_rate=weighted / precision, sd=math.sqrt(1.0 / precision + within))
