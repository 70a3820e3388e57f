"""On which day a batch came down to a pH, as far as its readings tell."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from culturecore.errors import ImpossibleInput

# A reading that the next one takes back by more than this was a slip of hand or meter: a
# souring jar does not turn sweeter. Chosen for this program; strips are no finer.
SLIP_PH = 0.15


class Reach(Enum):
    """How a batch stands to a pH."""

    REACHED = "reached"
    FROM_START = "from_start"  # it may have been that low when it began
    NOT_YET = "not_yet"
    UNREAD = "unread"


@dataclass(frozen=True, slots=True, kw_only=True)
class Crossing:
    """When a pH was reached: on ``day``, surely after ``earliest`` and by ``latest``.

    While it is not reached, ``earliest`` is the day of the last reading; the rest is None.
    """

    reach: Reach
    day: float | None = None
    earliest: float | None = None
    latest: float | None = None


def crossing_of(
    readings: Sequence[tuple[float, float]], ph: float, *, start: tuple[float, float]
) -> Crossing:
    """Return when readings of (day, pH) came down to ``ph``.

    Between two readings the pH is taken to fall evenly; the bounds are the two readings.
    Before the first one the reckoned start stands in, ``start`` = (pH, its lower bound), if
    it lies above the mark for certain.

    Raises
    ------
    ImpossibleInput
        Field "ph" or "readings" for what is no number.
    """
    if not math.isfinite(ph):
        raise ImpossibleInput("ph", ph, reason="not_finite")
    for day, value in readings:
        if not (math.isfinite(day) and math.isfinite(value)):
            raise ImpossibleInput("readings", (day, value), reason="not_finite")
    ordered = sorted(readings)
    if not ordered:
        return Crossing(reach=Reach.UNREAD)
    before: tuple[float, float] | None = None
    for number, (day, value) in enumerate(ordered):
        is_taken_back = number + 1 < len(ordered) and ordered[number + 1][1] > ph + SLIP_PH
        if value > ph:
            before = (day, value)
            continue
        if is_taken_back:
            continue
        if before is None:
            start_ph, start_low = start
            if start_low <= ph or start_ph <= ph:
                return Crossing(reach=Reach.FROM_START)
            before = (min(0.0, day), start_ph)
        share = (before[1] - ph) / (before[1] - value)
        crossed = max(before[0] + share * (day - before[0]), 0.0)
        return Crossing(
            reach=Reach.REACHED, day=crossed, earliest=max(before[0], 0.0), latest=max(day, 0.0)
        )
    return Crossing(reach=Reach.NOT_YET, earliest=max(ordered[-1][0], 0.0))
