"""Questions about alcohol: always a range, never a certificate."""

from __future__ import annotations

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import t
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Question,
    Span,
    choice,
    exact,
    number,
    told,
)
from brewdesk.services.wording.limits import limit_lines
from culturecore import alcohol, safety
from culturecore.outcome import Estimate
from culturecore.units import Kind


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (_from_sugar(), _from_two())


def _threshold_field() -> Field:
    named = dict(zip(safety.LIMITS, limit_lines(), strict=True))
    options = tuple((key, f"{named[key].name} {named[key].value}") for key in
                    alcohol.THRESHOLD_KEYS)  # fmt: skip
    return choice("threshold_key", t("Limit to compare with"), options, alcohol.THRESHOLD_KEYS[0])


def _only_a_laboratory() -> str:
    return t("Neither sugar nor instruments can settle a legal limit: only a laboratory can. It "
             "also goes on rising in a closed bottle. Your local law decides.")  # fmt: skip


def _from_sugar() -> Question:
    return Question(
        key="alcohol_from_sugar",
        group=Group.ALCOHOL,
        title=t("How much alcohol, from the sugar that is gone?"),
        purpose=t("The range that the lost sugar can have left behind."),
        words=t("ethanol ABV legal limit 0.5 percent balance"),
        fields=(
            number("start_sugar_g_per_l", t("Sugar at the start"), Kind.SUGAR, 60.0),
            number("left_sugar_low_g_per_l", t("Sugar left, at least"), Kind.SUGAR, 30.0),
            number("left_sugar_high_g_per_l", t("Sugar left, at most"), Kind.SUGAR, 50.0),
            number("acid_formed_g_per_l", t("Acidity formed"), Kind.ACIDITY, 4.0),
            _threshold_field(),
        ),
        answer=_sugar_answered,
    )


def _answered(abv: Estimate, given: Inputs, says: str, formula: str, span: Span) -> Answer:
    key = given.word("threshold_key")
    limit = safety.LIMITS[key]
    return Answer(
        lines=(
            told("abv", t("Alcohol by volume"), abv, measures.ABV, span),
            exact("limit", t("The limit you chose"), limit.value, measures.ABV),
        ),
        says=says,
        verdicts=(alcohol.threshold_verdict(abv, key),),
        caveats=abv.caveats,
        notes=(_only_a_laboratory(),),
        formulas=(
            Formula(formula, abv.sources),
            Formula(t("The limit you chose"), limit.source_keys),
        ),
    )


def _sugar_answered(given: Inputs) -> Answer:
    abv = alcohol.from_sugar(
        start_sugar_g_per_l=given.number("start_sugar_g_per_l"),
        left_sugar_low_g_per_l=given.number("left_sugar_low_g_per_l"),
        left_sugar_high_g_per_l=given.number("left_sugar_high_g_per_l"),
        acid_formed_g_per_l=given.number("acid_formed_g_per_l"),
    )
    says = t("Anything from {abv_low} to {abv_high} fits these figures. The upper end has all lost "
             "sugar turned to alcohol and none of it to acid.")  # fmt: skip
    return _answered(abv, given, says, t("Alcohol from sugar, less what acid took"), Span.BOUNDS)


def _from_two() -> Question:
    return Question(
        key="alcohol_from_two",
        group=Group.ALCOHOL,
        title=t("How much alcohol, by hydrometer and refractometer?"),
        purpose=t("Sugar raises both readings, alcohol raises one and lowers the other."),
        words=t("ethanol ABV legal limit 0.5 percent paired gravity Brix"),
        fields=(
            number("specific_gravity", t("Hydrometer, at 20 °C, gas driven out"), Kind.GRAVITY,
                   1.016),
            number("brix", t("Refractometer, in the same sample"), Kind.BRIX, 5.0),
            number("acid_g_per_l", t("Its acidity"), Kind.ACIDITY, 4.0),
            number("specific_gravity_sd", t("The hydrometer may be off by"), Kind.GRAVITY, 0.001),
            number("brix_sd", t("The refractometer may be off by"), Kind.BRIX, 0.2),
            _threshold_field(),
        ),
        answer=_two_answered,
    )  # fmt: skip


def _two_answered(given: Inputs) -> Answer:
    abv = alcohol.from_two_readings(
        alcohol.TwoReadings(
            specific_gravity=given.number("specific_gravity"),
            brix=given.number("brix"),
            specific_gravity_sd=given.number("specific_gravity_sd"),
            brix_sd=given.number("brix_sd"),
            acid_g_per_l=given.number("acid_g_per_l"),
        )
    )
    says = t("Between {abv_low} and {abv_high} about 8 times in 10, and not nearer: the two "
             "instruments were made for sugar water.")  # fmt: skip
    formula = t("Two readings, two unknowns: sugar and alcohol")
    return _answered(abv, given, says, formula, Span.LIKELY)
