"""The headings of the table of costs that goes into a spreadsheet."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from brewdesk.services.wording.stores import kind_words
from culturecore.stages import SupplyKind


def _t(text: str) -> str:
    return QCoreApplication.translate("CostTable", text)


def cost_columns() -> tuple[str, ...]:
    """Return the headings, in order."""
    return (
        _t("Batch"),
        _t("Begun"),
        _t("Currency"),
        *(kind_words(kind) for kind in SupplyKind),
        _t("Total"),
        _t("All of it priced"),
        _t("Litres drunk"),
        _t("A litre"),
        _t("Bottles"),
        _t("A bottle"),
        _t("Saved against the shop"),
    )


def yes_or_no(*, is_so: bool) -> str:
    """Answer a question of the table."""
    return _t("yes") if is_so else _t("no")
