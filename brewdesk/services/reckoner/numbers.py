"""Reading and showing a question's plain numbers, in the manner of ``Quantities``."""

from __future__ import annotations

from brewdesk.services.quantities import Quantities
from brewdesk.services.reckoner.question import Number
from brewdesk.services.wording.reckoner import entry_words
from culturecore.units import Kind, NotAQuantity

# The kind with one unit only: its reader takes a bare number and refuses any other unit.
_BARE = Kind.ACIDITY
_BARE_UNIT = "g/L"


class NumberReader:
    """Reads "12,5", "12.5 mL" and fractions as a plain number of one unit.

    It can be handed wherever amounts are read: the ``kind`` it is asked for plays no part.
    """

    def __init__(self, quantities: Quantities, measure: Number) -> None:
        self._quantities = quantities
        self._measure = measure

    def unit(self, kind: Kind) -> str:
        """Return the number's unit."""
        return self._measure.unit

    def units(self, kind: Kind) -> tuple[str, ...]:
        """Return the only unit there is."""
        return (self._measure.unit,) if self._measure.unit else ()

    def read(self, text: str, kind: Kind) -> float:
        """Read what was typed, in the core's unit.

        Raises
        ------
        NotAQuantity
            If it is no number, or one with another unit.
        """
        bare = text.strip()
        unit = self._measure.unit
        if unit and bare.casefold().endswith(unit.casefold()):
            bare = bare[: -len(unit)].rstrip()
        if bare.casefold().replace(" ", "").endswith("g/l"):
            raise NotAQuantity("unknown_unit", text, bare[-3:])
        return self._quantities.read_in(bare, _BARE, _BARE_UNIT) / self._measure.scale

    def show(self, value: float, kind: Kind, /) -> str:
        """Write a number of the core's unit with its own."""
        return entry_words(value, self._measure)
