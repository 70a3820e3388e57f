"""The manifest of an export, read without believing it."""

from __future__ import annotations

import json
import re
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from brewdesk.services.exportformat import (
    FORMAT,
    MANIFEST,
    MOST_MANIFEST_BYTES,
    MOST_TOTAL_BYTES,
    OLDEST_SCHEMA,
    PHOTO_NAME,
    TABLE_NAME,
    VERSION,
    FileNote,
    TableNote,
)
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.exportzip import ExportZip
from brewdesk.store.columns import instant_from
from brewdesk.store.schema import SCHEMA_NUMBER

_SHA = re.compile(r"[0-9a-f]{64}")
_MOST_ROWS = 1_000_000_000


@dataclass(frozen=True, slots=True, kw_only=True)
class Manifest:
    """What an export says of itself: proven as to its form, its content still to be."""

    schema: int
    program: str
    made_at: datetime
    is_demo: bool
    first_at: datetime | None
    last_at: datetime | None
    tables: tuple[TableNote, ...]
    photos: tuple[FileNote, ...]
    missing_photos: tuple[str, ...]
    last_ids: dict[str, int]

    def rows_of(self, table: str) -> int:
        """Return how many rows a table has; 0 if there is no such table."""
        return sum(note.rows for note in self.tables if note.name == table)

    @property
    def photo_bytes(self) -> int:
        """How much the photos take."""
        return sum(note.size_bytes for note in self.photos)

    @property
    def total_bytes(self) -> int:
        """How much is to be read in all."""
        return self.photo_bytes + sum(note.file.size_bytes for note in self.tables)


def read_manifest(archive: ExportZip) -> Manifest:
    """Read the manifest of an archive.

    Raises
    ------
    ExportTrouble
        "not_an_export" if it is none, "newer_export" if a newer program made it.
    """
    said = parsed(archive.whole(MANIFEST, MOST_MANIFEST_BYTES), MANIFEST)
    if said.get("format") != FORMAT:
        raise ExportTrouble("not_an_export", "another format", where=MANIFEST)
    version, schema = _whole(said, "version", 10**6), _whole(said, "schema", 10**6)
    if version > VERSION or schema > SCHEMA_NUMBER:
        raise ExportTrouble("newer_export", f"version {version}, schema {schema}")
    if version < 1 or schema < OLDEST_SCHEMA:
        raise ExportTrouble("not_an_export", f"version {version}, schema {schema}")
    pantry, span = _map(said, "pantry"), _map(said, "span")
    last_ids = _map(said, "last_ids")
    tables = tuple(_table(each) for each in _list(said, "tables"))
    photos = tuple(_file(each, PHOTO_NAME) for each in _list(said, "photos"))
    files = [note.file.file for note in tables] + [note.file for note in photos]
    if len(set(files)) < len(files) or not set(files) <= archive.names():
        raise ExportTrouble("not_an_export", "files that are not there", where=MANIFEST)
    if any(note.file != f"photos/{note.sha256}.{note.file.rpartition('.')[2]}" for note in photos):
        raise ExportTrouble("not_an_export", "a photo under another name", where=MANIFEST)
    return Manifest(
        schema=schema,
        program=_text(said, "program")[:50],
        made_at=_instant(_text(said, "made_at")),
        is_demo=pantry.get("is_demo") in (1, True),
        first_at=_instant(_text(span, "first_at")) if span.get("first_at") else None,
        last_at=_instant(_text(span, "last_at")) if span.get("last_at") else None,
        tables=tables,
        photos=photos,
        missing_photos=tuple(_sha(each) for each in _list(said, "missing_photos")),
        last_ids={key: _whole(last_ids, key, 2**62) for key in last_ids},
    )


def parsed(data: bytes, where: str, line: int = 0) -> dict[str, Any]:
    """Return the JSON object that bytes hold.

    Raises
    ------
    ExportTrouble
        "damaged" if they hold none: also for a name given twice, and for NaN.
    """
    try:
        said = json.loads(
            data.decode("utf-8"), object_pairs_hook=_once, parse_constant=_no_constant
        )
    except (ValueError, RecursionError) as error:
        raise ExportTrouble("damaged", repr(error)[:200], where=where, line=line) from error
    if not isinstance(said, dict):
        raise ExportTrouble("damaged", "no object", where=where, line=line)
    return said


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    said = dict(pairs)
    if len(said) < len(pairs):
        raise ValueError("a name given twice")
    return said


def _no_constant(name: str) -> float:
    raise ValueError(f"{name} is no number")


def _table(said: object) -> TableNote:
    if not isinstance(said, dict):
        raise _bad("a table")
    name = _text(said, "name")
    file = _file(said, TABLE_NAME)
    if file.file != f"tables/{name}.jsonl":
        raise _bad("a table under another name")
    columns = []
    for column in _list(said, "columns"):
        if not isinstance(column, dict):
            raise _bad("a column")
        columns.append(_text(column, "name"))
    return TableNote(name, _whole(said, "rows", _MOST_ROWS), tuple(columns), file)


def _file(said: object, names: re.Pattern[str]) -> FileNote:
    if not isinstance(said, dict):
        raise _bad("a file")
    name = _text(said, "file")
    if not names.fullmatch(name):
        raise _bad("the name of a file")
    return FileNote(name, _whole(said, "bytes", MOST_TOTAL_BYTES), _sha(said.get("sha256")))


def _bad(detail: str) -> ExportTrouble:
    return ExportTrouble("not_an_export", detail, where=MANIFEST)


def _sha(value: object) -> str:
    if not isinstance(value, str) or not _SHA.fullmatch(value):
        raise _bad("a hash")
    return value


def _text(said: dict[str, Any], key: str) -> str:
    value = said.get(key)
    if not isinstance(value, str):
        raise _bad(key)
    return value


def _whole(said: dict[str, Any], key: str, most: int) -> int:
    value = said.get(key)
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value <= most:
        raise _bad(key)
    return value


def _map(said: dict[str, Any], key: str) -> dict[str, Any]:
    value = said.get(key)
    if not isinstance(value, dict):
        raise _bad(key)
    return value


def _list(said: dict[str, Any], key: str) -> list[Any]:
    value = said.get(key)
    if not isinstance(value, list):
        raise _bad(key)
    return value


def _instant(text: str) -> datetime:
    try:
        return instant_from(text)
    except (ValueError, OverflowError):
        raise _bad("a time") from None
