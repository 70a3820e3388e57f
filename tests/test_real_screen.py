"""The ground on which the other screen tests stand: a window reaches the X server's pixels."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QColor, QGuiApplication, QPalette
from PySide6.QtWidgets import QWidget

pytestmark = pytest.mark.screen


def test_a_window_is_really_painted_on_the_screen(qtbot):
    colour = QColor(201, 94, 20)
    window = QWidget()
    palette = window.palette()
    palette.setColor(QPalette.ColorRole.Window, colour)
    window.setPalette(palette)
    window.resize(200, 100)
    qtbot.addWidget(window)

    with qtbot.waitExposed(window):
        window.show()

    def pixel_on_the_screen() -> QColor:
        # Window 0 is the whole screen as the server holds it, not what the widget would paint.
        centre = window.mapToGlobal(window.rect().center())
        return window.screen().grabWindow(0).toImage().pixelColor(centre)

    qtbot.waitUntil(lambda: pixel_on_the_screen() == colour)
    assert QGuiApplication.platformName() == "xcb"
