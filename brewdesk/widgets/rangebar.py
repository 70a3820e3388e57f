"""Where a figure lies between its two ends: a bar with a mark, the ends written below."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from brewdesk.services.reckoner.question import Line
from brewdesk.services.wording.reckoner import LineWords
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.theme import SPACE, tokens

_BAR_PX = 6
_MARK_PX = 7


class _Bar(QWidget):
    """The bar alone; ``share`` is how far along it the mark stands."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.share = 0.5
        self.setFixedHeight(2 * _MARK_PX + 2)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint bar and mark."""
        t = tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        middle = self.height() / 2
        painter.setBrush(QColor(t.band_inner))
        bar = QRectF(0, middle - _BAR_PX / 2, self.width(), _BAR_PX)
        painter.drawRoundedRect(bar, _BAR_PX / 2, _BAR_PX / 2)
        painter.setBrush(QColor(t.accent))
        along = _MARK_PX + self.share * (self.width() - 2 * _MARK_PX)
        painter.drawEllipse(QPointF(along, middle), _MARK_PX, _MARK_PX)


class RangeBar(QWidget):
    """Low end, high end, what they mean, and the figure between them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.text = ""
        self._bar = _Bar(self)
        self.low = plain_label(role="label", parent=self)
        self.how = plain_label(role="label", parent=self)
        self.high = plain_label(role="label", parent=self)
        self.how.setAlignment(Qt.AlignmentFlag.AlignCenter)
        ends = QHBoxLayout()
        ends.setSpacing(SPACE)
        ends.addWidget(self.low)
        ends.addWidget(self.how, 1)
        ends.addWidget(self.high)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, SPACE // 2, 0, SPACE // 2)
        column.setSpacing(SPACE // 4)
        column.addWidget(self._bar)
        column.addLayout(ends)

    def clear(self) -> None:
        """Show nothing."""
        self.text = ""
        self.hide()

    def show_range(self, line: Line, words: LineWords, how: str) -> None:
        """Show the ends of ``line``, and what they mean."""
        if line.value is None or line.low is None or line.high is None or line.high <= line.low:
            self.clear()
            return
        self._bar.share = min(max((line.value - line.low) / (line.high - line.low), 0.0), 1.0)
        self.low.setText(words.low)
        self.high.setText(words.high)
        self.how.setText(how)
        self.text = self.tr("{ends}, {how}").format(ends=words.ends, how=how)
        self.setAccessibleName(self.text)
        self._bar.update()
        self.show()
