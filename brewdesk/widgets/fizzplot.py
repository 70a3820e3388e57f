"""The pressure in bottles by day: a band, its likely course, the ceiling, the day to chill by.

Painted by hand: a band and three lines need no plotting library. The words beside it say
the same for those who cannot see it.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.services.wording.amounts import number_text
from brewdesk.widgets.theme import RADIUS, SPACE, tokens

TOP_BAR = 8.0  # what is above is told as "over 8 bar"
_LEAST_TOP_BAR = 4.5
_TICK_BARS = 1.0
_LEAST_HEIGHT_LINES = 13


@dataclass(frozen=True, slots=True, kw_only=True)
class FizzSpec:
    """What the picture shows. Days count from filling; pressures are gauge pressures [bar]."""

    days: tuple[float, ...]
    low: tuple[float, ...]
    likely: tuple[float, ...]
    high: tuple[float, ...]
    last_day: float
    ceiling_bar: float | None = None
    ceiling_words: str = ""
    chill_by_day: float | None = None
    chill_words: str = ""
    now_day: float | None = None
    now_words: str = ""
    points: tuple[tuple[float, float], ...] = ()  # gauges that were read: day, bar


class FizzPlot(QWidget):
    """Draws a `FizzSpec`; without one, nothing."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._spec: FizzSpec | None = None
        self.setObjectName("fizz_plot")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_spec(self, spec: FizzSpec | None, words: str = "") -> None:
        """Show ``spec``; ``words`` say the same to a screen reader."""
        self._spec = spec
        self.setAccessibleName(self.tr("Pressure by day"))
        self.setAccessibleDescription(words)
        self.update()

    def spec(self) -> FizzSpec | None:
        """Return what is drawn."""
        return self._spec

    def sizeHint(self) -> QSize:
        """Ask for as many lines as the labels need."""
        return QSize(420, self.fontMetrics().lineSpacing() * _LEAST_HEIGHT_LINES)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint band, lines and labels."""
        if self._spec is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        # its own ground: a card may be tinted by how urgent it is
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tokens().surface))
        painter.drawRoundedRect(QRectF(self.rect()), RADIUS / 2, RADIUS / 2)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        room = QRectF(self.rect()).adjusted(SPACE / 2, SPACE / 2, -SPACE / 2, -SPACE / 2)
        _Picture(painter, self._spec, room, self.font()).draw(
            self.tr("bar"), self.tr("days in the bottle")
        )


class _Picture:
    """One drawing: where days and pressures lie on the widget."""

    def __init__(self, painter: QPainter, spec: FizzSpec, room: QRectF, font: QFont) -> None:
        self._painter, self._spec = painter, spec
        small = QFont(font)
        small.setPointSizeF(font.pointSizeF() * 0.9)
        painter.setFont(small)
        self._metrics = painter.fontMetrics()
        line = self._metrics.height()
        left = self._metrics.horizontalAdvance("8.0") + 1.5 * SPACE
        self._plot = room.adjusted(left, line + SPACE, -SPACE, -2 * line - SPACE)
        ceiling = spec.ceiling_bar or 0.0
        highest = max((*spec.high, ceiling * 1.25, _LEAST_TOP_BAR))
        self._top_bar = min(float(ceil(highest)), TOP_BAR)

    def draw(self, unit: str, day_words: str) -> None:
        self._axes(unit, day_words)
        self._painter.save()
        self._painter.setClipRect(self._plot)
        self._band()
        self._painter.restore()
        self._ceiling()
        self._chill_by()
        self._now()
        self._points()

    def _x(self, day: float) -> float:
        share = min(max(day / self._spec.last_day, 0.0), 1.0)
        return self._plot.left() + share * self._plot.width()

    def _y(self, bar: float) -> float:
        share = min(max(bar / self._top_bar, 0.0), 1.0)
        return self._plot.bottom() - share * self._plot.height()

    def _axes(self, unit: str, day_words: str) -> None:
        t, painter, metrics = tokens(), self._painter, self._metrics
        bar = 0.0
        while bar <= self._top_bar + 1e-9:
            y = self._y(bar)
            painter.setPen(QPen(QColor(t.line), 1.0))
            painter.drawLine(QPointF(self._plot.left(), y), QPointF(self._plot.right(), y))
            painter.setPen(QColor(t.muted))
            words = number_text(bar, 0)
            wide = metrics.horizontalAdvance(words)
            painter.drawText(
                QPointF(self._plot.left() - wide - SPACE / 2, y + metrics.ascent() / 2 - 1), words
            )
            bar += _TICK_BARS if self._top_bar <= 5.0 else 2.0 * _TICK_BARS
        painter.drawText(QPointF(SPACE / 2, float(metrics.ascent()) + SPACE / 2), unit)
        step = next(
            (one for one in (1, 2, 5, 7, 14) if self._spec.last_day / one <= 10),
            28,
        )
        baseline = self._plot.bottom() + metrics.ascent() + SPACE
        for day in range(0, int(self._spec.last_day) + 1, step):
            words = str(day)
            wide = metrics.horizontalAdvance(words)
            painter.drawText(QPointF(self._x(day) - wide / 2, baseline), words)
        wide = metrics.horizontalAdvance(day_words)
        painter.drawText(
            QPointF(self._plot.right() - wide, baseline + metrics.lineSpacing()), day_words
        )

    def _band(self) -> None:
        t, spec, painter = tokens(), self._spec, self._painter
        upper, lower, middle = (self._line(line) for line in (spec.high, spec.low, spec.likely))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.band_outer))
        painter.drawPolygon(QPolygonF([*upper, *reversed(lower)]))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(t.accent), 1.2, Qt.PenStyle.DotLine))
        painter.drawPolyline(QPolygonF(upper))
        painter.setPen(QPen(QColor(t.accent), 2.6))
        painter.drawPolyline(QPolygonF(middle))

    def _line(self, line: tuple[float, ...]) -> list[QPointF]:
        """Return the points of a line up to the last day shown."""
        days, last = self._spec.days, self._spec.last_day
        found = [(day, bar) for day, bar in zip(days, line, strict=True) if day <= last]
        if len(found) < len(days):
            after, (day, bar) = len(found), found[-1]
            share = (last - day) / (days[after] - day)
            found.append((last, bar + share * (line[after] - bar)))
        return [QPointF(self._x(day), self._y(bar)) for day, bar in found]

    def _ceiling(self) -> None:
        spec = self._spec
        if spec.ceiling_bar is None:
            return
        y = self._y(spec.ceiling_bar)
        ink = QColor(tokens().danger)
        self._painter.setPen(QPen(ink, 2.0))
        self._painter.drawLine(QPointF(self._plot.left(), y), QPointF(self._plot.right(), y))
        wide = self._metrics.horizontalAdvance(spec.ceiling_words)
        self._label(QPointF(self._plot.right() - wide, y - 4.0), spec.ceiling_words, ink)

    def _chill_by(self) -> None:
        spec = self._spec
        if spec.chill_by_day is None or spec.chill_by_day > spec.last_day:
            return
        x, ink = self._x(spec.chill_by_day), QColor(tokens().warn)
        self._painter.setPen(QPen(ink, 2.0, Qt.PenStyle.DashLine))
        self._painter.drawLine(QPointF(x, self._plot.top()), QPointF(x, self._plot.bottom()))
        wide = self._metrics.horizontalAdvance(spec.chill_words)
        at = min(max(x - wide / 2, self._plot.left() + 4 * SPACE), self._plot.right() - wide)
        self._label(QPointF(at, self._plot.top() - SPACE / 2), spec.chill_words, ink)

    def _now(self) -> None:
        spec = self._spec
        if spec.now_day is None or spec.now_day > spec.last_day:
            return
        x, ink = self._x(spec.now_day), QColor(tokens().ink)
        self._painter.setPen(QPen(ink, 1.2))
        self._painter.drawLine(QPointF(x, self._plot.top()), QPointF(x, self._plot.bottom()))
        baseline = self._plot.bottom() - SPACE / 2
        self._label(QPointF(x + SPACE / 2, baseline), spec.now_words, ink)

    def _points(self) -> None:
        t = tokens()
        self._painter.setPen(QPen(QColor(t.surface), 1.5))
        self._painter.setBrush(QColor(t.ink))
        for day, bar in self._spec.points:
            self._painter.drawEllipse(QPointF(self._x(day), self._y(bar)), 5.0, 5.0)

    def _label(self, at: QPointF, words: str, ink: QColor) -> None:
        """Write on a ground of its own, so that no line runs through the words."""
        if not words:
            return
        wide = self._metrics.horizontalAdvance(words)
        ground = QRectF(
            at.x() - 3, at.y() - self._metrics.ascent(), wide + 6, self._metrics.height()
        )
        self._painter.fillRect(ground, QColor(tokens().surface))
        self._painter.setPen(ink)
        self._painter.drawText(at, words)
