"""Shown instead of the window when the pantry's file cannot be opened as it is."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE

_WIDTH = 100 * SPACE


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """One backup to choose: its line in the list, what it holds, whether it can be used."""

    line: str
    words: str
    is_sound: bool


class RecoveryDialog(QDialog):
    """Says what is wrong and where the file is; offers what can be done.

    ``restore_wanted`` carries the place of the backup chosen; ``rescue_wanted``: read out of
    the damaged file what can be read; ``new_wanted``: a new pantry, what stands there set
    aside. That is asked once more where a file stands in its place.
    """

    restore_wanted = Signal(int)
    rescue_wanted = Signal()
    new_wanted = Signal()

    def __init__(
        self,
        text: str,
        path: str,
        offers: list[Offer],
        *,
        can_begin_anew: bool,
        can_rescue: bool = False,
        is_there: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._offers = offers
        self._is_there = is_there
        self._is_asked = False
        self.setObjectName("recovery_dialog")
        self.setWindowTitle("brewdesk")
        self.setMinimumWidth(_WIDTH)
        self._build(text, path)
        self.begin.setVisible(can_begin_anew)
        self.rescue.setVisible(can_rescue)
        self._choose_newest_sound()

    def _build(self, text: str, path: str) -> None:
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        self.column.setSpacing(2 * SPACE)
        self.column.addWidget(plain_label(self.tr("Your pantry could not be opened"), "heading"))
        self.words = plain_label(text, wraps=True)
        self.column.addWidget(self.words)
        where = plain_label(path, "muted", wraps=True)
        where.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.column.addWidget(where)
        self.choice = QComboBox()
        self.choice.setObjectName("recovery_backup")
        self.choice.setAccessibleName(self.tr("Backup"))
        self.choice.addItems([offer.line for offer in self._offers])
        self.choice.setVisible(bool(self._offers))
        self.choice.currentIndexChanged.connect(self._on_chosen)
        self.column.addWidget(self.choice)
        self.inside = plain_label("", "", wraps=True)
        self.inside.setObjectName("recovery_inside")
        self.inside.setVisible(bool(self._offers))
        self.column.addWidget(self.inside)
        self.aside = plain_label(
            self.tr("What stands there now is set aside, not deleted."), "muted", wraps=True
        )
        self.column.addWidget(self.aside)
        self.column.addLayout(self._buttons())

    def _buttons(self) -> QHBoxLayout:
        self.leave = QPushButton(self.tr("Close"))
        self.leave.clicked.connect(self.reject)
        self.begin = QPushButton(self.tr("Begin a new pantry"))
        self.begin.setObjectName("recovery_new")
        self.begin.clicked.connect(self._on_begin)
        self.rescue = QPushButton(self.tr("Rescue what can be read"))
        self.rescue.setObjectName("recovery_rescue")
        self.rescue.clicked.connect(self._on_rescue)
        self.restore = QPushButton(self.tr("Put the backup in its place"))
        self.restore.setObjectName("recovery_restore")
        self.restore.setVisible(bool(self._offers))
        self.restore.clicked.connect(self._on_restore)
        row = QHBoxLayout()
        row.addWidget(self.leave)
        row.addStretch(1)
        for button in (self.begin, self.rescue, self.restore):
            button.setAutoDefault(False)
            row.addWidget(button)
        return row

    def _choose_newest_sound(self) -> None:
        place = next((place for place, each in enumerate(self._offers) if each.is_sound), None)
        if self._offers:
            self.choice.setCurrentIndex(place or 0)
            self._on_chosen()
        first = self.rescue if place is None else self.restore
        set_role(first, "primary")
        self._fit()

    def _on_chosen(self) -> None:
        offer = self._offers[self.choice.currentIndex()]
        self.inside.setText(offer.words)
        set_role(self.inside, "" if offer.is_sound else "error")
        self.restore.setEnabled(offer.is_sound)
        self._fit()

    def _fit(self) -> None:
        """Make room for all words: a dialog does not grow by itself when a text wraps."""
        self.column.activate()
        width = max(_WIDTH, self.column.totalMinimumSize().width())  # buttons in large type
        self.resize(width, max(1, self.column.totalHeightForWidth(width)))

    def _on_begin(self) -> None:
        if self._is_there and not self._is_asked:
            self._is_asked = True
            self.aside.setText(
                self.tr(
                    "A new pantry begins empty. Nothing of the old one will be in it; the old "
                    "file is set aside, not deleted. Press the button once more to do it."
                )
            )
            set_role(self.aside, "warn")
            self.begin.setText(self.tr("Yes, begin a new pantry"))
            self._fit()
            return
        self.accept()
        self.new_wanted.emit()

    def _on_rescue(self) -> None:
        self.accept()
        self.rescue_wanted.emit()

    def _on_restore(self) -> None:
        place = self.choice.currentIndex()
        self.accept()
        self.restore_wanted.emit(place)


class RescueDialog(QDialog):
    """Says what a rescue brought, and asks whether to go on with it. Accepted means yes."""

    def __init__(self, text: str, path: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("rescue_dialog")
        self.setWindowTitle("brewdesk")
        self.setMinimumWidth(_WIDTH)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.tr("This could be rescued"), "heading"))
        self.words = plain_label(text, wraps=True)
        self.words.setObjectName("rescue_words")
        column.addWidget(self.words)
        where = plain_label(path, "muted", wraps=True)
        where.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        column.addWidget(where)
        column.addWidget(
            plain_label(
                self.tr(
                    "It is a file of its own. Put in the pantry's place, the damaged file is set "
                    "aside, not deleted. Left, both stay, and you can choose a backup instead."
                ),
                "muted",
                wraps=True,
            )
        )
        self.leave = QPushButton(self.tr("Leave it for now"))
        self.leave.setObjectName("rescue_leave")
        self.leave.clicked.connect(self.reject)
        self.use = QPushButton(self.tr("Go on with it"))
        self.use.setObjectName("rescue_use")
        set_role(self.use, "primary")
        self.use.clicked.connect(self.accept)
        row = QHBoxLayout()
        row.addWidget(self.leave)
        row.addStretch(1)
        row.addWidget(self.use)
        column.addLayout(row)
        column.activate()
        self.resize(self.width(), max(1, column.totalHeightForWidth(_WIDTH)))
