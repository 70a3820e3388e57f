"""Quantile curves over the days from what each of many possible jars would show.

Draws are sorted in single precision, day by day: for a few hundred numbers this is several
times faster than picking the quantiles out of them, and a hundred thousand times more exact
than the draws are.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from statistics import NormalDist
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]

QUANTILES = (0.1, 0.25, 0.5, 0.75, 0.9)
DAY_STEP = 0.5
# Later courses are ever straighter: days between which curves are drawn straight, from when on.
_STEPS_FROM = ((0.0, 1), (14.0, 2), (22.0, 4))  # in steps of `DAY_STEP`
_SETS_KEPT = 8


@lru_cache(maxsize=16)
def all_days(horizon_days: float) -> tuple[float, ...]:
    """Days of a forecast, half a day apart."""
    import numpy as np

    return tuple(np.arange(0.0, horizon_days + 0.5 * DAY_STEP, DAY_STEP).tolist())


def telling_days(days: Sequence[float], *, is_smooth: bool) -> Floats:
    """Choose the days that have to be worked out: all, or fewer later on if nothing jumps."""
    import numpy as np

    if not is_smooth:
        return np.array(days)
    ends = [start for start, _ in _STEPS_FROM[1:]]
    chosen: list[float] = []
    for (start, step), end in zip(_STEPS_FROM, (*ends, days[-1] + DAY_STEP), strict=True):
        chosen += [day for day in days if start <= day < end][::step]
    return np.array(chosen if chosen[-1] == days[-1] else [*chosen, days[-1]])


def quantiles(values: Floats, shares: Sequence[float]) -> Floats:
    """Return quantiles of each row (quantiles by rows), straight between sorted values."""
    import numpy as np

    rows = np.sort(values.astype(np.float32), axis=1)
    places = np.array(shares) * (rows.shape[1] - 1)
    below = np.minimum(places.astype(np.intp), max(rows.shape[1] - 2, 0))
    above = np.minimum(below + 1, rows.shape[1] - 1)
    lower = rows[:, below].astype(np.float64)
    found: Floats = (lower + (places - below) * (rows[:, above] - lower)).T
    return found


def curves(
    values: Floats, some_days: Floats, days: Sequence[float]
) -> dict[float, tuple[float, ...]]:
    """Quantile curves over ``days`` from draws by ``some_days``."""
    import numpy as np

    by_day = quantiles(values.T, QUANTILES)
    return {
        share: tuple(np.interp(days, some_days, curve).tolist())
        for share, curve in zip(QUANTILES, by_day, strict=True)
    }


@lru_cache(maxsize=_SETS_KEPT)
def even_normals(seed: int, count: int, columns: int) -> Floats:
    """Draw standard normals of which each column has the very spread that it should have.

    One draw in each of ``count`` equally likely slices, in an order of its own for each
    column (a Latin hypercube), so that fewer draws tell as much. Kept, since every forecast
    asks for the same; not to be written to.
    """
    import numpy as np

    slices = [NormalDist().inv_cdf((at + 0.5) / count) for at in range(count)]
    rng = np.random.default_rng(seed)
    drawn: Floats = rng.permuted(np.tile(slices, (columns, 1)), axis=1).T
    drawn.setflags(write=False)
    return drawn
