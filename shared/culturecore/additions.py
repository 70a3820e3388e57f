"""What goes into bottles beside the drink, and how much of it is sugar that ferments.

Shares are grams of sugar in a gram of what is weighed out. The table's figure is one
sample's mean; fruit differs by ripeness and kind, so each share has a low and a high end,
and the high end is what safety is reckoned with. A label on the bottle or jar knows better.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from culturecore.stages import AdditionKind

# Fruit and juice vary about so much around a table's mean; additions_spread
_FRUIT_LOW, _FRUIT_HIGH = 0.75, 1.35
_JUICE_LOW, _JUICE_HIGH = 0.85, 1.20


@dataclass(frozen=True, slots=True, kw_only=True)
class KnownAddition:
    """One thing that makers put in, with its share of sugar and where that is from."""

    key: str
    kind: AdditionKind
    sugar_share: float
    sugar_share_low: float
    sugar_share_high: float
    sources: tuple[str, ...]


def _known(
    key: str, kind: AdditionKind, percent: float, low: float, high: float, *sources: str
) -> KnownAddition:
    return KnownAddition(
        key=key,
        kind=kind,
        sugar_share=percent / 100.0,
        sugar_share_low=low / 100.0,
        sugar_share_high=high / 100.0,
        sources=sources,
    )


def _fruit(key: str, percent: float, source: str = "usda_fruit_sugars") -> KnownAddition:
    low, high = percent * _FRUIT_LOW, percent * _FRUIT_HIGH
    return _known(key, AdditionKind.FRUIT, percent, low, high, source, "additions_spread")


def _juice(key: str, percent: float, source: str = "usda_from_memory") -> KnownAddition:
    low, high = percent * _JUICE_LOW, percent * _JUICE_HIGH
    return _known(key, AdditionKind.JUICE, percent, low, high, source, "additions_spread")


# Grams of sugars in 100 g, edible part, raw unless it is a juice or a syrup.
KNOWN_ADDITIONS: Final[tuple[KnownAddition, ...]] = (
    _known("white_sugar", AdditionKind.SUGAR, 99.8, 99.0, 100.0, "usda_from_memory"),
    _known("brown_sugar", AdditionKind.SUGAR, 97.0, 93.0, 99.0, "usda_from_memory"),
    _known("honey", AdditionKind.HONEY, 82.12, 75.0, 86.0, "usda_honey", "additions_spread"),
    _known("maple_syrup", AdditionKind.SYRUP, 60.5, 58.0, 68.0, "usda_maple", "additions_spread"),
    _known("agave_syrup", AdditionKind.SYRUP, 68.0, 60.0, 78.0, "usda_from_memory"),
    _juice("apple_juice", 9.67, "usda_apple_juice"),
    _juice("orange_juice", 8.4),
    _juice("grape_juice", 14.2),
    _juice("pineapple_juice", 10.0),
    _juice("cranberry_juice", 12.1),
    _juice("pomegranate_juice", 12.65),
    _juice("lemon_juice", 2.5),
    _fruit("raspberries", 4.42),
    _fruit("strawberries", 4.66),
    _fruit("blackberries", 4.88),
    _fruit("blueberries", 9.96),
    _fruit("cherries", 12.82),
    _fruit("apples", 10.39),
    _fruit("pears", 9.80),
    _fruit("plums", 9.92),
    _fruit("peaches", 8.39),
    _fruit("apricots", 9.24),
    _fruit("grapes", 16.25),
    _fruit("oranges", 9.35),
    _fruit("grapefruit", 6.89),
    _fruit("pineapple", 9.26),
    _fruit("mango", 14.80),
    _fruit("kiwi", 8.99),
    _fruit("figs", 16.26),
    _fruit("pomegranate", 16.57),
    _fruit("watermelon", 6.20),
    _known("ginger", AdditionKind.GINGER, 1.7, 1.0, 3.0, "usda_ginger", "additions_spread"),
)

_BY_KEY: Final = {known.key: known for known in KNOWN_ADDITIONS}


def known_addition(key: str) -> KnownAddition:
    """Return one addition of the table.

    Raises
    ------
    KeyError
        For a key that is not in it.
    """
    return _BY_KEY[key]
