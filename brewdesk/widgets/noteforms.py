"""What was measured of a culture, or thought about it."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Culture,
    Kind,
    Method,
    Quantity,
)
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.quantityedit import QuantityEdit


class PhDialog(CareDialog):
    """The pH of what a culture rests in."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("pH of {name}").format(name=culture.name),
            self.tr("Note the pH"),
            name="ph",
            parent=parent,
        )
        self._culture = culture
        methods = (Method.METER, Method.STRIP)
        self.method = ChoiceBar([(m, name_of(m)) for m in methods], self.tr("Measured with"))
        self.ph = QuantityEdit(desk.quantities, Kind.PH, lines=1)
        self.add_row("ph", self.tr("pH"), self.ph)
        self.add_row("method", self.tr("Measured with"), self.method, lines=0)

    def act(self) -> object:
        """Note the pH."""
        method = self.method.value()
        sd = (
            self._desk.readings.default_sd(Quantity.PH, method)
            if isinstance(method, Method)
            else None
        )
        return self._desk.culture_care.measure_ph(self._culture.id, self.ph.value() or 0.0, sd)


class NoteDialog(CareDialog):
    """A note in the maker's own words."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Note on {name}").format(name=culture.name),
            self.tr("Keep the note"),
            name="note",
            parent=parent,
        )
        self._culture = culture
        self.words = self.add_line("text", self.tr("Note"))

    def act(self) -> object:
        """Keep the note."""
        return self._desk.culture_care.note(self._culture.id, self.words.text())
