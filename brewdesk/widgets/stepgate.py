"""What keeps starter and culture out of the tea, and the written way past it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.records import Verdict
from brewdesk.widgets.fields import Disclosure, FieldRow
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE
from brewdesk.widgets.verdictcard import VerdictCard


class StepGate(QWidget):
    """The reason why a step is shut. ``override_wanted`` carries the maker's own reason."""

    override_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._card: VerdictCard | None = None
        self._disclosure = Disclosure(self.tr("Put it in all the same"))
        self._disclosure.button.setObjectName("gate_open")
        self.reason = QLineEdit()
        self.reason.setObjectName("gate_reason")
        self.reason_row = FieldRow(
            self.tr("Your reason, kept with the batch"), self.reason, lines=0
        )
        self.button = QPushButton(self.tr("Put it in on my word"))
        self.button.setObjectName("gate_override")
        self.button.setEnabled(False)
        set_role(self.button, "danger")
        body = QVBoxLayout(self._disclosure.body)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        body.addWidget(self.reason_row)
        body.addWidget(self.button)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(SPACE // 2)
        self._layout.addWidget(self._disclosure)
        self.reason.textChanged.connect(self._on_reason)
        self.button.clicked.connect(self._on_override)

    @property
    def disclosure(self) -> Disclosure:
        """The part that opens the written way."""
        return self._disclosure

    def verdict(self) -> Verdict | None:
        """Return the verdict shown."""
        return None if self._card is None else self._card.verdict

    def show_verdict(self, verdict: Verdict) -> None:
        """Say why the step is shut."""
        if self._card is not None and self._card.verdict == verdict:
            return
        if self._card is not None:
            self._card.hide()
            self._card.deleteLater()
        self._card = VerdictCard(verdict, self)
        self._layout.insertWidget(0, self._card)

    def _on_reason(self, text: str) -> None:
        self.button.setEnabled(bool(text.strip()))

    def _on_override(self) -> None:
        self.override_wanted.emit(self.reason.text().strip())
