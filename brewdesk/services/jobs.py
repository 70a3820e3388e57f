"""Work off the window's thread: results come back on it, newest request only."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from contextlib import suppress
from enum import Enum
from functools import partial
from typing import TYPE_CHECKING, Any, Protocol, TypeVar

from PySide6.QtCore import QObject, QThreadPool, QTimer, Signal
from shiboken6 import isValid

if TYPE_CHECKING:
    from brewdesk.services.apart import Workers

T = TypeVar("T")

_FIGURES_THREADS = 1  # the calculations use numpy; a second thread only steals time from painting
# A second process costs memory: it is worth that only for a crowd.
_CROWD = 12
_MOST_PROCESSES = 2
_REST_AFTER_MS = 60_000


class Pool(Enum):
    """Where a job runs.

    ``STORE`` in strict order; ``FIGURES`` for calculation only; ``APART`` for calculation in
    another process, for which the work and its result must be picklable; ``PICTURES`` for
    reading and scaling photos, so that no forecast waits behind them.
    """

    STORE = "store"
    FIGURES = "figures"
    APART = "apart"
    PICTURES = "pictures"


def is_gone(call: Callable[..., object]) -> bool:
    """Whether a call is for a window that has been closed and deleted: nobody would hear it.

    Looked at are a method's object, and what a function holds of the place that made it.
    """
    while isinstance(call, partial):
        call = call.func
    holds = [getattr(call, "__self__", None)]
    for cell in getattr(call, "__closure__", None) or ():
        with suppress(ValueError):  # a name that has no value yet
            holds.append(cell.cell_contents)
    return any(isinstance(one, QObject) and not isValid(one) for one in holds)


class JobRunner(Protocol):
    """What services need of `Jobs`; the tests have one that works at once."""

    def run(
        self,
        work: Callable[[], T],
        done: Callable[[T], None],
        failed: Callable[[BaseException], None] | None = None,
        key: str | None = None,
        *,
        pool: Pool = Pool.FIGURES,
        is_urgent: bool = False,
    ) -> None:
        """Do ``work`` elsewhere and bring its result to ``done`` on this thread."""
        ...

    def shutdown(self) -> None:
        """Take no more work and wait for what is running."""
        ...


class Jobs(QObject):
    """The thread pools, processes for the heaviest work, and the way back to this thread.

    ``work`` is a plain function of frozen inputs. A new request with the same
    ``key`` makes older ones void: those not begun are skipped, a result that still
    comes is dropped. An urgent job is begun before all others of its pool. An exception
    goes to ``failed``; without one it is raised on the window's thread, where the fault
    window sees it.
    """

    _landed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pools = {pool: QThreadPool(self) for pool in Pool}
        self._pools[Pool.STORE].setMaxThreadCount(1)
        self._pools[Pool.FIGURES].setMaxThreadCount(_FIGURES_THREADS)
        self._pools[Pool.APART].setMaxThreadCount(1)
        self._workers: Workers | None = None  # until something is to be done apart
        self._apart_count = 0
        self._pools[Pool.PICTURES].setMaxThreadCount(1)  # a large photo takes much memory
        self._newest: dict[str, int] = {}
        self._count = 0
        self._open = True
        self._rest = QTimer(self)
        self._rest.setObjectName("jobs_rest")
        self._rest.setSingleShot(True)
        self._rest.setInterval(_REST_AFTER_MS)
        self._rest.timeout.connect(self._on_rest)
        self._landed.connect(self._on_landed)

    def run(
        self,
        work: Callable[[], T],
        done: Callable[[T], None],
        failed: Callable[[BaseException], None] | None = None,
        key: str | None = None,
        *,
        pool: Pool = Pool.FIGURES,
        is_urgent: bool = False,
    ) -> None:
        """Do ``work`` in ``pool`` and bring its result to ``done`` on this thread."""
        if not self._open:
            return
        self._count += 1
        number = self._count
        if key is not None:
            self._newest[key] = number
        place = self._apart(work) if pool is Pool.APART else work

        def job() -> None:
            if not self._is_wanted(key, number):
                if pool is Pool.APART:
                    self._send(self._note_landed)
                return
            try:
                result: T = place()
            except Exception as error:  # handed on whole to the window's thread
                trouble = error
                self._send(lambda: self._fail(key, number, failed, trouble))
            else:
                self._send(lambda: self._finish(key, number, done, result))
            if pool is Pool.APART:
                self._send(self._note_landed)

        self._pools[pool].start(job, 1 if is_urgent else 0)

    def shutdown(self) -> None:
        """Take no more work, forget what has not begun, wait for what is running.

        What runs apart is not waited for: its process is ended.
        """
        self._open = False
        self._rest.stop()
        for pool in self._pools.values():
            pool.clear()
        if self._workers is not None:
            self._workers.close()
        for pool in self._pools.values():
            pool.waitForDone()

    def is_idle(self) -> bool:
        """Whether nothing is running or waiting."""
        return all(pool.activeThreadCount() == 0 for pool in self._pools.values())

    def process_ids(self) -> tuple[int, ...]:
        """Return the processes that now stand ready for figures."""
        return () if self._workers is None else self._workers.process_ids()

    def _apart(self, work: Callable[[], T]) -> Callable[[], T]:
        if self._workers is None:
            from brewdesk.services.apart import Workers

            self._workers = Workers()
        workers = self._workers
        self._apart_count += 1
        self._rest.stop()
        if self._apart_count > _CROWD:
            most = min(_MOST_PROCESSES, os.cpu_count() or 1)
            self._pools[Pool.APART].setMaxThreadCount(most)
        return lambda: workers.work_out(work)

    def _note_landed(self) -> None:
        self._apart_count -= 1
        if self._apart_count == 0:
            self._pools[Pool.APART].setMaxThreadCount(1)
            self._rest.start()

    def _on_rest(self) -> None:
        """Give the memory of processes back that have had nothing to do for a while."""
        if self._workers is not None:
            self._workers.rest()

    def _is_wanted(self, key: str | None, number: int) -> bool:
        return self._open and (key is None or self._newest.get(key) == number)

    def _send(self, landing: Callable[[], None]) -> None:
        try:
            self._landed.emit(landing)
        except RuntimeError:  # the window was closed meanwhile; nobody waits for this
            return

    def _finish(
        self, key: str | None, number: int, done: Callable[[Any], None], result: object
    ) -> None:
        if self._is_wanted(key, number):
            self._forget(key)
            if not is_gone(done):
                done(result)

    def _fail(
        self,
        key: str | None,
        number: int,
        failed: Callable[[BaseException], None] | None,
        error: BaseException,
    ) -> None:
        if not self._is_wanted(key, number):
            return
        self._forget(key)
        if failed is not None:
            if not is_gone(failed):
                failed(error)
        else:
            sys.excepthook(type(error), error, error.__traceback__)

    def _forget(self, key: str | None) -> None:
        if key is not None:
            self._newest.pop(key, None)

    def _on_landed(self, landing: Callable[[], None]) -> None:
        if self._open:
            landing()
