"""The first rows of a table of readings: as they are understood, and as they stand there."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from brewdesk.services.loggerfile import Preview
from brewdesk.services.quantities import Quantities
from brewdesk.services.readingsfile import Choice, sample_row
from brewdesk.services.wording.acts import reading_text
from brewdesk.services.wording.readingsfile import cell_error_words
from brewdesk.widgets.previewtable import PreviewTable, padded_titles
from brewdesk.widgets.theme import tokens

_ROWS_SEEN = 4


class ReadingsTable(PreviewTable):
    """The time and the readings of each row, then the file's own columns."""

    def __init__(self, quantities: Quantities, parent: QWidget | None = None) -> None:
        super().__init__("readings_file_preview", "", parent)
        self.setAccessibleName(self.tr("The first rows, as they are understood"))
        self._quantities = quantities

    def show_rows(self, preview: Preview, choice: Choice) -> None:
        """Show rows as ``choice`` reads them."""
        titles = padded_titles(choice.layout, preview.rows)
        self.begin((self.tr("Read as time"), self.tr("Read as")), titles, len(preview.rows))
        for number, cells in enumerate(preview.rows):
            line = choice.layout.first_line + number
            local_s, values, errors = sample_row(cells, choice, line)
            said = ", ".join(
                reading_text(
                    {"quantity": v.quantity.value, "value": v.value, "text": v.text},
                    self._quantities.show,
                )
                for v in values
            )
            wrong = "; ".join(map(cell_error_words, errors))
            colour = tokens().danger if errors else tokens().ink
            self.put(number, 0, "" if local_s is None else self.stamp(local_s), tokens().ink)
            self.put(number, 1, "; ".join(filter(None, (said, wrong))), colour)
            self.put_cells(number, cells)
        self.resizeColumnsToContents()
        self.setMinimumHeight(_ROWS_SEEN * self.row_px)
