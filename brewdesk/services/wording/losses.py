"""Losses in words, and what usually helps. All of it is common practice, no source."""

from __future__ import annotations

from datetime import tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.lookbacklosses import Loss, LossKind
from brewdesk.services.losscauses import Cause
from brewdesk.services.wording.amounts import Show
from brewdesk.services.wording.moments import date_words
from culturecore.units import Kind


def _t(text: str) -> str:
    return QCoreApplication.translate("Losses", text)


def cause_words(cause: Cause) -> str:
    """Name what a loss was for."""
    return {
        Cause.MOLD: _t("Mold"),
        Cause.FLIES: _t("Flies"),
        Cause.TOO_SOUR: _t("Too sour"),
        Cause.OFF: _t("Smell or taste"),
        Cause.PRESSURE: _t("Too much pressure"),
        Cause.BROKEN: _t("Broken or spilt"),
        Cause.DRIED: _t("Dried out or forgotten"),
        Cause.UNTOLD: _t("Another reason"),
    }[cause]


def help_words(cause: Cause) -> str:
    """Say what usually helps against a cause; empty where nothing general can be said."""
    return {
        Cause.MOLD: _t(
            "Throw all of it away, liquid, culture and cloth, and clean the jar with boiling "
            "water. Next time begin sour enough (more or sourer starter), wet the top of the "
            "culture with starter, cover the jar at once, and keep it warm enough to sour within "
            "days."
        ),
        Cause.FLIES: _t(
            "A close-woven cloth under a tight band; paper or cheesecloth lets fruit flies in. "
            "With maggots in it, the batch and its culture go."
        ),
        Cause.TOO_SOUR: _t(
            "Begin to taste earlier, most of all in warm months, or stand the jar cooler. "
            "What is too sour to drink still makes strong starter."
        ),
        Cause.OFF: _t(
            "Look at water and tea first: scented or oily teas and chlorine disturb a culture. "
            "When in doubt, throw it out."
        ),
        Cause.PRESSURE: _t(
            "Bottle with less sugar, use bottles made for pressure, keep a soft test bottle, and "
            "chill them by the day the forecast names."
        ),
        Cause.BROKEN: _t(
            "Warm glass before hot tea goes in, carry full jars with both hands under them, and "
            "stand bottles in a box that would hold the splinters."
        ),
        Cause.DRIED: _t(
            "Resting cultures want liquid and a little sweet tea now and then; the reminders for "
            "feeding and topping up can be set in the settings."
        ),
        Cause.UNTOLD: "",
    }[cause]


def loss_words(loss: Loss, show: Show, zone: tzinfo) -> str:
    """Say what was lost, when, and how much of it."""
    kind = {
        LossKind.BATCH: _t("Batch {name}"),
        LossKind.CULTURE: _t("Culture {name}"),
        LossKind.BOTTLES: _t("Bottles {name}"),
    }[loss.kind].format(name=loss.name)
    parts = [kind, date_words(loss.at, zone)]
    if loss.bottle_count:
        one = loss.bottle_count == 1
        words = _t("1 bottle") if one else _t("{count} bottles").format(count=loss.bottle_count)
        parts.append(words)
    if loss.volume_l:
        parts.append(show(loss.volume_l, Kind.VOLUME))
    return " · ".join(parts)
