"""Exports, copies, imports off the window's thread: how far they are, stopped when asked to."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager
from pathlib import Path
from threading import Event

from PySide6.QtCore import QObject, Signal

from brewdesk.services.clock import Clock
from brewdesk.services.exporting import export_everything
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.importing import examine_export, import_export
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.wholecopy import copy_everything
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.openstore import OpenStore
from brewdesk.store.wholetables import StillCopy

_STEP = 0.01  # progress is told in hundredths; more would only keep the window busy


class CarryingOut(QObject):
    """One export, copy or import at a time.

    ``progressed`` carries the share done, 0 to 1; ``examined`` a `Manifest`; ``finished`` an
    `Exported`, a `Copied` or an `Imported`; ``failed`` an `ExportTrouble` or a `StoreTrouble`.
    """

    progressed = Signal(float)
    examined = Signal(object)
    finished = Signal(object)
    failed = Signal(object)

    def __init__(self, jobs: JobRunner, clock: Clock, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = jobs
        self._clock = clock
        self._stop = Event()

    def export(
        self,
        store_path: Path,
        target: Path,
        *,
        program: str,
        guide: str,
        copying: Callable[[Path], AbstractContextManager[StillCopy]] | None = None,
    ) -> None:
        """Begin to write everything into an archive."""
        stop, progress, now = self._begin(), self._progress(), self._clock.now()
        self._run(
            lambda: export_everything(
                store_path, target, now=now, program=program, guide=guide, progress=progress,
                is_cancelled=stop.is_set, copying=copying,
            ),
            self.finished.emit,
        )  # fmt: skip

    def copy(self, store: OpenStore, folder: Path) -> None:
        """Begin to copy the pantry with its photos into a new folder below ``folder``."""
        stop, progress, now = self._begin(), self._progress(), self._clock.now()
        self._run(
            lambda: copy_everything(
                store, folder, now=now, progress=progress, is_cancelled=stop.is_set
            ),
            self.finished.emit,
        )

    def examine(self, path: Path) -> None:
        """Begin to look at an archive."""
        self._begin()
        self._run(lambda: examine_export(path), self.examined.emit)

    def bring_in(self, path: Path, target: Path) -> None:
        """Begin to make a new pantry from an archive."""
        stop, progress, now = self._begin(), self._progress(), self._clock.now()
        self._run(
            lambda: import_export(
                path, target, now=now, progress=progress, is_cancelled=stop.is_set
            ),
            self.finished.emit,
        )

    def cancel(self) -> None:
        """Give up what is under way; ``failed`` says so with "cancelled"."""
        self._stop.set()

    def _begin(self) -> Event:
        self._stop.set()
        self._stop = Event()
        return self._stop

    def _progress(self) -> Callable[[float], None]:
        told = -1.0

        def progress(share: float) -> None:
            nonlocal told
            if share - told >= _STEP or share >= 1.0:
                told = share
                self.progressed.emit(share)

        return progress

    def _run(self, work: Callable[[], object], done: Callable[[object], None]) -> None:
        # Not the store's own thread: what takes minutes must not keep the day's backup waiting.
        self._jobs.run(work, done, self._on_failed, key=f"carrying-out-{id(self)}",
                       pool=Pool.PICTURES)  # fmt: skip

    def _on_failed(self, error: BaseException) -> None:
        if not isinstance(error, (ExportTrouble, StoreTrouble)):
            raise error
        self.failed.emit(error)
