"""A full shelf is forecast anew while its window goes on as if nothing were the matter."""

from __future__ import annotations

import itertools
import os
import signal
import threading
from collections.abc import Callable
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt, QTimer

from brewdesk.bootstrap import Program
from brewdesk.services.changes import Topic
from brewdesk.services.forecasts import Forecasts
from brewdesk.services.jobs import Jobs, Pool
from brewdesk.services.reminders import Reminders
from brewdesk.store.records import ReadingDraft
from culturecore.stages import Method, Quantity
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs
from tests.helpers.watched_pantry import WatchedPantry

BATCHES = 36
LOOK_S = 0.002  # by which `LookedAtClock` goes on at each look
MOST_IN_A_TURN = 4  # two steps of two: at the second look the turn is over


class LookedAtClock(FakeClock):
    """A clock on which time passes by being looked at, once that is asked for."""

    is_going = False

    def monotonic(self) -> float:
        if self.is_going:
            self.advance(seconds=LOOK_S)
        return super().monotonic()


class NotedJobs(InlineJobs):
    """Holds what is to be done apart, and knows which of it was urgent."""

    def __init__(self) -> None:
        super().__init__()
        self.urgent: list[str | None] = []

    def run(self, work, done, failed=None, key=None, **how) -> None:
        if how.get("is_urgent"):
            self.urgent.append(key)
        self.hold = how.get("pool") is Pool.APART
        super().run(work, done, failed, key, **how)

    def forecasts(self) -> list[str]:
        return [key for key in self.keys if key is not None and key.startswith("forecast-")]


@pytest.fixture
def clock() -> LookedAtClock:
    return LookedAtClock()


@pytest.fixture
def open_shelf(qapp, qtbot, tmp_path, clock):
    """Open the program on a shelf of invented souring batches; it is left at the end."""
    opened = []

    def start(jobs, *, is_started=True) -> Program:
        path = tmp_path / "pantry.brewdesk"
        pantry = WatchedPantry(path, clock)
        for number in range(BATCHES):
            batch = pantry.add_batch(f"Batch {number}", days_ago=4)
            pantry.add_ph(batch, 3.6)
        pantry.close()
        program = Program(qapp, path, clock=clock, jobs=jobs, notifier=FakeNotifier())
        opened.append(program)
        if is_started:
            program.start()
            qtbot.waitUntil(lambda: program.is_running)
        return program

    yield start
    for program in opened:
        program.leave()


def in_between(program: Program, look: Callable[[], None]) -> QTimer:
    """Look whenever the window comes to its other events."""
    timer = QTimer(program)
    timer.timeout.connect(look)
    timer.start(0)
    return timer


def test_many_are_asked_for_a_few_at_a_time_and_keys_are_heard_meanwhile(open_shelf, clock, qtbot):
    jobs = NotedJobs()
    program = open_shelf(jobs)
    qtbot.waitUntil(lambda: len(set(jobs.forecasts())) == BATCHES)
    jobs.keys.clear()
    clock.advance(days=1)
    clock.is_going = True
    counts, rows, view = [], [], program.window.shelf.view
    view.setFocus()

    def look() -> None:
        counts.append(len(jobs.forecasts()))
        if counts[-1] and not rows:
            row = view.currentIndex().row()
            key = Qt.Key.Key_Right if row == 0 else Qt.Key.Key_Left
            qtbot.keyClick(view, key)
            rows.append((row, view.currentIndex().row(), counts[-1]))

    timer = in_between(program, look)
    program.desk.forecasts.request_all_live()
    qtbot.waitUntil(lambda: len(set(jobs.forecasts())) == BATCHES)
    timer.stop()
    clock.is_going = False
    ((before, after, asked),) = rows
    assert before != after
    assert asked < BATCHES
    steps = [now - then for then, now in itertools.pairwise(counts)]
    # One more for the jar that the key brought on show: it is asked for at once.
    assert max(steps) <= MOST_IN_A_TURN + 1
    assert len([step for step in steps if step]) >= BATCHES // (MOST_IN_A_TURN + 1)


def test_a_reading_taken_meanwhile_comes_before_the_others(open_shelf, clock, qtbot):
    jobs = NotedJobs()
    program = open_shelf(jobs)
    qtbot.waitUntil(lambda: len(set(jobs.forecasts())) == BATCHES)
    jobs.keys.clear()
    jobs.urgent.clear()
    clock.advance(days=1)
    program.desk.forecasts.request_all_live()
    chosen = program.window.shelf.chosen().batch
    reading = ReadingDraft(
        batch_id=chosen.id,
        at=clock.now() - timedelta(minutes=1),
        quantity=Quantity.PH,
        method=Method.METER,
        value=3.5,
        sd=0.05,
    )
    program.desk.readings.record((reading,))
    qtbot.waitUntil(lambda: len(set(jobs.forecasts())) == BATCHES)
    assert jobs.forecasts()[0] == f"forecast-{chosen.id}"
    assert set(jobs.urgent) - {"palate"} == {f"forecast-{chosen.id}"}


def test_a_jar_that_waits_is_hurried_once_it_is_looked_at(open_shelf, clock, qtbot):
    jobs = NotedJobs()
    program = open_shelf(jobs)
    clock.advance(days=1)
    program.desk.forecasts.request_all_live()
    qtbot.waitUntil(lambda: len(set(jobs.forecasts())) == BATCHES)
    jobs.keys.clear()
    jobs.urgent.clear()
    shelf = program.window.shelf
    other = next(
        jar for jar in program.desk.shelf.jars() if jar.batch.id != shelf.chosen().batch.id
    )
    shelf.choose_vessel(other.vessel.id)
    shelf.choose_vessel(other.vessel.id)
    assert jobs.urgent == jobs.forecasts() == [f"forecast-{other.batch.id}"]


def test_results_are_told_of_together_and_the_shelf_is_looked_at_seldom(open_shelf, clock, qtbot):
    program = open_shelf(Jobs())
    told, looks, ready = [], [], []
    qtbot.waitUntil(lambda: all_known(program), timeout=60_000)
    real = program.desk.shelf.jars
    object.__setattr__(program.desk.shelf, "jars", lambda: looks.append(1) or real())
    program.desk.forecasts.ready.connect(ready.append)
    program.desk.changes.changed.connect(told.append)
    clock.advance(days=1)
    with qtbot.waitSignal(
        program.desk.changes.changed,
        check_params_cb=lambda change: change.topics == Topic.FORECASTS,
        timeout=60_000,
    ):
        program.desk.forecasts.request_all_live()
    assert len(ready) == BATCHES
    announced = [change.batch_ids for change in told if change.concerns(Topic.FORECASTS)]
    assert announced == [frozenset(ready)]
    assert len(looks) < BATCHES / 4


def test_a_process_killed_in_the_middle_costs_no_forecast(open_shelf, clock, qtbot):
    jobs = Jobs()
    program = open_shelf(jobs)
    qtbot.waitUntil(lambda: all_known(program), timeout=60_000)
    ready, killed = [], []

    def on_ready(batch_id: int) -> None:
        ready.append(batch_id)
        if not killed:
            killed.extend(jobs.process_ids())
            for process_id in killed:
                os.kill(process_id, signal.SIGTERM)

    program.desk.forecasts.ready.connect(on_ready)
    clock.advance(days=1)
    program.desk.forecasts.request_all_live()
    qtbot.waitUntil(lambda: len(ready) == BATCHES, timeout=60_000)
    assert killed
    assert len(set(ready)) == BATCHES
    assert not set(killed) & set(jobs.process_ids())


def test_leaving_in_the_middle_leaves_no_process_and_no_thread(open_shelf, clock, qtbot):
    jobs = Jobs()
    program = open_shelf(jobs)
    qtbot.waitUntil(lambda: bool(jobs.process_ids()), timeout=60_000)
    program.leave()
    assert jobs.process_ids() == ()
    assert jobs.is_idle()


def test_the_reminders_of_a_full_shelf_are_written_off_the_windows_thread(
    open_shelf, clock, qtbot, monkeypatch
):
    threads = []
    real = Reminders.sync_apart

    def sync_apart(reminders, bottlings):
        threads.append(threading.get_ident())
        return real(reminders, bottlings)

    monkeypatch.setattr(Reminders, "sync_apart", sync_apart)
    program = open_shelf(Jobs())
    reminders = program.desk.reminders
    qtbot.waitUntil(
        # The meter, which is to be calibrated too, belongs to none.
        lambda: len({item.reminder.batch_id for item in reminders.listed()} - {None}) == BATCHES,
        timeout=60_000,
    )
    assert threads
    assert threading.get_ident() not in threads
    clock.advance(days=2)
    everything = reminders.listed()
    assert reminders.listed(most=3) == everything[:3]
    assert reminders.due_count() == sum(item.is_due for item in everything) > 0


def all_known(program: Program) -> bool:
    """Whether each batch on the shelf has its forecast."""
    return all(
        program.desk.forecasts.window_of(jar.batch.id) is not None
        for jar in program.desk.shelf.jars()
    )


def test_a_crowds_courses_are_read_off_the_windows_thread(open_shelf, clock, qtbot, monkeypatch):
    threads = []
    real = Forecasts._read

    def noted(forecasts, batches):
        threads.append(threading.get_ident())
        return real(forecasts, batches)

    monkeypatch.setattr(Forecasts, "_read", noted)
    program = open_shelf(Jobs())
    qtbot.waitUntil(lambda: all_known(program), timeout=60_000)
    assert threads
    assert threading.get_ident() not in threads


def test_what_changes_while_a_crowd_is_read_is_not_forecast_from_what_was(
    open_shelf, clock, qtbot, monkeypatch
):
    changed = []
    real = Forecasts._read

    def read_late(forecasts, batches):
        found = real(forecasts, batches)
        if not changed:
            batch = batches[-1]
            changed.append(batch.id)
            reading = ReadingDraft(
                batch_id=batch.id,
                at=clock.now() - timedelta(minutes=1),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.05,
                sd=0.05,
            )
            # In the moment between the reading and its being taken over.
            opened.desk.readings.record((reading,))
        return found

    monkeypatch.setattr(Forecasts, "_read", read_late)
    jobs = NotedJobs()
    opened = open_shelf(jobs, is_started=False)  # known to `read_late` before it begins
    opened.start()
    qtbot.waitUntil(lambda: opened.is_running)
    forecasts = opened.desk.forecasts
    qtbot.waitUntil(lambda: len(set(jobs.forecasts())) == BATCHES)
    (batch_id,) = changed
    asked = forecasts._asked[batch_id].course.readings
    assert {row.value for row in asked} == {3.6, 3.05}
