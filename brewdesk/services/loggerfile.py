"""Find out how a logger's file is laid out: encoding, columns, dates, scale.

The file is looked at from both ends; what cannot be known from it (whether 3/4 is a day in
April or in March) is left open for the maker to say, never guessed.
"""

from __future__ import annotations

import itertools
import re
import statistics
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta, timezone, tzinfo
from pathlib import Path

from brewdesk.services.loggerlines import DELIMITERS, cells_of, encoding_of
from brewdesk.services.loggertext import (
    DateOrder,
    Degrees,
    TimeReader,
    celsius_of,
    is_clock,
    scale_named,
)
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.placelog import LEAST_C, MOST_C

_HEAD_BYTES = 1 << 18
_TAIL_BYTES = 1 << 16
_LOOKED_AT = 300  # rows
_SHOWN = 12
_WIDEST = 64  # columns; a table of temperatures has fewer
_WARM_FOR_A_ROOM_C = 45.0  # a column whose middle is above is likely in degrees Fahrenheit
_SCALE_ROOM = 200.0
_SLASHED = re.compile(r"\s*(\d{1,2})[-/.](\d{1,2})[-/.](?:\d{4}|\d{2})(?!\d)", re.ASCII)
_ZONE_IN_TITLE = re.compile(r"(?:gmt|utc)\s*(?:([+-])(\d{1,2})(?::?(\d{2}))?)?", re.I | re.ASCII)
_TEMPERATURE = re.compile(r"temp|°|celsius|fahrenheit|\bgrad\b|\bdeg")
_OTHER = re.compile(r"humid|feucht|humed|humidit|\brh\b|%|dew|tau|bat|press|druck|volt|index|count")
_NUMBERING = re.compile(r"^(?:no\.?|nr\.?|n°|#|id|index|record|row|sample|count)$")


@dataclass(frozen=True, slots=True, kw_only=True)
class Layout:
    """How to read a file.

    ``first_line`` is the first line with data, counted from 1; ``titles`` names the columns
    ("" where the file does not). ``time_columns`` are one column, or the date's and the
    clock's. ``date_order`` is None while the file does not tell and nobody has said it.
    ``title_offset_s`` is the offset from UTC [s] that the time's title names.
    """

    encoding: str
    delimiter: str
    first_line: int
    titles: tuple[str, ...]
    time_columns: tuple[int, ...]
    temperature_column: int
    scale: Degrees
    date_order: DateOrder | None
    title_offset_s: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Preview:
    """What the beginning of a file looks like, and the layout that seems right.

    ``is_order_open`` says that the maker has to choose between day and month.
    """

    path: Path
    layout: Layout
    rows: tuple[tuple[str, ...], ...]
    is_order_open: bool


@dataclass(frozen=True, slots=True)
class SampleRow:
    """One row of the preview as it would be read: seconds on its own clock and degC, or why not."""

    cells: tuple[str, ...]
    local_s: int | None
    celsius: float | None
    code: str = ""


def examine(path: Path, *, encoding: str | None = None, delimiter: str | None = None) -> Preview:
    """Look at a file and propose a layout. Reads its ends only, so it is quick.

    Parameters
    ----------
    path
        The file.
    encoding, delimiter
        What the maker has said; without it they are found out.

    Raises
    ------
    LoggerTrouble
        "unreadable", "empty_file" or "no_table".
    """
    head, tail = _ends(path)
    if not head.strip(b"\x00 \t\r\n\xef\xbb\xbf\xff\xfe"):
        raise LoggerTrouble("empty_file")
    encoding = encoding or encoding_of(head)
    lines = _decoded(head, encoding)
    if len(head) == _HEAD_BYTES and len(lines) > 1:
        lines.pop()  # cut off in its middle
    marks = (delimiter,) if delimiter else DELIMITERS
    tried = [_layout(lines, encoding, mark) for mark in marks]
    found = [each for each in tried if each is not None]
    if not found:
        raise LoggerTrouble("no_table")
    hits, layout = max(found, key=lambda pair: pair[0])  # the first of equals
    if not hits:
        raise LoggerTrouble("no_table")
    order, is_open = _order(lines[layout.first_line - 1 :] + _decoded(tail, encoding), layout)
    rows = tuple(
        tuple(cells_of(line, layout.delimiter)[:_WIDEST])
        for line in lines[layout.first_line - 1 : layout.first_line - 1 + _SHOWN]
    )
    layout = replace(layout, date_order=order)
    return Preview(path=path, layout=layout, rows=rows, is_order_open=is_open)


def sampled(preview: Preview, layout: Layout) -> tuple[SampleRow, ...]:
    """Return the preview's rows as ``layout`` reads them."""
    reader = TimeReader(layout.date_order or DateOrder.DAY)
    return tuple(_sample(cells, layout, reader) for cells in preview.rows)


def with_temperature_column(preview: Preview, layout: Layout, column: int) -> Layout:
    """Return the layout with another temperature column, and the scale that goes with it."""
    cells = [row[column] for row in preview.rows if column < len(row)]
    return replace(
        layout, temperature_column=column, scale=_scale(_title(layout.titles, column), cells)
    )


def zone_in_title(layout: Layout) -> tzinfo | None:
    """Return the zone that the time's title names, if it does."""
    if layout.title_offset_s is None:
        return None
    return timezone(timedelta(seconds=layout.title_offset_s))


def time_text(cells: Sequence[str], columns: tuple[int, ...]) -> str | None:
    """Return the text of a row's time; None if the row is too short for it."""
    if max(columns) >= len(cells):
        return None
    return " ".join(cells[column].strip() for column in columns)


# --- looking ---------------------------------------------------------------------------


def _ends(path: Path) -> tuple[bytes, bytes]:
    try:
        with path.open("rb") as file:
            head = file.read(_HEAD_BYTES)
            size = file.seek(0, 2)
            file.seek(max(len(head), size - _TAIL_BYTES) // 2 * 2)  # UTF-16 in step
            return head, file.read(_TAIL_BYTES)
    except (OSError, ValueError) as error:
        raise LoggerTrouble("unreadable", str(error)) from error


def _decoded(data: bytes, encoding: str) -> list[str]:
    text = data.decode(encoding, "replace").removeprefix("\ufeff")
    return text.replace("\r\n", "\n").replace("\r", "\n").split("\n")


def _layout(lines: Sequence[str], encoding: str, mark: str) -> tuple[int, Layout] | None:
    """Return a layout with this delimiter, and how many rows it makes sense of."""
    rows = [cells_of(line, mark)[:_WIDEST] for line in lines[: 2 * _LOOKED_AT]]
    width = max((len(row) for row in rows), default=0)
    if width < 2:
        return None
    reader = TimeReader(DateOrder.DAY), TimeReader(DateOrder.MONTH)

    def is_time(cell: str) -> bool:
        return _is_time(cell, reader)

    times = [_hits(rows, column, is_time) for column in range(width)]
    date_column = max(range(width), key=lambda column: (len(times[column]), -column))
    if not times[date_column]:
        return None
    columns: tuple[int, ...] = (date_column,)
    if not any(":" in rows[number][date_column] for number in times[date_column][:20]):
        clocks = [_hits(rows, column, is_clock) for column in range(width)]
        clock_column = max(range(width), key=lambda column: (len(clocks[column]), -column))
        if clocks[clock_column]:
            columns = (date_column, clock_column)
    first = times[date_column][0]
    data = [rows[number] for number in times[date_column]]
    titles = _titles(rows, first, width, columns)
    chosen = _temperature_column(data, titles, width, columns)
    if chosen is None:
        return None
    cells = [row[chosen] for row in data if chosen < len(row)]
    hits = sum(not isinstance(_wide(cell), str) for cell in cells)
    return hits, Layout(
        encoding=encoding,
        delimiter=mark,
        first_line=first + 1,
        titles=titles,
        time_columns=columns,
        temperature_column=chosen,
        scale=_scale(_title(titles, chosen), cells),
        date_order=None,
        title_offset_s=_offset_in(" ".join(_title(titles, column) for column in columns)),
    )


def _hits(rows: Sequence[Sequence[str]], column: int, is_it: Callable[[str], bool]) -> list[int]:
    return [n for n, row in enumerate(rows) if column < len(row) and is_it(row[column])]


def _is_time(cell: str, readers: tuple[TimeReader, TimeReader]) -> bool:
    text = cell.strip()
    return any(not isinstance(reader.read(text), str) for reader in readers)


def _wide(cell: str) -> float | str:
    """Read a number of any scale."""
    return celsius_of(cell, Degrees.CELSIUS, -_SCALE_ROOM, _SCALE_ROOM)


def _titles(
    rows: Sequence[Sequence[str]], first: int, width: int, columns: tuple[int, ...]
) -> tuple[str, ...]:
    """Return the titles from the nearest row above the data that may be such, else none."""
    for row in reversed(rows[:first]):
        filled = [cell for cell in row if cell.strip()]
        if not filled:
            continue
        is_titles = len(filled) >= 2 and max(columns) < len(row)
        return tuple(_title(row, n) for n in range(width)) if is_titles else ("",) * width
    return ("",) * width


def _title(titles: Sequence[str], column: int) -> str:
    return titles[column].strip() if column < len(titles) else ""


def _temperature_column(
    data: Sequence[Sequence[str]], titles: Sequence[str], width: int, columns: tuple[int, ...]
) -> int | None:
    best, best_score = None, 0.0
    for column in range(width):
        if column in columns:
            continue
        values = [
            value
            for row in data
            if column < len(row) and not isinstance(value := _wide(row[column]), str)
        ]
        score = len(values) / len(data)
        title = _title(titles, column).casefold()
        if not values or (score < 0.5 and not _TEMPERATURE.search(title)):
            continue
        if _TEMPERATURE.search(title) and not _OTHER.search(title):
            score += 4.0
        if _OTHER.search(title) or _NUMBERING.search(title) or _is_numbering(values):
            score -= 3.0
        score += 4.0
        if score > best_score:
            best, best_score = column, score
    return best


def _is_numbering(values: Sequence[float]) -> bool:
    steps = {later - value for value, later in itertools.pairwise(values)}
    return steps == {1.0}


def _scale(title: str, cells: Sequence[str]) -> Degrees:
    named = scale_named(title)
    if named is not None:
        return named
    for cell in cells[:20]:
        if cell.strip()[-1:] in ("F", "f", "C", "c"):
            return Degrees.FAHRENHEIT if cell.strip()[-1] in "Ff" else Degrees.CELSIUS
    values = [value for cell in cells if not isinstance(value := _wide(cell), str)]
    is_warm = bool(values) and statistics.median(values) > _WARM_FOR_A_ROOM_C
    return Degrees.FAHRENHEIT if is_warm else Degrees.CELSIUS


def _offset_in(title: str) -> int | None:
    found = _ZONE_IN_TITLE.search(title)
    if found is None:
        return None
    hours, minutes = int(found[2] or 0), int(found[3] or 0)
    if hours > 14 or minutes > 59:
        return None
    return (hours * 3600 + minutes * 60) * (-1 if found[1] == "-" else 1)


def _order(lines: Sequence[str], layout: Layout) -> tuple[DateOrder | None, bool]:
    """Return which number of a date comes first, and whether that stays open."""
    column = layout.time_columns[0]
    seen: set[DateOrder] = set()
    is_slashed = False
    for line in lines:
        cells = cells_of(line, layout.delimiter)
        found = _SLASHED.match(cells[column]) if column < len(cells) else None
        if found is None:
            continue
        is_slashed = True
        one, two = int(found[1]), int(found[2])
        if one > 12 >= two:
            seen.add(DateOrder.DAY)
        if two > 12 >= one:
            seen.add(DateOrder.MONTH)
    if not is_slashed:
        return DateOrder.DAY, False  # year first, or months by name: it does not matter
    return (seen.pop(), False) if len(seen) == 1 else (None, True)


def _sample(cells: tuple[str, ...], layout: Layout, reader: TimeReader) -> SampleRow:
    if not any(cell.strip() for cell in cells):
        return SampleRow(cells, None, None, "empty_row")
    text = time_text(cells, layout.time_columns)
    if text is None or layout.temperature_column >= len(cells):
        return SampleRow(cells, None, None, "too_few_columns")
    when = reader.read(text)
    warm = celsius_of(cells[layout.temperature_column], layout.scale, LEAST_C, MOST_C)
    if isinstance(when, str):
        return SampleRow(cells, None, None, when)
    if isinstance(warm, str):
        return SampleRow(cells, when[0], None, warm)
    return SampleRow(cells, when[0], warm)
