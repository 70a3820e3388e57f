"""A private session bus, and a notice service of our own on it."""

from __future__ import annotations

import queue
import shutil
import signal
import subprocess
import threading
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from jeepney import (
    DBusAddress,
    HeaderFields,
    Message,
    MessageType,
    new_error,
    new_method_return,
    new_signal,
)
from jeepney.bus_messages import message_bus
from jeepney.io.blocking import DBusConnection, open_dbus_connection

SERVICE = "org.freedesktop.Notifications"
PATH = "/org/freedesktop/Notifications"
USUAL_CAPABILITIES = ("actions", "body", "body-markup", "persistence")

_CONFIG = """<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <type>session</type>
  <listen>unix:path={socket}</listen>
  <policy context="default">
    <allow send_destination="*" eavesdrop="true"/>
    <allow eavesdrop="true"/>
    <allow own="*"/>
  </policy>
</busconfig>
"""


class PrivateBus:
    """A dbus-daemon of our own that can start no service by itself."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._process: subprocess.Popen[str] | None = None
        self.address = ""

    def start(self) -> str:
        program = shutil.which("dbus-daemon")
        if program is None:
            pytest.fail("dbus-daemon is missing: install the package dbus (or dbus-daemon)")
        socket = self._folder / "bus"
        socket.unlink(missing_ok=True)
        config = self._folder / "bus.conf"
        config.write_text(_CONFIG.format(socket=socket))
        self._process = subprocess.Popen(
            [program, f"--config-file={config}", "--nofork", "--print-address=1"],
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )
        assert self._process.stdout is not None
        self.address = self._process.stdout.readline().strip()
        assert self.address, "dbus-daemon told no address"
        return self.address

    def freeze(self) -> None:
        """Let the bus stand still, as an overloaded machine does."""
        assert self._process is not None
        self._process.send_signal(signal.SIGSTOP)

    def thaw(self) -> None:
        assert self._process is not None
        self._process.send_signal(signal.SIGCONT)

    def stop(self) -> None:
        if self._process is not None:
            self._process.kill()
            self._process.wait()
            assert self._process.stdout is not None
            self._process.stdout.close()
            self._process = None


@dataclass
class Shown:
    """One Notify call as it arrived."""

    app_name: str
    replaces_id: int
    title: str
    body: str
    actions: list[str]
    hints: dict[str, tuple[str, object]]
    timeout_ms: int
    id: int = 0


@dataclass
class FakeDaemon:
    """A notice service in a thread: remembers what it is asked, answers as told."""

    address: str
    capabilities: tuple[str, ...] = USUAL_CAPABILITIES
    refuses: bool = False
    is_mute: bool = False
    first_id: int = 1
    shown: list[Shown] = field(default_factory=list)
    closed: list[int] = field(default_factory=list)
    asked_capabilities: int = 0

    def __post_init__(self) -> None:
        self._orders: queue.Queue[Message] = queue.Queue()
        self._quit = threading.Event()
        self._connection: DBusConnection | None = None
        self._thread: threading.Thread | None = None
        self._next_id = self.first_id

    def start(self) -> FakeDaemon:
        self._connection = open_dbus_connection(self.address)
        self._connection.send_and_get_reply(message_bus.RequestName(SERVICE))
        self._thread = threading.Thread(target=self._serve, name="fake-notices")
        self._thread.start()
        return self

    def stop(self) -> None:
        self._quit.set()
        if self._thread is not None:
            self._thread.join()
            self._thread = None
        if self._connection is not None:
            self._connection.close()
            self._connection = None

    def press(self, notice_id: int, action: str) -> None:
        self._signal("ActionInvoked", "us", (notice_id, action))

    def dismiss(self, notice_id: int) -> None:
        self._signal("NotificationClosed", "uu", (notice_id, 2))

    def _signal(self, member: str, signature: str, body: tuple[object, ...]) -> None:
        emitter = DBusAddress(PATH, interface=SERVICE)
        self._orders.put(new_signal(emitter, member, signature, body))

    def _serve(self) -> None:
        assert self._connection is not None
        while not self._quit.is_set():
            while not self._orders.empty():
                self._connection.send(self._orders.get())
            try:
                message = self._connection.receive(timeout=0.02)
            except TimeoutError:
                continue
            except (ConnectionError, OSError):
                return
            if message.header.message_type is MessageType.method_call and not self.is_mute:
                reply = self._answer(message)
                if reply is not None:
                    self._connection.send(reply)

    def _answer(self, message: Message) -> Message | None:
        member = message.header.fields[HeaderFields.member]
        if member == "GetCapabilities":
            self.asked_capabilities += 1
            return new_method_return(message, "as", (list(self.capabilities),))
        if member == "Notify" and self.refuses:
            return new_error(message, "org.freedesktop.Notifications.Error.Refused")
        if member == "Notify":
            app_name, replaces_id, _, title, body, actions, hints, timeout_ms = message.body
            notice_id = replaces_id or self._take_id()
            self.shown.append(
                Shown(app_name, replaces_id, title, body, actions, hints, timeout_ms, notice_id)
            )
            return new_method_return(message, "u", (notice_id,))
        if member == "CloseNotification":
            self.closed.append(message.body[0])
        return None

    def _take_id(self) -> int:
        self._next_id += 1
        return self._next_id - 1
