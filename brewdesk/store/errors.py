"""What the store says when it cannot do as asked. Words for people are made elsewhere."""

from __future__ import annotations

import errno
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager

from sqlalchemy.exc import DBAPIError, StatementError

# https://www.sqlite.org/rescode.html: the low byte is the primary result code.
_CODES = {
    sqlite3.SQLITE_FULL: "disk_full",
    sqlite3.SQLITE_IOERR: "io_error",
    sqlite3.SQLITE_READONLY: "read_only",
    sqlite3.SQLITE_PERM: "read_only",
    sqlite3.SQLITE_BUSY: "locked",
    sqlite3.SQLITE_LOCKED: "locked",
    sqlite3.SQLITE_CORRUPT: "damaged",
    sqlite3.SQLITE_NOTADB: "not_a_store",
    sqlite3.SQLITE_CANTOPEN: "cannot_open",
    sqlite3.SQLITE_CONSTRAINT: "row_refused",
    sqlite3.SQLITE_MISMATCH: "row_refused",
    sqlite3.SQLITE_TOOBIG: "row_refused",
}

_ERRNOS = {
    errno.ENOSPC: "disk_full",
    errno.EDQUOT: "disk_full",
    errno.EROFS: "read_only",
    errno.EACCES: "read_only",
    errno.EPERM: "read_only",
}


class StoreTrouble(Exception):  # noqa: N818  # a state of the world to tell the maker, not a bug
    """Something outside the program keeps the store from working.

    ``code`` is one of: newer_file, not_a_store, damaged, empty_file, disk_full,
    read_only, locked, io_error, cannot_open, file_gone, file_replaced,
    migration_failed, backup_failed, not_rescued, no_such_row, stale_row, row_refused.
    Of a shared store also: bad_address, no_driver, not_connected, not_let_in, older_server,
    not_utf8, changed_elsewhere.
    ``detail`` is for the log.
    """

    def __init__(self, code: str, detail: str = "") -> None:
        self.code = code
        self.detail = detail
        super().__init__(f"{code}: {detail}" if detail else code)


class NoSuchRow(StoreTrouble):
    """The row asked for is not there (any more)."""

    def __init__(self, table: str, row_id: int) -> None:
        self.table = table
        self.row_id = row_id
        super().__init__("no_such_row", f"{table} {row_id}")


class StaleRow(StoreTrouble):
    """A row is no longer as the act left it, so the act cannot be taken back."""

    def __init__(self, table: str, row_id: int) -> None:
        self.table = table
        self.row_id = row_id
        super().__init__("stale_row", f"{table} {row_id}")


class ChangedElsewhere(StoreTrouble):
    """Another desk changed a row after this one last saw it."""

    def __init__(self, table: str, row_id: int, desk_name: str) -> None:
        self.table = table
        self.row_id = row_id
        self.desk_name = desk_name
        super().__init__("changed_elsewhere", f"{table} {row_id}")


class RowRefused(StoreTrouble):
    """The row breaks a rule of the store: a range, a reference, one live batch per vessel."""

    def __init__(self, detail: str) -> None:
        super().__init__("row_refused", detail)


def trouble_from_database(error: BaseException | None) -> StoreTrouble | None:
    """Give the trouble that an error of the database stands for, or None if it is another."""
    if isinstance(error, DBAPIError):
        return trouble_from_database(error.orig)
    if isinstance(error, StatementError):  # a value that its column cannot keep
        return RowRefused(str(error.orig)) if isinstance(error.orig, ValueError) else None
    if isinstance(error, sqlite3.Error):
        number = getattr(error, "sqlite_errorcode", None)
        code = _CODES.get(number & 0xFF) if number is not None else None
        if code == "row_refused":
            return RowRefused(str(error))
        return StoreTrouble(code, str(error)) if code is not None else None
    if error is not None and hasattr(error, "sqlstate"):
        from brewdesk.store.servererrors import trouble_from_server

        return trouble_from_server(error)
    return None


def trouble_from(error: BaseException) -> StoreTrouble | None:
    """Give the trouble that an error of the database or the disk stands for, or None."""
    if isinstance(error, OSError):
        return StoreTrouble(_ERRNOS.get(error.errno or 0, "io_error"), str(error))
    if isinstance(error, OverflowError):  # a whole number wider than 64 bits
        return RowRefused(str(error))
    if isinstance(error, UnicodeDecodeError):  # text in the file that no writer of ours wrote
        return StoreTrouble("damaged", str(error))
    return trouble_from_database(error)


@contextmanager
def told(*, database_only: bool = False) -> Iterator[None]:
    """Turn errors of the disk and the database into ``StoreTrouble``; let bugs through.

    ``database_only`` is for blocks that run the code of others, whose errors are their own.
    """
    try:
        yield
    except StoreTrouble:
        raise
    except Exception as error:
        trouble = trouble_from_database(error) if database_only else trouble_from(error)
        if trouble is None:
            raise
        raise trouble from error
