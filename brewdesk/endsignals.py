"""Ends that come from outside: the session's, a shutdown's, Ctrl+C in the terminal."""

from __future__ import annotations

import os
import signal
import socket
from collections.abc import Callable
from types import FrameType

from PySide6.QtCore import QObject, QSocketNotifier, Signal


class EndSignals(QObject):
    """Turns SIGTERM, SIGHUP and SIGINT into ``end_wanted``, on the window's thread.

    Python runs a handler only between its own instructions, and Qt's loop may be asleep: the
    signal's number, written to a socket, wakes it.
    """

    end_wanted = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._before: dict[int, Callable[[int, FrameType | None], object] | int | None] = {}
        if os.name != "posix":
            return
        self._reader, self._writer = socket.socketpair()
        for end in (self._reader, self._writer):
            end.setblocking(False)
        self._notifier = QSocketNotifier(self._reader.fileno(), QSocketNotifier.Type.Read, self)
        self._notifier.activated.connect(self._on_signal)
        self._woken_before = signal.set_wakeup_fd(self._writer.fileno(), warn_on_full_buffer=False)
        for number in (signal.SIGTERM, signal.SIGHUP, signal.SIGINT):
            self._before[number] = signal.signal(number, lambda _number, _frame: None)

    def release(self) -> None:
        """Put everything back as it was."""
        if not self._before:
            return
        for number, handler in self._before.items():
            signal.signal(number, handler)
        self._before = {}
        signal.set_wakeup_fd(self._woken_before)
        self._notifier.setEnabled(False)
        self._reader.close()
        self._writer.close()

    def _on_signal(self) -> None:
        self._reader.recv(64)
        self.end_wanted.emit()
