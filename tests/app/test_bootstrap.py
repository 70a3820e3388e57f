"""What the program does by itself when a pantry is opened."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import QTimer

from brewdesk.bootstrap import Program
from brewdesk.services.jobs import Pool
from brewdesk.store.records import PlaceDraft
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs


@pytest.fixture
def clock():
    return FakeClock()


@pytest.fixture
def run(qapp, qtbot, tmp_path, clock):
    """Open the program, wait until it is running; closed at the end."""
    opened = []

    def start(*, is_demo=False):
        program = Program(
            qapp,
            tmp_path / "pantry.brewdesk",
            is_demo=is_demo,
            clock=clock,
            jobs=InlineJobs(),
            notifier=FakeNotifier(),
        )
        opened.append(program)
        program.start()
        qtbot.waitUntil(lambda: program.is_running)
        return program

    yield start
    for program in opened:
        program.leave()


def test_what_was_done_last_time_is_backed_up_although_the_program_is_never_open_for_long(
    run, clock
):
    first = run()
    first.desk.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=15.0))
    assert first.store.backups() == ()
    first.leave()
    clock.advance(hours=20)

    again = run()

    assert [info.made_at for info in again.store.backups()] == [clock.now()]


def test_a_pantry_of_the_makers_own_is_never_filled_with_invented_jars(run):
    run().leave()

    shown_as_example = run(is_demo=True)

    assert shown_as_example.desk.vessels.all() == ()
    assert not shown_as_example.store.info.is_demo


def test_an_example_pantry_is_filled(run):
    program = run(is_demo=True)
    assert program.store.info.is_demo
    assert len(program.desk.vessels.all()) >= 5


def test_nothing_ticks_after_leaving(run):
    program = run()
    program.leave()
    left = [
        timer.objectName()
        for owner in (program, program.desk.timers, program.desk.reminder_clock, program.window)
        for timer in owner.findChildren(QTimer)
        if timer.isActive()
    ]
    assert left == []


def test_the_minute_is_counted_only_while_the_window_can_be_seen(run):
    program = run()
    minute = program.window.findChild(QTimer, "minute")
    assert minute.isActive()
    program.window.hide()
    assert not minute.isActive()
    program.window.show()
    assert minute.isActive()


def test_a_backup_that_the_maker_wants_does_not_stand_before_the_figures(run, monkeypatch):
    program = run()
    pools = []
    monkeypatch.setattr(
        program.jobs, "run", lambda *work, key, pool=Pool.FIGURES: pools.append((key, pool))
    )
    program.window.back_up()
    assert pools == [("backup", Pool.STORE)]


def test_a_forecast_is_renewed_when_the_day_has_changed(run, clock):
    program = run()
    asked = []
    program.desk.forecasts.request_all_live = lambda: asked.append(clock.now())
    clock.advance(minutes=30)
    program._half_hour.timeout.emit()
    assert asked == [clock.now()]


def test_a_backup_from_a_clock_that_was_ahead_does_not_stand_in_for_todays(run, clock):
    program = run()
    program.desk.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=15.0))
    ahead = clock.now() + timedelta(days=400)
    program.store.backup("daily", now=ahead)

    made = program.desk.back_up_if_changed()

    assert made is not None
    assert {info.made_at for info in program.store.backups()} == {clock.now(), ahead}
