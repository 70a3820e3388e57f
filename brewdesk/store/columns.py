"""Column types: how enums, instants, numbers and words are kept, and what is refused.

Each type checks at the door, because SQLite would keep NaN as NULL without a word.
"""

from __future__ import annotations

import math
from datetime import UTC, datetime
from enum import Enum
from typing import Any, TypeVar

from sqlalchemy import REAL, Column, Dialect, Double, Integer, Text, TypeDecorator
from sqlalchemy.types import TypeEngine

EnumT = TypeVar("EnumT", bound=Enum)


def _text_for(dialect: Dialect) -> TypeEngine[Any]:
    """Give text that sorts by its code points, as SQLite's does, on a server of any language."""
    return dialect.type_descriptor(Text(collation="C" if dialect.name == "postgresql" else None))


class Choice(TypeDecorator[EnumT]):
    """An enum, kept as its text value."""

    impl = Text
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Give text in the order of its code points."""
        return _text_for(dialect)

    def __init__(self, kind: type[EnumT]) -> None:
        self.kind = kind
        super().__init__()

    def process_bind_param(self, value: EnumT | None, dialect: Dialect) -> str | None:
        """Give the text of a member; refuse anything else."""
        if value is None:
            return None
        if not isinstance(value, self.kind):
            raise ValueError(f"{value!r} is no {self.kind.__name__}")
        return str(value.value)

    def process_result_value(self, value: str | None, dialect: Dialect) -> EnumT | None:
        """Give the member of a stored text."""
        return None if value is None else self.kind(value)


class Instant(TypeDecorator[datetime]):
    """An aware time, kept as UTC text of fixed width so that text order is time order."""

    impl = Text
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Give text in the order of its code points."""
        return _text_for(dialect)

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> str | None:
        """Give '2026-11-25T09:12:58.123456Z'; refuse a time without zone."""
        return None if value is None else instant_text(value)

    def process_result_value(self, value: str | None, dialect: Dialect) -> datetime | None:
        """Give the aware UTC time of a stored text."""
        return None if value is None else instant_from(value)


class Finite(TypeDecorator[float]):
    """A number; not-a-number and infinity are refused."""

    impl = Double
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Give REAL on SQLite, where strict tables know no other name for it."""
        return dialect.type_descriptor(REAL() if dialect.name == "sqlite" else Double())

    def process_bind_param(self, value: float | None, dialect: Dialect) -> float | None:
        """Give a plain float; refuse what is not finite or not a number."""
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            raise ValueError(f"{value!r} is no number")
        if not math.isfinite(value):
            raise ValueError(f"{value!r} is not finite")
        return float(value) + 0.0  # SQLite keeps no sign of a zero


class Words(TypeDecorator[str]):
    """Text; NUL and lone surrogates are refused because no encoding keeps them."""

    impl = Text
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Give text in the order of its code points."""
        return _text_for(dialect)

    def process_bind_param(self, value: str | None, dialect: Dialect) -> str | None:
        """Give the text as it came."""
        if value is None:
            return None
        if not isinstance(value, str):
            raise ValueError(f"{value!r} is no text")
        if "\x00" in value:
            raise ValueError("text holds a NUL character")
        value.encode("utf-8")
        return value


class YesNo(TypeDecorator[bool]):
    """A truth value, kept as 0 or 1."""

    impl = Integer
    cache_ok = True

    def process_bind_param(self, value: bool | None, dialect: Dialect) -> int | None:
        """Give 0 or 1."""
        return None if value is None else int(value)

    def process_result_value(self, value: int | None, dialect: Dialect) -> bool | None:
        """Give the truth value of a stored number."""
        return None if value is None else bool(value)


def instant_text(value: datetime) -> str:
    """Give the stored text of an aware time.

    Raises
    ------
    ValueError
        If ``value`` has no zone.
    """
    if value.tzinfo is None or value.utcoffset() is None:
        raise ValueError(f"{value!r} has no time zone")
    return value.astimezone(UTC).isoformat(timespec="microseconds").replace("+00:00", "Z")


def instant_from(text: str) -> datetime:
    """Give the aware UTC time of a stored text."""
    return datetime.fromisoformat(text).astimezone(UTC)


def to_plain(column: Column[Any], value: object, dialect: Dialect) -> object:
    """Give ``value`` as the column keeps it: text, number or None."""
    kind = column.type
    return kind.process_bind_param(value, dialect) if isinstance(kind, TypeDecorator) else value


def from_plain(column: Column[Any], value: object, dialect: Dialect) -> object:
    """Give the value that ``to_plain`` made ``value`` from."""
    if isinstance(column.type, (Choice, Instant, YesNo)):
        return column.type.process_result_value(value, dialect)  # type: ignore[arg-type]  # plain by contract
    return value
