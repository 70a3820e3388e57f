"""Which desk this is, and which choices are its own although the store is everybody's."""

from __future__ import annotations

import json
import logging
import os
import uuid
from dataclasses import dataclass
from pathlib import Path

from brewdesk.store.files import make_folder, put_in_place, unfinished

log = logging.getLogger(__name__)

_FILE = "desk.json"
DESK_NAME_KEY = "desk_name"
# Choices that belong to a screen, a computer or the person at it. Everything else is a fact
# about the brewing that all desks share.
LOCAL_KEYS = frozenset(
    {
        DESK_NAME_KEY,
        "reminders_here",
        "quiet_from",
        "quiet_to",
        "close_to_tray",
        "sound_on",
        "language",
        "theme",
        "text_scale",
        "zone",
        "calendar_path",
        "window",
        "clock_trusted_since_act",  # it is this computer's clock that is trusted
    }
)
_LOCAL_STARTS = ("unit_", "told_")
_OF_A_DESK = "desk/"


@dataclass(frozen=True, slots=True)
class DeskIdentity:
    """A desk: a uid that it keeps, and the name it has before anybody gives it one."""

    uid: str
    first_name: str


def is_local(key: str) -> bool:
    """Whether a choice is each desk's own."""
    return key in LOCAL_KEYS or key.startswith(_LOCAL_STARTS)


def local_key(desk_uid: str, key: str) -> str:
    """Give the key under which a desk's own choice is kept in a shared store."""
    return f"{_OF_A_DESK}{desk_uid}/{key}"


def split_local(key: str) -> tuple[str, str] | None:
    """Take a kept key apart into desk and choice; None if it is everybody's."""
    if not key.startswith(_OF_A_DESK):
        return None
    desk_uid, _, own = key.removeprefix(_OF_A_DESK).partition("/")
    return desk_uid, own


def desk_identity(folder: Path, first_name: str) -> DeskIdentity:
    """Give the identity of the desk whose data lie in ``folder``; make it at the first time.

    Raises
    ------
    OSError
        If it cannot be kept: a desk that forgot who it is could not undo what it did.
    """
    path = folder / _FILE
    try:
        kept = json.loads(path.read_text(encoding="utf-8"))["uid"]
        if isinstance(kept, str) and len(kept) == 32:
            return DeskIdentity(kept, first_name)
        log.warning("the identity of this desk makes no sense and is made anew")
    except FileNotFoundError:
        pass
    except (ValueError, KeyError, TypeError):
        log.warning("the identity of this desk cannot be read and is made anew")
    uid = uuid.uuid4().hex
    make_folder(folder)
    writing = unfinished(path)
    writing.write_text(json.dumps({"uid": uid}) + os.linesep, encoding="utf-8")
    put_in_place(writing, path)
    return DeskIdentity(uid, first_name)
