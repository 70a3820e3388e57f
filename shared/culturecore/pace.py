"""How the pace of a jar wanders: warm days, cool nights, stalls, a second wind.

No jar keeps to a formula. Its rate is the formula's times a factor that is constant within
a piece of days and wanders from piece to piece around one. What lies behind the last
reading can be learnt; what is ahead stays open, and that is what keeps a forecast honest.
"""

from __future__ import annotations

import math
from functools import cache
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

    logs = _memory().T.astype(latents.dtype) @ latents.T
    factors: Floats = np.exp(priors.PACE_WANDERING.spread * slower(logs)).T
    return factors


@cache
def _memory() -> Floats:
    """What each independent normal (rows) adds to the wandering of each piece."""
    import numpy as np

    memory = priors.PACE_MEMORY_DAYS.centre
    added = np.eye(PIECES)
    for piece in range(1, PIECES):
        keep = math.exp(-(_middle(piece) - _middle(piece - 1)) / memory)
        added[:, piece] *= math.sqrt(1 - keep**2)
        added[:, piece] += keep * added[:, piece - 1]
    return added


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

    Notes: laid out by day in memory, as are the courses made of it: operations on long rows
    of draws take a third of the time of those on short rows of days.
    """
    import numpy as np

    starts, at_starts, before = _pieces(curvature, lag_days, factors)
    pieces = np.clip(np.searchsorted(starts, days[0], side="right") - 1, 0, PIECES - 1)
    so_far = _shape(days.T, curvature.T, lag_days.T)
    # Within a piece it is a straight line of the plain shape: a level and a slope.
    slope, level = factors.T, (before - factors * at_starts).T
    by_day = level.take(pieces, axis=0) + slope.take(pieces, axis=0) * so_far
    answer: Floats = by_day.T
    return answer


def day_grown(wanted: Floats, curvature: Floats, lag_days: Floats, factors: Floats) -> Floats:
    """Day by which each draw has grown each amount (draws by amounts): `grown` turned round."""
    import numpy as np

    _, at_starts, before = _pieces(curvature, lag_days, factors)
    pieces = (before[:, None, :] <= wanted[:, :, None]).sum(axis=2) - 1
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

    starts = np.array(PIECE_STARTS, dtype=factors.dtype)
    at_starts = _shape(starts[:, None], curvature.T, lag_days.T)
    before = np.zeros_like(at_starts)
    np.cumsum(np.diff(at_starts, axis=0) * factors.T[:-1], axis=0, out=before[1:])
    return starts, at_starts.T, before.T


def _shape(days: Floats, curvature: Floats, lag_days: Floats) -> Floats:
    import numpy as np

    weeks = np.maximum(days - lag_days, 0.0) / REFERENCE_DAYS
    shape: Floats = REFERENCE_DAYS * np.power(weeks, curvature)
    return shape
