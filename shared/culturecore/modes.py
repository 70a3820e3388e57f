"""Where the weight of a belief lies, found by a few damped Gauss-Newton steps.

The start of importance sampling: instead of trying many thousand draws of the prior, look
for the likeliest point and how sharply the belief falls off around it. Nothing here knows
about kombucha, and nothing rests on it being exact, since draws are weighted afterwards.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]

_STEPS = 12
_NUDGE = 0.02
_SHARES = (1.0, 0.5, 0.2, 0.05)  # of a step, tried side by side
_SETTLED = 0.05  # gain of log density below which the search ends


@dataclass(frozen=True, slots=True, kw_only=True)
class Mode:
    """A likely point and the spread of the belief around it."""

    middle: Floats
    spread: Floats


def find_mode(off: Callable[[Floats], Floats], starts: Floats, freedom: float) -> Mode:
    """Find the likeliest point under standard normal priors.

    Parameters: ``off`` gives standardised distances (draws by readings) that follow
    Student's t with ``freedom`` degrees; ``starts`` are points to search from. Where they
    lead to different places the answer spans them.
    """
    import numpy as np

    found = [_climb(off, start, freedom) for start in starts]
    middle = np.mean([mode.middle for mode in found], axis=0)
    spread = np.mean([mode.spread for mode in found], axis=0)
    apart = np.array([mode.middle - middle for mode in found])
    return Mode(middle=middle, spread=spread + apart.T @ apart / len(found))


def _climb(off: Callable[[Floats], Floats], start: Floats, freedom: float) -> Mode:
    import numpy as np

    dimensions = len(start)
    middle = start
    best = -np.inf
    nudges = np.vstack([np.zeros(dimensions), _NUDGE * np.eye(dimensions)])
    curvature = np.eye(dimensions)
    shares = np.array(_SHARES)[:, None]
    for _ in range(_STEPS):
        around = off(middle + nudges)
        here = around[0]
        slopes = (around[1:] - here) / _NUDGE
        # A slip pulls less than its distance would have it: weights of Student's t.
        weights = (freedom + 1.0) / (freedom + here * here)
        curvature = np.eye(dimensions) + (slopes * weights) @ slopes.T
        step = -np.linalg.solve(curvature, middle + slopes @ (weights * here))
        tried = middle + shares * step
        densities = _log_density(off(tried), tried, freedom)
        at = int(np.argmax(densities))
        gain = float(densities[at]) - best
        if gain <= 0.0:
            break
        middle, best = tried[at], float(densities[at])
        if gain < _SETTLED:
            break
    spread = np.asarray(np.linalg.inv(curvature), dtype=np.float64)
    return Mode(middle=middle, spread=spread)


def _log_density(off: Floats, points: Floats, freedom: float) -> Floats:
    import numpy as np

    fit = np.log1p(off * off / freedom).sum(axis=1)
    density: Floats = -0.5 * (freedom + 1.0) * fit - 0.5 * (points * points).sum(axis=1)
    return density
