"""A small sign for what a culture does: its shape tells it, not its colour."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from brewdesk.services.records import CultureState
from brewdesk.widgets.theme import Tokens


def paint_state_sign(
    painter: QPainter, box: QRectF, state: CultureState, t: Tokens, *, is_suspect: bool = False
) -> None:
    """Paint the sign of ``state`` into ``box``; a triangle with a mark if it is suspect.

    At work is a full disc, resting a half one, forming a ring with a dot. What is gone has
    open signs: a square for retired, an arrow for given away, a cross for lost.
    """
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if is_suspect:
        _suspect(painter, box, QColor(t.danger), QColor(t.surface))
    else:
        ink = QColor(t.accent if state in _LIVING else t.muted)
        pen = QPen(ink, 1.8)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        _SIGNS[state](painter, box.adjusted(1, 1, -1, -1), ink)
    painter.restore()


def _at_work(painter: QPainter, box: QRectF, ink: QColor) -> None:
    painter.setBrush(ink)
    painter.drawEllipse(box)


def _resting(painter: QPainter, box: QRectF, ink: QColor) -> None:
    painter.drawEllipse(box)
    painter.setBrush(ink)
    painter.drawChord(box, 180 * 16, 180 * 16)


def _forming(painter: QPainter, box: QRectF, ink: QColor) -> None:
    pen = painter.pen()
    pen.setStyle(Qt.PenStyle.DotLine)
    painter.setPen(pen)
    painter.drawEllipse(box)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ink)
    painter.drawEllipse(box.center(), box.width() * 0.16, box.width() * 0.16)


def _retired(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    painter.drawRect(box.adjusted(1, 1, -1, -1))


def _given(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    middle = box.center().y()
    painter.drawLine(QPointF(box.left(), middle), QPointF(box.right(), middle))
    head = box.width() * 0.34
    painter.drawLine(QPointF(box.right(), middle), QPointF(box.right() - head, middle - head))
    painter.drawLine(QPointF(box.right(), middle), QPointF(box.right() - head, middle + head))


def _lost(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    inner = box.adjusted(1, 1, -1, -1)
    painter.drawLine(inner.topLeft(), inner.bottomRight())
    painter.drawLine(inner.topRight(), inner.bottomLeft())


def _suspect(painter: QPainter, box: QRectF, ink: QColor, mark: QColor) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ink)
    top = QPointF(box.center().x(), box.top())
    painter.drawPolygon(QPolygonF([top, box.bottomRight(), box.bottomLeft()]))
    pen = QPen(mark, 1.8)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    x, height = box.center().x(), box.height()
    painter.drawLine(QPointF(x, box.top() + 0.38 * height), QPointF(x, box.top() + 0.64 * height))
    painter.drawPoint(QPointF(x, box.top() + 0.84 * height))


_LIVING = (CultureState.FORMING, CultureState.AT_WORK, CultureState.RESTING)
_SIGNS = {
    CultureState.FORMING: _forming,
    CultureState.AT_WORK: _at_work,
    CultureState.RESTING: _resting,
    CultureState.RETIRED: _retired,
    CultureState.GIVEN_AWAY: _given,
    CultureState.LOST: _lost,
}
