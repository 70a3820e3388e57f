"""A culture grown from a bottle: planned, mixed, watched, called grown; or given up, or lost."""

from __future__ import annotations

from dataclasses import replace

import pytest

from brewdesk.services.brewing import StepShut
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.growing import BottleKind, Growing, film_verdict
from brewdesk.services.reminders import Reminders
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    CultureOrigin,
    CultureState,
    Look,
    Quantity,
    ReminderKind,
    StepKind,
)
from tests.helpers.dump import dump


@pytest.fixture
def growing(kit):
    return Growing(kit.door, kit.settings)


@pytest.fixture
def begun(kit, growing):
    vessel = kit.vessel()
    return growing.start(
        vessel.id, name="Sprout", wish=growing.default_wish(vessel.id), source="corner shop"
    )


@pytest.fixture
def mixed(kit, begun):
    for step in kit.brewing.start(begun.id):
        kit.brewing.finish(step.id, 25.0)
    return kit.batches.get(begun.id)


def test_the_usual_amounts_are_a_tenth_of_a_litre_in_half_a_litre(kit, growing):
    wish = growing.default_wish(kit.vessel().id)
    assert wish.fill_volume_l == pytest.approx(0.6)
    assert wish.starter_volume_l == pytest.approx(0.1)
    assert wish.sugar_g_per_l == 50.0
    plan = kit.batches.plan_preview(wish)
    assert plan.sweet_tea_volume_l == pytest.approx(0.5)
    assert plan.sugar_g == pytest.approx(25.0)


def test_a_small_vessel_gets_less_in_the_same_parts(kit, growing):
    small = kit.vessel(brim_volume_l=0.35, working_volume_l=0.3, inner_diameter_cm=7.0)
    wish = growing.default_wish(small.id)
    assert wish.fill_volume_l == pytest.approx(0.3)
    assert wish.starter_volume_l == pytest.approx(0.05)


def test_a_culture_is_forming_from_the_plan_on(kit, begun):
    culture = kit.cultures.get(begun.culture_id)
    assert begun.purpose is BatchPurpose.CULTURE
    assert begun.stage is BatchStage.PLANNED
    assert culture.origin is CultureOrigin.RAW_BOTTLE
    assert (culture.state, culture.vessel_id) == (CultureState.FORMING, None)
    assert culture.note == "corner shop"


def test_hot_tea_is_kept_from_the_raw_liquid_as_from_any_starter(kit, begun):
    steps = kit.brewing.start(begun.id)
    assert StepKind.CULTURE_IN not in [step.kind for step in steps]
    starter = next(step for step in steps if step.kind is StepKind.STARTER_IN)
    with pytest.raises(StepShut):
        kit.brewing.finish(starter.id, 45.0)


def test_once_mixed_the_culture_forms_in_the_vessel_and_is_born(kit, mixed):
    culture = kit.cultures.get(mixed.culture_id)
    assert mixed.stage is BatchStage.SOURING
    assert (culture.state, culture.vessel_id) == (CultureState.FORMING, mixed.vessel_id)
    assert culture.born_at == mixed.started_at


def test_one_mixed_already_is_entered_without_its_run_sheet(kit, begun):
    batch = kit.brewing.note_already_in(begun.id, kit.clock.now(), 24.0)
    culture = kit.cultures.get(batch.culture_id)
    assert (culture.state, culture.vessel_id) == (CultureState.FORMING, batch.vessel_id)
    assert [step.kind for step in kit.brewing.steps(batch.id)] == [StepKind.STARTER_IN]


def test_it_grows_until_it_is_called_grown_and_then_rests_in_its_liquid(kit, growing, mixed):
    kit.clock.advance(days=7)
    growing.look(mixed.id, Look.FINE, film_mm=1.0, text="thin all over")
    growth = growing.growth_of(mixed.culture_id)
    assert (growth.day, growth.film_seen_day, growth.thickness_mm) == (7, 7, 1.0)
    assert growth.verdict.code == "film_growing"
    kit.clock.advance(days=10)
    culture = growing.finish(mixed.id, 4.0)
    assert culture.state is CultureState.RESTING
    assert (culture.vessel_id, culture.pellicle_mm) == (mixed.vessel_id, 4.0)
    assert culture.rest_volume_l == pytest.approx(mixed.fill_volume_l)
    assert kit.batches.get(mixed.id).stage is BatchStage.CLOSED
    assert growing.growth_of(culture.id) is None
    with pytest.raises(ImpossibleInput) as refused:
        growing.finish(mixed.id, 4.0)
    assert refused.value.reason == "not_growing"


def test_it_is_not_called_grown_before_it_was_mixed(growing, begun):
    with pytest.raises(ImpossibleInput) as refused:
        growing.finish(begun.id, 4.0)
    assert refused.value.reason == "not_souring"


def test_thin_films_are_told_and_not_refused(growing, mixed):
    assert growing.thickness_verdict(1.5).code == "film_thin"
    assert growing.thickness_verdict(4.0).code == "film_solid"
    assert growing.finish(mixed.id, 1.5).pellicle_mm == 1.5
    with pytest.raises(ImpossibleInput) as refused:
        growing.look(mixed.id, Look.FINE, film_mm=float("nan"))
    assert refused.value.field in ("batch_id", "pellicle_mm")


def test_no_thickness_can_be_no_number(growing, mixed):
    with pytest.raises(ImpossibleInput) as refused:
        growing.look(mixed.id, Look.FINE, film_mm=float("nan"))
    assert refused.value.field == "pellicle_mm"


@pytest.mark.parametrize(
    ("day", "mm", "look", "code", "level"),
    [
        (None, None, None, "film_not_begun", Level.INFORM),
        (2, None, None, "film_awaited", Level.INFORM),
        (10, None, Look.FINE, "film_awaited", Level.INFORM),
        (11, None, None, "film_overdue", Level.WARN),
        (12, 1.0, Look.FINE, "film_growing", Level.INFORM),
        (30, 2.0, Look.FINE, "film_slow", Level.INFORM),
        (15, 3.0, Look.FINE, "film_ready", Level.INFORM),
        (15, 9.0, Look.UNSURE, "film_unsure", Level.WARN),
        (15, 9.0, Look.MOLD, "mold_discard_all", Level.STOP),
    ],
)
def test_the_film_is_judged_by_day_thickness_and_look(day, mm, look, code, level):
    verdict = film_verdict(day, mm, look)
    assert (verdict.code, verdict.level) == (code, level)


@pytest.mark.parametrize("kind", list(BottleKind))
def test_no_bottle_is_refused_and_dead_ones_are_warned_of(growing, kind):
    (verdict,) = growing.bottle_verdicts(kind)
    is_doubtful = kind not in (BottleKind.RAW_PLAIN, BottleKind.STARTER)
    assert (verdict.level is Level.WARN) == is_doubtful


def test_a_plan_given_up_leaves_no_culture_behind(kit, begun):
    before_redo = dump(kit.path)
    kit.batches.drop_plan(begun.id)
    assert kit.cultures.all() == ()
    kit.history.undo()
    assert dump(kit.path) == before_redo


def test_a_batch_thrown_away_takes_what_was_forming_with_it(kit, mixed):
    kit.batches.discard(mixed.id, "mold", culture_lost=True)
    culture = kit.cultures.get(mixed.culture_id)
    assert (culture.state, culture.gone_to) == (CultureState.LOST, "mold")


def test_changing_the_plan_keeps_what_it_is_for(kit, growing, begun):
    wish = replace(kit.batches.wish_of(begun), fill_volume_l=0.5)
    changed = kit.batches.edit_plan(
        begun.id,
        vessel_id=begun.vessel_id,
        culture_id=begun.culture_id,
        name="Sprout jar",
        wish=wish,
    )
    assert changed.purpose is BatchPurpose.CULTURE
    assert changed.fill_volume_l == 0.5


def test_what_is_forming_is_used_for_nothing_else(kit, begun):
    with pytest.raises(ImpossibleInput) as refused:
        kit.plan(kit.vessel("Second"), kit.cultures.get(begun.culture_id), name="Brew")
    assert (refused.value.field, refused.value.reason) == ("culture_id", "forming")
    care = CultureCare(kit.door, kit.settings)
    with pytest.raises(ImpossibleInput) as refused:
        care.split(begun.culture_id, name="Daughter", vessel_id=None)
    assert refused.value.reason == "forming"


def test_one_grown_from_starter_knows_its_parent(kit, growing):
    mother, vessel = kit.culture("Mother"), kit.vessel()
    batch = growing.start(
        vessel.id, name="Sprout", wish=growing.default_wish(vessel.id), parent_id=mother.id
    )
    culture = kit.cultures.get(batch.culture_id)
    assert culture.origin is CultureOrigin.STARTER
    assert batch.starter_culture_id == mother.id
    assert kit.cultures.parents_of(culture.id) == (mother,)


def test_a_name_that_is_taken_is_refused_and_nothing_is_planned(kit, growing):
    kit.culture("Sprout")
    vessel = kit.vessel()
    with pytest.raises(ImpossibleInput) as refused:
        growing.start(vessel.id, name="sprout", wish=growing.default_wish(vessel.id))
    assert (refused.value.field, refused.value.reason) == ("name", "taken")
    assert kit.batches.all() == ()


def test_the_shelf_never_calls_it_ready_to_taste(kit, growing, mixed):
    kit.clock.advance(days=20)
    (jar,) = kit.shelf.jars()
    assert jar.stage_code == "souring"
    assert jar.culture.id == mixed.culture_id


def test_looks_for_film_and_mold_are_asked_for_but_no_tasting(kit, mixed):
    reminders = Reminders(kit.door)
    kit.clock.advance(days=6)
    reminders.sync()
    kinds = {item.reminder.kind for item in reminders.listed()}
    assert ReminderKind.FILM_LOOK in kinds
    assert ReminderKind.MOLD_LOOK in kinds
    assert ReminderKind.TASTE not in kinds


def test_a_look_is_in_the_journal_of_the_batch(kit, growing, mixed):
    kit.clock.advance(days=6)
    growing.look(mixed.id, Look.FINE, film_mm=1.0)
    quantities = [row.quantity for row in kit.readings.of_batch(mixed.id)]
    assert quantities == [Quantity.LOOK, Quantity.PELLICLE_MM]
    assert "Look" in kit.journal.of_batch(mixed.id)[0].text


def test_its_curve_names_no_tasting_window(kit, mixed):
    from brewdesk.services.forecasts import Forecasts
    from tests.helpers.fakes import InlineJobs

    forecasts = Forecasts(kit.door, InlineJobs())
    kit.clock.advance(days=3)
    forecasts.request(mixed.id)
    view = forecasts.now(mixed.id)
    assert view.forecast is not None
    assert (view.opens_on, view.closes_on) == (None, None)
    assert "no tasting window" in view.text_summary
    assert view.notes == ()
