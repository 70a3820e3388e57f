"""Words for verdicts on starters, titrations, meters and sugar readings; see wording.verdicts."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.amounts import number_text

Parts = tuple[str, str, str]


def _t(text: str) -> str:
    return QCoreApplication.translate("Verdicts", text)


def amount(key: str, value: float) -> str | None:
    """Write a voltage or a slope; None for a key that names neither."""
    if key.endswith("_mv"):
        return _t("{number} mV").format(number=number_text(value, 0).replace("-", "−"))
    if key == "slope_percent":
        return _t("{number} %").format(number=number_text(value, 0))
    return None


def starters() -> dict[str, Parts]:
    """Words on how strong a starter is and how much of it a wish takes."""
    measure = _t("Measure the pH once it is mixed.")
    return {
        "starter_unfit": (
            _t("At pH {ph} this is no starter."),
            _t("It is not even as sour as a finished drink has to be, so it cannot protect a new "
               "batch."),
            _t("Let it sour further, or use another starter."),
        ),
        "starter_weak": (
            _t("This starter is weak: about {ta_g_per_l} of acid."),
            _t("It takes a lot of it to make sweet tea sour enough."),
            _t("Use more of it, or let it sour further first. ") + measure,
        ),
        "starter_mild": (
            _t("This starter is mild: about {ta_g_per_l} of acid."),
            _t("Makers usually take a little more of such a one; that is common practice, without "
               "a source."),
            measure,
        ),
        "starter_good": (
            _t("This starter is good: about {ta_g_per_l} of acid."),
            _t("Makers usually need no more than an ordinary share of it; that is common practice, "
               "without a source."),
            measure,
        ),
        "starter_vinegary": (
            _t("This starter is vinegary: about {ta_g_per_l} of acid."),
            _t("Little of it makes the tea sour, but little also brings few live cells."),
            _t("Do not go below the least share that published advice gives."),
        ),
        "starter_over_acid": (
            _t("At pH {ph} it is sourer than anybody should drink."),
            _t("As a starter that does no harm."),
            _t("Do not serve it."),
        ),
        "starter_contradicts": (
            _t("pH {ph} and {ta_g_per_l} of acid do not go together in a usual starter."),
            _t("One of the two readings may be off."),
            _t("Measure both again before you rely on them."),
        ),
        "starter_untested": (
            _t("A taste is no measurement."),
            _t("Tongues differ, and sugar hides acid. Neither pH nor acidity of this starter is "
               "known."),
            measure,
        ),
        "starter_share_usual": (
            _t("{share} is about what makers usually take."),
            _t("That is common practice, without a source."),
            measure,
        ),
        "starter_share_over_usual": (
            _t("{share} is more than makers usually take."),
            _t("The water's alkalinity or a weak starter asks for it."),
            _t("Consider softer water or a sourer starter. ") + measure,
        ),
        "starter_share_under_usual": (
            _t("{share} is less than makers usually take."),
            _t("It would make the tea sour enough, but it brings fewer live cells."),
            _t("Take the usual amount all the same."),
        ),
        "starter_target_out_of_reach": (
            _t("Not even this starter by itself reaches pH {target_ph}."),
            _t("It is not sour enough for that, as far as it is known."),
            _t("Use a sourer starter, or choose a higher pH to start at."),
        ),
        "starter_tea_already_there": (
            _t("The tea alone is already at pH {target_ph} or below."),
            _t("The starter is still needed: it brings the live culture."),
            _t("Take the usual amount."),
        ),
        "starter_water_assumed": (
            _t("The water's alkalinity is not known, so it is assumed."),
            _t("Hard water can take twice as much starter as soft water."),
            _t("A test strip or the water supplier's report tells it."),
        ),
    }  # fmt: skip


def titrations() -> dict[str, Parts]:
    """Words on a titration, and on a pair of pH and acidity."""
    return {
        "titration_degassed": (
            _t("The gas was driven out first, as it should be."),
            _t("Carbon dioxide would have been counted as acid."),
            "",
        ),
        "titration_not_degassed": (
            _t("Gas in the sample counts as acid."),
            _t("Each {co2_g_per_l} of carbon dioxide adds {adds_g_per_l}."),
            _t("Warm or stir the sample until it is flat, and titrate again."),
        ),
        "pair_plausible": (
            _t("The two readings go together."),
            _t("They show {excess_meq_per_l} more strong cations than anions, which tea and water "
               "can give."),
            "",
        ),
        "pair_odd": (
            _t("The two readings hardly go together."),
            _t("They show {excess_meq_per_l} of strong ions; tea and water usually give {low} to "
               "{high}. Another acid, or a reading that is off, may be behind it."),
            _t("Measure both again."),
        ),
    }  # fmt: skip


def meters() -> dict[str, Parts]:
    """Words on electrodes, calibrations and temperature compensation."""
    again = _t("Use fresh buffers and calibrate again.")
    return {
        "electrode_good": (
            _t("The electrode is good: {slope_percent} of the ideal slope, {offset_mv} off."),
            _t("Makers of electrodes call such a slope good; that is from memory."),
            "",
        ),
        "electrode_usable": (
            _t("The electrode is usable: {slope_percent} of the ideal slope, {offset_mv} off."),
            _t("It is within what laboratories accept, but no longer like new."),
            _t("Calibrate it on each day of use."),
        ),
        "electrode_clean_or_replace": (
            _t("The electrode is outside what laboratories accept: {slope_percent} of the ideal "
               "slope, {offset_mv} off."),
            _t("It is dirty, dry or worn, or a buffer is not what its bottle says."),
            _t("Clean it, soak it, use fresh buffers and calibrate again; replace it if that does "
               "not help."),
        ),
        "calibration_disagrees": (
            _t("The buffers disagree by {residual_ph} in pH."),
            _t("More than {most_ph} off the line means that one of them is stale or mistaken."),
            again,
        ),
        "calibration_no_low_buffer": (
            _t("No buffer is as sour as the drink."),
            _t("The lowest has pH {lowest_ph}; below it the line is only continued."),
            _t("Take a buffer near pH 4 as well."),
        ),
        "calibration_fresh": (
            _t("The calibration is fresh."),
            _t("Calibrating on each day of use is common practice."),
            "",
        ),
        "calibration_due": (
            _t("The calibration is {age_days} days old."),
            _t("The electrode drifts a little every day; the range allows for it."),
            _t("Calibrate again before a reading that matters."),
        ),
        "calibration_old": (
            _t("The calibration is {age_days} days old, more than {old_days}."),
            _t("How far an electrode has drifted by then is not known well."),
            _t("Calibrate before you rely on a reading."),
        ),
        "compensation_slope_only": (
            _t("Compensation corrects the electrode's slope, and nothing else."),
            _t("It does not turn the pH of a cold drink into that of a warm one; in an acid drink "
               "the two hardly differ."),
            "",
        ),
        "compensation_missing": (
            _t("Without compensation this reading is off by {error_without_ph}."),
            _t("The meter takes the liquid for warmer or colder than it is."),
            _t("Bring the drink to the meter's temperature, or tell the meter that of the drink."),
        ),
    }  # fmt: skip


def sugar_readings() -> dict[str, Parts]:
    """Words on what a hydrometer or refractometer says."""
    return {
        "reading_is_sugar": (
            _t("The reading is that of sugar."),
            _t("Before the culture has worked there is nearly nothing else in it that counts."),
            "",
        ),
        "reading_is_apparent": (
            _t("On day {day} the reading is only apparent."),
            _t("Alcohol, acids and split sugar count in too, and no single instrument can tell "
               "them from sugar."),
            _t("Use it to see how things move, not for how much sugar is left."),
        ),
    }  # fmt: skip
