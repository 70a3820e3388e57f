"""Worked examples from print. Data and printed outcomes are from memory unless said otherwise."""

from __future__ import annotations

import pytest

from culturecore import trialeffects
from culturecore.trialeffects import (
    blocked_effect,
    holm,
    permutation_p,
    shift_effect,
    welch_effect,
)
from culturecore.trialpower import jars_needed
from culturecore.waiting import Wait, log_rank, median_wait, still_waiting

# Student 1908, Biometrika 6:1-25 (data of Cushny & Peebles 1905): hours of sleep gained by ten
# patients under two drugs. It is the data set "sleep" of R, on whose help page both outcomes are.
DRUG_1 = (0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0)
DRUG_2 = (1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4)

# Darwin 1876 in Fisher 1935, The Design of Experiments, ch. III: cross- less self-fertilised
# plants of a pair, eighths of an inch.
MAIZE = (49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48)

# Freireich et al. 1963, Blood 21:699-716: weeks of remission under 6-mercaptopurine, and
# whether they ended; the placebo arm ended all. Outcomes as printed in Kleinbaum & Klein,
# Survival Analysis.
MERCAPTOPURINE = (
    *((6, True),) * 3, (6, False), (7, True), (9, False), (10, True), (10, False), (11, False),
    (13, True), (16, True), (17, False), (19, False), (20, False), (22, True), (23, True),
    (25, False), (32, False), (32, False), (34, False), (35, False),
)  # fmt: skip
PLACEBO = (1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23)


def _waits():
    drug = [Wait(float(weeks), ended) for weeks, ended in MERCAPTOPURINE]
    return drug, [Wait(float(weeks), True) for weeks in PLACEBO]


def test_students_sleep_data_in_pairs():
    effect = blocked_effect(DRUG_1, DRUG_2, range(10), range(10))
    assert effect.difference == pytest.approx(1.58, abs=0.005)
    assert effect.df == 9
    assert effect.p_value == pytest.approx(0.002833, abs=5e-7)
    assert (effect.low, effect.high) == pytest.approx((0.7001142, 2.4598858), abs=5e-8)


def test_students_sleep_data_as_two_groups_by_welch():
    effect = welch_effect(DRUG_1, DRUG_2)
    assert effect.df == pytest.approx(17.776, abs=5e-4)
    assert effect.p_value == pytest.approx(0.07939, abs=5e-6)
    assert (effect.low, effect.high) == pytest.approx((-0.2054832, 3.3654832), abs=5e-8)


def test_darwins_maize_dealt_out_by_fisher(monkeypatch):
    """Of 32768 ways to give the signs, 863 reach the sum of 314: 835 exceed it, 28 equal it."""
    monkeypatch.setattr(trialeffects, "_MOST_LISTED", 2**15)
    assert sum(MAIZE) == 314
    zeros = [0.0] * len(MAIZE)
    p = permutation_p(zeros, [float(gap) for gap in MAIZE], range(15), range(15))
    assert p == pytest.approx(2 * 863 / 32768, abs=1e-12)


def test_darwins_maize_by_students_t():
    """Fisher 1935: t = 2.148, just beyond the 5 % point of 14 degrees of freedom, 2.145."""
    effect = blocked_effect([0.0] * 15, [float(gap) for gap in MAIZE], range(15), range(15))
    assert effect.p_value == pytest.approx(0.0497, abs=5e-5)
    assert effect.low > 0.0


def test_permeability_of_membranes_by_ranks():
    """Hollander & Wolfe 1973, p. 69 f.; interval as on R's help page of wilcox.test."""
    term = (0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46)
    weeks_12_to_26 = (1.15, 0.88, 0.90, 0.74, 1.21)
    effect = shift_effect(weeks_12_to_26, term)
    assert effect.difference == pytest.approx(0.305, abs=5e-4)
    assert (effect.low, effect.high) == pytest.approx((-0.15, 0.76), abs=5e-3)


def test_remission_under_mercaptopurine_by_kaplan_and_meier():
    drug, placebo = _waits()
    steps = {step.days: step.still_waiting for step in still_waiting(drug)}
    printed = {6: 0.857, 7: 0.807, 10: 0.753, 13: 0.690, 16: 0.627, 22: 0.538, 23: 0.448}
    assert steps == pytest.approx({float(k): v for k, v in printed.items()}, abs=5e-4)
    assert median_wait(drug) == 23.0
    assert median_wait(placebo) == 8.0


def test_remission_compared_by_log_rank():
    drug, placebo = _waits()
    assert log_rank(drug, placebo).chi_square == pytest.approx(16.79, abs=0.005)


def test_holms_own_order_of_four():
    """The example of the Holm-Bonferroni article in Wikipedia and of many courses."""
    assert holm((0.01, 0.04, 0.03, 0.005)) == pytest.approx((0.03, 0.06, 0.06, 0.02))


@pytest.mark.parametrize(("effect", "jars"), [(0.2, 393), (0.5, 64), (0.8, 26)])
def test_sample_sizes_of_cohens_primer(effect, jars):
    """Cohen 1992, A power primer, table 2: two means, power 0.80, alpha 0.05.

    His 393 is of an approximation; the noncentral t gives 394 (Cohen 1988, ch. 2).
    """
    assert jars_needed(effect, 1.0) == pytest.approx(jars, abs=1)
