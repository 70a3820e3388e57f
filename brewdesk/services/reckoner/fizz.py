"""Questions about carbon dioxide and bottles under pressure."""

from __future__ import annotations

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import names, t, yes_or_no
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Line,
    Measure,
    Question,
    Span,
    choice,
    exact,
    in_words,
    number,
    told,
)
from culturecore import bottle, bottleverdicts, co2, conditioning
from culturecore.bottle import BottlePressure, Filling
from culturecore.bottleverdicts import BottleKind
from culturecore.ethanol import SugarKind
from culturecore.outcome import Estimate
from culturecore.units import Kind

_SOLUBILITY = ("weiss_1974", "srd_106", "ec_2676_90")
_AIR = ("isa_1975", "wagner_pruss_1993")


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (_prime(), _pressure(), _gauge_of(), _volumes_of(), _open_jar(), _pace(), _gauge())


def _drink_fields() -> tuple[Field, ...]:
    return (
        number("sugar_g_per_l", t("Sugar in the drink"), Kind.SUGAR, 40.0),
        number("ethanol_abv", t("Alcohol in it"), measures.ABV, 0.5),
        number("altitude_m", t("Above the sea"), measures.METRES, 0.0),
    )


def _drink(given: Inputs) -> dict[str, float]:
    return {key: given.number(key) for key in ("sugar_g_per_l", "ethanol_abv", "altitude_m")}


def _over_8(key: str, label: str, value: float | None, measure: Measure = measures.BAR) -> Line:
    if value is None:
        return in_words(key, label, t("over 8 bar"))
    return exact(key, label, value, measure)


def _gauge_of() -> Question:
    return Question(
        key="gauge_of_volumes",
        group=Group.FIZZ,
        title=t("What pressure for so much fizz?"),
        purpose=t("The gauge pressure over a drink that holds so many volumes of carbon dioxide."),
        words=t("CO2 volumes bar psi carbonation temperature"),
        fields=(
            number("volumes", t("Volumes of carbon dioxide"), measures.VOLUMES, 2.5),
            number("temperature_c", t("Temperature"), Kind.TEMPERATURE, 5.0),
            *_drink_fields(),
        ),
        answer=_gauge_answered,
    )


def _gauge_answered(given: Inputs) -> Answer:
    volumes, temperature_c = given.number("volumes"), given.number("temperature_c")
    gauge = co2.gauge_bar(volumes=volumes, temperature_c=temperature_c, **_drink(given))
    return Answer(
        lines=(
            _over_8("gauge", t("On a gauge"), gauge),
            exact("grams", t("Carbon dioxide in a litre"), co2.g_per_l_from_volumes(volumes),
                  measures.GRAMS_PER_LITRE),
        ),
        says=t("{volumes} at {temperature_c} stands under {gauge}, good to some 4 per cent."),
        notes=(
            t("Without any air. Below zero means that the drink would take up more gas from its "
              "own kind than the room's pressure gives."),
        ),
        formulas=(
            Formula(t("Solubility of carbon dioxide, with sugar and alcohol"), _SOLUBILITY),
            Formula(t("Pressure of air and water vapour"), _AIR),
        ),
    )  # fmt: skip


def _volumes_of() -> Question:
    return Question(
        key="volumes_of_gauge",
        group=Group.FIZZ,
        title=t("How fizzy is it at this pressure?"),
        purpose=t("The carbon dioxide in a drink that has settled under a gauge pressure."),
        words=t("CO2 volumes bar psi carbonation keg grams per litre"),
        fields=(
            number("gauge_pressure_bar", t("The gauge shows"), measures.BAR, 1.0),
            number("temperature_c", t("Temperature"), Kind.TEMPERATURE, 5.0),
            *_drink_fields(),
        ),
        answer=_volumes_answered,
    )


def _volumes_answered(given: Inputs) -> Answer:
    volumes = co2.volumes_at_gauge(
        gauge_pressure_bar=given.number("gauge_pressure_bar"),
        temperature_c=given.number("temperature_c"),
        **_drink(given),
    )
    return Answer(
        lines=(
            exact("volumes", t("Volumes of carbon dioxide"), volumes, measures.VOLUMES),
            exact("grams", t("In a litre"), co2.g_per_l_from_volumes(volumes),
                  measures.GRAMS_PER_LITRE),
        ),
        says=t("Once it has settled, {gauge_pressure_bar} holds {volumes}, good to some 4 per "
               "cent. A bottle with trapped air holds less."),
        formulas=(
            Formula(t("Solubility of carbon dioxide, with sugar and alcohol"), _SOLUBILITY),
            Formula(t("Pressure of air and water vapour"), _AIR),
        ),
    )  # fmt: skip


def _open_jar() -> Question:
    return Question(
        key="open_jar",
        group=Group.FIZZ,
        title=t("How much gas is in it already?"),
        purpose=t("The most carbon dioxide that an open jar holds before it is bottled."),
        words=t("residual CO2 saturated bottling"),
        fields=(
            number("temperature_c", t("Warmest since it last made gas"), Kind.TEMPERATURE, 22.0),
            *_drink_fields(),
        ),
        answer=_open_jar_answered,
    )


def _open_jar_answered(given: Inputs) -> Answer:
    grams = co2.open_jar_g_per_l(temperature_c=given.number("temperature_c"), **_drink(given))
    return Answer(
        lines=(
            exact("volumes", t("At most, in volumes"), co2.volumes_from_g_per_l(grams),
                  measures.VOLUMES),
            exact("grams", t("At most, in a litre"), grams, measures.GRAMS_PER_LITRE),
        ),
        says=t("It holds up to {volumes}; a jar whose yeasts have calmed down may hold much less."),
        formulas=(
            Formula(t("Saturated under its own gas"), _SOLUBILITY),
            Formula(t("Pressure of air and water vapour"), _AIR),
        ),
    )  # fmt: skip


def _bottle_fields() -> tuple[Field, ...]:
    return (
        choice("kind", t("Bottles"), names(BottleKind), BottleKind.FIZZY_GLASS),
        number("rated_bar", t("Rated for, if rated"), measures.BAR),
        choice("is_damaged", t("Chipped or scratched?"), yes_or_no(), False),
        *_filling_fields(),
    )


def _filling_fields() -> tuple[Field, ...]:
    return (
        number("brim_volume_l", t("A bottle holds to the brim"), Kind.VOLUME, 0.5),
        number("headspace_share", t("Left empty"), measures.PERCENT, 0.05),
        number("filled_at_c", t("Filled at"), Kind.TEMPERATURE, 20.0),
        number("altitude_m", t("Above the sea"), measures.METRES, 0.0),
    )


def _filling(given: Inputs) -> Filling:
    return Filling(
        brim_volume_l=given.number("brim_volume_l"),
        headspace_share=given.number("headspace_share"),
        filled_at_c=given.number("filled_at_c"),
        altitude_m=given.number("altitude_m"),
    )


def _prime() -> Question:
    return Question(
        key="prime",
        group=Group.FIZZ,
        title=t("How much sugar for fizz, and will the bottles stand it?"),
        purpose=t("Sugar to add, the pressure it makes, and the worst case if nobody chills."),
        words=t("priming second fermentation F2 fruit carbonation burst pressure"),
        fields=(
            number("volume_l", t("To bottle"), Kind.VOLUME, 4.0),
            number("target_volumes", t("Fizz wanted"), measures.VOLUMES, 2.2),
            number("residual_sugar_low_g_per_l", t("Sugar still in it, at least"), Kind.SUGAR,
                   0.0),
            number("residual_sugar_high_g_per_l", t("Sugar still in it, at most"), Kind.SUGAR,
                   40.0),
            choice("sugar_kind", t("Sugar to add"), names(SugarKind), SugarKind.SUCROSE),
            number("priming_sugar_g", t("Sugar I add, if I know"), Kind.MASS),
            number("open_jar_c", t("Warmest the open jar was"), Kind.TEMPERATURE, 22.0),
            number("place_temperature_c", t("The bottles stand at"), Kind.TEMPERATURE, 22.0),
            number("warmest_c", t("Warmest they may get"), Kind.TEMPERATURE, 30.0),
            *_bottle_fields(),
            number("fruit_g", t("Fruit or juice"), Kind.MASS, 0.0, low=0.0),
            number("sugar_share_low", t("Sugar in the fruit, at least"), measures.PERCENT, 0.08,
                   low=0.0, high=1.0),
            number("sugar_share_high", t("Sugar in the fruit, at most"), measures.PERCENT, 0.15,
                   low=0.0, high=1.0),
            number("day", t("Days since bottling, if bottled"), measures.DAYS, low=0.0,
                   high=10_000.0),
        ),
        answer=_primed,
        renames={"mass_g": "fruit_g", "sugar_g_per_l": "residual_sugar_high_g_per_l"},
    )  # fmt: skip


def _wish(given: Inputs, ceiling_bar: float) -> conditioning.FizzWish:
    return conditioning.FizzWish(
        volume_l=given.number("volume_l"),
        filling=_filling(given),
        ceiling_bar=ceiling_bar,
        target_volumes=given.number("target_volumes"),
        residual_sugar_low_g_per_l=given.number("residual_sugar_low_g_per_l"),
        residual_sugar_high_g_per_l=given.number("residual_sugar_high_g_per_l"),
        fruit=(
            conditioning.Fruit(
                mass_g=given.number("fruit_g"),
                sugar_share_low=given.number("sugar_share_low"),
                sugar_share_high=given.number("sugar_share_high"),
            ),
        ),
        sugar_kind=given.chosen("sugar_kind", SugarKind),
        priming_sugar_g=given.maybe("priming_sugar_g"),
        open_jar_c=given.number("open_jar_c"),
        place_temperature_c=given.number("place_temperature_c"),
        warmest_c=given.number("warmest_c"),
    )


def _primed(given: Inputs) -> Answer:
    kind, rated_bar = given.chosen("kind", BottleKind), given.maybe("rated_bar")
    # a bottle that is not for pressure gets its verdict; the plan needs some ceiling
    reckoned_as = BottleKind.FIZZY_GLASS if kind is BottleKind.NOT_FOR_PRESSURE else kind
    ceiling_bar = bottleverdicts.ceiling_bar(reckoned_as, rated_bar)
    wish = _wish(given, ceiling_bar)
    plan = conditioning.plan_fizz(wish)
    day = given.maybe("day")
    chill = () if day is None else (bottleverdicts.chill_verdict(plan, day=day),)
    return Answer(
        lines=(
            told("sugar", t("Sugar to add to all of it"), plan.sugar_to_add_g, Kind.MASS,
                 Span.BOUNDS),
            *_pressures(t("On target, at the warmest"), "target", plan.on_target),
            *_pressures(t("If all sugar ferments, at the warmest"), "all", plan.all_sugar),
            exact("ceiling", t("These bottles must not pass"), ceiling_bar, measures.BAR),
            _days("days", t("Days until it is fizzy"), plan.days_to_target),
            _chill_by(plan.chill_by_day),
            told("abv", t("Alcohol that comes with it"), plan.ethanol_gained_abv, measures.ABV,
                 Span.BOUNDS),
            exact("abv_all", t("Alcohol if all sugar ferments, at most"),
                  plan.ethanol_all_sugar_abv, measures.ABV),
        ),
        says=t("About {sugar}, anywhere from {sugar_low} to {sugar_high}: what is left in the "
               "drink is known badly. Look at the bottles, not at the calendar."),
        verdicts=bottleverdicts.bottle_verdicts(
            kind,
            wish.filling,
            plan,
            rated_bar=rated_bar,
            is_damaged=given.is_so("is_damaged"),
        )
        + chill,
        notes=(
            t("Sugar left in the drink, fruit and added sugar are one and the same to the yeast."),
            t("No figure promises that a bottle holds: glass ages and chips. Open one a day, and "
              "chill them all in time."),
        ),
        formulas=(
            Formula(t("Gas and alcohol from sugar"), ("stoichiometry",)),
            Formula(t("Closed bottle with its air, and a drink that swells"),
                    (*_SOLUBILITY, "sander_2023", "emmerich_icumsa")),
            Formula(t("How fast yeast works"), ("bottle_yeast_assumption",)),
            Formula(t("What bottles may be put under"),
                    ("british_glass_tec_7", "bs_6119_1", "safety_choice")),
        ),
    )  # fmt: skip


def _pressures(label: str, key: str, found: BottlePressure) -> tuple[Line, ...]:
    trapped = t("{what}: while air is trapped").format(what=label)
    settled = t("{what}: once settled").format(what=label)
    if found.is_brimful:
        return (in_words(f"{key}_trapped", trapped, t("without bound: no room is left")),)
    return (
        _over_8(f"{key}_trapped", trapped, found.air_trapped_bar),
        _over_8(f"{key}_settled", settled, found.air_dissolved_bar),
    )


def _days(key: str, label: str, days: Estimate | None) -> Line:
    if days is None:
        return in_words(key, label, t("never: too little sugar"))
    return told(key, label, days, measures.DAYS, Span.BOUNDS)


def _chill_by(day: float | None) -> Line:
    label = t("Earliest day they could pass it")
    if day is None:
        return in_words("chill_by", label, t("not even with all the sugar"))
    return exact("chill_by", label, day, measures.DAYS)


def _pressure() -> Question:
    return Question(
        key="bottle_pressure",
        group=Group.FIZZ,
        title=t("What pressure is in the closed bottle?"),
        purpose=t("Gas shared between drink and headspace, with the air that was closed in."),
        words=t("CO2 bar psi headspace warm trapped air"),
        fields=(
            number("co2_g_per_l", t("Carbon dioxide for each litre"), measures.GRAMS_PER_LITRE,
                   5.0),
            number("temperature_c", t("Temperature of the bottle"), Kind.TEMPERATURE, 22.0),
            number("sugar_g_per_l", t("Sugar in the drink"), Kind.SUGAR, 40.0),
            number("ethanol_abv", t("Alcohol in it"), measures.ABV, 0.5),
            *_filling_fields(),
        ),
        answer=_pressure_answered,
    )  # fmt: skip


def _pressure_answered(given: Inputs) -> Answer:
    found = bottle.pressure(
        _filling(given),
        co2_g_per_l=given.number("co2_g_per_l"),
        temperature_c=given.number("temperature_c"),
        sugar_g_per_l=given.number("sugar_g_per_l"),
        ethanol_abv=given.number("ethanol_abv"),
    )
    gas = () if found.volumes is None else (
        exact("volumes", t("Left in the drink"), found.volumes, measures.VOLUMES),
    )  # fmt: skip
    return Answer(
        lines=(*_pressures(t("On a gauge"), "gauge", found), *gas),
        says=t("The higher figure counts against the bottle: trapped air needs hours to days to "
               "dissolve."),
        formulas=(
            Formula(t("Solubility of carbon dioxide, with sugar and alcohol"), _SOLUBILITY),
            Formula(t("Air in water"), ("sander_2023",)),
            Formula(t("Swelling of the drink"), ("emmerich_icumsa",)),
        ),
    )  # fmt: skip


def _pace() -> Question:
    return Question(
        key="yeast_pace",
        group=Group.FIZZ,
        title=t("How long does yeast need for this sugar?"),
        purpose=t("Days in a closed bottle, as widely as the pace is unsure."),
        words=t("days conditioning second fermentation speed"),
        fields=(
            number("sugar_g_per_l", t("Sugar to ferment"), Kind.SUGAR, 6.0, low=0.0, high=300.0),
            number("temperature_c", t("The bottles stand at"), Kind.TEMPERATURE, 22.0),
        ),
        answer=_paced,
    )


def _paced(given: Inputs) -> Answer:
    sugar, temperature_c = given.number("sugar_g_per_l"), given.number("temperature_c")
    days = conditioning.days_for(Estimate(sugar, sugar, sugar), temperature_c)
    pace = conditioning.sugar_rate_g_per_l_day(temperature_c)
    return Answer(
        lines=(
            told("days", t("Days"), days, measures.DAYS, Span.BOUNDS),
            told("pace", t("Sugar used up in a litre each day"), pace, Kind.SUGAR, Span.BOUNDS),
        ),
        says=t("Somewhere between {days_low} and {days_high}: only looking at the bottles tells."),
        caveats=days.caveats,
        formulas=(Formula(t("Assumed pace of yeast in a closed bottle"), pace.sources),),
    )


def _gauge() -> Question:
    return Question(
        key="gauge_reading",
        group=Group.FIZZ,
        title=t("The gauge on a bottle shows this. Is it too much?"),
        purpose=t("A gauge bottle among the others, held against what the bottles may be under."),
        words=t("pressure bar psi chill burst"),
        fields=(
            number("gauge_bar", t("The gauge shows"), measures.BAR, 2.0),
            number("sd_bar", t("It may be off by"), measures.BAR, 0.2),
            choice("kind", t("Bottles"), names(BottleKind), BottleKind.FIZZY_GLASS),
            number("rated_bar", t("Rated for, if rated"), measures.BAR),
        ),
        answer=_gauge_judged,
    )


def _gauge_judged(given: Inputs) -> Answer:
    ceiling_bar = bottleverdicts.ceiling_bar(
        given.chosen("kind", BottleKind), given.maybe("rated_bar")
    )
    verdict = bottleverdicts.gauge_verdict(
        gauge_bar=given.number("gauge_bar"), sd_bar=given.number("sd_bar"), ceiling=ceiling_bar
    )
    return Answer(
        lines=(exact("ceiling", t("These bottles must not pass"), ceiling_bar, measures.BAR),),
        verdicts=(verdict,),
        notes=(t("The reading and its doubt together count."),),
        formulas=(Formula(t("Limits for bottles"), verdict.sources),),
        is_judgement=True,
    )
