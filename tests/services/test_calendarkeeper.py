"""A calendar file that follows the due list, and what is said when it cannot."""

from __future__ import annotations

import threading
from datetime import timedelta

import pytest
import vobject
from PySide6.QtCore import QTimer

from brewdesk.services import calendarkeeper
from brewdesk.services.calendarfile import write_calendar
from brewdesk.services.calendarkeeper import CalendarKeeper
from brewdesk.services.jobs import Jobs
from brewdesk.services.records import ImpossibleInput
from brewdesk.services.reminders import Reminders
from brewdesk.services.settings import CALENDAR_PATH
from tests.helpers.fakes import InlineJobs


@pytest.fixture
def reminders(kit):
    return Reminders(kit.door)


@pytest.fixture
def said():
    return []


@pytest.fixture
def keeper(kit, reminders, said, qapp):
    made = CalendarKeeper(
        kit.door, reminders, kit.settings, InlineJobs(), pantry_uid=kit.store.info.uid
    )
    made.told.connect(lambda words, role: said.append((role, words)))
    yield made
    made.stop()


@pytest.fixture
def path(tmp_path):
    return tmp_path / "calendars" / "due.ics"


def events(path):
    return list(vobject.readOne(path.read_text("utf-8")).contents.get("vevent", []))


def settle(keeper):
    """Let the time pass that changes are given to settle."""
    timer = keeper.findChild(QTimer, "calendar_soon")
    assert timer.isActive()
    timer.stop()
    timer.timeout.emit()


def buy_tea(kit, reminders, hours=1):
    return reminders.add_own(None, kit.clock.now() + timedelta(hours=hours), "Buy tea")


def test_an_export_is_written_and_told(kit, reminders, keeper, said, tmp_path):
    buy_tea(kit, reminders)
    keeper.export(tmp_path / "due.ics")
    (event,) = events(tmp_path / "due.ics")
    assert event.summary.value == "Buy tea"
    assert said == [("good", f"1 reminder is in the calendar file {tmp_path / 'due.ics'}.")]


def test_the_kept_file_follows_the_list(kit, reminders, keeper, said, path):
    path.parent.mkdir()
    keeper.start()
    kit.settings.put(CALENDAR_PATH, str(path))
    settle(keeper)
    assert events(path) == []
    kept = buy_tea(kit, reminders)
    settle(keeper)
    assert [each.status.value for each in events(path)] == ["CONFIRMED"]
    reminders.done(kept.id)
    settle(keeper)
    assert [each.status.value for each in events(path)] == ["CANCELLED"]
    assert said == []


def test_a_file_that_says_the_same_is_not_written_again(kit, reminders, keeper, path):
    path.parent.mkdir()
    buy_tea(kit, reminders)
    kit.settings.put(CALENDAR_PATH, str(path))
    keeper.start()
    before = path.stat().st_ino
    kit.clock.advance(minutes=10)
    keeper.renew()
    assert path.stat().st_ino == before


def test_a_file_that_somebody_deleted_comes_back(kit, keeper, path):
    path.parent.mkdir()
    kit.settings.put(CALENDAR_PATH, str(path))
    keeper.start()
    path.unlink()
    keeper.renew()
    assert path.exists()


def test_nothing_is_kept_unless_asked_for(kit, reminders, keeper):
    keeper.start()
    buy_tea(kit, reminders)
    assert not keeper.findChild(QTimer, "calendar_soon").isActive()


def test_after_leaving_nothing_is_written(kit, reminders, keeper, path):
    kit.settings.put(CALENDAR_PATH, str(path))
    keeper.stop()
    buy_tea(kit, reminders)
    assert not keeper.findChild(QTimer, "calendar_soon").isActive()


def test_a_file_that_cannot_be_kept_is_told_of_once_until_it_could(kit, keeper, said, path):
    kit.settings.put(CALENDAR_PATH, str(path))
    keeper.start()  # its folder is not there
    keeper.renew()
    assert len(said) == 1
    assert said[0][0] == "warn"
    assert str(path) in said[0][1]
    path.parent.mkdir()
    keeper.renew()
    assert len(said) == 1
    path.unlink()
    path.parent.rmdir()
    keeper.renew()
    assert len(said) == 2


def test_each_failed_export_is_told(keeper, said, path):
    keeper.export(path)
    keeper.export(path)
    assert [role for role, _ in said] == ["warn", "warn"]


@pytest.mark.parametrize("how", ["export", "kept"])
def test_a_file_of_another_kind_is_left_as_it_is(kit, keeper, said, tmp_path, how):
    diary = tmp_path / "diary.ics"
    diary.write_text("Dear diary", encoding="utf-8")
    if how == "export":
        keeper.export(diary)
    else:
        kit.settings.put(CALENDAR_PATH, str(diary))
        keeper.start()
    assert diary.read_text("utf-8") == "Dear diary"
    assert "no calendar" in said[0][1]


def test_a_folder_in_the_place_of_the_file_is_told(kit, keeper, said, path):
    path.mkdir(parents=True)
    keeper.export(path)
    assert [role for role, _ in said] == ["warn"]


def test_it_is_written_off_the_windows_thread(kit, reminders, monkeypatch, qtbot, path):
    path.parent.mkdir()
    buy_tea(kit, reminders)
    writers = []

    def write(target, data):
        writers.append(threading.get_ident())
        write_calendar(target, data)

    monkeypatch.setattr(calendarkeeper, "write_calendar", write)
    jobs = Jobs()
    keeper = CalendarKeeper(kit.door, reminders, kit.settings, jobs, pantry_uid=kit.store.info.uid)
    with qtbot.waitSignal(keeper.told, timeout=10_000):
        keeper.export(path)
    jobs.shutdown()
    assert len(events(path)) == 1
    assert writers
    assert threading.get_ident() not in writers


@pytest.mark.parametrize("wrong", ["due.ics", "/a\nb.ics", "/\x00.ics"])
def test_a_path_must_be_whole(kit, wrong):
    with pytest.raises(ImpossibleInput):
        kit.settings.put(CALENDAR_PATH, wrong)
