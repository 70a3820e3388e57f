"""What a supply and a purchase can be: refused here, with the field, before the store is asked."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import datetime

from brewdesk.services.names import tidy_name
from brewdesk.services.stockdraws import MEASURES
from brewdesk.store.stockrecords import SupplyDraft, SupplyLotDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import SupplyKind
from culturecore.stockcost import exact

AMOUNT_MAX = 10_000_000.0
PRICE_MAX_MINOR = 1_000_000_000
BRIM_MAX_L = 1000.0
RATED_MAX_BAR = 100.0
_LONG = 20_000
_SHORT = 2000
_LINE = 200
_CURRENCY_LETTERS = 3


def check_supply_draft(draft: SupplyDraft) -> SupplyDraft:
    """Return a supply without spare spaces, and without what its kind does not have.

    Raises
    ------
    ImpossibleInput
        For a field that no supply of this kind can have.
    """
    if draft.measure not in MEASURES[draft.kind]:
        raise ImpossibleInput("measure", draft.measure.value, reason="measure")
    is_tea = draft.kind is SupplyKind.TEA
    is_flavouring = draft.kind is SupplyKind.FLAVOURING
    is_bottle = draft.kind is SupplyKind.BOTTLE
    made = replace(
        draft,
        name=tidy_name(draft.name),
        tea_kind=draft.tea_kind if is_tea else None,
        addition_kind=draft.addition_kind if is_flavouring else None,
        sugar_share_low=draft.sugar_share_low if is_flavouring else None,
        sugar_share_high=draft.sugar_share_high if is_flavouring else None,
        bottle_kind=draft.bottle_kind if is_bottle else None,
        brim_volume_l=draft.brim_volume_l if is_bottle else None,
        rated_bar=draft.rated_bar if is_bottle else None,
        ingredients=_text("ingredients", draft.ingredients, _SHORT),
        allergens=_text("allergens", draft.allergens, _SHORT),
        note=_text("note", draft.note, _LONG),
    )
    if is_tea and made.tea_kind is None:
        raise ImpossibleInput("tea_kind", None, reason="empty")
    for field, high in (
        ("sugar_share_low", 1.0),
        ("sugar_share_high", 1.0),
        ("low_amount", AMOUNT_MAX),
        ("rated_bar", RATED_MAX_BAR),
    ):
        _check_range(field, getattr(made, field), 0.0, high)
    if made.brim_volume_l is not None and not 0.0 < made.brim_volume_l <= BRIM_MAX_L:
        raise ImpossibleInput(
            "brim_volume_l", made.brim_volume_l, low=0.0, high=BRIM_MAX_L, unit="L"
        )
    low, high_share = made.sugar_share_low, made.sugar_share_high
    if low is not None and high_share is not None and low > high_share:
        raise ImpossibleInput("sugar_share_high", high_share, low=low, reason="upside_down")
    return made


def check_lot(draft: SupplyLotDraft, now: datetime) -> SupplyLotDraft:
    """Return a purchase to the millionth, without spare spaces.

    Raises
    ------
    ImpossibleInput
        Field "amount", "price_minor", "currency"; "bought_at" with reason "in_future".
    """
    if not math.isfinite(draft.amount) or draft.amount > AMOUNT_MAX:
        raise ImpossibleInput("amount", draft.amount, low=0.0, high=AMOUNT_MAX)
    amount = float(exact(draft.amount)) if draft.amount > 0.0 else 0.0
    if amount <= 0.0:
        raise ImpossibleInput("amount", draft.amount, reason="nothing")
    if draft.bought_at > now:
        raise ImpossibleInput("bought_at", draft.bought_at, reason="in_future")
    price, currency = draft.price_minor, draft.currency
    if price is None:
        currency = ""
    elif not 0 <= price <= PRICE_MAX_MINOR:
        raise ImpossibleInput("price_minor", price, low=0.0, high=float(PRICE_MAX_MINOR))
    elif not is_currency(currency):
        raise ImpossibleInput("currency", currency, reason="not_offered")
    return replace(
        draft,
        amount=amount,
        currency=currency,
        lot_code=_text("lot_code", draft.lot_code, _LINE),
        seller=_text("seller", draft.seller, _LINE),
        note=_text("note", draft.note, _LONG),
    )


def is_currency(code: str) -> bool:
    """Whether a code has the form of ISO 4217: three capital letters."""
    return len(code) == _CURRENCY_LETTERS and code.isascii() and code.isalpha() and code.isupper()


def _text(field: str, text: str, most: int) -> str:
    tidy = text.strip()
    if len(tidy) > most:
        raise ImpossibleInput(field, len(tidy), high=most, reason="too_long")
    return tidy


def _check_range(field: str, value: float | None, low: float, high: float) -> None:
    if value is not None and not low <= value <= high:  # a NaN fails this too
        raise ImpossibleInput(field, value, low=low, high=high)
