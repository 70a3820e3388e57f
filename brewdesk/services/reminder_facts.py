"""What the reminders' rules must know of the batches' readings, kept until it changes."""

from __future__ import annotations

import threading
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from brewdesk.services.changes import Change, Topic
from brewdesk.services.reminder_rules import LookTaken, PhReading
from brewdesk.store.records import Batch
from culturecore.stages import BatchStage, Look, Quantity

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork


@dataclass(slots=True)
class ReadingsTaken:
    """The measured pH of one batch and the looks at it, oldest first."""

    ph: list[PhReading] = field(default_factory=list)
    looks: list[LookTaken] = field(default_factory=list)


class ReadingsBook:
    """The readings by which reminders go, read together and kept. May be asked in any thread."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._kept: dict[int, ReadingsTaken] = {}
        self._changes = 0

    def note(self, change: Change) -> None:
        """Forget what a change may have made untrue."""
        if not change.concerns(Topic.READINGS | Topic.BATCHES):
            return
        with self._lock:
            self._changes += 1
            for batch_id in tuple(self._kept):
                if change.concerns_batch(batch_id):
                    del self._kept[batch_id]

    def of(self, unit: ReadUnit | UnitOfWork, batches: Sequence[Batch]) -> dict[int, ReadingsTaken]:
        """Return the readings of those of the batches that sour; one query for all unknown."""
        ids = [batch.id for batch in batches if batch.stage is BatchStage.SOURING]
        with self._lock:
            changes = self._changes
            found = {one: self._kept[one] for one in ids if one in self._kept}
        missing = tuple(one for one in ids if one not in found)
        if not missing:
            return found
        read = {one: ReadingsTaken() for one in missing}
        for row in unit.readings.where(
            batch_id=missing, quantity=(Quantity.PH, Quantity.LOOK), order_by=("at", "id")
        ):
            taken = read[row.batch_id]
            if row.quantity is Quantity.LOOK:
                taken.looks.append(LookTaken(row.at, Look(row.text)))
            elif row.value is not None:
                taken.ph.append(PhReading(row.at, row.value, row.sd))
        with self._lock:
            if changes == self._changes:  # else something may have come between
                self._kept.update(read)
        return found | read
