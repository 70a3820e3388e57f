"""Refractive index of sucrose solutions by Brix and temperature."""

from __future__ import annotations

import math
from typing import Final

from culturecore import sugar
from culturecore.constants import ZERO_CELSIUS_K
from culturecore.errors import ImpossibleInput
from culturecore.rootfinding import root_of_rising

MAX_BRIX: Final = 30.0
LOWEST_C, HIGHEST_C = 0.0, 50.0
# Air at room temperature: tables of refractive index are relative to it (from memory).
AIR_INDEX: Final = 1.00027
SODIUM_LINE_UM: Final = 0.5893

# icumsa_1974, cubic fitted to its whole Brix from 0 to 30: within 5e-6
_ICUMSA = (1.332986, 1.42829e-3, 5.3586e-6, 1.824e-8)
# iapws_r9_97
_IAPWS = (
    0.244257733, 9.74634476e-3, -3.73234996e-3, 2.68678472e-4,
    1.58920570e-3, 2.45934259e-3, 0.900704920, -1.66626219e-2,
)  # fmt: skip
_ULTRAVIOLET, _INFRARED = 0.2292020, 5.432937


def index_from_brix(brix: float) -> float:
    """Return the refractive index (sodium line, 20 degC) of a sucrose solution, 0 to 30 °Bx.

    Source: icumsa_1974.

    Raises
    ------
    ImpossibleInput
        Outside that range.
    """
    _check("brix", brix, 0.0, MAX_BRIX, "°Bx")
    return _index_at_20(brix)


def brix_from_index(index: float) -> float:
    """Return degrees Brix of a sucrose solution of that refractive index at 20 degC.

    Raises
    ------
    ImpossibleInput
        Outside the indices of 0 to 30 °Bx (1.33299 to 1.38115).
    """
    # half a last digit below water is water
    lowest, highest = _index_at_20(0.0) - 6e-6, _index_at_20(MAX_BRIX) + 6e-6
    _check("index", index, lowest, highest, "")
    return root_of_rising(lambda brix: _index_at_20(brix) - index, 0.0, MAX_BRIX, tolerance=1e-10)


def index_of_water(temperature_c: float) -> float:
    """Return the refractive index of water relative to air (sodium line), 0 to 50 degC.

    Source: iapws_r9_97, with the density of water at one atmosphere.

    Raises
    ------
    ImpossibleInput
        Outside that range.
    """
    _check("temperature_c", temperature_c, LOWEST_C, HIGHEST_C, "°C")
    density = sugar.water_density_kg_per_l(temperature_c)
    return _index(_refraction_of_water(temperature_c) * density) / AIR_INDEX


def index_at(brix: float, temperature_c: float) -> float:
    """Return the refractive index of a sucrose solution at any room temperature.

    Parameters
    ----------
    brix : float
        0 to 30 °Bx.
    temperature_c : float
        0 to 50 degC.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    lorentz_lorenz: refraction per gram, of the sucrose as at 20 degC (icumsa_1974), of the
    water by iapws_r9_97, times the density of the solution. Against the corrections of
    OIV-MA-AS2-02 this is within 0.055 °Bx from 5 to 20 degC, mostly 0.02.
    """
    _check("brix", brix, 0.0, MAX_BRIX, "°Bx")
    _check("temperature_c", temperature_c, LOWEST_C, HIGHEST_C, "°C")
    at_20 = _lorentz_lorenz(_index_at_20(brix) * AIR_INDEX) / sugar.density_kg_per_l(brix)
    of_water = _refraction_of_water(temperature_c) - _refraction_of_water(20.0)
    refraction = at_20 + (1.0 - brix / 100.0) * of_water
    return _index(refraction * sugar.density_kg_per_l(brix, temperature_c)) / AIR_INDEX


def _index_at_20(brix: float) -> float:
    c0, c1, c2, c3 = _ICUMSA
    return c0 + brix * (c1 + brix * (c2 + brix * c3))


def _refraction_of_water(temperature_c: float) -> float:
    """Return the Lorentz-Lorenz refraction of water per density [L/kg]."""
    density = sugar.water_density_kg_per_l(temperature_c)
    heat = (temperature_c + ZERO_CELSIUS_K) / ZERO_CELSIUS_K
    wave = (SODIUM_LINE_UM / 0.589) ** 2
    a = _IAPWS
    return (
        a[0] + a[1] * density + a[2] * heat + a[3] * wave * heat + a[4] / wave
        + a[5] / (wave - _ULTRAVIOLET**2) + a[6] / (wave - _INFRARED**2) + a[7] * density**2
    )  # fmt: skip


def _lorentz_lorenz(index: float) -> float:
    return (index**2 - 1.0) / (index**2 + 2.0)


def _index(refraction: float) -> float:
    return math.sqrt((1.0 + 2.0 * refraction) / (1.0 - refraction))


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
