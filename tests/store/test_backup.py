"""A backup is proven before it counts, and goes only when newer ones stand in for it."""

from __future__ import annotations

import hashlib
import json
import os
import signal
import sqlite3
import stat
import subprocess
import sys
from contextlib import closing
from datetime import timedelta

import pytest

from brewdesk.store import backup as backup_module
from brewdesk.store import files
from brewdesk.store.backup import backup_folder, backups, verify_backup
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.store.drafts import NOW, PLACE, reading_draft


def names(store):
    folder = backup_folder(store.path)
    return sorted(entry.name for entry in folder.iterdir()) if folder.exists() else []


def test_a_backup_holds_what_the_store_holds_and_opens(store, shelf):
    made = store.backup("manual", now=NOW)

    assert dump(made) == dump(store.path)
    opened = Store.open(made, now=NOW)
    assert opened.info == store.info
    opened.close()


def test_a_backup_is_described_beside_it(store, shelf):
    made = store.backup("daily", now=NOW)

    described = json.loads(made.with_name(made.name + ".json").read_text())
    assert described["file"] == made.name == "2026-11-25T091258.123456Z-daily.sqlite"
    assert described["reason"] == "daily"
    assert described["sha256"] == hashlib.sha256(made.read_bytes()).hexdigest()
    assert described["row_counts"] == {
        "act": 0,
        "act_subject": 0,
        "addition": 0,
        "batch": 1,
        "batch_supply": 0,
        "bottle_check": 0,
        "bottle_group": 0,
        "bottling": 0,
        "calibration": 0,
        "care": 0,
        "culture": 1,
        "culture_parent": 0,
        "pantry": 1,
        "photo": 0,
        "place": 1,
        "place_temperature": 0,
        "reading": 0,
        "reminder": 0,
        "setting": 0,
        "step": 0,
        "supply": 0,
        "supply_draw": 0,
        "supply_lot": 0,
        "temperature_chunk": 0,
        "temperature_log": 0,
        "transfer": 0,
        "trial": 0,
        "trial_arm": 0,
        "trial_jar": 0,
        "trial_score": 0,
        "vessel": 1,
        "vessel_move": 0,
    }
    (listed,) = store.backups()
    assert listed.path == made
    assert listed.made_at == NOW
    assert listed.pantry_uid == store.info.uid


def test_only_the_owner_can_read_a_backup(store):
    made = store.backup("manual", now=NOW)

    assert stat.S_IMODE(made.stat().st_mode) == 0o600
    assert stat.S_IMODE(made.parent.stat().st_mode) == 0o700
    assert stat.S_IMODE(made.with_name(made.name + ".json").stat().st_mode) == 0o600


def test_a_backup_leaves_nothing_unfinished(store):
    made = store.backup("manual", now=NOW)

    assert names(store) == [made.name, made.name + ".json"]


def test_two_backups_of_one_moment_do_not_overwrite_each_other(store):
    first = store.backup("manual", now=NOW)
    second = store.backup("manual", now=NOW)

    assert first != second
    assert {info.path for info in store.backups()} == {first, second}


def test_stores_in_one_folder_have_backups_of_their_own(store, tmp_path):
    other = Store.open(store.path.with_name("demo.sqlite"), now=NOW)
    made = other.backup("manual", now=NOW)
    other.close()

    assert store.backups() == ()
    assert [info.path for info in backups(other.path)] == [made]


def test_a_backup_while_another_thread_writes_holds_what_is_committed(store):
    with store.write() as unit:
        unit.places.add(PLACE)
    committed = dump(store.path)
    writer = sqlite3.connect(store.path, isolation_level=None)
    with closing(writer):
        writer.execute("BEGIN IMMEDIATE")
        writer.execute("UPDATE place SET name = 'half done'")
        made = store.backup("manual", now=NOW)
        writer.execute("ROLLBACK")

    assert dump(made) == committed


def test_a_backup_inside_a_write_unit_is_refused(store):
    with store.write(), pytest.raises(RuntimeError):
        store.backup("manual", now=NOW)


def test_a_store_that_stays_locked_postpones_the_backup(store, monkeypatch):
    monkeypatch.setattr(files, "_RETRY_AFTER_S", 0.0001)
    with closing(sqlite3.connect(store.path, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(StoreTrouble) as caught:
            store.backup("manual", now=NOW)
        other.execute("ROLLBACK")

    assert caught.value.code == "locked"
    assert names(store) == []
    assert store.backup("manual", now=NOW).exists()


def test_an_unknown_reason_is_refused(store):
    with pytest.raises(ValueError, match="boredom"):
        store.backup("boredom", now=NOW)


def test_damage_is_not_backed_up_and_no_older_backup_goes(store, shelf):
    good = store.backup("manual", now=NOW - timedelta(days=400))
    store.close()
    with closing(sqlite3.connect(store.path)) as connection:
        connection.execute("DELETE FROM vessel")  # leaves the batch without its vessel
        connection.commit()

    with pytest.raises(StoreTrouble) as caught:
        store.backup("manual", now=NOW)

    assert caught.value.code == "damaged"
    assert names(store) == [good.name, good.name + ".json"]


def test_old_backups_are_thinned_out_after_a_new_one(store):
    for day in range(30, 0, -1):
        for hour in (8, 20):
            store.backup("daily", now=(NOW - timedelta(days=day)).replace(hour=hour))

    store.backup("daily", now=NOW)

    left = [info.made_at for info in store.backups()]
    # All of two days; with today's, the newest of 14 days; Sundays for the weeks before.
    assert [at.strftime("%m-%d %H") for at in left] == [
        "11-25 09",
        "11-24 20",
        "11-24 08",
        "11-23 20",
        *(f"11-{day} 20" for day in range(22, 11, -1)),
        "11-08 20",
        "11-01 20",
        "10-31 20",
    ]
    assert len(names(store)) == 2 * len(left)
    for info in store.backups():
        verify_backup(info)


def test_a_backup_changed_by_one_byte_no_longer_counts_as_good(store, shelf):
    with store.write() as unit:
        unit.readings.add(reading_draft(shelf.batch.id, text="pellicle is pale"))
    store.backup("manual", now=NOW)
    (info,) = store.backups()
    verify_backup(info)
    content = info.path.read_bytes()
    assert content.count(b"pellicle is pale") == 1
    info.path.write_bytes(content.replace(b"pellicle is pale", b"pellicle is male"))

    with pytest.raises(StoreTrouble) as caught:
        verify_backup(info)

    assert caught.value.code == "damaged"


def test_a_description_that_cannot_be_read_is_passed_over(store, caplog):
    store.backup("manual", now=NOW)
    folder = backup_folder(store.path)
    (folder / "odd.sqlite.json").write_text("{]")
    (folder / "list.sqlite.json").write_text("[]")
    (folder / "gone.sqlite.json").write_text(
        json.dumps(
            {
                "file": "gone.sqlite",
                "made_at": "2026-11-25T09:12:58.123456Z",
                "reason": "manual",
                "schema_number": 1,
                "pantry_uid": "x",
                "size_bytes": 1,
                "sha256": "",
                "row_counts": {},
            }
        )
    )

    assert len(store.backups()) == 1
    assert "odd.sqlite.json" in caplog.text
    assert "list.sqlite.json" in caplog.text


def test_a_description_never_points_outside_its_folder(store):
    made = store.backup("manual", now=NOW)
    sidecar = made.with_name(made.name + ".json")
    described = json.loads(sidecar.read_text())
    sidecar.write_text(json.dumps({**described, "file": "../../pantry.sqlite"}))

    assert store.backups() == ()


def test_a_copy_that_cannot_be_finished_leaves_nothing(store, monkeypatch):
    def refuse(connection, *, thorough):
        raise StoreTrouble("damaged", "the copy is not sound")

    monkeypatch.setattr(backup_module, "check_sound", refuse)
    with pytest.raises(StoreTrouble):
        store.backup("manual", now=NOW)

    assert names(store) == []


DIE_COPYING = """
import os, signal, sys
from datetime import UTC, datetime
from pathlib import Path
from brewdesk.store import backup, files
from brewdesk.store.store import Store

def die(connection, *, thorough):
    os.kill(os.getpid(), signal.SIGKILL)

backup.check_sound = die
store = Store.open(Path(sys.argv[1]), now=datetime(2026, 11, 25, tzinfo=UTC))
store.backup("manual", now=datetime(2026, 11, 25, tzinfo=UTC))
"""


def test_a_kill_while_a_backup_is_made_leaves_the_older_ones_alone(store, shelf):
    good = store.backup("manual", now=NOW)
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)}

    done = subprocess.run(
        [sys.executable, "-c", DIE_COPYING, str(store.path)], env=environment, check=False
    )

    assert done.returncode == -signal.SIGKILL
    assert any(".unfinished" in name for name in names(store))
    assert [info.path for info in store.backups()] == [good]
    store.backup("manual", now=NOW)
    assert not any(".unfinished" in name for name in names(store))
