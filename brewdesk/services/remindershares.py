"""At which desk a reminder is shown: here, at one of several, or at each."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from typing import TYPE_CHECKING, Protocol, cast

from brewdesk.services.door import Door
from brewdesk.services.dueitems import DueItem
from brewdesk.services.reminders import Reminders
from brewdesk.services.settings import REMINDERS_HERE, REMINDERS_ONCE, Settings
from brewdesk.store.columns import instant_text
from brewdesk.store.records import Reminder
from culturecore.stages import ReminderState

if TYPE_CHECKING:
    from brewdesk.services.desks import Desks
    from brewdesk.store.serverunits import ServerReadUnit, ServerUnit
    from brewdesk.store.unitofwork import UnitOfWork

# A desk that claimed a reminder and has not shown it by then has died [s].
LEASE_S = 30


class Shares(Protocol):
    """What the reminders' clock asks before it shows anything."""

    @property
    def is_keeper(self) -> bool:
        """Whether this desk brings the reminders in line with the brews."""
        ...

    def due(self, now: datetime) -> tuple[DueItem, ...]:
        """Return what is to be shown at this desk, if no other is faster."""
        ...

    def claim(self, items: Sequence[DueItem], now: datetime) -> tuple[DueItem, ...]:
        """Return those of ``items`` that this desk alone shows now."""
        ...

    def held(self, unit: UnitOfWork, items: Sequence[DueItem]) -> tuple[DueItem, ...]:
        """Return those that still are this desk's to show."""
        ...

    def note_shown(self, unit: UnitOfWork, reminder_ids: Iterable[int]) -> None:
        """Note, after they were marked as shown, that this desk has shown them."""
        ...


class OneDesk:
    """There is no other desk: everything is shown here."""

    is_keeper = True

    def __init__(self, reminders: Reminders) -> None:
        self._reminders = reminders

    def due(self, now: datetime) -> tuple[DueItem, ...]:
        """Return what is to be shown."""
        return self._reminders.to_be_shown(now)

    def claim(self, items: Sequence[DueItem], now: datetime) -> tuple[DueItem, ...]:
        """Return all of them."""
        return tuple(items)

    def held(self, unit: UnitOfWork, items: Sequence[DueItem]) -> tuple[DueItem, ...]:
        """Return all of them."""
        return tuple(items)

    def note_shown(self, unit: UnitOfWork, reminder_ids: Iterable[int]) -> None:
        """Note nothing: the rows say that they were shown."""


class SeveralDesks:
    """Several desks share a store.

    Either each reminder is shown at one of those desks that show any: whoever claims it first.
    A claim is committed before anything is shown and runs out by itself. Or each desk shows
    each reminder, and keeps a note of its own.
    """

    def __init__(self, door: Door, reminders: Reminders, settings: Settings, desks: Desks) -> None:
        self._door = door
        self._reminders = reminders
        self._settings = settings
        self._desks = desks

    @property
    def is_keeper(self) -> bool:
        """Whether this desk is the one that brings the reminders in line."""
        return self._desks.is_keeper

    def due(self, now: datetime) -> tuple[DueItem, ...]:
        """Return what is to be shown at this desk, if no other is faster."""
        if not self._settings.get(REMINDERS_HERE):
            return ()
        unshown = self._reminders.to_be_shown(now)
        if self._is_once:
            return unshown
        with self._door.store.read() as unit:
            told = cast("ServerReadUnit", unit).shares.told()
        known = {item.reminder.id for item in unshown}
        shown_elsewhere = tuple(
            item
            for item in self._reminders.listed(now)
            if item.reminder.id not in known and _is_news(item.reminder, told)
        )
        return (*unshown, *shown_elsewhere)

    def claim(self, items: Sequence[DueItem], now: datetime) -> tuple[DueItem, ...]:
        """Return those that no other desk has shown or is about to show."""
        if not items:
            return ()
        ids = tuple(item.reminder.id for item in items)
        # By the rows as they are now: what is kept here of them may be out of date.
        if self._is_once:
            with self._door.store.write() as work:
                still = self._reminders.still_to_be_shown(work, ids, now)
                mine = cast("ServerUnit", work).shares.claim(still, lease_s=LEASE_S)
        else:
            with self._door.store.read() as unit:
                told = cast("ServerReadUnit", unit).shares.told()
                rows = unit.reminders.where(id=ids)
                waiting = self._reminders.still_to_be_shown(unit, ids, now)
            mine = frozenset(waiting) | {row.id for row in rows if _is_news(row, told)}
        return tuple(item for item in items if item.reminder.id in mine)

    def held(self, unit: UnitOfWork, items: Sequence[DueItem]) -> tuple[DueItem, ...]:
        """Return those whose claim nobody took over meanwhile."""
        if not self._is_once:
            return tuple(items)
        shares = cast("ServerUnit", unit).shares
        held = shares.held([item.reminder.id for item in items])
        return tuple(item for item in items if item.reminder.id in held)

    def note_shown(self, unit: UnitOfWork, reminder_ids: Iterable[int]) -> None:
        """Give the claims up, and note what this desk has shown."""
        shares = cast("ServerUnit", unit).shares
        rows = unit.reminders.where(id=tuple(reminder_ids))
        shares.release([row.id for row in rows])
        shares.note_told(
            {row.id: instant_text(row.shown_at) for row in rows if row.shown_at is not None}
        )

    @property
    def _is_once(self) -> bool:
        return bool(self._settings.get(REMINDERS_ONCE))


def _is_news(row: Reminder, told: Mapping[int, str]) -> bool:
    """Whether another desk has shown it since this one did."""
    return (
        row.state is ReminderState.SHOWN
        and row.shown_at is not None
        and told.get(row.id) != instant_text(row.shown_at)
    )
