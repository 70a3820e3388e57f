"""Restoring exchanges whole files, survives being cut off, and deletes nothing."""

from __future__ import annotations

import os
from contextlib import suppress
from datetime import timedelta

import pytest

from brewdesk.store import files, restore
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.restore import restore_backup
from brewdesk.store.store import Store
from tests.helpers.dump import dump
from tests.store.drafts import NOW, PLACE

LATER = NOW + timedelta(days=3)


@pytest.fixture
def backed_up(store, shelf):
    """A closed store with a backup and a place added since: path, backup, both dumps."""
    store.backup("manual", now=NOW)
    (info,) = store.backups()
    with store.write() as unit:
        unit.places.add(PLACE)
    store.close()
    return store.path, info, dump(info.path), dump(store.path)


def test_a_backup_takes_the_place_of_the_store_which_is_set_aside(backed_up):
    path, info, old, new = backed_up

    aside = restore_backup(path, info, now=LATER)

    assert dump(path) == old != new
    assert dump(aside) == new
    Store.open(path, now=LATER).close()
    assert sorted(entry.name for entry in path.parent.iterdir()) == [
        "backups",
        "pantry.sqlite",
        "set-aside",
    ]
    assert path.stat().st_mode & 0o777 == 0o600


def test_a_damaged_store_and_its_journal_are_set_aside_together(backed_up):
    path, info, old, _ = backed_up
    path.write_bytes(b"ruined")
    journal = path.with_name(path.name + "-journal")
    journal.write_bytes(b"the journal of the ruin")

    aside = restore_backup(path, info, now=LATER)

    assert aside.read_bytes() == b"ruined"
    assert aside.with_name(journal.name).read_bytes() == b"the journal of the ruin"
    Store.open(path, now=LATER).close()
    assert dump(path) == old


def test_a_missing_store_is_restored(backed_up):
    path, info, old, _ = backed_up
    path.unlink()

    assert restore_backup(path, info, now=LATER) is None
    assert dump(path) == old


def test_a_damaged_backup_is_refused_and_the_store_stays(backed_up):
    path, info, _, new = backed_up
    content = bytearray(info.path.read_bytes())
    content[-1] ^= 1
    info.path.write_bytes(content)

    with pytest.raises(StoreTrouble) as caught:
        restore_backup(path, info, now=LATER)

    assert caught.value.code == "damaged"
    assert dump(path) == new


class CutOff(BaseException):
    """Stands for the end of the program at a certain rename."""


@pytest.mark.parametrize(("renames", "is_decided"), [(0, False), (1, True), (2, True), (3, True)])
def test_a_restore_cut_off_at_any_rename_ends_with_one_whole_store(
    backed_up, monkeypatch, renames, is_decided
):
    path, info, old, new = backed_up
    path.with_name(path.name + "-shm").write_bytes(b"")  # a second file to move
    really_replace = os.replace
    left = iter(range(renames))

    def replace(source, target):
        if next(left, None) is None:
            raise CutOff
        really_replace(source, target)

    for module in (files.os, restore.os):
        monkeypatch.setattr(module, "replace", replace)
    with suppress(CutOff):
        restore_backup(path, info, now=LATER)
    monkeypatch.undo()

    Store.open(path, now=LATER).close()

    assert dump(path) == (old if is_decided else new)
    assert not path.with_name(path.name + ".restored").exists()
