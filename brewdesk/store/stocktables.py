"""The tables of the stores: what is bought, in which lots, and what has used it up.

Private to the store, like ``schema``, which lists them.
"""

from __future__ import annotations

from sqlalchemy import Column, Index, Integer

from brewdesk.store.columns import Finite
from brewdesk.store.tableparts import choice, instant, link, number, rule, table, words
from culturecore.stages import (
    AdditionKind,
    BottleKind,
    DrawReason,
    SupplyKind,
    SupplyMeasure,
    TeaKind,
)

supply = table(
    "supply",
    words("name", 200, least=1),
    choice("kind", SupplyKind),
    choice("measure", SupplyMeasure),
    choice("tea_kind", TeaKind, optional=True),
    choice("addition_kind", AdditionKind, optional=True),
    number("sugar_share_low", 0, 1, optional=True),
    number("sugar_share_high", 0, 1, optional=True),
    rule("sugar_share", "sugar_share_low <= sugar_share_high"),
    choice("bottle_kind", BottleKind, optional=True),
    number("brim_volume_l", 0, 1000, optional=True),
    number("rated_bar", 0, 100, optional=True),
    number("low_amount", 0, 10_000_000, optional=True),
    words("ingredients", 2000),
    words("allergens", 2000),
    words("note", 20_000),
    instant("retired_at", optional=True),
)

# What one purchase brought in; the price is of the whole lot, in the currency's smallest coin.
supply_lot = table(
    "supply_lot",
    link("supply_id", "supply"),
    instant("bought_at"),
    [Column("amount", Finite(), nullable=False)],
    rule("amount", "amount > 0 AND amount <= 10000000"),
    [Column("price_minor", Integer())],
    rule("price_minor", "price_minor BETWEEN 0 AND 1000000000"),
    words("currency", 3),
    rule("has_currency", "price_minor IS NULL OR length(currency) = 3"),
    words("lot_code", 200),
    words("seller", 200),
    instant("best_before", optional=True),
    words("note", 20_000),
)
Index("ix_supply_lot_supply_id", supply_lot.c.supply_id)

# Negative amounts come back: bottles emptied and washed, a count that found more.
supply_draw = table(
    "supply_draw",
    link("supply_id", "supply"),
    link("lot_id", "supply_lot", optional=True),
    link("batch_id", "batch", optional=True),
    link("bottling_id", "bottling", optional=True),
    instant("at"),
    [Column("amount", Finite(), nullable=False)],
    rule("amount", "amount <> 0 AND amount BETWEEN -10000000 AND 10000000"),
    choice("reason", DrawReason),
    words("text", 2000),
)
Index("ix_supply_draw_supply_id", supply_draw.c.supply_id)
Index("ix_supply_draw_lot_id", supply_draw.c.lot_id)
Index("ix_supply_draw_batch_id", supply_draw.c.batch_id)
Index("ix_supply_draw_bottling_id", supply_draw.c.bottling_id)

# What a recipe is going to take; it is drawn when the brew starts.
batch_supply = table(
    "batch_supply",
    link("batch_id", "batch"),
    link("supply_id", "supply"),
    [Column("amount", Finite(), nullable=False)],
    rule("amount", "amount > 0 AND amount <= 10000000"),
)
Index("ix_batch_supply_batch_id", batch_supply.c.batch_id)
