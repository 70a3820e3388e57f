"""Read many regular rows at once. What is not regular is left to be read row by row.

A block qualifies when all of its rows have as many cells as its first, and every time and
temperature in it can be read. Dates and clocks are looked up in what was read before, so
most of the work is done by the interpreter's own loops; both ways of reading give the same
answer, which a test compares.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from brewdesk.services.loggerfile import Layout
from brewdesk.services.loggertext import SECONDS_PER_DAY, Degrees, TimeReader

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from brewdesk.services.packedsamples import Instants

    Floats: TypeAlias = NDArray[float64]

_PLAIN = re.compile(r"[0-9.,\-+\n]*", re.ASCII)
_QUOTE = '"'


@dataclass(frozen=True, slots=True)
class Block:
    """Rows read at once: seconds on the file's clock, the offset all of them name, degC."""

    local_s: Instants
    offset_s: int | None
    celsius: Floats


class _IrregularError(Exception):
    """A cell that the quick way does not read."""


class _Days(dict[str, int]):
    """Days since 1970-01-01 by the text of a date."""

    def __init__(self, reader: TimeReader) -> None:
        super().__init__()
        self._reader = reader

    def __missing__(self, text: str) -> int:
        day = self._reader.day(text.strip())
        if isinstance(day, str):
            raise _IrregularError
        self[text] = day
        return day


class _Clocks(dict[str, int]):
    """Seconds of the day by the text of a clock; all must name the same offset, or none."""

    def __init__(self, reader: TimeReader) -> None:
        super().__init__()
        self._reader = reader
        self.offsets: set[int | None] = set()

    def __missing__(self, text: str) -> int:
        clock = self._reader.clock(text.strip())
        if isinstance(clock, str):
            raise _IrregularError
        self.offsets.add(clock[1])
        if len(self) < SECONDS_PER_DAY:
            self[text] = clock[0]
        return clock[0]


class FastReader:
    """Reads the regular blocks of one file."""

    def __init__(self, layout: Layout, reader: TimeReader, least_c: float, most_c: float) -> None:
        self._layout = layout
        self._reader = reader
        self._bounds = least_c, most_c
        self._days = _Days(reader)
        self._clocks = _Clocks(reader)

    def read(self, text: str) -> Block | None:
        """Read a block of lines; None if it is not regular."""
        columns = _columns(text, self._layout)
        if columns is None:
            return None
        *times, warm = columns
        try:
            local_s = self._seconds(times)
        except _IrregularError:
            local_s = None
        if local_s is None or len(self._clocks.offsets) > 1:
            # Begin anew: a row with another zone must not spoil all that follow.
            self._clocks = _Clocks(self._reader)
            return None
        celsius = fast_celsius(warm, self._layout.scale, *self._bounds)
        if celsius is None:
            return None
        return Block(local_s, next(iter(self._clocks.offsets), None), celsius)

    def _seconds(self, times: Sequence[Sequence[str]]) -> Instants | None:
        import numpy as np

        dates: Iterable[str]
        clocks: Iterable[str]
        if len(times) == 2:
            dates, clocks = times
        else:
            (texts,) = times
            mark = "T" if "T" in texts[0] else " "
            if "\n".join(texts).count(mark) < len(texts):
                return None
            dates = [text[: text.find(mark)] for text in texts]
            clocks = [text[text.find(mark) + 1 :] for text in texts]
        count = len(times[0])
        days = np.fromiter(map(self._days.__getitem__, dates), np.int64, count)
        seconds = np.fromiter(map(self._clocks.__getitem__, clocks), np.int64, count)
        answer: Instants = days * SECONDS_PER_DAY + seconds
        return answer


def fast_celsius(
    texts: Sequence[str], scale: Degrees, least_c: float, most_c: float
) -> Floats | None:
    """Return temperatures [degC]; None if one is no plain number or is absurd."""
    import numpy as np

    joined = "\n".join(texts)
    if _PLAIN.fullmatch(joined) is None:
        return None
    if "," in joined:
        texts = joined.replace(",", ".").split("\n")
    try:
        values = np.fromiter(map(float, texts), np.float64, len(texts))
    except ValueError:
        return None
    celsius: Floats = (values - 32.0) / 1.8 if scale is Degrees.FAHRENHEIT else values
    return celsius if bool(((celsius >= least_c) & (celsius <= most_c)).all()) else None


def _columns(text: str, layout: Layout) -> list[list[str]] | None:
    """Return the columns of the times and of the temperature; None if rows differ in cells."""
    mark = layout.delimiter
    end = text.find("\n")
    width = text.count(mark, 0, end if end >= 0 else len(text)) + 1
    wanted = (*layout.time_columns, layout.temperature_column)
    if width <= max(wanted):
        return None
    # A line break as a cell of its own stands at every (width + 1)th place, or not all rows
    # have the same cells. One flat list costs far less than a list for each row.
    cells = text.replace("\n", f"{mark}\n{mark}").split(mark)
    stride = width + 1
    count = (len(cells) + 1) // stride
    if (len(cells) + 1) % stride or cells[width::stride].count("\n") != count - 1:
        return None
    if _QUOTE not in text:
        return [cells[column::stride] for column in wanted]
    columns = [_unquoted(cells[column::stride]) for column in range(width)]
    if any(column is None for column in columns):
        return None
    return [found for column in wanted if (found := columns[column]) is not None]


def _unquoted(cells: list[str]) -> list[str] | None:
    """Take the marks off a column of which every cell is in quotation marks, or none is."""
    joined = "\n".join(cells)
    marks = joined.count(_QUOTE)
    if not marks:
        return cells
    bare = joined[1:-1].split('"\n"')
    is_whole = joined.startswith(_QUOTE) and joined.endswith(_QUOTE) and len(joined) > 1
    return bare if is_whole and len(bare) == len(cells) and marks == 2 * len(cells) else None
