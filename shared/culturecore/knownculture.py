"""What finished batches teach about a culture: partial pooling within pantry and literature.

Each batch tells its own speed, strong-ion excess and curvature with some doubt. A batch
differs a little from its culture, a culture from its pantry, a pantry from the literature;
together these differences make the spread of the priors, so that a culture of which
nothing is known is forecast exactly as the literature has it.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from culturecore import priors
from culturecore.possiblejars import (
    CURVATURE,
    EXCESS,
    RATE,
    curvature_prior,
    log_excess_prior,
    log_rate_prior,
)
from culturecore.souringcase import Conditions, KnownCulture, Observation

if TYPE_CHECKING:
    from typing import TypeAlias

    Cases: TypeAlias = Sequence[tuple[Conditions, Sequence[Observation]]]

# Shares of the literature's variance that lie between pantries, between the cultures of a
# pantry, and between batches of a culture. Huang et al. 2022: cultures differ most.
_OF_PANTRIES = {RATE: 0.25, EXCESS: 0.50, CURVATURE: 0.30}
_OF_CULTURES = {RATE: 0.60, EXCESS: 0.25, CURVATURE: 0.40}
_OF_BATCHES = {RATE: 0.15, EXCESS: 0.25, CURVATURE: 0.30}
_LESSONS_KEPT = 512
_TEACHES_NOTHING = 0.98  # of the prior's variance: a batch that left it where it was


@dataclass(frozen=True, slots=True)
class _Told:
    """What one batch tells by itself: a value and its variance."""

    value: float
    variance: float


def learn_culture(finished: Cases, pantry: Cases = ()) -> KnownCulture:
    """Learn a culture's habits from its finished batches.

    Parameters: ``finished`` are batches of the culture itself, ``pantry`` those of other
    cultures in the same place, which share its water, tea and habits.

    Raises: `ImpossibleInput` for numbers that no jar can have.

    Notes: each batch is fitted with the literature's priors, the prior is taken out again,
    and a normal hierarchy of batch, culture and pantry puts them together. The shares of
    the spread between its levels are an assumption.
    """
    own = [_lesson(conditions, tuple(seen)) for conditions, seen in finished]
    others = [_lesson(conditions, tuple(seen)) for conditions, seen in pantry]
    spreads = {
        RATE: math.log(priors.RATE_MEQ_PER_L_DAY.spread),
        EXCESS: math.log(priors.STRONG_ION_EXCESS_MEQ_PER_L.spread),
        CURVATURE: priors.CURVATURE.spread,
    }
    pooled = {
        column: _pooled(
            [lesson[column] for lesson in own if column in lesson],
            [lesson[column] for lesson in others if column in lesson],
            column,
            spread**2,
        )
        for column, spread in spreads.items()
    }
    return KnownCulture(
        log_rate_offset=pooled[RATE].value,
        log_rate_sd=math.sqrt(pooled[RATE].variance),
        log_excess_offset=pooled[EXCESS].value,
        log_excess_sd=math.sqrt(pooled[EXCESS].variance),
        curvature_offset=pooled[CURVATURE].value,
        curvature_sd=math.sqrt(pooled[CURVATURE].variance),
        batches=len(finished),
    )


# A finished batch teaches every later one of its culture, each time the same.
@lru_cache(maxsize=_LESSONS_KEPT)
def _lesson(conditions: Conditions, observations: tuple[Observation, ...]) -> Mapping[int, _Told]:
    """What a batch tells of each column, by the literature's priors alone."""
    from dataclasses import replace

    from culturecore.forecast import latent_moments

    if not observations:
        return {}
    plain = replace(conditions, known=None)
    scales = {
        RATE: log_rate_prior(plain)[1],
        EXCESS: log_excess_prior(plain)[1],
        CURVATURE: curvature_prior(plain)[1],
    }
    means, variances = latent_moments(plain, observations)
    told: dict[int, _Told] = {}
    for column, scale in scales.items():
        if variances[column] >= _TEACHES_NOTHING:
            continue
        # Posterior precision is the prior's (1) and the batch's own.
        precision = 1.0 / variances[column] - 1.0
        value = means[column] / variances[column] / precision
        told[column] = _Told(value * scale, scale**2 / precision)
    return told


def _pooled(own: list[_Told], others: list[_Told], column: int, whole: float) -> _Told:
    """Foretell the next batch of a culture from its own and the pantry's other batches."""
    between_batches = _OF_BATCHES[column] * whole
    between_cultures = _OF_CULTURES[column] * whole
    pantry = _updated(
        _Told(0.0, _OF_PANTRIES[column] * whole),
        [_Told(o.value, o.variance + between_batches + between_cultures) for o in others],
    )
    culture = _updated(
        _Told(pantry.value, pantry.variance + between_cultures),
        [_Told(o.value, o.variance + between_batches) for o in own],
    )
    return _Told(culture.value, culture.variance + between_batches)


def _updated(prior: _Told, told: list[_Told]) -> _Told:
    precision = 1.0 / prior.variance + sum(1.0 / one.variance for one in told)
    value = prior.value / prior.variance + sum(one.value / one.variance for one in told)
    return _Told(value / precision, 1.0 / precision)
