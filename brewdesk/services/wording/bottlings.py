"""What is said about bottles: acts, verdicts, refusals, remedies, and how they stand now."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.acts import ActKind
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.drinkverdicts import amount
from brewdesk.services.wording.stages import name_of
from culturecore.stages import CheckKind, Feel, Opened
from culturecore.units import Kind

Parts = tuple[str, str, str]
Facts = Mapping[str, Any]


def _t(text: str) -> str:
    return QCoreApplication.translate("Bottlings", text)


def bar_words(bar: float, *, is_high: bool = False) -> str:
    """Write a gauge pressure with psi; 8 bar stands for everything above."""
    if bar >= 8.0:
        return _t("over 8 bar")
    return amount("highest_bar" if is_high else "gauge_bar", max(bar, 0.0)) or ""


def volumes_words(volumes: float) -> str:
    """Say how fizzy a number of volumes is; common practice, no source."""
    number = number_text(volumes, 1)
    if volumes < 1.3:
        return _t("{number} volumes, hardly fizzy").format(number=number)
    if volumes < 2.0:
        return _t("{number} volumes, a gentle prickle").format(number=number)
    if volumes < 2.6:
        return _t("{number} volumes, fizzy as beer").format(number=number)
    if volumes < 3.2:
        return _t("{number} volumes, lively as lemonade").format(number=number)
    return _t("{number} volumes, wild").format(number=number)


def days_words(low: float, high: float) -> str:
    """Say a span of days, coarsely as far as it is known: "2 to 5 days"."""
    if high < 1.0:
        return _t("less than a day")
    first, last = _day_number(low), _day_number(high)
    if first == last:
        return _t("about {days} days").format(days=last)
    return _t("{low} to {high} days").format(low=first, high=last)


def _day_number(days: float) -> str:
    return number_text(days, 1 if days < 3.0 else 0)


# --- acts -------------------------------------------------------------------------------


def _fill(facts: Facts, show: Show) -> str:
    volume = show(facts["volume_l"], Kind.VOLUME)
    if facts["override_reason"]:
        return _t("{name}: {volume} in {count} bottles, in spite of the warning: {reason}").format(
            name=facts["name"],
            volume=volume,
            count=facts["count"],
            reason=facts["override_reason"],
        )
    return _t("{name}: {volume} in {count} bottles").format(
        name=facts["name"], volume=volume, count=facts["count"]
    )


def check_text(facts: Facts) -> str:
    """Say one look at bottles: "firm", "1.8 bar (26 psi)", "opened: right"."""
    kind = CheckKind(facts["check"])
    if kind is CheckKind.FEEL:
        return _t("test bottle {feel}").format(feel=name_of(Feel(facts["feel"])))
    if kind is CheckKind.GAUGE:
        return _t("gauge {bar}").format(bar=bar_words(facts["gauge_bar"]))
    if kind is CheckKind.OPENED:
        return _t("opened, {opened}").format(opened=name_of(Opened(facts["opened"])))
    if kind is CheckKind.VENTED:
        return _t("vented")
    return _t("note “{text}”").format(text=facts["text"])


def _check(facts: Facts, _show: Show) -> str:
    return _t("{name}: {check}").format(name=facts["name"], check=check_text(facts))


def _edit_check(facts: Facts, _show: Show) -> str:
    return _t("{name}: corrected to {check}").format(name=facts["name"], check=check_text(facts))


def _remove_check(facts: Facts, _show: Show) -> str:
    return _t("{name}: {check} taken out").format(name=facts["name"], check=check_text(facts))


def _chill(facts: Facts, show: Show) -> str:
    return _t("{name} chilled at {temperature}").format(
        name=facts["name"], temperature=show(facts["temperature_c"], Kind.TEMPERATURE)
    )


def _finish(facts: Facts, _show: Show) -> str:
    return _t("{name} drunk up").format(name=facts["name"])


def _discard(facts: Facts, _show: Show) -> str:
    return _t("{name} poured away: {reason}").format(name=facts["name"], reason=facts["reason"])


BOTTLE_WORDS: dict[ActKind, Callable[[Facts, Show], str]] = {
    ActKind.FILL_BOTTLES: _fill,
    ActKind.CHECK_BOTTLES: _check,
    ActKind.EDIT_BOTTLE_CHECK: _edit_check,
    ActKind.REMOVE_BOTTLE_CHECK: _remove_check,
    ActKind.CHILL_BOTTLES: _chill,
    ActKind.FINISH_BOTTLES: _finish,
    ActKind.DISCARD_BOTTLES: _discard,
}


# --- names ------------------------------------------------------------------------------


def addition_name(key: str) -> str:
    """Name an entry of the table of additions."""
    return {
        "white_sugar": _t("White sugar"),
        "brown_sugar": _t("Brown sugar"),
        "honey": _t("Honey"),
        "maple_syrup": _t("Maple syrup"),
        "agave_syrup": _t("Agave syrup"),
        "apple_juice": _t("Apple juice"),
        "orange_juice": _t("Orange juice"),
        "grape_juice": _t("Grape juice"),
        "pineapple_juice": _t("Pineapple juice"),
        "cranberry_juice": _t("Cranberry juice, unsweetened"),
        "pomegranate_juice": _t("Pomegranate juice"),
        "lemon_juice": _t("Lemon juice"),
        "raspberries": _t("Raspberries"),
        "strawberries": _t("Strawberries"),
        "blackberries": _t("Blackberries"),
        "blueberries": _t("Blueberries"),
        "cherries": _t("Sweet cherries"),
        "apples": _t("Apples"),
        "pears": _t("Pears"),
        "plums": _t("Plums"),
        "peaches": _t("Peaches"),
        "apricots": _t("Apricots"),
        "grapes": _t("Grapes"),
        "oranges": _t("Oranges"),
        "grapefruit": _t("Grapefruit"),
        "pineapple": _t("Pineapple"),
        "mango": _t("Mango"),
        "kiwi": _t("Kiwi"),
        "figs": _t("Figs"),
        "pomegranate": _t("Pomegranate seeds"),
        "watermelon": _t("Watermelon"),
        "ginger": _t("Ginger root"),
    }[key]


# --- verdicts and refusals ----------------------------------------------------------------


def verdicts() -> dict[str, Parts]:
    """Words on a bottling as a whole."""
    rules = _t("Where your local rules ask for more, follow them.")
    return {
        "bottling_no_time": (
            _t("These bottles may pass their limit within {hours} hours."),
            _t("Chilling takes hours too: less than {least_hours} hours leave no time to save "
               "them."),
            _t("Add less sugar, fill cooler, or use bottles with a higher rating."),
        ),
        "bottling_unrated": (
            _t("Some of these bottles have no rating from their maker."),
            _t("They are reckoned with a cautious {ceiling_bar}, our reading of the glass trade's "
               "figure for fizzy-drink glass. No one has promised that yours hold it."),
            _t("If you know the rating, choose “Rated by its maker” and type it."),
        ),
        "bottling_no_test": (
            _t("There is no test bottle among them."),
            _t("How lively your yeasts are is hardly known beforehand. A plastic bottle shows it: "
               "soft, firm, hard."),
            _t("Fill one plastic bottle made for fizzy drinks, and feel it daily."),
        ),
        "bottling_alcohol": (
            _t("In the bottle, alcohol rises by {low_abv} to {high_abv} for this fizz, and up to "
               "{most_abv} if all the sugar ferments."),
            _t("That comes on top of what is in the drink already. Some rules call a drink "
               "alcoholic from {threshold_abv}; bought kombuchas have been found well above."),
            _t("Tell those who drink it. For children, in pregnancy and where alcohol must be "
               "avoided, leave it. ") + rules,
        ),
        "bottling_glass": (
            _t("Glass under pressure can burst without warning."),
            _t("Bottles have cost people their eyes: when moved, when dropped, and by the flying "
               "cap."),
            _t("Wear eye protection. Stand the bottles in a crate or box with a lid, and lay a "
               "towel over those you move. Never shake one. Chill it through, then open it slowly "
               "over a sink, under a towel. ") + rules,
        ),
    }  # fmt: skip


def problems() -> dict[tuple[str, str], str]:
    """Return sentences on refused bottlings and checks, by (field, reason)."""
    return {
        ("groups", "empty"): _t("Please enter at least one kind of bottles."),
        ("rated_bar", "empty"): _t("Please type the rating that their maker gives."),
        ("drink_volume_l", "bottles_too_few"): _t(
            "The bottles hold only {high}. Add bottles, or bottle less."
        ),
        ("starter_kept_l", "no_culture"): _t(
            "There is no culture in this jar to keep it with. Keep it with a culture at rest, or "
            "leave the batch as it is."
        ),
        ("override_reason", "empty"): _t(
            "There is a warning that stops this. Write down why you fill them all the same."
        ),
        ("bottling_id", "not_conditioning"): _t("These bottles are not conditioning any more."),
        ("bottling_id", "ended"): _t("These bottles are gone already."),
        ("feel", "no_test_bottle"): _t(
            "Only a plastic bottle can be felt, and there is none among these."
        ),
        ("feel", "empty"): _t("Please say how it felt."),
        ("gauge_bar", "empty"): _t("Please type what the gauge shows."),
        ("opened", "empty"): _t("Please say how it was."),
        ("bottle_count", "too_many"): _t("There are only {high} bottles left."),
        ("", "before_filling"): _t("This is before the bottles were filled."),
    }


def labels() -> dict[str, str]:
    """Return the names of a bottling's fields, for sentences about their ranges."""
    return {
        "drink_volume_l": _t("The amount to bottle"),
        "bottle_count": _t("The number of bottles"),
        "headspace_share": _t("The headspace"),
        "rated_bar": _t("The rating"),
        "mass_g": _t("The amount"),
        "sugar_share_low": _t("The least share of sugar"),
        "sugar_share_high": _t("The most share of sugar"),
        "target_volumes": _t("The fizz"),
        "priming_sugar_g": _t("The sugar in all"),
        "warmest_c": _t("The warmest temperature"),
        "open_jar_c": _t("The temperature of the jar"),
        "starter_kept_l": _t("The starter kept back"),
        "residual_sugar_low_g_per_l": _t("The least sugar left in the drink"),
        "residual_sugar_high_g_per_l": _t("The most sugar left in the drink"),
        "gauge_bar": _t("The pressure"),
        "cold_temperature_c": _t("The temperature of the cold"),
    }


def remedy_words(
    *,
    most_volumes: float | None,
    place_temperature_c: float,
    is_warmer: bool,
    wants_other_bottles: bool,
    wants_headspace: bool,
    wants_test: bool,
) -> tuple[str, ...]:
    """Say what would help, the most useful first."""
    found = []
    if wants_other_bottles:
        found.append(_t("Use other bottles: sound glass or plastic made for fizzy drinks."))
    if most_volumes is not None:
        found.append(
            _t("Less fizz: up to {volumes} volumes, with no more sugar than that takes.").format(
                volumes=number_text(most_volumes, 1)
            )
        )
    elif not wants_other_bottles:
        found.append(_t("Less fizz alone does not help with these bottles."))
    if is_warmer:
        found.append(
            _t("Keep them cooler, no warmer than {temperature} °C, and chill sooner.").format(
                temperature=number_text(place_temperature_c, 0)
            )
        )
    if wants_headspace:
        found.append(_t("Leave more headspace: at least 4 % of the bottle."))
    if not wants_other_bottles:
        found.append(_t("Use bottles with a higher rating from their maker."))
    if wants_test:
        found.append(_t("Fill one plastic test bottle, and chill all of them once it is hard."))
    return tuple(found)
