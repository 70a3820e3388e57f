"""Ice in hot tea: heat is kept, ice is left or it is not."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.heat import Portion, heat_content, mix_temperature_c
from culturecore.icemix import (
    ICE_CAPACITY_J_PER_G_K,
    MELTING_HEAT_J_PER_G,
    ice_for_temperature,
    mix_with_ice,
)

LIQUIDS = st.lists(
    st.builds(
        Portion,
        mass_g=st.floats(10.0, 1e4),
        temperature_c=st.floats(0.0, 100.0),
        brix=st.floats(0.0, 20.0),
    ),
    min_size=1,
    max_size=3,
)
ICE_C = st.floats(-30.0, 0.0)


@given(parts=LIQUIDS, ice_g=st.floats(0.0, 1e4), ice_c=ICE_C)
def test_heat_and_mass_are_kept(parts: list[Portion], ice_g: float, ice_c: float) -> None:
    mixed = mix_with_ice(parts, ice_g=ice_g, ice_temperature_c=ice_c)
    mass_g = sum(part.mass_g for part in parts)
    sugar_g = sum(part.mass_g * part.brix / 100.0 for part in parts)
    before_j = sum(
        part.mass_g * heat_content(part.temperature_c, part.brix / 100.0) for part in parts
    )
    before_j -= ice_g * (MELTING_HEAT_J_PER_G - ICE_CAPACITY_J_PER_G_K * ice_c)
    assert mixed.liquid_mass_g + mixed.ice_left_g == pytest.approx(mass_g + ice_g)
    assert 0.0 <= mixed.ice_left_g <= ice_g
    after_c = mixed.temperature_c.value
    after_j = mixed.liquid_mass_g * heat_content(after_c, sugar_g / mixed.liquid_mass_g)
    after_j -= mixed.ice_left_g * MELTING_HEAT_J_PER_G
    fully_warmed = before_j >= -(ice_g * MELTING_HEAT_J_PER_G)
    if fully_warmed:  # else even all the heat does not bring the ice to 0 degC
        assert after_j == pytest.approx(before_j, abs=1e-6 * (abs(before_j) + 1.0) + 1e-3)
    else:
        assert mixed.ice_left_g == ice_g
    assert mixed.ice_left_g == 0.0 or after_c == 0.0


@given(parts=LIQUIDS, ices=st.tuples(st.floats(0.0, 5e3), st.floats(0.0, 5e3)))
def test_more_ice_is_never_warmer(parts: list[Portion], ices: tuple[float, float]) -> None:
    less, more = (mix_with_ice(parts, ice_g=ice_g).temperature_c.value for ice_g in sorted(ices))
    assert more <= less + 1e-9


@given(parts=LIQUIDS)
def test_without_ice_it_is_an_ordinary_mix(parts: list[Portion]) -> None:
    mixed = mix_with_ice(parts, ice_g=0.0)
    assert mixed.temperature_c.value == pytest.approx(mix_temperature_c(parts), abs=1e-9)


@given(hot_c=st.floats(40.0, 100.0), target_c=st.floats(5.0, 35.0), ice_c=ICE_C)
def test_ice_for_a_temperature_gives_it(hot_c: float, target_c: float, ice_c: float) -> None:
    parts = [Portion(mass_g=1000.0, temperature_c=hot_c, brix=7.0)]
    needed = ice_for_temperature(parts, target_c=target_c, ice_temperature_c=ice_c)
    assert needed.low < needed.value < needed.high
    mixed = mix_with_ice(parts, ice_g=needed.value, ice_temperature_c=ice_c)
    # the sugar is thinner in the mix, which the quadratic term of its heat shows slightly
    assert mixed.temperature_c.value == pytest.approx(target_c, abs=0.05)


def test_equal_masses_of_ice_and_water_at_80_degrees_end_at_freezing() -> None:
    """The classic: melting takes as much as 80 degrees of water (79.7 cal/g)."""
    mixed = mix_with_ice([Portion(mass_g=500.0, temperature_c=79.73)], ice_g=500.0)
    assert mixed.temperature_c.value == pytest.approx(0.0, abs=0.05)
    assert mixed.ice_left_g == pytest.approx(0.0, abs=0.5)


def test_cool_tea_needs_no_ice() -> None:
    needed = ice_for_temperature([Portion(mass_g=500.0, temperature_c=20.0)], target_c=28.0)
    assert needed.value == 0.0


def test_far_too_much_deep_frozen_ice_melts_not_at_all() -> None:
    mixed = mix_with_ice(
        [Portion(mass_g=10.0, temperature_c=5.0)], ice_g=1000.0, ice_temperature_c=-30.0
    )
    assert mixed.ice_left_g == 1000.0
    assert mixed.temperature_c.low == 0.0


LIQUID = (Portion(mass_g=1.0, temperature_c=50.0),)


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda: mix_with_ice(LIQUID, ice_g=-1.0), "ice_g"),
        (lambda: mix_with_ice(LIQUID, ice_g=math.inf), "ice_g"),
        (lambda: mix_with_ice(LIQUID, ice_g=1.0, ice_temperature_c=1.0), "ice_temperature_c"),
        (lambda: mix_with_ice((), ice_g=1.0), "mass_g"),
        (lambda: ice_for_temperature(LIQUID, target_c=0.0), "target_c"),
        (lambda: ice_for_temperature(LIQUID, target_c=math.nan), "target_c"),
        (
            lambda: ice_for_temperature(LIQUID, target_c=20.0, ice_temperature_c=math.nan),
            "ice_temperature_c",
        ),
    ],
)
def test_impossible_ice_is_refused(call, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field
