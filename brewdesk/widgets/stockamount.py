"""Amounts of a supply, typed and shown as it is counted: by weight, by volume, in pieces."""

from __future__ import annotations

from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind, SupplyMeasure
from brewdesk.services.wording.amounts import number_text

KIND_OF = {SupplyMeasure.MASS_G: Kind.MASS, SupplyMeasure.VOLUME_L: Kind.VOLUME}


class StockReader:
    """Reads and shows amounts of one measure, for a `QuantityEdit`; pieces are bare numbers."""

    def __init__(self, quantities: Quantities, measure: SupplyMeasure) -> None:
        self._quantities = quantities
        self._kind = KIND_OF.get(measure)

    def unit(self, _kind: Kind) -> str:
        """Return the unit's symbol; none for pieces."""
        return "" if self._kind is None else self._quantities.unit(self._kind)

    def units(self, _kind: Kind) -> tuple[str, ...]:
        """Return what may be typed behind a number."""
        return () if self._kind is None else self._quantities.units(self._kind)

    def read(self, text: str, _kind: Kind) -> float:
        """Read an amount.

        Raises
        ------
        NotAQuantity
            If the text is none.
        """
        # A pH is a bare number too, and read with the same care for commas and points.
        return self._quantities.read(text, self._kind or Kind.PH)

    def show(self, value: float, _kind: Kind) -> str:
        """Write an amount."""
        if self._kind is not None:
            return self._quantities.show(value, self._kind)
        return number_text(value, 0 if float(value).is_integer() else 2)
