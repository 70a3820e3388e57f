"""How large the window opens: as it was made to be, but never larger than its screen."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QWidget

PLEASANT = QSize(1280, 800)
FRAME = QSize(4, 40)  # room for the frame and title bar that the desktop puts around it


def size_for(available: QSize) -> QSize:
    """Return the size to open with, given the part of the screen that windows may use."""
    return PLEASANT.boundedTo(available - FRAME)


def fit_to_screen(window: QWidget) -> None:
    """Give ``window`` its opening size."""
    window.resize(size_for(window.screen().availableGeometry().size()))
