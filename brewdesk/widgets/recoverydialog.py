"""Shown instead of the window when the pantry's file cannot be opened as it is."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from brewdesk.widgets.fields import plain_label
from brewdesk.widgets.stylesheet import set_role
from brewdesk.widgets.theme import SPACE


class RecoveryDialog(QDialog):
    """Says what is wrong and where the file is; offers the backups there are.

    ``restore_wanted`` carries the index of the backup chosen, ``new_wanted`` says that a
    new pantry shall be begun (offered only where no file stands in its place).
    """

    restore_wanted = Signal(int)
    new_wanted = Signal()

    def __init__(
        self,
        text: str,
        path: str,
        backups: list[str],
        *,
        can_begin_anew: bool,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setObjectName("recovery_dialog")
        self.setWindowTitle("brewdesk")
        self.setMinimumWidth(560)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * SPACE, 3 * SPACE, 3 * SPACE, 2 * SPACE)
        column.setSpacing(2 * SPACE)
        column.addWidget(plain_label(self.tr("Your pantry could not be opened"), "heading"))
        self.words = plain_label(text, wraps=True)
        column.addWidget(self.words)
        where = plain_label(path, "muted", wraps=True)
        where.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        column.addWidget(where)
        self.choice = QComboBox()
        self.choice.setObjectName("recovery_backup")
        self.choice.setAccessibleName(self.tr("Backup"))
        self.choice.addItems(backups)
        self.choice.setVisible(bool(backups))
        column.addWidget(self.choice)
        if backups:
            column.addWidget(
                plain_label(
                    self.tr(
                        "The backup is checked before it is put in place. What stands there now "
                        "is set aside, not deleted."
                    ),
                    "muted",
                    wraps=True,
                )
            )
        row = QHBoxLayout()
        row.addStretch(1)
        self.leave = QPushButton(self.tr("Close"))
        self.leave.clicked.connect(self.reject)
        row.addWidget(self.leave)
        self.begin = QPushButton(self.tr("Begin a new pantry"))
        self.begin.setObjectName("recovery_new")
        self.begin.setVisible(can_begin_anew)
        self.begin.clicked.connect(self._on_begin)
        row.addWidget(self.begin)
        self.restore = QPushButton(self.tr("Put the backup in its place"))
        self.restore.setObjectName("recovery_restore")
        self.restore.setVisible(bool(backups))
        set_role(self.restore, "primary")
        self.restore.clicked.connect(self._on_restore)
        row.addWidget(self.restore)
        column.addLayout(row)

    def _on_begin(self) -> None:
        self.accept()
        self.new_wanted.emit()

    def _on_restore(self) -> None:
        index = self.choice.currentIndex()
        self.accept()
        self.restore_wanted.emit(index)
