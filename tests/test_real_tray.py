"""The tray on a real bus: a status notifier host sees the icon, reads its menu and chooses Quit.

https://specifications.freedesktop.org/status-notifier-item-spec/latest/ names the interfaces.
"""

from __future__ import annotations

import os
import queue
import shutil
import subprocess
import sys
import threading
from pathlib import Path

import pytest
from jeepney import (
    DBusAddress,
    HeaderFields,
    MessageType,
    Properties,
    new_error,
    new_method_call,
    new_method_return,
)
from jeepney.bus_messages import message_bus
from jeepney.io.blocking import open_dbus_connection

from tests.helpers.bus import PrivateBus

pytestmark = [pytest.mark.screen, pytest.mark.bus]

ROOT = Path(__file__).resolve().parents[1]
WATCHER = "org.kde.StatusNotifierWatcher"
HURRY_S = 60


class Host:
    """A watcher with a host: it notes which items register."""

    def __init__(self, address: str) -> None:
        self.registered: queue.Queue[str] = queue.Queue()
        self._connection = open_dbus_connection(address)
        self._connection.send_and_get_reply(message_bus.RequestName(WATCHER))
        self._thread = threading.Thread(target=self._serve)
        self._thread.start()

    def close(self, address: str) -> None:
        with open_dbus_connection(address) as other:
            end = new_method_call(DBusAddress("/", bus_name=WATCHER), "End")
            other.send_and_get_reply(end)
        self._thread.join(HURRY_S)
        self._connection.close()

    def _serve(self) -> None:
        while True:
            message = self._connection.receive()
            if message.header.message_type is not MessageType.method_call:
                continue
            member = message.header.fields[HeaderFields.member]
            sender = message.header.fields[HeaderFields.sender]
            if member == "Get":
                self._connection.send(new_method_return(message, "v", (("b", True),)))
            elif member == "RegisterStatusNotifierItem":
                self.registered.put(sender)
                self._connection.send(new_method_return(message))
            elif member == "End":
                self._connection.send(new_method_return(message))
                return
            else:
                unknown = "org.freedesktop.DBus.Error.UnknownMethod"
                self._connection.send(new_error(message, unknown))


@pytest.fixture
def bus(tmp_path_factory):
    made = PrivateBus(tmp_path_factory.mktemp("bus"))
    made.start()
    yield made
    made.stop()


@pytest.fixture
def start(bus, tmp_path):
    """Start the program with the invented pantry, as a desktop session would."""
    started = []

    def go():
        environment = {
            **os.environ,
            "DBUS_SESSION_BUS_ADDRESS": bus.address,
            "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared"))),
        }
        words = ["--demo", "--data-dir", str(tmp_path), "--in-background"]
        started.append(
            subprocess.Popen([sys.executable, "-m", "brewdesk", *words], env=environment)
        )
        return started[-1]

    yield go
    for process in started:
        if process.poll() is None:
            process.kill()
        process.wait()


def windows_seen(*, waits=False):
    """Return the program's windows that can be seen; wait for one if asked."""
    program = shutil.which("xdotool")
    assert program, "xdotool is missing: install the package that brings it"
    sync = ["--sync"] if waits else []
    words = [program, "search", *sync, "--onlyvisible", "--name", "Invented pantry"]
    done = subprocess.run(words, capture_output=True, text=True, check=False, timeout=HURRY_S)
    return done.stdout.split()


def labels_of(connection, sender):
    """Return the texts and ids of the icon's menu."""
    menu = DBusAddress("/MenuBar", bus_name=sender, interface="com.canonical.dbusmenu")
    call = new_method_call(menu, "GetLayout", "iias", (0, -1, []))
    _, (_, _, children) = connection.send_and_get_reply(call, timeout=HURRY_S).body
    found = {}
    for _, (number, facts, _) in children:
        if "label" in facts:
            found[facts["label"][1].replace("_", "")] = number
    return menu, found


def test_a_quiet_start_stands_in_the_tray_and_its_menu_ends_it(bus, start):
    host = Host(bus.address)
    process = start()
    sender = host.registered.get(timeout=HURRY_S)
    with open_dbus_connection(bus.address) as connection:
        item = DBusAddress(
            "/StatusNotifierItem", bus_name=sender, interface="org.kde.StatusNotifierItem"
        )
        tip = connection.send_and_get_reply(Properties(item).get("ToolTip"), timeout=HURRY_S)
        assert tip.body[0][1][2].startswith("brewdesk: ")
        menu, labels = labels_of(connection, sender)
        assert {"Show the shelf", "Quit"} < set(labels)
        assert windows_seen() == []
        for label in ("Show the shelf", "Quit"):
            press = new_method_call(menu, "Event", "isvu", (labels[label], "clicked", ("s", ""), 0))
            connection.send_and_get_reply(press, timeout=HURRY_S)
            if label != "Quit":
                assert windows_seen(waits=True)
    assert process.wait(HURRY_S) == 0
    host.close(bus.address)
