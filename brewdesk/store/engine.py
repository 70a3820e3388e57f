"""The one place that opens SQLite files: connections, pragmas, and how transactions begin."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.engine import URL
from sqlalchemy.pool import QueuePool

from brewdesk.store.errors import StoreTrouble

BUSY_TIMEOUT_S = 5.0

# How a transaction begins; SQLAlchemy hands it on to the listener below.
_BEGIN = "brewdesk_begin"


def connect(path: Path, mode: str, *, busy_timeout_s: float = BUSY_TIMEOUT_S) -> sqlite3.Connection:
    """Open an SQLite file that exists.

    Parameters
    ----------
    path
        The file. It is never made here: without it, SQLITE_CANTOPEN is raised.
    mode
        "rw", "ro", or "ro&immutable=1" to look without touching locks or journals.
    busy_timeout_s
        How long to wait for another program's lock [s].
    """
    # isolation_level=None: sqlite3 itself begins nothing, so DDL is inside our transactions.
    return sqlite3.connect(
        f"{path.absolute().as_uri()}?mode={mode}",
        uri=True,
        timeout=busy_timeout_s,
        isolation_level=None,
        check_same_thread=False,  # the pool hands one connection to one thread at a time
    )


@contextmanager
def opened(path: Path, mode: str) -> Iterator[sqlite3.Connection]:
    """Open an SQLite file for the time of a block, outside any pool."""
    with closing(connect(path, mode)) as connection:
        yield connection


def make_engine(
    path: Path,
    *,
    read_only: bool = False,
    foreign_keys: bool = True,
    busy_timeout_s: float = BUSY_TIMEOUT_S,
) -> Engine:
    """Make the engine of one file; nothing is opened before the first unit.

    ``foreign_keys=False`` is for migrations only: rebuilding a parent table with keys
    enforced deletes its children (https://www.sqlite.org/foreignkeys.html, section 5).
    """

    def opening() -> sqlite3.Connection:
        connection = connect(path, "ro" if read_only else "rw", busy_timeout_s=busy_timeout_s)
        try:
            _prepare(connection, foreign_keys=foreign_keys, read_only=read_only)
        except BaseException:
            connection.close()
            raise
        return connection

    engine = create_engine(
        URL.create("sqlite", database=str(path)),
        creator=opening,
        poolclass=QueuePool,
        pool_size=3,
        max_overflow=2,
        pool_timeout=busy_timeout_s,
    )
    event.listen(engine, "begin", _begin)
    return engine


def begin_immediate(connection: Connection) -> Connection:
    """Make the connection's next transaction take the write lock as it begins."""
    return connection.execution_options(**{_BEGIN: "BEGIN IMMEDIATE"})


def _begin(connection: Connection) -> None:
    # A reader that turned writer could find the file changed under it, hence IMMEDIATE.
    connection.exec_driver_sql(connection.get_execution_options().get(_BEGIN, "BEGIN"))


def _prepare(connection: sqlite3.Connection, *, foreign_keys: bool, read_only: bool) -> None:
    """Set the pragmas of a connection and read each one back.

    SQLite passes over a pragma it cannot follow without a word.
    """
    wanted: dict[str, tuple[str, object]] = {
        # One plain file at rest; EXTRA also syncs the folder, so a commit outlives a power cut.
        "synchronous": ("EXTRA", 3),
        "foreign_keys": ("ON", 1) if foreign_keys else ("OFF", 0),
        "trusted_schema": ("OFF", 0),
        "cell_size_check": ("ON", 1),
    }
    if not read_only:
        wanted["journal_mode"] = ("DELETE", "delete")
    for name, (setting, expected) in wanted.items():
        connection.execute(f"PRAGMA {name}={setting}").fetchone()
        answer = connection.execute(f"PRAGMA {name}").fetchone()[0]
        if answer != expected:
            raise StoreTrouble("cannot_open", f"PRAGMA {name} is {answer!r}, not {expected!r}")
