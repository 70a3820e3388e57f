"""The first rows of a logger's file: as they are read, and as they stand in the file."""

from __future__ import annotations

from PySide6.QtWidgets import QHeaderView, QWidget

from brewdesk.services.loggerfile import Layout, SampleRow
from brewdesk.services.loggertrouble import RowError
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind
from brewdesk.services.wording.loggers import row_error_words
from brewdesk.widgets.previewtable import PreviewTable, padded_titles
from brewdesk.widgets.theme import SPACE, tokens

_ROWS_SHOWN = 6


class LoggerTable(PreviewTable):
    """The time and the temperature of each row, then the file's own columns."""

    def __init__(self, quantities: Quantities, parent: QWidget | None = None) -> None:
        super().__init__("logger_preview", "", parent)
        self.setAccessibleName(self.tr("The first rows of the file"))
        self._quantities = quantities

    def show_rows(self, rows: tuple[SampleRow, ...], layout: Layout, first_line: int) -> None:
        """Show rows as ``layout`` reads them."""
        titles = padded_titles(layout, [row.cells for row in rows])
        self.begin((self.tr("Read as time"), self.tr("Read as temperature")), titles, len(rows))
        for number, row in enumerate(rows):
            if layout.date_order is None and not row.code:
                self.put(number, 0, self.tr("day or month first?"), tokens().danger)
                self.put(number, 1, "", tokens().ink)
            else:
                self._put_understood(number, row, first_line + number)
            self.put_cells(number, row.cells)
        self.resizeColumnsToContents()
        last = self.columnCount() - 1
        self.horizontalHeader().setSectionResizeMode(last, QHeaderView.ResizeMode.Stretch)
        shown = min(len(rows), _ROWS_SHOWN) * self.row_px
        self.setMinimumHeight(shown + self.horizontalHeader().sizeHint().height() + SPACE)

    def _put_understood(self, number: int, row: SampleRow, line: int) -> None:
        if row.code:
            self.put(number, 0, row_error_words(RowError(line, row.code, "")), tokens().danger)
            self.put(number, 1, "", tokens().ink)
            return
        assert row.local_s is not None
        assert row.celsius is not None
        self.put(number, 0, self.stamp(row.local_s), tokens().ink)
        warm = self._quantities.show(row.celsius, Kind.TEMPERATURE)
        self.put(number, 1, warm, tokens().ink)
