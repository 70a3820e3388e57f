"""Typed text to floats in the fixed units, and back in the unit the maker likes."""

from __future__ import annotations

import math

from PySide6.QtCore import QLocale

from brewdesk.services.settings import Settings
from culturecore import units
from culturecore.units import Kind

_SIGNIFICANT = 3  # as many digits as kitchen measuring can carry

# Decimals that fit the instrument rather than the size of the number.
_FIXED_DECIMALS = {
    Kind.PH: 2,
    Kind.BRIX: 1,
    Kind.GRAVITY: 3,
    Kind.TEMPERATURE: 1,
    Kind.LENGTH: 1,
}
_BARE_UNIT = {Kind.PH: "", Kind.BRIX: "°Bx", Kind.GRAVITY: "", Kind.DURATION: "min"}


class Quantities:
    """Read and show quantities. Entry takes any common unit; display uses the maker's.

    ``locale`` gives the decimal separator; None means Qt's default locale at the
    time of the call.
    """

    def __init__(self, settings: Settings, locale: QLocale | None = None) -> None:
        self._settings = settings
        self._locale = locale

    def unit(self, kind: Kind) -> str:
        """Return the symbol of the unit in which ``kind`` is shown."""
        return _BARE_UNIT[kind] if kind in _BARE_UNIT else self._settings.unit(kind)

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
        return units.parse(text, kind, default_unit=self._default_unit(kind))

    def read_in(self, text: str, kind: Kind, default_unit: str) -> float:
        """Read what the maker typed; a bare number is in ``default_unit``.

        Raises
        ------
        NotAQuantity
            If the text is no quantity of this kind.
        """
        return units.parse(text, kind, default_unit=default_unit)

    def show(self, value: float, kind: Kind, *, with_unit: bool = True) -> str:
        """Write a canonical ``value`` in the maker's unit, to the digits that mean something."""
        unit = self.unit(kind)
        return self.show_in(value, kind, unit, with_unit=with_unit)

    def show_in(self, value: float, kind: Kind, unit: str, *, with_unit: bool = True) -> str:
        """Write a canonical ``value`` of ``kind`` in ``unit``."""
        shown = units.from_canonical(value, unit, kind) if unit else value
        number = self.number(shown, _decimals(shown, kind))
        return f"{number} {unit}" if with_unit and unit else number

    def number(self, value: float, decimals: int) -> str:
        """Write a plain number with the locale's decimal separator and no grouping."""
        locale = QLocale(self._locale) if self._locale is not None else QLocale()
        locale.setNumberOptions(QLocale.NumberOption.OmitGroupSeparator)
        rounded = round(value, decimals)
        return locale.toString(rounded + 0.0, "f", decimals)  # + 0.0: no "-0.0"

    def _default_unit(self, kind: Kind) -> str:
        return self.unit(kind) or units.units_for(kind)[0]


def _decimals(value: float, kind: Kind) -> int:
    if kind in _FIXED_DECIMALS:
        return _FIXED_DECIMALS[kind]
    if value == 0:
        return 0
    # 9.996 has one digit before the point until it is rounded; round first.
    size = abs(float(f"{value:.{_SIGNIFICANT}g}"))
    return min(3, max(0, _SIGNIFICANT - 1 - math.floor(math.log10(size))))
