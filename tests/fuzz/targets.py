"""What strangers' bytes reach: one function for each door, which lets only bugs out.

Each takes any bytes and returns if the program read them or refused them with a trouble of its
own. The suite feeds them from hypothesis and from the cases kept in ``cases``, the command
``packaging/dev.py fuzz`` from a fuzzer that follows the code's branches.
"""

from __future__ import annotations

import io
import json
import math
import tempfile
import zipfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path
from types import SimpleNamespace

from brewdesk.services.calendarfile import Entry, calendar_bytes
from brewdesk.services.cameradata import is_whole_jpeg, read_camera_data
from brewdesk.services.changes import Changes
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.importing import examine_export
from brewdesk.services.labels import EDITABLE, LabelFacts, LabelKind, label_content
from brewdesk.services.labelsheets import LabelSheets, problems_of
from brewdesk.services.loggerfile import examine, sampled
from brewdesk.services.loggerread import read_log
from brewdesk.services.loggertext import DateOrder
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.plaintext import plain_line
from brewdesk.services.readingsfile import examine_readings, read_readings
from brewdesk.services.settings import Settings
from brewdesk.services.windowmemory import WindowMemory
from culturecore.units import Kind, NotAQuantity, parse, units_for

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
MOST_BYTES = 20_000


@dataclass(frozen=True, slots=True)
class Target:
    """A door and bytes to begin with."""

    feed: Callable[[bytes], None]
    seeds: tuple[bytes, ...]


def text_of(data: bytes) -> str:
    """Make a text that a field or a row can hold of any bytes."""
    return data[:MOST_BYTES].decode("utf-8", errors="replace")


@contextmanager
def kept(data: bytes, name: str) -> Iterator[Path]:
    """Keep bytes in a file for a moment."""
    with tempfile.TemporaryDirectory(prefix="brewdesk-fuzz-") as folder:
        path = Path(folder) / name
        path.write_bytes(data[:MOST_BYTES])
        yield path


def amounts(data: bytes) -> None:
    """Amounts that makers type."""
    text = text_of(data)
    for kind in Kind:
        unit = (*units_for(kind), "")[0]
        try:
            value = parse(text, kind, default_unit=unit)
        except NotAQuantity as problem:
            assert problem.reason  # noqa: PT017  # the kind of trouble is what is looked at
        else:
            assert math.isfinite(value)


def readings_file(data: bytes) -> None:
    """A spreadsheet of readings."""
    with kept(data, "readings.csv") as path:
        try:
            _preview, choice = examine_readings(path)
            if choice.layout.date_order is None:
                choice = replace(choice, layout=replace(choice.layout, date_order=DateOrder.DAY))
            read = read_readings(path, choice, UTC, batch_id=1)
        except LoggerTrouble:
            return
        assert all(one.value is None or math.isfinite(one.value) for one in read.drafts)


def logger_file(data: bytes) -> None:
    """A logger's file."""
    with kept(data, "log.csv") as path:
        try:
            preview = examine(path)
            layout = preview.layout
            sampled(preview, layout)
            if layout.date_order is None:
                layout = replace(layout, date_order=DateOrder.DAY)
            read_log(path, layout, UTC, now=NOW)
        except LoggerTrouble:
            return


def export_archive(data: bytes) -> None:
    """An archive that is said to be an export: as it comes, and as the manifest of one."""
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w") as archive:
        archive.writestr("manifest.json", data[:MOST_BYTES])
    for content in (data, packed.getvalue()):
        with kept(content, "export.zip") as path:
            try:
                examine_export(path)
            except ExportTrouble:
                continue


def calendar_text(data: bytes) -> None:
    """Words of makers in a calendar file: never more than one entry, never a broken line."""
    words = text_of(data)
    half = len(words) // 2
    entry = Entry(
        uid="batch-1.taste.1@x.brewdesk",
        sequence=1,
        at=NOW,
        summary=plain_line(words[:half]),
        description=plain_line(words[half:]),
        category="Tasting",
    )
    written = calendar_bytes([entry], stamped_at=NOW)
    lines = written.split(b"\r\n")
    assert lines.count(b"BEGIN:VEVENT") == lines.count(b"END:VEVENT") == 1
    assert all(len(line) <= 75 for line in lines)
    assert b"\n" not in written.replace(b"\r\n", b"")
    written.decode("utf-8")


def camera_data(data: bytes) -> None:
    """What a camera wrote into a photo."""
    for head in (b"", b"\xff\xd8", b"\x89PNG\r\n\x1a\n"):
        read_camera_data(head + data).instant(UTC)
        is_whole_jpeg(head + data)


class _Rows:
    """A store in which every setting is the same text."""

    def __init__(self, text: str) -> None:
        self._text = text

    @contextmanager
    def read(self) -> Iterator[SimpleNamespace]:
        every = {option.key: self._text for option in Settings(self, Changes()).options()}
        yield SimpleNamespace(
            settings=SimpleNamespace(get=lambda _key: self._text, all=lambda: every)
        )


def settings_values(data: bytes) -> None:
    """Settings, sheets and the window's place as an older or newer program left them."""
    rows = _Rows(text_of(data))
    settings = Settings(rows, Changes())
    for option in settings.options():
        assert type(settings.get(option)) is type(option.default)
    for sheet in LabelSheets(rows, Changes()).all():
        assert not problems_of(sheet)
    LabelSheets(rows, Changes()).choices()
    WindowMemory(rows).remembered()


def label_fields(data: bytes) -> None:
    """A maker's words on labels of every kind."""
    words = text_of(data)
    own = dict.fromkeys(EDITABLE, words)
    for kind in LabelKind:
        facts = LabelFacts(
            record="batch", record_id=1, kind=kind, name=words, allergens=words, ingredients=words
        )
        for given in ({}, own):
            content = label_content(facts, zone=UTC, pantry_uid="0123456789abcdef", own=given)
            for field in EDITABLE:
                content.text(field)


_LOG = b"Time;Temp (C)\r\n2026-11-13 10:00;21,5\r\n2026-11-13 10:10;21,6\r\n"
_SHEET = {"key": "own_1", "name": "x", "columns": 2, "rows": 4}
TARGETS = {
    "amounts": Target(
        amounts,
        tuple(one.encode() for one in ("3 1/2 cups", "1,5 L", "½ gal", "1 h 20 min", "70 °F")),
    ),
    "readings_file": Target(
        readings_file,
        (b"Date,pH,Note\n2026-11-13 10:00,3.4,good\n2026-11-14 10:00,3.3,\"a\nb\"\n", _LOG),
    ),
    "logger_file": Target(
        logger_file,
        (
            _LOG,
            _LOG.decode().encode("utf-16"),
            b"1,2\n3,4\n",
            b"Time;C\n1/2/2026 10:00;20\n1/3/2026 10:00;21\n",
        ),
    ),
    "export_archive": Target(
        export_archive, (b"PK\x03\x04", b'{"format": "brewdesk-export", "version": 1}', b"[]")
    ),
    "calendar_text": Target(
        calendar_text, (b"Taste\r\nEND:VEVENT", "\u202e\U0001f375;,\\".encode())
    ),
    "camera_data": Target(
        camera_data, (b"\xff\xe1\x00\x10Exif\0\0II*\0\x08\0\0\0", b"\0\0\0\x08eXIf")
    ),
    "settings_values": Target(
        settings_values,
        (b"22:00", b"yes", b"3.1", b"Europe/Berlin", json.dumps([_SHEET]).encode()),
    ),
    "label_fields": Target(label_fields, (b"{name} <b>&amp;\r\n", b"12.12.2026")),
}  # fmt: skip
