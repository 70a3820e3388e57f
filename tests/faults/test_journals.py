"""Journals that are missing, or belong to another state of the file."""

from __future__ import annotations

import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing

import pytest

from brewdesk.store.errors import StoreTrouble
from brewdesk.store.store import Store
from tests.helpers.whole_pantry import everything
from tests.store.drafts import NOW, reading_draft

# Ends in the middle of a change, when pages are in the file and the journal is still needed.
DIE_WRITING = """
import os, signal, sqlite3, sys
connection = sqlite3.connect(sys.argv[1], isolation_level=None)
connection.execute(f"PRAGMA journal_mode={sys.argv[2]}")
connection.execute("PRAGMA cache_size=2")
connection.execute("BEGIN IMMEDIATE")
for turn in range(500):
    connection.execute("INSERT INTO setting VALUES (?, ?)", (f"half {turn}", "x" * 500))
connection.execute("UPDATE vessel SET name = 'half ' || id")
for turn in range(500):
    connection.execute("INSERT INTO setting VALUES (?, ?)", (f"more {turn}", "x" * 500))
if sys.argv[2] == "WAL":
    connection.execute("COMMIT")
os.kill(os.getpid(), signal.SIGKILL)
"""


def die_writing(path, mode="DELETE"):
    done = subprocess.run([sys.executable, "-c", DIE_WRITING, str(path), mode], check=False)
    assert done.returncode < 0


@pytest.fixture
def earlier(pantry, tmp_path):
    """A copy of the pantry from before, as somebody keeps one by hand; the pantry went on."""
    kept = tmp_path / "kept by hand"
    shutil.copy(pantry.path, kept)
    content = everything(kept)
    store = Store.open(pantry.path, now=NOW)
    for _ in range(3):
        with store.write() as unit:
            unit.readings.add(reading_draft(pantry.batch_id))
            unit.vessels.change(1, name=f"Jar {len(unit.readings.where())}")
    store.close()
    return kept, content


def test_a_journal_of_the_later_file_is_not_played_into_one_put_back_by_hand(pantry, earlier):
    kept, content = earlier
    die_writing(pantry.path)
    journal = pantry.path.with_name(pantry.path.name + "-journal")
    foreign = journal.read_bytes()
    shutil.copy(kept, pantry.path)

    Store.open(pantry.path, now=NOW).close()

    assert everything(pantry.path) == content
    assert not journal.exists()
    (aside,) = (pantry.path.parent / "set-aside").glob("*/*-journal")
    assert aside.read_bytes() == foreign


def test_without_that_look_sqlite_would_have_spoilt_it(pantry, earlier):
    """The fault is real: the same files, opened by SQLite alone."""
    kept, _ = earlier
    die_writing(pantry.path)
    shutil.copy(kept, pantry.path)

    with closing(sqlite3.connect(pantry.path)) as connection:
        connection.execute("SELECT count(*) FROM vessel").fetchone()

    assert pantry.path.read_bytes() != kept.read_bytes()


def test_a_wal_of_the_later_file_is_not_played_into_one_put_back_by_hand(pantry, earlier):
    kept, content = earlier
    die_writing(pantry.path, "WAL")
    assert pantry.path.with_name(pantry.path.name + "-wal").stat().st_size > 0
    shutil.copy(kept, pantry.path)

    Store.open(pantry.path, now=NOW).close()

    assert everything(pantry.path) == content
    assert list((pantry.path.parent / "set-aside").glob("*/*-wal"))


def test_a_journal_of_its_own_is_still_played_back(pantry, earlier):
    before = everything(pantry.path)
    die_writing(pantry.path)

    Store.open(pantry.path, now=NOW).close()

    assert everything(pantry.path) == before
    assert not (pantry.path.parent / "set-aside").exists()


def test_a_journal_that_somebody_deleted_is_damage_and_no_crash(pantry):
    die_writing(pantry.path)
    pantry.path.with_name(pantry.path.name + "-journal").unlink()

    try:
        store = Store.open(pantry.path, now=NOW)
    except StoreTrouble as trouble:
        code = trouble.code
    else:
        code = "sound"
        with store.read() as unit:
            unit.vessels.where()
        store.close()

    assert code in ("damaged", "sound")
    with closing(sqlite3.connect(f"{pantry.path.as_uri()}?mode=ro", uri=True)) as connection:
        whole = connection.execute("PRAGMA integrity_check(1)").fetchone()[0]
    assert (code == "sound") == (whole == "ok")
