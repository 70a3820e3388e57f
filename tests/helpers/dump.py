"""A store's content as text, to compare two states of it by eye or by ``==``."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

# The history grows by what the tests do to the rest, and packed samples outlive their entry;
# the others are book-keeping.
LEFT_OUT = ("act", "act_subject", "temperature_chunk", "sqlite_sequence", "alembic_version")


def dump(path: Path) -> str:
    """Return every row of every table but the history, one a line, in order of id or key."""
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
