"""Keep the mouse wheel from changing what the maker only meant to scroll past."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QWidget


class _WheelPass(QObject):
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Wheel:
            event.ignore()  # what is not accepted goes on to the page around it
            return True
        return super().eventFilter(watched, event)


def pass_wheel_on(editor: QWidget) -> None:
    """Let the wheel over ``editor`` scroll the page, and never change the value.

    Lists and dates take the wheel by themselves: a date of a reading would move by days
    unseen while the form is scrolled. Keys, and the list once it is open, work as before.
    """
    editor.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # without the wheel
    editor.installEventFilter(_WheelPass(editor))
