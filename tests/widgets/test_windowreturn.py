"""The window opens as it was left, as far as its screens and jars are still there."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRect, QSize
from PySide6.QtGui import QGuiApplication

from brewdesk.services.windowmemory import WindowMemory, WindowPlace
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.theme import Theme
from brewdesk.widgets.windowsize import place_on, size_for
from tests.helpers.pantry_desk import plan_batch, souring_batch

LEFT = QRect(0, 0, 1920, 1040)
RIGHT = QRect(1920, 0, 1920, 1040)


def open_window(desk, qapp, qtbot):
    made = MainWindow(desk, Theme(qapp))
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_a_place_that_is_still_there_is_kept_to_the_pixel():
    there = QRect(2100, 100, 1200, 800)
    assert place_on([LEFT, RIGHT], there) == there


def test_a_place_on_a_screen_that_is_gone_becomes_the_middle_of_the_first():
    place = place_on([LEFT], QRect(2100, 100, 1200, 800))
    assert place.size() == QSize(1200, 800)
    assert abs(place.center().x() - LEFT.center().x()) <= 1
    assert LEFT.contains(place)


def test_a_window_larger_than_the_screen_of_now_becomes_smaller():
    small = QRect(0, 0, 1280, 760)
    assert small.contains(place_on([small], QRect(0, 0, 1900, 1000)))


@st.composite
def rects(draw, least, most):
    width, height = draw(st.integers(least, most)), draw(st.integers(least, most))
    x, y = draw(st.integers(-9000, 9000)), draw(st.integers(-9000, 9000))
    return QRect(x, y, width, height)


@given(
    screens=st.lists(rects(640, 4000), min_size=1, max_size=3),
    remembered=rects(1, 6000),
)
def test_a_window_is_always_within_one_screen(screens, remembered):
    place = place_on(screens, remembered)
    assert any(screen.contains(place) for screen in screens)
    assert place.width() <= remembered.width()
    assert place.height() <= remembered.height()


def test_size_page_and_jar_come_back(desk, qapp, qtbot):
    souring_batch(desk)
    other = plan_batch(desk, "Green tea 1", "Little jar")
    window = open_window(desk, qapp, qtbot)
    window.resize(window.width(), 700)
    window.shelf.choose_vessel(other.vessel_id)
    window.show_page("cultures")
    window.remember()
    window.hide()
    again = open_window(desk, qapp, qtbot)
    assert again.height() == 700
    assert again.page_on_show() == "cultures"
    assert again.rail.buttons["cultures"].isChecked()
    assert again.shelf.chosen().vessel.id == other.vessel_id
    again.show_page("shelf")
    assert again.shelf.chosen().vessel.id == other.vessel_id


def test_a_window_left_on_a_screen_that_is_gone_can_be_seen(desk, qapp, qtbot):
    place = WindowPlace(x=30_000, y=-9_000, width=900, height=600)
    WindowMemory(desk.store).keep(place)
    window = open_window(desk, qapp, qtbot)
    available = QGuiApplication.primaryScreen().availableGeometry()
    assert available.intersects(window.frameGeometry())


@pytest.mark.parametrize(("page", "vessel_id"), [("gone", 1), ("shelf", 999), ("", None)])
def test_a_page_or_jar_that_is_gone_is_no_trouble(desk, qapp, qtbot, page, vessel_id):
    plan_batch(desk)
    place = WindowPlace(x=0, y=0, width=700, height=500, page=page, vessel_id=vessel_id)
    WindowMemory(desk.store).keep(place)
    window = open_window(desk, qapp, qtbot)
    assert window.page_on_show() == "shelf"
    assert window.shelf.chosen() is not None


def test_the_first_start_is_pleasant(desk, qapp, qtbot):
    window = open_window(desk, qapp, qtbot)
    assert window.size() == size_for(window.screen().availableGeometry().size())


def test_maximized_comes_back_maximized(desk, qapp, qtbot):
    window = open_window(desk, qapp, qtbot)
    window.showMaximized()
    window.remember()
    window.hide()
    again = open_window(desk, qapp, qtbot)
    assert again.isMaximized()
