"""From a bottle of raw kombucha to a culture, and on to its first daughter, in the whole window."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu

from brewdesk.services.looks import Sign
from brewdesk.services.records import (
    BatchPurpose,
    BatchStage,
    CultureOrigin,
    CultureState,
    ReminderKind,
)
from tests.helpers.everystore import on_every_store
from tests.journeys.person import Person
from tests.journeys.test_main_job import brew, put_up_a_jar


def only_culture(program, name):
    return next(one for one in program.desk.cultures.all() if one.name == name)


def due_kinds(program):
    program.desk.reminders.sync()
    return {item.reminder.kind for item in program.desk.reminders.listed() if item.is_due}


def put_up_another(program, person, name):
    program.window.dialogs.add_vessel()
    person.type("vessel_name", name)
    person.type("vessel_brim", "1,5 l")
    person.click("vessel_save")


def look(person, film="", sign=Sign.WET_SMOOTH):
    person.click("grow_look")
    dialog = person.find("look_dialog")
    dialog.checklist.rows[sign].box.click()
    if film:
        person.type("film_pellicle_mm", film, within=dialog)
    person.click("look_go", within=dialog)


@pytest.fixture
def growing(pantry):
    """A pantry with one jar in which a culture has just been mixed."""
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    program.window.show_page("cultures")
    person.click("grow_first_culture")
    person.type("grow_name", "Sprout")
    person.type("grow_source", "a raw bottle from the corner shop")
    person.click("grow_go")
    person.click("next_act")
    brew(person)
    return pantry, person


@on_every_store
def test_a_bottle_becomes_a_culture_and_the_culture_a_daughter(growing):
    pantry, person = growing
    program = pantry.program
    (batch,) = program.desk.batches.all()
    assert (batch.purpose, batch.stage) == (BatchPurpose.CULTURE, BatchStage.SOURING)
    assert only_culture(program, "Sprout").state is CultureState.FORMING

    pantry.pass_time(days=8)
    assert ReminderKind.FILM_LOOK in due_kinds(program)
    program.window.show_page("cultures")
    look(person, "1")
    pantry.pass_time(days=9)
    look(person, "4")
    person.click("grow_finish")
    person.click("grown_go")

    grown = only_culture(program, "Sprout")
    assert grown.state is CultureState.RESTING
    assert (grown.origin, grown.pellicle_mm) == (CultureOrigin.RAW_BOTTLE, 4.0)
    assert ReminderKind.FILM_LOOK not in due_kinds(program)

    put_up_another(program, person, "Store jar")
    program.window.show_page("cultures")
    person.click("act_split")
    person.type("split_name", "Daughter")
    form = person.find("split")
    form.vessel.setCurrentIndex(form.vessel.findText("Store jar"))
    person.type("split_rest_volume_l", "0.3 l")
    person.click("split_go")
    daughter = only_culture(program, "Daughter")
    assert program.desk.cultures.parents_of(daughter.id) == (grown,)
    assert person.find("culture_title").text() == "Daughter"

    program.window.actions_by_key["undo"].trigger()
    assert [one.name for one in program.desk.cultures.all()] == ["Sprout"]


def test_all_of_it_outlives_a_restart(growing):
    pantry, _ = growing
    program = pantry.reopen()
    program.window.show_page("cultures")
    person = Person(program.window)
    assert person.find("grow_panel").isVisible()
    assert only_culture(program, "Sprout").state is CultureState.FORMING


def test_the_growing_of_one_by_keyboard_alone(pantry):
    """Every step with keys: the tree, its menu, the form."""
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    person.press(Qt.Key.Key_5, "shelf_view", Qt.KeyboardModifier.ControlModifier)
    page = program.window.page("cultures")
    assert page.isVisible()
    person.press(Qt.Key.Key_Space, "grow_first_culture")
    person.type("grow_name", "Sprout")
    person.press(Qt.Key.Key_Return, "grow_name")
    assert [one.name for one in program.desk.cultures.all()] == ["Sprout"]
    person.press(Qt.Key.Key_5, "shelf_view", Qt.KeyboardModifier.ControlModifier)
    person.press(Qt.Key.Key_Return, "culture_tree")
    assert page.focusWidget() is page.sheet.more  # mixing it is first, and that is at the jar


def test_mold_while_it_grows_throws_all_of_it_out(growing):
    pantry, person = growing
    program = pantry.program
    pantry.pass_time(days=8)
    program.window.show_page("cultures")
    look(person, sign=Sign.COLOURED)
    end = person.find("end_dialog")
    assert end.reason.currentData() == "mold"
    person.click("end_go", within=end)
    lost = only_culture(program, "Sprout")
    assert lost.state is CultureState.LOST
    assert program.desk.batches.all()[0].stage is BatchStage.DISCARDED


def test_a_thickness_that_cannot_be_read_is_not_lost_with_the_look(growing):
    pantry, person = growing
    program = pantry.program
    pantry.pass_time(days=8)
    program.window.show_page("cultures")
    person.click("grow_look")
    dialog = person.find("look_dialog")
    dialog.checklist.rows[Sign.WET_SMOOTH].box.click()
    person.type("film_pellicle_mm", "thin", within=dialog)
    person.click("look_go", within=dialog)
    assert dialog.isVisible()
    assert "thin" in dialog.film.message.text()
    (batch,) = program.desk.batches.all()
    assert program.desk.readings.of_batch(batch.id) == ()


def test_the_menu_of_the_tree_offers_the_same_acts(growing):
    pantry, person = growing
    program = pantry.program
    pantry.pass_time(days=20)
    program.window.show_page("cultures")
    look(person, "5")
    person.click("grow_finish")
    person.click("grown_go")
    page = program.window.page("cultures")
    page.sheet.fill_menu()
    menu = page.sheet.findChild(QMenu)
    person.choose_from_menu(menu, "Write a note")
    person.type("note_text", "smells right")
    person.click("note_go")
    culture = only_culture(program, "Sprout")
    assert program.desk.culture_care.care_of(culture.id)[0].text == "smells right"
