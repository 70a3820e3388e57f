"""What is left of lots that are used up oldest first, and what the part used has cost.

Amounts are whole millionths of a gram, litre or piece, and money is whole smallest coins or
fractions of them, so nothing is lost between what was bought, what was drawn and what is
left. First in, first out is the convention of inventory accounting (IAS 2 "Inventories",
paragraph 27, from memory). Money of different currencies is never added up, and what has no
known price is never given one: a sum with such a part is known from below only.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Final

from culturecore.errors import ImpossibleInput

_PLACES: Final = 6
_MOST: Final = 10_000_000
_NOTHING: Final = Fraction(0)


def exact(amount: float) -> Fraction:
    """Return an amount without the rounding of binary fractions, to a millionth of its unit.

    Raises
    ------
    ImpossibleInput
        For what is not finite, or beyond ten million either way.
    """
    if not math.isfinite(amount) or abs(amount) > _MOST:
        raise ImpossibleInput("amount", amount, low=-float(_MOST), high=float(_MOST))
    return Fraction(Decimal(repr(round(float(amount), _PLACES))))


@dataclass(frozen=True, slots=True, kw_only=True)
class LotStock:
    """One purchase with what is left of it. ``price_minor`` is of the whole lot, None unknown."""

    key: int
    amount: Fraction
    left: Fraction
    price_minor: int | None = None
    currency: str = ""


@dataclass(frozen=True, slots=True)
class Portion:
    """A part of an amount and the lot it belongs to; no lot: nothing is on the books for it."""

    lot_key: int | None
    amount: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class Cost:
    """Money by currency, in smallest coins. Not complete: known from below, "at least"."""

    known: tuple[tuple[str, Fraction], ...] = ()
    is_complete: bool = True

    def __add__(self, other: Cost) -> Cost:
        """Add up, each currency by itself."""
        return total_cost((self, other))

    def times(self, factor: Fraction) -> Cost:
        """Return so much of it.

        Raises
        ------
        ImpossibleInput
            For a factor below 0: less than nothing is no part of a cost.
        """
        if factor < 0:
            raise ImpossibleInput("factor", float(factor), low=0.0)
        known = ((currency, money * factor) for currency, money in self.known)
        return Cost(
            known=tuple(part for part in known if part[1] > 0),
            is_complete=self.is_complete,
        )

    @property
    def is_unknown(self) -> bool:
        """Whether nothing at all is known of it."""
        return not self.known and not self.is_complete

    def in_currency(self, currency: str) -> Fraction | None:
        """Return the money if all that is known is in one currency; else None."""
        if not self.known:
            return _NOTHING
        if len(self.known) == 1 and self.known[0][0] == currency:
            return self.known[0][1]
        return None


FREE: Final = Cost()
UNKNOWN: Final = Cost(is_complete=False)


@dataclass(frozen=True, slots=True, kw_only=True)
class Saving:
    """What was saved, in smallest coins; below 0 it cost more. ``is_at_most``: some is unpriced."""

    minor: Fraction
    currency: str
    is_at_most: bool


def take(lots: Sequence[LotStock], wanted: Fraction) -> tuple[Portion, ...]:
    """Take an amount out of lots in their order, oldest first.

    What the lots do not hold comes last, from no lot: it was used all the same.

    Raises
    ------
    ImpossibleInput
        For an amount below 0.
    """
    _check_amount(wanted)
    portions, rest = [], wanted
    for lot in lots:
        part = min(rest, max(lot.left, _NOTHING))
        if part > 0:
            portions.append(Portion(lot.key, part))
            rest -= part
    if rest > 0:
        portions.append(Portion(None, rest))
    return tuple(portions)


def give_back(lots: Sequence[LotStock], found: Fraction) -> tuple[Portion, ...]:
    """Put an amount back into lots that were drawn from, the newest first.

    No lot takes more than it once held; what is over comes last, for no lot.

    Raises
    ------
    ImpossibleInput
        For an amount below 0.
    """
    _check_amount(found)
    portions, rest = [], found
    for lot in reversed(lots):
        part = min(rest, lot.amount - lot.left)
        if part > 0:
            portions.append(Portion(lot.key, part))
            rest -= part
    if rest > 0:
        portions.append(Portion(None, rest))
    return tuple(portions)


def left_in(lots: Iterable[LotStock]) -> Fraction:
    """Return what is left in lots together."""
    return sum((lot.left for lot in lots), _NOTHING)


def cost_of(portions: Iterable[Portion], lots: Iterable[LotStock]) -> Cost:
    """Return what portions have cost: each its share of the price of its lot.

    Raises
    ------
    KeyError
        For a portion of a lot that is not among ``lots``.
    """
    by_key = {lot.key: lot for lot in lots}
    return total_cost(
        UNKNOWN if portion.lot_key is None else _share(by_key[portion.lot_key], portion.amount)
        for portion in portions
    )


def total_cost(costs: Iterable[Cost]) -> Cost:
    """Add costs up, each currency by itself; complete only if all of them are."""
    sums: dict[str, Fraction] = {}
    is_complete = True
    for cost in costs:
        is_complete = is_complete and cost.is_complete
        for currency, money in cost.known:
            sums[currency] = sums.get(currency, _NOTHING) + money
    return Cost(known=tuple(sorted(sums.items())), is_complete=is_complete)


def saved(
    cost: Cost, *, litres: Fraction, shop_minor_per_l: Fraction, currency: str
) -> Saving | None:
    """Return what was saved against buying as many litres; None if currencies differ.

    Raises
    ------
    ImpossibleInput
        For litres or a shop's price below 0.
    """
    if litres < 0:
        raise ImpossibleInput("litres", float(litres), low=0.0)
    if shop_minor_per_l < 0:
        raise ImpossibleInput("shop_price", float(shop_minor_per_l), low=0.0)
    spent = cost.in_currency(currency)
    if spent is None:
        return None
    return Saving(
        minor=litres * shop_minor_per_l - spent,
        currency=currency,
        is_at_most=not cost.is_complete,
    )


def _share(lot: LotStock, amount: Fraction) -> Cost:
    if lot.price_minor is None:
        return UNKNOWN
    money = lot.price_minor * amount / lot.amount
    return Cost(known=((lot.currency, money),) if money else ())


def _check_amount(amount: Fraction) -> None:
    if amount < 0:
        raise ImpossibleInput("amount", float(amount), low=0.0)
