"""Row changes as data: taking them back, doing them again, keeping them as text."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from sqlalchemy import Connection, Table, delete, insert, select, update

from brewdesk.store.columns import from_plain, to_plain
from brewdesk.store.errors import StaleRow
from brewdesk.store.records import RowDelta
from brewdesk.store.schema import SHELF_TABLES

_TABLES = {table.name: table for table in SHELF_TABLES}

PlainRow = dict[str, object]

# The program itself shows reminders and moves them with the forecast, between two acts of the
# maker. What it wrote there must not keep an act, and all older ones, from being taken back.
_PROGRAM_COLUMNS = {
    "reminder": frozenset(
        {
            "due_at",
            "window_end",
            "state",
            "shown_at",
            "snoozed_until",
            "done_at",
            "text",
            "revision",
        }
    )
}
# It also makes reminders, and a batch that is taken back takes them along. They come back
# under another id, or are not there yet; what they are about tells that they are the same.
_SAME_THING = {"reminder": ("batch_id", "culture_id", "bottling_id", "kind", "occurrence")}


def plain_row(connection: Connection, table: Table, row_id: int) -> PlainRow | None:
    """Give a row as plain column values (text, numbers, None), or None if it is not there."""
    row = connection.execute(select(table).where(table.c.id == row_id)).mappings().one_or_none()
    if row is None:
        return None
    return {c.name: to_plain(c, row[c.name], connection.dialect) for c in table.columns}


def apply_deltas(connection: Connection, deltas: Sequence[RowDelta], *, backwards: bool) -> None:
    """Do the changes again, or take them back in reverse order.

    Raises
    ------
    StaleRow
        If a row is not as the changes expect it. The caller's transaction must then be
        rolled back, since earlier rows are already changed.
    """
    for delta in reversed(deltas) if backwards else deltas:
        old, new = (delta.after, delta.before) if backwards else (delta.before, delta.after)
        table = _table_of(delta)
        found = plain_row(connection, table, delta.row_id)
        if found is None and old is not None and delta.table in _SAME_THING:
            found = _called_back(connection, table, delta.row_id, old)
            if found is None:
                _write(connection, table, delta.row_id, None, new)
                continue
        if _makers_part(delta.table, found) != _makers_part(delta.table, old):
            raise StaleRow(delta.table, delta.row_id)
        _write(connection, table, delta.row_id, old, new)


def _called_back(
    connection: Connection, table: Table, row_id: int, old: PlainRow
) -> PlainRow | None:
    """Give the id that the history knows to the row about the same thing, if there is one."""
    statement = update(table).values(id=row_id)
    for name in _SAME_THING[table.name]:
        column = table.c[name]
        value = from_plain(column, old[name], connection.dialect)
        statement = statement.where(column.is_(None) if value is None else column == value)
    connection.execute(statement)
    return plain_row(connection, table, row_id)


def _makers_part(table_name: str, row: PlainRow | None) -> PlainRow | None:
    """Leave out what the program writes by itself."""
    if row is None:
        return None
    ours = _PROGRAM_COLUMNS.get(table_name, frozenset())
    return {name: value for name, value in row.items() if name not in ours}


def _table_of(delta: RowDelta) -> Table:
    table = _TABLES.get(delta.table)
    if table is None:
        raise StaleRow(delta.table, delta.row_id)
    names = set(table.columns.keys())
    for row in (delta.before, delta.after):
        if row is not None and set(row) != names:  # written under another schema
            raise StaleRow(delta.table, delta.row_id)
    return table


def _write(
    connection: Connection, table: Table, row_id: int, old: PlainRow | None, new: PlainRow | None
) -> None:
    if new is None:
        connection.execute(delete(table).where(table.c.id == row_id))
        return
    values = {c.name: from_plain(c, new[c.name], connection.dialect) for c in table.columns}
    if old is None:
        connection.execute(insert(table).values(values))
    else:
        connection.execute(update(table).where(table.c.id == row_id).values(values))


def deltas_to_json(deltas: Iterable[RowDelta]) -> str:
    """Give the text form of changes, for the history."""
    listed = [[d.table, d.row_id, d.before, d.after] for d in deltas]
    return json.dumps(listed, ensure_ascii=False, allow_nan=False, separators=(",", ":"))


def deltas_from_json(text: str) -> tuple[RowDelta, ...]:
    """Give the changes of a text that ``deltas_to_json`` made."""
    listed: list[tuple[str, int, Any, Any]] = json.loads(text)
    return tuple(
        RowDelta(table=table, row_id=row_id, before=_row(before), after=_row(after))
        for table, row_id, before, after in listed
    )


def _row(value: Mapping[str, object] | None) -> PlainRow | None:
    return None if value is None else dict(value)
