"""Killed at any instant: what was acknowledged is there, what was not is whole or absent."""

from __future__ import annotations

import random
import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from brewdesk.store.backup import backup_folder, backups, verify_backup
from brewdesk.store.store import Store
from tests.faults.forker import Forker
from tests.helpers.dump import dump
from tests.helpers.whole_pantry import everything
from tests.store.drafts import NOW

ROUNDS = 200
OLD_STORES = sorted((Path(__file__).parents[1] / "upgrades").glob("*.sqlite"))


@pytest.fixture(scope="module")
def forker():
    with Forker() as made:
        yield made


def expected(before: set[int], said: list[str]) -> set[int]:
    """Return the ids of readings that must be there after what the program said."""
    there = set(before)
    for line in said:
        what, _, ids = line.rpartition("kept " if line.startswith("kept") else "taken back ")
        numbers = {int(word) for word in ids.split()}
        there = there | numbers if line.startswith("kept") else there - numbers
        assert what == ""
    return there


def readings(path) -> dict[int, str]:
    with closing(sqlite3.connect(path)) as connection:
        return dict(connection.execute("SELECT id, entered FROM reading"))


def test_two_hundred_kills_at_random_instants_lose_no_act(pantry, forker, record_property):
    """One more act than was said may be there: it was kept, and the word did not get out."""
    picked = random.Random(20261125)
    before, acts, words = set(readings(pantry.path)), 0, 0
    for round_number in range(ROUNDS):
        forker.begin("save_for_ever", pantry.path, pantry.batch_id)
        forker.hear()
        forker.listen(seconds=picked.uniform(0.0, 0.03))
        forker.kill()
        ended = forker.finish()
        assert ended.was_killed

        store = Store.open(pantry.path, now=NOW)  # plays the journal back, checks the whole file
        store.close()

        found = readings(pantry.path)
        sure = expected(before, list(ended.lines))
        one_more = set(found) ^ sure
        assert len(one_more) in (0, 3), (round_number, one_more)
        assert sorted(found[number] for number in set(found) - before) == sorted(
            ["1 of 3", "2 of 3", "3 of 3"] * (len(set(found) - before) // 3)
        )
        assert not any(entry.suffix == "-journal" for entry in pantry.path.parent.iterdir())
        before, acts, words = set(found), acts + 1, words + len(ended.lines)
    with closing(sqlite3.connect(pantry.path)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
        done = connection.execute("SELECT count(*) FROM act WHERE state = 'done'").fetchone()[0]
    assert words >= ROUNDS
    assert done * 3 >= len(before)
    record_property("tried", ROUNDS)


@pytest.mark.parametrize("act", ["record", "plan", "discard", "split", "undo"])
def test_a_kill_at_any_statement_leaves_the_whole_act_or_none_of_it(
    pantry, forker, act, record_property
):
    before = everything(pantry.path)
    sound = pantry.path.read_bytes()
    tried = 0
    for number in range(1, 200):
        pantry.path.write_bytes(sound)
        ended = forker.run("die_at_statement", pantry.path, pantry.batch_id, act, number)
        if ended.lines == ("done",):
            break
        assert ended.was_killed
        tried += 1

        Store.open(pantry.path, now=NOW).close()

        assert everything(pantry.path) == before, f"killed at statement {number}"
    assert ended.lines == ("done",)
    assert everything(pantry.path) != before
    assert tried >= 3
    record_property("tried", tried)


@pytest.mark.parametrize("old", OLD_STORES, ids=lambda path: path.stem)
def test_a_kill_at_any_statement_of_a_migration_ends_with_the_old_store_or_the_new_one(
    tmp_path, forker, old, record_property
):
    path = tmp_path / "pantry.sqlite"
    shutil.copy(old, path)
    (statements,) = forker.run("migrate_until", path, 0).lines
    migrated, before = everything(path), everything(old)
    numbers = {1 + place * (int(statements) - 1) // 15 for place in range(16)}
    for number in sorted(numbers):
        shutil.rmtree(tmp_path)
        tmp_path.mkdir()
        shutil.copy(old, path)
        assert forker.run("migrate_until", path, number).was_killed
        assert everything(path) in (before, migrated), f"killed at statement {number}"

        Store.open(path, now=NOW).close()

        assert everything(path) == migrated, f"killed at statement {number}"
        assert not list(path.parent.glob("*.unfinished*"))
    record_property("tried", len(numbers))


def test_a_kill_at_any_renaming_of_a_restore_ends_with_one_whole_store(
    pantry, forker, record_property
):
    store = Store.open(pantry.path, now=NOW)
    store.backup("manual", now=NOW)
    with store.write() as unit:
        unit.vessels.change(1, name="Renamed since")
    store.close()
    new, (info,) = everything(pantry.path), backups(pantry.path)
    old, content = everything(info.path), pantry.path.read_bytes()
    tried = 0
    for number in range(1, 10):
        pantry.path.write_bytes(content)
        ended = forker.run("restore_until", pantry.path, number)
        if ended.lines == ("done",):
            break
        assert ended.was_killed
        tried += 1

        Store.open(pantry.path, now=NOW).close()  # and carries a restore through

        assert everything(pantry.path) in (old, new)
        assert not pantry.path.with_name(pantry.path.name + ".restored").exists()
    assert ended.lines == ("done",)
    assert everything(pantry.path) == old
    assert tried == 3
    record_property("tried", tried)


def test_a_kill_at_any_page_of_a_backup_leaves_the_older_ones_and_offers_no_half_one(
    pantry, forker, record_property
):
    store = Store.open(pantry.path, now=NOW)
    good = store.backup("manual", now=NOW)
    store.close()
    content = dump(pantry.path)
    tried = 0
    for number in range(1, 1000, 7):
        ended = forker.run("back_up_until_page", pantry.path, number)
        if ended.lines == ("done",):
            break
        assert ended.was_killed
        tried += 1
        (only,) = backups(pantry.path)
        assert only.path == good
    assert ended.lines == ("done",)
    assert len(backups(pantry.path)) == 2
    for info in backups(pantry.path):
        verify_backup(info)
        assert dump(info.path) == content
    left = sorted(entry.name for entry in backup_folder(pantry.path).iterdir())
    assert len(left) == 4
    assert tried > 3
    record_property("tried", tried)
