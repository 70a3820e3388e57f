"""What pH an acidity goes with, and back, once one pair of readings is known.

A drink's pH does not follow from its acidity alone: the strong-ion excess of tea and
water stands between them. One reading of both gives that excess; afterwards either can be
told from the other, as long as the acids stay of the same make-up.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Final

from culturecore import acidbase
from culturecore.acidbase import Blend
from culturecore.constants import ACETIC_ACID_G_PER_MOL
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate, Level, Verdict
from culturecore.rootfinding import settle
from culturecore.starter import IMPOSSIBLE_EXCESS_EQ_PER_KG, LIKELY_EXCESS_EQ_PER_KG

# Half-widths of 80 % bounds in learning and telling; assumptions, but for the last.
PAIR_PH_DOUBT: Final = 0.08  # one meter, read twice
TA_FACTOR: Final = 1.05
GLUCONIC_DOUBT: Final = 0.2
# So that four of five bottles fall within what a sister bottle of the same make foretold
# (47 bottled drinks, Sogin & Worobo 2024; see the tests).
MODEL_PH_DOUBT: Final = 0.18

FAR_PH: Final = 0.5  # from the pair, where the make-up of the acids may be another

VERDICT_CODES: Final = frozenset({"pair_plausible", "pair_odd"})


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


def _told(
    value: float,
    others: list[float],
    least: float,
    learnt: LearntExcess,
    phs: tuple[float, float],
) -> Estimate:
    below, above = _spread(value, others)
    far = abs(phs[0] - phs[1]) > FAR_PH
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


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
