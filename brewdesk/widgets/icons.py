"""The program's own line icons, tinted with the colours in use."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QGuiApplication, QIcon, QImage, QPainter, QPixmap

from brewdesk.paths import resource
from brewdesk.widgets.theme import tokens

_KEPT = 256


def icon(name: str, colour: str | None = None, size: int = 24) -> QIcon:
    """Icon ``name`` of ``resources/icons`` in ``colour`` (the ink by default)."""
    made = QIcon()
    made.addPixmap(pixmap(name, colour or tokens().ink, size))
    made.addPixmap(pixmap(name, tokens().muted, size), QIcon.Mode.Disabled)
    return made


def pixmap(name: str, colour: str, size: int) -> QPixmap:
    """Draw the icon at the screen's own resolution."""
    screen = QGuiApplication.primaryScreen()
    image = _drawn(name, colour, size, screen.devicePixelRatio() if screen is not None else 1.0)
    return QPixmap.fromImage(image)


@lru_cache(maxsize=_KEPT)
def _drawn(name: str, colour: str, size: int, ratio: float) -> QImage:
    # An image, since a pixmap must not outlive the application.
    from PySide6.QtSvg import QSvgRenderer

    text = resource("icons", f"{name}.svg").read_text(encoding="utf-8")
    renderer = QSvgRenderer(QByteArray(text.replace("currentColor", colour).encode()))
    made = QImage(QSize(size, size) * ratio, QImage.Format.Format_ARGB32_Premultiplied)
    made.setDevicePixelRatio(ratio)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    renderer.render(painter, QRectF(0, 0, size, size))
    painter.end()
    return made


def program_icon() -> QIcon:
    """Icon of window and tray."""
    return QIcon(pixmap("brewdesk", "#000000", 64))
