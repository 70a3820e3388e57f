"""Heat in the kitchen: mixing hot and cold, waiting for it to cool, boiling high up.

Mixing takes no account of the vessel and of losses on the way; expect the real
temperature within about 2 degC.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from culturecore.constants import STANDARD_PRESSURE_PA, ZERO_CELSIUS_K
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate
from culturecore.rootfinding import root_of_rising
from culturecore.sugar import LEAST_MASS_G, MAX_MASS_G

LEAST_K_PER_MIN = 1e-12  # two million years to cool
MIXING_DOUBT_C = 2.0  # vessel and losses; assumption, no source

# Above this an open pot loses heat by evaporation, which Newton's law leaves out. On an
# evaporating pot (computed, not measured) readings between 95 and 71 degC foretold two
# thirds of the true time, readings below 58 degC all but 3 % of it.
EVAPORATION_MATTERS_ABOVE_C = 58.0
HOT_READING_STRETCH = 2.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Portion:
    """A mass of water, sugar solution or dry sugar (brix 100) at a temperature."""

    mass_g: float
    temperature_c: float
    brix: float = 0.0


def mix_temperature_c(parts: Iterable[Portion]) -> float:
    """Return the temperature of the parts stirred together, without losses [degC].

    Parameters
    ----------
    parts : iterable of Portion
        Masses not negative, 0 to 100 degC, 0 to 100 °Bx. Dry sugar counts with the heat
        capacity that the solution form gives for it; the small heat of dissolving is left out.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, or without any mass.

    Notes
    -----
    Heat content is kept: sum of m h, with h = (4184 - 2511 w) t + 3.75 w t² J/kg
    (llano_2005), w the mass share of sugar.
    """
    mass_g, sugar_g, heat_j = content(parts)
    return temperature_of(heat_j / mass_g, sugar_g / mass_g)


def content(parts: Iterable[Portion]) -> tuple[float, float, float]:
    """Return mass [g], sugar [g] and heat above 0 degC [J] of all parts together.

    Raises as :func:`mix_temperature_c` does.
    """
    mass_g = sugar_g = heat_j = 0.0
    for part in parts:
        _check("mass_g", part.mass_g, 0.0, MAX_MASS_G, "g")
        _check("temperature_c", part.temperature_c, 0.0, 100.0, "°C")
        _check("brix", part.brix, 0.0, 100.0, "°Bx")
        mass_g += part.mass_g
        sugar_g += part.mass_g * part.brix / 100.0
        heat_j += part.mass_g * heat_content(part.temperature_c, part.brix / 100.0)
    # less than that is no portion, and its heat per gram no number
    if not mass_g >= LEAST_MASS_G:
        raise ImpossibleInput("mass_g", mass_g, low=0.0, unit="g")
    return mass_g, sugar_g, heat_j


def temperature_of(heat_j_per_g: float, sugar_share: float) -> float:
    """Return the temperature at which a gram holds that heat above 0 degC [degC]."""
    linear, square = (4184.0 - 2511.0 * sugar_share) / 1000.0, 3.75e-3 * sugar_share
    # the root that stays finite as the quadratic term goes to nothing
    return 2.0 * heat_j_per_g / (linear + math.sqrt(linear**2 + 4.0 * square * heat_j_per_g))


def hot_mass_for_temperature(
    *,
    total_water_g: float,
    hot_c: float,
    cold_c: float,
    target_c: float,
    sugar_g: float = 0.0,
    sugar_c: float = 20.0,
) -> float:
    """Return how much of the water may be hot for the mix to end at ``target_c`` [g].

    Parameters
    ----------
    total_water_g : float
        Hot and cold water together [g].
    hot_c, cold_c, target_c, sugar_c : float
        Temperatures [degC], 0 to 100; ``hot_c`` above ``cold_c``.
    sugar_g : float
        Dry sugar stirred in [g].

    Returns
    -------
    float
        Between 0 and ``total_water_g``: 0 when even cold water alone ends at or above the
        target, all of it when hot water alone stays below.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    _check("total_water_g", total_water_g, 0.0, MAX_MASS_G, "g")
    _check("cold_c", cold_c, 0.0, 100.0, "°C")
    _check("hot_c", hot_c, 0.0, 100.0, "°C")
    if hot_c <= cold_c:
        raise ImpossibleInput("hot_c", hot_c, low=cold_c, high=100.0, unit="°C")
    _check("target_c", target_c, 0.0, 100.0, "°C")
    _check("sugar_c", sugar_c, 0.0, 100.0, "°C")
    _check("sugar_g", sugar_g, 0.0, MAX_MASS_G, "g")
    total_g = total_water_g + sugar_g
    if total_g == 0.0:
        return 0.0
    wanted_j = total_g * heat_content(target_c, sugar_g / total_g)
    sugar_j = sugar_g * heat_content(sugar_c, 1.0)
    cold_j, hot_j = heat_content(cold_c, 0.0), heat_content(hot_c, 0.0)
    hot_g = (wanted_j - sugar_j - total_water_g * cold_j) / (hot_j - cold_j)
    return min(max(hot_g, 0.0), total_water_g)


def boiling_point_c(altitude_m: float) -> float:
    """Return the temperature at which water boils at an altitude [degC].

    Parameters
    ----------
    altitude_m : float
        Above sea level [m], -500 to 9000; standard weather.

    Raises
    ------
    ImpossibleInput
        Outside that range.

    Notes
    -----
    isa_1975 for the pressure, wagner_pruss_1993 for the vapour pressure.
    """
    _check("altitude_m", altitude_m, -500.0, 9000.0, "m")
    pressure_pa = STANDARD_PRESSURE_PA * (1.0 - 2.25577e-5 * altitude_m) ** 5.25588
    return root_of_rising(
        lambda boiling_c: vapour_pressure_pa(boiling_c) - pressure_pa, 50.0, 120.0, tolerance=1e-9
    )


def vapour_pressure_pa(temperature_c: float) -> float:
    """Return the saturation pressure of water [Pa], 0.01 to 370 degC (wagner_pruss_1993)."""
    _check("temperature_c", temperature_c, 0.01, 370.0, "°C")
    kelvin = temperature_c + ZERO_CELSIUS_K
    tau = 1.0 - kelvin / 647.096
    powers = (
        (-7.85951783, 1.0), (1.84408259, 1.5), (-11.7866497, 3.0),
        (22.6807411, 3.5), (-15.9618719, 4.0), (1.80122502, 7.5),
    )  # fmt: skip
    exponent = sum(coefficient * tau**power for coefficient, power in powers)
    return 22.064e6 * math.exp(647.096 / kelvin * exponent)


def newton_k_per_min(
    *, first_c: float, second_c: float, minutes_between: float, ambient_c: float
) -> float:
    """Return the cooling rate constant from two readings [1/min].

    Raises
    ------
    ImpossibleInput
        When the liquid did not cool towards the room between the readings.
    """
    _check("ambient_c", ambient_c, -20.0, 60.0, "°C")
    _check("first_c", first_c, -20.0, 105.0, "°C")
    if not 0.0 < minutes_between < math.inf:
        raise ImpossibleInput("minutes_between", minutes_between, low=0.0, unit="min")
    if not ambient_c < second_c < first_c:
        raise ImpossibleInput("second_c", second_c, low=ambient_c, high=first_c, unit="°C")
    return math.log((first_c - ambient_c) / (second_c - ambient_c)) / minutes_between


def minutes_until(
    *, now_c: float, target_c: float, ambient_c: float, k_per_min: float, read_at_c: float
) -> Estimate:
    """Return how long the liquid needs to cool to ``target_c`` [min].

    Parameters
    ----------
    now_c, target_c, ambient_c : float
        Temperatures [degC]; the target must lie above the room.
    k_per_min : float
        From :func:`newton_k_per_min`.
    read_at_c : float
        The warmer of the two readings that gave ``k_per_min``. Above 58 degC an open pot
        was cooling by evaporation too and the answer is the earliest time: ``value`` and
        ``low`` are it, and ``high`` is twice as long, with Caveat.EXTRAPOLATED.

    Raises
    ------
    ImpossibleInput
        When the liquid will never be that cold in this room, or for k at or below 0.
    """
    if not LEAST_K_PER_MIN < k_per_min < math.inf:
        raise ImpossibleInput("k_per_min", k_per_min, low=LEAST_K_PER_MIN, unit="1/min")
    _check("ambient_c", ambient_c, -20.0, 60.0, "°C")
    _check("now_c", now_c, -20.0, 105.0, "°C")
    _check("read_at_c", read_at_c, -20.0, 105.0, "°C")
    if not ambient_c < target_c < math.inf:
        raise ImpossibleInput("target_c", target_c, low=ambient_c, unit="°C", reason="never")
    if now_c <= target_c:
        return Estimate(0.0, 0.0, 0.0, sources=("newton_cooling",))
    minutes = math.log((now_c - ambient_c) / (target_c - ambient_c)) / k_per_min
    if read_at_c > EVAPORATION_MATTERS_ABOVE_C:
        return Estimate(
            minutes,
            minutes,
            minutes * HOT_READING_STRETCH,
            caveats=(Caveat.EXTRAPOLATED,),
            sources=("newton_cooling", "evaporating_pot"),
        )
    return Estimate(minutes, minutes * 0.9, minutes * 1.1, sources=("newton_cooling",))


def heat_content(temperature_c: float, sugar_share: float) -> float:
    """Return heat content above 0 degC of sugar solution [J/g] (llano_2005)."""
    per_kg = (4184.0 - 2511.0 * sugar_share) * temperature_c + 3.75 * sugar_share * temperature_c**2
    return per_kg / 1000.0


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
