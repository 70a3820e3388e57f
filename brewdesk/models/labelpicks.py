"""What may be labelled, with a tick and a number of copies for each."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QCoreApplication, QObject, Qt, Signal

from brewdesk.models.plaintip import plain_tip
from brewdesk.models.rowtable import Index, RowTableModel
from brewdesk.services.labels import LabelFacts

NAME, STAGE, COPIES = range(3)
MOST_COPIES = 200


def _t(text: str) -> str:
    return QCoreApplication.translate("LabelPicks", text)


def usual_copies(row: LabelFacts) -> int:
    """Return how many labels a record gets when it is ticked: one for each bottle."""
    return min(MOST_COPIES, row.usual_copies)


class LabelPicksModel(RowTableModel[LabelFacts]):
    """One record a row. ``picked_changed`` fires when a tick or a number of copies changes."""

    picked_changed = Signal()

    def __init__(self, picked: dict[str, int], parent: QObject | None = None) -> None:
        super().__init__((_t("Label for"), _t("State"), _t("Copies")), lambda row: row.key, parent)
        self._picked = picked  # shared with the other lists: copies by the record's key

    def cell(self, row: LabelFacts, column: int) -> str:
        """Return a cell's text; copies only of what is ticked."""
        if column == COPIES:
            return str(self._picked[row.key]) if row.key in self._picked else ""
        return row.name if column == NAME else row.stage

    def cell_extra(self, row: LabelFacts, column: int, role: int) -> object:
        """Return the tick, the number to edit, and the whole of what may be cut short."""
        if role == Qt.ItemDataRole.CheckStateRole and column == NAME:
            is_picked = row.key in self._picked
            return Qt.CheckState.Checked if is_picked else Qt.CheckState.Unchecked
        if role == Qt.ItemDataRole.AccessibleTextRole and not self.cell(row, column):
            return _t("No label") if column == COPIES else _t("Nothing in it")
        if role == Qt.ItemDataRole.EditRole and column == COPIES:
            return self._picked.get(row.key, usual_copies(row))
        if role == Qt.ItemDataRole.ToolTipRole and column != COPIES:
            return plain_tip(self.cell(row, column))
        if role == Qt.ItemDataRole.TextAlignmentRole and column == COPIES:
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:  # noqa: ANN401  # Qt's variant
        """Set the title of the copies above its numbers."""
        if role == Qt.ItemDataRole.TextAlignmentRole and section == COPIES:
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        return super().headerData(section, orientation, role)

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Ticks are in the first column; copies can be typed in the last."""
        flags = super().flags(index)
        if index.column() == NAME:
            flags |= Qt.ItemFlag.ItemIsUserCheckable
        if index.column() == COPIES:
            flags |= Qt.ItemFlag.ItemIsEditable
        return flags

    def setData(self, index: Index, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Tick a row, or change its copies; a number of copies ticks it, 0 unticks it."""
        row = self.row_at(index)
        if row is None:
            return False
        if role == Qt.ItemDataRole.CheckStateRole and index.column() == NAME:
            is_on = Qt.CheckState(value) == Qt.CheckState.Checked
            self.pick(row, self._picked.get(row.key, usual_copies(row)) if is_on else 0)
            return True
        if role == Qt.ItemDataRole.EditRole and index.column() == COPIES:
            try:
                copies = int(str(value))
            except ValueError:
                return False
            self.pick(row, min(MOST_COPIES, max(0, copies)))
            return True
        return False

    def pick(self, row: LabelFacts, copies: int) -> None:
        """Set how many labels a record gets."""
        if copies:
            self._picked[row.key] = copies
        else:
            self._picked.pop(row.key, None)
        number = self.index_of(row.key).row()
        self.dataChanged.emit(self.index(number, NAME), self.index(number, COPIES))
        self.picked_changed.emit()

    def is_picked(self, row: LabelFacts) -> bool:
        """Whether a record is ticked."""
        return row.key in self._picked
