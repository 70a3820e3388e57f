"""One program per store: a lock file beside the store, and a way to raise the first window."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

from PySide6.QtCore import QLockFile, QObject, QSysInfo, Signal
from PySide6.QtNetwork import QLocalServer, QLocalSocket

from brewdesk.paths import make_private_folder

RAISE = b"raise\n"
PATIENCE_MS = 400


class Instance(QObject):
    """Holds the lock of one store. ``raise_wanted`` fires when a second start asks for us.

    Raises
    ------
    OSError
        If the store's folder is not there and cannot be made.
    """

    raise_wanted = Signal()

    def __init__(self, store_path: Path) -> None:
        super().__init__()
        store_path = store_path.resolve()  # one store has one lock, by whatever name it is opened
        make_private_folder(store_path.parent)
        self._lock = QLockFile(str(store_path) + ".lock")
        self._lock.setStaleLockTime(0)  # only a dead process gives the lock up, never an old one
        digest = hashlib.sha256(str(store_path).encode()).hexdigest()[:16]
        self._name = f"brewdesk-{digest}"
        self._server: QLocalServer | None = None

    def take(self) -> bool:
        """Take the lock and listen; False when another program has this store open.

        Where no lock may be made nothing else may be written either: the store opens to be
        looked at, and needs no lock.
        """
        if not self._is_locked():
            return self._lock.error() == QLockFile.LockError.PermissionError
        QLocalServer.removeServer(self._name)
        self._server = QLocalServer(self)
        self._server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        self._server.newConnection.connect(self._on_connected)
        self._server.listen(self._name)
        return True

    def _is_locked(self) -> bool:
        """Take the lock; its file, which names this computer, is for its owner alone."""
        habit = os.umask(0o077)  # Qt's own leaves it to the system's habit with new files
        try:
            return self._lock.tryLock(0)
        finally:
            os.umask(habit)

    def other_computer(self) -> str:
        """Name the computer whose program holds the lock; "" if it is this one, or none does.

        A folder that several computers share brings their locks along. Whether a process on
        another computer still runs cannot be known here, so such a lock is never broken.
        """
        _pid, host, _program = self._lock.getLockInfo()
        return host if host != QSysInfo.machineHostName() else ""

    @property
    def lock_path(self) -> Path:
        """Where the lock lies."""
        return Path(self._lock.fileName())

    def call_first(self) -> bool:
        """Ask the program that holds the lock to show its window."""
        socket = QLocalSocket()
        socket.connectToServer(self._name)
        if not socket.waitForConnected(PATIENCE_MS):
            return False
        socket.write(RAISE)
        sent = socket.waitForBytesWritten(PATIENCE_MS)
        socket.disconnectFromServer()
        return sent

    def release(self) -> None:
        """Stop listening and give the lock up."""
        if self._server is not None:
            self._server.close()
            self._server = None
        self._lock.unlock()

    def _on_connected(self) -> None:
        if self._server is None:
            return
        socket = self._server.nextPendingConnection()
        socket.disconnected.connect(socket.deleteLater)
        self.raise_wanted.emit()
