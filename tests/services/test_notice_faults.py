"""What desktops do to notices, over a real bus; the due list goes on being the record."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from brewdesk.services.notices.freedesktop import FreedesktopNotifier
from brewdesk.services.reminder_clock import ReminderClock
from culturecore.stages import ReminderState
from tests.helpers.bus import FakeDaemon, PrivateBus
from tests.helpers.fakes import FakeClock
from tests.helpers.watched_pantry import WatchedPantry

pytestmark = pytest.mark.bus


@pytest.fixture
def bus(tmp_path: Path) -> Iterator[PrivateBus]:
    private_bus = PrivateBus(tmp_path)
    private_bus.start()
    yield private_bus
    private_bus.stop()


@pytest.fixture
def start_daemon(bus: PrivateBus) -> Iterator[Callable[..., FakeDaemon]]:
    daemons: list[FakeDaemon] = []

    def start(**options) -> FakeDaemon:
        daemons.append(FakeDaemon(bus.address, **options).start())
        return daemons[-1]

    yield start
    for daemon in daemons:
        daemon.stop()


class Told:
    """A pantry whose notices go over a bus; `restart` makes another run of the program."""

    def __init__(self, path: Path, address: str) -> None:
        self.pantry = WatchedPantry(path, FakeClock(datetime(2026, 11, 25, 12, tzinfo=UTC)))
        self._address = address
        self._join()

    def _join(self) -> None:
        self.notifier = FreedesktopNotifier(self._address)
        self.watch = ReminderClock(
            self.pantry.door,
            self.pantry.reminders,
            self.notifier,
            chime=self.pantry._count_chime,
        )
        self.notifier.start()

    def restart(self) -> None:
        self.close_notices()
        self.pantry.reopen()
        self._join()

    def close_notices(self) -> None:
        self.watch.stop()
        self.notifier.close()

    def titles_listed(self) -> list[str]:
        return [item.title for item in self.pantry.reminders.listed() if item.is_due]


@pytest.fixture
def told(tmp_path, bus, qtbot) -> Iterator[Told]:
    made = Told(tmp_path / "pantry.brewdesk", bus.address)
    yield made
    made.close_notices()
    made.pantry.close()


def test_without_a_service_the_list_and_the_chime_go_on(told):
    told.pantry.own("Wash the cloths", seconds=0)
    told.watch.evaluate()
    assert not told.notifier.is_available()
    assert told.titles_listed() == ["Wash the cloths"]
    assert told.pantry.chimes == 1


def test_a_service_that_closes_everything_by_itself_takes_nothing_off_the_list(
    told, start_daemon, qtbot
):
    daemon = start_daemon(capabilities=("body",))
    qtbot.waitUntil(told.notifier.is_available)
    told.pantry.own("Wash the cloths", seconds=0)
    told.watch.evaluate()
    qtbot.waitUntil(lambda: len(daemon.shown) == 1)
    qtbot.waitUntil(lambda: told.notifier._id_by_key != {})
    daemon.dismiss(daemon.shown[0].id)
    qtbot.waitUntil(lambda: told.notifier._id_by_key == {})
    told.pantry.clock.advance(days=2)
    told.watch.evaluate()
    assert told.titles_listed() == ["Wash the cloths"]
    assert len(daemon.shown) == 1


def test_a_notice_of_an_earlier_run_does_nothing_when_it_is_pressed(told, start_daemon, qtbot):
    daemon = start_daemon(first_id=30)
    qtbot.waitUntil(told.notifier.is_available)
    told.pantry.own("Wash the cloths", seconds=0)
    told.watch.evaluate()
    qtbot.waitUntil(lambda: told.notifier._id_by_key != {})
    told.restart()
    qtbot.waitUntil(told.notifier.is_available)
    daemon.press(30, "done")
    told.pantry.own("Order tea", seconds=0)
    told.watch.evaluate()
    qtbot.waitUntil(lambda: told.notifier._id_by_key != {})
    daemon.press(31, "done")
    qtbot.waitUntil(lambda: told.titles_listed() == ["Wash the cloths"])


def test_a_button_pressed_after_it_was_ticked_off_in_the_window_is_no_second_act(
    told, start_daemon, qtbot
):
    daemon = start_daemon()
    qtbot.waitUntil(told.notifier.is_available)
    own = told.pantry.own("Wash the cloths", seconds=0)
    told.watch.evaluate()
    qtbot.waitUntil(lambda: told.notifier._id_by_key != {})
    told.pantry.reminders.done(own.id)
    act = told.pantry.history.undo_act()
    with qtbot.waitSignal(told.watch.open_asked):
        daemon.press(daemon.shown[0].id, "snooze")
    assert told.pantry.history.undo_act() == act


def test_only_a_danger_is_sent_as_critical(told, start_daemon, qtbot):
    """A desktop that is not to disturb lets critical ones through, and covers no film for less."""
    daemon = start_daemon()
    qtbot.waitUntil(told.notifier.is_available)
    pantry = told.pantry
    pantry.own("Wash the cloths", seconds=0)
    pantry.add_bottling("Ginger", danger_in=timedelta(hours=3))
    told.watch.evaluate()
    qtbot.waitUntil(lambda: len(told.notifier._id_by_key) == 2)
    pantry.clock.advance(hours=3)
    told.watch.evaluate()
    qtbot.waitUntil(lambda: len(daemon.shown) == 3)
    levels = [(shown.title[:5], shown.hints["urgency"][1]) for shown in daemon.shown]
    assert levels == [("Chill", 1), ("Wash ", 1), ("Chill", 2)]
    assert daemon.shown[2].replaces_id == daemon.shown[0].id, "one notice that grows louder"
    assert "snooze" not in daemon.shown[2].actions
    assert {item.reminder.state for item in pantry.reminders.listed() if item.is_due} == {
        ReminderState.SHOWN
    }


def test_a_danger_reaches_a_service_that_was_killed_and_came_back(told, start_daemon, qtbot):
    first = start_daemon()
    qtbot.waitUntil(told.notifier.is_available)
    told.pantry.add_bottling("Ginger", danger_in=timedelta(hours=2))
    told.watch.evaluate()
    qtbot.waitUntil(lambda: len(first.shown) == 1)
    first.stop()
    qtbot.waitUntil(lambda: not told.notifier.is_available())
    told.pantry.clock.advance(hours=2)
    told.watch.evaluate()
    second = start_daemon()
    qtbot.waitUntil(lambda: len(second.shown) == 1)
    assert second.shown[0].hints["urgency"] == ("y", 2)
    assert second.shown[0].replaces_id == 0
