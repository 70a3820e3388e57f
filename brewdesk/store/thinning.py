"""Which backups may go, so that old ones thin out and never run out."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from datetime import datetime, timedelta

ALL_FOR = timedelta(days=2)
DAILY = 14
WEEKLY = 8
MONTHLY = 12


def _day(at: datetime) -> Hashable:
    return at.date()


def _week(at: datetime) -> Hashable:
    return at.isocalendar()[:2]


def _month(at: datetime) -> Hashable:
    return (at.year, at.month)


def kept(made_at: Sequence[datetime], now: datetime) -> frozenset[datetime]:
    """Say which backups stay.

    All of the last two days (and any dated later than now), then the newest of each of the
    last 14 days, 8 weeks and 12 months that have one; the newest of all in any case.
    Days are UTC days.
    """
    newest_first = sorted(set(made_at), reverse=True)
    keep = {at for at in newest_first if at > now - ALL_FOR}
    keep.update(newest_first[:1])
    for bucket, count in ((_day, DAILY), (_week, WEEKLY), (_month, MONTHLY)):
        keep.update(_newest_of_each(newest_first, bucket, count))
    return frozenset(keep)


def _newest_of_each(
    newest_first: Sequence[datetime], bucket: Callable[[datetime], Hashable], count: int
) -> list[datetime]:
    newest: dict[Hashable, datetime] = {}
    for at in newest_first:
        newest.setdefault(bucket(at), at)
    return list(newest.values())[:count]
