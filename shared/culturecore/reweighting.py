"""Weighted draws from a belief that readings have sharpened.

The belief is told by independent standard normal latents. One set of draws from it is
weighted by how well each explains the readings; when few draws carry all the weight, new
ones are drawn around them (adaptive importance sampling with a tempered likelihood), so
that the number of draws that count stays honest. Nothing here knows about kombucha.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from culturecore.quantilecurves import even_normals

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64, intp
    from numpy.random import Generator
    from numpy.typing import NDArray

    from culturecore.modes import Mode

    Floats: TypeAlias = NDArray[float64]
    Indexes: TypeAlias = NDArray[intp]

_MAX_ROUNDS = 6
_BISECTIONS = 12
_TOP_UP = 2  # a round that only adds to what is there needs so many times fewer draws
_STEP_EFFECTIVE = 80.0  # draws that must count before a new proposal is fitted to them
_TAIL_FREEDOM = 12.0  # Student-t proposals: tails wider than the normal latents'
_PROPOSAL_WIDTH = 1.2  # wider than the draws it was fitted to
_PRIOR_SHARE = 0.15  # of each round comes from the prior, so that no corner is forgotten
_SEEDS = 2**31
_COLUMNS = 24  # of normals that are drawn; what is not needed stays for other questions
_SMALLEST_VARIANCE = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class WeightedDraws:
    """Latents (draws by dimensions) with weights that sum to one.

    ``tempering`` is the share of the likelihood's exponent that could be used: 1 unless
    the readings could not be reconciled with the prior within the rounds allowed.
    """

    latents: Floats
    weights: Floats
    effective_draws: float
    tempering: float


def reweigh(
    log_likelihood: Callable[[Floats], Floats],
    *,
    dimensions: int,
    first_draws: int,
    further_draws: int,
    enough_effective: float,
    rng: Generator,
    around: WeightedDraws | None = None,
    mode: Mode | None = None,
) -> WeightedDraws:
    """Draw from the standard normal prior and weigh by ``log_likelihood``.

    Parameters: ``log_likelihood`` takes latents (draws by dimensions) and gives one finite
    number a draw. Further rounds of ``further_draws`` follow until the whole likelihood is
    used and ``enough_effective`` draws count, at most six times; once the whole is used, a
    half of the draws is added each time. ``around`` are the draws of a like question to start
    from, ``mode`` a likely point.

    Weights are capped at ``sqrt(draws)`` times their mean (Ionides 2008, J. Comput. Graph.
    Stat. 17:295, from memory).

    Notes: adaptive multiple importance sampling in the manner of Cappe et al. 2004 (J.
    Comput. Graph. Stat. 13:907, from memory); effective draws are ``1 / sum(weights^2)``.
    """
    if mode is not None:
        latents, log_weight_free = _propose_around(mode.middle, mode.spread, first_draws, rng)
    elif around is None:
        latents = rng.standard_normal((first_draws, dimensions))
        log_weight_free = _zeros(first_draws)
    else:
        latents, log_weight_free = _propose(around.latents, around.weights, further_draws, rng)
    evidence = log_likelihood(latents)
    tempering, weights = _temper(log_weight_free, evidence, _STEP_EFFECTIVE)
    for _ in range(_MAX_ROUNDS):
        if tempering >= 1.0 and _effective(weights) >= enough_effective:
            break
        is_whole = tempering >= 1.0
        count = further_draws // _TOP_UP if is_whole else further_draws
        fresh, log_weight_free = _propose(latents, weights, count, rng)
        evidence = log_likelihood(fresh)
        if is_whole:
            more = _normalised(log_weight_free + evidence)
            latents, weights = _joined((latents, weights), (fresh, more))
        else:
            latents = fresh
            tempering, weights = _temper(log_weight_free, evidence, _STEP_EFFECTIVE)
    return WeightedDraws(
        latents=latents,
        weights=weights,
        effective_draws=_effective(weights),
        tempering=tempering,
    )


def equal_draws(weights: Floats, count: int) -> Indexes:
    """Choose ``count`` indexes so that each stands for the same weight (systematic resampling)."""
    import numpy as np

    marks = (np.arange(count) + 0.5) / count
    chosen: Indexes = np.minimum(np.searchsorted(np.cumsum(weights), marks), len(weights) - 1)
    return chosen


def _joined(first: tuple[Floats, Floats], second: tuple[Floats, Floats]) -> tuple[Floats, Floats]:
    """Put two weighted sets together, each counting as much as its effective draws."""
    import numpy as np

    counts = np.array([_effective(first[1]), _effective(second[1])])
    parts = counts / counts.sum()
    weights = np.concatenate([parts[0] * first[1], parts[1] * second[1]])
    return np.vstack([first[0], second[0]]), weights


def _zeros(count: int) -> Floats:
    import numpy as np

    return np.zeros(count)


def _effective(weights: Floats) -> float:
    return float(1.0 / (weights @ weights))


def _normalised(log_weights: Floats) -> Floats:
    import numpy as np

    weights: Floats = np.exp(log_weights - log_weights.max())
    # A lucky draw in a thin corner of the proposal must not speak for all the others.
    weights = np.minimum(weights, weights.mean() * np.sqrt(len(weights)))
    weights /= weights.sum()
    return weights


def _temper(log_weight_free: Floats, evidence: Floats, enough: float) -> tuple[float, Floats]:
    """Use as much of the likelihood as leaves enough effective draws."""
    whole = _normalised(log_weight_free + evidence)
    if _effective(whole) >= enough:
        return 1.0, whole
    low, high = 0.0, 1.0
    for _ in range(_BISECTIONS):
        middle = 0.5 * (low + high)
        if _effective(_normalised(log_weight_free + middle * evidence)) >= enough:
            low = middle
        else:
            high = middle
    return low, _normalised(log_weight_free + low * evidence)


def _propose(latents: Floats, weights: Floats, count: int, rng: Generator) -> tuple[Floats, Floats]:
    """Draw around the weighted draws; give the draws and log(prior / proposal) of each."""
    middle = weights @ latents
    away = latents - middle
    return _propose_around(middle, (away * weights[:, None]).T @ away, count, rng)


def _propose_around(
    middle: Floats, spread: Floats, count: int, rng: Generator
) -> tuple[Floats, Floats]:
    """Draw around a point, some from the prior; give log(prior / proposal) with the draws."""
    import numpy as np

    dimensions = len(middle)
    spread = spread * _PROPOSAL_WIDTH**2 + _SMALLEST_VARIANCE * np.eye(dimensions)
    root = np.linalg.cholesky(spread)
    from_prior = round(_PRIOR_SHARE * count)
    normals = even_normals(int(rng.integers(_SEEDS)), count, max(dimensions + 1, _COLUMNS))
    shapes = normals[:, :dimensions]
    # Wilson and Hilferty's chi-square of a normal, so that it too is spread evenly.
    part = 2.0 / (9.0 * _TAIL_FREEDOM)
    stretch = (1.0 - part + normals[:, -1] * part**0.5) ** -1.5
    fresh = middle + (shapes * stretch[:, None]) @ root.T
    fresh[:from_prior] = shapes[:from_prior]
    standard = (fresh - middle) @ np.linalg.inv(root).T
    log_prior = -0.5 * (fresh * fresh).sum(axis=1)
    log_fitted = _log_student(standard, float(np.log(np.diag(root)).sum()))
    log_normal = log_prior - 0.5 * dimensions * np.log(2.0 * np.pi)
    log_mixed = np.logaddexp(
        np.log(_PRIOR_SHARE) + log_normal, np.log1p(-_PRIOR_SHARE) + log_fitted
    )
    return fresh, log_normal - log_mixed


def _log_student(standard: Floats, log_scale: float) -> Floats:
    """Log density of a multivariate Student-t at standardised points."""
    import math

    import numpy as np

    dimensions = standard.shape[1]
    half = 0.5 * (_TAIL_FREEDOM + dimensions)
    level = (
        math.lgamma(half)
        - math.lgamma(0.5 * _TAIL_FREEDOM)
        - 0.5 * dimensions * math.log(_TAIL_FREEDOM * math.pi)
        - log_scale
    )
    density: Floats = level - half * np.log1p((standard * standard).sum(axis=1) / _TAIL_FREEDOM)
    return density
