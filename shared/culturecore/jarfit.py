"""The possible jars that a batch's readings leave, and whether the readings make sense."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from culturecore import pace
from culturecore.equivalenttime import warmer_by_piece
from culturecore.modes import find_mode
from culturecore.possiblejars import (
    BASE,
    FIRST_PACE,
    FIRST_SUGAR,
    LAG,
    LATENTS,
    WARMTH,
    PossibleJars,
    in_single_precision,
    possible_jars,
)
from culturecore.readingarrays import STUDENT_FREEDOM, Readings
from culturecore.reweighting import WeightedDraws, equal_draws, reweigh
from culturecore.suspicion import reason

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.random import Generator
    from numpy.typing import NDArray

    from culturecore.souringcase import Conditions

    Floats: TypeAlias = NDArray[float64]

_DRAWS = 1_500  # of each round
_ENOUGH_EFFECTIVE = 200.0
_A_WAIT = 1.5  # latent of a lag from which the search starts too
_JUDGING_DRAWS = 300  # equal draws by which readings are judged
_BLOCK = 16_000  # draws times days worked on at a time
_KEPT_BYTES = 8_000_000  # of memory that arrays have left

_SUSPECT_AT = 3.5  # standardised distance from the jar's own curve
_SUSPECT_SHARE = 0.5  # when more readings than this look wrong, it is the jar that is strange
_FAR_FROM_PRIOR = 18.5  # 99 % point of chi-square with seven degrees of freedom
_POOR_FIT = 2.0  # typical standardised distance that marks a course of no known shape
_LEAST_TEMPERING = 0.5  # of the readings' weight: below this no known jar explains them
_NORMAL_MEDIAN = 0.6745  # median of the absolute value of a standard normal
_FEW_READINGS = 7
_HARDLY_EVER = 2.5  # standard deviations
_LEAST_WIDENING = 2.0
_MOST_WIDENING = 12.0


@cache
def keep_freed_memory() -> None:
    """Let the C library keep the memory that arrays leave, once for the process.

    A forecast makes and drops some hundred arrays of 50 kB. glibc hands their memory back to
    the system each time and asks for it anew, which costs a sixth of a forecast's time. It
    keeps up to twice the largest block that was ever dropped: so a large one is dropped,
    untouched. Elsewhere this does nothing.
    """
    import numpy as np

    np.empty(_KEPT_BYTES // 2, dtype=np.uint8)


def active_latents(conditions: Conditions, readings: Readings) -> list[int]:
    """Latents that these readings can tell something about; the others stay as believed."""
    active = list(range(BASE))
    if readings.indexes or len(readings.taste_days):
        begun = pace.pieces_begun(readings.last_day)
        active += range(FIRST_PACE, FIRST_PACE + begun)
    if readings.tells_sugar:
        active += range(FIRST_SUGAR, WARMTH)
    if any(warmer_by_piece(conditions, pace.PIECE_STARTS)):
        active.append(WARMTH)
    return active


def filled(latents: Floats, active: list[int], others: Floats | None = None) -> Floats:
    """Put the active latents among all: the others as given, or in their middle."""
    import numpy as np

    if others is None:
        # A latent's draws lie side by side in memory: they are worked on together.
        everything = np.zeros((len(latents), LATENTS), dtype=latents.dtype, order="F")
    else:
        everything = others.copy(order="F")
    everything[:, active] = latents
    return everything


def weighted(
    conditions: Conditions,
    readings: Readings,
    rng: Generator,
    *,
    around: WeightedDraws | None = None,
) -> WeightedDraws:
    """Weigh draws of the prior by the readings."""
    import numpy as np

    active = active_latents(conditions, readings)
    rows = max(_BLOCK // max(len(readings.values), 1), 1)

    def jars_of(latents: Floats) -> PossibleJars:
        return possible_jars(conditions, filled(latents, active))

    def log_likelihood(latents: Floats) -> Floats:
        # In blocks that stay in the processor's cache, and in single precision: the noise of
        # the draws is far greater.
        single = in_single_precision(latents)
        blocks = [single[at : at + rows] for at in range(0, len(latents), rows)]
        return np.concatenate([readings.log_likelihood(jars_of(block)) for block in blocks])

    mode = None
    if around is None and len(readings.values):
        starts = np.zeros((2, len(active)))
        starts[1, LAG] = _A_WAIT
        mode = find_mode(lambda latents: readings.off(jars_of(latents)), starts, STUDENT_FREEDOM)
    return reweigh(
        log_likelihood,
        dimensions=len(active),
        first_draws=_DRAWS,
        further_draws=_DRAWS,
        enough_effective=_ENOUGH_EFFECTIVE,
        rng=rng,
        around=around,
        mode=mode,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """Whether the readings make sense together, and with any jar that is known."""

    is_unlike_known: bool
    widening: float
    suspects: tuple[int, ...]
    reasons: tuple[str, ...] = ()


def judged(conditions: Conditions, readings: Readings, fitted: WeightedDraws) -> Judged:
    """Judge the readings by the jars they were fitted with."""
    import numpy as np

    if not readings.indexes:
        return Judged(is_unlike_known=False, widening=1.0, suspects=())
    latents = fitted.latents[equal_draws(fitted.weights, _JUDGING_DRAWS)]
    latents = filled(in_single_precision(latents), active_latents(conditions, readings))
    expected = readings.expected(possible_jars(conditions, latents)).astype(np.float64)
    middle = np.median(expected, axis=0)
    off = np.abs(readings.values - middle)
    distance = off / np.hypot(readings.scales, expected.std(axis=0))
    wrong = distance > _SUSPECT_AT
    typical = _typical_distance(off / readings.scales)
    from_prior = float(np.square(fitted.weights @ fitted.latents[:, :BASE]).sum())
    unlike = (
        from_prior > _FAR_FROM_PRIOR
        or typical > _POOR_FIT
        or float(wrong.mean()) > _SUSPECT_SHARE
        or fitted.tempering < _LEAST_TEMPERING
    )
    widening = min(max(typical, _LEAST_WIDENING), _MOST_WIDENING) if unlike else 1.0
    suspects = {
        index: reason(readings, at, middle)
        for at, index in enumerate(readings.indexes)
        if wrong[at] and index >= 0
    }
    return Judged(
        is_unlike_known=unlike,
        widening=widening,
        suspects=tuple(sorted(suspects)),
        reasons=tuple(suspects[index] for index in sorted(suspects)),
    )


def _typical_distance(distances: Floats) -> float:
    """Robust standard deviation of standardised distances; about 1 where all is well.

    A few readings have no spread to speak of: there the farthest but one (which may be a
    slip) counts, against the distance that a fitting reading hardly ever shows.
    """
    import numpy as np

    if len(distances) < _FEW_READINGS:
        return float(np.sort(distances)[-2:][0]) / _HARDLY_EVER
    return float(np.median(distances)) / _NORMAL_MEDIAN
