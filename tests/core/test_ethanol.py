"""Edges of ethanol in water; the tables are in tests/published."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.ethanol import (
    abv_from_g_per_l,
    abv_from_mass_percent,
    density_kg_per_l,
    g_per_l_from_abv,
)


@given(st.floats(0.0, 100.0))
def test_strength_goes_there_and_back(abv: float) -> None:
    assert abv_from_g_per_l(min(g_per_l_from_abv(abv), 789.24)) == pytest.approx(abv, abs=1e-9)


@given(st.floats(0.0, 99.0), st.floats(0.01, 1.0))
def test_more_ethanol_is_stronger_and_lighter(percent: float, more: float) -> None:
    assert abv_from_mass_percent(percent + more) > abv_from_mass_percent(percent)
    assert density_kg_per_l(percent + more) < density_kg_per_l(percent)


@pytest.mark.parametrize("bad", [math.nan, -0.1, 1e4, math.inf])
@pytest.mark.parametrize(
    ("call", "field"),
    [
        (density_kg_per_l, "mass_percent"),
        (lambda x: density_kg_per_l(5.0, x + 41.0 if x == -0.1 else x), "temperature_c"),
        (abv_from_g_per_l, "ethanol_g_per_l"),
        (g_per_l_from_abv, "abv"),
    ],
)
def test_impossible_values_are_refused(call, field: str, bad: float) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call(bad)
    assert refusal.value.field == field
