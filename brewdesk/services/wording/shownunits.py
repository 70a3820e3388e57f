"""Estimates in the unit that the maker reads, with no more digits than they are sure of."""

from __future__ import annotations

import math
from collections.abc import Callable

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.amounts import number_text
from culturecore.outcome import Estimate
from culturecore.units import Kind, from_canonical, units_for

UnitOf = Callable[[Kind], str]  # the unit in which a kind is shown

_MOST_DECIMALS = 3


def _t(text: str) -> str:
    return QCoreApplication.translate("ShownUnits", text)


def metric_unit(kind: Kind) -> str:
    """Return the program's own unit of a kind."""
    return units_for(kind)[0]


def estimate_words(estimate: Estimate, kind: Kind, unit_of: UnitOf = metric_unit) -> str:
    """Write an estimate with its bounds: "38 g/L (30 to 45)"."""
    unit = unit_of(kind)
    low, mid, high = (
        from_canonical(value, unit, kind) for value in (estimate.low, estimate.value, estimate.high)
    )
    decimals = _decimals((high - low) / 4.0)
    return _t("{mid} {unit} ({low} to {high})").format(
        mid=number_text(mid, decimals),
        unit=unit,
        low=number_text(low, decimals),
        high=number_text(high, decimals),
    )


def reading_words(value: float, sd: float | None, kind: Kind, unit_of: UnitOf = metric_unit) -> str:
    """Write a measured value with its standard uncertainty: "6.1 ± 0.3 g/L"."""
    unit = unit_of(kind)
    shown = from_canonical(value, unit, kind)
    spread = 0.0 if sd is None else from_canonical(value + sd, unit, kind) - shown
    decimals = _decimals(spread) if spread > 0.0 else 1
    if spread <= 0.0:
        return _t("{value} {unit}").format(value=number_text(shown, decimals), unit=unit)
    return _t("{value} ± {sd} {unit}").format(
        value=number_text(shown, decimals), sd=number_text(spread, decimals), unit=unit
    )


def _decimals(spread: float) -> int:
    """Return the decimals that show the first digit of a spread."""
    if spread <= 0.0:
        return 0
    return min(max(-math.floor(math.log10(float(f"{spread:.1g}"))), 0), _MOST_DECIMALS)
