"""The sentences of ``brewdesk move-store``."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from brewdesk.services.movingstore import Moved


def _t(text: str) -> str:
    return QCoreApplication.translate("MovingStore", text)


def help_words(variable: str) -> dict[str, str]:
    """Say what the command does, and what each option means."""
    return {
        "about": _t(
            "Copy a pantry, with its photos, from its file into an empty database on a "
            "PostgreSQL server, or back into a new file. Every row is compared afterwards. "
            "What was copied stays where it is."
        ),
        "codes": _t("Exit codes: 0 all of it arrived, 2 nothing was changed."),
        "to": _t(
            "a new file, an address like postgresql+psycopg://name@host/database, or the word "
            "“server” for the address in {variable}"
        ).format(variable=variable),
        "from": _t(
            "the same, for what is copied; without it your own pantry, or the address in {variable}"
        ).format(variable=variable),
        "data_dir": _t("where your own pantry is looked for, and the identity of this desk"),
    }


def which_words(variable: str) -> str:
    """Say that it is not clear from where to where."""
    return _t(
        "One side has to be a file and the other a server, whose address may stand in {variable}."
    ).format(variable=variable)


def in_use_words() -> str:
    """Say that a program has the file open."""
    return _t("This pantry is open in a window. Please close it first; nothing was changed.")


def photo_words() -> str:
    """Say that the records arrived and the photos did not."""
    return _t(
        "The records arrived, but a photo could not be read or written. Please look whether the "
        "disk has room and the photos' folder may be read, remove what was made, and start again."
    )


def done_words(moved: Moved, variable: str, *, is_to_server: bool) -> str:
    """Say what arrived, and how to go on."""
    arrived = _t("{rows} rows and {photos} photos arrived and are the same as before.").format(
        rows=moved.rows, photos=moved.photos
    )
    if moved.missing:
        arrived += " " + _t("{missing} photos were missing before.").format(missing=moved.missing)
    if is_to_server:
        return f"{arrived} " + _t(
            "Start every desk with {variable} set. The file stays as it was, and is now out of "
            "date: put it aside."
        ).format(variable=variable)
    return f"{arrived} " + _t(
        "Start brewdesk without {variable}. The server's pantry stays as it was, and is now out "
        "of date: close the other desks."
    ).format(variable=variable)
