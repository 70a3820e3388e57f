"""Let Enter press the button that has the keyboard, as Space does, on every desktop.

Qt leaves this to the desktop, and in dialogs Enter on a button that is no default one
would press the default one instead: "Save" while "Cancel" is in focus.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractButton, QApplication, QPushButton, QToolButton, QWidget


def is_pressed_by_enter(widget: QObject | None) -> bool:
    """Whether Enter means this button; choices among several keep it for going on."""
    if isinstance(widget, QPushButton):
        return not widget.isCheckable()
    return isinstance(widget, QToolButton)


class EnterPress(QObject):
    """Follows the keyboard's focus, and listens to the button that has it, to no other widget.

    The key must reach the button itself: an Enter that a field has answered already, and
    that moved the focus, presses nothing.
    """

    def __init__(self, app: QApplication, parent: QObject | None = None) -> None:
        super().__init__(parent)
        app.focusChanged.connect(self._on_focus)

    def _on_focus(self, old: QWidget | None, new: QWidget | None) -> None:
        if old is not None:
            old.removeEventFilter(self)
        if new is not None and is_pressed_by_enter(new):
            new.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Press the button."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
            is_enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
            if plain and is_enter and isinstance(watched, QAbstractButton):
                if not event.isAutoRepeat():
                    watched.click()
                return True
        return super().eventFilter(watched, event)
