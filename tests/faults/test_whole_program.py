"""The program as the maker starts it, while things go wrong around it."""

from __future__ import annotations

import shutil
import signal
from dataclasses import replace
from pathlib import Path

import pytest

from brewdesk.store.backup import backups
from brewdesk.store.store import Store
from tests.faults.disks import own_mounts
from tests.faults.wholeprogram import WholeProgram, run
from tests.helpers.whole_pantry import everything
from tests.store.drafts import NOW, reading_draft


@pytest.fixture
def state(tmp_path):
    """Folders of the program's own for one test, by their variables."""
    return {
        "XDG_STATE_HOME": str(tmp_path / "state-home"),
        "XDG_DATA_HOME": str(tmp_path / "data-home"),
    }


def log_of(state) -> str:
    return (Path(state["XDG_STATE_HOME"]) / "brewdesk" / "brewdesk.log").read_text()


def add_readings(path, batch_id, count):
    store = Store.open(path, now=NOW)
    with store.write() as unit:
        for number in range(count):
            unit.readings.add(replace(reading_draft(batch_id), entered=f"reading {number}"))
    store.close()


def test_a_damaged_pantry_is_explained_and_its_backup_put_back_in_the_window(pantry, state):
    store = Store.open(pantry.path, now=NOW)
    store.backup("manual", now=NOW)
    store.close()
    content = everything(pantry.path)
    pantry.path.write_bytes(pantry.path.read_bytes()[:40960])

    code, program = run(
        ["say recovery_inside", "click recovery_restore", "begun", "leave"], pantry.path, **state
    )

    assert code == 0, program.complaints
    assert "Checked: sound" in program.said[0]
    assert [line for line in everything(pantry.path) if line.startswith("act:")] == [
        line for line in content if line.startswith("act:")
    ]
    assert list((pantry.path.parent / "set-aside").glob("*/pantry.brewdesk"))


def test_a_damaged_pantry_without_backup_is_rescued_in_the_window(pantry, state):
    add_readings(pantry.path, pantry.batch_id, 400)
    raw = bytearray(pantry.path.read_bytes())
    page = raw.index(b"reading 200") // 4096 * 4096
    raw[page : page + 4096] = b"\xa5" * 4096
    pantry.path.write_bytes(raw)

    code, program = run(
        ["click recovery_rescue", "say rescue_words", "click rescue_use", "begun", "leave"],
        pantry.path,
        **state,
    )

    assert code == 0, program.complaints
    assert "rows could be read" in program.said[0]
    assert "readings: " in program.said[0]
    store = Store.open(pantry.path, now=NOW)
    with store.read() as unit:
        assert 300 < len(unit.readings.where()) < 400
    store.close()
    (aside,) = (pantry.path.parent / "set-aside").glob("*/pantry.brewdesk")
    assert aside.read_bytes() == bytes(raw)


def test_a_new_pantry_in_the_place_of_a_ruin_takes_two_presses_and_keeps_the_ruin(pantry, state):
    ruin = b"\xa5" * 90_000
    pantry.path.write_bytes(ruin)

    code, program = run(
        ["click recovery_new", "click recovery_new", "begun", "leave"], pantry.path, **state
    )

    assert code == 0, program.complaints
    (aside,) = (pantry.path.parent / "set-aside").glob("*/pantry.brewdesk")
    assert aside.read_bytes() == ruin
    store = Store.open(pantry.path, now=NOW)
    with store.read() as unit:
        assert unit.vessels.where() == ()
    store.close()


def test_going_back_to_a_backup_in_the_window_and_forward_again(pantry, state):
    store = Store.open(pantry.path, now=NOW)
    store.backup("manual", now=NOW)
    store.close()
    before = {line for line in everything(pantry.path) if line.startswith("reading")}
    add_readings(pantry.path, pantry.batch_id, 5)
    after = {line for line in everything(pantry.path) if line.startswith("reading")}

    code, program = run(
        [
            "begun", "menu backups", "say backups_inside", "say backups_lost",
            "click backups_restore", "click backups_really", "notice", "leave",
        ],
        pantry.path,
        **state,
    )  # fmt: skip

    assert code == 0, program.complaints
    assert "Checked: sound" in program.said[0]
    assert "This is your pantry as it was backed up" in program.said[-1]
    assert {line for line in everything(pantry.path) if line.startswith("reading")} == before
    newest, *_ = backups(pantry.path)
    assert newest.reason == "before-restore"
    assert {line for line in everything(newest.path) if line.startswith("reading")} == after


def test_a_session_that_ends_closes_the_program_in_order(pantry, state):
    acts = [line for line in everything(pantry.path) if line.startswith(("act:", "reading:"))]
    for number in (signal.SIGTERM, signal.SIGHUP, signal.SIGINT):
        program = WholeProgram(["begun"], ["--store", str(pantry.path)], **state)
        program.until("begun")
        program.signal(number)
        assert program.ended() == 0, program.complaints
        assert not pantry.path.with_name(pantry.path.name + ".lock").exists()
    again, program = run(["begun", "leave"], pantry.path, **state)
    assert again == 0
    left = [line for line in everything(pantry.path) if line.startswith(("act:", "reading:"))]
    assert left == acts
    assert "did not end in order" not in log_of(state)


def test_a_breakdown_leaves_its_trace_and_is_told_once_by_the_next_start(pantry, state):
    before = everything(pantry.path)
    program = WholeProgram(["begun", "abort"], ["--store", str(pantry.path)], **state)
    assert program.ended() == -signal.SIGABRT
    (kept,) = (Path(state["XDG_STATE_HOME"]) / "brewdesk").glob("crash-*.log")
    crash = kept.read_text()
    assert "Fatal Python error: Aborted" in crash
    assert "driven.py" in crash

    code, program = run(
        ["begun", "notice", "say crash_words", "read crash_text", "click crash_close", "leave"],
        pantry.path,
        **state,
    )
    assert code == 0, program.complaints
    assert "did not end in order" in program.said[0]
    assert "broke down last time" in program.said[1]
    report = program.said[2]
    assert "Fatal Python error: Aborted" in report
    assert "tests/faults/driven.py, line " in report
    assert "in _abort" in report
    assert str(Path.home()) not in report
    assert "Tall jar" not in report
    acts = [line for line in before if line.startswith("act:")]
    assert [line for line in everything(pantry.path) if line.startswith("act:")] == acts

    code, quiet = run(["begun", "windows", "leave"], pantry.path, **state)
    assert code == 0
    assert quiet.said == ["main_window"]
    assert not (Path(state["XDG_STATE_HOME"]) / "brewdesk").joinpath("running").exists()
    assert list((Path(state["XDG_STATE_HOME"]) / "brewdesk").glob("running-*")) == []


def test_an_error_in_the_program_is_told_and_the_program_goes_on(pantry, state):
    code, program = run(
        ["begun", "trip", "notice", "read crash_text", "click crash_close", "windows", "leave"],
        pantry.path,
        **state,
    )

    assert code == 0
    assert "the jar is not round" in program.said[0]
    assert "What was saved before is safe" in program.said[0]
    assert "ValueError: the jar is not round" in log_of(state)


def test_a_folder_that_cannot_be_made_is_named_with_what_chose_it(tmp_path, state):
    (tmp_path / "data-home").write_text("a file where the folder should be")

    program = WholeProgram(["box"], [], **state)
    code = program.ended()

    assert code == 2
    assert "Traceback" not in program.complaints
    assert str(tmp_path / "data-home" / "brewdesk") in program.said[0]
    assert "XDG_DATA_HOME" in program.said[0]


def test_a_lock_of_another_computer_is_explained_and_never_broken(pantry, state):
    lock = pantry.path.with_name(pantry.path.name + ".lock")
    held = "4242\npython3\nan-invented-laptop\nsome id\nsome boot\n"
    lock.write_text(held)

    code, program = run(["box"], pantry.path, **state)

    assert code == 2
    assert "an-invented-laptop" in program.said[0]
    assert str(lock) in program.said[0]
    assert lock.read_text() == held


def test_a_read_only_disk_opens_the_window_to_look_at_and_to_copy(pantry, state, tmp_path):
    shelf = tmp_path / "disk"
    shelf.mkdir()
    path = Path(shutil.copy(pantry.path, shelf / "pantry.brewdesk"))
    before = path.read_bytes()
    mounts = own_mounts(f"mount --bind '{shelf}' '{shelf}'", f"mount -o remount,ro,bind '{shelf}'")

    code, program = run(["begun", "notice", "leave"], path, *mounts, **state)

    assert code == 0, program.complaints
    assert "to be looked at only" in program.said[0]
    assert "Traceback" not in program.complaints
    assert path.read_bytes() == before


@pytest.mark.parametrize("locale", ["C", "POSIX", "xx_YY.UTF-8", "ar_EG.UTF-8", "de_DE.UTF-8"])
def test_the_program_starts_whatever_the_locale(pantry, state, locale):
    code, program = run(["begun", "leave"], pantry.path, **state, LC_ALL=locale, LANG=locale)

    assert code == 0, program.complaints
    assert "Traceback" not in program.complaints


def test_a_log_on_a_full_disk_keeps_nobody_out(pantry, state, tmp_path):
    Path(state["XDG_STATE_HOME"]).mkdir()
    folder = state["XDG_STATE_HOME"]
    mounts = own_mounts(
        f"mount -t tmpfs -o size=64k none '{folder}'",
        f"mkdir '{folder}/brewdesk'",
        f"{{ dd if=/dev/zero of='{folder}/filler' bs=4k 2>/dev/null || true; }}",
    )

    code, program = run(["begun", "trip", "notice", "leave"], pantry.path, *mounts, **state)

    assert code == 0, program.complaints
    assert "the jar is not round" in program.said[0]
