"""What another desk commits is heard, whatever the listening connection does just then."""

from __future__ import annotations

import threading
from datetime import UTC, datetime

from brewdesk.bootstrap import open_shared
from brewdesk.store.records import PlaceDraft
from brewdesk.store.serverlisten import Listener

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
PATIENCE_S = 20.0
LONG_S = 3600.0  # so that no heartbeat makes up for what was not heard


class BusyListener(Listener):
    """One that is in the middle of a question of its own when a change is committed."""

    def __init__(self, *arguments, change, **named) -> None:
        super().__init__(*arguments, **named)
        self._change = change

    def _beat(self, connection) -> None:
        # The answer comes after the notice: the server sends notices between commands.
        change, self._change = self._change, lambda: None  # once: the end rings for a beat too
        change()
        connection.execute("SELECT pg_sleep(0.2)")
        super()._beat(connection)


def test_a_notice_that_comes_amid_a_question_is_not_lost(pg_server, tmp_path):
    address = pg_server.make_store()
    store = open_shared(address, tmp_path / "one" / "shared.brewdesk", now=NOW)
    words, heard = [], threading.Event()

    def change() -> None:
        with store.write() as unit:
            unit.places.add(PlaceDraft(name="Invented shed", temperature_c=18.0))

    def on_word(word) -> None:
        words.append(word)
        heard.set()

    listener = BusyListener(
        store._url,  # the address as the store reads it
        change=change,
        seen=lambda: 2**31,
        on_word=on_word,
        on_lost=lambda: None,
        on_back=lambda _serial: None,
        on_keeper=lambda: None,
        heartbeat_s=LONG_S,
    )
    listener.start()
    try:
        assert heard.wait(PATIENCE_S)
    finally:
        listener.stop()
        store.close()
        pg_server.drop(address)
    assert [word.touched.tables for word in words] == [frozenset({"place"})]
