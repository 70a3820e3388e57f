"""Readings of a batch from any spreadsheet saved as text: what its columns are, what its rows say.

Lines, encodings, dates, times and temperatures are read as a logger's file is
(`loggerfile`, `loggerlines`, `loggertext`, `loggerzone`); the other amounts as the reading
form reads them. Nothing is kept here.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, tzinfo
from pathlib import Path

from brewdesk.services.exporting import never
from brewdesk.services.loggerfile import (
    Layout,
    Preview,
    examine,
    time_text,
    with_temperature_column,
    zone_in_title,
)
from brewdesk.services.loggerlines import cells_of, line_blocks, opened
from brewdesk.services.loggertext import TimeReader, celsius_of
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.loggerzone import to_utc
from brewdesk.services.readings import METHODS, SPANS
from brewdesk.store.records import ReadingDraft
from culturecore import units
from culturecore.stages import Quantity
from culturecore.units import Kind, NotAQuantity

OFFERED = (
    Quantity.PH,
    Quantity.TEMPERATURE_C,
    Quantity.BRIX,
    Quantity.SPECIFIC_GRAVITY,
    Quantity.TA_G_PER_L,
    Quantity.NOTE,
)
MOST_READINGS = 2000  # in one act, which undo has to take back while the window waits
ERRORS_KEPT = 200
_MOST_LINES = 200_000
_TEXT_KEPT = 80
_LONGEST_NOTE = 20_000  # what the store takes
_CELL_LINES = 40  # of one cell with line breaks in it
_KINDS = {
    Quantity.PH: Kind.PH,
    Quantity.BRIX: Kind.BRIX,
    Quantity.SPECIFIC_GRAVITY: Kind.GRAVITY,
    Quantity.TA_G_PER_L: Kind.ACIDITY,
}
# Titles that spreadsheets of brewers have; each is looked for in turn. From memory.
_TITLES = (
    (Quantity.PH, re.compile(r"\bph\b")),
    (Quantity.BRIX, re.compile(r"brix|°\s*bx\b|\bbx\b")),
    (Quantity.SPECIFIC_GRAVITY, re.compile(r"\bsg\b|gravity|dichte|densit")),
    (Quantity.TA_G_PER_L, re.compile(r"\bta\b|acid|säure|\bg/l\b")),
    (Quantity.TEMPERATURE_C, re.compile(r"temp|°\s*[cf]\b|celsius|fahrenheit")),
    (Quantity.NOTE, re.compile(r"note|remark|comment|bemerk|notiz")),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """How a file is to be read: its layout, and which column is what."""

    layout: Layout
    columns: tuple[tuple[Quantity, int], ...]


@dataclass(frozen=True, slots=True)
class CellError:
    """A value that was left out, or a whole row if it has no ``title``; ``code`` says why."""

    line: int
    code: str
    title: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingsRead:
    """What a file held for a batch.

    ``known`` values were in the batch already, ``doubled`` twice in the file: the same
    quantity at the same second. ``errors`` are the first of ``error_count``.
    """

    drafts: tuple[ReadingDraft, ...]
    errors: tuple[CellError, ...]
    error_count: int
    known: int
    doubled: int
    left_out: int
    twice: int

    @property
    def first_at(self) -> datetime | None:
        """The time of the earliest reading."""
        return min((draft.at for draft in self.drafts), default=None)

    @property
    def last_at(self) -> datetime | None:
        """The time of the latest reading."""
        return max((draft.at for draft in self.drafts), default=None)


Key = tuple[int, Quantity]  # the second since 1970, and what was read
Check = Callable[[ReadingDraft], str]


def examine_readings(
    path: Path, *, encoding: str | None = None, delimiter: str | None = None
) -> tuple[Preview, Choice]:
    """Look at a file and propose what its columns are. Reads its ends only, so it is quick.

    Raises
    ------
    LoggerTrouble
        "unreadable", "empty_file" or "no_table".
    """
    preview = examine(path, encoding=encoding, delimiter=delimiter)
    layout = preview.layout
    found: dict[Quantity, int] = {}
    for column, title in enumerate(layout.titles):
        if column in layout.time_columns:
            continue
        plain = title.casefold()
        for quantity, looks_like in _TITLES:
            if quantity not in found and looks_like.search(plain):
                found[quantity] = column
                break
    if not found:  # a table without titles: what remains is for the maker to say
        return preview, Choice(layout=layout, columns=())
    ordered = tuple((quantity, found[quantity]) for quantity in OFFERED if quantity in found)
    if Quantity.TEMPERATURE_C in found and found[Quantity.TEMPERATURE_C] != (
        layout.temperature_column
    ):
        layout = with_temperature_column(preview, layout, found[Quantity.TEMPERATURE_C])
    return preview, Choice(layout=layout, columns=ordered)


def key_of(reading: ReadingDraft) -> Key:
    """Return what makes two readings of a batch the same."""
    return int(reading.at.timestamp() // 1), reading.quantity


@dataclass(slots=True)
class _Row:
    line: int
    local_s: int
    offset_s: int | None
    values: list[ReadingDraft]


@dataclass(slots=True)
class _Rows:
    choice: Choice
    batch_id: int
    rows: list[_Row] = field(default_factory=list)
    errors: list[CellError] = field(default_factory=list)
    error_count: int = 0

    def refuse(self, line: int, code: str, text: str, title: str = "") -> None:
        self.error_count += 1
        if len(self.errors) < ERRORS_KEPT:
            self.errors.append(CellError(line, code, title, text.strip()[:_TEXT_KEPT]))


def read_readings(
    path: Path,
    choice: Choice,
    zone: tzinfo,
    *,
    batch_id: int,
    known: frozenset[Key] = frozenset(),
    check: Check = lambda _draft: "",
    is_cancelled: Callable[[], bool] = never,
) -> ReadingsRead:
    """Read all rows of a file. Slow for many: run it as a job.

    Parameters
    ----------
    path, choice
        The file, and how to read it; its ``date_order`` must be known.
    zone
        Of times that name none; a zone in the time's title comes first.
    batch_id
        The batch they are of.
    known
        The readings it has: what comes again is skipped and counted.
    check
        Says with a code what no reading of the batch can be, "" for what can.
    is_cancelled
        Asked after each block.

    Raises
    ------
    LoggerTrouble
        "unreadable", "order_unknown", "too_many", "cancelled" or "nothing_read".
    """
    if choice.layout.date_order is None:
        raise LoggerTrouble("order_unknown")
    rows = _Rows(choice, batch_id)
    reader = TimeReader(choice.layout.date_order)
    with opened(path, choice.layout.encoding) as file:
        for line, text in _records(_lines(line_blocks(file), is_cancelled)):
            if line >= choice.layout.first_line:
                _read_row(rows, line, text, reader)
    return _settled(rows, zone, known, check)


def sample_row(
    cells: Sequence[str], choice: Choice, line: int
) -> tuple[int | None, tuple[ReadingDraft, ...], tuple[CellError, ...]]:
    """Return a preview's row as it would be read: seconds on its clock, readings, errors."""
    order = choice.layout.date_order
    if order is None or not any(cell.strip() for cell in cells):
        return None, (), ()
    rows = _Rows(choice, 0)
    _read_cells(rows, line, cells, TimeReader(order))
    if not rows.rows:
        return None, (), tuple(rows.errors)
    return rows.rows[0].local_s, tuple(rows.rows[0].values), tuple(rows.errors)


def _lines(blocks: Iterable[str], is_cancelled: Callable[[], bool]) -> Iterator[tuple[int, str]]:
    number = 0
    for block in blocks:
        if is_cancelled():
            raise LoggerTrouble("cancelled")
        for line in block.split("\n"):
            number += 1
            if number > _MOST_LINES:
                raise LoggerTrouble("too_many")
            yield number, line


def _records(lines: Iterator[tuple[int, str]]) -> Iterator[tuple[int, str]]:
    """Join the lines of a cell with line breaks in it, as spreadsheets write notes.

    A quotation mark that nothing closes within a few lines is an ordinary sign.
    """
    held: list[tuple[int, str]] = []
    for number, line in lines:
        is_odd = line.count('"') % 2 == 1
        if held:
            held.append((number, line))
            if is_odd:
                yield held[0][0], "\n".join(text for _, text in held)
                held = []
            elif len(held) >= _CELL_LINES:
                yield from held
                held = []
        elif is_odd:
            held = [(number, line)]
        else:
            yield number, line
    yield from held


def _read_row(rows: _Rows, line: int, text: str, reader: TimeReader) -> None:
    mark = rows.choice.layout.delimiter
    if text.strip(f"{mark} \t\x00"):
        _read_cells(rows, line, cells_of(text, mark), reader)


def _read_cells(rows: _Rows, line: int, cells: Sequence[str], reader: TimeReader) -> None:
    layout = rows.choice.layout
    text = time_text(cells, layout.time_columns)
    if text is None:
        rows.refuse(line, "too_few_columns", layout.delimiter.join(cells))
        return
    when = reader.read(text)
    if isinstance(when, str):
        rows.refuse(line, when, text)
        return
    values: list[ReadingDraft] = []
    for quantity, column in rows.choice.columns:
        cell = cells[column].strip() if column < len(cells) else ""
        if not cell:
            continue
        draft = _draft(rows, quantity, cell)
        if isinstance(draft, str):
            title = layout.titles[column] if column < len(layout.titles) else ""
            rows.refuse(line, draft, cell, title or str(column + 1))
        else:
            values.append(draft)
    rows.rows.append(_Row(line, when[0], when[1], values))


def _draft(rows: _Rows, quantity: Quantity, cell: str) -> ReadingDraft | str:
    """Read one cell; the time is set later. Return the code of what is wrong with it."""
    blank = ReadingDraft(
        batch_id=rows.batch_id,
        at=datetime(1970, 1, 1, tzinfo=UTC),
        quantity=quantity,
        method=METHODS[quantity][0],
        entered=cell.replace("\x00", "\ufffd")[:_LONGEST_NOTE],
    )
    if quantity is Quantity.NOTE:
        if len(cell) > _LONGEST_NOTE:
            return "note_too_long"
        return replace(blank, text=cell.replace("\x00", "\ufffd"))
    span = SPANS[quantity]
    if quantity is Quantity.TEMPERATURE_C:
        read = celsius_of(cell, rows.choice.layout.scale, span.low, span.high)
        if isinstance(read, str):
            return "value_absurd" if read == "temperature_absurd" else "value_unreadable"
        return replace(blank, value=read)
    kind = _KINDS[quantity]
    try:
        value = units.parse(cell, kind, default_unit=units.units_for(kind)[0])
    except NotAQuantity:
        return "value_unreadable"
    return replace(blank, value=value) if span.low <= value <= span.high else "value_absurd"


def _settled(rows: _Rows, zone: tzinfo, known: frozenset[Key], check: Check) -> ReadingsRead:
    """Put what was read in UTC and in order, each thing once."""
    left_out, twice = _place(rows.rows, zone_in_title(rows.choice.layout) or zone)
    drafts: dict[Key, ReadingDraft] = {}
    again = doubled = 0
    for row in rows.rows:
        at = datetime.fromtimestamp(row.local_s, UTC)
        for value in row.values:
            draft = replace(value, at=at)
            code = check(draft)
            if code:
                rows.refuse(row.line, code, draft.entered, _title(rows.choice, draft.quantity))
            elif key_of(draft) in known:
                again += 1
            elif key_of(draft) in drafts:
                doubled += 1
            else:
                drafts[key_of(draft)] = draft
        if len(drafts) > MOST_READINGS:
            raise LoggerTrouble("too_many")
    if not drafts and not again:
        raise LoggerTrouble("nothing_read")
    errors = sorted(rows.errors, key=lambda error: error.line)
    return ReadingsRead(
        drafts=tuple(sorted(drafts.values(), key=lambda draft: draft.at)),
        errors=tuple(errors),
        error_count=rows.error_count,
        known=again,
        doubled=doubled,
        left_out=left_out,
        twice=twice,
    )


def _place(rows: list[_Row], zone: tzinfo) -> tuple[int, int]:
    """Turn the rows' times into UTC; return how many never were, and how many were twice."""
    import numpy as np

    plain = [row for row in rows if row.offset_s is None]
    for row in rows:
        row.local_s -= row.offset_s or 0
    if not plain:
        return 0, 0
    placed = to_utc(np.array([row.local_s for row in plain], dtype=np.int64), zone)
    for row, at_s in zip(plain, placed.at_s.tolist(), strict=True):
        row.local_s = at_s
    return placed.left_out, placed.twice


def _title(choice: Choice, quantity: Quantity) -> str:
    column = dict(choice.columns)[quantity]
    titles = choice.layout.titles
    return (titles[column] if column < len(titles) else "") or str(column + 1)
