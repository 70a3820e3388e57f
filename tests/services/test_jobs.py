"""Jobs run elsewhere, land here, and only the newest of a kind counts."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from functools import partial

import pytest
from PySide6.QtCore import QCoreApplication, QObject
from shiboken6 import delete

from brewdesk.services.jobs import Jobs, Pool


@pytest.fixture
def jobs(qapp) -> Iterator[Jobs]:
    made = Jobs()
    yield made
    made.shutdown()


def test_work_is_done_elsewhere_and_its_result_lands_here(jobs, qtbot):
    here = threading.get_ident()
    landed = []
    jobs.run(threading.get_ident, lambda there: landed.append((there, threading.get_ident())))
    qtbot.waitUntil(lambda: len(landed) == 1)
    there, back = landed[0]
    assert back == here
    assert there != here


def test_a_failure_lands_here_whole(jobs, qtbot):
    failures = []
    jobs.run(lambda: 1 // 0, failures.append, failures.append)
    qtbot.waitUntil(lambda: len(failures) == 1)
    assert isinstance(failures[0], ZeroDivisionError)
    assert failures[0].__traceback__ is not None


def test_a_failure_nobody_takes_reaches_the_fault_hook(jobs, qtbot):
    with qtbot.captureExceptions() as faults:
        jobs.run(lambda: 1 // 0, lambda result: None)
        qtbot.waitUntil(lambda: len(faults) == 1)
    assert faults[0][0] is ZeroDivisionError


def test_only_the_newest_of_a_key_is_heard_and_what_has_not_begun_is_skipped(jobs, qtbot):
    gate, begun = threading.Event(), threading.Event()
    done: list[str] = []
    ran: list[str] = []

    def work(name: str) -> str:
        ran.append(name)
        begun.set()
        gate.wait(5)
        return name

    jobs.run(lambda: work("old"), done.append, key="forecast-1")
    assert begun.wait(5)
    jobs.run(lambda: work("middle"), done.append, key="forecast-1")
    jobs.run(lambda: work("new"), done.append, key="forecast-1")
    jobs.run(lambda: work("other"), done.append, key="forecast-2")
    gate.set()
    qtbot.waitUntil(lambda: "other" in done)
    assert done == ["new", "other"]
    assert ran == ["old", "new", "other"]


def test_a_failure_that_is_out_of_date_is_not_heard(jobs, qtbot):
    gate, begun = threading.Event(), threading.Event()
    heard: list[object] = []

    def fail() -> None:
        begun.set()
        gate.wait(5)
        raise ValueError

    jobs.run(fail, heard.append, heard.append, key="k")
    assert begun.wait(5)
    jobs.run(lambda: "new", heard.append, heard.append, key="k")
    gate.set()
    qtbot.waitUntil(lambda: heard == ["new"])


def test_store_jobs_keep_their_order_and_do_not_wait_for_figures(jobs, qtbot):
    gate = threading.Event()
    done: list[int] = []
    jobs.run(lambda: gate.wait(5), lambda result: None, pool=Pool.FIGURES)
    for number in range(20):
        jobs.run(lambda number=number: number, done.append, pool=Pool.STORE)
    qtbot.waitUntil(lambda: len(done) == 20)
    gate.set()
    assert done == list(range(20))


def test_after_the_shutdown_nothing_runs_and_nothing_lands(jobs, qtbot):
    gate, begun = threading.Event(), threading.Event()
    heard: list[object] = []

    def work() -> str:
        begun.set()
        gate.wait(5)
        return "late"

    jobs.run(work, heard.append)
    jobs.run(lambda: "never begun", heard.append)
    assert begun.wait(5)
    gate.set()
    jobs.shutdown()
    assert jobs.is_idle()
    jobs.run(lambda: "after", heard.append)
    QCoreApplication.sendPostedEvents(jobs)
    assert heard == []


def test_what_comes_for_a_closed_window_is_dropped(jobs, qtbot):
    class Window(QObject):
        def __init__(self) -> None:
            super().__init__()
            self.heard: list[object] = []

        def hear(self, what: object) -> None:
            self.heard.append(self.objectName() or what)

    gone, here = Window(), Window()
    landed: list[object] = []
    jobs.run(lambda: 1, here.hear, pool=Pool.STORE)
    for done in (gone.hear, lambda what: gone.hear(what), partial(gone.hear)):
        jobs.run(lambda: 2, done, pool=Pool.STORE)
        jobs.run(lambda: 1 // 0, here.hear, done, pool=Pool.STORE)
    delete(gone)
    jobs.run(lambda: 3, landed.append, pool=Pool.STORE)
    with qtbot.captureExceptions() as faults:
        qtbot.waitUntil(lambda: bool(landed))

    assert faults == []
    assert here.heard == [1]
    assert gone.heard == []
