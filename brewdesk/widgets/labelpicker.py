"""Choose what gets a label: jars, bottles, batches, cultures; several at once, copies of each."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QSortFilterProxyModel, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QStackedWidget,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from brewdesk.models.labelpicks import (
    COPIES,
    MOST_COPIES,
    NAME,
    STAGE,
    LabelPicksModel,
    usual_copies,
)
from brewdesk.models.rowtable import ROW_ROLE, Index
from brewdesk.paths import resource
from brewdesk.services.labels import LabelFacts
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.theme import SPACE, theme, tokens

_STAGE_SHARE = 0.4
GROUPS = ("vessel", "bottling", "batch", "culture")


class LabelPicker(QWidget):
    """Four lists with ticks. ``changed`` fires when what is picked changes.

    Until the maker ticks or unticks anything, what a label is most likely wanted for is ticked.
    """

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picked: dict[str, int] = {}
        self._facts: dict[str, LabelFacts] = {}
        self._is_chosen_by_maker = False
        titles = {
            "vessel": self.tr("Jars"),
            "bottling": self.tr("Bottles"),
            "batch": self.tr("Batches"),
            "culture": self.tr("Cultures"),
        }
        self.groups = ChoiceBar(tuple(titles.items()), self.tr("What to label"), self)
        self.find_line = QLineEdit(self)
        self.find_line.setObjectName("label_find")
        self.find_line.setPlaceholderText(self.tr("Find by name"))
        self.find_line.setAccessibleName(self.tr("Find by name"))
        self.find_line.setClearButtonEnabled(True)
        self._stack = QStackedWidget(self)
        self.models: dict[str, LabelPicksModel] = {}
        self.tables: dict[str, PickTable] = {}
        for group in GROUPS:
            model = LabelPicksModel(self.picked, self)
            model.picked_changed.connect(self._on_picked_by_maker)
            table = PickTable(model, self)
            table.setObjectName(f"label_{group}_list")
            table.setAccessibleName(titles[group])
            self.models[group], self.tables[group] = model, table
            self._stack.addWidget(table)
        self.count = plain_label("", "muted", self, wraps=True)
        self.none = QPushButton(self.tr("Untick all"), self)
        self.none.setObjectName("label_untick")
        self._lay_out()
        self.groups.chosen.connect(lambda group: self.show_group(str(group)))
        self.find_line.textChanged.connect(self._on_find)
        self.none.clicked.connect(self._on_none)
        self._on_picked()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, SPACE, 0, 0)
        column.setSpacing(SPACE)
        column.addWidget(self.groups)
        column.addWidget(self.find_line)
        column.addWidget(self._stack, 1)
        foot = QHBoxLayout()
        foot.addWidget(self.count, 1)
        foot.addWidget(self.none)
        column.addLayout(foot)

    def set_rows(self, rows: dict[str, tuple[LabelFacts, ...]]) -> None:
        """Show what there is; what is gone loses its tick."""
        self._facts = {row.key: row for group in GROUPS for row in rows[group]}
        for key in [key for key in self.picked if key not in self._facts]:
            del self.picked[key]
        for group, model in self.models.items():
            model.set_rows(rows[group])
            model.refresh()
        self._on_picked()

    def chosen(self) -> tuple[tuple[LabelFacts, int], ...]:
        """Return what is ticked, with its copies, in the order of ticking."""
        return tuple((self._facts[key], copies) for key, copies in self.picked.items())

    def pick_only(self, keys: tuple[str, ...]) -> None:
        """Tick these records and no others."""
        self._is_chosen_by_maker = True
        self._tick(keys)

    def pick_likely(self) -> None:
        """Tick what a label is most likely wanted for, unless the maker has chosen.

        That are the bottles filled within a day; without any, the batches that sour.
        """
        if self._is_chosen_by_maker:
            return
        for group in ("bottling", "batch"):
            rows = (row for row in self._facts.values() if row.record == group)
            keys = tuple(row.key for row in rows if row.is_likely)
            if keys:
                break
        self._tick(keys)

    def _tick(self, keys: tuple[str, ...]) -> None:
        self.picked.clear()
        known = [self._facts[key] for key in keys if key in self._facts]
        self.picked.update({row.key: usual_copies(row) for row in known})
        for model in self.models.values():
            model.refresh()
        if keys:
            group = keys[0].split(":")[0]
            self.groups.set_value(group)
            self.show_group(group)
            self.tables[group].show_key(keys[0])
        self._on_picked()

    def show_group(self, group: str) -> None:
        """Bring one of the lists to the front."""
        self._stack.setCurrentWidget(self.tables[group])

    def _count_words(self, labels: int) -> str:
        if not labels:
            return self.tr("Tick what is to get a label.")
        if labels == 1:
            words = self.tr("1 label in all.")
        else:
            words = self.tr("{count} labels in all.").format(count=labels)
        if self._is_chosen_by_maker:
            return words
        if any(key.startswith("bottling:") for key in self.picked):
            return words + " " + self.tr("Bottles filled lately are ticked for you.")
        return words + " " + self.tr("What sours now is ticked for you.")

    def _on_find(self, text: str) -> None:
        for table in self.tables.values():
            table.filter(text)

    def _on_none(self) -> None:
        self.pick_only(())

    def _on_picked_by_maker(self) -> None:
        self._is_chosen_by_maker = True
        self._on_picked()

    def _on_picked(self) -> None:
        labels = sum(self.picked.values())
        self.count.setText(self._count_words(labels))
        self.none.setEnabled(bool(labels))
        self.changed.emit()


class PickTable(QTableView):
    """Rows with ticks: space ticks from any column, digits change the copies."""

    def __init__(self, model: LabelPicksModel, parent: QWidget | None = None) -> None:
        self._rows = model
        super().__init__(parent)
        self._filter = QSortFilterProxyModel(self)
        self._filter.setSourceModel(model)
        self._filter.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self._filter.setFilterKeyColumn(-1)
        self.setModel(self._filter)
        self.setItemDelegateForColumn(COPIES, _CopiesDelegate(self))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.SelectedClicked
        )
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._dress)
        self._dress()
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionsClickable(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        header.setSectionResizeMode(NAME, QHeaderView.ResizeMode.Stretch)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._size()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the names the larger part of what there is."""
        super().resizeEvent(event)
        self._size()

    def changeEvent(self, event: QEvent) -> None:
        """Follow the type size."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._size()

    def _size(self) -> None:
        header = self.horizontalHeader()
        if header.count() <= COPIES:  # Qt speaks of style changes before there is a model
            return
        title = QFontMetrics(header.font())
        copies = title.horizontalAdvance(self._rows.headerData(COPIES, Qt.Orientation.Horizontal))
        header.resizeSection(COPIES, copies + 4 * SPACE)
        left = max(0, self.viewport().width() - header.sectionSize(COPIES))
        header.resizeSection(STAGE, round(_STAGE_SHARE * left))
        letters = QFontMetrics(self.font())
        self.verticalHeader().setDefaultSectionSize(letters.height() + 2 * SPACE)

    def _dress(self) -> None:
        """Give ticks the look and size of the program's other boxes."""
        colours = tokens()
        tick = resource("icons", f"tick-{colours.name}.svg").as_posix()
        self.setStyleSheet(
            f"QTableView::item {{ padding: 0 {SPACE}px; }}"
            f"QTableView::indicator {{ width: 18px; height: 18px; border-radius: 4px;"
            f" border: 1px solid {colours.edge}; background: {colours.sunken}; }}"
            f"QTableView::indicator:checked {{ background: {colours.accent};"
            f' border-color: {colours.accent}; image: url("{tick}"); }}'
        )

    def filter(self, text: str) -> None:
        """Show only rows that have ``text`` in them."""
        self._filter.setFilterFixedString(text.strip())

    def show_key(self, key: str) -> None:
        """Bring a record into view."""
        self._filter.setFilterFixedString("")
        index = self._filter.mapFromSource(self._rows.index_of(key))
        if index.isValid():
            self.setCurrentIndex(index)
            self.scrollTo(index)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Tick with the space bar, in whatever column."""
        index = self.currentIndex()
        row = index.data(ROW_ROLE) if index.isValid() else None
        if event.key() == Qt.Key.Key_Space and isinstance(row, LabelFacts):
            self._rows.pick(row, 0 if self._rows.is_picked(row) else usual_copies(row))
            return
        if index.isValid() and event.text().isdigit():  # copies, wherever in the row one stands
            self.setCurrentIndex(index.siblingAtColumn(COPIES))
        super().keyPressEvent(event)


class _CopiesDelegate(QStyledItemDelegate):
    """Edits a number of copies."""

    def createEditor(
        self, parent: QWidget, option: QStyleOptionViewItem, index: QModelIndex | Index
    ) -> QWidget:
        """Make a spin box that fits the row."""
        del option, index
        made = QSpinBox(parent)
        made.setRange(0, MOST_COPIES)
        made.setFrame(False)
        made.setStyleSheet("QSpinBox { min-height: 0; padding: 0 2px; }")
        made.setAccessibleName(self.tr("Copies"))
        return made
