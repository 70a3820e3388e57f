"""All cultures: where each came from, how old it is, where it is now."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QStackedWidget,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.cultures import CULTURE_ROLE, CultureTreeModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.records import Culture
from brewdesk.services.wording.moments import date_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.cultureform import CultureDialog
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class CulturesPage(QWidget):
    """A family tree in a table."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._stale = True
        self._vessel_names: dict[int, str] = {}
        self.setObjectName("cultures_page")
        self.model = CultureTreeModel(
            (
                self.tr("Culture"),
                self.tr("Came as"),
                self.tr("Born"),
                self.tr("State"),
                self.tr("Where"),
                self.tr("Pellicle"),
            ),
            self._texts,
            self,
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        bar = QHBoxLayout()
        title = QLabel(self.tr("Cultures"))
        set_role(title, "title")
        bar.addWidget(title)
        bar.addStretch(1)
        self.edit_button = QPushButton(self.tr("Change…"))
        self.edit_button.setObjectName("edit_culture")
        self.edit_button.clicked.connect(self._on_edit)
        self.add_button = QPushButton(self.tr("Add a culture"))
        self.add_button.setObjectName("add_culture")
        set_role(self.add_button, "primary")
        self.add_button.clicked.connect(self._on_add)
        bar.addWidget(self.edit_button)
        bar.addWidget(self.add_button)
        column.addLayout(bar)
        self.tree = QTreeView()
        self.tree.setObjectName("culture_tree")
        self.tree.setAccessibleName(self.tr("Cultures"))
        self.tree.setModel(self.model)
        self.tree.setUniformRowHeights(True)
        self.tree.setIndentation(3 * SPACE)
        self.tree.setAllColumnsShowFocus(True)
        self.tree.header().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.tree.header().setStretchLastSection(True)
        self.tree.activated.connect(lambda _index: self._on_edit())
        self._empty = self._make_empty()
        self._stack = QStackedWidget()
        self._stack.addWidget(self.tree)
        self._stack.addWidget(self._empty)
        column.addWidget(self._stack, 1)
        desk.changes.changed.connect(self._on_changed)

    def _make_empty(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        column.addStretch(1)
        heading = QLabel(self.tr("No culture yet"))
        set_role(heading, "heading")
        words = QLabel(
            self.tr(
                "Add the pellicle or starter you have, bought, given or grown from a bottle of "
                "raw kombucha. Each keeps its age and its parents from then on."
            )
        )
        words.setWordWrap(True)
        words.setMaximumWidth(480)
        words.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        set_role(words, "muted")
        column.addWidget(heading, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addWidget(words, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(2)
        return page

    def _texts(self, culture: Culture) -> tuple[str, ...]:
        zone = self._desk.clock.zone()
        thickness = (
            self.tr("{mm} mm").format(mm=f"{culture.pellicle_mm:.0f}")
            if culture.pellicle_mm is not None
            else "–"
        )
        where = self._vessel_names.get(culture.vessel_id or 0, "–")
        return (
            culture.name,
            name_of(culture.origin),
            date_words(culture.born_at, zone),
            name_of(culture.state),
            where,
            thickness,
        )

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden."""
        super().showEvent(event)
        if self._stale:
            self.refresh()

    def refresh(self) -> None:
        """Read the cultures again."""
        self._stale = False
        chosen = self._chosen()
        self._vessel_names = {
            vessel.id: vessel.name for vessel in self._desk.vessels.all(include_retired=True)
        }
        cultures = self._desk.cultures.all()
        parents: dict[int, list[int]] = {}
        for child, parent in self._desk.cultures.parent_links():
            parents.setdefault(child, []).append(parent)
        self.model.set_cultures(cultures, parents)
        self.tree.expandAll()
        self._stack.setCurrentWidget(self.tree if cultures else self._empty)
        self.edit_button.setEnabled(bool(cultures))
        if chosen is not None:
            self.choose(chosen.id)
        elif cultures:
            self.tree.setCurrentIndex(self.model.index(0, 0))

    def choose(self, culture_id: int) -> None:
        """Make a culture the chosen one."""
        pending = [QModelIndex()]
        while pending:
            above = pending.pop()
            for row in range(self.model.rowCount(above)):
                index = self.model.index(row, 0, above)
                if index.data(CULTURE_ROLE).id == culture_id:
                    self.tree.setCurrentIndex(index)
                    return
                pending.append(index)

    def _chosen(self) -> Culture | None:
        index = self.tree.currentIndex()
        return index.data(CULTURE_ROLE) if index.isValid() else None

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.CULTURES | Topic.VESSELS):
            self._stale = True
            if self.isVisible():
                self.refresh()

    def _on_add(self) -> None:
        CultureDialog(self._desk, parent=self).open()

    def _on_edit(self) -> None:
        culture = self._chosen()
        if culture is not None:
            CultureDialog(self._desk, culture, parent=self).open()
