"""Questions about acids: the pH of a mixture, a titration, acidity and pH of one drink."""

from __future__ import annotations

from typing import Final

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import names, t, yes_no_or_unknown
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Number,
    Question,
    choice,
    exact,
    number,
    told,
)
from culturecore import acidbase, acidpair, titration
from culturecore.formulas import sources_of
from culturecore.titration import ExpressedAs
from culturecore.units import Kind

# Grams to the mol: equivalents (iupac_masses) times the protons an acid can give off.
_ACETIC: Final = Number("g/L", None, titration.GRAMS_PER_EQUIVALENT[ExpressedAs.ACETIC])
_GLUCONIC: Final = Number("g/L", None, titration.GRAMS_PER_EQUIVALENT[ExpressedAs.GLUCONIC])
_LACTIC: Final = Number("g/L", None, titration.GRAMS_PER_EQUIVALENT[ExpressedAs.LACTIC])
_MALIC: Final = Number("g/L", None, 2.0 * titration.GRAMS_PER_EQUIVALENT[ExpressedAs.MALIC])
_CITRIC: Final = Number("g/L", None, 3.0 * titration.GRAMS_PER_EQUIVALENT[ExpressedAs.CITRIC])
_MILLIEQUIVALENTS: Final = Number("meq/L", 1, 1000.0)


def questions() -> tuple[Question, ...]:
    """Return the questions of this half of the group."""
    return (_acids(), _titration(), _ph_from_ta(), _ta_from_ph())


def _acids() -> Question:
    return Question(
        key="ph_of_acids",
        group=Group.ACIDITY,
        title=t("What pH has a mixture of acids?"),
        purpose=t("From grams of each acid in a litre and the strong ions of tea, water or fruit."),
        words=t("blend acetic gluconic lactic malic citric vinegar charge balance"),
        fields=(
            number("acetic_mol_per_kg", t("Acetic acid"), _ACETIC, 0.05, low=0.0),
            number("gluconic_mol_per_kg", t("Gluconic acid"), _GLUCONIC, 0.02, low=0.0),
            number("lactic_mol_per_kg", t("Lactic acid"), _LACTIC, 0.0, low=0.0),
            number("malic_mol_per_kg", t("Malic acid"), _MALIC, 0.0, low=0.0),
            number("citric_mol_per_kg", t("Citric acid"), _CITRIC, 0.0, low=0.0),
            number("strong_ion_excess_eq_per_kg", t("Strong-ion excess"), _MILLIEQUIVALENTS, 0.004),
            number("temperature_c", t("Temperature"), Kind.TEMPERATURE, 25.0),
        ),
        answer=_acids_answered,
    )


def _acids_answered(given: Inputs) -> Answer:
    blend = acidbase.Blend(
        acetic_mol_per_kg=given.number("acetic_mol_per_kg"),
        gluconic_mol_per_kg=given.number("gluconic_mol_per_kg"),
        lactic_mol_per_kg=given.number("lactic_mol_per_kg"),
        malic_mol_per_kg=given.number("malic_mol_per_kg"),
        citric_mol_per_kg=given.number("citric_mol_per_kg"),
        strong_ion_excess_eq_per_kg=given.number("strong_ion_excess_eq_per_kg"),
    )
    temperature_c = given.number("temperature_c")
    return Answer(
        lines=(
            exact("ph", t("pH"), acidbase.ph_of(blend, temperature_c), Kind.PH),
            exact("ta", t("Titratable acidity to pH 8.1, as acetic acid"),
                  acidbase.titratable_acidity_g_per_l(blend, temperature_c), Kind.ACIDITY),
            exact("buffer", t("Strong base that moves it by one pH"),
                  acidbase.buffer_capacity_eq_per_kg(blend, temperature_c), _MILLIEQUIVALENTS),
        ),
        says=t("For exactly this mixture the calculation gives pH {ph}; a meter in a real drink "
               "seldom agrees better than 0.15."),
        notes=(
            t("A litre is taken for a kilogram of water. Sugar is no acid and takes no part."),
            t("The strong-ion excess is what tea, water and fruit bring as potassium, sodium, "
              "calcium and magnesium, less chloride and sulfate. A ripe starter has some 4 meq/L; "
              "that is an assumption."),
        ),
        formulas=(
            Formula(t("Charge balance with Davies activity coefficients"),
                    tuple(source.key for source in sources_of(acidbase.ph_of))),
            Formula(t("End point of the titration"), ("aoac_94215",)),
            Formula(t("Molar masses"), ("iupac_masses",)),
        ),
    )  # fmt: skip


def _titration() -> Question:
    return Question(
        key="titration",
        group=Group.ACIDITY,
        title=t("What acidity does my titration show?"),
        purpose=t("From the lye a sample took up to its end point."),
        words=t("TA NaOH sodium hydroxide phenolphthalein end point tartaric"),
        fields=(
            number("lye_ml", t("Lye used"), measures.MILLILITRES, 8.0),
            number("lye_normality", t("Strength of the lye"), measures.NORMALITY, 0.1),
            number("sample_ml", t("Sample"), measures.MILLILITRES, 10.0),
            number("blank_ml", t("Lye that plain water took"), measures.MILLILITRES, 0.0),
            number("dilution_factor", t("Diluted before, by"), measures.FACTOR, 1.0),
            number("end_point_ph", t("pH of the end point"), Kind.PH, 8.1),
            choice("expressed_as", t("Told as"), names(ExpressedAs), ExpressedAs.ACETIC),
            choice("is_degassed", t("Gas driven out first?"), yes_no_or_unknown(), True),
        ),
        answer=_titrated,
    )


def _titrated(given: Inputs) -> Answer:
    found = titration.titrate(
        lye_ml=given.number("lye_ml"),
        lye_normality=given.number("lye_normality"),
        sample_ml=given.number("sample_ml"),
        blank_ml=given.number("blank_ml"),
        dilution_factor=given.number("dilution_factor"),
        end_point_ph=given.number("end_point_ph"),
        expressed_as=given.chosen("expressed_as", ExpressedAs),
        is_degassed=given.maybe_so("is_degassed"),
    )
    return Answer(
        lines=(
            told("told", t("Acidity, told as chosen"), found.acidity_g_per_l, Kind.ACIDITY),
            told("meq", t("Acidity in equivalents"), found.acidity_meq_per_l, measures.MEQ),
            told("ta", t("As acetic acid to pH 8.1, as used everywhere here"), found.ta_g_per_l,
                 Kind.ACIDITY),
        ),
        says=t("With the usual doubts of drops, syringe and lye it lies between {told_low} and "
               "{told_high} about 8 times in 10."),
        verdicts=(found.verdict,),
        notes=(
            t("Water added in the titration glass is no dilution: only what was poured away "
              "counts."),
        ),
        formulas=(
            Formula(t("Lye times its strength, over the sample"), found.sources),
        ),
    )  # fmt: skip


def _pair_fields() -> tuple[Field, ...]:
    return (
        number("ph", t("pH, of the pair you measured"), Kind.PH, 3.2),
        number("ta_g_per_l", t("Acidity, of the same pair"), Kind.ACIDITY, 4.0),
    )


def _learnt(given: Inputs) -> acidpair.LearntExcess:
    return acidpair.learn_excess(ph=given.number("ph"), ta_g_per_l=given.number("ta_g_per_l"))


def _pair_formulas(learnt: acidpair.LearntExcess) -> tuple[Formula, ...]:
    return (
        Formula(t("Strong-ion excess learnt from one pair, kept for the rest"), learnt.sources),
    )


def _ph_from_ta() -> Question:
    return Question(
        key="ph_from_ta",
        group=Group.ACIDITY,
        title=t("What pH goes with an acidity?"),
        purpose=t("One pair of readings of your own drink links the two; then either tells the "
                  "other."),
        words=t("TA titratable paired relation convert"),
        fields=(
            *_pair_fields(),
            number("other_ta_g_per_l", t("The acidity to tell the pH for"), Kind.ACIDITY, 6.0,
                   low=0.1, high=60.0),
        ),
        answer=_ph_told,
        is_slow=True,
    )  # fmt: skip


def _ph_told(given: Inputs) -> Answer:
    learnt = _learnt(given)
    found = acidpair.ph_from_ta(ta_g_per_l=given.number("other_ta_g_per_l"), learnt=learnt)
    return Answer(
        lines=(
            told("other_ph", t("pH"), found, Kind.PH),
            told("excess", t("Strong-ion excess of the pair"), learnt.excess_meq_per_l,
                 measures.MEQ),
        ),
        says=t("At {other_ta_g_per_l} expect a pH between {other_ph_low} and {other_ph_high}, "
               "as long as tea, water and kinds of acid stay the same."),
        verdicts=(learnt.verdict,),
        caveats=found.caveats,
        formulas=_pair_formulas(learnt),
    )  # fmt: skip


def _ta_from_ph() -> Question:
    return Question(
        key="ta_from_ph",
        group=Group.ACIDITY,
        title=t("What acidity goes with a pH?"),
        purpose=t("One pair of readings of your own drink links the two; then either tells the "
                  "other."),
        words=t("TA titratable paired relation convert"),
        fields=(
            *_pair_fields(),
            number("other_ph", t("The pH to tell the acidity for"), Kind.PH, 3.0,
                   low=2.0, high=6.0),
        ),
        answer=_ta_told,
        is_slow=True,
    )  # fmt: skip


def _ta_told(given: Inputs) -> Answer:
    learnt = _learnt(given)
    found = acidpair.ta_from_ph(ph=given.number("other_ph"), learnt=learnt)
    return Answer(
        lines=(
            told("other_ta", t("Acidity, as acetic acid"), found, Kind.ACIDITY),
            told("excess", t("Strong-ion excess of the pair"), learnt.excess_meq_per_l,
                 measures.MEQ),
        ),
        says=t("At pH {other_ph} expect {other_ta_low} to {other_ta_high}: a small error of pH "
               "is a large one of acidity."),
        verdicts=(learnt.verdict,),
        caveats=found.caveats,
        formulas=_pair_formulas(learnt),
    )  # fmt: skip
