"""Painted photos for the invented pantry: a film from above as it grows, marked as invented."""

from __future__ import annotations

import math
from datetime import timedelta
from functools import partial
from random import Random

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPainterPath, QPen, QRadialGradient

from brewdesk.models.pictures import jpeg_of, look_into
from brewdesk.services.desk import Desk
from brewdesk.services.photofiles import PhotoTrouble, Source
from brewdesk.services.photos import PhotoOwner
from brewdesk.services.records import BatchStage

_WIDTH, _HEIGHT = 640, 480
_DAYS = (2, 6, 9)


def _t(text: str) -> str:
    return QCoreApplication.translate("DemoPhotos", text)


def add_demo_photos(desk: Desk) -> None:
    """Give the oldest souring batch of the invented pantry its photos, as one act.

    A pantry whose folder takes no photos goes without.
    """
    batches = desk.batches.all(stages=(BatchStage.SOURING,))
    begun = [batch for batch in batches if batch.started_at is not None]
    if not begun:
        return
    oldest = min(begun, key=lambda batch: (batch.started_at or batch.planned_at, batch.id))
    begun_at = oldest.started_at or oldest.planned_at
    told = []
    try:
        for day in _DAYS:
            at = begun_at + timedelta(days=day)
            if at <= desk.clock.now():
                source = Source("", make=partial(_painted_jpeg, day))
                told.append((desk.photos.take_in(source, look_into), at, _captions()[day]))
    except PhotoTrouble:
        return
    desk.photos.add_told(PhotoOwner(batch_id=oldest.id), told)


def _captions() -> dict[int, str]:
    return {
        2: _t("A first skin (painted, invented)"),
        6: _t("Paler and even (painted, invented)"),
        9: _t("Thick, with a ridge and a bubble (painted, invented)"),
    }


def _painted_jpeg(day: int) -> bytes:
    image = QImage(_WIDTH, _HEIGHT, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(image.rect(), QColor("#a97c50"))
    painter.setPen(QPen(QColor("#8f683f"), 3))
    for y in range(60, _HEIGHT, 120):
        painter.drawLine(0, y, _WIDTH, y + 8)
    _jar(painter, QPointF(_WIDTH / 2, _HEIGHT / 2 - 14), 196.0, day)
    font = painter.font()
    font.setPixelSize(22)
    painter.setFont(font)
    painter.setPen(QColor("#fff8ea"))
    words = _t("Painted, invented: day {n}").format(n=day)
    painter.drawText(
        QRectF(16, _HEIGHT - 42, _WIDTH - 32, 32), Qt.AlignmentFlag.AlignHCenter, words
    )
    painter.end()
    return jpeg_of(image)


def _jar(painter: QPainter, middle: QPointF, radius: float, day: int) -> None:
    random = Random(day)
    tea = QRadialGradient(middle, radius)
    tea.setColorAt(0.0, QColor("#c07f2f"))
    tea.setColorAt(1.0, QColor("#8f4d1a"))
    painter.setBrush(tea)
    painter.setPen(QPen(QColor("#dfe6e4"), 12))
    painter.drawEllipse(middle, radius, radius)
    cover = min(1.0, 0.35 + day / 14.0)
    film = QColor("#f1e2c0")
    film.setAlphaF(cover)
    edge = QColor("#a98a57")
    edge.setAlphaF(cover)
    path = QPainterPath()
    for step in range(73):
        angle = math.radians(step * 5.0)
        reach = radius * (0.95 - 0.02 * random.random())
        at = middle + QPointF(math.cos(angle), math.sin(angle)) * reach
        if step == 0:
            path.moveTo(at)
        else:
            path.lineTo(at)
    path.closeSubpath()
    painter.setPen(QPen(edge, 3))
    painter.setBrush(film)
    painter.drawPath(path)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for number in range(day // 3):
        painter.drawArc(
            QRectF(middle.x() - 120 + 22 * number, middle.y() - 90 + 30 * number, 210, 150),
            (20 + 70 * number) * 16,
            110 * 16,
        )
    painter.setPen(QPen(QColor(255, 255, 255, 150), 2))
    for _ in range(day):
        angle, reach = random.uniform(0, math.tau), radius * random.uniform(0.1, 0.8)
        at = middle + QPointF(math.cos(angle), math.sin(angle)) * reach
        size = random.uniform(2.0, 7.0)
        painter.drawEllipse(at, size, size)
