"""Backups: copied through SQLite, opened and checked, described beside, thinned with age."""

from __future__ import annotations

import hashlib
import json
import logging
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from brewdesk.store.checks import check_sound, row_counts
from brewdesk.store.columns import instant_from, instant_text
from brewdesk.store.engine import opened
from brewdesk.store.errors import StoreTrouble, told
from brewdesk.store.files import (
    copy_store,
    discard,
    make_folder,
    put_in_place,
    unfinished,
)
from brewdesk.store.records import BackupInfo
from brewdesk.store.thinning import kept

REASONS = ("before-migration", "before-import", "before-restore", "daily", "manual")

_END = ".sqlite"

log = logging.getLogger(__name__)


def backup_folder(store_path: Path) -> Path:
    """Give the folder that holds the backups of one store."""
    return store_path.parent / "backups" / store_path.stem


def make_backup(
    store_path: Path,
    reason: str,
    *,
    now: datetime,
    copying: Callable[[Path, Path], None] = copy_store,
) -> BackupInfo:
    """Copy the store, prove the copy, describe it, then thin out the older ones.

    ``copying`` writes a copy of the store at its first argument into its second, which exists.

    Raises
    ------
    StoreTrouble
        damaged if the store is not sound (nothing is kept of it, no older backup goes),
        or what the disk says.
    """
    if reason not in REASONS:
        raise ValueError(f"{reason!r} is no reason for a backup")
    with told():
        target = _free_name(backup_folder(store_path), now, reason)
        make_folder(target.parent.parent)
        make_folder(target.parent)
        for leftover in target.parent.glob(".*.unfinished*"):
            leftover.unlink(missing_ok=True)
        copy = unfinished(target)
        try:
            copying(store_path, copy)
            described = _describe(copy, target, reason, now)
            _write_sidecar(described)
            put_in_place(copy, target)
        finally:
            discard(copy)
    thin(store_path, now=now)
    return described


def backups(store_path: Path) -> tuple[BackupInfo, ...]:
    """List the finished backups of a store, newest first. Their content is not checked here."""
    found = []
    for sidecar in backup_folder(store_path).glob(f"*{_END}.json"):
        try:
            info = _from_sidecar(sidecar)
        except (OSError, ValueError, KeyError, TypeError) as error:
            log.warning("backup description %s cannot be read: %s", sidecar.name, error)
            continue
        if info.path.exists():
            found.append(info)
    return tuple(sorted(found, key=lambda info: (info.made_at, info.path.name), reverse=True))


def verify_backup(info: BackupInfo) -> None:
    """Check that a backup is still what it was when it was made.

    Raises
    ------
    StoreTrouble
        damaged, or what the disk says.
    """
    with told():
        if _sha256(info.path) != info.sha256:
            raise StoreTrouble("damaged", f"{info.path.name} is not what was written")
        with opened(info.path, "ro&immutable=1") as connection:
            check_sound(connection, thorough=True)
            if row_counts(connection) != info.row_counts:
                raise StoreTrouble("damaged", f"{info.path.name} has other rows than described")


@dataclass(frozen=True, slots=True, kw_only=True)
class Inside:
    """What a backup tells of itself. ``newest_act_id`` is 0 if nothing had been done."""

    row_counts: dict[str, int]
    newest_reading_at: datetime | None
    newest_act_at: datetime | None
    newest_act_id: int


def look_inside(info: BackupInfo) -> Inside:
    """Check a backup and say what it holds.

    Raises
    ------
    StoreTrouble
        As `verify_backup`.
    """
    verify_backup(info)
    with told(), opened(info.path, "ro&immutable=1") as connection:
        reading_at = connection.execute("SELECT max(at) FROM reading").fetchone()[0]
        act_id, act_at = connection.execute("SELECT max(id), max(at) FROM act").fetchone()
    return Inside(
        row_counts=info.row_counts,
        newest_reading_at=instant_from(reading_at) if reading_at else None,
        newest_act_at=instant_from(act_at) if act_at else None,
        newest_act_id=int(act_id or 0),
    )


def thin(store_path: Path, *, now: datetime) -> None:
    """Delete backups that newer ones make superfluous.

    Raises
    ------
    StoreTrouble
        What the disk says.
    """
    listed = backups(store_path)
    keep = kept([info.made_at for info in listed], now)
    with told():
        for info in listed:
            if info.made_at not in keep:
                info.path.unlink(missing_ok=True)
                _sidecar(info.path).unlink(missing_ok=True)


def _free_name(folder: Path, now: datetime, reason: str) -> Path:
    stem = f"{now.astimezone(UTC):%Y-%m-%dT%H%M%S.%fZ}-{reason}"
    again = 1
    path = folder / f"{stem}{_END}"
    while path.exists():
        again += 1
        path = folder / f"{stem}-{again}{_END}"
    return path


def _describe(copy: Path, target: Path, reason: str, now: datetime) -> BackupInfo:
    with opened(copy, "rw") as connection:
        check_sound(connection, thorough=True)
        counts = row_counts(connection)
        number = connection.execute("PRAGMA user_version").fetchone()[0]
        uid = connection.execute("SELECT uid FROM pantry").fetchone()
    if uid is None:
        raise StoreTrouble("damaged", "the pantry has no row")
    return BackupInfo(
        path=target,
        made_at=now.astimezone(UTC),
        reason=reason,
        schema_number=number,
        pantry_uid=uid[0],
        size_bytes=copy.stat().st_size,
        sha256=_sha256(copy),
        row_counts=counts,
    )


def _sidecar(backup: Path) -> Path:
    return backup.with_name(backup.name + ".json")


def _write_sidecar(info: BackupInfo) -> None:
    described = {
        "file": info.path.name,
        "made_at": instant_text(info.made_at),
        "reason": info.reason,
        "schema_number": info.schema_number,
        "pantry_uid": info.pantry_uid,
        "size_bytes": info.size_bytes,
        "sha256": info.sha256,
        "row_counts": info.row_counts,
    }
    target = _sidecar(info.path)
    writing = unfinished(target)
    try:
        writing.write_text(json.dumps(described, indent=1) + "\n", encoding="utf-8")
        put_in_place(writing, target)
    finally:
        discard(writing)


def _from_sidecar(sidecar: Path) -> BackupInfo:
    described = json.loads(sidecar.read_text(encoding="utf-8"))
    if not isinstance(described, Mapping):
        raise TypeError("not an object")
    return BackupInfo(
        path=sidecar.with_name(Path(str(described["file"])).name),
        made_at=instant_from(described["made_at"]),
        reason=str(described["reason"]),
        schema_number=int(described["schema_number"]),
        pantry_uid=str(described["pantry_uid"]),
        size_bytes=int(described["size_bytes"]),
        sha256=str(described["sha256"]),
        row_counts={str(name): int(rows) for name, rows in described["row_counts"].items()},
    )


def _sha256(finished: Path) -> str:
    """Give the content hash of a finished backup; never of a store that is open."""
    with finished.open("rb") as stream:
        return hashlib.file_digest(stream, "sha256").hexdigest()
