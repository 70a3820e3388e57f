"""The batches that are forecast and those that teach, kept so that no change reads them all."""

from __future__ import annotations

from typing import TYPE_CHECKING

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.store.records import Batch
from culturecore.stages import BatchPurpose, BatchStage

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

FINISHED = (BatchStage.DRAWN_OFF, BatchStage.CLOSED)
_KEPT_STAGES = (*FINISHED, BatchStage.SOURING)


class BatchBook:
    """All souring and finished batches; of a change only the rows that it names are read."""

    def __init__(self, door: Door) -> None:
        self._door = door
        self._rows: dict[int, Batch] | None = None
        self._changed: set[int] = set()
        self._of_culture: dict[int, list[Batch]] | None = None
        self._finished: list[Batch] = []
        door.changes.changed.connect(self._on_changed)

    def get(self, unit: ReadUnit, batch_id: int) -> Batch:
        """Return one batch of any stage.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        found = self.find(unit, batch_id)
        return found if found is not None else unit.batches.get(batch_id)

    def find(self, unit: ReadUnit, batch_id: int) -> Batch | None:
        """Return a batch that sours or is finished; None if it does not, or is not there."""
        return self._caught_up(unit).get(batch_id)

    def souring(self, unit: ReadUnit | None = None) -> tuple[Batch, ...]:
        """Return the batches that sour."""
        if unit is None:
            if self._rows is None or self._changed:
                with self._door.store.read() as own:
                    return self.souring(own)
            rows = self._rows
        else:
            rows = self._caught_up(unit)
        return tuple(row for row in rows.values() if row.stage is BatchStage.SOURING)

    def of_culture(self, unit: ReadUnit, culture_id: int) -> list[Batch]:
        """Return the batches with a culture that teach of it, the newest first."""
        self._sort(unit)
        assert self._of_culture is not None  # just sorted
        return self._of_culture.get(culture_id, [])

    def finished(self, unit: ReadUnit) -> list[Batch]:
        """Return the finished batches that teach, the newest first."""
        self._sort(unit)
        return self._finished

    def _caught_up(self, unit: ReadUnit) -> dict[int, Batch]:
        if self._rows is None:
            self._rows = {row.id: row for row in unit.batches.where(stage=_KEPT_STAGES)}
        elif self._changed:
            for batch_id in self._changed:
                self._rows.pop(batch_id, None)
            found = unit.batches.where(id=tuple(self._changed), stage=_KEPT_STAGES)
            self._rows.update({row.id: row for row in found})
        self._changed.clear()
        return self._rows

    def _sort(self, unit: ReadUnit) -> None:
        rows = self._caught_up(unit)
        if self._of_culture is not None:
            return
        # A batch that grew a culture from a bottle tells nothing of how cultures work.
        begun = [
            (row.started_at, row.id, row)
            for row in rows.values()
            if row.started_at is not None and row.purpose is BatchPurpose.DRINK
        ]
        self._of_culture, self._finished = {}, []
        for _, _, row in sorted(begun, key=lambda entry: entry[:2], reverse=True):
            if row.stage in FINISHED:
                self._finished.append(row)
            if row.culture_id is not None:
                self._of_culture.setdefault(row.culture_id, []).append(row)

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(Topic.BATCHES):
            return
        self._of_culture = None
        if change.batch_ids:
            self._changed |= change.batch_ids
        else:
            self._rows = None
