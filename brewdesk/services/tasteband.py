"""The pH between which a maker likes the drink. Plain values: nothing here needs Qt."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class TasteBand:
    """The pH between which the maker likes the drink."""

    first_taste_ph: float = 3.3
    too_sour_ph: float = 2.9


def usual_band() -> TasteBand:
    """Return the band of a maker who has not said otherwise."""
    return TasteBand()
