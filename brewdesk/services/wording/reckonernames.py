"""Names of instruments, liquids and bottles that single questions let the maker choose."""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.stages import name_of
from culturecore.buffers import Buffer
from culturecore.starter import StarterGrade
from culturecore.titration import ExpressedAs


def _t(text: str) -> str:
    return QCoreApplication.translate("ReckonerNames", text)


def choice_name(value: Enum) -> str:
    """Name a member of an enum, one of the trade's or of an instrument's."""
    own = _WORDS.get(type(value))
    return name_of(value) if own is None else own()[value]


def grade_name(grade: StarterGrade) -> str:
    """Name the grade of a starter."""
    return _grades()[grade]


def _grades() -> dict[Enum, str]:
    return {
        StarterGrade.UNFIT: _t("Not fit to use"),
        StarterGrade.WEAK: _t("Weak"),
        StarterGrade.MILD: _t("Mild"),
        StarterGrade.GOOD: _t("Good"),
        StarterGrade.VINEGARY: _t("Vinegary"),
    }


def _buffers() -> dict[Enum, str]:
    return {
        Buffer.PHTHALATE: _t("Phthalate, 4.01 at 25 °C"),
        Buffer.PHOSPHATE: _t("Phosphate, 6.86 at 25 °C"),
        Buffer.BORATE: _t("Borate, 9.18 at 25 °C"),
        Buffer.TECHNICAL_4: _t("Technical buffer 4.00"),
        Buffer.TECHNICAL_7: _t("Technical buffer 7.00"),
        Buffer.TECHNICAL_10: _t("Technical buffer 10.01"),
    }


def _acids() -> dict[Enum, str]:
    return {
        ExpressedAs.ACETIC: _t("Acetic acid"),
        ExpressedAs.LACTIC: _t("Lactic acid"),
        ExpressedAs.MALIC: _t("Malic acid"),
        ExpressedAs.CITRIC: _t("Citric acid"),
        ExpressedAs.CITRIC_MONOHYDRATE: _t("Citric acid with its water"),
        ExpressedAs.TARTARIC: _t("Tartaric acid"),
        ExpressedAs.GLUCONIC: _t("Gluconic acid"),
        ExpressedAs.SULFURIC: _t("Sulfuric acid"),
    }


_WORDS: dict[type[Enum], Callable[[], dict[Enum, str]]] = {
    Buffer: _buffers,
    ExpressedAs: _acids,
    StarterGrade: _grades,
}
