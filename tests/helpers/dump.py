"""A store's content as text, to compare two states of it by eye or by ``==``."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from brewdesk.store.openstore import OpenStore
from brewdesk.store.schema import metadata
from brewdesk.store.serverstore import ServerStore

# The history grows by what the tests do to the rest, and packed samples outlive their entry;
# the others are book-keeping.
LEFT_OUT = ("act", "act_subject", "temperature_chunk", "sqlite_sequence", "alembic_version")


def dump(where: Path | OpenStore) -> str:
    """Return every row of every table but the history, one a line, in order of id or key."""
    if isinstance(where, ServerStore):
        return _dump_of_server(where)
    path = where.path if isinstance(where, OpenStore) else where
    lines = []
    with closing(sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)) as connection:
        names = [
            row[0]
            for row in connection.execute(
                "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"
            )
        ]
        for name in names:
            if name in LEFT_OUT:
                continue
            cursor = connection.execute(f'SELECT * FROM "{name}" ORDER BY 1')
            columns = [column[0] for column in cursor.description]
            for row in cursor:
                said = " ".join(f"{c}={v!r}" for c, v in zip(columns, row, strict=True))
                lines.append(f"{name}: {said}")
    return "\n".join(lines)


def _dump_of_server(store: ServerStore) -> str:
    """Return the same of a store on a server, as its own desk sees it."""
    lines = []
    with store._engine.connect() as connection:
        for table in sorted(metadata.tables.values(), key=lambda table: table.name):
            if table.name in LEFT_OUT:
                continue
            columns = [column.name for column in table.columns]
            listed = ", ".join(f'"{name}"' for name in columns)
            found = connection.exec_driver_sql(f'SELECT {listed} FROM "{table.name}" ORDER BY 1')
            for row in found.all():
                said = " ".join(f"{c}={v!r}" for c, v in zip(columns, row, strict=True))
                lines.append(f"{table.name}: {said}")
    return "\n".join(lines)
