"""Readings from a file into a batch: read off the window's thread, kept as one act."""

from __future__ import annotations

from collections.abc import Callable
from datetime import tzinfo
from pathlib import Path
from threading import Event
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.readings import Readings
from brewdesk.services.readingsfile import Choice, ReadingsRead, key_of, read_readings
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import Batch, Reading, ReadingDraft, RowDelta
from culturecore.errors import ImpossibleInput

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

_CODES = {"in_future": "time_ahead", "before_start": "before_start"}


class ReadingsImport(QObject):
    """One import at a time.

    ``was_read`` carries a `ReadingsRead`, ``was_kept`` how many readings were added;
    ``failed`` a `LoggerTrouble` or a `StoreTrouble`.
    """

    was_read = Signal(object)
    was_kept = Signal(int)
    failed = Signal(object)

    def __init__(
        self,
        door: Door,
        readings: Readings,
        jobs: JobRunner,
        parent: QObject | None = None,
        *,
        back_up: Callable[[], object] = lambda: None,
    ) -> None:
        super().__init__(parent)
        self._back_up = back_up  # before anything is kept; if it cannot, nothing is
        self._door = door
        self._readings = readings
        self._jobs = jobs
        self._stop = Event()

    def start(self, batch: Batch, path: Path, choice: Choice, zone: tzinfo) -> None:
        """Begin to read a file; an import that is under way is given up."""
        self._stop.set()
        stop = self._stop = Event()
        self._jobs.run(
            lambda: read_readings(
                path,
                choice,
                zone,
                batch_id=batch.id,
                known=frozenset(map(key_of, self._readings.of_batch(batch.id))),
                check=lambda draft: self._code_of(draft, batch),
                is_cancelled=stop.is_set,
            ),
            self.was_read.emit,
            self._on_failed,
            key="readings-file",
            pool=Pool.STORE,
        )

    def cancel(self) -> None:
        """Give up the import that is under way; ``failed`` says so with "cancelled"."""
        self._stop.set()

    def keep(self, batch: Batch, file_name: str, read: ReadingsRead) -> None:
        """Keep what was read, as one act that can be undone."""
        self._jobs.run(
            lambda: self.keep_now(batch, file_name, read),
            self._on_kept,
            self._on_failed,
            key="readings-file",
            pool=Pool.STORE,
        )

    def keep_now(
        self, batch: Batch, file_name: str, read: ReadingsRead
    ) -> tuple[tuple[Reading, ...], tuple[RowDelta, ...]]:
        """Keep what was read and tell nobody: `Door.tell` is for the window's thread.

        Raises
        ------
        StoreTrouble
            If it could not be kept; then none of it was.
        """

        def work(unit: UnitOfWork) -> tuple[Reading, ...]:
            there = set(map(key_of, unit.readings.where(batch_id=batch.id)))
            return tuple(
                unit.readings.add(self._readings.with_usual_sd(draft))
                for draft in read.drafts
                if key_of(draft) not in there
            )

        self._back_up()
        with self._door.store.read() as unit:
            vessel = unit.vessels.get(unit.batches.get(batch.id).vessel_id)
        return self._door.enter(
            ActKind.IMPORT_READINGS,
            lambda kept: {
                "batch": batch.name,
                "vessel": vessel.name,
                "file": file_name[:200],
                "count": len(kept),
            },
            work,
            batch_id=batch.id,
            vessel_id=vessel.id,
        )

    def _code_of(self, draft: ReadingDraft, batch: Batch) -> str:
        try:
            self._readings.check(draft, batch)
        except ImpossibleInput as problem:
            return _CODES.get(problem.reason, "value_absurd")
        return ""

    def _on_kept(self, kept: tuple[tuple[Reading, ...], tuple[RowDelta, ...]]) -> None:
        readings, deltas = kept
        if deltas:
            self._door.tell(deltas, Topic.READINGS)
        self.was_kept.emit(len(readings))

    def _on_failed(self, error: BaseException) -> None:
        if not isinstance(error, (LoggerTrouble, StoreTrouble)):
            raise error
        self.failed.emit(error)
