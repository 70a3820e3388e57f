"""The stores: what is bought, drawn, counted and brought back, and undone to the last row."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from brewdesk.services.bottlingwish import AdditionWish, BottleGroupWish
from brewdesk.services.reminders import Reminders
from brewdesk.services.stockdraws import PlanSupplies
from brewdesk.services.stores import Stores
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.problems import impossible_words
from brewdesk.store.records import ReadingDraft
from brewdesk.store.stockrecords import SupplyDraft, SupplyLotDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    AdditionKind,
    BottleKind,
    DrawReason,
    Method,
    Quantity,
    ReminderState,
    SupplyKind,
    SupplyMeasure,
    TeaKind,
)
from tests.helpers.dump import dump

HOSTILE = "=HYPERLINK(\"x\") <b>Tea</b> \u202e 'quoted'; DROP TABLE supply"


@pytest.fixture
def stores(kit):
    return Stores(kit.door)


def tea(stores, name="Invented Assam", **fields):
    draft = {
        "name": name,
        "kind": SupplyKind.TEA,
        "measure": SupplyMeasure.MASS_G,
        "tea_kind": TeaKind.BLACK,
    }
    return stores.add(SupplyDraft(**(draft | fields)))


def sugar(stores, name="Cane sugar"):
    draft = SupplyDraft(name=name, kind=SupplyKind.SUGAR, measure=SupplyMeasure.MASS_G)
    return stores.add(draft)


def bottles(stores, name="Half-litre swing-tops", **fields):
    draft = {
        "name": name,
        "kind": SupplyKind.BOTTLE,
        "measure": SupplyMeasure.PIECES,
        "bottle_kind": BottleKind.FIZZY_GLASS,
        "brim_volume_l": 0.52,
    }
    return stores.add(SupplyDraft(**(draft | fields)))


def buy(kit, stores, supply, amount, price=None, *, days_ago=0.0, currency="EUR"):
    return stores.buy(
        SupplyLotDraft(
            supply_id=supply.id,
            bought_at=kit.clock.now() - timedelta(days=days_ago),
            amount=amount,
            price_minor=price,
            currency=currency if price is not None else "",
        )
    )


def ripe(kit, **supplies):
    """A batch that may be bottled, planned with these supplies."""
    vessel = kit.vessel()
    wish = kit.batches.default_wish(vessel.id)
    chosen = PlanSupplies(**supplies)
    batch = kit.batches.plan(vessel.id, None, "Black tea 1", wish, supplies=chosen)
    for step in kit.brewing.start(batch.id):
        kit.brewing.finish(step.id, 25.0)
    kit.clock.advance(days=9)
    kit.readings.record(
        (
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=3.2,
                sd=0.05,
            ),
        )
    )
    return kit.batches.get(batch.id)


def bottled(kit, batch, *, supply=None, count=6, **taken):
    group = BottleGroupWish(
        bottle_count=count,
        kind=BottleKind.FIZZY_GLASS,
        brim_volume_l=0.52,
        supply_id=None if supply is None else supply.id,
    )
    wish = replace(
        kit.bottlings.wish_for(batch.id),
        groups=(group,),
        **taken,
    )
    return kit.bottlings.fill(wish, "invented, for a test")


def refused(call, field, reason=None):
    with pytest.raises(ImpossibleInput) as refusal:
        call()
    assert refusal.value.field == field
    if reason is not None:
        assert refusal.value.reason == reason
    assert "{" not in impossible_words(refusal.value)


def test_what_is_bought_is_there_and_what_is_used_is_gone_oldest_first(kit, stores):
    leaf = tea(stores)
    old = buy(kit, stores, leaf, 100, 850, days_ago=30)
    new = buy(kit, stores, leaf, 250, 1990, days_ago=2)
    stores.use(leaf.id, 120, DrawReason.SPOILED, "fell into the sink")
    view = stores.get(leaf.id)
    assert (view.left, view.bought, view.unbooked) == (230, 350, 0)
    assert {lot.lot.id: lot.left for lot in view.lots} == {old.id: 0, new.id: 230}
    assert view.share_left == pytest.approx(230 / 250)
    assert view.last_price.minor == 7960
    assert view.last_price.currency == "EUR"


def test_a_brew_draws_what_was_planned_and_undo_brings_both_back(kit, stores):
    leaf, sweet = tea(stores), sugar(stores)
    buy(kit, stores, leaf, 100, 850)
    buy(kit, stores, sweet, 1000, 129)
    vessel = kit.vessel()
    wish = kit.batches.default_wish(vessel.id)
    chosen = PlanSupplies(tea_id=leaf.id, sugar_id=sweet.id)
    batch = kit.batches.plan(vessel.id, None, "Black tea 1", wish, supplies=chosen)
    assert stores.get(leaf.id).planned == pytest.approx(batch.tea_g)
    assert stores.get(leaf.id).left == 100
    before = dump(kit.path)
    kit.brewing.start(batch.id)
    assert stores.get(leaf.id).left == pytest.approx(100 - batch.tea_g)
    assert stores.get(sweet.id).left == pytest.approx(1000 - batch.sugar_g)
    assert stores.get(leaf.id).planned == 0
    kit.history.undo()
    tables = ("batch", "batch_supply", "supply", "supply_draw", "supply_lot", "step")

    def of_stores(text):
        return [line for line in text.splitlines() if line.split(":")[0] in tables]

    assert of_stores(dump(kit.path)) == of_stores(before)
    kit.history.redo()
    assert stores.get(leaf.id).left == pytest.approx(100 - batch.tea_g)


def test_a_changed_plan_takes_other_amounts_and_a_dropped_one_takes_nothing(kit, stores):
    leaf, sweet = tea(stores), sugar(stores)
    vessel = kit.vessel()
    wish = kit.batches.default_wish(vessel.id)
    chosen = PlanSupplies(tea_id=leaf.id, sugar_id=sweet.id)
    batch = kit.batches.plan(vessel.id, None, "Black tea 1", wish, supplies=chosen)

    def edit(name="Black tea 1", **fields):
        return kit.batches.edit_plan(
            batch.id,
            vessel_id=vessel.id,
            culture_id=None,
            name=name,
            wish=replace(wish, **fields),
        )

    changed = edit(sugar_g_per_l=70.0)
    assert stores.get(sweet.id).planned == pytest.approx(changed.sugar_g)
    assert changed.sugar_g > batch.sugar_g
    kit.batches.edit_plan(
        batch.id,
        vessel_id=vessel.id,
        culture_id=None,
        name="Black tea 1",
        wish=wish,
        supplies=PlanSupplies(sugar_id=sweet.id),
    )
    assert stores.get(leaf.id).planned == 0
    assert stores.planned_for(batch.id) == {SupplyKind.SUGAR: sweet.id}
    kit.batches.drop_plan(batch.id)
    assert stores.get(sweet.id).planned == 0
    kit.history.undo()
    assert stores.get(sweet.id).planned == pytest.approx(batch.sugar_g)


def test_a_batch_that_is_in_already_draws_as_of_its_own_day(kit, stores):
    leaf = tea(stores)
    buy(kit, stores, leaf, 50, 400, days_ago=20)
    buy(kit, stores, leaf, 50, 900, days_ago=1)
    vessel = kit.vessel()
    wish = kit.batches.default_wish(vessel.id)
    chosen = PlanSupplies(tea_id=leaf.id)
    batch = kit.batches.plan(vessel.id, None, "Black tea 1", wish, supplies=chosen)
    kit.brewing.note_already_in(batch.id, kit.clock.now() - timedelta(days=5), 25.0)
    view = stores.get(leaf.id)
    assert [lot.left for lot in view.lots] == [50, pytest.approx(50 - batch.tea_g)]


def test_more_can_be_brewed_than_is_on_the_books_and_a_late_purchase_settles_it(kit, stores):
    leaf = tea(stores)
    buy(kit, stores, leaf, 5, 100, days_ago=9)
    batch = ripe(kit, tea_id=leaf.id)
    view = stores.get(leaf.id)
    assert (view.left, view.unbooked) == (0, pytest.approx(batch.tea_g - 5))
    kit.clock.advance(days=1)
    buy(kit, stores, leaf, 500, 3000)
    assert stores.get(leaf.id).left == 500  # bought after the brew: it was not used for it
    kit.history.undo()
    buy(kit, stores, leaf, 6, 70, days_ago=12)
    assert stores.get(leaf.id).unbooked == pytest.approx(batch.tea_g - 11)
    buy(kit, stores, leaf, 500, 3000, days_ago=12)
    view = stores.get(leaf.id)
    assert (view.left, view.unbooked) == (pytest.approx(511 - batch.tea_g), 0)


def test_tea_bags_are_drawn_whole(kit, stores):
    bags = tea(stores, measure=SupplyMeasure.PIECES)
    buy(kit, stores, bags, 20, 300)
    batch = ripe(kit, tea_id=bags.id)
    assert (
        stores.get(bags.id).left
        == 20 - kit.batches.plan_preview(kit.batches.wish_of(batch)).tea_bags
    )


@pytest.mark.parametrize(("counted", "left_in_lots"), [(80, [80, 0]), (130, [100, 30])])
def test_a_count_corrects_the_books(kit, stores, counted, left_in_lots):
    leaf = tea(stores)
    buy(kit, stores, leaf, 100, 850, days_ago=9)
    buy(kit, stores, leaf, 100, 850, days_ago=3)
    stores.use(leaf.id, 90, DrawReason.OTHER)
    stores.count(leaf.id, counted)
    view = stores.get(leaf.id)
    assert view.left == counted
    assert [lot.left for lot in view.lots] == left_in_lots
    stores.count(leaf.id, counted)  # as the books have it: no act
    assert kit.history.undo_act().facts["amount"] == counted
    kit.history.undo()
    assert stores.get(leaf.id).left == 110


def test_what_was_never_bought_becomes_a_lot_without_a_price(kit, stores):
    leaf = tea(stores)
    buy(kit, stores, leaf, 100, 850)
    stores.count(leaf.id, 140)
    view = stores.get(leaf.id)
    assert view.left == 140
    assert [lot.lot.price_minor for lot in view.lots] == [None, 850]
    assert view.lots[0].lot.note


def test_a_bottling_takes_bottles_fruit_and_sugar_and_the_bottles_come_back(kit, stores):
    glass, sweet = bottles(stores), sugar(stores)
    caps = stores.add(
        SupplyDraft(name="Crown caps", kind=SupplyKind.CLOSURE, measure=SupplyMeasure.PIECES)
    )
    buy(kit, stores, caps, 100, 400)
    assert stores.usual(SupplyKind.CLOSURE, only_used=True) is None
    juice = stores.add(
        SupplyDraft(
            name="Apple juice",
            kind=SupplyKind.FLAVOURING,
            measure=SupplyMeasure.VOLUME_L,
            addition_kind=AdditionKind.JUICE,
            sugar_share_low=0.1,
            sugar_share_high=0.12,
        )
    )
    buy(kit, stores, glass, 12, 2400)
    buy(kit, stores, sweet, 1000, 129)
    buy(kit, stores, juice, 1.0, 199)
    batch = ripe(kit, sugar_id=sweet.id)
    addition = AdditionWish(
        kind=AdditionKind.JUICE,
        name="Apple juice",
        mass_g=208.0,
        sugar_share_low=0.1,
        sugar_share_high=0.12,
        supply_id=juice.id,
    )
    before = stores.get(sweet.id).left
    made = bottled(
        kit,
        batch,
        supply=glass,
        additions=(addition,),
        priming_supply_id=sweet.id,
        closure_supply_id=caps.id,
    )
    assert stores.get(caps.id).left == 94
    assert stores.usual(SupplyKind.CLOSURE, only_used=True) == caps.id
    assert stores.get(glass.id).left == 6
    assert stores.get(glass.id).out == 6
    assert stores.get(juice.id).left == pytest.approx(0.8)  # 1.04 kg to the litre
    assert stores.get(sweet.id).left == pytest.approx(before - made.priming_sugar_g)
    refused(lambda: stores.return_bottles(made.id), "bottling_id", "not_emptied")
    kit.bottlings.finish(made.id)
    assert stores.bottles_out() == {made.id: 6}
    assert stores.return_bottles(made.id) == 6
    assert (stores.get(glass.id).left, stores.get(glass.id).out) == (12, 0)
    assert stores.bottles_out() == {}
    refused(lambda: stores.return_bottles(made.id), "bottling_id", "no_bottles_out")
    kit.history.undo()
    assert stores.bottles_out() == {made.id: 6}


def test_only_what_fits_the_use_is_taken(kit, stores):
    leaf, sweet, glass = tea(stores), sugar(stores), bottles(stores)
    vessel = kit.vessel()
    wish = kit.batches.default_wish(vessel.id)

    def plan(**supplies):
        chosen = PlanSupplies(**supplies)
        kit.batches.plan(vessel.id, None, "Black tea 1", wish, supplies=chosen)

    refused(lambda: plan(tea_id=sweet.id), "tea_supply_id", "wrong_kind")
    refused(lambda: plan(sugar_id=leaf.id), "sugar_supply_id", "wrong_kind")
    stores.retire(leaf.id)
    refused(lambda: plan(tea_id=leaf.id), "tea_supply_id", "retired")
    plan(sugar_id=sweet.id)
    refused(lambda: stores.retire(sweet.id), "supply_id", "supply_planned")
    stores.retire(glass.id)
    stores.restore(glass.id)
    assert [view.supply.id for view in stores.all()] == [sweet.id, glass.id]
    assert len(stores.all(include_retired=True)) == 3


def test_what_no_supply_can_be_is_refused_beside_its_field(kit, stores):
    leaf = tea(stores)
    refused(lambda: tea(stores), "name", "taken")
    refused(lambda: tea(stores, name="  "), "name", "empty")
    refused(lambda: tea(stores, name="x", tea_kind=None), "tea_kind", "empty")
    refused(lambda: tea(stores, name="x", measure=SupplyMeasure.VOLUME_L), "measure")
    refused(lambda: tea(stores, name="x", low_amount=-1.0), "low_amount")
    refused(lambda: tea(stores, name="x", low_amount=float("nan")), "low_amount")
    refused(lambda: bottles(stores, brim_volume_l=0.0), "brim_volume_l")
    for amount in (0.0, -1.0, 1e-9, 1e9, float("inf"), float("nan")):
        refused(lambda amount=amount: buy(kit, stores, leaf, amount), "amount")
    refused(lambda: buy(kit, stores, leaf, 1, 10, days_ago=-1), "bought_at", "in_future")
    refused(lambda: buy(kit, stores, leaf, 1, -1), "price_minor")
    refused(lambda: buy(kit, stores, leaf, 1, 1, currency="eur"), "currency")
    lot = buy(kit, stores, leaf, 10, 100)
    refused(lambda: stores.use(leaf.id, 11, DrawReason.OTHER), "amount", "not_in_stores")
    refused(lambda: stores.use(leaf.id, 0, DrawReason.OTHER), "amount", "nothing")
    refused(lambda: stores.use(leaf.id, 1, DrawReason.BREWED), "reason")
    refused(lambda: stores.count(leaf.id, -1), "amount")
    refused(lambda: stores.edit(leaf.id, measure=SupplyMeasure.PIECES), "measure", "has_lots")
    stores.use(leaf.id, 4, DrawReason.OTHER)
    refused(lambda: stores.edit_lot(lot.id, amount=3.0), "amount", "below_drawn")
    kit.clock.advance(days=2)
    late = kit.clock.now()
    refused(lambda: stores.edit_lot(lot.id, bought_at=late), "bought_at", "drawn_before")
    refused(lambda: stores.remove_lot(lot.id), "lot_id", "drawn_from")


def test_every_act_says_what_it_did_and_hostile_names_stay_text(kit, stores):
    name = HOSTILE[:60]
    leaf = tea(stores, name=name)
    stores.edit(leaf.id, note="from the market")
    lot = buy(kit, stores, leaf, 100, 850)
    stores.edit_lot(lot.id, price_minor=900)
    spare = buy(kit, stores, leaf, 1)
    stores.remove_lot(spare.id)
    stores.use(leaf.id, 5, DrawReason.SPOILED, HOSTILE)
    stores.count(leaf.id, 90)
    stores.retire(leaf.id)
    stores.restore(leaf.id)
    tidy = " ".join(name.split())
    texts = []
    while (act := kit.history.undo_act()) is not None:
        texts.append(act_text(act))
        kit.history.undo()
    assert all(tidy in text for text in texts)
    assert "bought for 8.50\u00a0EUR" in " ".join(texts)
    assert len(texts) == 10
    assert len(set(texts)) == 10


def test_the_usual_supply_is_the_last_used_or_the_only_one(kit, stores):
    leaf = tea(stores)
    assert stores.usual(SupplyKind.TEA, TeaKind.BLACK) == leaf.id
    assert stores.usual(SupplyKind.TEA, TeaKind.GREEN) is None
    other = tea(stores, name="Other Assam")
    assert stores.usual(SupplyKind.TEA, TeaKind.BLACK) is None
    buy(kit, stores, other, 100, days_ago=1)
    ripe(kit, tea_id=other.id)
    assert stores.usual(SupplyKind.TEA, TeaKind.BLACK) == other.id


def test_what_runs_low_is_on_the_due_list_once_until_it_is_bought(kit, stores):
    due = Reminders(kit.door)
    leaf = tea(stores, low_amount=50.0)
    due.sync()
    assert not due.listed()  # never bought: nothing ran low
    buy(kit, stores, leaf, 100, 850)
    stores.use(leaf.id, 60, DrawReason.OTHER)
    due.sync()
    (item,) = due.listed()
    assert item.title == "Buy Invented Assam"
    assert "mark" in item.body
    assert not item.is_due  # at the maker's hour, not at once
    assert not due.sync()
    kit.history.undo()
    due.sync()
    assert not due.listed()
    kit.history.redo()
    due.sync()
    (item,) = due.listed()
    due.done(item.reminder.id)
    stores.use(leaf.id, 1, DrawReason.OTHER)
    due.sync()
    assert not due.listed()
    buy(kit, stores, leaf, 20, 200)
    stores.use(leaf.id, 15, DrawReason.OTHER)
    due.sync()
    (item,) = due.listed()
    stores.edit(leaf.id, name="Assam")
    due.sync()
    (item,) = due.listed()
    assert item.title == "Buy Assam"
    stores.retire(leaf.id)
    due.sync()
    assert not due.listed()
    with kit.store.read() as unit:
        states = [row.state for row in unit.reminders.where()]
    assert states == [ReminderState.DONE, ReminderState.DROPPED]
