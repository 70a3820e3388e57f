"""The run sheet: order, timers, the gate for everything live, and the start of souring."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.brewing import STEEP_S, StepShut, cooling_estimate_s, gate_verdict
from brewdesk.store.records import Step
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import BatchStage, CultureState, StepKind, StepState


def _sheet(kit, batch):
    return {step.kind: step for step in kit.brewing.start(batch.id)}


def test_the_run_sheet_follows_the_usual_order(kit):
    batch = kit.plan(culture=kit.culture())
    steps = kit.brewing.start(batch.id)
    assert [step.kind for step in steps] == list(StepKind)
    assert {step.state for step in steps} == {StepState.WAITING}
    assert kit.brewing.steps(batch.id) == steps
    assert kit.batches.get(batch.id).stage is BatchStage.BREWING


def test_without_a_culture_the_run_sheet_has_no_culture_to_put_in(kit):
    kinds = [step.kind for step in kit.brewing.start(kit.plan().id)]
    assert StepKind.CULTURE_IN not in kinds
    assert StepKind.STARTER_IN in kinds


def test_tea_steeps_for_ten_minutes(kit):
    # Virginia Tech Extension FST-297, Table 1: boil, steep 10 min.
    assert STEEP_S == 10 * 60
    assert _sheet(kit, kit.plan())[StepKind.STEEP].planned_s == 600


def test_brewing_begins_once(kit):
    batch = kit.plan()
    kit.brewing.start(batch.id)
    with pytest.raises(ImpossibleInput, match="not_planned"):
        kit.brewing.start(batch.id)


def test_cooling_has_a_timer_only_if_the_mix_is_too_warm(kit):
    cool = kit.plan(kit.vessel("Cool"), cold_water_c=10.0, hot_water_c=80.0)
    assert cool.mixed_temperature_c <= cool.culture_limit_c
    assert _sheet(kit, cool)[StepKind.COOL].planned_s is None

    warm = kit.plan(kit.vessel("Warm"), name="Warm", cold_water_c=30.0, hot_water_c=95.0)
    assert warm.mixed_temperature_c > warm.culture_limit_c
    planned_s = _sheet(kit, warm)[StepKind.COOL].planned_s
    assert 15 * 60 < planned_s < 12 * 3600


def test_no_time_is_foretold_where_it_never_cools_enough(kit):
    batch = kit.plan(cold_water_c=35.0, place_temperature_c=31.0)
    assert cooling_estimate_s(batch) is None


def test_a_timer_counts_down_and_past_its_end(kit):
    step = _sheet(kit, kit.plan())[StepKind.STEEP]
    assert kit.brewing.remaining_s(step) == 600.0
    step = kit.brewing.begin(step.id)
    assert step.ends_at == kit.clock.now() + timedelta(seconds=600)
    kit.clock.advance(seconds=610)
    assert kit.brewing.remaining_s(step) == -10.0
    assert kit.brewing.running_steps() == (step,)


def test_a_pause_stops_the_timer_and_resuming_lets_it_run_on(kit):
    step = kit.brewing.begin(_sheet(kit, kit.plan())[StepKind.STEEP].id)
    kit.clock.advance(seconds=200)
    step = kit.brewing.pause(step.id)
    kit.clock.advance(hours=5)
    assert kit.brewing.remaining_s(step) == 400.0
    assert kit.brewing.running_steps() == ()
    step = kit.brewing.resume(step.id)
    assert step.ends_at == kit.clock.now() + timedelta(seconds=400)
    assert step.remaining_s is None


def test_more_time_is_added_to_a_step_whatever_its_state(kit):
    step = _sheet(kit, kit.plan())[StepKind.STEEP]
    assert kit.brewing.extend(step.id, 60.0).planned_s == 660
    step = kit.brewing.begin(step.id)
    kit.clock.advance(seconds=100)
    step = kit.brewing.extend(step.id, 40.0)
    assert kit.brewing.remaining_s(step) == 600.0
    step = kit.brewing.extend(kit.brewing.pause(step.id).id, 30.0)
    assert kit.brewing.remaining_s(step) == 630.0


def test_a_step_that_has_rung_is_extended_from_now(kit):
    step = kit.brewing.begin(_sheet(kit, kit.plan())[StepKind.STEEP].id)
    kit.clock.advance(seconds=900)
    step = kit.brewing.extend(step.id, 120.0)
    assert kit.brewing.remaining_s(step) == 120.0


@pytest.mark.parametrize("seconds", [0.0, -5.0, float("nan"), float("inf"), 1e9])
def test_extra_time_that_cannot_be_is_refused(kit, seconds):
    step = _sheet(kit, kit.plan())[StepKind.STEEP]
    with pytest.raises(ImpossibleInput) as refused:
        kit.brewing.extend(step.id, seconds)
    assert refused.value.field == "seconds"


def test_a_step_without_timer_is_begun_and_done_without_one(kit):
    step = kit.brewing.begin(_sheet(kit, kit.plan())[StepKind.LIFT_TEA].id)
    assert (step.state, step.ends_at) == (StepState.RUNNING, None)
    assert kit.brewing.remaining_s(step) is None
    assert kit.brewing.running_steps() == ()
    done = kit.brewing.finish(step.id)
    assert (done.state, done.finished_at) == (StepState.DONE, kit.clock.now())


def test_steps_are_moved_only_from_the_state_they_are_in(kit):
    step = _sheet(kit, kit.plan())[StepKind.STEEP]
    for act, reason in [(kit.brewing.pause, "not_running"), (kit.brewing.resume, "not_paused")]:
        with pytest.raises(ImpossibleInput, match=reason):
            act(step.id)
    kit.brewing.begin(step.id)
    with pytest.raises(ImpossibleInput, match="not_waiting"):
        kit.brewing.begin(step.id)
    kit.brewing.finish(step.id)
    for act in (kit.brewing.finish, lambda step_id: kit.brewing.extend(step_id, 60.0)):
        with pytest.raises(ImpossibleInput, match="done"):
            act(step.id)


def test_a_batch_that_has_ended_has_no_steps_to_do(kit):
    batch = kit.plan()
    step = kit.brewing.start(batch.id)[0]
    kit.batches.discard(batch.id, "spilled")
    with pytest.raises(ImpossibleInput, match="not_brewing"):
        kit.brewing.begin(step.id)


@pytest.mark.parametrize("kind", [StepKind.STARTER_IN, StepKind.CULTURE_IN])
def test_nothing_live_goes_in_before_the_temperature_is_known(kit, kind):
    step = _sheet(kit, kit.plan(culture=kit.culture()))[kind]
    with pytest.raises(StepShut) as shut:
        kit.brewing.finish(step.id)
    assert shut.value.verdict.code == "culture_temperature_unknown"
    assert shut.value.verdict.level is Level.STOP
    assert kit.brewing.step(step.id).state is StepState.WAITING


@pytest.mark.parametrize("kind", [StepKind.STARTER_IN, StepKind.CULTURE_IN])
@pytest.mark.parametrize(
    ("temperature_c", "code"), [(30.1, "culture_too_warm"), (55.0, "culture_far_too_warm")]
)
def test_nothing_live_goes_into_hot_tea(kit, kind, temperature_c, code):
    step = _sheet(kit, kit.plan(culture=kit.culture()))[kind]
    assert kit.brewing.gate(step.id, temperature_c).code == code
    with pytest.raises(StepShut) as shut:
        kit.brewing.finish(step.id, temperature_c)
    assert shut.value.verdict.code == code
    assert kit.brewing.step(step.id).temperature_c is None


def test_at_the_limit_the_step_is_open(kit):
    step = _sheet(kit, kit.plan(culture=kit.culture()))[StepKind.CULTURE_IN]
    assert kit.brewing.gate(step.id, 30.0) is None
    assert kit.brewing.finish(step.id, 30.0).temperature_c == 30.0


def test_a_temperature_taken_after_cooling_opens_the_later_steps(kit):
    sheet = _sheet(kit, kit.plan(culture=kit.culture()))
    kit.brewing.finish(sheet[StepKind.COOL].id, 29.0)
    assert kit.brewing.finish(sheet[StepKind.STARTER_IN].id).state is StepState.DONE
    assert kit.brewing.finish(sheet[StepKind.CULTURE_IN].id).state is StepState.DONE


def test_a_temperature_too_high_after_cooling_keeps_the_later_steps_shut(kit):
    sheet = _sheet(kit, kit.plan(culture=kit.culture()))
    kit.brewing.finish(sheet[StepKind.COOL].id, 38.0)
    with pytest.raises(StepShut):
        kit.brewing.finish(sheet[StepKind.STARTER_IN].id)
    kit.brewing.finish(sheet[StepKind.STARTER_IN].id, 28.0)
    assert kit.brewing.gate(sheet[StepKind.CULTURE_IN].id) is None


def test_a_temperature_while_steeping_says_nothing_of_the_culture(kit):
    sheet = _sheet(kit, kit.plan(culture=kit.culture()))
    kit.brewing.finish(sheet[StepKind.BOIL].id, 20.0)
    assert kit.brewing.gate(sheet[StepKind.CULTURE_IN].id).code == "culture_temperature_unknown"


def test_an_override_with_a_reason_is_done_and_written_down(kit):
    sheet = _sheet(kit, kit.plan(culture=kit.culture()))
    step = kit.brewing.finish(sheet[StepKind.STARTER_IN].id, 35.0, "  no time ")
    assert (step.state, step.temperature_c, step.override_reason) == (
        StepState.DONE,
        35.0,
        "no time",
    )
    assert kit.history.undo_act().facts["override_reason"] == "no time"
    # One override opens one step.
    with pytest.raises(StepShut):
        kit.brewing.finish(sheet[StepKind.CULTURE_IN].id)


def test_blank_words_are_no_reason(kit):
    step = _sheet(kit, kit.plan(culture=kit.culture()))[StepKind.CULTURE_IN]
    with pytest.raises(StepShut):
        kit.brewing.finish(step.id, 35.0, "   ")


@pytest.mark.parametrize("temperature_c", [float("nan"), 130.0, -40.0])
def test_a_temperature_no_brew_has_is_refused(kit, temperature_c):
    step = _sheet(kit, kit.plan())[StepKind.COOL]
    with pytest.raises(ImpossibleInput) as refused:
        kit.brewing.finish(step.id, temperature_c)
    assert refused.value.field == "temperature_c"


def test_putting_the_culture_in_moves_it_to_the_vessel(kit):
    culture = kit.culture(vessel_id=kit.vessel("Shelf jar").id)
    batch = kit.plan(culture=culture)
    sheet = _sheet(kit, batch)
    kit.brewing.finish(sheet[StepKind.CULTURE_IN].id, 25.0)
    moved = kit.cultures.get(culture.id)
    assert (moved.vessel_id, moved.state) == (batch.vessel_id, CultureState.AT_WORK)
    kit.history.undo()
    assert kit.cultures.get(culture.id) == culture


def test_covering_starts_the_souring_at_the_moment_the_starter_went_in(kit):
    batch = kit.plan(culture=kit.culture())
    sheet = _sheet(kit, batch)
    kit.clock.advance(minutes=50)
    live_since = kit.clock.now()
    kit.brewing.finish(sheet[StepKind.STARTER_IN].id, 25.0)
    kit.clock.advance(minutes=4)
    kit.brewing.finish(sheet[StepKind.CULTURE_IN].id)
    kit.clock.advance(minutes=3)
    kit.brewing.finish(sheet[StepKind.COVER].id)
    souring = kit.batches.get(batch.id)
    assert (souring.stage, souring.started_at) == (BatchStage.SOURING, live_since)


def test_a_vessel_with_nothing_live_in_it_is_not_souring(kit):
    batch = kit.plan()
    sheet = _sheet(kit, batch)
    with pytest.raises(ImpossibleInput, match="nothing_live_in"):
        kit.brewing.finish(sheet[StepKind.COVER].id)
    assert kit.batches.get(batch.id).stage is BatchStage.BREWING


def test_a_culture_put_in_late_leaves_the_start_as_it_was(kit):
    batch = kit.plan(culture=kit.culture())
    sheet = _sheet(kit, batch)
    kit.brewing.finish(sheet[StepKind.STARTER_IN].id, 25.0)
    kit.brewing.finish(sheet[StepKind.COVER].id)
    started_at = kit.batches.get(batch.id).started_at
    kit.clock.advance(hours=2)
    kit.brewing.finish(sheet[StepKind.CULTURE_IN].id, 24.0)
    assert kit.batches.get(batch.id).started_at == started_at


@pytest.mark.parametrize("temperature_c", [None, 35.0])
def test_a_batch_begun_too_warm_or_unmeasured_is_entered_only_with_a_reason(kit, temperature_c):
    batch = kit.plan()
    began = kit.clock.now() - timedelta(days=4)
    with pytest.raises(StepShut):
        kit.brewing.note_already_in(batch.id, began, temperature_c)
    assert kit.batches.get(batch.id) == batch

    kit.brewing.note_already_in(batch.id, began, temperature_c, "it was lukewarm")
    text = kit.journal.of_batch(batch.id)[0].text
    assert "it was lukewarm" in text
    assert ("35.0 °C" in text) == (temperature_c is not None)


@given(
    limit_c=st.floats(20.0, 40.0),
    given_c=st.none() | st.floats(-5.0, 105.0),
    cooled_c=st.none() | st.floats(-5.0, 105.0),
)
def test_the_gate_never_opens_without_a_temperature_at_or_below_the_limit(
    limit_c, given_c, cooled_c
):
    cool = Step(
        id=1, batch_id=1, position=6, kind=StepKind.COOL, state=StepState.DONE,
        temperature_c=cooled_c,
    )  # fmt: skip
    counted_c = given_c if given_c is not None else cooled_c
    is_open = gate_verdict((cool,), limit_c, given_c) is None
    assert is_open == (counted_c is not None and counted_c <= limit_c and counted_c < 40.0)
