"""Bring a store to the present schema: always on a copy, swapped in only when proven.

Alembic is imported when there is something to migrate, not at every start.
"""

from __future__ import annotations

import os
import shutil
import uuid
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, insert

from brewdesk.store.checks import check_sound, row_counts
from brewdesk.store.engine import connect, make_engine, opened
from brewdesk.store.errors import StoreTrouble, told, trouble_from
from brewdesk.store.files import (
    copy_store,
    discard,
    make_folder,
    put_in_place,
    unfinished,
)
from brewdesk.store.schema import APPLICATION_ID, SCHEMA_NUMBER, pantry


@dataclass(frozen=True, slots=True)
class Migrations:
    """A folder of Alembic revisions, and the schema number they lead to."""

    folder: Path
    number: int


CURRENT = Migrations(Path(__file__).resolve().parent / "migrations", SCHEMA_NUMBER)

# A copy, its journal, and room to rebuild the largest table.
_ROOM_FACTOR = 3
_OF_THE_DISK = frozenset({"disk_full", "io_error", "read_only"})


def create_store(path: Path, *, now: datetime, is_demo: bool, migrations: Migrations) -> None:
    """Make a new store at ``path``, where there must be none.

    It is built under another name, so that a crash leaves no half-made store behind.

    Raises
    ------
    StoreTrouble
        What the disk says; file_replaced if another program put a file there meanwhile.
    """
    with told():
        make_folder(path.parent)
        building = unfinished(path)
        try:
            _upgrade(building, migrations)
            engine = make_engine(building)
            try:
                with engine.begin() as connection:
                    connection.execute(
                        insert(pantry).values(
                            id=1, uid=uuid.uuid4().hex, created_at=now, is_demo=is_demo
                        )
                    )
            finally:
                engine.dispose()
            if path.exists():
                raise StoreTrouble("file_replaced", "a file appeared while the store was made")
            put_in_place(building, path)
        finally:
            discard(building)


def migrate_store(path: Path, *, migrations: Migrations) -> None:
    """Bring the store at ``path`` to the present schema. Nobody else may have it open.

    A backup is the caller's task, beforehand.

    Raises
    ------
    StoreTrouble
        migration_failed, disk_full, or what the disk says. The store is as it was.
    """
    with told():
        if shutil.disk_usage(path.parent).free < _ROOM_FACTOR * path.stat().st_size:
            raise StoreTrouble("disk_full", "no room to migrate a copy")
        copy = unfinished(path)
        try:
            copy_store(path, copy)
            with opened(copy, "ro") as connection:
                before = row_counts(connection)
            _upgrade(copy, migrations)
            _check_migrated(copy, before, migrations)
            put_in_place(copy, path)
        finally:
            discard(copy)


def lay_out(path: Path, number: int) -> None:
    """Lay out empty tables of the schema ``number`` in a file that is no live store.

    Raises
    ------
    StoreTrouble
        What the disk says; migration_failed if there was never such a schema.
    """
    with told():
        _upgrade(path, Migrations(CURRENT.folder, number), revision=f"{number:04d}")


def _upgrade(path: Path, migrations: Migrations, *, revision: str = "head") -> None:
    """Run the revisions on a file that is no live store."""
    # Off before any transaction: inside one the pragma does nothing, and rebuilding a
    # table with keys enforced deletes the rows that point at it.
    engine = make_engine(path, foreign_keys=False)
    try:
        with engine.begin() as connection:
            _run_alembic(connection, migrations, revision)
    finally:
        engine.dispose()
    with closing(connect(path, "rw")) as finishing:
        finishing.execute(f"PRAGMA application_id={APPLICATION_ID}")
        finishing.execute(f"PRAGMA user_version={migrations.number}")


def _run_alembic(connection: Connection, migrations: Migrations, revision: str) -> None:
    from alembic import command  # takes 0.1 s, which a start without migration need not pay
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(migrations.folder).replace("%", "%%"))
    config.set_main_option("path_separator", "os")
    config.attributes["connection"] = connection
    try:
        command.upgrade(config, revision)
    except Exception as error:
        # Whatever a revision raises, the store itself is untouched.
        trouble = trouble_from(error)
        if trouble is not None and trouble.code in _OF_THE_DISK:
            raise trouble from error
        raise StoreTrouble("migration_failed", repr(error)) from error


def _check_migrated(path: Path, before: dict[str, int], migrations: Migrations) -> None:
    with opened(path, "ro") as connection:
        try:
            check_sound(connection, thorough=True)
        except StoreTrouble as trouble:  # the copy is, not the store
            raise StoreTrouble("migration_failed", trouble.detail) from trouble
        after = row_counts(connection)
        number = connection.execute("PRAGMA user_version").fetchone()[0]
    lost = {name: rows for name, rows in before.items() if after.get(name, 0) < rows}
    if lost:
        raise StoreTrouble("migration_failed", f"rows would be lost from {sorted(lost)}")
    if number != migrations.number:
        raise StoreTrouble("migration_failed", f"schema {number} came out")


def is_writable(path: Path) -> bool:
    """Say whether the store and its folder can be written (a journal needs the folder)."""
    return os.access(path, os.W_OK) and os.access(path.parent, os.W_OK | os.X_OK)
