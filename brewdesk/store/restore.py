"""Put a backup in the place of the store; what stood there is set aside, never deleted.

Once the restored file lies ready beside the store, the exchange is decided: if the program
is killed in the middle of it, the next start carries it through.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path

from brewdesk.store.backup import verify_backup
from brewdesk.store.checks import check_sound
from brewdesk.store.engine import opened
from brewdesk.store.errors import told
from brewdesk.store.files import (
    copy_store,
    discard,
    discard_leftovers,
    make_folder,
    put_in_place,
    sync_folder,
    unfinished,
)
from brewdesk.store.identify import SIDE_FILES, side_file
from brewdesk.store.journals import foreign_journals
from brewdesk.store.records import BackupInfo

_READY = ".restored"


def restore_backup(path: Path, info: BackupInfo, *, now: datetime) -> Path | None:
    """Put a backup in the place of the store at ``path``, which nobody has open.

    Parameters
    ----------
    path
        The store; it may be damaged or missing.
    info
        One of its backups.
    now
        The time, for the name of what is set aside.

    Returns
    -------
    Path or None
        Where the file that stood there is now; None if there was none.

    Raises
    ------
    StoreTrouble
        damaged if the backup is no longer sound, or what the disk says. The store is as it
        was.
    """
    path = path.absolute()
    with told():
        verify_backup(info)
        make_folder(path.parent)
        discard_leftovers(path)
        copy = unfinished(path)
        try:
            copy_store(info.path, copy)
            with opened(copy, "ro") as connection:
                check_sound(connection, thorough=True)
            put_in_place(copy, side_file(path, _READY))
        finally:
            discard(copy)
    return finish_restore(path, now=now)


def set_store_aside(path: Path, *, now: datetime) -> Path | None:
    """Move a store that nobody has open, with its journals, out of the way; delete nothing.

    Returns
    -------
    Path or None
        Where the store is now; None if there was none.

    Raises
    ------
    StoreTrouble
        What the disk says.
    """
    with told():
        return _set_aside(path.absolute(), now)


def put_rescued_in_place(path: Path, rescued: Path, *, now: datetime) -> Path | None:
    """Put a store that was made by ``salvage.rescue`` in the place of the damaged one.

    Returns
    -------
    Path or None
        Where the damaged one is now.

    Raises
    ------
    StoreTrouble
        damaged if the rescued one is not sound, or what the disk says.
    """
    path = path.absolute()
    with told():
        with opened(rescued, "ro") as connection:
            check_sound(connection, thorough=True)
        put_in_place(rescued, side_file(path, _READY))
    return finish_restore(path, now=now)


def set_foreign_journals_aside(path: Path, *, known_schema: int, now: datetime) -> Path | None:
    """Keep journals of another state of the store from being played into it; delete none.

    Returns
    -------
    Path or None
        The folder that they are in now; None if there were none.

    Raises
    ------
    StoreTrouble
        What the disk says.
    """
    with told():
        if not path.is_file():
            return None
        found = foreign_journals(path, known_schema=known_schema)
        return _move_aside(found, path, now) if found else None


def finish_restore(path: Path, *, now: datetime) -> Path | None:
    """Carry through a restore that is decided; without one, do nothing.

    Raises
    ------
    StoreTrouble
        What the disk says. It can be called again.
    """
    ready = side_file(path, _READY)
    with told():
        if not ready.exists():
            return None
        aside = _set_aside(path, now)
        os.replace(ready, path)
        sync_folder(path.parent)
    return aside


def _set_aside(path: Path, now: datetime) -> Path | None:
    """Move the store and its journals, which belong together, into a folder of their own."""
    present = [p for p in (path, *(side_file(path, end) for end in SIDE_FILES)) if p.exists()]
    if not present:
        return None
    target = _move_aside(present, path, now)
    return target / path.name if path in present else None


def _move_aside(present: Sequence[Path], path: Path, now: datetime) -> Path:
    folder = path.parent / "set-aside"
    make_folder(folder)
    target = folder / f"{path.stem}-{now.astimezone(UTC):%Y-%m-%dT%H%M%S.%fZ}"
    make_folder(target)
    for file in present:
        os.replace(file, target / file.name)
    sync_folder(target)
    sync_folder(path.parent)
    return target
