"""What is said about liquid that is drawn, kept, topped up, poured over and lent."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.amounts import Show
from culturecore.units import Kind

Parts = tuple[str, str, str]


def _t(text: str) -> str:
    return QCoreApplication.translate("Liquids", text)


def poured_into_words(name: str) -> str:
    """Say how a batch ended that was poured into another."""
    return _t("Poured into {name}").format(name=name)


def topping_up() -> dict[str, Parts]:
    """Words on what fresh sweet tea may do to a souring jar."""
    return {
        "top_up_ph_high": (
            _t("With this much fresh tea its pH may rise above {limit}."),
            _t("The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful "
               "germs can grow in sweet tea."),
            _t("Pour in less, or let it sour for longer first, and measure after mixing."),
        ),
        "top_up_over_working": (
            _t("That makes {fill_l}, more than the {working_l} you usually fill in."),
            _t("The culture needs air above it, and room to rise."),
            _t("Pour in less, or draw some off first."),
        ),
        "top_up_large": (
            _t("More than half of the jar would be fresh tea."),
            _t("So much at once thins the acid that protects it; {share} is as good as a new "
               "batch. That half is a cautious mark; common practice, no source."),
            _t("Pour in less, or plan a new batch with this one as its starter."),
        ),
    }  # fmt: skip


def problems() -> dict[tuple[str, str], str]:
    """Return sentences on refused amounts and ends, by (field, reason)."""
    suspect = _t(
        "This liquid may carry mold. It goes nowhere but down the drain, until you "
        "have looked and cleared it."
    )
    no_liquid = _t("Only a batch that is souring has liquid to draw, pour or lend.")
    return {
        ("", "less_than_a_drop"): _t("Please give an amount of at least a drop."),
        ("", "not_there"): _t("That is more than there is: {high}."),
        ("", "all_of_it"): _t(
            "That would empty the jar: there are {high}. To take all of it, draw the batch off "
            "or pour it over."
        ),
        ("", "above_brim_by_now"): _t("That does not fit: there is room for {high} to the brim."),
        ("", "suspect"): suspect,
        ("", "no_liquid"): no_liquid,
        ("into_batch_id", "no_liquid"): _t("Only a batch that is souring can take in another one."),
        ("from_culture_id", "no_liquid"): _t(
            "Only a culture that rests in liquid of its own can lend starter."
        ),
        ("culture_id", "no_liquid"): _t(
            "Starter can only be kept where a culture rests in a vessel."
        ),
        ("kept_l", "no_culture"): _t(
            "There is no culture in this jar to keep it with. Lend it to a plan instead."
        ),
        ("into_batch_id", "same_batch"): _t("A batch cannot be poured into itself."),
        ("vessel_id", "same_vessel"): _t("It is in this vessel already."),
        ("to_batch_id", "not_planned"): _t(
            "Starter can be lent to a plan or an empty vessel; this batch has been begun."
        ),
        ("culture_name", "not_all"): _t(
            "The cultures join only if all of the batch is poured over."
        ),
        ("culture_name", "no_two_cultures"): _t(
            "There are no two different cultures at work in these jars."
        ),
        ("culture_name", "taken"): _t(
            "Another culture has this name already. Please choose another name."
        ),
    }


def suggestion_words(volume_l: float, plan_name: str | None, show: Show) -> str:
    """Say how much starter to keep back, and for what."""
    if volume_l <= 0.0:
        return ""
    volume = show(volume_l, Kind.VOLUME)
    if plan_name is not None:
        return _t("{plan}, which is planned next, wants {volume} of starter.").format(
            plan=plan_name, volume=volume
        )
    return _t("To fill this vessel again you would need {volume} of starter.").format(volume=volume)
