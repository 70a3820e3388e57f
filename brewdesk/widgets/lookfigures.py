"""Our own drawings of what to look for on a surface: schematic, each told by words too."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from brewdesk.services.looks import Sign
from brewdesk.services.wording.looks import sign_words
from brewdesk.widgets.theme import LIGHT, tokens

_SIZE = QSize(104, 76)
# The inks of the drawing stay the same in light and dark: they stand for real colours.
_TEA, _FILM, _FILM_EDGE = "#c98a35", "#f1e2c0", "#a98a57"
_YEAST, _HAIR, _DRY = "#6a3414", "#5b6b58", "#f6f3ea"
_SPOTS = (
    (0.30, 0.36, 0.085, "#4f7d3a"),
    (0.55, 0.27, 0.060, "#3c6ea3"),
    (0.70, 0.50, 0.075, "#26231f"),
    (0.38, 0.66, 0.065, "#d8708f"),
    (0.60, 0.74, 0.060, "#e07a2b"),
    (0.50, 0.50, 0.080, "#ffffff"),
)
_TOP = 0.44  # where the film begins, as a share of the height
_THICK = 0.15


class SignFigure(QWidget):
    """The drawing of one sign."""

    def __init__(self, sign: Sign, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.sign = sign
        self.setFixedSize(_SIZE)
        words = sign_words(sign).drawing
        self.setAccessibleName(words)
        self.setToolTip(words)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw it on the surface colour."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_sign(painter, QRectF(self.rect()).adjusted(1, 1, -1, -1), self.sign)


def paint_sign(painter: QPainter, rect: QRectF, sign: Sign) -> None:
    """Draw a sign into ``rect``: a jar cut open at its surface, or its film from above."""
    painter.save()
    frame = QPainterPath()
    frame.addRoundedRect(rect, 8, 8)
    painter.setClipPath(frame)
    painter.fillRect(rect, QColor(tokens().glass_fill if tokens() is LIGHT else "#3a3630"))
    if sign is Sign.COLOURED:
        _from_above(painter, rect)
    else:
        _cut_open(painter, rect, sign)
    painter.setClipping(False)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(tokens().glass), 1.6))
    painter.drawPath(frame)
    painter.restore()


def _cut_open(painter: QPainter, rect: QRectF, sign: Sign) -> None:
    top = rect.top() + rect.height() * _TOP
    thick = rect.height() * _THICK
    liquid = QRectF(rect.left(), top + thick / 3, rect.width(), rect.bottom() - top)
    painter.fillRect(liquid, QColor(_TEA))
    if sign is Sign.BARE:
        return
    if sign is Sign.LAYERS:
        _layers(painter, rect, top, thick)
        return
    lift = rect.height() * 0.13 if sign is Sign.BUBBLES else 0.0
    _film(painter, rect, top, thick, lift)
    if sign is Sign.FUZZY:
        _hairs(painter, rect, top)
    elif sign is Sign.DRY:
        _cushion(painter, rect, top)
    elif sign is Sign.STRINGS:
        _strings(painter, rect, top + thick)
    elif sign is Sign.BUBBLES:
        _bubbles(painter, rect, top + thick)
    elif sign is Sign.WET_SMOOTH:
        painter.setPen(QPen(QColor("#ffffff"), 2.4, c=Qt.PenCapStyle.RoundCap))
        x = rect.left() + rect.width() * 0.2
        painter.drawLine(QPointF(x, top + thick * 0.4), QPointF(x + 26, top + thick * 0.4))
        painter.drawLine(QPointF(x + 34, top + thick * 0.4), QPointF(x + 38, top + thick * 0.4))
    elif sign is Sign.DOUBT:
        font = QFont(painter.font())
        font.setPixelSize(round(rect.height() * 0.42))
        font.setWeight(QFont.Weight.DemiBold)
        painter.setFont(font)
        painter.setPen(QColor(tokens().ink))
        above = QRectF(rect.left(), rect.top(), rect.width(), top - rect.top())
        painter.drawText(above, Qt.AlignmentFlag.AlignCenter, "?")


def _film(painter: QPainter, rect: QRectF, top: float, thick: float, lift: float) -> None:
    path = QPainterPath(QPointF(rect.left(), top))
    middle = rect.center().x()
    path.quadTo(QPointF(middle, top - 2 * lift), QPointF(rect.right(), top))
    path.lineTo(rect.right(), top + thick)
    path.quadTo(QPointF(middle, top + thick - 2 * lift), QPointF(rect.left(), top + thick))
    path.closeSubpath()
    painter.setPen(QPen(QColor(_FILM_EDGE), 1.2))
    painter.setBrush(QColor(_FILM))
    painter.drawPath(path)


def _hairs(painter: QPainter, rect: QRectF, top: float) -> None:
    painter.setPen(QPen(QColor(tokens().ink if tokens() is not LIGHT else _HAIR), 1.3))
    for middle, spread in ((0.32, 15.0), (0.66, 20.0)):
        foot = rect.left() + rect.width() * middle
        for step in range(-5, 6):
            lean = step / 5.0
            length = rect.height() * (0.27 - 0.11 * abs(lean))
            root = QPointF(foot + lean * spread * 0.6, top)
            tip = QPointF(foot + lean * spread * 1.15, top - length)
            painter.drawLine(root, tip)
            painter.drawEllipse(tip, 0.9, 0.9)


def _cushion(painter: QPainter, rect: QRectF, top: float) -> None:
    middle, half = rect.center().x(), rect.width() * 0.27
    path = QPainterPath(QPointF(middle - half, top))
    high = rect.height() * 0.26
    path.cubicTo(
        QPointF(middle - half, top - high),
        QPointF(middle + half, top - high),
        QPointF(middle + half, top),
    )
    painter.setPen(QPen(QColor("#8d8270"), 1.3, Qt.PenStyle.DashLine))
    painter.setBrush(QColor(_DRY))
    painter.drawPath(path)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor("#8d8270"))
    for x, y in ((-0.5, 0.25), (-0.15, 0.5), (0.2, 0.3), (0.45, 0.42), (0.0, 0.2), (-0.3, 0.5)):
        painter.drawEllipse(QPointF(middle + x * half, top - y * high), 1.1, 1.1)


def _strings(painter: QPainter, rect: QRectF, foot: float) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(_YEAST), 2.2, c=Qt.PenCapStyle.RoundCap))
    for share, length, bend in (
        (0.2, 0.20, 5.0),
        (0.36, 0.31, -6.0),
        (0.5, 0.16, 4.0),
        (0.64, 0.29, 6.0),
        (0.8, 0.22, -5.0),
    ):
        x, end = rect.left() + rect.width() * share, foot + rect.height() * length
        path = QPainterPath(QPointF(x, foot - 2))
        path.cubicTo(
            QPointF(x + bend, foot + (end - foot) * 0.35),
            QPointF(x - bend, foot + (end - foot) * 0.7),
            QPointF(x + bend * 0.6, end),
        )
        painter.drawPath(path)


def _bubbles(painter: QPainter, rect: QRectF, foot: float) -> None:
    painter.setPen(QPen(QColor("#ffffff"), 1.4))
    painter.setBrush(QColor(255, 255, 255, 110))
    for share, drop, radius in (
        (0.40, -3.0, 5.0),
        (0.53, -4.0, 6.5),
        (0.66, -1.0, 4.0),
        (0.32, 9.0, 2.6),
        (0.58, 12.0, 2.4),
        (0.74, 15.0, 2.0),
    ):
        painter.drawEllipse(
            QPointF(rect.left() + rect.width() * share, foot + drop), radius, radius
        )


def _layers(painter: QPainter, rect: QRectF, top: float, thick: float) -> None:
    painter.setPen(QPen(QColor(_FILM_EDGE), 1.2))
    painter.setBrush(QColor(_FILM).darker(108))
    gap = rect.left() + rect.width() * 0.58
    below = top + thick * 0.9
    old = QPainterPath(QPointF(rect.left(), below))
    old.lineTo(gap, below)
    old.cubicTo(
        QPointF(gap + 2, below + thick),
        QPointF(gap - 8, below + thick),
        QPointF(gap - 14, below + 1.5 * thick),
    )
    old.lineTo(rect.left(), below + 1.1 * thick)
    old.closeSubpath()
    painter.drawPath(old)
    rest = QPainterPath(QPointF(gap + 12, below))
    rest.lineTo(rect.right(), below)
    rest.lineTo(rect.right(), below + 0.7 * thick)
    rest.quadTo(QPointF(gap + 20, below + 1.2 * thick), QPointF(gap + 12, below))
    painter.drawPath(rest)
    painter.setBrush(QColor("#fbf4df"))
    painter.drawRect(QRectF(rect.left(), top, rect.width(), thick * 0.55))


def _from_above(painter: QPainter, rect: QRectF) -> None:
    side = min(rect.width(), rect.height()) * 0.88
    disc = QRectF(0, 0, side, side)
    disc.moveCenter(rect.center())
    painter.setPen(QPen(QColor(_FILM_EDGE), 1.4))
    painter.setBrush(QColor(_FILM))
    painter.drawEllipse(disc)
    for x, y, radius, colour in _SPOTS:
        middle = QPointF(disc.left() + x * side, disc.top() + y * side)
        painter.setPen(QPen(QColor("#6b5f4c"), 0.8, Qt.PenStyle.DotLine))
        painter.setBrush(QColor(colour))
        painter.drawEllipse(middle, radius * side, radius * side * 0.9)
