"""How often it was too little, right, too much: a bar of three parts for each group."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.widgets.theme import SPACE, theme, tokens

_LABEL_SHARE = 0.4


@dataclass(frozen=True, slots=True, kw_only=True)
class TallyRow:
    """One bar: counts of under, right and over."""

    name: str
    counts: tuple[int, int, int]


class TallyBars(QWidget):
    """Draws `TallyRow`s. All bars are of one length: each shows shares, with its counts."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("tally_bars")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._rows: tuple[TallyRow, ...] = ()
        self._heads: tuple[str, str, str] = ("", "", "")
        worn = theme()
        if worn is not None:
            worn.changed.connect(self.updateGeometry)

    def set_rows(
        self, rows: tuple[TallyRow, ...], heads: tuple[str, str, str], name: str, words: str
    ) -> None:
        """Show ``rows``; ``heads`` name the three parts, ``words`` say it to a screen reader."""
        self._rows, self._heads = rows, heads
        self.setAccessibleName(name)
        self.setAccessibleDescription(words)
        self.updateGeometry()
        self.update()

    def rows(self) -> tuple[TallyRow, ...]:
        """Return what is drawn."""
        return self._rows

    def sizeHint(self) -> QSize:
        """Ask for a line for the legend and one for each bar."""
        legend = self._legend_lines() * (QFontMetrics(self._small()).lineSpacing() + 2)
        height = legend + SPACE + len(self._rows) * self._row_height()
        return QSize(44 * SPACE, round(height))

    def minimumSizeHint(self) -> QSize:
        """Ask for the height, and room for a name and a short bar."""
        return QSize(28 * SPACE, self.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Ask anew: how many lines the legend takes depends on the width."""
        super().resizeEvent(event)
        self.updateGeometry()

    def changeEvent(self, event: QEvent) -> None:
        """Ask anew when the type size changes."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self.updateGeometry()

    def _small(self) -> QFont:
        small = QFont(self.font())
        small.setPointSizeF(self.font().pointSizeF() * 0.9)
        return small

    def _row_height(self) -> float:
        return self.fontMetrics().lineSpacing() + SPACE

    def _legend_lines(self) -> int:
        metrics = QFontMetrics(self._small())
        wide = sum(metrics.horizontalAdvance(head) + 3.5 * SPACE for head in self._heads)
        return 1 if wide <= max(self.width(), 28 * SPACE) else 3

    def _colours(self) -> tuple[QColor, QColor, QColor]:
        t = tokens()
        return QColor(t.window), QColor(t.band_inner), QColor(t.danger_soft)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint legend, names and bars."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        top = self._paint_legend(painter)
        painter.setFont(self.font())
        metrics = painter.fontMetrics()
        names = [metrics.horizontalAdvance(row.name) for row in self._rows]
        left = min(max(names, default=0) + 1.5 * SPACE, _LABEL_SHARE * self.width())
        for row in self._rows:
            self._paint_row(painter, row, left, top)
            top += self._row_height()

    def _paint_legend(self, painter: QPainter) -> float:
        painter.setFont(self._small())
        t, metrics = tokens(), painter.fontMetrics()
        one_line = self._legend_lines() == 1
        x, y = 0.0, 0.0
        for head, colour in zip(self._heads, self._colours(), strict=True):
            painter.setPen(QPen(QColor(t.edge), 1.0))
            painter.setBrush(colour)
            side = metrics.ascent() * 0.8
            painter.drawRect(QRectF(x + 0.5, y + metrics.ascent() - side + 1.5, side, side))
            painter.setPen(QColor(t.muted))
            painter.drawText(QPointF(x + side + SPACE, y + metrics.ascent() + 1.0), head)
            if one_line:
                x += metrics.horizontalAdvance(head) + 3.5 * SPACE
            else:
                y += metrics.lineSpacing() + 2
        return (y if not one_line else y + metrics.lineSpacing() + 2) + SPACE

    def _paint_row(self, painter: QPainter, row: TallyRow, left: float, top: float) -> None:
        t, metrics = tokens(), painter.fontMetrics()
        height = self._row_height() - SPACE / 2.0
        baseline = top + (height + metrics.ascent() - metrics.descent()) / 2.0
        painter.setPen(QColor(t.ink))
        name = metrics.elidedText(row.name, Qt.TextElideMode.ElideRight, int(left - SPACE))
        painter.drawText(QPointF(0.0, baseline), name)
        total = sum(row.counts)
        room = self.width() - left - 1.0
        x = left
        for count, colour in zip(row.counts, self._colours(), strict=True):
            wide = room * count / total if total else 0.0
            if count:
                painter.setPen(QPen(QColor(t.edge), 1.0))
                painter.setBrush(colour)
                painter.drawRect(QRectF(x + 0.5, top + 0.5, wide - 1.0, height - 1.0))
                words = str(count)
                if metrics.horizontalAdvance(words) + 4 <= wide:
                    painter.setPen(QColor(t.ink))
                    shift = (wide - metrics.horizontalAdvance(words)) / 2.0
                    painter.drawText(QPointF(x + shift, baseline), words)
            x += wide
