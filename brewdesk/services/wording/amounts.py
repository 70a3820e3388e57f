"""Numbers with their units, to the digits that mean something, in the locale's way."""

from __future__ import annotations

import math
from typing import Protocol

from PySide6.QtCore import QLocale

from culturecore.units import Kind, units_for

_SIGNIFICANT = 3  # as many digits as kitchen measuring can carry

# Decimals that fit the instrument rather than the size of the number.
_FIXED_DECIMALS = {
    Kind.PH: 2,
    Kind.BRIX: 1,
    Kind.GRAVITY: 3,
    Kind.TEMPERATURE: 1,
    Kind.LENGTH: 1,
}
_SECONDS_PER_MINUTE = 60.0


class Show(Protocol):
    """Writes an amount given in the program's own unit of its kind."""

    def __call__(self, value: float, kind: Kind, /) -> str:
        """Return the amount with its unit."""
        ...


def plain(value: float, kind: Kind, /) -> str:
    """Write an amount in metric units, durations in minutes."""
    if kind is Kind.DURATION:
        minutes = value / _SECONDS_PER_MINUTE
        return f"{number_text(minutes, decimals_for(minutes, kind))} min"
    number = number_text(value, decimals_for(value, kind))
    return number if kind in (Kind.PH, Kind.GRAVITY) else f"{number} {units_for(kind)[0]}"


def number_text(value: float, decimals: int, locale: QLocale | None = None) -> str:
    """Write a number with the locale's decimal separator and no grouping."""
    own = QLocale(locale) if locale is not None else QLocale()
    own.setNumberOptions(QLocale.NumberOption.OmitGroupSeparator)
    return own.toString(round(value, decimals) + 0.0, "f", decimals)  # + 0.0: no "-0.0"


def decimals_for(value: float, kind: Kind) -> int:
    """Return how many decimals an amount of this size and kind is worth."""
    if kind in _FIXED_DECIMALS:
        return _FIXED_DECIMALS[kind]
    if value == 0:
        return 0
    # 9.996 has one digit before the point until it is rounded; round first.
    size = abs(float(f"{value:.{_SIGNIFICANT}g}"))
    return min(3, max(0, _SIGNIFICANT - 1 - math.floor(math.log10(size))))
