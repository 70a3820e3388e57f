"""Ionisation constants and activity parameters of :mod:`culturecore.acidbase` by temperature."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Final, Protocol

from culturecore.constants import GAS_CONSTANT_J_PER_MOL_K, LN_10, ZERO_CELSIUS_K
from culturecore.errors import ImpossibleInput
from culturecore.sugar import density_of_water

ACIDS: Final = (
    "acetic", "gluconic", "lactic", "malic", "citric", "carbonic", "tea_acid", "tea_phenol",
)  # fmt: skip

# (pK at 25 degC, dH in kJ/mol, dCp in J/mol/K) of each step; goldberg_2002 form.
# acetic, citric: nist46_minteq (dCp from memory); gluconic: middle of zubiaur_1998;
# lactic: Martin & Tartar as quoted in the ECHA dossier; malic: from memory;
# the tea pseudo-acids: tea_buffer_assumption.
_STEPS: Final[dict[str, tuple[tuple[float, float, float], ...]]] = {
    "acetic": ((4.756, -0.41, -142.0),),
    "gluconic": ((3.70, 0.0, 0.0),),
    "lactic": ((3.86, -0.33, 0.0),),
    "malic": ((3.459, 2.9, 0.0), (5.097, -1.2, 0.0)),
    "citric": ((3.128, 4.07, -131.0), (4.761, 2.23, -178.0), (6.396, -3.38, -254.0)),
    "tea_acid": ((4.5, 0.0, 0.0),),
    "tea_phenol": ((8.5, 0.0, 0.0),),
}
_WATER_STEP: Final = (13.995, 55.81, -224.6)


class Maths(Protocol):
    """The module ``math``, or ``numpy``."""

    def log(self, number: float, /) -> float:
        """Natural logarithm."""

    def log10(self, number: float, /) -> float:
        """Common logarithm."""

    def exp(self, number: float, /) -> float:
        """Power of e."""

    def sqrt(self, number: float, /) -> float:
        """Square root."""


@dataclass(frozen=True, slots=True)
class AcidConstants:
    """Everything that depends on temperature only."""

    log_betas: tuple[tuple[float, ...], ...]  # per acid: minus the sum of its pK so far
    pk_water: float
    davies_a: float


@lru_cache(maxsize=256)
def constants_at(temperature_c: float) -> AcidConstants:
    """Return the constants at a temperature.

    Raises
    ------
    ImpossibleInput
        Outside 0 to 60 degC.
    """
    if not 0.0 <= temperature_c <= 60.0:  # NaN fails too
        raise ImpossibleInput("temperature_c", temperature_c, low=0.0, high=60.0, unit="°C")
    return AcidConstants(*constants_with(math, temperature_c))


def constants_with(
    maths: Maths, temperature_c: float
) -> tuple[tuple[tuple[float, ...], ...], float, float]:
    """Return the fields of :class:`AcidConstants`, unchecked.

    ``maths`` is the module whose log, exp and sqrt are used: ``math`` for one temperature
    [degC], ``numpy`` for an array of them, which then stands where floats are named.
    """
    kelvin = temperature_c + ZERO_CELSIUS_K
    log_betas = []
    for acid in ACIDS:
        steps = (
            _carbonic_pks(kelvin, maths)
            if acid == "carbonic"
            else tuple(_pk_at(kelvin, *step, maths) for step in _STEPS[acid])
        )
        log_betas.append(tuple(-sum(steps[: z + 1]) for z in range(len(steps))))
    return (
        tuple(log_betas),
        _pk_at(kelvin, *_WATER_STEP, maths),
        _davies_a(temperature_c, maths),
    )


def _pk_at(
    kelvin: float, pk_25: float, enthalpy_kj: float, heat_capacity_j: float, maths: Maths
) -> float:
    """Return a pK at a temperature (goldberg_2002, eqs. 1-4)."""
    base = 25.0 + ZERO_CELSIUS_K
    change = enthalpy_kj * 1000.0 * (1.0 / base - 1.0 / kelvin) + heat_capacity_j * (
        base / kelvin - 1.0 + maths.log(kelvin / base)
    )
    return pk_25 - change / GAS_CONSTANT_J_PER_MOL_K / LN_10


def _carbonic_pks(kelvin: float, maths: Maths) -> tuple[float, float]:
    """Return both pK of carbonic acid (plummer_busenberg_1982)."""
    log_k = maths.log10(kelvin)
    first = (
        -356.3094
        - 0.06091964 * kelvin
        + 21834.37 / kelvin
        + 126.8339 * log_k
        - 1684915.0 / kelvin**2
    )
    second = (
        -107.8871 - 0.03252849 * kelvin + 5151.79 / kelvin + 38.92561 * log_k - 563713.9 / kelvin**2
    )
    return -first, -second


def _davies_a(temperature_c: float, maths: Maths) -> float:
    """Return the Debye-Hückel A [(kg/mol)^0.5] from density and permittivity of water."""
    kelvin = temperature_c + ZERO_CELSIUS_K
    permittivity = _permittivity_of_water(kelvin, maths)
    density = density_of_water(temperature_c)
    product = permittivity * kelvin
    return 1.824829e6 * maths.sqrt(density) / (product * maths.sqrt(product))


def _permittivity_of_water(kelvin: float, maths: Maths, pressure_bar: float = 1.01325) -> float:
    """Return the relative permittivity of water (bradley_pitzer_1979)."""
    at_1000_bar = 342.79 * maths.exp(-5.0866e-3 * kelvin + 9.4690e-7 * kelvin**2)
    c = -2.0525 + 3115.9 / (-182.89 + kelvin)
    b = -8032.5 + 4.2142e6 / kelvin + 2.1417 * kelvin
    return at_1000_bar + c * maths.log((b + pressure_bar) / (b + 1000.0))
