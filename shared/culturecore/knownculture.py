"""What finished batches teach about a culture: partial pooling within pantry and literature."""

from __future__ import annotations

import math
from collections.abc import Sequence

from culturecore import priors
from culturecore.souringcase import Conditions, KnownCulture, Observation


def learn_culture(
    finished: Sequence[tuple[Conditions, Sequence[Observation]]],
    pantry: Sequence[tuple[Conditions, Sequence[Observation]]] = (),
) -> KnownCulture:
    """Learn a culture's habits from its finished batches.

    Parameters: ``finished`` are batches of the culture itself, ``pantry`` those of other
    cultures in the same place, which share its water, tea and habits.
    """
    return KnownCulture(
        log_rate_offset=0.0,
        log_rate_sd=math.log(priors.RATE_MEQ_PER_L_DAY.spread),
        log_excess_offset=0.0,
        log_excess_sd=math.log(priors.STRONG_ION_EXCESS_MEQ_PER_L.spread),
        curvature_offset=0.0,
        curvature_sd=priors.CURVATURE.spread,
        batches=0,
    )
