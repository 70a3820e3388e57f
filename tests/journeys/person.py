"""A person at the window: finds things by name, clicks and types, and counts each act."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QMenu, QWidget


class Person:
    """Everything goes through real mouse and key events; ``acts`` counts them.

    One act is one click, one entry typed, or one key pressed by itself.
    """

    def __init__(self, window: QWidget) -> None:
        self.window = window
        self.acts = 0

    def find(self, name: str, within: QWidget | None = None) -> QWidget:
        """Find the visible widget called ``name``, in any open window of the program."""
        places = [within] if within is not None else QApplication.topLevelWidgets()
        found = [
            widget
            for place in places
            for widget in [*place.findChildren(QWidget, name), place]
            if widget.objectName() == name and widget.isVisible()
        ]
        assert found, f"nothing visible is called {name}"
        return found[0]

    def click(self, name: str, within: QWidget | None = None) -> None:
        widget = self.find(name, within)
        assert widget.isEnabled(), f"{name} is not enabled"
        QTest.mouseClick(widget, Qt.MouseButton.LeftButton)
        self._done()

    def type(self, name: str, text: str, within: QWidget | None = None) -> None:
        widget = self.find(name, within)
        assert widget.isEnabled(), f"{name} is not enabled"
        widget.setFocus()
        if isinstance(widget, QLineEdit):
            widget.selectAll()
        QTest.keyClicks(widget, text)
        self._done()

    def press(
        self,
        key: Qt.Key,
        name: str | None = None,
        modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
    ) -> None:
        target = self.find(name) if name else QApplication.focusWidget()
        # A window manager gives the keyboard back when a dialog closes; offscreen nobody does.
        target.window().activateWindow()
        target.setFocus()
        QApplication.processEvents()
        QTest.keyClick(target, key, modifier)
        self._done()

    def choose_from_menu(self, menu: QMenu, start_of_text: str) -> None:
        """Choose an entry of an open or buttoned menu by the beginning of its text."""
        menu.aboutToShow.emit()
        for action in menu.actions():
            if action.text().replace("&", "").startswith(start_of_text):
                assert action.isEnabled(), f"{start_of_text} is not enabled"
                action.trigger()
                self.acts += 1  # opening the menu; the choosing is the second
                self._done()
                return
        raise AssertionError(
            f"no entry begins with {start_of_text}: {[a.text() for a in menu.actions()]}"
        )

    def _done(self) -> None:
        """Count the act, and let the window lay itself out as it would before the next one."""
        self.acts += 1
        QApplication.processEvents()
