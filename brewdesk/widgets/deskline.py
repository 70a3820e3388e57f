"""A line in the window that stands there as long as the shared store cannot be reached."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from brewdesk.services.desks import Desks
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class DeskLine(QFrame):
    """Says that the desk is not connected; it goes by itself when it is again."""

    def __init__(self, desks: Desks, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("desk_line")
        set_role(self, "warn")
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * SPACE, SPACE - 2, 2 * SPACE, SPACE - 2)
        self.words = plain_label(
            self.tr(
                "Not connected to the server: what you see may be out of date, and nothing can "
                "be saved until it answers. What you have typed stays where it is."
            ),
            wraps=True,
        )
        row.addWidget(self.words, 1)
        self.setVisible(False)
        desks.connection_changed.connect(self._on_connection)

    def _on_connection(self, is_connected: bool) -> None:
        self.setVisible(not is_connected)
        announce(self, self.tr("Connected again.") if is_connected else self.words.text())
