"""Stand-ins for what lies outside: the clock, the desktop's notices, the threads."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta, tzinfo
from typing import TypeVar

from brewdesk.services.jobs import Pool
from brewdesk.services.notices.port import Notice, NoticeAction, Notifier

T = TypeVar("T")

DEFAULT_START = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)


class FakeClock:
    """A clock that stands still until it is told to move.

    ``advance(minutes=5)`` is ordinary time. ``jump(hours=8)`` moves the wall clock
    alone, as a sleeping machine or a hand on the clock does; it may be negative.
    """

    def __init__(self, start: datetime = DEFAULT_START, zone: tzinfo = UTC) -> None:
        assert start.tzinfo is not None, "the start must know its zone"
        self._now = start.astimezone(UTC)
        self._monotonic = 1000.0
        self._zone = zone

    def now(self) -> datetime:
        return self._now

    def monotonic(self) -> float:
        return self._monotonic

    def zone(self) -> tzinfo:
        return self._zone

    def advance(self, **span: float) -> None:
        step = timedelta(**span)
        assert step >= timedelta(0), "ordinary time does not run backwards; use jump"
        self._now += step
        self._monotonic += step.total_seconds()

    def jump(self, **span: float) -> None:
        self._now += timedelta(**span)

    def set_now(self, instant: datetime) -> None:
        """Set the wall clock alone."""
        self._now = instant.astimezone(UTC)

    def travel(self, zone: tzinfo) -> None:
        self._zone = zone


class FakeNotifier(Notifier):
    """Remember every notice instead of showing it."""

    def __init__(self) -> None:
        super().__init__()
        self.shown: list[Notice] = []
        self.withdrawn: list[str] = []
        self.available = True

    def is_available(self) -> bool:
        return self.available

    def show(self, notice: Notice) -> None:
        self.shown.append(notice)

    def withdraw(self, key: str) -> None:
        self.withdrawn.append(key)

    def answer(self, key: str, action: NoticeAction) -> None:
        """Answer as the maker would, on the notice with this key."""
        self.acted.emit(key, action)

    @property
    def keys(self) -> list[str]:
        return [notice.key for notice in self.shown]


class InlineJobs:
    """Do every job at once, on the caller's thread; or hold them until `release`."""

    def __init__(self, *, hold: bool = False) -> None:
        self.hold = hold
        self.keys: list[str | None] = []
        self._held: list[tuple[str | None, Callable[[], None]]] = []

    def run(
        self,
        work: Callable[[], T],
        done: Callable[[T], None],
        failed: Callable[[BaseException], None] | None = None,
        key: str | None = None,
        *,
        pool: Pool = Pool.FIGURES,
        is_urgent: bool = False,
    ) -> None:
        self.keys.append(key)

        def job() -> None:
            try:
                result = work()
            except Exception as error:
                if failed is None:
                    raise
                failed(error)
            else:
                done(result)

        if self.hold:
            self._held = [held for held in self._held if key is None or held[0] != key]
            self._held.append((key, job))
        else:
            job()

    def release(self) -> None:
        """Do the held jobs, oldest first."""
        held, self._held = self._held, []
        for _, job in held:
            job()

    def is_holding(self) -> bool:
        """Whether some job waits to be let go."""
        return bool(self._held)

    def shutdown(self) -> None:
        self._held.clear()
