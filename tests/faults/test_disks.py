"""Disks that are full, read-only or broken: told, nothing half-written, and then it goes on."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing

import pytest

from brewdesk.store.backup import backup_folder, backups, verify_backup
from brewdesk.store.store import Store
from tests.faults.disks import compiled, on_failing_disk, on_read_only_disk, on_small_disk
from tests.helpers.whole_pantry import everything
from tests.store.drafts import NOW

FILL_UP = "dd if=/dev/zero of={disk}/filler bs=4k 2>/dev/null; true"


@pytest.fixture
def disk(tmp_path):
    folder = tmp_path / "disk"
    folder.mkdir()
    return folder


@pytest.fixture(scope="session")
def failing_library(tmp_path_factory):
    return compiled(tmp_path_factory.mktemp("library"))


def small_disk(pantry, disk, *steps):
    """Follow steps in a pantry on a disk of 3 MB; return what was said, with the files left."""
    path = disk / "pantry.brewdesk"
    with on_small_disk(disk, "3m") as program:
        assert program.run("shell", f"cp {pantry.path} {path}").ended_well
        ended = program.run("follow", path, pantry.batch_id, *steps)
        listed = program.run("shell", f"cd {disk}; find . -type f | sort")
        program.run("shell", f"cp -r {disk} {disk}-kept")
    assert ended.ended_well
    return list(ended.lines), list(listed.lines), disk.with_name(disk.name + "-kept")


def test_a_full_disk_keeps_nothing_of_the_act_and_the_next_try_works(pantry, disk):
    said, files, kept = small_disk(
        pantry, disk, "count", f"$ {FILL_UP.format(disk=disk)}", "save 60000", "count",
        f"$ rm {disk}/filler", "save 60000", "count",
    )  # fmt: skip

    assert said == ["open", "0", "disk_full", "0", "kept", "60"]
    assert files == ["./pantry.brewdesk"]
    with closing(sqlite3.connect(kept / "pantry.brewdesk")) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]


def test_a_full_disk_takes_no_backup_and_the_older_one_stays(pantry, disk):
    said, files, kept = small_disk(
        pantry, disk, "backup", "save 10000", f"$ {FILL_UP.format(disk=disk)}", "backup",
        "count", f"$ rm {disk}/filler", "backup",
    )  # fmt: skip

    assert said == ["open", "backed up", "kept", "disk_full", "10", "backed up"]
    found = backups(kept / "pantry.brewdesk")
    assert len(found) == 2
    for info in found:
        verify_backup(info)
    assert len(files) == 1 + 2 * len(found)


def test_a_full_disk_leaves_no_stub_of_an_export_or_a_calendar(pantry, disk, tmp_path):
    target, calendar = f"{disk}/all.zip", f"{disk}/due.ics"
    said, files, _ = small_disk(
        pantry, disk, f"export {target}", f"calendar {calendar}",
        f"$ {FILL_UP.format(disk=disk)}", "export " + target, f"calendar {disk}/other.ics",
        f"$ rm {disk}/filler", f"export {target}",
    )  # fmt: skip

    assert said[:2] == ["open", "exported"]
    assert said[3] == "disk_full"
    assert said[4] != said[2]
    assert said[5] == "exported"
    assert files == ["./all.zip", "./due.ics", "./pantry.brewdesk"]


def test_a_read_only_disk_opens_to_be_looked_at(pantry, tmp_path):
    before = everything(pantry.path)
    with on_read_only_disk(pantry.path.parent) as program:
        ended = program.run("follow", pantry.path, pantry.batch_id, "save 1000", "count", "backup")

    assert ended.lines == ("open to look at", "read_only", "0", "read_only")
    assert everything(pantry.path) == before
    assert [entry.name for entry in pantry.path.parent.iterdir()] == ["pantry.brewdesk"]


@pytest.mark.parametrize(
    ("letter", "code"),
    [("s", "io_error"), ("w", "io_error"), ("f", "disk_full"), ("r", "read_only")],
    ids=["fsync fails", "write fails", "no space", "turned read-only"],
)
def test_a_disk_that_fails_while_open_is_told_and_the_next_try_works(
    pantry, disk, tmp_path, failing_library, letter, code
):
    path, switch = disk / "pantry.brewdesk", tmp_path / "switch"
    shutil.copy(pantry.path, path)
    with on_failing_disk(failing_library, disk, switch) as program:
        ended = program.run(
            "follow", path, pantry.batch_id, "save 3000", f"$ echo {letter} >{switch}",
            "save 3000", f"$ rm {switch}", "count", "save 3000", "count",
        )  # fmt: skip

    assert ended.lines == ("open", "kept", code, "3", "kept", "6")
    Store.open(path, now=NOW).close()
    assert [entry.name for entry in disk.iterdir()] == ["pantry.brewdesk"]


@pytest.mark.parametrize("letter", ["s", "w", "f"])
def test_a_disk_that_fails_during_a_backup_leaves_none(
    pantry, disk, tmp_path, failing_library, letter
):
    path, switch = disk / "pantry.brewdesk", tmp_path / "switch"
    shutil.copy(pantry.path, path)
    with on_failing_disk(failing_library, disk, switch) as program:
        ended = program.run(
            "follow", path, pantry.batch_id, "backup", f"$ echo {letter} >{switch}",
            "backup", f"$ rm {switch}", "save 1000", "backup",
        )  # fmt: skip

    code = {"s": "io_error", "w": "io_error", "f": "disk_full"}[letter]
    assert ended.lines == ("open", "backed up", code, "kept", "backed up")
    assert len(list(backup_folder(path).iterdir())) == 4
    for info in backups(path):
        verify_backup(info)


def test_each_save_has_the_disk_keep_the_file_and_the_end_of_its_journal(
    pantry, disk, tmp_path, failing_library
):
    """A power cut cannot be caused here; that all was handed to the disk in order can be seen."""
    path, log = disk / "pantry.brewdesk", tmp_path / "calls"
    shutil.copy(pantry.path, path)
    with on_failing_disk(failing_library, disk, tmp_path / "switch", log) as program:
        ended = program.run("follow", path, pantry.batch_id, f"$ : >{log}", "save 3000")

    assert ended.lines == ("open", "kept")
    calls = log.read_text().splitlines()
    journal = f"{path}-journal"
    assert calls.index(f"fsync {journal}") < calls.index(f"fsync {path}")
    gone = calls.index(f"unlink {journal}")
    assert calls.index(f"fsync {path}") < gone
    assert f"fsync {disk}" in calls[:gone]  # the journal's name is on the disk before it is needed
    assert f"fsync {disk}" in calls[gone:]  # and its end, before the act is acknowledged
