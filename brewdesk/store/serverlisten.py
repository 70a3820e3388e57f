"""Hears from the server what other desks have committed, and finds the server again if it went."""

from __future__ import annotations

import logging
import select
import socket
import threading
from collections.abc import Callable
from contextlib import suppress
from typing import TYPE_CHECKING, Any

from sqlalchemy.engine import URL

from brewdesk.store.errors import StoreTrouble, told
from brewdesk.store.serverengine import connect_server
from brewdesk.store.serverschema import NAMESPACE
from brewdesk.store.serverunits import CHANNEL
from brewdesk.store.touched import Word, word_from_text

if TYPE_CHECKING:
    import psycopg

log = logging.getLogger(__name__)

# Held by one desk as long as it is connected: the one that keeps reminders in line.
KEEPER_LOCK = 0x4252444C
# How often a silent connection is tried, and the keeper's place is asked for [s].
HEARTBEAT_S = 5.0
# How long to wait before each further try to connect [s].
_WAITS_S = (0.1, 0.25, 0.5, 1.0, 2.0, 5.0)


class Listener(threading.Thread):
    """One connection of its own, on a thread of its own.

    Parameters
    ----------
    url
        The server.
    seen
        The serial of the last change this desk has read; asked at each connection.
    on_word
        Called with each `Word` of another desk or of this one.
    on_lost
        Called when the server is gone.
    on_back
        Called with the newest serial when it is there again, or when something was
        committed before the first connection: everything is to be read anew.
    on_keeper
        Called when this desk becomes the one that keeps reminders in line.
    heartbeat_s
        How often a silent connection is tried [s].

    All of them are called on this thread.
    """

    def __init__(
        self,
        url: URL,
        *,
        seen: Callable[[], int],
        on_word: Callable[[Word], None],
        on_lost: Callable[[], None],
        on_back: Callable[[int], None],
        on_keeper: Callable[[], None],
        heartbeat_s: float = HEARTBEAT_S,
    ) -> None:
        super().__init__(name="brewdesk-listener", daemon=True)
        self.is_keeper = False
        self._url = url
        self._seen = seen
        self._on_word = on_word
        self._on_lost = on_lost
        self._on_back = on_back
        self._on_keeper = on_keeper
        self._heartbeat_s = heartbeat_s
        self._is_over = False
        self._was_lost = False
        self._bell, self._ring = socket.socketpair()
        self._ring.setblocking(False)

    def run(self) -> None:
        """Listen until `stop`."""
        tries = 0
        while not self._is_over:
            try:
                with told(), self._connect() as connection:
                    tries = 0
                    self._listen(connection)
            except StoreTrouble as trouble:
                self._lose(trouble)
            if not self._is_over:
                self._rest(_WAITS_S[min(tries, len(_WAITS_S) - 1)])
                tries += 1

    def look(self) -> None:
        """Try the connection now: somebody found that the server does not answer."""
        with suppress(OSError):  # enough rings wait to be heard, or all is over
            self._ring.send(b"!")

    def stop(self) -> None:
        """End, and wait for it."""
        self._is_over = True
        self.look()
        if self.is_alive():
            self.join()
        self._bell.close()
        self._ring.close()

    def _connect(self) -> psycopg.Connection[Any]:
        return connect_server(self._url, busy_timeout_s=1.0, autocommit=True)

    def _listen(self, connection: psycopg.Connection[Any]) -> None:
        # What arrives while this connection asks something itself is handed over here.
        connection.add_notify_handler(lambda notice: self._take(notice.payload))
        connection.execute(f"LISTEN {CHANNEL}")
        row = connection.execute(f"SELECT serial FROM {NAMESPACE}.server_state").fetchone()
        serial = int(row[0]) if row is not None else 0
        self._beat(connection)
        if self._was_lost or serial > self._seen():
            self._was_lost = False
            self._on_back(serial)
        self._hear(connection)
        while not self._is_over:
            heard: list[Any] = [connection.fileno(), self._bell]
            ready, _, _ = select.select(heard, [], [], self._heartbeat_s)
            if self._bell in ready:
                self._bell.recv(4096)
            if connection.fileno() not in ready:
                self._beat(connection)
            connection.pgconn.consume_input()
            self._hear(connection)

    def _hear(self, connection: psycopg.Connection[Any]) -> None:
        while (notice := connection.pgconn.notifies()) is not None:
            self._take(notice.extra.decode("utf-8", "replace"))

    def _take(self, text: str) -> None:
        word = word_from_text(text)
        if word is None:
            log.warning("a notice of the server makes no sense")
            return
        self._on_word(word)

    def _beat(self, connection: psycopg.Connection[Any]) -> None:
        """Try the connection; ask for the keeper's place if it is not this desk's."""
        if self.is_keeper:
            connection.execute("SELECT 1")
            return
        row = connection.execute(f"SELECT pg_try_advisory_lock({KEEPER_LOCK})").fetchone()
        self.is_keeper = bool(row is not None and row[0])
        if self.is_keeper:
            self._on_keeper()

    def _lose(self, trouble: StoreTrouble) -> None:
        self.is_keeper = False
        if not self._was_lost:
            self._was_lost = True
            log.warning("the server is gone: %s", trouble.code)
            self._on_lost()

    def _rest(self, seconds: float) -> None:
        """Wait, or until somebody asks for a look."""
        ready, _, _ = select.select([self._bell], [], [], seconds)
        if ready:
            self._bell.recv(4096)
