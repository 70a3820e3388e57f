"""Lots are used up oldest first; matter and money are kept to the last digit."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.stockcost import (
    FREE,
    UNKNOWN,
    Cost,
    LotStock,
    Portion,
    cost_of,
    exact,
    give_back,
    left_in,
    saved,
    take,
    total_cost,
)

F = Fraction
AMOUNTS = st.integers(1, 5000).map(lambda number: F(number, 8))
PRICES = st.none() | st.integers(0, 5000)
CURRENCIES = st.sampled_from(["EUR", "CHF"])


@st.composite
def stores(draw):
    """Lots of one thing, each partly used up."""
    rows = draw(st.lists(st.tuples(AMOUNTS, PRICES, CURRENCIES, st.integers(0, 8)), max_size=6))
    return tuple(
        LotStock(
            key=key, amount=amount, left=amount * eighths / 8, price_minor=price, currency=currency
        )
        for key, (amount, price, currency, eighths) in enumerate(rows)
    )


def test_a_textbook_s_inventory_costs_as_printed() -> None:
    """OpenStax, Principles of Accounting, Volume 1: Financial Accounting, 10.2 (from memory).

    150 pieces at 21 dollars, 225 at 27 and 210 at 33; 300 were sold. First in, first out
    the goods sold cost 7,200 dollars, those left 8,955.
    """
    lots = tuple(
        LotStock(
            key=key,
            amount=F(pieces),
            left=F(pieces),
            price_minor=100 * pieces * dollars,
            currency="USD",
        )
        for key, (pieces, dollars) in enumerate([(150, 21), (225, 27), (210, 33)])
    )
    sold = take(lots, F(300))
    assert cost_of(sold, lots).known == (("USD", F(720_000)),)
    gone = {portion.lot_key: portion.amount for portion in sold}
    rest = [Portion(lot.key, lot.left - gone.get(lot.key, 0)) for lot in lots]
    assert cost_of(rest, lots).known == (("USD", F(895_500)),)


@given(stores(), AMOUNTS)
def test_what_is_taken_is_what_was_wanted_and_no_lot_gives_more_than_it_has(lots, wanted) -> None:
    portions = take(lots, wanted)
    assert sum(portion.amount for portion in portions) == wanted
    left = {lot.key: lot.left for lot in lots}
    for portion in portions:
        if portion.lot_key is not None:
            assert 0 < portion.amount <= left[portion.lot_key]
    from_nowhere = sum(portion.amount for portion in portions if portion.lot_key is None)
    assert from_nowhere == max(wanted - left_in(lots), 0)


@given(stores(), AMOUNTS)
def test_no_younger_lot_is_opened_before_the_older_one_is_empty(lots, wanted) -> None:
    gone = {portion.lot_key: portion.amount for portion in take(lots, wanted)}
    after = [lot.left - gone.get(lot.key, 0) for lot in lots]
    for place, lot in enumerate(lots):
        if gone.get(lot.key, 0):
            assert not any(after[:place])


@given(
    st.lists(st.tuples(st.integers(1, 30), st.integers(0, 900)), max_size=5), st.integers(0, 120)
)
def test_the_cost_is_that_of_taking_piece_by_piece(rows, wanted) -> None:
    """The oracle lays every piece in a row with its own price, and counts from the front."""
    lots = tuple(
        LotStock(key=key, amount=F(count), left=F(count), price_minor=price, currency="EUR")
        for key, (count, price) in enumerate(rows)
    )
    pieces = [F(price, count) for count, price in rows for _ in range(count)]
    cost = cost_of(take(lots, F(wanted)), lots)
    assert dict(cost.known).get("EUR", F(0)) == sum(pieces[:wanted], F(0))
    assert cost.is_complete == (wanted <= len(pieces))


@given(stores(), AMOUNTS)
def test_what_is_put_back_fits_and_takes_the_newest_first(lots, found) -> None:
    portions = give_back(lots, found)
    assert sum(portion.amount for portion in portions) == found
    room = {lot.key: lot.amount - lot.left for lot in lots}
    back = {portion.lot_key: portion.amount for portion in portions}
    for key, free in room.items():
        assert back.get(key, 0) <= free
        if back.get(key, 0):
            assert all(back.get(later, 0) == room[later] for later in room if later > key)
    assert back.get(None, 0) == max(found - sum(room.values()), 0)


@given(stores(), AMOUNTS)
def test_what_is_taken_and_put_back_at_once_costs_nothing(lots, wanted) -> None:
    portions = take(lots, wanted)
    gone = {portion.lot_key: portion.amount for portion in portions}
    after = tuple(
        LotStock(key=lot.key, amount=lot.amount, left=lot.left - gone.get(lot.key, F(0)))
        for lot in lots
    )
    in_lots = wanted - gone.get(None, F(0))
    back = give_back(after, in_lots)
    assert sum(portion.amount for portion in back if portion.lot_key is not None) == in_lots
    assert left_in(after) + in_lots == left_in(lots)


@given(st.lists(st.tuples(CURRENCIES, st.integers(0, 999), st.booleans()), max_size=8))
def test_currencies_are_never_mixed(rows) -> None:
    costs = [
        Cost(known=((currency, F(money)),), is_complete=whole) for currency, money, whole in rows
    ]
    total = total_cost(costs)
    for currency in ("EUR", "CHF"):
        wanted = sum(money for code, money, _ in rows if code == currency)
        assert dict(total.known).get(currency, 0) == wanted
    assert total.is_complete == all(whole for _, _, whole in rows)


def test_what_has_no_price_is_not_guessed() -> None:
    lots = (
        LotStock(key=1, amount=F(100), left=F(100)),
        LotStock(key=2, amount=F(100), left=F(100), price_minor=250, currency="EUR"),
    )
    cost = cost_of(take(lots, F(150)), lots)
    assert (cost.known, cost.is_complete) == ((("EUR", F(125)),), False)
    beyond = cost_of(take(lots[1:], F(200)), lots[1:])
    assert (beyond.known, beyond.is_complete) == ((("EUR", F(250)),), False)
    assert UNKNOWN.is_unknown
    assert not FREE.is_unknown
    assert not cost.is_unknown


def test_a_saving_is_against_as_much_from_the_shop() -> None:
    """Four litres at 3.50 in the shop, made for 2.80: 11.20 saved."""
    cost = Cost(known=(("EUR", F(280)),))
    kept = saved(cost, litres=F(4), shop_minor_per_l=F(350), currency="EUR")
    assert kept is not None
    assert (kept.minor, kept.is_at_most) == (F(1120), False)
    partly = saved(cost + UNKNOWN, litres=F(4), shop_minor_per_l=F(350), currency="EUR")
    assert partly is not None
    assert partly.is_at_most
    assert saved(cost, litres=F(4), shop_minor_per_l=F(350), currency="CHF") is None
    two = cost + Cost(known=(("CHF", F(1)),))
    assert saved(two, litres=F(4), shop_minor_per_l=F(350), currency="EUR") is None


def test_tenths_are_tenths() -> None:
    assert exact(0.1) + exact(0.2) == exact(0.3)
    assert float(exact(1234.567891)) == 1234.567891
    assert exact(1e-9) == 0


@pytest.mark.parametrize("bad", [float("nan"), float("inf"), -1e8, 1e8])
def test_what_is_no_amount_is_refused(bad: float) -> None:
    with pytest.raises(ImpossibleInput):
        exact(bad)


@pytest.mark.parametrize(
    "call",
    [
        lambda: take((), F(-1)),
        lambda: give_back((), F(-1)),
        lambda: FREE.times(F(-1)),
        lambda: saved(FREE, litres=F(-1), shop_minor_per_l=F(1), currency="EUR"),
        lambda: saved(FREE, litres=F(1), shop_minor_per_l=F(-1), currency="EUR"),
    ],
)
def test_less_than_nothing_is_refused(call) -> None:
    with pytest.raises(ImpossibleInput):
        call()
