"""The due list: reminders as kept, what the maker does with them, and keeping them true.

The list is the record of what there is to do; a notice is only its echo.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, time
from heapq import nsmallest
from typing import TYPE_CHECKING
from uuid import uuid4

from brewdesk.services.acts import ActKind
from brewdesk.services.bottle_reminder_rules import BottlingFacts, no_bottlings
from brewdesk.services.changes import Change, Topic
from brewdesk.services.culture_reminder_rules import RestRhythm, usual_rhythm
from brewdesk.services.door import Door
from brewdesk.services.dueitems import DueItem, due_items, facts_of, list_order
from brewdesk.services.escalation import DANGER_KINDS, is_to_be_repeated, latest_snooze
from brewdesk.services.reminder_facts import ReadingsBook
from brewdesk.services.reminder_gather import (
    LIVE_STAGES,
    OPEN_STATES,
    Moment,
    batch_merges,
    batches_kept,
    other_merges,
)
from brewdesk.services.reminder_rules import USUAL_HOUR, Merge, TastingWindow, effective_due
from brewdesk.services.settings import CALIBRATE_DAYS
from brewdesk.services.wording.reminders import chill_snooze_warning, snooze_warning
from brewdesk.store.records import Batch, Reminder, ReminderDraft, RowDelta, Vessel
from culturecore.errors import ImpossibleInput
from culturecore.stages import ReminderKind, ReminderState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

__all__ = [
    "OPEN_STATES",
    "OWN_TEXT_LIMIT",
    "DueItem",
    "Reminders",
    "no_window",
    "usual_hour",
]

_TAKES_REMINDERS_ALONG = Topic.REMINDERS | Topic.BATCHES | Topic.CULTURES | Topic.BOTTLINGS
OWN_TEXT_LIMIT = 500
_AT_A_TIME = 8  # batches in one transaction of `sync_apart`
_MARKED_AT_A_TIME = 20  # reminders in one transaction of `mark_shown_apart`


def no_window(batch_id: int) -> TastingWindow | None:
    """Know nothing of any batch's tasting window."""
    return None


def usual_hour() -> time:
    """Return the time of day at which reminders of a day are due."""
    return USUAL_HOUR


def nothing_more(unit: UnitOfWork, reminder_ids: Iterable[int]) -> None:
    """Note nothing but that they were shown."""


def usual_calibrate_days() -> float:
    """Return how many days apart calibrations are, as long as the maker has set no other."""
    return CALIBRATE_DAYS.default


@dataclass(frozen=True, slots=True)
class Written:
    """What was written off the window's thread, and how the open reminders stood after it."""

    deltas: tuple[RowDelta, ...]
    open_rows: tuple[Reminder, ...]
    changes: int  # that had been heard of before they were read


class Reminders:
    """The maker's due list.

    ``window_of`` gives the newest forecast's tasting window of a batch, None while
    there is no forecast: what is kept then stays as it is. ``hour`` is the time of
    day, on the maker's clock, at which reminders of a day are due. ``rhythm`` tells how
    often resting cultures want care, ``calibrate_days`` how often the pH meter.
    ``bottlings_of`` gives the facts of the bottlings that are not finished; it is asked on
    the window's thread, at every look, and has to answer at once.
    """

    def __init__(
        self,
        door: Door,
        *,
        window_of: Callable[[int], TastingWindow | None] = no_window,
        hour: Callable[[], time] = usual_hour,
        rhythm: Callable[[], RestRhythm] = usual_rhythm,
        bottlings_of: Callable[[], tuple[BottlingFacts, ...]] = no_bottlings,
        calibrate_days: Callable[[], float] = usual_calibrate_days,
    ) -> None:
        self._rhythm = rhythm
        self._bottlings_of = bottlings_of
        self._calibrate_days = calibrate_days
        self._door = door
        self._window_of = window_of
        self._hour = hour
        self._open_rows: tuple[Reminder, ...] | None = None  # kept until one changes
        self._read_apart: tuple[Reminder, ...] | None = None  # while it is told of
        self._changes = 0
        self._readings = ReadingsBook()
        door.changes.changed.connect(self._on_changed)

    def listed(
        self, now: datetime | None = None, *, most: int | None = None
    ) -> tuple[DueItem, ...]:
        """Return the open reminders: due ones first, weightiest first, then by time.

        All of them, or the first ``most``.
        """
        moment = now or self._door.clock.now()
        with self._door.store.read() as unit:
            rows = self._open(unit)
            first = nsmallest(
                len(rows) if most is None else most, rows, key=lambda row: list_order(row, moment)
            )
            return self._items(unit, first, moment)

    def to_be_shown(self, now: datetime) -> tuple[DueItem, ...]:
        """Return those of the list that are due and were not shown since.

        And those that warn of danger, were shown, and are to be shown again.
        """
        with self._door.store.read() as unit:
            rows = [row for row in self._open(unit) if _is_to_be_shown(row, now)]
            return self._items(unit, sorted(rows, key=lambda row: list_order(row, now)), now)

    def still_to_be_shown(
        self, unit: ReadUnit | UnitOfWork, reminder_ids: Iterable[int], now: datetime
    ) -> tuple[int, ...]:
        """Return which of these are to be shown by what ``unit`` sees."""
        rows = unit.reminders.where(id=tuple(reminder_ids), state=OPEN_STATES)
        return tuple(row.id for row in rows if _is_to_be_shown(row, now))

    def mark_shown(self, unit: UnitOfWork, reminder_ids: Iterable[int], now: datetime) -> None:
        """Note in ``unit`` that these were shown; what was answered meanwhile stays answered."""
        for row in unit.reminders.where(id=tuple(reminder_ids), state=OPEN_STATES):
            if _is_to_be_shown(row, now):
                unit.reminders.change(
                    row.id, state=ReminderState.SHOWN, shown_at=now, snoozed_until=None
                )

    def mark_shown_apart(
        self,
        reminder_ids: tuple[int, ...],
        now: datetime,
        *,
        also: Callable[[UnitOfWork, Iterable[int]], None] = nothing_more,
    ) -> Written:
        """Do as `mark_shown`, from another thread: return what was written, for `tell`.

        ``also`` is done in the same transactions, after the marking.
        """
        written: list[RowDelta] = []
        for at in range(0, len(reminder_ids), _MARKED_AT_A_TIME):
            with self._door.store.write() as unit:
                some = reminder_ids[at : at + _MARKED_AT_A_TIME]
                self.mark_shown(unit, some, now)
                also(unit, some)
                written += unit.deltas
        return self._written(written)

    def due_count(self) -> int:
        """Return how many reminders are due now."""
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            return sum(effective_due(row) <= now for row in self._open(unit))

    def live_count(self) -> int:
        """Return how many batches there are whose reminders are kept true."""
        with self._door.store.read() as unit:
            return unit.batches.count(stage=LIVE_STAGES)

    def items_for(self, reminder_ids: tuple[int, ...]) -> tuple[DueItem, ...]:
        """Return the lines for these reminders that are still open, in list order."""
        return tuple(item for item in self.listed() if item.reminder.id in reminder_ids)

    def done(self, reminder_id: int) -> None:
        """Tick a reminder off, as an act. One that is no longer open stays as it is.

        Raises
        ------
        NoSuchRow
            If there is no reminder with this id.
        """
        item = self._open_item(reminder_id)
        if item is None:
            return
        now = self._door.clock.now()
        self._door.perform(
            ActKind.FINISH_REMINDER,
            facts_of(item),
            lambda unit: unit.reminders.change(
                reminder_id, state=ReminderState.DONE, done_at=now, snoozed_until=None
            ),
            topics=Topic.REMINDERS,
            batch_id=item.reminder.batch_id,
        )

    def snooze(self, reminder_id: int, until: datetime) -> None:
        """Put a reminder off until an instant, as an act. One no longer open stays as it is.

        It may be put off past the end of its tasting window; `snooze_problem` says so. What
        warns of danger comes back with the danger at the latest.

        Raises
        ------
        ImpossibleInput
            If ``until`` is not in the future.
        NoSuchRow
            If there is no reminder with this id.
        """
        now = self._door.clock.now()
        if until <= now:
            raise ImpossibleInput("until", until, reason="not_in_future")
        item = self._open_item(reminder_id)
        if item is None:
            return
        until = latest_snooze(item.reminder, until, now)
        if item.reminder.snoozed_until == until.astimezone(UTC):
            return
        self._door.perform(
            ActKind.SNOOZE_REMINDER,
            {**facts_of(item), "until": until.astimezone(UTC).isoformat()},
            lambda unit: unit.reminders.change(
                reminder_id, state=ReminderState.SNOOZED, snoozed_until=until.astimezone(UTC)
            ),
            topics=Topic.REMINDERS,
            batch_id=item.reminder.batch_id,
        )

    def snooze_problem(self, reminder_id: int, until: datetime) -> str:
        """Warn, in a sentence, if what it is about comes before ``until``; else return ""."""
        with self._door.store.read() as unit:
            row = unit.reminders.get(reminder_id)
        if row.window_end is None or until <= row.window_end:
            return ""
        if row.kind in DANGER_KINDS:
            back_at = latest_snooze(row, until, self._door.clock.now())
            return chill_snooze_warning(back_at, self._door.clock.zone()) if back_at < until else ""
        if row.kind is ReminderKind.BEST_BEFORE:
            return ""  # a date of the maker's own choice: later is no harm of the window's kind
        return snooze_warning(row.window_end, self._door.clock.zone())

    def add_own(self, batch_id: int | None, at: datetime, text: str) -> Reminder:
        """Keep a reminder in the maker's own words, as an act. It is due at that instant.

        Raises
        ------
        ImpossibleInput
            If ``text`` is empty or longer than `OWN_TEXT_LIMIT`.
        """
        words = text.strip()
        if not words:
            raise ImpossibleInput("text", text, reason="empty")
        if len(words) > OWN_TEXT_LIMIT:
            raise ImpossibleInput("text", len(words), high=OWN_TEXT_LIMIT, reason="too_long")
        with self._door.store.read() as unit:
            batch, vessel = _home(unit, batch_id)
        draft = ReminderDraft(
            batch_id=batch_id,
            kind=ReminderKind.OWN,
            occurrence=uuid4().hex,
            due_at=at.astimezone(UTC),
            text=words,
        )
        return self._door.perform(
            ActKind.ADD_REMINDER,
            {
                "reminder": words,
                "batch": batch.name if batch else "",
                "vessel": vessel.name if vessel else "",
                "at": draft.due_at.isoformat(),
            },
            lambda unit: unit.reminders.add(draft),
            topics=Topic.REMINDERS,
            batch_id=batch_id,
        )

    def bottling_facts(self) -> tuple[BottlingFacts, ...]:
        """Return what is known of the bottlings now, for `sync_apart`."""
        return self._bottlings_of()

    def sync(self) -> bool:
        """Bring the kept reminders in line with the batches and forecasts of now.

        Doing it twice changes nothing the second time. Return whether rows changed.
        """
        bottlings, moment = self.bottling_facts(), self._moment()
        with self._door.store.read() as unit:
            still_open = unit.reminders.where(state=OPEN_STATES)
            merges = (
                *batch_merges(unit, batches_kept(unit, still_open), moment),
                *other_merges(unit, still_open, bottlings, moment),
            )
        if not merges:
            return False
        self._door.quiet(lambda unit: _write(unit, merges), topics=Topic.REMINDERS)
        return True

    def sync_apart(self, bottlings: tuple[BottlingFacts, ...] = ()) -> Written:
        """Do as `sync`, from another thread: return what was written, for `tell`.

        Few batches at a time, so that nobody who wants to write has to wait long.
        ``bottlings`` is what `bottling_facts` said on the window's thread.
        """
        moment = self._moment()
        changes = self._changes
        with self._door.store.read() as unit:
            open_rows = self._open_rows or unit.reminders.where(state=OPEN_STATES)
            batches = batches_kept(unit, open_rows)
        written: list[RowDelta] = []
        for at in range(0, len(batches), _AT_A_TIME):
            some = batches[at : at + _AT_A_TIME]
            with self._door.store.read() as unit:
                if not batch_merges(unit, some, moment):
                    continue
            with self._door.store.write() as work:
                # Once more: the maker may have ticked one off between the two.
                ids = tuple(batch.id for batch in some)
                _write(work, batch_merges(work, work.batches.where(id=ids), moment))
                written += work.deltas
        with self._door.store.read() as unit:
            has_more = bool(other_merges(unit, open_rows, bottlings, moment))
        if has_more:
            with self._door.store.write() as work:
                still_open = work.reminders.where(state=OPEN_STATES)
                _write(work, other_merges(work, still_open, bottlings, moment))
                written += work.deltas
        return self._written(written) if written else Written((), open_rows, changes)

    def tell(self, written: Written) -> None:
        """Announce what `sync_apart` or `mark_shown_apart` has written."""
        # What has changed since they were read has been heard of, or will be.
        still_so = written.open_rows if written.changes == self._changes else None
        if not written.deltas:
            self._open_rows = self._open_rows if still_so is None else still_so
            return
        self._read_apart = still_so
        try:
            self._door.tell(written.deltas, Topic.REMINDERS)
        finally:
            self._read_apart = None

    def open_rows(self) -> tuple[Reminder, ...]:
        """Return all open reminders, in no order."""
        if self._open_rows is not None:
            return self._open_rows
        with self._door.store.read() as unit:
            return self._open(unit)

    def known_open_rows(self) -> tuple[Reminder, ...] | None:
        """Return all open reminders if that takes no reading, else None."""
        return self._open_rows

    def _written(self, deltas: list[RowDelta]) -> Written:
        changes = self._changes
        with self._door.store.read() as unit:
            rows = unit.reminders.where(state=OPEN_STATES)
        return Written(tuple(deltas), rows, changes)

    def _open(self, unit: ReadUnit) -> tuple[Reminder, ...]:
        if self._open_rows is None:
            self._open_rows = unit.reminders.where(state=OPEN_STATES)
        return self._open_rows

    def _on_changed(self, change: Change) -> None:
        self._readings.note(change)
        # What a reminder is about takes it along when it goes, and nobody tells of that.
        if change.concerns(_TAKES_REMINDERS_ALONG):
            self._changes += 1
            self._open_rows = self._read_apart

    def _moment(self) -> Moment:
        clock = self._door.clock
        return Moment(
            now=clock.now(),
            zone=clock.zone(),
            hour=self._hour(),
            rhythm=self._rhythm(),
            calibrate_days=self._calibrate_days(),
            window_of=self._window_of,
            readings=self._readings,
        )

    def _open_item(self, reminder_id: int) -> DueItem | None:
        with self._door.store.read() as unit:
            row = unit.reminders.get(reminder_id)
            if row.state not in OPEN_STATES:
                return None
            return self._items(unit, (row,), self._door.clock.now())[0]

    def _items(
        self, unit: ReadUnit, rows: Iterable[Reminder], now: datetime
    ) -> tuple[DueItem, ...]:
        return due_items(unit, tuple(rows), now, self._door.clock.zone())


def _is_to_be_shown(row: Reminder, now: datetime) -> bool:
    if row.state is ReminderState.SHOWN:
        return is_to_be_repeated(row, now)
    return effective_due(row) <= now


def _home(unit: ReadUnit, batch_id: int | None) -> tuple[Batch | None, Vessel | None]:
    if batch_id is None:
        return None, None
    batch = unit.batches.get(batch_id)
    return batch, unit.vessels.get(batch.vessel_id)


def _write(unit: UnitOfWork, merges: Iterable[Merge]) -> None:
    for one in merges:
        for draft in one.add:
            unit.reminders.add(draft)
        for row_id, fields in one.change.items():
            unit.reminders.change(row_id, **fields)
