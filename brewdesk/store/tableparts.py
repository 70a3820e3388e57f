"""The pieces that tables are made of: named checks, ranges, links.

Private to the store. Every check has a name, so that a migration can find it again.
"""

from __future__ import annotations

from enum import Enum
from typing import Any

from sqlalchemy import (
    CheckConstraint,
    Column,
    ForeignKey,
    Integer,
    MetaData,
    PrimaryKeyConstraint,
    Table,
    UniqueConstraint,
)

from brewdesk.store.columns import Choice, Finite, Instant, Words

metadata = MetaData(
    naming_convention={
        "pk": "pk_%(table_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
    }
)

Item = Column[Any] | CheckConstraint | UniqueConstraint


def one_of(column: str, values: tuple[str, ...]) -> str:
    """Word a check that a column holds one of some values."""
    listed = ", ".join(f"'{value}'" for value in values)
    return f"{column} IN ({listed})"


def values(kind: type[Enum]) -> tuple[str, ...]:
    """Give the stored values of an enumeration."""
    return tuple(str(member.value) for member in kind)


def number(name: str, low: float, high: float, *, optional: bool = False) -> list[Item]:
    """Make a number column that keeps to a range; the range also keeps infinity out."""
    check = CheckConstraint(f"{name} BETWEEN {low:g} AND {high:g}", name=name)
    return [Column(name, Finite(), nullable=optional), check]


def whole(name: str, low: int, high: int, *, optional: bool = False) -> list[Item]:
    """Make a whole-number column that keeps to a range."""
    check = CheckConstraint(f"{name} BETWEEN {low} AND {high}", name=name)
    return [Column(name, Integer(), nullable=optional), check]


def choice(name: str, kind: type[Enum], *, optional: bool = False) -> list[Item]:
    """Make a column that holds one member of an enumeration."""
    check = CheckConstraint(one_of(name, values(kind)), name=name)
    return [Column(name, Choice(kind), nullable=optional), check]


def instant(name: str, *, optional: bool = False) -> list[Item]:
    """Make a column that holds an instant as fixed-width UTC text."""
    check = CheckConstraint(f"{name} LIKE '____-__-__T__:__:__.______Z'", name=name)
    return [Column(name, Instant(), nullable=optional), check]


def words(name: str, most: int, *, least: int = 0) -> list[Item]:
    """Make a text column of limited length."""
    check = CheckConstraint(f"length({name}) BETWEEN {least} AND {most}", name=name)
    return [Column(name, Words(), nullable=False), check]


def link(name: str, table: str, *, optional: bool = False, cascade: bool = False) -> list[Item]:
    """Make a column that names a row of another table."""
    target = ForeignKey(f"{table}.id", ondelete="CASCADE" if cascade else None)
    return [Column(name, Integer(), target, nullable=optional)]


def rule(name: str, condition: str) -> list[Item]:
    """Make a check over several columns."""
    return [CheckConstraint(condition, name=name)]


def table(name: str, *groups: list[Item]) -> Table:
    """Make a table with an id of its own."""
    # Ids are never used again: acts in the history go on naming rows that are gone.
    items = [item for group in groups for item in group]
    number = Column("id", Integer(), nullable=False)
    key = PrimaryKeyConstraint("id")
    return Table(name, metadata, number, *items, key, sqlite_strict=True, sqlite_autoincrement=True)
