"""How far the levels of a trial lie apart: an interval on a line with its zero, and in words."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from brewdesk.services.records import Kind
from brewdesk.services.trialview import Comparison, Finding, TrialView
from brewdesk.services.wording.amounts import Show
from brewdesk.services.wording.trials import (
    comparison_words,
    finding_name,
    gap_words,
    outcome_name,
)
from brewdesk.widgets.fields import make_strong, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens

_ROOM = 1.18  # beyond the longer end
_BAR_PX = 6.0


class EffectBar(QWidget):
    """One interval: a bar around its middle, the zero line, and the words of both ends."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._one: Comparison | None = None
        self._ends = ("", "")
        self.setMinimumWidth(260)

    def set_comparison(self, one: Comparison, show: Show) -> None:
        """Show a comparison that has an interval."""
        self._one = one
        effect = one.effect
        if effect is not None and effect.is_bounded:
            self._ends = (
                gap_words(one.outcome, effect.low, show),
                gap_words(one.outcome, effect.high, show),
            )
        self.setAccessibleName(" – ".join(self._ends))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Ask for the bar and a line of small words below it."""
        return QSize(320, round(4.5 * SPACE + QFontMetricsF(self._small()).height()))

    def minimumSizeHint(self) -> QSize:
        """Never less high than that."""
        return QSize(200, self.sizeHint().height())

    def x_of(self, value: float) -> float:
        """Return where a difference stands; zero is always in the middle."""
        assert self._one is not None
        effect = self._one.effect
        assert effect is not None
        reach = max(abs(effect.low), abs(effect.high)) * _ROOM
        return self.width() / 2 + value / reach * (self.width() / 2 - SPACE)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw line, zero, bar and middle."""
        if self._one is None or self._one.effect is None or not self._one.effect.is_bounded:
            return
        effect, colours = self._one.effect, tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        y, zero = 2.0 * SPACE, self.width() / 2
        painter.setPen(QPen(QColor(colours.line), 1))
        painter.drawLine(QPointF(SPACE, y), QPointF(self.width() - SPACE, y))
        painter.setPen(QPen(QColor(colours.ink), 1.5))
        painter.drawLine(QPointF(zero, y - 1.6 * SPACE), QPointF(zero, y + 1.6 * SPACE))
        colour = QColor(colours.accent if self._one.finding is Finding.SHOWN else colours.muted)
        low, high, middle = (self.x_of(v) for v in (effect.low, effect.high, effect.difference))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawRoundedRect(QRectF(low, y - _BAR_PX / 2, high - low, _BAR_PX), 3, 3)
        painter.setPen(QPen(QColor(colours.surface), 2))
        painter.drawEllipse(QPointF(middle, y), 7, 7)
        self._paint_words(painter, low, high, y + 1.9 * SPACE)
        painter.end()

    def _paint_words(self, painter: QPainter, low: float, high: float, top: float) -> None:
        """Write each end below itself; both must fit side by side, or they move apart."""
        painter.setFont(self._small())
        painter.setPen(QColor(tokens().muted))
        metrics = QFontMetricsF(self._small())
        left, right = (metrics.horizontalAdvance(end) for end in self._ends)
        start = min(max(0.0, low - left / 2), self.width() - left - right - 2 * SPACE)
        start = max(0.0, start)
        end = max(min(self.width() - right, high - right / 2), start + left + 2 * SPACE)
        height = metrics.height()
        flags = int(Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextSingleLine)
        painter.drawText(QRectF(start, top, left + 2, height), flags, self._ends[0])
        painter.drawText(QRectF(end, top, right + 2, height), flags, self._ends[1])

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPointSizeF(font.pointSizeF() * 0.86)
        return font


class EffectRow(QFrame):
    """One comparison: what was compared, what came of it, the interval, the sentence."""

    def __init__(
        self, one: Comparison, view: TrialView, show: Show, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        set_role(self, "card")
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * SPACE, SPACE, 2 * SPACE, SPACE)
        column.setSpacing(SPACE // 2)
        head = QHBoxLayout()
        title = outcome_name(one.outcome)
        if len(view.arms) > 2:
            title = self.tr("{outcome}: {second} against {first}").format(
                outcome=title, second=one.second.name, first=one.first.name
            )
        named = plain_label(title, wraps=True)
        make_strong(named)
        head.addWidget(named, 1)
        role = "good" if one.finding is Finding.SHOWN else "muted"
        head.addWidget(plain_label(finding_name(one.finding), role))
        column.addLayout(head)
        if one.effect is not None and one.effect.is_bounded:
            self.bar = EffectBar(self)
            self.bar.set_comparison(one, show)
            column.addWidget(self.bar)
        self.words = plain_label(comparison_words(one, view.trial.factor, show), wraps=True)
        self.words.setObjectName(f"effect_{one.outcome.value}")
        column.addWidget(self.words)


class EffectRows(QWidget):
    """All comparisons of a trial below each other."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows: list[EffectRow] = []
        self._shown: tuple[object, ...] = ()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(SPACE)

    def set_view(self, view: TrialView, show: Show) -> None:
        """Show the comparisons of a trial."""
        look = (view.comparisons, tokens().name, show(1.0, Kind.ACIDITY))
        if look == self._shown:
            return
        self._shown = look
        for row in self.rows:
            self._column.removeWidget(row)
            row.hide()
            row.deleteLater()
        self.rows = [EffectRow(one, view, show, self) for one in view.comparisons]
        for row in self.rows:
            self._column.addWidget(row)
        self.setVisible(bool(self.rows))
