"""What is known of a starter and a tea, and the start pH that follows with its doubt.

Measured values come first; what is missing is assumed, marked with a caveat, and widens
the bounds. The bounds are a central 80 % interval: each uncertain input is moved to its
own low and high end, one at a time, and the shifts of pH are added as squares.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import lru_cache, partial
from typing import Final

from culturecore import acidbase
from culturecore.acidbase import Blend
from culturecore.constants import ACETIC_ACID_G_PER_MOL
from culturecore.outcome import Caveat, Estimate
from culturecore.stages import StarterTaste, TeaKind

STARTER_KG_PER_L: Final = 1.012  # some sugar and acid left; assumption, no source

# pH that a starter of this taste usually has; common practice, no source
TASTE_PH: Final[dict[StarterTaste, float]] = {
    StarterTaste.SWEET: 3.5,
    StarterTaste.BALANCED: 3.2,
    StarterTaste.SOUR: 2.95,
    StarterTaste.VINEGARY: 2.7,
}
UNKNOWN_STARTER_PH: Final = 3.2
_STARTER_SOURCES: Final = ("starter_acid_assumption", "astm_e70_aoac_97341")

# Half-widths of 80 % intervals. Assumptions, but for the meter (astm_e70_aoac_97341).
_METER_AND_MODEL_PH = 0.15
_MEASURED_PH_DOUBT = 0.1
_TASTED_PH_DOUBT = 0.3
_UNKNOWN_PH_DOUBT = 0.45
_TA_FACTOR = 1.10
_EXCESS_FACTOR = 2.1  # log-normal of priors: spread 1.8, 80 %
_GLUCONIC_ENDS = (0.09, 0.51)  # Beta(2, 5), 10 and 90 %
_ALKALINITY_FACTOR, _ALKALINITY_STEP_MEQ = 0.25, 0.4
_TEA_BUFFER_FACTOR = 2.0
_TEA_PH_DOUBT = 0.3
_HERBAL_PH_DOUBT = 1.5  # from fruit and hibiscus to mint
# pH in pure water; black: simpson_2001, the others from memory. In hard water teas reach 7 to 8
# (lunkes_2014), which the water's alkalinity accounts for.
_TEA_PH: Final[dict[TeaKind, float]] = {
    TeaKind.BLACK: acidbase.TEA_PH_IN_PURE_WATER,
    TeaKind.OOLONG: 5.3,
    TeaKind.MIXED: 5.3,
    TeaKind.GREEN: 5.7,
    TeaKind.WHITE: 5.6,
    TeaKind.HERBAL: 5.7,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class AcidInputs:
    """Everything that the start pH depends on; None or absent means not measured."""

    starter_ph: float | None
    starter_ta_g_per_l: float | None
    starter_taste: StarterTaste | None
    tea_kind: TeaKind
    tea_g_per_l: float
    water_alkalinity_meq_per_l: float
    # 80 % ends of the alkalinity; None: those of a test strip around the value
    water_alkalinity_ends_meq_per_l: tuple[float, float] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class _Guess:
    """One complete set of numbers, measured or assumed."""

    starter_ph: float | None  # None: follows from the acidity
    starter_ta_g_per_l: float | None  # None: follows from the pH
    gluconic_share: float
    excess_eq_per_kg: float
    alkalinity_meq_per_l: float
    tea_acid_mol_per_g: float
    tea_ph: float
    tea_g_per_l: float

    def starter(self) -> Blend:
        return _starter(
            self.starter_ph, self.starter_ta_g_per_l, self.gluconic_share, self.excess_eq_per_kg
        )

    def tea(self) -> Blend:
        return _tea(
            self.alkalinity_meq_per_l, self.tea_g_per_l, self.tea_acid_mol_per_g, self.tea_ph
        )


# Neighbouring guesses share most of their starters and teas, and a plan is made anew at
# every key press.
@lru_cache(maxsize=256)
def _starter(
    ph: float | None, ta_g_per_l: float | None, gluconic_share: float, excess_eq_per_kg: float
) -> Blend:
    if ph is not None:
        return acidbase.starter_blend(
            ph, ta_g_per_l, gluconic_share, strong_ion_excess_eq_per_kg=excess_eq_per_kg
        )
    # titrated but no pH: total acid is what was titrated and what the excess had neutralised
    total = (ta_g_per_l or 0.0) / ACETIC_ACID_G_PER_MOL + excess_eq_per_kg
    return Blend(
        acetic_mol_per_kg=total * (1.0 - gluconic_share),
        gluconic_mol_per_kg=total * gluconic_share,
        strong_ion_excess_eq_per_kg=excess_eq_per_kg,
    )


@lru_cache(maxsize=256)
def _tea(
    alkalinity_meq_per_l: float, tea_g_per_l: float, tea_acid_mol_per_g: float, tea_ph: float
) -> Blend:
    return acidbase.sweet_tea_blend(
        alkalinity_meq_per_l,
        tea_g_per_l,
        tea_acid_mol_per_g=tea_acid_mol_per_g,
        tea_ph_in_pure_water=tea_ph,
    )


def starter_and_tea(inputs: AcidInputs) -> tuple[Blend, Blend]:
    """Return the likeliest make-up of the starter and of the sweet tea."""
    guess = _likeliest(inputs)
    return guess.starter(), guess.tea()


def caveats(inputs: AcidInputs) -> tuple[Caveat, ...]:
    """Return what had to be assumed about the acids."""
    return (Caveat.TEA_ASSUMED, *starter_caveats(inputs))


def starter_caveats(inputs: AcidInputs) -> tuple[Caveat, ...]:
    """Return what had to be assumed about the starter alone."""
    found = []
    if inputs.starter_ph is None:
        found.append(Caveat.STARTER_PH_ASSUMED)
    if inputs.starter_ta_g_per_l is None:
        found.append(Caveat.STARTER_ACID_ASSUMED)
    return tuple(found)


def start_ph(inputs: AcidInputs, starter_mass_share: float) -> Estimate:
    """Return the pH of the blend with this mass share of starter, 80 % bounds."""

    def ph(guess: _Guess) -> float:
        parts = (
            (guess.tea(), 1.0 - starter_mass_share),
            (guess.starter(), starter_mass_share),
        )
        return acidbase.ph_of(acidbase.mix(parts))

    return _with_bounds(inputs, ph, caveats(inputs))


def starter_mass_share_for(inputs: AcidInputs, target_ph: float) -> tuple[float, float, float]:
    """Return the mass share of starter that reaches ``target_ph``: (likeliest, low, high).

    1.0 stands for "not even pure starter", 0.0 for "the tea alone is there already".
    """
    guess = _likeliest(inputs)
    shares = [_share_for(other, target_ph) for other in _neighbours(guess, inputs)]
    value = _share_for(guess, target_ph)
    return value, min(value, *shares), max(value, *shares)


def alkalinity_ends_meq_per_l(inputs: AcidInputs) -> tuple[float, float]:
    """Return the 80 % ends of the water's alkalinity [meq/L]."""
    if inputs.water_alkalinity_ends_meq_per_l is not None:
        return inputs.water_alkalinity_ends_meq_per_l
    alkalinity = inputs.water_alkalinity_meq_per_l
    step = max(alkalinity * _ALKALINITY_FACTOR, _ALKALINITY_STEP_MEQ)
    return max(alkalinity - step, 0.0), alkalinity + step


def starter_acidity(inputs: AcidInputs) -> Estimate:
    """Return the starter's titratable acidity as acetic acid [g/L], 80 % bounds.

    From the pH alone it spans a factor of three or four (starter_acid_assumption).
    """

    def log_acidity(guess: _Guess) -> float:
        # a starter above the end point holds no acid to titrate
        return math.log(max(acidbase.titratable_acidity_g_per_l(guess.starter()), 0.01))

    value, below, above = _spread(inputs, log_acidity)
    return Estimate(
        math.exp(value),
        math.exp(value - below),
        math.exp(value + above),
        caveats=starter_caveats(inputs),
        sources=_STARTER_SOURCES,
    )


def starter_ph(inputs: AcidInputs) -> Estimate:
    """Return the starter's pH, 80 % bounds: measured, or from its acidity or taste."""
    value, below, above = _spread(inputs, lambda guess: acidbase.ph_of(guess.starter()))
    return Estimate(
        value,
        value - below,
        value + above,
        caveats=starter_caveats(inputs),
        sources=_STARTER_SOURCES,
    )


def starter_mass_share(inputs: AcidInputs, target_ph: float) -> Estimate:
    """Return the mass share of starter that reaches ``target_ph``, 80 % bounds.

    0 and 1 stand for what :func:`starter_mass_share_for` says they do. The bounds add the
    doubts as squares; those of :func:`starter_mass_share_for` are the worst single one.
    """
    value, below, above = _spread(inputs, lambda guess: _share_for(guess, target_ph))
    return Estimate(
        value,
        max(value - below, 0.0),
        min(value + above, 1.0),
        caveats=caveats(inputs),
        sources=(*_STARTER_SOURCES, "tea_buffer_assumption"),
    )


def _share_for(guess: _Guess, target_ph: float) -> float:
    tea, starter = guess.tea(), guess.starter()
    if acidbase.ph_of(tea) <= target_ph:
        return 0.0
    if acidbase.ph_of(starter) >= target_ph:
        return 1.0
    return acidbase.starter_fraction_for(tea, starter, target_ph)


def _likeliest(inputs: AcidInputs) -> _Guess:
    ph = inputs.starter_ph
    if ph is None and inputs.starter_ta_g_per_l is None:
        taste = inputs.starter_taste
        ph = UNKNOWN_STARTER_PH if taste is None else TASTE_PH[taste]
    return _Guess(
        starter_ph=ph,
        starter_ta_g_per_l=inputs.starter_ta_g_per_l,
        gluconic_share=acidbase.GLUCONIC_SHARE,
        excess_eq_per_kg=acidbase.STRONG_ION_EXCESS_EQ_PER_KG,
        alkalinity_meq_per_l=inputs.water_alkalinity_meq_per_l,
        tea_acid_mol_per_g=acidbase.TEA_ACID_MOL_PER_G,
        tea_ph=_TEA_PH[inputs.tea_kind],
        tea_g_per_l=inputs.tea_g_per_l,
    )


def _neighbours(guess: _Guess, inputs: AcidInputs) -> Iterator[_Guess]:
    """Yield the guess with one input at a time at its low and its high end."""
    change: Callable[..., _Guess] = partial(replace, guess)
    if guess.starter_ph is not None:
        doubt = _starter_ph_doubt(inputs)
        for ph in (guess.starter_ph - doubt, guess.starter_ph + doubt):
            yield change(starter_ph=min(max(ph, 2.0), 6.0))
    if guess.starter_ta_g_per_l is not None:
        yield change(starter_ta_g_per_l=guess.starter_ta_g_per_l / _TA_FACTOR)
        yield change(starter_ta_g_per_l=guess.starter_ta_g_per_l * _TA_FACTOR)
    yield change(excess_eq_per_kg=guess.excess_eq_per_kg / _EXCESS_FACTOR)
    yield change(excess_eq_per_kg=guess.excess_eq_per_kg * _EXCESS_FACTOR)
    for share in _GLUCONIC_ENDS:
        yield change(gluconic_share=share)
    for alkalinity in alkalinity_ends_meq_per_l(inputs):
        yield change(alkalinity_meq_per_l=alkalinity)
    yield change(tea_acid_mol_per_g=guess.tea_acid_mol_per_g / _TEA_BUFFER_FACTOR)
    yield change(tea_acid_mol_per_g=guess.tea_acid_mol_per_g * _TEA_BUFFER_FACTOR)
    doubt = _HERBAL_PH_DOUBT if inputs.tea_kind is TeaKind.HERBAL else _TEA_PH_DOUBT
    yield change(tea_ph=guess.tea_ph - doubt)
    yield change(tea_ph=guess.tea_ph + doubt)


def _starter_ph_doubt(inputs: AcidInputs) -> float:
    if inputs.starter_ph is not None:
        return _MEASURED_PH_DOUBT
    return _UNKNOWN_PH_DOUBT if inputs.starter_taste is None else _TASTED_PH_DOUBT


def _with_bounds(
    inputs: AcidInputs, ph: Callable[[_Guess], float], found: tuple[Caveat, ...]
) -> Estimate:
    value, below, above = _spread(inputs, ph, _METER_AND_MODEL_PH)
    return Estimate(
        value,
        value - below,
        value + above,
        caveats=found,
        sources=("starter_acid_assumption", "tea_buffer_assumption", "astm_e70_aoac_97341"),
    )


def _spread(
    inputs: AcidInputs, quantity: Callable[[_Guess], float], least: float = 0.0
) -> tuple[float, float, float]:
    """Return (value, below, above): the likeliest, and how far down and up it may be."""
    guess = _likeliest(inputs)
    value = quantity(guess)
    below = above = least**2
    # the two ends of one input come in pairs; each side takes the worse of the two
    ends = [quantity(other) - value for other in _neighbours(guess, inputs)]
    for first, second in zip(ends[::2], ends[1::2], strict=True):
        below += min(first, second, 0.0) ** 2
        above += max(first, second, 0.0) ** 2
    return value, math.sqrt(below), math.sqrt(above)
