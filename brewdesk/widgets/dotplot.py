"""Batches as dots on a line of days, a row for each group, with the median's mark and band.

One stop for Tab: the arrows go from dot to dot, Enter opens the batch. The words under the
plot say the same as the picture.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QFont,
    QFontMetrics,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from brewdesk.models.plaintip import plain_tip
from brewdesk.services.wording.amounts import number_text
from brewdesk.widgets.dotspec import PlotRow
from brewdesk.widgets.fields import announce
from brewdesk.widgets.theme import SPACE, theme, tokens

DOT_PX = 11
_REACH_PX = 14  # how far from a dot's middle a finger still means it
_MOST_LEVELS = 5
_LABEL_SHARE = 0.36
_TICKS_DAYS = (1, 2, 5, 7, 14, 28, 56, 91, 182)


@dataclass(frozen=True, slots=True)
class _Spot:
    row: int
    number: int
    at: QPointF


class DotPlot(QWidget):
    """Draws `PlotRow`s. ``opened`` carries the key of a dot, ``walked`` the words of one."""

    opened = Signal(int)
    walked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("dot_plot")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._rows: tuple[PlotRow, ...] = ()
        self._spots: list[_Spot] = []
        self._tops: list[float] = []
        self._height = 0.0
        self._current: tuple[int, int] | None = None
        self._last_day = 14.0
        worn = theme()
        if worn is not None:
            worn.changed.connect(self._lay_out)

    def set_rows(self, rows: tuple[PlotRow, ...], name: str, words: str) -> None:
        """Show ``rows``; ``words`` say the same to a screen reader."""
        key = self.current_key()
        self._rows = rows
        self.setAccessibleName(name)
        self.setAccessibleDescription(words)
        self._current = self._place_of(key)
        self._lay_out()

    def rows(self) -> tuple[PlotRow, ...]:
        """Return what is drawn."""
        return self._rows

    def current_key(self) -> int | None:
        """Return the key of the dot that the keyboard is at."""
        if self._current is None:
            return None
        row, number = self._current
        return self._rows[row].dots[number].key

    def spot_of(self, key: int) -> QPointF:
        """Return where the middle of a dot is; raises KeyError for one that is not there."""
        for spot in self._spots:
            if self._rows[spot.row].dots[spot.number].key == key:
                return spot.at
        raise KeyError(key)

    # measures

    def sizeHint(self) -> QSize:
        """Ask for the height that the rows take at this width."""
        return QSize(48 * SPACE, round(self._height))

    def minimumSizeHint(self) -> QSize:
        """Ask for room for a name and a few days."""
        return QSize(36 * SPACE, round(self._height))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Place the dots anew."""
        super().resizeEvent(event)
        self._lay_out()

    def changeEvent(self, event: QEvent) -> None:
        """Place the dots anew when the type size changes."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._lay_out()

    def _label_width(self) -> float:
        metrics = self.fontMetrics()
        widest = max((metrics.horizontalAdvance(row.name) for row in self._rows), default=0)
        small = QFontMetrics(self._small_font())
        widest = max(
            widest, max((small.horizontalAdvance(row.about) for row in self._rows), default=0)
        )
        return min(widest + 2.0 * SPACE, _LABEL_SHARE * self.width())

    def _small_font(self) -> QFont:
        small = QFont(self.font())
        small.setPointSizeF(self.font().pointSizeF() * 0.9)
        return small

    def _axis_height(self) -> float:
        return QFontMetrics(self._small_font()).lineSpacing() + SPACE

    def _x(self, days: float) -> float:
        left, right = self._label_width(), self.width() - 1.5 * SPACE
        share = min(max(days / self._last_day, 0.0), 1.0)
        return left + share * max(right - left, 1.0)

    def _lay_out(self) -> None:
        """Place every dot: beside its neighbours where they would cover one another."""
        longest = max((dot.days for row in self._rows for dot in row.dots), default=14.0)
        self._last_day = max(longest * 1.06, 7.0)
        metrics = self.fontMetrics()
        least = metrics.lineSpacing() + QFontMetrics(self._small_font()).lineSpacing() + 1.5 * SPACE
        self._spots, self._tops = [], []
        top = 0.0
        for number, row in enumerate(self._rows):
            levels = self._levels(row)
            needed = (max(levels, default=0) + 1) * DOT_PX + 2.0 * SPACE
            height = max(least, needed)
            self._tops.append(top)
            middle = top + height / 2.0
            for dot, level in enumerate(levels):
                shift = (level + 1) // 2 * DOT_PX * (1 if level % 2 else -1)
                at = QPointF(self._x(row.dots[dot].days), middle + shift)
                self._spots.append(_Spot(number, dot, at))
            top += height
        self._tops.append(top)
        height = top + self._axis_height()
        if height != self._height:
            self._height = height
            self.updateGeometry()
        self.update()

    def _levels(self, row: PlotRow) -> list[int]:
        """Return for each dot how far from the middle line it stands: 1 is above it, 2 below."""
        ends: list[float] = []  # of the last dot on each level
        levels = [0] * len(row.dots)
        for number in sorted(range(len(row.dots)), key=lambda n: row.dots[n].days):
            x = self._x(row.dots[number].days)
            level = next((n for n, end in enumerate(ends) if x - end >= DOT_PX), len(ends))
            level = min(level, _MOST_LEVELS - 1)
            if level == len(ends):
                ends.append(x)
            else:
                ends[level] = x
            levels[number] = level
        return levels

    # painting

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint rows, bands, dots and days."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_axis(painter)
        for number in range(len(self._rows)):
            self._paint_row(painter, number)
        for spot in self._spots:
            self._paint_dot(painter, spot)

    def _paint_axis(self, painter: QPainter) -> None:
        t = tokens()
        painter.setFont(self._small_font())
        metrics = painter.fontMetrics()
        bottom = self._tops[-1] if self._tops else 0.0
        width = self.width() - self._label_width()
        room = 2.5 * metrics.horizontalAdvance("00")
        step = next(
            (one for one in _TICKS_DAYS if width * one / self._last_day >= room), _TICKS_DAYS[-1]
        )
        day = 0
        while day <= self._last_day:
            x = self._x(day)
            painter.setPen(QPen(QColor(t.line), 1.0))
            painter.drawLine(QPointF(x, 0.0), QPointF(x, bottom))
            painter.setPen(QColor(t.muted))
            words = number_text(float(day), 0)
            wide = metrics.horizontalAdvance(words)
            painter.drawText(QPointF(x - wide / 2.0, bottom + metrics.ascent() + 2.0), words)
            day += step
        words = self.tr("days")
        wide = metrics.horizontalAdvance(words)
        left = self._label_width() - wide - 2.0 * SPACE  # before the zero
        painter.drawText(QPointF(max(left, 0.0), bottom + metrics.ascent() + 2.0), words)

    def _paint_row(self, painter: QPainter, number: int) -> None:
        t, row = tokens(), self._rows[number]
        top, bottom = self._tops[number], self._tops[number + 1]
        middle = (top + bottom) / 2.0
        if number:
            painter.setPen(QPen(QColor(t.line), 1.0))
            painter.drawLine(QPointF(0.0, top), QPointF(float(self.width()), top))
        self._paint_label(painter, row, top, bottom)
        half = (bottom - top) / 2.0 - SPACE / 2.0
        if row.low is not None and row.high is not None:
            left, right = self._x(row.low), self._x(min(row.high, self._last_day))
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(t.band_outer))
            painter.drawRect(QRectF(left, middle - half, max(right - left, 1.0), 2.0 * half))
        if row.median is not None:
            x = self._x(row.median)
            painter.setPen(QPen(QColor(t.ink), 2.5))
            painter.drawLine(QPointF(x, middle - half), QPointF(x, middle + half))
        if row.guess is not None:
            x, size = self._x(row.guess), 5.0
            y = bottom - SPACE / 2.0
            painter.setPen(QPen(QColor(t.ink), 1.5))
            painter.setBrush(QColor(t.surface))
            painter.drawPolygon(
                QPolygonF(
                    [
                        QPointF(x, y - size),
                        QPointF(x + size, y),
                        QPointF(x, y + size),
                        QPointF(x - size, y),
                    ]
                )
            )

    def _paint_label(self, painter: QPainter, row: PlotRow, top: float, bottom: float) -> None:
        t = tokens()
        width = self._label_width() - 1.5 * SPACE
        painter.setFont(self.font())
        name_metrics = painter.fontMetrics()
        small = QFontMetrics(self._small_font())
        height = name_metrics.lineSpacing() + small.lineSpacing()
        y = (top + bottom - height) / 2.0 + name_metrics.ascent()
        painter.setPen(QColor(t.ink))
        elide = Qt.TextElideMode.ElideRight
        painter.drawText(QPointF(0.0, y), name_metrics.elidedText(row.name, elide, int(width)))
        painter.setFont(self._small_font())
        painter.setPen(QColor(t.muted))
        painter.drawText(
            QPointF(0.0, y + name_metrics.descent() + small.ascent() + 1.0),
            small.elidedText(row.about, elide, int(width)),
        )

    def _paint_dot(self, painter: QPainter, spot: _Spot) -> None:
        t, dot = tokens(), self._rows[spot.row].dots[spot.number]
        radius = DOT_PX / 2.0 - 1.0
        if dot.is_open:
            painter.setPen(QPen(QColor(t.accent), 1.6))
            painter.setBrush(QColor(t.surface))
            painter.drawEllipse(spot.at, radius, radius)
            tail = spot.at + QPointF(radius + 5.0, 0.0)
            painter.drawLine(spot.at + QPointF(radius, 0.0), tail)
            painter.drawLine(tail, tail + QPointF(-3.0, -3.0))
            painter.drawLine(tail, tail + QPointF(-3.0, 3.0))
        else:
            painter.setPen(QPen(QColor(t.surface), 1.0))
            painter.setBrush(QColor(t.accent))
            painter.drawEllipse(spot.at, radius, radius)
        if self.hasFocus() and self._current == (spot.row, spot.number):
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(t.ink), 2.0))
            painter.drawEllipse(spot.at, radius + 4.0, radius + 4.0)

    # mouse and keyboard

    def event(self, event: QEvent) -> bool:
        """Say of a dot under the mouse what it is."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            spot = self._spot_near(QPointF(event.pos()))
            if spot is not None:
                words = self._rows[spot.row].dots[spot.number].words
                QToolTip.showText(event.globalPos(), plain_tip(words), self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Show that a dot can be pressed."""
        is_near = self._spot_near(event.position()) is not None
        self.setCursor(Qt.CursorShape.PointingHandCursor if is_near else Qt.CursorShape.ArrowCursor)
        super().mouseMoveEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Go to a dot."""
        spot = self._spot_near(event.position())
        if spot is not None and event.button() == Qt.MouseButton.LeftButton:
            self._go(spot.row, spot.number)
        super().mousePressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Open the batch of a dot."""
        spot = self._spot_near(event.position())
        if spot is not None and event.button() == Qt.MouseButton.LeftButton:
            self.opened.emit(self._rows[spot.row].dots[spot.number].key)
        super().mouseReleaseEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Begin at the first dot."""
        super().focusInEvent(event)
        if self._current is None:
            row = next((n for n, row in enumerate(self._rows) if row.dots), None)
            if row is not None:
                self._go(row, self._in_order(row)[0])
        else:
            self._tell()
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Take the mark away."""
        super().focusOutEvent(event)
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Walk the dots by days, the rows up and down; Enter opens."""
        if self._current is None:
            super().keyPressEvent(event)
            return
        row, number = self._current
        order = self._in_order(row)
        here = order.index(number)
        key = event.key()
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.opened.emit(self._rows[row].dots[number].key)
        elif key == Qt.Key.Key_Left:
            self._go(row, order[max(here - 1, 0)])
        elif key == Qt.Key.Key_Right:
            self._go(row, order[min(here + 1, len(order) - 1)])
        elif key == Qt.Key.Key_Home:
            self._go(row, order[0])
        elif key == Qt.Key.Key_End:
            self._go(row, order[-1])
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._go_beside(row, number, -1 if key == Qt.Key.Key_Up else 1)
        else:
            super().keyPressEvent(event)

    def _go_beside(self, row: int, number: int, way: int) -> None:
        """Go to the dot nearest in days in the next row that has any."""
        days = self._rows[row].dots[number].days
        row += way
        while 0 <= row < len(self._rows):
            dots = self._rows[row].dots
            if dots:
                self._go(row, min(range(len(dots)), key=lambda n: abs(dots[n].days - days)))
                return
            row += way

    def _go(self, row: int, number: int) -> None:
        self._current = (row, number)
        self._tell()
        self.update()

    def _tell(self) -> None:
        if self._current is not None:
            row, number = self._current
            words = f"{self._rows[row].name}: {self._rows[row].dots[number].words}"
            self.walked.emit(words)
            announce(self, words)

    def _in_order(self, row: int) -> list[int]:
        dots = self._rows[row].dots
        return sorted(range(len(dots)), key=lambda n: (dots[n].days, n))

    def _place_of(self, key: int | None) -> tuple[int, int] | None:
        for row, found in enumerate(self._rows):
            for number, dot in enumerate(found.dots):
                if key is not None and dot.key == key:
                    return row, number
        return None

    def _spot_near(self, at: QPointF) -> _Spot | None:
        def distance(spot: _Spot) -> float:
            gap = spot.at - at
            return float((gap.x() ** 2 + gap.y() ** 2) ** 0.5)

        nearest = min(self._spots, key=distance, default=None)
        return nearest if nearest is not None and distance(nearest) <= _REACH_PX else None
