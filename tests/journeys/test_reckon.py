"""A single question on the way, asked from the rail and answered in the maker's own units."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from brewdesk.services.records import Kind
from tests.journeys.person import Person


def test_how_much_starter_is_asked_from_the_rail_with_a_measured_ph(pantry):
    program = pantry.open()
    person = Person(program.window)
    person.click("rail_reckoner")
    person.type("reckoner_search", "how much starter")
    person.press(Qt.Key.Key_Return, "reckoner_search")
    person.type("reckoner_blend_volume_l", "2 gal")
    person.type("reckoner_starter_ph", "2,9")
    page = program.window.page("reckoner")
    page.reply()
    metric = person.find("reckoner_figure").text()
    assert metric.endswith(" L")
    person.click("reckoner_sources")
    assert any("assumption" in label.text() for label in page.answer.findChildren(QLabel))
    program.desk.settings.put_unit(Kind.VOLUME, "gal")
    assert person.find("reckoner_figure").text().endswith(" gal")


def test_the_view_menu_opens_the_page_and_it_is_not_built_before(pantry):
    program = pantry.open()
    window = program.window
    assert "reckoner" not in window.pages
    action = window.actions_by_key["show_reckoner"]
    assert action.shortcut().toString() == "Ctrl+8"
    action.trigger()
    assert window.stack.currentWidget() is window.pages["reckoner"]
    assert window.rail.buttons["reckoner"].isChecked()
