"""Which reading would tell most: what the window would shrink to, on average.

Each draw of a forecast says what a reading would show and on which day the window opens.
Draws that would show about the same are those that would be left after that reading; how
much narrower their windows are is what the reading is worth.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from culturecore.quantilecurves import quantiles
from culturecore.souringcase import NextReading
from culturecore.stages import Quantity

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]

_GROUPS = 10
_SOONEST_DAYS = 0.5
_LATEST_DAYS = 7.0
_WORTH_DAYS = 0.4  # less is not worth a walk to the pantry
_NEARLY = 0.85  # an earlier day that is worth nearly as much is better


def next_reading(
    shown: Mapping[Quantity, Floats],
    sds: Mapping[Quantity, float],
    days: Floats,
    opens: Floats,
    *,
    now_day: float,
    noise: Floats,
) -> NextReading | None:
    """Find the most useful reading of the coming week; None if none is worth much.

    Parameters: ``shown`` gives what each draw shows (draws by ``days``), ``sds`` the error
    of a reading, ``opens`` each draw's day of opening, cut off at the horizon; ``noise`` is
    a column of standard normals for each quantity.
    """
    import numpy as np

    usable = len(opens) - len(opens) % _GROUPS
    opens = opens[:usable]
    wide = float(_widths(opens[None, None, :])[0])
    likely = float(quantiles(opens[None, :], (0.25,))[0, 0])
    latest = max(min(now_day + _LATEST_DAYS, likely), now_day + 2.0 * _SOONEST_DAYS)
    soon = np.flatnonzero((days >= now_day + _SOONEST_DAYS) & (days <= latest))
    soon = soon[days[soon] == np.rint(days[soon])] if len(soon) > 2 else soon
    if not len(soon):
        return None
    found: list[NextReading] = []
    for (quantity, values), scatter in zip(shown.items(), noise.T, strict=False):
        read = values[:usable, soon].T + scatter[:usable] * sds[quantity]
        order = np.argsort(read, axis=1)
        narrow = _widths(opens[order].reshape(len(soon), _GROUPS, -1))
        found += [
            NextReading(quantity=quantity, day=day, narrows_days=wide - left)
            for day, left in zip(days[soon].tolist(), narrow.tolist(), strict=True)
        ]
    best = max((one.narrows_days for one in found), default=0.0)
    if best < _WORTH_DAYS:
        return None
    return next(
        one for one in sorted(found, key=lambda one: one.day) if one.narrows_days >= _NEARLY * best
    )


def _widths(opens: Floats) -> Floats:
    """Mean width of the 80 % windows of some groups (readings by groups by draws)."""
    low, high = quantiles(opens.reshape(-1, opens.shape[2]), (0.1, 0.9))
    widths: Floats = (high - low).reshape(opens.shape[:2]).mean(axis=1)
    return widths
