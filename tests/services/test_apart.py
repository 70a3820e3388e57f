"""Processes of their own for figures: replaced when killed, gone when the program is."""

from __future__ import annotations

import io
import os
import pickle
import signal
import subprocess
import sys
import threading
from collections.abc import Iterator
from functools import partial
from pathlib import Path

import pytest

from brewdesk.services.apart import Worker, WorkerLost, Workers
from brewdesk.services.figureprocess import serve
from brewdesk.services.jobs import Jobs, Pool
from culturecore.errors import ImpossibleInput
from culturecore.heat import boiling_point_c


@pytest.fixture
def workers() -> Iterator[Workers]:
    made = Workers()
    yield made
    made.close()
    assert made.process_ids() == ()


@pytest.fixture
def jobs(qapp) -> Iterator[Jobs]:
    made = Jobs()
    yield made
    made.shutdown()
    assert made.process_ids() == ()


class DeadOnArrival(Worker):
    """A process that is killed before it is asked anything."""

    def __init__(self) -> None:
        super().__init__()
        self.kill()


def test_work_is_done_in_another_process_that_is_kept_for_the_next(workers):
    assert workers.process_ids() == ()
    first, second = (workers.work_out(os.getpid) for _ in range(2))
    assert first == second != os.getpid()
    assert workers.process_ids() == (first,)


def test_what_it_works_out_is_what_would_be_worked_out_here(workers):
    assert workers.work_out(partial(boiling_point_c, 1500.0)) == boiling_point_c(1500.0)


def test_a_fault_there_is_raised_here_with_where_it_was(workers):
    with pytest.raises(ZeroDivisionError) as caught:
        workers.work_out(partial(divmod, 1, 0))
    assert "figureprocess.py" in caught.value.__notes__[0]
    assert workers.work_out(partial(divmod, 7, 2)) == (3, 1)


def test_a_fault_that_cannot_be_made_anew_from_its_words_is_told_in_words():
    def answer(work: object) -> tuple[bool, object]:
        answers = io.BytesIO()
        serve(io.BytesIO(pickle.dumps(work)), answers)
        return pickle.loads(answers.getvalue())

    went_well, error = answer(partial(boiling_point_c, 1e9))
    assert not went_well
    with pytest.raises(TypeError):
        pickle.loads(pickle.dumps(ImpossibleInput("altitude_m", 1e9)))
    assert isinstance(error, RuntimeError)
    assert "altitude_m" in str(error)


def test_a_killed_process_is_replaced(workers):
    first = workers.work_out(os.getpid)
    os.kill(first, signal.SIGTERM)
    second = workers.work_out(os.getpid)
    assert second not in (first, os.getpid())
    assert workers.process_ids() == (second,)


def test_a_process_killed_at_its_work_is_replaced_and_the_work_done_again(tmp_path, workers):
    """The first try ends its own process in the middle; the second finds that it was tried."""
    died = workers.work_out(partial(die_once, tmp_path / "tried"))
    assert died != os.getpid()
    assert int((tmp_path / "tried").read_text()) != died


def die_once(mark: Path) -> int:
    if not mark.exists():
        mark.write_text(str(os.getpid()))
        os.kill(os.getpid(), signal.SIGTERM)
        threading.Event().wait()
    return os.getpid()


def test_where_no_process_lasts_the_work_is_done_here():
    workers = Workers(DeadOnArrival)
    assert workers.work_out(os.getpid) == os.getpid()
    assert workers.process_ids() == ()


def test_where_there_is_no_process_to_be_had_the_work_is_done_here():
    def refuse() -> Worker:
        raise OSError("no more processes")

    assert Workers(refuse).work_out(os.getpid) == os.getpid()


def test_after_closing_nothing_is_worked_out(workers):
    workers.close()
    with pytest.raises(WorkerLost):
        workers.work_out(os.getpid)


def test_at_rest_there_is_no_process_and_the_next_work_starts_one(workers):
    first = workers.work_out(os.getpid)
    workers.rest()
    assert workers.process_ids() == ()
    assert workers.work_out(os.getpid) != first


def test_the_process_ends_with_the_program_even_if_that_is_killed():
    """Both write to one error stream: it ends when the last of them has."""
    script = (
        "import os; from brewdesk.services.apart import Workers; workers = Workers();"
        "print(workers.work_out(os.getpid), flush=True); input()"
    )
    program = subprocess.Popen(
        [sys.executable, "-c", script],
        env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    assert program.stdout is not None
    assert int(program.stdout.readline()) != program.pid
    program.kill()
    _, errors = program.communicate(timeout=60)
    assert errors == ""


def test_a_job_apart_lands_here(jobs, qtbot):
    landed = []
    jobs.run(
        os.getpid, lambda there: landed.append((there, threading.get_ident())), pool=Pool.APART
    )
    qtbot.waitUntil(lambda: len(landed) == 1, timeout=20_000)
    ((there, back),) = landed
    assert jobs.process_ids() == (there,)
    assert there != os.getpid()
    assert back == threading.get_ident()


def test_few_jobs_have_one_process_and_a_crowd_has_no_more_than_two(jobs, qtbot):
    landed = []
    for _ in range(3):
        jobs.run(os.getpid, landed.append, pool=Pool.APART)
    qtbot.waitUntil(lambda: len(landed) == 3, timeout=20_000)
    assert len(set(landed)) == 1
    for _ in range(60):
        jobs.run(partial(sum, range(20_000)), landed.append, pool=Pool.APART)
    qtbot.waitUntil(lambda: len(landed) == 63, timeout=20_000)
    assert 1 <= len(jobs.process_ids()) <= 2


def test_processes_that_had_nothing_to_do_for_a_while_are_given_back(jobs, qtbot):
    landed = []
    jobs.run(os.getpid, landed.append, pool=Pool.APART)
    qtbot.waitUntil(lambda: bool(landed) and jobs._rest.isActive(), timeout=20_000)
    jobs._rest.timeout.emit()
    assert jobs.process_ids() == ()


def test_the_shutdown_does_not_wait_for_what_runs_apart(qapp, qtbot, tmp_path):
    jobs, heard = Jobs(), []
    jobs.run(partial(begin_and_never_end, tmp_path / "begun"), heard.append, pool=Pool.APART)
    qtbot.waitUntil((tmp_path / "begun").exists, timeout=20_000)
    jobs.shutdown()
    assert jobs.is_idle()
    assert jobs.process_ids() == ()
    assert heard == []


def begin_and_never_end(mark: Path) -> None:
    mark.touch()
    threading.Event().wait()


def test_an_urgent_job_is_begun_before_those_that_wait(jobs, qtbot):
    gate, begun = threading.Event(), threading.Event()
    done: list[str] = []

    def hold() -> str:
        begun.set()
        gate.wait(5)
        return "first"

    jobs.run(hold, done.append)
    assert begun.wait(5)
    for name in ("second", "third"):
        jobs.run(partial(str, name), done.append)
    jobs.run(partial(str, "urgent"), done.append, is_urgent=True)
    gate.set()
    qtbot.waitUntil(lambda: len(done) == 4)
    assert done == ["first", "urgent", "second", "third"]
