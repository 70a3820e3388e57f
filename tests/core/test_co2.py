"""Laws and edges of carbon dioxide in a drink; the tables are in tests/published."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import co2
from culturecore.errors import ImpossibleInput

TEMPERATURES = st.floats(0.0, 40.0)
PRESSURES = st.floats(0.0, 9.0)


@given(PRESSURES, TEMPERATURES, st.floats(0.0, 200.0), st.floats(0.0, 15.0))
def test_pressure_comes_back_from_what_it_dissolves(
    bar: float, temperature_c: float, sugar: float, abv: float
) -> None:
    solutes = {"sugar_g_per_l": sugar, "ethanol_abv": abv}
    grams = co2.dissolved_g_per_l(co2_pressure_bar=bar, temperature_c=temperature_c, **solutes)
    back = co2.co2_pressure_bar(co2_g_per_l=grams, temperature_c=temperature_c, **solutes)
    assert back == pytest.approx(bar, abs=1e-6)


@given(PRESSURES, st.floats(0.0, 39.0), st.floats(0.1, 1.0))
def test_warmer_holds_less(bar: float, temperature_c: float, warmer: float) -> None:
    cool = co2.dissolved_g_per_l(co2_pressure_bar=bar, temperature_c=temperature_c)
    warm = co2.dissolved_g_per_l(co2_pressure_bar=bar, temperature_c=temperature_c + warmer)
    assert warm <= cool


@given(st.floats(0.0, 8.0), st.floats(0.01, 3.0), TEMPERATURES)
def test_more_pressure_dissolves_more(bar: float, more: float, temperature_c: float) -> None:
    little = co2.dissolved_g_per_l(co2_pressure_bar=bar, temperature_c=temperature_c)
    much = co2.dissolved_g_per_l(co2_pressure_bar=bar + more, temperature_c=temperature_c)
    assert much > little


@given(st.floats(0.1, 2.5), TEMPERATURES, st.floats(0.0, 199.0), st.floats(0.0, 14.0))
def test_sugar_and_ethanol_raise_the_gauge(
    volumes: float, temperature_c: float, sugar: float, abv: float
) -> None:
    plain = co2.gauge_bar(
        volumes=volumes, temperature_c=temperature_c, sugar_g_per_l=sugar, ethanol_abv=abv
    )
    sweeter = co2.gauge_bar(
        volumes=volumes, temperature_c=temperature_c, sugar_g_per_l=sugar + 1.0, ethanol_abv=abv
    )
    stronger = co2.gauge_bar(
        volumes=volumes, temperature_c=temperature_c, sugar_g_per_l=sugar, ethanol_abv=abv + 1.0
    )
    for other in (sweeter, stronger):
        assert other is None or (plain is not None and other > plain)


def test_grams_and_volumes_go_there_and_back() -> None:
    assert co2.volumes_from_g_per_l(co2.g_per_l_from_volumes(2.5)) == pytest.approx(2.5)
    assert co2.g_per_l_from_volumes(1.0) == pytest.approx(1.977, abs=5e-4)


def test_flat_drink_would_draw_a_vacuum() -> None:
    gauge = co2.gauge_bar(volumes=0.0, temperature_c=20.0)
    assert gauge == pytest.approx(0.0234 - 1.01325, abs=1e-3)


def test_over_8_bar_there_is_no_number() -> None:
    assert co2.gauge_bar(volumes=6.0, temperature_c=40.0) is None  # beyond the law
    assert co2.gauge_bar(volumes=5.0, temperature_c=37.0) is None  # within it, past 8 bar
    told = co2.gauge_bar(volumes=5.0, temperature_c=30.0)
    assert told is not None
    assert 7.0 < told <= co2.MODEL_TOP_BAR
    assert co2.co2_pressure_bar(co2_g_per_l=100.0, temperature_c=20.0) is None


def test_open_jar_holds_about_an_eighth_less_than_a_volume_at_20_c() -> None:
    grams = co2.open_jar_g_per_l(temperature_c=20.0)
    assert co2.volumes_from_g_per_l(grams) == pytest.approx(0.85, abs=0.01)
    assert co2.open_jar_g_per_l(temperature_c=20.0, altitude_m=2000.0) < grams
    assert co2.open_jar_g_per_l(temperature_c=4.0) > grams


@pytest.mark.parametrize(
    ("altitude_m", "bar"), [(0.0, 1.01325), (1000.0, 0.89876), (3000.0, 0.70121)]
)
def test_air_is_that_of_the_standard_atmosphere(altitude_m: float, bar: float) -> None:
    """ISO 2533 tables."""
    assert co2.ambient_bar(altitude_m) == pytest.approx(bar, rel=3e-4)


@pytest.mark.parametrize("bad", [math.nan, math.inf, -math.inf, -1.0, 1e6])
@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda x: co2.g_per_l_from_volumes(x), "volumes"),
        (lambda x: co2.volumes_from_g_per_l(x), "co2_g_per_l"),
        (lambda x: co2.solubility_mol_per_l_atm(x), "temperature_c"),
        (lambda x: co2.solute_factor(sugar_g_per_l=x), "sugar_g_per_l"),
        (lambda x: co2.solute_factor(ethanol_abv=x), "ethanol_abv"),
        (lambda x: co2.compressibility(x, 20.0), "pressure_bar"),
        (lambda x: co2.fugacity_coefficient(1.0, x), "temperature_c"),
        (lambda x: co2.co2_pressure_bar(co2_g_per_l=x, temperature_c=20.0), "co2_g_per_l"),
        (
            lambda x: co2.volumes_at_gauge(gauge_pressure_bar=x, temperature_c=20.0),
            "gauge_pressure_bar",
        ),
        (lambda x: co2.vapour_bar(x), "temperature_c"),
    ],
)
def test_impossible_values_are_refused(call, field: str, bad: float) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call(bad)
    assert refusal.value.field == field
    assert refusal.value.low is not None


def test_altitude_outside_the_inhabited_is_refused() -> None:
    for altitude_m in (-501.0, 5001.0, math.nan):
        with pytest.raises(ImpossibleInput):
            co2.ambient_bar(altitude_m)
