"""What a set of row changes touched, in short: for those who look at the same rows."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass

from brewdesk.store.records import RowDelta

_BATCH_COLUMNS = ("batch_id", "from_batch_id", "to_batch_id")
_VESSEL_COLUMNS = ("vessel_id", "from_vessel_id", "to_vessel_id")


@dataclass(frozen=True, slots=True, kw_only=True)
class Touched:
    """Tables, and the batches and vessels that changed rows name. Empty ids: no single one."""

    tables: frozenset[str] = frozenset()
    batch_ids: frozenset[int] = frozenset()
    vessel_ids: frozenset[int] = frozenset()
    settings: bool = False


def touched_by(deltas: Iterable[RowDelta], *, settings: bool = False) -> Touched:
    """Sum row changes up."""
    tables: set[str] = set()
    batches: set[int] = set()
    vessels: set[int] = set()
    for delta in deltas:
        tables.add(delta.table)
        if delta.table == "batch":
            batches.add(delta.row_id)
        if delta.table == "vessel":
            vessels.add(delta.row_id)
        for row in (delta.before, delta.after):
            if row is not None:
                batches.update(_ids(row, _BATCH_COLUMNS))
                vessels.update(_ids(row, _VESSEL_COLUMNS))
    return Touched(
        tables=frozenset(tables),
        batch_ids=frozenset(batches),
        vessel_ids=frozenset(vessels),
        settings=settings,
    )


def _ids(row: dict[str, object], names: tuple[str, ...]) -> Iterable[int]:
    return (value for name in names if isinstance(value := row.get(name), int))


@dataclass(frozen=True, slots=True, kw_only=True)
class Word:
    """Another desk's word that something was committed. ``serial`` rises with each."""

    desk_uid: str
    serial: int
    touched: Touched


# A notice of the server carries less than 8000 bytes (manual of PostgreSQL, "NOTIFY").
MOST_BYTES = 7500


def word_to_text(word: Word) -> str:
    """Give the text of a word. Of a crowd no ids are named, which means any of them."""
    said = word.touched
    content: dict[str, object] = {
        "desk": word.desk_uid,
        "serial": word.serial,
        "tables": sorted(said.tables),
        "batches": sorted(said.batch_ids),
        "vessels": sorted(said.vessel_ids),
        "settings": said.settings,
    }
    text = json.dumps(content, separators=(",", ":"))
    if len(text.encode()) > MOST_BYTES:
        text = json.dumps({**content, "batches": [], "vessels": []}, separators=(",", ":"))
    return text


def word_from_text(text: str) -> Word | None:
    """Read a word; None for what no desk of this kind has said."""
    try:
        content = json.loads(text)
        touched = Touched(
            tables=frozenset(map(str, content["tables"])),
            batch_ids=frozenset(map(int, content["batches"])),
            vessel_ids=frozenset(map(int, content["vessels"])),
            settings=bool(content["settings"]),
        )
        return Word(desk_uid=str(content["desk"]), serial=int(content["serial"]), touched=touched)
    except (ValueError, TypeError, KeyError):
        return None
