"""What reminders about bottles and the meter say, with what to do and what to beware of."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.escalation import Step, step_of
from brewdesk.services.wording.moments import date_words, time_words
from brewdesk.store.records import Reminder
from culturecore.stages import ReminderKind

Words = Callable[[Reminder, str, datetime, tzinfo], tuple[str, str]]


def _t(text: str) -> str:
    return QCoreApplication.translate("BottleReminders", text)


def chill_snooze_warning(danger_at: datetime, zone: tzinfo) -> str:
    """Say why a reminder to chill bottles is not put off for as long as was asked."""
    return _t(
        "By then the pressure may be too high: this comes back {day} at {time} at the latest, "
        "until the bottles are chilled."
    ).format(day=date_words(danger_at, zone), time=time_words(danger_at, zone))


def _chill(reminder: Reminder, name: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    step = step_of(reminder, now)
    if step is Step.CALM:
        title = _of(_t("Chill the bottles soon"), name)
    else:
        title = _of(_t("Chill the bottles now"), name)
    sentences = []
    end = reminder.window_end
    if end is not None and step is Step.DANGER:
        sentences.append(
            _t("The pressure may be too high since {day} at {time}: a bottle can burst.").format(
                day=date_words(end, zone), time=time_words(end, zone)
            )
        )
    elif end is not None:
        sentences.append(
            _t("The pressure may become too high from {day} at {time} on.").format(
                day=date_words(end, zone), time=time_words(end, zone)
            )
        )
    sentences += [
        _t("Put all of them into the fridge, and write down that you did: that ends this."),
        _t(
            "Cover your eyes and hands, do not shake, knock or open a warm bottle, and keep others "
            "away. The forecast is an estimate: if the test bottle is hard, chill them at once."
        ),
    ]
    return title, " ".join(sentences)


def _pressure_check(reminder: Reminder, name: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _of(_t("Press the test bottle"), name)
    body = _t(
        "Press the plastic test bottle, or read its gauge, and write down what you found. Hard "
        "means: chill all of them now. A glass bottle tells nothing by its feel and can burst; "
        "handle it gently, with your eyes covered."
    )
    return title, body


def _open_test(reminder: Reminder, name: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _of(_t("Open one cold bottle"), name)
    body = _t(
        "Chill one for some hours first, then open it slowly over the sink, under a cloth and "
        "away from your face. Write down whether it was too flat, right, or gushed; if it gushed, "
        "chill the others at once. It may hold more alcohol than the open jar did."
    )
    return title, body


def _best_before(reminder: Reminder, name: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _of(_t("Drink up the bottles"), name)
    sentences = []
    end = reminder.window_end
    if end is not None:
        sentences.append(_t("You wanted them used up by {day}.").format(day=date_words(end, zone)))
    sentences += [
        _t("Even in the fridge sugar turns slowly into alcohol and pressure: open them with care."),
        _t("Throw out what smells wrong or has mold; when in doubt, throw it out."),
    ]
    return title, " ".join(sentences)


def _calibrate(reminder: Reminder, name: str, now: datetime, zone: tzinfo) -> tuple[str, str]:
    title = _t("Calibrate the pH meter")
    body = _t(
        "Use fresh buffers, one of them near pH 4, and keep what you find: “Is my pH meter still "
        "good?” among the questions has a button for it. Until then mistrust readings near a "
        "limit: whether a brew is sour enough should not hang on an uncalibrated meter."
    )
    return title, body


def _of(what: str, name: str) -> str:
    """Put the bottling's name behind what is to be done; it may be long, or missing."""
    return _t("{what}: {name}").format(what=what, name=name) if name else what


BOTTLE_WORDS: dict[ReminderKind, Words] = {
    ReminderKind.CHILL: _chill,
    ReminderKind.PRESSURE_CHECK: _pressure_check,
    ReminderKind.OPEN_TEST: _open_test,
    ReminderKind.BEST_BEFORE: _best_before,
    ReminderKind.CALIBRATE: _calibrate,
}
