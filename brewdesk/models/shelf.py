"""The shelf as an item model: one row a vessel, so that keys, drag and screen readers work."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)

from brewdesk.services.shelf import JarView
from brewdesk.services.wording.shelf import JarWords

JAR_ROLE = int(Qt.ItemDataRole.UserRole) + 1
WORDS_ROLE = int(Qt.ItemDataRole.UserRole) + 2

_AT_ONCE = 8  # rows whose words are made in one step, a small part of a turn

Index = QModelIndex | QPersistentModelIndex


class ShelfModel(QAbstractListModel):
    """Rows of ``JarView`` with their words. Rows keep their identity by vessel id."""

    def __init__(self, words: Callable[[JarView], JarWords], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._make_words = words
        self._jars: list[JarView] = []
        self._words: list[JarWords] = []

    def set_jars(self, jars: Sequence[JarView]) -> None:
        """Show ``jars`` in this order, touching only the rows that differ."""
        for _ in self.set_in_turns(jars):
            pass

    def set_in_turns(self, jars: Sequence[JarView]) -> Iterator[None]:
        """Do as `set_jars` in small steps, between which the window has time to paint."""
        words: list[JarWords] = []
        for jar in jars:
            words.append(self._make_words(jar))
            if len(words) % _AT_ONCE == 0:
                yield
        self._arrange(jars, words)
        for first in range(0, len(jars), _AT_ONCE):
            yield
            changed: list[int] = []
            for row in range(first, min(first + _AT_ONCE, len(jars))):
                if jars[row] != self._jars[row] or words[row] != self._words[row]:
                    self._jars[row], self._words[row] = jars[row], words[row]
                    changed.append(row)
            self._tell(changed)

    def _arrange(self, jars: Sequence[JarView], words: Sequence[JarWords]) -> None:
        """Let rows go, come and change places, so that they are those of ``jars``."""
        wanted = [jar.vessel.id for jar in jars]
        if not self._jars and wanted:
            self.beginInsertRows(QModelIndex(), 0, len(jars) - 1)
            self._jars, self._words = list(jars), list(words)
            self.endInsertRows()
        if wanted == [known.vessel.id for known in self._jars]:
            return
        for row in reversed(range(len(self._jars))):
            if self._jars[row].vessel.id not in wanted:
                self.beginRemoveRows(QModelIndex(), row, row)
                del self._jars[row], self._words[row]
                self.endRemoveRows()
        for row, jar in enumerate(jars):
            have = [known.vessel.id for known in self._jars]
            if jar.vessel.id not in have:
                self.beginInsertRows(QModelIndex(), row, row)
                self._jars.insert(row, jar)
                self._words.insert(row, words[row])
                self.endInsertRows()
                continue
            old = have.index(jar.vessel.id)
            if old != row:
                self.beginMoveRows(QModelIndex(), old, old, QModelIndex(), row)
                self._jars.insert(row, self._jars.pop(old))
                self._words.insert(row, self._words.pop(old))
                self.endMoveRows()

    def _tell(self, rows: list[int]) -> None:
        """Say which rows changed, neighbours in one word: each is a layout to the view."""
        first = 0
        for n, row in enumerate(rows):
            if n + 1 == len(rows) or rows[n + 1] != row + 1:
                self.dataChanged.emit(self.index(rows[first]), self.index(row))
                first = n + 1

    def jars(self) -> tuple[JarView, ...]:
        """Return all jars, in order."""
        return tuple(self._jars)

    def row_of(self, vessel_id: int) -> int | None:
        """Row that shows the vessel, or None."""
        for row, jar in enumerate(self._jars):
            if jar.vessel.id == vessel_id:
                return row
        return None

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own default
        """Count the vessels."""
        return 0 if parent.isValid() else len(self._jars)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Give the jar, its words, or the whole sentence for those who listen."""
        if not index.isValid() or not 0 <= index.row() < len(self._jars):
            return None
        if role == JAR_ROLE:
            return self._jars[index.row()]
        words = self._words[index.row()]
        if role == WORDS_ROLE:
            return words
        if role == Qt.ItemDataRole.DisplayRole:
            return words.name
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return words.sentence
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Every jar can be chosen."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
