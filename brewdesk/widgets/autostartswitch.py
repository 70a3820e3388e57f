"""The switch for starting with the desktop session. What the desktop reads is the truth."""

from __future__ import annotations

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from brewdesk.services.autostart import AutostartTrouble, SessionStart
from brewdesk.services.wording.autostart import autostart_trouble_words, switch_words
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.settingeditors import SwitchLine


class AutostartSwitch(QWidget):
    """Off until switched on; says so if the desktop does not take it."""

    def __init__(self, session_start: SessionStart, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("setting_autostart")
        self._session_start = session_start
        line = SwitchLine(switch_words())
        self.box = line.box
        self.box.setObjectName("setting_autostart_control")
        self.problem = plain_label("", "error", wraps=True)
        self.problem.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(line)
        column.addWidget(self.problem)
        self.box.clicked.connect(lambda: self._put(self.box.isChecked()))
        line.words.pressed.connect(lambda: self._put(self.box.isChecked()))
        self.show_value()

    def show_value(self) -> None:
        """Show what is so: the desktop's own settings can switch it, too."""
        self.box.setChecked(self._session_start.is_on())

    def showEvent(self, event: QShowEvent) -> None:
        """Look again whenever the page is opened."""
        super().showEvent(event)
        self.show_value()

    def _put(self, wanted: bool) -> None:
        problem = ""
        try:
            self._session_start.put(wanted)
        except AutostartTrouble as trouble:
            problem = autostart_trouble_words(trouble.code)
        self.problem.setText(problem)
        self.problem.setVisible(bool(problem))
        self.show_value()
