"""Read a logger's file and keep it, off the window's thread, and say how far it is."""

from __future__ import annotations

from collections.abc import Callable
from datetime import tzinfo
from pathlib import Path
from threading import Event

from PySide6.QtCore import QObject, Signal

from brewdesk.services.clock import Clock
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.loggerfile import Layout
from brewdesk.services.loggerread import LoggerRead, read_log
from brewdesk.services.loggertrouble import LoggerTrouble
from brewdesk.services.placelog import PlaceLog
from brewdesk.store.errors import StoreTrouble
from culturecore.errors import ImpossibleInput

_STEP = 0.01  # progress is told in hundredths; more would only keep the window busy


class LogImport(QObject):
    """One import at a time.

    ``progressed`` carries the share read so far, 0 to 1; ``was_read`` a `LoggerRead`;
    ``was_kept`` the `TemperatureLog` entered; ``failed`` a `LoggerTrouble`, an
    `ImpossibleInput` or a `StoreTrouble`.
    """

    progressed = Signal(float)
    was_read = Signal(object)
    was_kept = Signal(object)
    failed = Signal(object)

    def __init__(
        self,
        place_log: PlaceLog,
        jobs: JobRunner,
        clock: Clock,
        parent: QObject | None = None,
        *,
        back_up: Callable[[], object] = lambda: None,
    ) -> None:
        super().__init__(parent)
        self._back_up = back_up  # before anything is kept; if it cannot, nothing is
        self._place_log = place_log
        self._jobs = jobs
        self._clock = clock
        self._stop = Event()

    def start(self, path: Path, layout: Layout, zone: tzinfo) -> None:
        """Begin to read a file; an import that is under way is given up."""
        self._stop.set()
        stop = self._stop = Event()
        now = self._clock.now()
        told = -1.0

        def progress(share: float) -> None:
            nonlocal told
            if share - told >= _STEP or share >= 1.0:
                told = share
                self.progressed.emit(share)

        self._jobs.run(
            lambda: read_log(
                path, layout, zone, now=now, progress=progress, is_cancelled=stop.is_set
            ),
            self.was_read.emit,
            self._on_failed,
            key="logger-file",
            pool=Pool.STORE,
        )

    def cancel(self) -> None:
        """Give up the import that is under way; ``failed`` says so with "cancelled"."""
        self._stop.set()

    def keep(self, place_id: int, name: str, read: LoggerRead) -> None:
        """Keep what was read: the samples elsewhere, then their entry as one act here."""
        self._jobs.run(
            lambda: self._keep_samples(read),
            lambda _done: self._enter(place_id, name, read),
            self._on_failed,
            key="logger-file",
            pool=Pool.STORE,
        )

    def _keep_samples(self, read: LoggerRead) -> None:
        self._back_up()
        self._place_log.keep_samples(read.packed)
        # What is drawn and forecast from, so that the window's thread does not have to.
        self._place_log.means.reckon(read.packed.content_hash, read.packed.chunks)

    def _enter(self, place_id: int, name: str, read: LoggerRead) -> None:
        try:
            entered = self._place_log.add_log(place_id, name, read.packed)
        except (ImpossibleInput, StoreTrouble) as trouble:
            self.failed.emit(trouble)
            return
        self.was_kept.emit(entered)

    def _on_failed(self, error: BaseException) -> None:
        if not isinstance(error, (LoggerTrouble, ImpossibleInput, StoreTrouble)):
            raise error
        self.failed.emit(error)
