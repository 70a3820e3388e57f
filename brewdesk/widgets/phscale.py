"""A pH with its range on a small scale, between the marks that matter."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.services.amounts import ph_marks
from brewdesk.services.records import Estimate
from brewdesk.services.wording.amounts import number_text
from brewdesk.widgets.theme import SPACE, tokens

LOW_PH, HIGH_PH = 2.0, 5.6
_TRACK = 14


class PhScale(QWidget):
    """Paints an estimate as a dot with a bar; the words beside it say the same."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._estimate: Estimate | None = None
        self._marks = ph_marks()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("No start pH yet"))

    def show_estimate(self, estimate: Estimate | None, words: str) -> None:
        """Show ``estimate``; ``words`` is what a screen reader says of it."""
        self._estimate = estimate
        self.setAccessibleName(words)
        self.update()

    def sizeHint(self) -> QSize:
        """Room for the bar above, the track, and two lines of marks below."""
        line = QFontMetrics(self.font()).lineSpacing()
        return QSize(40 * SPACE, 2 * SPACE + _TRACK + SPACE + 2 * line)

    def minimumSizeHint(self) -> QSize:
        """Half the width will do; the height is needed."""
        return QSize(28 * SPACE, self.sizeHint().height())

    def _x(self, ph: float) -> float:
        inset = SPACE
        share = (min(max(ph, LOW_PH), HIGH_PH) - LOW_PH) / (HIGH_PH - LOW_PH)
        return inset + share * (self.width() - 2 * inset)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint zones, marks and the estimate."""
        t = tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        top = 2.0 * SPACE
        m = self._marks
        zones = (
            (LOW_PH, m.least_to_drink, t.danger_soft),
            (m.least_to_drink, m.most_by_deadline, t.good_soft),
            (m.most_by_deadline, m.most_to_start, t.warn_soft),
            (m.most_to_start, HIGH_PH, t.danger_soft),
        )
        painter.setPen(Qt.PenStyle.NoPen)
        for low, high, colour in zones:
            painter.setBrush(QColor(colour))
            painter.drawRect(QRectF(self._x(low), top, self._x(high) - self._x(low), _TRACK))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(t.edge), 1.0))
        painter.drawRect(QRectF(self._x(LOW_PH), top, self._x(HIGH_PH) - self._x(LOW_PH), _TRACK))
        self._paint_marks(painter, top)
        if self._estimate is not None:
            self._paint_estimate(painter, self._estimate, top + _TRACK / 2)

    def _paint_marks(self, painter: QPainter, top: float) -> None:
        t = tokens()
        line = QFontMetrics(self.font()).lineSpacing()
        wide = self.width() >= 44 * SPACE
        by_day = self.tr("by day {day}").format(day=self._marks.deadline_days)
        marks = (
            (self._marks.least_to_drink, self.tr("least to drink"), Qt.AlignmentFlag.AlignLeft),
            (self._marks.most_by_deadline, by_day, Qt.AlignmentFlag.AlignRight),
            (self._marks.most_to_start, self.tr("most to start at"), Qt.AlignmentFlag.AlignLeft),
        )
        for ph, words, side in marks:
            x = self._x(ph)
            painter.setPen(QPen(QColor(t.ink), 1.6))
            painter.drawLine(QPointF(x, top - 3), QPointF(x, top + _TRACK + 5))
            left = x - 2 if side == Qt.AlignmentFlag.AlignLeft else x + 2 - 200
            box = QRectF(left, top + _TRACK + 5, 200, line)
            painter.setPen(QColor(t.ink))
            painter.drawText(box, side, number_text(ph, 1))
            if wide:
                painter.setPen(QColor(t.muted))
                painter.drawText(box.translated(0, line), side, words)

    def _paint_estimate(self, painter: QPainter, estimate: Estimate, y: float) -> None:
        t = tokens()
        left, right, middle = (self._x(v) for v in (estimate.low, estimate.high, estimate.value))
        pen = QPen(QColor(t.ink), 4.0)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        painter.drawLine(QPointF(left, y), QPointF(max(right, left + 1), y))
        painter.setPen(QPen(QColor(t.ink), 2.0))
        for x in (left, right):
            painter.drawLine(QPointF(x, y - 6), QPointF(x, y + 6))
        painter.setPen(QPen(QColor(t.surface), 2.0))
        painter.setBrush(QColor(t.ink))
        painter.drawEllipse(QPointF(middle, y), 7.0, 7.0)
