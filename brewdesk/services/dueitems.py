"""The lines of the due list: which reminder, what about, in which words and order."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from typing import TYPE_CHECKING, TypeVar

from brewdesk.services.escalation import DANGER_KINDS, Step, step_of
from brewdesk.services.reminder_rules import effective_due
from brewdesk.services.stock_reminder_rules import supply_of
from brewdesk.services.wording.reminders import lateness_words, reminder_words
from brewdesk.store.records import Batch, Bottling, Culture, Reminder, Vessel
from culturecore.stages import ReminderKind

if TYPE_CHECKING:
    from brewdesk.store.rows import ReadRows, StoredRecord
    from brewdesk.store.unitofwork import ReadUnit

V = TypeVar("V", bound="StoredRecord")

# What may burst comes first, then what keeps the brew safe, then what is only worth knowing.
KIND_ORDER = (
    ReminderKind.CHILL,
    ReminderKind.PRESSURE_CHECK,
    ReminderKind.PH_CHECK,
    ReminderKind.MOLD_LOOK,
    ReminderKind.FILM_LOOK,
    ReminderKind.TOP_UP,
    ReminderKind.FEED,
    ReminderKind.OPEN_TEST,
    ReminderKind.TASTE,
    ReminderKind.BEST_BEFORE,
    ReminderKind.CALIBRATE,
    ReminderKind.OWN,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class DueItem:
    """One line of the due list.

    ``due_at`` is when it is to be shown (the end of a snooze, if there is one),
    ``lateness`` how long ago the thing itself became due, zero if it has not, and
    ``when_text`` the same in words. ``step`` is how loud it is.
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
    bottling: Bottling | None = None
    step: Step = Step.CALM

    @property
    def supply_id(self) -> int | None:
        """The supply that runs low, if it is about one."""
        return supply_of(self.reminder)

    @property
    def is_danger(self) -> bool:
        """Whether it is about something that may hurt somebody by waiting."""
        return self.reminder.kind in DANGER_KINDS

    @property
    def subject_name(self) -> str:
        """The name of the batch, culture or bottling that it is about; "" for none."""
        subject = self.batch or self.culture or self.bottling
        return subject.name if subject else ""


def due_items(
    unit: ReadUnit, rows: Sequence[Reminder], now: datetime, zone: tzinfo
) -> tuple[DueItem, ...]:
    """Return the lines for these reminders, in their order."""
    batches = _by_id(unit.batches, (row.batch_id for row in rows))
    cultures = _by_id(unit.cultures, (row.culture_id for row in rows))
    bottlings = _by_id(unit.bottlings, (row.bottling_id for row in rows))
    homes = [batch.vessel_id for batch in batches.values()]
    rests = [culture.vessel_id for culture in cultures.values()]
    vessels = _by_id(unit.vessels, (*homes, *rests))
    found = []
    for row in rows:
        batch, culture = batches.get(row.batch_id), cultures.get(row.culture_id)
        home = batch or culture
        found.append(
            _item(
                row,
                batch,
                culture,
                bottlings.get(row.bottling_id),
                None if home is None else vessels.get(home.vessel_id),
                now,
                zone,
            )
        )
    return tuple(found)


def list_order(row: Reminder, now: datetime) -> tuple[bool, int, int, datetime, int]:
    """Return a key that puts due ones first, the loudest and weightiest of them before others."""
    due_at = effective_due(row)
    if due_at > now:
        return (True, 0, 0, due_at, row.id)
    return (False, -step_of(row, now), KIND_ORDER.index(row.kind), due_at, row.id)


def facts_of(item: DueItem) -> dict[str, object]:
    """Return the facts of an act about this line."""
    return {
        "reminder": item.title,
        "batch": item.subject_name,
        "vessel": item.vessel.name if item.vessel else "",
    }


def _by_id(rows: ReadRows[V], ids: Iterable[int | None]) -> dict[int | None, V]:
    wanted_ids = {row_id for row_id in ids if row_id is not None}
    return {row.id: row for row in rows.where(id=wanted_ids)} if wanted_ids else {}


def _item(
    row: Reminder,
    batch: Batch | None,
    culture: Culture | None,
    bottling: Bottling | None,
    vessel: Vessel | None,
    now: datetime,
    zone: tzinfo,
) -> DueItem:
    subject = batch or culture or bottling
    title, body = reminder_words(
        row, subject.name if subject else "", vessel.name if vessel else "", now, zone
    )
    due_at = effective_due(row)
    return DueItem(
        reminder=row,
        batch=batch,
        culture=culture,
        bottling=bottling,
        vessel=vessel,
        title=title,
        body=body,
        due_at=due_at,
        is_due=due_at <= now,
        lateness=max(now - row.due_at, timedelta(0)) if due_at <= now else timedelta(0),
        when_text=lateness_words(row.due_at if due_at <= now else due_at, now, zone),
        step=step_of(row, now),
    )
