"""Opening: a missing file is made, a sound one opened, anything else left as it is."""

from __future__ import annotations

import hashlib
import os
import random
import sqlite3
import stat
import subprocess
import sys
from contextlib import closing
from datetime import timedelta

import pytest

from brewdesk.store.errors import StoreTrouble
from brewdesk.store.identify import FileState, look
from brewdesk.store.schema import APPLICATION_ID, SCHEMA_NUMBER
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.store.drafts import NOW, PLACE

# Dies in the middle of a transaction that has begun to overwrite the file itself.
DIE_WRITING = """
import os, signal, sqlite3, sys
connection = sqlite3.connect(sys.argv[1], isolation_level=None)
connection.execute("PRAGMA cache_size=2")
connection.execute("BEGIN IMMEDIATE")
for number in range(500):
    connection.execute("INSERT INTO setting VALUES (?, ?)", (f"half {number}", "x" * 500))
connection.execute("UPDATE place SET name = 'half'")
os.kill(os.getpid(), signal.SIGKILL)
"""


@pytest.fixture
def closed(path):
    """A store with one place, closed."""
    store = Store.open(path, now=NOW)
    with store.write() as unit:
        unit.places.add(PLACE)
    store.close()
    return path


def fingerprint(path):
    """Return the content of a closed store and all that lies beside it."""
    return {
        entry.name: hashlib.sha256(entry.read_bytes()).hexdigest()
        for entry in path.parent.iterdir()
        if entry.is_file()
    }


def pragma(path, text):
    with closing(sqlite3.connect(path)) as connection:
        connection.execute(f"PRAGMA {text}")


def refused(path):
    """Open a store that must be refused and untouched; return the code."""
    before = fingerprint(path)
    with pytest.raises(StoreTrouble) as caught:
        Store.open(path, now=NOW)
    assert fingerprint(path) == before
    return caught.value.code


def test_a_missing_file_is_made_with_its_folder(path):
    store = Store.open(path, now=NOW, is_demo=True)

    assert store.info.created_at == NOW
    assert store.info.is_demo is True
    assert len(store.info.uid) == 32
    store.close()
    assert [entry.name for entry in path.parent.iterdir()] == ["pantry.sqlite"]


def test_an_existing_store_keeps_its_birthday_and_content(closed):
    first = dump(closed)
    store = Store.open(closed, now=NOW + timedelta(days=1), is_demo=True)

    assert store.info.created_at == NOW
    assert store.info.is_demo is False
    store.close()
    assert dump(closed) == first


def test_two_new_stores_are_told_apart(tmp_path):
    stores = [Store.open(tmp_path / f"{name}.sqlite", now=NOW) for name in "ab"]

    assert len({store.info.uid for store in stores}) == 2
    for store in stores:
        store.close()


def test_only_the_owner_can_read_a_new_store(path):
    Store.open(path, now=NOW).close()

    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert stat.S_IMODE(path.parent.stat().st_mode) == 0o700


def test_a_store_that_others_could_read_is_made_private(closed):
    closed.chmod(0o644)
    Store.open(closed, now=NOW).close()

    assert stat.S_IMODE(closed.stat().st_mode) == 0o600


def test_a_name_with_signs_of_its_own_is_opened(tmp_path):
    path = tmp_path / "ein % Ordner? #1 é" / "pantry [1].sqlite"
    Store.open(path, now=NOW).close()
    path.with_name(f".{path.name}.0a1b2c3d.unfinished").touch()
    store = Store.open(path, now=NOW)
    made = store.backup("manual", now=NOW)
    store.close()

    assert dump(made) == dump(path)
    assert sorted(entry.name for entry in path.parent.iterdir()) == ["backups", path.name]


def test_an_empty_file_is_no_new_store(path):
    path.parent.mkdir()
    path.touch()

    assert refused(path) == "empty_file"


def test_a_database_without_tables_is_no_new_store(path):
    path.parent.mkdir()
    pragma(path, "user_version=0")
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("CREATE TABLE gone (a)")
        connection.execute("DROP TABLE gone")

    assert refused(path) == "empty_file"


@pytest.mark.parametrize("size", [1, 99, 100, 5000, 200_000])
def test_a_file_of_something_else_is_no_store(path, size):
    path.parent.mkdir()
    path.write_bytes(random.Random(size).randbytes(size))

    assert refused(path) == "not_a_store"


def test_another_programs_database_is_no_store(closed):
    pragma(closed, "application_id=7")

    assert refused(closed) == "not_a_store"


def test_a_folder_in_the_place_of_the_file_is_no_store(path):
    path.mkdir(parents=True)

    with pytest.raises(StoreTrouble) as caught:
        Store.open(path, now=NOW)

    assert caught.value.code == "not_a_store"


def test_a_newer_store_is_refused_byte_by_byte_untouched(closed):
    pragma(closed, f"user_version={SCHEMA_NUMBER + 1}")

    assert refused(closed) == "newer_file"


def test_a_newer_store_with_another_journal_mode_is_left_in_it(closed):
    pragma(closed, f"user_version={SCHEMA_NUMBER + 1}")
    pragma(closed, "journal_mode=WAL")

    assert refused(closed) == "newer_file"


def test_a_newer_store_whose_program_was_killed_is_left_to_it(closed):
    pragma(closed, f"user_version={SCHEMA_NUMBER + 1}")
    die_writing(closed)

    assert refused(closed) == "newer_file"


@pytest.mark.parametrize("kept_share", [0.1, 0.5, 0.9])
def test_a_truncated_store_is_damaged(closed, kept_share):
    os.truncate(closed, int(closed.stat().st_size * kept_share) // 4096 * 4096)

    assert refused(closed) == "damaged"


def test_a_store_cut_inside_its_first_page_is_no_database(closed):
    os.truncate(closed, 60)

    assert refused(closed) == "not_a_store"


def test_a_smashed_page_is_damage(closed):
    size = closed.stat().st_size
    with closed.open("r+b") as stream:
        for page in range(1, size // 4096):
            stream.seek(page * 4096)
            stream.write(b"\xa5" * 64)

    assert refused(closed) == "damaged"


def test_a_reference_to_nothing_is_damage(closed):
    with closing(sqlite3.connect(closed)) as connection:  # keys are off where not asked for
        connection.execute("INSERT INTO culture_parent (culture_id, parent_id) VALUES (404, 405)")
        connection.commit()

    assert refused(closed) == "damaged"


def test_a_store_without_its_pantry_row_is_damaged(closed):
    with closing(sqlite3.connect(closed)) as connection:
        connection.execute("DELETE FROM pantry")
        connection.commit()

    assert refused(closed) == "damaged"


def test_a_journal_without_its_store_is_damage_not_a_first_run(closed):
    die_writing(closed)
    closed.unlink()

    assert refused(closed) == "damaged"
    assert not closed.exists()


def die_writing(path):
    """Leave a half-written file and the journal that mends it."""
    done = subprocess.run([sys.executable, "-c", DIE_WRITING, str(path)], check=False)
    assert done.returncode < 0
    journal = path.with_name(path.name + "-journal")
    assert journal.stat().st_size > 0


def test_a_write_that_was_cut_off_is_rolled_back_at_the_next_start(closed):
    before = dump(closed)
    die_writing(closed)

    assert look(closed).was_interrupted
    store = Store.open(closed, now=NOW)
    store.close()

    assert dump(closed) == before
    assert [entry.name for entry in closed.parent.iterdir()] == ["pantry.sqlite"]


def test_a_first_page_cut_off_half_written_is_mended_by_the_journal(closed):
    before = dump(closed)
    die_writing(closed)
    with closed.open("r+b") as stream:
        stream.write(bytes(4096))

    Store.open(closed, now=NOW).close()

    assert dump(closed) == before


def test_a_store_set_to_wal_by_hand_is_set_back(closed):
    pragma(closed, "journal_mode=WAL")
    before = dump(closed)

    Store.open(closed, now=NOW).close()

    assert dump(closed) == before
    assert [entry.name for entry in closed.parent.iterdir()] == ["pantry.sqlite"]


def test_what_an_interrupted_start_left_is_cleared_away(closed):
    for left in (
        ".pantry.sqlite.0a1b2c3d.unfinished",
        ".pantry.sqlite.0a1b2c3d.unfinished-journal",
    ):
        closed.with_name(left).write_bytes(b"half")

    Store.open(closed, now=NOW).close()

    assert [entry.name for entry in closed.parent.iterdir()] == ["pantry.sqlite"]


def test_a_look_tells_what_opening_would_mean(closed):
    missing = look(closed.with_name("other.sqlite"))
    current = look(closed)
    older = look(closed, known_schema=SCHEMA_NUMBER + 1)

    assert (missing.state, current.state, older.state) == (
        FileState.MISSING,
        FileState.CURRENT,
        FileState.OLDER,
    )
    assert older.schema_number == SCHEMA_NUMBER
    assert not current.was_interrupted


def test_a_locked_store_is_told_as_locked_not_as_damaged(closed, monkeypatch):
    monkeypatch.setattr("brewdesk.store.engine.connect.__kwdefaults__", {"busy_timeout_s": 0.05})
    with closing(sqlite3.connect(closed)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(StoreTrouble) as caught:
            Store.open(closed, now=NOW)

    assert caught.value.code == "locked"


def test_byte_damage_is_found_or_harmless_but_never_a_crash(closed):
    sound = closed.read_bytes()
    picked = random.Random(20261125)
    codes = set()
    for _ in range(60):
        at = picked.randrange(len(sound))
        length = picked.choice([1, 4, 64, 4096])
        broken = bytearray(sound)
        broken[at : at + length] = picked.randbytes(min(length, len(sound) - at))
        closed.write_bytes(broken)
        try:
            store = Store.open(closed, now=NOW)
            with store.read() as unit:
                unit.places.where()
            store.close()
        except StoreTrouble as trouble:
            codes.add(trouble.code)

    assert "damaged" in codes
    assert codes <= {"damaged", "not_a_store", "newer_file", "empty_file", "cannot_open"}


def test_the_application_id_is_ours_and_fits_its_field():
    assert APPLICATION_ID.to_bytes(4, "big") == b"BRDK"
