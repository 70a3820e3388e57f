"""A table model over frozen records, told apart by an id. Changes arrive as whole tuples."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

Row = TypeVar("Row")
Index = QModelIndex | QPersistentModelIndex

SORT_ROLE = int(Qt.ItemDataRole.UserRole) + 1
ROW_ROLE = int(Qt.ItemDataRole.UserRole) + 2


class RowTableModel(QAbstractTableModel, Generic[Row]):
    """Hold a tuple of records and say precisely what changed between two of them.

    Nothing is ever reset: rows are removed, moved, inserted or marked as changed, so
    that a selection and a scroll position outlive every refresh.
    """

    figure_columns: frozenset[int] = frozenset()  # their titles stand above figures, to the right

    def __init__(
        self,
        columns: Sequence[str],
        row_id: Callable[[Row], Hashable],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._columns = tuple(columns)
        self._row_id = row_id
        self._rows: list[Row] = []

    def rows(self) -> tuple[Row, ...]:
        """Return the records shown, in their order."""
        return tuple(self._rows)

    def row_at(self, index: Index) -> Row | None:
        """Return the record at ``index``, or None when it points nowhere."""
        if not index.isValid() or index.row() >= len(self._rows):
            return None
        return self._rows[index.row()]

    def index_of(self, row_id: Hashable) -> QModelIndex:
        """Return the first cell of the record with this id; an invalid index if there is none."""
        for number, row in enumerate(self._rows):
            if self._row_id(row) == row_id:
                return self.index(number, 0)
        return QModelIndex()

    def set_rows(self, rows: Sequence[Row]) -> None:
        """Show ``rows``, with as few changes as lead there.

        Raises
        ------
        ValueError
            If two rows have the same id.
        """
        wanted = [self._row_id(row) for row in rows]
        keep = set(wanted)
        if len(keep) != len(wanted):
            raise ValueError("two rows have the same id")
        self._remove_all_but(keep)
        for number, row in enumerate(rows):
            self._put(number, row)

    def refresh(self) -> None:
        """Say that every cell may read differently, e.g. after a change of unit or zone."""
        if self._rows:
            last = self.index(len(self._rows) - 1, len(self._columns) - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def _remove_all_but(self, keep: set[Hashable]) -> None:
        number = len(self._rows) - 1
        while number >= 0:
            if self._row_id(self._rows[number]) in keep:
                number -= 1
                continue
            last = number
            while number > 0 and self._row_id(self._rows[number - 1]) not in keep:
                number -= 1
            self.beginRemoveRows(QModelIndex(), number, last)
            del self._rows[number : last + 1]
            self.endRemoveRows()
            number -= 1

    def _put(self, number: int, row: Row) -> None:
        wanted = self._row_id(row)
        found = next(
            (n for n in range(number, len(self._rows)) if self._row_id(self._rows[n]) == wanted),
            None,
        )
        if found is None:
            self.beginInsertRows(QModelIndex(), number, number)
            self._rows.insert(number, row)
            self.endInsertRows()
            return
        if found != number:
            self.beginMoveRows(QModelIndex(), found, found, QModelIndex(), number)
            self._rows.insert(number, self._rows.pop(found))
            self.endMoveRows()
        if self._rows[number] != row:
            self._rows[number] = row
            last = self.index(number, len(self._columns) - 1)
            self.dataChanged.emit(self.index(number, 0), last)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own signature
        """Return the number of records; a record has no children."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own signature
        """Return the number of columns."""
        return 0 if parent.isValid() else len(self._columns)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:  # noqa: ANN401  # Qt's variant
        """Return a column's title."""
        is_title = orientation == Qt.Orientation.Horizontal and 0 <= section < len(self._columns)
        if is_title and role == Qt.ItemDataRole.DisplayRole:
            return self._columns[section]
        if is_title and role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignLeft
            if section in self.figure_columns:
                side = Qt.AlignmentFlag.AlignRight
            return side | Qt.AlignmentFlag.AlignVCenter
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return what one cell shows: ``cell`` for the text, ``cell_sort`` for its order."""
        row = self.row_at(index)
        if row is None:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.cell(row, index.column())
        if role == SORT_ROLE:
            return self.cell_sort(row, index.column())
        if role == ROW_ROLE:
            return row
        return self.cell_extra(row, index.column(), role)

    def cell(self, row: Row, column: int) -> str:
        """Return the text of one cell."""
        raise LookupError(f"no text for column {column} of {row!r}")

    def cell_sort(self, row: Row, column: int) -> object:
        """Return what one cell sorts by; its text unless a model knows better."""
        return self.cell(row, column)

    def cell_extra(self, row: Row, column: int, role: int) -> object:
        """Return what one cell says in the other roles; nothing unless a model knows better."""
        del row, column, role
        return None
