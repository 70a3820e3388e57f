"""The tray icon: bring the window back, quit; and notices where the desktop has no better way."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QSystemTrayIcon

from brewdesk.services.notices.port import Notice, NoticeAction, Notifier
from brewdesk.widgets.icons import program_icon


class Tray(QObject):
    """Stands in the tray while there is one. Many desktops have none: never rely on it."""

    show_wanted = Signal()
    quit_wanted = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.menu = QMenu()
        show = QAction(self.tr("Show the shelf"), self.menu)
        show.triggered.connect(self.show_wanted)
        leave = QAction(self.tr("Quit"), self.menu)
        leave.triggered.connect(self.quit_wanted)
        self.menu.addAction(show)
        self.menu.addAction(leave)
        self.icon = QSystemTrayIcon(program_icon(), self)
        self.icon.setToolTip("brewdesk")
        self.icon.setContextMenu(self.menu)
        self.icon.activated.connect(self._on_activated)

    def start(self) -> bool:
        """Put the icon up; False when the desktop has no tray."""
        if not QSystemTrayIcon.isSystemTrayAvailable():
            return False
        self.icon.show()
        return True

    def is_up(self) -> bool:
        """Whether the icon stands in a tray now."""
        return self.icon.isVisible() and QSystemTrayIcon.isSystemTrayAvailable()

    def close(self) -> None:
        """Take the icon away."""
        self.icon.hide()
        self.menu.deleteLater()

    def _on_activated(self, reason: QSystemTrayIcon.ActivationReason) -> None:
        if reason in (
            QSystemTrayIcon.ActivationReason.Trigger,
            QSystemTrayIcon.ActivationReason.DoubleClick,
        ):
            self.show_wanted.emit()


class TrayNotifier(Notifier):
    """Notices through the tray's own message, for desktops without a notice bus."""

    def __init__(self, tray: Tray, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._tray = tray
        self._key = ""
        tray.icon.messageClicked.connect(self._on_clicked)

    def is_available(self) -> bool:
        """Whether the tray is there."""
        return self._tray.is_up()

    def show(self, notice: Notice) -> None:
        """Show the notice; a click on it opens the jar."""
        if not self._tray.is_up():
            return
        self._key = notice.key
        self._tray.icon.showMessage(notice.title, notice.body, program_icon())

    def _on_clicked(self) -> None:
        self.acted.emit(self._key, NoticeAction.OPEN)
