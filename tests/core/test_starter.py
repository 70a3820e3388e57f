"""Judging a starter, and the amount of it: monotone, bounded, with practice beside it."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import startacid
from culturecore.acidbase import mix, ph_of
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Level
from culturecore.sources import SOURCES, Standing
from culturecore.stages import StarterTaste, TeaKind
from culturecore.starter import (
    USUAL_SHARE,
    VERDICT_CODES,
    StarterGrade,
    judge_starter,
    starter_volume_for,
    usual_share,
    volume_share,
)

GRADES = list(StarterGrade)
TASTES = list(StarterTaste)  # from sweet to vinegary
MEASURED = {"starter_ph": 3.0, "starter_ta_g_per_l": 8.0, "water_alkalinity_meq_per_l": 1.5}


def _amount(**known):
    return starter_volume_for(**({"blend_volume_l": 4.0, **MEASURED} | known))


def _codes(answer) -> list[str]:
    return [verdict.code for verdict in answer.verdicts]


@given(acidities=st.tuples(*[st.floats(0.2, 30.0)] * 2))
def test_more_acid_is_never_a_lower_grade(acidities: tuple[float, float]) -> None:
    low, high = (GRADES.index(judge_starter(ta_g_per_l=ta).grade) for ta in sorted(acidities))
    assert low <= high


@given(phs=st.tuples(*[st.floats(2.2, 5.5)] * 2))
def test_lower_ph_is_never_a_lower_grade(phs: tuple[float, float]) -> None:
    sour, mild = (GRADES.index(judge_starter(ph=ph).grade) for ph in sorted(phs))
    assert sour >= mild


def test_each_taste_has_its_grade() -> None:
    grades = [judge_starter(taste=taste).grade for taste in TASTES]
    assert grades == [
        StarterGrade.WEAK,
        StarterGrade.MILD,
        StarterGrade.GOOD,
        StarterGrade.VINEGARY,
    ]


def test_above_the_critical_limit_nothing_is_a_starter() -> None:
    """pH 4.2: Food Protection Trends 2025, the critical limit for the finished drink."""
    judged = judge_starter(ph=4.21, ta_g_per_l=3.0)
    assert judged.grade is StarterGrade.UNFIT
    assert judged.verdicts[0].code == "starter_unfit"
    assert judged.verdicts[0].level is Level.STOP
    assert judge_starter(ph=4.19, ta_g_per_l=3.0).grade is StarterGrade.MILD


def test_titrated_acidity_is_the_answer_and_narrow() -> None:
    acidity = judge_starter(ph=3.0, ta_g_per_l=8.0).ta_g_per_l
    assert acidity.value == pytest.approx(8.0, abs=1e-4)
    assert acidity.high / acidity.low == pytest.approx(1.1**2, rel=0.01)
    assert acidity.caveats == ()


def test_acidity_from_ph_alone_is_a_wide_guess_and_says_so() -> None:
    acidity = judge_starter(ph=3.0).ta_g_per_l
    assert acidity.high > 4.0 * acidity.low
    assert Caveat.STARTER_ACID_ASSUMED in acidity.caveats


def test_taste_is_no_measurement() -> None:
    judged = judge_starter(taste=StarterTaste.SOUR)
    assert "starter_untested" in _codes(judged)
    assert judged.ph.caveats == (Caveat.STARTER_PH_ASSUMED, Caveat.STARTER_ACID_ASSUMED)
    assert judged.ph.high - judged.ph.low > 0.5


def test_acidity_alone_gives_a_ph_with_bounds() -> None:
    judged = judge_starter(ta_g_per_l=8.0)
    assert judged.ph.low < judged.ph.value < judged.ph.high
    assert 2.7 < judged.ph.value < 3.1
    assert judged.ph.caveats == (Caveat.STARTER_PH_ASSUMED,)


@pytest.mark.parametrize(
    ("known", "code"),
    [
        ({"ph": 2.4}, "starter_over_acid"),  # Niagara Region: below 2.5
        ({"ph": 3.4, "ta_g_per_l": 12.0}, "starter_contradicts"),
    ],
)
def test_odd_starters_are_told(known: dict[str, float], code: str) -> None:
    assert code in _codes(judge_starter(**known))
    assert code not in _codes(judge_starter(ph=3.0, ta_g_per_l=8.0))


@settings(max_examples=60)
@given(
    ph=st.none() | st.floats(2.2, 4.4),
    ta=st.none() | st.floats(0.3, 3.0),
    taste=st.none() | st.sampled_from(StarterTaste),
)
def test_judgements_are_finite_sourced_and_in_order(
    ph: float | None, ta: float | None, taste: StarterTaste | None
) -> None:
    judged = judge_starter(ph=ph, ta_g_per_l=ta, taste=taste)
    for estimate in (judged.ph, judged.ta_g_per_l, judged.usual_share):
        assert estimate.low <= estimate.value <= estimate.high
        assert math.isfinite(estimate.low)
        assert math.isfinite(estimate.high)
        assert estimate.sources
    levels = [verdict.level for verdict in judged.verdicts]
    assert levels == sorted(levels, key=[Level.STOP, Level.WARN, Level.INFORM].index)
    assert set(_codes(judged)) <= VERDICT_CODES
    assert {key for verdict in judged.verdicts for key in verdict.sources} <= set(SOURCES)


# --- the amount -------------------------------------------------------------------------


def test_ordinary_water_and_a_mild_starter_take_the_customary_share() -> None:
    """Some 15 % of a mild starter: common practice, no source."""
    amount = starter_volume_for(
        blend_volume_l=4.0, starter_taste=StarterTaste.BALANCED, water_alkalinity_meq_per_l=1.5
    )
    assert amount.share.value == pytest.approx(0.15, abs=0.02)
    assert amount.usual_share.value == 0.15
    assert amount.usual_volume_l == pytest.approx(0.6)
    assert _codes(amount) == ["starter_share_usual"]


def test_vinegary_starter_takes_far_less_than_a_mild_one() -> None:
    shares = [
        starter_volume_for(
            blend_volume_l=1.0, starter_taste=taste, water_alkalinity_meq_per_l=1.5
        ).share.value
        for taste in TASTES
    ]
    assert shares == sorted(shares, reverse=True)
    assert shares[3] < 0.4 * shares[1]


def test_practice_is_marked_as_practice() -> None:
    usual = _amount().usual_share
    assert [SOURCES[key].standing for key in usual.sources] == [Standing.PRACTICE]
    assert (usual.low, usual.high) == (0.10, 0.20)


def test_usual_share_follows_taste_then_ph() -> None:
    assert usual_share(taste=StarterTaste.VINEGARY, ph=3.5) == USUAL_SHARE[StarterTaste.VINEGARY]
    assert usual_share(ph=3.5) == USUAL_SHARE[StarterTaste.SWEET]
    assert usual_share(ph=2.6) == USUAL_SHARE[StarterTaste.VINEGARY]
    assert usual_share() == 0.15


@settings(max_examples=40)
@given(
    ph=st.floats(2.6, 3.3),
    ta=st.floats(3.0, 12.0),
    alkalinity=st.floats(0.0, 4.0),
    target=st.floats(3.6, 4.5),
    more=st.floats(1.01, 1.5),
)
def test_amount_follows_its_causes(
    ph: float, ta: float, alkalinity: float, target: float, more: float
) -> None:
    known = {
        "starter_ph": ph,
        "starter_ta_g_per_l": ta,
        "water_alkalinity_meq_per_l": alkalinity,
        "target_start_ph": target,
    }

    def share(**changed: float) -> float:
        return _amount(**(known | changed)).share.value

    here = share()
    assert share(target_start_ph=target - 0.1) >= here
    assert share(water_alkalinity_meq_per_l=alkalinity + more) >= here
    assert share(tea_g_per_l=4.0 * more) >= here
    assert _amount(**known, blend_volume_l=4.0 * more).volume_l.value == pytest.approx(
        more * _amount(**known).volume_l.value
    )


@given(ta=st.floats(5.0, 12.0), more=st.floats(1.05, 1.4))
def test_stronger_starter_of_the_same_excess_goes_further(ta: float, more: float) -> None:
    """With only the acidity known, the excess is the assumed one for both."""
    shares = [
        _amount(starter_ph=None, starter_ta_g_per_l=acidity).share.value
        for acidity in (ta, ta * more)
    ]
    assert shares[1] < shares[0]


def test_blend_with_that_share_has_the_wished_ph() -> None:
    amount = _amount(target_start_ph=4.0)
    inputs = startacid.AcidInputs(
        starter_ph=3.0,
        starter_ta_g_per_l=8.0,
        starter_taste=None,
        tea_kind=TeaKind.BLACK,
        tea_g_per_l=4.0,
        water_alkalinity_meq_per_l=1.5,
    )
    starter, tea = startacid.starter_and_tea(inputs)
    # back from volume to mass
    starter_kg = amount.share.value * startacid.STARTER_KG_PER_L
    tea_kg = (1.0 - amount.share.value) * 1.0174  # 50 g/L at 20 degC
    assert ph_of(mix(((starter, starter_kg), (tea, tea_kg)))) == pytest.approx(4.0, abs=1e-3)
    assert amount.start_ph.value == pytest.approx(4.0, abs=1e-6)


def test_unknown_water_widens_the_answer_and_is_told() -> None:
    known, unknown = _amount(), _amount(water_alkalinity_meq_per_l=None)
    assert unknown.alkalinity_meq_per_l.value == known.alkalinity_meq_per_l.value == 1.5
    assert unknown.alkalinity_meq_per_l.caveats == (Caveat.WATER_ASSUMED,)
    assert known.alkalinity_meq_per_l.caveats == ()
    assert unknown.share.value == known.share.value
    assert unknown.share.high > known.share.high
    assert "starter_water_assumed" in _codes(unknown)
    assert "starter_water_assumed" not in _codes(known)


@pytest.mark.parametrize(
    ("known", "share", "code"),
    [
        ({"starter_ph": 3.9, "starter_ta_g_per_l": 1.0, "target_start_ph": 3.5}, 1.0,
         "starter_target_out_of_reach"),
        ({"tea_kind": TeaKind.HERBAL, "tea_g_per_l": 0.0, "water_alkalinity_meq_per_l": 0.0,
          "starter_ph": 3.0, "starter_ta_g_per_l": 8.0, "target_start_ph": 4.6}, None,
         "starter_share_under_usual"),
        ({"starter_ph": 3.6, "starter_ta_g_per_l": 1.5, "target_start_ph": 3.9,
          "water_alkalinity_meq_per_l": 3.0}, None, "starter_share_over_usual"),
    ],
)  # fmt: skip
def test_amounts_beyond_practice_are_told(known, share: float | None, code: str) -> None:
    amount = _amount(**known)
    assert code in _codes(amount)
    assert share is None or amount.share.value == share


def test_acid_tea_is_no_reason_to_leave_the_starter_out(monkeypatch) -> None:
    monkeypatch.setitem(startacid._TEA_PH, TeaKind.HERBAL, 4.55)  # fruit tea
    amount = _amount(tea_kind=TeaKind.HERBAL, water_alkalinity_meq_per_l=0.0, target_start_ph=4.6)
    assert amount.share.value == 0.0
    assert amount.volume_l.value == 0.0
    assert "starter_tea_already_there" in _codes(amount)
    assert amount.verdicts[0].level is Level.WARN


def test_half_by_mass_is_about_half_by_volume() -> None:
    assert volume_share(0.5, startacid.STARTER_KG_PER_L) == pytest.approx(0.5)
    assert (volume_share(0.0, 1.02), volume_share(1.0, 1.02)) == (0.0, 1.0)


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda: judge_starter(ph=1.9), "starter_ph"),
        (lambda: judge_starter(ph=math.nan), "starter_ph"),
        (lambda: judge_starter(ta_g_per_l=0.0), "starter_ta_g_per_l"),
        (lambda: judge_starter(ph=4.0, ta_g_per_l=30.0), "starter_ta_g_per_l"),
        (lambda: _amount(blend_volume_l=0.0), "blend_volume_l"),
        (lambda: _amount(blend_volume_l=math.nan), "blend_volume_l"),
        (lambda: _amount(target_start_ph=2.9), "target_start_ph"),
        (lambda: _amount(sugar_g_per_l=301.0), "sugar_g_per_l"),
        (lambda: _amount(tea_g_per_l=-1.0), "tea_g_per_l"),
        (lambda: _amount(water_alkalinity_meq_per_l=16.0), "water_alkalinity_meq_per_l"),
    ],
)
def test_impossible_starters_are_refused(call, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field
