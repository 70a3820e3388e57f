"""Carbon dioxide against measured solubilities and general reference libraries."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore import co2
from culturecore.bottle import Filling, pressure
from culturecore.ethanol import SugarKind, co2_g_per_g
from culturecore.sugar import water_density_kg_per_l

ATM_BAR = 1.01325


def test_solubility_agrees_with_murray_and_riley(table) -> None:
    """Bunsen coefficients of IUPAC-NIST SRD 106 within 1 %."""
    for row in table("co2_bunsen_srd106.csv"):
        grams = co2.dissolved_g_per_l(co2_pressure_bar=ATM_BAR, temperature_c=row["t_c"])
        assert co2.volumes_from_g_per_l(grams) == pytest.approx(row["bunsen"], rel=0.01)


def test_solubility_is_that_of_weiss_in_another_program(table) -> None:
    for row in table("co2_solubility_models.csv"):
        per_kg = co2.solubility_mol_per_l_atm(row["t_c"]) / water_density_kg_per_l(row["t_c"])
        assert per_kg == pytest.approx(row["pyco2sys_mol_per_kg_atm"], rel=1e-3)


def test_solubility_is_near_that_of_phreeqc(table) -> None:
    """Another equilibrium constant and another equation of state: within 1.5 %."""
    for row in table("co2_solubility_models.csv"):
        if row["t_c"] > 35.0:
            continue
        grams = co2.dissolved_g_per_l(co2_pressure_bar=ATM_BAR, temperature_c=row["t_c"])
        per_kg = grams / co2.CO2_G_PER_MOL / water_density_kg_per_l(row["t_c"])
        assert per_kg == pytest.approx(row["phreeqc_mol_per_kg"], rel=0.015)


def test_gas_is_that_of_coolprop(table) -> None:
    for row in table("co2_gas_coolprop.csv"):
        z = co2.compressibility(row["pressure_bar"], row["t_c"])
        phi = co2.fugacity_coefficient(row["pressure_bar"], row["t_c"])
        assert z == pytest.approx(row["z"], abs=0.004)
        assert phi == pytest.approx(row["phi"], abs=0.002)


def test_volume_of_gas_is_that_of_coolprop() -> None:
    """CoolProp 8.0.0: 1.97681 kg/m³ of CO2 at 0 degC and 101325 Pa."""
    assert co2.g_per_l_from_volumes(1.0) == pytest.approx(1.97681, rel=2e-4)


def test_closed_bottle_agrees_with_phreeqc(table) -> None:
    rows = [row for row in table("bottle_pressure_phreeqc.csv") if row["pressure_abs_bar"] < 8.0]
    assert len(rows) > 140
    for row in rows:
        found = _pressure_of(row)
        assert found.air_dissolved_bar is not None
        absolute_bar = found.air_dissolved_bar + ATM_BAR
        assert absolute_bar == pytest.approx(row["pressure_abs_bar"], abs=0.05)


def test_trapped_air_bounds_every_bottle_from_above(table) -> None:
    for row in table("bottle_pressure_phreeqc.csv"):
        found = _pressure_of(row)
        if found.air_trapped_bar is None:
            assert row["pressure_abs_bar"] > 8.0
        else:
            assert found.air_trapped_bar + ATM_BAR >= row["pressure_abs_bar"] - 1e-9


def _pressure_of(row: dict[str, float]):
    made = row["sugar_fermented_g_per_l"] * co2_g_per_g(SugarKind.SUCROSE)
    filling = Filling(brim_volume_l=row["brim_l"], headspace_share=row["headspace_share"])
    return pressure(filling, co2_g_per_l=row["co2_g_per_l"] + made, temperature_c=row["t_c"])


@pytest.mark.parametrize(
    ("temperature_c", "abv", "sugar_g_per_l", "g_per_l_bar"),
    [(6.0, 5.0, 20.0, 2.4), (10.0, 12.5, 5.0, 2.1)],
)
def test_solubility_in_beer_and_champagne(
    temperature_c: float, abv: float, sugar_g_per_l: float, g_per_l_bar: float
) -> None:
    """Henry's constants of a lager and of champagne, ACS Omega 2021, PMC8047704, table 1.

    Strength and sugar are those usual for the drinks; the table does not give them.
    """
    grams = co2.dissolved_g_per_l(
        co2_pressure_bar=1.0,
        temperature_c=temperature_c,
        sugar_g_per_l=sugar_g_per_l,
        ethanol_abv=abv,
    )
    assert grams == pytest.approx(g_per_l_bar, rel=0.07)


def test_wine_rule_of_the_european_communities_at_20_c() -> None:
    """Regulation (EEC) 2676/90: 1.951 p (0.86 - 0.01 A) (1 - 0.00144 S) g/L, p in bar."""
    for abv, sugar in ((0.0, 0.0), (1.0, 50.0), (10.0, 20.0)):
        rule = 1.951 * 2.0 * (0.86 - 0.01 * abv) * (1.0 - 0.00144 * sugar)
        grams = co2.dissolved_g_per_l(
            co2_pressure_bar=2.0, temperature_c=20.0, sugar_g_per_l=sugar, ethanol_abv=abv
        )
        assert grams == pytest.approx(rule, rel=0.015)


@pytest.mark.parametrize(("celsius", "psig"), [(4.44, 17.0), (21.1, 36.0)])
def test_three_volumes_as_a_trade_table_has_it(celsius: float, psig: float) -> None:
    """3.0 volumes: about 17 psig at 40 degF, 36 at 70 degF (trade statement, whole psi)."""
    gauge = co2.gauge_bar(volumes=3.0, temperature_c=celsius)
    assert gauge is not None
    assert gauge * 14.5038 == pytest.approx(psig, rel=0.1)


@given(st.floats(0.05, 5.0), st.floats(0.0, 40.0), st.floats(0.0, 3000.0))
def test_volumes_come_back_from_their_pressure(
    volumes: float, temperature_c: float, altitude_m: float
) -> None:
    gauge = co2.gauge_bar(volumes=volumes, temperature_c=temperature_c, altitude_m=altitude_m)
    if gauge is None or gauge < 0.0:
        return
    back = co2.volumes_at_gauge(
        gauge_pressure_bar=gauge, temperature_c=temperature_c, altitude_m=altitude_m
    )
    assert back == pytest.approx(volumes, rel=1e-6)
