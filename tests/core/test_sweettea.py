"""The plan: nothing is lost, nothing is hidden, and the doubts are told."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import safety
from culturecore.acidbase import mix, ph_of, starter_blend, sweet_tea_blend
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Level
from culturecore.sources import SOURCES
from culturecore.stages import StarterTaste, TeaKind
from culturecore.startacid import STARTER_KG_PER_L
from culturecore.sugar import volume_of_solution_l
from culturecore.sweettea import LEAF_WATER_G_PER_G, Plan, Starter, Wish, plan

STARTERS = st.builds(
    Starter,
    ph=st.none() | st.floats(2.0, 4.6),
    ta_g_per_l=st.none() | st.floats(0.2, 40.0),
    taste=st.none() | st.sampled_from(StarterTaste),
).filter(lambda one: one.ph is None or one.ph < 3.6 or (one.ta_g_per_l or 0.0) < 5.0)
WISHES = st.builds(
    Wish,
    fill_volume_l=st.floats(0.3, 60.0),
    sugar_g_per_l=st.floats(10.0, 200.0),
    tea_kind=st.sampled_from(TeaKind),
    tea_g_per_l=st.floats(0.5, 20.0),
    bag_g=st.floats(1.0, 3.0),
    starter=STARTERS,
    target_start_ph=st.floats(3.2, 4.6),
    water_alkalinity_meq_per_l=st.floats(0.0, 8.0),
    hot_water_c=st.floats(60.0, 100.0),
    cold_water_c=st.floats(0.0, 35.0),
    culture_limit_c=st.floats(24.0, 40.0),
    working_volume_l=st.none() | st.floats(0.3, 60.0),
    place_temperature_c=st.floats(10.0, 38.0),
)
USUAL = Wish(fill_volume_l=4.0, starter=Starter(ph=3.0, ta_g_per_l=8.0))


def _codes(one: Plan) -> set[str]:
    return {verdict.code for verdict in one.verdicts}


@settings(max_examples=60)
@given(WISHES)
def test_masses_and_volumes_balance_to_the_gram(wish: Wish) -> None:
    one = plan(wish)
    water_in_tea_g = one.hot_water_g + one.cold_water_g - one.leaf_water_g
    assert one.leaf_water_g == pytest.approx(LEAF_WATER_G_PER_G * one.tea_g)
    assert volume_of_solution_l(water_in_tea_g, one.sugar_g) == pytest.approx(
        one.sweet_tea_volume_l, rel=1e-6
    )
    assert one.sugar_g == pytest.approx(wish.sugar_g_per_l * one.sweet_tea_volume_l)
    assert one.blend_volume_l == pytest.approx(wish.fill_volume_l)
    assert one.sweet_tea_volume_l + one.starter_volume_l == pytest.approx(wish.fill_volume_l)
    starter_g = 1000.0 * STARTER_KG_PER_L * one.starter_volume_l
    assert one.blend_mass_g == pytest.approx(water_in_tea_g + one.sugar_g + starter_g, abs=0.5)


@settings(max_examples=60)
@given(WISHES)
def test_plan_holds_to_its_own_rules(wish: Wish) -> None:
    one = plan(wish)
    assert 0.10 <= one.starter_share.value <= 0.25
    assert one.starter_share.low <= one.starter_share.value <= one.starter_share.high
    assert one.start_ph.low < one.start_ph.value < one.start_ph.high
    assert one.start_ph.high - one.start_ph.value >= 0.15
    assert one.hot_water_g >= 0.0
    assert one.cold_water_g >= 0.0
    codes = _codes(one)
    warm = one.mixed_temperature_c.value > wish.culture_limit_c - 2.0 + 0.05
    assert ("needs_cooling" in codes) == warm
    assert codes <= safety.VERDICT_CODES
    levels = [verdict.level for verdict in one.verdicts]
    assert levels == sorted(levels, key=[Level.STOP, Level.WARN, Level.INFORM].index)
    for verdict in one.verdicts:
        assert set(verdict.sources) <= set(SOURCES)


def test_start_ph_of_measured_starter_is_that_of_the_blend() -> None:
    one = plan(USUAL)
    starter_g = 1000.0 * STARTER_KG_PER_L * one.starter_volume_l
    blend = mix(
        (
            (sweet_tea_blend(1.5, 4.0), one.blend_mass_g - starter_g),
            (starter_blend(3.0, 8.0), starter_g),
        )
    )
    assert one.start_ph.value == pytest.approx(ph_of(blend), abs=1e-9)
    assert one.start_ph.caveats == (Caveat.TEA_ASSUMED,)


def test_strong_starter_is_still_a_tenth() -> None:
    """10 %: Virginia Cooperative Extension FST-297."""
    one = plan(replace(USUAL, starter=Starter(ph=2.8, ta_g_per_l=14.0)))
    assert one.starter_share.value == pytest.approx(0.10)


def test_measured_mild_starter_is_given_until_the_target_is_met() -> None:
    one = plan(replace(USUAL, starter=Starter(ph=3.2, ta_g_per_l=3.0)))
    assert 0.10 < one.starter_share.value < 0.25
    assert one.start_ph.value == pytest.approx(4.2, abs=1e-6)
    assert "cannot_reach_target" not in _codes(one)


def test_weak_starter_in_hard_water_cannot_reach_the_target() -> None:
    one = plan(
        replace(USUAL, starter=Starter(ph=3.8, ta_g_per_l=1.5), water_alkalinity_meq_per_l=5.0)
    )
    assert one.starter_share.value == pytest.approx(0.25)
    assert {"cannot_reach_target", "start_ph_high"} <= _codes(one)


@pytest.mark.parametrize(
    ("taste", "least"),
    [
        (StarterTaste.VINEGARY, 0.10),
        (StarterTaste.SOUR, 0.125),
        (StarterTaste.BALANCED, 0.15),
        (StarterTaste.SWEET, 0.20),
        (None, 0.15),
    ],
)
def test_starter_known_by_taste_is_given_at_least_the_usual_amount(
    taste: StarterTaste | None, least: float
) -> None:
    soft = replace(USUAL, starter=Starter(taste=taste), water_alkalinity_meq_per_l=0.0)
    one = plan(soft)
    assert one.starter_share.value >= least
    assert {Caveat.STARTER_PH_ASSUMED, Caveat.STARTER_ACID_ASSUMED} <= set(one.start_ph.caveats)


def test_starter_known_by_ph_alone_is_taken_for_its_nearest_taste() -> None:
    soft = replace(USUAL, water_alkalinity_meq_per_l=0.0)
    assert plan(replace(soft, starter=Starter(ph=2.7))).starter_share.value == pytest.approx(0.10)
    assert plan(replace(soft, starter=Starter(ph=3.25))).starter_share.value >= 0.15


def test_titration_without_ph_still_gives_a_start_ph() -> None:
    one = plan(replace(USUAL, starter=Starter(ta_g_per_l=8.0)))
    assert 3.0 < one.start_ph.value < 4.5
    assert Caveat.STARTER_PH_ASSUMED in one.start_ph.caveats
    assert Caveat.STARTER_ACID_ASSUMED not in one.start_ph.caveats


def test_less_known_starter_gives_wider_bounds() -> None:
    def width(starter: Starter) -> float:
        ph = plan(replace(USUAL, starter=starter, starter_volume_l=0.4)).start_ph
        return ph.high - ph.low

    measured = width(Starter(ph=3.0, ta_g_per_l=6.0))
    ph_only = width(Starter(ph=3.0))
    tasted = width(Starter(taste=StarterTaste.SOUR))
    unknown = width(Starter())
    assert measured < ph_only < tasted < unknown


def test_herbs_may_be_acid_enough_by_themselves() -> None:
    """Their pH is so uncertain that the target may need no starter; the plan gives it anyway."""
    one = plan(
        replace(
            USUAL,
            tea_kind=TeaKind.HERBAL,
            water_alkalinity_meq_per_l=0.0,
            target_start_ph=4.6,
        )
    )
    assert one.starter_share.low == 0.0
    assert one.starter_share.value == pytest.approx(0.10)


def test_maker_chooses_the_starter_amount() -> None:
    one = plan(replace(USUAL, starter_volume_l=0.2))
    assert one.starter_volume_l == 0.2
    assert one.starter_share.value == pytest.approx(0.05)
    assert "starter_low" in _codes(one)
    assert "starter_high" in _codes(plan(replace(USUAL, starter_volume_l=1.2)))
    assert not {"starter_low", "starter_high"} & _codes(plan(replace(USUAL, starter_volume_l=0.4)))


def test_readings_that_contradict_each_other_are_pointed_out() -> None:
    assert "starter_odd" in _codes(plan(replace(USUAL, starter=Starter(ph=2.2, ta_g_per_l=1.0))))
    assert "starter_odd" in _codes(plan(replace(USUAL, starter=Starter(ph=3.9, ta_g_per_l=15.0))))
    assert "starter_odd" not in _codes(plan(USUAL))


def test_ph_and_acidity_that_no_drink_has_are_refused() -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        plan(replace(USUAL, starter=Starter(ph=4.5, ta_g_per_l=35.0)))
    assert (refusal.value.field, refusal.value.reason) == ("starter_ta_g_per_l", "contradicts_ph")


def test_cold_water_brings_the_tea_to_the_culture_by_itself() -> None:
    one = plan(replace(USUAL, cold_water_c=5.0))
    assert one.mixed_temperature_c.value <= 28.0 + 1e-6
    assert one.mixed_temperature_c.high == pytest.approx(one.mixed_temperature_c.value + 2.0)
    assert "needs_cooling" not in _codes(one)


def test_warm_tap_needs_cooling_and_says_how_much() -> None:
    one = plan(replace(USUAL, cold_water_c=28.0))
    (verdict,) = (verdict for verdict in one.verdicts if verdict.code == "needs_cooling")
    assert verdict.numbers["cool_by_c"] == pytest.approx(one.mixed_temperature_c.value - 28.0)
    assert one.hot_water_g >= 0.15 * (one.hot_water_g + one.cold_water_g) - 1e-6


def test_strong_tea_is_given_water_to_steep_in() -> None:
    """ISO 3103 steeps 20 g/L; the plan never goes above 30."""
    one = plan(replace(USUAL, tea_g_per_l=8.0))
    assert one.tea_g / one.hot_water_g <= 30.0 / 1000.0 + 1e-9


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"working_volume_l": 3.9}, "fill_over_working"),
        ({"sugar_g_per_l": 20.0}, "sugar_low"),
        ({"sugar_g_per_l": 150.0}, "sugar_high"),
        ({"tea_g_per_l": 1.0}, "tea_low"),
        ({"tea_g_per_l": 15.0}, "tea_high"),
        ({"tea_kind": TeaKind.HERBAL}, "tea_herbal"),
        ({"hot_water_c": 60.0}, "steep_cool"),
        ({"place_temperature_c": 15.0}, "place_cold"),
        ({"place_temperature_c": 36.0}, "place_warm"),
    ],
)
def test_unusual_wish_is_pointed_out(change: dict[str, object], code: str) -> None:
    assert code in _codes(plan(replace(USUAL, **change)))
    assert code not in _codes(plan(replace(USUAL, working_volume_l=4.0)))


def test_hot_water_is_always_warned_of() -> None:
    assert "hot_water_scald" in _codes(plan(USUAL))


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"fill_volume_l": 0.0}, "fill_volume_l"),
        ({"fill_volume_l": math.nan}, "fill_volume_l"),
        ({"sugar_g_per_l": -1.0}, "sugar_g_per_l"),
        ({"tea_g_per_l": 0.0}, "tea_g_per_l"),
        ({"bag_g": 0.0}, "bag_g"),
        ({"target_start_ph": 5.0}, "target_start_ph"),
        ({"water_alkalinity_meq_per_l": -0.1}, "water_alkalinity_meq_per_l"),
        ({"hot_water_c": 120.0}, "hot_water_c"),
        ({"hot_water_c": 40.0, "cold_water_c": 40.0}, "hot_water_c"),
        ({"cold_water_c": -1.0}, "cold_water_c"),
        ({"culture_limit_c": 60.0}, "culture_limit_c"),
        ({"place_temperature_c": math.inf}, "place_temperature_c"),
        ({"working_volume_l": 0.0}, "working_volume_l"),
        ({"starter_volume_l": 4.0}, "starter_volume_l"),
        ({"starter_volume_l": 0.0}, "starter_volume_l"),
        ({"starter": Starter(ph=7.0)}, "starter_ph"),
        ({"starter": Starter(ta_g_per_l=0.0)}, "starter_ta_g_per_l"),
    ],
)
def test_impossible_wish_is_refused_by_name(change: dict[str, object], field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        plan(replace(USUAL, **change))
    assert refusal.value.field == field
