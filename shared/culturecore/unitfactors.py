"""Factors of the units that a first screen may be set to, so that it need not wait.

:mod:`culturecore.units` takes every factor from pint. Importing pint takes some hundred
milliseconds (it brings numpy along), which a window would spend unpainted. These few were
taken from it beforehand, and a test takes them again from the registry.
"""

from __future__ import annotations

from typing import Final

_GALLON_L = 3.785411784  # usc_26_5052
_OUNCE_G = 28.349523125  # international_yard_pound

# (kind, symbol) -> (scale, zero): program value = (value - zero) * scale
FIRST_SCREEN: Final[dict[tuple[str, str], tuple[float, float]]] = {
    ("volume", "mL"): (0.001, 0.0),
    ("volume", "tsp"): (_GALLON_L / 768, 0.0),
    ("volume", "tbsp"): (_GALLON_L / 256, 0.0),
    ("volume", "fl oz"): (_GALLON_L / 128, 0.0),
    ("volume", "cup"): (_GALLON_L / 16, 0.0),
    ("volume", "pt"): (_GALLON_L / 8, 0.0),
    ("volume", "qt"): (_GALLON_L / 4, 0.0),
    ("volume", "gal"): (_GALLON_L, 0.0),
    ("mass", "kg"): (1000.0, 0.0),
    ("mass", "oz"): (_OUNCE_G, 0.0),
    ("mass", "lb"): (16 * _OUNCE_G, 0.0),
    ("temperature", "°F"): (5 / 9, 32.0),
    ("length", "mm"): (0.1, 0.0),
    ("length", "in"): (2.54, 0.0),
    ("sugar", "g/gal"): (1 / _GALLON_L, 0.0),
    ("sugar", "oz/gal"): (_OUNCE_G / _GALLON_L, 0.0),
    ("tea", "g/gal"): (1 / _GALLON_L, 0.0),
    ("tea", "oz/gal"): (_OUNCE_G / _GALLON_L, 0.0),
    ("alkalinity", "mg/L CaCO₃"): (1 / 50.04, 0.0),
    ("duration", "min"): (60.0, 0.0),
    ("duration", "h"): (3600.0, 0.0),
}
