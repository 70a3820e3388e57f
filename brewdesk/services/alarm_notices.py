"""A run-sheet timer that has ended is told on the desktop too, and by sound."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QObject, Signal

from brewdesk.services.door import Door
from brewdesk.services.notices.port import Notice, NoticeAction, Notifier
from brewdesk.services.sound import Sound
from brewdesk.services.timers import Timers
from brewdesk.services.wording.alarms import time_up_words, where_words
from brewdesk.services.wording.reminders import action_words

KEY = "step-"


def always() -> bool:
    """Ring at every time."""
    return True


class AlarmNotices(QObject):
    """Rings and shows a notice for every step whose time is over.

    The window may be hidden, the maker in the next room: neither the page nor the sound
    alone would reach them. ``open_asked`` carries the batch whose notice was clicked,
    ``told`` the id of each step told. ``is_wanted`` is asked each time: of several desks
    not all ring.
    """

    open_asked = Signal(int)
    told = Signal(int)

    def __init__(
        self,
        door: Door,
        timers: Timers,
        notifier: Notifier,
        sound: Sound,
        *,
        is_wanted: Callable[[], bool] = always,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._notifier = notifier
        self._sound = sound
        self._is_wanted = is_wanted
        self._batch_of_key: dict[str, int] = {}
        timers.alarm.connect(self._on_alarm)
        timers.missed.connect(self._on_missed)
        notifier.acted.connect(self._on_acted)

    def _on_alarm(self, step_id: int) -> None:
        if self._is_wanted():
            self._sound.chime()
            self._tell(step_id)
        else:
            self.told.emit(step_id)

    def _on_missed(self, step_ids: Sequence[int]) -> None:
        """Tell all that ended while the program was closed; ring once."""
        if not self._is_wanted():
            return
        self._sound.chime()
        for step_id in step_ids:
            self._tell(step_id)

    def _tell(self, step_id: int) -> None:
        with self._door.store.read() as unit:
            step = unit.steps.get(step_id)
            batch = unit.batches.get(step.batch_id)
            vessel = unit.vessels.get(batch.vessel_id)
        key = f"{KEY}{step_id}"
        self._batch_of_key[key] = batch.id
        self._notifier.show(
            Notice(
                key,
                time_up_words(step.kind),
                where_words(batch.name, vessel.name),
                ((NoticeAction.OPEN, action_words(NoticeAction.OPEN)),),
            )
        )
        self.told.emit(step_id)

    def _on_acted(self, key: str, _action: NoticeAction) -> None:
        if key in self._batch_of_key:
            self.open_asked.emit(self._batch_of_key[key])
