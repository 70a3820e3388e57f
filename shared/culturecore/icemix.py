"""Hot concentrate chilled with ice: how warm it ends, or how much ice is left."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from culturecore import heat
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate
from culturecore.sugar import MAX_MASS_G

# ice_enthalpy
MELTING_HEAT_J_PER_G: Final = 333.6
ICE_CAPACITY_J_PER_G_K: Final = 2.05


@dataclass(frozen=True, slots=True, kw_only=True)
class IceMix:
    """What comes of liquid and ice: a temperature, and the ice that is left in it.

    Either ``ice_left_g`` is 0, or the temperature is 0 degC and its bounds are those of a
    vessel that gives back some warmth.
    """

    temperature_c: Estimate
    ice_left_g: float
    liquid_mass_g: float
    sources: tuple[str, ...]


def mix_with_ice(
    parts: Iterable[heat.Portion], *, ice_g: float, ice_temperature_c: float = 0.0
) -> IceMix:
    """Return what the parts and some ice come to, without losses.

    Parameters
    ----------
    parts : iterable of Portion
        As in :func:`culturecore.heat.mix_temperature_c`; all liquid.
    ice_g : float
        Mass of ice of pure water, not negative.
    ice_temperature_c : float
        -40 to 0 degC; ice that stands wet in a bowl has 0.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, or without any liquid.

    Notes
    -----
    Heat content is kept (llano_2005); melting takes 333.6 J/g (ice_enthalpy). The
    freezing point is taken as 0 degC, though sugar lowers it by 0.06 degC per °Bx. Vessel
    and losses: 2 degC either way.
    """
    if not 0.0 <= ice_g <= MAX_MASS_G:  # NaN fails too
        raise ImpossibleInput("ice_g", ice_g, low=0.0, high=MAX_MASS_G, unit="g")
    if not -40.0 <= ice_temperature_c <= 0.0:
        raise ImpossibleInput(
            "ice_temperature_c", ice_temperature_c, low=-40.0, high=0.0, unit="°C"
        )
    liquid_g, sugar_g, heat_j = heat.content(parts)
    cold_j = ice_g * _heat_to_melt(ice_temperature_c)
    sources = ("llano_2005", "ice_enthalpy")
    if heat_j <= cold_j:
        # all that the liquid can give is spent on the ice, and some of it stays frozen
        warmed_j = ice_g * ICE_CAPACITY_J_PER_G_K * -ice_temperature_c
        melted_g = min(max(heat_j - warmed_j, 0.0) / MELTING_HEAT_J_PER_G, ice_g)
        return IceMix(
            temperature_c=_with_doubt(0.0),
            ice_left_g=ice_g - melted_g,
            liquid_mass_g=liquid_g + melted_g,
            sources=sources,
        )
    total_g = liquid_g + ice_g
    mixed_c = heat.temperature_of((heat_j - cold_j) / total_g, sugar_g / total_g)
    return IceMix(
        temperature_c=_with_doubt(mixed_c),
        ice_left_g=0.0,
        liquid_mass_g=total_g,
        sources=sources,
    )


def ice_for_temperature(
    parts: Iterable[heat.Portion], *, target_c: float, ice_temperature_c: float = 0.0
) -> Estimate:
    """Return how much ice brings the parts to a temperature [g].

    Parameters
    ----------
    parts : iterable of Portion
        As in :func:`mix_with_ice`.
    target_c : float
        Above 0 to 100 degC.
    ice_temperature_c : float
        -40 to 0 degC.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    0 when the parts are cool enough by themselves. Bounds: 2 degC either way.
    """
    if not 0.0 < target_c <= 100.0:  # NaN fails too
        raise ImpossibleInput("target_c", target_c, low=0.0, high=100.0, unit="°C")
    if not -40.0 <= ice_temperature_c <= 0.0:
        raise ImpossibleInput(
            "ice_temperature_c", ice_temperature_c, low=-40.0, high=0.0, unit="°C"
        )
    liquid_g, sugar_g, heat_j = heat.content(parts)
    share = sugar_g / liquid_g

    def needed_g(to_c: float) -> float:
        # heat the liquid has too much, over what a gram of ice takes up to the target
        surplus_j = heat_j - liquid_g * heat.heat_content(to_c, share)
        taken_j = _heat_to_melt(ice_temperature_c) + heat.heat_content(to_c, 0.0)
        return max(surplus_j / taken_j, 0.0)

    doubt_c = heat.MIXING_DOUBT_C
    return Estimate(
        needed_g(target_c),
        needed_g(target_c + doubt_c),
        needed_g(max(target_c - doubt_c, 0.0)),
        caveats=(Caveat.TEMPERATURE_ASSUMED,),
        sources=("llano_2005", "ice_enthalpy"),
    )


def _heat_to_melt(ice_temperature_c: float) -> float:
    """Return what a gram of ice takes to become water of 0 degC [J]."""
    return MELTING_HEAT_J_PER_G - ICE_CAPACITY_J_PER_G_K * ice_temperature_c


def _with_doubt(temperature_c: float) -> Estimate:
    doubt_c = heat.MIXING_DOUBT_C
    return Estimate(
        temperature_c,
        max(temperature_c - doubt_c, 0.0),
        temperature_c + doubt_c,
        caveats=(Caveat.TEMPERATURE_ASSUMED,),
        sources=("llano_2005", "ice_enthalpy"),
    )
