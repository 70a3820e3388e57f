"""Places with their temperatures, and vessels brought back from retirement."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton

from brewdesk.services.records import PlaceDraft
from brewdesk.widgets.placesdialog import PlacesDialog
from brewdesk.widgets.retireddialog import RetiredDialog
from brewdesk.widgets.vesselform import VesselDialog
from tests.helpers.pantry_desk import plan_batch


@pytest.fixture
def shown(qtbot):
    def show(dialog):
        qtbot.addWidget(dialog)
        dialog.open()
        dialog.grab()
        return dialog

    return show


def press(qtbot, button) -> None:
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def retype(qtbot, line, text: str) -> None:
    line.selectAll()
    qtbot.keyClicks(line, text)


def test_a_place_gets_another_temperature_and_undo_gives_the_old_one_back(desk, shown, qtbot):
    desk.vessels.ensure_place()
    dialog = shown(PlacesDialog(desk))
    retype(qtbot, dialog.rows[0].temperature_edit.line, "77 °F")
    press(qtbot, dialog.save)
    assert not dialog.isVisible()
    assert desk.vessels.places()[0].temperature_c == pytest.approx(25.0)
    desk.history.undo()
    assert desk.vessels.places()[0].temperature_c == pytest.approx(22.0)


def test_saving_without_a_change_is_no_act(desk, shown, qtbot):
    desk.vessels.ensure_place()
    dialog = shown(PlacesDialog(desk))
    press(qtbot, dialog.save)
    assert not dialog.isVisible()
    assert desk.history.undo_act() is None


def test_a_new_place_is_offered_to_vessels(desk, shown, qtbot):
    desk.vessels.ensure_place()
    dialog = shown(PlacesDialog(desk))
    press(qtbot, dialog.add_button)
    press(qtbot, dialog.add_button)  # a second press gives no second blank row
    assert len(dialog.rows) == 2
    qtbot.keyClicks(dialog.rows[1].name_line, "Cellar")
    qtbot.keyClicks(dialog.rows[1].temperature_edit.line, "16,5")
    press(qtbot, dialog.save)
    assert [place.name for place in desk.vessels.places()] == ["Pantry", "Cellar"]
    form = shown(VesselDialog(desk))
    assert form.place.findText("Cellar") >= 0
    assert form.place.isVisible()


@pytest.mark.parametrize(
    ("name", "temperature", "field"),
    [
        ("", "20", "name"),
        ("Pantry", "20", "name"),
        ("Oven", "200", "temp"),
        ("Attic", "hot", "temp"),
    ],
)
def test_what_no_place_can_be_is_said_beside_its_field(
    desk, shown, qtbot, name, temperature, field
):
    desk.vessels.ensure_place()
    dialog = shown(PlacesDialog(desk))
    press(qtbot, dialog.add_button)
    row = dialog.rows[1]
    qtbot.keyClicks(row.name_line, name)
    qtbot.keyClicks(row.temperature_edit.line, temperature)
    press(qtbot, dialog.save)
    assert dialog.isVisible()
    assert row.name.message.is_error is (field == "name")
    assert row.temperature.message.is_error is (field == "temp")
    assert len(desk.vessels.places()) == 1


def test_what_was_kept_before_a_mistake_is_not_kept_twice(desk, shown, qtbot):
    desk.vessels.add_place(PlaceDraft(name="Pantry", temperature_c=22.0))
    dialog = shown(PlacesDialog(desk))
    retype(qtbot, dialog.rows[0].temperature_edit.line, "24")
    press(qtbot, dialog.add_button)
    qtbot.keyClicks(dialog.rows[1].name_line, "Cellar")
    press(qtbot, dialog.save)
    assert dialog.isVisible()
    qtbot.keyClicks(dialog.rows[1].temperature_edit.line, "15")
    press(qtbot, dialog.save)
    assert [place.temperature_c for place in desk.vessels.places()] == [24.0, 15.0]
    desk.history.undo()
    desk.history.undo()
    assert [place.temperature_c for place in desk.vessels.places()] == [22.0]


def test_a_retired_vessel_is_listed_and_put_back(desk, shown, qtbot):
    batch = plan_batch(desk)
    desk.batches.drop_plan(batch.id)
    desk.vessels.retire(batch.vessel_id)
    dialog = shown(RetiredDialog(desk))
    assert not dialog.empty.isVisible()
    button = dialog.findChild(QPushButton, f"restore_{batch.vessel_id}")
    with qtbot.waitSignal(dialog.restored) as told:
        press(qtbot, button)
    assert told.args == [batch.vessel_id]
    assert [vessel.id for vessel in desk.vessels.all()] == [batch.vessel_id]
    assert dialog.empty.isVisible()


def test_a_name_taken_meanwhile_is_told_and_the_vessel_stays_retired(desk, shown, qtbot):
    batch = plan_batch(desk, vessel="Tall jar")
    desk.batches.drop_plan(batch.id)
    desk.vessels.retire(batch.vessel_id)
    other = plan_batch(desk, name="Black tea 2", vessel="Little jar")
    desk.vessels.edit(other.vessel_id, name="Tall jar")
    dialog = shown(RetiredDialog(desk))
    press(qtbot, dialog.findChild(QPushButton, f"restore_{batch.vessel_id}"))
    assert "another name" in dialog.problem.text()
    assert desk.vessels.get(batch.vessel_id).retired_at is not None
