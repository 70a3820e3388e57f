"""From a logger's own clock to UTC: what daylight saving leaves out and repeats.

A local time that occurs twice is taken as its first occurrence until the file's own order
says that the hour has begun again. One that never occurred moves on by the missing hour, as
PEP 495 has it for ``fold=0``.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from brewdesk.services.loggertext import SECONDS_PER_DAY

if TYPE_CHECKING:
    from brewdesk.services.packedsamples import Instants

_EPOCH = datetime(1970, 1, 1)  # on a wall clock, which has no zone


@dataclass(frozen=True, slots=True)
class Placed:
    """Instants in UTC, and how many local times there never were, or were twice."""

    at_s: Instants
    left_out: int
    twice: int


def to_utc(local_s: Instants, zone: tzinfo) -> Placed:
    """Turn seconds on a wall clock, in the file's order, into seconds in UTC."""
    import numpy as np

    days, which = np.unique(local_s // SECONDS_PER_DAY, return_inverse=True)
    offsets = [_steady_offset(day, zone) for day in days.tolist()]
    at_s = local_s - np.array([offset or 0 for offset in offsets], dtype=np.int64)[which]
    unsteady = [number for number, offset in enumerate(offsets) if offset is None]
    left_out = twice = 0
    for number in unsteady:
        where = np.flatnonzero(which == number)
        placed, gone, doubled = _place_one_by_one(local_s[where].tolist(), zone)
        at_s[where] = placed
        left_out += gone
        twice += doubled
    return Placed(at_s, left_out, twice)


def _steady_offset(day: int, zone: tzinfo) -> int | None:
    """Return a day's offset from UTC [s]; None if it changes within the day."""
    ends = {
        _offset(second, zone, fold)
        for second in (day * SECONDS_PER_DAY, (day + 1) * SECONDS_PER_DAY)
        for fold in (0, 1)
    }
    return ends.pop() if len(ends) == 1 else None


def _offset(local_s: int, zone: tzinfo, fold: int) -> int:
    local = (_EPOCH + timedelta(seconds=local_s)).replace(tzinfo=zone, fold=fold)
    offset = local.utcoffset()
    return 0 if offset is None else round(offset.total_seconds())


def _place_one_by_one(local_s: list[int], zone: tzinfo) -> tuple[list[int], int, int]:
    """Place the samples of a day on which the clock is changed."""
    is_backwards = len(local_s) > 1 and local_s[0] > local_s[-1]  # the newest row comes first
    placed: list[int] = []
    left_out = twice = 0
    before: int | None = None  # the sample before, while inside the hour that comes twice
    is_again = False
    for second in reversed(local_s) if is_backwards else local_s:
        first, later = _offset(second, zone, 0), _offset(second, zone, 1)
        if first <= later:  # an ordinary time, or (first < later) one there never was
            left_out += first < later
            placed.append(second - first)
            before, is_again = None, False
            continue
        twice += 1
        is_again = is_again or (before is not None and second < before)
        before = second
        placed.append(second - (later if is_again else first))
    return placed[::-1] if is_backwards else placed, left_out, twice
