"""When reminders are shown: at the right time once, through sleep, restarts and clock changes."""

from __future__ import annotations

import logging
from collections.abc import Callable, Sequence
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.notices.port import Notice, NoticeAction, Notifier
from brewdesk.services.reminder_rules import QuietHours
from brewdesk.services.reminders import OPEN_STATES, DueItem, Reminders
from brewdesk.services.wording.reminders import action_words, summary_words
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import Reminder, RowDelta
from culturecore.stages import ReminderState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

_log = logging.getLogger(__name__)

# A coarse timer may be 5 % late; this keeps even a late tick under a minute.
TICK_MS = 50_000
# More wall time than running time by this much: the machine slept, or the clock was set.
GAP = timedelta(seconds=90)
# Steps back smaller than this are a network time service at work.
STEP_BACK = timedelta(seconds=2)
DOUBT_AFTER = timedelta(hours=1)
SNOOZE_BY_NOTICE = timedelta(hours=2)
GROUP_FROM = 3
GROUP_FROM_AFTER_AWAY = 2
SUMMARY_KEY = "reminders-due"
KEY = "reminder-"
# Batches whose reminders are brought in line without anybody noticing: a few milliseconds.
_CROWD = 8
_TOPICS = (
    Topic.BATCHES | Topic.VESSELS | Topic.READINGS | Topic.REMINDERS | Topic.FORECASTS
) | Topic.SETTINGS


def no_quiet_hours() -> QuietHours:
    """Return a span that covers nothing."""
    return QuietHours(time(0), time(0))


class ReminderClock(QObject):
    """Look at the due list often enough, and hand what is due to the notifier.

    `evaluate` may be called at any time and as often as one likes. It works from
    instants kept in the store and the wall clock alone, so that neither a late timer
    nor a missed one matters. A reminder is marked as shown in the same transaction
    that hands it over: if the program dies between the two, it is shown again under
    the same key; it is never lost.

    ``came_due`` carries the `DueItem` s just handed over, for the window.
    ``clock_doubt`` carries the instant of the newest record when the wall clock is
    more than an hour before it; nothing is shown until ``clock_trusted``.
    ``clock_moved`` carries the seconds by which the wall clock ran ahead of (or
    behind) running time. ``open_asked`` carries a batch id, or None for the list.
    ``trouble`` carries the `StoreTrouble` that kept reminders from being marked.
    """

    came_due = Signal(object)
    clock_doubt = Signal(object)
    clock_trusted = Signal()
    clock_moved = Signal(float)
    open_asked = Signal(object)
    trouble = Signal(object)

    def __init__(
        self,
        door: Door,
        reminders: Reminders,
        notifier: Notifier,
        *,
        quiet_hours: Callable[[], QuietHours] = no_quiet_hours,
        chime: Callable[[], None] | None = None,
        jobs: JobRunner | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._reminders = reminders
        self._notifier = notifier
        self._quiet_hours = quiet_hours
        self._chime = chime
        self._jobs = jobs
        self._was_away = True  # until the first look: the program was closed
        self._last_look: tuple[datetime, float] | None = None
        self._is_doubted = False
        self._is_own_word = False
        self._troubled_by = ""
        self._on_screen: dict[str, frozenset[int]] = {}
        self._handed_over: set[tuple[int, datetime]] = set()
        self._tick = QTimer(self, interval=TICK_MS, timerType=Qt.TimerType.CoarseTimer)
        self._tick.setObjectName("reminder_tick")
        self._tick.timeout.connect(self.evaluate)
        self._soon = QTimer(self, interval=0, singleShot=True)
        self._soon.setObjectName("reminder_soon")
        self._soon.timeout.connect(self.evaluate)
        self._show_soon = QTimer(self, interval=0, singleShot=True)
        self._show_soon.setObjectName("reminder_show_soon")
        self._show_soon.timeout.connect(self._on_show_soon)
        door.changes.changed.connect(self._on_changed)
        notifier.acted.connect(self._on_acted)

    def start(self) -> None:
        """Look at once, then at every tick."""
        self._tick.start()
        self.evaluate()

    def stop(self) -> None:
        """Look no more."""
        self._tick.stop()
        self._soon.stop()
        self._show_soon.stop()

    def window_activated(self) -> None:
        """Look now: the maker has come to the window."""
        self.evaluate()

    def evaluate(self) -> None:
        """Bring reminders up to date and show what is due and not yet shown."""
        self._note_time()
        try:
            if not self._clock_is_sane():
                return
            if self._jobs is not None and self._reminders.live_count() > _CROWD:
                # So many that it would be seen: the window goes on meanwhile.
                self._jobs.run(
                    self._reminders.sync_apart,
                    self._on_synced,
                    self._on_not_synced,
                    key="reminders",
                    pool=Pool.STORE,
                )
                return
            self._reminders.sync()
            self._show_changes()
        except StoreTrouble as trouble:
            self._tell_trouble(trouble)

    def _on_synced(self, written: tuple[RowDelta, ...]) -> None:
        self._is_own_word = True
        self._reminders.tell(written)
        self._is_own_word = False
        self._show_soon.start()  # a turn of its own: the views have just looked

    def _on_show_soon(self) -> None:
        try:
            self._show_changes()
        except StoreTrouble as trouble:
            self._tell_trouble(trouble)

    def _on_not_synced(self, error: BaseException) -> None:
        if not isinstance(error, StoreTrouble):
            raise error
        self._tell_trouble(error)

    def _show_changes(self) -> None:
        self._withdraw_handled()
        self._show_due()
        self._troubled_by = ""

    def _tell_trouble(self, trouble: StoreTrouble) -> None:
        if trouble.code != self._troubled_by:
            self._troubled_by = trouble.code
            _log.warning("reminders could not be brought up to date: %s", trouble.code)
            self.trouble.emit(trouble)

    def _note_time(self) -> None:
        now, running_s = self._door.clock.now(), self._door.clock.monotonic()
        if self._last_look is not None:
            last_now, last_running_s = self._last_look
            gap = (now - last_now) - timedelta(seconds=running_s - last_running_s)
            if gap > GAP or gap < -STEP_BACK:
                self._was_away = self._was_away or gap > GAP
                self.clock_moved.emit(gap.total_seconds())
        self._last_look = now, running_s

    def _clock_is_sane(self) -> bool:
        with self._door.store.read() as unit:
            act = unit.acts.last_done()
        now = self._door.clock.now()
        is_doubtful = act is not None and now < act.at - DOUBT_AFTER
        if is_doubtful and act is not None and not self._is_doubted:
            self.clock_doubt.emit(act.at)
        if self._is_doubted and not is_doubtful:
            self.clock_trusted.emit()
        self._is_doubted = is_doubtful
        return not is_doubtful

    def _show_due(self) -> None:
        now, zone = self._door.clock.now(), self._door.clock.zone()
        if self._quiet_hours().covers(now, zone):
            return
        items = self._reminders.to_be_shown(now)
        was_away, self._was_away = self._was_away, False
        if not items:
            return
        fresh = tuple(item for item in items if _occasion(item) not in self._handed_over)

        def mark_and_hand_over(unit: UnitOfWork) -> None:
            for item in items:
                unit.reminders.change(
                    item.reminder.id,
                    state=ReminderState.SHOWN,
                    shown_at=now,
                    snoozed_until=None,
                )
            # Inside the transaction, so that no crash can mark what was never shown. What was
            # handed over in this run is not shown again if only the commit fails.
            self._handed_over.update(_occasion(item) for item in fresh)
            self._hand_over(fresh, was_away=was_away)

        self._door.quiet(mark_and_hand_over, topics=Topic.REMINDERS)
        self._handed_over.difference_update(_occasion(item) for item in items)
        if fresh:
            self.came_due.emit(fresh)

    def _hand_over(self, items: Sequence[DueItem], *, was_away: bool) -> None:
        if not items:
            return
        if len(items) >= (GROUP_FROM_AFTER_AWAY if was_away else GROUP_FROM):
            title, body = summary_words([item.title for item in items], was_away=was_away)
            self._put_on_screen(SUMMARY_KEY, title, body, (NoticeAction.OPEN,), items)
        else:
            for item in items:
                self._put_on_screen(
                    _key_of(item), item.title, item.body, tuple(NoticeAction), (item,)
                )
        if self._chime is not None:
            self._chime()

    def _put_on_screen(
        self,
        key: str,
        title: str,
        body: str,
        actions: tuple[NoticeAction, ...],
        items: Sequence[DueItem],
    ) -> None:
        buttons = tuple((action, action_words(action)) for action in actions)
        self._on_screen[key] = frozenset(item.reminder.id for item in items)
        self._notifier.show(Notice(key, title, body, buttons))

    def _withdraw_handled(self) -> None:
        if not self._on_screen:
            return
        with self._door.store.read() as unit:
            shown = {row.id for row in unit.reminders.where(state=ReminderState.SHOWN)}
        for key, ids in tuple(self._on_screen.items()):
            if not ids & shown:
                del self._on_screen[key]
                self._notifier.withdraw(key)

    def _on_changed(self, change: Change) -> None:
        # What was just written here is in line already.
        if change.concerns(_TOPICS) and self._tick.isActive() and not self._is_own_word:
            self._soon.start()

    def _on_acted(self, key: str, action: NoticeAction) -> None:
        if key != SUMMARY_KEY and not key.startswith(KEY):
            return  # somebody else's notice
        rows = self._open_rows(self._on_screen.get(key, frozenset()))
        if key == SUMMARY_KEY or action is NoticeAction.OPEN or not rows:
            self.open_asked.emit(rows[0].batch_id if len(rows) == 1 else None)
            return
        try:
            for row in rows:
                if action is NoticeAction.DONE:
                    self._reminders.done(row.id)
                else:
                    self._reminders.snooze(row.id, self._door.clock.now() + SNOOZE_BY_NOTICE)
        except StoreTrouble as trouble:
            self.trouble.emit(trouble)

    def _open_rows(self, ids: frozenset[int]) -> tuple[Reminder, ...]:
        with self._door.store.read() as unit:
            rows = unit.reminders.where(state=OPEN_STATES)
        return tuple(row for row in rows if row.id in ids)


def _key_of(item: DueItem) -> str:
    return f"{KEY}{item.reminder.id}"


def _occasion(item: DueItem) -> tuple[int, datetime]:
    return item.reminder.id, item.due_at
