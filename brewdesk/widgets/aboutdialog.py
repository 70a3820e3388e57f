"""Versions, licences of what the program stands on, and where the data lie."""

from __future__ import annotations

import sqlite3
import sys

from PySide6.QtCore import Qt, qVersion
from PySide6.QtWidgets import QDialog, QFormLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk import __version__
from brewdesk.services.desk import Desk
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class AboutDialog(QDialog):
    """What this program is and what it runs on."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("about_dialog")
        self.setWindowTitle(self.tr("About brewdesk"))
        self.setMinimumWidth(560)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label("brewdesk", "title"))
        column.addWidget(
            plain_label(
                self.tr(
                    "A window for the pantry: plan, brew, watch and remember kombucha, jar by "
                    "jar. It uses no network, unless you have it share a pantry on a server "
                    "of yours. MIT licence; the typeface is Atkinson "
                    "Hyperlegible Next under the SIL Open Font License."
                ),
                wraps=True,
            )
        )
        form = QFormLayout()
        form.setHorizontalSpacing(3 * SPACE)
        form.setVerticalSpacing(SPACE)
        for name, value in (
            (self.tr("Version"), __version__),
            (self.tr("Python"), sys.version.split()[0]),
            (self.tr("Qt"), qVersion()),
            (self.tr("SQLite"), sqlite3.sqlite_version),
            (self.tr("Your pantry"), desk.place),
        ):
            value_label = plain_label(value, wraps=True)
            value_label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            form.addRow(plain_label(name, "muted"), value_label)
        column.addLayout(form)
        row = QHBoxLayout()
        row.addStretch(1)
        close = QPushButton(self.tr("Close"))
        close.setDefault(True)
        set_role(close, "primary")
        close.clicked.connect(self.accept)
        row.addWidget(close)
        column.addLayout(row)
