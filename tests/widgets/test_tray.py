"""The tray's menu, tooltip and shape."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtGui import QImage

from brewdesk.widgets.tray import Tray, TrayNotifier
from brewdesk.widgets.trayicon import tray_icon
from tests.helpers.trays import DesktopWithTray


@pytest.fixture
def tray(qapp):
    made = DesktopWithTray(has_tray=True).tray()
    yield made
    made.close()


@pytest.fixture
def items(desk):
    now = desk.clock.now()
    for hours, text in ((-2, "Late & soon"), (1, "<b>Bold</b>\n\x1b[31m"), (2, "Third"), (3, "No")):
        desk.reminders.add_own(None, now + timedelta(hours=hours), text)
    return desk.reminders.listed()


def texts(tray):
    return [action.text() for action in tray.menu.actions() if not action.isSeparator()]


def outline(size):
    """Return where the plain icon and the one with the sign are clear."""
    pictures = [
        tray_icon(is_due=is_due)
        .pixmap(size, size)
        .toImage()
        .convertToFormat(QImage.Format.Format_ARGB32)
        for is_due in (False, True)
    ]
    return [
        [picture.pixelColor(x, y).alpha() > 127 for y in range(size) for x in range(size)]
        for picture in pictures
    ]


def test_the_next_three_stand_in_the_menu_as_plain_text(tray, items):
    tray.show_due(items, 1, ["w1", "w2", "w3", "w4"])
    assert texts(tray) == [
        "Due: Late && soon",
        "w2: <b>Bold</b> [31m",
        "w3: Third",
        "Show the shelf",
        "Quit",
    ]


def test_a_long_title_does_not_make_a_menu_as_wide_as_the_screen(tray, items):
    tray.show_due([replace(items[0], title="x" * 10_000)], 1, ["w"])
    assert len(texts(tray)[0]) < 70


def test_nothing_to_do_is_said_and_cannot_be_chosen(tray):
    assert texts(tray) == ["Nothing to do", "Show the shelf", "Quit"]
    assert not tray.item_actions()[0].isEnabled()


def test_the_tooltip_counts(tray, items):
    seen = [tray.icon.toolTip()]
    for count in (1, 3, 0):
        tray.show_due(items, count, ["w"] * 4)
        seen.append(tray.icon.toolTip())
    assert seen == [
        "brewdesk: nothing is due",
        "brewdesk: 1 thing is due",
        "brewdesk: 3 things are due",
        "brewdesk: nothing is due",
    ]


def test_choosing_asks_for_it(tray, items):
    asked, shown, quits = [], [], []
    tray.item_wanted.connect(asked.append)
    tray.show_wanted.connect(lambda: shown.append(True))
    tray.quit_wanted.connect(lambda: quits.append(True))
    tray.show_due(items, 1, ["w"] * 4)
    tray.item_actions()[2].trigger()
    for name in ("tray_show", "tray_quit"):
        next(each for each in tray.menu.actions() if each.objectName() == name).trigger()
    assert [item.title for item in asked] == ["Third"]
    assert (shown, quits) == ([True], [True])


def test_a_menu_that_says_the_same_is_left_alone(tray, items):
    tray.show_due(items, 1, ["w"] * 4)
    before = tray.item_actions()
    tray.show_due(items, 1, ["w"] * 4)
    assert tray.item_actions() == before


@pytest.mark.parametrize("size", [16, 22, 32, 48, 64])
def test_the_sign_changes_the_outline_and_not_only_the_colour(qapp, size):
    plain, with_sign = outline(size)
    changed = sum(one != other for one, other in zip(plain, with_sign, strict=True))
    assert changed > 0.03 * size * size


def test_the_icon_changes_when_something_falls_due(tray, items):
    plain = tray.icon.icon().cacheKey()
    tray.show_due(items, 1, ["w"] * 4)
    due = tray.icon.icon().cacheKey()
    tray.show_due(items, 2, ["w"] * 4)
    assert due != plain
    assert tray.icon.icon().cacheKey() == due
    tray.show_due((), 0, ())
    assert tray.icon.icon().cacheKey() != due


def test_without_a_tray_nothing_is_up(qapp):
    desktop = DesktopWithTray(has_tray=False)
    tray = desktop.tray()
    assert not tray.start()
    assert not tray.is_up()
    desktop.has_tray = True
    assert tray.start()
    assert tray.is_up()
    desktop.has_tray = False
    assert not tray.is_up()
    tray.close()


def test_the_trays_own_notices_need_the_tray(qapp):
    desktop = DesktopWithTray(has_tray=False)
    tray = desktop.tray()
    assert not TrayNotifier(tray).is_available()
    desktop.has_tray = True
    tray.start()
    assert TrayNotifier(tray).is_available()
    tray.close()


def test_the_real_question_is_asked_by_default(qapp):
    tray = Tray()
    assert tray.start() == tray.is_up()
    tray.close()
