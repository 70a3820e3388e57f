"""Boiling points and mixing temperatures against general reference works."""

from __future__ import annotations

import pytest
from chemicals.iapws import iapws95_Psat, iapws95_Tsat

from culturecore.heat import Portion, boiling_point_c, mix_temperature_c, vapour_pressure_pa
from culturecore.icemix import mix_with_ice


@pytest.mark.parametrize("temperature_c", [1.0, 20.0, 60.0, 90.0, 100.0, 110.0])
def test_vapour_pressure_agrees_with_iapws_95(temperature_c: float) -> None:
    reference = iapws95_Psat(temperature_c + 273.15)
    assert vapour_pressure_pa(temperature_c) == pytest.approx(reference, rel=5e-4)


@pytest.mark.parametrize(
    ("altitude_m", "pressure_pa"),
    [(0.0, 101325.0), (500.0, 95461.0), (1000.0, 89876.0), (2000.0, 79501.0), (3000.0, 70121.0)],
)
def test_boiling_point_agrees_with_standard_atmosphere(
    altitude_m: float, pressure_pa: float
) -> None:
    """Pressures: ISO 2533 / U.S. Standard Atmosphere 1976 tables; boiling: IAPWS-95."""
    reference_c = iapws95_Tsat(pressure_pa) - 273.15
    assert boiling_point_c(altitude_m) == pytest.approx(reference_c, abs=0.02)


def test_hot_and_cold_water_mix_as_steam_tables_have_it() -> None:
    """1 kg of 95 degC and 3 kg of 10 degC: 31.3 degC from CoolProp's enthalpies of water."""
    parts = (
        Portion(mass_g=1000.0, temperature_c=95.0),
        Portion(mass_g=3000.0, temperature_c=10.0),
    )
    assert mix_temperature_c(parts) == pytest.approx(31.3, abs=0.06)


def test_water_and_ice_mix_as_coolprop_has_it(table) -> None:
    """Within 0.2 degC and half a percent of the ice: water's heat capacity is not even.

    From 0 to 100 degC it varies by 1 %, which the linear sugar-industry form leaves out.
    """
    rows = table("water_and_ice_coolprop.csv")
    assert len(rows) == 28
    for row in rows:
        parts = [
            Portion(mass_g=row["hot_g"], temperature_c=row["hot_c"]),
            Portion(mass_g=row["cold_g"], temperature_c=row["cold_c"]),
        ]
        mixed = mix_with_ice(parts, ice_g=row["ice_g"])
        assert mixed.temperature_c.value == pytest.approx(row["mixed_c"], abs=0.2)
        assert mixed.ice_left_g == pytest.approx(
            row["ice_left_g"], abs=0.005 * (row["ice_g"] - row["ice_left_g"]) + 0.1
        )
