"""What has been done to a batch, line by line, from its acts."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from brewdesk.services.door import Door
from brewdesk.services.quantities import Quantities
from brewdesk.services.wording.acts import act_text


@dataclass(frozen=True, slots=True)
class JournalLine:
    """One act as the journal shows it; ``kind`` is the `ActKind` value."""

    at: datetime
    text: str
    kind: str
    act_id: int


class Journal:
    """Read the acts of a batch. What was undone is not in it."""

    def __init__(self, door: Door, quantities: Quantities) -> None:
        self._door = door
        self._quantities = quantities

    def of_batch(self, batch_id: int) -> tuple[JournalLine, ...]:
        """Return the journal of a batch, newest line first."""
        with self._door.store.read() as unit:
            acts = unit.acts.for_batch(batch_id)
        return tuple(
            JournalLine(act.at, act_text(act, self._quantities.show), act.kind, act.id)
            for act in acts
        )
