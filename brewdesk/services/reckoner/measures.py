"""The plain units in which questions ask and answer, beside the kinds of ``culturecore``."""

from __future__ import annotations

from typing import Final

from brewdesk.services.reckoner.question import Number

PERCENT: Final = Number("%", 1, 100.0)  # of a share
PERCENT_PLAIN: Final = Number("%")
ABV: Final = Number("% vol", 2)
BAR: Final = Number("bar", 2)
VOLUMES: Final = Number("vol", 2)
MILLILITRES: Final = Number("mL", 2)
GRAMS: Final = Number("g", 0)
MILLIVOLTS: Final = Number("mV", 1)
METRES: Final = Number("m", 0)
MINUTES: Final = Number("min", 0)
HOURS: Final = Number("h", 1)
DAYS: Final = Number("days", 1)
MILLIGRAMS: Final = Number("mg", 0)
MILLIGRAMS_PER_LITRE: Final = Number("mg/L", 0)
GRAMS_PER_LITRE: Final = Number("g/L")
MEQ: Final = Number("meq/L", 1)
NORMALITY: Final = Number("eq/L", 3)
KILOCALORIES: Final = Number("kcal", 1)
KILOJOULES: Final = Number("kJ", 0)
PER_CENTIMETRE: Final = Number("per cm", 3)
SQUARE_CENTIMETRES: Final = Number("cm²", 0)
KILOGRAMS_PER_LITRE: Final = Number("kg/L", 4)
FLUID_OUNCES: Final = Number("fl oz", 1)
GRAVITY_SHIFT: Final = Number("", 4)
FACTOR: Final = Number("", 2)
COUNT: Final = Number("", 0)
MONEY: Final = Number("", 2)
