"""Where the weight of a belief lies, found by a few damped Gauss-Newton steps.

The start of importance sampling: instead of trying many thousand draws of the prior, look
for the likeliest point and how sharply the belief falls off around it. Nothing here knows
about kombucha, and nothing rests on it being exact, since draws are weighted afterwards.
"""

from __future__ import annotations

import math
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
_SHARES = (0.5, 0.2, 0.05)  # of a step, tried beside the whole
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

    climbers = [_Climber.at(start) for start in starts]
    going = climbers
    for _ in range(_STEPS):
        asked = [climber.questions() for climber in going]
        # All at once: what a question costs hardly depends on how many points are in it.
        answers = np.split(off(np.vstack(asked)), len(asked))
        for climber, points, distances in zip(going, asked, answers, strict=True):
            climber.learn(points, distances, freedom)
        going = [climber for climber in going if not climber.is_there]
        if not going:
            break
    middle = np.mean([one.middle for one in climbers], axis=0)
    spread = np.mean([np.linalg.inv(one.curvature) for one in climbers], axis=0)
    apart = np.array([one.middle - middle for one in climbers])
    return Mode(middle=middle, spread=spread + apart.T @ apart / len(climbers))


@dataclass(slots=True)
class _Climber:
    """One search: where it stands, and the point that it would go to next."""

    middle: Floats
    wanted: Floats
    curvature: Floats
    best: float = -math.inf
    is_there: bool = False

    @classmethod
    def at(cls, start: Floats) -> _Climber:
        """Begin at a point."""
        import numpy as np

        return cls(middle=start, wanted=start, curvature=np.eye(len(start)))

    def questions(self) -> Floats:
        """Points to be tried: the one wanted, those around it, and shorter steps towards it."""
        import numpy as np

        around = self.wanted + _NUDGE * np.eye(len(self.wanted))
        shorter = self.middle + np.array(_SHARES)[:, None] * (self.wanted - self.middle)
        return np.vstack([self.wanted, around, shorter])

    def learn(self, points: Floats, off: Floats, freedom: float) -> None:
        """Go to the wanted point, or want the best of the shorter steps; stop if none is better."""
        import numpy as np

        ends = [0, *range(len(points) - len(_SHARES), len(points))]
        densities = _log_density(off[ends], points[ends], freedom)
        at = int(np.argmax(densities))
        gain = float(densities[at]) - self.best
        if gain <= 0.0:
            self.is_there = True
        elif at > 0 and self.best > -math.inf:
            self.wanted = points[ends[at]]
        else:
            self.middle, self.best = self.wanted, float(densities[0])
            here, slopes = off[0], (off[1 : ends[1]] - off[0]) / _NUDGE
            # A slip pulls less than its distance would have it: weights of Student's t.
            weights = (freedom + 1.0) / (freedom + here * here)
            self.curvature = np.eye(len(slopes)) + (slopes * weights) @ slopes.T
            downhill = self.middle + slopes @ (weights * here)
            self.wanted = self.middle - np.linalg.solve(self.curvature, downhill)
            self.is_there = gain < _SETTLED


def _log_density(off: Floats, points: Floats, freedom: float) -> Floats:
    import numpy as np

    fit = np.log1p(off * off / freedom).sum(axis=1)
    density: Floats = -0.5 * (freedom + 1.0) * fit - 0.5 * (points * points).sum(axis=1)
    return density
