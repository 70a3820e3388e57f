"""Write everything in the pantry into one archive: tables, photos, and what each should be."""

from __future__ import annotations

import base64
import hashlib
import json
import os
import re
import shutil
import zipfile
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import IO, Any

from brewdesk.services.exportformat import (
    FORMAT,
    GUIDE,
    MANIFEST,
    PHOTO_NAME,
    VERSION,
    unit_of,
)
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.packedsamples import SAMPLE_BYTES, unpack
from brewdesk.services.photofiles import PhotoFolder
from brewdesk.services.spreadsheetcells import csv_row
from brewdesk.store.columns import instant_text
from brewdesk.store.errors import StoreTrouble, trouble_from
from brewdesk.store.files import discard, put_in_place, unfinished
from brewdesk.store.wholetables import PlainRow, StillCopy, TableShape, shapes, still_copy

_EVERY = 500  # rows between two looks at whether to stop
_HASH_IN_DELTAS = re.compile(r'"content_hash":"([0-9a-f]{64})"')
_PIECE = 1 << 20
# Where rows say when something happened, for the span of time that an export covers.
_MOMENTS = {"act": "at", "reading": "at", "care": "at", "batch": "planned_at"}


def never() -> bool:
    """Say that nobody has asked to stop."""
    return False


@dataclass(frozen=True, slots=True, kw_only=True)
class Exported:
    """What went into an archive. ``missing`` counts photos whose files were not to be had."""

    path: Path
    rows: int
    photos: int
    missing: int
    size_bytes: int


@dataclass(slots=True)
class _Span:
    first: str = ""
    last: str = ""

    def take(self, moment: str) -> None:
        # Fixed-width UTC text: its order is that of time.
        self.first = min(self.first or moment, moment)
        self.last = max(self.last, moment)


@dataclass(slots=True)
class _Work:
    """What all parts of one export share."""

    archive: zipfile.ZipFile
    made_at: datetime
    progress: Callable[[float], None]
    is_cancelled: Callable[[], bool]
    total: int
    done: int = 0
    span: _Span = field(default_factory=_Span)
    hashes: set[str] = field(default_factory=set)  # of photos there are
    perhaps: set[str] = field(default_factory=set)  # of photos that undo may bring back

    def step(self, count: int) -> None:
        if self.is_cancelled():
            raise ExportTrouble("cancelled")
        self.done += count
        self.progress(min(1.0, self.done / max(1, self.total)))

    @contextmanager
    def entry(self, name: str) -> Iterator[_Counted]:
        """Open an entry to be written; it is counted and hashed as it is."""
        local = self.made_at.astimezone(UTC)
        info = zipfile.ZipInfo(name, date_time=(max(1980, local.year), *local.timetuple()[1:6]))
        info.compress_type = (
            zipfile.ZIP_STORED if name.startswith("photos/") else zipfile.ZIP_DEFLATED
        )
        info.external_attr = 0o600 << 16
        with self.archive.open(info, "w", force_zip64=True) as stream:
            yield _Counted(stream)


class _Counted:
    """A stream that knows how much went through it, and its hash."""

    def __init__(self, stream: IO[bytes]) -> None:
        self._stream = stream
        self._digest = hashlib.sha256()
        self.size_bytes = 0

    def write(self, data: bytes) -> None:
        self._stream.write(data)
        self._digest.update(data)
        self.size_bytes += len(data)

    def note(self, name: str) -> dict[str, object]:
        return {"file": name, "bytes": self.size_bytes, "sha256": self._digest.hexdigest()}


def export_everything(
    store_path: Path,
    target: Path,
    *,
    now: datetime,
    program: str,
    guide: str = "",
    progress: Callable[[float], None] = lambda _share: None,
    is_cancelled: Callable[[], bool] = never,
    copying: Callable[[Path], AbstractContextManager[StillCopy]] | None = None,
) -> Exported:
    """Write the pantry at ``store_path``, also one in use, into an archive. Slow: run it as a job.

    It is written under another name and put in its place when it is whole: a file that
    stood there is replaced then, and not before.

    Parameters
    ----------
    store_path, target
        The pantry, and the archive to be.
    now, program, guide
        The time and the program's version, for the manifest; the format in words for people.
    progress
        Told the share that is written, 0 to 1.
    is_cancelled
        Asked every few hundred rows and before each photo.
    copying
        Gives a still copy next to a path, where the pantry is not the file at ``store_path``.

    Raises
    ------
    ExportTrouble
        "cancelled", "disk_full" or "not_writable".
    StoreTrouble
        If the pantry cannot be read.
    """
    if not target.parent.is_dir():
        raise ExportTrouble("no_folder", str(target.parent))
    with whats_told():
        building = unfinished(target)
        try:
            still = copying(target) if copying else still_copy(store_path, target)
            with still as copy, zipfile.ZipFile(building, "w") as archive:
                exported = _write(copy, archive, store_path, (now, program, guide), progress,
                                  is_cancelled)  # fmt: skip
            put_in_place(building, target)
        finally:
            discard(building)
    rows, photos, missing = exported
    return Exported(
        path=target, rows=rows, photos=photos, missing=missing, size_bytes=target.stat().st_size
    )


def _write(
    copy: StillCopy,
    archive: zipfile.ZipFile,
    store_path: Path,
    told: tuple[datetime, str, str],
    progress: Callable[[float], None],
    is_cancelled: Callable[[], bool],
) -> tuple[int, int, int]:
    now, program, guide = told
    tables = shapes()
    rows = sum(copy.count(table.name) for table in tables)
    # Each row is written twice; a photo takes about as long as a hundred rows.
    photos = copy.count("photo")
    work = _Work(archive, now, progress, is_cancelled, total=2 * rows + 100 * photos)
    table_notes = [_json_table(work, copy, table) for table in tables]
    csv_notes = [_csv_table(work, copy, table) for table in tables]
    photo_notes, missing = _photos(work, store_path)
    if guide:
        with work.entry(GUIDE) as stream:
            stream.write(guide.encode("utf-8"))
    (pantry,) = copy.rows(next(table for table in tables if table.name == "pantry"))
    manifest = {
        "format": FORMAT,
        "version": VERSION,
        "schema": copy.schema_number,
        "program": program,
        "made_at": instant_text(now),
        "pantry": {"uid": pantry[1], "is_demo": pantry[3]},
        "span": {"first_at": work.span.first, "last_at": work.span.last},
        "tables": table_notes,
        "last_ids": copy.last_ids(),
        "photos": photo_notes,
        "missing_photos": missing,
        "csv": csv_notes,
    }
    with work.entry(MANIFEST) as stream:
        stream.write(json.dumps(manifest, ensure_ascii=False, indent=1).encode("utf-8"))
    progress(1.0)
    return rows, len(photo_notes), len(missing)


def _json_table(work: _Work, copy: StillCopy, table: TableShape) -> dict[str, Any]:
    """Write a table as JSON lines: one object for each row."""
    name, count = f"tables/{table.name}.jsonl", 0
    columns = [column.name for column in table.columns]
    moment = columns.index(_MOMENTS[table.name]) if table.name in _MOMENTS else None
    with work.entry(name) as stream:
        for row in copy.rows(table):
            _note_hashes(work, table.name, columns, row)
            if moment is not None:
                work.span.take(str(row[moment]))
            said = {
                key: base64.b64encode(value).decode("ascii") if isinstance(value, bytes) else value
                for key, value in zip(columns, row, strict=True)
            }
            line = json.dumps(said, ensure_ascii=False, allow_nan=False, separators=(",", ":"))
            stream.write(line.encode("utf-8") + b"\n")
            count += 1
            if count % _EVERY == 0:
                work.step(_EVERY)
    work.step(count % _EVERY)
    described = [
        {
            "name": column.name,
            "kind": column.kind,
            "unit": unit_of(table.name, column.name, column.kind),
            "optional": column.is_optional,
        }
        for column in table.columns
    ]
    return {"name": table.name, "rows": count, "columns": described, **stream.note(name)}


def _note_hashes(work: _Work, table: str, columns: list[str], row: PlainRow) -> None:
    """Remember which photos rows name, and row changes that undo or redo may bring back."""
    if table == "photo":
        work.hashes.add(str(row[columns.index("content_hash")]))
    elif table == "act" and row[columns.index("state")] != "dropped":
        work.perhaps.update(_HASH_IN_DELTAS.findall(str(row[columns.index("deltas")])))


def _csv_table(work: _Work, copy: StillCopy, table: TableShape) -> dict[str, object]:
    """Write a table for spreadsheets; the samples of loggers one a row."""
    name, count = f"csv/{table.name}.csv", 0
    columns = [column.name for column in table.columns]
    is_packed = any(column.kind == "bytes" for column in table.columns)
    if is_packed:
        columns = [*(c.name for c in table.columns if c.kind != "bytes"), "at", "temperature_c"]
    with work.entry(name) as stream:
        stream.write(b"\xef\xbb\xbf")  # else spreadsheets take UTF-8 for something older
        stream.write(csv_row(columns).encode("utf-8"))
        for row in copy.rows(table):
            if is_packed:
                _write_samples(work, stream, row)
            else:
                cells = [cell for cell in row if not isinstance(cell, bytes)]
                stream.write(csv_row(cells).encode("utf-8"))
            count += 1
            if count % _EVERY == 0:
                work.step(_EVERY)
    work.step(count % _EVERY)
    return {"table": table.name, **stream.note(name)}


def _write_samples(work: _Work, stream: _Counted, row: PlainRow) -> None:
    packed = next(cell for cell in row if isinstance(cell, bytes))
    others = [cell for cell in row if not isinstance(cell, bytes)]
    at_s, celsius = unpack((packed[: len(packed) // SAMPLE_BYTES * SAMPLE_BYTES],))
    work.step(0)
    lines = []
    for second, warm in zip(at_s.tolist(), celsius.tolist(), strict=True):
        try:
            at = instant_text(datetime.fromtimestamp(second, UTC))
        except (OverflowError, OSError, ValueError):  # no calendar reaches that far
            at = str(second)
        lines.append(csv_row([*others, at, round(warm, 4)]))
    stream.write("".join(lines).encode("utf-8"))


def _photos(work: _Work, store_path: Path) -> tuple[list[dict[str, object]], list[str]]:
    """Write the photos that are named; return their notes, and the hashes not to be had."""
    root = PhotoFolder(store_path).root
    found = {path.name: path for path in root.glob("??/*.*") if not path.is_symlink()}
    by_hash = {
        match[1]: path
        for name, path in sorted(found.items())
        if (match := PHOTO_NAME.fullmatch(f"photos/{name}")) is not None
    }
    notes: list[dict[str, object]] = []
    missing: list[str] = []
    for content_hash in sorted(work.hashes | (work.perhaps & by_hash.keys())):
        path = by_hash.get(content_hash)
        if path is None or not _is_sound(path, content_hash):
            missing += [content_hash] if content_hash in work.hashes else []
        else:
            name = f"photos/{path.name}"
            with work.entry(name) as stream, path.open("rb") as source:
                for piece in iter(lambda source=source: source.read(_PIECE), b""):  # type: ignore[misc]  # a default binds the loop's own
                    stream.write(piece)
            note = stream.note(name)
            if note["sha256"] != content_hash:
                raise StoreTrouble("io_error", f"{path.name} changed while it was read")
            notes.append(note)
        work.step(100)
    return notes, missing


def _is_sound(path: Path, content_hash: str) -> bool:
    try:
        with path.open("rb") as source:
            return hashlib.file_digest(source, "sha256").hexdigest() == content_hash
    except OSError:
        return False


@contextmanager
def whats_told() -> Iterator[None]:
    """Turn what the disk says into trouble of this export."""
    try:
        yield
    except OSError as error:
        code = trouble_from(error)
        is_full = code is not None and code.code == "disk_full"
        raise ExportTrouble("disk_full" if is_full else "not_writable", str(error)) from error


def room_for(folder: Path) -> int:
    """Return how many bytes the disk of a folder has free; 0 if it cannot be asked."""
    try:
        return shutil.disk_usage(folder).free if os.path.isdir(folder) else 0
    except OSError:
        return 0
