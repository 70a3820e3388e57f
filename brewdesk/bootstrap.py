"""The only place where objects are joined together."""

from __future__ import annotations

import logging
import platform
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QLocale, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication

from brewdesk.background import Background
from brewdesk.language import Speech
from brewdesk.paths import resource
from brewdesk.services.autostart import SessionStart
from brewdesk.services.changes import Change, Topic
from brewdesk.services.clock import Clock, SystemClock
from brewdesk.services.desk import Desk, build_desk
from brewdesk.services.jobs import JobRunner, Jobs, Pool
from brewdesk.services.notices.port import Notice, Notifier
from brewdesk.services.records import StoreTrouble
from brewdesk.services.settings import LANGUAGE, TEXT_SCALE, THEME, ZONE
from brewdesk.services.wording.starting import read_only_words
from brewdesk.store.openstore import OpenStore
from brewdesk.store.store import Store
from brewdesk.widgets.mainwindow import MainWindow
from brewdesk.widgets.theme import Theme
from brewdesk.widgets.tray import Tray

log = logging.getLogger(__name__)

PATIENCE_MS = 150
HALF_HOUR_MS = 30 * 60_000


def _load_plots() -> None:
    """Import what draws curves, which takes many frames."""
    import brewdesk.widgets.acidplot  # noqa: F401  # for its being loaded


def desktop_notifier(tray: Tray) -> Notifier:
    """The best way to reach this desktop: its notice bus, else the tray's message."""
    import sys

    if sys.platform == "linux":
        from brewdesk.services.notices.freedesktop import FreedesktopNotifier

        return FreedesktopNotifier()
    from brewdesk.widgets.tray import TrayNotifier

    return TrayNotifier(tray)


def open_shared(address: str, path: Path, *, now: datetime) -> OpenStore:
    """Open the pantry on a server. ``path`` names the place of this desk's own files.

    Raises
    ------
    StoreTrouble
        If the server cannot be reached or does not let this desk in, or its store is of
        another schema.
    """
    from brewdesk.store.desklocal import desk_identity
    from brewdesk.store.errors import told
    from brewdesk.store.serverstore import ServerStore

    with told():
        desk = desk_identity(path.parent, platform.node() or "brewdesk")
    return ServerStore.open(address, path, desk=desk, now=now)


class Program(QObject):
    """One open pantry: store, services, window, tray. ``left`` fires when it was closed.

    With ``server``, the address of a database, ``store_path`` is no pantry: it names the place
    beside which this desk keeps its photos and backups.
    """

    left = Signal()
    has_begun = Signal()  # the first paint is done, and all that waited for it
    has_settled = Signal()  # all forecasts are there for the first time
    demo_wanted = Signal()
    store_wanted = Signal(object)
    restore_wanted = Signal(object)  # a backup to go back to, once this program was left

    def __init__(
        self,
        app: QApplication,
        store_path: Path,
        *,
        is_demo: bool = False,
        server: str = "",
        clock: Clock | None = None,
        jobs: JobRunner | None = None,
        notifier: Notifier | None = None,
        session_start: SessionStart | None = None,
        tray: Tray | None = None,
        speech: Speech | None = None,
    ) -> None:
        super().__init__()
        self._app = app
        self.clock = clock or SystemClock(self._zone_name)
        self.store: OpenStore = (
            open_shared(server, store_path, now=self.clock.now())
            if server
            else Store.open(store_path, now=self.clock.now(), is_demo=is_demo)
        )
        self.jobs = jobs or Jobs()
        self.tray = tray or Tray()
        self.notifier = notifier or desktop_notifier(self.tray)
        self.desk: Desk = build_desk(
            self.store,
            self.clock,
            jobs=self.jobs,
            notifier=self.notifier,
            measurement=QLocale().measurementSystem(),
            sounds=resource("sounds"),
            session_start=session_start,
        )
        self.speech = speech or Speech(app)
        self.speech.speak(self.desk.settings.get(LANGUAGE))
        if is_demo and self.store.info.is_demo:  # the file named may be the maker's own
            from brewdesk.services import demo

            if demo.fill_if_empty(self.desk):
                from brewdesk.models.demophotos import add_demo_photos

                add_demo_photos(self.desk)
        self.theme = Theme(app)
        self._apply_theme()
        self.window = MainWindow(self.desk, self.theme, is_demo=self.store.info.is_demo)
        self.background = Background(self.desk, self.tray, self.window, self)
        self.window.quit_wanted.connect(self.leave)
        self.window.demo_wanted.connect(self.demo_wanted)
        self.window.store_wanted.connect(self.store_wanted)
        self.window.restore_wanted.connect(self._on_restore_wanted)
        self.window.test_notice_wanted.connect(self._on_test_notice)
        self.tray.show_wanted.connect(self.window.bring_forward)
        self.tray.quit_wanted.connect(self.window.ask_to_leave)
        self.desk.changes.changed.connect(self._on_changed)
        self.desk.desks.became_keeper.connect(self._on_keeper)
        self._later = QTimer(self)
        self._later.setObjectName("after_first_paint")
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._after_first_paint)
        self._half_hour = QTimer(self)
        self._half_hour.setObjectName("half_hour")
        self._half_hour.setInterval(HALF_HOUR_MS)
        self._half_hour.setTimerType(Qt.TimerType.VeryCoarseTimer)
        self._half_hour.timeout.connect(self._on_half_hour)
        self.is_running = False  # reminders, timers and notices are being watched
        self._has_left = False
        self._has_settled = False
        self._backup_told = ""  # what kept the day's backup from being made, as told

    def start(self, *, in_background: bool = False) -> None:
        """Show the window; everything that can wait starts after its first paint.

        In the background no window opens: the tray and the notices must do.
        """
        self.window.shelf.first_painted.connect(lambda: self._later.start(0))
        if in_background:
            self.background.begin_quietly()
        else:
            self.window.show()
        if self.store.is_read_only:
            self.window.notice.say(read_only_words())
        self._later.start(PATIENCE_MS)  # a window that is hidden or minimized is not painted

    def _after_first_paint(self) -> None:
        self.desk.desks.start()
        self.notifier.start()
        self.background.start()
        self.desk.timers.start()
        self.desk.reminder_clock.start()
        self.desk.calendar.start()
        self._half_hour.start()
        # Python reads the plotting library between the window's own events.
        self.jobs.run(
            _load_plots,
            lambda _done: self._on_plots(),
            self._on_no_plots,
            key="load-plots",
        )
        self.is_running = True
        if self.desk.session_start is not None:
            self.jobs.run(
                self.desk.session_start.renew,
                lambda _has_moved: None,
                lambda error: log.warning("the start with the session is not renewed: %s", error),
                key="session-start",
                pool=Pool.STORE,
            )
        self.jobs.run(
            self.desk.photos.sweep,
            lambda _count: None,
            lambda error: log.warning("photos could not be swept: %s", error),
            key="photo-sweep",
            pool=Pool.STORE,
        )
        # At once as well: a program that is only ever open for minutes has no half hours.
        # The forecasts follow the logs of the places, whose means are reckoned first.
        self.jobs.run(
            self.desk.place_log.prepare,
            lambda _done: self._on_half_hour(),
            self._on_unprepared,
            key="place-logs",
            pool=Pool.STORE,
        )
        self.has_begun.emit()

    def _on_no_plots(self, error: BaseException) -> None:
        log.warning("the plotting library could not be loaded ahead: %s", error)
        self._on_plots()

    def _on_plots(self) -> None:
        self.window.shelf.sheet.allow_curves()
        self.has_begun.emit()

    def _on_unprepared(self, error: BaseException) -> None:
        log.warning("the logs of the places could not be prepared: %s", error)
        self._on_half_hour()

    def leave(self) -> None:
        """Close everything in order. Doing it twice is doing it once."""
        if self._has_left:
            return
        self._has_left = True
        self._later.stop()
        self._half_hour.stop()
        self.background.stop()
        self.desk.turns.stop()
        self.desk.desks.stop()
        self.desk.calendar.stop()
        self.desk.reminder_clock.stop()
        self.desk.timers.stop()
        self.window.remember()
        self.window.hide()
        self.jobs.shutdown()
        self.notifier.close()
        self.tray.close()
        self.store.close()
        self.speech.hush()
        self.window.deleteLater()
        self.left.emit()

    def _zone_name(self) -> str:
        """The maker's chosen zone; "" (the computer's) until the settings can be read."""
        desk = getattr(self, "desk", None)
        return "" if desk is None else desk.settings.get(ZONE)

    def _apply_theme(self) -> None:
        settings = self.desk.settings
        self._theme_now = (settings.get(THEME), settings.get(TEXT_SCALE))
        self.theme.apply(*self._theme_now)

    def _on_changed(self, change: Change) -> None:
        if change.concerns(Topic.FORECASTS) and not self._has_settled:
            self._has_settled = True
            self.has_settled.emit()
        settings = self.desk.settings
        if (settings.get(THEME), settings.get(TEXT_SCALE)) != self._theme_now:
            self._apply_theme()

    def _on_keeper(self) -> None:
        if self.is_running:
            self.desk.reminder_clock.evaluate()

    def _on_test_notice(self) -> None:
        self.notifier.show(
            Notice(
                "test-notice",
                self.tr("A reminder will look like this"),
                self.tr("If you can read this, notices reach your desktop."),
            )
        )

    def _on_half_hour(self) -> None:
        """Do what the passing days ask for: forecasts know their age, and each day is backed up."""
        try:
            self.desk.forecasts.request_all_live()
        except StoreTrouble as trouble:
            log.warning("forecasts could not be asked for: %s", trouble.code)
        if self.store.is_read_only:
            return
        self.jobs.run(
            self.desk.back_up_if_changed,
            lambda _path: self._on_backed_up(),
            self._on_backup_failed,
            key="daily-backup",
            pool=Pool.STORE,
        )

    def _on_backed_up(self) -> None:
        self._backup_told = ""

    def _on_backup_failed(self, error: BaseException) -> None:
        """Tell it once for each cause: what goes unsaid here is missed on the day of need."""
        log.warning("backup failed: %s", error)
        cause = error.code if isinstance(error, StoreTrouble) else str(error)
        if cause != self._backup_told:
            self._backup_told = cause
            self.window.tell_backup_failed(error)

    def _on_restore_wanted(self, info: object) -> None:
        self.restore_wanted.emit(info)
        self.leave()
