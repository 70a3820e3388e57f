"""The sugar of what goes into bottles: shares in order, each with its source."""

from __future__ import annotations

import pytest

from brewdesk.services.wording.bottlings import addition_name
from culturecore.additions import KNOWN_ADDITIONS, known_addition
from culturecore.sources import SOURCES, Standing
from culturecore.stages import AdditionKind


@pytest.mark.parametrize("known", KNOWN_ADDITIONS, ids=lambda known: known.key)
def test_shares_are_in_order_and_have_a_source_and_a_name(known) -> None:
    assert 0.0 < known.sugar_share_low <= known.sugar_share <= known.sugar_share_high <= 1.0
    assert known.sources
    assert all(key in SOURCES for key in known.sources)
    assert known_addition(known.key) is known
    assert addition_name(known.key)


def test_keys_are_not_doubled() -> None:
    keys = [known.key for known in KNOWN_ADDITIONS]
    assert len(keys) == len(set(keys))
    assert {known.kind for known in KNOWN_ADDITIONS} == set(AdditionKind) - {AdditionKind.OTHER}


@pytest.mark.parametrize(
    ("key", "grams_in_100"),
    [("raspberries", 4.42), ("pears", 9.80), ("grapes", 16.25), ("honey", 82.12), ("ginger", 1.7)],
)
def test_figures_are_those_of_the_usda_table_as_quoted(key: str, grams_in_100: float) -> None:
    """USDA food composition, sugars in 100 g, as quoted by the sources the table names."""
    assert 100.0 * known_addition(key).sugar_share == pytest.approx(grams_in_100)


def test_what_is_from_memory_says_so() -> None:
    remembered = {
        known.key
        for known in KNOWN_ADDITIONS
        if any(SOURCES[key].standing is Standing.FROM_MEMORY for key in known.sources)
    }
    assert {"orange_juice", "agave_syrup"} <= remembered
    assert not {"honey", "ginger", "apples"} & remembered


def test_an_unknown_key_is_refused() -> None:
    with pytest.raises(KeyError):
        known_addition("moonbeams")
