"""Settings apply at once, and a wrong entry changes nothing."""

from __future__ import annotations

from dataclasses import replace
from datetime import time

import pytest
from PySide6.QtCore import Qt, QTime
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog

from brewdesk.services.autostart import Launch, SessionStart, XdgAutostart
from brewdesk.services.records import Kind, Method, Quantity, ReadingDraft, TasteMark
from brewdesk.services.settings import (
    CALENDAR_PATH,
    CLOSE_TO_TRAY,
    CULTURE_LIMIT_C,
    FIRST_TASTE_PH,
    LEARN_TASTE,
    QUIET_FROM,
    TEXT_SCALE,
    THEME,
    ZONE,
    unit_key,
)
from brewdesk.widgets.settingspage import SettingsPage
from tests.helpers.pantry_desk import open_desk, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


@pytest.fixture
def page(desk, qtbot):
    made = SettingsPage(desk)
    qtbot.addWidget(made)
    made.resize(900, 700)
    with qtbot.waitExposed(made):
        made.show()
    return made


def write(line, text):
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Return)


def test_every_declared_setting_has_an_editor(desk, page):
    assert set(page.keys()) == {option.key for option in desk.settings.options()}
    assert not page.grab().isNull()


def test_a_switch_applies_at_once_and_is_kept(desk, page):
    before = desk.settings.get(CLOSE_TO_TRAY)
    page.editor(CLOSE_TO_TRAY.key).box.click()
    assert desk.settings.get(CLOSE_TO_TRAY) is not before


def test_choices_apply_at_once(desk, page, qtbot):
    combo = page.editor(THEME.key).combo
    with qtbot.waitSignal(page.editor(THEME.key).applied):
        combo.setCurrentIndex(combo.findData("dark"))
    assert desk.settings.get(THEME) == "dark"
    sizes = page.editor(TEXT_SCALE.key).combo
    sizes.setCurrentIndex(sizes.findData(1.5))
    assert desk.settings.get(TEXT_SCALE) == pytest.approx(1.5)


def test_a_time_of_day_applies_when_it_is_left(desk, page):
    edit = page.editor(QUIET_FROM.key).edit
    edit.setTime(QTime(21, 30))
    edit.editingFinished.emit()
    assert desk.settings.get(QUIET_FROM) == time(21, 30)


def test_a_number_is_read_with_comma_and_unit(desk, page):
    write(page.editor(FIRST_TASTE_PH.key).line, "3,4")
    assert desk.settings.get(FIRST_TASTE_PH) == pytest.approx(3.4)
    write(page.editor(CULTURE_LIMIT_C.key).line, "82.4 °F")
    assert desk.settings.get(CULTURE_LIMIT_C) == pytest.approx(28.0)


@pytest.mark.parametrize("text", ["sour", "9", "2.6"])
def test_a_wrong_number_changes_nothing_and_says_why(desk, page, text):
    # 2.6 lies below the pH that is too sour: the band would stand on its head.
    before = desk.settings.get(FIRST_TASTE_PH)
    editor = page.editor(FIRST_TASTE_PH.key)
    write(editor.line, text)
    assert desk.settings.get(FIRST_TASTE_PH) == before
    assert editor.row.message.is_error
    write(editor.line, "3.4")
    assert not editor.row.message.is_error


def test_a_number_left_as_shown_is_not_rounded(desk, page):
    desk.settings.put(CULTURE_LIMIT_C, 28.456)
    line = page.editor(CULTURE_LIMIT_C.key).line
    line.setFocus()
    QTest.keyClick(line, Qt.Key.Key_Return)
    assert desk.settings.get(CULTURE_LIMIT_C) == pytest.approx(28.456)


def test_an_unknown_zone_is_refused(desk, page):
    write(page.editor(ZONE.key).line, "Moon/Crater")
    assert page.editor(ZONE.key).row.message.is_error
    assert desk.settings.get(ZONE) == ""
    write(page.editor(ZONE.key).line, "Europe/Berlin")
    assert desk.settings.get(ZONE) == "Europe/Berlin"


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        ("europe/berlin", "Europe/Berlin"),
        ("america/new york", "America/New_York"),
        ("UTC", "UTC"),
        ("", ""),
        ("As the computer", ""),
    ],
)
def test_a_zone_is_understood_as_people_type_it(desk, page, typed, kept):
    desk.settings.put(ZONE, "Asia/Tokyo")
    editor = page.editor(ZONE.key)
    editor.line.clear()
    write(editor.line, typed)
    assert desk.settings.get(ZONE) == kept
    assert editor.line.text() == (kept or "As the computer")
    assert not editor.row.message.is_error


def test_zones_are_offered_and_choosing_one_applies(desk, page):
    combo = page.editor(ZONE.key).combo
    assert combo.itemText(0) == "As the computer"
    assert combo.currentText() == "As the computer"
    assert combo.count() > 300
    combo.setCurrentIndex(combo.findData("Pacific/Auckland"))
    combo.activated.emit(combo.currentIndex())
    assert desk.settings.get(ZONE) == "Pacific/Auckland"
    desk.settings.put(ZONE, "")
    assert combo.currentText() == "As the computer"


def test_another_unit_rewrites_what_is_shown(desk, page):
    combo = page.editor(unit_key(Kind.TEMPERATURE)).combo
    combo.setCurrentIndex(combo.findData("°F"))
    assert desk.quantities.unit(Kind.TEMPERATURE) == "°F"
    assert "86" in page.editor(CULTURE_LIMIT_C.key).line.text()  # 30 °C


def test_a_change_made_elsewhere_is_shown(desk, page):
    desk.settings.put(THEME, "light")
    assert page.editor(THEME.key).combo.currentData() == "light"
    desk.settings.put(TEXT_SCALE, 1.23)
    assert page.editor(TEXT_SCALE.key).combo.currentData() == pytest.approx(1.23)


def test_what_was_learnt_of_the_taste_is_told_and_can_be_switched_off(tmp_path, qtbot, qapp):
    desk = open_desk(tmp_path, with_forecasts=True)
    batch = souring_batch(desk)
    desk.palate.band()
    page = SettingsPage(desk)
    qtbot.addWidget(page)
    page.show()
    assert "Nothing is learnt yet" in page.learnt.text()
    desk.clock.advance(days=8)
    at = desk.clock.now()
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id, at=at, quantity=Quantity.PH, method=Method.METER, value=3.3
            ),
            ReadingDraft(
                batch_id=batch.id,
                at=at,
                quantity=Quantity.TASTE,
                method=Method.TONGUE,
                text=TasteMark.TOO_SOUR.value,
            ),
        ]
    )
    assert "after 1 tasting" in page.learnt.text()
    assert page.learnt.isVisible()
    page.editor(LEARN_TASTE.key).box.click()
    assert not page.learnt.isVisible()
    assert desk.palate.band().first_taste_ph == desk.settings.get(FIRST_TASTE_PH)
    desk.store.close()


def test_one_reminder_is_asked_for(page, qtbot):
    with qtbot.waitSignal(page.test_notice_wanted):
        page.test_button.click()


def test_the_file_is_named_and_can_be_copied(desk, page):
    assert page.path.text() == str(desk.store.path)
    flags = page.path.textInteractionFlags()
    assert flags & Qt.TextInteractionFlag.TextSelectableByKeyboard
    assert page.path.textFormat() == Qt.TextFormat.PlainText


# starting with the session, and the calendar file


@pytest.fixture
def autostart(tmp_path):
    return XdgAutostart(tmp_path / "autostart", "brewdesk")


@pytest.fixture
def page_with_session(desk, qtbot, autostart):
    launch = Launch(("/opt/brewdesk", "--in-background"))
    made = SettingsPage(replace(desk, session_start=SessionStart(autostart, launch)))
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_where_a_pantry_cannot_start_by_itself_there_is_no_switch(page):
    assert page.autostart is None


def test_one_switch_starts_it_with_the_session(page_with_session, autostart):
    box = page_with_session.autostart.box
    assert not box.isChecked()
    assert not autostart.is_on()
    QTest.keyClick(box, Qt.Key.Key_Space)
    assert autostart.is_on()
    QTest.keyClick(box, Qt.Key.Key_Space)
    assert not autostart.is_on()
    assert not page_with_session.grab().isNull()


def test_the_switch_shows_what_the_desktop_has(page_with_session, autostart):
    page_with_session.hide()
    autostart.turn_on(Launch(("/opt/brewdesk", "--in-background")))
    page_with_session.show()
    assert page_with_session.autostart.box.isChecked()


def test_a_desktop_that_takes_no_switch_is_told(page_with_session, autostart):
    autostart.path.parent.write_text("a file where the folder should be", encoding="utf-8")
    switch = page_with_session.autostart
    QTest.keyClick(switch.box, Qt.Key.Key_Space)
    assert not switch.box.isChecked()
    assert "nothing was changed" in switch.problem.text()
    assert switch.problem.isVisible()


def choose(page, path):
    editor = page.editor(CALENDAR_PATH.key)
    QTest.mouseClick(editor.choose, Qt.MouseButton.LeftButton)
    dialog = editor.findChild(QFileDialog)
    dialog.fileSelected.emit(str(path))
    dialog.reject()


def test_the_calendar_file_is_chosen_and_given_up(desk, page, tmp_path):
    editor = page.editor(CALENDAR_PATH.key)
    assert not editor.stop.isEnabled()
    choose(page, tmp_path / "due.ics")
    assert desk.settings.get(CALENDAR_PATH) == str(tmp_path / "due.ics")
    assert editor.line.text() == str(tmp_path / "due.ics")
    QTest.mouseClick(editor.stop, Qt.MouseButton.LeftButton)
    assert desk.settings.get(CALENDAR_PATH) == ""
    assert editor.line.text() == ""
