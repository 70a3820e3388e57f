"""How far two arms of a trial differ, with an interval, and how often chance would do as much.

The unit is the jar: several readings or tasters of one jar are one value here. Differences
are always the second arm less the first.
"""

from __future__ import annotations

import itertools
import math
import random
import statistics
from collections.abc import Hashable, Sequence
from dataclasses import dataclass

from culturecore.errors import ImpossibleInput
from culturecore.studentt import t_quantile, t_two_sided_p

LEVEL = 0.95
_MOST_LISTED = 6000  # ways of dealing out that are all gone through; beyond, some are drawn
_DRAWN = 1999
_TIE = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """A difference of two arms; ``low`` and ``high`` hold the ``level`` interval.

    They are infinite where so few jars allow no interval. ``p_value`` is of the interval's own
    model; None where there is none.
    """

    difference: float
    low: float
    high: float
    level: float
    df: float | None = None
    p_value: float | None = None

    @property
    def is_bounded(self) -> bool:
        """Whether the data give an interval at all."""
        return math.isfinite(self.low) and math.isfinite(self.high)


def welch_effect(
    first: Sequence[float], second: Sequence[float], *, level: float = LEVEL
) -> Effect:
    """Return the difference of two means with Welch's interval.

    Welch, B. L. 1947, Biometrika 34:28-35: the arms may scatter differently. Each mean's
    scatter has its own degrees of freedom, joined by Satterthwaite's formula.

    Parameters
    ----------
    first, second : sequence of float
        One value a jar; at least one each. With a single jar in an arm there is no interval.
    level : float
        What share of such intervals holds the truth.
    """
    _check(first, second, level)
    difference = statistics.fmean(second) - statistics.fmean(first)
    if len(first) < 2 or len(second) < 2:
        return _unbounded(difference, level)
    shares = [statistics.variance(values) / len(values) for values in (first, second)]
    error = math.sqrt(sum(shares))
    if error <= _TIE * max(1.0, abs(difference)):
        # Jars that agree to the last digit say nothing of how far jars scatter.
        return _unbounded(difference, level)
    df = sum(shares) ** 2 / sum(
        share**2 / (len(values) - 1) for share, values in zip(shares, (first, second), strict=True)
    )
    return _student(difference, error, df, level)


def blocked_effect(
    first: Sequence[float],
    second: Sequence[float],
    first_blocks: Sequence[Hashable],
    second_blocks: Sequence[Hashable],
    *,
    level: float = LEVEL,
) -> Effect:
    """Return the difference within blocks of like jars, with its interval.

    The least-squares difference of a model with one mean a block and one difference common
    to all; with one jar of each arm in a block it is Student's paired comparison (Student
    1908, Biometrika 6:1-25). Blocks without both arms say nothing and are left out.

    Raises
    ------
    ImpossibleInput
        Field "blocks" if no block has both arms.
    """
    _check(first, second, level)
    cells: dict[Hashable, tuple[list[float], list[float]]] = {}
    for side, (values, blocks) in enumerate(((first, first_blocks), (second, second_blocks))):
        for value, block in zip(values, blocks, strict=True):
            cells.setdefault(block, ([], []))[side].append(value)
    both = [cell for cell in cells.values() if cell[0] and cell[1]]
    if not both:
        raise ImpossibleInput("blocks", len(cells), reason="no_block_with_both")
    weights = [len(a) * len(b) / (len(a) + len(b)) for a, b in both]
    gaps = [statistics.fmean(b) - statistics.fmean(a) for a, b in both]
    weight = sum(weights)
    difference = sum(w * gap for w, gap in zip(weights, gaps, strict=True)) / weight
    df = sum(len(a) + len(b) for a, b in both) - len(both) - 1
    if df < 1:
        return _unbounded(difference, level)
    left_over = sum(_squares((*a, *b)) for a, b in both) - weight * difference**2
    error = math.sqrt(max(0.0, left_over) / df / weight)
    if error <= _TIE * max(1.0, abs(difference)):
        return _unbounded(difference, level)
    return _student(difference, error, df, level)


def shift_effect(
    first: Sequence[float], second: Sequence[float], *, level: float = LEVEL
) -> Effect:
    """Return how far marks on a scale are shifted, with the interval of ranks.

    The median of all differences of pairs (Hodges & Lehmann 1963), between those of them
    that the distribution of the rank sum cuts off (Mann & Whitney 1947); nothing is assumed
    of how marks scatter. With ties the interval holds the truth at least as often as it says.
    ``level`` of the result is what the jars allow, never less than asked; too few allow none.
    """
    _check(first, second, level)
    gaps = sorted(b - a for a in first for b in second)
    difference = statistics.median(gaps)
    ways = _rank_sum_ways(len(first), len(second))
    every = math.comb(len(first) + len(second), len(first))
    cut, tail = 0, 0
    # The widest cut whose two tails together stay within what may be missed.
    while cut < len(ways) and 2.0 * (tail + ways[cut]) / every <= 1.0 - level + _TIE:
        tail += ways[cut]
        cut += 1
    if cut == 0:
        return _unbounded(difference, level)
    return Effect(
        difference=difference,
        low=gaps[cut - 1],
        high=gaps[len(gaps) - cut],
        level=1.0 - 2.0 * tail / every,
    )


def permutation_p(
    first: Sequence[float],
    second: Sequence[float],
    first_blocks: Sequence[Hashable] | None = None,
    second_blocks: Sequence[Hashable] | None = None,
    *,
    seed: int = 0,
) -> float:
    """Return how often dealing the same values out by lot parts the arms at least as far.

    Fisher, R. A. 1935, The Design of Experiments: under no difference every dealing was as
    likely, within the blocks if there are any. All are gone through if they are few, else
    some are drawn, and then the one that came about counts among them.
    """
    _check(first, second, LEVEL)
    values = [*first, *second]
    blocks = [*(first_blocks or [0] * len(first)), *(second_blocks or [0] * len(second))]
    is_second = [False] * len(first) + [True] * len(second)
    groups: dict[Hashable, list[int]] = {}
    for n, block in enumerate(blocks):
        groups.setdefault(block, []).append(n)
    parts = [
        _Block([values[n] for n in group], sum(is_second[n] for n in group))
        for group in groups.values()
    ]
    seen = sum(
        part.gap([values[n] for n in group if is_second[n]])
        for part, group in zip(parts, groups.values(), strict=True)
    )
    floor = abs(seen) - _TIE * max(1.0, abs(seen))
    if math.prod(math.comb(len(part.values), part.taken) for part in parts) <= _MOST_LISTED:
        choices = [
            [part.gap(chosen) for chosen in itertools.combinations(part.values, part.taken)]
            for part in parts
        ]
        dealings = [sum(dealt) for dealt in itertools.product(*choices)]
        return sum(abs(gap) >= floor for gap in dealings) / len(dealings)
    lots = random.Random(seed)
    far = sum(
        abs(sum(part.gap(lots.sample(part.values, part.taken)) for part in parts)) >= floor
        for _ in range(_DRAWN)
    )
    return (far + 1) / (_DRAWN + 1)


def least_p(first_count: int, second_count: int) -> float:
    """Return the smallest p-value that dealing out so few jars can give: the clearest order."""
    return min(1.0, 2.0 / math.comb(first_count + second_count, first_count))


def holm(p_values: Sequence[float]) -> tuple[float, ...]:
    """Return p-values that allow for having looked at several things.

    Holm, S. 1979, Scand. J. Statist. 6:65-70: the smallest is multiplied by how many there
    are, the next by one less, and so on; none falls below the one before.
    """
    order = sorted(range(len(p_values)), key=lambda n: p_values[n])
    adjusted = [0.0] * len(p_values)
    worst = 0.0
    for rank, n in enumerate(order):
        worst = max(worst, min(1.0, (len(p_values) - rank) * p_values[n]))
        adjusted[n] = worst
    return tuple(adjusted)


def _check(first: Sequence[float], second: Sequence[float], level: float) -> None:
    for values in (first, second):
        if not values or not all(math.isfinite(value) for value in values):
            raise ImpossibleInput("values", tuple(values), reason="empty")
    if not 0.0 < level < 1.0:
        raise ImpossibleInput("level", level, low=0.0, high=1.0)


def _unbounded(difference: float, level: float) -> Effect:
    return Effect(difference=difference, low=-math.inf, high=math.inf, level=level)


def _student(difference: float, error: float, df: float, level: float) -> Effect:
    half = t_quantile(0.5 + level / 2.0, df) * error
    return Effect(
        difference=difference,
        low=difference - half,
        high=difference + half,
        level=level,
        df=df,
        p_value=t_two_sided_p(difference / error, df),
    )


def _squares(values: Sequence[float]) -> float:
    middle = statistics.fmean(values)
    return math.fsum((value - middle) ** 2 for value in values)


class _Block:
    """The values of like jars, of which ``taken`` are the second arm's."""

    def __init__(self, values: Sequence[float], taken: int) -> None:
        self.values, self.taken = values, taken
        left = len(values) - taken
        # The block's difference counts by its harmonic number of jars, as in least squares.
        weight = taken * left / len(values)
        mine, theirs = (weight / taken, weight / left) if taken and left else (0.0, 0.0)
        self._each, self._rest = mine + theirs, theirs * math.fsum(values)

    def gap(self, chosen: Sequence[float]) -> float:
        """Return the weighted difference if these values were the second arm's."""
        return self._each * sum(chosen) - self._rest


def _rank_sum_ways(m: int, n: int) -> tuple[int, ...]:
    """Return in how many orders of m and n things each rank sum comes about, from the least."""
    # ways[i][u]: orders of i of the first kind with u pairs in which the second comes first.
    ways = [[1] + [0] * (m * n)] + [[0] * (m * n + 1) for _ in range(m)]
    for k in range(1, n + m + 1):
        for i in range(min(m, k), 0, -1):
            for u in range(m * n, -1, -1):
                shift = k - i
                if u >= shift:
                    ways[i][u] += ways[i - 1][u - shift]
    return tuple(ways[m])
