"""Tab reaches every entry, in the order in which the eye does."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from brewdesk.services.placeview import Span
from brewdesk.services.records import Quantity
from brewdesk.widgets.acidchart import AcidChart, Scale
from brewdesk.widgets.placesdialog import PlacesDialog
from brewdesk.widgets.planpage import PlanPage
from brewdesk.widgets.readingform import ReadingForm
from brewdesk.widgets.vesselform import VesselDialog
from tests.helpers.pantry_desk import open_desk, plan_batch, souring_batch


def walk(widget, start, steps: int) -> list[str]:
    """Names of what gets the keyboard, Tab by Tab, the unnamed left out."""
    start.setFocus()
    names = [start.objectName()]
    for _ in range(steps):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        names.append(QApplication.focusWidget().objectName())
    return [name for name in names if name]


@pytest.fixture
def shown(qtbot):
    def show(widget):
        qtbot.addWidget(widget)
        widget.resize(1200, 900)
        widget.show()
        widget.activateWindow()
        qtbot.waitUntil(widget.isActiveWindow)
        return widget

    return show


def test_a_plan_is_walked_from_the_vessel_to_the_button(desk, shown):
    batch = plan_batch(desk)
    desk.batches.drop_plan(batch.id)
    page = shown(PlanPage(desk))
    assert walk(page, page.form.vessel, 13) == [
        "plan_vessel",
        "plan_name",
        "plan_fill_volume_l",
        "plan_sugar_g_per_l",
        "plan_tea_kind",
        "plan_tea",
        "plan_culture",
        "plan_new_culture",
        "plan_target_start_ph",
        "plan_starter_taste",
        "plan_starter_ph",
        "plan_starter_ta_g_per_l",
        "plan_exact",
    ]


def test_a_vessels_form_is_walked_from_the_name_to_the_button(desk, shown):
    form = shown(VesselDialog(desk))
    names = walk(form, form.name, 6)
    assert names == [
        "vessel_name",
        "vessel_brim",
        "vessel_working",
        "vessel_shape_cylinder",
        "vessel_diameter",
        "vessel_material",
        "vessel_save",
    ]


def test_readings_are_walked_as_they_stand(desk, shown):
    form = ReadingForm(desk)
    form.set_batch(souring_batch(desk).id)
    shown(form)
    names = walk(form, form.field(Quantity.PH), 11)
    numbers = [name for name in names if name.startswith("reading_")]
    assert numbers == [
        "reading_ph",
        "reading_temperature_c",
        "reading_brix",
        "reading_ta_g_per_l",
        "reading_pellicle_mm",
        "reading_look_guide",
        "reading_note",
        "reading_when",
    ]


def test_places_are_walked_from_the_list_to_the_place_and_its_course(desk, shown):
    desk.place_log.read_place(desk.vessels.ensure_place().id, 21.0)
    dialog = shown(PlacesDialog(desk))
    assert walk(dialog, dialog.list, 4) == [
        "places_list",
        "place_add",
        "place_import",
        "place_edit",
        "place_remove",
    ]
    assert walk(dialog, dialog.sheet.chart.span_bar.button(Span.WEEK), 3) == [
        "place_plot",
        "place_reading",
        "place_reading_when",
    ]


def test_the_curve_comes_after_its_choice_and_shows_that_it_has_the_keyboard(tmp_path, shown):
    desk = open_desk(tmp_path, with_forecasts=True)
    batch = souring_batch(desk)
    desk.forecasts.request(batch.id)
    chart = shown(AcidChart())
    chart.set_view(desk.forecasts.now(batch.id))
    plot = chart.findChild(QWidget, "chart_plot")
    assert walk(chart, chart.scale_bar.button(Scale.PH), 1) == ["chart_plot"]
    frame = plot.getPlotItem().getViewBox()
    assert frame.border.style() is not Qt.PenStyle.NoPen
    chart.scale_bar.button(Scale.PH).setFocus()
    assert frame.border.style() is Qt.PenStyle.NoPen
    desk.store.close()
