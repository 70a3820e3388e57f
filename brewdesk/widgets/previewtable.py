"""The first rows of a table in a file: as they are understood, then as they stand there."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime

from PySide6.QtCore import QDate, QLocale, Qt, QTime
from PySide6.QtGui import QColor, QFontMetrics
from PySide6.QtWidgets import QAbstractItemView, QTableWidget, QTableWidgetItem, QWidget

from brewdesk.services.loggerfile import Layout
from brewdesk.widgets.theme import SPACE, tokens

UNDERSTOOD = 2  # the columns before the file's own


class PreviewTable(QTableWidget):
    """Two columns of what is understood, then the file's own, muted. Nothing can be changed."""

    def __init__(self, name: str, spoken: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName(name)
        self.setAccessibleName(spoken)
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

    @property
    def row_px(self) -> int:
        """Height of a row."""
        return QFontMetrics(self.font()).height() + SPACE

    def begin(self, understood: tuple[str, str], titles: Sequence[str], rows: int) -> None:
        """Make room for rows of a file with these columns."""
        own = [
            title or self.tr("Column {number}").format(number=number)
            for number, title in enumerate(titles, 1)
        ]
        self.setColumnCount(UNDERSTOOD + len(own))
        self.setHorizontalHeaderLabels([*understood, *own])
        self.setRowCount(rows)
        for number in range(rows):
            self.setRowHeight(number, self.row_px)

    def put_cells(self, row: int, cells: Sequence[str]) -> None:
        """Show a row as it stands in the file."""
        for column in range(self.columnCount() - UNDERSTOOD):
            text = cells[column] if column < len(cells) else ""
            self.put(row, UNDERSTOOD + column, text, tokens().muted)

    def put(self, row: int, column: int, text: str, colour: str) -> None:
        """Show one cell, on one line."""
        item = QTableWidgetItem(" ".join(text.split()))
        item.setForeground(QColor(colour))
        self.setItem(row, column, item)

    def stamp(self, local_s: float) -> str:
        """Write a time by the file's own clock."""
        at = datetime.fromtimestamp(local_s, UTC)  # no zone is meant
        date = QLocale().toString(QDate(at.year, at.month, at.day), self.tr("ddd d MMM yyyy"))
        clock = QLocale().toString(
            QTime(at.hour, at.minute, at.second), QLocale.FormatType.ShortFormat
        )
        return self.tr("{date}, {time}").format(date=date, time=clock)


def padded_titles(layout: Layout, rows: Sequence[Sequence[str]]) -> list[str]:
    """Return a title for each column that any row has; empty where the file gives none."""
    width = max([len(layout.titles), *(len(row) for row in rows)])
    return [*layout.titles, *[""] * (width - len(layout.titles))]
