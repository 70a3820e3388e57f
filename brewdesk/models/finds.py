"""What a search found, best first."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, Qt

from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.clock import Clock
from brewdesk.services.searchwords import Find
from brewdesk.services.wording.search import kind_words
from brewdesk.services.wording.timeline import full_date_words


def _t(text: str) -> str:
    return QCoreApplication.translate("FindsModel", text)


class FindsModel(RowTableModel[Find]):
    """One find a row; the delegate paints its name, its date and what it says."""

    def __init__(self, clock: Clock, parent: QObject | None = None) -> None:
        super().__init__((_t("Found"),), lambda row: (row.kind, row.id), parent)
        self._clock = clock

    def cell(self, row: Find, column: int) -> str:
        """Return a find in one line, as a screen reader says it."""
        del column
        return ", ".join(part for part in (row.name, self.detail(row), self.date(row)) if part)

    def cell_extra(self, row: Find, column: int, role: int) -> object:
        """Say the same to screen readers."""
        return self.cell(row, column) if role == Qt.ItemDataRole.AccessibleTextRole else None

    def detail(self, find: Find) -> str:
        """Return what kind of thing a find is and what it says, on one line."""
        text = " ".join(find.text.split())
        return f"{kind_words(find.kind)} · {text}" if text else kind_words(find.kind)

    def date(self, find: Find) -> str:
        """Return the day of a find; empty if it has none."""
        return "" if find.at is None else full_date_words(find.at, self._clock.zone())
