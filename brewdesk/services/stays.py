"""Which batches a vessel held, and from when to when."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit


@dataclass(frozen=True, slots=True)
class Stay:
    """A batch in a vessel, from its pouring in (None: from its beginning) to its pouring out."""

    batch_id: int
    since: datetime | None
    until: datetime | None

    def covers(self, moment: datetime) -> bool:
        """Whether the batch was in the vessel at this moment."""
        if self.since is not None and moment < self.since:
            return False
        return self.until is None or moment < self.until


def stays_in(unit: ReadUnit, vessel_id: int) -> tuple[Stay, ...]:
    """Return every stay of a batch in a vessel, by the pourings over that were noted."""
    moved_in = unit.vessel_moves.where(to_vessel_id=vessel_id)
    moved_out = unit.vessel_moves.where(from_vessel_id=vessel_id)
    batch_ids = {row.id for row in unit.batches.where(vessel_id=vessel_id)}
    batch_ids |= {row.batch_id for row in (*moved_in, *moved_out)}
    stays = []
    for batch_id in sorted(batch_ids):
        moves = unit.vessel_moves.where(batch_id=batch_id, order_by=("at", "id"))
        if not moves:
            stays.append(Stay(batch_id, None, None))
            continue
        ends = (*(move.at for move in moves), None)
        homes = (moves[0].from_vessel_id, *(move.to_vessel_id for move in moves))
        since: datetime | None = None
        for home, until in zip(homes, ends, strict=True):
            if home == vessel_id:
                stays.append(Stay(batch_id, since, until))
            since = until
    return tuple(stays)
