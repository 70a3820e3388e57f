"""The pressures of the bottles' course, against tables that others computed and measured."""

from __future__ import annotations

import numpy as np
import pytest

from culturecore import bottlearrays as arrays
from culturecore import co2
from culturecore.bottle import Filling
from culturecore.bottlecourse import course_of
from culturecore.bottled import Bottled
from culturecore.ethanol import SugarKind, co2_g_per_g

ATM_BAR = 1.01325


def _filling(row: dict[str, float]) -> Filling:
    return Filling(brim_volume_l=row["brim_l"], headspace_share=row["headspace_share"])


def test_many_bottles_at_once_agree_with_phreeqc(table) -> None:
    """PHREEQC (phreeqc.dat, Peng-Robinson), air free to dissolve: the settled pressure."""
    rows = [row for row in table("bottle_pressure_phreeqc.csv") if row["pressure_abs_bar"] < 8.0]
    assert len(rows) > 140
    for row in rows:
        made = row["sugar_fermented_g_per_l"] * co2_g_per_g(SugarKind.SUCROSE)
        closed = arrays.closed_at(_filling(row), row["t_c"])
        gas = np.array([row["co2_g_per_l"] + made])
        settled = arrays.settled_bar(closed, arrays.co2_bar(closed, gas, np.ones(1)))
        assert settled[0] + ATM_BAR == pytest.approx(row["pressure_abs_bar"], abs=0.05)


def test_the_band_of_a_drink_that_has_fermented_out_holds_what_phreeqc_computes(table) -> None:
    """Same table, bottles whose gas at filling is what an open jar may hold, 15 to 30 degC."""
    used = 0
    for row in table("bottle_pressure_phreeqc.csv"):
        temperature_c = row["t_c"]
        if not 15.0 <= temperature_c <= 30.0 or row["pressure_abs_bar"] > 7.0:
            continue
        most = co2.open_jar_g_per_l(temperature_c=20.0)
        if not 0.4 * most <= row["co2_g_per_l"] <= 0.95 * most:
            continue
        sugar = row["sugar_fermented_g_per_l"]
        course = course_of(
            Bottled(
                filling=_filling(row),
                ceiling_bar=3.7,
                sugar_low_g_per_l=sugar,
                sugar_high_g_per_l=sugar,
                open_jar_c=20.0,
                place_temperature_c=temperature_c,
                warmest_c=temperature_c,
            ),
            horizon_days=400.0,
        )
        end = course.gauge_bar.at(400.0)
        assert end.low <= row["pressure_abs_bar"] - ATM_BAR <= end.high, row
        used += 1
    assert used >= 5


def test_what_dissolves_at_one_atmosphere_is_as_it_was_measured(table) -> None:
    """Murray & Riley 1971 as compiled in SRD 106: Bunsen coefficients of CO2 in water."""
    for row in table("co2_bunsen_srd106.csv"):
        if row["t_c"] > co2.MAX_TEMPERATURE_C:
            continue
        closed = arrays.closed_at(Filling(brim_volume_l=1.0, headspace_share=0.05), row["t_c"])
        grams = arrays.dissolved_g_per_l(closed, np.float64(ATM_BAR), np.ones(1))[0]
        volumes = grams / co2.CO2_G_PER_L_PER_VOLUME
        assert volumes == pytest.approx(row["bunsen"], rel=0.015)


def test_the_gas_above_the_drink_is_as_dense_as_coolprop_has_it(table) -> None:
    """CoolProp 8.0.0 (Span & Wagner 1996): compressibility of pure CO2, to 8 bar."""
    for row in table("co2_gas_coolprop.csv"):
        if row["pressure_bar"] > co2.MODEL_TOP_BAR or row["t_c"] > co2.MAX_TEMPERATURE_C:
            continue
        closed = arrays.closed_at(Filling(brim_volume_l=1.0, headspace_share=0.2), row["t_c"])
        pressure = np.float64(row["pressure_bar"])
        held = arrays.held_g(closed, pressure, np.ones(1))[0]
        dissolved = arrays.dissolved_g_per_l(closed, pressure, np.ones(1))[0] * closed.drink_l
        in_gas = (held - dissolved) / closed.gas_l
        ideal = 44.0095 * 1e-3 * row["pressure_bar"] * 1e5 / (8.314462618 * (row["t_c"] + 273.15))
        assert ideal / in_gas == pytest.approx(row["z"], abs=0.005)
