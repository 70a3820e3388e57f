"""Sugar solutions: density, Brix, grams per litre and specific gravity.

Everything here is for sucrose in water. Once the culture is at work, a Brix or gravity
reading no longer gives the sugar (acids, ethanol and inverted sugar count in), so the
conversions then give an apparent value.
"""

from __future__ import annotations

from collections.abc import Callable

from culturecore.errors import ImpossibleInput
from culturecore.rootfinding import root_of_rising

MAX_BRIX = 85.0
MAX_TEMPERATURE_C = 80.0
MAX_MASS_G = 1e9  # a thousand tonnes, beyond any kitchen
LEAST_MASS_G = 1e-6

# emmerich_icumsa: rho(w, t) = rho_water(t) + sum_j tau^j sum_k c[j][k] w^(k+1), tau = (t-20)/100
_SUCROSE = (
    (385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890),
    (-46.2720, -7.1720, 1.1597, 5.1126, 17.5254),
    (59.7712, 7.2491, 12.3630, -35.4791),
    (-47.2207, -21.6977, 27.6301),
    (18.3184, 12.3081),
)
# kell_water_density, kg/m³ with t in degC
_WATER = (999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12)
_WATER_DIVISOR = 16.887236e-3


def water_density_kg_per_l(temperature_c: float) -> float:
    """Return the density of water at one atmosphere [kg/L], 0 to 100 degC.

    Sources: kell_water_density; within 0.006 kg/m³ of IAPWS-95.
    """
    _check("temperature_c", temperature_c, 0.0, 100.0, "°C")
    return density_of_water(temperature_c)


def density_of_water(temperature_c: float) -> float:
    """Return the same, unchecked; an array of degC gives an array (kell_water_density)."""
    top = _WATER[-1]
    for coefficient in _WATER[-2::-1]:
        top = top * temperature_c + coefficient
    return top / (1.0 + _WATER_DIVISOR * temperature_c) / 1000.0


def density_kg_per_l(brix: float, temperature_c: float = 20.0) -> float:
    """Return the density of a sucrose solution [kg/L].

    Parameters
    ----------
    brix : float
        Grams of sucrose in 100 g of solution, 0 to 85.
    temperature_c : float
        0 to 80 degC.

    Raises
    ------
    ImpossibleInput
        Outside those ranges.

    Notes
    -----
    Source: emmerich_icumsa. Agrees with the table of NBS Circular C440 to its last digit
    at 20 degC.
    """
    _check("brix", brix, 0.0, MAX_BRIX, "°Bx")
    _check("temperature_c", temperature_c, 0.0, MAX_TEMPERATURE_C, "°C")
    share = brix / 100.0
    tau = (temperature_c - 20.0) / 100.0
    excess = sum(
        tau**j * sum(c * share ** (k + 1) for k, c in enumerate(row))
        for j, row in enumerate(_SUCROSE)
    )
    return water_density_kg_per_l(temperature_c) + excess / 1000.0


def g_per_l_from_brix(brix: float) -> float:
    """Return grams of sucrose per litre of solution at 20 degC. Raises as the density does."""
    return brix * 10.0 * density_kg_per_l(brix)


def brix_from_g_per_l(sugar_g_per_l: float) -> float:
    """Return degrees Brix of a solution with that much sucrose per litre at 20 degC.

    Raises
    ------
    ImpossibleInput
        Below 0 or above the content of an 85 °Bx solution (about 1227 g/L).
    """
    _check("sugar_g_per_l", sugar_g_per_l, 0.0, g_per_l_from_brix(MAX_BRIX), "g/L")
    return _invert(g_per_l_from_brix, sugar_g_per_l)


def sg_from_brix(brix: float) -> float:
    """Return specific gravity 20/20 of a sucrose solution. Raises as the density does."""
    return density_kg_per_l(brix) / water_density_kg_per_l(20.0)


def brix_from_sg(specific_gravity: float) -> float:
    """Return degrees Brix of a sucrose solution of that specific gravity 20/20.

    Raises
    ------
    ImpossibleInput
        Below 1 or above the gravity of an 85 °Bx solution (about 1.446).
    """
    _check("specific_gravity", specific_gravity, 1.0, sg_from_brix(MAX_BRIX), "SG")
    return _invert(sg_from_brix, specific_gravity)


def volume_of_solution_l(water_g: float, sugar_g: float, temperature_c: float = 20.0) -> float:
    """Return the volume [L] of sucrose dissolved in water.

    Parameters
    ----------
    water_g, sugar_g : float
        Masses [g], 0 to 1e9, not both zero.
    temperature_c : float
        0 to 80 degC.

    Raises
    ------
    ImpossibleInput
        For negative masses, for none at all, and above 85 °Bx.
    """
    _check("water_g", water_g, 0.0, MAX_MASS_G, "g")
    _check("sugar_g", sugar_g, 0.0, MAX_MASS_G, "g")
    total_g = water_g + sugar_g
    if total_g < LEAST_MASS_G:
        raise ImpossibleInput("water_g", water_g, low=0.0, unit="g")
    return total_g / 1000.0 / density_kg_per_l(100.0 * sugar_g / total_g, temperature_c)


def _invert(rising: Callable[[float], float], wanted: float) -> float:
    """Find the Brix at which a rising function takes the wanted value."""
    return root_of_rising(lambda brix: rising(brix) - wanted, 0.0, MAX_BRIX, tolerance=1e-11)


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
