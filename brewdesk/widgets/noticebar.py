"""Bars inside the window: troubles on top, the last act with its undo at the bottom."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QToolButton, QWidget

from brewdesk.services.history import History
from brewdesk.services.wording.acts import act_text
from brewdesk.services.wording.amounts import Show
from brewdesk.widgets.fields import announce
from brewdesk.widgets.icons import icon
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE, tokens


class NoticeBar(QFrame):
    """One message at a time, in the layout, until it is dismissed or answered."""

    open_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("notice_bar")
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * SPACE, 2, SPACE // 2, 2)
        row.setSpacing(SPACE)
        self.words = QLabel()
        self.words.setTextFormat(Qt.TextFormat.PlainText)
        self.words.setWordWrap(True)
        row.addWidget(self.words, 1)
        self.open_button = QPushButton(self.tr("Show"))
        self.open_button.setObjectName("notice_open")
        self.open_button.clicked.connect(self._on_open)
        set_role(self.open_button, "quiet")
        row.addWidget(self.open_button)
        self.close_button = QToolButton()
        self.close_button.setAccessibleName(self.tr("Dismiss"))
        self.close_button.clicked.connect(self.hide)
        set_role(self.close_button, "quiet")
        row.addWidget(self.close_button)
        self.hide()

    def say(
        self, text: str, role: str = "warn", *, can_open: bool = False, answer: str = ""
    ) -> None:
        """Show ``text`` as 'inform', 'good', 'warn' or 'danger', with a way to its page.

        ``answer`` is what the button says instead, if it does something else.
        """
        set_role(self, role)
        self.words.setText(text)
        self.open_button.setText(answer or self.tr("Show"))
        self.open_button.setVisible(can_open or bool(answer))
        self.restyle()
        self.show()
        announce(self, text)

    def restyle(self) -> None:
        """Draw the icon in the colours in use."""
        self.close_button.setIcon(icon("close"))

    def _on_open(self) -> None:
        self.hide()
        self.open_wanted.emit()


class ActBar(QWidget):
    """The newest act in words, with a button that takes it back."""

    undo_wanted = Signal()

    def __init__(self, history: History, show: Show, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._history = history
        self._show = show
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACE)
        self.undo_button = QPushButton(self.tr("Undo"))
        self.undo_button.setObjectName("undo_last")
        set_role(self.undo_button, "quiet")
        self.undo_button.clicked.connect(self.undo_wanted)
        self.words = QLabel()
        self.words.setObjectName("last_act")
        self.words.setTextFormat(Qt.TextFormat.PlainText)
        set_role(self.words, "muted")
        row.addWidget(self.undo_button)
        row.addWidget(self.words, 1)

    def refresh(self) -> None:
        """Say the newest act."""
        act = self._history.undo_act()
        self.undo_button.setIcon(icon("undo", tokens().accent))
        self.undo_button.setEnabled(act is not None)
        text = act_text(act, self._show) if act is not None else self.tr("Nothing to take back")
        metrics = self.words.fontMetrics()
        self.words.setText(metrics.elidedText(text, Qt.TextElideMode.ElideRight, 420))
        self.words.setToolTip("")
        self.undo_button.setAccessibleName(
            self.tr("Undo: {act}").format(act=text) if act is not None else self.tr("Undo")
        )
