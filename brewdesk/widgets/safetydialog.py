"""The limits in use, each with where it comes from."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.wording.limits import limit_lines
from brewdesk.widgets.fields import card, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class SafetyDialog(QDialog):
    """Plain words about safety, and the table of limits with their sources."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("safety_dialog")
        self.setWindowTitle(self.tr("Safety"))
        self.resize(720, 640)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.tr("Safety"), "title"))
        column.addWidget(
            plain_label(
                self.tr(
                    "This program helps you watch your jars; it cannot see, smell or test them. "
                    "Its forecasts are estimates. A pH of 4.2 or less is needed, but does not by "
                    "itself make a drink safe. When in doubt, throw it out: liquid and culture. "
                    "Local rules and licensed practice come first. Kombucha holds some alcohol, "
                    "and is not advised for everyone: ask a doctor in pregnancy, for young "
                    "children, and with a weakened immune system."
                ),
                wraps=True,
            )
        )
        column.addWidget(plain_label(self.tr("Limits in use"), "heading"))
        column.addWidget(self._limits(), 1)
        row = QHBoxLayout()
        row.addStretch(1)
        close = QPushButton(self.tr("Close"))
        close.setDefault(True)
        set_role(close, "primary")
        close.clicked.connect(self.accept)
        row.addWidget(close)
        column.addLayout(row)

    def _limits(self) -> QScrollArea:
        frame, column = card()
        for line in limit_lines():
            column.addWidget(plain_label(f"{line.name}: {line.value}", wraps=True))
            source = plain_label(line.source, "muted", wraps=True)
            source.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            column.addWidget(source)
            column.addSpacing(SPACE)
        column.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidget(frame)
        area.setAccessibleName(self.tr("Limits in use"))
        return area
