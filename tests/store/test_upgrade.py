"""Every store that a released program wrote opens in this one, with all that was in it."""

from __future__ import annotations

import re
import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from brewdesk.store.migrate import CURRENT
from brewdesk.store.records import Reading
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.store.drafts import NOW

OLD_STORES = sorted((Path(__file__).parents[1] / "upgrades").glob("*.sqlite"))

KEYS = {"temperature_chunk": r"content_hash=\S+ position=\S+"}


@pytest.fixture(params=OLD_STORES, ids=lambda path: path.stem)
def old_store(request, tmp_path):
    """A copy of an old store."""
    return Path(shutil.copy(request.param, tmp_path / "pantry.sqlite"))


def values(path):
    """Return each row's values by table, id and column."""
    found = {}
    for line in dump(path).splitlines():
        table, said = line.split(": ", 1)
        key = re.match(KEYS.get(table, r"(?:id|key)=\S+"), said)[0]
        pairs = re.findall(r"(\w+)=('(?:[^'\\]|\\.)*'|\"(?:[^\"\\]|\\.)*\"|\S+)", said)
        found.update({(table, key, column): value for column, value in pairs})
    return found


def tables(path):
    with closing(sqlite3.connect(path)) as connection:
        return {
            name: re.sub(r"\s+", " ", sql)
            for name, sql in connection.execute(
                "SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL"
            )
        }


def test_there_is_an_old_store_of_every_schema():
    numbers = [int(path.stem) for path in OLD_STORES]

    assert numbers == list(range(1, CURRENT.number + 1))


def test_an_old_store_keeps_every_value_it_had(old_store):
    before = values(old_store)

    Store.open(old_store, now=NOW).close()

    after = values(old_store)
    assert len(before) > 100
    assert {key: after.get(key) for key in before} == before


def test_an_old_store_comes_out_like_a_new_one(old_store, tmp_path):
    Store.open(old_store, now=NOW).close()
    Store.open(tmp_path / "new.sqlite", now=NOW).close()

    assert tables(old_store) == tables(tmp_path / "new.sqlite")


def test_an_old_store_can_be_worked_with(old_store):
    store = Store.open(old_store, now=NOW)
    with store.write() as unit:
        readings = unit.readings.where()
        unit.apply(unit.acts.deltas(unit.acts.last_done().id), backwards=True)
        left = unit.readings.where()
    store.close()

    assert len(readings) == 6
    assert all(isinstance(reading, Reading) for reading in readings)
    assert left == ()
