"""How the program lives on without its window: in the tray where there is one, else small."""

from __future__ import annotations

import logging

from PySide6.QtCore import QObject, Qt, QTimer

from brewdesk.services.changes import Change, Topic
from brewdesk.services.desk import Desk
from brewdesk.services.notices.port import Notice
from brewdesk.services.records import StoreTrouble
from brewdesk.services.settings import CLOSE_TO_TRAY
from brewdesk.services.toldonce import ToldOnce
from brewdesk.services.wording.moments import stamp_words
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.tray import MOST_ITEMS, Tray

log = logging.getLogger(__name__)

MINUTE_MS = 60_000
_TOPICS = (
    Topic.REMINDERS | Topic.BATCHES | Topic.CULTURES | Topic.VESSELS | Topic.BOTTLINGS
) | Topic.SETTINGS
EXPLAINED_KEY = "kept-running"


class Background(QObject):
    """Keeps the tray true, and sees to it that a window that was put away can be found again."""

    def __init__(
        self, desk: Desk, tray: Tray, window: MainWindow, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._tray = tray
        self._window = window
        self._told = ToldOnce(desk.store)
        self._soon = QTimer(self, interval=0, singleShot=True)
        self._soon.setObjectName("tray_soon")
        self._soon.timeout.connect(self.refresh)
        self._minute = QTimer(self, interval=MINUTE_MS, timerType=Qt.TimerType.VeryCoarseTimer)
        self._minute.setObjectName("tray_minute")
        self._minute.timeout.connect(self.watch)
        desk.changes.changed.connect(self._on_changed)
        tray.item_wanted.connect(window.open_due_item)
        window.may_hide = self.may_hide
        window.hide_away = self.hide_away

    def start(self) -> None:
        """Put the tray icon up, where there is a tray, and keep it true."""
        self._minute.start()
        self.watch()

    def stop(self) -> None:
        """Look after nothing any more."""
        self._minute.stop()
        self._soon.stop()

    def begin_quietly(self) -> None:
        """Begin without a window: in the tray, or small where there is none."""
        if not self._tray.start():
            self._window.showMinimized()

    def may_hide(self) -> bool:
        """Whether the maker wants the program to go on when the window is closed."""
        return bool(self._desk.settings.get(CLOSE_TO_TRAY))

    def hide_away(self) -> None:
        """Put the window away where it can be found again; the first time, say where."""
        if self._tray.is_up():
            self._window.hide()
            if self._told.is_news("kept_in_tray"):
                self._explain(
                    self.tr(
                        "Its icon is in the tray: a click on it brings the window back, and its "
                        "menu ends the program. Reminders go on."
                    )
                )
            return
        self._window.showMinimized()
        if self._told.is_news("kept_small"):
            self._explain(
                self.tr(
                    "This desktop has no tray, so the window was made small instead of closed. "
                    "Pantry > Quit ends the program. Reminders go on."
                )
            )

    def watch(self) -> None:
        """Follow a tray that came or went, and the time."""
        if not self._tray.start() and not self._window.isVisible():
            self._window.showMinimized()  # the way back to it has gone
        self.refresh()

    def refresh(self) -> None:
        """Show in the tray what is due next."""
        if not self._tray.is_up():
            return
        try:
            now, zone = self._desk.clock.now(), self._desk.clock.zone()
            items = self._desk.reminders.listed(now, most=MOST_ITEMS)
            count = self._desk.reminders.due_count()
        except StoreTrouble as trouble:
            log.warning("the tray could not be brought up to date: %s", trouble.code)
            return
        self._tray.show_due(items, count, [stamp_words(item.due_at, zone) for item in items])

    def _explain(self, body: str) -> None:
        title = self.tr("brewdesk keeps running")
        self._desk.notifier.show(Notice(EXPLAINED_KEY, title, body))
        self._window.notice.say(f"{title}. {body}", "inform")  # for when it is back

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_TOPICS) and self._minute.isActive():
            self._soon.start()
