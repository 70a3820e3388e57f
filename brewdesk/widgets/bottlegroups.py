"""Bottles of several kinds, as rows that can be added, changed and taken away."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.bottlingwish import BottleGroupWish
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import BottleKind, Kind, Supply
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import FieldRow, choose
from brewdesk.widgets.plainspin import make_plain
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

USUAL = BottleGroupWish(bottle_count=6, kind=BottleKind.FIZZY_GLASS, brim_volume_l=0.52)
TEST = BottleGroupWish(
    bottle_count=1, kind=BottleKind.FIZZY_PLASTIC, brim_volume_l=0.5, is_test=True
)
_MOST_BOTTLES = 500


class BottleGroupRow(QFrame):
    """Count, kind, volume, headspace and rating of one kind of bottles."""

    changed = Signal()
    remove_wanted = Signal()

    def __init__(
        self,
        quantities: Quantities,
        group: BottleGroupWish,
        parent: QWidget | None = None,
        *,
        stock: tuple[Supply, ...] = (),
    ) -> None:
        super().__init__(parent)
        set_role(self, "card")
        self._stock: dict[int, Supply] = {}
        self.source = QComboBox(self)
        self.source.setObjectName("group_source")
        self.count = QSpinBox(self)
        self.count.setObjectName("group_count")
        self.count.setRange(1, _MOST_BOTTLES)
        self.kind = QComboBox(self)
        self.kind.setObjectName("group_kind")
        for kind in BottleKind:
            self.kind.addItem(name_of(kind), kind)
        self.brim = QuantityEdit(quantities, Kind.VOLUME, self, lines=1)
        self.brim.line.setObjectName("group_brim_volume_l")
        self.headspace = QDoubleSpinBox(self)
        self.headspace.setObjectName("group_headspace_share")
        self.headspace.setRange(0.0, 40.0)
        self.headspace.setDecimals(1)
        self.headspace.setSingleStep(0.5)
        self.headspace.setSuffix(self.tr(" %"))
        self.rated = QDoubleSpinBox(self)
        self.rated.setObjectName("group_rated_bar")
        self.rated.setRange(0.0, 30.0)
        self.rated.setDecimals(1)
        self.rated.setSingleStep(0.5)
        self.rated.setSuffix(self.tr(" bar"))
        self.rated.setSpecialValueText(self.tr("type it"))
        self.is_test = QCheckBox(self.tr("Test bottle, to be felt daily"), self)
        self.is_test.setObjectName("group_is_test")
        self.remove = QPushButton(self.tr("Take away"), self)
        self.remove.setObjectName("group_remove")
        set_role(self.remove, "quiet")
        for spin in (self.count, self.headspace, self.rated):
            make_plain(spin)
        self._lay_out()
        self.offer_stock(stock)
        self.show_group(group)
        self._connect()

    def _lay_out(self) -> None:
        tr = self.tr
        self.rows = {
            "bottle_count": FieldRow(tr("Bottles"), self.count, self, lines=1),
            "kind": FieldRow(tr("What is known of them"), self.kind, self, lines=1),
            "brim_volume_l": FieldRow(tr("Volume to the brim"), self.brim, self, lines=1),
            "headspace_share": FieldRow(tr("Headspace"), self.headspace, self, lines=1),
            "rated_bar": FieldRow(tr("Rating, over the air's"), self.rated, self, lines=1),
            "source": FieldRow(tr("Bottles from"), self.source, self, lines=1),
        }
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE // 2)
        grid.addWidget(self.rows["bottle_count"], 0, 0)
        grid.addWidget(self.rows["kind"], 0, 1, 1, 2)
        grid.addWidget(self.rows["brim_volume_l"], 1, 0)
        grid.addWidget(self.rows["headspace_share"], 1, 1)
        grid.addWidget(self.rows["rated_bar"], 1, 2)
        grid.addWidget(self.rows["source"], 2, 0, 1, 3)
        for column in range(3):
            grid.setColumnStretch(column, 1)
        foot = QHBoxLayout()
        foot.addWidget(self.is_test)
        foot.addStretch(1)
        foot.addWidget(self.remove)
        column_box = QVBoxLayout(self)
        column_box.setContentsMargins(2 * SPACE, SPACE + 4, 2 * SPACE, SPACE)
        column_box.setSpacing(0)
        column_box.addLayout(grid)
        column_box.addLayout(foot)

    def offer_stock(self, stock: tuple[Supply, ...]) -> None:
        """Offer the bottles of the stores; the choice stays."""
        chosen = self.source.currentData()
        self._stock = {supply.id: supply for supply in stock}
        self.source.blockSignals(True)
        self.source.clear()
        self.source.addItem(self.tr("Not from the stores"), None)
        for supply in stock:
            self.source.addItem(" ".join(supply.name.split()), supply.id)
        choose(self.source, chosen)
        self.source.blockSignals(False)
        self.rows["source"].setVisible(bool(stock))

    def _connect(self) -> None:
        self.count.valueChanged.connect(self.changed)
        self.source.currentIndexChanged.connect(self._on_source)
        self.kind.currentIndexChanged.connect(self._on_kind)
        self.brim.value_changed.connect(self.changed)
        self.headspace.valueChanged.connect(self.changed)
        self.rated.valueChanged.connect(self.changed)
        self.is_test.toggled.connect(self.changed)
        self.remove.clicked.connect(self.remove_wanted)

    def show_group(self, group: BottleGroupWish) -> None:
        """Show ``group``."""
        self.count.setValue(group.bottle_count)
        choose(self.kind, group.kind)
        self.brim.set_value(group.brim_volume_l)
        self.headspace.setValue(100.0 * group.headspace_share)
        self.rated.setValue(group.rated_bar or 0.0)
        self.is_test.setChecked(group.is_test)
        choose(self.source, group.supply_id)
        self._show_rating()

    def group(self) -> BottleGroupWish | None:
        """Return what stands in the row; None while it cannot be read."""
        brim_l = self.brim.value()
        if brim_l is None:
            return None
        kind = BottleKind(self.kind.currentData())
        rated = self.rated.value() if kind is BottleKind.RATED else 0.0
        return BottleGroupWish(
            bottle_count=self.count.value(),
            kind=kind,
            brim_volume_l=brim_l,
            headspace_share=self.headspace.value() / 100.0,
            rated_bar=rated or None,
            is_test=self.is_test.isChecked(),
            supply_id=self.source.currentData(),
        )

    def _on_source(self, _index: int) -> None:
        """Take over what the stores know of these bottles."""
        supply = self._stock.get(self.source.currentData())
        if supply is not None:
            if supply.bottle_kind is not None:
                choose(self.kind, supply.bottle_kind)
            if supply.brim_volume_l is not None:
                self.brim.set_value(supply.brim_volume_l)
            self.rated.setValue(supply.rated_bar or 0.0)
        self.changed.emit()

    def _on_kind(self, _index: int) -> None:
        self._show_rating()
        self.changed.emit()

    def _show_rating(self) -> None:
        kind = BottleKind(self.kind.currentData())
        self.rows["rated_bar"].setVisible(kind is BottleKind.RATED)
        hint = {
            BottleKind.RATED: self.tr("As their maker states it."),
            BottleKind.FIZZY_GLASS: self.tr("No rating known: a cautious one is taken."),
            BottleKind.FIZZY_PLASTIC: self.tr("No rating known: a cautious one is taken."),
            BottleKind.NOT_FOR_PRESSURE: self.tr("Must not be put under pressure."),
        }[kind]
        self.rows["kind"].set_hint(hint)


class BottleGroups(QWidget):
    """All rows of bottles."""

    changed = Signal()

    def __init__(self, quantities: Quantities, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._quantities = quantities
        self.rows: list[BottleGroupRow] = []
        self.stock: tuple[Supply, ...] = ()  # bottles of the stores
        self.add_button = QPushButton(self.tr("Add bottles"), self)
        self.add_button.setObjectName("groups_add")
        self.test_button = QPushButton(self.tr("Add a test bottle"), self)
        self.test_button.setObjectName("groups_add_test")
        for button in (self.add_button, self.test_button):
            set_role(button, "quiet")
        self._column = QVBoxLayout()
        self._column.setSpacing(SPACE)
        line = QHBoxLayout()
        line.addWidget(self.add_button)
        line.addWidget(self.test_button)
        line.addStretch(1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(SPACE // 2)
        outer.addLayout(self._column)
        outer.addLayout(line)
        self.add_button.clicked.connect(lambda: self._add_and_focus(USUAL))
        self.test_button.clicked.connect(lambda: self._add_and_focus(TEST))

    def offer_stock(self, stock: tuple[Supply, ...]) -> None:
        """Offer the bottles of the stores in every row, and in those to come."""
        if stock != self.stock:
            self.stock = stock
            for row in self.rows:
                row.offer_stock(stock)

    def set_groups(self, groups: tuple[BottleGroupWish, ...]) -> None:
        """Show these rows in place of those there are."""
        for row in tuple(self.rows):
            self._drop(row)
        for group in groups:
            self.add(group)

    def groups(self) -> tuple[BottleGroupWish, ...] | None:
        """Return all rows; None while one of them cannot be read."""
        found = [row.group() for row in self.rows]
        if any(group is None for group in found):
            return None
        return tuple(group for group in found if group is not None)

    def add(self, group: BottleGroupWish) -> BottleGroupRow:
        """Add a row."""
        row = BottleGroupRow(self._quantities, group, self, stock=self.stock)
        row.changed.connect(self.changed)
        row.remove_wanted.connect(lambda: self._on_remove(row))
        self.rows.append(row)
        self._column.addWidget(row)
        self._number()
        return row

    def set_problem(self, field: str, words: str) -> bool:
        """Say ``words`` beside the field they belong to; False if none of the rows has it."""
        for row in self.rows:
            place = row.rows.get(field)
            group = row.group()
            fits = field != "rated_bar" or (group is not None and group.rated_bar is None)
            if place is not None and place.isVisibleTo(row) and fits:
                place.set_problem(words)
                return True
        return False

    def clear_problems(self) -> None:
        """Take all messages back."""
        for row in self.rows:
            for field, place in row.rows.items():
                if field != "kind":
                    place.set_problem("")

    def _add_and_focus(self, group: BottleGroupWish) -> None:
        self.add(group).count.setFocus()
        self.changed.emit()

    def _on_remove(self, row: BottleGroupRow) -> None:
        self._drop(row)
        self._number()
        self.add_button.setFocus()
        self.changed.emit()

    def _drop(self, row: BottleGroupRow) -> None:
        self.rows.remove(row)
        self._column.removeWidget(row)
        row.hide()
        row.deleteLater()

    def _number(self) -> None:
        for number, row in enumerate(self.rows, start=1):
            row.remove.setAccessibleName(self.tr("Take away row {n}").format(n=number))
            row.setAccessibleName(self.tr("Bottles, row {n}").format(n=number))
