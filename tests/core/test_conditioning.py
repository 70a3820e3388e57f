"""Sugar, pressure, days and alcohol of a drink that is bottled alive."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import bottle, co2
from culturecore.bottle import Filling
from culturecore.conditioning import (
    WISH_RANGES,
    FizzWish,
    Fruit,
    days_for,
    plan_fizz,
    sugar_for_volumes,
    sugar_rate_g_per_l_day,
)
from culturecore.errors import ImpossibleInput
from culturecore.ethanol import SugarKind
from culturecore.outcome import Caveat, Estimate

FILLING = Filling(brim_volume_l=0.52, headspace_share=0.04)
DRY = FizzWish(volume_l=4.0, filling=FILLING, ceiling_bar=3.7)
SWEET = replace(DRY, residual_sugar_low_g_per_l=20.0, residual_sugar_high_g_per_l=40.0)


def test_sugar_for_a_flat_drink_is_the_trade_rule_of_four_grams_a_volume() -> None:
    """Common practice: 4 g/L of sucrose a volume; theory 3.844, at 95 % yield 4.05."""
    sugar = sugar_for_volumes(target_volumes=1.0, held_g_per_l=0.0, kind=SugarKind.SUCROSE)
    assert sugar.low == pytest.approx(3.844, abs=0.001)
    assert sugar.value == pytest.approx(4.0, rel=0.015)
    assert sugar.low < sugar.value < sugar.high


def test_what_the_drink_holds_already_is_taken_off() -> None:
    flat = sugar_for_volumes(target_volumes=2.0, held_g_per_l=0.0, kind=SugarKind.HEXOSE)
    lively = sugar_for_volumes(target_volumes=2.0, held_g_per_l=1.6, kind=SugarKind.HEXOSE)
    full = sugar_for_volumes(target_volumes=0.5, held_g_per_l=1.6, kind=SugarKind.HEXOSE)
    assert lively.value < flat.value
    assert lively.high == flat.high  # the jar may have held nothing
    assert (full.value, full.low) == (0.0, 0.0)


@given(st.floats(0.5, 4.0), st.floats(0.01, 1.0), st.floats(0.0, 2.0))
def test_more_fizz_needs_more_sugar(target: float, more: float, held: float) -> None:
    kind = SugarKind.SUCROSE
    less = sugar_for_volumes(target_volumes=target, held_g_per_l=held, kind=kind)
    much = sugar_for_volumes(target_volumes=target + more, held_g_per_l=held, kind=kind)
    assert much.high > less.high
    assert much.value >= less.value


def test_dry_drink_is_given_the_sugar_that_makes_its_fizz() -> None:
    plan = plan_fizz(DRY)
    assert plan.sugar_to_add_g.value == pytest.approx(4.0 * plan.to_ferment_g_per_l.value)
    assert plan.priming_sugar_g == plan.sugar_to_add_g.value
    assert plan.days_to_target is not None
    assert plan.chill_by_day is None  # the little sugar cannot break the ceiling
    assert plan.all_sugar.volumes == pytest.approx(plan.on_target.volumes, abs=0.15)


def test_sweet_drink_needs_no_sugar_and_could_break_its_bottles() -> None:
    plan = plan_fizz(SWEET)
    assert plan.sugar_to_add_g.high == 0.0
    assert plan.priming_sugar_g == 0.0
    assert plan.all_sugar.is_over_8_bar
    assert plan.chill_by_day is not None
    assert plan.chill_by_day > 0.0
    assert plan.ethanol_all_sugar_abv == pytest.approx(40.0 * 0.5383 / 7.8924, rel=1e-3)


def test_fruit_counts_as_sugar() -> None:
    fruit = (Fruit(mass_g=200.0, sugar_share_low=0.08, sugar_share_high=0.15),)
    plain, fruity = plan_fizz(DRY), plan_fizz(replace(DRY, fruit=fruit))
    assert fruity.sugar_to_add_g.high == pytest.approx(plain.sugar_to_add_g.high - 16.0)
    assert fruity.sugar_to_add_g.low == 0.0
    assert fruity.ethanol_all_sugar_abv > plain.ethanol_all_sugar_abv


def test_makers_own_sugar_is_reckoned_with() -> None:
    plan = plan_fizz(replace(DRY, priming_sugar_g=80.0))
    assert plan.priming_sugar_g == 80.0
    assert plan.all_sugar.is_over_8_bar
    assert plan.sugar_to_add_g.value < 80.0


def test_target_that_the_sugar_cannot_give_has_no_day() -> None:
    assert plan_fizz(replace(DRY, priming_sugar_g=0.0)).days_to_target is None


def test_bottles_that_are_over_at_once_must_be_chilled_at_once() -> None:
    plan = plan_fizz(replace(DRY, ceiling_bar=0.1, open_jar_c=4.0, warmest_c=35.0))
    assert plan.chill_by_day == pytest.approx(0.0, abs=1e-6)


def test_over_8_bar_counts_as_over_every_ceiling() -> None:
    plan = plan_fizz(replace(SWEET, ceiling_bar=8.0))
    assert plan.chill_by_day is not None
    assert plan.chill_by_day > plan_fizz(SWEET).chill_by_day


def test_alcohol_gained_follows_the_fizz() -> None:
    """Stoichiometry: 0.262 % vol to a volume made; the jar holds up to 0.8 of one at 22 degC."""
    gained = plan_fizz(replace(DRY, target_volumes=2.0)).ethanol_gained_abv
    assert gained.high == pytest.approx(2.0 * 0.262, abs=0.002)
    assert gained.low == pytest.approx((2.0 - 0.796) * 0.262, abs=0.004)
    assert gained.low < gained.value < gained.high


def test_altitude_lowers_what_the_jar_held() -> None:
    high_up = replace(DRY, filling=replace(FILLING, altitude_m=2500.0))
    assert plan_fizz(high_up).to_ferment_g_per_l.value > plan_fizz(DRY).to_ferment_g_per_l.value


@settings(max_examples=25)
@given(st.floats(10.0, 38.0), st.floats(0.1, 2.0))
def test_warmer_bottles_are_tighter_and_sooner(warmest_c: float, warmer: float) -> None:
    cool = plan_fizz(replace(SWEET, warmest_c=warmest_c))
    warm = plan_fizz(replace(SWEET, warmest_c=warmest_c + warmer))
    assert warm.chill_by_day <= cool.chill_by_day + 1e-9
    if warm.on_target.air_trapped_bar is not None:
        assert warm.on_target.air_trapped_bar > cool.on_target.air_trapped_bar


@settings(max_examples=40)
@given(st.floats(0.0, 60.0), st.floats(0.0, 3.0), st.floats(0.0, 40.0))
def test_no_plan_holds_what_is_no_number(sugar: float, target: float, celsius: float) -> None:
    plan = plan_fizz(
        replace(
            DRY,
            residual_sugar_high_g_per_l=sugar,
            target_volumes=max(target, 0.1),
            place_temperature_c=celsius,
            warmest_c=celsius,
        )
    )
    numbers = [plan.priming_sugar_g, plan.ethanol_all_sugar_abv]
    for estimate in (plan.to_ferment_g_per_l, plan.sugar_to_add_g, plan.ethanol_gained_abv):
        assert 0.0 <= estimate.low <= estimate.value <= estimate.high
        numbers += [estimate.low, estimate.high]
    if plan.days_to_target is not None:
        numbers += [plan.days_to_target.low, plan.days_to_target.high]
    if plan.chill_by_day is not None:
        numbers.append(plan.chill_by_day)
    assert all(math.isfinite(number) for number in numbers)


def test_pace_is_the_assumed_one_at_22_c() -> None:
    rate = sugar_rate_g_per_l_day(22.0)
    assert (rate.low, rate.high) == (0.5, 3.0)
    assert rate.value == pytest.approx(math.sqrt(1.5))
    assert rate.caveats == (Caveat.RECIPE_ONLY,)


@given(st.floats(0.0, 39.0))
def test_pace_rises_with_warmth_and_is_widest_far_from_22(temperature_c: float) -> None:
    rate = sugar_rate_g_per_l_day(temperature_c)
    assert rate.low < rate.value < rate.high
    assert sugar_rate_g_per_l_day(temperature_c + 1.0).value > rate.value
    assert rate.high / rate.low >= 6.0 - 1e-9
    assert (Caveat.EXTRAPOLATED in rate.caveats) == (not 15.0 <= temperature_c <= 30.0)


def test_cold_does_not_stop_the_yeasts() -> None:
    assert sugar_rate_g_per_l_day(4.0).low > 0.0


def test_days_are_sugar_over_pace() -> None:
    days = days_for(Estimate(6.0, 5.0, 9.0), 22.0)
    assert days.low == pytest.approx(5.0 / 3.0)
    assert days.high == pytest.approx(18.0)


@pytest.mark.parametrize("name", sorted(WISH_RANGES))
@pytest.mark.parametrize("bad", [math.nan, -1.0, 1e6])
def test_impossible_wishes_are_refused(name: str, bad: float) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        plan_fizz(replace(SWEET, **{name: bad}))
    assert refusal.value.field == name
    assert refusal.value.low is not None


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"residual_sugar_high_g_per_l": 10.0}, "residual_sugar_high_g_per_l"),  # below the low
        ({"priming_sugar_g": -1.0}, "priming_sugar_g"),
        ({"priming_sugar_g": math.nan}, "priming_sugar_g"),
        ({"priming_sugar_g": 4000.0}, "priming_sugar_g"),
        ({"fruit": (Fruit(mass_g=-1.0, sugar_share_low=0.1, sugar_share_high=0.1),)}, "mass_g"),
        (
            {"fruit": (Fruit(mass_g=1.0, sugar_share_low=1.1, sugar_share_high=1.1),)},
            "sugar_share_low",
        ),
        (
            {"fruit": (Fruit(mass_g=1.0, sugar_share_low=0.2, sugar_share_high=0.1),)},
            "sugar_share_high",
        ),
    ],
)
def test_impossible_sugar_is_refused(changes: dict[str, object], field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        plan_fizz(replace(SWEET, **changes))
    assert refusal.value.field == field


def test_impossible_figures_of_the_parts_are_refused() -> None:
    with pytest.raises(ImpossibleInput):
        sugar_rate_g_per_l_day(41.0)
    with pytest.raises(ImpossibleInput):
        days_for(Estimate(1.0, 1.0, math.inf), 22.0)
    with pytest.raises(ImpossibleInput):
        sugar_for_volumes(target_volumes=2.0, held_g_per_l=-1.0, kind=SugarKind.SUCROSE)


def test_jar_chilled_after_fermenting_is_reckoned_at_its_warmest() -> None:
    warm, cold = plan_fizz(DRY), plan_fizz(replace(DRY, open_jar_c=4.0))
    assert cold.to_ferment_g_per_l.value < warm.to_ferment_g_per_l.value
    assert co2.open_jar_g_per_l(temperature_c=4.0) > co2.open_jar_g_per_l(temperature_c=22.0)


def test_sugar_to_add_takes_the_middle_of_what_is_there() -> None:
    there = replace(DRY, residual_sugar_low_g_per_l=1.0, residual_sugar_high_g_per_l=3.0)
    plan, dry = plan_fizz(there), plan_fizz(DRY)
    assert plan.sugar_to_add_g.value == pytest.approx(dry.sugar_to_add_g.value - 4.0 * 2.0)
    assert plan.sugar_to_add_g.low == pytest.approx(dry.sugar_to_add_g.low - 4.0 * 3.0)
    assert plan.sugar_to_add_g.high == pytest.approx(dry.sugar_to_add_g.high - 4.0 * 1.0)


def test_days_to_target_go_by_the_place() -> None:
    plan = plan_fizz(replace(DRY, place_temperature_c=15.0, warmest_c=35.0))
    assert plan.days_to_target == days_for(plan.to_ferment_g_per_l, 15.0)


def test_chilling_is_reckoned_with_the_fastest_yeast_at_the_warmest() -> None:
    """At the chill-by day that yeast has made just the sugar that meets the ceiling."""
    wish = replace(SWEET, place_temperature_c=15.0, warmest_c=30.0)
    plan = plan_fizz(wish)
    fermented = plan.chill_by_day * 3.0 * 3.0**0.8  # 3 g/L a day at 22 degC, threefold for 10
    held = co2.open_jar_g_per_l(temperature_c=22.0)
    at_ceiling = bottle.pressure(
        FILLING,
        co2_g_per_l=held + fermented * 0.514285,
        temperature_c=30.0,
        sugar_g_per_l=40.0 - fermented,
        ethanol_abv=fermented * 0.538345 / 7.8924,
    )
    assert at_ceiling.air_trapped_bar == pytest.approx(3.7, abs=1e-3)
