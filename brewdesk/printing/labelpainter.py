"""Paints a label that was fitted into its rectangle: always dark on light paper."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen

from brewdesk.printing.labelfitting import (
    FRAME_MM,
    UNITS_PER_MM,
    FittedLabel,
    Setting,
    block_font,
)
from brewdesk.printing.qrpainter import paint_modules
from brewdesk.services.labelgeometry import RectMm

INK = QColor("#1c1a17")
FRAME_INK = QColor("#5b544a")
STAMP_INK = QColor(178, 34, 34, 70)
_RULE_MM = 0.15
_STAMP_LENGTH, _STAMP_HEIGHT = 0.6, 0.5  # of the diagonal, of the shorter side
_STAMP_PX = 1000  # of the type that is scaled to the label


def paint_label(painter: QPainter, label: FittedLabel, *, has_frame: bool) -> None:
    """Paint a label with its upper left corner at the origin; the painter counts in mm."""
    painter.save()
    if has_frame:
        paint_frame(painter, RectMm(0, 0, label.width_mm, label.height_mm), label.corner_mm)
    if label.code_place is not None:
        paint_modules(painter, label.modules, label.code_place, INK)
    if label.rule is not None:
        painter.setPen(QPen(FRAME_INK, _RULE_MM))
        rule = label.rule
        painter.drawLine(QPointF(rule.x, rule.y), QPointF(rule.right, rule.y))
    painter.scale(1 / UNITS_PER_MM, 1 / UNITS_PER_MM)
    painter.setPen(INK)
    for block in label.blocks:
        font = block_font(block.size_pt, label.family, is_bold=block.is_bold)
        setting = Setting(block.text, font, block.place.width)
        at = QPointF(block.place.x, block.place.y) * UNITS_PER_MM
        setting.layout.draw(painter, at)
    painter.restore()


def paint_frame(painter: QPainter, frame: RectMm, corner_mm: float) -> None:
    """Draw a label's outline, the middle of the stroke on its edge."""
    pen = QPen(FRAME_INK, FRAME_MM)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    rect = QRectF(frame.x, frame.y, frame.width, frame.height)
    if corner_mm > 0:
        painter.drawRoundedRect(rect, corner_mm, corner_mm)
    else:
        painter.drawRect(rect)


def paint_stamp(
    painter: QPainter, text: str, width_mm: float, height_mm: float, family: str
) -> None:
    """Write a word across a label, along its rising diagonal."""
    font = block_font(10.0, family, is_bold=True)
    font.setPixelSize(_STAMP_PX)
    metrics = QFontMetricsF(font)
    scale = min(
        _STAMP_LENGTH * math.hypot(width_mm, height_mm) / metrics.horizontalAdvance(text),
        _STAMP_HEIGHT * min(width_mm, height_mm) / metrics.height(),
    )
    painter.save()
    painter.translate(width_mm / 2, height_mm / 2)
    painter.rotate(-math.degrees(math.atan2(height_mm, width_mm)))
    painter.scale(scale, scale)
    painter.setFont(font)
    painter.setPen(STAMP_INK)
    room = QRectF(metrics.boundingRect(text))
    painter.drawText(-room.center(), text)
    painter.restore()
