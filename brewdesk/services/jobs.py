"""Work off the window's thread: results come back on it, newest request only."""

from __future__ import annotations

import sys
from collections.abc import Callable
from enum import Enum
from typing import Any, Protocol, TypeVar

from PySide6.QtCore import QObject, QThreadPool, Signal

T = TypeVar("T")

_FIGURES_THREADS = 1  # the calculations use numpy; a second thread only steals time from painting


class Pool(Enum):
    """Where a job runs: ``STORE`` in strict order, ``FIGURES`` for calculation only.

    ``PICTURES`` is for reading and scaling photos, so that no forecast waits behind them.
    """

    STORE = "store"
    FIGURES = "figures"
    PICTURES = "pictures"


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
    ) -> None:
        """Do ``work`` elsewhere and bring its result to ``done`` on this thread."""
        ...

    def shutdown(self) -> None:
        """Take no more work and wait for what is running."""
        ...


class Jobs(QObject):
    """The thread pools, and the way back to the window's thread.

    ``work`` is a plain function of frozen inputs. A new request with the same
    ``key`` makes older ones void: those not begun are skipped, a result that still
    comes is dropped. An exception goes to ``failed``; without one it is raised on
    the window's thread, where the fault window sees it.
    """

    _landed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pools = {pool: QThreadPool(self) for pool in Pool}
        self._pools[Pool.STORE].setMaxThreadCount(1)
        self._pools[Pool.FIGURES].setMaxThreadCount(_FIGURES_THREADS)
        self._pools[Pool.PICTURES].setMaxThreadCount(1)  # a large photo takes much memory
        self._newest: dict[str, int] = {}
        self._count = 0
        self._open = True
        self._landed.connect(self._on_landed)

    def run(
        self,
        work: Callable[[], T],
        done: Callable[[T], None],
        failed: Callable[[BaseException], None] | None = None,
        key: str | None = None,
        *,
        pool: Pool = Pool.FIGURES,
    ) -> None:
        """Do ``work`` in ``pool`` and bring its result to ``done`` on this thread."""
        if not self._open:
            return
        self._count += 1
        number = self._count
        if key is not None:
            self._newest[key] = number

        def job() -> None:
            if not self._is_wanted(key, number):
                return
            try:
                result: T = work()
            except Exception as error:  # handed on whole to the window's thread
                trouble = error
                self._send(lambda: self._fail(key, number, failed, trouble))
            else:
                self._send(lambda: self._finish(key, number, done, result))

        self._pools[pool].start(job)

    def shutdown(self) -> None:
        """Take no more work, forget what has not begun, wait for what is running."""
        self._open = False
        for pool in self._pools.values():
            pool.clear()
        for pool in self._pools.values():
            pool.waitForDone()

    def is_idle(self) -> bool:
        """Whether nothing is running or waiting."""
        return all(pool.activeThreadCount() == 0 for pool in self._pools.values())

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
            failed(error)
        else:
            sys.excepthook(type(error), error, error.__traceback__)

    def _forget(self, key: str | None) -> None:
        if key is not None:
            self._newest.pop(key, None)

    def _on_landed(self, landing: Callable[[], None]) -> None:
        landing()
