"""Bring an export in, as a new pantry file: looked at first, proven row by row, whole or not.

The pantry that is open is never touched. The new one is built in a folder of its own beside
its place, and moved there when every row and every photo has been proven.
"""

from __future__ import annotations

import base64
import binascii
import hashlib
import os
import secrets
import shutil
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import Any

from brewdesk.services.acts import ActKind
from brewdesk.services.exportformat import TableNote
from brewdesk.services.exporting import never, room_for
from brewdesk.services.exportmanifest import Manifest, parsed, read_manifest
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.exportzip import ExportZip, copy_out, opened_export
from brewdesk.services.packedsamples import SAMPLE_BYTES
from brewdesk.services.photofiles import MAX_BYTES, PhotoFolder
from brewdesk.services.wording.acts import act_text
from brewdesk.store.errors import StoreTrouble, trouble_from
from brewdesk.store.files import put_in_place, sync_file, sync_folder
from brewdesk.store.identify import SIDE_FILES, side_file
from brewdesk.store.store import Store
from brewdesk.store.wholetables import NewFile, Plain, PlainRow

_BLOCK = 500  # rows
_BLOCK_BYTES = 8_000_000
_ROOM_FACTOR = 3  # the new file, its journal, and the text it was read from
_ACTS_AT_A_TIME = 400
_BUILDING = ".importing"


@dataclass(frozen=True, slots=True, kw_only=True)
class Imported:
    """What came in."""

    path: Path
    rows: int
    photos: int
    missing: int


def examine_export(path: Path) -> Manifest:
    """Look at an archive: what it says it holds. Quick; nothing is believed yet.

    Raises
    ------
    ExportTrouble
        "unreadable", "not_an_export", "newer_export", "unsafe", "too_large" or "damaged".
    """
    with opened_export(path) as archive:
        return read_manifest(archive)


def import_export(
    path: Path,
    target: Path,
    *,
    now: datetime,
    progress: Callable[[float], None] = lambda _share: None,
    is_cancelled: Callable[[], bool] = never,
) -> Imported:
    """Make a new pantry at ``target`` from an archive. Slow: run it as a job.

    Parameters
    ----------
    path, target
        The archive; where the new pantry is to be, and its photos beside it. Nothing may
        stand there.
    now
        The present.
    progress
        Told the share that is read, 0 to 1.
    is_cancelled
        Asked every few hundred rows and before each photo.

    Raises
    ------
    ExportTrouble
        As `examine_export`; "row_refused" with entry and line for a row that breaks a rule,
        "photo_missing", "target_taken", "no_folder", "cancelled", "disk_full" or
        "not_writable". Then nothing is left at ``target``.
    """
    target = target.absolute()
    check_target(target)
    with _told(), opened_export(path) as archive:
        manifest = read_manifest(archive)
        if room_for(target.parent) < _ROOM_FACTOR * manifest.total_bytes:
            raise ExportTrouble("disk_full", f"{manifest.total_bytes} bytes are to come")
        _clear_leftovers(target)
        folder = target.with_name(f".{target.name}.{secrets.token_hex(4)}{_BUILDING}")
        folder.mkdir(mode=0o700)
        try:
            work = _Work(archive, manifest, folder / target.name, progress, is_cancelled)
            work.build()
            _prove(work.path, now, work.hashes, manifest)
            progress(1.0)
            _move(work.path, target)
        finally:
            shutil.rmtree(folder, ignore_errors=True)
    return Imported(
        path=target,
        rows=sum(note.rows for note in manifest.tables),
        photos=len(manifest.photos),
        missing=len(manifest.missing_photos),
    )


def check_target(target: Path) -> None:
    """Refuse a place where something stands already: nothing is ever written over.

    Raises
    ------
    ExportTrouble
        "target_taken" or "no_folder".
    """
    if not target.parent.is_dir():
        raise ExportTrouble("no_folder", str(target.parent))
    beside = (side_file(target, end) for end in (*SIDE_FILES, ".restored"))
    for place in (target, PhotoFolder(target).root, *beside):
        if os.path.lexists(place):
            raise ExportTrouble("target_taken", str(place))


@dataclass(slots=True)
class _Work:
    """One import under way; the new pantry is built at ``path``."""

    archive: ExportZip
    manifest: Manifest
    path: Path
    progress: Callable[[float], None]
    is_cancelled: Callable[[], bool]
    done: int = 0
    hashes: set[str] = field(default_factory=set)

    def build(self) -> None:
        """Write all tables, then all photos."""
        with NewFile(self.path, self.manifest.schema) as new:
            named = {note.name for note in self.manifest.tables}
            if named != set(new.tables()) or len(named) < len(self.manifest.tables):
                raise ExportTrouble("not_an_export", f"tables: {sorted(named)}"[:500])
            for note in self.manifest.tables:
                self._table(new, note)
            try:
                new.set_last_ids(self.manifest.last_ids)
                new.finish()
            except StoreTrouble as trouble:
                if trouble.code in ("row_refused", "damaged"):
                    raise ExportTrouble("row_refused", trouble.detail) from trouble
                raise
        for photo in self.manifest.photos:
            if photo.size_bytes > MAX_BYTES:
                raise ExportTrouble("too_large", where=photo.file)
            self._step(0)
            name = photo.file.removeprefix("photos/")
            place = PhotoFolder(self.path).root / name[:2] / name
            place.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
            with place.open("xb") as file:
                copy_out(self.archive.pieces(photo), file, self._step)
            place.chmod(0o600)
            sync_file(place)
            self.hashes.add(photo.sha256)

    def _table(self, new: NewFile, note: TableNote) -> None:
        kinds = new.columns(note.name)
        if set(kinds) != set(note.columns) or len(kinds) != len(note.columns):
            raise ExportTrouble("not_an_export", "other columns", where=note.file.file)
        samples = _Samples() if note.name == "temperature_chunk" else None
        rows: list[PlainRow] = []
        first, size, count = 1, 0, 0
        for count, line in enumerate(self.archive.lines(note.file), 1):
            if count > note.rows:
                break
            row = _row(line, note, kinds, count)
            if samples is not None:
                samples.take(row, note.columns)
            rows.append(row)
            size += len(line) + 1
            if len(rows) >= _BLOCK or size >= _BLOCK_BYTES:
                self._add(new, note, rows, first)
                self._step(size)
                first, size, rows = count + 1, 0, []
        if count != note.rows:
            raise ExportTrouble("damaged", "not as many rows as it says", where=note.file.file)
        self._add(new, note, rows, first)
        self._step(size)
        if samples is not None and not samples.are_sound():
            raise ExportTrouble("damaged", "samples under another hash", where=note.file.file)

    def _add(self, new: NewFile, note: TableNote, rows: Sequence[PlainRow], first: int) -> None:
        bad = new.add(note.name, note.columns, rows)
        if bad is not None:
            raise ExportTrouble("row_refused", where=note.file.file, line=first + bad)

    def _step(self, size_bytes: int) -> None:
        if self.is_cancelled():
            raise ExportTrouble("cancelled")
        self.done += size_bytes
        # Proving the whole takes a while too; the last step is told when it is done.
        self.progress(min(0.99, self.done / max(1, self.manifest.total_bytes)))


class _Samples:
    """Proves that packed samples are what their hash says, chunk by chunk."""

    def __init__(self) -> None:
        self._digests: dict[str, Any] = {}
        self._next: dict[str, int] = {}
        self._is_whole = True

    def take(self, row: PlainRow, columns: Sequence[str]) -> None:
        said = dict(zip(columns, row, strict=True))
        content_hash, samples = str(said["content_hash"]), said["samples"]
        if not isinstance(samples, bytes) or len(samples) % SAMPLE_BYTES:
            self._is_whole = False
            return
        self._is_whole &= said["position"] == self._next.get(content_hash, 0)
        self._next[content_hash] = self._next.get(content_hash, 0) + 1
        self._digests.setdefault(content_hash, hashlib.sha256()).update(samples)

    def are_sound(self) -> bool:
        return self._is_whole and all(
            digest.hexdigest() == content_hash for content_hash, digest in self._digests.items()
        )


def _row(line: bytes, note: TableNote, kinds: dict[str, str], number: int) -> PlainRow:
    where = note.file.file
    said = parsed(line, where, number)
    if len(said) != len(note.columns) or set(said) != set(note.columns):
        raise ExportTrouble("row_refused", "other columns", where=where, line=number)
    row: list[Plain] = []
    for column in note.columns:
        value = said[column]
        if kinds[column] == "BLOB" and isinstance(value, str):
            try:
                value = base64.b64decode(value, validate=True)
            except (binascii.Error, ValueError):
                raise ExportTrouble("row_refused", column, where=where, line=number) from None
        if isinstance(value, bool) or not (
            value is None or isinstance(value, (str, int, float, bytes))
        ):
            raise ExportTrouble("row_refused", column, where=where, line=number)
        row.append(value)
    return tuple(row)


def _prove(path: Path, now: datetime, hashes: set[str], manifest: Manifest) -> None:
    """Open the new pantry as the program would, and tell every act of its history."""
    try:
        store = Store.open(path, now=now)
    except StoreTrouble as trouble:
        raise ExportTrouble("row_refused", f"it does not open: {trouble}") from trouble
    known = hashes | set(manifest.missing_photos)
    try:
        with store.read() as unit:
            for photo in unit.photos.where():
                if photo.content_hash not in known:
                    raise ExportTrouble("photo_missing", photo.content_hash[:64])
            after = 0
            while acts := unit.acts.after(after, limit=_ACTS_AT_A_TIME):
                for act in acts:
                    _prove_act(act)
                after = acts[-1].id
    finally:
        store.close()


def _prove_act(act: Any) -> None:  # noqa: ANN401  # an `Act`
    try:
        if not isinstance(act.facts, dict) or not act_text(act):
            raise ValueError("no facts")
        ActKind(act.kind)
    except Exception as error:  # facts of any form may do anything to the words about them
        raise ExportTrouble("row_refused", repr(error)[:200], where=f"act {act.id}") from error


def _move(built: Path, target: Path) -> None:
    """Put the proven pantry in its place: its photos first, since the file is what counts."""
    check_target(target)
    photos, place = PhotoFolder(built).root, PhotoFolder(target).root
    if photos.exists():
        os.rename(photos, place)
    try:
        put_in_place(built, target)
    except BaseException:
        if place.exists() and not photos.exists():
            os.rename(place, photos)
        raise
    sync_folder(target.parent)


def _clear_leftovers(target: Path) -> None:
    """Delete what an earlier import to the same place left when the power went."""
    for place in target.parent.glob(f".*{_BUILDING}"):
        if place.name.startswith(f".{target.name}.") and place.is_dir() and not place.is_symlink():
            shutil.rmtree(place, ignore_errors=True)


@contextmanager
def _told() -> Iterator[None]:
    """Turn what the disk and the store say into trouble of this import."""
    try:
        yield
    except StoreTrouble as trouble:
        raise ExportTrouble(_OF_STORE.get(trouble.code, "not_writable"), str(trouble)) from trouble
    except OSError as error:
        code = trouble_from(error)
        said = _OF_STORE.get(code.code if code is not None else "", "not_writable")
        raise ExportTrouble(said, str(error)) from error


_OF_STORE = {"disk_full": "disk_full", "row_refused": "row_refused"}
