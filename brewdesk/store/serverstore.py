"""The store that several desks share: the same units of work, over a PostgreSQL server."""

from __future__ import annotations

import logging
import threading
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, Engine, select
from sqlalchemy.engine import URL

from brewdesk.store import serverschema
from brewdesk.store.backup import make_backup
from brewdesk.store.desklocal import DESK_NAME_KEY, DeskIdentity
from brewdesk.store.engine import BUSY_TIMEOUT_S, opened
from brewdesk.store.errors import RowRefused, StoreTrouble, told
from brewdesk.store.files import discard, make_folder, unfinished
from brewdesk.store.openstore import OpenStore
from brewdesk.store.schema import SCHEMA_NUMBER
from brewdesk.store.servercopy import copy_to_file
from brewdesk.store.serverengine import has_failed, make_server_engine, take_write_lock
from brewdesk.store.serverlisten import HEARTBEAT_S, Listener
from brewdesk.store.serverphotos import ServerPhotos
from brewdesk.store.serverschema import server_state
from brewdesk.store.serverunits import ServerReadUnit, ServerUnit
from brewdesk.store.serverurl import server_url, shown
from brewdesk.store.touched import Word
from brewdesk.store.unitofwork import ReadUnit, UnitOfWork
from brewdesk.store.wholetables import StillCopy

log = logging.getLogger(__name__)


class ServerStore(OpenStore):
    """One pantry on a server. ``path`` is no file: backups and photos lie beside that name.

    Acts of all desks follow one another: each begins when the one before is committed, and
    sees it.
    """

    is_shared = True
    photos: ServerPhotos

    def __init__(
        self, url: URL, path: Path, engine: Engine, desk: DeskIdentity, *, number: int
    ) -> None:
        super().__init__(path, engine, is_read_only=False)
        self.desk = desk
        self.photos = ServerPhotos(self._connected)
        self._url = url
        self._number = number
        self._seen = 0
        self._since = threading.local()
        self._listener: Listener | None = None
        self._is_away = False
        self._is_closed = False

    @classmethod
    def open(
        cls,
        address: str,
        path: Path,
        *,
        desk: DeskIdentity,
        now: datetime,
        is_demo: bool = False,
        busy_timeout_s: float = BUSY_TIMEOUT_S,
        number: int = SCHEMA_NUMBER,
        steps: Mapping[int, serverschema.Step] = serverschema.STEPS,
    ) -> ServerStore:
        """Open the store at ``address``; make it if the database has none, migrate an older one.

        Parameters
        ----------
        address
            As ``serverurl.server_url`` reads it.
        path
            Where this desk's backups and photos lie beside.
        desk
            Which desk this is.
        now
            The time, for a new pantry's birthday.
        is_demo
            Whether a new pantry is marked as invented.
        busy_timeout_s
            How long a unit waits for another desk's [s].
        number, steps
            The schema to bring the store to, and how.

        Raises
        ------
        StoreTrouble
            bad_address, no_driver, not_connected, not_let_in, newer_file, older_server, not_utf8.
        """
        url = server_url(address)
        engine = make_server_engine(url, busy_timeout_s=busy_timeout_s)
        try:
            with told(), engine.begin() as connection:
                take_write_lock(connection)
                serverschema.prepare(
                    connection, now=now, is_demo=is_demo, number=number, steps=steps
                )
            store = cls(url, path.absolute(), engine, desk, number=number)
            store._read_info()
            store._take_a_name()
            store.note_seen(store.serial())
        except BaseException:
            engine.dispose()
            raise
        return store

    def _take_a_name(self) -> None:
        """Have a name that other desks can say, until the maker gives another."""
        with self.read() as unit:
            named = unit.settings.get(DESK_NAME_KEY)
        if not named:
            with self.write() as work:
                work.settings.put(DESK_NAME_KEY, self.desk.first_name)

    @property
    def place(self) -> str:
        """Where the store is, in words that hold no secret."""
        return shown(self._url)

    def serial(self) -> int:
        """Give the serial of the newest change."""
        with self._connected() as connection, self._reading(connection):
            return int(connection.execute(select(server_state.c.serial)).scalar_one())

    def note_seen(self, serial: int) -> None:
        """Note that the maker has been shown everything up to this change."""
        self._seen = max(self._seen, serial)

    def seen(self) -> int:
        """Give the serial of the last change that the maker has been shown."""
        return self._seen

    @contextmanager
    def since(self, seen: int) -> Iterator[None]:
        """Within the block, refuse acts on rows that another desk changed after ``seen``."""
        before = getattr(self._since, "seen", None)
        self._since.seen = seen
        try:
            yield
        finally:
            self._since.seen = before

    def listen(
        self,
        *,
        on_word: Callable[[Word], None],
        on_lost: Callable[[], None],
        on_back: Callable[[int], None],
        on_keeper: Callable[[], None],
        heartbeat_s: float = HEARTBEAT_S,
    ) -> None:
        """Hear what all desks commit, this one too, until `close`.

        All of these are called on another thread. While the server is lost, units are refused
        at once, and nobody waits.
        """

        def lost() -> None:
            self._is_away = True
            on_lost()

        def back(serial: int) -> None:
            self._is_away = False
            on_back(serial)

        assert self._listener is None, "it is listening"
        self._listener = Listener(
            self._url,
            seen=self.seen,
            on_word=on_word,
            on_lost=lost,
            on_back=back,
            on_keeper=on_keeper,
            heartbeat_s=heartbeat_s,
        )
        self._listener.start()

    @property
    def is_connected(self) -> bool:
        """Whether the server answered when it was last tried."""
        return not self._is_away

    @property
    def is_keeper(self) -> bool:
        """Whether this desk, of all, keeps the reminders in line."""
        return self._listener is not None and self._listener.is_keeper

    def close(self) -> None:
        """Listen no more and close all connections."""
        if self._listener is not None:
            self._listener.stop()
            self._listener = None
        self._is_closed = True
        super().close()

    def backup(self, reason: str, *, now: datetime) -> Path:
        """Make a verified backup, as a file that opens like any pantry, and give its path."""
        if self._here.is_writing:
            raise RuntimeError("a backup inside a write unit would miss its changes")
        with told():
            make_folder(self.path.parent)
        return make_backup(self.path, reason, now=now, copying=self._copy_into).path

    @contextmanager
    def still_copy(self, beside: Path) -> Iterator[StillCopy]:
        """Give a copy that nobody writes to, as every store does."""
        with told():
            copy = unfinished(beside)
        try:
            self._copy_into(self.path, copy)
            with opened(copy, "ro") as connection:
                yield StillCopy(connection)
        finally:
            discard(copy)

    @contextmanager
    def still_connection(self) -> Iterator[Connection]:
        """Give a connection that sees the store as it is at one moment, for as long as it takes."""
        with self._connected() as bare, self._reading(bare) as connection:
            yield connection

    def copy_into(self, target: Path) -> None:
        """Copy everything as it is at one moment into a file, as every store does."""
        with told():
            self._copy_into(self.path, target)

    def _copy_into(self, _path: Path, target: Path) -> None:
        """Write everything as it is at one moment into a file that is there and empty."""
        target.unlink()
        with self.still_connection() as connection:
            copy_to_file(connection, target, self.desk.uid)

    @contextmanager
    def _connected(self) -> Iterator[Connection]:
        if self._is_closed:  # a pool would open a connection anew, and nobody would close it
            raise StoreTrouble("not_connected", "the store was closed")
        if self._is_away:  # to try would keep the window waiting
            raise StoreTrouble("not_connected", "the server is gone")
        try:
            with told(database_only=True), self._engine.connect() as connection:
                yield connection
        except StoreTrouble as trouble:
            if trouble.code == "not_connected":
                self._engine.dispose()
                if self._listener is not None:
                    self._listener.look()
            raise

    @contextmanager
    def _reading(self, connection: Connection) -> Iterator[Connection]:
        still = connection.execution_options(
            isolation_level="REPEATABLE READ", postgresql_readonly=True
        )
        with still.begin():
            yield still

    @contextmanager
    def _writing(self, connection: Connection) -> Iterator[UnitOfWork]:
        # Read committed, so that what is read after the lock is what the last holder left.
        with connection.begin(), self._as_current(connection, is_writing=True):
            take_write_lock(connection)
            since = getattr(self._since, "seen", None)
            unit = ServerUnit(connection, self.desk, seen=self._seen if since is None else since)
            yield unit
            if has_failed(connection):
                raise RowRefused("a row was refused, and with it the whole unit")
            unit.finish(self._number)

    def _read_unit(self, connection: Connection) -> ReadUnit:
        return ServerReadUnit(connection, self.desk)
