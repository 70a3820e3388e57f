"""A plan's amounts in words: "1½ cups + 2 tablespoons", "8 bags", "1250"."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from brewdesk.services.amounts import AmountRow, Part
from brewdesk.services.wording.amounts import number_text
from culturecore import kitchen, sugar
from culturecore.kitchen import Measure


def _t(text: str) -> str:
    return QCoreApplication.translate("Measures", text)


def measure_words(measures: Sequence[Measure]) -> str:
    """Say measures that add up, largest first; "" for none."""
    return " + ".join(_one(measure) for measure in measures)


def sugar_measure_words(mass_g: float) -> str:
    """Say white sugar in cups and spoons."""
    return measure_words(kitchen.sugar_measures(mass_g))


def water_measure_words(mass_g: float) -> str:
    """Say water, weighed in grams, in cups and spoons as it would be at 20 °C."""
    return volume_measure_words(mass_g / sugar.density_kg_per_l(0.0, 20.0) / 1000.0)


def volume_measure_words(volume_l: float) -> str:
    """Say a volume in cups and spoons."""
    return measure_words(kitchen.water_measures(volume_l))


def bag_words(mass_g: float, bag_g: float) -> str:
    """Say tea in bags of ``bag_g`` grams."""
    return measure_words((kitchen.tea_bags(mass_g, bag_g),))


def _one(measure: Measure) -> str:
    number = f"{measure.whole or ''}{measure.fraction}" or "0"
    forms = _units()[measure.unit]
    return forms[0 if measure.count <= 1.0 else 1].format(number=number)


def _units() -> dict[str, tuple[str, str]]:
    return {
        "cup": (_t("{number} cup"), _t("{number} cups")),
        "tablespoon": (_t("{number} tablespoon"), _t("{number} tablespoons")),
        "teaspoon": (_t("{number} teaspoon"), _t("{number} teaspoons")),
        "bag": (_t("{number} bag"), _t("{number} bags")),
    }


def part_name(part: Part) -> str:
    """Name a row of the amounts."""
    return {
        Part.HOT_WATER: _t("Hot water"),
        Part.TEA: _t("Tea leaves"),
        Part.SUGAR: _t("Sugar"),
        Part.COLD_WATER: _t("Cold water"),
        Part.WET_LEAVES: _t("Wet leaves, lifted out"),
        Part.STARTER: _t("Starter liquid"),
        Part.TOTAL: _t("In the vessel"),
    }[part]


def mass_words(row: AmountRow) -> str:
    """Write a row's grams: a tenth only where there is one, a true minus where it goes out."""
    decimals = 0 if float(row.mass_g).is_integer() else 1
    return number_text(row.mass_g, decimals).replace("-", "−")


def ounce_words(row: AmountRow) -> str:
    """Write a row's ounces: to a hundredth where leaf is weighed, else to a tenth."""
    decimals = 2 if row.part in (Part.TEA, Part.WET_LEAVES) else 1
    return number_text(row.mass_oz, decimals).replace("-", "−")


def volume_words(row: AmountRow) -> str:
    """Write a row's millilitres; "" where a volume means nothing."""
    return "" if row.volume_ml is None else number_text(row.volume_ml, 0).replace("-", "−")
