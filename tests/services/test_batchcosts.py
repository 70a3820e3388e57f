"""What a batch costs, and what a year saved: figures only where all of it is known."""

from __future__ import annotations

import csv
import io
from dataclasses import replace
from fractions import Fraction

import pytest

from brewdesk.services.batchcosts import BatchCosts, ShopPrice
from brewdesk.services.costtable import cost_table
from brewdesk.services.stockdraws import PlanSupplies
from brewdesk.services.stores import Stores
from brewdesk.services.wording.stores import cost_words, missing_words, saving_words
from culturecore.stages import SupplyKind
from tests.services.test_stores import bottled, bottles, buy, ripe, sugar, tea

F = Fraction


@pytest.fixture
def stores(kit):
    return Stores(kit.door)


@pytest.fixture
def costs(kit):
    return BatchCosts(kit.door, kit.settings)


def stocked(kit, stores):
    """A batch of tea at 0.07 a gram, sugar at 0.002 a gram."""
    leaf, sweet = tea(stores), sugar(stores)
    buy(kit, stores, leaf, 100, 700)
    buy(kit, stores, sweet, 1000, 200)
    return ripe(kit, tea_id=leaf.id, sugar_id=sweet.id), leaf, sweet


def test_a_batch_costs_what_was_drawn_for_it(kit, stores, costs):
    batch, _, _ = stocked(kit, stores)
    kit.batches.draw_off(batch.id)
    row = costs.of_batch(batch.id)
    # 14 g of tea and 175 g of sugar, as the plan of four litres has it
    assert (batch.tea_g, batch.sugar_g) == (14, 175)
    assert dict(row.parts)[SupplyKind.TEA].known == (("EUR", F(98)),)
    assert dict(row.parts)[SupplyKind.SUGAR].known == (("EUR", F(35)),)
    assert (row.total.known, row.total.is_complete) == ((("EUR", F(133)),), True)
    assert row.missing == ()
    assert row.drink_l == 4.0
    assert row.per_litre.known == (("EUR", F(133, 4)),)
    assert cost_words(row.total) == "1.33\u00a0EUR"
    assert row.saving is None  # nothing is known of the shop
    costs.put_shop_price(ShopPrice(minor=350, currency="EUR"))
    saving = costs.of_batch(batch.id).saving
    assert (saving.minor, saving.is_at_most) == (4 * 350 - 133, False)
    assert saving_words(saving) == "12.67\u00a0EUR saved"


def test_a_bottle_costs_its_share_of_the_jar_and_of_its_own_wear(kit, stores, costs):
    batch, _, sweet = stocked(kit, stores)
    glass = bottles(stores)
    buy(kit, stores, glass, 10, 2000)
    made = bottled(kit, batch, supply=glass, priming_supply_id=sweet.id)
    row = costs.of_batch(batch.id)
    assert row.bottle_count == 6
    wear = 6 * F(200) / 20
    assert dict(row.parts)[SupplyKind.BOTTLE].known == (("EUR", wear),)
    jar = F(133) + F(round(made.priming_sugar_g * 10**6), 10**6) * F(200, 1000)
    assert row.per_bottle.known == (("EUR", (jar + wear) / 6),)
    costs.put_bottle_uses(1)
    worn = costs.of_batch(batch.id)
    assert dict(worn.parts)[SupplyKind.BOTTLE].known == (("EUR", F(1200)),)
    kit.bottlings.finish(made.id)
    stores.return_bottles(made.id)
    assert costs.of_batch(batch.id).parts == worn.parts  # coming back pays nothing back


def test_what_has_no_price_makes_it_at_least_and_a_saving_at_most(kit, stores, costs):
    leaf, sweet = tea(stores), sugar(stores)
    buy(kit, stores, leaf, 100, 700)
    buy(kit, stores, sweet, 1000)  # no price
    batch = ripe(kit, tea_id=leaf.id, sugar_id=sweet.id)
    kit.batches.draw_off(batch.id)
    costs.put_shop_price(ShopPrice(minor=350, currency="EUR"))
    row = costs.of_batch(batch.id)
    assert (row.total.known, row.total.is_complete) == ((("EUR", F(98)),), False)
    assert row.missing == (SupplyKind.SUGAR,)
    assert cost_words(row.total) == "at least 0.98\u00a0EUR"
    assert saving_words(row.saving) == "at most 13.02\u00a0EUR saved"
    assert "sugar" in missing_words(row.missing)


def test_a_batch_without_the_stores_has_no_cost_rather_than_a_guessed_one(kit, costs):
    batch = kit.souring()
    kit.batches.draw_off(batch.id)
    row = costs.of_batch(batch.id)
    assert row.total.is_unknown
    assert row.missing == (SupplyKind.TEA, SupplyKind.SUGAR)
    assert cost_words(row.total) == "not known"


def test_two_currencies_stay_apart_and_are_compared_with_no_shop(kit, stores, costs):
    leaf, sweet = tea(stores), sugar(stores)
    buy(kit, stores, leaf, 100, 700)
    buy(kit, stores, sweet, 1000, 300, currency="CHF")
    batch = ripe(kit, tea_id=leaf.id, sugar_id=sweet.id)
    kit.batches.draw_off(batch.id)
    costs.put_shop_price(ShopPrice(minor=350, currency="EUR"))
    row = costs.of_batch(batch.id)
    assert row.total.known == (("CHF", F(105, 2)), ("EUR", F(98)))
    assert row.saving is None
    assert cost_words(row.total) == "0.52\u00a0CHF and 0.98\u00a0EUR"
    year = costs.year(2026)
    assert year.saving is None
    assert year.total == row.total
    lines = table(year, kit)
    assert [line["Currency"] for line in lines] == ["CHF", "EUR"]
    assert [line["Total"] for line in lines] == ["0.52", "0.98"]


def test_a_year_adds_up_and_counts_what_was_thrown_away(kit, stores, costs):
    batch, leaf, sweet = stocked(kit, stores)
    kit.batches.draw_off(batch.id)
    costs.put_shop_price(ShopPrice(minor=350, currency="EUR"))
    vessel = kit.vessel("Second jar")
    second = kit.batches.plan(
        vessel.id,
        None,
        "Second",
        kit.batches.default_wish(vessel.id),
        supplies=PlanSupplies(tea_id=leaf.id, sugar_id=sweet.id),
    )
    for step in kit.brewing.start(second.id):
        kit.brewing.finish(step.id, 25.0)
    kit.batches.discard(second.id, "spots")
    year = costs.year(2026)
    assert [row.batch.id for row in year.batches] == [second.id, batch.id]
    assert year.total.known == (("EUR", F(266)),)
    assert year.drink_l == 4.0
    assert year.saving.minor == 1400 - 266
    assert costs.years() == (2026,)
    assert costs.year(2025).batches == ()
    assert costs.year(2025).saving is None


def test_what_still_sours_is_spent_but_makes_no_litre_dearer(kit, stores, costs):
    batch, leaf, sweet = stocked(kit, stores)
    kit.batches.draw_off(batch.id)
    costs.put_shop_price(ShopPrice(minor=350, currency="EUR"))
    before = costs.year(2026)
    vessel = kit.vessel("Second jar")
    supplies = PlanSupplies(tea_id=leaf.id, sugar_id=sweet.id)
    wish = kit.batches.default_wish(vessel.id)
    second = kit.batches.plan(vessel.id, None, "Second", wish, supplies=supplies)
    kit.brewing.start(second.id)
    year = costs.year(2026)
    assert (before.to_come, year.to_come) == (0, 1)
    assert year.total.known == (("EUR", F(266)),)
    assert (year.per_litre, year.saving) == (before.per_litre, before.saving)


def test_bottles_poured_away_are_paid_for_but_not_drunk(kit, stores, costs):
    batch, _, sweet = stocked(kit, stores)
    made = bottled(kit, batch, priming_supply_id=sweet.id)
    drunk_l = costs.of_batch(batch.id).drink_l
    assert drunk_l == pytest.approx(made.drink_volume_l)
    kit.bottlings.discard(made.id, "they gushed")
    row = costs.of_batch(batch.id)
    assert (row.drink_l, row.bottle_count, row.per_litre) == (0, 0, None)
    assert row.missing == (SupplyKind.BOTTLE,)


def table(year, kit):
    text = cost_table(year, kit.clock.zone()).decode("utf-8-sig")
    return list(csv.DictReader(io.StringIO(text)))


def test_the_table_keeps_numbers_numbers_and_text_from_becoming_formulas(kit, stores, costs):
    batch, _, _ = stocked(kit, stores)
    kit.batches.draw_off(batch.id)
    costs.put_shop_price(ShopPrice(minor=10, currency="EUR"))
    year = costs.year(2026)
    (row,) = year.batches
    hostile = replace(row, batch=replace(row.batch, name='=cmd|"/c calc"!A1, "x"\n@y'))
    (line,) = table(replace(year, batches=(hostile,)), kit)
    assert line["Batch"].startswith("'=cmd")
    assert (line["Total"], line["Tea"], line["Litres drunk"]) == ("1.33", "0.98", "4.0")
    assert line["Saved against the shop"] == "-0.93"
    assert (line["Begun"], line["All of it priced"]) == ("2026-11-25", "yes")
