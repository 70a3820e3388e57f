"""Reads what a batch's figures need from the store: its vessel, readings, transfers, stays."""

from __future__ import annotations

from typing import TYPE_CHECKING

from brewdesk.services.jarcourse import READ, JarCourse, Stay
from brewdesk.services.ledger import transfers_of
from brewdesk.store.records import Batch

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit


def read_course(unit: ReadUnit, batch: Batch) -> JarCourse:
    """Return a batch with all that its forecast depends on."""
    return JarCourse(
        batch,
        unit.vessels.get(batch.vessel_id),
        unit.readings.where(batch_id=batch.id, quantity=READ, order_by=("at", "id")),
        transfers_of(unit, batch.id),
        _stays(unit, batch),
    )


def _stays(unit: ReadUnit, batch: Batch) -> tuple[Stay, ...]:
    """Return where a batch that was poured over stood, and how warm it usually is there."""
    moves = unit.vessel_moves.where(batch_id=batch.id, order_by=("at", "id"))
    if not moves:
        return ()
    vessel_ids = (moves[0].from_vessel_id, *(move.to_vessel_id for move in moves))
    begins = (batch.started_at or batch.planned_at, *(move.at for move in moves))
    return tuple(
        Stay(begin, unit.places.get(unit.vessels.get(vessel_id).place_id).temperature_c)
        for begin, vessel_id in zip(begins, vessel_ids, strict=True)
    )
