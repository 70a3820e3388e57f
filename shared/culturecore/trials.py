"""Trials of jars: who gets which level, by lot, and when a jar's pH passed a threshold."""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from culturecore.errors import ImpossibleInput

THRESHOLD_PH = 3.2
MOST_ARMS = 6
# No vowels, so that no word comes about; none of two signs that a hurried eye mistakes.
CODE_SIGNS = "CDFHJKMNPRTWXY"
CODE_DIGITS = "3479"
# Pairs that stand for something people would rather not read on a jar, whatever the digit.
_SHUNNED = frozenset({"KK", "FK", "DK", "CN", "NK", "TT", "WC", "PM", "RT", "XX", "DM"})
_ALIKE_SHARE = 0.02  # jars that differ by less in size are of one size
_Z80 = 1.2815515655446004


@dataclass(frozen=True, slots=True, kw_only=True)
class JarSize:
    """What of a vessel changes how fast it sours."""

    working_volume_l: float
    inner_diameter_cm: float

    def is_like(self, other: JarSize) -> bool:
        """Whether two vessels are of one size, within 2 %."""
        return _near(self.working_volume_l, other.working_volume_l) and _near(
            self.inner_diameter_cm, other.inner_diameter_cm
        )


def _near(one: float, other: float) -> bool:
    return abs(one - other) <= _ALIKE_SHARE * max(abs(one), abs(other))


def size_groups(sizes: Sequence[JarSize]) -> tuple[int, ...]:
    """Return the number of its size for each jar; jars of one size share a number.

    Numbers are given from the smallest size up.
    """
    order = sorted(
        range(len(sizes)), key=lambda n: (sizes[n].working_volume_l, sizes[n].inner_diameter_cm)
    )
    found: list[JarSize] = []
    groups = [0] * len(sizes)
    for n in order:
        number = next((g for g, size in enumerate(found) if size.is_like(sizes[n])), None)
        if number is None:
            number = len(found)
            found.append(sizes[n])
        groups[n] = number
    return tuple(groups)


def allocate(sizes: Sequence[JarSize], arm_count: int, *, seed: int) -> tuple[int, ...]:
    """Draw lots: return the arm of each jar.

    Jars are taken in blocks of like size, in each of which every arm comes once; so the
    numbers of jars of any two arms differ by one at most, and no arm gets all the big jars.

    Parameters
    ----------
    sizes : sequence of JarSize
        The jars; at least one for each arm.
    arm_count : int
        How many levels the factor has, 2 to 6.
    seed : int
        Makes the drawing repeatable.

    Raises
    ------
    ImpossibleInput
        Field "arm_count", or "jars" with reason "fewer_than_arms".
    """
    if not 2 <= arm_count <= MOST_ARMS:
        raise ImpossibleInput("arm_count", arm_count, low=2, high=MOST_ARMS)
    if len(sizes) < arm_count:
        raise ImpossibleInput("jars", len(sizes), low=arm_count, reason="fewer_than_arms")
    lots = random.Random(seed)
    order = list(range(len(sizes)))
    lots.shuffle(order)  # among jars of one size, chance says which stand in a block together
    groups = size_groups(sizes)
    order.sort(key=lambda n: groups[n])
    arms = [0] * len(sizes)
    for start in range(0, len(order), arm_count):
        block = order[start : start + arm_count]
        drawn = list(range(arm_count))
        lots.shuffle(drawn)
        for n, arm in zip(block, drawn, strict=False):
            arms[n] = arm
    return tuple(arms)


def draw_codes(count: int, *, seed: int, taken: Sequence[str] = ()) -> tuple[str, ...]:
    """Return short codes for labels: two letters and a digit, none alike, none a word.

    Any two differ in at least two of the three signs, so that one slip of the pen or the
    eye does not turn one into another.

    Raises
    ------
    ImpossibleInput
        Field "count", for more codes than there are.
    """
    lots = random.Random(seed)
    every = [
        one + two + digit
        for one in CODE_SIGNS
        for two in CODE_SIGNS
        for digit in CODE_DIGITS
        if one + two not in _SHUNNED
    ]
    lots.shuffle(every)
    found: list[str] = []
    for code in every:
        if all(_apart(code, other) >= 2 for other in (*taken, *found)):
            found.append(code)
            if len(found) >= count:
                return tuple(found[:count])
    if count <= 0:
        return ()
    raise ImpossibleInput("count", count, low=0, high=len(found), reason="too_many")


def _apart(one: str, other: str) -> int:
    return sum(a != b for a, b in zip(one, other, strict=False)) + abs(len(one) - len(other))


class Passed(Enum):
    """How the moment is known at which a jar's pH passed a threshold."""

    BETWEEN = "between"  # between two readings, one on each side
    BEFORE = "before"  # the first reading was below already
    NOT_YET = "not_yet"  # the last reading was still above
    UNREAD = "unread"  # there is no reading


@dataclass(frozen=True, slots=True, kw_only=True)
class Crossing:
    """When a jar passed a threshold, in days from its start.

    For BETWEEN, ``day`` is the best guess within the two readings ``low`` and ``high`` and
    ``sd`` its standard uncertainty from those of the readings. For BEFORE only ``high`` is
    known, for NOT_YET only ``low``, the day of the last reading.
    """

    how: Passed
    day: float | None = None
    low: float | None = None
    high: float | None = None
    sd: float | None = None


@dataclass(frozen=True, slots=True)
class DayReading:
    """One pH with its standard uncertainty, on a day of the jar."""

    day: float
    value: float
    sd: float


def crossing_of(readings: Sequence[DayReading], threshold: float = THRESHOLD_PH) -> Crossing:
    """Find when falling readings passed a threshold.

    A souring jar only falls; readings that rise are noise, and are pooled by their weights
    until none does (pool adjacent violators). Between the two around the threshold the
    course is taken as straight.
    """
    if not readings:
        return Crossing(how=Passed.UNREAD)
    steps = _falling(sorted(readings, key=lambda reading: reading.day))
    first, last = steps[0], steps[-1]
    if first.value <= threshold:
        return Crossing(how=Passed.BEFORE, low=0.0, high=max(0.0, first.day))
    if last.value > threshold:
        return Crossing(how=Passed.NOT_YET, low=max(0.0, last.day))
    after = next(n for n, step in enumerate(steps) if step.value <= threshold)
    above, below = steps[after - 1], steps[after]
    share = (above.value - threshold) / (above.value - below.value)
    span = below.day - above.day
    day = above.day + share * span
    noise = math.hypot((1.0 - share) * above.sd, share * below.sd)
    sd = noise * span / (above.value - below.value)
    return Crossing(
        how=Passed.BETWEEN, day=day, low=above.day, high=below.day, sd=min(sd, span / math.sqrt(3))
    )


def likely_bounds(crossing: Crossing) -> tuple[float, float] | None:
    """Return the 80 % bounds of a crossing between two readings, never outside of them."""
    if crossing.day is None or crossing.sd is None:
        return None
    assert crossing.low is not None
    assert crossing.high is not None
    half = _Z80 * crossing.sd
    return max(crossing.low, crossing.day - half), min(crossing.high, crossing.day + half)


def _falling(readings: Sequence[DayReading]) -> list[DayReading]:
    """Return readings that never rise; each of a pooled run keeps its day."""
    pools: list[list[DayReading]] = []
    for reading in readings:
        pools.append([reading])
        while len(pools) > 1 and _mean(pools[-2]) < _mean(pools[-1]):
            rising = pools.pop()
            pools[-1] += rising
    return [
        DayReading(reading.day, _mean(pool), reading.sd if len(pool) == 1 else _pooled_sd(pool))
        for pool in pools
        for reading in pool
    ]


def _weight(reading: DayReading) -> float:
    return 1.0 / max(reading.sd, 1e-3) ** 2


def _mean(pool: Sequence[DayReading]) -> float:
    total = sum(map(_weight, pool))
    return sum(_weight(reading) * reading.value for reading in pool) / total


def _pooled_sd(pool: Sequence[DayReading]) -> float:
    return 1.0 / math.sqrt(sum(map(_weight, pool)))
