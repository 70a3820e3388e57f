"""Ethanol and sugar against OIML R 22 and against balanced reactions."""

from __future__ import annotations

import pytest

from culturecore import alcohol, co2
from culturecore.ethanol import (
    ACETIC_PER_ETHANOL,
    SugarKind,
    abv_from_g_per_l,
    abv_from_mass_percent,
    co2_g_per_g,
    density_kg_per_l,
    ethanol_g_per_g,
)
from culturecore.nutrition import Content, caffeine_mg_per_l, facts
from culturecore.outcome import Estimate
from culturecore.stages import TeaKind


def test_density_is_that_of_oiml_r22(table) -> None:
    for row in table("ethanol_density_oiml_r22.csv"):
        for celsius in (15, 20, 25):
            density = 1000.0 * density_kg_per_l(row["mass_percent"], celsius)
            assert density == pytest.approx(row[f"density_{celsius}_c"], abs=0.005)


def test_strength_is_that_of_oiml_r22(table) -> None:
    for row in table("ethanol_density_oiml_r22.csv"):
        assert abv_from_mass_percent(row["mass_percent"]) == pytest.approx(row["abv"], abs=1e-3)


def test_ends_of_the_scale() -> None:
    """Water and pure ethanol at 20 degC: 998.20 and 789.24 kg/m³ (OIML R 22 tables)."""
    assert density_kg_per_l(0.0) == pytest.approx(0.99820, abs=1e-5)
    assert density_kg_per_l(100.0) == pytest.approx(0.78924, abs=1e-5)


def test_gas_and_ethanol_of_a_gram_of_sugar() -> None:
    """C12H22O11 + H2O = 4 C2H5OH + 4 CO2, and half of it for a hexose."""
    assert co2_g_per_g(SugarKind.SUCROSE) == pytest.approx(0.5143, abs=1e-4)
    assert ethanol_g_per_g(SugarKind.SUCROSE) == pytest.approx(0.5383, abs=1e-4)
    assert co2_g_per_g(SugarKind.HEXOSE) == pytest.approx(0.4886, abs=1e-4)
    assert ethanol_g_per_g(SugarKind.HEXOSE) == pytest.approx(0.5114, abs=1e-4)
    assert pytest.approx(1.3035, abs=1e-4) == ACETIC_PER_ETHANOL


@pytest.mark.parametrize(("kind", "water"), [(SugarKind.SUCROSE, 18.0153), (SugarKind.HEXOSE, 0.0)])
def test_no_mass_is_lost_in_fermenting(kind: SugarKind, water: float) -> None:
    sugar = 342.2965 if kind is SugarKind.SUCROSE else 180.1559
    made = (co2_g_per_g(kind) + ethanol_g_per_g(kind)) * sugar
    assert made == pytest.approx(sugar + water, rel=1e-5)


def test_sugar_and_alcohol_of_a_volume_of_gas() -> None:
    """One volume: 3.844 g/L sucrose, 0.262 % vol; half a percent: 7.3 g/L sucrose."""
    sucrose = co2.CO2_G_PER_L_PER_VOLUME / co2_g_per_g(SugarKind.SUCROSE)
    assert sucrose == pytest.approx(3.844, abs=0.001)
    gained = abv_from_g_per_l(sucrose * ethanol_g_per_g(SugarKind.SUCROSE))
    assert gained == pytest.approx(0.262, abs=0.001)
    fermented = 0.5 * 7.8924 / ethanol_g_per_g(SugarKind.SUCROSE)
    assert fermented == pytest.approx(7.33, abs=0.01)


@pytest.mark.parametrize("sugar_percent", [0.5, 3.0, 6.0, 9.0])
@pytest.mark.parametrize("ethanol_percent", [0.0, 0.4, 0.8, 1.6, 4.0])
def test_two_instruments_find_the_ethanol_of_sugar_water(
    sugar_percent: float, ethanol_percent: float
) -> None:
    gravity, brix = alcohol.readings_of(
        sugar_percent=sugar_percent, ethanol_percent=ethanol_percent
    )
    found = alcohol.from_two_readings(alcohol.TwoReadings(specific_gravity=gravity, brix=brix))
    true_abv = abv_from_mass_percent(ethanol_percent)
    assert found.value == pytest.approx(true_abv, rel=0.035, abs=0.05)
    assert found.low <= true_abv <= found.high


def test_energy_of_an_example() -> None:
    """EU 1169/2011 Annex XIV by hand: 7.2 g sugar, 1.2 g acid, 0.947 g ethanol in 240 mL."""
    content = Content(
        sugar_g_per_l=Estimate(30.0, 30.0, 30.0),
        acid_g_per_l=Estimate(5.0, 5.0, 5.0),
        ethanol_abv=Estimate(0.5, 0.5, 0.5),
        caffeine_mg_per_l=Estimate(0.0, 0.0, 0.0),
    )
    found = facts(content, volume_l=0.24)
    assert found.energy_kcal.value == pytest.approx(7.2 * 4 + 1.2 * 3 + 0.947 * 7, abs=0.01)
    assert found.energy_kj.value == pytest.approx(7.2 * 17 + 1.2 * 13 + 0.947 * 29, abs=0.02)


def test_caffeine_of_black_tea_lies_in_measured_cups() -> None:
    """Chin et al. 2008, J. Anal. Toxicol. 32:702: 14-61 mg in brewed cups of 6-8 US fl oz."""
    cup = caffeine_mg_per_l(tea_kind=TeaKind.BLACK, tea_g_per_l=2.0 / 0.2)
    assert 14.0 <= cup.value * 0.2 <= 61.0
    assert cup.value == pytest.approx(10.0 * 32.8 * 0.69)  # Hicks, Hsieh & Bell 1996
