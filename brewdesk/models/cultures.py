"""The living lines as a tree: each culture below its first parent."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from PySide6.QtCore import (
    QAbstractItemModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.records import Culture

CULTURE_ROLE = int(Qt.ItemDataRole.UserRole) + 1
Index = QModelIndex | QPersistentModelIndex


@dataclass
class Node:
    """One culture in the tree."""

    culture: Culture | None
    parent: Node | None = None
    children: list[Node] = field(default_factory=list)


class CultureTreeModel(QAbstractItemModel):
    """Columns are given by the page as titles and texts, so that words stay there."""

    def __init__(
        self,
        titles: Sequence[str],
        texts: Callable[[Culture], Sequence[str]],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._titles = tuple(titles)
        self._texts = texts
        self._root = Node(None)
        self._nodes: dict[int, Node] = {}
        self._rows: dict[int, tuple[str, ...]] = {}

    def set_cultures(
        self, cultures: Sequence[Culture], parents: Mapping[int, Sequence[int]]
    ) -> None:
        """Show ``cultures``; ``parents`` gives the parent ids of each."""
        self.beginResetModel()
        self._root = Node(None)
        self._nodes = {culture.id: Node(culture) for culture in cultures}
        self._rows = {culture.id: tuple(self._texts(culture)) for culture in cultures}
        for culture in cultures:
            node = self._nodes[culture.id]
            above = self._root
            for parent_id in parents.get(culture.id, ()):
                if parent_id in self._nodes:
                    above = self._nodes[parent_id]
                    break
            node.parent = above
            above.children.append(node)
        self.endResetModel()

    def _node(self, index: Index) -> Node:
        if not index.isValid():
            return self._root
        return self._nodes[int(index.internalId())]

    def index(self, row: int, column: int, parent: Index = QModelIndex()) -> QModelIndex:  # noqa: B008  # Qt's own default
        """Index of a child; its internal id is the culture's id."""
        children = self._node(parent).children
        if not 0 <= row < len(children) or not 0 <= column < len(self._titles):
            return QModelIndex()
        culture = children[row].culture
        return self.createIndex(row, column, culture.id if culture is not None else 0)

    def parent(self, child: Index = QModelIndex()) -> Any:  # noqa: ANN401, B008  # Qt overloads it with QObject.parent
        """Index of the first parent."""
        if not child.isValid():
            return QModelIndex()
        above = self._node(child).parent
        if above is None or above.culture is None or above.parent is None:
            return QModelIndex()
        return self.createIndex(above.parent.children.index(above), 0, above.culture.id)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own default
        """Count the daughters."""
        return 0 if parent.column() > 0 else len(self._node(parent).children)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own default
        """Count the columns."""
        return len(self._titles)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Give the words of a cell, or the culture."""
        culture = self._node(index).culture
        if culture is None:
            return None
        if role == CULTURE_ROLE:
            return culture
        if role == Qt.ItemDataRole.DisplayRole:
            return self._rows[culture.id][index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_tip(self._rows[culture.id][index.column()])
        return None

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:  # noqa: ANN401
        """Give the column titles."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return self._titles[section]
        return None
