"""The table of additions as the form offers it: names, shares of sugar, where they are from."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from brewdesk.services.wording.bottlings import addition_name
from brewdesk.services.wording.stores import stores_source_words
from brewdesk.store.stockrecords import Supply
from culturecore.additions import KNOWN_ADDITIONS
from culturecore.sources import SOURCES
from culturecore.stages import AdditionKind, SupplyKind


@dataclass(frozen=True, slots=True, kw_only=True)
class AdditionChoice:
    """One thing to put in, with its share of sugar as the table has it."""

    key: str
    kind: AdditionKind
    name: str
    sugar_share_low: float
    sugar_share_high: float
    source: str
    supply_id: int | None = None  # what it is in the stores


def addition_choices() -> tuple[AdditionChoice, ...]:
    """Return all that the table knows, in its order."""
    return tuple(
        AdditionChoice(
            key=known.key,
            kind=known.kind,
            name=addition_name(known.key),
            sugar_share_low=known.sugar_share_low,
            sugar_share_high=known.sugar_share_high,
            source="; ".join(SOURCES[key].citation for key in known.sources),
        )
        for known in KNOWN_ADDITIONS
    )


def supply_choices(supplies: Iterable[Supply]) -> tuple[AdditionChoice, ...]:
    """Return flavourings of the stores as choices, with the shares of sugar on their record."""
    return tuple(
        AdditionChoice(
            key=f"supply:{supply.id}",
            kind=supply.addition_kind or AdditionKind.OTHER,
            name=supply.name,
            sugar_share_low=supply.sugar_share_low or 0.0,
            sugar_share_high=1.0 if supply.sugar_share_high is None else supply.sugar_share_high,
            source=stores_source_words(),
            supply_id=supply.id,
        )
        for supply in supplies
        if supply.kind is SupplyKind.FLAVOURING
    )
