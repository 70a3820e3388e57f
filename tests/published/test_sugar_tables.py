"""Sucrose density and its conversions against printed tables and another model."""

from __future__ import annotations

import pytest
from chemicals.iapws import iapws95_rho

from culturecore.heat import Portion, mix_temperature_c
from culturecore.sugar import (
    brix_from_sg,
    density_kg_per_l,
    sg_from_brix,
    water_density_kg_per_l,
)

AIR_KG_PER_L = 0.0012
WEIGHTS_KG_PER_L = 8.4  # brass
LB_PER_GAL_PER_KG_PER_L = 3.785411784 / 0.45359237


def test_gravity_agrees_with_the_usda_table(table) -> None:
    for row in table("sucrose_sg_usda.csv"):
        assert sg_from_brix(row["brix"]) == pytest.approx(row["sg20_20_apparent"], abs=6e-5)


def test_brix_of_a_printed_gravity_is_the_printed_brix(table) -> None:
    for row in table("sucrose_sg_usda.csv"):
        assert brix_from_sg(row["sg20_20_apparent"]) == pytest.approx(row["brix"], abs=0.016)


def test_weight_of_a_gallon_agrees_with_nbs_circular_440(table) -> None:
    for row in table("sucrose_weight_nbs440.csv"):
        density = density_kg_per_l(row["brix"], 20.0)
        in_air = (density - AIR_KG_PER_L) / (1.0 - AIR_KG_PER_L / WEIGHTS_KG_PER_L)
        pounds = in_air * LB_PER_GAL_PER_KG_PER_L
        assert pounds == pytest.approx(row["lb_per_gal_in_air"], abs=0.001)


def test_relative_density_agrees_with_the_beet_sugar_handbook(table) -> None:
    for row in table("sucrose_density_asadi2006.csv"):
        printed = row["relative_density_x1000"]
        assert sg_from_brix(row["brix"]) * 1000.0 == pytest.approx(printed, abs=0.06)


def test_density_agrees_with_another_model(table) -> None:
    """Laliberte 2009: 0.10 kg/m3 to 10 % and 25 degC, 0.45 to 20 % and 80 degC."""
    for row in table("sucrose_density_laliberte.csv"):
        if row["sugar_share"] > 0.2:
            continue
        near = row["sugar_share"] <= 0.1 and row["t_c"] <= 25.0
        density = 1000.0 * density_kg_per_l(100.0 * row["sugar_share"], row["t_c"])
        assert density == pytest.approx(row["density_kg_per_m3"], abs=0.13 if near else 0.45)


@pytest.mark.parametrize("temperature_c", [0.5, 4.0, 10.0, 20.0, 30.0, 50.0, 80.0, 99.0])
def test_water_density_agrees_with_iapws_95(temperature_c: float) -> None:
    """IAPWS-95 as in the package chemicals."""
    reference = iapws95_rho(temperature_c + 273.15, 101325.0)
    assert 1000.0 * water_density_kg_per_l(temperature_c) == pytest.approx(reference, abs=0.01)


def test_heat_capacity_agrees_with_another_model(table) -> None:
    """CoolProp water with ASHRAE carbohydrate: within 2 % to 20 % sugar.

    The heat capacity shows in the temperature that a kilogram of solution gives a
    kilogram of water 10 degC colder.
    """
    for row in table("sucrose_density_laliberte.csv"):
        if row["sugar_share"] > 0.2 or row["t_c"] > 60.0:
            continue
        brix, warm_c, cold_c = 100.0 * row["sugar_share"], row["t_c"] + 5.0, row["t_c"] - 5.0
        mixed_c = mix_temperature_c(
            (
                Portion(mass_g=1000.0, temperature_c=warm_c, brix=brix),
                Portion(mass_g=1000.0, temperature_c=cold_c),
            )
        )
        solution, water = row["heat_capacity_j_per_kg_k"], 4184.0
        expected_c = (solution * warm_c + water * cold_c) / (solution + water)
        assert mixed_c == pytest.approx(expected_c, abs=0.1)
