"""How a logger's file is to be read: columns, dates, scale, clock; open to change."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timezone, tzinfo

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QVBoxLayout, QWidget

from brewdesk.services.loggerfile import Layout, Preview, with_temperature_column, zone_in_title
from brewdesk.services.loggerlines import DELIMITERS, ENCODINGS
from brewdesk.services.loggertext import DateOrder, Degrees
from brewdesk.widgets.choicebar import ChoiceBar
from brewdesk.widgets.fields import Disclosure, FieldRow, choose
from brewdesk.widgets.theme import SPACE

_NO_COLUMN = -1
_TITLE_LETTERS = 28


class LoggerChoices(QWidget):
    """The choices for one file.

    ``changed`` says that the layout is another; ``look_again`` that the file has to be
    examined anew with another encoding or delimiter.
    """

    changed = Signal()
    look_again = Signal()

    def __init__(self, zone: tzinfo, now: datetime, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._zone = zone
        self._now = now
        self._preview: Preview | None = None
        self._layout_now: Layout | None = None
        self._is_filling = False
        self._make()
        self._lay_out()
        self._connect()

    def set_preview(self, preview: Preview) -> None:
        """Show what was found out about a file."""
        self._preview = preview
        self._layout_now = preview.layout
        self._is_filling = True
        self._fill(preview.layout)
        self.order_row.setVisible(preview.is_order_open)
        self.order.set_value(None)
        self._is_filling = False

    def layout_now(self) -> Layout | None:
        """Return the layout as chosen."""
        return self._layout_now

    def zone(self) -> tzinfo:
        """Return the zone of the logger's clock."""
        zone = self.clock.currentData()
        return zone if isinstance(zone, tzinfo) else self._zone

    def reading_as(self) -> tuple[str, str]:
        """Return the encoding and the delimiter chosen."""
        return str(self.encoding.currentData()), str(self.delimiter.currentData())

    # making

    def _make(self) -> None:
        self.time = _combo("logger_time")
        self.clock_column = _combo("logger_clock_column")
        self.temperature = _combo("logger_temperature")
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
        self.order.setObjectName("logger_order")
        self.clock = _combo("logger_zone")
        self.encoding = _combo("logger_encoding")
        for name in ENCODINGS:
            self.encoding.addItem(name.upper(), name)
        self.delimiter = _combo("logger_delimiter")
        names = {
            ";": self.tr("Semicolon ;"),
            "\t": self.tr("Tab"),
            "|": self.tr("Bar |"),
            ",": self.tr("Comma ,"),
        }
        for mark in DELIMITERS:
            self.delimiter.addItem(names[mark], mark)

    def _lay_out(self) -> None:
        self.order_row = FieldRow(self.tr("In the dates"), self.order, lines=1)
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE)
        rows = (
            FieldRow(self.tr("&Time"), self.time, lines=0),
            FieldRow(self.tr("Time of &day, if apart"), self.clock_column, lines=0),
            FieldRow(self.tr("T&emperature"), self.temperature, lines=0),
            FieldRow(self.tr("Temperatures in"), self.scale, lines=0),
        )
        for number, row in enumerate(rows):
            grid.addWidget(row, 0, number)
            grid.setColumnStretch(number, 1)
        grid.addWidget(
            FieldRow(self.tr("The logger's &clock shows"), self.clock, lines=0), 1, 0, 1, 2
        )
        grid.addWidget(self.order_row, 1, 2, 1, 2)
        self.more = Disclosure(self.tr("How the file is written"))
        inner = QGridLayout(self.more.body)
        inner.setContentsMargins(0, 0, 0, 0)
        inner.setHorizontalSpacing(2 * SPACE)
        inner.addWidget(FieldRow(self.tr("Columns are parted by"), self.delimiter, lines=0), 0, 0)
        inner.addWidget(FieldRow(self.tr("Letters are written as"), self.encoding, lines=0), 0, 1)
        inner.setColumnStretch(2, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACE)
        column.addLayout(grid)
        column.addWidget(self.more)

    def _connect(self) -> None:
        for combo in (self.time, self.clock_column, self.temperature, self.clock):
            combo.currentIndexChanged.connect(self._on_changed)
        self.temperature.currentIndexChanged.connect(self._on_temperature)
        self.scale.chosen.connect(self._on_changed)
        self.order.chosen.connect(self._on_changed)
        self.encoding.activated.connect(self.look_again)
        self.delimiter.activated.connect(self.look_again)

    def _fill(self, layout: Layout) -> None:
        titles = [
            title[:_TITLE_LETTERS] or self.tr("Column {number}").format(number=number)
            for number, title in enumerate(layout.titles, 1)
        ]
        for combo in (self.time, self.clock_column, self.temperature):
            combo.clear()
        self.clock_column.addItem(self.tr("in the same column"), _NO_COLUMN)
        for number, title in enumerate(titles):
            for combo in (self.time, self.clock_column, self.temperature):
                combo.addItem(title, number)
        choose(self.time, layout.time_columns[0])
        apart = layout.time_columns[1] if len(layout.time_columns) == 2 else _NO_COLUMN
        choose(self.clock_column, apart)
        choose(self.temperature, layout.temperature_column)
        self.scale.set_value(layout.scale)
        choose(self.encoding, layout.encoding.removesuffix("-sig"))
        choose(self.delimiter, layout.delimiter)
        self._fill_clocks(layout)

    def _fill_clocks(self, layout: Layout) -> None:
        self.clock.clear()
        named = zone_in_title(layout)
        if named is not None:
            self.clock.addItem(
                self.tr("{zone}, as the file says").format(zone=named.tzname(None)), named
            )
            return
        self.clock.addItem(self.tr("your own time ({zone})").format(zone=self._zone), self._zone)
        winter = _standard_time(self._zone, self._now)
        self.clock.addItem(
            self.tr("your own time without summer time ({zone})").format(zone=winter.tzname(None)),
            winter,
        )
        self.clock.addItem(self.tr("UTC"), UTC)

    def _on_temperature(self) -> None:
        """Look anew whether another column is in degrees Fahrenheit."""
        if self._is_filling or self._preview is None or self._layout_now is None:
            return
        column = self.temperature.currentData()
        other = with_temperature_column(self._preview, self._layout_now, column)
        self.scale.set_value(other.scale)
        self._on_changed()

    def _on_changed(self) -> None:
        if self._is_filling or self._layout_now is None or self._preview is None:
            return
        apart = self.clock_column.currentData()
        first = self.time.currentData()
        scale, order = self.scale.value(), self.order.value()
        self._layout_now = replace(
            self._layout_now,
            time_columns=(first,) if apart in (_NO_COLUMN, first) else (first, apart),
            temperature_column=self.temperature.currentData(),
            scale=scale if isinstance(scale, Degrees) else self._layout_now.scale,
            date_order=(
                (order if isinstance(order, DateOrder) else None)
                if self._preview.is_order_open
                else self._layout_now.date_order
            ),
        )
        self.changed.emit()


def _combo(name: str) -> QComboBox:
    combo = QComboBox()
    combo.setObjectName(name)
    combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    combo.setMinimumContentsLength(12)
    return combo


def _standard_time(zone: tzinfo, now: datetime) -> timezone:
    """Return the zone's offset outside of summer time, this year."""
    months = (now.replace(month=month, day=1) for month in range(1, 13))
    offsets = [at.astimezone(zone).utcoffset() for at in months]
    return timezone(min(offset for offset in offsets if offset is not None))
