"""A connection to the desktop's session bus that never makes the window wait.

jeepney writes and reads the messages; the socket is watched by Qt. There is no
thread and no blocking call: even connecting and logging in are done piece by piece.
"""

from __future__ import annotations

import logging
import os
import socket
from collections.abc import Callable
from itertools import count

from jeepney import HeaderFields, Message, MessageFlag, MessageType, Parser
from jeepney.auth import BEGIN, AuthenticationError, Authenticator
from jeepney.bus import get_connectable_addresses
from jeepney.bus_messages import message_bus
from PySide6.QtCore import QObject, QSocketNotifier, QTimer, Signal

_log = logging.getLogger(__name__)

ADDRESS_VARIABLE = "DBUS_SESSION_BUS_ADDRESS"
FOLDER_VARIABLE = "XDG_RUNTIME_DIR"
LOG_IN_TIMEOUT_MS = 3_000
_READ_BYTES = 65_536
_UNSENT_LIMIT_BYTES = 1_000_000

Answer = Callable[[Message], None]


def usual_address() -> str:
    """Return the session bus's address as libdbus finds it, "" if there is none."""
    told = os.environ.get(ADDRESS_VARIABLE, "")
    folder = os.environ.get(FOLDER_VARIABLE, "")
    return told or (f"unix:path={folder}/bus" if folder else "")


class SessionBus(QObject):
    """One connection to a message bus.

    ``ready`` comes when messages may be sent, ``lost`` once when the bus cannot be
    reached or has gone; after that the object is of no more use. ``signalled``
    carries every signal message that arrives.
    """

    ready = Signal()
    lost = Signal()
    signalled = Signal(object)

    def __init__(self, address: str | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._address = address
        self._socket: socket.socket | None = None
        self._reading: QSocketNotifier | None = None
        self._writing: QSocketNotifier | None = None
        self._unsent = bytearray()
        self._login: Authenticator | None = None
        self._parser = Parser()
        self._serials = count(start=1)
        self._answers: dict[int, Answer] = {}
        self._is_lost = False
        self._deadline = QTimer(self, singleShot=True, interval=LOG_IN_TIMEOUT_MS)
        self._deadline.timeout.connect(lambda: self._lose("the bus did not answer"))

    def open(self) -> None:
        """Begin to connect; ``ready`` or ``lost`` follows, perhaps before this returns."""
        address = self._address or usual_address()
        try:
            path = next(get_connectable_addresses(address))
            self._socket = socket.socket(socket.AF_UNIX, socket.SOCK_STREAM)
            self._socket.setblocking(False)
            self._socket.connect(path)
        except (OSError, ValueError, RuntimeError) as error:
            self._lose(str(error))
            return
        descriptor = self._socket.fileno()
        self._reading = QSocketNotifier(descriptor, QSocketNotifier.Type.Read, self)
        self._reading.activated.connect(self._on_readable)
        self._writing = QSocketNotifier(descriptor, QSocketNotifier.Type.Write, self)
        self._writing.setEnabled(False)
        self._writing.activated.connect(self._flush)
        self._login = Authenticator()
        self._deadline.start()
        self._put(self._login.data_to_send() or b"")

    def send(self, message: Message, answer: Answer | None = None) -> int:
        """Send a method call and return its serial; ``answer`` gets the reply or the error."""
        serial = next(self._serials)
        if answer is None:
            message.header.flags |= MessageFlag.no_reply_expected
        else:
            self._answers[serial] = answer
        self._put(message.serialise(serial=serial))
        return serial

    def close(self) -> None:
        """Let go of the bus without a word."""
        self._is_lost = True
        self._let_go()

    def _put(self, data: bytes) -> None:
        if self._socket is None:
            return
        self._unsent += data
        if len(self._unsent) > _UNSENT_LIMIT_BYTES:
            self._lose("the bus takes no more messages")
            return
        self._flush()

    def _flush(self) -> None:
        if self._socket is None or self._writing is None:
            return
        try:
            while self._unsent:
                del self._unsent[: self._socket.send(self._unsent)]
        except BlockingIOError:
            self._writing.setEnabled(True)
            return
        except OSError as error:
            self._lose(str(error))
            return
        self._writing.setEnabled(False)

    def _on_readable(self) -> None:
        if self._socket is None:
            return
        try:
            data = self._socket.recv(_READ_BYTES)
        except BlockingIOError:
            return
        except OSError as error:
            self._lose(str(error))
            return
        if not data:
            self._lose("the bus closed the connection")
            return
        try:
            self._take(data)
        except (AuthenticationError, ValueError, KeyError, UnicodeDecodeError) as error:
            self._lose(f"the bus sent what cannot be read: {error}")

    def _take(self, data: bytes) -> None:
        if self._login is not None:
            self._login.feed(data)
            self._put(self._login.data_to_send() or b"")
            if self._login.authenticated:
                self._login = None
                self._put(BEGIN)
                self.send(message_bus.Hello(), self._on_hello)
            return
        for message in self._parser.feed(data):
            self._dispatch(message)

    def _dispatch(self, message: Message) -> None:
        kind = message.header.message_type
        if kind in (MessageType.method_return, MessageType.error):
            answer = self._answers.pop(message.header.fields.get(HeaderFields.reply_serial), None)
            if answer is not None:
                answer(message)
        elif kind is MessageType.signal:
            self.signalled.emit(message)

    def _on_hello(self, reply: Message) -> None:
        if reply.header.message_type is MessageType.error:
            self._lose("the bus refused the login")
            return
        self._deadline.stop()
        self.ready.emit()

    def _lose(self, why: str) -> None:
        if self._is_lost:
            return
        self._is_lost = True
        _log.info("no session bus: %s", why)
        self._let_go()
        self.lost.emit()

    def _let_go(self) -> None:
        self._deadline.stop()
        self._answers.clear()
        for notifier in (self._reading, self._writing):
            if notifier is not None:
                notifier.setEnabled(False)
                notifier.deleteLater()
        self._reading = self._writing = None
        if self._socket is not None:
            self._socket.close()
            self._socket = None
