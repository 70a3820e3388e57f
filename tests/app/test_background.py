"""Living on without the window: with a tray, without one, and when it goes away."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import QTimer

from brewdesk import app as program_of_app
from brewdesk.background import EXPLAINED_KEY
from brewdesk.bootstrap import Program
from brewdesk.services.autostart import Launch, SessionStart, XdgAutostart
from brewdesk.services.settings import CLOSE_TO_TRAY
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs
from tests.helpers.trays import DesktopWithTray


@pytest.fixture
def desktop():
    return DesktopWithTray(has_tray=True)


@pytest.fixture
def run(qapp, qtbot, tmp_path, desktop):
    opened = []

    def start(*, in_background=False, session_start=None):
        program = Program(
            qapp,
            tmp_path / "pantry.brewdesk",
            clock=FakeClock(),
            jobs=InlineJobs(),
            notifier=FakeNotifier(),
            tray=desktop.tray(),
            session_start=session_start,
        )
        opened.append(program)
        program.start(in_background=in_background)
        qtbot.waitUntil(lambda: program.is_running)
        return program

    yield start
    for program in opened:
        program.leave()


def explained(program):
    return [notice.body for notice in program.notifier.shown if notice.key == EXPLAINED_KEY]


def minute(program):
    program.background.findChild(QTimer, "tray_minute").timeout.emit()


def is_small(window):
    return window.isVisible() and window.isMinimized()


def test_closing_leaves_unless_the_maker_wants_otherwise(run, qtbot):
    program = run()
    with qtbot.waitSignal(program.left):
        program.window.close()


def test_with_a_tray_the_window_hides_and_it_is_explained_once(run):
    program = run()
    program.desk.settings.put(CLOSE_TO_TRAY, True)
    program.window.close()
    assert not program.window.isVisible()
    assert len(explained(program)) == 1
    assert "in the tray" in explained(program)[0]
    program.tray.show_wanted.emit()
    assert program.window.isVisible()
    # A desktop without a notice service has told nobody.
    assert "in the tray" in program.window.notice.words.text()
    program.window.close()
    assert not program.window.isVisible()
    assert len(explained(program)) == 1
    program.leave()

    again = run()
    again.window.close()
    assert explained(again) == []


def test_without_a_tray_the_window_gets_small_and_never_vanishes(run, desktop):
    desktop.has_tray = False
    program = run()
    program.desk.settings.put(CLOSE_TO_TRAY, True)
    program.window.close()
    assert is_small(program.window)
    assert len(explained(program)) == 1
    assert "no tray" in explained(program)[0]


def test_when_the_tray_goes_away_the_hidden_window_comes_back_small(run, desktop):
    program = run()
    program.desk.settings.put(CLOSE_TO_TRAY, True)
    program.window.close()
    minute(program)
    assert not program.window.isVisible()
    desktop.has_tray = False
    minute(program)
    assert is_small(program.window)


def test_a_tray_that_comes_later_is_used(run, desktop):
    desktop.has_tray = False
    program = run()
    assert not program.tray.is_up()
    desktop.has_tray = True
    minute(program)
    assert program.tray.is_up()


def test_in_the_background_with_a_tray_no_window_opens_and_reminders_come(run):
    program = run(in_background=True)
    assert not program.window.isVisible()
    assert program.tray.is_up()
    program.desk.reminders.add_own(None, program.clock.now() + timedelta(hours=1), "Buy tea")
    program.clock.advance(hours=2)
    program.desk.reminder_clock.evaluate()
    assert [notice.title for notice in program.notifier.shown] == ["Buy tea"]


def test_in_the_background_without_a_tray_the_window_is_small(run, desktop):
    desktop.has_tray = False
    program = run(in_background=True)
    assert is_small(program.window)


def test_a_start_as_usual_shows_the_window(run):
    program = run()
    assert program.window.isVisible()
    assert not program.window.isMinimized()


def test_the_tray_follows_the_due_list_and_the_time(run, qtbot):
    program = run()
    kept = program.desk.reminders.add_own(
        None, program.clock.now() + timedelta(minutes=90), "Buy tea"
    )
    qtbot.waitUntil(lambda: "Buy tea" in program.tray.item_actions()[0].text())
    assert program.tray.icon.toolTip() == "brewdesk: nothing is due"
    program.clock.advance(hours=2)
    minute(program)
    assert program.tray.item_actions()[0].text() == "Due: Buy tea"
    assert program.tray.icon.toolTip() == "brewdesk: 1 thing is due"
    program.desk.reminders.done(kept.id)
    qtbot.waitUntil(lambda: program.tray.icon.toolTip() == "brewdesk: nothing is due")


def test_an_entry_of_the_trays_menu_opens_what_it_is_about(run, qtbot):
    program = run(in_background=True)
    program.desk.reminders.add_own(None, program.clock.now() + timedelta(hours=1), "Buy tea")
    qtbot.waitUntil(lambda: "Buy tea" in program.tray.item_actions()[0].text())
    program.tray.item_actions()[0].trigger()
    assert program.window.isVisible()
    assert program.window.page_on_show() == "due"


def test_nothing_watches_after_leaving(run):
    program = run()
    program.leave()
    assert not any(timer.isActive() for timer in program.background.findChildren(QTimer))


def test_a_program_that_moved_renews_its_entry_when_it_is_opened(run, tmp_path):
    way = XdgAutostart(tmp_path / "autostart", "brewdesk")
    way.turn_on(Launch(("/old/place/brewdesk", "--in-background")))
    now = Launch(("/new/place/brewdesk", "--in-background"))
    run(session_start=SessionStart(way, now))
    assert way.starts(now)


# from the command line


class Taken:
    """The lock of a pantry that another program has open."""

    def __init__(self, _path):
        self.calls = 0

    def take(self):
        return False

    def call_first(self):
        raise AssertionError("the window was asked to come forward")


def test_a_quiet_start_beside_the_open_window_leaves_that_alone(qapp, tmp_path, monkeypatch):
    monkeypatch.setattr("brewdesk.instance.Instance", Taken)
    assert program_of_app.main(["--data-dir", str(tmp_path), "--in-background"]) == 0


def launch_for(*words):
    options = program_of_app.parse(list(words))
    folders = program_of_app.paths.folders(options.data_dir)
    made = program_of_app.session_start(options.store or folders.store, options)
    return None if made is None else made._launch.words


def test_the_session_opens_the_pantry_that_was_open(tmp_path):
    assert launch_for()[-1:] == ("--in-background",)
    assert "--store" not in launch_for()
    assert launch_for("--store", str(tmp_path / "p"))[-3:] == (
        "--store",
        str(tmp_path / "p"),
        "--in-background",
    )
    assert launch_for("--data-dir", str(tmp_path))[-3:-1] == ("--data-dir", str(tmp_path))


def test_the_invented_pantry_never_starts_by_itself():
    assert launch_for("--demo") is None


def test_what_it_would_be_started_with_is_understood():
    words = launch_for()
    assert program_of_app.parse(list(words[words.index("brewdesk") + 1 :])).in_background
