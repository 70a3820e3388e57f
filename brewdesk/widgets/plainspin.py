"""A number to step through without the tiny arrows: keys, and a field as high as the others."""

from __future__ import annotations

from PySide6.QtWidgets import QAbstractSpinBox, QLineEdit

from brewdesk.widgets.theme import SPACE, TOUCH


def make_plain(spin: QAbstractSpinBox) -> None:
    """Take the arrows off ``spin``; the arrow keys still step."""
    # With ButtonSymbols.NoButtons a styled edit gives its line no width at all.
    spin.setStyleSheet(
        "QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { width: 0; border: none; }"
        "QAbstractSpinBox::up-arrow, QAbstractSpinBox::down-arrow { image: none; width: 0; }"
        "QLineEdit { border: none; padding: 0; min-height: 0; background: transparent; }"
    )
    line = spin.findChild(QLineEdit)
    if line is not None:  # the line ignores a padding from the sheet
        line.setTextMargins(SPACE, 0, SPACE, 0)
    spin.setFixedHeight(TOUCH)
