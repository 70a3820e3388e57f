"""Money is kept to the last digit, and shares add up."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.cost import (
    Pack,
    StarterUse,
    Use,
    batch_cost,
    per_bottle,
    rounded,
    saved,
    starter_cost,
    unit_price,
)
from culturecore.errors import ImpossibleInput

D = Decimal
SUGAR = Pack(price=D("1.20"), size=D(1000))
TEA = Pack(price=D("3.50"), size=D(100))
USES = (
    Use(name="sugar", pack=SUGAR, amount=D(250)),
    Use(name="tea", pack=TEA, amount=D(20)),
)
STARTER = StarterUse(batch_cost=D("1.00"), batch_volume_l=D(4), taken_l=D("0.5"))
MONEY = st.decimals(0, 1000, places=2)
SIZES = st.decimals(1, 1000, places=1)


def test_cost_of_a_batch_by_hand() -> None:
    """250 g of a kilo for 1.20, 20 g of 100 for 3.50, an eighth of a batch for 1.00."""
    cost = batch_cost(USES, volume_l=D(5), starter=STARTER)
    assert cost.parts == (("sugar", D("0.30")), ("tea", D("0.70")))
    assert cost.starter == D("0.125")
    assert cost.total == D("1.125")
    assert cost.per_litre == D("0.225")
    assert per_bottle(cost, bottle_l=D("0.5")) == D("0.1125")


def test_starter_is_free_without_its_batch() -> None:
    assert batch_cost(USES, volume_l=D(5)).total == D("1.00")


def test_saving_is_against_as_much_from_the_shop() -> None:
    cost = batch_cost(USES, volume_l=D(5))
    shop = Pack(price=D("3.00"), size=D("0.5"))
    assert saved(cost, shop) == D(29)
    assert saved(cost, shop, drunk_l=D(1)) == D(5)
    assert saved(cost, shop, drunk_l=D(0)) == D(-1)


@given(st.lists(st.tuples(MONEY, SIZES, SIZES), max_size=6), SIZES)
def test_parts_add_up_to_the_whole(packs: list[tuple[D, D, D]], volume_l: D) -> None:
    uses = tuple(
        Use(name=str(number), pack=Pack(price=price, size=size), amount=amount)
        for number, (price, size, amount) in enumerate(packs)
    )
    cost = batch_cost(uses, volume_l=volume_l)
    assert sum((part for _, part in cost.parts), D(0)) == cost.total
    assert cost.per_litre * volume_l == pytest.approx(cost.total, rel=D("1e-20"), abs=D("1e-20"))


@given(MONEY, SIZES, st.decimals(0, 1, places=3))
def test_starter_and_the_rest_are_the_batch(cost: D, volume_l: D, share: D) -> None:
    taken_l = volume_l * share
    part, rest = (
        starter_cost(StarterUse(batch_cost=cost, batch_volume_l=volume_l, taken_l=litres))
        for litres in (taken_l, volume_l - taken_l)
    )
    assert abs(part + rest - cost) <= D("1e-20")


@pytest.mark.parametrize(
    ("amount", "places", "text"),
    [
        (D("1.005"), 2, "1.00"),
        (D("1.015"), 2, "1.02"),
        (D("2.5"), 0, "2"),
        (D("-0.125"), 2, "-0.12"),
    ],
)
def test_rounding_is_for_the_eye(amount: D, places: int, text: str) -> None:
    assert str(rounded(amount, places=places)) == text


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda x: unit_price(Pack(price=x, size=D(1))), "price"),
        (lambda x: unit_price(Pack(price=D(1), size=x)), "size"),
        (lambda x: batch_cost((), volume_l=x), "volume_l"),
        (lambda x: batch_cost((Use(name="tea", pack=TEA, amount=x),), volume_l=D(1)), "amount"),
        (lambda x: per_bottle(batch_cost((), volume_l=D(1)), bottle_l=x), "bottle_l"),
        (lambda x: saved(batch_cost((), volume_l=D(1)), TEA, drunk_l=x), "drunk_l"),
        (
            lambda x: starter_cost(StarterUse(batch_cost=x, batch_volume_l=D(1), taken_l=D(0))),
            "batch_cost",
        ),
        (
            lambda x: starter_cost(StarterUse(batch_cost=D(1), batch_volume_l=D(1), taken_l=x)),
            "taken_l",
        ),
    ],
)
@pytest.mark.parametrize("bad", [D("-0.01"), D("NaN"), D("Infinity"), D("1e7"), 1.0])
def test_what_is_no_amount_of_money_or_goods_is_refused(call, field: str, bad: object) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        call(bad)
    assert refusal.value.field == field


def test_floats_are_told_apart_from_wrong_amounts() -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        unit_price(Pack(price=0.1, size=D(1)))
    assert refusal.value.reason == "not_decimal"


def test_a_pack_of_nothing_has_no_unit_price() -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        unit_price(Pack(price=D(1), size=D(0)))
    assert refusal.value.reason == "nothing"


def test_rounding_needs_a_number_and_sane_places() -> None:
    for amount, places in ((D("NaN"), 2), (D(1), -1), (D(1), 7)):
        with pytest.raises(ImpossibleInput):
            rounded(amount, places=places)
