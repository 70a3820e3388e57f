"""Asked before the program is left while a step's timer runs: closed, it cannot ring."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPushButton, QVBoxLayout, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Step
from brewdesk.services.wording.moments import time_words
from brewdesk.services.wording.stages import name_of
from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


def steps_that_would_not_ring(desk: Desk) -> tuple[Step, ...]:
    """Return the running steps whose time is not over yet, the nearest first."""
    now = desk.clock.now()
    return tuple(
        step
        for step in desk.brewing.running_steps()
        if step.ends_at is not None and step.ends_at > now
    )


class ClosingDialog(QDialog):
    """Names the timers that run on. ``close_wanted`` means: leave all the same."""

    close_wanted = Signal()

    def __init__(
        self, desk: Desk, steps: tuple[Step, ...], parent: QWidget | None = None, *, may_hide: bool
    ) -> None:
        super().__init__(parent)
        self.setObjectName("closing_dialog")
        self.setWindowTitle(self.tr("A timer is running"))
        self.setModal(True)
        self.setMinimumWidth(460)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(SPACE)
        column.addWidget(plain_label(self.tr("Close while a timer is running?"), "heading"))
        zone = desk.clock.zone()
        for step in steps:
            if step.ends_at is None:
                continue
            words = self.tr("{batch}: “{step}” ends at {time}.").format(
                batch=desk.batches.get(step.batch_id).name,
                step=name_of(step.kind),
                time=time_words(step.ends_at, zone),
            )
            column.addWidget(plain_label(words, wraps=True))
        advice = self.tr("It goes on while brewdesk is closed, but nothing will ring.")
        if not may_hide:
            advice += " " + self.tr("Settings can keep brewdesk running in the tray instead.")
        column.addWidget(plain_label(advice, "muted", wraps=True))
        column.addSpacing(SPACE)
        box = QDialogButtonBox(self)
        self.stay = QPushButton(self.tr("Keep it open"))
        self.stay.setObjectName("closing_stay")
        self.stay.setDefault(True)
        set_role(self.stay, "primary")
        self.go = QPushButton(self.tr("Close all the same"))
        self.go.setObjectName("closing_go")
        self.go.setAutoDefault(False)
        box.addButton(self.stay, QDialogButtonBox.ButtonRole.RejectRole)
        box.addButton(self.go, QDialogButtonBox.ButtonRole.DestructiveRole)
        self.stay.clicked.connect(self.reject)
        self.go.clicked.connect(self._on_go)
        column.addWidget(box)
        self.stay.setFocus()

    def _on_go(self) -> None:
        self.accept()
        self.close_wanted.emit()
