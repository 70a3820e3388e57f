"""A culture that is growing, and the batch it grows in: they come and go together."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services import suspicion
from brewdesk.store.records import Batch, Culture
from culturecore.stages import BatchPurpose, BatchStage, CultureState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

_LIVE_STAGES = tuple(stage for stage in BatchStage if stage.is_live)


def growing_batch(unit: ReadUnit, culture_id: int) -> Batch | None:
    """Return the live batch a culture grows in, or None."""
    rows = unit.batches.where(
        culture_id=culture_id, purpose=BatchPurpose.CULTURE, stage=_LIVE_STAGES
    )
    return rows[0] if rows else None


def settle(unit: UnitOfWork, batch: Batch, started_at: datetime) -> None:
    """Put the culture where it grows; it is born when the raw liquid went in."""
    culture = _culture_of(unit, batch)
    if culture is not None:
        unit.cultures.change(culture.id, vessel_id=batch.vessel_id, born_at=started_at)


def drop(unit: UnitOfWork, batch: Batch) -> None:
    """Take out the culture that was to grow in a plan which is given up.

    One that something else points at by now stays, as lost would be wrong: it never was.
    """
    culture = _culture_of(unit, batch)
    if culture is None or unit.culture_parents.where(parent_id=culture.id):
        return
    if unit.batches.where(culture_id=culture.id) or unit.photos.where(culture_id=culture.id):
        return
    for care in unit.care.where(culture_id=culture.id):
        unit.care.remove(care.id)
    for link in unit.culture_parents.where(culture_id=culture.id):
        unit.culture_parents.remove(link.id)
    unit.cultures.remove(culture.id)


def lose(unit: UnitOfWork, batch: Batch, reason: str, now: datetime) -> None:
    """Mark the culture as lost with the batch it was growing in."""
    culture = _culture_of(unit, batch)
    if culture is not None:
        unit.cultures.change(culture.id, **suspicion.lost_fields(reason, now))


def _culture_of(unit: ReadUnit | UnitOfWork, batch: Batch) -> Culture | None:
    if batch.purpose is not BatchPurpose.CULTURE or batch.culture_id is None:
        return None
    culture = unit.cultures.get(batch.culture_id)
    return culture if culture.state is CultureState.FORMING else None
