"""What a glass holds: energy, sugar, acid, alcohol and caffeine, always as ranges.

For the maker's own information. What stands on a label that is sold needs a laboratory.
Energy is reckoned with the factors of EU law in kilocalories and in kilojoules; they are
rounded apart, so neither column is made from the other.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from culturecore.constants import FLUID_OUNCE_L
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.ethanol import g_per_l_from_abv
from culturecore.outcome import Caveat, Estimate
from culturecore.stages import TeaKind

# eu_1169_2011, Annex XIV: kcal and kJ per gram
SUGAR_KCAL_PER_G: Final = 4.0
SUGAR_KJ_PER_G: Final = 17.0
ACID_KCAL_PER_G: Final = 3.0
ACID_KJ_PER_G: Final = 13.0
ETHANOL_KCAL_PER_G: Final = 7.0
ETHANOL_KJ_PER_G: Final = 29.0

LABEL_VOLUME_L: Final = 0.1  # a label speaks of 100 mL
SMALL_SERVING_L: Final = 4.0 * FLUID_OUNCE_L  # niagara_region: most cautious advice for a day

# hicks_1996: mg of caffeine in a gram of dry leaf
_LEAF_MG_PER_G: Final[dict[TeaKind, float]] = {
    TeaKind.BLACK: 32.8,
    TeaKind.GREEN: 36.6,
    TeaKind.OOLONG: 23.8,
    TeaKind.WHITE: 24.6,  # not in that study: middle of camellia_caffeine
    TeaKind.MIXED: 24.6,
}
_FIRST_BREW_SHARE = 0.69  # hicks_1996
_LEAF_RANGE_MG_PER_G = (14.3, 34.8)  # camellia_caffeine
_DRAWN_RANGE = (0.515, 0.852)  # camellia_caffeine


@dataclass(frozen=True, slots=True, kw_only=True)
class Content:
    """What a litre of the drink holds."""

    sugar_g_per_l: Estimate
    acid_g_per_l: Estimate
    ethanol_abv: Estimate
    caffeine_mg_per_l: Estimate


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """What a volume of the drink holds."""

    volume_l: float
    energy_kcal: Estimate
    energy_kj: Estimate
    sugar_g: Estimate
    acid_g: Estimate
    ethanol_g: Estimate
    caffeine_mg: Estimate


def facts(content: Content, *, volume_l: float = LABEL_VOLUME_L) -> Facts:
    """Return what so much of a drink holds.

    Parameters
    ----------
    content : Content
        Sugar 0 to 300 g/L, organic acid 0 to 100 g/L, ethanol 0 to 15 % vol, caffeine 0 to
        2000 mg/L, each with bounds in order.
    volume_l : float
        Above 0 to 10 L.

    Returns
    -------
    Facts
        The low end of the energy has every part at its low end, so it is wider than an
        80 % range: nothing is known about how the parts go together.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    if not 0.0 < volume_l <= 10.0:
        raise ImpossibleInput("volume_l", volume_l, low=0.0, high=10.0, unit="L")
    _check("sugar_g_per_l", content.sugar_g_per_l, 300.0, "g/L")
    _check("acid_g_per_l", content.acid_g_per_l, 100.0, "g/L")
    _check("ethanol_abv", content.ethanol_abv, 15.0, "% vol")
    _check("caffeine_mg_per_l", content.caffeine_mg_per_l, 2000.0, "mg/L")
    sugar_g = _times(content.sugar_g_per_l, volume_l)
    acid_g = _times(content.acid_g_per_l, volume_l)
    ethanol_g = _times(content.ethanol_abv, volume_l * g_per_l_from_abv(1.0))
    return Facts(
        volume_l=volume_l,
        energy_kcal=_energy(
            (sugar_g, SUGAR_KCAL_PER_G),
            (acid_g, ACID_KCAL_PER_G),
            (ethanol_g, ETHANOL_KCAL_PER_G),
        ),
        energy_kj=_energy(
            (sugar_g, SUGAR_KJ_PER_G), (acid_g, ACID_KJ_PER_G), (ethanol_g, ETHANOL_KJ_PER_G)
        ),
        sugar_g=sugar_g,
        acid_g=acid_g,
        ethanol_g=ethanol_g,
        caffeine_mg=_times(content.caffeine_mg_per_l, volume_l),
    )


def caffeine_mg_per_l(*, tea_kind: TeaKind, tea_g_per_l: float) -> Estimate:
    """Return the caffeine that leaf gives to a litre [mg/L].

    Parameters
    ----------
    tea_kind : TeaKind
        Leaf used.
    tea_g_per_l : float
        Dry leaf to a litre of drink [g/L], 0 to 50.

    Returns
    -------
    Estimate
        None is taken to be lost in souring (cautious; from memory).

    Raises
    ------
    NotAssessed
        "caffeine_unknown" for herbs: some hold none, some a lot.
    ImpossibleInput
        Outside the range.

    Notes
    -----
    Value: hicks_1996, one brew. Bounds: camellia_caffeine, widened to the leaf in question.
    """
    if tea_kind is TeaKind.HERBAL:
        raise NotAssessed("caffeine_unknown")
    if not 0.0 <= tea_g_per_l <= 50.0:
        raise ImpossibleInput("tea_g_per_l", tea_g_per_l, low=0.0, high=50.0, unit="g/L")
    leaf = _LEAF_MG_PER_G[tea_kind]
    lowest, highest = _LEAF_RANGE_MG_PER_G
    surely_listed = tea_kind in (TeaKind.BLACK, TeaKind.GREEN, TeaKind.OOLONG)
    return Estimate(
        tea_g_per_l * leaf * _FIRST_BREW_SHARE,
        tea_g_per_l * lowest * _DRAWN_RANGE[0],
        tea_g_per_l * max(leaf, highest) * _DRAWN_RANGE[1],
        caveats=() if surely_listed else (Caveat.TEA_ASSUMED,),
        sources=("hicks_1996", "camellia_caffeine"),
    )


def _times(amount: Estimate, factor: float) -> Estimate:
    return Estimate(
        amount.value * factor,
        amount.low * factor,
        amount.high * factor,
        level=amount.level,
        caveats=amount.caveats,
        sources=amount.sources,
    )


def _energy(*parts: tuple[Estimate, float]) -> Estimate:
    value = sum(mass.value * per_g for mass, per_g in parts)
    low = sum(mass.low * per_g for mass, per_g in parts)
    high = sum(mass.high * per_g for mass, per_g in parts)
    return Estimate(value, low, high, sources=("eu_1169_2011",))


def _check(field: str, amount: Estimate, most: float, unit: str) -> None:
    if not 0.0 <= amount.low <= amount.value <= amount.high <= most:  # NaN fails too
        raise ImpossibleInput(field, amount.value, low=0.0, high=most, unit=unit)
