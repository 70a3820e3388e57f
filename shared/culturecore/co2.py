"""Carbon dioxide in a drink: what dissolves at which pressure, in volumes and in grams.

One volume is one litre of the gas, at 0 degC and one atmosphere, in one litre of drink.
Pressures are absolute unless the name says gauge. Above :data:`MODEL_TOP_BAR` the
solubility law no longer holds well, and no number is given.
"""

from __future__ import annotations

import math
from typing import Final

from culturecore.constants import GAS_CONSTANT_J_PER_MOL_K, STANDARD_PRESSURE_PA, ZERO_CELSIUS_K
from culturecore.errors import ImpossibleInput
from culturecore.heat import vapour_pressure_pa
from culturecore.rootfinding import root_of_rising

CO2_G_PER_MOL: Final = 44.0095  # IUPAC standard atomic masses
CO2_MOLAR_VOLUME_L: Final = 22.2605  # srd_106: real gas at 0 degC and one atmosphere
CO2_G_PER_L_PER_VOLUME: Final = CO2_G_PER_MOL / CO2_MOLAR_VOLUME_L  # 1.977

MODEL_TOP_BAR: Final = 8.0  # wroblewski_1882: the law errs by 5 % and more beyond
MAX_TEMPERATURE_C: Final = 40.0  # weiss_1974 was fitted to here

_BAR_PER_ATM = STANDARD_PRESSURE_PA / 1e5
_PA_PER_BAR = 1e5
# weiss_1974: ln K0 [mol/L/atm] = a + b (100/T) + c ln(T/100); partial molar volume of CO2
_SOLUBILITY = (-58.0931, 90.5069, 22.2940)
MOLAR_VOLUME_CM3: Final = 32.3
# weiss_1974: second virial coefficient [cm³/mol] as a polynomial in T
_VIRIAL = (-1636.75, 12.0408, -3.27957e-2, 3.16528e-5)
# ec_2676_90: solubility in wine at 20 degC goes as (0.86 - 0.01 A) (1 - 0.00144 S)
ETHANOL_LOSS_PER_ABV: Final = 0.01 / 0.86
SUGAR_LOSS_PER_G_PER_L: Final = 0.00144
_SEARCH_TOP_BAR = 12.0  # past any pressure that is told, within the virial form


def g_per_l_from_volumes(volumes: float) -> float:
    """Return grams of CO2 in a litre for so many volumes, 0 to 20 (srd_106)."""
    _check("volumes", volumes, 0.0, 20.0, "vol")
    return volumes * CO2_G_PER_L_PER_VOLUME


def volumes_from_g_per_l(co2_g_per_l: float) -> float:
    """Return volumes for so many grams of CO2 in a litre, 0 to 40 (srd_106)."""
    _check("co2_g_per_l", co2_g_per_l, 0.0, 40.0, "g/L")
    return co2_g_per_l / CO2_G_PER_L_PER_VOLUME


def solubility_mol_per_l_atm(temperature_c: float) -> float:
    """Return how much CO2 pure water takes up per atmosphere of fugacity [mol/L/atm].

    Parameters
    ----------
    temperature_c : float
        0 to 40 degC.

    Raises
    ------
    ImpossibleInput
        Outside that range.

    Notes
    -----
    Source: weiss_1974. Within 1 % of Murray & Riley 1971 as compiled in srd_106.
    """
    _check("temperature_c", temperature_c, 0.0, MAX_TEMPERATURE_C, "°C")
    hundreds_k = (temperature_c + ZERO_CELSIUS_K) / 100.0
    a, b, c = _SOLUBILITY
    return math.exp(a + b / hundreds_k + c * math.log(hundreds_k))


def solute_factor(*, sugar_g_per_l: float = 0.0, ethanol_abv: float = 0.0) -> float:
    """Return by which factor sugar and ethanol lower the solubility, 1 for water.

    Parameters
    ----------
    sugar_g_per_l : float
        Sugar in the drink [g/L], 0 to 200.
    ethanol_abv : float
        Ethanol [% vol], 0 to 15.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    Source: ec_2676_90, a rule for wine at 20 degC, used at every temperature here. A second
    rule, usher_1910, has a smaller effect of sugar (4 % for 50 g/L in place of 7 %); the
    larger is kept because less dissolved gas means more pressure.
    """
    _check("sugar_g_per_l", sugar_g_per_l, 0.0, 200.0, "g/L")
    _check("ethanol_abv", ethanol_abv, 0.0, 15.0, "% vol")
    by_sugar = 1.0 - SUGAR_LOSS_PER_G_PER_L * sugar_g_per_l
    return by_sugar * (1.0 - ETHANOL_LOSS_PER_ABV * ethanol_abv)


def compressibility(pressure_bar: float, temperature_c: float) -> float:
    """Return Z of CO2 gas from its second virial coefficient, 0 to 12 bar (weiss_1974)."""
    _check("pressure_bar", pressure_bar, 0.0, _SEARCH_TOP_BAR, "bar")
    return 1.0 + virial_m3_per_mol(temperature_c) * pressure_bar * _PA_PER_BAR / _rt(temperature_c)


def fugacity_coefficient(pressure_bar: float, temperature_c: float) -> float:
    """Return fugacity over pressure of CO2 gas, 0 to 12 bar (weiss_1974)."""
    return math.exp(compressibility(pressure_bar, temperature_c) - 1.0)


def dissolved_g_per_l(
    *,
    co2_pressure_bar: float,
    temperature_c: float,
    sugar_g_per_l: float = 0.0,
    ethanol_abv: float = 0.0,
) -> float:
    """Return the CO2 that a drink holds under a pressure of the gas [g/L].

    Parameters
    ----------
    co2_pressure_bar : float
        Absolute pressure of CO2 alone [bar], 0 to 12.
    temperature_c : float
        0 to 40 degC.
    sugar_g_per_l, ethanol_abv : float
        As in :func:`solute_factor`.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    weiss_1974 with fugacity and the pressure's own effect on the dissolved gas. Error about
    1 % to 4 bar and up to 4 % at 8 bar (wroblewski_1882).
    """
    fugacity_atm = (
        co2_pressure_bar / _BAR_PER_ATM * fugacity_coefficient(co2_pressure_bar, temperature_c)
    )
    above_atm_pa = max(co2_pressure_bar * _PA_PER_BAR - STANDARD_PRESSURE_PA, 0.0)
    squeezed = math.exp(-MOLAR_VOLUME_CM3 * 1e-6 * above_atm_pa / _rt(temperature_c))
    factor = solute_factor(sugar_g_per_l=sugar_g_per_l, ethanol_abv=ethanol_abv)
    in_water = solubility_mol_per_l_atm(temperature_c) * fugacity_atm * squeezed
    return CO2_G_PER_MOL * in_water * factor


def co2_pressure_bar(
    *,
    co2_g_per_l: float,
    temperature_c: float,
    sugar_g_per_l: float = 0.0,
    ethanol_abv: float = 0.0,
) -> float | None:
    """Return the pressure of CO2 over a drink that holds so much of it [bar absolute].

    Returns
    -------
    float or None
        None above 12 bar, which is beyond the law.

    Raises
    ------
    ImpossibleInput
        As :func:`dissolved_g_per_l`, and for more than 200 g/L.
    """
    _check("co2_g_per_l", co2_g_per_l, 0.0, 200.0, "g/L")

    def held(pressure_bar: float) -> float:
        return dissolved_g_per_l(
            co2_pressure_bar=pressure_bar,
            temperature_c=temperature_c,
            sugar_g_per_l=sugar_g_per_l,
            ethanol_abv=ethanol_abv,
        )

    if held(_SEARCH_TOP_BAR) < co2_g_per_l:
        return None
    return root_of_rising(
        lambda bar: held(bar) - co2_g_per_l, 0.0, _SEARCH_TOP_BAR, tolerance=1e-10
    )


def gauge_bar(
    *,
    volumes: float,
    temperature_c: float,
    altitude_m: float = 0.0,
    sugar_g_per_l: float = 0.0,
    ethanol_abv: float = 0.0,
) -> float | None:
    """Return what a gauge shows on a drink with so many volumes, without any air [bar].

    Returns
    -------
    float or None
        Below 0 while the drink would not even fill the room with gas; None over 8 bar.

    Raises
    ------
    ImpossibleInput
        As the functions it is made of.
    """
    pressure_bar = co2_pressure_bar(
        co2_g_per_l=g_per_l_from_volumes(volumes),
        temperature_c=temperature_c,
        sugar_g_per_l=sugar_g_per_l,
        ethanol_abv=ethanol_abv,
    )
    if pressure_bar is None:
        return None
    gauge = pressure_bar + vapour_bar(temperature_c) - ambient_bar(altitude_m)
    return gauge if gauge <= MODEL_TOP_BAR else None


def volumes_at_gauge(
    *,
    gauge_pressure_bar: float,
    temperature_c: float,
    altitude_m: float = 0.0,
    sugar_g_per_l: float = 0.0,
    ethanol_abv: float = 0.0,
) -> float:
    """Return the volumes of CO2 in a drink under a gauge pressure, without any air.

    Parameters
    ----------
    gauge_pressure_bar : float
        0 to 8 bar.

    Raises
    ------
    ImpossibleInput
        Outside that range, and as the functions it is made of.
    """
    _check("gauge_pressure_bar", gauge_pressure_bar, 0.0, MODEL_TOP_BAR, "bar")
    absolute_bar = gauge_pressure_bar + ambient_bar(altitude_m) - vapour_bar(temperature_c)
    return volumes_from_g_per_l(
        dissolved_g_per_l(
            co2_pressure_bar=absolute_bar,
            temperature_c=temperature_c,
            sugar_g_per_l=sugar_g_per_l,
            ethanol_abv=ethanol_abv,
        )
    )


def open_jar_g_per_l(
    *,
    temperature_c: float,
    altitude_m: float = 0.0,
    sugar_g_per_l: float = 0.0,
    ethanol_abv: float = 0.0,
) -> float:
    """Return the most CO2 that an open jar holds: saturated under its own gas [g/L].

    An upper bound; a jar whose yeasts have calmed down may hold much less. The temperature
    is the warmest since gas was last made: cooling afterwards adds nothing.

    Raises
    ------
    ImpossibleInput
        As the functions it is made of.
    """
    return dissolved_g_per_l(
        co2_pressure_bar=ambient_bar(altitude_m) - vapour_bar(temperature_c),
        temperature_c=temperature_c,
        sugar_g_per_l=sugar_g_per_l,
        ethanol_abv=ethanol_abv,
    )


def ambient_bar(altitude_m: float) -> float:
    """Return the pressure of the air at an altitude [bar], -500 to 5000 m (isa_1975)."""
    _check("altitude_m", altitude_m, -500.0, 5000.0, "m")
    return float(_BAR_PER_ATM * (1.0 - 2.25577e-5 * altitude_m) ** 5.25588)


def vapour_bar(temperature_c: float) -> float:
    """Return the pressure of water vapour over the drink [bar], 0 to 40 degC."""
    _check("temperature_c", temperature_c, 0.0, MAX_TEMPERATURE_C, "°C")
    return vapour_pressure_pa(max(temperature_c, 0.01)) / _PA_PER_BAR


def virial_m3_per_mol(temperature_c: float) -> float:
    """Return the second virial coefficient of CO2 [m³/mol], 0 to 40 degC (weiss_1974)."""
    _check("temperature_c", temperature_c, 0.0, MAX_TEMPERATURE_C, "°C")
    kelvin = temperature_c + ZERO_CELSIUS_K
    return 1e-6 * sum(c * kelvin**power for power, c in enumerate(_VIRIAL))


def _rt(temperature_c: float) -> float:
    return GAS_CONSTANT_J_PER_MOL_K * (temperature_c + ZERO_CELSIUS_K)


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
