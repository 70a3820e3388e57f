"""The drink that a maker likes. Plain values: nothing here needs Qt."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from culturecore.forecast import Band


@dataclass(frozen=True, slots=True, kw_only=True)
class TasteBand:
    """The pH between which the maker likes the drink, and the sugar beyond which surely not."""

    first_taste_ph: float = 3.3
    too_sour_ph: float = 2.9
    too_sweet_g_per_l: float | None = None
    too_dry_g_per_l: float | None = None

    def as_core(self) -> Band:
        """Return it as a forecast takes it."""
        from culturecore.forecast import Band

        return Band(**asdict(self))


def usual_band() -> TasteBand:
    """Return the band of a maker who has not said otherwise."""
    return TasteBand()
