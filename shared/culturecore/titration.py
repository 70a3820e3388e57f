"""Acidity by titration: from the lye that a sample takes up.

What pH an acidity goes with is told by :mod:`culturecore.acidpair`.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import Final

from culturecore import acidbase
from culturecore.acidbase import Blend
from culturecore.constants import ACETIC_ACID_G_PER_MOL
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate, Level, Verdict


class ExpressedAs(Enum):
    """The acid whose grams an acidity is told in."""

    ACETIC = "acetic"
    LACTIC = "lactic"
    MALIC = "malic"
    CITRIC = "citric"
    CITRIC_MONOHYDRATE = "citric_monohydrate"
    TARTARIC = "tartaric"
    GLUCONIC = "gluconic"
    SULFURIC = "sulfuric"


# Grams to the mol of acid given off; iupac_masses. AOAC 942.15 rounds them to 0.060, 0.090,
# 0.067, 0.070, 0.075 and 0.049 g/meq.
GRAMS_PER_EQUIVALENT: Final = {
    ExpressedAs.ACETIC: ACETIC_ACID_G_PER_MOL,
    ExpressedAs.LACTIC: 90.078,
    ExpressedAs.MALIC: 134.087 / 2.0,
    ExpressedAs.CITRIC: 192.123 / 3.0,
    ExpressedAs.CITRIC_MONOHYDRATE: 210.138 / 3.0,
    ExpressedAs.TARTARIC: 150.086 / 2.0,
    ExpressedAs.GLUCONIC: 196.155,
    ExpressedAs.SULFURIC: 98.079 / 2.0,
}
END_POINT_RANGE: Final = (7.0, 8.5)  # oiv_as313_01 stops at 7.0, phenolphthalein at 8.2 to 8.4

# Standard deviations, titration_doubts.
LYE_READING_SD_ML: Final = 0.05
SAMPLE_SD_SHARE: Final = 0.01
LYE_STRENGTH_SD_SHARE: Final = 0.01
# At the end point carbonic acid has given off one charge: 1 g/L of CO2 is 22.7 meq/L.
UNDRIVEN_CO2_G_PER_L: Final = 1.0
CO2_G_PER_MEQ: Final = 0.04401
Z_80: Final = 1.2816

VERDICT_CODES: Final = frozenset({"titration_degassed", "titration_not_degassed"})


@dataclass(frozen=True, slots=True, kw_only=True)
class Titration:
    """The outcome of a titration.

    ``acidity_g_per_l`` is in grams of ``expressed_as`` at the end point used;
    ``ta_g_per_l`` as acetic acid to pH 8.1, as every other acidity here.
    """

    acidity_meq_per_l: Estimate
    acidity_g_per_l: Estimate
    expressed_as: ExpressedAs
    end_point_ph: float
    ta_g_per_l: Estimate
    verdict: Verdict
    sources: tuple[str, ...]


def acidity_meq_per_l(
    *,
    lye_ml: float,
    lye_normality: float,
    sample_ml: float,
    dilution_factor: float = 1.0,
    blank_ml: float = 0.0,
) -> float:
    """Return titrated acidity [meq/L].

    Parameters
    ----------
    lye_ml, blank_ml : float
        Lye used by the sample, 0 to 1000 mL, and by the same water without it, at most
        as much.
    lye_normality : float
        Above 0 to 5 eq/L.
    sample_ml : float
        Of the (diluted) drink, 0.01 to 1000 mL.
    dilution_factor : float
        Volume after dilution over volume before, 1 to 1000. Water added in the titration
        glass does not count: only what was poured away does.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    aoac_94215, oiv_as313_01.
    """
    _check("lye_ml", lye_ml, 0.0, 1000.0, "mL")
    _check("blank_ml", blank_ml, 0.0, lye_ml, "mL")
    if not 0.0 < lye_normality <= 5.0:  # NaN fails too
        raise ImpossibleInput("lye_normality", lye_normality, low=0.0, high=5.0, unit="eq/L")
    _check("sample_ml", sample_ml, 0.01, 1000.0, "mL")
    _check("dilution_factor", dilution_factor, 1.0, 1000.0, "")
    per_l = _equivalents_per_volume(lye_ml - blank_ml, lye_normality, sample_ml, dilution_factor)
    return 1000.0 * per_l


def g_per_l_as(acidity_meq_per_l: float, expressed_as: ExpressedAs = ExpressedAs.ACETIC) -> float:
    """Return an acidity in grams per litre of an acid (iupac_masses).

    Raises
    ------
    ImpossibleInput
        Outside 0 to 5000 meq/L.
    """
    _check("acidity_meq_per_l", acidity_meq_per_l, 0.0, 5000.0, "meq/L")
    return acidity_meq_per_l * GRAMS_PER_EQUIVALENT[expressed_as] / 1000.0


def meq_per_l_from(g_per_l: float, expressed_as: ExpressedAs = ExpressedAs.ACETIC) -> float:
    """Return an acidity told in grams per litre of an acid in meq/L. Raises below 0, above 500."""
    _check("g_per_l", g_per_l, 0.0, 500.0, "g/L")
    return 1000.0 * g_per_l / GRAMS_PER_EQUIVALENT[expressed_as]


def titrate(
    *,
    lye_ml: float,
    lye_normality: float,
    sample_ml: float,
    dilution_factor: float = 1.0,
    blank_ml: float = 0.0,
    end_point_ph: float = acidbase.END_POINT_PH,
    expressed_as: ExpressedAs = ExpressedAs.ACETIC,
    is_degassed: bool | None = None,
) -> Titration:
    """Return the acidity that a titration shows, with 80 % bounds.

    Parameters
    ----------
    lye_ml, lye_normality, sample_ml, dilution_factor, blank_ml
        As in :func:`acidity_meq_per_l`.
    end_point_ph : float
        7.0 to 8.5; 8.1 (aoac_94215), 8.2 by phenolphthalein, 7.0 (oiv_as313_01).
    expressed_as : ExpressedAs
        The acid whose grams are told.
    is_degassed : bool | None
        Whether the carbon dioxide was driven out; None when not known. Unless it was, the
        lower bound allows for 1 g/L of it, and a verdict warns.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    _check("end_point_ph", end_point_ph, *END_POINT_RANGE, "pH")
    meq = acidity_meq_per_l(
        lye_ml=lye_ml,
        lye_normality=lye_normality,
        sample_ml=sample_ml,
        dilution_factor=dilution_factor,
        blank_ml=blank_ml,
    )
    one_ml = 1000.0 * _equivalents_per_volume(1.0, lye_normality, sample_ml, dilution_factor)
    sd = math.hypot(LYE_READING_SD_ML * one_ml, SAMPLE_SD_SHARE * meq, LYE_STRENGTH_SD_SHARE * meq)
    gas_meq = 0.0 if is_degassed else UNDRIVEN_CO2_G_PER_L / CO2_G_PER_MEQ
    acidity = Estimate(
        meq,
        max(meq - Z_80 * sd - gas_meq, 0.0),
        meq + Z_80 * sd,
        sources=("aoac_94215", "titration_doubts"),
    )
    numbers = {
        "co2_g_per_l": UNDRIVEN_CO2_G_PER_L,
        "adds_g_per_l": g_per_l_as(UNDRIVEN_CO2_G_PER_L / CO2_G_PER_MEQ, expressed_as),
    }
    code, level = "titration_not_degassed", Level.WARN
    if is_degassed:
        code, level = "titration_degassed", Level.INFORM
    to_usual_end = _end_point_factor(end_point_ph)
    return Titration(
        acidity_meq_per_l=acidity,
        acidity_g_per_l=_scaled(acidity, GRAMS_PER_EQUIVALENT[expressed_as] / 1000.0),
        expressed_as=expressed_as,
        end_point_ph=end_point_ph,
        ta_g_per_l=_scaled(acidity, to_usual_end * ACETIC_ACID_G_PER_MOL / 1000.0),
        verdict=Verdict(code, level, numbers, ("oiv_as313_01", "titration_doubts")),
        sources=("aoac_94215", "oiv_as313_01", "iupac_masses", "titration_doubts"),
    )


def _end_point_factor(end_point_ph: float) -> float:
    """Return acidity to pH 8.1 over acidity to another end point, for acetic acid."""
    acid = Blend(acetic_mol_per_kg=0.1)
    usual = acidbase.titratable_acidity_g_per_l(acid)
    return usual / acidbase.titratable_acidity_g_per_l(acid, end_point_ph=end_point_ph)


def _scaled(estimate: Estimate, factor: float) -> Estimate:
    return Estimate(
        estimate.value * factor,
        estimate.low * factor,
        estimate.high * factor,
        caveats=estimate.caveats,
        sources=estimate.sources,
    )


def _equivalents_per_volume(
    lye_volume: float, lye_normality: float, sample_volume: float, dilution_factor: float
) -> float:
    """Return lye times strength over sample: any units that go together."""
    return lye_volume * lye_normality * dilution_factor / sample_volume


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
