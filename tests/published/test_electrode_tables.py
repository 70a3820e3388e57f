"""Buffers and the electrode slope against printed tables and equations."""

from __future__ import annotations

import pytest
from chemicals.refractivity import RI_IAPWS

from culturecore import sugar
from culturecore.buffers import Buffer, buffer_ph
from culturecore.phmeter import (
    Z_80,
    CalibrationPoint,
    calibrate,
    compensation,
    correct_reading,
    nernst_mv_per_ph,
)
from culturecore.refraction import AIR_INDEX, index_of_water

# Standard buffers by temperature: a maker's manual MI 611-211 (2005), Table 8, which is another
# table than the core's; and the values at 25 degC of the NBS scale (Bates 1962, from memory).
NIST_ROWS = [
    (0.0, 4.00, 6.98, 9.46),
    (5.0, 4.00, 6.95, 9.40),
    (10.0, 4.00, 6.92, 9.33),
    (25.0, 4.005, 6.865, 9.180),
]


@pytest.mark.parametrize(("temperature_c", "phthalate", "phosphate", "borate"), NIST_ROWS)
def test_standard_buffers_agree_with_another_table(
    temperature_c: float, phthalate: float, phosphate: float, borate: float
) -> None:
    for buffer, ph in (
        (Buffer.PHTHALATE, phthalate),
        (Buffer.PHOSPHATE, phosphate),
        (Buffer.BORATE, borate),
    ):
        found = buffer_ph(buffer, temperature_c)
        assert found.value == pytest.approx(ph, abs=0.0101)
        assert found.low < ph < found.high


@pytest.mark.parametrize("temperature_c", [0.0, 2.5, 7.0, 18.3, 25.0, 33.0, 41.0, 50.0])
def test_phthalate_agrees_with_its_equation(temperature_c: float) -> None:
    """Hetzer, Durst, Robinson & Bates 1977, J. Res. NBS 81A:21 (abstract)."""
    kelvin = temperature_c + 273.15
    ph = 2073.44 / kelvin - 13.3270 + 0.045199 * kelvin - 3.4846e-5 * kelvin**2
    assert buffer_ph(Buffer.PHTHALATE, temperature_c).value == pytest.approx(ph, abs=0.011)


@pytest.mark.parametrize("temperature_c", [0.0, 15.0, 25.0, 38.0, 50.0])
def test_phthalate_agrees_with_the_older_equation(temperature_c: float) -> None:
    """Hamer, Pinching & Acree 1946, J. Res. NBS 36:47: 4.000 + 0.0000479 (t - 15)^2."""
    ph = 4.000 + 0.0000479 * (temperature_c - 15.0) ** 2
    assert buffer_ph(Buffer.PHTHALATE, temperature_c).value == pytest.approx(ph, abs=0.013)


def test_technical_seven_is_not_seven_in_the_cold() -> None:
    """7.04 at 15 degC; and it is another liquid than the 6.86 standard."""
    assert buffer_ph(Buffer.TECHNICAL_7, 15.0).value == pytest.approx(7.04)
    assert buffer_ph(Buffer.PHOSPHATE, 25.0).value == pytest.approx(6.86)


@pytest.mark.parametrize(
    ("temperature_c", "mv_per_ph"),
    [
        (0.0, 54.199), (10.0, 56.183), (20.0, 58.167),
        (25.0, 59.159), (30.0, 60.151), (40.0, 62.136),
    ],
)  # fmt: skip
def test_slope_is_59_16_mv_at_25_degrees(temperature_c: float, mv_per_ph: float) -> None:
    """ln 10 R T / F, as in any electrochemistry text (59.16 mV; from memory)."""
    assert nernst_mv_per_ph(temperature_c) == pytest.approx(mv_per_ph, abs=0.001)


def test_worked_example_of_a_two_point_calibration() -> None:
    """7.00 reads -8 mV, 4.00 reads +164 mV: 57.33 mV/pH or 96.9 %; 214 mV is pH 3.128 +- 0.034.

    By hand: (164 + 8) / 3 = 57.33; 4.00 - (214 - 164) / 57.33 = 3.128; doubts of 0.02 in each
    buffer, 0.5 mV in reading them and 1 mV in the sample add up to 0.034 as squares.
    """
    calibration = calibrate(
        [
            CalibrationPoint(buffer=Buffer.TECHNICAL_7, temperature_c=25.0, reading_mv=-8.0),
            CalibrationPoint(buffer=Buffer.TECHNICAL_4, temperature_c=25.0, reading_mv=164.0),
        ]
    )
    assert calibration.slope_percent == pytest.approx(96.9, abs=0.05)
    assert calibration.offset_mv == pytest.approx(-8.0)
    found = correct_reading(calibration=calibration, reading_mv=214.0, temperature_c=25.0)
    assert found.value == pytest.approx(3.128, abs=0.0005)
    assert (found.high - found.value) / Z_80 == pytest.approx(0.034, abs=0.0005)


@pytest.mark.parametrize(("temperature_c", "error_ph"), [(15.0, 0.13), (35.0, -0.13)])
def test_fixed_slope_is_wrong_by_an_eighth_at_ph_3(temperature_c: float, error_ph: float) -> None:
    """By hand: 4 pH from 7, ten degrees of 298: 4 x 10 / 298 = 0.134."""
    found = compensation(ph=3.0, temperature_c=temperature_c, is_compensated=False)
    assert found.error_without_ph == pytest.approx(error_ph, abs=0.005)


@pytest.mark.parametrize("temperature_c", [1.0, 10.0, 20.0, 30.0, 45.0])
def test_water_refracts_as_iapws_has_it(temperature_c: float) -> None:
    """IAPWS R9-97 as in the package chemicals."""
    density = 1000.0 * sugar.water_density_kg_per_l(temperature_c)
    reference = RI_IAPWS(temperature_c + 273.15, density, 0.5893e-6) / AIR_INDEX
    assert index_of_water(temperature_c) == pytest.approx(reference, abs=2e-7)
