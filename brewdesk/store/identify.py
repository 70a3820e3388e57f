"""Tell whether a file is a store, and of which schema, without changing a byte of it."""

from __future__ import annotations

import sqlite3
import stat
from dataclasses import dataclass
from enum import Enum
from pathlib import Path

from brewdesk.store.engine import opened
from brewdesk.store.errors import StoreTrouble, told
from brewdesk.store.schema import APPLICATION_ID, SCHEMA_NUMBER

SIDE_FILES = ("-journal", "-wal", "-shm")
_HEADER_BYTES = 100  # https://www.sqlite.org/fileformat.html, section 1.3


class FileState(Enum):
    """What opening a file would mean."""

    MISSING = "missing"
    OLDER = "older"
    CURRENT = "current"


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """What a look at a file found. ``was_interrupted``: its last writer did not finish."""

    state: FileState
    schema_number: int
    was_interrupted: bool


def look(path: Path, *, known_schema: int = SCHEMA_NUMBER) -> Finding:
    """Look at the file at ``path``, read-only.

    Raises
    ------
    StoreTrouble
        newer_file, not_a_store, damaged, empty_file, locked, or what the disk says.
        The file is as it was.
    """
    with told():
        leftover = any(side_file(path, end).exists() for end in SIDE_FILES)
        try:
            status = path.stat()
        except FileNotFoundError:
            if leftover:  # SQLite would play this journal into whatever is put here
                raise StoreTrouble("damaged", "a journal without its store") from None
            return Finding(state=FileState.MISSING, schema_number=0, was_interrupted=False)
        if not stat.S_ISREG(status.st_mode):
            raise StoreTrouble("not_a_store", "not a regular file")
        if status.st_size == 0:  # SQLite takes this for a database without tables
            raise StoreTrouble("empty_file")
        if status.st_size < _HEADER_BYTES:
            raise StoreTrouble("not_a_store", "shorter than the header of a database")
        application_id, number, tables = _header(path)
    if application_id != APPLICATION_ID:
        if application_id == 0 and tables == 0:
            raise StoreTrouble("empty_file", "a database without tables")
        raise StoreTrouble("not_a_store", f"application id {application_id:#x}")
    if number > known_schema:
        raise StoreTrouble("newer_file", f"schema {number}, this program knows {known_schema}")
    if number < 1 or tables == 0:
        raise StoreTrouble("damaged", f"schema {number}, {tables} tables")
    state = FileState.CURRENT if number == known_schema else FileState.OLDER
    return Finding(state=state, schema_number=number, was_interrupted=leftover)


def side_file(path: Path, end: str) -> Path:
    """Give the path of a journal that belongs to the file."""
    return path.with_name(path.name + end)


def _header(path: Path) -> tuple[int, int, int]:
    if side_file(path, "-wal").exists():  # the numbers may be in there
        return _read_header(path, "ro")
    try:
        # Plain "ro" would leave side files, and refuse a file whose journal is to be played
        # back. Looking past a journal is safe: these numbers change only in copies of a store.
        return _read_header(path, "ro&immutable=1")
    except sqlite3.DatabaseError:
        if not side_file(path, "-journal").exists():
            raise
        return _read_header(path, "rw")  # a page cut off half-written is mended by this


def _read_header(path: Path, mode: str) -> tuple[int, int, int]:
    with opened(path, mode) as connection:
        application_id = connection.execute("PRAGMA application_id").fetchone()[0]
        number = connection.execute("PRAGMA user_version").fetchone()[0]
        tables = connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()[0]
    return application_id, number, tables
