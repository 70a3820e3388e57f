"""How a table of readings is to be read: which column is what; open to change."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import tzinfo

from PySide6.QtWidgets import QComboBox, QGridLayout, QWidget

from brewdesk.services.loggerfile import Preview
from brewdesk.services.readingsfile import OFFERED, Choice
from brewdesk.services.records import Quantity
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import FieldRow, choose
from brewdesk.widgets.previewtable import padded_titles
from brewdesk.widgets.tablechoices import NO_COLUMN, TableChoices, combo
from brewdesk.widgets.theme import SPACE


class ReadingsChoices(TableChoices):
    """The choices for one file; a quantity may be in no column at all."""

    def __init__(self, zone: tzinfo, parent: QWidget | None = None) -> None:
        super().__init__("readings_file", zone, parent)
        self.columns = {
            quantity: combo(f"readings_file_{quantity.value}", name_of(quantity))
            for quantity in OFFERED
        }
        self._lay_out()
        self._listen()

    def set_choice(self, preview: Preview, choice: Choice) -> None:
        """Show what was found out about a file."""
        self._is_filling = True
        self._show(preview, choice.layout, padded_titles(choice.layout, preview.rows))
        found = dict(choice.columns)
        for quantity, box in self.columns.items():
            box.insertItem(0, self.tr("not in the table"), NO_COLUMN)
            choose(box, found.get(quantity, NO_COLUMN))
        self._is_filling = False

    def choice(self) -> Choice | None:
        """Return what is chosen; None before there is a file."""
        if self._layout_now is None:
            return None
        columns = tuple(
            (quantity, box.currentData())
            for quantity, box in self.columns.items()
            if box.currentData() != NO_COLUMN
        )
        return Choice(layout=self._layout_now, columns=columns)

    def forget(self) -> None:
        """Have no file any more."""
        self.preview = self._layout_now = None

    def show_needed(self) -> None:
        """Show the fields that the choice asks for."""
        has_temperature = self.columns[Quantity.TEMPERATURE_C].currentData() != NO_COLUMN
        self.scale_row.setVisible(has_temperature)
        is_open = self._layout_now is not None and self._layout_now.date_order is None
        self.order_row.set_problem(self.tr("Please choose one.") if is_open else "")

    def _lay_out(self) -> None:
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE)
        self.scale_row = FieldRow(self.tr("Temperatures in"), self.scale, lines=0)
        fields: list[QWidget] = [
            FieldRow(self.tr("&Date and time"), self.time, lines=0),
            FieldRow(self.tr("Time of da&y, if apart"), self.clock_column, lines=0),
            FieldRow(self.tr("The times are &in"), self.clock, lines=0),
            *(FieldRow(name_of(q), box, lines=0) for q, box in self.columns.items()),
            FieldRow(self.tr("Columns are &parted by"), self.delimiter, lines=0),
            FieldRow(self.tr("&Letters are written as"), self.encoding, lines=0),
            self.scale_row,
            self.order_row,
        ]
        for number, field in enumerate(fields):
            grid.addWidget(field, number // 3, number % 3)
        for column_number in range(3):
            grid.setColumnStretch(column_number, 1)

    def _value_columns(self) -> Iterable[QComboBox]:
        return self.columns.values()
