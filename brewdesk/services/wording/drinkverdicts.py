"""Words for verdicts on bottles, alcohol and the finished drink; see wording.verdicts."""

from __future__ import annotations

import math

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.amounts import number_text

Parts = tuple[str, str, str]

_PSI_PER_BAR = 14.5038


def _t(text: str) -> str:
    return QCoreApplication.translate("Verdicts", text)


def _rules() -> str:
    return _t("Where your local rules ask for more, follow them.")


def amount(key: str, value: float) -> str | None:
    """Write a pressure, strength, fizz or dose; None for a key that names none of them."""
    if key.endswith("_bar"):
        # a bound is never rounded to below itself
        shown = math.ceil(10.0 * value - 1e-6) / 10.0 if key == "highest_bar" else value
        return _t("{bar} bar ({psi} psi)").format(
            bar=number_text(shown, 1), psi=number_text(shown * _PSI_PER_BAR, 0)
        )
    if key.endswith("_abv"):
        exact = key == "threshold_abv" and not math.isclose(value, round(value, 1))
        return _t("{number} %").format(number=number_text(value, 2 if exact else 1))
    if key.endswith("volumes"):
        return number_text(value, 1)
    if key.endswith("_mg"):
        return _t("{number} mg").format(number=number_text(value, 0))
    if key.endswith("_ppm"):
        return _t("{number} mg/L").format(number=number_text(value, 0))
    return None


def bottles() -> dict[str, Parts]:
    """Words on whether a bottle may be closed on a fermenting drink."""
    other = _t("Use bottles made for fizzy drinks, glass or plastic, or drink it flat.")
    less = _t("Aim for less fizz, keep the bottles colder, or use bottles with a higher rating.")
    return {
        "bottle_not_for_pressure": (
            _t("This bottle is not made for pressure."),
            _t("Decorative and square bottles and canning jars burst at pressures that a little "
               "sugar can make, and glass flies."),
            other,
        ),
        "bottle_damaged": (
            _t("A chipped, scratched or cracked bottle must not be put under pressure."),
            _t("Glass breaks from its flaws, and every scratch weakens it."),
            _t("Sort it out, and use a sound one."),
        ),
        "bottle_too_large": (
            _t("{brim_l} is large for glass under pressure."),
            _t("The glass trade advises against more than {largest_l}: the same pressure pulls "
               "harder on a wider wall."),
            _t("Use smaller bottles, or plastic made for fizzy drinks."),
        ),
        "bottle_no_room": (
            _t("At the warmest, the drink would swell until the bottle is full."),
            _t("A drink without gas above it does not yield; any bottle then gives way."),
            _t("Leave more headspace, and fill nothing ice-cold to the brim."),
        ),
        "bottle_over_8_bar": (
            _t("At the warmest, this fizz would come to over 8 bar."),
            _t("That is beyond what can be reckoned, and beyond {ceiling_bar}, the most for "
               "these bottles."),
            less,
        ),
        "bottle_over_ceiling": (
            _t("At the warmest, this fizz could come to {highest_bar}, at {volumes} volumes."),
            _t("These bottles must not pass {ceiling_bar}. No bottle promises to hold even that: "
               "glass ages."),
            less,
        ),
        "bottle_too_fizzy": (
            _t("{volumes} volumes are too much fizz for bottles of unknown rating."),
            _t("The glass trade's figures, read with care, end below {limit_volumes}; one warm "
               "day would be enough."),
            less,
        ),
        "bottle_very_fizzy": (
            _t("{volumes} volumes are a lot of fizz for bottles of unknown rating."),
            _t("From {limit_volumes} on little is left for a warm day or an old bottle."),
            _t("Aim for less fizz, chill early, and stand the bottles in a closed box. ")
            + _rules(),
        ),
        "bottle_near_ceiling": (
            _t("At the warmest, this fizz could come to {highest_bar}, at {volumes} volumes."),
            _t("That is close to {ceiling_bar}, the most for these bottles; a warm day or an old "
               "bottle takes up the rest."),
            _t("Aim for less fizz, chill early, and stand the bottles in a closed box. ")
            + _rules(),
        ),
        "bottle_within_ceiling": (
            _t("At the warmest, this fizz is reckoned to stay below {highest_bar}, at {volumes} "
               "volumes."),
            _t("These bottles must not pass {ceiling_bar}. The figure holds only if they are "
               "chilled in time, and it promises nothing about an old bottle."),
            _t("Chill in time. ") + _rules(),
        ),
        "headspace_small": (
            _t("{share} of headspace is little."),
            _t("A drink that warms up swells. Below {least_share} it may squeeze what gas there is "
               "to a high pressure."),
            _t("Fill a little less."),
        ),
        "headspace_large": (
            _t("{share} of headspace is a lot."),
            _t("Above {most_share} much of the gas stays out of the drink, and much air is closed "
               "in."),
            _t("Fill a little more if you like."),
        ),
        "bottle_handling": (
            _t("Treat every closed bottle as if it might burst."),
            _t("Bottles under pressure have cost people their eyes: when moved, when dropped, and "
               "by the flying cap."),
            _t("Keep them cold, in a closed box, and do not shake them. Chill before you open one, "
               "and hold the cap away from faces. ") + _rules(),
        ),
    }  # fmt: skip


def fizz() -> dict[str, Parts]:
    """Words on what may happen while bottles stand, and when to chill."""
    only = _t("Only chilling in time stops it; cold slows the yeasts and does not end them.")
    plastic = _t("Fill one plastic bottle too and feel it daily: hard means chill. ")
    chill = _t("Put all bottles in the cold now. Open none warm, and none to let gas out. ")
    return {
        "all_sugar_over_8_bar": (
            _t("If all the sugar fermented, the bottles would come to over 8 bar."),
            _t("They must not pass {ceiling_bar}. Nearly every sweet kombucha could break nearly "
               "every bottle. ") + only,
            plastic + _rules(),
        ),
        "all_sugar_over_ceiling": (
            _t("If all the sugar fermented, the bottles could come to {highest_bar}."),
            _t("They must not pass {ceiling_bar}. ") + only,
            plastic + _rules(),
        ),
        "chill_now": (
            _t("Day {days} in the bottle: chill now."),
            _t("Lively yeasts could have brought the bottles to their limit by day "
               "{chill_by_days}."),
            chill + _rules(),
        ),
        "chill_once_right": (
            _t("Day {days} in the bottle: it may be fizzy enough."),
            _t("The pace is hardly known beforehand; it may take from {low_days} to {high_days} "
               "days."),
            _t("Chill one bottle through, open it with care, and chill the others once it is "
               "right."),
        ),
        "chill_later": (
            _t("Day {days} in the bottle: it is likely not fizzy yet."),
            _t("Even lively yeasts would need longer, as far as their pace is known."),
            _t("Look at the bottles daily all the same."),
        ),
        "gauge_over_ceiling": (
            _t("The gauge shows {gauge_bar}."),
            _t("With its doubt that is above {ceiling_bar}, the most for these bottles."),
            _t("Keep away until they are cold: cover them, cool the room, and do not move them "
               "warm. Wear goggles and gloves. ") + _rules(),
        ),
        "gauge_chill": (
            _t("The gauge shows {gauge_bar}."),
            _t("That is plenty of fizz. It must not pass {ceiling_bar}, and it goes on rising."),
            chill + _rules(),
        ),
        "gauge_within": (
            _t("The gauge shows {gauge_bar}."),
            _t("These bottles must not pass {ceiling_bar}."),
            _t("Look again tomorrow."),
        ),
    }  # fmt: skip


def alcohol() -> dict[str, Parts]:
    """Words on how near an estimate comes to a threshold: never a certificate."""
    laboratory = _t("Only a laboratory can settle it. Before you give or sell it as a drink "
                    "without alcohol, have it measured, and follow your local rules.")  # fmt: skip
    estimate = _t("This is an estimate from {low_abv} to {high_abv}; neither sugar nor two simple "
                  "instruments can tell such amounts apart. ")  # fmt: skip
    return {
        "alcohol_likely_over": (
            _t("It likely holds more alcohol than the {threshold_abv} you chose."),
            estimate + _t("Alcohol may also rise further in the bottle."),
            laboratory,
        ),
        "alcohol_may_be_over": (
            _t("It may hold more alcohol than the {threshold_abv} you chose."),
            estimate + _t("Alcohol may also rise further in the bottle."),
            laboratory,
        ),
        "alcohol_likely_below": (
            _t("It likely holds less alcohol than the {threshold_abv} you chose."),
            estimate + _t("That is no proof, and alcohol may still rise in the bottle."),
            laboratory,
        ),
    }


def finished() -> dict[str, Parts]:
    """Words on the finished drink: how sour, how kept, how much, for whom."""
    return {
        "finished_ph_unknown": (
            _t("No pH was taken of this batch since it began."),
            _t("Guidance for home brewing asks for {limit} or less before it is drunk."),
            _t("Take a reading first. ") + _rules(),
        ),
        "finished_ph_high": (
            _t("pH {ph} does not show that the drink is sour enough."),
            _t("With the doubt of {sd} it may lie above {limit}, where harmful germs can grow. "
               "Sweet or fresh additions raise it."),
            _t("Do not drink or bottle it yet. Measure again, with a calibrated meter if you "
               "can. ") + _rules(),
        ),
        "finished_ph_needs_meter": (
            _t("A strip that reads pH {ph} is not enough to go by."),
            _t("Above {limit} a rule for sour foods asks for a meter; a strip is too coarse there. "
               "It is used here as a guide."),
            _t("Measure with a calibrated meter, or let it sour for longer."),
        ),
        "finished_ph_over_acid": (
            _t("pH {ph} is very sour: with the doubt of {sd} it may lie below {limit}."),
            _t("Published guidance advises against drinking kombucha this sour."),
            _t("Do not serve it as it is. It makes strong starter. ") + _rules(),
        ),
        "finished_ph_within": (
            _t("pH {ph} is at {limit} or below, with the doubt of the reading counted in."),
            _t("That is needed, but it does not prove that a drink is safe."),
            _t("Measure again after anything is added. ") + _rules(),
        ),
        "storage_cold": (
            _t("{temperature_c} is cold enough to keep it."),
            _t("At {limit_c} or below it ferments and sours slowly, and most germs grow slowly "
               "too."),
            _t("Keep it there until it is drunk; fizz and alcohol still rise a little."),
        ),
        "storage_warm": (
            _t("{temperature_c} is too warm to keep it."),
            _t("Above {limit_c} it goes on fermenting: pressure, acid and alcohol rise."),
            _t("Move it into the refrigerator. ") + _rules(),
        ),
        "keeping_short": (
            _t("It has been kept for {days} days."),
            _t("It goes on changing slowly, in the cold too; {limit_days} days are a cautious "
               "mark, not a published one."),
            "",
        ),
        "keeping_long": (
            _t("It has been kept for {days} days, longer than {limit_days}."),
            _t("Alcohol was found to rise over two months, in the cold too. The mark is a cautious "
               "choice, not a published one."),
            _t("Open it cold and with care; look, smell and measure the pH before you taste. ")
            + _rules(),
        ),
        "serving_small": (
            _t("{drunk_l} a day is within the most cautious advice."),
            _t("Some health offices advise at most {limit_l} a day; most name no amount."),
            "",
        ),
        "serving_large": (
            _t("{drunk_l} a day is more than the most cautious advice."),
            _t("Some health offices advise at most {limit_l} a day, after two grave cases whose "
               "cause was never proven; most name no amount."),
            _t("Drink less if you are new to it, and ask a doctor if you are in doubt."),
        ),
        "not_for_everyone": (
            _t("This drink is not for everyone."),
            _t("It is alive, sour, and holds caffeine and some alcohol."),
            _t("It is advised against in pregnancy, for small children and with weak immunity. Ask "
               "a doctor if you take medicines or have to avoid alcohol. ") + _rules(),
        ),
        "caffeine_within": (
            _t("It holds up to about {high_mg} of caffeine."),
            _t("For healthy adults {once_mg} at once and {day_mg} a day raise no concern; in "
               "pregnancy it is {once_mg} a day."),
            "",
        ),
        "caffeine_much": (
            _t("It may hold as much as {high_mg} of caffeine."),
            _t("For healthy adults {once_mg} at once and {day_mg} a day raise no concern; in "
               "pregnancy it is {once_mg} a day."),
            _t("Drink less of it at once, or use less leaf next time."),
        ),
    }  # fmt: skip


def additions_and_cleaning() -> dict[str, Parts]:
    """Words on flavouring, heating and rinsing."""
    return {
        "flavour_fresh": (
            _t("Fresh juice or fruit can bring germs in again."),
            _t("In trials, germs from juice lived on for two weeks in cold, sour kombucha."),
            _t("Use pasteurised juice, or heat the fruit first. Measure the pH afterwards: the "
               "same limit applies again. ") + _rules(),
        ),
        "flavour_heated": (
            _t("Pasteurised juice or heated fruit is the better choice."),
            _t("It still brings sugar, and may raise the pH."),
            _t("Measure the pH afterwards: the same limit applies again."),
        ),
        "pasteurise_sealed": (
            _t("Never heat a closed bottle that ferments."),
            _t("Its pressure climbs steeply with the heat, and hot glass bursts."),
            _t("Let it go flat and heat the drink in an open pot, or keep it cold instead."),
        ),
        "pasteurise_cool": (
            _t("{temperature_c} may not end the fermenting."),
            _t("Published guidance asks for {limit_c}, and the thermometer may be a little off."),
            _t("Heat it further, stir, and measure again. ") + _rules(),
        ),
        "pasteurise_hot": (
            _t("{temperature_c} meets the published {limit_c}."),
            _t("Heated drink ferments no longer; its culture is gone too."),
            _t("Fill it at once, hot, into clean bottles that stand heat. ") + _rules(),
        ),
        "chlorine_within": (
            _t("This rinse holds about {chlorine_ppm} of chlorine."),
            _t("Published guidance for clean vessels is {limit_ppm}; bleach loses strength with "
               "age."),
            _t("Let the vessel dry in the air: what is left of it harms the culture."),
        ),
        "chlorine_strong": (
            _t("This rinse holds about {chlorine_ppm} of chlorine, which is strong."),
            _t("Published guidance for clean vessels is {limit_ppm}. More of it is left on the "
               "vessel, and it does not clean better."),
            _t("Use less bleach, never mix it with acid, and rinse with good water. ") + _rules(),
        ),
    }  # fmt: skip
