"""The quick look at the reminders: it sees what the store sees, and leaves no trace."""

from __future__ import annotations

import shutil
import sqlite3
from datetime import timedelta

import pytest

from brewdesk.store import duereader, schema
from brewdesk.store.duereader import DueTrouble, read_due
from brewdesk.store.records import CultureDraft, ReminderDraft
from brewdesk.store.store import Store
from culturecore.stages import CultureOrigin, CultureState, ReminderKind, ReminderState
from tests.helpers.fakes import DEFAULT_START


@pytest.fixture
def store(tmp_path):
    opened = Store.open(tmp_path / "pantry.brewdesk", now=DEFAULT_START)
    yield opened
    opened.close()


def draft(**fields):
    plain = {
        "batch_id": None,
        "kind": ReminderKind.OWN,
        "occurrence": "1",
        "due_at": DEFAULT_START + timedelta(microseconds=1),
        "text": "Buy tea",
    }
    return ReminderDraft(**(plain | fields))


def code_of(path, **options):
    with pytest.raises(DueTrouble) as caught:
        read_due(path, **options)
    return caught.value.code


def everything_in(folder):
    return {path.name: (path.read_bytes(), path.stat().st_mtime_ns) for path in folder.iterdir()}


def test_the_numbers_of_the_format_are_the_schemas():
    assert duereader.SCHEMA_NUMBER == schema.SCHEMA_NUMBER
    assert duereader.APPLICATION_ID == schema.APPLICATION_ID


def test_every_field_of_an_open_reminder_is_as_the_store_reads_it(store):
    with store.write() as unit:
        culture = unit.cultures.add(
            CultureDraft(
                name="Old Faithful",
                origin=CultureOrigin.GIFT,
                state=CultureState.RESTING,
                born_at=DEFAULT_START,
            )
        )
        unit.reminders.add(draft(text="Tee kaufen, ½ kg"))
        unit.reminders.add(
            draft(
                kind=ReminderKind.FEED,
                culture_id=culture.id,
                state=ReminderState.SNOOZED,
                snoozed_until=DEFAULT_START + timedelta(days=2),
                window_end=DEFAULT_START + timedelta(days=3),
                shown_at=DEFAULT_START,
                revision=4,
            )
        )
        for state in (ReminderState.DONE, ReminderState.DROPPED):
            unit.reminders.add(draft(state=state, occurrence=state.value))
        unit.settings.put("zone", "Europe/Berlin")
    with store.read() as unit:
        kept = unit.reminders.where(
            state=(ReminderState.WAITING, ReminderState.SNOOZED, ReminderState.SHOWN)
        )
    found = read_due(store.path)
    assert tuple(row.reminder for row in found.rows) == kept
    assert [row.subject_name for row in found.rows] == ["", "Old Faithful"]
    assert found.zone_name == "Europe/Berlin"
    assert not found.is_demo


def test_an_invented_pantry_is_known(tmp_path):
    Store.open(tmp_path / "demo", now=DEFAULT_START, is_demo=True).close()
    assert read_due(tmp_path / "demo").is_demo


def test_a_look_leaves_no_trace(store, tmp_path):
    with store.write() as unit:
        unit.reminders.add(draft())
    store.close()
    before = everything_in(tmp_path)
    read_due(store.path)
    assert everything_in(tmp_path) == before


def test_it_reads_a_file_that_may_only_be_read(store, tmp_path):
    store.path.chmod(0o400)
    assert read_due(store.path).rows == ()


def test_it_reads_beside_a_writer_and_sees_what_was_committed(store):
    with store.write() as unit:
        unit.reminders.add(draft())
        assert read_due(store.path, busy_timeout_s=0).rows == ()
    assert len(read_due(store.path).rows) == 1


def test_a_writer_at_the_moment_of_its_commit_is_told(store):
    connection = sqlite3.connect(store.path, isolation_level=None)
    connection.execute("BEGIN EXCLUSIVE")
    assert code_of(store.path, busy_timeout_s=0) == "locked"
    connection.close()


def test_a_change_that_broke_off_is_told_and_left_to_the_window(store, tmp_path):
    """As after a power cut: half the pages are written, the journal is there."""
    with store.write() as unit:
        for number in range(500):
            unit.reminders.add(draft(occurrence=str(number), text="x" * 500))
    connection = sqlite3.connect(store.path, isolation_level=None)
    connection.execute("PRAGMA cache_size=2")  # pages go to the file before the commit
    connection.execute("BEGIN")
    connection.execute("UPDATE reminder SET text = 'half done'")
    cut = tmp_path / "cut" / "pantry.brewdesk"
    cut.parent.mkdir()
    for end in ("", "-journal"):
        shutil.copyfile(f"{store.path}{end}", f"{cut}{end}")
    connection.close()
    before = everything_in(cut.parent)
    assert code_of(cut) == "interrupted"
    assert everything_in(cut.parent) == before
    Store.open(cut, now=DEFAULT_START).close()  # the window mends it
    assert {row.reminder.text for row in read_due(cut).rows} == {"x" * 500}


def test_what_is_no_pantry_is_told(tmp_path):
    assert code_of(tmp_path / "gone") == "no_store"
    assert code_of(tmp_path) == "not_a_store"
    text = tmp_path / "text"
    text.write_text("Dear diary " * 100, encoding="utf-8")
    assert code_of(text) == "not_a_store"
    empty = tmp_path / "empty"
    empty.touch()
    assert code_of(empty) == "damaged"
    other = tmp_path / "other"
    with sqlite3.connect(other) as connection:
        connection.execute("CREATE TABLE t (x)")
    connection.close()
    assert code_of(other) == "not_a_store"
    assert code_of(tmp_path / "text" / "below") == "no_store"
    assert code_of(tmp_path / "nul\0") == "unreadable"


@pytest.mark.parametrize(("number", "code"), [(1, "older"), (999, "newer")])
def test_a_pantry_of_another_schema_is_told_and_not_migrated(store, number, code):
    store.close()
    with sqlite3.connect(store.path) as connection:
        connection.execute(f"PRAGMA user_version={number}")
    connection.close()
    before = store.path.read_bytes()
    assert code_of(store.path) == code
    assert store.path.read_bytes() == before


def test_an_old_pantry_from_its_own_time_is_told(tmp_path, request):
    old = request.config.rootpath / "tests" / "upgrades" / "0001.sqlite"
    shutil.copyfile(old, tmp_path / "pantry")
    assert code_of(tmp_path / "pantry") == "older"


def test_a_file_cut_short_is_told(store):
    store.close()
    data = store.path.read_bytes()
    store.path.write_bytes(data[: len(data) // 3])
    assert code_of(store.path) in {"damaged", "unreadable"}
