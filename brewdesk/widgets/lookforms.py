"""What was seen at a culture, measured of it, or thought about it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Culture,
    ImpossibleInput,
    Kind,
    Look,
    Method,
    Quantity,
)
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.quantityedit import QuantityEdit


class LookDialog(CareDialog):
    """What a careful look found. ``is_mold`` tells whether mold was noted."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("A look at {name}").format(name=culture.name),
            self.tr("Note the look"),
            name="look",
            parent=parent,
        )
        self._culture = culture
        self.is_mold = False
        self.add_words(look_advice())
        self.found = ChoiceBar([(look, name_of(look)) for look in Look], self.tr("What you found"))
        self.found.set_value(None)
        self.add_row("look", self.tr("What you found"), self.found)
        self.words = self.add_line("text", self.tr("In your own words (optional)"))

    def act(self) -> object:
        """Note the look."""
        look = self.found.value()
        if not isinstance(look, Look):
            raise ImpossibleInput("look", look, reason="not_offered")
        self.is_mold = look is Look.MOLD
        return self._desk.culture_care.look(self._culture.id, look, self.words.text())


def look_advice() -> str:
    """Say how mold differs from what is harmless, and what decides when it is not clear."""
    return QCoreApplication.translate(
        "Looks",
        "Mold is dry or fuzzy and often white, green, blue or black, on top. Brown strings, "
        "bubbles and layers under a wet, smooth surface are usual. When in doubt, throw it out.",
    )


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
