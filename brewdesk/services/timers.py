"""The run sheet's alarms: ring when a running step has come to its end.

The end of a step is an instant of the wall clock, kept in the store, so it survives
a restart, and time asleep counts: tea goes on steeping while the computer does not.
If the wall clock is set back meanwhile, the alarm still rings after the time that
really ran, which the process has counted itself. If it is set forward, the alarm
rings early: from inside, that looks the same as having slept.
"""

from __future__ import annotations

import logging
import math
from datetime import datetime

from PySide6.QtCore import QObject, Qt, QTimer, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import Step
from culturecore.stages import StepState

_log = logging.getLogger(__name__)

# Longer waits are cut into pieces, so that a sleep or a changed clock is noticed.
LONGEST_WAIT_MS = 30_000


class Timers(QObject):
    """Watch all running steps with one timer; none is armed while nothing runs.

    ``alarm`` carries the id of a step that has just come to its end, once per end: a
    step that is given more time rings again. ``missed`` carries the ids of the steps
    whose end had passed when the watch began (the program was closed).
    """

    alarm = Signal(int)
    missed = Signal(object)

    def __init__(self, door: Door, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._door = door
        # Kept for the whole run: taking back the end of a step must not ring for it again.
        self._rung: set[tuple[int, datetime]] = set()
        self._running_end_s: dict[tuple[int, datetime], float] = {}
        self._timer = QTimer(self, singleShot=True, timerType=Qt.TimerType.PreciseTimer)
        self._timer.setObjectName("step_alarm")
        self._timer.timeout.connect(self.evaluate)
        self._is_watching = False
        door.changes.changed.connect(self._on_changed)

    def start(self) -> None:
        """Begin to watch; report steps that ended while the program was closed."""
        self._is_watching = True
        running = self._running_steps()
        if running is None:
            return
        now = self._door.clock.now()
        ended = [(step.id, end) for step, end in running if end <= now]
        self._rung.update(ended)
        if ended:
            self.missed.emit(tuple(step_id for step_id, _ in ended))
        self.evaluate()

    def stop(self) -> None:
        """Watch no more."""
        self._is_watching = False
        self._timer.stop()

    def evaluate(self) -> None:
        """Ring for every step that has ended and has not rung; arm the timer for the next."""
        if not self._is_watching:
            return
        running = self._running_steps()
        if running is None:
            return
        keys = {(step.id, end) for step, end in running}
        self._forget_all_but(keys)
        ringing = [key for key in sorted(keys - self._rung) if self._remaining_s(key) <= 0]
        self._rung.update(ringing)
        self._arm(keys - self._rung)
        for step_id, _ in ringing:
            self.alarm.emit(step_id)

    def wait_ms(self) -> int | None:
        """Return how long the armed timer waits, in milliseconds; None if none is armed."""
        return self._timer.interval() if self._timer.isActive() else None

    def _arm(self, keys: set[tuple[int, datetime]]) -> None:
        if not keys:
            self._timer.stop()
            return
        remaining_ms = math.ceil(min(self._remaining_s(key) for key in keys) * 1000)
        self._timer.start(max(0, min(remaining_ms, LONGEST_WAIT_MS)))

    def _remaining_s(self, key: tuple[int, datetime]) -> float:
        now, running_s = self._door.clock.now(), self._door.clock.monotonic()
        by_wall_s = (key[1] - now).total_seconds()
        by_running_s = self._running_end_s.setdefault(key, running_s + by_wall_s) - running_s
        return min(by_wall_s, by_running_s)

    def _forget_all_but(self, keys: set[tuple[int, datetime]]) -> None:
        self._running_end_s = {
            key: end_s for key, end_s in self._running_end_s.items() if key in keys
        }

    def _running_steps(self) -> list[tuple[Step, datetime]] | None:
        """Return the steps whose timer runs; None, and a later look, if they cannot be read."""
        try:
            with self._door.store.read() as unit:
                steps = unit.steps.where(state=StepState.RUNNING)
        except StoreTrouble as trouble:
            _log.warning("running steps could not be read: %s", trouble.code)
            self._timer.start(LONGEST_WAIT_MS)
            return None
        return [(step, step.ends_at) for step in steps if step.ends_at is not None]

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.STEPS | Topic.BATCHES):
            self.evaluate()
