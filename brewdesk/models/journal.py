"""What happened to one batch, newest first."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, Qt

from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.clock import Clock
from brewdesk.services.journal import JournalLine
from brewdesk.services.wording.moments import stamp_words

WHEN, WHAT = range(2)


def _t(text: str) -> str:
    return QCoreApplication.translate("JournalModel", text)


class JournalModel(RowTableModel[JournalLine]):
    """The time and the sentence of each act."""

    def __init__(self, clock: Clock, parent: QObject | None = None) -> None:
        super().__init__((_t("When"), _t("What happened")), lambda row: row.act_id, parent)
        self._clock = clock

    def cell(self, row: JournalLine, column: int) -> str:
        """Return the text of one cell."""
        return stamp_words(row.at, self._clock.zone()) if column == WHEN else row.text

    def cell_sort(self, row: JournalLine, column: int) -> object:
        """Sort times by instant."""
        return row.at.timestamp() if column == WHEN else row.text

    def cell_extra(self, row: JournalLine, column: int, role: int) -> object:
        """Align times with the first line of a sentence that wraps."""
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self.cell(row, column)
        return None
