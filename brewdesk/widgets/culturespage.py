"""All cultures as a place to work: the family drawn, the chosen one's sheet beside it."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QMenu,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.family import NODE_ROLE, FamilyModel
from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.lineage import Family
from brewdesk.widgets.cultureacts import CultureActs
from brewdesk.widgets.culturesheet import CultureSheet
from brewdesk.widgets.familyview import FamilyView
from brewdesk.widgets.fields import MessageLine, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_WORDS_PX = 560
_TOPICS = Topic.CULTURES | Topic.VESSELS | Topic.BATCHES | Topic.READINGS | Topic.SETTINGS


class CulturesPage(QWidget):
    """Family tree and culture sheet. ``open_batch`` carries a batch whose jar is wanted."""

    open_batch = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._stale = True
        self._family = Family(())
        self._wanted_id: int | None = None
        self.setObjectName("cultures_page")
        self.acts = CultureActs(desk, self)
        self.model = FamilyModel(self)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self._stack = QStackedWidget()
        self._stack.addWidget(self._make_split())
        self._stack.addWidget(self._make_empty())
        column.addWidget(self._stack, 1)
        self.acts.made.connect(self.show_culture)
        self.acts.planned.connect(self.open_batch)
        self.acts.trouble.connect(self._on_trouble)
        desk.changes.changed.connect(self._on_changed)

    # --- building --------------------------------------------------------------------

    def _make_split(self) -> QWidget:
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.setChildrenCollapsible(False)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 0, 0)
        column.setSpacing(SPACE)
        column.addLayout(self._make_bar())
        self.said = MessageLine(left, lines=0)
        column.addWidget(self.said)
        self.tree = FamilyView()
        self.tree.setObjectName("culture_tree")
        self.tree.setAccessibleName(self.tr("Family of cultures"))
        self.tree.setAccessibleDescription(
            self.tr("Left goes to a parent, right to a daughter, up and down to those beside.")
        )
        self.tree.setModel(self.model)
        self.tree.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.tree.customContextMenuRequested.connect(self._on_menu_wanted)
        self.tree.culture_chosen.connect(self._on_chosen)
        self.tree.culture_opened.connect(self._on_opened)
        column.addWidget(self.tree, 1)
        side = QFrame()
        set_role(side, "side")
        around = QVBoxLayout(side)
        around.setContentsMargins(0, 0, 0, 0)
        self.sheet = CultureSheet(self._desk, self.acts)
        self.sheet.culture_wanted.connect(self.show_culture)
        self.sheet.batch_wanted.connect(self.open_batch)
        around.addWidget(self.sheet)
        self.split.addWidget(left)
        self.split.addWidget(side)
        self.split.setStretchFactor(0, 3)
        self.split.setStretchFactor(1, 2)
        self.split.setSizes([700, 460])
        return self.split

    def _make_bar(self) -> QHBoxLayout:
        bar = QHBoxLayout()
        bar.setSpacing(SPACE)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(plain_label(self.tr("Cultures"), "title"))
        self.count = plain_label("", "muted")
        words.addWidget(self.count)
        bar.addLayout(words, 1)
        self.grow_button = QPushButton(self.tr("Grow from raw kombucha…"))
        self.grow_button.setObjectName("grow_culture")
        self.grow_button.clicked.connect(self.acts.grow)
        self.add_button = QPushButton(self.tr("Add a culture…"))
        self.add_button.setObjectName("add_culture")
        set_role(self.add_button, "primary")
        self.add_button.clicked.connect(self.acts.add)
        for button in (self.grow_button, self.add_button):
            bar.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
        bar.addSpacing(2 * SPACE)
        return bar

    def _make_empty(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Cultures"), "title"))
        column.addStretch(2)
        middle = Qt.AlignmentFlag.AlignHCenter
        column.addWidget(plain_label(self.tr("No culture yet"), "heading"), 0, middle)
        words = plain_label(
            self.tr(
                "Add the pellicle or starter you have. If you have none, a bottle of raw, "
                "unflavoured kombucha grows one in two to three weeks: the program leads you "
                "through it."
            ),
            "muted",
            wraps=True,
        )
        words.setAlignment(middle)
        words.setMaximumWidth(_WORDS_PX)
        around = QHBoxLayout()
        around.addStretch(1)
        around.addWidget(words, 20)
        around.addStretch(1)
        column.addLayout(around)
        row = QHBoxLayout()
        row.setSpacing(SPACE)
        self.first_add = QPushButton(self.tr("Add a culture I have…"))
        self.first_add.setObjectName("add_first_culture")
        set_role(self.first_add, "primary")
        self.first_add.clicked.connect(self.acts.add)
        self.first_grow = QPushButton(self.tr("Grow one from raw kombucha…"))
        self.first_grow.setObjectName("grow_first_culture")
        self.first_grow.clicked.connect(self.acts.grow)
        row.addStretch(1)
        row.addWidget(self.first_add)
        row.addWidget(self.first_grow)
        row.addStretch(1)
        column.addSpacing(SPACE)
        column.addLayout(row)
        column.addStretch(3)
        return page

    # --- showing ---------------------------------------------------------------------

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed while hidden; ages pass a day without a change."""
        super().showEvent(event)
        self.refresh()
        if self.focusWidget() in (None, self.grow_button):
            self.tree.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_culture(self, culture_id: int) -> None:
        """Choose a culture and bring it into view."""
        if self._stale:
            self._wanted_id = culture_id
            if self.isVisible():
                self.refresh()
            return
        self.tree.choose(culture_id)

    def chosen_id(self) -> int | None:
        """Return the chosen culture, or None."""
        index = self.tree.currentIndex()
        return index.data(NODE_ROLE).culture.id if index.isValid() else None

    def refresh(self) -> None:
        """Read the cultures again; the choice stays."""
        self._stale = False
        chosen = self._wanted_id or self.chosen_id()
        self._wanted_id = None
        self._family = self._desk.lineage.tree()
        self.model.set_nodes(self._family.nodes)
        nodes = self._family.nodes
        here = sum(not node.is_gone for node in nodes)
        self.count.setText(self._count_words(here, len(nodes) - here))
        self._stack.setCurrentIndex(0 if nodes else 1)
        if not nodes:
            self.sheet.show_culture(None, self._family)
            return
        if chosen is None or not self.tree.choose(chosen):
            living = [node for node in nodes if not node.is_gone]
            self.tree.choose((living or list(nodes))[0].culture.id)
        self._show_chosen()

    def _count_words(self, here: int, gone: int) -> str:
        if not gone:
            return self.tr("{here} here").format(here=here)
        return self.tr("{here} here, {gone} gone").format(here=here, gone=gone)

    def _show_chosen(self) -> None:
        chosen = self.chosen_id()
        node = None if chosen is None else self._family.node(chosen)
        self.sheet.show_culture(node, self._family)

    # --- what happens ----------------------------------------------------------------

    def _on_chosen(self, _culture_id: int) -> None:
        self.said.say("")
        self._show_chosen()

    def _on_opened(self, _culture_id: int) -> None:
        """Enter goes to the first thing to do with the culture."""
        first = next(iter(self.sheet.act_buttons.values()), self.sheet.more)
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_menu_wanted(self, at: QPoint) -> None:
        index = self.tree.indexAt(at)
        if not index.isValid():
            index = self.tree.currentIndex()
        if not index.isValid():
            return
        self.tree.setCurrentIndex(index)
        menu = QMenu(self)
        self.acts.fill_menu(menu, index.data(NODE_ROLE).culture)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(self.tree.viewport().mapToGlobal(self.tree.visualRect(index).center()))

    def _on_trouble(self, words: str) -> None:
        self.said.say(words, "error")

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_TOPICS):
            self._stale = True
            if self.isVisible():
                self.refresh()
