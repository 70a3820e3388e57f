"""What is said about starting with the desktop session."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication


def _t(text: str) -> str:
    return QCoreApplication.translate("Autostart", text)


def switch_words() -> str:
    """Name the switch."""
    return _t("Start quietly when I log in, so that reminders come")


def entry_comment() -> str:
    """Say in the desktop's list of such programs what this one is for."""
    return _t("Reminders for your jars of kombucha")


def autostart_trouble_words(code: str) -> str:
    """Say why the switch could not be worked."""
    return {
        "not_written": _t(
            "Your desktop's autostart folder may not be written to, so nothing was changed."
        ),
        "odd_path": _t(
            "The program lies in a folder whose name your desktop cannot start it from, so "
            "nothing was changed. Please move it to another folder."
        ),
    }[code]
