"""Bottlings looked up, and how an act on one is done."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import TYPE_CHECKING, TypeVar

from brewdesk.services.acts import ActKind
from brewdesk.services.batches import Batches
from brewdesk.services.bottlingparts import BottlingParts, parts_in
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.store.records import Bottling
from culturecore.blending import Liquid
from culturecore.errors import ImpossibleInput
from culturecore.fizzpace import Pace
from culturecore.stages import BottlingState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

T = TypeVar("T")

OPEN_STATES = (BottlingState.CONDITIONING, BottlingState.CHILLED)


class BottlingRows:
    """Look bottlings up.

    ``liquid_of`` tells what is known of a batch's liquid, ``pace_of`` how lively this
    pantry's earlier bottlings were.
    """

    def __init__(
        self,
        door: Door,
        batches: Batches,
        liquid_of: Callable[[int], Liquid],
        pace_of: Callable[[], Pace] = Pace,
    ) -> None:
        self._door = door
        self._batches = batches
        self._liquid_of = liquid_of
        self._pace_of = pace_of

    def all(self, states: tuple[BottlingState, ...] = OPEN_STATES) -> tuple[Bottling, ...]:
        """Return the bottlings in some states, the newest first."""
        with self._door.store.read() as unit:
            return unit.bottlings.where(state=states, order_by=("-filled_at", "-id"))

    def get(self, bottling_id: int) -> Bottling:
        """Return one bottling.

        Raises
        ------
        NoSuchRow
            If there is none with this id.
        """
        with self._door.store.read() as unit:
            return unit.bottlings.get(bottling_id)

    def parts_of(self, bottling_id: int) -> BottlingParts:
        """Return a bottling with its bottles, additions and checks. Raises as `get`."""
        with self._door.store.read() as unit:
            return parts_in(unit, bottling_id)

    def _moment(self, bottling: Bottling, at: datetime | None) -> datetime:
        now = self._door.clock.now()
        moment = now if at is None else at
        if moment > now:
            raise ImpossibleInput("at", moment, reason="in_future")
        if moment < bottling.filled_at:
            raise ImpossibleInput("at", moment, reason="before_filling")
        return moment

    def _open(self, bottling_id: int) -> Bottling:
        bottling = self.get(bottling_id)
        if bottling.state not in OPEN_STATES:
            raise ImpossibleInput("bottling_id", bottling_id, reason="ended")
        return bottling

    def _perform(
        self,
        kind: ActKind,
        bottling: Bottling,
        facts: dict[str, object],
        work: Callable[[UnitOfWork], T],
    ) -> T:
        return self._door.perform(
            kind, facts, work, topics=Topic.BOTTLINGS, batch_id=bottling.batch_id
        )
