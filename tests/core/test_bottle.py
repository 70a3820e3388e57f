"""A closed bottle keeps its gas, and warns before it is full of drink."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from culturecore import co2
from culturecore.bottle import Filling, gas_g_per_l, pressure, swelling
from culturecore.errors import ImpossibleInput

HALF_LITRE = Filling(brim_volume_l=0.5, headspace_share=0.04)
FILLINGS = st.builds(
    Filling,
    brim_volume_l=st.floats(0.2, 2.0),
    headspace_share=st.floats(0.02, 0.3),
    filled_at_c=st.floats(0.0, 40.0),
    altitude_m=st.floats(0.0, 3000.0),
)


@given(FILLINGS, st.floats(0.0, 10.0), st.floats(0.0, 40.0))
def test_no_gas_is_lost(filling: Filling, grams: float, temperature_c: float) -> None:
    found = pressure(filling, co2_g_per_l=grams, temperature_c=temperature_c)
    assume(found.volumes is not None)
    filled_l = filling.brim_volume_l * (1.0 - filling.headspace_share)
    drink_l = filled_l * swelling(from_c=filling.filled_at_c, to_c=temperature_c)
    held = co2.g_per_l_from_volumes(found.volumes)
    bar = co2.co2_pressure_bar(co2_g_per_l=held, temperature_c=temperature_c)
    in_gas = gas_g_per_l(bar, temperature_c) * (filling.brim_volume_l - drink_l)
    assert held * drink_l + in_gas == pytest.approx(grams * filled_l, abs=1e-6)


@given(FILLINGS, st.floats(0.0, 12.0), st.floats(0.0, 40.0))
def test_every_answer_is_a_number_in_order_or_none(
    filling: Filling, grams: float, temperature_c: float
) -> None:
    found = pressure(filling, co2_g_per_l=grams, temperature_c=temperature_c)
    told = [
        number
        for number in (found.air_dissolved_bar, found.air_trapped_bar, found.volumes)
        if number is not None
    ]
    assert all(math.isfinite(number) for number in told)
    if found.air_trapped_bar is not None:
        assert found.air_dissolved_bar is not None
        assert found.air_dissolved_bar <= found.air_trapped_bar <= co2.MODEL_TOP_BAR
    assert found.is_over_8_bar == (found.air_trapped_bar is None)


@given(st.floats(0.5, 8.0), st.floats(0.0, 39.0), st.floats(0.2, 1.0))
def test_pressure_rises_with_warmth(grams: float, temperature_c: float, warmer: float) -> None:
    cool = pressure(HALF_LITRE, co2_g_per_l=grams, temperature_c=temperature_c)
    warm = pressure(HALF_LITRE, co2_g_per_l=grams, temperature_c=temperature_c + warmer)
    assume(warm.air_dissolved_bar is not None)
    assert warm.air_dissolved_bar > cool.air_dissolved_bar


@given(st.floats(0.0, 8.0), st.floats(0.01, 4.0), st.floats(0.0, 40.0))
def test_pressure_rises_with_gas(grams: float, more: float, temperature_c: float) -> None:
    less = pressure(HALF_LITRE, co2_g_per_l=grams, temperature_c=temperature_c)
    much = pressure(HALF_LITRE, co2_g_per_l=grams + more, temperature_c=temperature_c)
    assume(much.air_dissolved_bar is not None)
    assert much.air_dissolved_bar > less.air_dissolved_bar


def test_bottle_closed_on_nothing_stands_at_no_pressure() -> None:
    found = pressure(HALF_LITRE, co2_g_per_l=0.0, temperature_c=20.0)
    assert found.air_trapped_bar == pytest.approx(0.0, abs=1e-9)
    assert found.air_dissolved_bar < 0.0


def test_sugar_left_in_the_drink_raises_the_pressure() -> None:
    plain = pressure(HALF_LITRE, co2_g_per_l=5.0, temperature_c=22.0)
    sweet = pressure(HALF_LITRE, co2_g_per_l=5.0, temperature_c=22.0, sugar_g_per_l=50.0)
    assert 0.1 < sweet.air_dissolved_bar - plain.air_dissolved_bar < 0.4


def test_cold_bottle_filled_to_the_brim_is_squeezed_when_warm() -> None:
    tight = Filling(brim_volume_l=0.5, headspace_share=0.01, filled_at_c=4.0)
    roomy = Filling(brim_volume_l=0.5, headspace_share=0.04, filled_at_c=4.0)
    warm = {"co2_g_per_l": 5.0, "temperature_c": 35.0}
    squeezed, free = pressure(tight, **warm), pressure(roomy, **warm)
    assert squeezed.air_trapped_bar > free.air_trapped_bar + 0.5


def test_drink_that_fills_its_bottle_has_no_number() -> None:
    filling = Filling(brim_volume_l=0.5, headspace_share=0.003, filled_at_c=4.0)
    found = pressure(filling, co2_g_per_l=3.0, temperature_c=35.0)
    assert found.is_brimful
    assert found.is_over_8_bar
    assert found.volumes is None


def test_far_too_much_gas_has_no_number() -> None:
    found = pressure(HALF_LITRE, co2_g_per_l=35.0, temperature_c=30.0)
    assert (found.air_dissolved_bar, found.air_trapped_bar, found.volumes) == (None, None, None)
    assert not found.is_brimful


def test_trapped_air_alone_may_pass_8_bar() -> None:
    grams = next(
        tenths / 10.0
        for tenths in range(100, 200)
        if pressure(HALF_LITRE, co2_g_per_l=tenths / 10.0, temperature_c=25.0).is_over_8_bar
    )
    found = pressure(HALF_LITRE, co2_g_per_l=grams, temperature_c=25.0)
    assert found.air_dissolved_bar is not None
    assert found.air_trapped_bar is None


def test_swelling_is_that_of_water() -> None:
    """Water: 998.207 at 20 degC over 994.033 kg/m³ at 35 degC."""
    assert swelling(from_c=20.0, to_c=35.0) == pytest.approx(998.207 / 994.033, rel=1e-5)


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"brim_volume_l": 0.0}, "brim_volume_l"),
        ({"brim_volume_l": math.nan}, "brim_volume_l"),
        ({"headspace_share": 0.6}, "headspace_share"),
        ({"headspace_share": math.nan}, "headspace_share"),
        ({"filled_at_c": 41.0}, "filled_at_c"),
        ({"altitude_m": math.nan}, "altitude_m"),
    ],
)
def test_impossible_bottles_are_refused(changes: dict[str, float], field: str) -> None:
    sizes = {"brim_volume_l": 0.5, "headspace_share": 0.04, **changes}
    with pytest.raises(ImpossibleInput) as refusal:
        pressure(Filling(**sizes), co2_g_per_l=5.0, temperature_c=20.0)
    assert refusal.value.field == field


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"co2_g_per_l": -1.0}, "co2_g_per_l"),
        ({"co2_g_per_l": math.nan}, "co2_g_per_l"),
        ({"temperature_c": math.nan}, "temperature_c"),
        ({"sugar_g_per_l": math.nan}, "sugar_g_per_l"),
        ({"ethanol_abv": math.nan}, "ethanol_abv"),
    ],
)
def test_impossible_drinks_are_refused(changes: dict[str, float], field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        pressure(HALF_LITRE, **{"co2_g_per_l": 5.0, "temperature_c": 20.0, **changes})
    assert refusal.value.field == field
