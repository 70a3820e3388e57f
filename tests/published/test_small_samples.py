"""Intervals of few values against printed examples, SciPy and statsmodels."""

from __future__ import annotations

import math
import random

import numpy as np
import pytest
from scipy import stats

from culturecore.smallsamples import (
    LEAST_COUNT,
    between_variance,
    difference_of,
    median_interval,
    share_interval,
    shrink,
    spread_of,
)

# A printed table of intervals for the median, "Table A.7: Confidence Intervals for the
# Population Median" of an introductory text (as scanned on a page of course files): n, which
# ordered values, coverage in percent. Only rows that are the narrowest of 90 % or more.
PRINTED = [
    (5, 1, 5, 93.8),
    (6, 1, 6, 96.9),
    (7, 1, 7, 98.4),
    (8, 2, 7, 93.0),
    (9, 2, 8, 96.1),
    (10, 2, 9, 97.9),
    (11, 3, 9, 93.5),
    (12, 3, 10, 96.1),
    (14, 4, 11, 94.3),
    (15, 4, 12, 96.5),
    (16, 5, 12, 92.3),
    (17, 5, 13, 95.1),
    (19, 6, 14, 93.6),
    (20, 6, 15, 95.9),
]


@pytest.mark.parametrize(("n", "low", "high", "percent"), PRINTED)
def test_the_interval_of_the_median_is_that_of_the_printed_table(n, low, high, percent):
    found = median_interval([float(k) for k in range(1, n + 1)])
    assert (found.low, found.high) == (low, high)
    assert 100.0 * found.coverage == pytest.approx(percent, abs=0.051)


@pytest.mark.parametrize("n", [5, 8, 13, 40, 101])
@pytest.mark.parametrize("level", [0.8, 0.9, 0.95])
def test_the_interval_of_the_median_has_the_ends_of_scipys(n, level):
    """scipy.stats.quantile_test gives the same order statistics, from the binomial."""
    values = [float(k * k) for k in range(1, n + 1)]
    found = median_interval(values, level=level)
    test = stats.quantile_test(values, q=20.0, p=0.5)
    theirs = test.confidence_interval(level)
    if found is None:
        assert math.isnan(theirs.low)
    else:
        assert (found.low, found.high) == (theirs.low, theirs.high)


# Newcombe 1998, Stat. Med. 17:857-872, table I, method 3 (from memory).
NEWCOMBE = [
    (81, 263, 0.2553, 0.3662),
    (15, 148, 0.0624, 0.1605),
    (0, 20, 0.0, 0.1611),
    (1, 29, 0.0061, 0.1718),
]


@pytest.mark.parametrize(("hits", "count", "low", "high"), NEWCOMBE)
def test_shares_are_newcombes(hits, count, low, high):
    found = share_interval(hits, count)
    assert (round(found.low, 4), round(found.high, 4)) == (low, high)


def test_shares_are_those_of_statsmodels():
    from statsmodels.stats.proportion import proportion_confint

    for count in (1, 2, 5, 17, 80):
        for hits in range(count + 1):
            found = share_interval(hits, count)
            low, high = proportion_confint(hits, count, method="wilson")
            assert (found.low, found.high) == (
                pytest.approx(low, abs=1e-12),
                pytest.approx(high, abs=1e-12),
            )


# Hollander and Wolfe, example 4.1, permeability of the chorioamnion at term and at 12 to 26
# weeks; printed with the rank test of R (help of wilcox.test) and in the output of SAS
# (NPAR1WAY: location shift 0.305).
AT_TERM = [0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46]
EARLIER = [1.15, 0.88, 0.90, 0.74, 1.21]


def test_the_difference_is_that_of_hollander_and_wolfe():
    found = difference_of((AT_TERM, []), (EARLIER, []))
    assert found.estimate == pytest.approx(0.305)
    assert (found.interval.low, found.interval.high) == (pytest.approx(-0.15), pytest.approx(0.76))
    assert found.interval.coverage >= 0.95
    assert not found.is_told


@pytest.mark.parametrize("sizes", [(5, 5), (5, 9), (7, 6), (10, 12), (20, 20)])
def test_the_interval_ends_where_scipys_exact_rank_test_turns(sizes):
    """A shift just inside is not refused at 5 %, one just outside is."""
    chance = random.Random(20261125 + sizes[0] * 100 + sizes[1])
    a = [chance.gauss(10.0, 2.0) for _ in range(sizes[0])]
    b = [chance.gauss(9.0, 2.0) for _ in range(sizes[1])]
    found = difference_of((a, []), (b, [])).interval

    def p_of(shift):
        moved = [value - shift for value in a]
        return stats.mannwhitneyu(moved, b, method="exact").pvalue

    assert p_of(found.low + 1e-6) > 0.05
    assert p_of(found.high - 1e-6) > 0.05
    assert p_of(found.low - 1e-6) <= 0.05
    assert p_of(found.high + 1e-6) <= 0.05
    assert 1.0 - found.coverage == pytest.approx(p_of(found.low - 1e-6))


# Freireich et al. 1963, weeks of remission under 6-mercaptopurine, as in every textbook of
# survival analysis: median 23 weeks; the log(-log) interval begins at 13 and is open.
REACHED_WEEKS = [6.0, 6.0, 6.0, 7.0, 10.0, 13.0, 16.0, 22.0, 23.0]
OPEN_WEEKS = [6.0, 9.0, 10.0, 11.0, 17.0, 19.0, 20.0, 25.0, 32.0, 32.0, 34.0, 35.0]


def test_the_median_with_open_durations_is_freireichs():
    found = spread_of(REACHED_WEEKS, OPEN_WEEKS, level=0.95)
    assert found.median == 23.0
    assert found.interval.low == 13.0
    assert math.isinf(found.interval.high)


def test_open_durations_are_treated_as_statsmodels_does():
    from statsmodels.duration.survfunc import SurvfuncRight

    chance = random.Random(4)
    told = 0
    for _ in range(60):
        reached = [round(chance.uniform(5, 15), 2) for _ in range(chance.randint(5, 15))]
        still = [round(chance.uniform(1, 14), 2) for _ in range(chance.randint(1, 8))]
        # the last one is open, so that statsmodels takes no logarithm of nought
        still.append(16.0)
        found = spread_of(reached, still)
        curve = SurvfuncRight([*reached, *still], [1] * len(reached) + [0] * len(still))
        low, high = curve.quantile_ci(0.5, alpha=0.1, method="cloglog")
        if found.interval is None:
            assert not low < math.inf
            continue
        told += 1
        assert found.interval.low == low
        assert found.interval.high == high or (math.isinf(found.interval.high) and not high < 99)
        median = curve.quantile(0.5)
        if found.median is None:
            assert not median < math.inf
        elif not any(math.isclose(left, 0.5) for left in curve.surv_prob):
            assert found.median == median
    assert told > 40


# Rubin 1981, coaching in eight schools (effects and standard errors as in Gelman et al.,
# Bayesian Data Analysis, table 5.2): Q is below its degrees of freedom, so that moments find
# no variance between schools.
EFFECTS = [28.0, 8.0, -3.0, 7.0, -1.0, 1.0, 18.0, 12.0]
ERRORS = [15.0, 10.0, 16.0, 11.0, 9.0, 11.0, 10.0, 18.0]


def test_eight_schools_do_not_differ_beyond_chance():
    assert between_variance(EFFECTS, [sd * sd for sd in ERRORS]) == 0.0


def test_the_variance_between_groups_is_that_of_statsmodels():
    from statsmodels.stats.meta_analysis import combine_effects

    chance = random.Random(11)
    for _ in range(20):
        k = chance.randint(3, 9)
        means = [chance.gauss(9.0, 2.0) for _ in range(k)]
        variances = [chance.uniform(0.05, 1.0) for _ in range(k)]
        theirs = combine_effects(np.array(means), np.array(variances), method_re="dl")
        assert between_variance(means, variances) == pytest.approx(theirs.tau2)


def test_the_common_mean_is_that_of_statsmodels():
    from statsmodels.stats.meta_analysis import combine_effects

    chance = random.Random(12)
    groups = [[chance.gauss(m, 1.0) for _ in range(n)] for m, n in ((8, 5), (9.5, 3), (11, 7))]
    found = shrink(groups)
    means = [sum(group) / len(group) for group in groups]
    variances = [found.within_sd**2 / len(group) for group in groups]
    theirs = combine_effects(np.array(means), np.array(variances), method_re="dl")
    assert found.between_sd**2 == pytest.approx(theirs.tau2)
    assert found.overall_mean == pytest.approx(theirs.mean_effect_re)
    # the pooled variance is the residual one of a one-way analysis of variance
    f = stats.f_oneway(*groups).statistic
    total = [value for group in groups for value in group]
    grand = sum(total) / len(total)
    between = sum(
        len(group) * (mean - grand) ** 2 for group, mean in zip(groups, means, strict=True)
    ) / (len(groups) - 1)
    assert found.within_sd**2 == pytest.approx(between / f)


def test_five_is_the_least_for_an_interval():
    assert 1.0 - 2.0 / 2 ** (LEAST_COUNT - 1) < 0.9 <= 1.0 - 2.0 / 2**LEAST_COUNT
