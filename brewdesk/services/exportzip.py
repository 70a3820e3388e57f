"""Read an archive that anybody may have made: names, sizes and content are proven, not believed.

What zip archives can do to their readers is collected in PyPA's and Python's notes
(https://docs.python.org/3/library/zipfile.html, "Decompression pitfalls"): names that lead
elsewhere, names given twice, links, entries that lie over each other, sizes that are not
true, and a little that unfolds to a lot. None of that is in an export, so an archive with
any of it is refused as a whole. Nothing is ever unpacked under a name from the archive.
"""

from __future__ import annotations

import hashlib
import stat
import struct
import zipfile
import zlib
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO

from brewdesk.services.exportformat import (
    CSV_NAME,
    GUIDE,
    MANIFEST,
    MOST_ENTRIES,
    MOST_LINE_BYTES,
    MOST_PACKING,
    MOST_TOTAL_BYTES,
    PACKING_FROM_BYTES,
    PHOTO_NAME,
    TABLE_NAME,
    FileNote,
)
from brewdesk.services.exporttrouble import ExportTrouble

_PIECE = 1 << 18
_ENCRYPTED = 0x1 | 0x40  # PKWARE APPNOTE.TXT 4.4.4: bits 0 and 6
_LOCAL_HEADER = 30  # APPNOTE.TXT 4.3.7, without name and extra field
_WAYS = (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED)
_PATTERNS = (TABLE_NAME, CSV_NAME, PHOTO_NAME)


class ExportZip:
    """An archive whose names and sizes are in order. Use `opened_export`."""

    def __init__(self, archive: zipfile.ZipFile, size_bytes: int) -> None:
        self._archive = archive
        self._entries = _checked(archive, size_bytes)

    def names(self) -> frozenset[str]:
        """Return the names of all entries."""
        return frozenset(self._entries)

    def whole(self, name: str, most_bytes: int) -> bytes:
        """Return a small entry.

        Raises
        ------
        ExportTrouble
            "not_an_export" if it is not there, "too_large" or "damaged".
        """
        info = self._entries.get(name)
        if info is None:
            raise ExportTrouble("not_an_export", "it is not there", where=name)
        with told(name), self._archive.open(info) as stream:
            data = stream.read(most_bytes + 1)
        if len(data) > most_bytes:
            raise ExportTrouble("too_large", where=name)
        return data

    def pieces(self, note: FileNote) -> Iterator[bytes]:
        """Give an entry piece by piece; its size and hash are proven on the way.

        The last piece may come before the hash turns out to be wrong: keep nothing of it
        until this has ended.

        Raises
        ------
        ExportTrouble
            "damaged" if it is not there or not what the manifest says.
        """
        info = self._entries.get(note.file)
        if info is None:
            raise ExportTrouble("damaged", "it is not there", where=note.file)
        digest, count = hashlib.sha256(), 0
        with told(note.file):
            stream = self._archive.open(info)
        with stream:
            while True:
                with told(note.file):
                    piece = stream.read(_PIECE)
                if not piece:
                    break
                count += len(piece)
                if count > note.size_bytes:
                    raise ExportTrouble("damaged", "longer than it says", where=note.file)
                digest.update(piece)
                yield piece
        if count != note.size_bytes or digest.hexdigest() != note.sha256:
            raise ExportTrouble("damaged", "not what its hash says", where=note.file)

    def lines(self, note: FileNote) -> Iterator[bytes]:
        """Give an entry line by line, proven as `pieces` are.

        Raises
        ------
        ExportTrouble
            As `pieces`; "too_large" for a line without end.
        """
        held: list[bytes] = []
        length = 0
        for piece in self.pieces(note):
            *whole, rest = piece.split(b"\n")
            for line in whole:
                held.append(line)
                yield b"".join(held)
                held, length = [], 0
            held.append(rest)
            length += len(rest)
            if length > MOST_LINE_BYTES:
                raise ExportTrouble("too_large", "a line without end", where=note.file)
        if any(held):
            yield b"".join(held)


@contextmanager
def opened_export(path: Path) -> Iterator[ExportZip]:
    """Open an archive.

    Raises
    ------
    ExportTrouble
        "unreadable" if the disk does not give it, "not_an_export" if it is no archive or
        holds what no export holds, "unsafe" if it tries something, "too_large".
    """
    try:
        if not stat.S_ISREG(path.stat().st_mode):
            raise ExportTrouble("not_an_export", "no regular file")
        file = path.open("rb")
    except (OSError, ValueError) as error:  # ValueError: a path that cannot be
        raise ExportTrouble("unreadable", str(error)) from error
    with file:
        size = path.stat().st_size
        with told("", otherwise="not_an_export"):
            archive = zipfile.ZipFile(file)
        with archive:
            yield ExportZip(archive, size)


def _checked(archive: zipfile.ZipFile, size_bytes: int) -> dict[str, zipfile.ZipInfo]:
    infos = archive.infolist()
    if len(infos) > MOST_ENTRIES:
        raise ExportTrouble("too_large", f"{len(infos)} entries")
    entries: dict[str, zipfile.ZipInfo] = {}
    for info in infos:
        if info.filename in entries:
            raise ExportTrouble("unsafe", "twice", where=info.filename[:200])
        _check_entry(info)
        entries[info.filename] = info
    if MANIFEST not in entries:
        raise ExportTrouble("not_an_export", "no manifest")
    _check_room(infos, size_bytes)
    return entries


def _check_entry(info: zipfile.ZipInfo) -> None:
    # What zipfile makes of a name must be what stands there: it cuts at a NUL, for one.
    name, where = info.orig_filename, info.filename[:200]
    is_known = name in (MANIFEST, GUIDE) or any(each.fullmatch(name) for each in _PATTERNS)
    if name != info.filename or not is_known:
        raise ExportTrouble("unsafe", "a name that no export has", where=where)
    if info.flag_bits & _ENCRYPTED:
        raise ExportTrouble("unsafe", "encrypted", where=where)
    kind = stat.S_IFMT(info.external_attr >> 16)
    if kind not in (0, stat.S_IFREG):
        raise ExportTrouble("unsafe", "a link or a device", where=where)
    if info.compress_type not in _WAYS:
        raise ExportTrouble("unsafe", f"packed in way {info.compress_type}", where=where)


def _check_room(infos: list[zipfile.ZipInfo], size_bytes: int) -> None:
    total = sum(info.file_size for info in infos)
    packed = sum(info.compress_size for info in infos)
    if total > MOST_TOTAL_BYTES:
        raise ExportTrouble("too_large", f"{total} bytes")
    if total > PACKING_FROM_BYTES and total > MOST_PACKING * max(1, packed):
        raise ExportTrouble("unsafe", f"{packed} bytes unfold to {total}")
    end = 0
    for info in sorted(infos, key=lambda each: each.header_offset):
        if info.header_offset < end:
            raise ExportTrouble("unsafe", "entries lie over each other", where=info.filename)
        name = info.orig_filename.encode("utf-8", "replace")
        end = info.header_offset + _LOCAL_HEADER + len(name) + info.compress_size
    if end > size_bytes:
        raise ExportTrouble("damaged", "entries end behind the archive")


@contextmanager
def told(where: str, *, otherwise: str = "damaged") -> Iterator[None]:
    """Turn what zipfile and zlib say of a broken archive into trouble of this import."""
    try:
        yield
    except (zipfile.BadZipFile, zlib.error, EOFError, struct.error, NotImplementedError) as error:
        raise ExportTrouble(otherwise, repr(error), where=where) from error
    except (RuntimeError, ValueError, OverflowError, IndexError) as error:
        raise ExportTrouble(otherwise, repr(error), where=where) from error
    except OSError as error:
        code = "unreadable" if error.errno is not None else otherwise
        raise ExportTrouble(code, repr(error), where=where) from error


def copy_out(pieces: Iterator[bytes], target: IO[bytes], step: Callable[[int], None]) -> None:
    """Write the pieces of an entry to a file of ours; ``step`` is told the size of each."""
    for piece in pieces:
        target.write(piece)
        step(len(piece))
