"""The pressure in many closed bottles at once: :mod:`culturecore.bottle` on arrays.

Needs numpy, so nothing that runs at the start of the program imports this. What depends on
bottle and temperature alone is worked out once (:func:`closed_at`); then every way the gas
may have come about is a number in an array.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from culturecore import bottle, co2
from culturecore.bottle import Filling
from culturecore.bottle import swelling as swelling_of
from culturecore.constants import GAS_CONSTANT_J_PER_MOL_K, STANDARD_PRESSURE_PA, ZERO_CELSIUS_K

Floats = NDArray[np.float64]

TOP_BAR: Final = co2.MODEL_TOP_BAR  # told pressures end here: "over 8 bar"
_SEARCH_TOP_BAR: Final = 12.0
_NEWTON_ROUNDS: Final = 3  # the function bends little: exact to 1e-6 bar by then
_SMALLEST_BAR: Final = 1e-9
_BAR_STEP: Final = 1e-4
_PA_PER_BAR: Final = 1e5


@dataclass(frozen=True, slots=True, kw_only=True)
class ClosedBottle:
    """A bottle at one temperature: its room, its air, and what water in it would take up.

    ``offset_bar`` turns the pressure of CO2 into what a gauge shows without air,
    ``air_settled_bar`` and ``air_trapped_bar`` are the air's share, dissolved and not. A
    brimful one has no gas room left: nothing yields in it.
    """

    temperature_c: float
    filled_l: float
    drink_l: float
    gas_l: float
    offset_bar: float
    air_settled_bar: float
    air_trapped_bar: float

    @property
    def is_brimful(self) -> bool:
        """Whether the drink has swollen until no gas is left above it."""
        return self.gas_l <= 0.0


def closed_at(filling: Filling, temperature_c: float, sugar_g_per_l: float = 0.0) -> ClosedBottle:
    """Work out what a bottle is like at a temperature, 0 to 40 degC.

    ``sugar_g_per_l`` is for the swelling of the drink alone.
    """
    filled_l = filling.brim_volume_l * (1.0 - filling.headspace_share)
    drink_l = filled_l * swelling_of(
        from_c=filling.filled_at_c, to_c=temperature_c, sugar_g_per_l=sugar_g_per_l
    )
    gas_l = filling.brim_volume_l - drink_l
    air = bottle.air_bar_l(filling, temperature_c)
    room_l = max(gas_l, 0.0) + drink_l * bottle.air_take_up(temperature_c)
    return ClosedBottle(
        temperature_c=temperature_c,
        filled_l=filled_l,
        drink_l=drink_l,
        gas_l=gas_l,
        offset_bar=co2.vapour_bar(temperature_c) - co2.ambient_bar(filling.altitude_m),
        air_settled_bar=air / room_l,
        air_trapped_bar=air / gas_l if gas_l > 0.0 else math.inf,
    )


def solute_factors(sugar_g_per_l: Floats, ethanol_abv: Floats) -> Floats:
    """Return by which factor sugar and ethanol lower the solubility, as `co2.solute_factor`."""
    by_sugar = 1.0 - co2.SUGAR_LOSS_PER_G_PER_L * np.clip(sugar_g_per_l, 0.0, 200.0)
    answer: Floats = by_sugar * (1.0 - co2.ETHANOL_LOSS_PER_ABV * np.clip(ethanol_abv, 0.0, 15.0))
    return answer


def co2_bar(closed: ClosedBottle, co2_g_per_l: Floats, factors: Floats) -> Floats:
    """Return the pressure of CO2 [bar absolute] for all the CO2 per litre as filled.

    Never above 12 bar, which stands for everything beyond; so does a brimful bottle.
    """
    if closed.is_brimful:
        return np.full(np.broadcast(co2_g_per_l, factors).shape, _SEARCH_TOP_BAR)
    wanted_g = co2_g_per_l * closed.filled_l
    # Henry's law and an ideal gas are near enough to begin with.
    per_bar = held_g(closed, np.float64(1.0), factors)
    pressure = np.clip(wanted_g / per_bar, _SMALLEST_BAR, _SEARCH_TOP_BAR)
    for _ in range(_NEWTON_ROUNDS):
        held = held_g(closed, pressure, factors)
        slope = (held_g(closed, pressure + _BAR_STEP, factors) - held) / _BAR_STEP
        pressure = np.clip(pressure - (held - wanted_g) / slope, _SMALLEST_BAR, _SEARCH_TOP_BAR)
    answer: Floats = pressure
    return answer


def held_g(closed: ClosedBottle, pressure_bar: Floats | np.float64, factors: Floats) -> Floats:
    """Return all the CO2 that a bottle holds under a pressure of the gas [g]."""
    rt = GAS_CONSTANT_J_PER_MOL_K * (closed.temperature_c + ZERO_CELSIUS_K)
    excess = co2.virial_m3_per_mol(closed.temperature_c) * pressure_bar * _PA_PER_BAR / rt
    above_pa = np.maximum(pressure_bar * _PA_PER_BAR - STANDARD_PRESSURE_PA, 0.0)
    squeeze = co2.MOLAR_VOLUME_CM3 * 1e-6 * above_pa / rt
    per_bar = (
        co2.CO2_G_PER_MOL
        * co2.solubility_mol_per_l_atm(closed.temperature_c)
        * _PA_PER_BAR
        / STANDARD_PRESSURE_PA
    )
    dissolved = per_bar * pressure_bar * np.exp(excess - squeeze) * factors
    gas = co2.CO2_G_PER_MOL * 1e-3 * pressure_bar * _PA_PER_BAR / ((1.0 + excess) * rt)
    answer: Floats = closed.drink_l * dissolved + closed.gas_l * gas
    return answer


def dissolved_g_per_l(
    closed: ClosedBottle, pressure_bar: Floats | np.float64, factors: Floats
) -> Floats:
    """Return the CO2 dissolved in the drink under a pressure of the gas [g/L]."""
    rt = GAS_CONSTANT_J_PER_MOL_K * (closed.temperature_c + ZERO_CELSIUS_K)
    gas = co2.virial_m3_per_mol(closed.temperature_c) * pressure_bar * _PA_PER_BAR / rt
    gas_g = co2.CO2_G_PER_MOL * 1e-3 * pressure_bar * _PA_PER_BAR / ((1.0 + gas) * rt)
    answer: Floats = (held_g(closed, pressure_bar, factors) - closed.gas_l * gas_g) / closed.drink_l
    return answer


def settled_bar(closed: ClosedBottle, pressure_bar: Floats) -> Floats:
    """Return the gauge pressure once the air has dissolved, at most 8 bar."""
    answer: Floats = np.minimum(pressure_bar + closed.offset_bar + closed.air_settled_bar, TOP_BAR)
    return answer


def trapped_bar(closed: ClosedBottle, pressure_bar: Floats) -> Floats:
    """Return the gauge pressure with all the air still in the headspace, at most 8 bar."""
    answer: Floats = np.minimum(pressure_bar + closed.offset_bar + closed.air_trapped_bar, TOP_BAR)
    return answer
