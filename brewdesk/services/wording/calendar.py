"""What a calendar is told of the due list beyond the reminders' own words."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from culturecore.stages import ReminderKind


def _t(text: str) -> str:
    return QCoreApplication.translate("Calendar", text)


def calendar_name() -> str:
    """Name the calendar."""
    return _t("Due in the pantry")


def category_words(kind: ReminderKind) -> str:
    """Name a kind of reminder in a word or two."""
    return {
        ReminderKind.TASTE: _t("Tasting"),
        ReminderKind.PH_CHECK: _t("pH check"),
        ReminderKind.MOLD_LOOK: _t("Look for mold"),
        ReminderKind.OWN: _t("Own reminder"),
        ReminderKind.FEED: _t("Feeding"),
        ReminderKind.TOP_UP: _t("Topping up"),
        ReminderKind.FILM_LOOK: _t("Look for the film"),
        ReminderKind.CHILL: _t("Chilling bottles"),
        ReminderKind.PRESSURE_CHECK: _t("Pressure check"),
        ReminderKind.OPEN_TEST: _t("Test bottle"),
        ReminderKind.BEST_BEFORE: _t("Best before"),
        ReminderKind.CALIBRATE: _t("Calibration"),
    }[kind]


def settled_words(kind: ReminderKind, name: str, own_text: str) -> str:
    """Name a reminder that needs nothing more."""
    what = own_text.strip() or category_words(kind)
    return _t("{what}: {name}").format(what=what, name=name) if name else what


def written_words(path: str, count: int) -> str:
    """Say that the calendar file is there."""
    if count == 0:
        return _t("Nothing is open: the calendar file {path} is empty.").format(path=path)
    if count == 1:
        return _t("1 reminder is in the calendar file {path}.").format(path=path)
    return _t("{count} reminders are in the calendar file {path}.").format(count=count, path=path)


def not_written_words(path: str) -> str:
    """Say that the calendar file could not be written."""
    return _t(
        "The calendar file {path} could not be written; what stood there before still does. "
        "Please check that its folder is there and may be written to. The due list itself is "
        "not affected."
    ).format(path=path)


def not_ours_words(path: str) -> str:
    """Say that a file was not overwritten because it is no calendar."""
    return _t(
        "The file {path} is no calendar, so it was left as it is. Please choose another name."
    ).format(path=path)
