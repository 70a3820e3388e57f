"""Frozen records in and out of one table, with every change noted as a delta."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import fields
from typing import Any, ClassVar, Generic, Protocol, TypeVar

from sqlalchemy import (
    ColumnElement,
    Connection,
    Table,
    asc,
    delete,
    desc,
    func,
    insert,
    select,
    update,
)

from brewdesk.store.columns import to_plain
from brewdesk.store.deltas import plain_row
from brewdesk.store.errors import NoSuchRow, told
from brewdesk.store.records import RowDelta


class StoredRecord(Protocol):
    """What all records share: a dataclass with an id."""

    __dataclass_fields__: ClassVar[dict[str, Any]]

    @property
    def id(self) -> int:
        """The row's number, never used twice."""
        ...


class Draft(Protocol):
    """What all drafts share: a dataclass."""

    __dataclass_fields__: ClassVar[dict[str, Any]]


RecordT = TypeVar("RecordT", bound=StoredRecord)
DraftT = TypeVar("DraftT", bound=Draft)

OrderBy = str | tuple[str, ...]


class ReadRows(Generic[RecordT]):
    """The records of one table, to read."""

    def __init__(self, connection: Connection, table: Table, record_type: type[RecordT]) -> None:
        self._connection = connection
        self._table = table
        self._record_type = record_type

    def get(self, row_id: int) -> RecordT:
        """Give one record.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        with told():
            statement = select(self._table).where(self._table.c.id == row_id)
            row = self._connection.execute(statement).mappings().one_or_none()
        if row is None:
            raise NoSuchRow(self._table.name, row_id)
        return self._record_type(**row)

    def where(
        self, *, order_by: OrderBy = "id", limit: int | None = None, **equals: object
    ) -> tuple[RecordT, ...]:
        """Give the records whose fields equal the values given.

        Parameters
        ----------
        order_by
            One field or several; a leading "-" turns the order round. Equal ones come by id.
        limit
            At most so many.
        equals
            field=value; None means "has none", a tuple, list or set means "any of these".
        """
        statement = select(self._table)
        for name, value in equals.items():
            statement = statement.where(self._matches(name, value))
        names = (order_by,) if isinstance(order_by, str) else order_by
        for name in (*names, "id"):
            column = self._column(name.removeprefix("-"))
            statement = statement.order_by(desc(column) if name.startswith("-") else asc(column))
        with told():
            found = self._connection.execute(statement.limit(limit)).mappings().all()
        return tuple(self._record_type(**row) for row in found)

    def count(self, **equals: object) -> int:
        """Say how many records `where` would give."""
        statement = select(func.count()).select_from(self._table)
        for name, value in equals.items():
            statement = statement.where(self._matches(name, value))
        with told():
            return int(self._connection.execute(statement).scalar_one())

    def pointing_at(self, table: Table, row_id: int) -> tuple[RecordT, ...]:
        """Give the records whose ``<table>_id`` is ``row_id``."""
        equals: dict[str, Any] = {f"{table.name}_id": row_id}
        return self.where(**equals)

    def _matches(self, name: str, value: object) -> ColumnElement[bool]:
        column = self._column(name)
        if isinstance(value, (tuple, list, set, frozenset)):
            return column.in_(list(value))
        return column.is_(None) if value is None else column == value

    def _column(self, name: str) -> ColumnElement[Any]:
        if name not in self._table.columns:
            raise TypeError(f"{self._table.name} has no field {name!r}")
        return self._table.columns[name]


class Rows(ReadRows[RecordT], Generic[RecordT, DraftT]):
    """The records of one table, to read and to change."""

    def __init__(
        self,
        connection: Connection,
        table: Table,
        record_type: type[RecordT],
        draft_type: type[DraftT],
        deltas: list[RowDelta],
        *,
        cascades: Collection[Rows[Any, Any]] = (),
    ) -> None:
        super().__init__(connection, table, record_type)
        self._draft_type = draft_type
        self._deltas = deltas
        self._cascades = cascades

    def add(self, draft: DraftT) -> RecordT:
        """Store a draft and give the record it became.

        Raises
        ------
        RowRefused
            If a value breaks a rule of the table.
        """
        names = (field.name for field in fields(self._draft_type))
        values = {name: getattr(draft, name) for name in names}
        with told():
            result = self._connection.execute(insert(self._table).values(values))
            (row_id,) = result.inserted_primary_key or (None,)
            assert isinstance(row_id, int)
        return self._note(row_id, before=None)

    def change(self, row_id: int, **changed: object) -> RecordT:
        """Set some fields of a record and give it as it is then.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        RowRefused
            If a value breaks a rule of the table.
        TypeError
            If a field is unknown, or is the id.
        """
        for name in changed:
            if name == "id":
                raise TypeError("an id never changes")
            self._column(name)
        before = self._plain(row_id)
        if changed:
            with told():
                statement = update(self._table).where(self._table.c.id == row_id)
                self._connection.execute(statement.values(changed))
            return self._note(row_id, before=before)
        return self.get(row_id)

    def remove(self, row_id: int) -> None:
        """Take a record out, and with it the rows that go when it goes.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        RowRefused
            If other records still point at it.
        """
        before = self._plain(row_id)
        # The database would remove these by itself, but then no delta would bring them back.
        for rows in self._cascades:
            for dependent in rows.pointing_at(self._table, row_id):
                rows.remove(dependent.id)
        with told():
            self._connection.execute(delete(self._table).where(self._table.c.id == row_id))
        self._note_delta(row_id, before, None)

    def _plain(self, row_id: int) -> dict[str, object]:
        with told():
            row = plain_row(self._connection, self._table, row_id)
        if row is None:
            raise NoSuchRow(self._table.name, row_id)
        return row

    def _note(self, row_id: int, *, before: dict[str, object] | None) -> RecordT:
        """Note what became of a row, and give it as it is now."""
        record = self.get(row_id)
        dialect = self._connection.dialect
        columns = self._table.columns
        after = {c.name: to_plain(c, getattr(record, c.name), dialect) for c in columns}
        self._note_delta(row_id, before, after)
        return record

    def _note_delta(
        self, row_id: int, before: dict[str, object] | None, after: dict[str, object] | None
    ) -> None:
        if before != after:
            name = self._table.name
            self._deltas.append(RowDelta(table=name, row_id=row_id, before=before, after=after))
