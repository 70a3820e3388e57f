"""What stands in the way of a start, and what a start has to tell."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.safetylog import full_stamp


def _t(text: str) -> str:
    return QCoreApplication.translate("Starting", text)


def taken_words() -> str:
    """Say that another window has the pantry, and does not answer."""
    return _t(
        "This pantry is already open in another window, and that window does not answer. "
        "Close it, or wait a moment, and start again."
    )


def taken_elsewhere_words(host: str, lock: str) -> str:
    """Say that another computer has the pantry, and what to do if it has not."""
    return _t(
        "This pantry is open on another computer, {host}. Two programs at once would spoil it. "
        "Please close it there first.\n\nIf it is certainly not open there any more, after that "
        "computer broke down for example, delete this file and start again:\n{lock}"
    ).format(host=host, lock=lock)


def no_folder_words(folder: str, chosen_by: str) -> str:
    """Say that the pantry's folder cannot be made, and who chose it."""
    said = _t(
        "The folder for your pantry cannot be made, so nothing was begun:\n{folder}\n\n"
        "Please check its rights, and that nothing else has its name."
    ).format(folder=folder)
    if chosen_by:
        said += " " + _t("The place was chosen by {what}.").format(what=chosen_by)
    return said


def ended_badly_words() -> str:
    """Say, once, that the last run did not end in order."""
    return _t(
        "brewdesk did not end in order last time. Everything that was saved is here; what was "
        "only typed is not."
    )


def read_only_words() -> str:
    """Say that the pantry can be looked at only."""
    return _t(
        "This pantry may not be written to, so it is open to be looked at only: nothing you enter "
        "can be kept, and reminders cannot be ticked off. Everything can be copied to another "
        "folder (Pantry menu)."
    )


def went_back_words(made_at: datetime, aside: str, zone: tzinfo) -> str:
    """Say that a backup is in the pantry's place, and where what stood there is."""
    said = _t("This is your pantry as it was backed up on {when}.").format(
        when=full_stamp(made_at, zone)
    )
    if aside:
        said += " " + _t("What was here is set aside as {path}.").format(path=aside)
    return said
