"""``brewdesk due``: the due list in a terminal, without a display.

Exit codes: 0 nothing is due, 1 something is due, 2 trouble.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import sys
import traceback
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from brewdesk import paths
from brewdesk.services.clock import Clock, SystemClock
from brewdesk.services.plaintext import plain_line
from brewdesk.services.reminder_rules import effective_due
from brewdesk.services.wording.duelist import (
    fault_words,
    heading_words,
    help_words,
    late_words,
    state_words,
    trouble_words,
)
from brewdesk.services.wording.moments import stamp_words
from brewdesk.services.wording.reminders import reminder_words, span_words
from brewdesk.store.duereader import DueRow, DueRows, DueTrouble, read_due
from brewdesk.terminaltext import padded, width_of, wrapped
from culturecore.stages import ReminderKind

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

NOTHING_DUE = 0
SOMETHING_DUE = 1
TROUBLE = 2
FORMAT_NUMBER = 1  # of the JSON; raised when a field changes its meaning or goes

_GAP = "  "
_NARROWEST_TEXT = 20  # with less room beside the other columns the text gets lines of its own
_LATE_FROM = timedelta(minutes=1)
_BOLD, _PLAIN = "\x1b[1;33m", "\x1b[0m"


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line of the list, every text made plain."""

    kind: str
    title: str
    body: str
    about: str
    vessel: str
    due_at: datetime
    is_due: bool
    lateness: timedelta


def main(
    argv: list[str],
    *,
    out: TextIO | None = None,
    err: TextIO | None = None,
    clock_of: Callable[[str], Clock] | None = None,
) -> int:
    """Print the list; returns the exit code. ``clock_of`` makes a clock for a zone's name."""
    out, err = out or sys.stdout, err or sys.stderr
    for stream in (out, err):
        _never_refuse(stream)
    options = _parser().parse_args(argv)
    try:
        return _print(options, out, err, clock_of or _system_clock)
    except Exception:  # Python's own exit code for this would mean that something is due
        traceback.print_exc(file=err)
        print(f"brewdesk due: {fault_words()}", file=err)
        return TROUBLE


def _parser() -> argparse.ArgumentParser:
    words = help_words()
    parser = argparse.ArgumentParser(
        prog="brewdesk due", description=words["about"], epilog=words["codes"]
    )
    parser.add_argument("--json", action="store_true", help=words["json"])
    parser.add_argument("--full", action="store_true", help=words["full"])
    parser.add_argument("--due-only", action="store_true", help=words["due_only"])
    parser.add_argument("--store", type=Path, help=words["store"])
    parser.add_argument("--demo", action="store_true", help=words["demo"])
    parser.add_argument("--data-dir", type=Path, help=words["data_dir"])
    return parser


def _system_clock(zone_name: str) -> Clock:
    return SystemClock(lambda: zone_name)


def _read_shared(address: str, folder: Path) -> DueRows:
    from brewdesk.store.dueserver import read_due_from_server

    return read_due_from_server(address, folder)


def _print(
    options: argparse.Namespace, out: TextIO, err: TextIO, clock_of: Callable[[str], Clock]
) -> int:
    folders = paths.folders(options.data_dir)
    path = options.store or (folders.demo_store if options.demo else folders.store)
    server = "" if options.store or options.demo else os.environ.get(paths.SERVER_VARIABLE, "")
    place = paths.SERVER_VARIABLE if server else plain_line(str(path))
    try:
        found = _read_shared(server.strip(), folders.data) if server else read_due(path)
    except DueTrouble as trouble:
        words = trouble_words(trouble.code, place)
        print(f"brewdesk due: {words}", file=err)
        return TROUBLE
    clock = clock_of(found.zone_name)
    now, zone = clock.now(), clock.zone()
    lines = sorted((_line(row, now, zone) for row in found.rows), key=_order)
    due_count = sum(line.is_due for line in lines)
    shown = [line for line in lines if line.is_due] if options.due_only else lines
    if options.json:
        texts: Iterable[str] = [_json(shown, now, zone, is_demo=found.is_demo)]
    else:
        heading = heading_words(due_count, len(lines) - due_count, is_demo=found.is_demo)
        look = _Look.of(out)
        texts = [*look.heading(heading), *look.table(shown, zone, is_full=options.full)]
    try:
        for text in texts:
            print(text, file=out)
        out.flush()
    except BrokenPipeError:
        _silence(out)  # the reader has seen enough; what is due stays due
    return SOMETHING_DUE if due_count else NOTHING_DUE


def _line(row: DueRow, now: datetime, zone: tzinfo) -> Line:
    title, body = reminder_words(row.reminder, row.subject_name, row.vessel_name, now, zone)
    due_at = effective_due(row.reminder)
    is_due = due_at <= now
    return Line(
        kind=row.reminder.kind.value,
        title=plain_line(title),
        body=plain_line(body),
        about=plain_line(row.subject_name),
        vessel=plain_line(row.vessel_name),
        due_at=due_at,
        is_due=is_due,
        lateness=now - row.reminder.due_at if is_due else timedelta(0),
    )


def _order(line: Line) -> tuple[bool, bool, datetime, str]:
    """Sort due ones first, bottles about to get too strong before all, then by time."""
    is_pressing = line.is_due and line.kind == ReminderKind.CHILL.value
    return (not line.is_due, not is_pressing, line.due_at, line.title)


def _json(lines: list[Line], now: datetime, zone: tzinfo, *, is_demo: bool) -> str:
    document = {
        "format": FORMAT_NUMBER,
        "at": _instant(now, zone),
        "is_invented": is_demo,
        "due_count": sum(line.is_due for line in lines),
        "reminders": [
            {
                "kind": line.kind,
                "title": line.title,
                "body": line.body,
                "about": line.about,
                "vessel": line.vessel,
                "due_at": _instant(line.due_at, zone),
                "is_due": line.is_due,
                "late_s": max(0, int(line.lateness.total_seconds())),
            }
            for line in lines
        ],
    }
    # ASCII alone: nothing in it can mean anything to a terminal, whatever its encoding.
    return json.dumps(document, indent=2, ensure_ascii=True)


def _instant(at: datetime, zone: tzinfo) -> str:
    """Write an instant on the maker's clock, with the offset that makes it exact."""
    return at.astimezone(zone).isoformat(timespec="seconds")


@dataclass(frozen=True, slots=True, kw_only=True)
class _Look:
    """How lines stand on what they are written to. ``columns`` is None for a file or pipe."""

    columns: int | None
    has_colours: bool

    @classmethod
    def of(cls, out: TextIO) -> _Look:
        """Look at where the list goes: only a terminal has a width, and colours."""
        if not out.isatty():
            return cls(columns=None, has_colours=False)
        is_dumb = os.environ.get("TERM") in (None, "", "dumb")
        return cls(
            columns=max(1, shutil.get_terminal_size().columns),
            # https://no-color.org: set to anything, it asks for none
            has_colours=not is_dumb and not os.environ.get("NO_COLOR"),
        )

    def heading(self, words: str) -> list[str]:
        """Return the first line, broken where the terminal ends."""
        return self._broken(words, self.columns)

    def table(self, lines: list[Line], zone: tzinfo, *, is_full: bool) -> list[str]:
        """Return the list in columns: state, when, what."""
        heads = [
            (state_words(is_due=line.is_due), stamp_words(line.due_at, zone)) for line in lines
        ]
        widths = [max((width_of(head[at]) for head in heads), default=0) for at in (0, 1)]
        beside = sum(widths) + 2 * len(_GAP)
        texts: list[str] = []
        for line, head in zip(lines, heads, strict=True):
            first = _GAP.join(padded(text, width) for text, width in zip(head, widths, strict=True))
            title = line.title
            if line.lateness >= _LATE_FROM:
                title = late_words(title, span_words(line.lateness))
            texts += self._row(first, title, beside, is_due=line.is_due)
            if is_full and line.body:
                room = None if self.columns is None else self.columns - 2 * len(_GAP)
                texts += [2 * _GAP + part for part in self._broken(line.body, room)]
        return texts

    def _row(self, first: str, title: str, beside: int, *, is_due: bool) -> list[str]:
        room = None if self.columns is None else self.columns - beside
        if room is not None and room < _NARROWEST_TEXT and self.columns is not None:
            parts = self._broken(title, self.columns - len(_GAP))
            rows = [*self._broken(first.rstrip(), self.columns), *(_GAP + part for part in parts)]
        else:
            parts = self._broken(title, room)
            rows = [first + _GAP + parts[0], *(" " * beside + part for part in parts[1:])]
        if not (is_due and self.has_colours):
            return rows
        return [f"{_BOLD}{row}{_PLAIN}" for row in rows]  # broken first: no sequence is cut

    def _broken(self, text: str, room: int | None) -> list[str]:
        return [text] if room is None else wrapped(text, max(1, room))


def _never_refuse(stream: TextIO) -> None:
    """Have characters that the encoding lacks written as "?", not refused."""
    reconfigure = getattr(stream, "reconfigure", None)
    if reconfigure is not None:
        reconfigure(errors="replace")


def _silence(out: TextIO) -> None:
    """Keep Python from complaining of the closed pipe once more at its end."""
    try:
        descriptor = out.fileno()
    except (OSError, ValueError):
        return
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, descriptor)
    os.close(nowhere)
