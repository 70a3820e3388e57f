"""The due list as an iCalendar file, for calendars that read one.

RFC 5545 (https://www.rfc-editor.org/rfc/rfc5545) is the format, RFC 5546 what a calendar
does with an entry it knows already: the higher SEQUENCE wins, among equals the later DTSTAMP.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any

from brewdesk.services.plaintext import plain_line
from brewdesk.services.reminders import DueItem
from brewdesk.services.wholefile import NotWrittenError, write_whole
from brewdesk.services.wording.calendar import calendar_name, category_words, settled_words
from brewdesk.store.records import Reminder
from culturecore.stages import ReminderKind, ReminderState

if TYPE_CHECKING:
    from icalendar import Event, Timezone

    from brewdesk.store.rows import ReadRows
    from brewdesk.store.unitofwork import ReadUnit

PRODUCT_ID = "-//brewdesk//due list 1//EN"
TOLD_AS_CANCELLED = timedelta(days=90)
LASTS = timedelta(minutes=15)
SUMMARY_LENGTH_HIGH = 200  # calendars show a line; the whole stands in the description
SETTLED_STATES = (ReminderState.DONE, ReminderState.DROPPED)
_MARK = b"DTSTAMP"


class CalendarTrouble(Exception):  # noqa: N818  # a state of the disk to tell, not a bug
    """The file could not be written; ``detail`` is what the system said."""

    def __init__(self, path: Path, detail: str) -> None:
        self.path = path
        self.detail = detail
        super().__init__(f"{path}: {detail}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One reminder as a calendar shows it.

    ``uid`` is the same for the same reminder in every file ever written of a pantry.
    ``at`` is the instant it is due (the end of a snooze, if there is one).
    """

    uid: str
    sequence: int
    at: datetime
    summary: str
    description: str
    category: str
    is_settled: bool = False
    is_urgent: bool = False


def uid_of(reminder: Reminder, pantry_uid: str) -> str:
    """Name a reminder for calendars: by what it is about, its kind and its occurrence.

    The reminder's own number is no part of it: one that is made again after its batch was
    taken back gets another. Numbers of batches, cultures and bottlings return with undo.
    """
    subjects = (
        ("batch", reminder.batch_id),
        ("culture", reminder.culture_id),
        ("bottling", reminder.bottling_id),
    )
    about = next((f"{kind}-{number}" for kind, number in subjects if number is not None), "own")
    occurrence = "".join(
        character if character.isalnum() and character.isascii() else f"_{ord(character):x}_"
        for character in reminder.occurrence
    )
    return f"{about}.{reminder.kind.value}.{occurrence}@{pantry_uid}.brewdesk"


def entry_of(item: DueItem, pantry_uid: str) -> Entry:
    """Return an open reminder as a calendar's entry."""
    row = item.reminder
    title, body = plain_line(item.title), plain_line(item.body)
    is_cut = len(title) > SUMMARY_LENGTH_HIGH
    return Entry(
        uid=uid_of(row, pantry_uid),
        sequence=row.revision,
        at=item.due_at,
        summary=plain_line(title, SUMMARY_LENGTH_HIGH) or category_words(row.kind),
        description="\n".join(part for part in (title if is_cut else "", body) if part),
        category=category_words(row.kind),
        is_urgent=row.kind is ReminderKind.CHILL,
    )


def settled_entries(unit: ReadUnit, pantry_uid: str, now: datetime) -> tuple[Entry, ...]:
    """Return what was ticked off or fell away in the last 90 days.

    A calendar that was told of it before then strikes it out; older ones it keeps.
    """
    since = now - TOLD_AS_CANCELLED
    rows = [
        row
        for row in unit.reminders.where(state=SETTLED_STATES, order_by=("due_at", "id"))
        if max(row.due_at, row.done_at or row.due_at) >= since
    ]
    batches = _names(unit.batches, (row.batch_id for row in rows))
    cultures = _names(unit.cultures, (row.culture_id for row in rows))
    bottlings = _names(unit.bottlings, (row.bottling_id for row in rows))
    found = []
    for row in rows:
        name = (
            batches.get(row.batch_id)
            or cultures.get(row.culture_id)
            or bottlings.get(row.bottling_id, "")
        )
        own = row.text if row.kind is ReminderKind.OWN else ""
        found.append(
            Entry(
                uid=uid_of(row, pantry_uid),
                sequence=row.revision,
                at=row.due_at,
                summary=plain_line(settled_words(row.kind, name, own), SUMMARY_LENGTH_HIGH),
                description="",
                category=category_words(row.kind),
                is_settled=True,
            )
        )
    return tuple(found)


def _names(rows: ReadRows[Any], ids: Iterable[int | None]) -> dict[int | None, str]:
    wanted = {row_id for row_id in ids if row_id is not None}
    return {row.id: row.name for row in rows.where(id=wanted)} if wanted else {}


def calendar_bytes(entries: Iterable[Entry], *, stamped_at: datetime) -> bytes:
    """Write entries as an iCalendar file: CRLF line ends, lines of at most 75 octets.

    Parameters
    ----------
    entries
        What to write; of two with the same name the first counts.
    stamped_at
        The instant for which they hold (DTSTAMP).
    """
    from icalendar import Calendar

    calendar = Calendar()
    calendar.add("prodid", PRODUCT_ID)
    calendar.add("version", "2.0")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("x-wr-calname", plain_line(calendar_name()))  # no standard, but widely read
    by_uid: dict[str, Entry] = {}
    for entry in entries:
        by_uid.setdefault(entry.uid, entry)
    for entry in by_uid.values():
        calendar.add_component(_event(entry, stamped_at.astimezone(UTC)))
    if not by_uid:
        calendar.add_component(_utc_zone())  # section 3.6: a calendar holds one thing at least
    return bytes(calendar.to_ical())


def _utc_zone() -> Timezone:
    from icalendar import Timezone, TimezoneStandard

    zone, standard = Timezone(), TimezoneStandard()
    zone.add("tzid", "UTC")
    standard.add("dtstart", datetime(1970, 1, 1))
    standard.add("tzoffsetfrom", timedelta(0))
    standard.add("tzoffsetto", timedelta(0))
    zone.add_component(standard)
    return zone


def _event(entry: Entry, stamped_at: datetime) -> Event:
    from icalendar import Alarm, Event

    event = Event()
    event.add("uid", entry.uid)
    event.add("dtstamp", stamped_at.replace(microsecond=0))
    event.add("sequence", entry.sequence)
    event.add("dtstart", _whole_second(entry.at))
    event.add("duration", LASTS)
    event.add("summary", entry.summary)
    if entry.description:
        event.add("description", entry.description)
    event.add("categories", [entry.category])
    event.add("status", "CANCELLED" if entry.is_settled else "CONFIRMED")
    event.add("transp", "TRANSPARENT")  # it asks for minutes, it takes nobody's afternoon
    if entry.is_urgent:
        event.add("priority", 1)
    if not entry.is_settled:
        alarm = Alarm()
        alarm.add("action", "DISPLAY")
        alarm.add("description", entry.summary)
        alarm.add("trigger", timedelta(0))
        event.add_component(alarm)
    return event


def _whole_second(instant: datetime) -> datetime:
    """Return the instant in UTC, up to the next whole second: iCalendar knows no parts of one."""
    whole = instant.astimezone(UTC).replace(microsecond=0)
    return whole if whole == instant else whole + timedelta(seconds=1)


def says_the_same(one: bytes, other: bytes) -> bool:
    """Whether two files differ in nothing but the instant they were written."""
    return _without_stamps(one) == _without_stamps(other)


def _without_stamps(data: bytes) -> list[bytes]:
    return [line for line in data.splitlines() if not line.startswith(_MARK)]


def write_calendar(path: Path, data: bytes) -> None:
    """Put ``data`` in the place of ``path``, whole or not at all, for the maker alone to read.

    Raises
    ------
    CalendarTrouble
        If the system does not take it; what stood there stays.
    """
    try:
        write_whole(path, data)
    except NotWrittenError as error:
        raise CalendarTrouble(path, str(error)) from error
