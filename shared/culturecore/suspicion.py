"""Why a reading looks wrong."""

from __future__ import annotations

from itertools import accumulate
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.readingarrays import Readings

IMPOSSIBLE = "impossible_for_kombucha"
CAME_BACK = "sweeter_than_before_and_after"
WENT_AHEAD = "sourer_than_before_and_after"
TOO_SWEET = "less_sour_than_the_course"
TOO_SOUR = "sourer_than_the_course"

_LOWEST_PH, _HIGHEST_PH = 2.3, 6.5  # outside: a slip of the meter or the pen; judgement


def reason(readings: Readings, at: int, course: NDArray[float64]) -> str:
    """Give a code for what is wrong with the reading in place ``at``.

    ``course`` is what the jar should have shown at each reading. Codes: impossible for
    kombucha at all; off to the same side of the readings before and after it; else only
    off the course.
    """
    value, is_ph = float(readings.values[at]), at < readings.counts[0]
    if is_ph and not _LOWEST_PH <= value <= _HIGHEST_PH:
        return IMPOSSIBLE
    # Acidity and gravity point in different ways: a lower pH is sourer, so is a higher TA.
    is_ta = readings.counts[0] <= at < sum(readings.counts[:2])
    sourer = (value > course[at]) if is_ta else (value < course[at])
    before, after = _neighbours(readings, at)
    both = before is not None and after is not None
    if both and before is not None and after is not None:
        if value > max(before, after):
            return WENT_AHEAD if is_ta else CAME_BACK
        if value < min(before, after):
            return CAME_BACK if is_ta else WENT_AHEAD
    return TOO_SOUR if sourer else TOO_SWEET


def _neighbours(readings: Readings, at: int) -> tuple[float | None, float | None]:
    """Values of the same quantity just before and just after a reading."""
    ends = list(accumulate(readings.counts))
    kind = next(i for i, end in enumerate(ends) if at < end)
    same = sorted(
        range(ends[kind] - readings.counts[kind], ends[kind]),
        key=lambda i: float(readings.days[i]),
    )
    place = same.index(at)
    before = float(readings.values[same[place - 1]]) if place > 0 else None
    after = float(readings.values[same[place + 1]]) if place + 1 < len(same) else None
    return before, after
