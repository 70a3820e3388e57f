"""Imagining a batch otherwise: drawn beside the forecast at once, told in words, never kept."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QPushButton, QSlider, QToolButton

from brewdesk.services.records import Kind, Method, Quantity, ReadingDraft
from brewdesk.services.settings import unit_key
from brewdesk.services.whatif import WhatIf
from brewdesk.widgets.chartlegend import Look
from brewdesk.widgets.jarsheet import JarSheet
from tests.helpers.pantry_desk import open_desk, souring_batch


@pytest.fixture
def desk(tmp_path, qapp):
    made = open_desk(tmp_path, with_forecasts=True)
    yield made
    made.store.close()


@pytest.fixture
def batch(desk):
    made = souring_batch(desk)
    desk.clock.advance(days=3)
    add_ph(desk, made, 3.8)
    return made


def add_ph(desk, batch, ph):
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=desk.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=ph,
            )
        ]
    )


@pytest.fixture
def sheet(desk, batch, qtbot):
    made = JarSheet(desk)
    qtbot.addWidget(made)
    made.resize(720, 900)
    with qtbot.waitExposed(made):
        made.show()
    (jar,) = desk.shelf.jars()
    made.allow_curves()
    made.show_jar(jar)
    return made


def find(sheet, kind, name):
    found = sheet.findChild(kind, name)
    assert found is not None
    return found


def open_panel(sheet):
    find(sheet, QToolButton, "what_if_open").click()


def looks(sheet):
    return {entry.look for entry in sheet.chart.legend.entries()}


def test_it_is_closed_and_nothing_is_imagined_until_it_is_opened(sheet):
    assert not find(sheet, QSlider, "what_if_warmer").isVisible()
    assert sheet.chart.spec().imagined is None
    assert Look.IMAGINED not in looks(sheet)


@pytest.mark.parametrize("name", ["what_if_warmer", "what_if_starter", "what_if_width"])
def test_each_slider_redraws_at_once_beside_the_forecast(sheet, name):
    open_panel(sheet)
    slider = find(sheet, QSlider, name)
    slider.setFocus()
    for _ in range(4):
        QTest.keyClick(slider, Qt.Key.Key_Right)
    spec = sheet.chart.spec()
    assert spec.imagined.values[-20:] != spec.forecast.median[-20:]
    assert Look.IMAGINED in looks(sheet)
    words = find(sheet, QLabel, "what_if_words")
    assert words.isVisible()
    assert words.text().startswith("What if (dashed): from about")
    assert sheet.chart.summary.text().startswith("Worth tasting from")


def test_the_values_stand_beside_the_sliders_in_the_makers_units(desk, sheet, batch):
    desk.settings.put(unit_key(Kind.TEMPERATURE), "°F")
    open_panel(sheet)
    slider = find(sheet, QSlider, "what_if_warmer")
    slider.setValue(2)
    expected = desk.quantities.show(batch.place_temperature_c + 2.0, Kind.TEMPERATURE)
    assert slider.accessibleDescription() == expected
    assert "°F" in expected
    wide = find(sheet, QSlider, "what_if_width")
    wide.setValue(12)
    assert "18" in wide.accessibleDescription()  # 15 cm and a fifth more


def test_reset_brings_everything_back(sheet):
    open_panel(sheet)
    reset = find(sheet, QPushButton, "what_if_reset")
    assert not reset.isEnabled()
    find(sheet, QSlider, "what_if_warmer").setValue(4)
    find(sheet, QSlider, "what_if_starter").setValue(15)
    reset.click()
    assert sheet.chart.what_if.change() == WhatIf()
    assert sheet.chart.spec().imagined is None
    assert find(sheet, QLabel, "what_if_words").text().startswith("Move a slider")


def test_closing_the_panel_takes_the_imagined_curve_away(sheet):
    open_panel(sheet)
    find(sheet, QSlider, "what_if_warmer").setValue(4)
    assert sheet.chart.spec().imagined is not None
    open_panel(sheet)
    assert sheet.chart.spec().imagined is None


def test_nothing_imagined_is_kept(desk, sheet, batch):
    with desk.store.read() as unit:
        before = (unit.batches.get(batch.id), dict(unit.settings.all()), unit.acts.last_done())
    open_panel(sheet)
    find(sheet, QSlider, "what_if_warmer").setValue(4)
    find(sheet, QSlider, "what_if_width").setValue(14)
    with desk.store.read() as unit:
        assert before == (
            unit.batches.get(batch.id),
            dict(unit.settings.all()),
            unit.acts.last_done(),
        )


def test_an_answer_to_an_older_question_is_not_drawn(sheet):
    open_panel(sheet)
    find(sheet, QSlider, "what_if_warmer").setValue(4)
    now = sheet.chart.imagined()
    sheet.chart.set_imagined(replace(now, change=WhatIf(warmer_c=1.0), text="Older."))
    assert sheet.chart.imagined() == now
    sheet.chart.set_imagined(replace(now, batch_id=now.batch_id + 1))
    assert sheet.chart.imagined() == now


def test_a_new_reading_moves_what_is_imagined_too(desk, sheet, batch):
    open_panel(sheet)
    find(sheet, QSlider, "what_if_warmer").setValue(4)
    before = sheet.chart.imagined()
    desk.clock.advance(days=2)
    add_ph(desk, batch, 3.3)
    after = sheet.chart.imagined()
    assert after.change == before.change
    assert after.ph_median != before.ph_median


def test_the_wheel_over_a_slider_scrolls_past_it(sheet):
    open_panel(sheet)
    slider = find(sheet, QSlider, "what_if_warmer")
    place = slider.mapTo(sheet, QPoint(slider.width() // 2, slider.height() // 2))
    QTest.wheelEvent(sheet.windowHandle(), QPointF(place), QPoint(0, -120))
    assert slider.value() == 0


def test_the_notes_stand_under_the_answer(desk, sheet, batch):
    desk.clock.advance(days=1)
    add_ph(desk, batch, 3.3)
    (jar,) = desk.shelf.jars()
    sheet.show_jar(jar)
    notes = sheet.chart.notes
    assert notes.isVisible()
    assert notes.textFormat() == Qt.TextFormat.PlainText
    assert "Since yesterday" in notes.text()
