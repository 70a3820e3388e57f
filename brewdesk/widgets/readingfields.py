"""The fields of the reading form: what can be entered, and in which order Enter walks."""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QLineEdit, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.quantities import Quantities
from brewdesk.services.readings import Readings
from brewdesk.services.records import Kind, Look, Method, Quantity, TasteMark
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.bigtype import BigType
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import FieldRow
from brewdesk.widgets.pairgrid import PairGrid
from brewdesk.widgets.theme import SPACE

_BIG_PX = 56
_BIG_SCALE = 1.7
_TASTE_PX = 48  # two lines of words


@dataclass(frozen=True, slots=True)
class FieldTexts:
    """What stands in the fields."""

    texts: dict[Quantity, str]
    taste: Hashable | None
    look: Hashable | None
    sugar: Hashable | None


class ReadingFields(QWidget):
    """The entry lines by the quantity they are for; sugar has one line for two scales.

    ``edited`` carries the quantity whose line was changed, or None for the taste and the look.
    ``submitted`` says that Enter was pressed in the last field. ``guide_wanted`` asks for the
    guided look.
    """

    edited = Signal(object)
    left = Signal(object)  # the quantity whose line was just left
    submitted = Signal()
    guide_wanted = Signal()

    def __init__(
        self, readings: Readings, quantities: Quantities, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._readings = readings
        self._quantities = quantities
        self.lines: dict[Quantity, QLineEdit] = {}
        self.rows: dict[Quantity, FieldRow] = {}
        self._build()
        self._connect()
        self.show_units()

    # what stands here

    def filled(self) -> dict[Quantity, str]:
        """Return the texts of the lines that are not empty."""
        return {slot: line.text() for slot, line in self.lines.items() if line.text().strip()}

    def is_empty(self) -> bool:
        """Whether nothing has been entered."""
        return not self.filled() and not any(bar.value() for bar in self._marks())

    def meaning(self, slot: Quantity) -> tuple[Quantity, Method]:
        """Return which quantity a line is for now, and how it was taken."""
        quantity = slot
        if slot is Quantity.BRIX and self.sugar_scale.value() is Quantity.SPECIFIC_GRAVITY:
            quantity = Quantity.SPECIFIC_GRAVITY
        method = self.method.value()
        if quantity is Quantity.PH and isinstance(method, Method):
            return quantity, method
        return quantity, self._readings.methods(quantity)[0]

    def texts(self) -> FieldTexts:
        """Return everything entered, to be put back later."""
        return FieldTexts(
            self.filled(), self.taste.value(), self.look.value(), self.sugar_scale.value()
        )

    def put_back(self, texts: FieldTexts) -> None:
        """Show what was entered before."""
        for slot, text in texts.texts.items():
            self.lines[slot].setText(text)
        self.taste.set_value(texts.taste)
        self.look.set_value(texts.look)
        self.sugar_scale.set_value(texts.sugar)
        self.show_units()

    def clear(self) -> None:
        """Empty all fields."""
        for slot, line in self.lines.items():
            line.clear()
            self.rows[slot].set_problem("")
        for bar in self._marks():
            bar.set_value(None)

    def clear_kept(self, kept: set[Quantity]) -> None:
        """Empty the lines of the quantities that are kept, the taste and the look."""
        for slot, row in self.rows.items():
            if self.meaning(slot)[0] in kept:
                self.lines[slot].clear()
                row.set_problem("")
        for bar in self._marks():
            bar.set_value(None)

    def show_units(self) -> None:
        """Name the unit of a bare number in each empty line."""
        unit = self._quantities.unit
        is_gravity = self.sugar_scale.value() is Quantity.SPECIFIC_GRAVITY
        for slot, text in (
            (Quantity.PH, self._example("3.40")),
            (Quantity.TEMPERATURE_C, unit(Kind.TEMPERATURE)),
            (Quantity.BRIX, self._example("1.020") if is_gravity else unit(Kind.BRIX)),
            (Quantity.TA_G_PER_L, unit(Kind.ACIDITY)),
            (Quantity.PELLICLE_MM, "mm"),
        ):
            self.lines[slot].setPlaceholderText(text)

    def _example(self, number: str) -> str:
        return self.tr("e.g. {number}").format(number=number)  # a bare number would seem entered

    # building

    def _build(self) -> None:
        self.method = ChoiceBar(
            [(method, name_of(method)) for method in self._readings.methods(Quantity.PH)],
            self.tr("pH taken with"),
            height_px=_BIG_PX,
        )
        self.method.setObjectName("reading_method")
        self.sugar_scale = ChoiceBar(
            ((Quantity.BRIX, self.tr("°Bx")), (Quantity.SPECIFIC_GRAVITY, self.tr("SG"))),
            self.tr("Sugar measured as"),
        )
        self.sugar_scale.setObjectName("reading_sugar_scale")
        self.pairs = PairGrid()
        self.pairs.add(
            self._number_row(Quantity.PH, self.tr("p&H"), big=True),
            FieldRow(self.tr("pH taken with"), self.method, lines=0),
        )
        self.pairs.add(
            self._number_row(Quantity.TEMPERATURE_C, self.tr("Temperature")),
            self._number_row(Quantity.BRIX, self.tr("Sugar"), beside=self.sugar_scale),
        )
        self.pairs.add(
            self._number_row(Quantity.TA_G_PER_L, self.tr("Titratable acidity")),
            self._number_row(Quantity.PELLICLE_MM, self.tr("Pellicle thickness")),
        )
        self.pairs.add(self._taste_row())
        self.pairs.add(self._look_row())
        self.pairs.add(self._note_row())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.pairs)

    def _number_row(
        self, quantity: Quantity, label: str, *, beside: QWidget | None = None, big: bool = False
    ) -> FieldRow:
        line = QLineEdit()
        line.setObjectName(f"reading_{quantity.value}")
        line.setInputMethodHints(Qt.InputMethodHint.ImhFormattedNumbersOnly)
        if big:
            BigType(line, _BIG_SCALE, f"min-height: {_BIG_PX - 10}px;")
        return self._keep(quantity, line, FieldRow(label, line, beside=beside, lines=1))

    def _taste_row(self) -> FieldRow:
        self.taste = ChoiceBar(
            [(mark, name_of(mark).replace(" too ", " too\n")) for mark in TasteMark],
            self.tr("Taste"),
            may_be_none=True,
            submits=True,
            height_px=_TASTE_PX,
        )
        self.taste.setObjectName("reading_taste")
        row = FieldRow(self.tr("Taste"), self.taste, lines=0)
        row.setContentsMargins(0, 0, 0, SPACE)
        return row

    def _look_row(self) -> FieldRow:
        self.look = ChoiceBar(
            [(look, name_of(look)) for look in Look],
            self.tr("Look"),
            may_be_none=True,
            submits=True,
        )
        self.look.setObjectName("reading_look")
        self.guide_button = QPushButton(self.tr("Guide…"))
        self.guide_button.setObjectName("reading_look_guide")
        self.guide_button.setAccessibleName(self.tr("Look for mold with a guide"))
        row = FieldRow(self.tr("Look"), self.look, beside=self.guide_button, lines=0)
        row.setContentsMargins(0, 0, 0, SPACE)
        return row

    def _marks(self) -> tuple[ChoiceBar, ChoiceBar]:
        return self.taste, self.look

    def _note_row(self) -> FieldRow:
        line = QLineEdit()
        line.setObjectName("reading_note")
        line.setPlaceholderText(self.tr("What you saw, smelled or did"))
        row = FieldRow(self.tr("Note"), line, lines=0)
        row.setContentsMargins(0, 0, 0, SPACE)
        return self._keep(Quantity.NOTE, line, row)

    def _keep(self, quantity: Quantity, line: QLineEdit, row: FieldRow) -> FieldRow:
        self.lines[quantity] = line
        self.rows[quantity] = row
        return row

    def _connect(self) -> None:
        for line in self.lines.values():
            line.returnPressed.connect(self._on_enter)
            line.textEdited.connect(self._on_text_edited)
            line.editingFinished.connect(self._on_left)
        for bar in self._marks():
            bar.submitted.connect(self._on_enter)
            bar.chosen.connect(self._on_mark)
        self.guide_button.clicked.connect(self.guide_wanted)
        self.sugar_scale.chosen.connect(self.show_units)

    # what happens

    def _on_enter(self) -> None:
        *numbers, note = self.lines.values()
        stops: list[QWidget] = [*numbers, self.taste, self.look, note]
        sender = self.sender()
        here = next((n for n, stop in enumerate(stops) if stop is sender), len(stops) - 1)
        if here + 1 < len(stops):
            stops[here + 1].setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.submitted.emit()

    def _on_left(self) -> None:
        self.left.emit(self._slot_of(self.sender()))

    def _slot_of(self, sender: QObject | None) -> Quantity:
        return next(slot for slot, line in self.lines.items() if line is sender)

    def _on_text_edited(self) -> None:
        slot = self._slot_of(self.sender())
        self.rows[slot].set_problem("")
        self.edited.emit(slot)

    def _on_mark(self) -> None:
        self.edited.emit(None)
