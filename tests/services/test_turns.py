"""Work that can wait is done a little at a time, in a fair order, and none of it is lost."""

from __future__ import annotations

import itertools

import pytest
from PySide6.QtCore import QTimer

from brewdesk.services.turns import Turns
from tests.helpers.fakes import FakeClock


class StepClock(FakeClock):
    """A clock on which a step takes as long as is said."""

    step_s = 0.002

    def take(self):
        self.advance(seconds=self.step_s)


@pytest.fixture
def clock():
    return StepClock()


@pytest.fixture
def turns(qapp, clock):
    made = Turns(clock)
    yield made
    made.stop()


def steps(log, clock, name, count):
    for number in range(count):
        clock.take()
        log.append(f"{name}{number}")
        yield


def rounds(log, qtbot, done):
    """Wait until it is done; return how much was done whenever the window had a moment."""
    seen = [len(log)]
    timer = QTimer()
    timer.timeout.connect(lambda: seen.append(len(log)))
    timer.start(0)
    qtbot.waitUntil(done)
    timer.stop()
    seen.append(len(log))
    return seen


def test_nothing_is_done_before_the_window_has_had_its_turn(turns, clock, qtbot):
    log = []
    turns.begin("a", steps(log, clock, "a", 2))
    assert log == []
    qtbot.waitUntil(lambda: log == ["a0", "a1"])
    qtbot.waitUntil(lambda: not turns.has("a"))


def test_however_much_there_is_the_window_comes_in_between(turns, clock, qtbot):
    log = []
    for name in "abc":
        turns.begin(name, steps(log, clock, name, 20))
    seen = rounds(log, qtbot, lambda: len(log) == 60)
    most = max(after - before for before, after in itertools.pairwise(seen))
    assert most <= 2  # three milliseconds of steps, all works together


def test_works_take_turns_step_by_step(turns, clock, qtbot):
    log = []
    for name in "ab":
        turns.begin(name, steps(log, clock, name, 3))
    qtbot.waitUntil(lambda: len(log) == 6)
    assert log == ["a0", "b0", "a1", "b1", "a2", "b2"]


def test_a_work_begun_anew_takes_the_place_of_the_older_one(turns, clock, qtbot):
    log = []
    turns.begin("a", steps(log, clock, "old", 50))
    qtbot.waitUntil(lambda: bool(log))
    turns.begin("a", steps(log, clock, "new", 2))
    had = len(log)
    qtbot.waitUntil(lambda: not turns.has("a"))
    assert log[had:] == ["new0", "new1"]


def test_a_work_may_begin_itself_anew(turns, clock, qtbot):
    log = []

    def once():
        log.append("first")
        turns.begin("a", steps(log, clock, "second", 1))
        yield

    turns.begin("a", once())
    qtbot.waitUntil(lambda: not turns.has("a"))
    assert log == ["first", "second0"]


def test_what_is_hurried_is_done_first(turns, clock, qtbot):
    log = []
    turns.begin("slow", steps(log, clock, "slow", 5))
    turns.begin("quick", steps(log, clock, "quick", 5), is_hurried=True)
    qtbot.waitUntil(lambda: len(log) == 10)
    assert log[:5] == [f"quick{number}" for number in range(5)]


def test_what_was_given_up_is_not_done(turns, clock, qtbot):
    log = []
    turns.begin("a", steps(log, clock, "a", 50))
    turns.begin("b", steps(log, clock, "b", 8))
    qtbot.waitUntil(lambda: "a0" in log)
    turns.give_up("a")
    had = [line for line in log if line.startswith("a")]
    qtbot.waitUntil(lambda: not turns.has("b"))
    assert [line for line in log if line.startswith("a")] == had


def test_one_that_fails_does_not_keep_the_others(turns, clock, qtbot):
    log = []

    def failing():
        yield
        raise ValueError("a bug")

    turns.begin("bad", failing())
    turns.begin("good", steps(log, clock, "good", 20))
    with qtbot.captureExceptions() as caught:
        qtbot.waitUntil(lambda: not turns.has("good"))
    assert [kind for kind, _, _ in caught] == [ValueError]
    assert len(log) == 20
    assert not turns.has("bad")


def test_after_the_end_nothing_more_is_done(turns, clock, qtbot):
    log = []
    turns.begin("a", steps(log, clock, "a", 50))
    qtbot.waitUntil(lambda: bool(log))
    turns.stop()
    had = len(log)
    turns.begin("b", steps(log, clock, "b", 1))
    rounds(log, qtbot, lambda: not turns.has("a"))
    assert len(log) == had
