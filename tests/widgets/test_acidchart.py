"""The acidity chart: what it draws, says and does, without judging the forecast itself."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from types import SimpleNamespace

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QScrollArea, QVBoxLayout, QWidget

from brewdesk.paths import resource
from brewdesk.services.forecasts import CurvePoint, CurveView, Imagined
from brewdesk.services.records import Estimate, Method, Quantity, ReadingDraft
from brewdesk.services.whatif import WhatIf
from brewdesk.widgets.acidchart import AcidChart, Scale
from brewdesk.widgets.chartlegend import Look
from brewdesk.widgets.curvespec import acid_spec, legend_of, ph_spec
from brewdesk.widgets.theme import DARK, LIGHT
from tests.helpers.pantry_desk import open_desk, souring_batch
from tests.helpers.worn_theme import worn_theme

DAYS = tuple(float(day) for day in range(36))


def course(start, fall):
    """Curves that fall or rise in a straight line: made up, only to be drawn."""
    return {
        share: tuple(start - (fall + (share - 0.5) * 0.02) * day for day in DAYS)
        for share in (0.1, 0.25, 0.5, 0.75, 0.9)
    }


def made_up_view(**changes):
    forecast = SimpleNamespace(
        days=DAYS,
        ph=course(4.2, 0.05),
        ta_g_per_l=course(1.0, -0.3),
        window_opens_day=Estimate(8.0, 6.5, 9.5),
        window_closes_day=Estimate(16.0, 13.0, 21.0),
    )
    points = (
        CurvePoint(day=0.1, value=4.2, sd=0.05, text="pH 4.20", method=Method.METER),
        CurvePoint(day=3.0, value=3.8, sd=0.3, text="pH 3.80", method=Method.STRIP),
        CurvePoint(
            day=5.0, value=3.1, sd=0.05, text="pH 3.10", method=Method.METER, is_suspect=True
        ),
    )
    view = CurveView(
        batch_id=1,
        started_at=datetime(2026, 11, 20, 18, 0, tzinfo=UTC),
        points=points,
        ta_points=(),
        forecast=forecast,
        first_taste_ph=3.3,
        too_sour_ph=2.9,
        safe_ph=4.2,
        least_ph=2.5,
        now_day=5.5,
        deadline_day=7.0,
        opens_on=None,
        closes_on=None,
        text_summary="In words.",
    )
    return replace(view, **changes)


def made_up_imagined(**changes):
    made = Imagined(
        batch_id=1,
        change=WhatIf(warmer_c=3.0),
        days=DAYS,
        ph_median=course(4.2, 0.08)[0.5],
        ta_median=course(1.0, -0.5)[0.5],
        text="What if, in words.",
    )
    return replace(made, **changes)


@pytest.fixture
def chart(qtbot):
    made = AcidChart()
    qtbot.addWidget(made)
    made.resize(560, 560)
    with qtbot.waitExposed(made):
        made.show()
    return made


def plot_of(chart):
    found = chart.findChild(QWidget, "chart_plot")
    assert found is not None
    return found


def x_range(plot):
    return plot.getPlotItem().getViewBox().viewRange()[0]


def test_the_plotting_library_is_not_loaded_before_the_first_curve():
    code = (
        "import sys; from PySide6.QtWidgets import QApplication; app = QApplication([]);"
        "from brewdesk.widgets.acidchart import AcidChart; chart = AcidChart(); chart.show();"
        "app.processEvents(); sys.exit('pyqtgraph' in sys.modules or 'numpy' in sys.modules)"
    )
    root = resource("fonts").parents[1]
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=root, env=_bare_environment(root), check=False
    )
    assert done.returncode == 0


def _bare_environment(root):
    import os

    return os.environ | {"PYTHONPATH": f"{root}{os.pathsep}{root / 'shared'}"}


def test_without_a_curve_it_says_how_to_get_one(chart):
    chart.set_view(None)
    assert chart.empty.isVisible()
    assert "pH" in chart.empty.text()
    assert chart.spec() is None


def test_everything_of_a_view_is_in_the_picture():
    spec = ph_spec(made_up_view())
    assert spec.window == (8.0, 16.0)
    assert spec.window_bounds == (6.5, 9.5, 13.0, 21.0)
    assert spec.band == (2.9, 3.3)
    assert [line.value for line in spec.lines] == [4.2, 2.5]
    assert spec.deadline == (7.0, 4.2)
    assert spec.now_day == 5.5
    assert [point.is_rough for point in spec.points] == [False, True, False]
    assert [point.is_doubted for point in spec.points] == [False, False, True]
    low, mid, high = spec.forecast.at(4.5)
    assert mid == pytest.approx(4.2 - 0.05 * 4.5)
    assert min(low, high) < mid < max(low, high)
    assert spec.forecast.at(40.0) is None


def test_the_legend_names_what_is_shown_and_nothing_else():
    full = {entry.look for entry in legend_of(ph_spec(made_up_view(), made_up_imagined()))}
    assert full == set(Look)
    plain = {entry.look for entry in legend_of(ph_spec(made_up_view()))}
    assert plain == set(Look) - {Look.IMAGINED}
    bare = made_up_view(forecast=None, points=made_up_view().points[:1])
    looks = {entry.look for entry in legend_of(ph_spec(bare))}
    assert looks == {Look.DOT, Look.BAND, Look.LIMIT}


def test_every_reading_lies_inside_what_is_shown():
    wild = CurvePoint(day=60.0, value=7.2, sd=0.05, text="pH 7.20", method=Method.METER)
    spec = ph_spec(made_up_view(points=(wild,)))
    assert spec.day_range[0] <= 60.0 <= spec.day_range[1]
    assert spec.value_range[0] <= 7.2 <= spec.value_range[1]


def test_a_window_that_does_not_close_runs_to_the_end_of_the_forecast():
    view = made_up_view()
    view.forecast.window_closes_day = None
    spec = ph_spec(view)
    assert spec.window == (8.0, DAYS[-1])
    view.forecast.window_opens_day = None
    assert ph_spec(view).window is None


def test_acidity_has_its_own_range_from_nothing_up():
    spec = acid_spec(made_up_view())
    assert spec.value_range[0] == 0.0
    assert spec.lines == ()
    assert acid_spec(made_up_view(forecast=None)) is None


def test_the_words_stand_below_and_can_be_selected(chart):
    chart.set_view(made_up_view())
    assert chart.summary.text() == "In words."
    assert chart.summary.textFormat() == Qt.TextFormat.PlainText
    flags = chart.summary.textInteractionFlags()
    assert flags & Qt.TextInteractionFlag.TextSelectableByKeyboard


def test_switching_to_acidity_and_back(chart):
    chart.set_view(made_up_view())
    chart.scale_bar.button(Scale.ACID).click()
    assert chart.scale() is Scale.ACID
    assert "g/L" in chart.readout.text()
    chart.scale_bar.button(Scale.PH).click()
    assert chart.spec().band == (2.9, 3.3)
    chart.set_view(made_up_view(forecast=None))
    chart.set_scale(Scale.ACID)
    assert chart.empty.isVisible()


def point_at(plot, day, value):
    """Move the pointer over a place of the plot, as an event to its viewport."""
    box = plot.getPlotItem().getViewBox()
    place = QPointF(plot.mapFromScene(box.mapViewToScene(QPointF(day, value))))
    none = Qt.MouseButton.NoButton
    event = QMouseEvent(
        QEvent.Type.MouseMove,
        place,
        plot.viewport().mapToGlobal(place),
        none,
        none,
        Qt.KeyboardModifier.NoModifier,
    )
    QApplication.sendEvent(plot.viewport(), event)


def test_pointing_at_a_reading_says_what_it_is(chart):
    chart.set_view(made_up_view())
    plot = plot_of(chart)
    chart.grab()
    point_at(plot, 3.0, 3.8)
    assert "pH 3.80" in chart.readout.text()
    point_at(plot, 11.0, 4.5)
    assert "Day 11" in chart.readout.text()
    QApplication.sendEvent(plot, QEvent(QEvent.Type.Leave))
    assert chart.readout.text() == chart.spec().unit_text


def test_no_label_lies_over_a_reading(chart):
    import pyqtgraph as pg

    chart.set_view(made_up_view())
    items = plot_of(chart).getPlotItem().items
    words = [item for item in items if isinstance(item, pg.TextItem)]
    dots = [
        item
        for item in items
        if isinstance(item, pg.ScatterPlotItem) and item.opts["symbol"] in ("o", "d")
    ]
    assert words
    assert dots
    assert max(item.zValue() for item in words) < min(item.zValue() for item in dots)


@pytest.mark.parametrize("now_day", [0.0, 5.5, 35.0])
def test_the_word_now_is_whole_wherever_now_is(chart, now_day):
    import pyqtgraph as pg

    chart.set_view(made_up_view(now_day=now_day))
    plot = plot_of(chart)
    chart.grab()
    (word,) = [
        item
        for item in plot.getPlotItem().items
        if isinstance(item, pg.TextItem) and item.toPlainText() == "now"
    ]
    shown = word.mapRectToScene(word.boundingRect())
    room = plot.getPlotItem().getViewBox().sceneBoundingRect()
    assert room.left() - 1 <= shown.left()
    assert shown.right() <= room.right() + 1


def test_only_days_move_and_never_beyond_what_there_is(chart):
    chart.set_view(made_up_view())
    plot = plot_of(chart)
    whole = x_range(plot)
    values = plot.getPlotItem().getViewBox().viewRange()[1]
    plot.setFocus()
    QTest.keyClick(plot, Qt.Key.Key_Plus)
    near = x_range(plot)
    assert near[1] - near[0] < whole[1] - whole[0]
    for _ in range(40):
        QTest.keyClick(plot, Qt.Key.Key_Right)
    assert x_range(plot)[1] <= whole[1] + 1e-6
    for _ in range(40):
        QTest.keyClick(plot, Qt.Key.Key_Minus)
    assert x_range(plot) == pytest.approx(whole)
    assert plot.getPlotItem().getViewBox().viewRange()[1] == pytest.approx(values)


def test_the_whole_curve_comes_back_by_button_key_and_double_click(chart):
    chart.set_view(made_up_view())
    plot = plot_of(chart)
    whole = x_range(plot)
    plot.setFocus()

    def zoom():
        QTest.keyClick(plot, Qt.Key.Key_Plus)
        assert x_range(plot) != pytest.approx(whole)
        assert chart.whole_button.isVisible()

    zoom()
    chart.whole_button.click()
    assert x_range(plot) == pytest.approx(whole)
    assert not chart.whole_button.isVisible()
    zoom()
    QTest.keyClick(plot, Qt.Key.Key_Home)
    assert x_range(plot) == pytest.approx(whole)
    zoom()
    QTest.mouseDClick(plot.viewport(), Qt.MouseButton.LeftButton)
    assert x_range(plot) == pytest.approx(whole)


def test_a_new_forecast_keeps_the_days_that_are_looked_at(chart):
    chart.set_view(made_up_view())
    plot = plot_of(chart)
    plot.setFocus()
    QTest.keyClick(plot, Qt.Key.Key_Plus)
    near = x_range(plot)
    chart.set_view(made_up_view(text_summary="Newer."))
    assert x_range(plot) == pytest.approx(near)
    chart.set_view(made_up_view(batch_id=2))
    assert x_range(plot) == pytest.approx(list(chart.spec().day_range))


def wheel(window, plot):
    """Turn the wheel over the plot as the window system tells it; a sent event would not bubble."""
    place = plot.mapTo(window, QPoint(plot.width() // 2, 40))
    QTest.wheelEvent(window.windowHandle(), QPointF(place), QPoint(0, -120))


def test_the_wheel_scrolls_the_page_until_the_plot_has_the_focus(qtbot):
    page = QWidget()
    column = QVBoxLayout(page)
    chart = AcidChart()
    chart.setMinimumHeight(900)
    column.addWidget(chart)
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setWidget(page)
    qtbot.addWidget(area)
    area.resize(500, 400)
    with qtbot.waitExposed(area):
        area.show()
    chart.set_view(made_up_view())
    plot = plot_of(chart)
    whole = x_range(plot)
    chart.scale_bar.setFocus()
    area.verticalScrollBar().setValue(0)
    wheel(area, plot)
    assert area.verticalScrollBar().value() > 0
    assert x_range(plot) == pytest.approx(whole)
    plot.setFocus()
    before = area.verticalScrollBar().value()
    QTest.keyClick(plot, Qt.Key.Key_Plus)
    near = x_range(plot)
    wheel(area, plot)
    assert area.verticalScrollBar().value() == before
    assert x_range(plot) != pytest.approx(near)


def test_the_picture_wears_the_colours_of_the_scheme(qapp):
    with worn_theme(qapp, "light") as theme:
        dressed = AcidChart()
        dressed.resize(560, 560)
        dressed.show()
        dressed.set_view(made_up_view())
        ground = plot_of(dressed).backgroundBrush().color().name()
        assert ground == LIGHT.surface
        theme.apply("dark")
        assert plot_of(dressed).backgroundBrush().color().name() == DARK.surface
        assert not dressed.grab().isNull()
        dressed.close()
        dressed.deleteLater()


def test_a_hidden_chart_draws_when_it_is_shown(qtbot):
    chart = AcidChart()
    qtbot.addWidget(chart)
    chart.set_view(made_up_view())
    assert chart.findChild(QWidget, "chart_plot") is None
    assert chart.summary.text() == "In words."
    with qtbot.waitExposed(chart):
        chart.show()
    assert plot_of(chart).isVisible()


def test_a_real_forecast_of_a_real_batch_is_drawn(tmp_path, qtbot):
    desk = open_desk(tmp_path, with_forecasts=True)
    batch = souring_batch(desk)
    desk.clock.advance(days=4)
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=desk.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.6,
            )
        ]
    )
    desk.forecasts.request(batch.id)
    view = desk.forecasts.now(batch.id)
    chart = AcidChart()
    qtbot.addWidget(chart)
    chart.resize(560, 560)
    with qtbot.waitExposed(chart):
        chart.show()
    chart.set_view(view)
    assert chart.spec().forecast is not None
    assert chart.spec().points[-1].value == pytest.approx(3.6)
    assert chart.summary.text() == view.text_summary
    assert not chart.grab().isNull()
    desk.store.close()


PARTS = {"dress", "window", "band", "forecast", "imagined", "lines", "now", "points", "limits"}


@pytest.fixture
def drawn(chart, monkeypatch):
    """The parts of the picture that were drawn since it was first shown."""
    from brewdesk.widgets.acidplot import CurvePlot

    chart.set_view(made_up_view())
    parts = []
    real = CurvePlot._take_away

    def noted(plot, part):
        parts.append(part)
        real(plot, part)

    monkeypatch.setattr(CurvePlot, "_take_away", noted)
    return parts


def test_the_same_picture_is_not_drawn_twice(chart, drawn):
    chart.set_view(made_up_view())
    chart.set_view(made_up_view(now_day=5.5 + 60 / 86_400))  # a minute is less than a pixel
    assert drawn == []


def test_only_what_differs_is_drawn_anew(chart, drawn):
    chart.set_view(made_up_view(now_day=6.5))
    assert drawn == ["now"]
    drawn.clear()
    chart.set_view(made_up_view(now_day=6.5, points=made_up_view().points[:2]))
    assert set(drawn) == {"points"}
    drawn.clear()
    chart.set_view(made_up_view(now_day=6.5, points=made_up_view().points[:2], first_taste_ph=3.2))
    assert set(drawn) == {"band"}


def picture(chart):
    """What is to be seen, laid out and at rest."""
    for widget in (chart, plot_of(chart)):
        widget.updateGeometry()
    QApplication.processEvents()
    return chart.grab().toImage()


def test_a_picture_changed_by_parts_is_that_drawn_as_a_whole(chart):
    views = [
        made_up_view(now_day=7.5, first_taste_ph=3.2),
        made_up_view(points=(), safe_ph=4.0),
        made_up_view(forecast=None),
        made_up_view(),
    ]
    for view in views:
        chart.set_view(view)
        by_parts = picture(chart)
        plot = plot_of(chart)
        spec = chart.spec()
        assert spec is not None
        plot.draw(spec, LIGHT)
        assert picture(chart) == by_parts


def test_nothing_is_painted_before_the_whole_curve_is_there(chart, drawn):
    turns = chart.set_view_in_turns(made_up_view(now_day=6.5, first_taste_ph=3.2, points=()))
    while not drawn:
        next(turns)
    assert not plot_of(chart).updatesEnabled()
    assert list(turns)
    assert plot_of(chart).updatesEnabled()


def test_another_curve_in_the_middle_of_one_is_what_stands_in_the_end(chart, drawn):
    turns = chart.set_view_in_turns(made_up_view(now_day=6.5, first_taste_ph=3.2, points=()))
    while not drawn:
        next(turns)
    chart.set_view(made_up_view(batch_id=2))
    wanted = chart.spec()
    assert list(turns) == []
    assert chart.spec() == wanted
    assert plot_of(chart).updatesEnabled()
    shown = picture(chart)
    plot_of(chart).draw(wanted, LIGHT)
    assert picture(chart) == shown


def test_a_curve_given_up_in_the_middle_keeps_no_picture_back(chart, drawn):
    turns = chart.set_view_in_turns(made_up_view(now_day=6.5, first_taste_ph=3.2))
    while not drawn:
        next(turns)
    turns.close()
    assert plot_of(chart).updatesEnabled()
    chart.set_view(made_up_view(now_day=6.5, first_taste_ph=3.2))
    shown = picture(chart)
    plot_of(chart).draw(chart.spec(), LIGHT)
    assert picture(chart) == shown


def test_other_colours_type_or_dates_are_another_picture(qapp, chart, drawn):
    with worn_theme(qapp, "dark") as theme:
        chart.set_view(made_up_view())
        assert set(drawn) == PARTS
        drawn.clear()
        theme.apply("dark", 1.5)
        chart.set_view(made_up_view())
        assert set(drawn) == PARTS
        drawn.clear()
        begun = made_up_view().started_at + timedelta(days=1)
        chart.set_view(made_up_view(started_at=begun))
        assert set(drawn) == PARTS
