"""Lengths of which a bare number means millimetres, as thin things are measured."""

from __future__ import annotations

from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind

UNIT = "mm"


class MillimetreReader:
    """Reads and shows lengths in millimetres, whatever the maker's unit for lengths is."""

    def __init__(self, quantities: Quantities) -> None:
        self._quantities = quantities

    def unit(self, _kind: Kind) -> str:
        """Return the unit's symbol."""
        return UNIT

    def units(self, kind: Kind) -> tuple[str, ...]:
        """Return what may be typed."""
        others = (unit for unit in self._quantities.units(kind) if unit != UNIT)
        return (UNIT, *others)

    def read(self, text: str, kind: Kind) -> float:
        """Read "6" as 6 mm; with a unit, what it says. The value is in the fixed unit.

        Raises
        ------
        NotAQuantity
            If the text is no length.
        """
        return self._quantities.read_in(text, kind, UNIT)

    def show(self, value: float, kind: Kind) -> str:
        """Write a length in millimetres."""
        return self._quantities.show_in(value, kind, UNIT)
