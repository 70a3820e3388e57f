"""Each way the disk or the file can fail has its own name, and leaves the rows as they were."""

from __future__ import annotations

import errno
import os
import resource
import shutil
import sqlite3
import stat
import subprocess
import sys
import tempfile
from contextlib import closing
from pathlib import Path

import pytest

from brewdesk.store import store as store_module
from brewdesk.store.errors import RowRefused, StoreTrouble, told, trouble_from
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.store.drafts import NOW, PLACE, reading_draft

LONG = "x" * 20_000


def sqlite_error(number):
    error = sqlite3.OperationalError("said by SQLite")
    error.sqlite_errorcode = number
    return error


@pytest.mark.parametrize(
    ("number", "code"),
    [
        (sqlite3.SQLITE_FULL, "disk_full"),
        (sqlite3.SQLITE_IOERR_FSYNC, "io_error"),
        (sqlite3.SQLITE_IOERR_WRITE, "io_error"),
        (sqlite3.SQLITE_READONLY_DIRECTORY, "read_only"),
        (sqlite3.SQLITE_PERM, "read_only"),
        (sqlite3.SQLITE_BUSY_SNAPSHOT, "locked"),
        (sqlite3.SQLITE_LOCKED, "locked"),
        (sqlite3.SQLITE_CORRUPT, "damaged"),
        (sqlite3.SQLITE_NOTADB, "not_a_store"),
        (sqlite3.SQLITE_CANTOPEN, "cannot_open"),
        (sqlite3.SQLITE_CONSTRAINT_CHECK, "row_refused"),
    ],
)
def test_an_error_of_the_database_has_its_name(number, code):
    assert trouble_from(sqlite_error(number)).code == code


@pytest.mark.parametrize(
    ("number", "code"),
    [
        (errno.ENOSPC, "disk_full"),
        (errno.EDQUOT, "disk_full"),
        (errno.EROFS, "read_only"),
        (errno.EACCES, "read_only"),
        (errno.EIO, "io_error"),
    ],
)
def test_an_error_of_the_disk_has_its_name(number, code):
    with pytest.raises(StoreTrouble) as caught, told():
        raise OSError(number, "said by the system")

    assert caught.value.code == code


def test_a_bug_is_not_told_as_trouble():
    assert trouble_from(sqlite_error(sqlite3.SQLITE_MISUSE)) is None
    assert trouble_from(sqlite3.ProgrammingError("a wrong statement")) is None
    with pytest.raises(ZeroDivisionError), told():
        1 / 0  # noqa: B018  # only its error matters


def test_a_refusal_names_the_rule(store):
    with pytest.raises(RowRefused) as caught, store.write() as unit:
        unit.places.add(PLACE.__class__(name="Invented oven", temperature_c=60.5))

    assert "ck_place_temperature_c" in caught.value.detail


class NoLargerThan:
    """While inside, no file of this process grows beyond a size."""

    def __init__(self, size):
        self.size = size

    def __enter__(self):
        self.before = resource.getrlimit(resource.RLIMIT_FSIZE)
        resource.setrlimit(resource.RLIMIT_FSIZE, (self.size, self.before[1]))

    def __exit__(self, *_):
        resource.setrlimit(resource.RLIMIT_FSIZE, self.before)


def fill(store, batch_id):
    with store.write() as unit:
        for _ in range(20):
            unit.readings.add(reading_draft(batch_id, text=LONG))


def test_a_write_that_the_disk_refuses_is_told_and_can_be_tried_again(store, shelf):
    before = dump(store.path)

    with NoLargerThan(store.path.stat().st_size + 4096):
        with pytest.raises(StoreTrouble) as caught:
            fill(store, shelf.batch.id)
        during = dump(store.path)
    fill(store, shelf.batch.id)

    assert caught.value.code in {"io_error", "disk_full"}
    assert during == before
    with store.read() as unit:
        assert len(unit.readings.where()) == 20
    with closing(sqlite3.connect(store.path)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]


def test_a_full_database_is_told_as_a_full_disk(store, shelf):
    before = dump(store.path)
    connections = [store._engine.raw_connection() for _ in range(3)]
    for connection in connections:  # SQLite's own limit gives the very code of a full disk
        connection.cursor().execute("PRAGMA max_page_count=40")
    for connection in connections:
        connection.close()

    with pytest.raises(StoreTrouble) as caught:
        fill(store, shelf.batch.id)

    assert caught.value.code == "disk_full"
    assert dump(store.path) == before


def test_a_backup_that_the_disk_refuses_leaves_the_older_ones_and_no_stub(store, shelf):
    fill(store, shelf.batch.id)
    good = store.backup("manual", now=NOW)

    with NoLargerThan(100_000), pytest.raises(StoreTrouble) as caught:
        store.backup("manual", now=NOW)

    assert caught.value.code in {"io_error", "disk_full"}
    assert sorted(entry.name for entry in good.parent.iterdir()) == [
        good.name,
        good.name + ".json",
    ]


def test_a_new_store_that_the_disk_refuses_leaves_no_stub(path):
    with NoLargerThan(50_000), pytest.raises(StoreTrouble) as caught:
        Store.open(path, now=NOW)

    assert caught.value.code in {"io_error", "disk_full"}
    assert list(path.parent.iterdir()) == []


def test_after_an_error_of_the_disk_new_connections_look_at_the_file_afresh(store, shelf):
    with store.read():
        pass
    assert store._engine.pool.checkedin() == 1

    with NoLargerThan(store.path.stat().st_size + 4096), pytest.raises(StoreTrouble):
        fill(store, shelf.batch.id)

    assert store._engine.pool.checkedin() == 0


def test_a_folder_that_cannot_be_made_is_told(tmp_path):
    (tmp_path / "data").write_text("a file in the way")

    with pytest.raises(StoreTrouble) as caught:
        Store.open(tmp_path / "data" / "pantry.sqlite", now=NOW)

    assert caught.value.code in {"io_error", "cannot_open"}


def test_a_store_that_cannot_be_written_opens_to_be_read(store, shelf, monkeypatch):
    store.close()
    before = store.path.read_bytes()
    monkeypatch.setattr(store_module, "is_writable", lambda path: False)

    reader = Store.open(store.path, now=NOW)
    with pytest.raises(StoreTrouble) as caught, reader.write():
        pass
    with reader.read() as unit:
        found = unit.places.where()
    reader.close()

    assert reader.is_read_only
    assert caught.value.code == "read_only"
    assert found == (shelf.place,)
    assert store.path.read_bytes() == before


READ_AND_TRY_TO_WRITE = """
import os
import sys
from datetime import UTC, datetime
from pathlib import Path
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.store import Store

now = datetime(2026, 11, 25, tzinfo=UTC)
warm = Store.open(Path(sys.argv[2]), now=now)  # imports what somebody else may not read
with warm.write() as unit:
    unit.places.where()
warm.close()
if os.geteuid() == 0:  # the system's owner may write anywhere, so be somebody else
    os.setgroups([])
    os.setgid(65534)
    os.setuid(65534)
store = Store.open(Path(sys.argv[1]), now=now)
with store.read() as unit:
    print(store.is_read_only, len(unit.places.where()))
try:
    with store.write() as unit:
        unit.settings.put("theme", "dark")
except StoreTrouble as trouble:
    print(trouble.code)
"""


@pytest.fixture
def open_folder():
    """A folder that others can enter, unlike pytest's own."""
    folder = Path(tempfile.mkdtemp())
    folder.chmod(0o755)
    yield folder
    folder.chmod(0o755)
    shutil.rmtree(folder)


def test_a_store_without_write_permission_opens_to_be_read(open_folder, tmp_path):
    path = open_folder / "pantry.sqlite"
    store = Store.open(path, now=NOW)
    with store.write() as unit:
        unit.places.add(PLACE)
    store.close()
    path.chmod(0o444)
    open_folder.chmod(0o555)

    done = subprocess.run(
        [sys.executable, "-c", READ_AND_TRY_TO_WRITE, str(path), str(tmp_path / "warm.sqlite")],
        env={**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)},
        capture_output=True,
        text=True,
        check=False,
    )

    assert done.stderr == ""
    assert done.stdout.split() == ["True", "1", "read_only"]
    assert stat.S_IMODE(path.stat().st_mode) == 0o444
