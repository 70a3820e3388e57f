"""When reminders are shown: at the right time once, through sleep, restarts and clock changes."""

from __future__ import annotations

import logging
from collections.abc import Callable, Sequence
from datetime import datetime, time, timedelta
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.clock_doubt import ACTS_LOOKED_AT, is_in_doubt
from brewdesk.services.door import Door
from brewdesk.services.dueitems import DueItem
from brewdesk.services.escalation import Step, is_time_again
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.notices.port import Notice, NoticeAction, Notifier, Urgency
from brewdesk.services.reminder_rules import QuietHours
from brewdesk.services.reminders import Reminders, Written
from brewdesk.services.remindershares import OneDesk, Shares
from brewdesk.services.wording.reminders import action_words, summary_words
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import Reminder
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
SNOOZE_BY_NOTICE = timedelta(hours=2)
GROUP_FROM = 3
GROUP_FROM_AFTER_AWAY = 2
SUMMARY_KEY = "reminders-due"
KEY = "reminder-"
# Batches whose reminders are brought in line, and reminders that are marked as shown, without
# anybody noticing: a few milliseconds.
_CROWD = 8
_TOPICS = (Topic.BATCHES | Topic.VESSELS | Topic.READINGS | Topic.REMINDERS | Topic.FORECASTS) | (
    Topic.SETTINGS | Topic.CULTURES | Topic.BOTTLINGS | Topic.METERS | Topic.STORES
)
_Occasion = tuple[int, datetime]
_TRUSTED_KEY = "clock_trusted_since_act"  # not the maker's liking, so no declared setting


def no_quiet_hours() -> QuietHours:
    """Return a span that covers nothing."""
    return QuietHours(time(0), time(0))


class ReminderClock(QObject):
    """Look at the due list often enough, and hand what is due to the notifier.

    `evaluate` may be called at any time and as often as one likes. It works from
    instants kept in the store and the wall clock alone, so that neither a late timer
    nor a missed one matters. A reminder is marked as shown in the same transaction
    that hands it over, a crowd of them right after: if the program dies between the
    two, it is shown again under the same key; it is never lost.

    What warns of danger is shown by itself, louder and more often as the danger comes
    nearer, and from `Step.PRESSING` on in quiet hours too (see ``escalation``).

    ``came_due`` carries the `DueItem` s just handed over, for the window.
    ``clock_doubt`` carries the instant of the newest record when the wall clock is
    more than an hour before it (see ``clock_doubt``); nothing is shown until
    ``clock_trusted``. ``clock_moved`` carries the seconds by which the wall clock ran
    ahead of (or behind) running time. ``open_asked`` carries a batch id, or None for
    the list. ``trouble`` carries the `StoreTrouble` that kept reminders from being
    marked.
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
        shares: Shares | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._reminders = reminders
        self._notifier = notifier
        self._quiet_hours = quiet_hours
        self._chime = chime
        self._jobs = jobs
        self._shares = shares or OneDesk(reminders)
        self._was_away = True  # until the first look: the program was closed
        self._last_look: tuple[datetime, float] | None = None
        self._is_doubted = False
        self._is_own_word = False
        self._is_marking = False
        self._troubled_by = ""
        self._on_screen: dict[str, frozenset[int]] = {}
        self._handed_over: dict[_Occasion, datetime] = {}  # and not yet marked
        self._tick = QTimer(self, interval=TICK_MS, timerType=Qt.TimerType.VeryCoarseTimer)
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

    def look_soon(self) -> None:
        """Look in a moment: something that reminders go by has been worked out."""
        if self._tick.isActive():
            self._soon.start()

    def evaluate(self) -> None:
        """Bring reminders up to date and show what is due and not yet shown."""
        self._note_time()
        try:
            if not self._clock_is_sane():
                return
            if not self._shares.is_keeper:  # another desk brings them in line
                self._show_changes()
                return
            if self._jobs is not None and self._reminders.live_count() > _CROWD:
                # So many that it would be seen: the window goes on meanwhile.
                self._jobs.run(
                    partial(self._reminders.sync_apart, self._reminders.bottling_facts()),
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

    def _on_synced(self, written: Written) -> None:
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

    def trust_clock(self) -> None:
        """Take the maker's word that the clock is right, for all that was recorded until now."""
        with self._door.store.read() as unit:
            act = unit.acts.last_done()
        if act is not None:
            act_id = str(act.id)
            self._door.quiet(lambda unit: unit.settings.put(_TRUSTED_KEY, act_id))
        self.evaluate()

    def _clock_is_sane(self) -> bool:
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            act = unit.acts.last_done()
            is_doubtful = act is not None and now < act.at
            if is_doubtful:  # seldom: then it is worth reading more
                acts = unit.acts.recent(ACTS_LOOKED_AT)
                trusted = int(unit.settings.get(_TRUSTED_KEY) or 0)
                is_doubtful = is_in_doubt(now, acts, trusted_act_id=trusted)
        if is_doubtful and act is not None and not self._is_doubted:
            self.clock_doubt.emit(act.at)
        if self._is_doubted and not is_doubtful:
            self.clock_trusted.emit()
        self._is_doubted = is_doubtful
        return not is_doubtful

    def _show_due(self) -> None:
        if self._is_marking:
            return
        now, zone = self._door.clock.now(), self._door.clock.zone()
        is_quiet = self._quiet_hours().covers(now, zone)
        items = self._shares.due(now)
        if is_quiet:
            items = tuple(item for item in items if item.step is not Step.CALM)
        was_away = self._was_away
        self._was_away = was_away and is_quiet  # then the summary is still to come
        items = self._shares.claim(items, now)
        if not items:
            return
        fresh = tuple(item for item in items if self._is_fresh(item, now))
        if self._jobs is not None and len(items) > _CROWD:
            self._show_many(items, fresh, now, was_away=was_away)
            return

        def mark_and_hand_over(unit: UnitOfWork) -> tuple[DueItem, ...]:
            held = self._shares.held(unit, items)
            ids = tuple(item.reminder.id for item in held)
            self._reminders.mark_shown(unit, ids, now)
            self._shares.note_shown(unit, ids)
            fresh_ones = tuple(item for item in fresh if item in held)
            # Inside the transaction, so that no crash can mark what was never shown. What was
            # handed over in this run is not shown again if only the commit fails.
            self._handed_over |= {_occasion(item): now for item in fresh_ones}
            self._hand_over(fresh_ones, was_away=was_away)
            return fresh_ones

        told = self._door.quiet(mark_and_hand_over, topics=Topic.REMINDERS)
        self._note_marked(items)
        if told:
            self.came_due.emit(told)

    def _show_many(
        self, items: Sequence[DueItem], fresh: Sequence[DueItem], now: datetime, *, was_away: bool
    ) -> None:
        """Hand over now, and let another thread write down that it was done."""
        assert self._jobs is not None, "the caller has seen to that"
        self._handed_over |= {_occasion(item): now for item in fresh}
        self._hand_over(fresh, was_away=was_away)
        if fresh:
            self.came_due.emit(fresh)
        ids = tuple(item.reminder.id for item in items)
        self._is_marking = True
        self._jobs.run(
            partial(self._reminders.mark_shown_apart, ids, now, also=self._shares.note_shown),
            partial(self._on_marked, items),
            self._on_not_marked,
            key="reminders-shown",
            pool=Pool.STORE,
        )

    def _on_marked(self, items: Sequence[DueItem], written: Written) -> None:
        self._is_marking = False
        self._note_marked(items)
        self._is_own_word = True
        self._reminders.tell(written)
        self._is_own_word = False
        self._troubled_by = ""

    def _on_not_marked(self, error: BaseException) -> None:
        self._is_marking = False  # they stay handed over: tried again at the next look
        self._on_not_synced(error)

    def _is_fresh(self, item: DueItem, now: datetime) -> bool:
        """Whether it was not handed over before its marking failed, or is to be told again."""
        told_at = self._handed_over.get(_occasion(item))
        return told_at is None or is_time_again(item.step, told_at, now)

    def _note_marked(self, items: Sequence[DueItem]) -> None:
        for item in items:
            self._handed_over.pop(_occasion(item), None)

    def _hand_over(self, items: Sequence[DueItem], *, was_away: bool) -> None:
        if not items:
            return
        alone = [item for item in items if item.is_danger]
        others = [item for item in items if not item.is_danger]
        for item in alone:
            self._show_one(item)
        if len(others) >= (GROUP_FROM_AFTER_AWAY if was_away else GROUP_FROM):
            title, body = summary_words([item.title for item in others], was_away=was_away)
            self._put_on_screen(SUMMARY_KEY, title, body, (NoticeAction.OPEN,), others)
        else:
            for item in others:
                self._show_one(item)
        if self._chime is not None:
            self._chime()

    def _show_one(self, item: DueItem) -> None:
        urgency = Urgency.CRITICAL if item.step is Step.DANGER else Urgency.NORMAL
        actions = tuple(NoticeAction)
        if item.step is not Step.CALM:
            actions = (NoticeAction.OPEN, NoticeAction.DONE)  # it comes back by itself
        self._put_on_screen(_key_of(item), item.title, item.body, actions, (item,), urgency)

    def _put_on_screen(
        self,
        key: str,
        title: str,
        body: str,
        actions: tuple[NoticeAction, ...],
        items: Sequence[DueItem],
        urgency: Urgency = Urgency.NORMAL,
    ) -> None:
        buttons = tuple((action, action_words(action)) for action in actions)
        self._on_screen[key] = frozenset(item.reminder.id for item in items)
        self._notifier.show(Notice(key, title, body, buttons, urgency))

    def _withdraw_handled(self) -> None:
        if not self._on_screen:
            return
        rows = self._reminders.open_rows()
        shown = {row.id for row in rows if row.state is ReminderState.SHOWN}
        shown |= {reminder_id for reminder_id, _ in self._handed_over}  # as good as marked
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
        return tuple(row for row in self._reminders.open_rows() if row.id in ids)


def _key_of(item: DueItem) -> str:
    return f"{KEY}{item.reminder.id}"


def _occasion(item: DueItem) -> tuple[int, datetime]:
    # What is repeated is another occasion each time: it was last shown at another instant.
    return item.reminder.id, item.reminder.shown_at or item.due_at
