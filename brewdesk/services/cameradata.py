"""What a camera wrote into a picture's file: when it was taken, and whether it says where.

A small reader of Exif (CIPA DC-008, the layout of TIFF 6.0) inside JPEG, PNG and WebP. The
files come from anywhere, so every offset is doubted, nothing is followed twice, and what
cannot be read is simply not known. Tag numbers are from memory of the standard.
"""

from __future__ import annotations

import re
import struct
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, timezone, tzinfo

_EXIF_IFD, _GPS_IFD = 0x8769, 0x8825
_DATE_TIME_ORIGINAL, _OFFSET_TIME_ORIGINAL = 0x9003, 0x9011
_SIZE_OF_TYPE = {1: 1, 2: 1, 3: 2, 4: 4, 5: 8, 7: 1, 9: 4, 10: 8}
_MOST_ENTRIES = 500  # a camera writes some dozens
_EXIF_HEAD = b"Exif\x00\x00"
_JPEG_START, _PNG_START = b"\xff\xd8", b"\x89PNG\r\n\x1a\n"
_START_OF_SCAN, _END_OF_IMAGE = 0xDA, b"\xff\xd9"
_ALONE = {0x01, 0xD8, *range(0xD0, 0xD8)}  # markers without a length
_DATE = re.compile(r"(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)")
_OFFSET = re.compile(r"([+-])(\d\d):(\d\d)")
# XMP is text; its names of a position are these, whatever else it holds.
_XMP_POSITIONS = (b"exif:GPSLatitude", b"exif:GPSLongitude")


@dataclass(frozen=True, slots=True)
class CameraData:
    """When a picture was taken, as far as its file says, and whether it says where.

    ``taken_at`` is aware only if the camera wrote its offset from UTC.
    """

    taken_at: datetime | None = None
    has_location: bool = False

    def instant(self, zone: tzinfo) -> datetime | None:
        """Return the time taken in UTC; a camera without an offset showed ``zone``'s time."""
        if self.taken_at is None:
            return None
        at = (
            self.taken_at
            if self.taken_at.tzinfo is not None
            else self.taken_at.replace(tzinfo=zone)
        )
        try:
            return at.astimezone(UTC)
        except (OverflowError, ValueError):  # the first or the last day of the calendar
            return None


def read_camera_data(data: bytes) -> CameraData:
    """Read what the camera wrote into the file ``data``; never raises."""
    has_location = any(name in data for name in _XMP_POSITIONS)
    block = _exif_block(data)
    if block is None:
        return CameraData(None, has_location)
    order = {b"II": "<", b"MM": ">"}.get(block[:2])
    if order is None or len(block) < 8:
        return CameraData(None, has_location)
    first = _entries(block, order, struct.unpack_from(f"{order}I", block, 4)[0])
    exif = _entries(block, order, _number(first.get(_EXIF_IFD), order))
    position = _entries(block, order, _number(first.get(_GPS_IFD), order))
    taken = _taken(exif.get(_DATE_TIME_ORIGINAL), exif.get(_OFFSET_TIME_ORIGINAL))
    return CameraData(taken, has_location or bool(position))


def is_whole_jpeg(data: bytes) -> bool:
    """Whether a JPEG reaches its end mark; a copy that broke off shows grey from there on."""
    scan = _walk_jpeg(data)[1]
    return scan is not None and data.find(_END_OF_IMAGE, scan) >= 0


def _exif_block(data: bytes) -> bytes | None:
    if data.startswith(_JPEG_START):
        return _walk_jpeg(data)[0]
    if data.startswith(_PNG_START):
        return _chunk(data, len(_PNG_START), b"eXIf", ">", name_first=False, trailer=4)
    if data[:4] == b"RIFF" and data[8:12] == b"WEBP":
        found = _chunk(data, 12, b"EXIF", "<", name_first=True, trailer=0)
        return found[6:] if found is not None and found.startswith(_EXIF_HEAD) else found
    return None


def _walk_jpeg(data: bytes) -> tuple[bytes | None, int | None]:
    """Go through a JPEG's segments: its Exif block, and where the first scan begins."""
    found: bytes | None = None
    at = 2
    while at + 4 <= len(data) and data[at] == 0xFF:
        marker = data[at + 1]
        if marker == 0xFF or marker in _ALONE:
            at += 1 if marker == 0xFF else 2
            continue
        length = int.from_bytes(data[at + 2 : at + 4], "big")
        if length < 2:
            break
        if marker == _START_OF_SCAN:
            return found, at + 2 + length
        body = data[at + 4 : at + 2 + length]
        if marker == 0xE1 and body.startswith(_EXIF_HEAD) and found is None:
            found = body[len(_EXIF_HEAD) :]
        at += 2 + length
    return found, None


def _chunk(
    data: bytes, start: int, name: bytes, order: str, *, name_first: bool, trailer: int
) -> bytes | None:
    """Find a chunk of a PNG or a WebP."""
    at = start
    while at + 8 <= len(data):
        here = data[at : at + 4] if name_first else data[at + 4 : at + 8]
        length = struct.unpack_from(f"{order}I", data, at + (4 if name_first else 0))[0]
        if here == name:
            return data[at + 8 : at + 8 + length]
        padding = length % 2 if name_first else 0
        at += 8 + length + padding + trailer
    return None


def _entries(block: bytes, order: str, offset: int) -> dict[int, bytes]:
    """Read one directory: the bytes of each tag's value."""
    if offset < 8 or offset + 2 > len(block):
        return {}
    count = struct.unpack_from(f"{order}H", block, offset)[0]
    found: dict[int, bytes] = {}
    for number in range(min(count, _MOST_ENTRIES)):
        at = offset + 2 + 12 * number
        if at + 12 > len(block):
            break
        tag, kind, values = struct.unpack_from(f"{order}HHI", block, at)
        size = _SIZE_OF_TYPE.get(kind, 0) * values
        place = at + 8 if size <= 4 else struct.unpack_from(f"{order}I", block, at + 8)[0]
        if 0 < size <= len(block) - place:
            found[tag] = block[place : place + size]
    return found


def _number(value: bytes | None, order: str) -> int:
    if value is None or len(value) not in (2, 4):
        return 0
    return int.from_bytes(value, "little" if order == "<" else "big")


def _taken(value: bytes | None, offset: bytes | None) -> datetime | None:
    matched = _DATE.match((value or b"").decode("latin-1"))
    if matched is None:
        return None
    try:
        year, month, day, hour, minute, second = (int(part) for part in matched.groups())
        at = datetime(year, month, day, hour, minute, second)
    except ValueError:  # no such day, as in "0000:00:00" of a camera that was never set
        return None
    sign = _OFFSET.match((offset or b"").decode("latin-1"))
    if sign is None:
        return at
    span = timedelta(hours=int(sign[2]), minutes=int(sign[3]))
    if span >= timedelta(days=1):
        return at
    return at.replace(tzinfo=timezone(-span if sign[1] == "-" else span))
