"""Batches from plan to end."""

from __future__ import annotations

from dataclasses import replace

import pytest

from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, CultureState, Material, StarterTaste, StepState, TeaKind
from culturecore.sweettea import Starter


def test_a_plan_keeps_the_wish_and_the_amounts_reckoned_for_it(kit):
    vessel = kit.vessel()
    wish = replace(kit.batches.default_wish(vessel.id), sugar_g_per_l=60.0, tea_kind=TeaKind.GREEN)
    preview = kit.batches.plan_preview(wish)

    batch = kit.batches.plan(vessel.id, None, "  Green one ", wish)

    assert batch.name == "Green one"
    assert batch.stage is BatchStage.PLANNED
    assert batch.planned_at == kit.clock.now()
    assert (batch.sugar_g_per_l, batch.tea_kind) == (60.0, TeaKind.GREEN)
    assert batch.sugar_g == preview.sugar_g
    assert batch.starter_volume_l == preview.starter_volume_l
    assert batch.start_ph_low <= batch.start_ph <= batch.start_ph_high
    assert kit.batches.live_in(vessel.id) == batch


def test_the_default_wish_fills_to_the_working_volume_and_takes_the_place_and_limit(kit):
    kit.settings.put("culture_limit_c", 28.0)
    vessel = kit.vessel()
    kit.vessels.edit_place(vessel.place_id, temperature_c=24.0)

    wish = kit.batches.default_wish(vessel.id)

    assert wish.fill_volume_l == vessel.working_volume_l
    assert wish.place_temperature_c == 24.0
    assert wish.culture_limit_c == 28.0


def test_the_wish_of_a_batch_plans_the_same_batch_again(kit):
    starter = Starter(ph=3.1, ta_g_per_l=6.0, taste=StarterTaste.SOUR)
    batch = kit.plan(starter=starter, cold_water_c=12.0)

    wish = kit.batches.wish_of(batch)

    assert wish.starter == starter
    assert wish.starter_volume_l is None
    assert kit.batches.plan_preview(wish).sugar_g == pytest.approx(batch.sugar_g, abs=1e-9)


def test_the_makers_own_starter_amount_is_found_again_in_the_wish(kit):
    batch = kit.plan(starter_volume_l=0.9)
    assert kit.batches.wish_of(batch).starter_volume_l == 0.9


@pytest.mark.parametrize(
    "material", [Material.LEAD_CRYSTAL, Material.REACTIVE_METAL, Material.CERAMIC_UNKNOWN_GLAZE]
)
def test_no_batch_is_planned_in_a_vessel_of_bad_material(kit, material):
    vessel = kit.vessel(material=material)
    with pytest.raises(ImpossibleInput) as refused:
        kit.plan(vessel)
    assert (refused.value.field, refused.value.reason) == ("vessel_id", "material")
    assert kit.batches.all() == ()


def test_a_vessel_takes_one_live_batch(kit):
    vessel = kit.vessel()
    first = kit.plan(vessel)
    with pytest.raises(ImpossibleInput) as refused:
        kit.plan(vessel, name="Second")
    assert (refused.value.field, refused.value.reason) == ("vessel_id", "occupied")

    kit.batches.drop_plan(first.id)
    assert kit.plan(vessel, name="Second").vessel_id == vessel.id


def test_a_vessel_in_which_another_culture_rests_is_refused(kit):
    vessel = kit.vessel()
    resting = kit.culture(vessel_id=vessel.id)
    with pytest.raises(ImpossibleInput) as refused:
        kit.plan(vessel, kit.culture("Another"))
    assert refused.value.reason == "resting_culture"

    assert kit.plan(vessel, resting).culture_id == resting.id


def test_a_culture_that_is_gone_cannot_be_planned_with(kit):
    culture = kit.culture(state=CultureState.GIVEN_AWAY)
    with pytest.raises(ImpossibleInput) as refused:
        kit.plan(culture=culture)
    assert (refused.value.field, refused.value.reason) == ("culture_id", "gone")


def test_more_than_the_brim_holds_is_refused(kit):
    with pytest.raises(ImpossibleInput) as refused:
        kit.plan(fill_volume_l=4.6)
    assert (refused.value.field, refused.value.high) == ("fill_volume_l", 4.5)


def test_a_batch_needs_a_name(kit):
    with pytest.raises(ImpossibleInput) as refused:
        kit.plan(name="  ")
    assert (refused.value.field, refused.value.reason) == ("name", "empty")


def test_suggested_names_count_up_for_each_tea(kit):
    assert kit.batches.suggested_name(TeaKind.BLACK) == "Black tea 1"
    kit.plan(name="black tea 1")
    assert kit.batches.suggested_name(TeaKind.BLACK) == "Black tea 2"
    assert kit.batches.suggested_name(TeaKind.OOLONG) == "Oolong tea 1"
    kit.plan(kit.vessel("Other"), name="Black tea 7")
    kit.plan(kit.vessel("Third"), name="Black tea for Sunday")
    assert kit.batches.suggested_name(TeaKind.BLACK) == "Black tea 8"


def test_changing_a_plan_reckons_it_anew(kit):
    batch = kit.plan()
    kit.clock.advance(hours=1)
    wish = replace(kit.batches.wish_of(batch), fill_volume_l=2.0)

    changed = kit.batches.edit_plan(
        batch.id, vessel_id=batch.vessel_id, culture_id=None, name="Half", wish=wish
    )

    assert (changed.name, changed.fill_volume_l) == ("Half", 2.0)
    assert changed.sugar_g == pytest.approx(batch.sugar_g / 2.0)
    assert changed.planned_at == batch.planned_at


def test_once_brewing_began_the_plan_stands(kit):
    batch = kit.plan()
    kit.brewing.start(batch.id)
    wish = kit.batches.wish_of(batch)
    with pytest.raises(ImpossibleInput, match="not_planned"):
        kit.batches.edit_plan(
            batch.id, vessel_id=batch.vessel_id, culture_id=None, name="x", wish=wish
        )
    with pytest.raises(ImpossibleInput, match="not_planned"):
        kit.batches.drop_plan(batch.id)


def test_drawing_off_ends_the_batch_and_lets_the_culture_rest_in_its_vessel(kit):
    culture = kit.culture()
    batch = kit.souring(culture=culture)
    kit.clock.advance(days=9)

    ended = kit.batches.draw_off(batch.id, "tastes right")

    assert (ended.stage, ended.ended_at) == (BatchStage.DRAWN_OFF, kit.clock.now())
    assert ended.end_reason == "tastes right"
    rested = kit.cultures.get(culture.id)
    assert (rested.state, rested.vessel_id) == (CultureState.RESTING, batch.vessel_id)
    assert kit.batches.live_in(batch.vessel_id) is None
    assert kit.batches.close(batch.id).stage is BatchStage.CLOSED


def test_only_a_souring_batch_is_drawn_off_and_only_a_drawn_off_one_closed(kit):
    batch = kit.plan()
    with pytest.raises(ImpossibleInput, match="not_souring"):
        kit.batches.draw_off(batch.id)
    with pytest.raises(ImpossibleInput, match="not_drawn_off"):
        kit.batches.close(batch.id)


def test_discarding_for_mold_takes_the_culture_with_it(kit):
    culture = kit.culture()
    batch = kit.souring(culture=culture)

    ended = kit.batches.discard(batch.id, "mold", culture_lost=True)

    assert (ended.stage, ended.end_reason) == (BatchStage.DISCARDED, "mold")
    lost = kit.cultures.get(culture.id)
    assert (lost.state, lost.vessel_id) == (CultureState.LOST, None)


def test_discarding_wants_a_reason_and_happens_once(kit):
    batch = kit.plan()
    with pytest.raises(ImpossibleInput) as refused:
        kit.batches.discard(batch.id, " ")
    assert refused.value.field == "reason"
    kit.batches.discard(batch.id, "spilled")
    with pytest.raises(ImpossibleInput, match="already_ended"):
        kit.batches.discard(batch.id, "again")


def test_discarding_a_brew_stops_its_timers(kit):
    batch = kit.plan()
    first = kit.brewing.start(batch.id)[0]
    kit.brewing.begin(first.id)
    kit.clock.advance(seconds=100)

    kit.batches.discard(batch.id, "spilled")

    assert kit.brewing.running_steps() == ()
    stopped = kit.brewing.steps(batch.id)[0]
    assert stopped.state is StepState.PAUSED
    assert stopped.remaining_s == pytest.approx(200.0)


def test_the_same_batch_name_may_come_twice_but_vessels_are_told_apart(kit):
    one = kit.plan(kit.vessel("One"), name="Same")
    two = kit.plan(kit.vessel("Two"), name="Same")
    assert [row.id for row in kit.batches.all(stages=[BatchStage.PLANNED])] == [two.id, one.id]
