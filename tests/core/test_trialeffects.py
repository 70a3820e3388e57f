"""Differences of arms against two general libraries of statistics: scipy and statsmodels."""

from __future__ import annotations

import itertools
import math
import random

import numpy as np
import pytest
import statsmodels.api as sm
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy import stats
from statsmodels.stats.multitest import multipletests
from statsmodels.stats.power import TTestIndPower

from culturecore import trialeffects
from culturecore.errors import ImpossibleInput
from culturecore.studentt import (
    chi_square_1_tail,
    noncentral_t_cdf,
    t_cdf,
    t_quantile,
    t_two_sided_p,
)
from culturecore.trialeffects import (
    blocked_effect,
    holm,
    least_p,
    permutation_p,
    shift_effect,
    welch_effect,
)
from culturecore.trialpower import difference_seen, jars_needed, power_of
from culturecore.waiting import Wait, log_rank, log_rank_scores, median_wait, still_waiting

VALUES = st.lists(st.integers(-400, 400).map(lambda n: n / 10), min_size=2, max_size=9)
DEGREES = (1.0, 1.7, 2.0, 3.3, 10.0, 58.0, 240.0)


def _spread(values):
    return len(set(values)) > 1


@pytest.mark.parametrize("df", DEGREES)
def test_students_distribution_is_scipys(df):
    for t in (-30.0, -4.3, -1.0, -0.1, 0.0, 0.5, 2.0, 12.7):
        assert t_cdf(t, df) == pytest.approx(stats.t.cdf(t, df), abs=1e-12)
        assert t_two_sided_p(t, df) == pytest.approx(2 * stats.t.sf(abs(t), df), abs=1e-12)
    for share in (0.0005, 0.025, 0.2, 0.5, 0.9, 0.975, 0.9995):
        assert t_quantile(share, df) == pytest.approx(stats.t.ppf(share, df), rel=1e-8, abs=1e-12)


@pytest.mark.parametrize("df", [2.0, 4.0, 9.0, 38.0, 198.0])
def test_the_noncentral_distribution_is_scipys(df):
    for t, shift in itertools.product((-2.8, 0.0, 1.5, 2.8, 4.3), (0.0, 0.7, 2.0, 4.0)):
        assert noncentral_t_cdf(t, df, shift) == pytest.approx(
            stats.nct.cdf(t, df, shift), abs=1e-7
        )


def test_the_chi_square_tail_is_scipys():
    for value in (0.0, 0.4, 3.84, 16.8):
        assert chi_square_1_tail(value) == pytest.approx(stats.chi2.sf(value, 1), rel=1e-10)


@given(VALUES, VALUES)
def test_welchs_interval_is_scipys(first, second):
    assume(_spread(first) and _spread(second))
    effect = welch_effect(first, second)
    theirs = stats.ttest_ind(second, first, equal_var=False)
    interval = theirs.confidence_interval(0.95)
    assert effect.difference == pytest.approx(np.mean(second) - np.mean(first))
    assert effect.df == pytest.approx(theirs.df)
    assert effect.p_value == pytest.approx(theirs.pvalue, abs=1e-9)
    assert (effect.low, effect.high) == pytest.approx((interval.low, interval.high), abs=1e-6)


@given(st.lists(st.tuples(st.floats(-9, 9), st.floats(-9, 9)), min_size=3, max_size=9))
def test_pairs_are_students_paired_comparison(pairs):
    first, second = [a for a, _ in pairs], [b for _, b in pairs]
    assume(np.std(np.subtract(second, first)) > 1e-3)
    effect = blocked_effect(first, second, range(len(pairs)), range(len(pairs)))
    theirs = stats.ttest_rel(second, first)
    interval = theirs.confidence_interval(0.95)
    assert effect.df == theirs.df
    assert effect.p_value == pytest.approx(theirs.pvalue, abs=1e-7)
    assert (effect.low, effect.high) == pytest.approx((interval.low, interval.high), rel=1e-5)


@pytest.mark.parametrize("seed", range(6))
def test_uneven_blocks_are_least_squares_with_block_means(seed):
    lots = random.Random(seed)
    rows = [(block, arm) for block in range(3) for arm in (0, 1) for _ in range(lots.randint(1, 3))]
    values = [block + 0.5 * arm + lots.gauss(0, 1) for block, arm in rows]
    design = np.array([[arm, *(float(block == b) for b in range(3))] for block, arm in rows])
    theirs = sm.OLS(np.array(values), design).fit()
    sides = [
        ([v for v, (_, a) in zip(values, rows, strict=True) if a == arm],
         [b for b, a in rows if a == arm])
        for arm in (0, 1)
    ]  # fmt: skip
    effect = blocked_effect(sides[0][0], sides[1][0], sides[0][1], sides[1][1])
    assert effect.difference == pytest.approx(theirs.params[0])
    assert effect.df == theirs.df_resid
    assert (effect.low, effect.high) == pytest.approx(tuple(theirs.conf_int()[0]))


def test_blocks_without_both_arms_say_nothing():
    with pytest.raises(ImpossibleInput, match="no_block_with_both"):
        blocked_effect([1.0, 2.0], [3.0], ["a", "a"], ["b"])


@given(VALUES, VALUES)
def test_a_shift_is_the_median_of_pairs_and_its_interval_holds_it(first, second):
    effect = shift_effect(first, second)
    gaps = [b - a for a in first for b in second]
    assert effect.difference == pytest.approx(float(np.median(gaps)))
    assert effect.low <= effect.difference <= effect.high
    if effect.is_bounded:
        assert effect.level >= 0.95 - 1e-9


@pytest.mark.parametrize(("m", "n"), [(3, 3), (4, 4), (4, 6), (7, 5)])
def test_the_rank_interval_cuts_where_scipys_rank_test_does(m, n):
    """It holds just those shifts that the exact two-sided rank sum test does not refuse."""
    lots = random.Random(m * 100 + n)
    first = [lots.gauss(0, 1) for _ in range(m)]
    second = [lots.gauss(0.5, 1) for _ in range(n)]
    effect = shift_effect(first, second)
    for shift in np.linspace(-4, 4, 161):
        p = stats.mannwhitneyu(
            np.subtract(second, shift), first, alternative="two-sided", method="exact"
        ).pvalue
        assert (effect.low < shift < effect.high) == (p > 0.05)


def test_three_jars_of_each_allow_no_rank_interval_of_95_percent():
    assert not shift_effect([1.0, 2.0, 3.0], [4.0, 5.0, 6.0]).is_bounded


@given(
    st.lists(st.integers(0, 40), min_size=2, max_size=5),
    st.lists(st.integers(0, 40), min_size=2, max_size=5),
)
def test_dealing_out_anew_is_scipys_permutation_test(first, second):
    def gap(a, b, axis):
        return np.mean(b, axis=axis) - np.mean(a, axis=axis)

    ours = permutation_p([float(v) for v in first], [float(v) for v in second])
    theirs = stats.permutation_test(
        (np.array(first, float), np.array(second, float)), gap, n_resamples=np.inf, vectorized=True
    )
    # Theirs doubles the smaller tail; with like numbers both tails are equal.
    if len(first) == len(second):
        assert ours == pytest.approx(theirs.pvalue, abs=1e-9)
    assert ours >= least_p(len(first), len(second)) / 2 - 1e-12


def test_many_jars_are_dealt_out_by_sample_and_the_same_every_time():
    lots = random.Random(5)
    first = [lots.gauss(0, 1) for _ in range(12)]
    second = [lots.gauss(1, 1) for _ in range(12)]
    assert math.comb(24, 12) > trialeffects._MOST_LISTED
    p = permutation_p(first, second, seed=3)
    assert p == permutation_p(first, second, seed=3)
    # The t test's p is near; a sample of 1999 scatters by less than 0.015.
    assert p == pytest.approx(stats.ttest_ind(first, second).pvalue, abs=0.015)


@given(st.lists(st.floats(0, 1), min_size=1, max_size=8))
def test_holms_correction_is_statsmodels(p_values):
    theirs = multipletests(p_values, method="holm")[1]
    assert holm(p_values) == pytest.approx(tuple(theirs), abs=1e-12)


@pytest.mark.parametrize(("effect", "jars"), [(0.8, 5), (1.5, 4), (2.0, 6), (0.5, 40)])
def test_power_is_statsmodels(effect, jars):
    theirs = TTestIndPower().power(effect_size=effect, nobs1=jars, alpha=0.05)
    assert power_of(effect, 1.0, jars) == pytest.approx(theirs, abs=1e-6)
    assert power_of(3.0 * effect, 3.0, jars) == pytest.approx(theirs, abs=1e-6)


@pytest.mark.parametrize(("effect", "power"), [(0.5, 0.8), (1.2, 0.9), (2.5, 0.8)])
def test_the_jars_needed_are_statsmodels_rounded_up(effect, power):
    theirs = TTestIndPower().solve_power(effect_size=effect, power=power, alpha=0.05)
    assert jars_needed(effect, 1.0, power=power) == math.ceil(theirs)


def test_a_difference_that_drowns_takes_more_jars_than_a_home_has():
    assert jars_needed(0.01, 1.0) is None


@pytest.mark.parametrize("jars", [2, 4, 12])
def test_the_smallest_difference_seen_is_seen_just_so_often(jars):
    assert power_of(difference_seen(0.7, jars), 0.7, jars) == pytest.approx(0.8, abs=1e-3)


@pytest.mark.parametrize(
    "call",
    [
        lambda: welch_effect([], [1.0]),
        lambda: welch_effect([1.0], [math.nan]),
        lambda: welch_effect([1.0, 2.0], [1.0, 3.0], level=1.0),
        lambda: power_of(1.0, 0.0, 4),
        lambda: power_of(1.0, 1.0, 1),
        lambda: power_of(math.inf, 1.0, 4),
        lambda: jars_needed(0.0, 1.0),
        lambda: jars_needed(1.0, 1.0, power=1.0),
        lambda: difference_seen(1.0, 4, power=0.01),
        lambda: t_quantile(0.0, 3.0),
        lambda: t_cdf(1.0, 0.0),
        lambda: noncentral_t_cdf(1.0, 1.0, 0.5),
        lambda: still_waiting([Wait(-1.0, True)]),
        lambda: log_rank([Wait(1.0, False)], [Wait(2.0, False)]),
    ],
)
def test_what_cannot_be_is_refused(call):
    with pytest.raises(ImpossibleInput):
        call()


def test_one_jar_an_arm_has_a_difference_and_no_interval():
    effect = welch_effect([3.0], [5.0])
    assert (effect.difference, effect.is_bounded, effect.p_value) == (2.0, False, None)


def test_jars_that_agree_to_the_last_digit_give_no_interval():
    assert not welch_effect([3.0, 3.0], [5.0, 5.0]).is_bounded
    assert not blocked_effect([1.0, 2.0], [2.0, 3.0], [0, 1], [0, 1]).is_bounded


@pytest.mark.parametrize("seed", range(5))
def test_waits_are_scipys_and_statsmodels(seed):
    lots = random.Random(seed)
    arms = [
        [Wait(float(lots.randint(1, 14)), lots.random() < 0.7) for _ in range(9)] for _ in range(2)
    ]
    for waits in arms:
        theirs = sm.SurvfuncRight(
            np.array([w.days for w in waits]), np.array([int(w.is_over) for w in waits])
        )
        ours = still_waiting(waits)
        assert [step.days for step in ours] == pytest.approx(list(theirs.surv_times))
        assert [step.still_waiting for step in ours] == pytest.approx(list(theirs.surv_prob))
        assert median_wait(waits) == next((s.days for s in ours if s.still_waiting <= 0.5), None)
    censored = [
        stats.CensoredData(
            uncensored=[w.days for w in waits if w.is_over],
            right=[w.days for w in waits if not w.is_over],
        )
        for waits in arms
    ]
    theirs = stats.logrank(*censored)
    found = log_rank(*arms)
    assert found.chi_square == pytest.approx(theirs.statistic**2)
    assert found.p_value == pytest.approx(theirs.pvalue)


@pytest.mark.parametrize("seed", range(5))
def test_the_scores_of_an_arm_sum_to_what_the_log_rank_test_compares(seed):
    """Happened less expected (Mantel): the numerator of scipy's test too."""
    lots = random.Random(100 + seed)
    arms = [[Wait(lots.uniform(1, 9), lots.random() < 0.6) for _ in range(6)] for _ in range(2)]
    scores = log_rank_scores([*arms[0], *arms[1]])
    everyone = [*arms[0], *arms[1]]
    expected = sum(
        sum(w.days >= day for w in arms[0]) / sum(w.days >= day for w in everyone)
        for day in {w.days for w in everyone if w.is_over}
    )
    assert sum(scores[:6]) == pytest.approx(sum(w.is_over for w in arms[0]) - expected)
    assert sum(scores) == pytest.approx(0.0, abs=1e-9)
