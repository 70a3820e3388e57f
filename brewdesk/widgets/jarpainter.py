"""Draws a vessel in front view, true to its inside: the one drawing used everywhere.

Knows geometry and colour only. The outline is the vessel's inner profile in
centimetres, foot to rim; the caller says how many pixels a centimetre takes.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QLinearGradient,
    QPainter,
    QPainterPath,
    QPen,
    QRadialGradient,
)

from brewdesk.widgets.theme import Tokens, liquid_colour

WALL_CM = 0.35
COVER_SKIRT_CM = 2.4
COVER_SKIRT_LEAST_CM = 0.9
COVER_GAP_CM = 0.3  # the hem ends above the surface, so that the pellicle is seen
COVER_TOP_CM = 0.9
STEAM_CM = 4.0


@dataclass(frozen=True, slots=True)
class JarLook:
    """What can be seen of a vessel. Heights in cm above the foot."""

    profile: tuple[tuple[float, float], ...]  # (height_cm, radius_cm), foot to rim
    liquid_height_cm: float = 0.0
    planned_height_cm: float = 0.0  # where a plan wants the surface; drawn dashed
    ph: float | None = None
    pellicle_cm: float = 0.0
    covered: bool = False
    steaming: bool = False
    wall: str = ""  # colour of a wall that hides the drink (crock, steel): drawn cut open


def brim_height_cm(look: JarLook) -> float:
    """Inner height from foot to rim."""
    return look.profile[-1][0]


def widest_cm(look: JarLook) -> float:
    """Widest outer diameter, wall included."""
    return 2.0 * (max(radius for _, radius in look.profile) + WALL_CM)


def total_height_cm(look: JarLook) -> float:
    """Height taken by the drawing: foot, body and whatever stands above the rim."""
    above = COVER_TOP_CM if look.covered else (STEAM_CM if look.steaming else 0.0)
    return brim_height_cm(look) + WALL_CM + above


def _outline(
    profile: tuple[tuple[float, float], ...], grow_cm: float, scale: float
) -> QPainterPath:
    """Closed, mirrored outline with softly rounded foot, widened by ``grow_cm``."""
    points = [(radius + grow_cm, -height) for height, radius in profile]
    foot_y = grow_cm
    foot_round = min(0.9 + grow_cm, points[0][0] * 0.4)
    path = QPainterPath()
    path.moveTo(-(points[0][0] - foot_round) * scale, foot_y * scale)
    path.lineTo((points[0][0] - foot_round) * scale, foot_y * scale)
    path.quadTo(
        points[0][0] * scale, foot_y * scale, points[0][0] * scale, (foot_y - foot_round) * scale
    )
    for radius, y in points[1:]:
        path.lineTo(radius * scale, y * scale)
    for radius, y in reversed(points[1:]):
        path.lineTo(-radius * scale, y * scale)
    path.lineTo(-points[0][0] * scale, (foot_y - foot_round) * scale)
    path.quadTo(
        -points[0][0] * scale,
        foot_y * scale,
        -(points[0][0] - foot_round) * scale,
        foot_y * scale,
    )
    path.closeSubpath()
    return path


def _radius_at(profile: tuple[tuple[float, float], ...], height_cm: float) -> float:
    below_height, below_radius = profile[0]
    for height, radius in profile[1:]:
        if height_cm <= height:
            span = height - below_height
            share = (height_cm - below_height) / span if span > 0 else 0.0
            return below_radius + (radius - below_radius) * share
        below_height, below_radius = height, radius
    return profile[-1][1]


def paint_jar(
    painter: QPainter, foot: QPointF, scale: float, look: JarLook, tokens: Tokens
) -> None:
    """Paint ``look`` with its foot's centre at ``foot``, ``scale`` px to the cm."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(foot.x(), foot.y() - WALL_CM * scale)
    inner = _outline(look.profile, 0.0, scale)
    outer = _outline(look.profile, WALL_CM, scale)
    _paint_shadow(painter, look, scale)
    wall = QColor(look.wall or tokens.glass_fill)
    wall.setAlpha(255 if look.wall else 120)
    painter.fillPath(outer, wall)
    if look.wall:
        painter.fillPath(inner, _hollow(inner.boundingRect(), QColor(look.wall)))
    painter.save()
    painter.setClipPath(inner)
    _paint_liquid(painter, look, scale, tokens)
    painter.restore()
    _paint_planned_level(painter, look, scale, tokens)
    pen = QPen(QColor(tokens.glass), max(1.4, scale * 0.16))
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.strokePath(outer, pen)
    _paint_rim(painter, look, scale, tokens)
    if not look.wall:
        _paint_shine(painter, outer, look, scale)
    if look.covered:
        _paint_cover(painter, look, scale, tokens)
    if look.steaming:
        _paint_steam(painter, look, scale, tokens)
    painter.restore()


def _hollow(box: QRectF, wall: QColor) -> QBrush:
    """Shade of an opaque vessel's inside: darker towards the sides, as a hollow is."""
    shade = QLinearGradient(box.topLeft(), box.topRight())
    for place, factor in ((0.0, 150), (0.3, 122), (0.55, 114), (1.0, 148)):
        shade.setColorAt(place, wall.darker(factor))
    return QBrush(shade)


def _paint_shadow(painter: QPainter, look: JarLook, scale: float) -> None:
    half = (look.profile[0][1] + WALL_CM) * scale * 1.12
    glow = QRadialGradient(QPointF(0, 0), half)
    glow.setColorAt(0.0, QColor(0, 0, 0, 80))
    glow.setColorAt(1.0, QColor(0, 0, 0, 0))
    painter.save()
    painter.translate(0, WALL_CM * scale)
    painter.scale(1.0, 0.10)
    painter.fillRect(QRectF(-half, -half, 2 * half, 2 * half), QBrush(glow))
    painter.restore()


def _paint_liquid(painter: QPainter, look: JarLook, scale: float, tokens: Tokens) -> None:
    if look.liquid_height_cm <= 0.0:
        return
    radius = max(r for _, r in look.profile)
    top = -look.liquid_height_cm * scale
    body = QRectF(-radius * scale, top, 2 * radius * scale, -top + scale)
    tint = liquid_colour(look.ph)
    shade = QLinearGradient(body.topLeft(), body.topRight())
    for place, factor in ((0.0, 125), (0.18, 102), (0.45, 94), (0.8, 104), (1.0, 130)):
        shade.setColorAt(place, tint.darker(factor) if factor >= 100 else tint.lighter(108))
    painter.fillRect(body, QBrush(shade))
    deep = QLinearGradient(body.topLeft(), body.bottomLeft())
    deep.setColorAt(0.0, QColor(255, 255, 255, 26))
    deep.setColorAt(0.5, QColor(0, 0, 0, 0))
    deep.setColorAt(1.0, QColor(0, 0, 0, 46))
    painter.fillRect(body, QBrush(deep))
    surface_half = _radius_at(look.profile, look.liquid_height_cm) * scale
    if look.pellicle_cm > 0.0:
        _paint_pellicle(painter, look, scale, tokens, top, surface_half)
        _paint_bubbles(painter, look, scale, top, surface_half)
    else:
        line = QColor(255, 255, 255, 110)
        painter.setPen(QPen(line, max(1.0, scale * 0.12)))
        painter.drawLine(QPointF(-surface_half, top), QPointF(surface_half, top))


def _paint_pellicle(
    painter: QPainter, look: JarLook, scale: float, tokens: Tokens, top: float, half: float
) -> None:
    thick = max(2.5, look.pellicle_cm * scale)
    slab = QPainterPath()
    sag = min(thick * 0.35, scale * 0.25)
    slab.moveTo(-half, top - 0.5)
    slab.quadTo(0, top + sag * 0.4, half, top - 0.5)
    slab.lineTo(half, top + thick)
    slab.quadTo(half * 0.4, top + thick + sag, 0, top + thick + sag * 0.4)
    slab.quadTo(-half * 0.5, top + thick - sag * 0.2, -half, top + thick)
    slab.closeSubpath()
    painter.fillPath(slab, QColor(tokens.pellicle))
    edge = QColor(tokens.pellicle_edge)
    layers = int(thick // 4)
    faint = QColor(edge)
    faint.setAlpha(110)
    painter.setPen(QPen(faint, 0.8))
    for layer in range(1, layers + 1):
        y = top + thick * layer / (layers + 1)
        wave = QPainterPath(QPointF(-half, y))
        wave.cubicTo(-half * 0.4, y - sag * 0.6, half * 0.4, y + sag * 0.6, half, y)
        painter.drawPath(wave)
    painter.strokePath(slab, QPen(edge, 1.0))


def _paint_bubbles(painter: QPainter, look: JarLook, scale: float, top: float, half: float) -> None:
    depth = look.liquid_height_cm * scale
    painter.setPen(QPen(QColor(255, 255, 255, 120), 0.8))
    painter.setBrush(QColor(255, 255, 255, 45))
    below = top + max(2.5, look.pellicle_cm * scale)
    for index in range(7):  # placed by a golden-ratio walk: scattered, yet the same every time
        share_x = (index * 0.618 + 0.21) % 1.0 * 2.0 - 1.0
        share_y = (index * 0.414 + 0.05) % 1.0
        y = below + 5.0 + share_y * depth * 0.42
        size = 1.1 + (index % 3) * 0.7
        if y < -2.0 * scale * 0.2:
            painter.drawEllipse(QPointF(share_x * half * 0.82, y), size, size)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _paint_planned_level(painter: QPainter, look: JarLook, scale: float, tokens: Tokens) -> None:
    if look.planned_height_cm <= 0.0:
        return
    half = _radius_at(look.profile, look.planned_height_cm) * scale
    y = -look.planned_height_cm * scale
    ghost = QColor(tokens.accent)
    ghost.setAlpha(26)
    painter.save()
    painter.setClipPath(_outline(look.profile, 0.0, scale))
    widest = max(radius for _, radius in look.profile) * scale
    painter.fillRect(QRectF(-widest, y, 2 * widest, -y + scale), ghost)
    painter.restore()
    pen = QPen(QColor(tokens.accent), 1.6, Qt.PenStyle.DashLine)
    painter.setPen(pen)
    painter.drawLine(QPointF(-half + 2, y), QPointF(half - 2, y))


def _paint_rim(painter: QPainter, look: JarLook, scale: float, tokens: Tokens) -> None:
    radius = (look.profile[-1][1] + WALL_CM + 0.15) * scale
    y = -brim_height_cm(look) * scale
    lip = QRectF(-radius, y - 0.35 * scale, 2 * radius, max(3.0, 0.7 * scale))
    painter.setPen(QPen(QColor(tokens.glass), max(1.2, scale * 0.13)))
    painter.setBrush(QColor(tokens.glass_fill))
    painter.drawRoundedRect(lip, lip.height() / 2, lip.height() / 2)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _paint_shine(painter: QPainter, outer: QPainterPath, look: JarLook, scale: float) -> None:
    box = outer.boundingRect()
    painter.save()
    painter.setClipPath(outer)
    for offset, width, strength in ((0.13, 0.05, 105), (0.22, 0.02, 60)):
        strip = QRectF(
            box.left() + box.width() * offset,
            box.top() + box.height() * 0.08,
            max(1.5, box.width() * width),
            box.height() * 0.80,
        )
        fade = QLinearGradient(strip.topLeft(), strip.bottomLeft())
        fade.setColorAt(0.0, QColor(255, 255, 255, 0))
        fade.setColorAt(0.25, QColor(255, 255, 255, strength))
        fade.setColorAt(0.8, QColor(255, 255, 255, strength // 2))
        fade.setColorAt(1.0, QColor(255, 255, 255, 0))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(fade))
        painter.drawRoundedRect(strip, strip.width() / 2, strip.width() / 2)
    painter.restore()


def _paint_cover(painter: QPainter, look: JarLook, scale: float, tokens: Tokens) -> None:
    """Draw cloth over the rim, tied with a string, its hem hanging in folds."""
    rim = (look.profile[-1][1] + WALL_CM + 0.15) * scale
    rim_y = -brim_height_cm(look) * scale
    head_cm = brim_height_cm(look) - look.liquid_height_cm
    skirt_cm = max(COVER_SKIRT_LEAST_CM, min(COVER_SKIRT_CM, head_cm - COVER_GAP_CM))
    skirt = skirt_cm * scale
    top_y = rim_y - COVER_TOP_CM * scale * 0.8
    flare = rim * 1.10
    cloth = QPainterPath()
    cloth.moveTo(-rim, rim_y)
    cloth.cubicTo(-rim, top_y, -rim * 0.6, top_y, 0, top_y)
    cloth.cubicTo(rim * 0.6, top_y, rim, top_y, rim, rim_y)
    cloth.lineTo(flare, rim_y + skirt)
    folds = 7
    for fold in range(folds):
        x0 = flare - 2 * flare * fold / folds
        x1 = flare - 2 * flare * (fold + 1) / folds
        cloth.quadTo((x0 + x1) / 2, rim_y + skirt + scale * 0.4, x1, rim_y + skirt)
    cloth.closeSubpath()
    painter.fillPath(cloth, QColor(tokens.cloth))
    edge = QColor(tokens.pellicle_edge)
    painter.strokePath(cloth, QPen(edge, 1.0))
    faint = QColor(edge)
    faint.setAlpha(120)
    painter.setPen(QPen(faint, 0.9))
    for fold in range(1, folds):
        x = flare - 2 * flare * fold / folds
        painter.drawLine(QPointF(x * 0.86, rim_y + skirt * 0.42), QPointF(x, rim_y + skirt * 0.96))
    band_y = rim_y + skirt * 0.30
    painter.setPen(QPen(QColor(tokens.accent), max(2.0, scale * 0.28)))
    painter.drawLine(QPointF(-rim * 1.02, band_y), QPointF(rim * 1.02, band_y))


def _paint_steam(painter: QPainter, look: JarLook, scale: float, tokens: Tokens) -> None:
    base = -(brim_height_cm(look) + 0.8) * scale
    pen = QPen(QColor(tokens.muted), max(1.4, scale * 0.16))
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    rise = (STEAM_CM - 1.2) * scale
    for index in (-1, 0, 1):
        x = index * look.profile[-1][1] * scale * 0.5
        wisp = QPainterPath(QPointF(x, base))
        sway = scale * 0.6 * math.cos(index)
        wisp.cubicTo(x + sway, base - rise / 3, x - sway, base - 2 * rise / 3, x, base - rise)
        painter.drawPath(wisp)
