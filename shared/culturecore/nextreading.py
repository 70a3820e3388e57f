"""Which reading would tell most: what the window would shrink to, on average.

Each draw of a forecast says what a reading would show and on which day the window opens.
Draws that would show about the same are those that would be left after that reading; how
much narrower their windows are is what the reading is worth.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from culturecore.souringcase import NextReading
from culturecore.stages import Quantity

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.random import Generator
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
    rng: Generator,
) -> NextReading | None:
    """Find the most useful reading of the coming week; None if none is worth much.

    Parameters: ``shown`` gives what each draw shows (draws by ``days``), ``sds`` the error
    of a reading, ``opens`` each draw's day of opening, cut off at the horizon.
    """
    import numpy as np

    usable = len(opens) - len(opens) % _GROUPS
    opens = opens[:usable]
    wide = _width(opens[None, :])
    likely = float(np.quantile(opens, 0.25))
    latest = max(min(now_day + _LATEST_DAYS, likely), now_day + 2.0 * _SOONEST_DAYS)
    soon = np.flatnonzero((days >= now_day + _SOONEST_DAYS) & (days <= latest))
    soon = soon[days[soon] == np.rint(days[soon])] if len(soon) > 2 else soon
    found: list[NextReading] = []
    for quantity, values in shown.items():
        noise = rng.standard_normal(usable) * sds[quantity]
        for at in soon.tolist():
            order = np.argsort(values[:usable, at] + noise)
            narrow = _width(opens[order].reshape(_GROUPS, -1))
            found.append(
                NextReading(quantity=quantity, day=float(days[at]), narrows_days=wide - narrow)
            )
    best = max((one.narrows_days for one in found), default=0.0)
    if best < _WORTH_DAYS:
        return None
    return next(
        one for one in sorted(found, key=lambda one: one.day) if one.narrows_days >= _NEARLY * best
    )


def _width(opens: Floats) -> float:
    """Mean width of the 80 % windows of some groups (groups by draws)."""
    import numpy as np

    low, high = np.quantile(opens, (0.1, 0.9), axis=1)
    return float(np.mean(high - low))
