"""Acidity by titration, and what one pair of readings teaches."""

from __future__ import annotations

import math
from contextlib import suppress

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from culturecore import acidpair
from culturecore.acidpair import learn_excess, ph_from_ta, ta_from_ph
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Level
from culturecore.sources import SOURCES
from culturecore.titration import (
    VERDICT_CODES,
    ExpressedAs,
    acidity_meq_per_l,
    g_per_l_as,
    meq_per_l_from,
    titrate,
)

USUAL = {"lye_ml": 8.0, "lye_normality": 0.1, "sample_ml": 10.0}


def test_lye_drunk_up_is_acid_found() -> None:
    assert acidity_meq_per_l(**USUAL) == pytest.approx(80.0)


@given(
    lye_ml=st.floats(0.1, 50.0),
    normality=st.floats(0.01, 1.0),
    sample_ml=st.floats(1.0, 100.0),
    factor=st.floats(1.0, 20.0),
)
def test_acidity_is_proportional_to_lye_and_dilution(
    lye_ml: float, normality: float, sample_ml: float, factor: float
) -> None:
    one = acidity_meq_per_l(lye_ml=lye_ml, lye_normality=normality, sample_ml=sample_ml)
    diluted = acidity_meq_per_l(
        lye_ml=lye_ml, lye_normality=normality, sample_ml=sample_ml, dilution_factor=factor
    )
    halved = acidity_meq_per_l(
        lye_ml=lye_ml / 2.0, lye_normality=normality, sample_ml=sample_ml / 2.0
    )
    assert diluted == pytest.approx(factor * one)
    assert halved == pytest.approx(one)


def test_blank_is_taken_off() -> None:
    assert acidity_meq_per_l(**(USUAL | {"blank_ml": 0.2})) == pytest.approx(78.0)
    assert acidity_meq_per_l(**(USUAL | {"lye_ml": 0.2, "blank_ml": 0.2})) == 0.0


@given(meq=st.floats(0.0, 500.0), expressed_as=st.sampled_from(ExpressedAs))
def test_grams_of_any_acid_and_back(meq: float, expressed_as: ExpressedAs) -> None:
    grams = min(g_per_l_as(meq, expressed_as), 500.0)
    assert meq_per_l_from(grams, expressed_as) == pytest.approx(min(meq, 1e9), rel=1e-9)


@settings(max_examples=60)
@given(
    lye_ml=st.floats(0.0, 50.0),
    end_point_ph=st.floats(7.0, 8.5),
    is_degassed=st.sampled_from([True, False, None]),
    expressed_as=st.sampled_from(ExpressedAs),
)
def test_titrations_are_finite_and_bounded(
    lye_ml: float, end_point_ph: float, is_degassed: bool | None, expressed_as: ExpressedAs
) -> None:
    found = titrate(
        **(USUAL | {"lye_ml": lye_ml}),
        end_point_ph=end_point_ph,
        is_degassed=is_degassed,
        expressed_as=expressed_as,
    )
    for estimate in (found.acidity_meq_per_l, found.acidity_g_per_l, found.ta_g_per_l):
        assert 0.0 <= estimate.low <= estimate.value <= estimate.high < math.inf
    assert found.expressed_as is expressed_as
    assert found.verdict.code in VERDICT_CODES
    assert set(found.sources) <= set(SOURCES)


def test_gas_in_the_sample_is_warned_of_and_widens_downwards() -> None:
    driven, fizzy = (titrate(**USUAL, is_degassed=gone) for gone in (True, False))
    unknown = titrate(**USUAL)
    assert driven.verdict.code == "titration_degassed"
    assert fizzy.verdict.code == unknown.verdict.code == "titration_not_degassed"
    assert fizzy.verdict.level is Level.WARN
    # 1 g/L of CO2 gives off one charge by pH 8.1: 44.01 g/mol against 60.05 of acetic acid
    assert fizzy.verdict.numbers["adds_g_per_l"] == pytest.approx(60.05 / 44.01, rel=1e-3)
    assert driven.ta_g_per_l.low - fizzy.ta_g_per_l.low == pytest.approx(1.364, abs=0.001)
    assert driven.ta_g_per_l.high == fizzy.ta_g_per_l.high


def test_earlier_end_point_is_made_up_for() -> None:
    """At pH 7.0 a share 10^(pK - 7) of acetic acid is left, times its activity coefficient.

    0.0057 at pK 4.756, and 0.78 (Davies at 0.1 mol/kg): 0.45 %, less 0.04 % at pH 8.2.
    """
    early = titrate(**USUAL, end_point_ph=7.0)
    late = titrate(**USUAL, end_point_ph=8.2)
    assert early.acidity_g_per_l.value == late.acidity_g_per_l.value
    assert early.ta_g_per_l.value / late.ta_g_per_l.value == pytest.approx(1.0041, abs=0.0003)


# --- one pair ---------------------------------------------------------------------------

PAIRS = {"ph": st.floats(2.6, 3.6), "ta": st.floats(2.0, 15.0), "share": st.floats(0.0, 0.6)}


def _learnt(ph: float, ta: float, share: float):
    learnt = None
    with suppress(ImpossibleInput):  # no drink of that pH holds so much acid
        learnt = learn_excess(ph=ph, ta_g_per_l=ta, gluconic_share=share)
    assume(learnt is not None)
    return learnt


@settings(max_examples=40, deadline=None)
@given(**PAIRS)
def test_pair_gives_itself_back(ph: float, ta: float, share: float) -> None:
    learnt = _learnt(ph, ta, share)
    assert ph_from_ta(ta_g_per_l=ta, learnt=learnt).value == pytest.approx(ph, abs=1e-6)
    assert ta_from_ph(ph=ph, learnt=learnt).value == pytest.approx(ta, rel=1e-6)


@settings(max_examples=40, deadline=None)
@given(**PAIRS, other=st.floats(1.0, 20.0))
def test_there_and_back_through_the_excess(
    ph: float, ta: float, share: float, other: float
) -> None:
    learnt = _learnt(ph, ta, share)
    told = ph_from_ta(ta_g_per_l=other, learnt=learnt)
    assert 0.0 <= told.low < told.value < told.high
    assume(told.value < 6.0)
    assert ta_from_ph(ph=told.value, learnt=learnt).value == pytest.approx(other, rel=1e-5)


@settings(max_examples=40, deadline=None)
@given(**PAIRS, others=st.tuples(*[st.floats(1.0, 20.0)] * 2))
def test_more_acid_is_a_lower_ph(
    ph: float, ta: float, share: float, others: tuple[float, float]
) -> None:
    learnt = _learnt(ph, ta, share)
    less, more = (ph_from_ta(ta_g_per_l=one, learnt=learnt).value for one in sorted(others))
    assert more <= less + 1e-9


@settings(max_examples=40, deadline=None)
@given(**PAIRS, others=st.tuples(*[st.floats(2.6, 4.5)] * 2))
def test_higher_ph_is_less_acid(
    ph: float, ta: float, share: float, others: tuple[float, float]
) -> None:
    learnt = _learnt(ph, ta, share)
    sour, mild = (ta_from_ph(ph=one, learnt=learnt) for one in sorted(others))
    assert mild.value <= sour.value + 1e-9
    assert 0.0 <= mild.low <= mild.value <= mild.high


@given(more=st.floats(0.05, 0.5))
def test_higher_ph_at_one_acidity_shows_more_excess(more: float) -> None:
    low, high = (learn_excess(ph=ph, ta_g_per_l=6.0) for ph in (3.0, 3.0 + more))
    assert high.excess_meq_per_l.value > low.excess_meq_per_l.value


def test_excess_is_bounded_and_wide() -> None:
    """Computed check: TA 8 g/L at pH 3.0 is 1.4 meq/L all acetic, 5.9 with 20 % gluconic.

    From an independent solver with the same constants.
    """
    all_acetic = learn_excess(ph=3.0, ta_g_per_l=8.0, gluconic_share=0.0)
    some = learn_excess(ph=3.0, ta_g_per_l=8.0, gluconic_share=0.2)
    assert all_acetic.excess_meq_per_l.value == pytest.approx(1.4, abs=0.1)
    assert some.excess_meq_per_l.value == pytest.approx(5.9, abs=0.1)
    assert some.excess_meq_per_l.low < 2.0
    assert some.excess_meq_per_l.high > 9.0
    assert some.verdict.code == "pair_plausible"


def test_pairs_that_no_tea_explains_are_told() -> None:
    assert {"pair_plausible", "pair_odd"} == acidpair.VERDICT_CODES
    odd = learn_excess(ph=2.6, ta_g_per_l=1.5)  # as with lemon or hibiscus
    assert odd.excess_meq_per_l.value < -0.5
    learnt = learn_excess(ph=4.2, ta_g_per_l=8.2)  # as with a potassium-rich husk tea
    assert learnt.verdict.code == "pair_odd"
    assert learnt.verdict.level is Level.WARN


def test_far_from_the_pair_is_extrapolated() -> None:
    learnt = learn_excess(ph=3.0, ta_g_per_l=8.0)
    assert ph_from_ta(ta_g_per_l=7.0, learnt=learnt).caveats == ()
    assert ph_from_ta(ta_g_per_l=1.0, learnt=learnt).caveats == (Caveat.EXTRAPOLATED,)
    assert ta_from_ph(ph=3.6, learnt=learnt).caveats == (Caveat.EXTRAPOLATED,)


def test_where_a_stronger_acid_keeps_the_ph_down_that_acid_is_told() -> None:
    """Negative excess is strong acid, all of which lye takes up."""
    learnt = learn_excess(ph=2.6, ta_g_per_l=1.5)
    strong_meq = -learnt.excess_meq_per_l.value
    told = ta_from_ph(ph=5.9, learnt=learnt)
    assert told.value == pytest.approx(strong_meq * 0.060052, rel=0.01)
    assert strong_meq > 0.0
    assert told.low < told.value


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda: acidity_meq_per_l(**(USUAL | {"lye_ml": -1.0})), "lye_ml"),
        (lambda: acidity_meq_per_l(**(USUAL | {"blank_ml": 9.0})), "blank_ml"),
        (lambda: acidity_meq_per_l(**(USUAL | {"lye_normality": 0.0})), "lye_normality"),
        (lambda: acidity_meq_per_l(**(USUAL | {"lye_normality": math.nan})), "lye_normality"),
        (lambda: acidity_meq_per_l(**(USUAL | {"sample_ml": 0.0})), "sample_ml"),
        (lambda: acidity_meq_per_l(**USUAL, dilution_factor=0.9), "dilution_factor"),
        (lambda: titrate(**USUAL, end_point_ph=6.9), "end_point_ph"),
        (lambda: g_per_l_as(-1.0), "acidity_meq_per_l"),
        (lambda: meq_per_l_from(math.nan), "g_per_l"),
        (lambda: learn_excess(ph=1.9, ta_g_per_l=8.0), "ph"),
        (lambda: learn_excess(ph=3.0, ta_g_per_l=0.0), "ta_g_per_l"),
        (lambda: learn_excess(ph=3.0, ta_g_per_l=8.0, gluconic_share=1.1), "gluconic_share"),
        (lambda: learn_excess(ph=5.5, ta_g_per_l=40.0), "ta_g_per_l"),
        (
            lambda: ph_from_ta(ta_g_per_l=math.nan, learnt=learn_excess(ph=3.0, ta_g_per_l=8.0)),
            "ta_g_per_l",
        ),
        (lambda: ta_from_ph(ph=6.1, learnt=learn_excess(ph=3.0, ta_g_per_l=8.0)), "ph"),
    ],
)
def test_impossible_titrations_are_refused(call, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field
