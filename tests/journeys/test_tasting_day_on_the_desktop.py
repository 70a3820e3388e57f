"""From an empty pantry to a notice on the desktop's own bus, answered there; then a restart."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from brewdesk.services.notices.freedesktop import FreedesktopNotifier
from brewdesk.services.records import ReminderKind, ReminderState
from tests.helpers.bus import FakeDaemon, PrivateBus
from tests.helpers.real_desktop import RealDesktop
from tests.journeys.person import Person
from tests.journeys.test_main_job import (
    is_tasting_due,
    only_batch,
    put_up_a_jar,
    tick_off_all_but_tasting,
)


@pytest.fixture
def bus(tmp_path: Path) -> Iterator[PrivateBus]:
    private_bus = PrivateBus(tmp_path)
    private_bus.start()
    yield private_bus
    private_bus.stop()


def begin_a_batch(pantry, bus: PrivateBus):
    """Empty window, a jar, a plan, and the batch entered as begun just now."""
    program = pantry.open(notifier=FreedesktopNotifier(bus.address))
    person = Person(program.window)
    put_up_a_jar(person)
    person.click("next_act")
    person.click("plan_it")
    menu = program.window.shelf.sheet.more_button.menu()
    person.choose_from_menu(menu, "It is already in the jar")
    person.type("already_temperature", "26")
    person.click("already_go")
    return program, person


def wait_for_the_tasting_day(pantry, program) -> None:
    batch = only_batch(program)
    while not is_tasting_due(program):
        tick_off_all_but_tasting(program)
        pantry.pass_time(hours=4)
        assert pantry.clock.now() - batch.started_at < timedelta(days=40)
    tick_off_all_but_tasting(program)


def tasting(program) -> ReminderState:
    with program.store.read() as unit:
        (row,) = unit.reminders.where(kind=ReminderKind.TASTE)
    return row.state


@pytest.mark.bus
def test_the_tasting_day_comes_over_the_bus_and_is_ticked_off_there(pantry, bus, qtbot):
    daemon = FakeDaemon(bus.address).start()
    try:
        program, _ = begin_a_batch(pantry, bus)
        wait_for_the_tasting_day(pantry, program)
        qtbot.waitUntil(lambda: any(n.title.startswith("Taste") for n in daemon.shown))
        (notice,) = [n for n in daemon.shown if n.title.startswith("Taste")]
        assert "Tall jar" in notice.title
        assert {"default", "done", "snooze"} <= set(notice.actions[::2])
        daemon.press(notice.id, "done")
        qtbot.waitUntil(lambda: tasting(program) is ReminderState.DONE)

        pantry.close()
        count = len(daemon.shown)
        program = pantry.open(notifier=FreedesktopNotifier(bus.address))
        pantry.pass_time(minutes=2)
        qtbot.waitUntil(program.notifier.is_available)
        assert len(daemon.shown) == count, "told again after a restart"
        assert tasting(program) is ReminderState.DONE
        (jar,) = program.desk.shelf.jars()
        assert jar.vessel.name == "Tall jar"
    finally:
        pantry.close()
        daemon.stop()


@pytest.mark.bus
def test_open_on_the_notice_brings_the_jar_forward(pantry, bus, qtbot):
    daemon = FakeDaemon(bus.address).start()
    try:
        program, _ = begin_a_batch(pantry, bus)
        program.window.show_page("settings")
        wait_for_the_tasting_day(pantry, program)
        qtbot.waitUntil(lambda: any(n.title.startswith("Taste") for n in daemon.shown))
        (notice,) = [n for n in daemon.shown if n.title.startswith("Taste")]
        daemon.press(notice.id, "default")  # a click on the notice itself
        qtbot.waitUntil(lambda: program.window.stack.currentWidget() is program.window.shelf)
        assert program.window.shelf.chosen().vessel.name == "Tall jar"
        assert tasting(program) is ReminderState.SHOWN, "looking is not doing"
    finally:
        pantry.close()
        daemon.stop()


@pytest.mark.bus
@pytest.mark.screen
def test_the_tasting_day_is_seen_on_a_real_desktop(pantry, bus, tmp_path, qtbot):
    desktop = RealDesktop(tmp_path, bus.address)
    try:
        desktop.start()
        program, _ = begin_a_batch(pantry, bus)
        qtbot.waitUntil(program.notifier.is_available)
        wait_for_the_tasting_day(pantry, program)
        # The notices that were ticked off on the way are withdrawn as their answers come in.
        qtbot.waitUntil(lambda: desktop.displayed_count() == 1)
        qtbot.waitUntil(lambda: desktop.pixels_of_notices() > 5_000)
        with qtbot.waitSignal(program.desk.reminder_clock.open_asked) as asked:
            desktop.do_default_action()
        assert asked.args == [only_batch(program).id]
        assert program.window.shelf.chosen().vessel.name == "Tall jar"
    finally:
        pantry.close()
        desktop.stop()
