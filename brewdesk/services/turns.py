"""Work on the window's thread that can wait: a little at a time, and painting in between."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QObject, Qt, QTimer

from brewdesk.services.clock import Clock

# Together a third of a frame in each; the rest is for painting, and for what is asked for.
_TURN_S = 0.003
_PAUSE_MS = 7
# For what somebody waits for with nothing else to look at.
_HURRIED_TURN_S = 0.005


class Turns(QObject):
    """Takes works in small steps, and all of them together for a part of a frame only.

    A work is an iterator that does a little at each step. Several take turns, step by step,
    so that none waits for another; begun anew under its key, it takes the older one's place.
    """

    def __init__(self, clock: Clock, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._clock = clock
        self._works: dict[str, Iterator[None]] = {}
        self._hurried: set[str] = set()
        self._is_open = True
        self._timer = QTimer(self)
        self._timer.setObjectName("turns")
        self._timer.setSingleShot(True)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._take_turn)

    def begin(self, key: str, work: Iterator[None], *, is_hurried: bool = False) -> None:
        """Do ``work`` from the next turn on; an older one of this key is given up."""
        if not self._is_open:
            return
        self.give_up(key)
        self._works[key] = work
        if is_hurried:
            self._hurried.add(key)
        self._wait(0)

    def give_up(self, key: str) -> None:
        """Leave the rest of a work undone, if there is one of this key."""
        self._works.pop(key, None)
        self._hurried.discard(key)

    def has(self, key: str) -> bool:
        """Whether something of this work is still to be done."""
        return key in self._works

    def stop(self) -> None:
        """Give up all works, and take no more."""
        self._is_open = False
        self._timer.stop()
        self._works.clear()
        self._hurried.clear()

    def _wait(self, milliseconds: int) -> None:
        if not self._timer.isActive():
            self._timer.start(milliseconds)

    def _take_turn(self) -> None:
        began = self._clock.monotonic()
        try:
            while self._works:
                self._step()
                most_s = _HURRIED_TURN_S if self._hurried else _TURN_S
                if self._clock.monotonic() - began >= most_s:
                    break
        finally:  # also past a work that failed: the others are not to blame
            if self._works:
                self._wait(0 if self._hurried else _PAUSE_MS)

    def _step(self) -> None:
        """Go on with the work that has waited longest."""
        key = next(iter(self._hurried or self._works))
        work = self._works.pop(key)
        self._works[key] = work
        is_done = True
        try:
            next(work)
            is_done = False
        except StopIteration:
            is_done = True
        finally:
            if is_done and self._works.get(key) is work:  # it may have begun itself anew
                self.give_up(key)
