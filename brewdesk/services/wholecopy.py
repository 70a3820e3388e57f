"""Copy a pantry, photos and all, into any folder: proven, and ready to be opened there."""

from __future__ import annotations

import hashlib
import os
import secrets
import shutil
import sqlite3
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from brewdesk.services.exporting import never, whats_told
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.photofiles import PhotoFolder, PhotoTrouble, content_hash_of
from brewdesk.store.checks import check_sound, row_counts
from brewdesk.store.engine import opened
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.files import make_folder, sync_file, sync_folder, unfinished
from brewdesk.store.openstore import OpenStore

_COPYING = ".copying"


@dataclass(frozen=True, slots=True, kw_only=True)
class Copied:
    """What is in a copy. ``missing`` counts photos whose files were not to be had."""

    folder: Path
    rows: int
    photos: int
    missing: int
    size_bytes: int


def copy_everything(
    store: OpenStore,
    folder: Path,
    *,
    now: datetime,
    progress: Callable[[float], None] = lambda _share: None,
    is_cancelled: Callable[[], bool] = never,
) -> Copied:
    """Copy the pantry, also one in use, into a new folder below ``folder``. Slow: run as a job.

    It is made under another name, read back, and named when it is proven: a folder that
    broke off is never taken for a copy.

    Raises
    ------
    ExportTrouble
        "no_folder", "cancelled", "disk_full" or "not_writable"; then nothing is left.
    StoreTrouble
        If the pantry cannot be read or is damaged.
    """
    if not folder.is_dir():
        raise ExportTrouble("no_folder", str(folder))
    target = _free_name(folder, store.path.stem, now)
    building = folder / f".{target.name}.{secrets.token_hex(4)}{_COPYING}"
    with whats_told():
        make_folder(building)
        try:
            copied = _fill(store, building, target, progress, is_cancelled)
            os.replace(building, target)
            sync_folder(folder)
        finally:
            shutil.rmtree(building, ignore_errors=True)
    progress(1.0)
    return copied


def _fill(
    source: OpenStore,
    building: Path,
    target: Path,
    progress: Callable[[float], None],
    is_cancelled: Callable[[], bool],
) -> Copied:
    store = building / source.path.name
    blank = unfinished(store)
    os.replace(blank, store)  # private from its first moment on
    source.copy_into(store)
    sync_file(store)
    with opened(store, "ro") as connection:
        check_sound(connection, thorough=True)
        rows = sum(row_counts(connection).values())
        named = _named_photos(connection)
    photos, missing, size = 0, 0, store.stat().st_size
    shelf = PhotoFolder(store).root
    local = PhotoFolder(source.path).root
    found = {path.name.partition(".")[0]: path for path in local.glob("??/*.*")}
    endings = source.photos.names() if source.photos is not None else {}
    for place, content_hash in enumerate(sorted(named)):
        if is_cancelled():
            raise ExportTrouble("cancelled")
        progress(place / len(named))
        path = found.get(content_hash)
        if path is not None and _copy_photo(path, shelf, content_hash):
            photos += 1
            size += path.stat().st_size
        elif data := _fetched(source, content_hash, endings):
            _keep(store, content_hash, endings[content_hash], data)
            photos += 1
            size += len(data)
        else:
            missing += 1
    for made in (*shelf.glob("??"), shelf, building):
        if made.is_dir():
            sync_folder(made)
    return Copied(folder=target, rows=rows, photos=photos, missing=missing, size_bytes=size)


def _fetched(source: OpenStore, content_hash: str, endings: Mapping[str, str]) -> bytes:
    """Return a photo that only the server has; nothing if it has not, or has another."""
    if source.photos is None or content_hash not in endings:
        return b""
    data = source.photos.fetch(content_hash) or b""
    return data if hashlib.sha256(data).hexdigest() == content_hash else b""


def _keep(store: Path, content_hash: str, ending: str, data: bytes) -> None:
    try:
        PhotoFolder(store).keep_as(content_hash, ending, data)
    except PhotoTrouble as trouble:
        is_full = trouble.code == "disk_full"
        raise ExportTrouble("disk_full" if is_full else "not_writable", trouble.detail) from trouble


def _named_photos(connection: sqlite3.Connection) -> set[str]:
    rows = connection.execute("SELECT DISTINCT content_hash FROM photo").fetchall()
    return {str(row[0]) for row in rows}


def _copy_photo(path: Path, shelf: Path, content_hash: str) -> bool:
    """Copy one photo and read it back; False if its file is not what was once taken in."""
    if path.is_symlink() or content_hash_of(path) != content_hash:
        return False
    target = shelf / content_hash[:2] / path.name
    for folder in (shelf, target.parent):
        make_folder(folder)
    shutil.copyfile(path, target)
    target.chmod(0o600)
    sync_file(target)
    if content_hash_of(target) != content_hash:
        raise StoreTrouble("io_error", f"{path.name} was not written as it was read")
    return True


def _free_name(folder: Path, stem: str, now: datetime) -> Path:
    name = f"{stem}-copy-{now.astimezone(UTC):%Y-%m-%d-%H%M}"
    path, again = folder / name, 1
    while path.exists():
        again += 1
        path = folder / f"{name}-{again}"
    return path
