"""Labels that take their colour from a role, and nothing else of it."""

from __future__ import annotations

from PySide6.QtWidgets import QLabel


def frameless(label: QLabel) -> QLabel:
    """Keep a label from wearing the ground and border that frames of its role have.

    A QLabel is a QFrame to the style sheet, so a frame's rule reaches it too.
    """
    label.setStyleSheet("background: transparent; border: none;")
    return label
