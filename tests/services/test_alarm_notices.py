"""A step whose time is over reaches a maker who does not look at the window."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services.notices.port import NoticeAction
from brewdesk.services.records import Level, StepKind
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import brewing_batch, open_desk, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, FakeClock())
    yield made
    made.timers.stop()
    made.store.close()


def steep(desk, batch):
    step = next(s for s in desk.brewing.steps(batch.id) if s.kind is StepKind.STEEP)
    desk.brewing.begin(step.id)
    return step


def test_the_end_of_a_step_is_told_on_the_desktop_with_what_to_do(desk):
    batch = brewing_batch(desk)
    desk.timers.start()
    steep(desk, batch)
    desk.clock.advance(minutes=9)
    desk.timers.evaluate()
    assert desk.notifier.shown == []
    desk.clock.advance(minutes=2)
    desk.timers.evaluate()
    desk.timers.evaluate()
    (notice,) = desk.notifier.shown
    assert notice.title == "Time is up: lift the tea out."
    assert notice.body == "Black tea 1 in Tall jar"


def test_every_step_that_ended_while_closed_is_told(desk):
    first = brewing_batch(desk)
    second = brewing_batch(desk, "Green tea 1", "Small jar")
    for batch in (first, second):
        steep(desk, batch)
    desk.clock.advance(hours=1)
    desk.timers.start()
    assert {n.body for n in desk.notifier.shown} == {
        "Black tea 1 in Tall jar",
        "Green tea 1 in Small jar",
    }


def test_a_click_asks_for_the_batch_and_leaves_the_due_list_alone(desk, qtbot):
    batch = brewing_batch(desk)
    desk.timers.start()
    step = steep(desk, batch)
    desk.clock.advance(minutes=11)
    desk.timers.evaluate()
    asked: list[object] = []
    desk.reminder_clock.open_asked.connect(asked.append)
    with qtbot.waitSignal(desk.alarm_notices.open_asked) as opened:
        desk.notifier.answer(f"step-{step.id}", NoticeAction.OPEN)
    assert opened.args == [batch.id]
    assert asked == []


@pytest.mark.parametrize(("hours", "level"), [(1.0, None), (2.5, Level.WARN), (4.5, Level.STOP)])
def test_sweet_tea_that_stands_too_long_without_starter_is_pointed_out(desk, hours, level):
    """2 h and 4 h are the cooling rule and the time rule of the FDA Food Code (3-501)."""
    batch = brewing_batch(desk)
    for step in desk.brewing.steps(batch.id):
        if step.kind is StepKind.COOL:
            break
        desk.brewing.finish(step.id)
    desk.clock.advance(hours=hours)
    verdict = desk.brewing.standing_verdict(batch.id)
    assert (verdict.level if verdict else None) is level


def test_nothing_is_said_of_standing_once_the_starter_is_in(desk):
    batch = souring_batch(desk)
    desk.clock.advance(hours=20)
    assert desk.brewing.standing_verdict(batch.id) is None


def test_a_drink_is_judged_by_its_newest_ph_with_its_doubt(desk):
    from brewdesk.services.records import Method, Quantity, ReadingDraft

    batch = souring_batch(desk)
    assert desk.batches.drinkable_verdict(batch.id).code == "finished_ph_unknown"

    def read(ph: float, method: Method, sd: float) -> str:
        desk.clock.advance(hours=1)
        draft = ReadingDraft(
            batch_id=batch.id,
            at=desk.clock.now(),
            quantity=Quantity.PH,
            method=method,
            value=ph,
            sd=sd,
        )
        desk.readings.record((draft,))
        return desk.batches.drinkable_verdict(batch.id).code

    assert read(4.1, Method.STRIP, 0.3) == "finished_ph_high"
    assert read(4.1, Method.METER, 0.05) == "finished_ph_within"
    assert read(2.4, Method.METER, 0.05) == "finished_ph_over_acid"
    assert desk.clock.now() - desk.batches.get(batch.id).started_at > timedelta(hours=2)
