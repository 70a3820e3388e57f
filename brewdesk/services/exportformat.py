"""The format of an export: names, version, limits, and what each column means.

``resources/records/export-format.md`` says the same to people; a test compares both.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

FORMAT = "brewdesk-export"
VERSION = 1
OLDEST_SCHEMA = 2  # exports begin with it
ENDING = ".brewdesk-export.zip"
MANIFEST = "manifest.json"
GUIDE = "FORMAT.md"

MOST_ENTRIES = 250_000
MOST_MANIFEST_BYTES = 64_000_000
MOST_LINE_BYTES = 64_000_000
MOST_TOTAL_BYTES = 64_000_000_000
# Text packs to a tenth or a fiftieth of its size; what packs to less is there to fill a disk.
MOST_PACKING = 250
PACKING_FROM_BYTES = 50_000_000

PHOTO_NAME = re.compile(r"photos/([0-9a-f]{64})\.(jpg|png|webp|gif|bmp|tiff|heic|avif|img)")
TABLE_NAME = re.compile(r"tables/([a-z_]{1,60})\.jsonl")
CSV_NAME = re.compile(r"csv/([a-z_]{1,60})\.csv")

# Units by the end of a column's name, the longest first.
_ENDINGS = (
    ("_meq_per_l", "meq/L"),
    ("_g_per_l", "g/L"),
    ("_percent", "%"),
    ("_bytes", "bytes"),
    ("_bar", "bar"),
    ("_volumes", "volumes of CO2"),
    ("_share", "share of 1"),
    ("_count", "count"),
    ("_mv", "mV"),
    ("_px", "pixels"),
    ("_mm", "mm"),
    ("_cm", "cm"),
    ("_l", "L"),
    ("_g", "g"),
    ("_c", "°C"),
    ("_s", "s"),
    ("_id", "id of a row"),
    ("_ph", "pH"),
)
_NAMED = {
    "id": "id of the row",
    "ph": "pH",
    "ph_sd": "pH",
    "position": "place in order, from 0",
    "shelf_order": "place in order",
    "revision": "count",
    "is_demo": "0 or 1",
    "is_test": "0 or 1",
    "start_ph_low": "pH",
    "start_ph_high": "pH",
    "residual_sugar_low_g_per_l": "g/L",
    "sugar_share_low": "share of 1",
    "sugar_share_high": "share of 1",
    "is_blind": "0 or 1",
    "seed": "any whole number",
    "price_minor": "smallest coin of the currency",
    "liking": "0 to 10",
    ("supply", "low_amount"): "as measure says",
    ("supply_lot", "amount"): "as measure of the supply says",
    ("supply_draw", "amount"): "as measure of the supply says",
    ("batch_supply", "amount"): "as measure of the supply says",
    ("supply", "rated_bar"): "bar",
    ("care", "sd"): "pH",
    ("reading", "value"): "as quantity says",
    ("reading", "sd"): "as quantity says",
    ("temperature_chunk", "samples"): "12 bytes each: int64 s since 1970-01-01 UTC, float32 °C",
}


@dataclass(frozen=True, slots=True)
class FileNote:
    """A file of an export as its manifest names it."""

    file: str
    size_bytes: int
    sha256: str


@dataclass(frozen=True, slots=True)
class TableNote:
    """A table of an export as its manifest names it."""

    name: str
    rows: int
    columns: tuple[str, ...]
    file: FileNote


def unit_of(table: str, column: str, kind: str) -> str:
    """Return the unit of a column, in words for people; "" for text and choices.

    Raises
    ------
    KeyError
        For a column of numbers whose name does not say it: name it here.
    """
    if kind in ("text", "choice"):
        return ""
    if kind == "instant":
        return "UTC"
    named = _NAMED.get((table, column)) or _NAMED.get(column)
    if named is not None:
        return named
    for ending, unit in _ENDINGS:
        if column.endswith(ending):
            return unit
    raise KeyError(f"{table}.{column}")
