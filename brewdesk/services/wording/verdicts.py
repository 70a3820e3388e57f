"""What a verdict says: the fact, the reason, and what to do. Local rules come first."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording import (
    benchverdicts,
    bottlingnow,
    bottlings,
    cultureverdicts,
    drinkverdicts,
    liquids,
)
from brewdesk.services.wording.amounts import Show, number_text, plain
from culturecore.outcome import Verdict
from culturecore.sources import SOURCES
from culturecore.units import Kind


@dataclass(frozen=True, slots=True)
class VerdictWords:
    """The three parts of a verdict, each whole sentences or empty, and where it comes from."""

    fact: str
    why: str
    what_to_do: str
    sources: tuple[str, ...] = ()


def verdict_words(verdict: Verdict, show: Show = plain) -> VerdictWords:
    """Put a verdict into words.

    ``show`` writes amounts in the maker's units; without it they are metric.

    Raises
    ------
    KeyError
        For a code that has no words, or numbers that its words need and lack.
    """
    for group in _GROUPS:
        parts = group().get(verdict.code)
        if parts is not None:
            kind = _KIND_OF_CODE.get(verdict.code)
            texts = {key: _amount(key, value, show, kind) for key, value in verdict.numbers.items()}
            fact, why, what_to_do = (part.format_map(texts) for part in parts)
            citations = tuple(SOURCES[key].citation for key in verdict.sources if key in SOURCES)
            return VerdictWords(fact, why, what_to_do, citations)
    raise KeyError(verdict.code)


def _t(text: str) -> str:
    return QCoreApplication.translate("Verdicts", text)


_KIND_OF_ENDING = (
    ("_c", Kind.TEMPERATURE),
    ("_g_per_l", Kind.ACIDITY),
    ("_l", Kind.VOLUME),
    ("_g", Kind.MASS),
    ("_cm", Kind.LENGTH),
    ("_brix", Kind.BRIX),
    ("_sg", Kind.GRAVITY),
)
_SHARES = ("share", "least", "most")
# Codes whose numbers are all of one kind, whatever they are called.
_KIND_OF_CODE = {
    "sugar_low": Kind.SUGAR,
    "sugar_high": Kind.SUGAR,
    "tea_low": Kind.TEA,
    "tea_high": Kind.TEA,
    "pair_plausible": Kind.ALKALINITY,
    "pair_odd": Kind.ALKALINITY,
}
_WHOLE = ("day", "days", "hours", "minutes")


def _amount(key: str, value: float, show: Show, kind: Kind | None) -> str:
    if kind is not None:
        return show(value, kind)
    if key in _SHARES or key.endswith("_share"):
        percent = 100.0 * value
        return _t("{number} %").format(number=number_text(percent, 0 if percent >= 10.0 else 1))
    if key.rpartition("_")[2] in _WHOLE:
        return number_text(value, 0 if float(value).is_integer() or value >= 10.0 else 1)
    if key.endswith("_mm"):
        return _t("{number} mm").format(number=number_text(value, 0))
    of_drink = drinkverdicts.amount(key, value) or benchverdicts.amount(key, value)
    if of_drink is not None:
        return of_drink
    for ending, kind_of_ending in _KIND_OF_ENDING:
        if key.endswith(ending):
            return show(value, kind_of_ending)
    return show(value, Kind.PH)


Parts = tuple[str, str, str]


def _materials() -> dict[str, Parts]:
    another = _t("Please use glass, or another vessel meant for sour food.")
    return {
        "material_good": (
            _t("Glass is a good choice."),
            _t("Sour liquid takes nothing out of plain glass."),
            "",
        ),
        "material_steel": (
            _t("Stainless steel is a good choice if it is made for sour food."),
            _t("The usual kitchen grade stands the acid; scratched or cheap steel may rust."),
            _t("Look for rust now and then."),
        ),
        "material_ceramic_checked": (
            _t("Ceramic is only as good as its maker's word."),
            _t("Some glazes hold lead, which the acid draws out. Kombucha from such pots has "
               "poisoned people."),
            _t("Keep the maker's written word that the glaze is free of lead and made for sour "
               "food. Without it, please use glass."),
        ),
        "material_plastic": (
            _t("Food-grade plastic will do."),
            _t("It scratches, and scratches are hard to clean; it may also give off a taste over "
               "weeks."),
            _t("Use it only if it is made for sour food, and replace it once scratched."),
        ),
        "material_unknown_plastic": (
            _t("Plastic that is not made for food is not safe here."),
            _t("Sour liquid that stands for weeks can draw things out of it."),
            another,
        ),
        "material_wood": (
            _t("Wood is hard to keep clean."),
            _t("Its pores hold on to what lived in it before, mold included."),
            _t("Use only a barrel made for drinks, and look for mold more often."),
        ),
        "material_lead": (
            _t("This vessel may give off lead."),
            _t("The acid draws lead out of lead crystal and of many glazes. Kombucha from such "
               "pots has poisoned people."),
            another,
        ),
        "material_reactive": (
            _t("This metal does not stand the acid."),
            _t("Sour liquid dissolves copper, brass, aluminium, iron and zinc; the drink can make "
               "you ill and the culture suffers."),
            another,
        ),
    }  # fmt: skip


def _temperatures() -> dict[str, Parts]:
    wait = _t("Wait until it is at {limit_c} or below, then measure again.")
    return {
        "culture_temperature_good": (
            _t("{temperature_c} is cool enough for starter and culture."),
            _t("Your limit is {limit_c}."),
            "",
        ),
        "culture_too_warm": (
            _t("At {temperature_c} it is too warm for starter and culture."),
            _t("Your limit is {limit_c}. Heat weakens the culture, and a weak culture sours too "
               "slowly to keep mold away."),
            wait,
        ),
        "culture_far_too_warm": (
            _t("At {temperature_c} the culture would be harmed."),
            _t("From about {harm_c} upward its yeasts and bacteria die. The liquid would then "
               "stand sweet and unprotected."),
            wait,
        ),
        "culture_temperature_unknown": (
            _t("It is not known whether the liquid is cool enough."),
            _t("Liquid warmer than {limit_c} harms the culture, and it looks no different."),
            _t("Measure the liquid and enter its temperature. If you have no thermometer, wait "
               "until the vessel feels cool to your hand, and write that down as your "
               "reason."),
        ),
        "place_good": (
            _t("{temperature_c} suits the culture."),
            _t("Between {low_c} and {high_c} it sours at a usual pace."),
            "",
        ),
        "place_cold": (
            _t("{temperature_c} is cold for the culture."),
            _t("Below {low_c} it sours slowly, and mold has more time to take hold."),
            _t("Find a warmer place, and take the pH early."),
        ),
        "place_warm": (
            _t("{temperature_c} is warm for the culture."),
            _t("Above {high_c} it sours fast and may taste harsh."),
            _t("Find a cooler place, or taste earlier."),
        ),
        "place_now_cold": (
            _t("The latest temperature of its place, {temperature_c}, is cold for a culture."),
            _t("Below {low_c} it sours slowly, and mold has more time to take hold."),
            _t("Measure beside the jar. If that is so, find a warmer place, and take the pH "
               "early."),
        ),
        "place_now_warm": (
            _t("The latest temperature of its place, {temperature_c}, is warm for a culture."),
            _t("Above {high_c} it sours fast and may taste harsh."),
            _t("Measure beside the jar. If that is so, find a cooler place, or taste earlier."),
        ),
        "needs_cooling": (
            _t("Mixed, the sweet tea will be too warm for the culture at first."),
            _t("It is reckoned to come out at about {mixed_c}; your limit is {limit_c}."),
            _t("Let it cool, covered, and measure before starter and culture go in. More cold "
               "water and less hot would shorten the wait."),
        ),
        "steep_cool": (
            _t("{hot_c} is cool for steeping."),
            _t("Published guidance asks for water of at least {least_c}: cooler water leaves more "
               "alive that came with the leaves."),
            _t("Use hotter water."),
        ),
        "hot_water_scald": (
            _t("Water at {hot_c} scalds."),
            _t("It also takes the longest to cool."),
            _t("Pour slowly, into a vessel that stands heat: thick glass can crack."),
        ),
        "cold_water_unboiled": (
            _t("The cold water goes in as it is."),
            _t("Whatever lives in it meets sweet tea before it is sour."),
            _t("Use water that is good to drink, or boil it first and let it cool."),
        ),
    }  # fmt: skip


def _ph() -> dict[str, Parts]:
    rules = _t("Where your local rules ask for more, follow them.")
    discard = _t("Please discard it. Do not taste it, and start again with more or sourer "
                 "starter. Where your local rules ask for more, follow them.")  # fmt: skip
    return {
        "start_ph_good": (
            _t("It is reckoned to start at about pH {ph}."),
            _t("With the uncertainty it lies between {low} and {high}, which is below {limit}, "
               "where unwanted germs grow less easily."),
            _t("Measure it after mixing if you can: the figure is an estimate."),
        ),
        "start_ph_above_wanted": (
            _t("It is reckoned to start at about pH {ph}, above {wanted}."),
            _t("The sourer the start, the less time mold and other unwanted guests have. The "
               "estimate runs from {low} to {high}."),
            _t("More or sourer starter would help. Measure after mixing."),
        ),
        "start_ph_high": (
            _t("It may start above pH {limit}."),
            _t("The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful "
               "germs can grow in sweet tea."),
            _t("Use more or sourer starter, and measure after mixing."),
        ),
        "ph_low_enough": (
            _t("pH {ph} on day {day} is below {limit}, with the doubt of the reading counted in."),
            _t("Published guidance asks for this within {deadline_days} days. It is needed, but "
               "it does not prove that a drink is safe."),
            rules,
        ),
        "ph_over_acid": (
            _t("pH {ph} is very sour, below {limit}."),
            _t("Published guidance advises against drinking kombucha this sour."),
            _t("Do not serve it as it is. It makes strong starter. ") + rules,
        ),
        "ph_not_yet": (
            _t("pH {ph} on day {day} is still above {limit}."),
            _t("That is usual in the first days; it has until day {deadline_days}."),
            _t("Leave it and measure again in a day or two. Do not drink it yet."),
        ),
        "ph_unsure": (
            _t("pH {ph} is close to {limit}, and the reading may be off by {sd}."),
            _t("With that doubt it is not certain that it is sour enough."),
            _t("Measure again, with a calibrated meter if you can. It has until day "
               "{deadline_days}."),
        ),
        "ph_slow": (
            _t("pH {ph} on day {day} is late."),
            _t("It should be at {limit} or below by day {deadline_days}. A cold place or weak "
               "starter slows it."),
            _t("Move it somewhere warmer, look closely for mold, and measure again tomorrow. Do "
               "not drink it yet."),
        ),
        "ph_deadline_missed": (
            _t("On day {day} the pH is {ph}, still above {limit}."),
            _t("It should have been sour enough by day {deadline_days}. Sweet, hardly sour "
               "liquid that stands for days lets harmful germs grow."),
            discard,
        ),
        "ph_deadline_unproven": (
            _t("On day {day} the pH reads {ph}, but the reading may be off by {sd}."),
            _t("By day {deadline_days} it has to be at {limit} or below for certain, and this "
               "reading does not settle it."),
            _t("Measure again with a calibrated meter today. If it is above {limit}, or you "
               "cannot measure it better, discard it. ") + rules,
        ),
        "ph_not_taken_by_deadline": (
            _t("It is day {day}, and no pH shows that the batch is sour enough."),
            _t("Published guidance asks for pH 4.2 or below within {deadline_days} days. Without "
               "a reading nobody can tell."),
            _t("Measure the pH today, before you taste. ") + rules,
        ),
    }  # fmt: skip


def _recipe() -> dict[str, Parts]:
    measure = _t("Measure the pH after mixing.")
    return {
        "starter_low": (
            _t("{share} starter is little."),
            _t("Published guidance uses about {least}. With less, the liquid stays sweet and "
               "unprotected for longer."),
            _t("Use more starter. ") + measure,
        ),
        "starter_high": (
            _t("{share} starter is a lot."),
            _t("Above {most} it does no harm, but it sours fast and leaves less sweet tea to "
               "ferment."),
            _t("Taste early."),
        ),
        "starter_odd": (
            _t("pH {ph} and {ta_g_per_l} of acid do not go together in a usual starter."),
            _t("One of the two readings may be off, and then so is the reckoned start."),
            _t("Measure both again. ") + measure,
        ),
        "cannot_reach_target": (
            _t("With {share} starter it will start at about pH {ph}, not {target}."),
            _t("This starter, as far as it is known, is not sour enough for the pH you asked for."),
            _t("Use sourer starter, or more of it. ") + measure,
        ),
        "fill_over_working": (
            _t("{fill_l} is more than the {working_l} you usually fill in."),
            _t("The culture needs air above it, and room to rise."),
            _t("Make less, or choose a larger vessel."),
        ),
        "sugar_low": (
            _t("{g_per_l} of sugar is little."),
            _t("Usual recipes have {low} to {high}. The sugar feeds the culture; with too little "
               "it sours weakly."),
            _t("Use more sugar unless you know this recipe."),
        ),
        "sugar_high": (
            _t("{g_per_l} of sugar is a lot."),
            _t("Usual recipes have {low} to {high}. More of it stays in the drink, and more "
               "alcohol can form."),
            _t("Use less sugar unless you know this recipe."),
        ),
        "tea_low": (
            _t("{g_per_l} of tea is little."),
            _t("Usual recipes have {low} to {high}. The culture also lives on what the leaves "
               "give."),
            _t("Use more tea unless you know this recipe."),
        ),
        "tea_high": (
            _t("{g_per_l} of tea is a lot."),
            _t("Usual recipes have {low} to {high}. Strong tea is bitter and sours more slowly."),
            _t("Use less tea unless you know this recipe."),
        ),
        "tea_herbal": (
            _t("Herbal tea may not feed the culture."),
            _t("It lacks what tea leaves give, its sourness is less well known here, and some "
               "herbs hinder the culture."),
            _t("Keep a second culture on real tea, and measure the pH more often."),
        ),
    }  # fmt: skip


def _care() -> dict[str, Parts]:
    rules = _t("Where your local rules ask for more, follow them.")
    return {
        "mold_discard_all": (
            _t("With mold, all of it has to go: drink, starter and culture."),
            _t("Mold can leave poisons in the liquid, and its threads reach further than its "
               "patch. Dry, fuzzy spots on top are mold; wet, brown strings below are yeast."),
            _t("Discard everything, wash the vessel with hot water and soap and let it dry. Take "
               "no culture over from it. ") + rules,
        ),
        "look_unsure": (
            _t("Something on the surface is not clear yet."),
            _t("Mold grows from day to day, a young film only thickens. A day tells them apart."),
            _t("Keep the jar apart, use nothing from it for another, and look again tomorrow. "
               "When in doubt, throw it out. ") + rules,
        ),
        "uncultured_good": (
            _t("The sweet tea has stood for {hours} h."),
            _t("That is within the {warn_hours} h in which it should get its starter."),
            "",
        ),
        "uncultured_long": (
            _t("The sweet tea has stood for {hours} h without starter."),
            _t("Lukewarm and sweet, it is a feast for germs; from {warn_hours} h on they may have "
               "begun to grow."),
            _t("Put the starter in as soon as it is cool enough."),
        ),
        "uncultured_too_long": (
            _t("The sweet tea stood {hours} h without starter, longer than {limit_hours} h."),
            _t("Germs may have grown in it that souring does not undo."),
            _t("Discard it and brew it fresh. ") + rules,
        ),
        "souring_long": (
            _t("It has been souring for {day} days."),
            _t("After about {limit_days} days it is often sourer than people should drink much "
               "of, and it holds more alcohol."),
            _t("Taste, measure and draw it off, or keep it as starter."),
        ),
        "souring_over_long": (
            _t("It has been souring for {day} days."),
            _t("After about {limit_days} days the acid can be too much to drink."),
            _t("Do not drink it as it is; it makes strong starter. ") + rules,
        ),
        "vessel_proportions_unusual": (
            _t("By these figures it would be {height_cm} high and {inner_diameter_cm} wide."),
            _t("The height follows from the volume to the brim and the inner diameter; few "
               "vessels look like this."),
            _t("Please check both figures and their units."),
        ),
    }  # fmt: skip


def _odd_readings() -> dict[str, Parts]:
    check = _t("Please check the figure and the instrument. It will be kept as you type it.")
    return {
        "ph_unusual": (
            _t("pH {value} would be unusual."),
            _t("Here it hardly ever lies outside {low} to {high}."),
            check,
        ),
        "temperature_c_unusual": (
            _t("{value_c} would be unusual."),
            _t("Here it hardly ever lies outside {low_c} to {high_c}."),
            check,
        ),
        "brix_unusual": (
            _t("{value_brix} would be unusual."),
            _t("Here it hardly ever lies outside {low_brix} to {high_brix}."),
            check,
        ),
        "specific_gravity_unusual": (
            _t("SG {value_sg} would be unusual."),
            _t("Here it hardly ever lies outside {low_sg} to {high_sg}."),
            check,
        ),
        "ta_g_per_l_unusual": (
            _t("{value_g_per_l} of acid would be unusual."),
            _t("Here it hardly ever lies outside {low_g_per_l} to {high_g_per_l}."),
            check,
        ),
        "pellicle_mm_unusual": (
            _t("A pellicle of {value_mm} would be unusual."),
            _t("Here it hardly ever lies outside {low_mm} to {high_mm}."),
            check,
        ),
    }


_GROUPS: tuple[Callable[[], dict[str, Parts]], ...] = (
    _materials,
    _temperatures,
    _ph,
    _recipe,
    _care,
    _odd_readings,
    drinkverdicts.bottles,
    drinkverdicts.fizz,
    drinkverdicts.alcohol,
    drinkverdicts.finished,
    drinkverdicts.additions_and_cleaning,
    benchverdicts.starters,
    benchverdicts.titrations,
    benchverdicts.meters,
    benchverdicts.sugar_readings,
    liquids.topping_up,
    cultureverdicts.suspicion,
    cultureverdicts.elsewhere,
    cultureverdicts.bottles,
    cultureverdicts.films,
    bottlings.verdicts,
    bottlingnow.verdicts,
)
