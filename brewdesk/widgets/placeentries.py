"""What was read and logged in a place, one a row, and the way to take it out."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.models.rowtable import RowTableModel
from brewdesk.services.placeview import PlaceEntry
from brewdesk.widgets.fields import Disclosure
from brewdesk.widgets.plaintable import PlainTable
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_ROWS_SHOWN = 5


def _t(text: str) -> str:
    return QCoreApplication.translate("PlaceEntries", text)


class EntriesModel(RowTableModel[PlaceEntry]):
    """Typed temperatures and loggers' files of one place."""

    def __init__(self) -> None:
        super().__init__((_t("Temperature or file"), _t("When")), lambda row: row.key)

    def cell(self, row: PlaceEntry, column: int) -> str:
        """Return the text of one cell."""
        return row.what if column == 0 else row.when


class PlaceEntries(Disclosure):
    """The list, closed at first. ``remove_wanted`` carries the entry's key."""

    remove_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(_t("What was read and logged"), parent)
        self.model = EntriesModel()
        self.model.setParent(self)
        self.table = PlainTable(self.model, stretched=0)
        self.table.setObjectName("place_entries")
        self.table.setAccessibleName(self.tr("Temperatures and files of this place"))
        rows = self.table.verticalHeader()
        height = rows.defaultSectionSize() * _ROWS_SHOWN
        self.table.setMinimumHeight(height + self.table.horizontalHeader().sizeHint().height())
        self.remove = QPushButton(self.tr("Take it out"))
        self.remove.setObjectName("place_entry_remove")
        self.remove.setAutoDefault(False)
        set_role(self.remove, "danger")
        line = QHBoxLayout()
        line.addWidget(self.remove)
        line.addStretch(1)
        column = QVBoxLayout(self.body)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.table)
        column.addLayout(line)
        self.table.selectionModel().currentChanged.connect(lambda *_: self._offer())
        self.table.remove_wanted.connect(self._on_remove)
        self.remove.clicked.connect(self._on_remove)
        self._offer()

    def set_entries(self, entries: tuple[PlaceEntry, ...]) -> None:
        """Show these entries."""
        self.model.set_rows(entries)
        self.setVisible(bool(entries))
        self._offer()

    def _offer(self) -> None:
        self.remove.setEnabled(self.table.currentIndex().isValid())

    def _on_remove(self) -> None:
        row = self.model.row_at(self.table.currentIndex())
        if row is not None:
            self.table.setFocus(Qt.FocusReason.OtherFocusReason)
            self.remove_wanted.emit(row.key)
