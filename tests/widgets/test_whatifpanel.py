"""Imagining a batch otherwise: drawn beside the forecast at once, told in words, never kept."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QPushButton,
    QScrollArea,
    QSlider,
    QToolButton,
    QWidget,
)

from brewdesk.services.records import Kind, Method, Quantity, ReadingDraft
from brewdesk.services.settings import unit_key
from brewdesk.services.whatif import WhatIf
from brewdesk.widgets.acidchart import AcidChart
from brewdesk.widgets.chartlegend import Look
from brewdesk.widgets.jarsheet import JarSheet
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.worn_theme import worn_theme


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


def test_a_new_reading_moves_what_is_imagined_too(desk, sheet, batch, qtbot):
    open_panel(sheet)
    find(sheet, QSlider, "what_if_warmer").setValue(4)
    before = sheet.chart.imagined()
    desk.clock.advance(days=2)
    add_ph(desk, batch, 3.3)
    qtbot.waitUntil(lambda: sheet.chart.imagined().ph_median != before.ph_median)
    assert sheet.chart.imagined().change == before.change


def test_the_wheel_over_a_slider_scrolls_past_it(sheet):
    open_panel(sheet)
    slider = find(sheet, QSlider, "what_if_warmer")
    place = slider.mapTo(sheet, QPoint(slider.width() // 2, slider.height() // 2))
    QTest.wheelEvent(sheet.windowHandle(), QPointF(place), QPoint(0, -120))
    assert slider.value() == 0


def test_the_notes_stand_under_the_picture(desk, sheet, batch):
    desk.clock.advance(days=1)
    add_ph(desk, batch, 3.3)
    (jar,) = desk.shelf.jars()
    sheet.show_jar(jar)
    notes = sheet.chart.notes
    assert notes.isVisible()
    assert notes.textFormat() == Qt.TextFormat.PlainText
    assert "Since yesterday" in notes.text()


# The room of the curve tab in windows of 1280x800 and 1920x1080, and how large the type is.
ROOMS = [
    ((524, 505), 1.0, "light"),
    ((524, 505), 1.0, "dark"),
    ((514, 466), 1.25, "light"),
    ((830, 770), 1.25, "dark"),
]


def is_in_sight(chart, part):
    """Whether all of a part of the chart is shown, scrolled as it is."""
    room = chart.findChild(QScrollArea).viewport()
    holder = room if room.isAncestorOf(part) else chart
    place = QRect(part.mapTo(holder, QPoint()), part.size())
    return part.isVisible() and holder.rect().contains(place)


@pytest.mark.parametrize(("size", "text_scale", "scheme"), ROOMS)
def test_answer_picture_and_sliders_are_all_in_sight(
    desk, batch, qapp, qtbot, size, text_scale, scheme
):
    with worn_theme(qapp, scheme, text_scale):
        chart = AcidChart(show_amount=desk.quantities.show)
        qtbot.addWidget(chart)
        chart.resize(*size)
        with qtbot.waitExposed(chart):
            chart.show()
        desk.forecasts.imagined.connect(chart.set_imagined)
        chart.what_if_wanted.connect(desk.forecasts.what_if)
        chart.set_view(desk.forecasts.now(batch.id))
        chart.what_if.set_open(True)
        chart.what_if.warmer.setValue(4)
        qtbot.waitUntil(lambda: chart.imagined() is not None)
        qapp.processEvents()
        for part in (
            chart.summary,
            chart.findChild(QWidget, "chart_plot"),
            chart.what_if.warmer,
            chart.what_if.starter,
            chart.what_if.width_slider,
            chart.what_if.words,
        ):
            assert is_in_sight(chart, part), part.objectName()
        plot = chart.findChild(QWidget, "chart_plot")
        assert plot.height() >= 6 * QFontMetrics(qapp.font()).lineSpacing()


def test_the_answer_stays_in_sight_however_far_the_rest_is_scrolled(sheet):
    sheet.resize(500, 400)
    bar = sheet.chart.findChild(QScrollArea).verticalScrollBar()
    QApplication.processEvents()
    assert bar.maximum() > 0
    bar.setValue(bar.maximum())
    assert is_in_sight(sheet.chart, sheet.chart.summary)
    assert not is_in_sight(sheet.chart, sheet.chart.scale_bar)


def test_where_there_is_little_room_the_picture_sheds_its_labels_and_keeps_its_lines(sheet):
    others_px = sheet.height() - sheet.chart.height()
    line_px = QFontMetrics(QApplication.font()).lineSpacing()
    sheet.resize(500, others_px + 20 * line_px)
    QApplication.processEvents()
    open_panel(sheet)
    spec = sheet.chart.spec()
    assert [line.label for line in spec.lines] == ["", ""]
    assert (spec.band_label, sheet.chart.legend.isVisible()) == ("", False)
    sheet.resize(500, others_px + 30 * line_px)
    QApplication.processEvents()
    roomy = sheet.chart.spec()
    assert all(line.label for line in roomy.lines)
    assert [line.value for line in roomy.lines] == [line.value for line in spec.lines]
    assert sheet.chart.legend.isVisible()


def test_beside_the_sliders_the_legend_tells_the_two_courses_apart_and_no_more(sheet):
    open_panel(sheet)
    find(sheet, QSlider, "what_if_warmer").setValue(4)
    assert looks(sheet) == {Look.MEDIAN, Look.IMAGINED, Look.OUTER}
    assert not sheet.chart.notes.isVisible()
    open_panel(sheet)
    assert Look.LIMIT in looks(sheet)
