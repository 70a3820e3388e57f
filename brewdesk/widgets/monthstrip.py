"""Months side by side: how warm, how fast, how many begun, how much drunk.

Columns are as wide as their numbers need; where there is no room for all, the newest stay.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.widgets.theme import SPACE, theme, tokens

_BAR_LINES = 2.2  # how high a bar may get, in lines


@dataclass(frozen=True, slots=True, kw_only=True)
class StripCell:
    """One number of a month: what it reads, and how long its bar is, from 0 to 1."""

    text: str = ""
    share: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class StripRow:
    """One row: what it is about, and a cell for each month."""

    name: str
    cells: tuple[StripCell, ...]
    is_warmth: bool = False


class MonthStrip(QWidget):
    """Draws `StripRow`s under the names of months."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("month_strip")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._months: tuple[str, ...] = ()
        self._rows: tuple[StripRow, ...] = ()
        worn = theme()
        if worn is not None:
            worn.changed.connect(self.updateGeometry)

    def set_rows(
        self, months: tuple[str, ...], rows: tuple[StripRow, ...], name: str, words: str
    ) -> None:
        """Show ``rows``; ``words`` say the same to a screen reader."""
        self._months, self._rows = months, rows
        self.setAccessibleName(name)
        self.setAccessibleDescription(words)
        self.updateGeometry()
        self.update()

    def shown_months(self) -> int:
        """Return how many of the months there is room for, the newest."""
        room = self.width() - self._label_width()
        return max(1, min(len(self._months), int(room // self._least_column())))

    def sizeHint(self) -> QSize:
        """Ask for a line for the months and a row for each number."""
        width = self._label_width() + self._least_column() * max(len(self._months), 1)
        return QSize(round(width), round(self._top() + self._row_height() * len(self._rows)))

    def minimumSizeHint(self) -> QSize:
        """Ask for the height alone: months that find no room are left out."""
        width = self._label_width() + 3.0 * self._least_column()
        return QSize(round(width), self.sizeHint().height())

    def changeEvent(self, event: QEvent) -> None:
        """Ask anew when the type size changes."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self.updateGeometry()

    def _small(self) -> QFont:
        small = QFont(self.font())
        small.setPointSizeF(self.font().pointSizeF() * 0.9)
        return small

    def _metrics(self) -> QFontMetrics:
        return QFontMetrics(self._small())

    def _label_width(self) -> float:
        metrics = self._metrics()
        widest = max((metrics.horizontalAdvance(row.name) for row in self._rows), default=0)
        return widest + 1.5 * SPACE

    def _least_column(self) -> float:
        metrics = self._metrics()
        texts = [*self._months, *(cell.text for row in self._rows for cell in row.cells)]
        widest = max((metrics.horizontalAdvance(text) for text in texts), default=0)
        return widest + SPACE

    def _top(self) -> float:
        return self._metrics().lineSpacing() + SPACE

    def _row_height(self) -> float:
        return (_BAR_LINES + 1.0) * self._metrics().lineSpacing() + SPACE

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint months, bars and numbers."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._small())
        shown = self.shown_months()
        left = self._label_width()
        column = min((self.width() - left) / shown, 2.0 * self._least_column() + SPACE)
        first = len(self._months) - shown
        t, metrics = tokens(), painter.fontMetrics()
        for number in range(shown):
            x = left + number * column
            painter.setPen(QColor(t.muted))
            _centred(painter, self._months[first + number], x, column, float(metrics.ascent()))
        for place, row in enumerate(self._rows):
            top = self._top() + place * self._row_height()
            painter.setPen(QPen(QColor(t.line), 1.0))
            painter.drawLine(QPointF(0.0, top), QPointF(left + shown * column, top))
            painter.setPen(QColor(t.ink))
            base = top + self._row_height() - SPACE / 2.0
            painter.drawText(QPointF(0.0, base - metrics.descent()), row.name)
            for number in range(shown):
                cell = row.cells[first + number]
                self._paint_cell(painter, cell, row, left + number * column, column, base)

    def _paint_cell(
        self,
        painter: QPainter,
        cell: StripCell,
        row: StripRow,
        left: float,
        width: float,
        base: float,
    ) -> None:
        if not cell.text:
            return
        t, metrics = tokens(), painter.fontMetrics()
        height = max(cell.share * _BAR_LINES * metrics.lineSpacing(), 2.0)
        colour = QColor(t.window if row.is_warmth else t.band_inner)
        wide = min(width - SPACE, 4.0 * SPACE)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawRect(QRectF(left + (width - wide) / 2.0, base - height, wide, height))
        painter.setPen(QColor(t.ink))
        _centred(painter, cell.text, left, width, base - height - metrics.descent() - 1.0)


def _centred(painter: QPainter, text: str, left: float, width: float, baseline: float) -> None:
    wide = painter.fontMetrics().horizontalAdvance(text)
    painter.drawText(QPointF(left + (width - wide) / 2.0, baseline), text)
