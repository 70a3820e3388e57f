"""Kitchen measures in words: "1½ cups + 2 tablespoons", "8 bags"."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from culturecore.kitchen import Measure


def _t(text: str) -> str:
    return QCoreApplication.translate("Measures", text)


def measure_words(measures: Sequence[Measure]) -> str:
    """Say measures that add up, largest first; "" for none."""
    return " + ".join(_one(measure) for measure in measures)


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
