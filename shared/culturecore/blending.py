"""What becomes of a jar's pH and sugar when other liquid is poured into it.

Acids and strong ions add up by mass, pH does not: the blend's pH follows from the charge
balance of what was poured together (`acidbase`). Volumes are taken to add up; water and
sugar solutions of kitchen strength do so within 0.1 %.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from culturecore import acidbase, startacid, sugar
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate
from culturecore.stages import TeaKind

PH_RANGE: Final = (2.0, 6.0)  # of a liquid whose acids can be told from its pH
# Half-width of the 80 % bounds where nothing is said: a careful meter's (astm_e70_aoac_97341).
_METER_PH: Final = 0.15


@dataclass(frozen=True, slots=True, kw_only=True)
class Liquid:
    """Part of a jar's content: how much, how sour [pH, g/L as acetic acid], how sweet [g/L]."""

    volume_l: float
    ph: Estimate | None = None
    ta_g_per_l: float | None = None
    sugar_g_per_l: Estimate | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FreshTea:
    """Sweet tea that no culture has touched yet."""

    volume_l: float
    sugar_g_per_l: float
    tea_kind: TeaKind
    tea_g_per_l: float
    water_alkalinity_meq_per_l: float


def topped_up(jar: Liquid, fresh: FreshTea) -> Liquid:
    """Return the blend of a jar's liquid and fresh sweet tea.

    Parameters
    ----------
    jar : Liquid
        What is in the jar. What is not known of it stays unknown in the blend.
    fresh : FreshTea
        What is poured in.

    Raises
    ------
    ImpossibleInput
        For volumes below zero or none at all, and tea or sugar out of all ranges.

    Notes
    -----
    Charge balance, as for a starter in sweet tea (`startacid.start_ph`): the jar's liquid
    is the starter.
    """
    total_l = _total_l(jar.volume_l, fresh.volume_l)
    share = fresh.volume_l / total_l
    fresh_sugar = Estimate(fresh.sugar_g_per_l, fresh.sugar_g_per_l, fresh.sugar_g_per_l)
    return Liquid(
        volume_l=total_l,
        ph=None if jar.ph is None else _topped_up_ph(jar, jar.ph, fresh),
        sugar_g_per_l=_weighted(jar.sugar_g_per_l, fresh_sugar, share),
    )


def poured_together(jar: Liquid, other: Liquid) -> Liquid:
    """Return the blend of two soured liquids; what is unknown of one is unknown of both.

    Raises
    ------
    ImpossibleInput
        For volumes below zero or none at all.

    Notes
    -----
    Charge balance of both make-ups by `acidbase.starter_blend`; a litre is taken for a
    kilogram. The blend's pH lies between those of the parts.
    """
    total_l = _total_l(jar.volume_l, other.volume_l)
    share = other.volume_l / total_l
    return Liquid(
        volume_l=total_l,
        ph=_mixed_ph(jar, other, share),
        sugar_g_per_l=_weighted(jar.sugar_g_per_l, other.sugar_g_per_l, share),
    )


def dilution_share(*, volume_share: float, ph_here: float, ph_coming: float) -> float:
    """Return how much fresh sweet tea would thin a jar's acid as a sour liquid does.

    Parameters
    ----------
    volume_share : float
        The part of the blend that was poured in, 0 to 1.
    ph_here, ph_coming : float
        Of the jar's liquid and of what is poured in.

    Returns
    -------
    float
        0 to ``volume_share``: all of it for liquid without acid, none for liquid that is at
        least as sour.

    Raises
    ------
    ImpossibleInput
        For a share outside 0 to 1.
    """
    if not 0.0 <= volume_share <= 1.0:
        raise ImpossibleInput("volume_share", volume_share, low=0.0, high=1.0)
    here, coming = (_acid_mol_per_kg(ph) for ph in (ph_here, ph_coming))
    return volume_share * max(0.0, 1.0 - coming / here)


def _topped_up_ph(jar: Liquid, ph: Estimate, fresh: FreshTea) -> Estimate:
    inputs = startacid.AcidInputs(
        starter_ph=_clipped(ph.value),
        starter_ta_g_per_l=jar.ta_g_per_l,
        starter_taste=None,
        tea_kind=fresh.tea_kind,
        tea_g_per_l=fresh.tea_g_per_l,
        water_alkalinity_meq_per_l=fresh.water_alkalinity_meq_per_l,
    )
    tea_kg_per_l = sugar.density_kg_per_l(sugar.brix_from_g_per_l(fresh.sugar_g_per_l))
    jar_kg = jar.volume_l * startacid.STARTER_KG_PER_L
    share = jar_kg / (jar_kg + fresh.volume_l * tea_kg_per_l)
    middle = startacid.start_ph(inputs, share)
    # How far the jar's own pH may be off, where that is more than a meter's doubt.
    ends = [
        startacid.start_ph(replace(inputs, starter_ph=_clipped(end)), share).value - middle.value
        for end in (ph.low, ph.high)
    ]
    return replace(
        middle,
        low=middle.value - math.hypot(middle.value - middle.low, min(*ends, 0.0)),
        high=middle.value + math.hypot(middle.high - middle.value, max(*ends, 0.0)),
    )


def _mixed_ph(jar: Liquid, other: Liquid, share: float) -> Estimate | None:
    if jar.ph is None or other.ph is None:
        return None

    def ph(here: float, coming: float) -> float:
        parts = (
            (acidbase.starter_blend(_clipped(here), jar.ta_g_per_l), 1.0 - share),
            (acidbase.starter_blend(_clipped(coming), other.ta_g_per_l), share),
        )
        return acidbase.ph_of(acidbase.mix(parts))

    value = ph(jar.ph.value, other.ph.value)
    below = above = _METER_PH**2
    for low, high in (
        (ph(jar.ph.low, other.ph.value), ph(jar.ph.high, other.ph.value)),
        (ph(jar.ph.value, other.ph.low), ph(jar.ph.value, other.ph.high)),
    ):
        below += min(low - value, high - value, 0.0) ** 2
        above += max(low - value, high - value, 0.0) ** 2
    return Estimate(
        value,
        value - math.sqrt(below),
        value + math.sqrt(above),
        caveats=(Caveat.STARTER_ACID_ASSUMED,),
        sources=("starter_acid_assumption", "astm_e70_aoac_97341"),
    )


def _weighted(jar: Estimate | None, other: Estimate | None, share: float) -> Estimate | None:
    if jar is None or other is None:
        return None
    value, low, high = (
        (1.0 - share) * here + share * coming
        for here, coming in (
            (jar.value, other.value),
            (jar.low, other.low),
            (jar.high, other.high),
        )
    )
    return Estimate(value, low, high, caveats=jar.caveats, sources=jar.sources)


def _acid_mol_per_kg(ph: float) -> float:
    blend = acidbase.starter_blend(_clipped(ph))
    return blend.acetic_mol_per_kg + blend.gluconic_mol_per_kg


def _clipped(ph: float) -> float:
    return min(max(ph, PH_RANGE[0]), PH_RANGE[1])


def _total_l(first_l: float, second_l: float) -> float:
    for volume_l in (first_l, second_l):
        if not 0.0 <= volume_l < math.inf:
            raise ImpossibleInput("volume_l", volume_l, low=0.0, unit="L")
    if first_l + second_l == 0.0:
        raise ImpossibleInput("volume_l", 0.0, low=0.0, unit="L")
    return first_l + second_l
