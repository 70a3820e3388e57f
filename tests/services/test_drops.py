"""What may be carried where: the rule book, and that what it offers can be done."""

from __future__ import annotations

from dataclasses import replace

import pytest

from brewdesk.services.carrying import Answers, Carrying
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.drops import (
    Carried,
    CarriedKind,
    ChoiceKind,
    JarFacts,
    Target,
    Tray,
    choices,
    targets_for,
)
from brewdesk.services.wording.drops import (
    choice_detail,
    choice_words,
    picked_up_words,
    refusal_words,
    tray_words,
)
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, CultureState, Material, StepKind
from tests.services.history_liquids import souring_and_plan, souring_and_store, two_souring

RESTING, BOTTLES = Target(tray=Tray.RESTING), Target(tray=Tray.BOTTLES)


def culture_of(row):
    return Carried(CarriedKind.CULTURE, row.id)


def batch_of(row):
    return Carried(CarriedKind.BATCH, row.id)


def onto(vessel):
    return Target(vessel_id=vessel.id)


@pytest.fixture
def carrying(kit):
    return Carrying(
        kit.door,
        liquids=kit.liquids,
        batches=kit.batches,
        brewing=kit.brewing,
        care=CultureCare(kit.door, kit.settings),
    )


def kinds(drop):
    assert drop.refusal is None, refusal_words(drop)
    return [choice.kind for choice in drop.choices]


def code(drop):
    assert not drop.choices
    words = refusal_words(drop)
    assert words.endswith(".")
    assert not set("{}") & set(words)
    return drop.refusal.code


def of_kind(drop, kind):
    return next(choice for choice in drop.choices if choice.kind is kind)


def brewing_in(kit, vessel, culture=None, *, degrees=None, name="Brew"):
    batch = kit.plan(vessel, culture, name)
    for step in kit.brewing.start(batch.id):
        if step.kind is StepKind.COOL:
            kit.brewing.finish(step.id, degrees)
            return batch
        kit.brewing.finish(step.id)
    raise AssertionError("no step to cool")


# --- cultures -------------------------------------------------------------------------------


def test_a_resting_culture_moves_splits_and_lends_into_an_empty_vessel(kit, carrying):
    culture = kit.culture(vessel_id=kit.vessel("Store").id, rest_volume_l=0.5)
    drop = carrying.choices(culture_of(culture), onto(kit.vessel("Empty")))
    assert kinds(drop) == [ChoiceKind.MOVE_CULTURE, ChoiceKind.SPLIT_CULTURE, ChoiceKind.LEND]


def test_a_culture_without_liquid_has_no_starter_to_lend(kit, carrying):
    drop = carrying.choices(culture_of(kit.culture()), onto(kit.vessel("Empty")))
    assert kinds(drop) == [ChoiceKind.MOVE_CULTURE, ChoiceKind.SPLIT_CULTURE]


def test_a_culture_at_work_lends_from_its_batch(kit, carrying):
    batch, plan = souring_and_plan(kit)
    culture = kit.cultures.get(batch.culture_id)
    drop = carrying.choices(culture_of(culture), Target(vessel_id=plan.vessel_id))
    assert kinds(drop) == [ChoiceKind.LEND]
    (lend,) = drop.choices
    assert (lend.from_batch_id, lend.to_batch_id) == (batch.id, plan.id)
    assert lend.usual_l == pytest.approx(plan.starter_volume_l)


def test_a_plan_can_take_a_resting_culture(kit, carrying):
    plan, culture = kit.plan(), kit.culture()
    drop = carrying.choices(culture_of(culture), Target(vessel_id=plan.vessel_id))
    assert kinds(drop) == [ChoiceKind.USE_IN_PLAN]
    carrying.perform(drop.choices[0])
    assert kit.batches.get(plan.id).culture_id == culture.id
    again = carrying.choices(culture_of(culture), Target(vessel_id=plan.vessel_id))
    assert code(again) == "drop_planned_with_it"


def test_nothing_goes_into_a_jar_that_sours_already(kit, carrying):
    batch = kit.souring()
    drop = carrying.choices(culture_of(kit.culture()), Target(vessel_id=batch.vessel_id))
    assert code(drop) == "drop_occupied"
    assert "Black tea 1 is souring in Tall jar" in refusal_words(drop)


@pytest.mark.parametrize(
    ("degrees", "reason"),
    [(None, "culture_temperature_unknown"), (34.0, "culture_too_warm")],
)
def test_hot_tea_keeps_a_culture_out(kit, carrying, degrees, reason):
    culture, vessel = kit.culture(), kit.vessel()
    brewing_in(kit, vessel, culture, degrees=degrees)
    assert code(carrying.choices(culture_of(culture), onto(vessel))) == reason
    other = kit.souring(kit.vessel("Two"), name="Other")
    assert code(carrying.choices(batch_of(other), onto(vessel))) == reason


def test_cool_tea_takes_its_own_culture_once_the_starter_is_in(kit, carrying):
    culture, vessel = kit.culture(), kit.vessel()
    batch = brewing_in(kit, vessel, culture, degrees=25.0)
    assert code(carrying.choices(culture_of(culture), onto(vessel))) == "drop_starter_first"
    stranger = kit.culture("Stranger")
    found = carrying.choices(culture_of(stranger), onto(vessel))
    assert code(found) == "drop_brewed_for_another"
    steps = kit.brewing.steps(batch.id)
    kit.brewing.finish(next(s.id for s in steps if s.kind is StepKind.STARTER_IN))
    drop = carrying.choices(culture_of(culture), onto(vessel))
    assert kinds(drop) == [ChoiceKind.PUT_IN]
    carrying.perform(drop.choices[0])
    assert kit.cultures.get(culture.id).state is CultureState.AT_WORK


def test_a_culture_is_no_drink_and_rests_only_once(kit, carrying):
    loose = kit.culture()
    assert code(carrying.choices(culture_of(loose), BOTTLES)) == "drop_culture_no_drink"
    assert code(carrying.choices(culture_of(loose), RESTING)) == "drop_no_vessel_free"
    vessel = kit.vessel()
    drop = carrying.choices(culture_of(loose), RESTING)
    assert kinds(drop) == [ChoiceKind.REST]
    assert drop.choices[0].vessel_ids == (vessel.id,)
    carrying.perform(drop.choices[0], Answers(vessel_id=vessel.id, volume_l=0.4))
    assert kit.cultures.get(loose.id).rest_volume_l == 0.4
    assert code(carrying.choices(culture_of(loose), RESTING)) == "drop_rests_already"
    assert code(carrying.choices(culture_of(loose), onto(vessel))) == "drop_same_place"


def test_a_culture_at_work_does_not_rest_before_its_batch_is_drawn_off(kit, carrying):
    batch = kit.souring(culture=kit.culture())
    culture = kit.cultures.get(batch.culture_id)
    assert code(carrying.choices(culture_of(culture), RESTING)) == "drop_at_work"


# --- batches --------------------------------------------------------------------------------


def test_a_batch_is_poured_over_or_lends_into_an_empty_vessel(kit, carrying):
    batch, vessel = kit.souring(kit.vessel("One")), kit.vessel("Two")
    drop = carrying.choices(batch_of(batch), onto(vessel))
    assert kinds(drop) == [ChoiceKind.POUR_OVER, ChoiceKind.LEND]
    carrying.perform(of_kind(drop, ChoiceKind.POUR_OVER))
    assert kit.batches.get(batch.id).vessel_id == vessel.id
    assert code(carrying.choices(batch_of(batch), onto(vessel))) == "drop_same_place"


def test_a_small_vessel_takes_starter_only(kit, carrying):
    batch = kit.souring(kit.vessel("One"))
    small = kit.vessel("Cup", brim_volume_l=0.6, working_volume_l=0.5, inner_diameter_cm=8.0)
    assert kinds(carrying.choices(batch_of(batch), onto(small))) == [ChoiceKind.LEND]


def test_two_batches_are_poured_together_as_far_as_they_fit(kit, carrying):
    first, second = two_souring(kit)
    drop = carrying.choices(batch_of(first), Target(vessel_id=second.vessel_id))
    assert kinds(drop) == [ChoiceKind.MERGE_ALL, ChoiceKind.MERGE_PART]
    assert of_kind(drop, ChoiceKind.MERGE_ALL).may_join_cultures
    carrying.perform(of_kind(drop, ChoiceKind.MERGE_PART), Answers(volume_l=1.5))
    assert kit.liquids.volume_now_l(second.id) == pytest.approx(3.5)
    back = carrying.choices(batch_of(second), Target(vessel_id=first.vessel_id))
    assert kinds(back) == [ChoiceKind.MERGE_ALL, ChoiceKind.MERGE_PART]


def test_a_full_jar_takes_nothing_more(kit, carrying):
    first = kit.souring(kit.vessel("One"), name="First")
    full = kit.souring(kit.vessel("Two"), name="Full")
    kit.liquids.merge(first.id, full.id, 0.5)
    drop = carrying.choices(batch_of(first), Target(vessel_id=full.vessel_id))
    assert code(drop) == "drop_no_room"


def test_starter_is_kept_where_a_culture_rests(kit, carrying):
    batch, store = souring_and_store(kit)
    by_vessel = carrying.choices(batch_of(batch), Target(vessel_id=store.vessel_id))
    by_tray = carrying.choices(batch_of(batch), RESTING)
    assert kinds(by_vessel) == kinds(by_tray) == [ChoiceKind.KEEP]
    carrying.perform(by_tray.choices[0], Answers(volume_l=0.3))
    assert kit.cultures.get(store.id).rest_volume_l == pytest.approx(0.8)


def test_without_a_resting_culture_there_is_nowhere_to_keep_starter(kit, carrying):
    assert code(carrying.choices(batch_of(kit.souring()), RESTING)) == "drop_no_store"


def test_a_batch_is_drawn_into_bottles_in_part_or_whole(kit, carrying):
    batch = kit.souring(culture=kit.culture(), fill_volume_l=3.0)
    drop = carrying.choices(batch_of(batch), BOTTLES)
    assert kinds(drop) == [
        ChoiceKind.FILL_BOTTLES,
        ChoiceKind.DRAW_PART,
        ChoiceKind.DRAW_OFF,
    ]
    carrying.perform(drop.choices[1], Answers(volume_l=1.0))
    carrying.perform(drop.choices[2], Answers(volume_l=0.3))
    assert kit.batches.get(batch.id).stage is BatchStage.DRAWN_OFF
    assert kit.cultures.get(batch.culture_id).rest_volume_l == 0.3


def test_an_amount_that_was_not_given_is_asked_for(kit, carrying):
    batch = kit.souring()
    (bottles, part, _) = carrying.choices(batch_of(batch), BOTTLES).choices
    with pytest.raises(ValueError, match="page of their own"):
        carrying.perform(bottles)
    with pytest.raises(ImpossibleInput) as caught:
        carrying.perform(part)
    assert (caught.value.field, caught.value.reason) == ("volume_l", "empty")


def test_plans_and_brews_are_not_carried(kit, carrying):
    plan = kit.plan(name="Plan")
    assert code(carrying.choices(batch_of(plan), BOTTLES)) == "drop_not_brewed_yet"
    assert code(carrying.can_be_carried(batch_of(plan))) == "drop_not_brewed_yet"
    kit.brewing.start(plan.id)
    assert code(carrying.choices(batch_of(plan), BOTTLES)) == "drop_still_brewing"


# --- what is never allowed --------------------------------------------------------------------


def test_unfit_material_refuses_with_its_own_verdict(kit, carrying):
    copper = kit.vessel("Copper", material=Material.REACTIVE_METAL)
    batch = kit.souring()
    for carried in (culture_of(kit.culture()), batch_of(batch)):
        assert code(carrying.choices(carried, onto(copper))) == "material_reactive"


def test_what_is_flagged_is_not_carried_and_nothing_goes_to_it(kit, carrying):
    first, second = two_souring(kit)
    store = kit.culture("Hotel", vessel_id=kit.vessel("Store").id, rest_volume_l=0.5)
    now = kit.clock.now()
    kit.door.quiet(lambda unit: unit.batches.change(second.id, suspect_at=now))
    kit.door.quiet(lambda unit: unit.cultures.change(store.id, suspect_at=now))
    for carried in (batch_of(second), culture_of(store)):
        assert code(carrying.can_be_carried(carried)) == "drop_carried_suspect"
        for target in (BOTTLES, RESTING, Target(vessel_id=first.vessel_id)):
            assert code(carrying.choices(carried, target)) == "drop_carried_suspect"
    for target in (second.vessel_id, store.vessel_id):
        found = carrying.choices(batch_of(first), Target(vessel_id=target))
        assert code(found) == "drop_target_suspect"
    assert code(carrying.choices(batch_of(first), RESTING)) == "drop_no_store"


def test_a_culture_that_is_forming_stays_where_it_is(kit, carrying):
    culture = kit.culture(state=CultureState.FORMING)
    assert code(carrying.can_be_carried(culture_of(culture))) == "drop_forming"


def test_what_is_gone_and_nowhere_is_refused(kit, carrying):
    assert code(carrying.choices(Carried(CarriedKind.BATCH, 99), BOTTLES)) == "drop_gone"
    assert code(carrying.choices(Carried(CarriedKind.CULTURE, 99), BOTTLES)) == "drop_gone"
    gone = kit.vessels.retire(kit.vessel("Gone").id)
    drop = carrying.choices(culture_of(kit.culture()), onto(gone))
    assert code(drop) == "drop_no_target"
    loose = kit.culture("Loose")
    shelf = replace(carrying.facts(), jars={gone.id: JarFacts(vessel=gone)})
    assert code(choices(shelf, culture_of(loose), onto(gone))) == "drop_retired"


def test_the_rules_are_asked_without_a_look_at_the_store(kit, carrying, monkeypatch):
    first, _ = two_souring(kit)
    facts = carrying.facts()

    def closed():
        raise AssertionError("the store was read while dragging")

    monkeypatch.setattr(kit.store, "read", closed)
    found = targets_for(facts, batch_of(first))
    assert len(found) == len(facts.jars)


def test_every_choice_and_tray_has_words(kit, carrying):
    first, second = two_souring(kit)
    plan, empty = kit.plan(kit.vessel("Plan")), kit.vessel("Empty")
    store = kit.culture("Hotel", vessel_id=kit.vessel("Store").id, rest_volume_l=0.5)
    loose = kit.culture("Loose")
    seen = set()
    for carried in (batch_of(first), culture_of(store), culture_of(loose)):
        targets = [Target(vessel_id=row.vessel_id) for row in (first, second, plan, store)]
        for target in (*targets, onto(empty), RESTING, BOTTLES):
            drop = carrying.choices(carried, target)
            for choice in drop.choices:
                seen.add(choice.kind)
                texts = choice_words(choice, drop.names), choice_detail(choice, drop.names)
                assert all(text and not set("{}") & set(text) for text in texts)
    assert seen == set(ChoiceKind) - {ChoiceKind.PUT_IN}
    assert all(all(tray_words(tray)) for tray in Tray)
    assert "Hotel" in picked_up_words("Hotel")
