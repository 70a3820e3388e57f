"""Dialogs as wide as their type is large, and high enough for what they say."""

from __future__ import annotations

from PySide6.QtWidgets import QDialog


def set_letters(dialog: QDialog, letters: int) -> None:
    """Make a dialog at least so many letters wide."""
    dialog.setMinimumWidth(dialog.fontMetrics().averageCharWidth() * letters)


def fit_height(dialog: QDialog) -> None:
    """Give all words of a dialog their room: it does not grow by itself when a text wraps."""
    layout = dialog.layout()
    if layout is None or not dialog.isVisible():
        return
    layout.activate()
    needed = max(layout.totalHeightForWidth(dialog.width()), layout.totalMinimumSize().height())
    if dialog.height() < needed:
        dialog.resize(dialog.width(), needed)
