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


def drop(unit: UnitOfWork, batch: Batch, now: datetime) -> None:
    """Take out the culture that was to grow in a plan which is given up, with all that is its own.

    One that something else points at is retired: it must not wait for ever to grow.
    """
    culture = _culture_of(unit, batch)
    if culture is None:
        return
    if _is_pointed_at(unit, culture.id):
        unit.cultures.change(
            culture.id, state=CultureState.RETIRED, vessel_id=None, rest_volume_l=None, gone_at=now
        )
        return
    for photo in unit.photos.where(culture_id=culture.id):
        unit.photos.remove(photo.id)
    for care in unit.care.where(culture_id=culture.id):
        unit.care.remove(care.id)
    for link in unit.culture_parents.where(culture_id=culture.id):
        unit.culture_parents.remove(link.id)
    unit.cultures.remove(culture.id)


def _is_pointed_at(unit: UnitOfWork, culture_id: int) -> bool:
    return bool(
        unit.culture_parents.where(parent_id=culture_id)
        or unit.batches.where(culture_id=culture_id)
        or unit.batches.where(starter_culture_id=culture_id)
        or unit.transfers.where(from_culture_id=culture_id)
        or unit.transfers.where(to_culture_id=culture_id)
    )


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
