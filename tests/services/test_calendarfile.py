"""The calendar file, read back by two parsers: vobject, which shares no code with its writer,
and icalendar itself.
"""

from __future__ import annotations

import os
import stat
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import icalendar
import pytest
import vobject
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.calendarfile import (
    PRODUCT_ID,
    CalendarTrouble,
    Entry,
    calendar_bytes,
    entry_of,
    says_the_same,
    settled_entries,
    uid_of,
    write_calendar,
)
from brewdesk.services.plaintext import plain_line
from brewdesk.services.reminder_rules import wall_instant
from brewdesk.services.reminders import DueItem, Reminders
from brewdesk.store.records import Reminder
from culturecore.stages import ReminderKind, ReminderState
from tests.helpers.fakes import DEFAULT_START

PANTRY = "0123456789abcdef0123456789abcdef"
NOW = DEFAULT_START
ENTRY = Entry(
    uid="batch-1.taste.1@x.brewdesk",
    sequence=3,
    at=datetime(2026, 12, 3, 8, 0, tzinfo=UTC),
    summary="Taste Black tea 1",
    description="Measure the pH first.",
    category="Tasting",
)


def reminder(**fields):
    plain = {
        "id": 1,
        "batch_id": 1,
        "kind": ReminderKind.TASTE,
        "occurrence": "1",
        "due_at": NOW,
    }
    return Reminder(**(plain | fields))


def item(title="Taste it", body="Measure first.", due_at=NOW, **fields):
    return DueItem(
        reminder=reminder(**fields),
        batch=None,
        vessel=None,
        title=title,
        body=body,
        due_at=due_at,
        is_due=False,
        lateness=timedelta(0),
        when_text="",
    )


def by_stranger(data):
    """Return the events that vobject reads."""
    calendar = vobject.readOne(data.decode("utf-8"))
    return list(calendar.contents.get("vevent", []))


def only(data):
    (event,) = by_stranger(data)
    return event


def test_a_stranger_reads_every_field_back():
    data = calendar_bytes([ENTRY], stamped_at=NOW)
    calendar = vobject.readOne(data.decode())
    event = only(data)
    assert calendar.prodid.value == PRODUCT_ID
    assert calendar.version.value == "2.0"
    assert event.uid.value == ENTRY.uid
    assert event.sequence.value == "3"
    assert event.dtstart.value == ENTRY.at
    assert event.dtstamp.value == NOW
    assert event.duration.value == timedelta(minutes=15)
    assert event.summary.value == ENTRY.summary
    assert event.description.value == ENTRY.description
    assert event.categories.value == ["Tasting"]
    assert event.status.value == "CONFIRMED"
    assert event.transp.value == "TRANSPARENT"
    assert event.valarm.action.value == "DISPLAY"
    assert event.valarm.trigger.value == timedelta(0)
    assert event.valarm.description.value == ENTRY.summary


def test_what_is_settled_is_struck_out_and_rings_no_more():
    event = only(calendar_bytes([replace(ENTRY, is_settled=True)], stamped_at=NOW))
    assert event.status.value == "CANCELLED"
    assert "valarm" not in event.contents


def test_the_deadline_for_chilling_comes_before_the_rest():
    urgent = entry_of(item(kind=ReminderKind.CHILL), PANTRY)
    assert only(calendar_bytes([urgent], stamped_at=NOW)).priority.value == "1"
    assert "priority" not in only(calendar_bytes([ENTRY], stamped_at=NOW)).contents


def test_an_empty_list_is_still_a_calendar():
    calendar = vobject.readOne(calendar_bytes([], stamped_at=NOW).decode())
    assert "vevent" not in calendar.contents
    assert list(calendar.components())  # section 3.6: one at least


@pytest.mark.parametrize(
    "hostile",
    [
        "x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:evil\r\nSUMMARY:y",
        "x\nATTACH:file:///etc/passwd",
        "<b>bold</b> & <script>alert(1)</script>",
        'a,b;c:d\\n\\,"quoted"',
        "\u202eevil\u202c and طعم الجرة and טעם",
        "\x00\x1b[31m\ud800\x7f",
        "word " * 2_000,
        "é" * 10_000,
        "👩\u200d🍳" * 100,
    ],
)
def test_hostile_text_stays_text(hostile):
    entry = entry_of(item(title=hostile, body=hostile), PANTRY)
    data = calendar_bytes([entry, replace(ENTRY)], stamped_at=NOW)
    first, second = by_stranger(data)
    assert first.uid.value == entry.uid
    assert first.summary.value == plain_line(hostile, 200) or first.summary.value == "Tasting"
    assert plain_line(hostile) in first.description.value
    assert "attach" not in first.contents
    assert second.uid.value == ENTRY.uid
    own = icalendar.Calendar.from_ical(data).walk("VEVENT")
    assert [str(each["SUMMARY"]) for each in own] == [first.summary.value, second.summary.value]


@given(
    title=st.text(st.characters(exclude_categories=()), max_size=400),
    body=st.text(st.characters(exclude_categories=()), max_size=400),
    occurrence=st.text(st.characters(exclude_categories=()), min_size=1, max_size=40),
)
def test_any_text_comes_back_from_both_parsers(title, body, occurrence):
    entry = entry_of(item(title=title, body=body, occurrence=occurrence), PANTRY)
    data = calendar_bytes([entry], stamped_at=NOW)
    event = only(data)
    (own,) = icalendar.Calendar.from_ical(data).walk("VEVENT")
    assert event.summary.value == entry.summary == str(own["SUMMARY"])
    told = event.description.value if entry.description else ""
    assert told == entry.description
    assert event.uid.value == entry.uid == str(own["UID"])
    assert own["DTSTART"].dt == NOW


@given(st.lists(st.text(st.characters(exclude_categories=()), max_size=300), max_size=4))
def test_lines_are_folded_at_75_octets_and_end_as_the_standard_says(texts):
    entries = [
        entry_of(item(title=text, body=text, occurrence=str(number)), PANTRY)
        for number, text in enumerate(texts)
    ]
    data = calendar_bytes(entries, stamped_at=NOW)
    assert data.endswith(b"END:VCALENDAR\r\n")
    lines = data.split(b"\r\n")
    assert max(map(len, lines)) <= 75
    for line in lines:
        assert not any(byte < 0x20 or byte == 0x7F for byte in line)
        line.decode("utf-8")  # no character is cut in two


def test_an_entry_is_named_by_what_it_is_about_and_not_by_its_row():
    one = reminder(id=5, occurrence="2026-11-26")
    assert uid_of(one, PANTRY) == uid_of(replace(one, id=99, revision=4), PANTRY)
    others = (
        replace(one, batch_id=2),
        replace(one, batch_id=None, culture_id=1),
        replace(one, batch_id=None, bottling_id=1),
        replace(one, batch_id=None),
        replace(one, kind=ReminderKind.MOLD_LOOK),
        replace(one, occurrence="2026-11-27"),
        replace(one, occurrence="2026_11-26"),
    )
    names = {uid_of(each, PANTRY) for each in (one, *others)} | {uid_of(one, "f" * 32)}
    assert len(names) == len(others) + 2


@given(st.text(min_size=1, max_size=60), st.text(min_size=1, max_size=60))
def test_two_occurrences_never_share_a_name(one, other):
    are_same = uid_of(reminder(occurrence=one), PANTRY) == uid_of(
        reminder(occurrence=other), PANTRY
    )
    assert are_same == (one == other)


# The days on which the clocks change, from the IANA time zone database.
@pytest.mark.parametrize(
    ("zone", "day", "utc"),
    [
        ("Europe/Berlin", (2026, 3, 28), "20260328T080000Z"),
        ("Europe/Berlin", (2026, 3, 29), "20260329T070000Z"),
        ("Europe/Berlin", (2026, 10, 25), "20261025T080000Z"),
        ("America/New_York", (2026, 3, 8), "20260308T130000Z"),
        ("Australia/Lord_Howe", (2026, 4, 5), "20260404T223000Z"),
        ("Asia/Kathmandu", (2026, 6, 1), "20260601T031500Z"),
        ("Pacific/Kiritimati", (2026, 6, 1), "20260531T190000Z"),
    ],
)
def test_nine_in_the_morning_is_the_right_instant_everywhere(zone, day, utc):
    nine = datetime(*day, 9, 0).time()
    due_at = wall_instant(datetime(*day).date(), nine, ZoneInfo(zone))
    data = calendar_bytes([entry_of(item(due_at=due_at), PANTRY)], stamped_at=NOW)
    assert f"DTSTART:{utc}\r\n".encode() in data
    assert only(data).dtstart.value.astimezone(ZoneInfo(zone)).replace(tzinfo=None) == datetime(
        *day, 9, 0
    )


def test_an_instant_given_in_another_zone_is_written_in_utc():
    at = datetime(2026, 7, 1, 12, 0, tzinfo=ZoneInfo("America/Sao_Paulo"))
    assert only(calendar_bytes([replace(ENTRY, at=at)], stamped_at=at)).dtstart.value == at


def test_no_entry_rings_before_its_time():
    at = NOW + timedelta(microseconds=1)
    assert only(calendar_bytes([replace(ENTRY, at=at)], stamped_at=NOW)).dtstart.value >= at


def test_two_files_that_differ_in_the_stamp_alone_say_the_same():
    one = calendar_bytes([ENTRY], stamped_at=NOW)
    later = calendar_bytes([ENTRY], stamped_at=NOW + timedelta(hours=1))
    moved = calendar_bytes([replace(ENTRY, sequence=4)], stamped_at=NOW)
    assert one != later
    assert says_the_same(one, later)
    assert not says_the_same(one, moved)


# on a store


@pytest.fixture
def reminders(kit):
    return Reminders(kit.door)


def settled(kit, now=None):
    with kit.store.read() as unit:
        return settled_entries(unit, PANTRY, now or kit.clock.now())


def test_a_snoozed_reminder_stands_where_it_was_put(kit, reminders):
    kept = reminders.add_own(None, kit.clock.now() + timedelta(hours=1), "Buy tea")
    (before,) = [entry_of(each, PANTRY) for each in reminders.listed()]
    reminders.snooze(kept.id, kit.clock.now() + timedelta(days=2))
    (after,) = [entry_of(each, PANTRY) for each in reminders.listed()]
    assert after.uid == before.uid
    assert after.at == kit.clock.now() + timedelta(days=2)


def test_what_is_ticked_off_is_cancelled_under_its_old_name_and_taken_back_opens_again(
    kit, reminders
):
    kept = reminders.add_own(None, kit.clock.now() + timedelta(days=1), "Buy tea")
    (told,) = [entry_of(each, PANTRY) for each in reminders.listed()]
    reminders.done(kept.id)
    (gone,) = settled(kit)
    assert (gone.uid, gone.is_settled, gone.summary) == (told.uid, True, "Buy tea")
    assert reminders.listed() == ()

    kit.history.undo()

    assert settled(kit) == ()
    assert [entry_of(each, PANTRY) for each in reminders.listed()] == [told]


def test_a_reminder_that_is_made_again_keeps_its_name(kit, reminders):
    kit.souring()
    reminders.sync()
    first = {entry_of(each, PANTRY).uid for each in reminders.listed()}
    ids = {each.reminder.id for each in reminders.listed()}
    with kit.store.write() as unit:
        for row_id in ids:
            unit.reminders.remove(row_id)
    kit.changes.announce(kit.heard[-1].topics)
    reminders = Reminders(kit.door)
    reminders.sync()
    assert {each.reminder.id for each in reminders.listed()}.isdisjoint(ids)
    assert {entry_of(each, PANTRY).uid for each in reminders.listed()} == first


def test_the_end_of_a_batch_cancels_what_it_wanted_by_name(kit, reminders):
    batch = kit.souring()
    reminders.sync()
    told = {entry_of(each, PANTRY).uid for each in reminders.listed()}
    assert told
    kit.batches.discard(batch.id, "spilled")
    reminders.sync()
    gone = settled(kit)
    assert {each.uid for each in gone} == told
    assert all(batch.name in each.summary for each in gone)


def test_after_ninety_days_nobody_needs_to_hear_of_it(kit, reminders):
    kept = reminders.add_own(None, kit.clock.now() + timedelta(hours=1), "Buy tea")
    reminders.done(kept.id)
    assert len(settled(kit, kit.clock.now() + timedelta(days=90))) == 1
    assert settled(kit, kit.clock.now() + timedelta(days=91)) == ()


# on the disk


def test_the_file_is_whole_and_for_its_owner_alone(tmp_path):
    path = tmp_path / "due.ics"
    path.write_bytes(b"old")
    path.chmod(0o644)
    write_calendar(path, b"new")
    assert path.read_bytes() == b"new"
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert os.listdir(tmp_path) == ["due.ics"]


def test_a_folder_that_is_gone_is_told(tmp_path):
    with pytest.raises(CalendarTrouble):
        write_calendar(tmp_path / "gone" / "due.ics", b"new")


def test_dropped_and_done_alike(kit, reminders):
    with kit.store.write() as unit:
        for state in (ReminderState.DONE, ReminderState.DROPPED, ReminderState.WAITING):
            unit.reminders.add(
                reminder_draft(state=state, occurrence=state.value, due_at=kit.clock.now())
            )
    assert {each.uid.split(".")[2].split("@")[0] for each in settled(kit)} == {"done", "dropped"}


def reminder_draft(**fields):
    from brewdesk.store.records import ReminderDraft

    return ReminderDraft(**({"batch_id": None, "kind": ReminderKind.OWN, "text": "x"} | fields))
