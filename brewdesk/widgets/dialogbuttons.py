"""The buttons at a dialog's foot, in the order that the desktop is used to."""

from __future__ import annotations

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPushButton

from brewdesk.widgets.stylesheet import set_role


def go_and_leave(
    dialog: QDialog, go_text: str, leave_text: str, *, go_name: str, role: str = "primary"
) -> tuple[QDialogButtonBox, QPushButton]:
    """A box with one button that acts and one that leaves, and the button that acts."""
    box = QDialogButtonBox(dialog)
    go = QPushButton(go_text)
    go.setObjectName(go_name)
    go.setDefault(True)
    set_role(go, role)
    leave = QPushButton(leave_text)
    leave.setAutoDefault(False)
    box.addButton(go, QDialogButtonBox.ButtonRole.AcceptRole)
    box.addButton(leave, QDialogButtonBox.ButtonRole.RejectRole)
    box.rejected.connect(dialog.reject)
    return box, go
