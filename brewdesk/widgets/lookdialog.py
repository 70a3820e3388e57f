"""The guided look in a window of its own, for a batch, a resting or a growing culture."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from brewdesk.services.records import ImpossibleInput, Look, StoreTrouble
from brewdesk.services.wording.problems import impossible_words, trouble_words
from brewdesk.widgets.dialogbuttons import go_and_leave
from brewdesk.widgets.fields import announce, plain_label
from brewdesk.widgets.lookchecklist import LookChecklist
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

WORDS_MAX = 1500  # with what was ticked still a note


class LookDialog(QDialog):
    """Asks what is to be seen on ``name``.

    ``keep`` records the look with what was ticked and written; what it raises is told and
    the dialog stays. ``looked`` carries both once that is done.
    """

    looked = Signal(object, str)  # Look, what was ticked and written

    def __init__(
        self,
        name: str,
        parent: QWidget | None = None,
        *,
        keep: Callable[[Look, str], object] | None = None,
    ) -> None:
        super().__init__(parent)
        self._keep = keep
        self.setObjectName("look_dialog")
        self.setWindowTitle(self.tr("Look for mold"))
        self.checklist = LookChecklist()
        self.words = QLineEdit()
        self.words.setObjectName("look_words")
        self.words.setMaxLength(WORDS_MAX)
        self.words.setPlaceholderText(self.tr("In your own words (optional)"))
        self.words.setAccessibleName(self.tr("In your own words"))
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, SPACE)
        inner.setSpacing(SPACE)
        heading = self.tr("What do you see on {name}?").format(name=name)
        inner.addWidget(plain_label(heading, "title", wraps=True))
        self.before = QVBoxLayout()  # room for what else is asked at the same look
        inner.addLayout(self.before)
        inner.addWidget(self.checklist)
        inner.addStretch(1)
        area = QScrollArea()
        area.setObjectName("look_area")
        area.setAccessibleName(self.tr("What you see"))
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(content)
        self.problem = plain_label("", "error", wraps=True)
        self.problem.setObjectName("look_problem")
        self.problem.hide()
        buttons, self.go = go_and_leave(
            self, self.tr("Record this look"), self.tr("Cancel"), go_name="look_go"
        )
        foot = QVBoxLayout()
        foot.setContentsMargins(3 * SPACE, 0, 3 * SPACE, 2 * SPACE)
        foot.setSpacing(SPACE)
        foot.addWidget(self.checklist.finding)  # always in sight, however long the list is
        foot.addWidget(self.problem)
        last = QHBoxLayout()
        last.setSpacing(SPACE)
        last.addWidget(self.words, 1)
        last.addWidget(buttons)
        foot.addLayout(last)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(area, 1)
        column.addLayout(foot)
        self.resize(124 * SPACE, 92 * SPACE)
        self.checklist.changed.connect(self._on_changed)
        self.go.clicked.connect(self.record)
        self._on_changed()

    def text(self) -> str:
        """Return what was ticked, and after it what was written."""
        parts = (self.checklist.text(), self.words.text().strip())
        return ". ".join(part for part in parts if part)

    def record(self) -> None:
        """Keep the look and close; or say what kept it from being kept."""
        look, text = self.checklist.look(), self.text()
        if look is None:
            return
        try:
            if self._keep is not None:
                self._keep(look, text)
        except ImpossibleInput as fault:
            self._say(impossible_words(fault))
            return
        except StoreTrouble as trouble:
            self._say(trouble_words(trouble))
            return
        self.accept()
        self.looked.emit(look, text)

    def _say(self, text: str) -> None:
        self.problem.setText(text)
        self.problem.setVisible(bool(text))
        announce(self, text)

    def _on_changed(self) -> None:
        look = self.checklist.look()
        self.go.setEnabled(look is not None)
        is_mold = look is Look.MOLD
        self.go.setText(
            self.tr("Record it and discard…") if is_mold else self.tr("Record this look")
        )
        set_role(self.go, "danger" if is_mold else "primary")
