"""Statistics that stay honest when there are few values.

Nothing here assumes a shape of the distribution but `shrink`, which says so. Each interval
names how often intervals of its kind hold what they are about ("coverage"); with few
values that is a choice of a few steps, not of any number.
"""

from __future__ import annotations

import math
import statistics
from collections.abc import Sequence
from dataclasses import dataclass

from culturecore.errors import ImpossibleInput

LEVEL = 0.9  # coverage asked of an interval for one group; chosen for this program
DIFFERENCE_LEVEL = 0.95  # of one for a difference, on which a sentence may rest
LEAST_COUNT = 5  # with fewer, not even the whole range reaches 90 % (1 - 2 / 2**4 = 0.875)
_Z95 = 1.959963984540054  # 97.5 % point of the standard normal curve
_EXACT_PAIRS = 400  # pairs up to which the rank distribution is counted out


@dataclass(frozen=True, slots=True, kw_only=True)
class Interval:
    """Two ends, and the share of such intervals that hold what they are about."""

    low: float
    high: float
    coverage: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Spread:
    """Some durations in short; in the unit they came in.

    ``count`` were reached and are known; ``open_count`` are only known to be longer than
    something. ``median`` is None while fewer than half are there. ``low`` and ``high`` are
    the shortest and the longest that was reached, ``longest_seen`` the longest of all, open
    ones too. ``interval`` is for the median, None with too few values; its upper end may be
    infinite.
    """

    count: int
    open_count: int
    median: float | None
    low: float
    high: float
    longest_seen: float
    interval: Interval | None

    @property
    def is_enough(self) -> bool:
        """Whether there are enough values to say anything of what lies behind them."""
        return self.interval is not None


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """How much longer the first of two groups took than the second, with its interval."""

    estimate: float | None  # None while open durations leave it open
    interval: Interval

    @property
    def is_told(self) -> bool:
        """Whether the interval leaves out "no difference"."""
        return self.interval.low > 0.0 or self.interval.high < 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Shrunk:
    """Group means drawn towards the mean of all; ``weights`` is what each keeps of its own."""

    overall_mean: float
    between_sd: float
    within_sd: float
    means: tuple[float, ...]
    weights: tuple[float, ...]


def median_interval(values: Sequence[float], *, level: float = LEVEL) -> Interval | None:
    """Return an interval for the median from the values in order (order statistics).

    The k-th smallest and the k-th largest value hold the median of the distribution with
    probability 1 - 2 P(B < k), B binomial(n, 1/2); k is the largest for which that is at
    least ``level``. It holds for any continuous distribution; tied values only raise it.

    Returns
    -------
    Interval or None
        None if even the whole range would not reach ``level``. Ends may be infinite if
        values are.

    Source: Thompson 1936, Ann. Math. Stat. 7:122 (from memory); any text on order
    statistics has the formula, and the table of coverages in the tests is a printed one.
    """
    _check_level(level)
    ordered, n = _ordered(values), len(values)
    found = None
    below = 0.0  # P(B < k)
    for k in range(1, n // 2 + 1):
        below += math.comb(n, k - 1) / 2.0**n
        if 1.0 - 2.0 * below < level:
            break
        found = Interval(low=ordered[k - 1], high=ordered[n - k], coverage=1.0 - 2.0 * below)
    return found


def spread_of(
    reached: Sequence[float], longer_than: Sequence[float] = (), *, level: float = LEVEL
) -> Spread | None:
    """Describe durations, of which some are only known to be longer than a value.

    With open ones the median is that of Kaplan and Meier's curve, and the interval that of
    Brookmeyer and Crowley on its log(-log) scale, which is only about as sure as it says
    with few values. Both take it that a duration is open for a reason that has nothing to
    do with its length: that is so for a batch still at it.

    Returns
    -------
    Spread or None
        None if nothing was reached.

    Source: Kaplan and Meier 1958, J. Am. Stat. Assoc. 53:457; Brookmeyer and Crowley 1982,
    Biometrics 38:29 (both from memory); checked against statsmodels.
    """
    _ordered((*reached, *longer_than))
    if not reached:
        return None
    if longer_than:
        curve = _survival(reached, longer_than)
        median = _half_time(curve)
        interval = _half_time_interval(curve, level)
    else:
        median = statistics.median(reached)
        interval = median_interval(reached, level=level)
    return Spread(
        count=len(reached),
        open_count=len(longer_than),
        median=median,
        low=min(reached),
        high=max(reached),
        longest_seen=max((*reached, *longer_than)),
        interval=interval if len(reached) >= LEAST_COUNT else None,
    )


def difference_of(
    first: tuple[Sequence[float], Sequence[float]],
    second: tuple[Sequence[float], Sequence[float]],
    *,
    level: float = DIFFERENCE_LEVEL,
) -> Difference | None:
    """Return how much longer the first group's durations are (Hodges and Lehmann).

    The median of all differences between a value of the one and a value of the other, with
    the interval that belongs to the rank test of Mann and Whitney: two groups that differ by
    a shift only. Each group is what was reached and what is only known to be longer: the
    interval is worked out as if open durations ended where they were last seen, and as if
    they never ended, and spans both.

    Returns
    -------
    Difference or None
        None with fewer than five reached in either group.

    Source: Hollander and Wolfe, Nonparametric Statistical Methods, ch. 4 (from memory); the
    tests hold it to their example and to SciPy's exact rank test.
    """
    _check_level(level)
    (a, a_open), (b, b_open) = first, second
    _ordered((*a, *a_open, *b, *b_open))
    if min(len(a), len(b)) < LEAST_COUNT:
        return None
    n, m = len(a) + len(a_open), len(b) + len(b_open)
    k, coverage = _rank_of_end(n, m, level)
    never_a, never_b = [math.inf] * len(a_open), [math.inf] * len(b_open)
    least = sorted(x - y for x in (*a, *a_open) for y in (*b, *never_b))
    most = sorted(x - y for x in (*a, *never_a) for y in (*b, *b_open))
    low, high = _median(least), _median(most)
    return Difference(
        estimate=low if low == high else None,
        interval=Interval(low=least[k - 1], high=most[n * m - k], coverage=coverage),
    )


def share_interval(hits: int, count: int) -> Interval:
    """Return an interval for a share, by Wilson's score method, at 95 %.

    Raises
    ------
    ImpossibleInput
        Field "count" for none at all, "hits" for more than there are.

    Source: Wilson 1927, J. Am. Stat. Assoc. 22:209; Newcombe 1998, Stat. Med. 17:857,
    method 3 (both from memory). Its coverage is 95 % on average, not for each share.
    """
    if count < 1:
        raise ImpossibleInput("count", count, low=1)
    if not 0 <= hits <= count:
        raise ImpossibleInput("hits", hits, low=0, high=count)
    share, z2 = hits / count, _Z95**2
    middle = (share + z2 / (2.0 * count)) / (1.0 + z2 / count)
    half = _Z95 * math.sqrt(share * (1.0 - share) / count + z2 / (4.0 * count**2))
    half /= 1.0 + z2 / count
    low = 0.0 if hits == 0 else max(middle - half, 0.0)
    high = 1.0 if hits == count else min(middle + half, 1.0)
    return Interval(low=low, high=high, coverage=0.95)


def shrink(groups: Sequence[Sequence[float]]) -> Shrunk | None:
    """Draw the means of groups towards the mean of all, the more the fewer values they have.

    Simple normal random effects: values scatter about their group's mean alike in all
    groups, the groups' means about a common one; how much is taken from the data by the
    method of moments. A group's own mean keeps the weight between² / (between² + within² / n).
    With nothing that tells the groups apart, all are given the common mean.

    Returns
    -------
    Shrunk or None
        None with fewer than two groups, or fewer than three values more than groups, or
        no scatter at all.

    Source: DerSimonian and Laird 1986, Control. Clin. Trials 7:177 (from memory), with one
    within-group variance pooled over the groups.
    """
    kept = [list(group) for group in groups]
    _ordered([value for group in kept for value in group])
    free = sum(len(group) for group in kept) - len(kept)
    if len(kept) < 2 or free < 3 or not all(kept):
        return None
    means = [statistics.fmean(group) for group in kept]
    within = sum(
        (value - mean) ** 2 for group, mean in zip(kept, means, strict=True) for value in group
    )
    within /= free
    if within <= 0.0:
        return None
    variances = [within / len(group) for group in kept]
    between = between_variance(means, variances)
    weights = [1.0 / (between + variance) for variance in variances]
    overall = math.fsum(w * m for w, m in zip(weights, means, strict=True)) / math.fsum(weights)
    keeps = [between / (between + variance) for variance in variances]
    return Shrunk(
        overall_mean=overall,
        between_sd=math.sqrt(between),
        within_sd=math.sqrt(within),
        means=tuple(
            overall + keep * (mean - overall) for keep, mean in zip(keeps, means, strict=True)
        ),
        weights=tuple(keeps),
    )


def between_variance(means: Sequence[float], variances: Sequence[float]) -> float:
    """Return how much means with known variances differ beyond chance (method of moments).

    Source: DerSimonian and Laird 1986 (from memory).
    """
    weights = [1.0 / variance for variance in variances]
    total = math.fsum(weights)
    middle = math.fsum(w * m for w, m in zip(weights, means, strict=True)) / total
    q = math.fsum(w * (m - middle) ** 2 for w, m in zip(weights, means, strict=True))
    spread = total - math.fsum(w * w for w in weights) / total
    return max(0.0, (q - (len(means) - 1)) / spread)


@dataclass(frozen=True, slots=True)
class _Step:
    """One step of a survival curve: from ``time`` on the share ``left`` is still at it.

    ``sum`` is Greenwood's: the variance of log(left).
    """

    time: float
    left: float
    sum: float


def _survival(reached: Sequence[float], longer_than: Sequence[float]) -> list[_Step]:
    left, total = 1.0, 0.0
    steps = []
    for time in sorted(set(reached)):
        at_risk = sum(value >= time for value in (*reached, *longer_than))
        ended = sum(value == time for value in reached)
        left *= 1.0 - ended / at_risk
        total += math.inf if ended == at_risk else ended / (at_risk * (at_risk - ended))
        steps.append(_Step(time, left, total))
    return steps


def _half_time(curve: Sequence[_Step]) -> float | None:
    """Return when half are there; the middle, if it is just half between two steps."""
    for number, step in enumerate(curve):
        if math.isclose(step.left, 0.5):
            after = curve[number + 1].time if number + 1 < len(curve) else step.time
            return (step.time + after) / 2.0
        if step.left < 0.5:
            return step.time
    return None


def _half_time_interval(curve: Sequence[_Step], level: float) -> Interval | None:
    """Return the times at which "half are there" cannot be ruled out."""
    z = statistics.NormalDist().inv_cdf(0.5 + level / 2.0)
    middle = math.log(-math.log(0.5))
    found = []
    for step in curve:
        if not 0.0 < step.left < 1.0:
            continue
        log_left = math.log(step.left)
        distance = abs(math.log(-log_left) - middle) / (math.sqrt(step.sum) / abs(log_left))
        if distance <= z:
            found.append(step.time)
    if not found:
        return None
    beyond = [step.time for step in curve if step.time > found[-1]]
    return Interval(low=found[0], high=beyond[0] if beyond else math.inf, coverage=level)


def _rank_of_end(n: int, m: int, level: float) -> tuple[int, float]:
    """Return which of the ordered differences ends the interval, and its coverage."""
    if n * m > _EXACT_PAIRS:
        # 97.5 % point for 95 %: the only level in use; others would need their own
        z = statistics.NormalDist().inv_cdf(0.5 + level / 2.0)
        sd = math.sqrt(n * m * (n + m + 1) / 12.0)
        return max(1, math.floor(n * m / 2.0 - z * sd)), level
    ways = _rank_sum_ways(n, m)
    total = math.comb(n + m, n)
    found, below = (1, 0.0), 0
    for k in range(1, n * m // 2 + 1):
        below += ways[k - 1]
        coverage = 1.0 - 2.0 * below / total
        if coverage < level:
            break
        found = (k, coverage)
    if found[1] == 0.0:
        return 1, 1.0 - 2.0 / total
    return found


def _rank_sum_ways(n: int, m: int) -> list[int]:
    """Return in how many orders of n and m values U pairs stand the wrong way round, by U.

    The coefficients of the Gaussian binomial: the product of (1 - q^(m+i)) / (1 - q^i).
    """
    ways = [0] * (n * m + 1)
    ways[0] = 1
    for i in range(1, n + 1):
        for u in range(n * m, m + i - 1, -1):
            ways[u] -= ways[u - m - i]
        for u in range(i, n * m + 1):
            ways[u] += ways[u - i]
    return ways


def _median(values: Sequence[float]) -> float:
    """Return the median of values that may be infinite."""
    ordered, n = sorted(values), len(values)
    lower, upper = ordered[(n - 1) // 2], ordered[n // 2]
    return lower if lower == upper else (lower + upper) / 2.0


def _ordered(values: Sequence[float]) -> list[float]:
    for value in values:
        if math.isnan(value):
            raise ImpossibleInput("values", value, reason="not_finite")
    return sorted(values)


def _check_level(level: float) -> None:
    if not 0.0 < level < 1.0:
        raise ImpossibleInput("level", level, low=0.0, high=1.0)
