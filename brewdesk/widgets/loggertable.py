"""The first rows of a logger's file: as they are read, and as they stand in the file."""

from __future__ import annotations

from datetime import UTC, datetime

from PySide6.QtCore import QDate, QLocale, Qt, QTime
from PySide6.QtGui import QColor, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from brewdesk.services.loggerfile import Layout, SampleRow
from brewdesk.services.loggertrouble import RowError
from brewdesk.services.quantities import Quantities
from brewdesk.services.records import Kind
from brewdesk.services.wording.loggers import row_error_words
from brewdesk.widgets.theme import SPACE, tokens

_ROWS_SHOWN = 6


class LoggerTable(QTableWidget):
    """Two columns of what is understood, then the file's own."""

    def __init__(self, quantities: Quantities, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._quantities = quantities
        self.setObjectName("logger_preview")
        self.setAccessibleName(self.tr("The first rows of the file"))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setSectionsClickable(False)
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setStyleSheet(f"QTableView::item {{ padding: 0 {SPACE}px; }}")

    def show_rows(self, rows: tuple[SampleRow, ...], layout: Layout, first_line: int) -> None:
        """Show rows as ``layout`` reads them."""
        width = max([len(row.cells) for row in rows] + [len(layout.titles)])
        titles = [
            layout.titles[n] if n < len(layout.titles) and layout.titles[n]
            else self.tr("Column {number}").format(number=n + 1)
            for n in range(width)
        ]  # fmt: skip
        self.setColumnCount(2 + width)
        self.setHorizontalHeaderLabels(
            [self.tr("Read as time"), self.tr("Read as temperature"), *titles]
        )
        self.setRowCount(len(rows))
        height = QFontMetrics(self.font()).height() + SPACE
        for number, row in enumerate(rows):
            self.setRowHeight(number, height)
            if layout.date_order is None and not row.code:
                self._put(number, 0, self.tr("day or month first?"), tokens().danger)
                self._put(number, 1, "", tokens().ink)
            else:
                self._put_understood(number, row, first_line + number)
            for column in range(width):
                text = row.cells[column] if column < len(row.cells) else ""
                self._put(number, 2 + column, text, tokens().muted)
        self.resizeColumnsToContents()
        self.horizontalHeader().setSectionResizeMode(1 + width, QHeaderView.ResizeMode.Stretch)
        shown = min(len(rows), _ROWS_SHOWN) * height
        self.setMinimumHeight(shown + self.horizontalHeader().sizeHint().height() + SPACE)

    def _put_understood(self, number: int, row: SampleRow, line: int) -> None:
        if row.code:
            self._put(number, 0, row_error_words(RowError(line, row.code, "")), tokens().danger)
            self._put(number, 1, "", tokens().ink)
            return
        assert row.local_s is not None
        assert row.celsius is not None
        at = datetime.fromtimestamp(row.local_s, UTC)  # the file's own clock, as it shows
        date = QLocale().toString(QDate(at.year, at.month, at.day), self.tr("ddd d MMM yyyy"))
        clock = QLocale().toString(
            QTime(at.hour, at.minute, at.second), QLocale.FormatType.ShortFormat
        )
        self._put(number, 0, self.tr("{date}, {time}").format(date=date, time=clock), tokens().ink)
        warm = self._quantities.show(row.celsius, Kind.TEMPERATURE)
        self._put(number, 1, warm, tokens().ink)

    def _put(self, row: int, column: int, text: str, colour: str) -> None:
        item = QTableWidgetItem(text)
        item.setForeground(QColor(colour))
        self.setItem(row, column, item)
