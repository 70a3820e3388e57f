"""Questions of safety: each reading held against its limit, and the limits themselves."""

from __future__ import annotations

from typing import Final

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import names, t, yes_no_or_unknown, yes_or_no
from brewdesk.services.reckoner.question import (
    Answer,
    Formula,
    Group,
    Inputs,
    Line,
    Measure,
    Number,
    Question,
    choice,
    exact,
    number,
)
from brewdesk.services.wording.limits import limit_lines
from culturecore import drinkverdicts, safety
from culturecore.outcome import Verdict
from culturecore.stages import Material
from culturecore.units import Kind

_MEASURES: Final[dict[str, Measure]] = {
    "": measures.PERCENT,
    "pH": Kind.PH,
    "°C": Kind.TEMPERATURE,
    "L": Kind.VOLUME,
    "d": measures.DAYS,
    "h": measures.HOURS,
    "min": measures.MINUTES,
    "bar": measures.BAR,
    "vol": measures.VOLUMES,
    "% vol": measures.ABV,
    "fl oz": measures.FLUID_OUNCES,
    "ppm": measures.MILLIGRAMS_PER_LITRE,
    "mg": measures.MILLIGRAMS,
    "mV": measures.MILLIVOLTS,
}


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (
        _finished(), _on_day(), _culture_in(), _place(), _uncultured(), _souring(), _material(),
        _storage(), _keeping(), _serving(), _flavouring(), _pasteurising(), _chlorine(), _limit(),
    )  # fmt: skip


def _limit_line(key: str) -> Line:
    named = dict(zip(safety.LIMITS, limit_lines(), strict=True))
    limit = safety.LIMITS[key]
    return exact(key, named[key].name, limit.value, _MEASURES.get(limit.unit, Number(limit.unit)))


def _judged(verdict: Verdict | None, *limit_keys: str) -> Answer:
    """Make an answer of a verdict and the limits that it was held against."""
    sources = tuple(
        dict.fromkeys(
            (
                *(verdict.sources if verdict is not None else ()),
                *(key for name in limit_keys for key in safety.LIMITS[name].source_keys),
            )
        )
    )
    return Answer(
        lines=tuple(_limit_line(key) for key in limit_keys),
        says="" if verdict is not None else t("There is nothing to note about that yet."),
        verdicts=() if verdict is None else (verdict,),
        notes=(t("A verdict never says that a drink is safe. Where your local rules ask for more, "
                 "follow them."),),
        formulas=(Formula(t("Published limits and advice"), sources),),
        is_judgement=True,
    )  # fmt: skip


def _finished() -> Question:
    return Question(
        key="finished_ph",
        group=Group.SAFETY,
        title=t("Is it sour enough to drink or bottle?"),
        purpose=t("The pH of a finished drink, with the doubt of the reading counted in."),
        words=t("pH 4.2 limit"),
        fields=(
            number("ph", t("pH"), Kind.PH, 3.2),
            number("sd", t("It may be off by"), Kind.PH, 0.1),
            choice("by_strip", t("Read from a paper strip?"), yes_or_no(), False),
        ),
        answer=lambda given: _judged(
            drinkverdicts.finished_ph_verdict(
                given.number("ph"), given.number("sd"), by_strip=given.is_so("by_strip")
            ),
            "ph_finished_max",
            "ph_finished_min",
            "ph_strip_max",
        ),
    )


def _on_day() -> Question:
    return Question(
        key="ph_on_day",
        group=Group.SAFETY,
        title=t("Is this pH in time?"),
        purpose=t("A reading while it sours, held against the day by which it has to be sour."),
        words=t("deadline seven days slow safe discard"),
        fields=(
            number("ph", t("pH"), Kind.PH, 3.9),
            number("sd", t("It may be off by"), Kind.PH, 0.1),
            number("day", t("Days since the starter went in"), measures.DAYS, 5.0, high=10_000.0),
        ),
        answer=lambda given: _judged(
            safety.ph_verdict(given.number("ph"), given.number("sd"), given.number("day")),
            "ph_finished_max",
            "ph_deadline_days",
        ),
    )


def _culture_in() -> Question:
    return Question(
        key="culture_in",
        group=Group.SAFETY,
        title=t("Is it cool enough for the culture?"),
        purpose=t("The temperature of the sweet tea, held against your own limit."),
        words=t("temperature warm hot pellicle starter"),
        fields=(
            number("temperature_c", t("Temperature of the liquid"), Kind.TEMPERATURE, 29.0),
            number("limit_c", t("Your limit"), Kind.TEMPERATURE, 30.0),
        ),
        answer=lambda given: _judged(
            safety.culture_temperature_verdict(
                given.number("temperature_c"), given.number("limit_c")
            ),
            "culture_in_max_c",
            "culture_harm_c",
        ),
    )


def _place() -> Question:
    return Question(
        key="place",
        group=Group.SAFETY,
        title=t("Does this place suit a souring jar?"),
        purpose=t("The usual temperature of the place where it stands."),
        words=t("temperature room cold warm"),
        fields=(number("temperature_c", t("Temperature there"), Kind.TEMPERATURE, 22.0),),
        answer=lambda given: _judged(
            safety.place_temperature_verdict(given.number("temperature_c")),
            "place_low_c",
            "place_high_c",
        ),
    )


def _uncultured() -> Question:
    return Question(
        key="uncultured",
        group=Group.SAFETY,
        title=t("How long may sweet tea stand without starter?"),
        purpose=t("Hours in which it is lukewarm: germs can grow and nothing is sour yet."),
        words=t("time hours cooling tea germs"),
        fields=(
            number("hours_below_57_c", t("It has stood for"), measures.HOURS, 2.0, high=10_000.0),
        ),
        answer=lambda given: _judged(
            safety.uncultured_verdict(given.number("hours_below_57_c")),
            "uncultured_warn_hours",
            "uncultured_max_hours",
        ),
    )


def _souring() -> Question:
    return Question(
        key="souring_length",
        group=Group.SAFETY,
        title=t("Has it been souring for too long?"),
        purpose=t("Days since the starter went in."),
        words=t("time days old vinegar"),
        fields=(
            number("day", t("Days"), measures.DAYS, 24.0, low=0.0, high=10_000.0),
        ),
        answer=lambda given: _judged(
            safety.souring_length_verdict(given.number("day")),
            "long_souring_days",
            "over_long_souring_days",
        ),
    )  # fmt: skip


def _material() -> Question:
    return Question(
        key="material",
        group=Group.SAFETY,
        title=t("May this material touch it?"),
        purpose=t("What sour liquid stands in for weeks."),
        words=t("vessel lead glaze ceramic metal plastic wood crystal"),
        fields=(choice("material", t("Material"), names(Material), Material.GLASS),),
        answer=lambda given: _judged(safety.material_verdict(given.chosen("material", Material))),
    )


def _storage() -> Question:
    return Question(
        key="storage",
        group=Group.SAFETY,
        title=t("Is it kept cold enough?"),
        purpose=t("The temperature where the finished drink stands."),
        words=t("refrigerator fridge temperature"),
        fields=(
            number("temperature_c", t("Temperature there"), Kind.TEMPERATURE, 4.0),
            number("sd_c", t("Degrees Celsius it may be off by"), Number("°C", 1), 1.0),
        ),
        answer=lambda given: _judged(
            drinkverdicts.storage_verdict(given.number("temperature_c"), given.number("sd_c")),
            "cold_max_c",
        ),
    )


def _keeping() -> Question:
    return Question(
        key="keeping",
        group=Group.SAFETY,
        title=t("How long does it keep in the cold?"),
        purpose=t("Days that the finished drink has been kept cold."),
        words=t("shelf life storage days"),
        fields=(number("days", t("Days in the cold"), measures.DAYS, 20.0, high=10_000.0),),
        answer=lambda given: _judged(
            drinkverdicts.keeping_verdict(given.number("days")), "keeping_days"
        ),
    )


def _serving() -> Question:
    return Question(
        key="serving",
        group=Group.SAFETY,
        title=t("How much of it in a day?"),
        purpose=t("Held against the most cautious published advice, and for whom it is not."),
        words=t("serving amount drink pregnancy children"),
        fields=(number("litres_a_day", t("Drunk in a day"), Kind.VOLUME, 0.25),),
        answer=_served,
    )


def _served(given: Inputs) -> Answer:
    answer = _judged(
        drinkverdicts.serving_verdict(given.number("litres_a_day")), "serving_day_fl_oz"
    )
    audience = drinkverdicts.audience_verdict()
    return Answer(
        lines=answer.lines,
        verdicts=(*answer.verdicts, audience),
        notes=answer.notes,
        formulas=(*answer.formulas, Formula(t("For whom it is not"), audience.sources)),
        is_judgement=True,
    )


def _flavouring() -> Question:
    return Question(
        key="flavouring",
        group=Group.SAFETY,
        title=t("May this juice or fruit go in?"),
        purpose=t("Fresh juice can bring in germs that souring does not undo."),
        words=t("fruit juice pasteurised second fermentation"),
        fields=(
            choice("is_pasteurised", t("Heated or pasteurised?"), yes_no_or_unknown(), None),
        ),
        answer=lambda given: _judged(
            drinkverdicts.flavouring_verdict(is_pasteurised=given.maybe_so("is_pasteurised"))
        ),
    )  # fmt: skip


def _pasteurising() -> Question:
    return Question(
        key="pasteurising",
        group=Group.SAFETY,
        title=t("Is it hot enough to end fermenting?"),
        purpose=t("Heating the drink in an open pot, and never in a closed bottle."),
        words=t("pasteurise heat stop yeast"),
        fields=(
            number("temperature_c", t("Temperature reached"), Kind.TEMPERATURE, 83.0),
            number("sd_c", t("Degrees Celsius it may be off by"), Number("°C", 1), 1.0),
            choice("is_sealed", t("In a closed bottle?"), yes_or_no(), False),
        ),
        answer=lambda given: _judged(
            drinkverdicts.pasteurising_verdict(
                given.number("temperature_c"),
                given.number("sd_c"),
                is_sealed=given.is_so("is_sealed"),
            ),
            "pasteurise_min_c",
        ),
    )


def _chlorine() -> Question:
    return Question(
        key="chlorine",
        group=Group.SAFETY,
        title=t("How strong is my bleach rinse?"),
        purpose=t("Chlorine in the water for rinsing clean vessels."),
        words=t("sanitise sanitize clean bleach ppm"),
        fields=(
            number("bleach_ml", t("Bleach"), measures.MILLILITRES, 15.0),
            number("water_l", t("Water"), Kind.VOLUME, 3.8),
            number("chlorine_percent", t("Chlorine, from its label"), measures.PERCENT_PLAIN, 5.25),
        ),
        answer=_chlorinated,
    )


def _chlorinated(given: Inputs) -> Answer:
    ppm = drinkverdicts.chlorine_ppm(
        bleach_ml=given.number("bleach_ml"),
        water_l=given.number("water_l"),
        chlorine_percent=given.number("chlorine_percent"),
    )
    judged = _judged(drinkverdicts.chlorine_verdict(ppm), "chlorine_max_ppm")
    strength = exact("ppm", t("Free chlorine"), ppm, measures.MILLIGRAMS_PER_LITRE)
    return Answer(
        lines=(strength, *judged.lines),
        says=t("The rinse holds about {ppm}; a bottle of bleach loses strength with age."),
        verdicts=judged.verdicts,
        notes=(t("Never mix bleach with acid, vinegar or kombucha: that sets chlorine gas free."),),
        formulas=(Formula(t("Chlorine over volume; published strength of a rinse"),
                          ("nc_state_2004",)),),
    )  # fmt: skip


def _limit() -> Question:
    options = tuple(
        (key, line.name) for key, line in zip(safety.LIMITS, limit_lines(), strict=True)
    )
    return Question(
        key="limit",
        group=Group.SAFETY,
        title=t("What is the limit for…?"),
        purpose=t("Every limit this program uses, with where it comes from."),
        words=t("safety limits table source"),
        fields=(choice("limit", t("Limit"), options, "ph_finished_max"),),
        answer=_limit_answered,
    )


def _limit_answered(given: Inputs) -> Answer:
    key = given.word("limit")
    confirmed = safety.LIMITS[key].confirmed
    return Answer(
        lines=(_limit_line(key),),
        says=t("This very figure was read in a source.") if confirmed else
        t("This figure was not read as such in a source: see where it comes from."),
        notes=(t("Where your local rules ask for more, follow them."),),
        formulas=(Formula(t("The limit"), safety.LIMITS[key].source_keys),),
    )  # fmt: skip
