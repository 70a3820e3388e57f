"""Work in processes of their own, so that no figure ever takes a moment from painting.

Threads are not enough: Python lets one of them run at a time, and numpy holds on to that
right for most of a forecast.
"""

from __future__ import annotations

import os
import pickle
import subprocess
import sys
import threading
from collections.abc import Callable
from typing import TypeVar

from brewdesk.services.figureprocess import WORD

T = TypeVar("T")

_TRIES = 2


class WorkerLost(Exception):  # noqa: N818  # what happened, not who is at fault
    """The process went away before it answered."""


class Worker:
    """One process that answers questions, one at a time."""

    def __init__(self) -> None:
        self._process = subprocess.Popen(
            _command(),
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            env=_environment(),
            creationflags=_creation_flags(),
        )

    @property
    def process_id(self) -> int:
        """The number by which the system knows the process."""
        return self._process.pid

    def ask(self, question: bytes) -> tuple[bool, object]:
        """Wait for the answer to a pickled function: whether it went well, and what came of it.

        Raises
        ------
        WorkerLost
            If the process went away before it answered.
        """
        questions, answers = self._process.stdin, self._process.stdout
        assert questions is not None  # both were asked for
        assert answers is not None
        try:
            questions.write(question)
            questions.flush()
            went_well, result = pickle.load(answers)
        except (OSError, EOFError, pickle.UnpicklingError) as error:
            raise WorkerLost from error
        return went_well, result

    def kill(self) -> None:
        """End the process at once; whoever waits for its answer hears that it is lost."""
        self._process.kill()

    def end(self) -> None:
        """End the process and leave nothing of it behind. Nobody may be waiting for it."""
        self._process.kill()
        for pipe in (self._process.stdin, self._process.stdout):
            if pipe is not None:
                try:
                    pipe.close()
                except OSError:  # what was still to be written to it has nowhere to go
                    continue
        self._process.wait()


class Workers:
    """As many processes as there are threads that ask at the same time.

    Each is started when it is first needed. One that was killed is replaced; where none can
    be had, the asking thread does the work itself.
    """

    def __init__(self, start: Callable[[], Worker] = Worker) -> None:
        self._start = start
        self._lock = threading.Lock()
        self._idle: list[Worker] = []
        self._busy: set[Worker] = set()
        self._is_open = True

    def work_out(self, work: Callable[[], T]) -> T:
        """Do ``work`` in one of the processes: it and its result must be picklable.

        Raises
        ------
        WorkerLost
            If the processes were closed meanwhile.
        Exception
            Whatever ``work`` raised there.
        """
        question = pickle.dumps(work, pickle.HIGHEST_PROTOCOL)
        for _ in range(_TRIES):
            try:
                worker = self._take()
            except OSError:  # the system gives no process
                break
            try:
                went_well, result = worker.ask(question)
            except WorkerLost:
                self._drop(worker)
                continue
            self._give_back(worker)
            if not went_well:
                assert isinstance(result, BaseException)  # that is what the flag says
                raise result
            return result  # type: ignore[return-value]  # what ``work`` returned there
        if not self._is_open:
            raise WorkerLost
        return work()

    def process_ids(self) -> tuple[int, ...]:
        """Return the processes that there are now."""
        with self._lock:
            return tuple(worker.process_id for worker in (*self._idle, *self._busy))

    def rest(self) -> None:
        """End the processes that have nothing to do; they are started again when needed."""
        with self._lock:
            idle, self._idle = self._idle, []
        for worker in idle:
            worker.end()

    def close(self) -> None:
        """End all processes, also those that are at work."""
        with self._lock:
            self._is_open = False
            for worker in self._busy:
                worker.kill()
        self.rest()

    def _take(self) -> Worker:
        with self._lock:
            if not self._is_open:
                raise WorkerLost
            worker = self._idle.pop() if self._idle else self._start()
            self._busy.add(worker)
            return worker

    def _give_back(self, worker: Worker) -> None:
        with self._lock:
            self._busy.discard(worker)
            if self._is_open:
                self._idle.append(worker)
                return
        worker.end()

    def _drop(self, worker: Worker) -> None:
        with self._lock:
            self._busy.discard(worker)
        worker.end()


def _command() -> list[str]:
    if getattr(sys, "frozen", False):  # a packaged program has no interpreter beside it
        return [sys.executable, WORD]
    # -P: a file in the working folder must not pass for a module of the same name.
    return [sys.executable, "-P", "-m", "brewdesk.services.figureprocess"]


def _environment() -> dict[str, str]:
    return {
        **os.environ,
        # Found where this process found it, also from a checkout.
        "PYTHONPATH": os.pathsep.join(os.path.abspath(entry) for entry in sys.path),
        # One thread a process: there are as many processes as the machine has room for.
        "OPENBLAS_NUM_THREADS": "1",
        "OMP_NUM_THREADS": "1",
    }


def _creation_flags() -> int:
    if sys.platform == "win32":
        return subprocess.CREATE_NO_WINDOW | subprocess.BELOW_NORMAL_PRIORITY_CLASS
    return 0
