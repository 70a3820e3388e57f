"""A screen of our own with a real notice service on it, and a look at its pixels."""

from __future__ import annotations

import os
import shutil
import struct
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest
from jeepney import DBusAddress, HeaderFields, Message, MessageType, new_method_call
from jeepney.bus_messages import message_bus
from jeepney.io.blocking import open_dbus_connection

BACKGROUND = (0x1D, 0x5C, 0x4A)  # a colour that nothing else on the screen has
SERVICE = "org.freedesktop.Notifications"
_CONTROL = DBusAddress(
    "/org/freedesktop/Notifications", bus_name=SERVICE, interface="org.dunstproject.cmd0"
)
_PROPERTIES = DBusAddress(
    "/org/freedesktop/Notifications",
    bus_name=SERVICE,
    interface="org.freedesktop.DBus.Properties",
)
_SETTINGS = """[global]
    font = Sans 14
    frame_width = 0
    width = 420
    markup = full
    follow = none
[urgency_normal]
    background = "#1d5c4a"
    foreground = "#ffffff"
    timeout = 0
"""


def program(name: str) -> str:
    found = shutil.which(name)
    if found is None:
        pytest.fail(f"{name} is missing: install the package that brings it (xvfb, dunst)")
    return found


class RealDesktop:
    """An X server without a screen and dunst on it, over a given bus."""

    def __init__(self, folder: Path, bus_address: str) -> None:
        self._folder = folder
        self._address = bus_address
        self._processes: list[subprocess.Popen[bytes]] = []
        self.display = ""

    def start(self) -> None:
        reading, writing = os.pipe()
        self._processes.append(
            subprocess.Popen(
                [
                    *(program("Xvfb"), "-displayfd", str(writing), "-screen", "0", "800x600x24"),
                    *("-nolisten", "tcp", "-fbdir", str(self._folder)),
                ],
                pass_fds=(writing,),
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
            )
        )
        os.close(writing)
        with os.fdopen(reading) as told:
            self.display = f":{told.readline().strip()}"
        assert self.display != ":", "Xvfb told no display"
        self.start_service()

    def start_service(self) -> None:
        settings = self._folder / "dunstrc"
        settings.write_text(_SETTINGS)
        with open_dbus_connection(self._address) as connection:
            connection.send_and_get_reply(
                message_bus.AddMatch(
                    "type='signal',sender='org.freedesktop.DBus',member='NameOwnerChanged',"
                    f"arg0='{SERVICE}'"
                )
            )
            environment = {
                **os.environ,
                "DISPLAY": self.display,
                "DBUS_SESSION_BUS_ADDRESS": self._address,
            }
            environment.pop("WAYLAND_DISPLAY", None)
            self._processes.append(
                subprocess.Popen(
                    [program("dunst"), "-conf", str(settings)],
                    env=environment,
                    stdout=subprocess.DEVNULL,
                    stderr=subprocess.DEVNULL,
                )
            )
            _receive_until(connection.receive, "NameOwnerChanged")

    def stop_service(self) -> None:
        _end(self._processes.pop())

    def stop(self) -> None:
        while self._processes:
            _end(self._processes.pop())

    def displayed_count(self) -> int:
        """Ask the service how many notices it has on the screen."""
        reply = self._ask(
            new_method_call(_PROPERTIES, "Get", "ss", (_CONTROL.interface, "displayedLength"))
        )
        ((_, count),) = reply.body
        return int(count)

    def history(self) -> list[dict[str, object]]:
        """Ask the service what it has shown and closed, newest first."""
        (entries,) = self._ask(new_method_call(_CONTROL, "NotificationListHistory")).body
        return [{name: value for name, (_, value) in entry.items()} for entry in entries]

    def do_default_action(self) -> None:
        """Do what a click on the newest notice does."""
        self._ask(new_method_call(_CONTROL, "NotificationAction", "u", (0,)))

    def pixels_of_notices(self) -> int:
        """Count the pixels of the screen that have the notices' background."""
        data = (self._folder / "Xvfb_screen0").read_bytes()
        header = struct.unpack(">25I", data[:100])
        header_size, height, width = header[0], header[5], header[4]
        byte_order, bits_per_pixel, bytes_per_line = header[7], header[11], header[12]
        colours = header[19]
        assert bits_per_pixel == 32
        start = header_size + colours * 12
        red, green, blue = BACKGROUND
        wanted = bytes((blue, green, red) if byte_order == 0 else (red, green, blue))
        first = 0 if byte_order == 0 else 1
        count = 0
        for row in range(height):
            line = data[start + row * bytes_per_line :][: width * 4]
            count += sum(
                line[at + first : at + first + 3] == wanted for at in range(0, len(line), 4)
            )
        return count

    def _ask(self, message: Message) -> Message:
        with open_dbus_connection(self._address) as connection:
            reply = connection.send_and_get_reply(message, timeout=5)
        assert reply.header.message_type is MessageType.method_return, reply.body
        return reply


def _receive_until(receive: Callable[..., Message], member: str) -> None:
    while True:
        message = receive(timeout=10)
        if message.header.fields.get(HeaderFields.member) == member:
            return


def _end(process: subprocess.Popen[bytes]) -> None:
    process.terminate()
    process.wait(10)
