"""The family of cultures as a flat list; where each stands is the view's affair."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.lineage import FamilyNode
from brewdesk.services.wording.cultures import node_sentence

NODE_ROLE = int(Qt.ItemDataRole.UserRole) + 1
Index = QModelIndex | QPersistentModelIndex


class FamilyModel(QAbstractListModel):
    """One row a culture, oldest first. ``words`` says a node in one line."""

    def __init__(
        self,
        parent: QObject | None = None,
        *,
        words: Callable[[FamilyNode], str] = node_sentence,
    ) -> None:
        super().__init__(parent)
        self._words = words
        self._nodes: tuple[FamilyNode, ...] = ()

    def set_nodes(self, nodes: Sequence[FamilyNode]) -> None:
        """Show these cultures; the same ones again keep choice and scroll position."""
        fresh = tuple(nodes)
        if [node.culture.id for node in fresh] == [node.culture.id for node in self._nodes]:
            self._nodes = fresh
            if fresh:
                self.dataChanged.emit(self.index(0), self.index(len(fresh) - 1))
            return
        self.beginResetModel()
        self._nodes = fresh
        self.endResetModel()

    @property
    def nodes(self) -> tuple[FamilyNode, ...]:
        """The cultures shown."""
        return self._nodes

    def row_of(self, culture_id: int) -> int:
        """Return the row of a culture, or -1."""
        rows = (row for row, node in enumerate(self._nodes) if node.culture.id == culture_id)
        return next(rows, -1)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own default
        """Count the cultures."""
        return 0 if parent.isValid() else len(self._nodes)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Give a node, its name, or the line that says it."""
        if not index.isValid() or not 0 <= index.row() < len(self._nodes):
            return None
        node = self._nodes[index.row()]
        if role == NODE_ROLE:
            return node
        if role == Qt.ItemDataRole.DisplayRole:
            return node.culture.name
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self._words(node)
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_tip(self._words(node))
        return None
