"""Migrating happens on a copy; if anything is wrong with it, the old store stays."""

from __future__ import annotations

import os
import shutil
import signal
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

from brewdesk.store import migrate
from brewdesk.store import store as store_module
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.migrate import CURRENT, Migrations
from brewdesk.store.schema import SCHEMA_NUMBER
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.store.drafts import NOW, reading_draft, reminder_draft

NEXT = SCHEMA_NUMBER + 1

REVISION = f'''
import sqlalchemy as sa
from alembic import op

revision = "{NEXT:04d}"
down_revision = "{SCHEMA_NUMBER:04d}"
branch_labels = None
depends_on = None


def upgrade():
'''

ADD_A_COLUMN = (
    '    op.add_column("place", sa.Column("draught", sa.Text(), server_default="none"))\n'
)
# Makes the table anew and drops the old one, which the other tables' rows point at.
REBUILD_A_PARENT = """
    with op.batch_alter_table("batch", recreate="always") as batch:
        batch.add_column(sa.Column("colour", sa.Text()))
"""
FAIL_HALFWAY = ADD_A_COLUMN + '    op.execute("UPDATE place SET name = 1/0 || nonsense")\n'
RAISE = ADD_A_COLUMN + '    raise RuntimeError("a revision that fails")\n'
LOSE_ROWS = '    op.execute("DELETE FROM reading")\n'
LOSE_A_TABLE = '    op.drop_table("reading")\n'
DIE = ADD_A_COLUMN + "    import os, signal\n    os.kill(os.getpid(), signal.SIGKILL)\n"


@pytest.fixture
def filled(store, shelf):
    """A closed store of the present schema with readings and reminders; its path."""
    with store.write() as unit:
        for hour in range(3):
            unit.readings.add(reading_draft(shelf.batch.id, at=NOW.replace(hour=hour)))
        unit.reminders.add(reminder_draft(shelf.batch.id))
    store.close()
    return store.path


@pytest.fixture
def to_next(tmp_path):
    """Return a maker of revisions that end with the step given."""

    def make(step: str) -> Migrations:
        folder = tmp_path / "revisions"
        shutil.copytree(CURRENT.folder, folder)
        (folder / "versions" / f"{NEXT:04d}_next.py").write_text(REVISION + step)
        return Migrations(folder, NEXT)

    return make


def files(path):
    return sorted(entry.name for entry in path.parent.iterdir())


def number_of(path):
    with closing(sqlite3.connect(path)) as connection:
        return connection.execute("PRAGMA user_version").fetchone()[0]


def counts(path):
    with closing(sqlite3.connect(path)) as connection:
        return [
            connection.execute(f"SELECT count(*) FROM {name}").fetchone()[0]
            for name in ("batch", "reading", "reminder")
        ]


@pytest.mark.parametrize("step", [ADD_A_COLUMN, REBUILD_A_PARENT])
def test_an_older_store_is_migrated_with_all_its_rows(filled, to_next, step):
    before = counts(filled)

    Store.open(filled, now=NOW, migrations=to_next(step)).close()

    assert counts(filled) == before == [1, 3, 1]
    assert number_of(filled) == NEXT
    assert files(filled) == ["backups", "pantry.sqlite"]
    assert filled.stat().st_mode & 0o777 == 0o600


def test_the_store_as_it_was_is_kept_as_a_backup(filled, to_next):
    before = dump(filled)

    store = Store.open(filled, now=NOW, migrations=to_next(ADD_A_COLUMN))
    (kept,) = store.backups()
    store.close()

    assert (kept.reason, kept.schema_number) == ("before-migration", SCHEMA_NUMBER)
    assert dump(kept.path) == before
    old_program = Store.open(kept.path, now=NOW)
    old_program.close()


def test_the_program_before_refuses_what_came_out(filled, to_next):
    Store.open(filled, now=NOW, migrations=to_next(ADD_A_COLUMN)).close()

    with pytest.raises(StoreTrouble) as caught:
        Store.open(filled, now=NOW)

    assert caught.value.code == "newer_file"


@pytest.mark.parametrize("step", [FAIL_HALFWAY, RAISE, LOSE_ROWS, LOSE_A_TABLE])
def test_a_migration_that_fails_leaves_the_old_store(filled, to_next, step):
    before = filled.read_bytes()

    with pytest.raises(StoreTrouble) as caught:
        Store.open(filled, now=NOW, migrations=to_next(step))

    assert caught.value.code == "migration_failed"
    assert filled.read_bytes() == before
    assert files(filled) == ["backups", "pantry.sqlite"]
    Store.open(filled, now=NOW).close()


def test_a_migration_that_leaves_references_to_nothing_is_not_taken(filled, to_next):
    before = filled.read_bytes()
    orphans = '    op.execute("UPDATE reading SET batch_id = 404")\n'

    with pytest.raises(StoreTrouble) as caught:
        Store.open(filled, now=NOW, migrations=to_next(orphans))

    assert caught.value.code == "migration_failed"
    assert filled.read_bytes() == before


def test_a_kill_in_the_middle_of_a_migration_leaves_the_old_store(filled, to_next):
    before = dump(filled)
    migrations = to_next(DIE)
    script = (
        "import sys\n"
        "from pathlib import Path\n"
        "from datetime import UTC, datetime\n"
        "from brewdesk.store.migrate import Migrations\n"
        "from brewdesk.store.store import Store\n"
        "Store.open(Path(sys.argv[1]), now=datetime(2026, 11, 25, tzinfo=UTC),"
        " migrations=Migrations(Path(sys.argv[2]), int(sys.argv[3])))\n"
    )
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)}

    done = subprocess.run(
        [sys.executable, "-c", script, str(filled), str(migrations.folder), str(NEXT)],
        env=environment,
        check=False,
    )
    left = files(filled)
    Store.open(filled, now=NOW).close()

    assert done.returncode == -signal.SIGKILL
    assert any(name.endswith(".unfinished") for name in left)
    assert dump(filled) == before
    assert files(filled) == ["backups", "pantry.sqlite"]


def test_no_room_for_a_copy_is_said_before_anything_is_done(filled, to_next, monkeypatch):
    before = filled.read_bytes()
    room = shutil._ntuple_diskusage(10**6, 10**6 - 1000, 1000)
    monkeypatch.setattr(migrate.shutil, "disk_usage", lambda folder: room)

    with pytest.raises(StoreTrouble) as caught:
        Store.open(filled, now=NOW, migrations=to_next(ADD_A_COLUMN))

    assert caught.value.code == "disk_full"
    assert filled.read_bytes() == before


def test_a_disk_that_fills_up_during_a_migration_is_told_as_such(filled, to_next):
    before = filled.read_bytes()
    grow = (
        '    op.execute("PRAGMA max_page_count=40")\n'  # SQLite's own limit, same error
        "    for _ in range(9):\n"
        '        op.execute("INSERT INTO setting VALUES (hex(randomblob(9)), '
        'hex(zeroblob(40000)))")\n'
    )

    with pytest.raises(StoreTrouble) as caught:
        Store.open(filled, now=NOW, migrations=to_next(grow))

    assert caught.value.code == "disk_full"
    assert filled.read_bytes() == before


def test_an_older_store_that_cannot_be_written_is_left_alone(filled, to_next, monkeypatch):
    before = filled.read_bytes()
    monkeypatch.setattr(store_module, "is_writable", lambda path: False)

    with pytest.raises(StoreTrouble) as caught:
        Store.open(filled, now=NOW, migrations=to_next(ADD_A_COLUMN))

    assert caught.value.code == "read_only"
    assert filled.read_bytes() == before
    assert files(filled) == ["pantry.sqlite"]


def test_a_store_of_the_present_schema_is_opened_without_alembic(filled):
    script = (
        "import sys\n"
        "from pathlib import Path\n"
        "from datetime import UTC, datetime\n"
        "from brewdesk.store.store import Store\n"
        "Store.open(Path(sys.argv[1]), now=datetime(2026, 11, 25, tzinfo=UTC)).close()\n"
        "print('alembic' in sys.modules)\n"
    )
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)}

    said = subprocess.run(
        [sys.executable, "-c", script, str(filled)],
        env=environment,
        check=True,
        capture_output=True,
        text=True,
    ).stdout

    assert said.strip() == "False"


def test_a_file_that_appears_meanwhile_is_not_overwritten(path, monkeypatch):
    upgrade = migrate._upgrade

    def upgrade_while_a_file_arrives(building: Path, migrations: Migrations) -> None:
        upgrade(building, migrations)
        path.write_bytes(b"somebody else's")

    monkeypatch.setattr(migrate, "_upgrade", upgrade_while_a_file_arrives)
    with pytest.raises(StoreTrouble) as caught:
        Store.open(path, now=NOW)

    assert caught.value.code == "file_replaced"
    assert path.read_bytes() == b"somebody else's"
    assert files(path) == ["pantry.sqlite"]
