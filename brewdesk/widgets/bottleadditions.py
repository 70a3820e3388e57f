"""What goes into the bottles beside the drink: rows with the table's sugar offered."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.additionchoices import AdditionChoice, addition_choices
from brewdesk.services.bottlingwish import AdditionWish
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import AdditionKind, Kind
from brewdesk.widgets.fields import FieldRow, plain_label
from brewdesk.widgets.plainspin import make_plain
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_USUAL_G = 20.0
_NAME_MAX = 80


class AdditionRow(QFrame):
    """One thing that goes in, how much of it, and how much of that is sugar."""

    changed = Signal()
    remove_wanted = Signal()

    def __init__(
        self,
        quantities: Quantities,
        parent: QWidget | None = None,
        *,
        stock: tuple[AdditionChoice, ...] = (),
    ) -> None:
        super().__init__(parent)
        set_role(self, "card")
        known = addition_choices()
        self.choices = {choice.key: choice for choice in (*stock, *known)}
        self.what = QComboBox(self)
        self.what.setObjectName("addition_what")
        for choice in stock:
            self.what.addItem(
                self.tr("{name} (from the stores)").format(name=" ".join(choice.name.split())),
                choice.key,
            )
        if stock:
            self.what.insertSeparator(self.what.count())
        for choice in sorted(known, key=lambda one: one.name):
            self.what.addItem(choice.name, choice.key)
        self.what.addItem(self.tr("Something else"), "")
        self.name = QLineEdit(self)
        self.name.setObjectName("addition_name")
        self.name.setMaxLength(_NAME_MAX)
        self.mass = QuantityEdit(quantities, Kind.MASS, self, lines=1)
        self.mass.line.setObjectName("addition_mass_g")
        self.low, self.high = self._percent("low"), self._percent("high")
        self.source = plain_label("", "label", self, wraps=True)
        self.remove = QPushButton(self.tr("Take away"), self)
        self.remove.setObjectName("addition_remove")
        set_role(self.remove, "quiet")
        self._lay_out(stock)
        self.what.setCurrentIndex(0 if stock else self.what.findData("ginger"))
        self.mass.set_value(_USUAL_G)
        self._follow_table()
        self._connect()

    def _percent(self, end: str) -> QDoubleSpinBox:
        spin = QDoubleSpinBox(self)
        spin.setObjectName(f"addition_{end}")
        spin.setRange(0.0, 100.0)
        spin.setDecimals(1)
        spin.setSuffix(self.tr(" %"))
        make_plain(spin)
        return spin

    def _lay_out(self, stock: tuple[AdditionChoice, ...]) -> None:
        tr = self.tr
        self.rows = {
            "what": FieldRow(tr("What goes in"), self.what, self, lines=1 if stock else 0),
            "mass_g": FieldRow(tr("Amount in all"), self.mass, self, lines=1),
            "name": FieldRow(tr("Its name"), self.name, self, lines=1),
            "sugar_share_low": FieldRow(tr("Sugar, at least"), self.low, self, lines=1),
            "sugar_share_high": FieldRow(tr("Sugar, at most"), self.high, self, lines=1),
        }
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(0)
        grid.addWidget(self.rows["what"], 0, 0)
        grid.addWidget(self.rows["mass_g"], 0, 1)
        grid.addWidget(self.rows["name"], 1, 0, 1, 2)
        grid.addWidget(self.rows["sugar_share_low"], 2, 0)
        grid.addWidget(self.rows["sugar_share_high"], 2, 1)
        for column in range(2):
            grid.setColumnStretch(column, 1)
        foot = QHBoxLayout()
        foot.addWidget(self.source, 1)
        foot.addWidget(self.remove)
        box = QVBoxLayout(self)
        box.setContentsMargins(2 * SPACE, SPACE + 4, 2 * SPACE, SPACE)
        box.setSpacing(0)
        box.addLayout(grid)
        box.addLayout(foot)

    def _connect(self) -> None:
        self.what.currentIndexChanged.connect(self._on_what)
        self.name.textChanged.connect(self.changed)
        self.mass.value_changed.connect(self.changed)
        self.low.valueChanged.connect(self._on_share)
        self.high.valueChanged.connect(self._on_share)
        self.remove.clicked.connect(self.remove_wanted)

    def choice(self) -> AdditionChoice | None:
        """Return the entry of the table; None for something else."""
        return self.choices.get(str(self.what.currentData()))

    def addition(self) -> AdditionWish | None:
        """Return what stands in the row; None while it cannot be read."""
        mass_g, choice = self.mass.value(), self.choice()
        name = self.name.text().strip() if choice is None else choice.name
        if mass_g is None or not name:
            return None
        low, high = self.low.value() / 100.0, self.high.value() / 100.0
        return AdditionWish(
            kind=AdditionKind.OTHER if choice is None else choice.kind,
            name=name,
            mass_g=mass_g,
            sugar_share_low=low,
            sugar_share_high=high,
            source=self.source.text() if choice is not None and self._is_of_table() else "",
            supply_id=None if choice is None else choice.supply_id,
        )

    def _on_what(self, _index: int) -> None:
        self._follow_table()
        self.changed.emit()

    def _on_share(self, _value: float) -> None:
        self._show_source()
        self.changed.emit()

    def _follow_table(self) -> None:
        choice = self.choice()
        self.rows["name"].setVisible(choice is None)
        if choice is not None:
            for spin, share in (
                (self.low, choice.sugar_share_low),
                (self.high, choice.sugar_share_high),
            ):
                spin.blockSignals(True)
                spin.setValue(100.0 * share)
                spin.blockSignals(False)
        self._show_source()

    def _is_of_table(self) -> bool:
        choice = self.choice()
        return choice is not None and (
            abs(self.low.value() - 100.0 * choice.sugar_share_low) < 0.06
            and abs(self.high.value() - 100.0 * choice.sugar_share_high) < 0.06
        )

    def _show_source(self) -> None:
        choice = self.choice()
        if choice is not None and self._is_of_table():
            self.source.setText(choice.source)
        else:
            self.source.setText(self.tr("Shares as you typed them; a label knows best."))


class BottleAdditions(QWidget):
    """All rows of additions; empty to begin with."""

    changed = Signal()

    def __init__(self, quantities: Quantities, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._quantities = quantities
        self.rows: list[AdditionRow] = []
        self.stock: tuple[AdditionChoice, ...] = ()  # flavourings of the stores
        self.add_button = QPushButton(self.tr("Add fruit, juice, ginger, honey…"), self)
        self.add_button.setObjectName("additions_add")
        set_role(self.add_button, "quiet")
        self._column = QVBoxLayout()
        self._column.setSpacing(SPACE)
        line = QHBoxLayout()
        line.addWidget(self.add_button)
        line.addStretch(1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(SPACE // 2)
        outer.addLayout(self._column)
        outer.addLayout(line)
        self.add_button.clicked.connect(self._on_add)

    def additions(self) -> tuple[AdditionWish, ...] | None:
        """Return all rows; None while one of them cannot be read."""
        found = [row.addition() for row in self.rows]
        if any(one is None for one in found):
            return None
        return tuple(one for one in found if one is not None)

    def add(self) -> AdditionRow:
        """Add a row."""
        row = AdditionRow(self._quantities, self, stock=self.stock)
        row.changed.connect(self.changed)
        row.remove_wanted.connect(lambda: self._on_remove(row))
        self.rows.append(row)
        self._column.addWidget(row)
        for number, one in enumerate(self.rows, start=1):
            one.remove.setAccessibleName(self.tr("Take away addition {n}").format(n=number))
        return row

    def clear(self) -> None:
        """Take all rows away."""
        for row in tuple(self.rows):
            self._drop(row)

    def set_problem(self, field: str, words: str) -> bool:
        """Say ``words`` beside the first row that has the field; False if there is none."""
        for row in self.rows:
            if field in row.rows and row.rows[field].isVisibleTo(row):
                row.rows[field].set_problem(words)
                return True
        return False

    def clear_problems(self) -> None:
        """Take all messages back."""
        for row in self.rows:
            for field in ("mass_g", "name", "sugar_share_low", "sugar_share_high"):
                row.rows[field].set_problem("")

    def _on_add(self) -> None:
        self.add().what.setFocus()
        self.changed.emit()

    def _on_remove(self, row: AdditionRow) -> None:
        self._drop(row)
        self.add_button.setFocus()
        self.changed.emit()

    def _drop(self, row: AdditionRow) -> None:
        self.rows.remove(row)
        self._column.removeWidget(row)
        row.hide()
        row.deleteLater()
