"""Batches looked up: what every act on a batch begins with."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from brewdesk.services.door import Door
from brewdesk.services.settings import Settings
from brewdesk.services.vessels import LIVE_STAGES
from brewdesk.store.records import Batch
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit


class BatchRows:
    """Look batches up."""

    def __init__(self, door: Door, settings: Settings) -> None:
        self._door = door
        self._settings = settings

    def get(self, batch_id: int) -> Batch:
        """Return one batch.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        with self._door.store.read() as unit:
            return unit.batches.get(batch_id)

    def all(self, *, stages: Iterable[BatchStage] = ()) -> tuple[Batch, ...]:
        """Return the batches, newest first; only those in ``stages`` if any are given."""
        wanted = tuple(stages)
        with self._door.store.read() as unit:
            if wanted:
                return unit.batches.where(order_by=("-planned_at", "-id"), stage=wanted)
            return unit.batches.where(order_by=("-planned_at", "-id"))

    def live_in(self, vessel_id: int) -> Batch | None:
        """Return the batch that occupies a vessel, or None."""
        with self._door.store.read() as unit:
            return live_in_vessel(unit, vessel_id)

    def _expect(self, batch_id: int, stage: BatchStage, *, reason: str) -> Batch:
        batch = self.get(batch_id)
        if batch.stage is not stage:
            raise ImpossibleInput("batch_id", batch_id, reason=reason)
        return batch


def live_in_vessel(unit: ReadUnit, vessel_id: int) -> Batch | None:
    """Return the batch that occupies a vessel, or None."""
    rows = unit.batches.where(vessel_id=vessel_id, stage=LIVE_STAGES)
    return rows[0] if rows else None
