"""The table of additions as the form offers it: names, shares of sugar, where they are from."""

from __future__ import annotations

from dataclasses import dataclass

from brewdesk.services.wording.bottlings import addition_name
from culturecore.additions import KNOWN_ADDITIONS
from culturecore.sources import SOURCES
from culturecore.stages import AdditionKind


@dataclass(frozen=True, slots=True, kw_only=True)
class AdditionChoice:
    """One thing to put in, with its share of sugar as the table has it."""

    key: str
    kind: AdditionKind
    name: str
    sugar_share_low: float
    sugar_share_high: float
    source: str


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
