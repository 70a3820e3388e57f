"""What goes onto a batch's report: read in one view of the pantry, so that it fits together."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from brewdesk.services.curveview import CurveView
from brewdesk.services.door import Door
from brewdesk.services.safetylog import SafePhStory, SafetyEntry, entries_of_batch, safe_ph_story
from brewdesk.store.records import Batch, Reading, Step


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchFacts:
    """All facts of one batch's report."""

    batch: Batch
    vessel_name: str
    culture_name: str
    readings: tuple[Reading, ...]
    steps: tuple[Step, ...]
    safety: tuple[SafetyEntry, ...]
    safe_ph: SafePhStory
    view: CurveView | None
    now: datetime


def batch_facts(door: Door, batch_id: int, view: CurveView | None) -> BatchFacts:
    """Read the facts of a batch; ``view`` is its curve as it is known.

    Raises
    ------
    NoSuchRow
        If there is no batch with this id.
    """
    now = door.clock.now()
    with door.store.read() as unit:
        batch = unit.batches.get(batch_id)
        readings = unit.readings.where(batch_id=batch_id, order_by="at")
        culture = None if batch.culture_id is None else unit.cultures.get(batch.culture_id)
        return BatchFacts(
            batch=batch,
            vessel_name=unit.vessels.get(batch.vessel_id).name,
            culture_name="" if culture is None else culture.name,
            readings=readings,
            steps=unit.steps.where(batch_id=batch_id, order_by="position"),
            safety=tuple(entries_of_batch(unit, batch)),
            safe_ph=safe_ph_story(batch, readings, now),
            view=view,
            now=now,
        )
