"""Constants that several subjects share, each with the key of its source."""

from __future__ import annotations

from typing import Final

ZERO_CELSIUS_K: Final = 273.15  # exact by definition
GAS_CONSTANT_J_PER_MOL_K: Final = 8.314462618  # SI, exact to the digits given
LN_10: Final = 2.302585092994046

ACETIC_ACID_G_PER_MOL: Final = 60.052  # IUPAC standard atomic masses
CACO3_MG_PER_MEQ: Final = 50.04  # half of 100.09 g/mol

STANDARD_PRESSURE_PA: Final = 101325.0

SUGAR_G_PER_CUP: Final = 200.0  # usda_sugar
SUGAR_G_PER_TEASPOON: Final = 4.2  # usda_sugar
SUGAR_G_PER_TABLESPOON: Final = 12.6  # usda_sugar

CUP_L: Final = 0.2365882365  # usc_26_5052, 1/16 gallon
TABLESPOON_L: Final = 0.01478676478125  # usc_26_5052, 1/256 gallon
TEASPOON_L: Final = 0.00492892159375  # usc_26_5052, 1/768 gallon
FLUID_OUNCE_L: Final = 0.0295735295625  # usc_26_5052, 1/128 gallon
