"""Checks of a whole file: that it is sound, and that all rows arrived."""

from __future__ import annotations

import sqlite3

from brewdesk.store.errors import StoreTrouble

# Above this size the thorough check is left to backups: some 10 ms per MB were measured.
THOROUGH_UP_TO_BYTES = 16_000_000


def check_sound(connection: sqlite3.Connection, *, thorough: bool) -> None:
    """Check pages, indexes, constraints and references of a file.

    Raises
    ------
    StoreTrouble
        damaged, with what SQLite found.
    """
    pragma = "integrity_check(5)" if thorough else "quick_check(5)"
    found = [str(row[0]) for row in connection.execute(f"PRAGMA {pragma}")]
    if found != ["ok"]:
        raise StoreTrouble("damaged", "; ".join(found))
    orphans = connection.execute("PRAGMA foreign_key_check").fetchmany(5)
    if orphans:
        raise StoreTrouble("damaged", f"references to nothing: {orphans}")


def row_counts(connection: sqlite3.Connection) -> dict[str, int]:
    """Count the rows of every table of ours."""
    names = [
        str(row[0])
        for row in connection.execute(
            "SELECT name FROM sqlite_schema WHERE type = 'table'"
            " AND name NOT LIKE 'sqlite~_%' ESCAPE '~' AND name <> 'alembic_version'"
            " ORDER BY name"
        )
    ]
    return {
        name: int(connection.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0])
        for name in names
    }
