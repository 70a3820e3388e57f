"""A judgement with its reason and what to do: sign, word and colour say how serious."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from brewdesk.services.records import Level, Verdict
from brewdesk.services.wording.amounts import Show, plain
from brewdesk.services.wording.verdicts import verdict_words
from brewdesk.widgets.fields import make_strong, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens

_ROLE = {Level.INFORM: "inform", Level.WARN: "warn", Level.STOP: "danger"}


class LevelSign(QWidget):
    """Circle, triangle or octagon: the shape tells the level without colour."""

    def __init__(self, level: Level, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.level = level
        self.setFixedSize(QSize(3 * SPACE, 3 * SPACE))

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the sign in the level's colour."""
        t = tokens()
        colour = {Level.INFORM: t.accent, Level.WARN: t.warn, Level.STOP: t.danger}[self.level]
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colour))
        side = float(self.width())
        if self.level is Level.INFORM:
            painter.drawEllipse(QRectF(1, 1, side - 2, side - 2))
        elif self.level is Level.WARN:
            painter.drawPolygon(
                QPolygonF([QPointF(side / 2, 1), QPointF(side - 1, side - 3), QPointF(1, side - 3)])
            )
        else:
            a, b = side * 0.29, side * 0.71
            corners = [(a, 1), (b, 1), (side - 1, a), (side - 1, b)]
            corners += [(b, side - 1), (a, side - 1), (1, b), (1, a)]
            painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in corners]))
        self._paint_mark(painter, QColor(t.surface), side)

    def _paint_mark(self, painter: QPainter, ink: QColor, side: float) -> None:
        middle = side / 2
        stroke, dot = (middle - 1.5, middle + 4.5), middle - 5.5  # an "i"
        if self.level is not Level.INFORM:
            top = 2.0 if self.level is Level.WARN else 0.0
            stroke, dot = (middle - 6 + top, middle + 1 + top / 2), middle + 5.0 + top / 2
        pen = QPen(ink, 2.4)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(QPointF(middle, stroke[0]), QPointF(middle, stroke[1]))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(ink)
        painter.drawEllipse(QPointF(middle, dot), 1.6, 1.6)


class VerdictCard(QFrame):
    """Fact, reason and what to do of one verdict."""

    def __init__(
        self, verdict: Verdict, parent: QWidget | None = None, *, show: Show = plain
    ) -> None:
        super().__init__(parent)
        self.verdict = verdict
        words = verdict_words(verdict, show)
        set_role(self, _ROLE[verdict.level])
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * SPACE, SPACE + 4, 2 * SPACE, SPACE + 4)
        row.setSpacing(SPACE + 4)
        row.addWidget(LevelSign(verdict.level, self), 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout()
        column.setSpacing(SPACE // 2)
        fact = plain_label(f"{self._level_word()}: {words.fact}", parent=self, wraps=True)
        make_strong(fact)
        column.addWidget(fact)
        for text in (words.why, words.what_to_do):
            if text:
                column.addWidget(plain_label(text, parent=self, wraps=True))
        row.addLayout(column, 1)
        self.text = " ".join(part for part in (fact.text(), words.why, words.what_to_do) if part)
        self.setAccessibleName(self.text)

    def _level_word(self) -> str:
        return {
            Level.INFORM: self.tr("Note"),
            Level.WARN: self.tr("Careful"),
            Level.STOP: self.tr("Stop"),
        }[self.verdict.level]


class VerdictLine(QWidget):
    """A remark that needs no card: small sign, fact, and what to do, in quiet type."""

    def __init__(
        self, verdict: Verdict, parent: QWidget | None = None, *, show: Show = plain
    ) -> None:
        super().__init__(parent)
        self.verdict = verdict
        words = verdict_words(verdict, show)
        self.text = " ".join(part for part in (words.fact, words.what_to_do) if part)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACE)
        row.addWidget(LevelSign(verdict.level, self), 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(plain_label(self.text, "muted", self, wraps=True), 1)
        self.setAccessibleName(self.text)
