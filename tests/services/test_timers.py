"""The run sheet's alarms ring once, on time, through pauses, restarts, sleep and clock changes."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta

import pytest

from brewdesk.services.timers import LONGEST_WAIT_MS
from brewdesk.store.errors import StoreTrouble
from culturecore.stages import BatchStage, StepState
from tests.helpers.fakes import FakeClock
from tests.helpers.watched_pantry import WatchedPantry

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture
def pantry(tmp_path, qapp) -> Iterator[WatchedPantry]:
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(NOON))
    yield made
    made.close()


@pytest.fixture
def batch(pantry):
    return pantry.add_batch(stage=BatchStage.BREWING, started_at=None)


def look(pantry: WatchedPantry, times: int = 1, **span: float) -> None:
    for _ in range(times):
        pantry.clock.advance(**span)
        pantry.timers.evaluate()


def test_a_step_rings_once_at_its_end(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    look(pantry, minutes=9, seconds=59)
    assert pantry.rung == []
    look(pantry, 20, seconds=1)
    assert pantry.rung == [step]


def test_the_timer_waits_exactly_for_a_near_end_and_in_pieces_for_a_far_one(pantry, batch):
    pantry.timers.start()
    assert pantry.timers.wait_ms() is None
    step = pantry.run_step(batch, 1, hours=8)
    assert pantry.timers.wait_ms() == LONGEST_WAIT_MS
    look(pantry, hours=7, minutes=59, seconds=47.25)
    assert pantry.timers.wait_ms() == 12_750
    pantry.change_step(step, state=StepState.PAUSED, ends_at=None, remaining_s=12.75)
    assert pantry.timers.wait_ms() is None


def test_the_real_timer_rings(pantry, batch, qtbot):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, seconds=60)
    pantry.clock.advance(seconds=59.98)
    with qtbot.waitSignal(pantry.timers.alarm) as rung:
        pantry.timers.evaluate()
        assert pantry.timers.wait_ms() == 20
        pantry.clock.advance(seconds=0.02)
    assert rung.args == [step]
    assert pantry.timers.wait_ms() is None


def test_two_jars_ring_each_for_itself(pantry, batch):
    pantry.timers.start()
    other = pantry.add_batch("Birch", stage=BatchStage.BREWING, started_at=None)
    late = pantry.run_step(batch, 1, minutes=10)
    early = pantry.run_step(other, 1, minutes=4)
    look(pantry, 12, minutes=1)
    assert pantry.rung == [early, late]


def test_a_paused_step_is_silent_until_its_rest_has_run(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    look(pantry, minutes=8)
    pantry.change_step(step, state=StepState.PAUSED, ends_at=None, remaining_s=120.0)
    look(pantry, 10, minutes=5)
    assert pantry.rung == []
    ends_at = pantry.clock.now() + timedelta(seconds=120)
    pantry.change_step(step, state=StepState.RUNNING, ends_at=ends_at, remaining_s=None)
    look(pantry, seconds=119)
    assert pantry.rung == []
    look(pantry, seconds=1)
    assert pantry.rung == [step]


def test_a_step_given_more_time_rings_again(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    look(pantry, minutes=10)
    pantry.change_step(step, ends_at=pantry.clock.now() + timedelta(minutes=2))
    look(pantry, 4, minutes=1)
    assert pantry.rung == [step, step]


def test_taking_back_the_end_of_a_step_does_not_ring_for_it_again(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    ends_at = pantry.clock.now() + timedelta(minutes=10)
    look(pantry, minutes=11)
    pantry.change_step(step, state=StepState.DONE, ends_at=None, finished_at=pantry.clock.now())
    look(pantry, minutes=1)
    pantry.change_step(step, state=StepState.RUNNING, ends_at=ends_at, finished_at=None)
    look(pantry, 3, minutes=1)
    assert pantry.rung == [step]


def test_a_finished_step_does_not_ring(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    look(pantry, minutes=5)
    pantry.change_step(step, state=StepState.DONE, ends_at=None, finished_at=pantry.clock.now())
    look(pantry, 10, minutes=1)
    assert pantry.rung == []


def test_a_restart_in_the_middle_changes_nothing(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    pantry.clock.advance(minutes=6)
    pantry.reopen()
    pantry.timers.start()
    assert pantry.missed == []
    look(pantry, minutes=3, seconds=59)
    assert pantry.rung == []
    look(pantry, seconds=1)
    assert pantry.rung == [step]


def test_what_ended_while_closed_is_told_at_the_start_and_does_not_ring(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    pantry.close()
    pantry.clock.advance(hours=3)
    pantry._open()
    pantry.timers.start()
    look(pantry, 5, minutes=1)
    assert pantry.missed == [(step,)]
    assert pantry.rung == []


def test_time_asleep_counts(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    pantry.clock.jump(hours=8)
    pantry.timers.evaluate()
    look(pantry, 5, minutes=1)
    assert pantry.rung == [step]


def test_a_clock_put_back_does_not_hold_the_alarm(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    look(pantry, minutes=4)
    pantry.clock.jump(days=-2)
    look(pantry, minutes=5, seconds=59)
    assert pantry.rung == []
    look(pantry, 10, seconds=1)
    assert pantry.rung == [step]


def test_a_clock_put_back_after_the_ring_does_not_ring_twice(pantry, batch):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)
    look(pantry, minutes=10)
    pantry.clock.jump(hours=-1)
    look(pantry, 90, minutes=1)
    assert pantry.rung == [step]


def test_nothing_rings_before_the_watch_begins_or_after_it_ends(pantry, batch):
    pantry.run_step(batch, 1, minutes=10)
    look(pantry, minutes=11)
    assert pantry.rung == []
    pantry.timers.start()
    second = pantry.run_step(batch, 2, minutes=10)
    pantry.timers.stop()
    look(pantry, minutes=11)
    assert second not in pantry.rung


def test_a_store_that_cannot_be_read_is_tried_again_and_nothing_is_missed(
    pantry, batch, monkeypatch
):
    pantry.timers.start()
    step = pantry.run_step(batch, 1, minutes=10)

    def refuse():
        raise StoreTrouble("io_error")

    with monkeypatch.context() as broken:
        broken.setattr(pantry.store, "read", refuse)
        look(pantry, minutes=11)
        assert pantry.timers.wait_ms() == LONGEST_WAIT_MS
    assert pantry.rung == []
    pantry.timers.evaluate()
    assert pantry.rung == [step]


def test_a_step_that_ended_meanwhile_rings_although_the_store_could_not_be_read_at_the_start(
    pantry, batch, monkeypatch
):
    step = pantry.run_step(batch, 1, minutes=10)
    pantry.clock.advance(minutes=11)

    def refuse():
        raise StoreTrouble("io_error")

    with monkeypatch.context() as broken:
        broken.setattr(pantry.store, "read", refuse)
        pantry.timers.start()
        assert pantry.timers.wait_ms() == LONGEST_WAIT_MS
    pantry.timers.evaluate()
    assert pantry.rung == [step]
