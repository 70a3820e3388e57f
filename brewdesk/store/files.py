"""New files beside the store: made private, copied through SQLite, put in place whole."""

from __future__ import annotations

import glob
import os
import secrets
import sqlite3
from contextlib import closing
from pathlib import Path

from brewdesk.store.checks import check_sound
from brewdesk.store.engine import connect, opened
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.identify import SIDE_FILES, side_file

_UNFINISHED = ".unfinished"
_PAGES_PER_STEP = 256
_RETRY_AFTER_S = 0.05


def make_folder(folder: Path) -> None:
    """Make a folder that only its owner enters, and those above it; one that exists stays."""
    missing = []
    above = folder
    while not above.exists() and above != above.parent:
        missing.append(above)
        above = above.parent
    for one in reversed(missing):  # a mode given to mkdir with parents is for the last one alone
        one.mkdir(mode=0o700, exist_ok=True)
    folder.mkdir(mode=0o700, exist_ok=True)  # says so if a file is in its place


def unfinished(target: Path) -> Path:
    """Make an empty private file beside ``target``, to be filled and then put in its place."""
    path = target.with_name(f".{target.name}.{secrets.token_hex(4)}{_UNFINISHED}")
    os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
    return path


def discard(path: Path) -> None:
    """Delete an unfinished file and its journals."""
    for candidate in (path, *(side_file(path, end) for end in SIDE_FILES)):
        candidate.unlink(missing_ok=True)


def discard_leftovers(target: Path) -> None:
    """Delete what an earlier, interrupted run left unfinished beside ``target``."""
    for path in target.parent.glob(f".{glob.escape(target.name)}.*{_UNFINISHED}*"):
        path.unlink(missing_ok=True)


def sync_file(path: Path) -> None:
    """Have the disk keep a finished file. Never for a file that SQLite has open."""
    descriptor = os.open(path, os.O_RDWR)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)


def sync_folder(folder: Path) -> None:
    """Have the disk keep the names in a folder; Windows has no such call."""
    if os.name != "posix":
        return
    descriptor = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)


def put_in_place(finished: Path, target: Path) -> None:
    """Put a finished file in the place of ``target``: a reader sees the old or the new one."""
    for end in SIDE_FILES:
        if side_file(target, end).exists():  # it would be played into the new file
            raise StoreTrouble("locked", f"{target.name}{end} is in the way")
    sync_file(finished)
    os.replace(finished, target)
    sync_folder(target.parent)


def copy_store(
    source: Path,
    target: Path,
    *,
    patience: int = 100,
) -> None:
    """Copy a store, also one in use, into a file that exists.

    Over its own connection: the backup of a connection that is writing never ends.

    Raises
    ------
    StoreTrouble
        locked, if another program kept the store to itself ``patience`` tries long.
    """
    refused = 0

    def progress(status: int, _remaining: int, _total: int) -> None:
        nonlocal refused
        refused = refused + 1 if status in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED) else 0
        if refused >= patience:  # left alone, the copying would go on trying for ever
            raise StoreTrouble("locked", "the store stayed locked while it was to be copied")

    # "rw" so that a journal left by a crash is played back first.
    with closing(connect(source, "rw", busy_timeout_s=0)) as reader, opened(target, "rw") as writer:
        writer.execute("PRAGMA synchronous=OFF")  # the finished file is synced as a whole
        reader.backup(writer, pages=_PAGES_PER_STEP, progress=progress, sleep=_RETRY_AFTER_S)
        writer.execute("PRAGMA journal_mode=DELETE").fetchone()


def save_copy(source: sqlite3.Connection, target: Path) -> None:
    """Copy what a connection has open into a file of its own, put in place whole.

    Raises
    ------
    StoreTrouble
        damaged if what came out is not sound, or what the disk says.
    """
    copy = unfinished(target)
    try:
        with opened(copy, "rw") as writer:
            writer.execute("PRAGMA synchronous=OFF")
            source.backup(writer)
            writer.execute("PRAGMA journal_mode=DELETE").fetchone()
            check_sound(writer, thorough=True)
        put_in_place(copy, target)
    finally:
        discard(copy)
