"""The reckoner's questions below their groups, and a filter that finds them by any word."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, QSortFilterProxyModel, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel

from brewdesk.services.reckoner.catalogue import group_name
from brewdesk.services.reckoner.question import Question

KEY_ROLE = int(Qt.ItemDataRole.UserRole) + 1  # of a question; a group has none
FOUND_BY_ROLE = int(Qt.ItemDataRole.UserRole) + 2
Index = QModelIndex | QPersistentModelIndex


class QuestionModel(QStandardItemModel):
    """Groups as rows that cannot be chosen, their questions below them."""

    def __init__(self, questions: Sequence[Question], parent: QObject | None = None) -> None:
        super().__init__(parent)
        groups: dict[str, QStandardItem] = {}
        for question in questions:
            name = group_name(question.group)
            if name not in groups:
                groups[name] = QStandardItem(name)
                groups[name].setFlags(Qt.ItemFlag.ItemIsEnabled)
                self.appendRow(groups[name])
            groups[name].appendRow(_item(question, name))


def _item(question: Question, group: str) -> QStandardItem:
    item = QStandardItem(question.title)
    item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
    item.setToolTip(question.purpose)
    item.setData(question.purpose, int(Qt.ItemDataRole.AccessibleDescriptionRole))
    item.setData(question.key, KEY_ROLE)
    found_by = " ".join((question.title, question.purpose, question.words, group))
    item.setData(found_by.casefold(), FOUND_BY_ROLE)
    return item


class QuestionFilter(QSortFilterProxyModel):
    """Keeps the questions in which every word looked for occurs."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._words: tuple[str, ...] = ()
        self.setRecursiveFilteringEnabled(True)

    def look_for(self, text: str) -> None:
        """Keep what holds every word of ``text``; nothing typed keeps all."""
        self._words = tuple(text.casefold().split())
        self.invalidate()

    def filterAcceptsRow(self, row: int, parent: Index) -> bool:
        """Keep a question that holds all words; groups stay for their questions alone."""
        found_by = self.sourceModel().index(row, 0, parent).data(FOUND_BY_ROLE)
        return found_by is not None and all(word in found_by for word in self._words)

    def first(self) -> QModelIndex:
        """Return the first question that is kept, or no index."""
        group = self.index(0, 0)
        return self.index(0, 0, group) if group.isValid() else QModelIndex()

    def index_of(self, key: str) -> QModelIndex:
        """Return where a question stands, or no index while it is filtered out."""
        for row in range(self.rowCount()):
            group = self.index(row, 0)
            for below in range(self.rowCount(group)):
                index = self.index(below, 0, group)
                if index.data(KEY_ROLE) == key:
                    return index
        return QModelIndex()
