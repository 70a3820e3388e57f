"""How a table in a file is to be read: its times, scale, letters and marks; open to change."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import UTC, tzinfo

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QWidget

from brewdesk.services.loggerfile import Layout, Preview, zone_in_title
from brewdesk.services.loggerlines import DELIMITERS, ENCODINGS
from brewdesk.services.loggertext import DateOrder, Degrees
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import FieldRow, choose

NO_COLUMN = -1
_TITLE_LETTERS = 28


class TableChoices(QWidget):
    """What any table with times is asked for. Subclasses add what stands in its other columns.

    ``changed`` says that the layout is another; ``look_again`` that the file has to be
    examined anew with another encoding or delimiter. ``prefix`` begins the controls' names.
    """

    changed = Signal()
    look_again = Signal()

    def __init__(self, prefix: str, zone: tzinfo, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._own_zone = zone
        self.preview: Preview | None = None
        self._layout_now: Layout | None = None
        self._is_filling = False
        self.time = combo(f"{prefix}_time", self.tr("Date and time"))
        self.clock_column = combo(f"{prefix}_clock_column", self.tr("Time of day, if apart"))
        self.scale = ChoiceBar(
            ((Degrees.CELSIUS, "°C"), (Degrees.FAHRENHEIT, "°F")), self.tr("Temperatures in")
        )
        self.order = ChoiceBar(
            (
                (DateOrder.DAY, self.tr("Day first")),
                (DateOrder.MONTH, self.tr("Month first")),
            ),
            self.tr("Dates"),
            may_be_none=True,
        )
        self.order.setObjectName(f"{prefix}_order")
        self.order_row = FieldRow(self.tr("In the dates"), self.order, lines=1)
        self.clock = combo(f"{prefix}_zone", self.tr("The times are in"))
        self.encoding = combo(f"{prefix}_encoding", self.tr("Letters are written as"))
        for name in ENCODINGS:
            self.encoding.addItem(name.upper(), name)
        self.delimiter = combo(f"{prefix}_delimiter", self.tr("Columns are parted by"))
        names = {
            ";": self.tr("Semicolon ;"),
            "\t": self.tr("Tab"),
            "|": self.tr("Bar |"),
            ",": self.tr("Comma ,"),
        }
        for mark in DELIMITERS:
            self.delimiter.addItem(names[mark], mark)

    def _listen(self) -> None:
        """Tell of changes from now on; called when every control is there."""
        for box in (self.time, self.clock_column, self.clock, *self._value_columns()):
            box.currentIndexChanged.connect(self._on_changed)
        self.scale.chosen.connect(self._on_changed)
        self.order.chosen.connect(self._on_changed)
        self.encoding.activated.connect(self.look_again)
        self.delimiter.activated.connect(self.look_again)

    # what is chosen

    def layout_now(self) -> Layout | None:
        """Return the layout as chosen."""
        return self._layout_now

    def zone(self) -> tzinfo:
        """Return the zone of the times."""
        zone = self.clock.currentData()
        return zone if isinstance(zone, tzinfo) else self._own_zone

    def reading_as(self) -> tuple[str, str]:
        """Return the encoding and the delimiter chosen."""
        return str(self.encoding.currentData()), str(self.delimiter.currentData())

    # what a subclass adds

    def _value_columns(self) -> Iterable[QComboBox]:
        """Return the boxes that choose a column for a value."""
        return ()

    def _with_values(self, layout: Layout) -> Layout:
        """Return the layout with what is chosen for the values."""
        return layout

    def _own_clocks(self) -> list[tuple[str, tzinfo]]:
        """Return the zones offered where a file names none, the likeliest first."""
        own = self.tr("your own time ({zone})").format(zone=self._own_zone)
        return [(own, self._own_zone), (self.tr("UTC"), UTC)]

    # filling and reading

    def _show(self, preview: Preview, layout: Layout, titles: list[str]) -> None:
        """Show what was found out about a file; a subclass chooses its columns afterwards."""
        self.preview, self._layout_now = preview, layout
        for box in (self.time, self.clock_column, *self._value_columns()):
            box.clear()
        self.clock_column.addItem(self.tr("in the same column"), NO_COLUMN)
        for number, title in enumerate(titles):
            words = title[:_TITLE_LETTERS] or self.tr("Column {number}").format(number=number + 1)
            for box in (self.time, self.clock_column, *self._value_columns()):
                box.addItem(words, number)
        choose(self.time, layout.time_columns[0])
        apart = layout.time_columns[1] if len(layout.time_columns) == 2 else NO_COLUMN
        choose(self.clock_column, apart)
        self.scale.set_value(layout.scale)
        self.order.set_value(layout.date_order)
        self.order_row.setVisible(preview.is_order_open)
        choose(self.encoding, layout.encoding.removesuffix("-sig"))
        choose(self.delimiter, layout.delimiter)
        self.clock.clear()
        named = zone_in_title(layout)
        if named is not None:
            said = self.tr("{zone}, as the file says").format(zone=named.tzname(None))
            self.clock.addItem(said, named)
            return
        for words, zone in self._own_clocks():
            self.clock.addItem(words, zone)

    def _on_changed(self) -> None:
        if self._is_filling or self._layout_now is None or self.preview is None:
            return
        first, apart = self.time.currentData(), self.clock_column.currentData()
        scale, order = self.scale.value(), self.order.value()
        layout = replace(
            self._layout_now,
            time_columns=(first,) if apart in (NO_COLUMN, first) else (first, apart),
            scale=scale if isinstance(scale, Degrees) else self._layout_now.scale,
            date_order=(
                (order if isinstance(order, DateOrder) else None)
                if self.preview.is_order_open
                else self._layout_now.date_order
            ),
        )
        self._layout_now = self._with_values(layout)
        self.changed.emit()


def combo(name: str, spoken: str = "") -> QComboBox:
    """Make a box that is no wider than it has to be."""
    made = QComboBox()
    made.setObjectName(name)
    made.setAccessibleName(spoken)
    made.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    made.setMinimumContentsLength(12)
    return made
