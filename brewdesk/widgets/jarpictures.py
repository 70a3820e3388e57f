"""Keeps the pictures of jars, so that only those are drawn anew that look otherwise."""

from __future__ import annotations

import math
from collections import OrderedDict

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QPainter, QPixmap

from brewdesk.widgets.jarpainter import (
    COVER_TOP_CM,
    STEAM_CM,
    WALL_CM,
    JarLook,
    brim_height_cm,
    paint_jar,
    widest_cm,
)
from brewdesk.widgets.theme import Tokens

_MOST_PX = 4_000_000  # twice what a large screen shows of a shelf, and 16 MB
_STEPS = 32  # places within a pixel that are told apart
_FLARE = 1.2  # by which cover and shadow may be wider than the wall
_RIM_PX = 4


class JarPictures:
    """Paint jars as `paint_jar` does, from a picture wherever there is one."""

    def __init__(self) -> None:
        self._made: OrderedDict[object, QPixmap] = OrderedDict()
        self._pixels = 0

    def paint(
        self,
        painter: QPainter,
        foot: QPointF,
        scale: float,
        look: JarLook,
        tokens: Tokens,
        *,
        ratio: float = 1.0,
    ) -> None:
        """Paint ``look`` with its foot's centre at ``foot``, ``scale`` px to the cm.

        ``ratio`` is how many of the screen's own pixels go to one of these.
        """
        if ratio != round(ratio):  # a picture would fall between the screen's own pixels
            paint_jar(painter, foot, scale, look, tokens)
            return
        x, y = (math.floor(place * ratio) / ratio for place in (foot.x(), foot.y()))
        within = tuple(
            round((place - corner) * ratio * _STEPS) / (ratio * _STEPS)
            for place, corner in ((foot.x(), x), (foot.y(), y))
        )
        half, above, below = _reach_px(look, scale)
        key = (look, round(scale, 6), tokens, ratio, within)
        picture = self._made.get(key)
        if picture is None:
            picture = QPixmap(QSize(2 * half, above + below) * ratio)
            picture.setDevicePixelRatio(ratio)
            picture.fill(Qt.GlobalColor.transparent)
            brush = QPainter(picture)
            paint_jar(brush, QPointF(half + within[0], above + within[1]), scale, look, tokens)
            brush.end()
            self._keep(key, picture, _MOST_PX * ratio * ratio)
        else:
            self._made.move_to_end(key)
        painter.drawPixmap(QPointF(x - half, y - above), picture)

    def count(self) -> int:
        """Say how many pictures are kept."""
        return len(self._made)

    def _keep(self, key: object, picture: QPixmap, most_px: float) -> None:
        self._made[key] = picture
        self._pixels += picture.width() * picture.height()
        while self._pixels > most_px and len(self._made) > 1:
            _, oldest = self._made.popitem(last=False)
            self._pixels -= oldest.width() * oldest.height()


def _reach_px(look: JarLook, scale: float) -> tuple[int, int, int]:
    """Return how far the drawing reaches to each side of its foot, above it and below it."""
    half = _FLARE * (widest_cm(look) / 2 + WALL_CM) * scale
    above = (brim_height_cm(look) + WALL_CM + max(COVER_TOP_CM, STEAM_CM)) * scale
    below = half * 0.10 + WALL_CM * scale
    wide, high, deep = (math.ceil(px) + _RIM_PX for px in (half, above, below))
    return wide, high, deep
