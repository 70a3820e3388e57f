"""Paints a label that was fitted into its rectangle: always dark on light paper."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

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
_RULE_MM = 0.15


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
