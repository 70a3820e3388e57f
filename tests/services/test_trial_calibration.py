"""Invented trials by the thousand: how often intervals hold the truth, how often a claim is wrong.

What is allowed is the binomial's own scatter: a test fails by chance in about one of ten
thousand such runs, and the seeds are fixed.
"""

from __future__ import annotations

import random

import pytest
from scipy import stats

from brewdesk.services.trialcompare import Jar, compare_arms
from brewdesk.services.trialview import Finding, JarMeasures
from brewdesk.services.wording.trials import comparison_words
from brewdesk.store.trialrecords import TrialArm
from culturecore.stages import TrialFactor
from culturecore.trialeffects import blocked_effect, shift_effect, welch_effect
from culturecore.trials import Crossing, Passed

TRIALS = 1500
RARE = 1e-4
ARMS = tuple(
    TrialArm(id=n + 1, trial_id=1, position=n, name=name) for n, name in enumerate(("One", "Two"))
)


def least_of(share, trials=TRIALS):
    """Return the count below which a share of ``share`` is not to be believed."""
    return stats.binom.ppf(RARE, trials, share)


def most_of(share, trials=TRIALS):
    """Return the count above which a share of ``share`` is not to be believed."""
    return stats.binom.ppf(1 - RARE, trials, share)


@pytest.mark.parametrize("jars", [2, 3, 4, 5, 6])
@pytest.mark.parametrize("scatter", [1.0, 2.0])
def test_welchs_interval_holds_the_truth_in_95_of_100(jars, scatter):
    lots = random.Random(f"{jars}/{scatter}")
    held = 0
    for _ in range(TRIALS):
        first = [lots.gauss(9.0, 1.0) for _ in range(jars)]
        second = [lots.gauss(7.5, scatter) for _ in range(jars)]
        effect = welch_effect(first, second)
        held += effect.low <= -1.5 <= effect.high
    assert held >= least_of(0.95)
    # With two jars it is wider than it need be (97.5 %), never by more.
    assert held <= most_of(0.98 if jars < 4 else 0.965)


@pytest.mark.parametrize("pairs", [2, 3, 5])
def test_the_interval_within_pairs_holds_the_truth_in_just_95_of_100(pairs):
    lots = random.Random(pairs)
    held = 0
    for _ in range(TRIALS):
        sizes = [lots.gauss(9.0, 3.0) for _ in range(pairs)]
        first = [size + lots.gauss(0, 1) for size in sizes]
        second = [size + 1.0 + lots.gauss(0, 1) for size in sizes]
        effect = blocked_effect(first, second, range(pairs), range(pairs))
        held += effect.low <= 1.0 <= effect.high
    assert least_of(0.95) <= held <= most_of(0.95)


@pytest.mark.parametrize("jars", [4, 5, 6])
def test_the_interval_of_ranks_holds_the_truth_as_often_as_it_says(jars):
    lots = random.Random(jars)
    held, level = 0, 0.0
    for _ in range(TRIALS):
        # Skewed as marks and times often are.
        first = [lots.expovariate(1.0) for _ in range(jars)]
        second = [lots.expovariate(1.0) + 0.7 for _ in range(jars)]
        effect = shift_effect(first, second)
        held += effect.low <= 0.7 <= effect.high
        level = effect.level
    assert level >= 0.95
    assert least_of(level) <= held <= most_of(level)


def _trial(lots, jars, gap=0.0, horizon=99.0):
    """Compare two arms by four outcomes, all measured, with the truth ``gap`` apart in each."""
    made = []
    for arm in ARMS:
        for _ in range(jars):
            shift = gap * (arm.position == 1)
            day = lots.gauss(9.0 + shift, 1.0)
            is_there = day <= horizon
            made.append(
                Jar(
                    arm_id=arm.id,
                    block=0,
                    measures=JarMeasures(
                        crossing=Crossing(how=Passed.BETWEEN, day=day, low=1.0, high=99.0, sd=0.1)
                        if is_there
                        else Crossing(how=Passed.NOT_YET, low=horizon),
                        acidity_g_per_l=lots.gauss(6.0 + shift, 1.0),
                        pellicle_mm=lots.gauss(4.0 + shift, 1.0),
                        liking=round(min(10.0, max(0.0, lots.gauss(6.0 + shift, 1.0)))),
                    ),
                )
            )
    return compare_arms(ARMS, made, seed=1, days={})


@pytest.mark.parametrize("jars", [2, 3, 4, 5, 6])
@pytest.mark.parametrize("horizon", [99.0, 9.5])
def test_a_difference_that_is_none_is_claimed_in_at_most_5_of_100_trials(jars, horizon):
    """Whatever of the four outcomes is claimed, with all jars there and with some waited for."""
    trials = 400
    lots = random.Random(f"{jars}/{horizon}")
    claims = 0
    for _ in range(trials):
        found = _trial(lots, jars, horizon=horizon)
        claims += any(one.finding is Finding.SHOWN for one in found)
        for one in found:
            words = comparison_words(one, TrialFactor.TEA)
            says_so = "likely to be" in words or "The waits differ" in words
            assert says_so == (one.finding is Finding.SHOWN)
    assert claims <= most_of(0.05, trials)
    if jars < 4:
        assert claims == 0


@pytest.mark.parametrize(("jars", "gap", "least"), [(4, 4.0, 0.7), (6, 2.5, 0.8)])
def test_a_large_difference_is_claimed_when_there_are_jars_enough(jars, gap, least):
    lots = random.Random(jars)
    trials = 200
    claims = sum(_trial(lots, jars, gap)[0].finding is Finding.SHOWN for _ in range(trials))
    assert claims >= least_of(least, trials)


def test_three_jars_of_each_are_never_more_than_a_hint():
    lots = random.Random(3)
    findings = {one.finding for _ in range(100) for one in _trial(lots, 3, gap=9.0)[:3]}
    assert findings == {Finding.HINT}
