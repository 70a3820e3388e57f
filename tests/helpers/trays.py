"""A tray that comes and goes as a test wants; no real icon is put up."""

from __future__ import annotations

from PySide6.QtWidgets import QSystemTrayIcon

from brewdesk.widgets.tray import Tray


class FakeIcon(QSystemTrayIcon):
    """Knows whether it was put up. The offscreen platform complains of a real one."""

    def __init__(self):
        super().__init__()
        self._is_up = False

    def show(self):
        self._is_up = True

    def hide(self):
        self._is_up = False

    def isVisible(self):  # Qt's name
        return self._is_up


class DesktopWithTray:
    """Says whether there is a tray, and makes the program's part of it."""

    def __init__(self, *, has_tray: bool) -> None:
        self.has_tray = has_tray

    def tray(self) -> Tray:
        return Tray(is_there=lambda: self.has_tray, icon=FakeIcon())
