"""Reads the open reminders of a store and nothing else: quickly, and without a trace.

For a start from a terminal. It knows no SQLAlchemy, whose import alone takes longer than this
whole answer may; it takes no lock file, migrates nothing and mends nothing.
"""

from __future__ import annotations

import sqlite3
import stat
from contextlib import closing
from dataclasses import dataclass, fields
from datetime import UTC, datetime
from pathlib import Path

from brewdesk.store.records import Reminder
from culturecore.stages import ReminderKind, ReminderState

# As in the schema, which cannot be imported here; a test holds them equal.
APPLICATION_ID = 0x4252444B
SCHEMA_NUMBER = 3
BUSY_TIMEOUT_S = 5.0

_COLUMNS = tuple(field.name for field in fields(Reminder))
_INSTANTS = frozenset({"due_at", "window_end", "shown_at", "snoozed_until", "done_at"})
OPEN_VALUES = tuple(
    state.value for state in (ReminderState.WAITING, ReminderState.SHOWN, ReminderState.SNOOZED)
)
QUERY = f"""
    SELECT {", ".join(f"reminder.{name}" for name in _COLUMNS)},
           coalesce(batch.name, culture.name, bottling.name, ''), coalesce(vessel.name, '')
    FROM reminder
    LEFT JOIN batch ON batch.id = reminder.batch_id
    LEFT JOIN culture ON culture.id = reminder.culture_id
    LEFT JOIN bottling ON bottling.id = reminder.bottling_id
    LEFT JOIN vessel ON vessel.id = coalesce(batch.vessel_id, culture.vessel_id)
    WHERE reminder.state IN ({", ".join("?" for _ in OPEN_VALUES)})
    ORDER BY reminder.id
"""
_CODES = {
    sqlite3.SQLITE_BUSY: "locked",
    sqlite3.SQLITE_LOCKED: "locked",
    sqlite3.SQLITE_NOTADB: "not_a_store",
    sqlite3.SQLITE_CORRUPT: "damaged",
    # A journal is to be played back, which only a writer may do.
    sqlite3.SQLITE_READONLY: "interrupted",
}


class DueTrouble(Exception):  # noqa: N818  # a state of the world to tell the maker, not a bug
    """The reminders cannot be read.

    ``code`` is one of: no_store, not_a_store, older, newer, damaged, interrupted, locked,
    unreadable, no_driver, not_connected. The last two are of a server. ``detail`` is what the
    system said.
    """

    def __init__(self, code: str, detail: str = "") -> None:
        self.code = code
        self.detail = detail
        super().__init__(f"{code}: {detail}" if detail else code)


@dataclass(frozen=True, slots=True, kw_only=True)
class DueRow:
    """One open reminder, with the names of what it is about; empty ones if of nothing."""

    reminder: Reminder
    subject_name: str
    vessel_name: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DueRows:
    """The open reminders of a pantry. ``zone_name`` is the maker's choice, or empty."""

    rows: tuple[DueRow, ...]
    zone_name: str
    is_demo: bool


def read_due(path: Path, *, busy_timeout_s: float = BUSY_TIMEOUT_S) -> DueRows:
    """Return the open reminders of the store at ``path``; the file is only looked at.

    Raises
    ------
    DueTrouble
        If there is none, it is of another schema, or it cannot be read.
    """
    try:
        status = path.stat()
    except (FileNotFoundError, NotADirectoryError):
        raise DueTrouble("no_store") from None
    except (OSError, ValueError) as error:
        raise DueTrouble("unreadable", str(error)) from error
    if not stat.S_ISREG(status.st_mode):
        raise DueTrouble("not_a_store", "not a regular file")
    if status.st_size == 0:  # SQLite takes this for a database without tables
        raise DueTrouble("damaged", "the file is empty")
    address = f"{path.absolute().as_uri()}?mode=ro"
    try:
        with closing(sqlite3.connect(address, uri=True, timeout=busy_timeout_s)) as connection:
            connection.isolation_level = None
            connection.text_factory = _text
            return _read(connection)
    except sqlite3.Error as error:
        number = getattr(error, "sqlite_errorcode", None) or 0
        raise DueTrouble(_CODES.get(number & 0xFF, "unreadable"), str(error)) from error
    except (ValueError, TypeError) as error:  # a value that no writer of ours wrote
        raise DueTrouble("damaged", str(error)) from error


def _read(connection: sqlite3.Connection) -> DueRows:
    connection.execute("PRAGMA trusted_schema=OFF")
    connection.execute("PRAGMA query_only=ON")
    connection.execute("BEGIN")  # all of it from one moment
    application_id = _number(connection, "PRAGMA application_id")
    if application_id != APPLICATION_ID:
        raise DueTrouble("not_a_store", f"application id {application_id:#x}")
    schema = _number(connection, "PRAGMA user_version")
    if schema != SCHEMA_NUMBER:
        code = "newer" if schema > SCHEMA_NUMBER else "older"
        raise DueTrouble(code, f"schema {schema}, this program knows {SCHEMA_NUMBER}")
    pantry = connection.execute("SELECT is_demo FROM pantry").fetchone()
    if pantry is None:
        raise DueTrouble("damaged", "the pantry has no row")
    zone = connection.execute("SELECT value FROM setting WHERE key = 'zone'").fetchone()
    found = connection.execute(QUERY, OPEN_VALUES).fetchall()
    return DueRows(
        rows=tuple(due_row(values) for values in found),
        zone_name=str(zone[0]) if zone is not None else "",
        is_demo=bool(pantry[0]),
    )


def _number(connection: sqlite3.Connection, question: str) -> int:
    return int(connection.execute(question).fetchone()[0])


def _text(data: bytes) -> str:
    return data.decode("utf-8", "replace")


def due_row(values: tuple[object, ...]) -> DueRow:
    """Give one row of ``QUERY`` as a record.

    Raises
    ------
    ValueError, TypeError
        For a value that no writer of ours wrote.
    """
    *kept, subject_name, vessel_name = values
    plain = dict(zip(_COLUMNS, kept, strict=True))
    for name in _INSTANTS:
        text = plain[name]
        plain[name] = None if text is None else datetime.fromisoformat(str(text)).astimezone(UTC)
    plain["kind"] = ReminderKind(plain["kind"])
    plain["state"] = ReminderState(plain["state"])
    return DueRow(
        reminder=Reminder(**plain),  # type: ignore[arg-type]  # the schema keeps the types
        subject_name=str(subject_name),
        vessel_name=str(vessel_name),
    )
