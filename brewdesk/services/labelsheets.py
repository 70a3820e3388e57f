"""The maker's label sheets and what was chosen last, kept as checked JSON among the settings.

What is read back is checked as if a stranger had written it: an entry that makes no sense is
left out, and the others stay.
"""

from __future__ import annotations

import json
import logging
import uuid
from collections.abc import Mapping
from dataclasses import asdict, dataclass, field, fields, replace
from typing import TYPE_CHECKING, Any

from brewdesk.services.changes import Changes, Topic
from brewdesk.services.labelgeometry import LabelSheet, problems_of
from brewdesk.services.wording.labels import roll_name_words, sheet_name_words
from brewdesk.store.errors import StoreTrouble
from culturecore.errors import ImpossibleInput

if TYPE_CHECKING:
    from brewdesk.services.door import Units

log = logging.getLogger(__name__)

SHEETS_KEY = "label_sheets"
CHOICES_KEY = "label_choices"
MOST_SHEETS = 60
MOST_TEXTS = 300
LONGEST_TEXT = 2000

A4_MM = (210.0, 297.0)
LETTER_MM = (215.9, 279.4)


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelChoices:
    """What was chosen when labels were last made.

    ``texts`` are the maker's own words by record ("batch:3") and field.
    """

    sheet_key: str = ""
    kind: str = ""
    hidden: tuple[str, ...] = ()
    has_frames: bool = True
    texts: Mapping[str, Mapping[str, str]] = field(default_factory=dict)


def starters() -> tuple[LabelSheet, ...]:
    """Return sheets to start from, described by their numbers alone.

    Common divisions of the two papers, reckoned from the paper's size; no maker's sheet is
    meant. Measure your own and correct the numbers.
    """
    a4_wide, a4_high = A4_MM
    letter_wide, letter_high = LETTER_MM
    return (
        LabelSheet(
            key="a4_3x8",
            name=sheet_name_words("A4", 3, 8, 70, 36),
            page_width_mm=a4_wide,
            page_height_mm=a4_high,
            margin_left_mm=0.0,
            margin_top_mm=4.5,
            columns=3,
            rows=8,
            label_width_mm=70.0,
            label_height_mm=36.0,
        ),
        LabelSheet(
            key="a4_3x7",
            name=sheet_name_words("A4", 3, 7, 63.5, 38.1),
            page_width_mm=a4_wide,
            page_height_mm=a4_high,
            margin_left_mm=7.25,
            margin_top_mm=15.15,
            columns=3,
            rows=7,
            label_width_mm=63.5,
            label_height_mm=38.1,
            gap_x_mm=2.5,
            corner_mm=2.0,
        ),
        LabelSheet(
            key="a4_2x4",
            name=sheet_name_words("A4", 2, 4, 99, 67),
            page_width_mm=a4_wide,
            page_height_mm=a4_high,
            margin_left_mm=5.0,
            margin_top_mm=14.5,
            columns=2,
            rows=4,
            label_width_mm=99.0,
            label_height_mm=67.0,
            gap_x_mm=2.0,
            corner_mm=2.0,
        ),
        LabelSheet(
            key="letter_3x10",
            name=sheet_name_words("US Letter", 3, 10, 66.7, 25.4),
            page_width_mm=letter_wide,
            page_height_mm=letter_high,
            margin_left_mm=4.8,
            margin_top_mm=12.7,
            columns=3,
            rows=10,
            label_width_mm=66.7,
            label_height_mm=25.4,
            gap_x_mm=3.1,
            corner_mm=1.5,
        ),
        LabelSheet(
            key="letter_2x5",
            name=sheet_name_words("US Letter", 2, 5, 101.6, 50.8),
            page_width_mm=letter_wide,
            page_height_mm=letter_high,
            margin_left_mm=4.0,
            margin_top_mm=12.7,
            columns=2,
            rows=5,
            label_width_mm=101.6,
            label_height_mm=50.8,
            gap_x_mm=4.7,
            corner_mm=2.0,
        ),
        LabelSheet(
            key="roll_62x40",
            name=roll_name_words(62.0, 40.0),
            is_roll=True,
            page_width_mm=62.0,
            page_height_mm=40.0,
            margin_left_mm=1.5,
            margin_top_mm=0.0,
            columns=1,
            rows=1,
            label_width_mm=59.0,
            label_height_mm=40.0,
            gap_y_mm=3.0,
        ),
        LabelSheet(
            key="roll_62x29",
            name=roll_name_words(62.0, 29.0),
            is_roll=True,
            page_width_mm=62.0,
            page_height_mm=29.0,
            margin_left_mm=1.5,
            margin_top_mm=0.0,
            columns=1,
            rows=1,
            label_width_mm=59.0,
            label_height_mm=29.0,
            gap_y_mm=3.0,
        ),
    )


def new_key() -> str:
    """Return a key for a sheet that is not among the starters."""
    return f"own_{uuid.uuid4().hex[:12]}"


class LabelSheets:
    """Keep sheets and choices. Changes are announced, but are no step of the undo history."""

    def __init__(self, store: Units, changes: Changes) -> None:
        self._store = store
        self._changes = changes

    def all(self) -> tuple[LabelSheet, ...]:
        """Return the starters, as the maker has corrected them, then the maker's own."""
        kept = self._kept()
        known = tuple(kept.pop(sheet.key, sheet) for sheet in starters())
        return known + tuple(kept.values())

    def get(self, key: str) -> LabelSheet:
        """Return a sheet; the first there is if ``key`` is gone."""
        every = self.all()
        return next((sheet for sheet in every if sheet.key == key), every[0])

    def is_starter(self, key: str) -> bool:
        """Whether removing ``key`` brings a starter's numbers back."""
        return any(sheet.key == key for sheet in starters())

    def is_changed(self, key: str) -> bool:
        """Whether anything is kept for ``key``."""
        return key in self._kept()

    def save(self, sheet: LabelSheet) -> LabelSheet:
        """Keep a sheet, new or changed.

        Raises
        ------
        ImpossibleInput
            The first of `problems_of`, or field "name" with reason "too_many".
        StoreTrouble
            If it cannot be written.
        """
        problems = problems_of(sheet)
        if problems:
            raise problems[0]
        sheet = replace(sheet, name=" ".join(sheet.name.split()))
        kept = self._kept()
        kept[sheet.key] = sheet
        if len(kept) > MOST_SHEETS:
            raise ImpossibleInput("name", sheet.name, high=MOST_SHEETS, reason="too_many")
        self._write(kept)
        return sheet

    def remove(self, key: str) -> None:
        """Forget a sheet of the maker's; a starter gets its own numbers back."""
        kept = self._kept()
        if kept.pop(key, None) is not None:
            self._write(kept)

    def choices(self) -> LabelChoices:
        """Return what was chosen last; the defaults if nothing was, or nothing sensible."""
        return _choices_from(self._read(CHOICES_KEY))

    def keep_choices(self, choices: LabelChoices) -> None:
        """Keep what was chosen. A store that takes nothing is no reason to complain."""
        texts = {key: dict(words) for key, words in choices.texts.items() if words}
        newest = dict(list(texts.items())[-MOST_TEXTS:])
        told = {**_plain(choices), "texts": newest}
        try:
            with self._store.write() as unit:
                unit.settings.put(CHOICES_KEY, json.dumps(told))
        except StoreTrouble as trouble:
            log.warning("the label choices could not be kept: %s", trouble.code)

    def _kept(self) -> dict[str, LabelSheet]:
        rows = self._read(SHEETS_KEY)
        sheets = [_sheet_from(row) for row in rows] if isinstance(rows, list) else []
        return {sheet.key: sheet for sheet in sheets[:MOST_SHEETS] if sheet is not None}

    def _read(self, key: str) -> object:
        try:
            with self._store.read() as unit:
                text = unit.settings.get(key)
        except StoreTrouble as trouble:
            log.warning("%s could not be read: %s", key, trouble.code)
            return None
        try:
            return None if text is None else json.loads(text)
        except (ValueError, RecursionError):
            return None

    def _write(self, kept: Mapping[str, LabelSheet]) -> None:
        text = json.dumps([asdict(sheet) for sheet in kept.values()], allow_nan=False)
        with self._store.write() as unit:
            unit.settings.put(SHEETS_KEY, text)
        self._changes.announce(Topic.SETTINGS)


def _plain(choices: LabelChoices) -> dict[str, object]:
    return {
        "sheet_key": choices.sheet_key,
        "kind": choices.kind,
        "hidden": list(choices.hidden),
        "has_frames": choices.has_frames,
    }


def _sheet_from(row: object) -> LabelSheet | None:
    """Return the sheet that a row of JSON describes; None if it describes none."""
    if not isinstance(row, dict):
        return None
    values: dict[str, Any] = {}
    for each in fields(LabelSheet):
        if each.name not in row:
            continue
        value = row[each.name]
        if each.type == "float" and type(value) is int:
            value = float(value) if abs(value) < 1e9 else None
        if type(value).__name__ != each.type:
            return None
        values[each.name] = value
    try:
        sheet = LabelSheet(**values)
    except TypeError:  # a field is missing
        return None
    return sheet if sheet.key and not problems_of(sheet) else None


def _choices_from(told: object) -> LabelChoices:
    if not isinstance(told, dict):
        return LabelChoices()
    hidden, texts = told.get("hidden"), told.get("texts")
    return LabelChoices(
        sheet_key=_text(told.get("sheet_key")),
        kind=_text(told.get("kind")),
        hidden=tuple(_text(each) for each in hidden) if isinstance(hidden, list) else (),
        has_frames=told.get("has_frames") is not False,
        texts=_texts(texts) if isinstance(texts, dict) else {},
    )


def _texts(told: Mapping[str, object]) -> dict[str, dict[str, str]]:
    found = {}
    for key, words in list(told.items())[-MOST_TEXTS:]:
        if isinstance(words, dict):
            found[key] = {name: _text(text) for name, text in words.items()}
    return found


def _text(value: object) -> str:
    return value[:LONGEST_TEXT] if isinstance(value, str) else ""
