"""From shelf to shelf without a mouse: a batch is poured over, seen, and taken back."""

from __future__ import annotations

from PySide6.QtCore import Qt

from brewdesk.services.drops import Target
from tests.helpers.pantry_desk import plan_batch, souring_batch
from tests.journeys.person import Person

CTRL = Qt.KeyboardModifier.ControlModifier


def test_a_batch_is_poured_over_by_keys_alone(pantry, qtbot):
    program = pantry.open()
    desk, window = program.desk, program.window
    batch = souring_batch(desk, "Black tea 1", "Tall jar")
    plan = plan_batch(desk, "Green tea 1", "Short jar")
    desk.batches.drop_plan(plan.id)
    window.open_batch(batch.id)
    window.shelf.view.setFocus()
    person = Person(window)
    carrier = window.shelf.carrier

    person.press(Qt.Key.Key_K, "shelf_view", CTRL)  # carry: the batch or its culture?
    qtbot.waitUntil(lambda: carrier.menu is not None)
    which = carrier.menu
    qtbot.keyClick(which, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: carrier.carriage.carried is not None)
    assert "Black tea 1 picked up" in carrier.bubble.words.text()

    person.press(Qt.Key.Key_Right, "shelf_view")
    assert carrier.carriage.here == Target(vessel_id=plan.vessel_id)
    assert carrier.bubble.words.text() == "Pour Black tea 1 over · Lend starter"
    person.press(Qt.Key.Key_Return, "shelf_view")
    qtbot.waitUntil(lambda: carrier.menu is not which)
    qtbot.keyClick(carrier.menu, Qt.Key.Key_Return)

    qtbot.waitUntil(lambda: desk.batches.get(batch.id).vessel_id == plan.vessel_id)
    assert window.act_bar.words.text() == "Black tea 1 poured over into Short jar"
    person.press(Qt.Key.Key_Z, "shelf_view", CTRL)
    assert desk.batches.get(batch.id).vessel_id == batch.vessel_id


def test_drawing_and_topping_up_by_keys_alone(pantry, qtbot):
    program = pantry.open()
    desk, window = program.desk, program.window
    batch = souring_batch(desk, "Black tea 1", "Tall jar")
    window.open_batch(batch.id)
    person = Person(window)

    person.press(Qt.Key.Key_D, "shelf_view", CTRL | Qt.KeyboardModifier.ShiftModifier)
    person.type("carry_volume", "1.5 L")
    person.press(Qt.Key.Key_Return, "carry_volume")
    qtbot.waitUntil(lambda: desk.liquids.volume_now_l(batch.id) == 2.5)

    person.press(Qt.Key.Key_U, "shelf_view", CTRL)
    person.type("top_up_volume_l", "1 L")
    person.type("top_up_temperature_c", "22")
    person.press(Qt.Key.Key_Return, "top_up_temperature_c")
    qtbot.waitUntil(lambda: desk.liquids.volume_now_l(batch.id) == 3.5)
    qtbot.waitUntil(lambda: "3.50 L" in window.shelf.sheet._subtitle.text())
