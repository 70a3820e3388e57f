"""Questions about sugar: scales, instruments, dissolving, spoons."""

from __future__ import annotations

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import t, yes_or_no
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Line,
    Question,
    Span,
    choice,
    exact,
    in_words,
    number,
    told,
)
from brewdesk.services.wording.measures import measure_words
from culturecore import instruments, kitchen, sugar
from culturecore.units import Kind

_POLYNOMIAL = ("emmerich_icumsa", "kell_water_density")


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (
        _from_brix(),
        _from_gravity(),
        _from_grams(),
        _hydrometer(),
        _refractometer(),
        _false(),
        _dissolving(),
        _spoons(),
    )


def _scale_question(key: str, title: str, field: Field) -> Question:
    return Question(
        key=key,
        group=Group.SUGAR,
        title=title,
        purpose=t("Degrees Brix, specific gravity, density and grams per litre of one solution."),
        words=t("convert conversion plato sucrose density SG Brix grams per litre"),
        fields=(field,),
        answer=_scales,
    )


def _from_brix() -> Question:
    return _scale_question(
        "from_brix",
        t("Brix in gravity and grams per litre"),
        number("brix", t("Degrees Brix"), Kind.BRIX, 7.5),
    )


def _from_gravity() -> Question:
    return _scale_question(
        "from_gravity",
        t("Gravity in Brix and grams per litre"),
        number("specific_gravity", t("Specific gravity at 20 °C"), Kind.GRAVITY, 1.030),
    )


def _from_grams() -> Question:
    return _scale_question(
        "from_grams",
        t("Grams per litre in Brix and gravity"),
        number("sugar_g_per_l", t("Sugar in a litre at 20 °C"), Kind.SUGAR, 75.0),
    )


def _scales(given: Inputs) -> Answer:
    brix, gravity, grams = (
        given.maybe(key) for key in ("brix", "specific_gravity", "sugar_g_per_l")
    )
    if gravity is not None:
        brix = sugar.brix_from_sg(gravity)
    elif grams is not None:
        brix = sugar.brix_from_g_per_l(grams)
    else:
        brix = given.number("brix")
    lines = {
        "sugar_g_per_l": exact("g_per_l", t("Sugar in a litre"), sugar.g_per_l_from_brix(brix),
                               Kind.SUGAR),
        "brix": exact("degrees", t("Degrees Brix"), brix, Kind.BRIX),
        "specific_gravity": exact("sg", t("Specific gravity 20/20"), sugar.sg_from_brix(brix),
                                  Kind.GRAVITY),
    }  # fmt: skip
    asked = [line for key, line in lines.items() if given.maybe(key) is None]
    density = exact(
        "density", t("Density at 20 °C"), sugar.density_kg_per_l(brix), measures.KILOGRAMS_PER_LITRE
    )
    return Answer(
        lines=(*asked, density),
        says=t("For sugar in water. Once the culture works, acids and alcohol count in too and "
               "the reading is only apparent."),
        formulas=(Formula(t("Density of sucrose solutions"), _POLYNOMIAL),),
    )  # fmt: skip


def _reading_lines(reading: instruments.SugarReading) -> tuple[Line, ...]:
    return (
        told("sg", t("Specific gravity at 20 °C"), reading.specific_gravity, Kind.GRAVITY),
        told("brix", t("Degrees Brix"), reading.brix, Kind.BRIX),
    )


def _day_field() -> Field:
    return number("day", t("Days since the culture went in"), measures.DAYS, 0.0)


def _hydrometer() -> Question:
    return Question(
        key="hydrometer",
        group=Group.SUGAR,
        title=t("Correct a hydrometer for temperature"),
        purpose=t("What the floating glass would show at 20 °C, and what that means."),
        words=t("gravity SG correction reading"),
        fields=(
            number("shown_sg", t("It shows"), Kind.GRAVITY, 1.030),
            number("temperature_c", t("Temperature of the liquid"), Kind.TEMPERATURE, 28.0),
            number("made_for_c", t("Made for (printed on it)"), Kind.TEMPERATURE, 20.0),
            _day_field(),
        ),
        answer=_hydrometer_answered,
    )


def _hydrometer_answered(given: Inputs) -> Answer:
    reading = instruments.hydrometer_reading(
        shown_sg=given.number("shown_sg"),
        temperature_c=given.number("temperature_c"),
        made_for_c=given.number("made_for_c"),
        day=given.number("day"),
    )
    return Answer(
        lines=_reading_lines(reading),
        says=t("At 20 °C it would show {sg}; half a mark either way gives {sg_low} to {sg_high}."),
        verdicts=(reading.verdict,),
        formulas=(
            Formula(t("Expansion of glass and of sugar solution"), reading.sources),
        ),
    )  # fmt: skip


def _refractometer() -> Question:
    return Question(
        key="refractometer",
        group=Group.SUGAR,
        title=t("Correct a refractometer for temperature"),
        purpose=t("What the instrument would show at 20 °C, and what that means."),
        words=t("Brix correction reading ATC index"),
        fields=(
            number("shown_brix", t("It shows"), Kind.BRIX, 7.5),
            number("temperature_c", t("Temperature"), Kind.TEMPERATURE, 26.0),
            choice("is_compensated", t("Does it compensate by itself?"), yes_or_no(), False),
            _day_field(),
        ),
        answer=_refractometer_answered,
    )


def _refractometer_answered(given: Inputs) -> Answer:
    reading = instruments.refractometer_reading(
        shown_brix=given.number("shown_brix"),
        temperature_c=given.number("temperature_c"),
        is_compensated=given.is_so("is_compensated"),
        day=given.number("day"),
    )
    gravity, brix = _reading_lines(reading)
    return Answer(
        lines=(brix, gravity),
        says=t("At 20 °C it would show {brix}; the instrument's own doubt gives {brix_low} to "
               "{brix_high}."),
        verdicts=(reading.verdict,),
        formulas=(Formula(t("Refractive index of sugar solution by temperature"),
                          reading.sources),),
    )  # fmt: skip


def _false() -> Question:
    return Question(
        key="false_sugar",
        group=Group.SUGAR,
        title=t("What do alcohol and acid add to a reading?"),
        purpose=t("The part of a Brix or gravity reading that is no sugar."),
        words=t("ethanol apparent refractometer hydrometer effect"),
        fields=(
            number("ethanol_mass_percent", t("Alcohol, by weight"), measures.PERCENT_PLAIN, 0.8),
            number("acid_mass_percent", t("Acid as acetic, by weight"), measures.PERCENT_PLAIN,
                   0.5),
        ),
        answer=_false_answered,
    )  # fmt: skip


def _false_answered(given: Inputs) -> Answer:
    shares = {
        "ethanol_mass_percent": given.number("ethanol_mass_percent"),
        "acid_mass_percent": given.number("acid_mass_percent"),
    }
    brix = instruments.false_brix(**shares)
    gravity = instruments.false_gravity(**shares)
    return Answer(
        lines=(
            told("brix", t("Too much on a refractometer"), brix, Kind.BRIX, Span.BOUNDS),
            told("gravity", t("Too much on a hydrometer"), gravity, measures.GRAVITY_SHIFT,
                 Span.BOUNDS),
        ),
        says=t("A refractometer shows {brix} more than there is sugar. A minus sign on the "
               "hydrometer means that it shows too little."),
        formulas=(
            Formula(t("Refraction of dilute alcohol and acid"), brix.sources),
            Formula(t("Density of dilute alcohol and acid"), gravity.sources),
        ),
    )  # fmt: skip


def _dissolving() -> Question:
    return Question(
        key="dissolving",
        group=Group.SUGAR,
        title=t("How much room does sugar take?"),
        purpose=t("The volume of water once sugar is dissolved in it."),
        words=t("volume added dissolve syrup"),
        fields=(
            number("water_g", t("Water"), Kind.MASS, 1000.0, low=0.0, high=1e6),
            number("sugar_g", t("Sugar"), Kind.MASS, 80.0, low=0.0, high=1e6),
            number("temperature_c", t("Temperature"), Kind.TEMPERATURE, 20.0),
        ),
        answer=_dissolved,
    )


def _dissolved(given: Inputs) -> Answer:
    water_g, sugar_g = given.number("water_g"), given.number("sugar_g")
    temperature_c = given.number("temperature_c")
    whole_l = sugar.volume_of_solution_l(water_g, sugar_g, temperature_c)
    water_l = sugar.volume_of_solution_l(water_g, 0.0, temperature_c)
    return Answer(
        lines=(
            exact("added", t("The sugar adds"), 1000.0 * (whole_l - water_l), measures.MILLILITRES),
            exact("whole", t("Together"), whole_l, Kind.VOLUME),
            exact("water", t("The water alone"), water_l, Kind.VOLUME),
        ),
        says=t("{water} of water becomes {whole}."),
        formulas=(Formula(t("Mass over the density of the solution"), _POLYNOMIAL),),
    )


def _spoons() -> Question:
    return Question(
        key="sugar_spoons",
        group=Group.SUGAR,
        title=t("Sugar in cups and spoons"),
        purpose=t("A weight of white sugar as a kitchen without scales has it."),
        words=t("kitchen measure tablespoon teaspoon cup"),
        fields=(number("mass_g", t("Sugar"), Kind.MASS, 200.0),),
        answer=_spooned,
    )


def _spooned(given: Inputs) -> Answer:
    words = measure_words(kitchen.sugar_measures(given.number("mass_g")))
    return Answer(
        lines=(in_words("spoons", t("White sugar, about"), words or t("none")),),
        says=t("{mass_g} of white sugar is about {spoons}, level, good to some 5 %."),
        notes=(t("Weighing is better: how tightly a cup is filled changes it by a few per cent."),),
        formulas=(Formula(t("Household weights of sugar"), ("usda_sugar", "usc_26_5052")),),
    )
