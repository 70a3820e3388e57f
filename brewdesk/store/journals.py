"""Tell whether a journal beside a store is that of the file as it is now.

A store that was put back by hand while a journal of its successor still lay there would be
spoilt by opening it: SQLite plays any journal of that name into the file
(https://www.sqlite.org/howtocorrupt.html, section 1.4). What tells the two apart is the
counter of changes in the file's header: every change raises it by one, and the journal holds
the first page as it was before.
"""

from __future__ import annotations

from pathlib import Path

from brewdesk.store.identify import side_file
from brewdesk.store.schema import APPLICATION_ID

_STORE_MAGIC = b"SQLite format 3\x00"  # https://www.sqlite.org/fileformat.html, section 1.3
_JOURNAL_MAGIC = bytes.fromhex("d9d505f920a163d7")  # the same, section 3
_HEADER_BYTES = 100
_IN_WAL = 2


def foreign_journals(path: Path, *, known_schema: int) -> tuple[Path, ...]:
    """Give the journals beside a store of ours that belong to another state of it.

    Whatever is doubtful is left to SQLite. Only for a store that nobody has open: its header
    is read as a plain file.
    """
    journal, log = side_file(path, "-journal"), side_file(path, "-wal")
    if not (journal.exists() or log.exists()):
        return ()
    with path.open("rb") as stream:
        header = stream.read(_HEADER_BYTES)
    if not _is_known(header, known_schema):
        return ()
    found = []
    if log.exists() and header[18] != _IN_WAL and header[19] != _IN_WAL:
        found += [each for each in (log, side_file(path, "-shm")) if each.exists()]
    if journal.exists():
        before = _counter_before(journal)
        now = int.from_bytes(header[24:28], "big")
        if before is not None and now not in (before, (before + 1) % 2**32):
            found.append(journal)
    return tuple(found)


def _is_known(header: bytes, known_schema: int) -> bool:
    """Whether a header is whole, ours, and of a schema that this program may touch."""
    if len(header) < _HEADER_BYTES or header[:16] != _STORE_MAGIC:
        return False
    number = int.from_bytes(header[60:64], "big")
    return int.from_bytes(header[68:72], "big") == APPLICATION_ID and 1 <= number <= known_schema


def _counter_before(journal: Path) -> int | None:
    """Return the counter of changes on the first page that a journal holds; None if it has none."""
    with journal.open("rb") as stream:
        while len(header := stream.read(28)) == 28 and header[:8] == _JOURNAL_MAGIC:
            records = int.from_bytes(header[8:12], "big")
            sector = int.from_bytes(header[20:24], "big")
            page_bytes = int.from_bytes(header[24:28], "big")
            if not (28 <= sector <= 65536 and 512 <= page_bytes <= 65536):
                return None
            stream.seek(sector - 28, 1)
            for _ in range(records):
                record = stream.read(4 + page_bytes + 4)
                if len(record) < 4 + page_bytes + 4:
                    return None
                if int.from_bytes(record[:4], "big") == 1:
                    return int.from_bytes(record[28:32], "big")
            # A large change has its journal in parts, each at the start of a sector.
            stream.seek(-stream.tell() % sector, 1)
    return None
