"""Judge a starter, and say how much of it a wished start pH takes.

A starter is known by its pH, its titrated acidity or, failing both, its taste. What is
not measured is assumed, marked with a caveat, and widens the bounds.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

from culturecore import safety, startacid, sugar
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate, Level, Verdict
from culturecore.stages import StarterTaste, TeaKind

# What makers use by taste; common practice, no source (recipe_practice).
USUAL_SHARE: Final[dict[StarterTaste, float]] = {
    StarterTaste.SWEET: 0.20,
    StarterTaste.BALANCED: 0.15,
    StarterTaste.SOUR: 0.125,
    StarterTaste.VINEGARY: 0.10,
}
USUAL_SHARE_UNKNOWN: Final = 0.15

# Tap water of medium hardness, and the 80 % ends when nobody looked; assumption, no source.
ASSUMED_ALKALINITY_MEQ_PER_L: Final = 1.5
ASSUMED_ALKALINITY_ENDS_MEQ_PER_L: Final = (0.4, 4.0)

PH_RANGE: Final = (2.0, 6.0)
TA_RANGE_G_PER_L: Final = (0.1, 60.0)
TARGET_PH_RANGE: Final = (3.0, 4.6)


class StarterGrade(Enum):
    """How strong a starter is, from not to be used to vinegar."""

    UNFIT = "unfit"
    WEAK = "weak"
    MILD = "mild"
    GOOD = "good"
    VINEGARY = "vinegary"


# Acidity from which a grade holds [g/L as acetic acid]. Drawn between the acidities that
# the four tastes stand for; starter_acid_assumption.
GRADE_FROM_G_PER_L: Final = (
    (StarterGrade.VINEGARY, 8.0),
    (StarterGrade.GOOD, 4.0),
    (StarterGrade.MILD, 2.0),
    (StarterGrade.WEAK, 0.0),
)
_GRADE_LEVEL: Final = {
    StarterGrade.UNFIT: Level.STOP,
    StarterGrade.WEAK: Level.WARN,
    StarterGrade.MILD: Level.INFORM,
    StarterGrade.GOOD: Level.INFORM,
    StarterGrade.VINEGARY: Level.INFORM,
}
VERDICT_CODES: Final = frozenset(
    {
        "starter_unfit", "starter_weak", "starter_mild", "starter_good", "starter_vinegary",
        "starter_over_acid", "starter_contradicts", "starter_untested",
        "starter_share_usual", "starter_share_over_usual", "starter_share_under_usual",
        "starter_target_out_of_reach", "starter_tea_already_there", "starter_water_assumed",
    }
)  # fmt: skip
# Strong-ion excess that tea and water can give a starter; outside, pH and acidity disagree.
LIKELY_EXCESS_EQ_PER_KG: Final = (-0.003, 0.025)
IMPOSSIBLE_EXCESS_EQ_PER_KG: Final = 0.2


@dataclass(frozen=True, slots=True, kw_only=True)
class StarterJudgement:
    """What a starter is worth.

    ``ta_g_per_l`` is its titratable acidity as acetic acid [g/L]; ``usual_share`` the volume
    share that makers give of such a one (common practice, no source). Verdicts come loudest
    first.
    """

    grade: StarterGrade
    ph: Estimate
    ta_g_per_l: Estimate
    usual_share: Estimate
    verdicts: tuple[Verdict, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class StarterAmount:
    """How much starter a start pH takes, and what that rests on.

    ``share`` is the volume share in the blend; ``usual_share`` and ``usual_volume_l`` are
    common practice, to compare with; ``start_ph`` is that of the blend with ``volume_l``.
    """

    volume_l: Estimate
    share: Estimate
    start_ph: Estimate
    alkalinity_meq_per_l: Estimate
    usual_share: Estimate
    usual_volume_l: float
    verdicts: tuple[Verdict, ...]
    sources: tuple[str, ...]


def usual_share(*, ph: float | None = None, taste: StarterTaste | None = None) -> float:
    """Return the usual volume share of a starter, by taste or by the taste of its pH.

    recipe_practice: common practice, no source.
    """
    if taste is not None:
        return USUAL_SHARE[taste]
    if ph is None:
        return USUAL_SHARE_UNKNOWN
    return min((abs(startacid.TASTE_PH[taste] - ph), s) for taste, s in USUAL_SHARE.items())[1]


def volume_share(mass_share: float, tea_kg_per_l: float) -> float:
    """Return the volume share of starter for a mass share; volumes are taken to add up."""
    starter_l = mass_share / startacid.STARTER_KG_PER_L
    return starter_l / (starter_l + (1.0 - mass_share) / tea_kg_per_l)


def judge_starter(
    *,
    ph: float | None = None,
    ta_g_per_l: float | None = None,
    taste: StarterTaste | None = None,
) -> StarterJudgement:
    """Grade a starter from whatever is known of it.

    Parameters
    ----------
    ph : float | None
        Measured, 2 to 6.
    ta_g_per_l : float | None
        Titratable acidity as acetic acid, 0.1 to 60 g/L.
    taste : StarterTaste | None
        Used for what was not measured.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, and ``reason`` "contradicts_ph" when no drink of that pH can
        hold so much acid.

    Notes
    -----
    UNFIT above pH 4.2 (fpt_2025: not even a finished drink); else by acidity, which follows
    from the pH or the taste with wide bounds when it was not titrated.
    """
    inputs = _inputs(ph=ph, ta_g_per_l=ta_g_per_l, taste=taste)
    found_ph = startacid.starter_ph(inputs)
    acidity = startacid.starter_acidity(inputs)
    grade = _grade(found_ph, acidity)
    numbers = {"ph": found_ph.value, "ta_g_per_l": acidity.value}
    sources = ("fpt_2025",) if grade is StarterGrade.UNFIT else ("starter_acid_assumption",)
    found = [Verdict(f"starter_{grade.value}", _GRADE_LEVEL[grade], numbers, sources)]
    if found_ph.value < safety.limit("ph_finished_min"):
        found.append(Verdict("starter_over_acid", Level.WARN, numbers, ("niagara_region",)))
    if _contradicts(inputs):
        found.append(
            Verdict("starter_contradicts", Level.WARN, numbers, ("starter_acid_assumption",))
        )
    if ph is None and ta_g_per_l is None:
        # a taste is no measurement; the pH of the blend has to be taken
        found.append(Verdict("starter_untested", Level.WARN, numbers, ("cfr_114_80",)))
    return StarterJudgement(
        grade=grade,
        ph=found_ph,
        ta_g_per_l=acidity,
        usual_share=_usual(ph, taste),
        verdicts=_loudest_first(found),
        sources=("starter_acid_assumption", "recipe_practice", "fpt_2025"),
    )


def starter_volume_for(
    *,
    blend_volume_l: float,
    target_start_ph: float = 4.2,
    starter_ph: float | None = None,
    starter_ta_g_per_l: float | None = None,
    starter_taste: StarterTaste | None = None,
    tea_kind: TeaKind = TeaKind.BLACK,
    tea_g_per_l: float = 4.0,
    sugar_g_per_l: float = 50.0,
    water_alkalinity_meq_per_l: float | None = None,
) -> StarterAmount:
    """Return how much starter brings a blend to a start pH.

    Parameters
    ----------
    blend_volume_l : float
        Sweet tea and starter together, above 0 to 1000 L.
    target_start_ph : float
        3.0 to 4.6.
    starter_ph, starter_ta_g_per_l, starter_taste
        As in :func:`judge_starter`.
    tea_kind, tea_g_per_l, sugar_g_per_l
        Of the sweet tea: leaf 0 to 50 g/L, sugar 0 to 300 g/L.
    water_alkalinity_meq_per_l : float | None
        0 to 20 meq/L; None: not known, 1.5 is assumed (0.4 to 4.0).

    Returns
    -------
    StarterAmount
        What the chemistry takes, without any least amount: that is for the plan to add.
        A share of 1 means that not even pure starter reaches the pH, 0 that the tea is
        there already; a verdict says so.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, and as :func:`judge_starter`.

    Notes
    -----
    Balance of strong ions at the target pH (see ``acidbase``); starter_acid_assumption and
    tea_buffer_assumption for what was not measured. Common practice is the special case of
    ordinary water: some 15 % of a mild starter, a third of that of a vinegary one.
    """
    if not 0.0 < blend_volume_l <= 1000.0:  # NaN fails too
        raise ImpossibleInput("blend_volume_l", blend_volume_l, low=0.0, high=1000.0, unit="L")
    _check("target_start_ph", target_start_ph, *TARGET_PH_RANGE, "pH")
    _check("sugar_g_per_l", sugar_g_per_l, 0.0, 300.0, "g/L")
    inputs = _inputs(
        ph=starter_ph,
        ta_g_per_l=starter_ta_g_per_l,
        taste=starter_taste,
        tea_kind=tea_kind,
        tea_g_per_l=tea_g_per_l,
        water_alkalinity_meq_per_l=water_alkalinity_meq_per_l,
    )
    water_caveats = (Caveat.WATER_ASSUMED,) if water_alkalinity_meq_per_l is None else ()
    tea_kg_per_l = sugar.density_kg_per_l(sugar.brix_from_g_per_l(sugar_g_per_l))
    mass_share = startacid.starter_mass_share(inputs, target_start_ph)
    share = Estimate(
        volume_share(mass_share.value, tea_kg_per_l),
        volume_share(mass_share.low, tea_kg_per_l),
        volume_share(mass_share.high, tea_kg_per_l),
        caveats=(*water_caveats, *mass_share.caveats),
        sources=mass_share.sources,
    )
    usual = _usual(starter_ph, starter_taste)
    low_alkalinity, high_alkalinity = startacid.alkalinity_ends_meq_per_l(inputs)
    return StarterAmount(
        volume_l=_times(share, blend_volume_l),
        share=share,
        start_ph=startacid.start_ph(inputs, mass_share.value),
        alkalinity_meq_per_l=Estimate(
            inputs.water_alkalinity_meq_per_l,
            low_alkalinity,
            high_alkalinity,
            caveats=water_caveats,
            sources=("tea_buffer_assumption",) if water_caveats else (),
        ),
        usual_share=usual,
        usual_volume_l=usual.value * blend_volume_l,
        verdicts=_amount_verdicts(share, usual, inputs, target_start_ph),
        sources=(*share.sources, "recipe_practice"),
    )


def _inputs(
    *,
    ph: float | None,
    ta_g_per_l: float | None,
    taste: StarterTaste | None,
    tea_kind: TeaKind = TeaKind.BLACK,
    tea_g_per_l: float = 4.0,
    water_alkalinity_meq_per_l: float | None = None,
) -> startacid.AcidInputs:
    """Check what is known and put it together."""
    if ph is not None:
        _check("starter_ph", ph, *PH_RANGE, "pH")
    if ta_g_per_l is not None:
        _check("starter_ta_g_per_l", ta_g_per_l, *TA_RANGE_G_PER_L, "g/L")
    _check("tea_g_per_l", tea_g_per_l, 0.0, 50.0, "g/L")
    ends = None
    alkalinity = water_alkalinity_meq_per_l
    if alkalinity is None:
        alkalinity, ends = ASSUMED_ALKALINITY_MEQ_PER_L, ASSUMED_ALKALINITY_ENDS_MEQ_PER_L
    # room for the upper end of its doubt, which the tea must allow too
    _check("water_alkalinity_meq_per_l", alkalinity, 0.0, 15.0, "meq/L")
    inputs = startacid.AcidInputs(
        starter_ph=ph,
        starter_ta_g_per_l=ta_g_per_l,
        starter_taste=taste,
        tea_kind=tea_kind,
        tea_g_per_l=tea_g_per_l,
        water_alkalinity_meq_per_l=alkalinity,
        water_alkalinity_ends_meq_per_l=ends,
    )
    made_up, _tea = startacid.starter_and_tea(inputs)
    if made_up.strong_ion_excess_eq_per_kg > IMPOSSIBLE_EXCESS_EQ_PER_KG:
        raise ImpossibleInput("starter_ta_g_per_l", ta_g_per_l, unit="g/L", reason="contradicts_ph")
    return inputs


def _grade(ph: Estimate, acidity: Estimate) -> StarterGrade:
    if ph.value > safety.limit("ph_finished_max"):
        return StarterGrade.UNFIT
    return next(grade for grade, least in GRADE_FROM_G_PER_L if acidity.value >= least)


def _contradicts(inputs: startacid.AcidInputs) -> bool:
    """Say whether pH and acidity, both measured, are unlike any tea and water."""
    if inputs.starter_ph is None or inputs.starter_ta_g_per_l is None:
        return False
    made_up, _tea = startacid.starter_and_tea(inputs)
    low, high = LIKELY_EXCESS_EQ_PER_KG
    return not low <= made_up.strong_ion_excess_eq_per_kg <= high


def _usual(ph: float | None, taste: StarterTaste | None) -> Estimate:
    share = usual_share(ph=ph, taste=taste)
    least, most = min(USUAL_SHARE.values()), max(USUAL_SHARE.values())
    return Estimate(share, least, most, sources=("recipe_practice",))


def _amount_verdicts(
    share: Estimate, usual: Estimate, inputs: startacid.AcidInputs, target_ph: float
) -> tuple[Verdict, ...]:
    numbers = {
        "share": share.value,
        "low": share.low,
        "high": share.high,
        "usual": usual.value,
        "target_ph": target_ph,
        "alkalinity_meq_per_l": inputs.water_alkalinity_meq_per_l,
    }
    found = []
    if share.value >= 1.0:
        found.append(Verdict("starter_target_out_of_reach", Level.WARN, numbers, share.sources))
    elif share.value <= 0.0:
        # acid tea is no reason to leave the starter out: it brings the live culture
        found.append(Verdict("starter_tea_already_there", Level.WARN, numbers, ("fst_297",)))
    else:
        code, level = "starter_share_usual", Level.INFORM
        if share.low > usual.high:
            code, level = "starter_share_over_usual", Level.WARN
        elif share.high < usual.low:
            code = "starter_share_under_usual"
        found.append(Verdict(code, level, numbers, ("recipe_practice",)))
    if Caveat.WATER_ASSUMED in share.caveats:
        found.append(
            Verdict("starter_water_assumed", Level.WARN, numbers, ("tea_buffer_assumption",))
        )
    return _loudest_first(found)


def _loudest_first(found: list[Verdict]) -> tuple[Verdict, ...]:
    order = (Level.STOP, Level.WARN, Level.INFORM)
    return tuple(sorted(found, key=lambda verdict: order.index(verdict.level)))


def _times(share: Estimate, volume_l: float) -> Estimate:
    return Estimate(
        share.value * volume_l,
        share.low * volume_l,
        share.high * volume_l,
        caveats=share.caveats,
        sources=share.sources,
    )


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
