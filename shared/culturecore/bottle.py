"""A closed bottle: gas shared between drink and headspace, air, and a drink that swells.

Two ends are given. Trapped air dissolves into the drink within hours to days and takes
its pressure with it; until then the gauge may show the higher figure, so that one counts
against the bottle.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from culturecore import co2
from culturecore.constants import GAS_CONSTANT_J_PER_MOL_K, ZERO_CELSIUS_K
from culturecore.errors import ImpossibleInput
from culturecore.rootfinding import root_of_rising
from culturecore.sugar import brix_from_g_per_l, density_kg_per_l

_SEARCH_TOP_BAR: Final = 12.0
_PA_PER_BAR: Final = 1e5
_M3_PER_L: Final = 1e-3
# sander_2023: nitrogen in water, 6.4e-6 mol/m³/Pa at 25 degC, d ln H / d(1/T) = 1300 K.
# All the air counts as nitrogen: it dissolves less than oxygen, which yeast uses up anyway.
_AIR_MOL_PER_L_BAR_25_C: Final = 6.4e-4
_AIR_SLOPE_K: Final = 1300.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Filling:
    """A bottle as it was closed.

    ``headspace_share`` is the empty part of the volume to the brim at ``filled_at_c``.
    """

    brim_volume_l: float
    headspace_share: float
    filled_at_c: float = 20.0
    altitude_m: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class BottlePressure:
    """What a gauge on the bottle would show [bar]; None stands for "over 8 bar".

    ``air_dissolved_bar`` is where it settles, ``air_trapped_bar`` the upper bound.
    ``volumes`` are those left in the drink; None where the settled pressure is.
    ``is_brimful`` says that the drink has swollen until no gas is left above it: then
    nothing yields and the pressure has no upper bound.
    """

    air_dissolved_bar: float | None
    air_trapped_bar: float | None
    volumes: float | None
    is_brimful: bool = False

    @property
    def is_over_8_bar(self) -> bool:
        """Whether the upper bound is beyond what can be told as a number."""
        return self.air_trapped_bar is None


def pressure(
    filling: Filling,
    *,
    co2_g_per_l: float,
    temperature_c: float,
    sugar_g_per_l: float = 0.0,
    ethanol_abv: float = 0.0,
) -> BottlePressure:
    """Return the pressure in a closed bottle once gas and drink are in balance.

    Parameters
    ----------
    filling : Filling
        Brim volume 0.05 to 20 L, headspace share 0 to 0.5, filled at 0 to 40 degC.
    co2_g_per_l : float
        All CO2 in the bottle, dissolved at filling and made since, per litre of drink as
        filled [g/L], 0 to 200.
    temperature_c : float
        Of the bottle now [degC], 0 to 40.
    sugar_g_per_l, ethanol_abv : float
        In the drink now: they lower the solubility.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    Amounts of CO2 and of air are kept; Weiss 1974 for the drink (see co2), the drink's
    density by emmerich_icumsa for its swelling, the glass is taken as rigid (safe side).
    Within 0.05 bar of PHREEQC with a fixed gas volume, 150 bottles below 8 bar.
    """
    _check("brim_volume_l", filling.brim_volume_l, 0.05, 20.0, "L")
    _check("headspace_share", filling.headspace_share, 0.0, 0.5, "")
    _check("filled_at_c", filling.filled_at_c, 0.0, co2.MAX_TEMPERATURE_C, "°C")
    _check("co2_g_per_l", co2_g_per_l, 0.0, 200.0, "g/L")
    drink = _Drink(temperature_c, sugar_g_per_l, ethanol_abv)
    filled_l = filling.brim_volume_l * (1.0 - filling.headspace_share)
    drink_l = filled_l * swelling(
        from_c=filling.filled_at_c, to_c=temperature_c, sugar_g_per_l=sugar_g_per_l
    )
    gas_l = filling.brim_volume_l - drink_l
    if gas_l <= 0.0:
        return BottlePressure(
            air_dissolved_bar=None, air_trapped_bar=None, volumes=None, is_brimful=True
        )
    co2_bar = _balance(drink, co2_g_per_l * filled_l, drink_l, gas_l)
    if co2_bar is None:
        return BottlePressure(air_dissolved_bar=None, air_trapped_bar=None, volumes=None)
    ambient_bar = co2.ambient_bar(filling.altitude_m)
    air = air_bar_l(filling, temperature_c)
    without_air_bar = co2_bar + co2.vapour_bar(temperature_c) - ambient_bar
    settled_bar = without_air_bar + air / (gas_l + drink_l * air_take_up(temperature_c))
    trapped_bar = without_air_bar + air / gas_l
    settled = _told(settled_bar)
    return BottlePressure(
        air_dissolved_bar=settled,
        air_trapped_bar=_told(trapped_bar),
        volumes=None if settled is None else co2.volumes_from_g_per_l(drink.holds(co2_bar)),
    )


def swelling(*, from_c: float, to_c: float, sugar_g_per_l: float = 0.0) -> float:
    """Return the volume of a drink at ``to_c`` over that at ``from_c`` (emmerich_icumsa).

    Raises
    ------
    ImpossibleInput
        Outside 0 to 80 degC, and for sugar below 0.
    """
    brix = brix_from_g_per_l(sugar_g_per_l)
    return density_kg_per_l(brix, from_c) / density_kg_per_l(brix, to_c)


@dataclass(frozen=True, slots=True)
class _Drink:
    temperature_c: float
    sugar_g_per_l: float
    ethanol_abv: float

    def holds(self, co2_bar: float) -> float:
        return co2.dissolved_g_per_l(
            co2_pressure_bar=co2_bar,
            temperature_c=self.temperature_c,
            sugar_g_per_l=self.sugar_g_per_l,
            ethanol_abv=self.ethanol_abv,
        )


def _balance(drink: _Drink, co2_g: float, drink_l: float, gas_l: float) -> float | None:
    """Return the pressure at which drink and headspace together hold all the CO2 [bar]."""

    def held_g(co2_bar: float) -> float:
        return drink_l * drink.holds(co2_bar) + gas_l * gas_g_per_l(co2_bar, drink.temperature_c)

    if held_g(_SEARCH_TOP_BAR) < co2_g:
        return None
    return root_of_rising(lambda bar: held_g(bar) - co2_g, 0.0, _SEARCH_TOP_BAR, tolerance=1e-10)


def gas_g_per_l(co2_bar: float, temperature_c: float) -> float:
    """Return grams of CO2 in a litre of its gas, 0 to 12 bar absolute, 0 to 40 degC."""
    rt = GAS_CONSTANT_J_PER_MOL_K * (temperature_c + ZERO_CELSIUS_K)
    mol_per_m3 = co2_bar * _PA_PER_BAR / (co2.compressibility(co2_bar, temperature_c) * rt)
    return co2.CO2_G_PER_MOL * mol_per_m3 * _M3_PER_L


def air_bar_l(filling: Filling, temperature_c: float) -> float:
    """Return pressure times volume of the air that was closed in [bar L], at a temperature."""
    headspace_l = filling.brim_volume_l * filling.headspace_share
    dry_bar = co2.ambient_bar(filling.altitude_m) - co2.vapour_bar(filling.filled_at_c)
    warmed = (temperature_c + ZERO_CELSIUS_K) / (filling.filled_at_c + ZERO_CELSIUS_K)
    return dry_bar * headspace_l * warmed


def air_take_up(temperature_c: float) -> float:
    """Return litres of air gas that a litre of drink takes up (sander_2023)."""
    kelvin = temperature_c + ZERO_CELSIUS_K
    at_25_c = 25.0 + ZERO_CELSIUS_K
    slope = math.exp(_AIR_SLOPE_K * (1.0 / kelvin - 1.0 / at_25_c))
    mol_per_l_bar = _AIR_MOL_PER_L_BAR_25_C * slope
    return mol_per_l_bar * GAS_CONSTANT_J_PER_MOL_K * kelvin / _PA_PER_BAR / _M3_PER_L


def _told(gauge_bar: float) -> float | None:
    return gauge_bar if gauge_bar <= co2.MODEL_TOP_BAR else None


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
