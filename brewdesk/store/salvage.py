"""Read out of a damaged store what can be read, into a new file; the damaged one stays as it is.

A damaged page costs the rows that lie on it. The others are reached by their keys, also where
a look through the whole table ends at the damage, and indexes are made anew.
"""

from __future__ import annotations

import shutil
import sqlite3
import uuid
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from brewdesk.store.checks import row_counts
from brewdesk.store.columns import instant_text
from brewdesk.store.engine import connect, opened
from brewdesk.store.errors import RowRefused, StoreTrouble, told
from brewdesk.store.files import discard, put_in_place, sync_file, unfinished
from brewdesk.store.identify import SIDE_FILES, side_file
from brewdesk.store.schema import SCHEMA_NUMBER
from brewdesk.store.wholetables import NewFile, PlainRow, is_row_of_ours, shapes

_MAGIC = b"SQLite format 3\x00"  # https://www.sqlite.org/fileformat.html, section 1.3
_MOST_IDS = 2_000_000  # beyond this a number in the book-keeping of ids is itself damage
_UNREADABLE = (sqlite3.DatabaseError, UnicodeDecodeError, OverflowError)


@dataclass(frozen=True, slots=True, kw_only=True)
class Rescued:
    """What came out of a damaged store: rows by table, and how many could not be had.

    A table that could not be read at all stands in ``unknown``: how many rows it had is lost.
    """

    path: Path
    kept: dict[str, int]
    lost: dict[str, int]
    unknown: tuple[str, ...]

    @property
    def is_whole(self) -> bool:
        """Whether all rows are there: then the damage was to what can be made anew."""
        return not self.lost and not self.unknown


def rescue(damaged: Path, target: Path, *, now: datetime) -> Rescued:
    """Make a new store at ``target`` of all rows that can be read in ``damaged``.

    Parameters
    ----------
    damaged
        A store that nobody has open. It is not changed.
    target
        Where there must be no file yet.
    now
        The time, for the pantry's birthday if that was lost.

    Raises
    ------
    StoreTrouble
        damaged if nothing can be read, newer_file if it is of a later program, or what the
        disk says. Then there is no new file.
    """
    with told():
        work, building = unfinished(target), unfinished(target)
        building.unlink()
        try:
            _copy_bytes(damaged, work)
            sync_file(work)
            with closing(connect(work, "rw")) as source:
                rescued = _pour(source, building, target, now)
            put_in_place(building, target)
        finally:
            discard(work)
            discard(building)
    return rescued


def _copy_bytes(damaged: Path, work: Path) -> None:
    """Copy the file and its journals as they are; SQLite would refuse to copy damage."""
    shutil.copyfile(damaged, work)
    for end in SIDE_FILES:
        if side_file(damaged, end).exists():
            shutil.copyfile(side_file(damaged, end), side_file(work, end))
    with work.open("r+b") as stream:
        if stream.read(len(_MAGIC)) != _MAGIC:
            stream.seek(0)
            stream.write(_MAGIC)


def _pour(source: sqlite3.Connection, building: Path, target: Path, now: datetime) -> Rescued:
    number = _schema_number(source)
    lost: dict[str, int] = {}
    unknown: list[str] = []
    with NewFile(building, number) as file:
        known = set(file.tables())
        order = [shape.name for shape in shapes() if shape.name in known]
        last_ids = _last_ids(source)
        for table in order:
            names = tuple(file.columns(table))
            reading = _Reading(source, table, names, last_ids.get(table, 0))
            for rows in reading.blocks():
                reading.lost += _add(file, table, names, rows, number)
            if table == "pantry" and not reading.found:
                row = (1, uuid.uuid4().hex, instant_text(now), 0)
                file.add("pantry", ("id", "uid", "created_at", "is_demo"), [row])
            elif reading.is_unknown:
                unknown.append(table)
            if reading.lost:
                lost[table] = reading.lost
        for table, gone in file.drop_orphans().items():
            lost[table] = lost.get(table, 0) + gone
        file.set_last_ids({name: top for name, top in last_ids.items() if name in known})
        try:
            file.finish()
        except RowRefused as refusal:
            raise StoreTrouble("damaged", refusal.detail) from refusal
    with opened(building, "ro") as finished:
        kept = row_counts(finished)
    if sum(kept.values()) <= 1:  # the pantry's own row alone
        raise StoreTrouble("damaged", "no row can be read")
    return Rescued(path=target, kept=kept, lost=lost, unknown=tuple(unknown))


def _add(
    file: NewFile, table: str, names: tuple[str, ...], rows: list[PlainRow], number: int
) -> int:
    """Store rows, leaving out those that break a rule; return how many were left out."""
    refused = 0
    for row in rows:
        is_ours = number < SCHEMA_NUMBER or is_row_of_ours(table, names, row)
        if not is_ours or file.add(table, names, [row]) is not None:
            refused += 1
    return refused


class _Reading:
    """The reading of one table, over and around what cannot be read."""

    def __init__(
        self, source: sqlite3.Connection, table: str, names: tuple[str, ...], last_id: int
    ) -> None:
        self._source = source
        listed = ", ".join(f'"{name}"' for name in names)
        self._some = f'SELECT {listed} FROM "{table}" NOT INDEXED WHERE rowid BETWEEN ? AND ?'
        # A span looks for its end on the next page, which may be the damaged one.
        self._one = f'SELECT {listed} FROM "{table}" NOT INDEXED WHERE rowid = ?'
        self._table = table
        self._last_id = last_id
        self.found = 0
        self.lost = 0
        self.is_unknown = False

    def blocks(self) -> Iterator[list[PlainRow]]:
        top = max(self._last_id, self._highest())
        if top > 0:
            yield from self._between(1, top)

    def _highest(self) -> int:
        try:
            row = self._source.execute(
                f'SELECT max(rowid) FROM "{self._table}" NOT INDEXED'
            ).fetchone()
        except _UNREADABLE:
            self.is_unknown = self._last_id == 0
            return 0
        return min(int(row[0] or 0), _MOST_IDS)

    def _between(self, low: int, high: int) -> Iterator[list[PlainRow]]:
        try:
            if low == high:
                rows = self._source.execute(self._one, (low,)).fetchall()
            else:
                rows = self._source.execute(self._some, (low, high)).fetchall()
        except _UNREADABLE:
            if low == high:
                self.lost += 1
                return
            middle = (low + high) // 2
            yield from self._between(low, middle)
            yield from self._between(middle + 1, high)
            return
        self.found += len(rows)
        if rows:
            yield rows


def _schema_number(source: sqlite3.Connection) -> int:
    number = int(source.execute("PRAGMA user_version").fetchone()[0])
    if number > SCHEMA_NUMBER:
        raise StoreTrouble("newer_file", f"schema {number}")
    if number < 1:
        raise StoreTrouble("damaged", f"schema {number}")
    return number


def _last_ids(source: sqlite3.Connection) -> dict[str, int]:
    try:
        rows = source.execute("SELECT name, seq FROM sqlite_sequence").fetchall()
    except _UNREADABLE:
        return {}
    return {
        str(name): int(top) for name, top in rows if isinstance(top, int) and 0 <= top <= _MOST_IDS
    }
