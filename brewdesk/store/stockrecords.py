"""Records of the stores: what is bought, lots, draws, and what a recipe will take."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from culturecore.stages import (
    AdditionKind,
    BottleKind,
    DrawReason,
    SupplyKind,
    SupplyMeasure,
    TeaKind,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class SupplyDraft:
    """Something the maker buys. Amounts are in grams, litres or pieces, as ``measure`` says."""

    name: str
    kind: SupplyKind
    measure: SupplyMeasure
    tea_kind: TeaKind | None = None
    addition_kind: AdditionKind | None = None
    sugar_share_low: float | None = None  # grams of sugar in a gram
    sugar_share_high: float | None = None
    bottle_kind: BottleKind | None = None
    brim_volume_l: float | None = None
    rated_bar: float | None = None  # gauge pressure its maker allows
    low_amount: float | None = None  # a note is shown below it
    ingredients: str = ""
    allergens: str = ""
    note: str = ""
    retired_at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Supply(SupplyDraft):
    """A stored supply."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class SupplyLotDraft:
    """One purchase. ``price_minor`` is for all of it, in the currency's smallest coin."""

    supply_id: int
    bought_at: datetime
    amount: float
    price_minor: int | None = None
    currency: str = ""  # ISO 4217, three letters
    lot_code: str = ""
    seller: str = ""
    best_before: datetime | None = None
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class SupplyLot(SupplyLotDraft):
    """A stored purchase."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class SupplyDrawDraft:
    """What left the stores; a negative amount came back."""

    supply_id: int
    at: datetime
    amount: float
    reason: DrawReason
    lot_id: int | None = None  # None: more was used than was written down as bought
    batch_id: int | None = None
    bottling_id: int | None = None
    text: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class SupplyDraw(SupplyDrawDraft):
    """A stored draw."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchSupplyDraft:
    """What a planned batch will take of one supply."""

    batch_id: int
    supply_id: int
    amount: float


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchSupply(BatchSupplyDraft):
    """A stored intention to take something."""

    id: int
