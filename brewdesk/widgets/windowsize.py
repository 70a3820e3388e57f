"""How large the window opens and where: as it was left, but never off the screens there are."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSize
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

PLEASANT = QSize(1280, 800)
FRAME = QSize(4, 40)  # room for the frame and title bar that the desktop puts around it
_LEAST_SEEN = QSize(200, 40)  # of a window's upper edge, to take hold of it


def size_for(available: QSize) -> QSize:
    """Return the size to open with, given the part of the screen that windows may use."""
    return PLEASANT.boundedTo(available - FRAME)


def fit_to_screen(window: QWidget) -> None:
    """Give ``window`` its opening size."""
    window.resize(size_for(window.screen().availableGeometry().size()))


def place_on(screens: Sequence[QRect], remembered: QRect) -> QRect:
    """Return where a window can stand that stood at ``remembered``.

    ``screens`` are the parts that windows may use, the first screen first. A place that
    none of them shows any more becomes one in the middle of the first.
    """
    grip = QRect(remembered.topLeft(), QSize(remembered.width(), _LEAST_SEEN.height()))
    seen = [(grip.intersected(screen), screen) for screen in screens]
    fitting = [
        screen
        for part, screen in seen
        if part.width() >= min(_LEAST_SEEN.width(), remembered.width())
        and part.height() >= _LEAST_SEEN.height() // 2
    ]
    home = fitting[0] if fitting else screens[0]
    size = remembered.size().boundedTo(home.size() - FRAME)
    if not fitting:
        free = home.size() - size
        return QRect(home.x() + free.width() // 2, home.y() + free.height() // 2, *size.toTuple())
    left = min(max(remembered.x(), home.left()), home.right() + 1 - size.width())
    top = min(max(remembered.y(), home.top()), home.bottom() + 1 - size.height())
    return QRect(left, top, size.width(), size.height())


def put_back(window: QWidget, remembered: QRect) -> None:
    """Put ``window`` where it was, as far as the screens of now allow."""
    screens = [screen.availableGeometry() for screen in QGuiApplication.screens()]
    if not screens:
        fit_to_screen(window)
        return
    place = place_on(screens, remembered)
    window.resize(place.size())
    window.move(place.topLeft())
