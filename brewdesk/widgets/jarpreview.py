"""One vessel drawn true to its figures, with its measures in words below."""

from __future__ import annotations

import math
from itertools import pairwise

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from brewdesk.widgets.jarpainter import JarLook, paint_jar, total_height_cm, widest_cm
from brewdesk.widgets.theme import SPACE, tokens

Profile = tuple[tuple[float, float], ...]  # (height_cm, radius_cm), foot to rim


def filled_height_cm(profile: Profile, volume_l: float) -> float:
    """Height of the surface when ``volume_l`` stands in the drawn outline.

    Each piece of the outline is a cone's frustum; the height in the last one is found
    by halving, to a tenth of a millimetre. For drawing only.
    """
    left_cm3 = volume_l * 1000.0
    for (low, r_low), (high, r_high) in pairwise(profile):
        whole = _frustum_cm3(r_low, r_high, high - low)
        if left_cm3 > whole:
            left_cm3 -= whole
            continue
        bottom, top = 0.0, high - low
        while top - bottom > 0.01:
            middle = (bottom + top) / 2
            r_middle = r_low + (r_high - r_low) * middle / (high - low)
            if _frustum_cm3(r_low, r_middle, middle) < left_cm3:
                bottom = middle
            else:
                top = middle
        return low + (bottom + top) / 2
    return profile[-1][0]


def _frustum_cm3(r_low: float, r_high: float, height: float) -> float:
    return math.pi * height * (r_low**2 + r_low * r_high + r_high**2) / 3.0


class JarPreview(QWidget):
    """Paints a ``JarLook`` as large as the room allows, standing on a board."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look: JarLook | None = None
        self.setMinimumSize(QSize(20 * SPACE, 20 * SPACE))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    @property
    def look(self) -> JarLook | None:
        """What is drawn now; None is an empty board."""
        return self._look

    def show_look(self, look: JarLook | None, words: str) -> None:
        """Draw ``look``; ``words`` is what a screen reader says of it."""
        self._look = look
        self.setAccessibleName(words)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint wall, board and vessel."""
        t = tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.wall))
        painter.drawRoundedRect(self.rect(), SPACE, SPACE)
        board = 1.5 * SPACE
        top = self.height() - 3 * SPACE
        painter.setBrush(QColor(t.board))
        painter.drawRect(0, int(top), self.width(), int(board))
        painter.setBrush(QColor(t.board_edge))
        painter.drawRect(0, int(top + board - 3), self.width(), 3)
        if self._look is None:
            return
        scale = min(
            (top - 2 * SPACE) / total_height_cm(self._look),
            (self.width() - 6 * SPACE) / widest_cm(self._look),
        )
        paint_jar(painter, QPointF(self.width() / 2, top), scale, self._look, t)
