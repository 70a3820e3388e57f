"""Laws of sugar solutions; the printed tables are checked in tests/published."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.sugar import (
    MAX_BRIX,
    brix_from_g_per_l,
    brix_from_sg,
    density_kg_per_l,
    g_per_l_from_brix,
    sg_from_brix,
    volume_of_solution_l,
    water_density_kg_per_l,
)

BRIX = st.floats(0.0, MAX_BRIX)


@given(BRIX)
def test_brix_to_grams_and_back(brix: float) -> None:
    assert brix_from_g_per_l(g_per_l_from_brix(brix)) == pytest.approx(brix, abs=1e-8)


@given(BRIX)
def test_brix_to_gravity_and_back(brix: float) -> None:
    assert brix_from_sg(sg_from_brix(brix)) == pytest.approx(brix, abs=1e-8)


@given(st.tuples(BRIX, BRIX), st.floats(0.0, 80.0))
def test_more_sugar_is_denser(pair: tuple[float, float], temperature_c: float) -> None:
    low, high = sorted(pair)
    assert density_kg_per_l(low, temperature_c) <= density_kg_per_l(high, temperature_c)


def test_water_has_gravity_one_and_no_sugar() -> None:
    assert sg_from_brix(0.0) == 1.0
    assert brix_from_g_per_l(0.0) == pytest.approx(0.0, abs=1e-9)
    assert density_kg_per_l(0.0, 4.0) == water_density_kg_per_l(4.0)


@given(water_g=st.floats(100.0, 1e5), share=st.floats(0.0, 0.8))
def test_solution_holds_its_grams_per_litre(water_g: float, share: float) -> None:
    sugar_g = water_g * share / (1.0 - share)
    volume_l = volume_of_solution_l(water_g, sugar_g)
    brix = 100.0 * sugar_g / (sugar_g + water_g)
    assert sugar_g / volume_l == pytest.approx(g_per_l_from_brix(brix), rel=1e-9, abs=1e-9)


@given(water_g=st.floats(1e3, 1e4), sugar_g=st.floats(1.0, 300.0))
def test_dissolving_takes_more_room_but_less_than_the_dry_sugar(
    water_g: float, sugar_g: float
) -> None:
    """Crystalline sucrose is 1.587 kg/L: dissolved, it takes up a little less."""
    added_l = volume_of_solution_l(water_g, sugar_g) - volume_of_solution_l(water_g, 0.0)
    assert 0.0 < added_l < sugar_g / 1587.0


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda: density_kg_per_l(-0.1), "brix"),
        (lambda: density_kg_per_l(85.1), "brix"),
        (lambda: density_kg_per_l(math.nan), "brix"),
        (lambda: density_kg_per_l(10.0, 80.5), "temperature_c"),
        (lambda: water_density_kg_per_l(-1.0), "temperature_c"),
        (lambda: brix_from_g_per_l(-1.0), "sugar_g_per_l"),
        (lambda: brix_from_g_per_l(1300.0), "sugar_g_per_l"),
        (lambda: brix_from_sg(0.99), "specific_gravity"),
        (lambda: brix_from_sg(1.5), "specific_gravity"),
        (lambda: volume_of_solution_l(-1.0, 1.0), "water_g"),
        (lambda: volume_of_solution_l(1.0, -1.0), "sugar_g"),
        (lambda: volume_of_solution_l(0.0, 0.0), "water_g"),
        (lambda: volume_of_solution_l(math.inf, 0.0), "water_g"),
        (lambda: volume_of_solution_l(1.0, 10.0), "brix"),
    ],
)
def test_impossible_solutions_are_refused(call, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field
