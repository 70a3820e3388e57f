"""Move a pantry between a file and a server, its photos too. Nothing is taken from the old one."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from brewdesk.services.photofiles import PhotoFolder, PhotoTrouble
from brewdesk.store.desklocal import DeskIdentity
from brewdesk.store.moving import move_to_file, move_to_server
from brewdesk.store.serverstore import ServerStore
from brewdesk.store.store import Store


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """What arrived. ``missing`` counts photos that an entry names and nobody has."""

    rows: int
    photos: int
    missing: int


def to_server(path: Path, address: str, *, desk: DeskIdentity, now: datetime) -> Moved:
    """Copy the pantry at ``path``, with its photos, into a database that holds none.

    Raises
    ------
    StoreTrouble
        As `brewdesk.store.moving.move_to_server`.
    PhotoTrouble
        If a photo's file cannot be read.
    """
    sums = move_to_server(path, address, desk=desk, now=now)
    folder = PhotoFolder(path)
    store = ServerStore.open(address, path, desk=desk, now=now)
    try:
        for content_hash, file in folder.files().items():
            store.photos.keep(content_hash, file.suffix.removeprefix("."), _bytes_of(file))
        with store.read() as unit:
            wanted = {photo.content_hash for photo in unit.photos.where()}
        arrived = store.photos.names().keys()
    finally:
        store.close()
    rows = sum(one.rows for one in sums.values())
    return Moved(rows=rows, photos=len(arrived), missing=len(wanted - arrived))


def _bytes_of(file: Path) -> bytes:
    try:
        return file.read_bytes()
    except OSError as error:
        raise PhotoTrouble("unreadable", str(error)) from error


def to_file(address: str, path: Path, *, desk: DeskIdentity, now: datetime) -> Moved:
    """Copy the pantry on a server, with its photos, into a new file at ``path``.

    Raises
    ------
    StoreTrouble
        As `brewdesk.store.moving.move_to_file`.
    PhotoTrouble
        If a photo cannot be written.
    """
    sums = move_to_file(address, path, desk=desk, now=now)
    folder = PhotoFolder(path)
    server = ServerStore.open(address, path, desk=desk, now=now)
    try:
        for content_hash, ending in server.photos.names().items():
            data = server.photos.fetch(content_hash)
            if data is not None:
                folder.keep_as(content_hash, ending, data)
    finally:
        server.close()
    store = Store.open(path, now=now)
    try:
        with store.read() as unit:
            wanted = {photo.content_hash for photo in unit.photos.where()}
    finally:
        store.close()
    arrived = folder.files().keys()
    rows = sum(one.rows for one in sums.values())
    return Moved(rows=rows, photos=len(arrived), missing=len(wanted - arrived))
