"""What a Linux system must bring: libraries that Qt loads, and programs that the tests start.

Debian names were found by adding one package at a time to a bare Debian 12.
The dnf and pacman names are from memory and untried.
"""

from __future__ import annotations

import ctypes
import os
import platform
import shutil
import subprocess
import sys
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from devtool.speech import CannotGoOn, say, say_command

_GLIBC_WANTED = (2, 34)  # the manylinux tag of the pinned PySide6 wheels


@dataclass(frozen=True)
class Need:
    """A shared library (``lib….so.N``), a program or a Python module, and its packages."""

    name: str
    apt: str
    dnf: str
    pacman: str

    def is_met(self) -> bool:
        """Say whether the library loads, or the program is on PATH."""
        if ".so." not in self.name:
            return shutil.which(self.name) is not None or _is_kept_apart(self.name)
        try:
            ctypes.CDLL(self.name)
        except OSError:
            return False
        return True


# Without these not even the windowless tests start.
OFFSCREEN = (
    Need("libglib-2.0.so.0", "libglib2.0-0", "glib2", "glib2"),
    Need("libGL.so.1", "libgl1", "libglvnd-glx", "libglvnd"),
    Need("libEGL.so.1", "libegl1", "libglvnd-egl", "libglvnd"),
    Need("libfontconfig.so.1", "libfontconfig1", "fontconfig", "fontconfig"),
    Need("libxkbcommon.so.0", "libxkbcommon0", "libxkbcommon", "libxkbcommon"),
    Need("libdbus-1.so.3", "libdbus-1-3", "dbus-libs", "dbus"),
)
# A window on an X server.
SCREEN = (
    Need("libxcb-cursor.so.0", "libxcb-cursor0", "xcb-util-cursor", "xcb-util-cursor"),
    Need("libxcb-icccm.so.4", "libxcb-icccm4", "xcb-util-wm", "xcb-util-wm"),
    Need("libxcb-image.so.0", "libxcb-image0", "xcb-util-image", "xcb-util-image"),
    Need("libxcb-keysyms.so.1", "libxcb-keysyms1", "xcb-util-keysyms", "xcb-util-keysyms"),
    Need("libxcb-randr.so.0", "libxcb-randr0", "libxcb", "libxcb"),
    Need(
        "libxcb-render-util.so.0",
        "libxcb-render-util0",
        "xcb-util-renderutil",
        "xcb-util-renderutil",
    ),
    Need("libxcb-shape.so.0", "libxcb-shape0", "libxcb", "libxcb"),
    Need("libxcb-xkb.so.1", "libxcb-xkb1", "libxcb", "libxcb"),
    Need("libxkbcommon-x11.so.0", "libxkbcommon-x11-0", "libxkbcommon-x11", "libxkbcommon-x11"),
    Need("libX11-xcb.so.1", "libx11-xcb1", "libX11-xcb", "libx11"),
)
# A window on a Wayland compositor that has no X beside it.
WAYLAND = (
    Need("libwayland-client.so.0", "libwayland-client0", "libwayland-client", "wayland"),
    Need("libwayland-cursor.so.0", "libwayland-cursor0", "libwayland-cursor", "wayland"),
    Need("libwayland-egl.so.1", "libwayland-egl1", "libwayland-egl", "wayland"),
)
# A screen, a message bus and a notice service of our own; readers of printed pages.
TEST_PROGRAMS = (
    Need("Xvfb", "xvfb", "xorg-x11-server-Xvfb", "xorg-server-xvfb"),
    Need("dbus-daemon", "dbus-daemon", "dbus-daemon", "dbus"),
    Need("dunst", "dunst", "dunst", "dunst"),
    Need("xdotool", "xdotool", "xdotool", "xdotool"),  # the mouse of that screen
    Need("pdftoppm", "poppler-utils", "poppler-utils", "poppler"),
    Need("/usr/libexec/at-spi-bus-launcher", "at-spi2-core", "at-spi2-core", "at-spi2-core"),
    Need("pdftotext", "poppler-utils", "poppler-utils", "poppler"),
    # A print queue of our own: the daemon, the programs that name it a printer, its page filter.
    Need("/usr/sbin/cupsd", "cups-daemon", "cups", "cups"),
    Need("/usr/sbin/lpadmin", "cups-client", "cups-client", "cups"),
    Need(
        "/usr/lib/cups/filter/pdftopdf", "cups-filters-core-drivers", "cups-filters", "cups-filters"
    ),
    # They read what the program leaves for the desktop's start.
    Need("desktop-file-validate", "desktop-file-utils", "desktop-file-utils", "desktop-file-utils"),
    Need("gio", "libglib2.0-bin", "glib2", "glib2"),
    # Disks that fail, are full or read-only: a library put under the program, mounts of its own.
    Need("cc", "gcc", "gcc", "gcc"),
    Need("unshare", "util-linux", "util-linux", "util-linux"),
    Need("mount", "mount", "util-linux-core", "util-linux"),
    # A server that several desks share; each run makes a cluster of its own in memory.
    Need("initdb", "postgresql", "postgresql-server", "postgresql"),
)
# A window manager that closes a window as a person would.
SMOKE_PROGRAMS = (
    Need("Xvfb", "xvfb", "xorg-x11-server-Xvfb", "xorg-server-xvfb"),
    Need("openbox", "openbox", "openbox", "openbox"),
    Need("wmctrl", "wmctrl", "wmctrl", "wmctrl"),
)


def _is_kept_apart(name: str) -> bool:
    """Say whether Debian keeps a program of its database server off PATH, by version."""
    return any(Path("/usr/lib/postgresql").glob(f"*/bin/{name}"))


def missing(needs: Iterable[Need]) -> tuple[Need, ...]:
    """Return the needs that this system does not meet; none where Qt brings its own."""
    if not sys.platform.startswith("linux"):
        return ()
    return tuple(need for need in needs if not need.is_met())


def install_command(needs: Iterable[Need]) -> list[str] | None:
    """Return the package manager's line for these needs, or None if no known one is here."""
    needs = tuple(needs)
    if shutil.which("apt-get"):
        line = ["apt-get", "install", "-y", "--no-install-recommends"]
        packages = [need.apt for need in needs]
    elif shutil.which("dnf"):
        line = ["dnf", "install", "-y"]
        packages = [need.dnf for need in needs]
    elif shutil.which("pacman"):
        line = ["pacman", "-S", "--needed", "--noconfirm"]
        packages = [need.pacman for need in needs]
    else:
        return None
    return [*_as_root(), *line, *dict.fromkeys(packages)]


def require(needs: Iterable[Need], *, install: bool) -> None:
    """Go on only when every need is met; install them first if asked.

    Raises
    ------
    CannotGoOn
        With the names of what is missing and the line that installs it.
    """
    _refuse_old_glibc()
    lacking = missing(needs)
    if not lacking:
        return
    names = ", ".join(need.name for need in lacking)
    command = install_command(lacking)
    if command is None:
        raise CannotGoOn(f"This system lacks {names}, and no apt-get, dnf or pacman was found.")
    if not install:
        line = " ".join(command)
        raise CannotGoOn(
            f"This system lacks {names}. Install them with:\n\n    {line}\n\n"
            "or let this tool do it: add --install-system before the command."
        )
    say(f"This system lacks {names}.")
    install_packages(command)
    still = missing(lacking)
    if still:
        raise CannotGoOn(
            "Installed, but still not found: " + ", ".join(need.name for need in still)
        )


def install_packages(command: list[str]) -> None:
    """Run a package manager's line, after renewing apt's lists where that is the manager."""
    environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    lines = [command]
    if "apt-get" in command:
        lines.insert(0, [*_as_root(), "apt-get", "update"])
    for line in lines:
        say_command(line)
        if subprocess.call(line, env=environment, stdin=subprocess.DEVNULL) != 0:
            raise CannotGoOn(f"This line failed: {' '.join(line)}")


def _as_root() -> list[str]:
    if not hasattr(os, "geteuid") or os.geteuid() == 0:
        return []
    return ["sudo"]


def _refuse_old_glibc() -> None:
    name, version = platform.libc_ver()
    if not sys.platform.startswith("linux") or name != "glibc":
        return
    found = tuple(int(part) for part in version.split(".")[:2])
    if found < _GLIBC_WANTED:
        raise CannotGoOn(
            f"This system has glibc {version}; the Qt build for Linux needs 2.34 or newer "
            "(Debian 12, Ubuntu 22.04, Fedora 35 or later)."
        )
