"""Liquid from jar to jar: it balances to the drop, and what must not be poured is not."""

from __future__ import annotations

import pytest

from brewdesk.services.brewing import StepShut
from brewdesk.services.ledger import DROP_L
from brewdesk.store.records import PlaceDraft, ReadingDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    BatchStage,
    CareKind,
    CultureOrigin,
    CultureState,
    Material,
    Method,
    Quantity,
    TeaKind,
    TransferKind,
)
from tests.services.history_liquids import (
    souring_and_empty,
    souring_and_plan,
    souring_and_store,
    two_souring,
)

SWEET = (60.0, TeaKind.BLACK, 5.0)


def refused(act, field, reason):
    with pytest.raises(ImpossibleInput) as caught:
        act()
    assert (caught.value.field, caught.value.reason) == (field, reason)
    return caught.value


def read_ph(kit, batch, ph=3.1, quantity=Quantity.PH):
    kit.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now(),
                quantity=quantity,
                method=Method.METER if quantity is Quantity.PH else Method.TITRATION,
                value=ph,
            )
        ]
    )


def flag(kit, table, row_id):
    kit.door.quiet(lambda unit: getattr(unit, table).change(row_id, suspect_at=kit.clock.now()))


# --- the balance ------------------------------------------------------------------------


def test_a_plan_holds_nothing_and_a_souring_batch_what_it_was_filled_with(kit):
    plan = kit.plan()
    assert kit.liquids.balance(plan.id).now_l == 0.0
    batch = kit.souring(kit.vessel("Two"), fill_volume_l=3.0)
    assert kit.liquids.volume_now_l(batch.id) == 3.0


def test_what_is_drawn_and_topped_up_adds_up(kit):
    batch = kit.souring(fill_volume_l=3.0)
    kit.liquids.draw_part(batch.id, 1.2)
    kit.liquids.draw_part(batch.id, 0.05, TransferKind.SAMPLE)
    kit.liquids.top_up(batch.id, 0.7, *SWEET, 22.0)
    balance = kit.liquids.balance(batch.id)
    assert balance.filled_l == 3.0
    assert balance.in_l == pytest.approx(0.7)
    assert balance.out_l == pytest.approx(1.25)
    assert balance.now_l == pytest.approx(2.45)
    (jar,) = kit.shelf.jars()
    assert jar.fill_volume_l == pytest.approx(2.45)


def test_more_than_there_is_cannot_be_drawn(kit):
    batch = kit.souring(fill_volume_l=3.0)
    kit.liquids.draw_part(batch.id, 2.0)
    error = refused(lambda: kit.liquids.draw_part(batch.id, 1.1), "volume_l", "not_there")
    assert error.high == pytest.approx(1.0)


@pytest.mark.parametrize("volume_l", [0.0, -1.0, DROP_L / 2, float("nan"), float("inf")])
def test_less_than_a_drop_is_nothing_to_draw(kit, volume_l):
    batch = kit.souring()
    with pytest.raises(ImpossibleInput) as caught:
        kit.liquids.draw_part(batch.id, volume_l)
    assert caught.value.field == "volume_l"


def test_a_part_leaves_something_behind(kit):
    batch = kit.souring(fill_volume_l=3.0)
    refused(lambda: kit.liquids.draw_part(batch.id, 3.0), "volume_l", "all_of_it")


def test_a_tenth_ten_times_leaves_what_is_left_and_no_rounding(kit):
    batch = kit.souring(fill_volume_l=1.0)
    for _ in range(9):
        kit.liquids.draw_part(batch.id, 0.1)
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(0.1, abs=1e-12)
    kit.liquids.draw_part(batch.id, 0.05)
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(0.05, abs=1e-12)


def test_a_plan_and_a_batch_that_has_ended_cannot_be_drawn(kit):
    plan = kit.plan()
    refused(lambda: kit.liquids.draw_part(plan.id, 0.1), "batch_id", "no_liquid")
    batch = kit.souring(kit.vessel("Two"))
    kit.batches.draw_off(batch.id)
    refused(lambda: kit.liquids.draw_part(batch.id, 0.1), "batch_id", "no_liquid")


@pytest.mark.parametrize("kind", [TransferKind.MERGE, TransferKind.TOP_UP, TransferKind.STARTER])
def test_what_is_an_act_of_its_own_is_no_drawing(kit, kind):
    batch = kit.souring()
    refused(lambda: kit.liquids.draw_part(batch.id, 0.1, kind), "kind", "not_offered")


def test_drawing_all_counts_what_was_left_as_drawn(kit):
    batch = kit.souring(fill_volume_l=3.0)
    kit.liquids.draw_part(batch.id, 1.0)
    kit.batches.draw_off(batch.id)
    rows = kit.liquids.transfers(batch.id)
    assert [(row.kind, row.volume_l) for row in rows] == [
        (TransferKind.DRINK, 1.0),
        (TransferKind.DRINK, 2.0),
    ]
    balance = kit.liquids.balance(batch.id)
    assert (balance.out_l, balance.now_l) == (3.0, 0.0)


def test_what_is_discarded_counts_as_lost(kit):
    batch = kit.souring(fill_volume_l=3.0)
    kit.batches.discard(batch.id, "mold")
    (row,) = kit.liquids.transfers(batch.id)
    assert (row.kind, row.volume_l) == (TransferKind.LOSS, 3.0)


def test_what_was_thrown_away_before_the_starter_was_in_is_no_batch_lost(kit):
    batch = kit.plan()
    kit.brewing.start(batch.id)
    kit.batches.discard(batch.id, "burnt")
    assert kit.liquids.transfers(batch.id) == ()


def test_what_is_kept_back_at_drawing_off_stays_with_the_culture(kit):
    culture = kit.culture()
    batch = kit.souring(culture=culture, fill_volume_l=3.0)
    kit.batches.draw_off(batch.id, kept_l=0.4)
    rested = kit.cultures.get(culture.id)
    assert (rested.state, rested.rest_volume_l) == (CultureState.RESTING, 0.4)
    kept, drunk = kit.liquids.transfers(batch.id)
    assert (kept.kind, kept.to_culture_id) == (TransferKind.STARTER, culture.id)
    assert drunk.volume_l == pytest.approx(2.6)
    (jar,) = kit.shelf.jars()
    assert jar.fill_volume_l == pytest.approx(0.4)


def test_nothing_can_be_kept_with_a_culture_that_is_not_there(kit):
    batch = kit.souring(fill_volume_l=3.0)
    refused(lambda: kit.batches.draw_off(batch.id, kept_l=0.4), "kept_l", "no_culture")
    other = kit.souring(kit.vessel("Two"), kit.culture(), fill_volume_l=3.0)
    refused(lambda: kit.batches.draw_off(other.id, kept_l=3.4), "kept_l", "not_there")


def test_the_readings_stay_as_they_were(kit):
    batch = kit.souring(fill_volume_l=3.0)
    read_ph(kit, batch)
    before = kit.readings.of_batch(batch.id)
    kit.liquids.draw_part(batch.id, 1.0)
    kit.liquids.top_up(batch.id, 0.5, *SWEET, 22.0)
    kit.liquids.move_batch(batch.id, kit.vessel("Other").id)
    assert kit.readings.of_batch(batch.id) == before


# --- keeping starter ----------------------------------------------------------------------


def test_starter_is_kept_in_the_store_a_culture_rests_in(kit):
    batch, store = souring_and_store(kit)
    kit.liquids.keep_starter(batch.id, 0.4, store.id)
    assert kit.cultures.get(store.id).rest_volume_l == pytest.approx(0.9)
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(3.6)
    with kit.store.read() as unit:
        (care,) = unit.care.where(culture_id=store.id)
    assert (care.kind, care.volume_l) == (CareKind.TOPPED_UP, 0.4)


def test_the_store_is_never_filled_above_its_brim(kit):
    batch = kit.souring(kit.vessel("One"))
    small = kit.vessel("Cup", brim_volume_l=0.6, working_volume_l=0.5, inner_diameter_cm=8.0)
    store = kit.culture("Hotel", vessel_id=small.id, rest_volume_l=0.5)
    error = refused(
        lambda: kit.liquids.keep_starter(batch.id, 0.2, store.id),
        "volume_l",
        "above_brim_by_now",
    )
    assert error.high == pytest.approx(0.1)


def test_starter_is_kept_only_where_a_culture_rests(kit):
    batch = kit.souring(kit.vessel("One"))
    nowhere = kit.culture("Nowhere")
    refused(lambda: kit.liquids.keep_starter(batch.id, 0.2, nowhere.id), "culture_id", "no_liquid")
    assert kit.liquids.stores() == ()


def test_the_next_plan_without_starter_says_how_much_to_keep(kit):
    batch, plan = souring_and_plan(kit)
    assert kit.liquids.suggested_starter_l(batch.vessel_id) == plan.starter_volume_l
    assert kit.liquids.starter_suggestion().plan_name == plan.name
    kit.liquids.lend_starter(0.3, from_batch_id=batch.id, to_batch_id=plan.id)
    again = kit.liquids.starter_suggestion(batch.vessel_id)
    assert again.plan_name is None
    wish = kit.batches.default_wish(batch.vessel_id)
    assert again.volume_l == kit.batches.plan_preview(wish).starter_volume_l
    assert kit.liquids.suggested_starter_l() == 0.0


# --- topping up ---------------------------------------------------------------------------


@pytest.mark.parametrize("temperature_c", [None, 31.0, 60.0])
def test_warm_tea_is_not_topped_up_without_a_written_reason(kit, temperature_c):
    batch = kit.souring(fill_volume_l=2.0)
    with pytest.raises(StepShut) as shut:
        kit.liquids.top_up(batch.id, 0.5, *SWEET, temperature_c)
    assert shut.value.verdict.code in (
        "culture_temperature_unknown",
        "culture_too_warm",
        "culture_far_too_warm",
    )
    row = kit.liquids.top_up(batch.id, 0.5, *SWEET, temperature_c, "no thermometer here")
    assert row.override_reason == "no thermometer here"


def test_cool_tea_keeps_no_reason(kit):
    batch = kit.souring(fill_volume_l=2.0)
    row = kit.liquids.top_up(batch.id, 0.5, *SWEET, 30.0, "in case")
    assert row.override_reason == ""
    assert row.sugar_g == pytest.approx(30.0)
    assert row.tea_g == pytest.approx(2.5)


def test_topping_up_stops_at_the_brim(kit):
    batch = kit.souring(fill_volume_l=4.0)
    error = refused(
        lambda: kit.liquids.top_up(batch.id, 0.6, *SWEET, 22.0), "volume_l", "above_brim_by_now"
    )
    assert error.high == pytest.approx(0.5)
    kit.liquids.top_up(batch.id, 0.5, *SWEET, 22.0)
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(4.5)


def test_fresh_tea_lifts_the_ph_and_the_preview_says_so(kit):
    batch = kit.souring(fill_volume_l=2.0)
    kit.clock.advance(days=8)
    read_ph(kit, batch, 3.0)
    little, much = (
        kit.liquids.preview_top_up(
            batch.id,
            type(kit.liquids.fresh_like(batch.id))(
                volume_l=volume_l, sugar_g_per_l=60.0, tea_kind=TeaKind.BLACK, tea_g_per_l=5.0
            ),
        )
        for volume_l in (0.2, 2.4)
    )
    assert 3.0 < little.ph_after.value < much.ph_after.value
    assert little.after.volume_l == pytest.approx(2.2)
    assert {verdict.code for verdict in much.verdicts} >= {
        "top_up_large",
        "top_up_over_working",
    }
    assert little.verdicts == ()


def test_a_reading_from_before_topping_up_tells_nothing_of_the_jar_after(kit):
    batch = kit.souring(fill_volume_l=2.0)
    read_ph(kit, batch, 3.0)
    kit.clock.advance(hours=1)
    kit.liquids.top_up(batch.id, 0.5, *SWEET, 22.0)
    fresh = kit.liquids.fresh_like(batch.id)
    assert kit.liquids.preview_top_up(batch.id, fresh).ph_after is None


# --- pouring over and together --------------------------------------------------------------


def test_a_batch_moves_with_its_culture_and_takes_on_the_new_place(kit):
    batch, vessel = souring_and_empty(kit)
    cellar = kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    kit.vessels.edit(vessel.id, place_id=cellar.id)
    moved = kit.liquids.move_batch(batch.id, vessel.id)
    assert (moved.vessel_id, moved.place_temperature_c) == (vessel.id, 14.0)
    assert kit.cultures.get(batch.culture_id).vessel_id == vessel.id
    with kit.store.read() as unit:
        (row,) = unit.vessel_moves.where(batch_id=batch.id)
    assert (row.from_vessel_id, row.to_vessel_id) == (batch.vessel_id, vessel.id)


def test_a_batch_does_not_move_where_it_cannot_stand(kit):
    batch, other = two_souring(kit)
    small = kit.vessel("Cup", brim_volume_l=0.6, working_volume_l=0.5, inner_diameter_cm=8.0)
    copper = kit.vessel("Copper", material=Material.REACTIVE_METAL)
    gone = kit.vessels.retire(kit.vessel("Gone").id)
    store = kit.vessel("Store")
    kit.culture("Hotel", vessel_id=store.id)
    for vessel_id, field, reason in (
        (batch.vessel_id, "vessel_id", "same_vessel"),
        (other.vessel_id, "vessel_id", "occupied"),
        (small.id, "volume_l", "above_brim"),
        (copper.id, "vessel_id", "material"),
        (gone.id, "vessel_id", "retired"),
        (store.id, "vessel_id", "resting_culture"),
    ):
        refused(lambda v=vessel_id: kit.liquids.move_batch(batch.id, v), field, reason)


def test_a_batch_that_was_drawn_down_fits_a_smaller_vessel(kit):
    batch = kit.souring(kit.vessel("One"))
    small = kit.vessel("Cup", brim_volume_l=0.6, working_volume_l=0.5, inner_diameter_cm=8.0)
    kit.liquids.draw_part(batch.id, 3.5)
    assert kit.liquids.move_batch(batch.id, small.id).vessel_id == small.id
    assert kit.vessels.edit(small.id, note="chipped").note == "chipped"


def test_part_of_a_batch_goes_into_another_and_both_go_on(kit):
    first, second = two_souring(kit)
    read_ph(kit, first, 3.0)
    kit.liquids.merge(first.id, second.id, 0.5)
    assert kit.liquids.volume_now_l(first.id) == pytest.approx(1.5)
    assert kit.liquids.volume_now_l(second.id) == pytest.approx(2.5)
    assert kit.batches.get(first.id).stage is BatchStage.SOURING
    (row,) = kit.liquids.transfers(second.id)
    assert row.ph == 3.0


def test_a_batch_poured_over_whole_ends_and_its_culture_rests(kit):
    first, second = two_souring(kit)
    kit.liquids.merge(first.id, second.id)
    ended = kit.batches.get(first.id)
    assert (ended.stage, ended.end_reason) == (BatchStage.DRAWN_OFF, "Poured into Right tea")
    assert kit.cultures.get(first.culture_id).state is CultureState.RESTING
    assert kit.liquids.volume_now_l(second.id) == pytest.approx(4.0)
    assert [row.kind for row in kit.liquids.transfers(first.id)] == [TransferKind.MERGE]


def test_cultures_poured_together_work_on_as_one_with_two_parents(kit):
    first, second = two_souring(kit)
    into = kit.liquids.merge(first.id, second.id, culture_name=" Both ")
    joined = kit.cultures.get(into.culture_id)
    assert (joined.name, joined.origin) == ("Both", CultureOrigin.MERGED)
    assert (joined.state, joined.vessel_id) == (CultureState.AT_WORK, second.vessel_id)
    parents = kit.cultures.parents_of(joined.id)
    assert {row.id for row in parents} == {first.culture_id, second.culture_id}
    assert {(row.state, row.gone_to, row.vessel_id) for row in parents} == {
        (CultureState.RETIRED, "Both", None)
    }


def test_cultures_do_not_join_by_halves_or_under_a_name_that_is_taken(kit):
    first, second = two_souring(kit)
    kit.culture("Third")
    merge = kit.liquids.merge
    refused(lambda: merge(first.id, second.id, 0.5, culture_name="Both"), "culture_name", "not_all")
    refused(lambda: merge(first.id, second.id, culture_name="third"), "culture_name", "taken")
    plain = kit.souring(kit.vessel("Three"), name="Plain", fill_volume_l=1.0)
    refused(
        lambda: merge(plain.id, second.id, culture_name="Both"),
        "culture_name",
        "no_two_cultures",
    )


def test_what_does_not_fit_is_not_poured(kit):
    first = kit.souring(kit.vessel("One"), name="First")
    second = kit.souring(kit.vessel("Two"), name="Second")
    error = refused(lambda: kit.liquids.merge(first.id, second.id), "volume_l", "above_brim_by_now")
    assert error.high == pytest.approx(0.5)
    refused(lambda: kit.liquids.merge(first.id, first.id), "into_batch_id", "same_batch")


def test_the_blend_of_two_lies_between_them(kit):
    first, second = two_souring(kit)
    read_ph(kit, first, 2.8)
    read_ph(kit, second, 3.6)
    preview = kit.liquids.preview_merge(first.id, second.id, 1.0)
    assert (preview.poured_l, preview.left_l) == (1.0, 1.0)
    assert 2.8 < preview.after.ph.value < 3.6
    assert preview.after.ph.low < preview.after.ph.value < preview.after.ph.high


# --- lending ------------------------------------------------------------------------------


def test_a_plan_is_reckoned_anew_with_what_it_was_lent(kit):
    batch, plan = souring_and_plan(kit)
    read_ph(kit, batch, 3.0)
    lent = kit.liquids.lend_starter(0.3, from_batch_id=batch.id, to_batch_id=plan.id)
    assert lent.starter_volume_l == pytest.approx(0.3)
    assert (lent.starter_batch_id, lent.starter_culture_id) == (batch.id, batch.culture_id)
    assert lent.starter_ph == 3.0
    assert lent.sugar_g > plan.sugar_g
    again = kit.liquids.lend_starter(0.2, from_batch_id=batch.id, to_batch_id=plan.id)
    assert again.starter_volume_l == pytest.approx(0.5)
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(3.5)


def test_lent_starter_is_part_of_the_fill_and_counts_once(kit):
    batch, plan = souring_and_plan(kit)
    kit.liquids.lend_starter(0.3, from_batch_id=batch.id, to_batch_id=plan.id)
    for step in kit.brewing.start(plan.id):
        kit.brewing.finish(step.id, 24.0)
    assert kit.liquids.volume_now_l(plan.id) == pytest.approx(plan.fill_volume_l)


def test_an_empty_vessel_gets_a_plan_with_its_starter(kit):
    batch, vessel = souring_and_empty(kit)
    plan = kit.liquids.lend_starter(0.5, from_batch_id=batch.id, to_vessel_id=vessel.id)
    assert (plan.stage, plan.vessel_id) == (BatchStage.PLANNED, vessel.id)
    assert plan.fill_volume_l == vessel.working_volume_l
    assert plan.starter_volume_l == 0.5


def test_a_resting_store_lends_of_its_liquid(kit):
    _, store = souring_and_store(kit)
    vessel = kit.vessel("Two")
    plan = kit.liquids.lend_starter(0.5, from_culture_id=store.id, to_vessel_id=vessel.id)
    assert (plan.starter_batch_id, plan.starter_culture_id) == (None, store.id)
    assert kit.cultures.get(store.id).rest_volume_l == 0.0
    with kit.store.read() as unit:
        (care,) = unit.care.where(culture_id=store.id)
    assert (care.kind, care.volume_l) == (CareKind.STARTER_TAKEN, 0.5)
    refused(
        lambda: kit.liquids.lend_starter(
            0.1, from_culture_id=store.id, to_vessel_id=kit.vessel("Three").id
        ),
        "volume_l",
        "not_there",
    )


def test_starter_is_lent_to_plans_and_empty_vessels_only(kit):
    first, second = two_souring(kit)
    lend = kit.liquids.lend_starter
    refused(
        lambda: lend(0.1, from_batch_id=first.id, to_batch_id=second.id),
        "to_batch_id",
        "not_planned",
    )
    refused(
        lambda: lend(0.1, from_batch_id=first.id, to_vessel_id=second.vessel_id),
        "vessel_id",
        "occupied",
    )
    refused(lambda: lend(0.1, from_batch_id=first.id), "to_batch_id", "not_planned")


def test_a_plan_that_was_lent_starter_can_still_be_given_up(kit):
    batch, plan = souring_and_plan(kit)
    kit.liquids.lend_starter(0.3, from_batch_id=batch.id, to_batch_id=plan.id)
    kit.batches.drop_plan(plan.id)
    assert kit.liquids.volume_now_l(batch.id) == pytest.approx(3.7)


# --- what may share mold --------------------------------------------------------------------


def test_flagged_liquid_goes_nowhere_but_away(kit):
    batch, store = souring_and_store(kit)
    plan = kit.plan(kit.vessel("Two"), name="Next")
    empty = kit.vessel("Three")
    flag(kit, "batches", batch.id)
    liquids = kit.liquids
    refused(lambda: liquids.draw_part(batch.id, 0.1), "batch_id", "suspect")
    refused(lambda: liquids.keep_starter(batch.id, 0.1, store.id), "batch_id", "suspect")
    refused(lambda: liquids.move_batch(batch.id, empty.id), "batch_id", "suspect")
    refused(
        lambda: liquids.lend_starter(0.1, from_batch_id=batch.id, to_batch_id=plan.id),
        "from_batch_id",
        "suspect",
    )
    refused(lambda: kit.batches.draw_off(batch.id), "batch_id", "suspect")
    liquids.draw_part(batch.id, 0.1, TransferKind.SAMPLE)
    liquids.draw_part(batch.id, 0.1, TransferKind.LOSS)
    kit.batches.discard(batch.id, "mold")


def test_flagged_ends_are_refused_on_both_sides(kit):
    first, second = two_souring(kit)
    flag(kit, "batches", second.id)
    refused(lambda: kit.liquids.merge(first.id, second.id, 0.1), "into_batch_id", "suspect")
    refused(lambda: kit.liquids.merge(second.id, first.id, 0.1), "from_batch_id", "suspect")
    store = kit.culture("Hotel", vessel_id=kit.vessel("Store").id, rest_volume_l=0.5)
    flag(kit, "cultures", store.id)
    refused(lambda: kit.liquids.keep_starter(first.id, 0.1, store.id), "culture_id", "suspect")
    refused(
        lambda: kit.liquids.lend_starter(
            0.1, from_culture_id=store.id, to_vessel_id=kit.vessel("Four").id
        ),
        "from_culture_id",
        "suspect",
    )
