"""A screen reader's ears and hands: the accessibility bus, spoken to as assistive programs do.

AT-SPI 2 is D-Bus (interfaces org.a11y.atspi.* of at-spi2-core), so the same library that
carries the notices is enough; nothing of the program's own process is touched.
"""

from __future__ import annotations

import os
import subprocess
import threading
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from jeepney import DBusAddress, MessageType, Properties, new_method_call
from jeepney.io.blocking import DBusConnection, open_dbus_connection
from jeepney.wrappers import DBusErrorResponse

LAUNCHERS = ("/usr/libexec/at-spi-bus-launcher", "/usr/lib/at-spi2-core/at-spi-bus-launcher")
REGISTRY = "org.a11y.atspi.Registry"
ROOT = "/org/a11y/atspi/accessible/root"
NOTHING = "/org/a11y/atspi/null"  # told for what is just being made or taken down
ACCESSIBLE = "org.a11y.atspi.Accessible"
# Bits of the state set, AtspiStateType of at-spi2-core.
CHECKED, FOCUSABLE, SHOWING = 4, 11, 25
ANSWER_WITHIN_S = 10.0
APPEARS_WITHIN_S = 30.0
_PAUSE = threading.Event()


class AccessibilityBus:
    """The accessibility bus of a private session bus."""

    def __init__(self, session_address: str, folder: Path) -> None:
        self._session = session_address
        self._folder = folder
        self._process: subprocess.Popen[bytes] | None = None
        self.address = ""

    def start(self) -> str:
        """Start the bus and give its address."""
        program = next((path for path in LAUNCHERS if os.access(path, os.X_OK)), None)
        if program is None:
            pytest.fail("at-spi-bus-launcher is missing: install the package at-spi2-core")
        self._process = subprocess.Popen(
            [program, "--launch-immediately"],
            env={
                **os.environ,
                "DBUS_SESSION_BUS_ADDRESS": self._session,
                "XDG_RUNTIME_DIR": str(self._folder),
                "XDG_CACHE_HOME": str(self._folder),
            },
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        with open_dbus_connection(self._session) as session:
            where = DBusAddress("/org/a11y/bus", "org.a11y.Bus", "org.a11y.Bus")
            self.address = until(lambda: _call(session, where, "GetAddress")[0])
        return self.address

    def stop(self) -> None:
        """End the bus."""
        if self._process is not None:
            self._process.terminate()
            self._process.wait(ANSWER_WITHIN_S)


@dataclass(frozen=True)
class Heard:
    """One object as a screen reader meets it."""

    reader: ScreenReader
    owner: str
    path: str

    @property
    def name(self) -> str:
        return str(self.reader.get(self, ACCESSIBLE, "Name"))

    @property
    def description(self) -> str:
        return str(self.reader.get(self, ACCESSIBLE, "Description"))

    @property
    def role(self) -> str:
        return str(self.reader.ask(self, ACCESSIBLE, "GetRoleName")[0])

    @property
    def states(self) -> int:
        low, high = self.reader.ask(self, ACCESSIBLE, "GetState")[0]
        return int(low) | int(high) << 32

    def has(self, state: int) -> bool:
        return bool(self.states >> state & 1)

    @property
    def text(self) -> str:
        """What is written in a field."""
        return str(self.reader.ask(self, "org.a11y.atspi.Text", "GetText", "ii", (0, -1))[0])

    def children(self) -> list[Heard]:
        (found,) = self.reader.ask(self, ACCESSIBLE, "GetChildren")
        return [Heard(self.reader, owner, path) for owner, path in found if path != NOTHING]

    def walk(self) -> Iterator[Heard]:
        """Give this and all below it, in reading order."""
        yield self
        for child in self.children():
            yield from child.walk()

    def actions(self) -> list[str]:
        (found,) = self.reader.ask(self, "org.a11y.atspi.Action", "GetActions")
        return [str(name) for name, _, _ in found]

    def press(self) -> None:
        """Do what a press of this does."""
        self._act("Press")

    def choose(self) -> None:
        """Choose this of several."""
        self._act("Toggle")

    def open(self) -> None:
        """Open the menu that hangs on this."""
        self._act("ShowMenu")

    def focus(self) -> None:
        self._act("SetFocus")

    def _act(self, wanted: str) -> None:
        names = self.actions()
        assert wanted in names, f"{self.role} {self.name!r} knows {names}, not {wanted}"
        number = names.index(wanted)
        assert self.reader.ask(self, "org.a11y.atspi.Action", "DoAction", "i", (number,))[0]

    def write(self, text: str) -> None:
        """Put text into a field."""
        done = self.reader.ask(self, "org.a11y.atspi.EditableText", "SetTextContents", "s", (text,))
        assert done[0]


class ScreenReader:
    """A connection to the accessibility bus, and what can be found on it."""

    def __init__(self, address: str) -> None:
        self._connection = open_dbus_connection(address)

    def close(self) -> None:
        self._connection.close()

    def application(self, name: str) -> Heard:
        """Wait for a program to be there, and give it."""
        desktop = Heard(self, REGISTRY, ROOT)
        return until(lambda: next(one for one in desktop.children() if one.name == name))

    def find(self, where: Heard, role: str, name: str) -> Heard:
        """Wait until something of this role whose name begins so is showing, and give it."""

        def look() -> Heard:
            for one in where.walk():
                if one.role == role and one.name.startswith(name) and one.has(SHOWING):
                    return one
            raise LookupError(f"no {role} {name!r} in:\n{self.tell(where)}")

        return until(look)

    def tell(self, where: Heard) -> str:
        """Say everything that is showing, a line each."""
        lines = []

        def say(one: Heard, depth: int) -> None:
            if depth and not one.has(SHOWING):
                return
            lines.append(f"{'  ' * depth}{one.role}: {one.name!r} {one.description!r}")
            for child in one.children():
                say(child, depth + 1)

        say(where, 0)
        return "\n".join(lines)

    def ask(
        self,
        one: Heard,
        interface: str,
        method: str,
        signature: str = "",
        body: tuple[Any, ...] = (),
    ) -> tuple[Any, ...]:
        where = DBusAddress(one.path, one.owner, interface)
        return _call(self._connection, where, method, signature, body)

    def get(self, one: Heard, interface: str, name: str) -> Any:  # D-Bus variant
        message = Properties(DBusAddress(one.path, one.owner, interface)).get(name)
        reply = self._connection.send_and_get_reply(message, timeout=ANSWER_WITHIN_S)
        if reply.header.message_type is MessageType.error:
            raise DBusErrorResponse(reply)
        return reply.body[0][1]


def _call(
    connection: DBusConnection,
    where: DBusAddress,
    method: str,
    signature: str = "",
    body: tuple[Any, ...] = (),
) -> tuple[Any, ...]:
    message = new_method_call(where, method, signature or None, body)
    reply = connection.send_and_get_reply(message, timeout=ANSWER_WITHIN_S)
    if reply.header.message_type is MessageType.error:
        raise DBusErrorResponse(reply)
    return tuple(reply.body)


def until(look: Callable[[], Any]) -> Any:  # whatever is looked for
    """Try again until it is there; another process has no signal to wait for."""
    deadline = time.monotonic() + APPEARS_WITHIN_S
    while True:
        try:
            return look()
        except (LookupError, StopIteration, DBusErrorResponse, AssertionError) as missing:
            if time.monotonic() > deadline:
                raise AssertionError(str(missing)) from missing
            _PAUSE.wait(0.05)
