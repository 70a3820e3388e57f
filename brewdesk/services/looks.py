"""What to look for on a jar's surface, and what follows from what was seen.

The signs are those of guides for home makers: fuzzy, dry, coloured means mold; wet, brown
strings, bubbles and layers belong to a healthy brew. Discarding everything at any mold is
Niagara Region's best practice (``niagara_region`` in the bibliography); how a healthy film
looks is common practice, no source. Nothing seen is never told as proof.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import Enum

from culturecore.stages import Look


class Sign(Enum):
    """One thing to look for."""

    FUZZY = "fuzzy"
    DRY = "dry"
    COLOURED = "coloured"
    WET_SMOOTH = "wet_smooth"
    STRINGS = "strings"
    BUBBLES = "bubbles"
    LAYERS = "layers"
    BARE = "bare"
    DOUBT = "doubt"


MOLD_SIGNS = (Sign.FUZZY, Sign.DRY, Sign.COLOURED)
FINE_SIGNS = (Sign.WET_SMOOTH, Sign.STRINGS, Sign.BUBBLES, Sign.LAYERS, Sign.BARE)


def look_of(signs: Iterable[Sign]) -> Look | None:
    """Return what signs add up to, None for none at all. Mold outweighs doubt, doubt the rest."""
    seen = set(signs)
    if seen & set(MOLD_SIGNS):
        return Look.MOLD
    if Sign.DOUBT in seen:
        return Look.UNSURE
    return Look.FINE if seen else None
