"""Splitting a culture, and merging several."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Culture, CultureState, Kind
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.millimetres import MillimetreReader
from brewdesk.widgets.quantityedit import QuantityEdit
from brewdesk.widgets.theme import SPACE, TOUCH

MM_PER_CM = 10.0
_ROWS_SEEN = 5


class SplitDialog(CareDialog):
    """Take a daughter off a culture."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Split {name}").format(name=culture.name),
            self.tr("Split it"),
            name="split",
            parent=parent,
        )
        self._culture = culture
        self.add_words(
            self.tr(
                "A layer or a piece of the pellicle, or some of its liquid, becomes a culture of "
                "its own. The parent stays as it is."
            )
        )
        self.name = self.add_line("name", self.tr("Name of the daughter"))
        self.vessel = self.add_vessels(
            "vessel_id", self.tr("Where she rests"), None, may_be_none=True
        )
        self.volume = QuantityEdit(desk.quantities, Kind.VOLUME, required=False, lines=1)
        self.add_row("rest_volume_l", self.tr("In how much ripe kombucha"), self.volume)
        self.pellicle = QuantityEdit(
            MillimetreReader(desk.quantities), Kind.LENGTH, required=False, lines=1
        )
        self.add_row("pellicle_mm", self.tr("Her pellicle's thickness"), self.pellicle)
        self.note = self.add_line("note", self.tr("Note"))
        self.name.setFocus()

    def act(self) -> object:
        """Split it."""
        thickness_cm = self.pellicle.value()
        return self._desk.culture_care.split(
            self._culture.id,
            name=self.name.text(),
            vessel_id=self.vessel.currentData(),
            pellicle_mm=None if thickness_cm is None else thickness_cm * MM_PER_CM,
            rest_volume_l=self.volume.value(),
            note=self.note.text(),
        )


class MergeDialog(CareDialog):
    """Put a culture together with others into a new one."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Merge {name} with others").format(name=culture.name),
            self.tr("Merge them"),
            name="merge",
            parent=parent,
        )
        self._culture = culture
        self.add_words(
            self.tr(
                "They become one new culture and are themselves retired. If one of them carries "
                "mold, all of it will: look at each first."
            )
        )
        self.others = QListWidget()
        for other in desk.cultures.all(include_gone=False):
            if other.id == culture.id or other.state is CultureState.FORMING:
                continue
            item = QListWidgetItem(other.name)
            item.setSizeHint(QSize(0, TOUCH - SPACE))
            item.setData(Qt.ItemDataRole.UserRole, other.id)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Unchecked)
            self.others.addItem(item)
        line = max(TOUCH - SPACE, self.others.fontMetrics().lineSpacing() + SPACE)
        rows = min(_ROWS_SEEN, max(2, self.others.count()))
        self.others.setFixedHeight(line * rows + SPACE)
        self.add_row("culture_ids", self.tr("Merge it with"), self.others)
        if self.others.count() == 0:
            self.refuse("culture_ids", self.tr("There is no other culture here to merge it with."))
        self.name = self.add_line("name", self.tr("Name of the new culture"))
        self.vessel = self.add_vessels(
            "vessel_id", self.tr("Where it rests"), culture.vessel_id, may_be_none=True
        )
        self.rows["culture_id"] = self.rows["culture_ids"]

    def chosen_ids(self) -> tuple[int, ...]:
        """Return the ids of the others that are ticked."""
        items = [self.others.item(row) for row in range(self.others.count())]
        return tuple(
            item.data(Qt.ItemDataRole.UserRole)
            for item in items
            if item.checkState() is Qt.CheckState.Checked
        )

    def act(self) -> object:
        """Merge them."""
        return self._desk.culture_care.merge(
            (self._culture.id, *self.chosen_ids()),
            name=self.name.text(),
            vessel_id=self.vessel.currentData(),
        )
