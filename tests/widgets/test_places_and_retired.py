"""Places with their temperatures, and vessels brought back from retirement."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QWidget

from brewdesk.services.packedsamples import pack_pairs
from brewdesk.services.placeview import Span
from brewdesk.services.records import Kind, PlaceDraft
from brewdesk.widgets.placeform import PlaceDialog
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


@pytest.fixture
def places(desk, shown):
    desk.vessels.ensure_place()
    return shown(PlacesDialog(desk))


def form_of(dialog):
    (form,) = [each for each in dialog.findChildren(PlaceDialog) if each.isVisible()]
    return form


def rows_of(dialog):
    return [dialog.list.item(row).text() for row in range(dialog.list.count())]


def test_a_place_gets_another_temperature_and_undo_gives_the_old_one_back(desk, places, qtbot):
    press(qtbot, places.sheet.edit)
    form = form_of(places)
    retype(qtbot, form.temperature_edit.line, "77 °F")
    press(qtbot, form.save)
    assert not form.isVisible()
    assert desk.vessels.places()[0].temperature_c == pytest.approx(25.0)
    assert "25.0" in places.sheet.usual.text()
    qtbot.keyClick(places.list, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert desk.vessels.places()[0].temperature_c == pytest.approx(22.0)
    assert "22.0" in places.sheet.usual.text()


def test_saving_without_a_change_is_no_act(desk, places, qtbot):
    press(qtbot, places.sheet.edit)
    press(qtbot, form_of(places).save)
    assert desk.history.undo_act() is None


def test_a_new_place_is_chosen_and_offered_to_vessels(desk, places, shown, qtbot):
    press(qtbot, places.add_button)
    form = form_of(places)
    qtbot.keyClicks(form.name_line, "Cellar")
    qtbot.keyClicks(form.temperature_edit.line, "16,5")
    press(qtbot, form.save)
    assert rows_of(places) == [
        "Pantry\nusually 22.0 °C · no vessel",
        "Cellar\nusually 16.5 °C · no vessel",
    ]
    assert places.sheet.place().name == "Cellar"
    vessel_form = shown(VesselDialog(desk))
    assert vessel_form.place.findText("Cellar") >= 0
    assert vessel_form.place.isVisible()


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
    desk, places, qtbot, name, temperature, field
):
    press(qtbot, places.add_button)
    form = form_of(places)
    qtbot.keyClicks(form.name_line, name)
    qtbot.keyClicks(form.temperature_edit.line, temperature)
    press(qtbot, form.save)
    assert form.isVisible()
    assert form.name.message.is_error is (field == "name")
    assert form.temperature.message.is_error is (field == "temp")
    assert len(desk.vessels.places()) == 1


def test_a_place_where_vessels_stand_stays_and_says_why(desk, places, qtbot):
    plan_batch(desk)
    press(qtbot, places.sheet.remove)
    assert "Vessels stand here" in places.sheet.message.text()
    assert "Tall jar" in places.sheet.standing.text()
    assert len(desk.vessels.places()) == 1


def test_an_empty_place_goes_and_comes_back(desk, places, qtbot):
    cellar = desk.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    desk.place_log.read_place(cellar.id, 13.0)
    places.choose(cellar.id)
    press(qtbot, places.sheet.remove)
    assert [row.split("\n")[0] for row in rows_of(places)] == ["Pantry"]
    assert places.sheet.place().name == "Pantry"
    desk.history.undo()
    assert len(rows_of(places)) == 2
    assert [row.temperature_c for row in desk.place_log.typed(cellar.id)] == [13.0]


def test_without_a_place_there_is_a_word_of_what_to_do(desk, shown):
    dialog = shown(PlacesDialog(desk))
    assert dialog.empty.isVisible()
    assert not dialog.sheet.isVisible()


def test_a_temperature_is_typed_shown_and_taken_out(desk, places, qtbot):
    form = places.sheet.reading
    qtbot.keyClicks(form.temperature_edit.line, "70 °F")
    qtbot.keyClick(form.temperature_edit.line, Qt.Key.Key_Return)
    place = desk.vessels.places()[0]
    (kept,) = desk.place_log.typed(place.id)
    assert kept.temperature_c == pytest.approx(21.1, abs=0.05)
    assert form.temperature_edit.text() == ""
    assert "Last read 21.1 °C" in places.sheet.usual.text()
    assert len(places.sheet.chart.spec().points) == 1
    entries = places.sheet.entries
    entries.set_open(True)
    entries.table.selectRow(0)
    press(qtbot, entries.remove)
    assert desk.place_log.typed(place.id) == ()
    assert places.sheet.chart.spec() is None


@pytest.mark.parametrize("text", ["", "warm", "90 °C"])
def test_what_is_no_room_temperature_is_said_beside_the_field(desk, places, qtbot, text):
    form = places.sheet.reading
    qtbot.keyClicks(form.temperature_edit.line, text)
    press(qtbot, form.enter)
    assert form.temperature.message.is_error
    assert desk.place_log.typed(desk.vessels.places()[0].id) == ()


def test_the_logs_mean_is_taken_over_as_usual(desk, places, qtbot):
    place = desk.vessels.places()[0]
    now_s = int(desk.clock.now().timestamp())
    samples = pack_pairs((now_s - 3600 * n, 19.3) for n in range(24 * 6))
    assert not places.sheet.suggestion_frame.isVisible()
    desk.place_log.add_log(place.id, "a.csv", samples)
    assert "19.3 °C" in places.sheet.suggestion.text()
    press(qtbot, places.sheet.take_over)
    assert desk.vessels.places()[0].temperature_c == 19.3
    assert not places.sheet.suggestion_frame.isVisible()


def test_the_course_is_drawn_over_a_day_a_week_a_month_and_all_of_it(desk, places, qtbot):
    place = desk.vessels.places()[0]
    now_s = int(desk.clock.now().timestamp())
    # Forty days by the hour, with five days in which nothing was logged.
    hours = [n for n in range(24 * 40) if not 24 * 10 < n < 24 * 15]
    desk.place_log.add_log(place.id, "a.csv", pack_pairs((now_s - 3600 * n, 20.0) for n in hours))
    chart = places.sheet.chart
    counts = {}
    for span in Span:
        press(qtbot, chart.span_bar.button(span))
        curve = chart.curve()
        counts[span] = (curve.step_h, len(curve.runs))
        assert chart.spec().day_range == curve.day_range
        places.grab()  # the plot is drawn
        assert chart.findChild(QWidget, "place_plot") is not None
    assert counts == {Span.DAY: (1, 1), Span.WEEK: (1, 1), Span.MONTH: (6, 2), Span.ALL: (6, 2)}
    assert "20.0 °C to 20.0 °C" in chart.summary.text()


def test_the_course_is_drawn_in_the_makers_unit(desk, places, qtbot):
    place = desk.vessels.places()[0]
    desk.place_log.read_place(place.id, 20.0)
    desk.settings.put_unit(Kind.TEMPERATURE, "°F")
    curve = places.sheet.chart.curve()
    assert curve.unit == "°F"
    assert curve.typed[0].value == pytest.approx(68.0)
    assert curve.usual == pytest.approx(71.6)
    assert curve.liked == pytest.approx((64.4, 89.6))


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
