"""How a target shows whether it takes what is carried: by its frame and a sign, not by colour."""

from __future__ import annotations

from enum import Enum

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from brewdesk.services.drops import Target
from brewdesk.widgets.carriage import Carriage
from brewdesk.widgets.theme import tokens

_SIGN_PX = 11.0


class Mark(Enum):
    """What a target shows while something is carried."""

    CAN = "can"
    HERE = "here"
    CANNOT = "cannot"
    REFUSED = "refused"


def mark_of(carriage: Carriage, target: Target) -> Mark | None:
    """Return what a target shows; None while nothing is carried."""
    if carriage.carried is None:
        return None
    allowed = carriage.drop_at(target).is_allowed
    if carriage.here == target:
        return Mark.HERE if allowed else Mark.REFUSED
    return Mark.CAN if allowed else Mark.CANNOT


def paint_mark(painter: QPainter, box: QRect, mark: Mark) -> None:
    """Paint a target's mark over what is in ``box``."""
    t = tokens()
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    frame = QRectF(box).adjusted(2, 2, -2, -2)
    if mark is Mark.CANNOT:
        veil = QColor(t.wall)
        veil.setAlpha(150)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(veil)
        painter.drawRoundedRect(frame, 12, 12)
        painter.restore()
        return
    colour = QColor(t.danger if mark is Mark.REFUSED else t.accent)
    pen = QPen(colour, 2.0)
    if mark is Mark.CAN:
        pen.setDashPattern([4.0, 3.0])
    ground = QColor(colour)
    ground.setAlpha({Mark.CAN: 12, Mark.HERE: 44, Mark.REFUSED: 28}[mark])
    if mark is not Mark.CAN:
        pen.setWidthF(3.0)
    painter.setPen(pen)
    painter.setBrush(ground)
    painter.drawRoundedRect(frame, 12, 12)
    _paint_sign(painter, QPointF(frame.right() - 18, frame.top() + 18), mark, colour)
    painter.restore()


def _paint_sign(painter: QPainter, centre: QPointF, mark: Mark, colour: QColor) -> None:
    """A plus for what is taken, a barred circle for what is not."""
    radius = _SIGN_PX
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour if mark is not Mark.CAN else QColor(tokens().surface))
    if mark is Mark.CAN:
        painter.setPen(QPen(colour, 1.6))
    painter.drawEllipse(centre, radius, radius)
    ink = QColor(tokens().surface) if mark is not Mark.CAN else colour
    pen = QPen(ink, 2.4)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    arm = radius * 0.5
    if mark is Mark.REFUSED:
        slant = arm * 0.9
        painter.drawLine(centre + QPointF(-slant, slant), centre + QPointF(slant, -slant))
        return
    painter.drawLine(centre + QPointF(-arm, 0), centre + QPointF(arm, 0))
    painter.drawLine(centre + QPointF(0, -arm), centre + QPointF(0, arm))
