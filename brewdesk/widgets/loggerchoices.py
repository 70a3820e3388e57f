"""How a logger's file is to be read: columns, dates, scale, clock; open to change."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timezone, tzinfo

from PySide6.QtWidgets import QComboBox, QGridLayout, QVBoxLayout, QWidget

from brewdesk.services.loggerfile import Layout, Preview, with_temperature_column
from brewdesk.widgets.fields import Disclosure, FieldRow, choose
from brewdesk.widgets.tablechoices import TableChoices, combo
from brewdesk.widgets.theme import SPACE


class LoggerChoices(TableChoices):
    """The choices for one file."""

    def __init__(self, zone: tzinfo, now: datetime, parent: QWidget | None = None) -> None:
        super().__init__("logger", zone, parent)
        self._now = now
        self.temperature = combo("logger_temperature")
        self._lay_out()
        # The scale is looked up before the change is told.
        self.temperature.currentIndexChanged.connect(self._on_temperature)
        self._listen()

    def set_preview(self, preview: Preview) -> None:
        """Show what was found out about a file."""
        self._is_filling = True
        self._show(preview, preview.layout, list(preview.layout.titles))
        choose(self.temperature, preview.layout.temperature_column)
        self._is_filling = False

    def _lay_out(self) -> None:
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

    def _value_columns(self) -> Iterable[QComboBox]:
        return (self.temperature,)

    def _with_values(self, layout: Layout) -> Layout:
        return replace(layout, temperature_column=self.temperature.currentData())

    def _own_clocks(self) -> list[tuple[str, tzinfo]]:
        winter = _standard_time(self._own_zone, self._now)
        words = self.tr("your own time without summer time ({zone})")
        own, *others = super()._own_clocks()
        return [own, (words.format(zone=winter.tzname(None)), winter), *others]

    def _on_temperature(self) -> None:
        """Look anew whether another column is in degrees Fahrenheit."""
        if self._is_filling or self.preview is None or self._layout_now is None:
            return
        column = self.temperature.currentData()
        other = with_temperature_column(self.preview, self._layout_now, column)
        self.scale.set_value(other.scale)


def _standard_time(zone: tzinfo, now: datetime) -> timezone:
    """Return the zone's offset outside of summer time, this year."""
    months = (now.replace(month=month, day=1) for month in range(1, 13))
    offsets = [at.astimezone(zone).utcoffset() for at in months]
    return timezone(min(offset for offset in offsets if offset is not None))
