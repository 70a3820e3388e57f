"""Acidity by titration, and what pH it goes with once one pair of readings is known.

A drink's pH does not follow from its acidity alone: the strong-ion excess of tea and
water stands between them. One reading of both gives that excess; afterwards either can be
told from the other, as long as the acids stay of the same make-up.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from enum import Enum
from typing import Final

from culturecore import acidbase
from culturecore.acidbase import Blend
from culturecore.constants import ACETIC_ACID_G_PER_MOL
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate, Level, Verdict
from culturecore.rootfinding import settle
from culturecore.starter import IMPOSSIBLE_EXCESS_EQ_PER_KG, LIKELY_EXCESS_EQ_PER_KG


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

# Half-widths of 80 % bounds in learning and telling; assumptions, but for the last.
PAIR_PH_DOUBT: Final = 0.08  # one meter, read twice
TA_FACTOR: Final = 1.05
GLUCONIC_DOUBT: Final = 0.2
# So that four of five bottles fall within what a sister bottle of the same make foretold
# (47 bottled drinks, Sogin & Worobo 2024; see the tests).
MODEL_PH_DOUBT: Final = 0.18

VERDICT_CODES: Final = frozenset(
    {"titration_degassed", "titration_not_degassed", "pair_plausible", "pair_odd"}
)


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


@dataclass(frozen=True, slots=True, kw_only=True)
class LearntExcess:
    """One pair of readings of one drink, and the strong-ion excess that it shows.

    ``gluconic_share`` is of the acid, by amount. The excess is that of strong cations over
    strong anions [meq/L]; a litre is taken for a kilogram.
    """

    ph: float
    ta_g_per_l: float
    gluconic_share: float
    excess_meq_per_l: Estimate
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
        Of the (diluted) drink, above 0 to 1000 mL.
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
    if not 0.0 < sample_ml <= 1000.0:
        raise ImpossibleInput("sample_ml", sample_ml, low=0.0, high=1000.0, unit="mL")
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


def learn_excess(
    *, ph: float, ta_g_per_l: float, gluconic_share: float = acidbase.GLUCONIC_SHARE
) -> LearntExcess:
    """Return the strong-ion excess behind one pair of readings.

    Parameters
    ----------
    ph : float
        2 to 6.
    ta_g_per_l : float
        Titratable acidity as acetic acid to pH 8.1, 0.1 to 60 g/L.
    gluconic_share : float
        Of the acid, by amount, 0 to 1; the rest counts as acetic acid. Rarely known: the
        bounds allow for 0.2 more or less.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, and ``reason`` "contradicts_ph" when no drink of that pH can
        hold so much acid.

    Notes
    -----
    Charge balance, see ``acidbase``. A negative excess means a stronger acid than these,
    as from hibiscus or lemon.
    """
    _check("ph", ph, 2.0, 6.0, "pH")
    _check("ta_g_per_l", ta_g_per_l, 0.1, 60.0, "g/L")
    _check("gluconic_share", gluconic_share, 0.0, 1.0, "")
    pair = _Pair(ph, ta_g_per_l, gluconic_share)
    excess = 1000.0 * pair.excess()
    if excess > 1000.0 * IMPOSSIBLE_EXCESS_EQ_PER_KG:
        raise ImpossibleInput("ta_g_per_l", ta_g_per_l, unit="g/L", reason="contradicts_ph")
    below, above = _spread(excess, (1000.0 * other.excess() for other in pair.neighbours()))
    low, high = (1000.0 * end for end in LIKELY_EXCESS_EQ_PER_KG)
    numbers = {"excess_meq_per_l": excess, "low": low, "high": high}
    code, level = "pair_odd", Level.WARN
    if low <= excess <= high:
        code, level = "pair_plausible", Level.INFORM
    sources = ("davies_1962", "goldberg_2002", "starter_acid_assumption")
    return LearntExcess(
        ph=ph,
        ta_g_per_l=ta_g_per_l,
        gluconic_share=gluconic_share,
        excess_meq_per_l=Estimate(
            excess, excess - below, excess + above, sources=("starter_acid_assumption",)
        ),
        verdict=Verdict(code, level, numbers, ("starter_acid_assumption",)),
        sources=sources,
    )


def ph_from_ta(*, ta_g_per_l: float, learnt: LearntExcess) -> Estimate:
    """Return the pH that an acidity goes with, 80 % bounds.

    Parameters
    ----------
    ta_g_per_l : float
        As acetic acid to pH 8.1, 0.1 to 60 g/L.
    learnt : LearntExcess
        From a pair of readings of this drink, or one of the same tea and water.

    Raises
    ------
    ImpossibleInput
        Outside the range, and ``reason`` "contradicts_ph" when the excess alone would keep
        the drink above the end point.
    """
    _check("ta_g_per_l", ta_g_per_l, 0.1, 60.0, "g/L")
    pair = _Pair(learnt.ph, learnt.ta_g_per_l, learnt.gluconic_share)
    value = pair.ph_at(ta_g_per_l)
    others = [other.ph_at(ta_g_per_l) for other in pair.neighbours()]
    others += [pair.ph_at(ta_g_per_l * TA_FACTOR), pair.ph_at(ta_g_per_l / TA_FACTOR)]
    return _told(value, others, MODEL_PH_DOUBT, learnt, (value, learnt.ph))


def ta_from_ph(*, ph: float, learnt: LearntExcess) -> Estimate:
    """Return the acidity that a pH goes with [g/L as acetic acid], 80 % bounds.

    Parameters
    ----------
    ph : float
        2 to 6.
    learnt : LearntExcess
        As in :func:`ph_from_ta`.

    Raises
    ------
    ImpossibleInput
        Outside the range.

    Notes
    -----
    Near the pH of the pair this is as good as the pair; at low pH a small error of pH is a
    large one of acidity, and the bounds say so. Where a stronger acid (negative excess)
    alone keeps the drink below that pH, it is that acid's.
    """
    _check("ph", ph, 2.0, 6.0, "pH")
    pair = _Pair(learnt.ph, learnt.ta_g_per_l, learnt.gluconic_share)
    value = pair.ta_at(ph)
    others = [other.ta_at(ph) for other in pair.neighbours()]
    others += [pair.ta_at(ph + PAIR_PH_DOUBT), pair.ta_at(ph - PAIR_PH_DOUBT)]
    others += [pair.ta_at(ph + MODEL_PH_DOUBT), pair.ta_at(ph - MODEL_PH_DOUBT)]
    return _told(value, others, 0.0, learnt, (ph, learnt.ph))


@dataclass(frozen=True, slots=True)
class _Pair:
    """A pair of readings with one supposed make-up of the acid."""

    ph: float
    ta_g_per_l: float
    gluconic_share: float

    def neighbours(self) -> tuple[_Pair, ...]:
        """Return the pair with one thing at a time at its low and its high end."""
        share = self.gluconic_share
        return (
            _Pair(max(self.ph - PAIR_PH_DOUBT, 2.0), self.ta_g_per_l, share),
            _Pair(min(self.ph + PAIR_PH_DOUBT, 6.0), self.ta_g_per_l, share),
            _Pair(self.ph, self.ta_g_per_l / TA_FACTOR, share),
            _Pair(self.ph, self.ta_g_per_l * TA_FACTOR, share),
            _Pair(self.ph, self.ta_g_per_l, max(share - GLUCONIC_DOUBT, 0.0)),
            _Pair(self.ph, self.ta_g_per_l, min(share + GLUCONIC_DOUBT, 1.0)),
        )

    def excess(self) -> float:
        """Return the strong-ion excess [eq/kg]."""
        blend = acidbase.starter_blend(self.ph, self.ta_g_per_l, self.gluconic_share)
        return blend.strong_ion_excess_eq_per_kg

    def ph_at(self, ta_g_per_l: float) -> float:
        """Return the pH at another acidity and the same excess."""
        excess = self.excess()
        needed = excess + ta_g_per_l / ACETIC_ACID_G_PER_MOL

        def surplus(total: float) -> float:
            acid = _acid(total, self.gluconic_share, 0.0)
            return acidbase.strong_ions_needed_eq_per_kg(acid, acidbase.END_POINT_PH) - needed

        total = _total_where(surplus)
        return acidbase.ph_of(_acid(total, self.gluconic_share, excess))

    def ta_at(self, ph: float) -> float:
        """Return the acidity at another pH and the same excess."""
        excess = self.excess()

        def surplus(total: float) -> float:
            acid = _acid(total, self.gluconic_share, 0.0)
            return acidbase.strong_ions_needed_eq_per_kg(acid, ph) - excess

        blend = _acid(_total_where(surplus), self.gluconic_share, excess)
        return max(acidbase.titratable_acidity_g_per_l(blend), 0.0)


def _total_where(surplus: Callable[[float], float]) -> float:
    """Return the total acid [mol/kg], not below zero, at which a rising surplus is nothing."""
    empty = surplus(0.0)

    def better(total: float) -> float:
        # nearly a straight line through the empty liquid: its slope bends with activity only
        return max(-empty * total / (surplus(total) - empty), 1e-9)

    return settle(better, 0.05, tolerance=1e-12)


def _acid(total: float, gluconic_share: float, excess: float) -> Blend:
    return Blend(
        acetic_mol_per_kg=total * (1.0 - gluconic_share),
        gluconic_mol_per_kg=total * gluconic_share,
        strong_ion_excess_eq_per_kg=excess,
    )


def _end_point_factor(end_point_ph: float) -> float:
    """Return acidity to pH 8.1 over acidity to another end point, for acetic acid."""
    acid = Blend(acetic_mol_per_kg=0.1)
    usual = acidbase.titratable_acidity_g_per_l(acid)
    return usual / acidbase.titratable_acidity_g_per_l(acid, end_point_ph=end_point_ph)


def _told(
    value: float,
    others: list[float],
    least: float,
    learnt: LearntExcess,
    phs: tuple[float, float],
) -> Estimate:
    below, above = _spread(value, others)
    far = abs(phs[0] - phs[1]) > 0.5
    return Estimate(
        value,
        max(value - math.hypot(below, least), 0.0),
        value + math.hypot(above, least),
        caveats=(Caveat.EXTRAPOLATED,) if far else (),
        sources=learnt.sources,
    )


def _spread(value: float, others: Iterable[float]) -> tuple[float, float]:
    """Return how far (down, up) the others lie, in pairs, as a sum of squares."""
    ends = [other - value for other in others]
    below = above = 0.0
    for first, second in zip(ends[::2], ends[1::2], strict=True):
        below += min(first, second, 0.0) ** 2
        above += max(first, second, 0.0) ** 2
    return math.sqrt(below), math.sqrt(above)


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
