"""An open pantry, wherever its rows lie: units of work from any thread."""

from __future__ import annotations

import threading
from abc import ABC, abstractmethod
from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager, nullcontext
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Connection, Engine, select

from brewdesk.store.backup import backups
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import BackupInfo, PantryInfo
from brewdesk.store.schema import pantry
from brewdesk.store.unitofwork import ReadUnit, UnitOfWork
from brewdesk.store.wholetables import StillCopy

if TYPE_CHECKING:
    from brewdesk.store.serverphotos import ServerPhotos


class _OfThread(threading.local):
    """The unit this thread has open, if any."""

    connection: Connection | None = None
    is_writing = False


class OpenStore(ABC):
    """One pantry that is open. ``path`` is where its backups and photos lie beside.

    ``is_shared`` tells whether other desks may write to it at the same time.
    """

    is_shared = False
    photos: ServerPhotos | None = None

    def __init__(self, path: Path, engine: Engine, *, is_read_only: bool) -> None:
        self.path = path
        self.is_read_only = is_read_only
        self._engine = engine
        self._write_lock = threading.Lock()
        self._here = _OfThread()

    @property
    def info(self) -> PantryInfo:
        """What is known of the pantry as a whole."""
        return self._info

    @property
    def place(self) -> str:
        """Where the rows are, in words that hold no secret."""
        return str(self.path)

    def close(self) -> None:
        """Close all connections. Units must be over; the store is not to be used again."""
        self._engine.dispose()

    @contextmanager
    def write(self) -> Iterator[UnitOfWork]:
        """Open a unit of work: committed at the end of the block, rolled back if it raises.

        Raises
        ------
        StoreTrouble
            If what was written could not be kept; then none of it was.
        RuntimeError
            If this thread has a unit open already: it would wait for itself.
        """
        if self._here.connection is not None:
            raise RuntimeError("a write unit inside another unit would wait for itself")
        if self.is_read_only:
            raise StoreTrouble("read_only", "the store was opened read-only")
        with self._write_lock, self._connected() as connection, self._writing(connection) as unit:
            yield unit

    @contextmanager
    def read(self) -> Iterator[ReadUnit]:
        """Open a unit to read. Inside this thread's write unit it sees that unit's changes.

        Raises
        ------
        StoreTrouble
            If the rows cannot be read.
        """
        current = self._here.connection
        if current is not None:
            yield self._read_unit(current)
            return
        with (
            self._connected() as bare,
            self._reading(bare) as connection,
            self._as_current(connection, is_writing=False),
        ):
            yield self._read_unit(connection)

    @abstractmethod
    def backup(self, reason: str, *, now: datetime) -> Path:
        """Make a verified backup and give its path. Slow: from a worker thread.

        Parameters
        ----------
        reason
            One of ``backup.REASONS`` ("before-migration" is made when the store is opened).
        now
            The time, for its name and for thinning.

        Raises
        ------
        StoreTrouble
            If the store is damaged or locked, or the disk does not take it.
        """

    @abstractmethod
    def still_copy(self, beside: Path) -> AbstractContextManager[StillCopy]:
        """Give a copy that nobody writes to, in a file next to ``beside``; it is gone afterwards.

        Raises
        ------
        StoreTrouble
            damaged, locked, or what the disk says.
        """

    @abstractmethod
    def copy_into(self, target: Path) -> None:
        """Copy everything as it is at one moment into a file that is there and empty.

        Raises
        ------
        StoreTrouble
            locked, or what the disk or the server says.
        """

    def backups(self) -> tuple[BackupInfo, ...]:
        """List the finished backups, newest first."""
        return backups(self.path)

    def save_what_is_open(self, target: Path) -> None:
        """Copy the records as they are open, though their file is gone; a server has no file.

        Raises
        ------
        StoreTrouble
            file_gone if there is nothing open to copy from.
        """
        raise StoreTrouble("file_gone", f"no file is open to be saved as {target.name}")

    def seen(self) -> int:
        """Give a mark of what this desk has been shown so far, for `since`."""
        return 0

    def since(self, seen: int) -> AbstractContextManager[None]:
        """Within the block, refuse acts on rows that another desk changed after the mark.

        For forms, which show what was so when they were opened.
        """
        return nullcontext()

    @abstractmethod
    def _connected(self) -> AbstractContextManager[Connection]:
        """Give a connection for one unit."""

    @abstractmethod
    def _reading(self, connection: Connection) -> AbstractContextManager[Connection]:
        """Begin a transaction that sees one moment of the store."""

    @abstractmethod
    def _writing(self, connection: Connection) -> AbstractContextManager[UnitOfWork]:
        """Begin a transaction that no other writer gets between."""

    def _read_unit(self, connection: Connection) -> ReadUnit:
        return ReadUnit(connection)

    @contextmanager
    def _as_current(self, connection: Connection, *, is_writing: bool) -> Iterator[None]:
        self._here.connection = connection
        self._here.is_writing = is_writing
        try:
            yield
        finally:
            self._here.connection = None
            self._here.is_writing = False

    def _read_info(self) -> None:
        with self._connected() as connection, connection.begin():
            row = connection.execute(select(pantry)).mappings().one_or_none()
        if row is None:
            raise StoreTrouble("damaged", "the pantry has no row")
        self._info = PantryInfo(
            uid=row["uid"], created_at=row["created_at"], is_demo=row["is_demo"]
        )
