"""Typed text to floats in the fixed units, and back in the unit the maker likes."""

from __future__ import annotations

from PySide6.QtCore import QLocale

from brewdesk.services.settings import Settings
from brewdesk.services.wording.amounts import decimals_for, number_text
from culturecore import units
from culturecore.units import Kind

_UNIT_WITHOUT_CHOICE = {Kind.PH: "", Kind.BRIX: "°Bx", Kind.GRAVITY: "", Kind.DURATION: "min"}


class Quantities:
    """Read and show quantities. Entry takes any common unit; display uses the maker's.

    ``locale`` gives the decimal separator; None means Qt's default locale at the
    time of the call.
    """

    def __init__(self, settings: Settings, locale: QLocale | None = None) -> None:
        self._settings = settings
        self._locale = locale

    def unit(self, kind: Kind) -> str:
        """Return the symbol of the unit in which ``kind`` is shown; "" for pH and SG."""
        if kind in _UNIT_WITHOUT_CHOICE:
            return _UNIT_WITHOUT_CHOICE[kind]
        return self._settings.unit(kind)

    def units(self, kind: Kind) -> tuple[str, ...]:
        """Return the units offered for ``kind``."""
        return units.units_for(kind)

    def read(self, text: str, kind: Kind) -> float:
        """Read what the maker typed; a bare number is in the maker's unit.

        Raises
        ------
        NotAQuantity
            If the text is no quantity of this kind.
        """
        return self.read_in(text, kind, self.unit(kind) or units.units_for(kind)[0])

    def read_in(self, text: str, kind: Kind, default_unit: str) -> float:
        """Read what the maker typed; a bare number is in ``default_unit``.

        Raises
        ------
        NotAQuantity
            If the text is no quantity of this kind.
        """
        return units.parse(text, kind, default_unit=default_unit)

    def show(self, value: float, kind: Kind, /, *, with_unit: bool = True) -> str:
        """Write a canonical ``value`` in the maker's unit, to the digits that mean something."""
        return self.show_in(value, kind, self.unit(kind), with_unit=with_unit)

    def show_in(self, value: float, kind: Kind, unit: str, /, *, with_unit: bool = True) -> str:
        """Write a canonical ``value`` of ``kind`` in ``unit``; "" is the kind's own."""
        shown = units.from_canonical(value, unit, kind) if unit else value
        number = number_text(shown, decimals_for(shown, kind), self._locale)
        return f"{number} {unit}" if with_unit and unit else number
