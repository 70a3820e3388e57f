"""Tending cultures without a mouse: looked at, split, its life read, carried from no vessel."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QMenu

from brewdesk.services.drops import Target
from brewdesk.services.records import CultureState, Look
from brewdesk.services.subjects import Subject, SubjectKind
from tests.helpers.pantry_desk import plan_batch
from tests.journeys.person import Person

CTRL = Qt.KeyboardModifier.ControlModifier


def tending(pantry):
    """A pantry with an empty jar and one culture in no vessel, its page on show."""
    program = pantry.open()
    plan = plan_batch(program.desk, "Green tea 1", "Short jar")
    program.desk.batches.drop_plan(plan.id)
    (mother,) = program.desk.cultures.all()
    person = Person(program.window)
    QApplication.processEvents()  # the shelf takes its first jar in
    person.press(Qt.Key.Key_5, "shelf_view", CTRL)
    return program, person, mother, plan.vessel_id


def open_menu(program, qtbot):
    """Open the menu of the chosen culture by its key."""
    before = set(program.window.findChildren(QMenu))
    tree = program.window.page("cultures").tree
    QApplication.postEvent(tree.viewport(), context_menu_of(tree))
    qtbot.waitUntil(lambda: bool(set(program.window.findChildren(QMenu)) - before))
    return next(iter(set(program.window.findChildren(QMenu)) - before))


def context_menu_of(tree):
    from PySide6.QtGui import QContextMenuEvent

    middle = tree.visualRect(tree.currentIndex()).center()
    return QContextMenuEvent(
        QContextMenuEvent.Reason.Keyboard, middle, tree.viewport().mapToGlobal(middle)
    )


def choose(menu, qtbot, name):
    """Walk down a menu with the arrow until an entry is reached, and press Enter."""
    for _ in menu.actions():
        active = menu.activeAction()
        if active is not None and active.objectName() == name:
            break
        qtbot.keyClick(menu, Qt.Key.Key_Down)
    assert menu.activeAction().objectName() == name
    qtbot.keyClick(menu, Qt.Key.Key_Return)


def test_a_culture_is_looked_at_and_split_by_keys_alone(pantry, qtbot):
    program, person, mother, _ = tending(pantry)
    desk = program.desk
    person.press(Qt.Key.Key_Return, "culture_tree")  # to its first act
    person.press(Qt.Key.Key_Space)
    person.press(Qt.Key.Key_Space, "sign_strings")
    person.type("look_words", "two of them")
    person.press(Qt.Key.Key_Return, "look_words")
    (look,) = desk.culture_care.care_of(mother.id)
    assert (look.look, look.text) == (Look.FINE, "Brown strings hanging. two of them")

    person.press(Qt.Key.Key_Space, "act_split")
    person.type("split_name", "Daughter")
    person.press(Qt.Key.Key_Return, "split_name")
    assert {row.name for row in desk.cultures.all()} == {mother.name, "Daughter"}
    person.press(Qt.Key.Key_Z, "culture_tree", CTRL)
    assert [row.name for row in desk.cultures.all()] == [mother.name]


def test_its_life_is_reached_by_its_menu(pantry, qtbot):
    program, _, mother, _ = tending(pantry)
    choose(open_menu(program, qtbot), qtbot, "culture_history")
    history = program.window.page("history")
    assert program.window.page_on_show() == "history"
    assert history.pane.subject() == Subject(SubjectKind.CULTURE, mother.id)


def test_a_culture_in_no_vessel_is_carried_into_one_by_keys(pantry, qtbot):
    program, person, mother, vessel_id = tending(pantry)
    window, desk = program.window, program.desk
    choose(open_menu(program, qtbot), qtbot, "culture_carry")
    carrier = window.shelf.carrier
    assert window.page_on_show() == "shelf"
    assert f"{mother.name} picked up" in carrier.bubble.words.text()

    person.press(Qt.Key.Key_Right, "shelf_view")
    assert carrier.carriage.here == Target(vessel_id=vessel_id)
    person.press(Qt.Key.Key_Return, "shelf_view")
    qtbot.waitUntil(lambda: carrier.menu is not None)
    qtbot.keyClick(carrier.menu, Qt.Key.Key_Return)  # move it here is the first choice
    qtbot.waitUntil(lambda: desk.cultures.get(mother.id).vessel_id == vessel_id)
    assert desk.cultures.get(mother.id).state is CultureState.RESTING
    person.press(Qt.Key.Key_Z, "shelf_view", CTRL)
    assert desk.cultures.get(mother.id) == mother
