"""How the pace of a jar wanders: warm days, cool nights, stalls, a second wind.

No jar keeps to a formula. Its rate is the formula's times a factor that is constant within
a piece of days and wanders from piece to piece around one. What lies behind the last
reading can be learnt; what is ahead stays open, and that is what keeps a forecast honest.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from culturecore import priors
from culturecore.souring import REFERENCE_DAYS

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]

# Days on which a piece begins; the last one has no end.
PIECE_STARTS = (0.0, 2.0, 4.0, 6.5, 9.5, 13.0, 18.0, 25.0)
PIECES = len(PIECE_STARTS)
_SLOW_FROM = 1.2  # standard deviations: below this is one jar in nine
_SLOWER = 0.5


def pieces_begun(day: float) -> int:
    """How many pieces have begun by a day, at least one."""
    return max(sum(start < day for start in PIECE_STARTS), 1)


def pace_factors(latents: Floats) -> Floats:
    """Turn standard normals (draws by pieces) into factors on the rate, each in its piece.

    Notes: the log wanders back to its middle with the time constant of
    `priors.PACE_MEMORY_DAYS`; slow pieces go deeper than fast ones go high, since a stall
    has no counterpart.
    """
    import numpy as np

    sd, memory = priors.PACE_WANDERING.spread, priors.PACE_MEMORY_DAYS.centre
    logs = np.empty_like(latents)
    logs[:, 0] = latents[:, 0]
    for piece in range(1, latents.shape[1]):
        keep = math.exp(-(_middle(piece) - _middle(piece - 1)) / memory)
        logs[:, piece] = keep * logs[:, piece - 1] + math.sqrt(1 - keep**2) * latents[:, piece]
    factors: Floats = np.exp(sd * slower(logs))
    return factors


def slower(latent: Floats) -> Floats:
    """Lengthen the slow tail of a standard normal: some jars hardly sour at all."""
    import numpy as np

    slow = np.maximum(-latent - _SLOW_FROM, 0.0)
    answer: Floats = latent - _SLOWER * slow * slow
    return answer


def _middle(piece: int) -> float:
    ends = (*PIECE_STARTS[1:], 35.0)
    return 0.5 * (PIECE_STARTS[piece] + ends[piece])


def grown(days: Floats, curvature: Floats, lag_days: Floats, factors: Floats) -> Floats:
    """Days' worth of the mean first-week rate by each day (draws by days).

    Without wandering this is ``7 ((t - lag)/7)^p``.
    """
    import numpy as np

    starts, at_starts, before = _pieces(curvature, lag_days, factors)
    pieces = np.clip(np.searchsorted(starts, days[0], side="right") - 1, 0, PIECES - 1)
    so_far = _shape(days, curvature, lag_days)
    answer: Floats = before[:, pieces] + factors[:, pieces] * (so_far - at_starts[:, pieces])
    return answer


def day_grown(wanted: Floats, curvature: Floats, lag_days: Floats, factors: Floats) -> Floats:
    """Day by which each draw (draws by 1) has grown this much: `grown` turned round."""
    import numpy as np

    _, at_starts, before = _pieces(curvature, lag_days, factors)
    pieces = (before <= wanted).sum(axis=1, keepdims=True) - 1
    pieces = np.maximum(pieces, 0)
    inside = wanted - np.take_along_axis(before, pieces, 1)
    shape = np.take_along_axis(at_starts, pieces, 1) + inside / np.take_along_axis(
        factors, pieces, 1
    )
    day: Floats = lag_days + REFERENCE_DAYS * np.power(
        np.maximum(shape, 0.0) / REFERENCE_DAYS, 1.0 / curvature
    )
    return day


def _pieces(curvature: Floats, lag_days: Floats, factors: Floats) -> tuple[Floats, Floats, Floats]:
    """Starts, the plain shape at each start, and what has grown before it."""
    import numpy as np

    starts = np.array(PIECE_STARTS)
    at_starts = _shape(starts[None, :], curvature, lag_days)
    before = np.zeros_like(at_starts)
    np.cumsum(np.diff(at_starts, axis=1) * factors[:, :-1], axis=1, out=before[:, 1:])
    return starts, at_starts, before


def _shape(days: Floats, curvature: Floats, lag_days: Floats) -> Floats:
    import numpy as np

    weeks = np.maximum(days - lag_days, 0.0) / REFERENCE_DAYS
    shape: Floats = REFERENCE_DAYS * np.power(weeks, curvature)
    return shape
