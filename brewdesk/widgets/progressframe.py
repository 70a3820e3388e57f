"""The frame of a dialog for slow work: words, a bar with Stop, a message, buttons."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent, QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.carryingout import CarryingOut
from brewdesk.services.desk import Desk
from brewdesk.services.exporttrouble import ExportTrouble
from brewdesk.services.records import StoreTrouble
from brewdesk.services.wording.exports import export_trouble_words
from brewdesk.services.wording.problems import trouble_words
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_HUNDRED = 100


class ProgressDialog(QDialog):
    """A dialog around a `CarryingOut`. Closing it gives up what is under way."""

    def __init__(self, desk: Desk, *, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.setObjectName(f"{name}_dialog")
        self.setModal(True)
        # No child: what comes after the dialog is gone must find it, and be heard by nobody.
        # Its signals go to methods alone, which hold nothing: a lambda would keep the dialog.
        self.work = CarryingOut(desk.jobs, desk.clock)
        self.title = plain_label("", "title", wraps=True)
        self.words = plain_label("", "", wraps=True)
        self.bar = QProgressBar()
        self.bar.setObjectName(f"{name}_progress")
        self.bar.setRange(0, _HUNDRED)
        self.bar.setAccessibleName(self.tr("How much is done"))
        self.stop = self.button(f"{name}_stop", self.tr("Stop"))
        self.message = plain_label("", "", wraps=True)
        self.message.setObjectName(f"{name}_message")
        self.go = self.button(f"{name}_go", "")
        set_role(self.go, "primary")
        self.leave = self.button(f"{name}_leave", self.tr("Cancel"))
        self.progress = QWidget()
        line = QHBoxLayout(self.progress)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(2 * SPACE)
        line.addWidget(self.bar, 1)
        line.addWidget(self.stop)
        self.buttons = QDialogButtonBox(self)
        self.buttons.addButton(self.go, QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.addButton(self.leave, QDialogButtonBox.ButtonRole.RejectRole)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
        self.column.setSpacing(2 * SPACE)
        self.column.addWidget(self.title)
        self.column.addWidget(self.words)
        self.column.addWidget(self.message)
        self.column.addWidget(self.progress)
        self.column.addStretch(1)
        self.column.addWidget(self.buttons)
        self.setMinimumWidth(80 * SPACE)
        self.progress.hide()
        self.message.hide()
        self.stop.clicked.connect(self.work.cancel)
        self.buttons.rejected.connect(self.reject)
        self.work.progressed.connect(self._on_progressed)
        self.work.failed.connect(self._on_failed)

    def _on_progressed(self, share: float) -> None:
        self.bar.setValue(round(_HUNDRED * share))

    def set_words(self, title: str, words: str) -> None:
        """Say what the dialog is for."""
        self.setWindowTitle(title)
        self.title.setText(title)
        self.words.setText(words)

    def button(self, name: str, text: str) -> QPushButton:
        """Make a button that Enter does not press by accident."""
        made = QPushButton(text)
        made.setObjectName(name)
        made.setAutoDefault(False)
        return made

    def set_busy(self, is_busy: bool) -> None:
        """Show that work is under way, or no more."""
        if is_busy:
            self.bar.setValue(0)
            self.say("")
        self.progress.setVisible(is_busy)
        self.go.setEnabled(not is_busy)
        self.fit()
        if is_busy:
            self.stop.setFocus(Qt.FocusReason.OtherFocusReason)

    def say(self, text: str, role: str = "") -> None:
        """Say something below the words, also to those who listen."""
        set_role(self.message, role)
        self.message.setText(text)
        self.message.setVisible(bool(text))
        announce(self, text)
        self.fit()

    def fit(self) -> None:
        """Make room for all words: a dialog does not grow by itself when a text wraps."""
        self.column.activate()
        needed = self.column.totalHeightForWidth(self.width())
        if self.height() < needed:
            self.resize(self.width(), needed)

    def showEvent(self, event: QShowEvent) -> None:
        """Begin with room for all words."""
        super().showEvent(event)
        self.fit()

    def _on_failed(self, trouble: ExportTrouble | StoreTrouble) -> None:
        self.set_busy(False)
        if isinstance(trouble, ExportTrouble):
            is_wish = trouble.code == "cancelled"
            self.say(export_trouble_words(trouble), "" if is_wish else "error")
        else:
            self.say(trouble_words(trouble), "error")

    def done(self, result: int) -> None:
        """Give up what is under way, then close."""
        self.work.cancel()
        super().done(result)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Give up what is under way."""
        self.work.cancel()
        super().closeEvent(event)
