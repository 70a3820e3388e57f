"""How strong the tea is, as grams or as bags for each litre."""

from __future__ import annotations

import re

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind
from brewdesk.services.wording.amounts import number_text
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE

_BAGS = re.compile(r"\s*(tea\s*)?bags?(\s*/\s*l|\s+per\s+lit(re|er))?\s*$", re.IGNORECASE)


class BagReader:
    """Reads and shows tea as bags per litre of ``bag_g`` grams each."""

    def __init__(self, quantities: Quantities, bag_g: float) -> None:
        self._quantities = quantities
        self._bag_g = bag_g

    def unit(self, _kind: Kind) -> str:
        """Return the unit's name."""
        return QCoreApplication.translate("BagReader", "bags/L")

    def units(self, kind: Kind) -> tuple[str, ...]:
        """Return what may be typed."""
        return (self.unit(kind), *self._quantities.units(kind))

    def read(self, text: str, kind: Kind) -> float:
        """Read "2", "2 1/2 bags" or, with a unit of weight, grams per litre.

        Raises
        ------
        NotAQuantity
            If it is neither.
        """
        bare = _BAGS.sub("", text)
        if bare != text or not re.search(r"[^\W\d_]", bare.replace("½", "")):
            return self._quantities.read_in(bare, Kind.TEA, "g/L") * self._bag_g
        return self._quantities.read(text, kind)

    def show(self, value: float, kind: Kind) -> str:
        """Write grams per litre as bags per litre."""
        bags = value / self._bag_g
        decimals = 0 if abs(bags - round(bags)) < 0.005 else 2
        return f"{number_text(bags, decimals)} {self.unit(kind)}"


class TeaStrengthEdit(QWidget):
    """A quantity entry with the choice of grams or bags beside it; its value is g/L."""

    value_changed = Signal(object)

    def __init__(self, quantities: Quantities, bag_g: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._quantities = quantities
        self._bag_g = bag_g
        self.entry = QuantityEdit(quantities, Kind.TEA, self)
        self.entry.setAccessibleName(self.tr("How much tea"))
        self.entry.line.setMinimumWidth(11 * SPACE)
        self.message = self.entry.message
        self.line = self.entry.line
        self.units = ChoiceBar(
            [(False, self.tr("g/L")), (True, self.tr("bags/L"))], self.tr("Tea counted in"), self
        )
        self.units.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        layout.addWidget(self.entry, 1)
        layout.addWidget(self.units, 0)
        layout.setAlignment(self.units, Qt.AlignmentFlag.AlignTop)
        self.setFocusProxy(self.entry)
        self.entry.value_changed.connect(self.value_changed)
        self.units.chosen.connect(self._on_unit)

    def value(self) -> float | None:
        """Return grams of leaf for each litre of sweet tea, or None."""
        return self.entry.value()

    def set_value(self, tea_g_per_l: float | None) -> None:
        """Show grams for each litre in the unit chosen."""
        self.entry.set_value(tea_g_per_l)

    def in_bags(self) -> bool:
        """Whether bags are chosen."""
        return bool(self.units.value())

    def set_in_bags(self, in_bags: bool) -> None:
        """Choose bags or grams."""
        self.units.set_value(in_bags)
        self._on_unit(in_bags)

    def set_bag(self, bag_g: float) -> None:
        """Reckon with bags of this weight; the grams stay as they are."""
        self._bag_g = bag_g
        if self.in_bags():
            self._on_unit(True)

    def set_problem(self, text: str) -> None:
        """Show a problem found elsewhere."""
        self.entry.set_problem(text)

    def point_out(self) -> bool:
        """Say what is wrong now; return whether all is well."""
        return self.entry.point_out()

    def is_valid(self) -> bool:
        """Whether the text can be read."""
        return self.entry.is_valid()

    def is_touched(self) -> bool:
        """Whether the maker has typed here."""
        return self.entry.is_touched()

    def refresh_unit(self) -> None:
        """Show the value anew after the maker chose another unit."""
        self.entry.refresh_unit()

    def _on_unit(self, in_bags: object) -> None:
        reader = BagReader(self._quantities, self._bag_g) if in_bags else self._quantities
        self.entry.set_reader(reader)
