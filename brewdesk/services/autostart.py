"""Starting with the desktop session: one file (or registry value) that is there, or is not.

What the desktop reads is the truth; nothing of it is kept in the pantry. The file on Linux
follows the Desktop Application Autostart Specification
(https://specifications.freedesktop.org/autostart-spec/latest/) and the Desktop Entry
Specification (https://specifications.freedesktop.org/desktop-entry-spec/latest/). macOS and
Windows are provided for, and untried.
"""

from __future__ import annotations

import hashlib
import os
import plistlib
import subprocess
import sys
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from brewdesk.services.desktopentry import entry_is_on, entry_text
from brewdesk.services.wholefile import NotWrittenError, write_whole
from brewdesk.store.files import make_folder

IN_BACKGROUND = "--in-background"
RUN_KEY = r"Software\Microsoft\Windows\CurrentVersion\Run"


class AutostartTrouble(Exception):  # noqa: N818  # a state of the desktop to tell, not a bug
    """The start with the session could not be switched.

    ``code`` is "not_written" (``detail`` is what the system said) or "odd_path" (the program
    lies where no such file can point).
    """

    def __init__(self, code: str, detail: str = "") -> None:
        self.code = code
        self.detail = detail
        super().__init__(f"{code}: {detail}" if detail else code)


@dataclass(frozen=True, slots=True)
class Launch:
    """How this program is started again: its words, and variables that it needs."""

    words: tuple[str, ...]
    variables: tuple[tuple[str, str], ...] = ()


def own_launch(
    options: Sequence[str],
    *,
    executable: str,
    started_as: str,
    is_frozen: bool,
    variables: Mapping[str, str],
) -> Launch:
    """Say how to start this very program again, in the background.

    Parameters
    ----------
    options
        What makes it open this pantry and no other.
    executable
        The interpreter, or the frozen program (``sys.executable``).
    started_as
        The script that was started (``sys.argv[0]``).
    is_frozen
        Whether the program is its own executable.
    variables
        The environment; of it only PYTHONPATH matters, by which a checkout is found.
    """
    words: tuple[str, ...]
    kept: tuple[tuple[str, str], ...] = ()
    script = Path(started_as)
    if is_frozen:
        words = (executable,)
    elif script.stem == "brewdesk" and script.is_file() and os.access(script, os.X_OK):
        words = (str(script.absolute()),)
    else:
        words = (executable, "-m", "brewdesk")
        if variables.get("PYTHONPATH"):
            kept = (("PYTHONPATH", _absolute_folders(variables["PYTHONPATH"])),)
    return Launch((*words, *options, IN_BACKGROUND), kept)


def _absolute_folders(search_path: str) -> str:
    """Make relative folders absolute: the session starts elsewhere."""
    parts = search_path.split(os.pathsep)
    return os.pathsep.join(str(Path(part).absolute()) for part in parts)


class Autostart(Protocol):
    """One desktop's way of starting a program with the session."""

    def is_on(self) -> bool:
        """Whether the desktop would start it."""
        ...

    def turn_on(self, launch: Launch) -> None:
        """Have it started from now on; AutostartTrouble if that cannot be."""
        ...

    def turn_off(self) -> None:
        """Have it started no more; AutostartTrouble if that cannot be."""
        ...

    def starts(self, launch: Launch) -> bool:
        """Whether what would be started is this."""
        ...


class XdgAutostart:
    """A .desktop file in the session's autostart folder, as Linux desktops read it."""

    def __init__(self, folder: Path, name: str) -> None:
        self.path = folder / f"{name}.desktop"

    def is_on(self) -> bool:
        """Whether the file is there, and neither hidden nor switched off by the desktop."""
        return entry_is_on(self._text())

    def turn_on(self, launch: Launch) -> None:
        """Write the file."""
        _write(self.path, _entry(launch))

    def turn_off(self) -> None:
        """Remove the file."""
        _remove(self.path)

    def starts(self, launch: Launch) -> bool:
        """Whether the file says what it should."""
        return self._text().encode("utf-8", "surrogateescape") == _entry(launch)

    def _text(self) -> str:
        return _read(self.path).decode("utf-8", "surrogateescape")


class LaunchAgent:
    """A property list in ~/Library/LaunchAgents, as macOS reads it. Untried there."""

    def __init__(self, folder: Path, name: str) -> None:
        self._label = f"local.{name}"
        self.path = folder / f"{self._label}.plist"

    def is_on(self) -> bool:
        """Whether the list is there and not disabled."""
        kept = self._kept()
        return bool(kept) and not kept.get("Disabled", False)

    def turn_on(self, launch: Launch) -> None:
        """Write the list."""
        try:
            data = plistlib.dumps(self._wanted(launch))
        except (ValueError, UnicodeEncodeError) as error:  # control characters, odd file names
            raise AutostartTrouble("odd_path", str(error)) from error
        _write(self.path, data)

    def turn_off(self) -> None:
        """Remove the list."""
        _remove(self.path)

    def starts(self, launch: Launch) -> bool:
        """Whether the list says what it should."""
        return self._kept() == self._wanted(launch)

    def _kept(self) -> dict[str, object]:
        try:
            kept = plistlib.loads(_read(self.path))
        except Exception:  # the parser raises whatever its parts raise
            return {}
        return kept if isinstance(kept, dict) else {}

    def _wanted(self, launch: Launch) -> dict[str, object]:
        wanted: dict[str, object] = {
            "Label": self._label,
            "ProgramArguments": list(launch.words),
            "RunAtLoad": True,
            "ProcessType": "Interactive",
        }
        if launch.variables:
            wanted["EnvironmentVariables"] = dict(launch.variables)
        return wanted


class Registry(Protocol):
    """The values of one key of the Windows registry."""

    def get(self, name: str) -> str | None:
        """Return a value, None if there is none."""
        ...

    def put(self, name: str, value: str) -> None:
        """Keep a value; OSError if it may not be."""
        ...

    def remove(self, name: str) -> None:
        """Remove a value, if there is one."""
        ...


class RunKey:
    """A value below the Run key of the user's registry, as Windows reads it. Untried there."""

    def __init__(self, registry: Registry, name: str) -> None:
        self._registry = registry
        self._name = name

    def is_on(self) -> bool:
        """Whether the value is there."""
        return self._registry.get(self._name) is not None

    def turn_on(self, launch: Launch) -> None:
        """Keep the command line as the value."""
        if launch.variables:  # a command line there can bring none along
            raise AutostartTrouble("odd_path", "it is run from a folder on PYTHONPATH")
        try:
            self._registry.put(self._name, subprocess.list2cmdline(launch.words))
        except OSError as error:
            raise AutostartTrouble("not_written", str(error)) from error

    def turn_off(self) -> None:
        """Remove the value."""
        try:
            self._registry.remove(self._name)
        except OSError as error:
            raise AutostartTrouble("not_written", str(error)) from error

    def starts(self, launch: Launch) -> bool:
        """Whether the value is the command line it should be."""
        return self._registry.get(self._name) == subprocess.list2cmdline(launch.words)


class WindowsRegistry:
    """The user's own Run key. Untried."""

    def get(self, name: str) -> str | None:
        """Return a value, None if there is none."""
        if sys.platform != "win32":
            return None
        import winreg

        try:
            with winreg.OpenKey(winreg.HKEY_CURRENT_USER, RUN_KEY) as key:
                return str(winreg.QueryValueEx(key, name)[0])
        except OSError:
            return None

    def put(self, name: str, value: str) -> None:
        """Keep a value; OSError if it may not be."""
        if sys.platform == "win32":
            import winreg

            with winreg.CreateKey(winreg.HKEY_CURRENT_USER, RUN_KEY) as key:
                winreg.SetValueEx(key, name, 0, winreg.REG_SZ, value)

    def remove(self, name: str) -> None:
        """Remove a value, if there is one."""
        if sys.platform == "win32":
            import winreg

            access = winreg.KEY_SET_VALUE
            with winreg.OpenKey(winreg.HKEY_CURRENT_USER, RUN_KEY, 0, access) as key:
                try:
                    winreg.DeleteValue(key, name)
                except FileNotFoundError:
                    return


def autostart_of(platform: str, home: Path, variables: Mapping[str, str], name: str) -> Autostart:
    """Return the way of this system; ``platform`` is as in ``sys.platform``."""
    if platform == "darwin":
        return LaunchAgent(home / "Library" / "LaunchAgents", name)
    if platform == "win32":
        return RunKey(WindowsRegistry(), name)
    config = Path(variables.get("XDG_CONFIG_HOME", ""))
    if not config.is_absolute():  # the specification has relative ones ignored
        config = home / ".config"
    return XdgAutostart(config / "autostart", name)


def name_for(store_path: Path, usual_path: Path) -> str:
    """Name the entry: each pantry has its own, so that none switches another off."""
    if store_path.absolute() == usual_path.absolute():
        return "brewdesk"
    digest = hashlib.sha256(os.fsencode(store_path.absolute())).hexdigest()[:12]
    return f"brewdesk-{digest}"


class SessionStart:
    """The switch in the settings: whether this pantry opens with the session."""

    def __init__(self, autostart: Autostart, launch: Launch) -> None:
        self._autostart = autostart
        self._launch = launch

    def is_on(self) -> bool:
        """Whether the desktop would start it."""
        return self._autostart.is_on()

    def put(self, wanted: bool) -> None:
        """Switch it on or off; AutostartTrouble if the system does not take it."""
        if wanted:
            self._autostart.turn_on(self._launch)
        else:
            self._autostart.turn_off()

    def renew(self) -> bool:
        """Point an entry that is on to where the program now lies; say whether it had moved."""
        if not self._autostart.is_on() or self._autostart.starts(self._launch):
            return False
        self._autostart.turn_on(self._launch)
        return True


def _entry(launch: Launch) -> bytes:
    try:
        return entry_text(launch.words, dict(launch.variables)).encode("utf-8")
    except ValueError as error:  # also what no UTF-8 can write
        raise AutostartTrouble("odd_path", str(error)) from error


def _read(path: Path) -> bytes:
    try:
        return path.read_bytes()
    except OSError:
        return b""


def _write(path: Path, data: bytes) -> None:
    try:
        make_folder(path.parent)
        write_whole(path, data)
    except (OSError, NotWrittenError) as error:
        raise AutostartTrouble("not_written", str(error)) from error


def _remove(path: Path) -> None:
    try:
        path.unlink(missing_ok=True)
    except OSError as error:
        raise AutostartTrouble("not_written", str(error)) from error
