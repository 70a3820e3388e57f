"""The open store: units of work over one file, from any thread."""

from __future__ import annotations

import logging
import os
import sqlite3
import stat
from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager
from datetime import datetime
from pathlib import Path
from typing import cast

from sqlalchemy import Connection, Engine
from sqlalchemy.pool import QueuePool

from brewdesk.store import migrate
from brewdesk.store.backup import make_backup
from brewdesk.store.checks import THOROUGH_UP_TO_BYTES, check_sound
from brewdesk.store.engine import BUSY_TIMEOUT_S, begin_immediate, make_engine, opened
from brewdesk.store.errors import StoreTrouble, told
from brewdesk.store.files import copy_store, discard_leftovers, save_copy
from brewdesk.store.identify import FileState, Finding, look
from brewdesk.store.migrate import Migrations, create_store, is_writable, migrate_store
from brewdesk.store.openstore import OpenStore
from brewdesk.store.restore import finish_restore, set_foreign_journals_aside
from brewdesk.store.unitofwork import UnitOfWork
from brewdesk.store.wholetables import StillCopy, still_copy

log = logging.getLogger(__name__)

# After these the connections are not to be trusted: open new ones, which look at the file afresh.
_DISTRUST = frozenset({"io_error", "damaged", "not_a_store", "cannot_open"})


class Store(OpenStore):
    """One pantry file. Use ``open``; a lock against a second program is the caller's."""

    def __init__(self, path: Path, engine: Engine, *, is_read_only: bool) -> None:
        super().__init__(path, engine, is_read_only=is_read_only)
        self._identity = _identity(path)
        self._read_info()

    @classmethod
    def open(
        cls,
        path: Path,
        *,
        now: datetime,
        is_demo: bool = False,
        migrations: Migrations = migrate.CURRENT,
        busy_timeout_s: float = BUSY_TIMEOUT_S,
    ) -> Store:
        """Open the store at ``path``; make it if there is no file, migrate it if it is older.

        A store that cannot be written opens all the same, with ``is_read_only`` set.

        Parameters
        ----------
        path
            The file.
        now
            The time, for a new pantry's birthday and a backup's name.
        is_demo
            Whether a new pantry is marked as invented.
        migrations
            The revisions to migrate with.
        busy_timeout_s
            How long a unit waits for another's lock [s].

        Raises
        ------
        StoreTrouble
            newer_file, not_a_store, damaged, empty_file (the file is untouched), read_only if
            an older store cannot be migrated, migration_failed, or what the disk says.
        """
        path = path.absolute()
        with told():
            finish_restore(path, now=now)
            if is_writable(path):
                set_foreign_journals_aside(path, known_schema=migrations.number, now=now)
            found = look(path, known_schema=migrations.number)
            is_read_only = found.state is not FileState.MISSING and not is_writable(path)
            if not is_read_only:
                discard_leftovers(path)
            if found.state is FileState.MISSING:
                create_store(path, now=now, is_demo=is_demo, migrations=migrations)
            else:
                _check(path, found, is_read_only=is_read_only)
            if found.state is FileState.OLDER:
                if is_read_only:
                    raise StoreTrouble("read_only", "an older store that cannot be migrated")
                make_backup(path, "before-migration", now=now)
                migrate_store(path, migrations=migrations)
            if not is_read_only:
                _make_private(path)
            engine = make_engine(path, read_only=is_read_only, busy_timeout_s=busy_timeout_s)
            try:
                return cls(path, engine, is_read_only=is_read_only)
            except BaseException:
                engine.dispose()
                raise

    def backup(self, reason: str, *, now: datetime) -> Path:
        """Make a verified backup and give its path, as every store does."""
        if self._here.is_writing:
            raise RuntimeError("a backup inside a write unit would miss its changes")
        self._check_same_file()
        return make_backup(self.path, reason, now=now).path

    def still_copy(self, beside: Path) -> AbstractContextManager[StillCopy]:
        """Give a copy that nobody writes to, as every store does."""
        return still_copy(self.path, beside)

    def copy_into(self, target: Path) -> None:
        """Copy everything as it is at one moment into a file, as every store does."""
        with told():
            copy_store(self.path, target)

    def save_what_is_open(self, target: Path) -> None:
        """Copy the records as this program has them open, though the file is gone or another.

        A file that was deleted or exchanged lives on for those who have it open. Slow: from a
        worker thread.

        Raises
        ------
        StoreTrouble
            file_gone if this program has nothing open any more, damaged, or what the disk says.
        """
        with told():
            if cast("QueuePool", self._engine.pool).checkedin() == 0:
                raise StoreTrouble("file_gone", "no connection is left to copy from")
            connection = self._engine.raw_connection()
            try:
                save_copy(cast("sqlite3.Connection", connection.driver_connection), target)
            finally:
                connection.close()

    @contextmanager
    def _connected(self) -> Iterator[Connection]:
        self._check_same_file()
        try:
            with told(database_only=True), self._engine.connect() as connection:
                yield connection
        except StoreTrouble as trouble:
            if trouble.code in _DISTRUST:
                self._engine.dispose()
            if trouble.code == "cannot_open" and self.path.exists() and not is_writable(self.path):
                # The disk turned read-only: what cannot be opened is a new journal.
                raise StoreTrouble("read_only", trouble.detail) from trouble
            raise

    @contextmanager
    def _reading(self, connection: Connection) -> Iterator[Connection]:
        with connection.begin():
            yield connection

    @contextmanager
    def _writing(self, connection: Connection) -> Iterator[UnitOfWork]:
        immediate = begin_immediate(connection)
        with immediate.begin(), self._as_current(immediate, is_writing=True):
            yield UnitOfWork(immediate)

    def _check_same_file(self) -> None:
        """Refuse to go on with a file that was deleted or exchanged while open."""
        try:
            identity = _identity(self.path)
        except FileNotFoundError:
            raise StoreTrouble("file_gone", str(self.path)) from None
        if identity != self._identity:
            raise StoreTrouble("file_replaced", str(self.path))


def _identity(path: Path) -> tuple[int, int]:
    status = path.stat()
    return status.st_dev, status.st_ino


def _check(path: Path, found: Finding, *, is_read_only: bool) -> None:
    """Check the file before anything is built on it; this also ends an interrupted write."""
    thorough = found.was_interrupted or path.stat().st_size <= THOROUGH_UP_TO_BYTES
    with opened(path, "ro" if is_read_only else "rw") as connection:
        check_sound(connection, thorough=thorough)
        number = connection.execute("PRAGMA user_version").fetchone()[0]
    if number != found.schema_number:
        raise StoreTrouble("damaged", f"schema {found.schema_number} turned into {number}")


def _make_private(path: Path) -> None:
    mode = stat.S_IMODE(path.stat().st_mode)
    if os.name == "posix" and mode & 0o077:
        try:
            path.chmod(0o600)
        except PermissionError:  # somebody else's file, shared on purpose
            log.warning("the store's file mode stays %o", mode)
