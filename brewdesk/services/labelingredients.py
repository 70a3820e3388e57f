"""What is in a batch and in its bottles, for a label: the heaviest first.

The order by weight, as it went in, is what food law asks of lists of ingredients (Regulation (EU)
No 1169/2011, article 18(1); 21 CFR 101.4(a)(1)). The list is where a maker starts, not a promise:
the maker corrects it, and alone knows what an ingredient holds.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from brewdesk.services.wording.labels import ingredient_list_words, ingredient_words
from brewdesk.store.records import Batch
from culturecore.stages import AdditionKind

if TYPE_CHECKING:
    from brewdesk.services.bottlingparts import BottlingParts

_G_PER_L = 1000.0  # of starter; near enough for an order


def ingredients_of_batch(batch: Batch) -> str:
    """Return what went into a jar."""
    return _listed(_batch_masses_g(batch))


def ingredients_of_bottling(batch: Batch, parts: BottlingParts) -> str:
    """Return what went into bottles: their share of the batch, and what was added to them."""
    share = parts.bottling.drink_volume_l / batch.fill_volume_l
    masses_g = {name: mass_g * share for name, mass_g in _batch_masses_g(batch).items()}
    sugar = ingredient_words("sugar")
    masses_g[sugar] += parts.bottling.priming_sugar_g
    for addition in parts.additions:
        is_sugar = addition.kind is AdditionKind.SUGAR
        name = " ".join(addition.name.split()) or (sugar if is_sugar else "")
        if name:
            masses_g[name] = masses_g.get(name, 0.0) + addition.mass_g
    return _listed(masses_g)


def _batch_masses_g(batch: Batch) -> dict[str, float]:
    return {
        ingredient_words("water"): batch.hot_water_g + batch.cold_water_g,
        ingredient_words("kombucha"): batch.starter_volume_l * _G_PER_L,
        ingredient_words("sugar"): batch.sugar_g,
        ingredient_words(batch.tea_kind.value): batch.tea_g,
    }


def _listed(masses_g: Mapping[str, float]) -> str:
    present = sorted((name for name in masses_g if masses_g[name] > 0), key=lambda n: -masses_g[n])
    return ingredient_list_words(present)
