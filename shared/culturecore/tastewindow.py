"""The tasting window: the days on which a jar is neither too sweet nor too sour for the maker.

Sourness opens and closes it. Sweetness narrows it only where tastings have shown a level of
sugar that is surely too sweet, or surely too little, for this maker.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.souringcase import Band

    Floats: TypeAlias = NDArray[float64]

_LEAST_SHIFT_DAYS = 0.5  # less is lost in the window's own doubt
_MOST_SUGAR_G_PER_L = 700.0
_MOSTLY = 0.5  # of the possible jars


class SweetnessSays(Enum):
    """What sweetness does to the window that sourness makes."""

    OPENS_LATER = "opens_later"
    CLOSES_EARLIER = "closes_earlier"
    NARROWS_BOTH = "narrows_both"
    NEVER_TOGETHER = "never_together"  # sour enough only while too sweet: sourness alone counts


@dataclass(frozen=True, slots=True)
class TasteWindow:
    """Days on which each possible jar comes into the band and leaves it (inf for never)."""

    opens: Floats
    closes: Floats
    sweetness: SweetnessSays | None = None

    def opening(self, horizon_days: float) -> Estimate | None:
        """Return the day of opening, None when most jars do not get there in time."""
        return crossing(self.opens, horizon_days)

    def closing(self, horizon_days: float) -> Estimate | None:
        """Return the day of closing, None when most jars do not get there in time."""
        return crossing(self.closes, horizon_days)


def taste_window(
    sour_enough: Floats,
    too_sour: Floats,
    days: Floats,
    sugar_g_per_l: Floats,
    band: Band,
    horizon_days: float,
) -> TasteWindow:
    """Join sourness and sweetness into one window, jar by jar.

    Parameters: ``sour_enough`` and ``too_sour`` are days (inf for never), one a possible jar;
    ``sugar_g_per_l`` has a row a jar over ``days``.

    Raises: `ImpossibleInput` for a band of sweetness that cannot be.

    Notes: a jar that is never right in both goes by sourness alone, since its sugar is only
    reckoned while its pH is measured.
    """
    import numpy as np

    _check(band)
    opens, closes = sour_enough.reshape(-1), too_sour.reshape(-1)
    if band.too_sweet_g_per_l is None and band.too_dry_g_per_l is None:
        return TasteWindow(opens, closes)
    later, earlier = opens, closes
    if band.too_sweet_g_per_l is not None:
        later = np.maximum(opens, day_of_sugar(days, sugar_g_per_l, band.too_sweet_g_per_l))
    if band.too_dry_g_per_l is not None:
        earlier = np.minimum(closes, day_of_sugar(days, sugar_g_per_l, band.too_dry_g_per_l))
    in_time = opens < horizon_days
    never = later >= np.minimum(earlier, horizon_days)
    if in_time.any() and float(never[in_time].mean()) > _MOSTLY:
        return TasteWindow(opens, closes, SweetnessSays.NEVER_TOGETHER)
    later, earlier = np.where(never, opens, later), np.where(never, closes, earlier)
    shift_in = _middle(later, horizon_days) - _middle(opens, horizon_days)
    shift_out = _middle(closes, horizon_days) - _middle(earlier, horizon_days)
    return TasteWindow(
        later, earlier, _says(shift_in >= _LEAST_SHIFT_DAYS, shift_out >= _LEAST_SHIFT_DAYS)
    )


def day_of_sugar(days: Floats, sugar_g_per_l: Floats, level_g_per_l: float) -> Floats:
    """Return the day from which each row's sugar stays at or below a level; inf for never.

    Sugar falls, but for a jar that is topped up with fresh sweet tea: then the last day counts.
    """
    import numpy as np

    above = sugar_g_per_l > level_g_per_l
    last = above.shape[1] - 1
    at = last - np.argmax(above[:, ::-1], axis=1)  # the last day above, where there is one
    after = np.minimum(at + 1, last)
    rows = np.arange(len(sugar_g_per_l))
    before_g_per_l, after_g_per_l = sugar_g_per_l[rows, at], sugar_g_per_l[rows, after]
    drop = np.maximum(before_g_per_l - after_g_per_l, 1e-12)
    share = np.clip((before_g_per_l - level_g_per_l) / drop, 0.0, 1.0)
    crossed = days[at] + share * (days[after] - days[at])
    answer: Floats = np.where(~above.any(axis=1), 0.0, np.where(above[:, -1], np.inf, crossed))
    return answer


def crossing(crossing_days: Floats, horizon_days: float) -> Estimate | None:
    """Tell the day of crossing, or None when most jars do not cross within the horizon."""
    import numpy as np

    if float(np.mean(crossing_days > horizon_days)) > _MOSTLY:
        return None
    inside = np.minimum(crossing_days, horizon_days)
    low, middle, high = np.quantile(inside, (0.1, 0.5, 0.9)).tolist()
    return Estimate(value=middle, low=low, high=high, level=0.8)


def _says(is_later: bool, is_earlier: bool) -> SweetnessSays | None:
    if is_later and is_earlier:
        return SweetnessSays.NARROWS_BOTH
    if is_later:
        return SweetnessSays.OPENS_LATER
    return SweetnessSays.CLOSES_EARLIER if is_earlier else None


def _middle(crossing_days: Floats, horizon_days: float) -> float:
    import numpy as np

    return float(np.median(np.minimum(crossing_days, horizon_days)))


def _check(band: Band) -> None:
    least = 0.0
    for field, value in (
        ("too_dry_g_per_l", band.too_dry_g_per_l),
        ("too_sweet_g_per_l", band.too_sweet_g_per_l),
    ):
        if value is None:
            continue
        if not math.isfinite(value) or not least <= value <= _MOST_SUGAR_G_PER_L:
            raise ImpossibleInput(field, value, low=least, high=_MOST_SUGAR_G_PER_L, unit="g/L")
        least = value
