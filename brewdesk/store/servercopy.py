"""A whole store from a server into a file, and from a file onto a server, proven row by row."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator, Mapping
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Table, insert, select, text, update

from brewdesk.store.desklocal import DESK_NAME_KEY
from brewdesk.store.engine import opened
from brewdesk.store.errors import RowRefused, StoreTrouble, told
from brewdesk.store.schema import SCHEMA_NUMBER, act, setting
from brewdesk.store.serverschema import act_desk, server_state
from brewdesk.store.serverunits import own_view
from brewdesk.store.tableparts import metadata
from brewdesk.store.wholetables import NewFile, PlainRow, StillCopy, shapes

_BLOCK = 2000  # rows


@dataclass(frozen=True, slots=True)
class TableSum:
    """How many rows a table has, and the SHA-256 of all their values in the order of their keys."""

    rows: int
    sha256: str


Sums = dict[str, TableSum]


def copy_to_file(connection: Connection, path: Path, desk_uid: str) -> Sums:
    """Write all rows that ``connection`` sees into a new store at ``path``; prove it.

    What is the desk's own among the settings becomes the file's; other desks' is left out.

    Raises
    ------
    StoreTrouble
        damaged if not every row arrived as it was, row_refused, or what the disk says.
    """
    number = _number(connection)
    there: Sums = {}
    with NewFile(path, number) as file:
        for table in metadata.sorted_tables:
            counting = _Summing(_server_rows(connection, table, desk_uid))
            names = [column.name for column in table.columns]
            for block in _blocks(counting):
                if file.add(table.name, names, block) is not None:
                    raise RowRefused(f"a row of {table.name} breaks a rule of a file")
            there[table.name] = counting.sum()
        file.set_last_ids(_last_ids(connection))
        file.finish()
    if file_sums(path) != there:
        raise StoreTrouble("damaged", "not every row came into the file as it was")
    return there


def copy_to_server(copy: StillCopy, connection: Connection, desk_uid: str) -> Sums:
    """Write all rows of a still copy into empty tables on a server; prove it.

    The acts of the history become this desk's: it can go on taking them back.

    Raises
    ------
    StoreTrouble
        damaged if not every row arrived as it was, or what the server says.
    """
    if copy.schema_number != SCHEMA_NUMBER:
        raise StoreTrouble("migration_failed", f"a file of schema {copy.schema_number}")
    there: Sums = {}
    for table in metadata.sorted_tables:
        counting = _Summing(_copy_rows(copy, table))
        _pour(connection, table, counting)
        there[table.name] = counting.sum()
    _set_last_ids(connection, copy.last_ids())
    own = insert(act_desk).from_select(
        ["act_id", "desk_uid"], select(act.c.id, text(":desk").bindparams(desk=desk_uid))
    )
    with told():
        connection.execute(own)
        # Nobody has seen anything of it yet.
        connection.execute(update(server_state).values(serial=server_state.c.serial + 1))
    if server_sums(connection) != there:
        raise StoreTrouble("damaged", "not every row came to the server as it was")
    return there


def file_sums(path: Path) -> Sums:
    """Sum up every table of a store's file."""
    with opened(path, "ro") as connection, told():
        copy = StillCopy(connection)
        return {table.name: _sum(_copy_rows(copy, table)) for table in metadata.sorted_tables}


def server_sums(connection: Connection) -> Sums:
    """Sum up every table of a store on a server, as it lies there."""
    return {
        table.name: _sum(_server_rows(connection, table, None)) for table in metadata.sorted_tables
    }


class _Summing:
    """Hands rows on, and sums them up meanwhile."""

    def __init__(self, rows: Iterable[PlainRow]) -> None:
        self._rows = rows
        self._digest = hashlib.sha256()
        self._count = 0

    def __iter__(self) -> Iterator[PlainRow]:
        for row in self._rows:
            said = [_exactly(value) for value in row]
            self._digest.update(json.dumps(said).encode() + b"\n")
            self._count += 1
            yield row

    def sum(self) -> TableSum:
        return TableSum(self._count, self._digest.hexdigest())


def _exactly(value: object) -> object:
    if isinstance(value, float):
        return value.hex()
    return value.hex() if isinstance(value, bytes) else value


def _sum(rows: Iterable[PlainRow]) -> TableSum:
    summing = _Summing(rows)
    for _ in summing:
        pass
    return summing.sum()


def _blocks(rows: Iterable[PlainRow]) -> Iterator[list[PlainRow]]:
    block: list[PlainRow] = []
    for row in rows:
        block.append(row)
        if len(block) == _BLOCK:
            yield block
            block = []
    if block:
        yield block


def _columns(table: Table) -> str:
    return ", ".join(f'"{column.name}"' for column in table.columns)


def _keys(table: Table) -> str:
    return ", ".join(f'"{column.name}"' for column in table.primary_key.columns)


def _server_rows(connection: Connection, table: Table, desk_uid: str | None) -> Iterator[PlainRow]:
    """Give a table's plain rows by their keys; the settings as one desk sees them."""
    with told():
        found = connection.execution_options(yield_per=_BLOCK).exec_driver_sql(
            f'SELECT {_columns(table)} FROM "{table.name}" ORDER BY {_keys(table)}'
        )
        if table is setting and desk_uid is not None:
            kept: Mapping[str, str] = own_view({row.key: row.value for row in found}, desk_uid)
            # A file has one desk, whose name nobody asks for.
            yield from sorted(item for item in kept.items() if item[0] != DESK_NAME_KEY)
            return
        for row in found:
            yield tuple(row)


def _copy_rows(copy: StillCopy, table: Table) -> Iterator[PlainRow]:
    shape = next(shape for shape in shapes() if shape.name == table.name)
    yield from copy.rows(shape, order=_keys(table))


def _pour(connection: Connection, table: Table, rows: Iterable[PlainRow]) -> None:
    """Write rows with one statement: a row may name one of its table that comes after it."""
    bare: Any = connection.connection.driver_connection
    with told(), closing(bare.cursor()) as cursor:
        statement = f'COPY "{table.name}" ({_columns(table)}) FROM STDIN'
        with cursor.copy(statement) as stream:
            for row in rows:
                stream.write_row(row)


def _tables_with_ids() -> list[Table]:
    return [table for table in metadata.sorted_tables if "id" in table.columns]


def _last_ids(connection: Connection) -> dict[str, int]:
    """Give the highest id that each table ever gave."""
    found = {}
    for table in _tables_with_ids():
        with told():
            last, was_called = connection.exec_driver_sql(
                f"SELECT last_value, is_called FROM {table.name}_id_seq"
            ).one()
        if was_called:
            found[table.name] = int(last)
    return found


def _set_last_ids(connection: Connection, last_ids: Mapping[str, int]) -> None:
    for table in _tables_with_ids():
        last = last_ids.get(table.name, 0)
        if last:
            with told():
                connection.exec_driver_sql(f"SELECT setval('{table.name}_id_seq', {int(last)})")


def _number(connection: Connection) -> int:
    with told():
        return int(connection.execute(select(server_state.c.schema_number)).scalar_one())
