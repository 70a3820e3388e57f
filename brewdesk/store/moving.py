"""A pantry from a file onto a server, and back: everything along, proven, the old one left."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from brewdesk.store.backup import make_backup
from brewdesk.store.desklocal import DeskIdentity
from brewdesk.store.engine import BUSY_TIMEOUT_S
from brewdesk.store.errors import StoreTrouble, told
from brewdesk.store.files import discard, make_folder, put_in_place, unfinished
from brewdesk.store.servercopy import Sums, copy_to_file, copy_to_server
from brewdesk.store.serverengine import make_server_engine, take_write_lock
from brewdesk.store.serverschema import is_laid_out, lay_out
from brewdesk.store.serverstore import ServerStore
from brewdesk.store.serverurl import server_url
from brewdesk.store.store import Store


def move_to_server(path: Path, address: str, *, desk: DeskIdentity, now: datetime) -> Sums:
    """Copy the pantry at ``path`` into a database that holds none; the file stays as it is.

    All of it arrives in one transaction, or nothing. Nobody may have the file open.

    Raises
    ------
    StoreTrouble
        file_gone, not_empty if there is a pantry already, or what the disk or the server says.
    """
    if not path.exists():
        raise StoreTrouble("file_gone", str(path))
    url = server_url(address)
    store = Store.open(path, now=now)  # an older one is brought up to date by this
    try:
        engine = make_server_engine(url, busy_timeout_s=BUSY_TIMEOUT_S)
        try:
            with (
                store.still_copy(path) as copy,
                told(database_only=True),
                engine.begin() as connection,
            ):
                take_write_lock(connection)
                if is_laid_out(connection):
                    raise StoreTrouble("not_empty", "the database holds a pantry")
                lay_out(connection)
                return copy_to_server(copy, connection, desk.uid)
        finally:
            engine.dispose()
    finally:
        store.close()


def move_to_file(address: str, path: Path, *, desk: DeskIdentity, now: datetime) -> Sums:
    """Copy the pantry on a server into a new file at ``path``; the server's stays as it is.

    A backup of the file is made at once, beside it.

    Raises
    ------
    StoreTrouble
        not_empty if there is such a file, or what the disk or the server says.
    """
    if path.exists():
        raise StoreTrouble("not_empty", str(path))
    _refuse_bare(address)
    store = ServerStore.open(address, path, desk=desk, now=now)
    try:
        with told():
            make_folder(path.parent)
            building = unfinished(path)
        try:
            with told(database_only=True), store.still_connection() as connection:
                building.unlink()
                sums = copy_to_file(connection, building, desk.uid)
            if path.exists():
                raise StoreTrouble("not_empty", str(path))
            with told():
                put_in_place(building, path)
        finally:
            discard(building)
    finally:
        store.close()
    make_backup(path, "manual", now=now)
    return sums


def _refuse_bare(address: str) -> None:
    """Refuse a database without a store: opening it would lay one out."""
    engine = make_server_engine(server_url(address), busy_timeout_s=BUSY_TIMEOUT_S)
    try:
        with told(), engine.begin() as connection:
            if not is_laid_out(connection):
                raise StoreTrouble("no_pantry_there", "the database holds no pantry")
    finally:
        engine.dispose()
