"""The tray's picture: the program's icon, and another shape of it while something is due."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPixmap

from brewdesk.widgets.icons import pixmap

_SIZES_PX = (16, 22, 32, 48, 64)
# In parts of the icon's edge. The gap around the sign is clear, so that its outline tells
# it from the plain icon also where a tray shows all icons in one colour.
_CENTRE = 0.70
_RADIUS = 0.26
_GAP = 0.06
_RED = "#b3261e"


def tray_icon(*, is_due: bool) -> QIcon:
    """Return the icon; with an exclamation mark on a disc at its corner while something is due."""
    made = QIcon()
    for size in _SIZES_PX:
        picture = pixmap("brewdesk", "#000000", size)
        if is_due:
            _put_sign(picture, size)
        made.addPixmap(picture)
    return made


def _put_sign(picture: QPixmap, size: int) -> None:
    centre = QPointF(_CENTRE * size, _CENTRE * size)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Clear)
    painter.setBrush(QColor("black"))
    painter.drawEllipse(centre, (_RADIUS + _GAP) * size, (_RADIUS + _GAP) * size)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceOver)
    painter.setBrush(QColor(_RED))
    painter.drawEllipse(centre, _RADIUS * size, _RADIUS * size)
    painter.setBrush(QColor("white"))
    bar, height = 0.085 * size, 0.36 * size
    top = centre.y() - height / 2
    painter.drawRect(QRectF(centre.x() - bar / 2, top, bar, 0.62 * height))
    painter.drawRect(QRectF(centre.x() - bar / 2, top + 0.75 * height, bar, 0.25 * height))
    painter.end()
