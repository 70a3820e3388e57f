"""From an error that nothing caught to the dialog with its report."""

from __future__ import annotations

import getpass
import logging
import os
import platform
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QEvent, QObject, Qt, Signal

from brewdesk.crashreport import (
    Surroundings,
    report,
    surroundings_of,
    told_of_breakdown,
    told_of_error,
)
from brewdesk.paths import SERVER_VARIABLE
from brewdesk.services.desk import Desk
from brewdesk.services.records import StoreTrouble
from brewdesk.widgets.crashdialog import CrashDialog
from brewdesk.widgets.mainwindow import MainWindow

log = logging.getLogger(__name__)

MOST_ACTS = 10
_MOST_TOLD = 20  # different mistakes in one run


def surroundings() -> Surroundings:
    """Say what of this computer and its user must not stand in a report."""
    names = [platform.node()]
    with suppress(OSError, KeyError, ImportError):  # a user without a name has none to tell
        names.append(getpass.getuser())
    address = os.environ.get(SERVER_VARIABLE, "").strip()
    home = ""
    with suppress(RuntimeError):
        home = str(Path.home())
    return surroundings_of(home, [*names, *(name.partition(".")[0] for name in names)], address)


class CrashWatch(QObject):
    """Shows one dialog, with one report of each mistake; a mistake that repeats is told once.

    `note` may be called from any thread. While the window is put away, reports wait for it.
    """

    _noted = Signal(tuple)

    def __init__(self, desk: Desk, window: MainWindow) -> None:
        super().__init__(window)
        self._desk = desk
        self._window = window
        self._around = surroundings()
        self._told: set[tuple[str, ...]] = set()
        self._waiting: list[tuple[bool, str]] = []
        self._dialog: CrashDialog | None = None
        # Never from within the error's own place, which may be the painting of a window.
        self._noted.connect(self._on_noted, Qt.ConnectionType.QueuedConnection)
        window.installEventFilter(self)

    def note(self, error: BaseException, where: str) -> None:
        """Tell an error; nothing of the error itself is kept."""
        try:
            told = told_of_error(error, where)
        except Exception:  # whatever happens here must not hide the error itself
            log.warning("an error could not be put into a report", exc_info=True)
            return
        with suppress(RuntimeError):  # the window is gone: nobody is there to be told
            self._noted.emit(told)

    def tell_breakdown(self, kept: str) -> None:
        """Tell what the last run left when it broke down; nothing if it left nothing."""
        if kept:
            self._hold(told_of_breakdown(kept), is_breakdown=True)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Bring forward what waited while the window was put away."""
        if watched is self._window and event.type() == QEvent.Type.Show and self._waiting:
            self._noted.emit(())
        return False

    def _on_noted(self, told: tuple[str, ...]) -> None:
        if told:
            self._hold(told, is_breakdown=False)
        else:
            self._show()

    def _hold(self, told: tuple[str, ...], *, is_breakdown: bool) -> None:
        if told in self._told or len(self._told) >= _MOST_TOLD:
            return
        self._told.add(told)
        now = self._desk.clock.now()
        text = report(told, at=now, acts=self._acts(), around=self._around)
        self._waiting.append((is_breakdown, text))
        self._show()

    def _acts(self) -> Sequence[str]:
        try:
            with self._desk.store.read() as unit:
                return [act.kind for act in unit.acts.recent(MOST_ACTS)]
        except StoreTrouble:
            return []

    def _show(self) -> None:
        if not self._window.isVisible():
            return
        waiting, self._waiting = self._waiting, []
        for is_breakdown, text in waiting:
            if self._dialog is not None:
                self._dialog.add(text)
                continue
            self._dialog = CrashDialog(text, is_breakdown=is_breakdown, parent=self._window)
            self._dialog.finished.connect(self._on_closed)
            self._window.dialogs.open(self._dialog)

    def _on_closed(self) -> None:
        self._dialog = None
