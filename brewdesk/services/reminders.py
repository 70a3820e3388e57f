"""The due list: reminders as kept, what the maker does with them, and keeping them true.

The list is the record of what there is to do; a notice is only its echo.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING
from uuid import uuid4

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.culture_reminder_rules import (
    CultureFacts,
    RestRhythm,
    film_looks,
    merge_of_culture,
    usual_rhythm,
    wanted_of_culture,
)
from brewdesk.services.door import Door
from brewdesk.services.reminder_rules import (
    USUAL_HOUR,
    BatchFacts,
    Merge,
    PhReading,
    TastingWindow,
    effective_due,
    merge,
    wanted,
)
from brewdesk.services.restingliquid import is_stated
from brewdesk.services.wording.reminders import lateness_words, reminder_words, snooze_warning
from brewdesk.store.records import Batch, Culture, Reminder, ReminderDraft, Vessel
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    CareKind,
    CultureState,
    Quantity,
    ReminderKind,
    ReminderState,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

OPEN_STATES = (ReminderState.WAITING, ReminderState.SHOWN, ReminderState.SNOOZED)
_LIVE_STAGES = tuple(stage for stage in BatchStage if stage.is_live)
# What keeps the brew safe comes first, then what is only worth knowing.
_KIND_ORDER = (
    ReminderKind.PH_CHECK,
    ReminderKind.MOLD_LOOK,
    ReminderKind.FILM_LOOK,
    ReminderKind.TOP_UP,
    ReminderKind.FEED,
    ReminderKind.TASTE,
    ReminderKind.OWN,
)
OWN_TEXT_LIMIT = 500


@dataclass(frozen=True, slots=True, kw_only=True)
class DueItem:
    """One line of the due list.

    ``due_at`` is when it is to be shown (the end of a snooze, if there is one),
    ``lateness`` how long ago the thing itself became due, zero if it has not, and
    ``when_text`` the same in words.
    """

    reminder: Reminder
    batch: Batch | None
    vessel: Vessel | None
    title: str
    body: str
    due_at: datetime
    is_due: bool
    lateness: timedelta
    when_text: str
    culture: Culture | None = None


def no_window(batch_id: int) -> TastingWindow | None:
    """Know nothing of any batch's tasting window."""
    return None


def usual_hour() -> time:
    """Return the time of day at which reminders of a day are due."""
    return USUAL_HOUR


class Reminders:
    """The maker's due list.

    ``window_of`` gives the newest forecast's tasting window of a batch, None while
    there is no forecast: what is kept then stays as it is. ``hour`` is the time of
    day, on the maker's clock, at which reminders of a day are due. ``rhythm`` tells how
    often resting cultures want care.
    """

    def __init__(
        self,
        door: Door,
        *,
        window_of: Callable[[int], TastingWindow | None] = no_window,
        hour: Callable[[], time] = usual_hour,
        rhythm: Callable[[], RestRhythm] = usual_rhythm,
    ) -> None:
        self._rhythm = rhythm
        self._door = door
        self._window_of = window_of
        self._hour = hour

    def listed(self, now: datetime | None = None) -> tuple[DueItem, ...]:
        """Return all open reminders: due ones first, weightiest first, then by time."""
        moment = now or self._door.clock.now()
        with self._door.store.read() as unit:
            rows = unit.reminders.where(state=OPEN_STATES)
            items = [self._item(unit, row, moment) for row in rows]
        return tuple(sorted(items, key=_list_order))

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
            _facts(item),
            lambda unit: unit.reminders.change(
                reminder_id, state=ReminderState.DONE, done_at=now, snoozed_until=None
            ),
            topics=Topic.REMINDERS,
            batch_id=item.reminder.batch_id,
        )

    def snooze(self, reminder_id: int, until: datetime) -> None:
        """Put a reminder off until an instant, as an act. One no longer open stays as it is.

        It may be put off past the end of its tasting window; `snooze_problem` says so.

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
        if item is None or item.reminder.snoozed_until == until.astimezone(UTC):
            return
        self._door.perform(
            ActKind.SNOOZE_REMINDER,
            {**_facts(item), "until": until.astimezone(UTC).isoformat()},
            lambda unit: unit.reminders.change(
                reminder_id, state=ReminderState.SNOOZED, snoozed_until=until.astimezone(UTC)
            ),
            topics=Topic.REMINDERS,
            batch_id=item.reminder.batch_id,
        )

    def snooze_problem(self, reminder_id: int, until: datetime) -> str:
        """Warn, in a sentence, if the tasting window closes before ``until``; else return ""."""
        with self._door.store.read() as unit:
            window_end = unit.reminders.get(reminder_id).window_end
        if window_end is None or until <= window_end:
            return ""
        return snooze_warning(window_end, self._door.clock.zone())

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

    def sync(self) -> bool:
        """Bring the kept reminders in line with the batches and forecasts of now.

        Doing it twice changes nothing the second time. Return whether rows changed.
        """
        with self._door.store.read() as unit:
            merges = self._merges(unit)
        if not merges:
            return False
        self._door.quiet(lambda unit: _write(unit, merges), topics=Topic.REMINDERS)
        return True

    def _merges(self, unit: ReadUnit) -> tuple[Merge, ...]:
        now, zone, hour = self._door.clock.now(), self._door.clock.zone(), self._hour()
        batches = {row.id: row for row in unit.batches.where(stage=_LIVE_STAGES)}
        for row in unit.reminders.where(state=OPEN_STATES):
            if row.batch_id is not None and row.batch_id not in batches:
                batches[row.batch_id] = unit.batches.get(row.batch_id)
        merges = []
        for batch in batches.values():
            facts = self._facts_of(unit, batch)
            kept = unit.reminders.where(batch_id=batch.id)
            asked = wanted(facts, now=now, zone=zone, hour=hour)
            if batch.purpose is BatchPurpose.CULTURE and facts.stage is BatchStage.SOURING:
                asked += film_looks(facts.started_at, now=now, zone=zone, hour=hour)
            merges.append(merge(facts, kept, asked))
        merges += self._culture_merges(unit)
        return tuple(one for one in merges if not one.is_empty())

    def _culture_merges(self, unit: ReadUnit) -> list[Merge]:
        now, zone, hour = self._door.clock.now(), self._door.clock.zone(), self._hour()
        kept: dict[int, list[Reminder]] = {}
        for row in unit.reminders.where():
            if row.culture_id is not None:
                kept.setdefault(row.culture_id, []).append(row)
        resting = {row.id: row for row in unit.cultures.where(state=CultureState.RESTING)}
        merges = []
        for culture_id in sorted(resting.keys() | kept.keys()):
            culture = resting.get(culture_id) or unit.cultures.get(culture_id)
            asked = wanted_of_culture(
                _culture_facts(unit, culture), self._rhythm(), now=now, zone=zone, hour=hour
            )
            merges.append(merge_of_culture(culture, kept.get(culture_id, ()), asked))
        return merges

    def _facts_of(self, unit: ReadUnit, batch: Batch) -> BatchFacts:
        is_souring = batch.stage is BatchStage.SOURING
        readings = (
            unit.readings.where(batch_id=batch.id, quantity=Quantity.PH) if is_souring else ()
        )
        return BatchFacts(
            batch_id=batch.id,
            stage=batch.stage,
            started_at=batch.started_at,
            ph_readings=tuple(
                PhReading(row.at, row.value, row.sd) for row in readings if row.value is not None
            ),
            window=self._window_of(batch.id) if is_souring else None,
            purpose=batch.purpose,
        )

    def _open_item(self, reminder_id: int) -> DueItem | None:
        with self._door.store.read() as unit:
            row = unit.reminders.get(reminder_id)
            if row.state not in OPEN_STATES:
                return None
            return self._item(unit, row, self._door.clock.now())

    def _item(self, unit: ReadUnit, row: Reminder, now: datetime) -> DueItem:
        batch, vessel = _home(unit, row.batch_id)
        culture = None if row.culture_id is None else unit.cultures.get(row.culture_id)
        if culture is not None and culture.vessel_id is not None:
            vessel = unit.vessels.get(culture.vessel_id)
        zone = self._door.clock.zone()
        subject = batch or culture
        title, body = reminder_words(
            row, subject.name if subject else "", vessel.name if vessel else "", now, zone
        )
        due_at = effective_due(row)
        return DueItem(
            reminder=row,
            batch=batch,
            culture=culture,
            vessel=vessel,
            title=title,
            body=body,
            due_at=due_at,
            is_due=due_at <= now,
            lateness=max(now - row.due_at, timedelta(0)) if due_at <= now else timedelta(0),
            when_text=lateness_words(row.due_at if due_at <= now else due_at, now, zone),
        )


def _home(unit: ReadUnit, batch_id: int | None) -> tuple[Batch | None, Vessel | None]:
    if batch_id is None:
        return None, None
    batch = unit.batches.get(batch_id)
    return batch, unit.vessels.get(batch.vessel_id)


def _culture_facts(unit: ReadUnit, culture: Culture) -> CultureFacts:
    care = unit.care.where(culture_id=culture.id, order_by="at")
    rested = [row.at for row in care if is_stated(row)]
    ended = [
        batch.ended_at
        for batch in unit.batches.where(culture_id=culture.id)
        if batch.ended_at is not None
    ]
    begun = max([*rested, *ended], default=culture.born_at)
    fed = [row.at for row in care if row.kind is CareKind.FED]
    poured = [row.at for row in care if row.volume_l is not None]
    return CultureFacts(
        culture_id=culture.id,
        state=culture.state,
        fed_at=max([begun, *fed]),
        poured_at=max([begun, *poured]),
        is_in_vessel=culture.vessel_id is not None,
    )


def _facts(item: DueItem) -> dict[str, object]:
    subject = item.batch or item.culture
    return {
        "reminder": item.title,
        "batch": subject.name if subject else "",
        "vessel": item.vessel.name if item.vessel else "",
    }


def _list_order(item: DueItem) -> tuple[bool, int, datetime, int]:
    weight = _KIND_ORDER.index(item.reminder.kind) if item.is_due else 0
    return (not item.is_due, weight, item.due_at, item.reminder.id)


def _write(unit: UnitOfWork, merges: tuple[Merge, ...]) -> None:
    for one in merges:
        for draft in one.add:
            unit.reminders.add(draft)
        for row_id, fields in one.change.items():
            unit.reminders.change(row_id, **fields)
