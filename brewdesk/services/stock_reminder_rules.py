"""What the due list says of supplies that run low: once for each time that one does.

Pure functions, as in ``reminder_rules``. Ticked off, it is not said again before something
was bought: who knows and waits for the next market day is not to be nagged.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, time, timedelta, tzinfo

from brewdesk.services.reminder_rules import USUAL_HOUR, Merge, wall_instant
from brewdesk.services.wording.stores import buy_title
from brewdesk.store.records import Reminder, ReminderDraft
from culturecore.stages import ReminderKind, ReminderState

PREFIX = "buy:"  # begins the occurrence of all of them; the maker's own have no colon
_OPEN = (ReminderState.WAITING, ReminderState.SHOWN, ReminderState.SNOOZED)


@dataclass(frozen=True, slots=True, kw_only=True)
class LowSupply:
    """A supply below its mark. ``lot_count`` tells one running low from the next."""

    supply_id: int
    name: str
    lot_count: int

    @property
    def occurrence(self) -> str:
        """Return the name of this running low."""
        return f"{PREFIX}{self.supply_id}:{self.lot_count}"


def is_of_stock(reminder: ReminderDraft) -> bool:
    """Whether a reminder is one of these, and not the maker's own."""
    return reminder.kind is ReminderKind.OWN and reminder.occurrence.startswith(PREFIX)


def supply_of(reminder: ReminderDraft) -> int | None:
    """Return the supply that a reminder asks to buy; None for any other."""
    if not is_of_stock(reminder):
        return None
    number = reminder.occurrence.removeprefix(PREFIX).partition(":")[0]
    return int(number) if number.isdecimal() else None


def merge_of_stock(
    kept: Iterable[Reminder],
    low: Iterable[LowSupply],
    *,
    now: datetime,
    zone: tzinfo,
    hour: time = USUAL_HOUR,
) -> Merge:
    """Compare what is kept about the stores with what runs low.

    It is due at the next of the maker's hours for reminders, not in the midst of brewing.

    One that was dropped, because there was enough again, comes back as it was when there is
    not: an undone purchase is no news.
    """
    due_at = wall_instant(now.astimezone(zone).date(), hour, zone)
    if due_at <= now:
        due_at = wall_instant(now.astimezone(zone).date() + timedelta(days=1), hour, zone)
    rows = {row.occurrence: row for row in kept if is_of_stock(row)}
    add: list[ReminderDraft] = []
    change: dict[int, dict[str, object]] = {}
    wanted = {one.occurrence: buy_title(one.name) for one in low}
    for occurrence, text in wanted.items():
        row = rows.get(occurrence)
        if row is None:
            add.append(
                ReminderDraft(
                    batch_id=None,
                    kind=ReminderKind.OWN,
                    occurrence=occurrence,
                    due_at=due_at,
                    text=text,
                )
            )
            continue
        changed: dict[str, object] = {}
        if row.text != text:
            changed |= {"text": text, "revision": row.revision + 1}
        if row.state is ReminderState.DROPPED:
            is_seen = row.shown_at is not None
            changed["state"] = ReminderState.SHOWN if is_seen else ReminderState.WAITING
        if changed:
            change[row.id] = changed
    for occurrence, row in rows.items():
        if occurrence not in wanted and row.state in _OPEN:
            change[row.id] = {"state": ReminderState.DROPPED}
    return Merge(tuple(add), change)
