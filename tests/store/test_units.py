"""Units of work: all or nothing, from any thread, never waiting for themselves."""

from __future__ import annotations

import sqlite3
import threading
from contextlib import closing

import pytest

from brewdesk.store.errors import NoSuchRow, StoreTrouble
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.helpers.everystore import on_every_store
from tests.store.drafts import NOW, PLACE


def in_thread(work):
    """Run ``work`` in another thread and return what it returned or raised."""
    outcome = []

    def run():
        try:
            outcome.append(work())
        except Exception as error:
            outcome.append(error)

    thread = threading.Thread(target=run)
    thread.start()
    thread.join(timeout=60)
    assert not thread.is_alive()
    return outcome[0]


@on_every_store
def test_a_unit_that_raises_leaves_nothing(store):
    before = dump(store)

    def change_and_fail():
        with store.write() as unit:
            unit.places.add(PLACE)
            unit.settings.put("theme", "dark")
            raise KeyError

    with pytest.raises(KeyError):
        change_and_fail()

    assert dump(store) == before


@on_every_store
@pytest.mark.parametrize("error", [OSError("a paper jam"), OverflowError(), ValueError("no pH")])
def test_errors_of_the_code_inside_a_unit_stay_what_they_are(store, error):
    with pytest.raises(type(error)) as caught, store.write():
        raise error

    assert caught.value is error


@on_every_store
def test_a_reader_sees_nothing_of_a_unit_that_is_not_over(store):
    def places():
        with store.read() as unit:
            return unit.places.where()

    with store.write() as unit:
        place = unit.places.add(PLACE)
        seen_before = in_thread(places)

    assert seen_before == ()
    assert in_thread(places) == (place,)


@on_every_store
def test_reading_inside_a_write_unit_sees_its_changes(store):
    with store.write() as unit:
        place = unit.places.add(PLACE)
        with store.read() as inner, store.read() as innermost:
            assert inner.places.get(place.id) == place
            assert innermost.places.get(place.id) == place
    with store.write() as unit:  # the inner units did not end the outer one
        unit.places.remove(place.id)


@on_every_store
@pytest.mark.parametrize("outer", ["read", "write"])
def test_a_write_unit_inside_a_unit_is_refused_at_once(store, outer):
    with getattr(store, outer)(), pytest.raises(RuntimeError), store.write():
        pass

    with store.write() as unit:  # and the store goes on working
        unit.places.add(PLACE)


def test_a_reader_does_not_take_the_write_lock(store):
    with store.read() as unit:
        unit.places.where()
        with closing(sqlite3.connect(store.path, timeout=0)) as other:
            other.execute("BEGIN IMMEDIATE")
            other.rollback()


def test_a_writer_takes_the_write_lock_as_it_begins(store):
    with (
        store.write(),
        closing(sqlite3.connect(store.path, timeout=0)) as other,
        pytest.raises(sqlite3.OperationalError, match="locked"),
    ):
        other.execute("BEGIN IMMEDIATE")


@on_every_store
def test_threads_take_turns_and_lose_nothing(open_store):
    store = open_store(busy_timeout_s=0.001)  # turns are no matter of patience
    with store.write() as unit:
        unit.settings.put("count", "0")

    def count_up():
        for _ in range(25):
            with store.write() as unit:
                unit.settings.put("count", str(int(unit.settings.get("count")) + 1))

    threads = [threading.Thread(target=count_up) for _ in range(3)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(timeout=60)

    with store.read() as unit:
        assert unit.settings.get("count") == "75"
    store.close()


def test_a_lock_held_by_another_program_is_told_after_the_wait(path):
    store = Store.open(path, now=NOW, busy_timeout_s=0.05)
    with closing(sqlite3.connect(path)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(StoreTrouble) as writing, store.write():
            pass
        with pytest.raises(StoreTrouble) as reading, store.read() as unit:
            unit.places.where()
        other.rollback()

    assert (writing.value.code, reading.value.code) == ("locked", "locked")
    with store.write() as unit:
        unit.places.add(PLACE)
    store.close()


def test_a_commit_that_a_reader_holds_up_is_told_and_leaves_nothing(path):
    store = Store.open(path, now=NOW, busy_timeout_s=0.05)
    with closing(sqlite3.connect(path, isolation_level=None)) as other:
        other.execute("BEGIN")
        other.execute("SELECT count(*) FROM place").fetchone()
        with pytest.raises(StoreTrouble) as caught, store.write() as unit:
            unit.places.add(PLACE)
        other.execute("ROLLBACK")

    assert caught.value.code == "locked"
    with store.read() as unit:
        assert unit.places.where() == ()
    store.close()


def test_connections_have_the_settings_that_keep_data(store):
    expected = {
        "journal_mode": "delete",
        "synchronous": 3,
        "foreign_keys": 1,
        "trusted_schema": 0,
        "cell_size_check": 1,
        "busy_timeout": 5000,
    }
    with store._engine.connect() as first, store._engine.connect() as second:
        for connection in (first, second):
            found = {
                name: connection.exec_driver_sql(f"PRAGMA {name}").scalar_one() for name in expected
            }
            assert found == expected


@on_every_store
def test_a_missing_row_leaves_the_store_working(store):
    with pytest.raises(NoSuchRow), store.read() as unit:
        unit.places.get(1)

    with store.write() as unit:
        unit.places.add(PLACE)


def test_a_file_deleted_while_open_is_noticed_before_anything_is_written(store):
    store.path.unlink()

    with pytest.raises(StoreTrouble) as caught, store.write() as unit:
        unit.places.add(PLACE)

    assert caught.value.code == "file_gone"
    assert not store.path.exists()


def test_a_folder_that_vanished_is_noticed(store):
    store.path.parent.rename(store.path.parent.with_name("elsewhere"))

    with pytest.raises(StoreTrouble) as caught, store.read():
        pass

    assert caught.value.code == "file_gone"


def test_a_file_exchanged_while_open_is_noticed(store, tmp_path):
    other = Store.open(tmp_path / "other.sqlite", now=NOW)
    other.close()
    other.path.replace(store.path)
    before = dump(store.path)

    with pytest.raises(StoreTrouble) as caught, store.write() as unit:
        unit.places.add(PLACE)

    assert caught.value.code == "file_replaced"
    assert dump(store.path) == before
