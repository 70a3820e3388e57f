"""A maker looks something up: what was that jar like, and what was written of it?"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from brewdesk.models.timeline import DayHeading
from brewdesk.services.records import Method, Quantity, ReadingDraft
from tests.helpers.pantry_desk import souring_batch
from tests.journeys.person import Person


def _note(desk, batch, text):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=desk.clock.now(),
        quantity=Quantity.NOTE,
        method=Method.EYE,
        text=text,
    )
    desk.readings.record((draft,))


def _press(window, key, modifier=Qt.KeyboardModifier.NoModifier):
    QTest.keyClick(window.focusWidget() or window, key, modifier)


def test_a_note_of_an_ended_batch_is_found_by_keyboard_alone(pantry):
    program = pantry.open()
    desk, window = program.desk, program.window
    batch = souring_batch(desk, "Black tea 1", "Tall jar")
    pantry.pass_time(days=4)
    _note(desk, batch, "Smells of Quínce, a little honey")
    pantry.pass_time(days=3)
    desk.batches.draw_off(batch.id, "right")
    souring_batch(desk, "Green tea 1", "Little jar")

    window.activateWindow()
    window.actions_by_key["find"].trigger()
    page = window.page("history")
    assert page.search.hasFocus()
    QTest.keyClicks(page.search, "quince honey")
    _press(window, Qt.Key.Key_Return)
    assert [find.name for find in page.model.rows()] == ["Black tea 1"]
    told = page.pane.model.row_at(page.pane.list.currentIndex())
    assert "Quínce" in told.text
    _press(window, Qt.Key.Key_Return)  # it is over: its records open here
    assert page.pane.tabs.currentWidget() is page.pane.curve
    _press(window, Qt.Key.Key_Right)
    assert page.pane.tabs.currentWidget() is page.pane.readings
    assert page.pane.readings.model.rowCount() == 1

    program = pantry.reopen()
    window = program.window
    assert window.page_on_show() == "history"


def test_from_the_jar_to_its_life_and_to_the_batch_before(pantry):
    program = pantry.open()
    desk, window = program.desk, program.window
    batch = souring_batch(desk, "Black tea 1", "Tall jar")
    pantry.pass_time(days=5)
    desk.batches.draw_off(batch.id, "")
    person = Person(window)
    window.open_vessel(batch.vessel_id)
    person.choose_from_menu(window.shelf.sheet.more_button.menu(), "Show the jar's history")
    page = window.page("history")
    assert page.pane.title.text() == "Tall jar"
    days = [row for row in page.pane.model.rows() if isinstance(row, DayHeading)]
    assert len(days) == 2
    _press(window, Qt.Key.Key_Return)
    assert page.pane.title.text() == "Black tea 1"
    assert page.pane.tabs.tabBar().isVisible()


def test_a_live_find_leads_back_to_its_jar(pantry):
    program = pantry.open()
    window = program.window
    souring_batch(program.desk, "Black tea 1", "Tall jar")
    batch = souring_batch(program.desk, "Green tea 1", "Little jar")
    person = Person(window)
    person.click("rail_history")
    person.type("history_search", "green")
    person.press(Qt.Key.Key_Return, "history_search")
    person.press(Qt.Key.Key_Return, "history_finds")
    assert window.page_on_show() == "shelf"
    assert window.shelf.chosen().vessel.id == batch.vessel_id
