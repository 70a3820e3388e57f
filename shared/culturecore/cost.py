"""What a batch costs, in decimals, so that a cent is a cent.

Nothing is rounded on the way; :func:`rounded` is for the eye at the end. Floats are
refused: 0.1 is not a tenth in them. No currency is known here; all prices share one.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_HALF_EVEN, Decimal
from typing import Final

from culturecore.errors import ImpossibleInput

_MOST: Final = Decimal(1_000_000)
_NOTHING: Final = Decimal(0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Pack:
    """A pack as it is bought: its price, and its size in the unit it is used in."""

    price: Decimal
    size: Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class Use:
    """So much of a pack, in the pack's unit."""

    name: str
    pack: Pack
    amount: Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class StarterUse:
    """Starter out of an earlier batch: what that batch cost and gave, and what was taken."""

    batch_cost: Decimal
    batch_volume_l: Decimal
    taken_l: Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchCost:
    """A batch's cost, whole and by part. ``parts`` add up to ``total`` exactly."""

    total: Decimal
    parts: tuple[tuple[str, Decimal], ...]
    starter: Decimal
    volume_l: Decimal

    @property
    def per_litre(self) -> Decimal:
        """Cost of a litre."""
        return self.total / self.volume_l


def unit_price(pack: Pack) -> Decimal:
    """Return the price of one unit of what is in a pack.

    Raises
    ------
    ImpossibleInput
        For what is no decimal, a price below 0 or a size of nothing.
    """
    _check("price", pack.price, _NOTHING)
    _check_size("size", pack.size)
    return pack.price / pack.size


def batch_cost(
    uses: tuple[Use, ...], *, volume_l: Decimal, starter: StarterUse | None = None
) -> BatchCost:
    """Return what a batch costs.

    Parameters
    ----------
    uses : tuple of Use
        Sugar, leaf, water, fruit, whatever is paid for.
    volume_l : Decimal
        What the batch gives [L].
    starter : StarterUse, optional
        Counted as its share of the batch it came from; without it the starter is free.

    Raises
    ------
    ImpossibleInput
        As :func:`unit_price`, for amounts below 0, and for more starter than its batch gave.
    """
    _check_size("volume_l", volume_l)
    parts = []
    for use in uses:
        _check("amount", use.amount, _NOTHING)
        parts.append((use.name, use.amount * unit_price(use.pack)))
    of_starter = _NOTHING if starter is None else starter_cost(starter)
    total = sum((cost for _, cost in parts), of_starter)
    return BatchCost(total=total, parts=tuple(parts), starter=of_starter, volume_l=volume_l)


def starter_cost(starter: StarterUse) -> Decimal:
    """Return the starter's share of the cost of its own batch.

    Raises
    ------
    ImpossibleInput
        For more starter than that batch gave, and as :func:`unit_price`.
    """
    _check("batch_cost", starter.batch_cost, _NOTHING)
    _check_size("batch_volume_l", starter.batch_volume_l)
    _check("taken_l", starter.taken_l, _NOTHING, starter.batch_volume_l)
    return starter.batch_cost * (starter.taken_l / starter.batch_volume_l)


def per_bottle(cost: BatchCost, *, bottle_l: Decimal) -> Decimal:
    """Return the cost of the drink in a bottle; the bottle itself is not counted.

    Raises
    ------
    ImpossibleInput
        For a bottle of nothing.
    """
    _check_size("bottle_l", bottle_l)
    return cost.per_litre * bottle_l


def saved(cost: BatchCost, shop: Pack, *, drunk_l: Decimal | None = None) -> Decimal:
    """Return what was saved against buying as much in a shop; below 0 if it cost more.

    Parameters
    ----------
    cost : BatchCost
        What was made.
    shop : Pack
        A bottle in the shop: its price and its size [L].
    drunk_l : Decimal, optional
        How much of the batch replaced bought drink; all of it if not given. The whole batch
        was paid for either way.

    Raises
    ------
    ImpossibleInput
        For more than the batch gave, and as :func:`unit_price`.
    """
    volume_l = cost.volume_l if drunk_l is None else drunk_l
    _check("drunk_l", volume_l, _NOTHING, cost.volume_l)
    return unit_price(shop) * volume_l - cost.total


def rounded(amount: Decimal, *, places: int = 2) -> Decimal:
    """Return an amount rounded for the eye, halves to even.

    Raises
    ------
    ImpossibleInput
        For what is no finite decimal, or places outside 0 to 6.
    """
    if not 0 <= places <= 6:
        raise ImpossibleInput("places", places, low=0.0, high=6.0)
    _check("amount", amount, -_MOST * _MOST, _MOST * _MOST)
    return amount.quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_EVEN)


def _check_size(field: str, value: Decimal) -> None:
    _check(field, value, _NOTHING)
    if value == _NOTHING:
        raise ImpossibleInput(field, value, low=0.0, reason="nothing")


def _check(field: str, value: object, low: Decimal, high: Decimal = _MOST) -> None:
    if not isinstance(value, Decimal):
        raise ImpossibleInput(field, value, reason="not_decimal")
    if not value.is_finite() or not low <= value <= high:
        raise ImpossibleInput(field, value, low=float(low), high=float(high))
