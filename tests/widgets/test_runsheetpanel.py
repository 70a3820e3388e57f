"""Brewing day on the run sheet, with a clock that is moved by hand."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest

from brewdesk.services.records import BatchStage, Kind, StepKind, StepState
from brewdesk.widgets.runsheetpanel import RunSheetPanel
from brewdesk.widgets.steprow import Turn
from brewdesk.widgets.stepwords import countdown_words, length_words
from tests.helpers.pantry_desk import brewing_batch, open_desk, plan_batch


@pytest.fixture
def desk(tmp_path, qapp):
    opened = open_desk(tmp_path)
    yield opened
    opened.store.close()


@pytest.fixture
def batch(desk):
    return brewing_batch(desk)


@pytest.fixture
def panel(desk, batch, qtbot):
    made = RunSheetPanel(desk, tick_ms=5)
    qtbot.addWidget(made)
    made.set_batch(batch.id)
    made.resize(560, 700)
    with qtbot.waitExposed(made):
        made.show()
    return made


def row_of(panel, kind):
    return next(row for row in panel.rows() if row.step.kind is kind)


def finish_until(desk, batch, kind, temperature_c=None):
    """Tick off the steps before ``kind``; cooling gets ``temperature_c``."""
    for step in desk.brewing.steps(batch.id):
        if step.kind is kind:
            return
        desk.brewing.finish(step.id, temperature_c if step.kind is StepKind.COOL else None)


def test_steps_stand_in_order_with_the_amounts_of_the_batch(desk, batch, panel):
    kinds = [row.step.kind for row in panel.rows()]
    assert kinds == [step.kind for step in desk.brewing.steps(batch.id)]
    assert panel.present_row().step.kind is StepKind.BOIL
    steep = row_of(panel, StepKind.STEEP).sentence.text()
    assert f"{batch.hot_water_g:.0f} g" in steep
    assert f"{batch.tea_g:.1f} g" in steep
    assert not panel.grab().isNull()


def test_a_timer_counts_down_and_says_when_it_is_over(desk, batch, panel, qtbot):
    finish_until(desk, batch, StepKind.STEEP)
    row = row_of(panel, StepKind.STEEP)
    row.begin_button.click()
    assert row.countdown.text() == "10:00"
    desk.clock.advance(minutes=3, seconds=29)
    qtbot.waitUntil(lambda: row.countdown.text() == "6:31")
    assert not row.is_ringing()
    desk.clock.advance(minutes=7)
    qtbot.waitUntil(row.is_ringing)
    assert row.alarm.isVisible()
    assert "lift the tea out" in row.alarm.text()
    assert row.countdown.text() == "+0:29"
    assert row.property("role") == "warn"


def test_pausing_holds_the_time_and_going_on_spends_it(desk, batch, panel):
    row = panel.present_row()
    row.begin_button.click()
    desk.clock.advance(minutes=2)
    row.pause_button.click()
    desk.clock.advance(hours=1)
    panel.tick()
    assert row.countdown.text() == "3:00"
    row.resume_button.click()
    desk.clock.advance(minutes=1)
    panel.tick()
    assert row.countdown.text() == "2:00"


def test_a_minute_more_also_silences_a_timer_that_is_over(desk, panel):
    row = panel.present_row()
    row.begin_button.click()
    desk.clock.advance(minutes=6)
    panel.tick()
    assert row.is_ringing()
    row.extend_button.click()
    assert not row.is_ringing()
    assert row.countdown.text() == "1:00"
    assert row.property("role") == "card"


def test_done_ticks_a_step_off_and_the_keyboard_goes_to_the_next(desk, batch, panel):
    row = panel.present_row()
    row.done_button.setFocus()
    QTest.keyClick(row.done_button, Qt.Key.Key_Space)
    assert row.turn is Turn.PAST
    assert "done" in row.side.text()
    steep = panel.present_row()
    assert steep.step.kind is StepKind.STEEP
    assert steep.begin_button.hasFocus()


def test_a_step_that_is_undone_takes_its_turn_again(desk, panel):
    panel.present_row().done_button.click()
    desk.history.undo()
    assert panel.present_row().step.kind is StepKind.BOIL
    assert panel.present_row().step.state is StepState.WAITING


def test_the_starter_is_shut_until_a_temperature_allows_it(desk, batch, panel):
    finish_until(desk, batch, StepKind.STARTER_IN)
    row = panel.present_row()
    assert row.step.kind is StepKind.STARTER_IN
    assert not row.done_button.isEnabled()
    assert row.gate.isVisible()
    assert row.gate.verdict().code == "culture_temperature_unknown"
    QTest.keyClicks(row.temperature.line, "45")
    assert not row.done_button.isEnabled()
    assert row.gate.verdict().numbers["temperature_c"] == pytest.approx(45.0)
    row.temperature.line.selectAll()
    QTest.keyClicks(row.temperature.line, "28")
    assert row.done_button.isEnabled()
    assert not row.gate.isVisible()
    row.done_button.click()
    done = row_of(panel, StepKind.STARTER_IN)
    assert done.step.temperature_c == pytest.approx(28.0)
    assert panel.present_row().step.kind is StepKind.CULTURE_IN


def test_the_limit_of_the_batch_decides_not_a_degree_more(desk, batch, panel):
    finish_until(desk, batch, StepKind.STARTER_IN)
    row = panel.present_row()
    row.temperature.line.setText(f"{batch.culture_limit_c:.0f}")
    assert row.done_button.isEnabled()
    row.temperature.line.setText(f"{batch.culture_limit_c + 0.5:.1f}")
    assert not row.done_button.isEnabled()


def test_a_cool_enough_measurement_before_opens_the_culture_step(desk, batch, panel):
    finish_until(desk, batch, StepKind.STARTER_IN, temperature_c=27.0)
    row = panel.present_row()
    assert row.done_button.isEnabled()
    assert not row.gate.isVisible()


def test_the_written_way_past_needs_a_reason(desk, batch, panel):
    finish_until(desk, batch, StepKind.STARTER_IN)
    row = panel.present_row()
    row.gate.disclosure.set_open(True)
    assert not row.gate.button.isEnabled()
    row.gate.reason.setText("   ")
    assert not row.gate.button.isEnabled()
    row.gate.reason.setText("Felt cool by hand")
    row.gate.button.click()
    step = next(s for s in desk.brewing.steps(batch.id) if s.kind is StepKind.STARTER_IN)
    assert step.state is StepState.DONE
    assert step.override_reason == "Felt cool by hand"


def test_a_temperature_that_cannot_be_read_is_no_temperature(desk, batch, panel):
    finish_until(desk, batch, StepKind.COOL)
    row = panel.present_row()
    row.temperature.line.setText("lukewarm")
    row.done_button.click()
    assert row.step.state is StepState.WAITING
    assert row.temperature.message.is_error


def test_an_impossible_temperature_is_told_at_its_step(desk, batch, panel):
    finish_until(desk, batch, StepKind.COOL)
    row = panel.present_row()
    row.temperature.line.setText("300")
    row.done_button.click()
    assert row.problem.isVisible()
    assert row.step.state is StepState.WAITING


def test_covering_the_vessel_starts_the_souring(desk, batch, panel, qtbot):
    finish_until(desk, batch, StepKind.COVER, temperature_c=27.0)
    with qtbot.waitSignal(panel.souring_started) as heard:
        panel.present_row().done_button.click()
    assert heard.args == [batch.id]
    assert desk.batches.get(batch.id).stage is BatchStage.SOURING
    assert panel.present_row() is None


def test_seconds_are_counted_only_while_a_timer_runs_in_sight(panel):
    timer = panel.findChild(QTimer, "run_sheet_tick")
    assert not timer.isActive()
    panel.present_row().begin_button.click()
    assert timer.isActive()
    panel.hide()
    assert not timer.isActive()
    panel.show()
    assert timer.isActive()
    panel.present_row().pause_button.click()
    assert not timer.isActive()


def test_a_hidden_panel_catches_up_when_shown(desk, batch, panel):
    panel.hide()
    desk.brewing.finish(desk.brewing.steps(batch.id)[0].id)
    panel.show()
    assert panel.present_row().step.kind is StepKind.STEEP


def test_before_brewing_it_says_what_will_be_here(desk, panel):
    planned = plan_batch(desk, name="Green tea 1", vessel="Crock")
    panel.set_batch(planned.id)
    assert panel.rows() == ()
    assert panel.empty.isVisible()
    desk.brewing.start(planned.id)
    assert len(panel.rows()) > 0
    desk.history.undo()
    assert panel.rows() == ()
    panel.set_batch(None)
    assert panel.empty.isVisible()


@pytest.mark.parametrize(
    ("seconds", "words"),
    [
        (600.0, "10:00"),
        (59.2, "1:00"),
        (0.4, "0:01"),
        (0.0, "0:00"),
        (-0.4, "0:00"),
        (-61.0, "+1:01"),
        (7510.0, "2:05:10"),
    ],
)
def test_countdowns_round_up_so_that_zero_means_over(seconds, words):
    assert countdown_words(seconds) == words


@pytest.mark.parametrize(
    ("seconds", "words"), [(600, "10 min"), (3600, "1 h"), (7500, "2 h 5 min"), (90, "2 min")]
)
def test_planned_times_are_said_in_minutes_and_hours(seconds, words):
    assert length_words(seconds) == words


def test_sweet_tea_left_standing_is_warned_of_on_the_sheet(desk, qtbot):
    batch = brewing_batch(desk)
    panel = RunSheetPanel(desk)
    qtbot.addWidget(panel)
    for step in desk.brewing.steps(batch.id):
        if step.kind is StepKind.COOL:
            break
        desk.brewing.finish(step.id)
    panel.set_batch(batch.id)
    assert panel.standing() is None
    desk.clock.advance(hours=5)
    panel.refresh()
    assert panel.standing().code == "uncultured_too_long"
    panel.grab()


def test_the_temperature_field_names_the_unit_it_reads_after_units_were_changed(desk, qtbot):
    batch = brewing_batch(desk)
    panel = RunSheetPanel(desk)
    qtbot.addWidget(panel)
    panel.set_batch(batch.id)
    panel.show()
    for step in desk.brewing.steps(batch.id):
        if step.kind is StepKind.COOL:
            break
        desk.brewing.finish(step.id)
    panel.refresh()
    assert panel.present_row().temperature.line.placeholderText() == "°C"
    desk.settings.put_unit(Kind.TEMPERATURE, "°F")
    row = panel.present_row()
    assert row.temperature.line.placeholderText() == "°F"
    qtbot.keyClicks(row.temperature.line, "104")
    assert row.temperature_c() == pytest.approx(40.0)
