"""Read a logger's file through: in blocks, with progress, and stopped when asked to.

In memory are one block of text and, for each row, its time, zone, temperature and line (20
bytes), with a copy or two while they are put in order: for a million rows some 100 MB at most
(measured with resource.getrusage), however the file is written.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, tzinfo
from pathlib import Path
from typing import TYPE_CHECKING, Any

from brewdesk.services.loggerfast import FastReader
from brewdesk.services.loggerfile import Layout, time_text, zone_in_title
from brewdesk.services.loggerlines import cells_of, line_blocks, opened
from brewdesk.services.loggertext import TimeReader, celsius_of
from brewdesk.services.loggertrouble import LoggerTrouble, RowError
from brewdesk.services.loggerzone import to_utc
from brewdesk.services.packedsamples import Packed, pack
from brewdesk.services.placelog import AHEAD, LEAST_C, MOST_C

if TYPE_CHECKING:
    from brewdesk.services.packedsamples import Degrees, Instants

ERRORS_KEPT = 200
MOST_ROWS = 10_000_000  # nineteen years by the minute
_TEXT_KEPT = 80
_FEW = 1000  # rows
_NO_OFFSET = -1_000_000  # no zone is that far off


@dataclass(frozen=True, slots=True, kw_only=True)
class LoggerRead:
    """What a file held.

    ``errors`` are the first `ERRORS_KEPT` rows that were left out, ``error_count`` counts
    all. ``doubled`` rows had the time of another (the first of them holds), ``left_out`` and
    ``twice`` counts times that daylight saving leaves out or repeats. Temperatures in degC.
    """

    packed: Packed
    first_at: datetime
    last_at: datetime
    least_c: float
    most_c: float
    mean_c: float
    errors: tuple[RowError, ...]
    error_count: int
    doubled: int
    left_out: int
    twice: int
    was_in_order: bool


@dataclass(slots=True)
class _Rows:
    """What has been read so far."""

    local_s: list[Any] = field(default_factory=list)
    offset_s: list[Any] = field(default_factory=list)
    celsius: list[Any] = field(default_factory=list)
    lines: list[Any] = field(default_factory=list)
    errors: list[RowError] = field(default_factory=list)
    error_count: int = 0
    count: int = 0

    def refuse(self, line: int, code: str, text: str) -> None:
        self.error_count += 1
        # Blank rows are told late, so more are kept than shown until they are put in order.
        if len(self.errors) < 2 * ERRORS_KEPT:
            self.errors.append(RowError(line, code, text[:_TEXT_KEPT]))


def never() -> bool:
    """Say that nobody has asked to stop."""
    return False


def read_log(
    path: Path,
    layout: Layout,
    zone: tzinfo,
    *,
    now: datetime,
    progress: Callable[[float], None] = lambda _share: None,
    is_cancelled: Callable[[], bool] = never,
) -> LoggerRead:
    """Read all rows of a file. Slow for many: run it as a job.

    Parameters
    ----------
    path
        The file.
    layout
        How to read it; its ``date_order`` must be known.
    zone
        Where the logger's clock was set, for times that name no zone; a zone named in the
        time's title comes first.
    now
        The present: rows later than a day from now are refused.
    progress
        Told the share of the file that has been read, 0 to 1.
    is_cancelled
        Asked after each block.

    Raises
    ------
    LoggerTrouble
        "unreadable", "order_unknown", "too_many", "cancelled" or "nothing_read".
    """
    if layout.date_order is None:
        raise LoggerTrouble("order_unknown")
    rows = _Rows()
    with opened(path, layout.encoding) as file:
        size = max(1, os.fstat(file.fileno()).st_size)
        reading = _Reading(layout, rows)
        for text in line_blocks(file):
            if is_cancelled():
                raise LoggerTrouble("cancelled")
            reading.take(text)
            if rows.count > MOST_ROWS:
                raise LoggerTrouble("too_many")
            progress(min(1.0, os.lseek(file.fileno(), 0, os.SEEK_CUR) / size))
    if is_cancelled():
        raise LoggerTrouble("cancelled")
    return _settled(rows, layout, zone, now)


class _Reading:
    """Goes through a file block by block: the regular ones at once, the others row by row."""

    def __init__(self, layout: Layout, rows: _Rows) -> None:
        assert layout.date_order is not None
        self._layout = layout
        self._rows = rows
        self._reader = TimeReader(layout.date_order)
        self._fast = FastReader(layout, self._reader, LEAST_C, MOST_C)
        self._line = 1  # of the next row
        self._blank: list[int] = []  # blank rows that nothing has followed so far

    def take(self, text: str) -> None:
        """Read a block of lines."""
        if self._line < self._layout.first_line:
            lines = text.split("\n")
            skipped = min(len(lines), self._layout.first_line - self._line)
            self._line += skipped
            if skipped == len(lines):
                return
            text = "\n".join(lines[skipped:])
        if self._take_fast(text):
            return
        # One bad row in a block: only its neighbours are read slowly.
        lines = text.split("\n")
        for start in range(0, len(lines), _FEW):
            few = lines[start : start + _FEW]
            if not self._take_fast("\n".join(few)):
                self._take_slowly(few)

    def _take_fast(self, text: str) -> bool:
        import numpy as np

        block = self._fast.read(text)
        if block is None:
            return False
        self._tell_blank()
        rows, count = self._rows, len(block.local_s)
        offset = _NO_OFFSET if block.offset_s is None else block.offset_s
        rows.local_s.append(block.local_s)
        rows.offset_s.append(np.full(count, offset, np.int32))
        rows.celsius.append(block.celsius.astype(np.float32))
        rows.lines.append(np.arange(self._line, self._line + count, dtype=np.int32))
        rows.count += count
        self._line += count
        return True

    def _take_slowly(self, lines: Sequence[str]) -> None:
        import numpy as np

        seconds: list[int] = []
        offsets: list[int] = []
        warm: list[float] = []
        where: list[int] = []
        for number, line in enumerate(lines, self._line):
            if not line.strip(f"{self._layout.delimiter} \t\x00"):
                self._blank.append(number)
                continue
            self._tell_blank()
            read = _read_row(line, self._layout, self._reader)
            if isinstance(read, str):
                self._rows.refuse(number, read, line)
                continue
            seconds.append(read[0])
            offsets.append(_NO_OFFSET if read[1] is None else read[1])
            warm.append(read[2])
            where.append(number)
        self._line += len(lines)
        self._rows.local_s.append(np.array(seconds, dtype=np.int64))
        self._rows.offset_s.append(np.array(offsets, dtype=np.int32))
        self._rows.celsius.append(np.array(warm, dtype=np.float32))
        self._rows.lines.append(np.array(where, dtype=np.int32))
        self._rows.count += len(seconds)

    def _tell_blank(self) -> None:
        """Blank rows are an error only when something follows them."""
        for line in self._blank:
            self._rows.refuse(line, "empty_row", "")
        self._blank.clear()


def _read_row(line: str, layout: Layout, reader: TimeReader) -> tuple[int, int | None, float] | str:
    cells = cells_of(line, layout.delimiter)
    text = time_text(cells, layout.time_columns)
    if text is None or layout.temperature_column >= len(cells):
        return "too_few_columns"
    when = reader.read(text)
    if isinstance(when, str):
        return when
    warm = celsius_of(cells[layout.temperature_column], layout.scale, LEAST_C, MOST_C)
    return warm if isinstance(warm, str) else (*when, warm)


def _settled(rows: _Rows, layout: Layout, zone: tzinfo, now: datetime) -> LoggerRead:
    """Put what was read in UTC and in order, each time once."""
    import numpy as np

    if not rows.count:
        raise LoggerTrouble("nothing_read")
    local_s, offset_s, celsius, lines = (
        _joined(parts) for parts in (rows.local_s, rows.offset_s, rows.celsius, rows.lines)
    )
    at_s = local_s - offset_s
    plain = offset_s == _NO_OFFSET
    left_out = twice = 0
    if bool(plain.any()):
        placed = to_utc(local_s[plain], zone_in_title(layout) or zone)
        at_s[plain] = placed.at_s
        left_out, twice = placed.left_out, placed.twice
    ahead = at_s > (now + AHEAD).timestamp()
    if bool(ahead.any()):
        # Always told, however many other rows were refused before.
        told = lines[ahead][:ERRORS_KEPT].tolist()
        rows.errors += [RowError(line, "time_ahead", "") for line in told]
        rows.error_count += int(ahead.sum())
        at_s, celsius = at_s[~ahead], celsius[~ahead]
    if not len(at_s):
        raise LoggerTrouble("nothing_read")
    was_in_order = bool((np.diff(at_s) >= 0).all())
    if not was_in_order:
        order = np.argsort(at_s, kind="stable")
        at_s, celsius = at_s[order], celsius[order]
    first_of = np.diff(at_s, prepend=at_s[0] - 1) > 0
    doubled = len(at_s) - int(first_of.sum())
    return _told(rows, at_s[first_of], celsius[first_of], (doubled, left_out, twice, was_in_order))


def _joined(parts: list[Any]) -> Any:  # noqa: ANN401  # numpy comes late
    """Join the parts of an array and let go of them."""
    import numpy as np

    whole = np.concatenate(parts)
    parts.clear()
    return whole


def _told(
    rows: _Rows,
    at_s: Instants,
    celsius: Degrees,
    counts: tuple[int, int, int, bool],
) -> LoggerRead:
    import numpy as np

    doubled, left_out, twice, was_in_order = counts
    errors = sorted(rows.errors, key=lambda error: error.line)[:ERRORS_KEPT]
    return LoggerRead(
        packed=pack(at_s, celsius),
        first_at=datetime.fromtimestamp(int(at_s[0]), UTC),
        last_at=datetime.fromtimestamp(int(at_s[-1]), UTC),
        least_c=float(celsius.min()),
        most_c=float(celsius.max()),
        mean_c=float(celsius.mean(dtype=np.float64)),
        errors=tuple(errors),
        error_count=rows.error_count,
        doubled=doubled,
        left_out=left_out,
        twice=twice,
        was_in_order=was_in_order,
    )
