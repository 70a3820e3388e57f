"""A reminder on a real desktop's screen: shown, answered, withdrawn, service restarted."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from brewdesk.services.notices.freedesktop import FreedesktopNotifier
from brewdesk.services.notices.port import Notice, NoticeAction
from brewdesk.services.reminder_clock import ReminderClock
from tests.helpers.bus import PrivateBus
from tests.helpers.fakes import FakeClock
from tests.helpers.real_desktop import RealDesktop
from tests.helpers.watched_pantry import WatchedPantry

pytestmark = [pytest.mark.screen, pytest.mark.bus]

BUTTONS = ((NoticeAction.OPEN, "Open"), (NoticeAction.DONE, "Done"))


@pytest.fixture
def bus(tmp_path: Path) -> Iterator[PrivateBus]:
    private_bus = PrivateBus(tmp_path)
    private_bus.start()
    yield private_bus
    private_bus.stop()


@pytest.fixture
def desktop(tmp_path: Path, bus: PrivateBus) -> Iterator[RealDesktop]:
    made = RealDesktop(tmp_path, bus.address)
    try:
        made.start()
        yield made
    finally:
        made.stop()


@pytest.fixture
def notifier(bus: PrivateBus, desktop: RealDesktop, qtbot) -> Iterator[FreedesktopNotifier]:
    made = FreedesktopNotifier(bus.address)
    with qtbot.waitSignal(made.availability_changed):
        made.start()
    yield made
    made.close()


@pytest.fixture
def pantry(tmp_path: Path, qapp) -> Iterator[WatchedPantry]:
    noon = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(noon))
    yield made
    made.close()


def test_a_due_reminder_appears_on_the_screen_and_goes_when_it_is_done(
    desktop, notifier, pantry, qtbot
):
    watch = ReminderClock(pantry.door, pantry.reminders, notifier)
    own = pantry.own("Wash the <cloths> & jars", minutes=10)
    watch.evaluate()
    assert desktop.pixels_of_notices() == 0
    pantry.clock.advance(minutes=11)
    watch.evaluate()
    qtbot.waitUntil(lambda: desktop.displayed_count() == 1)
    qtbot.waitUntil(lambda: desktop.pixels_of_notices() > 5_000)
    pantry.reminders.done(own.id)
    watch.evaluate()
    qtbot.waitUntil(lambda: desktop.displayed_count() == 0)
    qtbot.waitUntil(lambda: desktop.pixels_of_notices() == 0)
    (entry,) = desktop.history()
    assert entry["appname"] == "Brewdesk"
    assert "You asked to be reminded of this." in str(entry["body"])
    assert entry["summary"] == "Wash the <cloths> & jars"
    watch.stop()


def test_a_click_on_the_notice_asks_to_open_the_batch(desktop, notifier, pantry, qtbot):
    watch = ReminderClock(pantry.door, pantry.reminders, notifier)
    batch = pantry.add_batch(days_ago=4)
    watch.evaluate()
    qtbot.waitUntil(lambda: desktop.displayed_count() == 1)
    with qtbot.waitSignal(watch.open_asked) as asked:
        desktop.do_default_action()
    assert asked.args == [batch.id]
    watch.stop()


def test_the_same_reminder_shown_again_stays_one_notice(desktop, notifier, qtbot):
    notifier.show(Notice("reminder-1", "Taste Amber", "It may be ready.", BUTTONS))
    qtbot.waitUntil(lambda: bool(notifier._id_by_key))
    notifier.show(Notice("reminder-1", "Taste Amber", "It is ready.", BUTTONS))
    notifier.show(Notice("reminder-2", "Look for mold", "", BUTTONS))
    qtbot.waitUntil(lambda: len(notifier._id_by_key) == 2)
    assert desktop.displayed_count() == 2


def test_a_restarted_service_shows_the_next_reminder(desktop, notifier, qtbot):
    with qtbot.waitSignal(notifier.availability_changed) as changed:
        desktop.stop_service()
    assert changed.args == [False]
    notifier.show(Notice("reminder-1", "Taste Amber", "It may be ready.", BUTTONS))
    with qtbot.waitSignal(notifier.availability_changed) as changed:
        desktop.start_service()
    assert changed.args == [True]
    qtbot.waitUntil(lambda: desktop.displayed_count() == 1)
