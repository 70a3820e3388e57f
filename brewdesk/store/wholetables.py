"""Whole tables, row by row as plain values: out of a still copy, and into a new file.

This is for taking everything along, to another program or back into this one. It knows no
table by name: what the schema holds is what goes out, and what comes in.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Column, Table
from sqlalchemy.dialects import sqlite

from brewdesk.store.checks import check_sound
from brewdesk.store.columns import Choice, Instant, YesNo, from_plain, to_plain
from brewdesk.store.deltas import deltas_from_json
from brewdesk.store.engine import connect, opened
from brewdesk.store.errors import RowRefused, StoreTrouble, told
from brewdesk.store.files import copy_store, discard, unfinished
from brewdesk.store.migrate import CURRENT, lay_out, migrate_store
from brewdesk.store.schema import SCHEMA_NUMBER, SHELF_TABLES
from brewdesk.store.tableparts import metadata

Plain = str | int | float | bytes | None
PlainRow = tuple[Plain, ...]

_DIALECT = sqlite.dialect()
_BLOCK = 500  # rows
_TYPES: dict[str, tuple[type, ...]] = {
    "TEXT": (str,),
    "INTEGER": (int,),
    "REAL": (float, int),
    "BLOB": (bytes,),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnShape:
    """A column: its name, how SQLite keeps it, and what else is known of it.

    ``kind`` is one of "text", "instant", "choice", "whole", "truth", "number", "bytes".
    """

    name: str
    kind: str
    is_optional: bool
    choices: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class TableShape:
    """A table and its columns, in their order."""

    name: str
    columns: tuple[ColumnShape, ...]


def shapes() -> tuple[TableShape, ...]:
    """Return every table of the present schema, parents before children."""
    return tuple(
        TableShape(name=table.name, columns=tuple(_shape(column) for column in table.columns))
        for table in metadata.sorted_tables
    )


def _shape(column: Column[object]) -> ColumnShape:
    kind = column.type
    choices: tuple[str, ...] = ()
    if isinstance(kind, Instant):
        said = "instant"
    elif isinstance(kind, Choice):
        said, choices = "choice", tuple(str(member.value) for member in kind.kind)
    elif isinstance(kind, YesNo):
        said = "truth"
    else:
        kept = kind.compile(dialect=_DIALECT)
        said = {"TEXT": "text", "INTEGER": "whole", "REAL": "number", "BLOB": "bytes"}[kept]
    return ColumnShape(
        name=column.name, kind=said, is_optional=bool(column.nullable), choices=choices
    )


class StillCopy:
    """A copy of a store that nobody writes to, to read for as long as it takes."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        self._connection = connection
        self.schema_number = int(connection.execute("PRAGMA user_version").fetchone()[0])

    def count(self, table: str) -> int:
        """Return how many rows a table has."""
        return int(self._connection.execute(f'SELECT count(*) FROM "{table}"').fetchone()[0])

    def rows(self, table: TableShape, *, order: str = "rowid") -> Iterator[PlainRow]:
        """Give the rows of a table in the order of their keys, or of the columns given."""
        names = ", ".join(f'"{column.name}"' for column in table.columns)
        # The rowid is the id where there is one, and the order of writing where there is none.
        with told():
            yield from self._connection.execute(
                f'SELECT {names} FROM "{table.name}" ORDER BY {order}'
            )

    def last_ids(self) -> dict[str, int]:
        """Return the highest id that each table ever gave: none is given twice."""
        rows = self._connection.execute("SELECT name, seq FROM sqlite_sequence ORDER BY name")
        return {str(name): int(number) for name, number in rows}


@contextmanager
def still_copy(store_path: Path, beside: Path) -> Iterator[StillCopy]:
    """Copy the store, also one in use, into a file next to ``beside``; it is gone afterwards.

    Raises
    ------
    StoreTrouble
        damaged, locked, or what the disk says.
    """
    with told():
        copy = unfinished(beside)
    try:
        with told():
            copy_store(store_path, copy)
        with opened(copy, "ro") as connection:
            with told():
                check_sound(connection, thorough=False)
            yield StillCopy(connection)
    finally:
        discard(copy)


class NewFile:
    """A store in the making, of a schema that this program knows. Use as a context.

    All rows are in one transaction. `finish` proves them; a file that was not finished is
    the caller's to delete.
    """

    def __init__(self, path: Path, schema_number: int = SCHEMA_NUMBER) -> None:
        self._path = path
        self._number = schema_number
        with told():
            path.touch(mode=0o600, exist_ok=False)
            lay_out(path, schema_number)
            self._connection = connect(path, "rw")
            self._connection.execute("PRAGMA synchronous=OFF")  # synced as a whole when finished
            self._connection.execute("PRAGMA foreign_keys=ON")
            self._connection.execute("BEGIN IMMEDIATE")
            # A row may name one that comes after it; all have to be there in the end.
            self._connection.execute("PRAGMA defer_foreign_keys=ON")

    def __enter__(self) -> NewFile:
        return self

    def __exit__(self, *_error: object) -> None:
        self._connection.close()

    def columns(self, table: str) -> dict[str, str]:
        """Return the columns of a table with their SQLite types; empty if there is no such."""
        rows = self._connection.execute("SELECT name, type FROM pragma_table_info(?)", (table,))
        return {str(name): str(kind) for name, kind in rows}

    def tables(self) -> tuple[str, ...]:
        """Return the tables of the schema, but SQLite's and the migrations' own."""
        rows = self._connection.execute(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'alembic_version'"
            " AND name NOT LIKE 'sqlite~_%' ESCAPE '~' ORDER BY name"
        )
        return tuple(str(row[0]) for row in rows)

    def add(self, table: str, names: Sequence[str], rows: Sequence[PlainRow]) -> int | None:
        """Store rows; return the place of the first one that breaks a rule, else None.

        Raises
        ------
        StoreTrouble
            What the disk says.
        """
        kinds = self.columns(table)
        for number, row in enumerate(rows):
            if not all(_fits(value, kinds[name]) for name, value in zip(names, row, strict=True)):
                return number
        listed = ", ".join(f'"{name}"' for name in names)
        marks = ", ".join("?" * len(names))
        statement = f'INSERT INTO "{table}" ({listed}) VALUES ({marks})'
        for start in range(0, len(rows), _BLOCK):
            bad = self._add_block(statement, rows[start : start + _BLOCK])
            if bad is not None:
                return start + bad
        return None

    def _add_block(self, statement: str, rows: Sequence[PlainRow]) -> int | None:
        connection = self._connection
        connection.execute("SAVEPOINT block")
        try:
            with told():
                connection.executemany(statement, rows)
        except RowRefused:
            connection.execute("ROLLBACK TO block")
        else:
            connection.execute("RELEASE block")
            return None
        for number, row in enumerate(rows):
            try:
                with told():
                    connection.execute(statement, row)
            except RowRefused:
                return number
        return len(rows) - 1

    def drop_orphans(self) -> dict[str, int]:
        """Delete rows that name rows that are not there, and what then names these in turn.

        Returns
        -------
        dict
            How many rows went, by table.
        """
        gone: dict[str, int] = {}
        with told():
            while orphans := self._connection.execute("PRAGMA foreign_key_check").fetchall():
                for table, row_id in {(str(found[0]), int(found[1])) for found in orphans}:
                    self._connection.execute(f'DELETE FROM "{table}" WHERE rowid = ?', (row_id,))
                    gone[table] = gone.get(table, 0) + 1
        return gone

    def set_last_ids(self, last_ids: dict[str, int]) -> None:
        """Have no id given again that was given before.

        Raises
        ------
        RowRefused
            For a table without ids, or a number that is none.
        """
        known = set(self.tables())
        for table, number in last_ids.items():
            if table not in known or not 0 <= number < 2**62:
                raise RowRefused(f"the last id of {table}: {number}")
            with told():
                self._connection.execute("DELETE FROM sqlite_sequence WHERE name = ?", (table,))
                highest = self._connection.execute(f'SELECT max(rowid) FROM "{table}"').fetchone()
                self._connection.execute(
                    "INSERT INTO sqlite_sequence (name, seq) VALUES (?, ?)",
                    (table, max(number, highest[0] or 0)),
                )

    def finish(self) -> None:
        """Prove all rows and keep them; bring an older schema up to the present one.

        Raises
        ------
        RowRefused
            For a reference to nothing, or a value that no writer of ours would have written.
        StoreTrouble
            What the disk says.
        """
        with told():
            orphan = self._connection.execute("PRAGMA foreign_key_check").fetchone()
            if orphan is not None:
                raise RowRefused(f"{orphan[0]} {orphan[1]} names no row of {orphan[2]}")
            self._connection.execute("COMMIT")
            self._connection.close()
            if self._number < SCHEMA_NUMBER:
                migrate_store(self._path, migrations=CURRENT)
            with opened(self._path, "ro") as connection:
                check_sound(connection, thorough=True)
                for table in metadata.sorted_tables:
                    _prove(connection, table)


def is_row_of_ours(table: str, names: Sequence[str], row: PlainRow) -> bool:
    """Say whether a row of the present schema is one that this program may have written."""
    plain = dict(zip(names, row, strict=True))
    if table == "act" and not (
        _is_object(str(plain["facts"])) and _are_deltas(str(plain["deltas"]))
    ):
        return False
    return _is_ours(metadata.tables[table], plain)


def _fits(value: Plain, kind: str) -> bool:
    if value is None:
        return True
    if isinstance(value, str):
        # A NUL would end the text for SQLite's own rules; a lone surrogate has no encoding.
        return kind == "TEXT" and "\x00" not in value and _is_encodable(value)
    if isinstance(value, int) and not -(2**63) <= value < 2**63:
        return False
    return not isinstance(value, bool) and isinstance(value, _TYPES.get(kind, ()))


def _is_encodable(text: str) -> bool:
    try:
        text.encode("utf-8")
    except UnicodeEncodeError:
        return False
    return True


def _prove(connection: sqlite3.Connection, table: Table) -> None:
    """Read every row as the program will, and see that it would write the same."""
    names = [column.name for column in table.columns]
    listed = ", ".join(f'"{name}"' for name in names)
    cursor = connection.execute(f'SELECT {listed} FROM "{table.name}" ORDER BY rowid')
    for number, row in enumerate(cursor, 1):
        plain = dict(zip(names, row, strict=True))
        if not _is_ours(table, plain):
            raise RowRefused(f"{table.name}, row {number}")
        if table.name == "act" and not (
            _is_object(str(plain["facts"])) and _are_deltas(str(plain["deltas"]))
        ):
            raise RowRefused(f"{table.name}, row {number}: its facts or row changes")
    if table.name == "pantry":
        count = connection.execute('SELECT count(*) FROM "pantry"').fetchone()[0]
        if count != 1:
            raise StoreTrouble("row_refused", f"{count} rows of the pantry")


def _is_ours(table: Table, plain: dict[str, Plain]) -> bool:
    try:
        return all(
            to_plain(column, from_plain(column, plain[column.name], _DIALECT), _DIALECT)
            == plain[column.name]
            for column in table.columns
        )
    except (ValueError, TypeError, OverflowError):
        return False


def _is_object(text: str) -> bool:
    try:
        return isinstance(json.loads(text), dict)
    except (ValueError, RecursionError):
        return False


def _are_deltas(text: str) -> bool:
    """Whether a text holds row changes that undo can apply, or will refuse as out of date."""
    tables = {table.name: table for table in SHELF_TABLES}
    try:
        for delta in deltas_from_json(text):
            table = tables[delta.table]
            for row in (delta.before, delta.after):
                is_of_now = row is not None and set(row) == set(table.columns.keys())
                if is_of_now and not _is_ours_typed(table, dict(row or {})):
                    return False
            if isinstance(delta.row_id, bool) or not isinstance(delta.row_id, int):
                return False
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError):
        return False
    return True


def _is_ours_typed(table: Table, row: dict[str, object]) -> bool:
    plain: dict[str, Plain] = {}
    for column in table.columns:
        value = row[column.name]
        kind = column.type.compile(dialect=_DIALECT)
        if value is not None and not isinstance(value, (str, int, float)):
            return False
        if not _fits(value, kind):
            return False
        plain[column.name] = value
    return _is_ours(table, plain)
