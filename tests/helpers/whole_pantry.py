"""A pantry with a row in every table, two states of a pantry side by side, archives to spoil."""

from __future__ import annotations

import hashlib
import json
import sqlite3
import zipfile
from contextlib import closing
from datetime import timedelta
from pathlib import Path

from brewdesk.services.packedsamples import pack_pairs
from brewdesk.services.photofiles import PhotoFolder
from brewdesk.store.records import PhotoDraft
from brewdesk.store.store import Store
from tests.store.drafts import NOW
from tests.upgrades.write import fill


def everything(path: Path) -> list[str]:
    """Return every row of every table, the history and the book-keeping of ids with it."""
    lines = []
    with closing(sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)) as connection:
        names = [
            row[0]
            for row in connection.execute(
                "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"
            )
        ]
        for name in names:
            rows = [f"{name}: {row!r}" for row in connection.execute(f'SELECT * FROM "{name}"')]
            lines += sorted(rows)
    return lines


def photo_files(path: Path) -> dict[str, bytes]:
    """Return the files of a pantry's photos by their place in its folder."""
    root = PhotoFolder(path).root
    return {
        str(file.relative_to(root)): file.read_bytes()
        for file in sorted(root.glob("??/*"))
        if file.is_file()
    }


def full_pantry(path: Path, picture: bytes = b"an invented picture's bytes") -> Path:
    """Make an invented pantry with something in every table, a photo and samples that are whole."""
    store = Store.open(path, now=NOW)
    fill(store)
    folder = PhotoFolder(path)
    content_hash = folder.keep(picture, "image/png")
    packed = pack_pairs([(int(NOW.timestamp()) + 1800 * n, 15.0 + n / 8) for n in range(5)])
    with store.write() as unit:
        (photo,) = unit.photos.where()
        unit.photos.change(photo.id, content_hash=content_hash, size_bytes=len(picture))
        (log,) = unit.temperature_logs.where()
        unit.temperature_logs.change(
            log.id,
            content_hash=packed.content_hash,
            sample_count=packed.count,
            last_at=NOW + timedelta(hours=2),
        )
        unit.temperature_samples.keep(packed.content_hash, packed.chunks)
        unit.temperature_samples.sweep(())
        gone = unit.photos.add(
            PhotoDraft(
                content_hash=content_hash,
                media_type="image/png",
                width_px=4,
                height_px=3,
                size_bytes=len(picture),
                taken_at=NOW,
                culture_id=photo.culture_id,
            )
        )
        unit.photos.remove(gone.id)  # its id must not be given again
    store.close()
    with closing(sqlite3.connect(path)) as connection:
        reading = {"quantity": "ph", "value": 3.3, "text": ""}
        facts = {"readings": [reading], "vessel": "x", "batch": "x", "name": "x"}
        said = json.dumps(facts | {"volume_l": 4.2, "fill_volume_l": 3.0})
        connection.execute("UPDATE act SET facts = ?", (said,))
        connection.commit()
    return path


def entries_of(path: Path) -> dict[str, bytes]:
    """Return the content of every entry of an archive."""
    with zipfile.ZipFile(path) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def pack(path: Path, entries: dict[str, bytes], *, is_honest: bool = True) -> Path:
    """Write an archive; its manifest is made to tell the truth about tables unless not wanted."""
    entries = dict(entries)
    if is_honest and "manifest.json" in entries:
        said = json.loads(entries["manifest.json"])
        for note in said["tables"]:
            data = entries[note["file"]]
            note["rows"] = data.count(b"\n")
            note["bytes"] = len(data)
            note["sha256"] = hashlib.sha256(data).hexdigest()
        entries["manifest.json"] = json.dumps(said).encode()
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in entries.items():
            archive.writestr(name, data)
    return path


def changed_row(entries: dict[str, bytes], table: str, **values: object) -> dict[str, bytes]:
    """Return the entries with other values in the first row of a table."""
    name = f"tables/{table}.jsonl"
    first, *rest = entries[name].split(b"\n")
    row = json.loads(first) | values
    return {**entries, name: b"\n".join([json.dumps(row).encode(), *rest])}
