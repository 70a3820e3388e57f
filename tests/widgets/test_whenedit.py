"""A time that follows the clock until it is touched."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest

from brewdesk.widgets.whenedit import WhenEdit
from tests.helpers.fakes import FakeClock

BERLIN = ZoneInfo("Europe/Berlin")


@pytest.fixture
def clock():
    return FakeClock(datetime(2026, 11, 25, 9, 0, tzinfo=UTC), BERLIN)


@pytest.fixture
def edit(clock, qtbot):
    made = WhenEdit(clock, follow_ms=10)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_it_shows_the_present_on_the_makers_clock_and_goes_with_it(clock, edit, qtbot):
    assert "10:00" in edit.line.text()
    clock.advance(minutes=7)
    qtbot.waitUntil(lambda: "10:07" in edit.line.text())
    assert edit.instant() == clock.now()


def test_an_edit_stops_it_until_now_is_pressed(clock, edit, qtbot):
    with qtbot.waitSignal(edit.edited):
        edit.line.stepBy(-1)
    typed = edit.instant()
    clock.advance(minutes=7)
    assert not edit.is_following()
    assert edit.instant() == typed
    edit.now_button.click()
    assert edit.is_following()
    assert edit.instant() == clock.now()


def test_an_instant_there_and_back(clock, edit):
    at = clock.now() - timedelta(days=3, hours=2)
    edit.set_instant(at)
    assert edit.instant() == at


def test_a_time_in_summer_has_the_summer_offset(edit):
    at = datetime(2026, 7, 1, 12, 0, tzinfo=UTC)
    edit.set_instant(at)
    assert "14:00" in edit.line.text()
    assert edit.instant() == at


def test_its_timer_rests_while_nobody_looks(edit):
    timer = edit.findChild(QTimer, "when_follow")
    assert timer.isActive()
    edit.hide()
    assert not timer.isActive()
    edit.show()
    assert timer.isActive()
    edit.set_instant(edit.instant())
    assert not timer.isActive()


def test_enter_says_that_the_field_is_done(edit, qtbot):
    with qtbot.waitSignal(edit.submitted):
        QTest.keyClick(edit.line, Qt.Key.Key_Return)


def test_an_entry_that_does_not_follow_has_no_now_button(clock, qtbot):
    edit = WhenEdit(clock, follows=False)
    qtbot.addWidget(edit)
    edit.show()
    assert not edit.is_following()
    assert not edit.now_button.isVisible()
