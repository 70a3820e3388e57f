"""The one door for changes: unit of work, act row, commit, then word to everybody."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from contextlib import AbstractContextManager, nullcontext
from typing import TYPE_CHECKING, Protocol, TypeVar

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Changes, Topic
from brewdesk.services.clock import Clock
from brewdesk.store.openstore import OpenStore
from brewdesk.store.records import RowDelta
from brewdesk.store.touched import touched_by

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

T = TypeVar("T")
V = TypeVar("V")

_TOPIC_OF_TABLE = {
    "place": Topic.PLACES,
    "vessel": Topic.VESSELS,
    "culture": Topic.CULTURES,
    "culture_parent": Topic.CULTURES,
    "batch": Topic.BATCHES,
    "step": Topic.STEPS,
    "reading": Topic.READINGS,
    "reminder": Topic.REMINDERS,
    "vessel_move": Topic.BATCHES,
    "transfer": Topic.BATCHES | Topic.CULTURES,
    "care": Topic.CULTURES,
    "photo": Topic.PHOTOS,
    "place_temperature": Topic.PLACES,
    "temperature_log": Topic.PLACES,
    "bottling": Topic.BOTTLINGS,
    "bottle_group": Topic.BOTTLINGS,
    "addition": Topic.BOTTLINGS,
    "bottle_check": Topic.BOTTLINGS,
    "calibration": Topic.METERS,
    "supply": Topic.STORES,
    "supply_lot": Topic.STORES,
    "supply_draw": Topic.STORES,
    "batch_supply": Topic.STORES,
    "trial": Topic.TRIALS,
    "trial_arm": Topic.TRIALS,
    "trial_jar": Topic.TRIALS,
    "trial_score": Topic.TRIALS,
}


def topics_of(tables: Iterable[str]) -> Topic:
    """Return the topics that changed rows of these tables belong to."""
    topics = Topic.NOTHING
    for table in tables:
        topics |= _TOPIC_OF_TABLE[table]
    return topics


class Units(Protocol):
    """What the services need of a store."""

    def read(self) -> AbstractContextManager[ReadUnit]:
        """Open a unit to read."""
        ...

    def write(self) -> AbstractContextManager[UnitOfWork]:
        """Open a unit of work."""
        ...


class Door:
    """Every change goes through here, so that none lacks its act, and none goes unsaid."""

    def __init__(self, store: Units, clock: Clock, changes: Changes) -> None:
        self.store = store
        self.clock = clock
        self.changes = changes

    def perform(
        self,
        kind: ActKind,
        facts: Mapping[str, object] | Callable[[T], Mapping[str, object]],
        work: Callable[[UnitOfWork], T],
        *,
        topics: Topic,
        batch_id: int | Callable[[T], int | None] | None = None,
        vessel_id: int | Callable[[T], int | None] | None = None,
        culture_id: int | Callable[[T], int | None] | None = None,
    ) -> T:
        """Do ``work`` as one act of the maker: all of it or nothing, and undoable.

        ``facts`` (names and numbers, for the sentence about the act) and the ids may
        be functions of what ``work`` returned, since a new row has no id before it.
        What had been undone can no longer be redone afterwards. Work that leaves every
        row as it was is no act: there would be nothing to take back.

        Raises
        ------
        Exception
            Whatever ``work`` or the store raises; then nothing has changed.
        """
        result, deltas = self.enter(
            kind, facts, work, batch_id=batch_id, vessel_id=vessel_id, culture_id=culture_id
        )
        if deltas:
            self.tell(deltas, topics)
        return result

    def enter(
        self,
        kind: ActKind,
        facts: Mapping[str, object] | Callable[[T], Mapping[str, object]],
        work: Callable[[UnitOfWork], T],
        *,
        batch_id: int | Callable[[T], int | None] | None = None,
        vessel_id: int | Callable[[T], int | None] | None = None,
        culture_id: int | Callable[[T], int | None] | None = None,
    ) -> tuple[T, tuple[RowDelta, ...]]:
        """Do ``work`` as `perform` does, but say nothing: for long work off the window's thread.

        The caller then hands the row changes to `tell`, on the window's thread.

        Raises
        ------
        Exception
            As `perform`.
        """
        with self.store.write() as unit:
            result = work(unit)
            deltas = tuple(unit.deltas)
            if not deltas:
                return result, ()
            unit.acts.drop_undone()
            unit.acts.add(
                kind=kind.value,
                facts=dict(facts(result) if callable(facts) else facts),
                at=self.clock.now(),
                batch_id=_told(batch_id, result),
                vessel_id=_told(vessel_id, result),
                culture_id=_told(culture_id, result),
                deltas=deltas,
            )
        return result, deltas

    def quiet(
        self,
        work: Callable[[UnitOfWork], T],
        *,
        topics: Topic = Topic.NOTHING,
        batch_ids: Iterable[int] = (),
    ) -> T:
        """Do ``work`` for the program itself: committed and announced, but no act.

        Nothing is announced if no row changed.
        """
        with self.store.write() as unit:
            result = work(unit)
            deltas = tuple(unit.deltas)
        if deltas:
            self.tell(deltas, topics, batch_ids)
        return result

    def tell(
        self,
        deltas: Iterable[RowDelta],
        topics: Topic = Topic.NOTHING,
        batch_ids: Iterable[int] = (),
    ) -> None:
        """Announce committed ``deltas``, with further ``topics`` and ``batch_ids`` if given."""
        touched = touched_by(deltas)
        self.changes.announce(
            topics | topics_of(touched.tables),
            batch_ids=touched.batch_ids | set(batch_ids),
            vessel_ids=touched.vessel_ids,
        )

    def seen(self) -> int:
        """Return a mark of what the maker has been shown so far: a form takes it as it opens."""
        return self.store.seen() if isinstance(self.store, OpenStore) else 0

    def since(self, seen: int) -> AbstractContextManager[None]:
        """Within the block, refuse acts on what another desk changed after ``seen`` was taken.

        Elsewhere acts are refused only on what was changed so lately that no page shows it.
        """
        return self.store.since(seen) if isinstance(self.store, OpenStore) else nullcontext()


def _told(value: V | Callable[[T], V | None] | None, result: T) -> V | None:
    return value(result) if callable(value) else value
