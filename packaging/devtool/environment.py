"""The virtual environment in ``.venv``: made once, checked by a stamp, never holding the project.

The project itself is not installed: PYTHONPATH points at the checkout instead, so that what
runs is always the source that is being looked at.
"""

from __future__ import annotations

import hashlib
import importlib.util
import json
import os
import platform
import shutil
import subprocess
import sys
import time
from pathlib import Path

from devtool.needs import Need, install_command, install_packages
from devtool.speech import ROOT, CannotGoOn, say

RUN_LOCK = ROOT / "packaging" / "requirements-run.lock"
DEV_LOCK = ROOT / "packaging" / "requirements-dev.lock"  # holds all of RUN_LOCK, too


class Environment:
    """The virtual environment at ``folder`` for the Python that runs this tool."""

    def __init__(self, folder: Path = ROOT / ".venv", *, use_uv: bool = True) -> None:
        self.folder = folder
        self.uv = shutil.which("uv") if use_uv else None
        self._stamp = folder / ".dev-stamp"

    @property
    def python(self) -> Path:
        """The environment's interpreter."""
        if os.name == "nt":
            return self.folder / "Scripts" / "python.exe"
        return self.folder / "bin" / "python"

    def is_ready(self, lock: Path) -> bool:
        """Say whether the last full installation was of this lock, here, by this Python."""
        stamp = self._read_stamp()
        return (
            self.python.exists()
            and stamp.get("home") == self._home()
            and _digest(lock) in stamp.get("locks", ())
        )

    def prepare(self, lock: Path, *, fresh: bool, install_system: bool) -> None:
        """Make the environment match the lock; return at once if it already does."""
        if fresh and self.folder.exists():
            say(f"Removing {self.folder}")
            self._remove()
        if self.is_ready(lock):
            return
        started = time.monotonic()
        if self._read_stamp().get("home") != self._home() or not self.python.exists():
            self._make(install_system=install_system)
        say(f"Installing {lock.name} into {self.folder} with {'uv' if self.uv else 'pip'}")
        self._stamp.unlink(missing_ok=True)
        self._install(lock)
        locks = [RUN_LOCK, DEV_LOCK] if lock == DEV_LOCK else [RUN_LOCK]
        self._stamp.write_text(
            json.dumps({"home": self._home(), "locks": [_digest(each) for each in locks]}),
            encoding="utf-8",
        )
        say(f"The environment is ready ({time.monotonic() - started:.1f} s)")

    def variables(self) -> dict[str, str]:
        """Return the variables under which the project's programs start."""
        return {
            **os.environ,
            "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared"))),
            "PYTHONNOUSERSITE": "1",
            "VIRTUAL_ENV": str(self.folder),
            "PATH": os.pathsep.join((str(self.python.parent), os.environ.get("PATH", ""))),
        }

    def _make(self, *, install_system: bool) -> None:
        self._remove()
        say(f"Making {self.folder} with Python {sys.version.split()[0]}")
        if self.uv:
            _call([self.uv, "venv", "--quiet", "--python", sys.executable, str(self.folder)])
            return
        _require_venv_module(install_system=install_system)
        _call([sys.executable, "-m", "venv", str(self.folder)])

    def _remove(self) -> None:
        if self.folder.is_symlink():
            self.folder.unlink()  # what it points at is not ours
        elif self.folder.exists():
            shutil.rmtree(self.folder)

    def _install(self, lock: Path) -> None:
        # The lock is complete and hashed: nothing is left for the installer to choose.
        options = ["--require-hashes", "--no-deps", "--only-binary", ":all:", "-r", str(lock)]
        if self.uv:
            _call([self.uv, "pip", "install", "--quiet", "--python", str(self.python), *options])
            return
        pip = [str(self.python), "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
        _call([*pip, *options])

    def _home(self) -> str:
        version = f"{sys.implementation.cache_tag} {platform.python_version()}"
        return f"{version} | {os.path.realpath(sys.executable)} | {self.folder}"

    def _read_stamp(self) -> dict[str, str | list[str]]:
        try:
            stamp = json.loads(self._stamp.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return {}
        return stamp if isinstance(stamp, dict) else {}


def write_locks() -> None:
    """Write both lock files anew from pyproject.toml; uv is needed for this alone."""
    uv = shutil.which("uv")
    if uv is None:
        raise CannotGoOn("Writing the lock files needs uv on PATH.")
    for lock, extras in ((RUN_LOCK, ("--extra", "desks")), (DEV_LOCK, ("--extra", "dev"))):
        lock.unlink(missing_ok=True)  # an old file would hold its versions fast
        command = [uv, "pip", "compile", "--quiet", "--universal", "--python-version", "3.11"]
        command += ["--fork-strategy", "fewest", "--generate-hashes", "--no-annotate"]
        command += ["--no-header", "-c", str(ROOT / "packaging" / "every-python.txt"), *extras]
        _call([*command, str(ROOT / "pyproject.toml"), "-o", str(lock)])
        say(f"Wrote {lock.name}")


def _require_venv_module(*, install_system: bool) -> None:
    if importlib.util.find_spec("venv") and importlib.util.find_spec("ensurepip"):
        return
    # Debian splits venv and ensurepip off from its python3; others ship them.
    package = f"python{sys.version_info.major}.{sys.version_info.minor}-venv"
    command = install_command([Need("ensurepip", package, "python3", "python")])
    line = " ".join(command) if command else f"install the package {package}"
    if not install_system or command is None:
        raise CannotGoOn(
            f"This Python has no ensurepip, so it cannot make an environment. Run:\n\n    {line}"
            "\n\nor let this tool do it: add --install-system before the command."
        )
    install_packages(command)


def _digest(lock: Path) -> str:
    return hashlib.sha256(lock.read_bytes()).hexdigest()


def _call(command: list[str]) -> None:
    if subprocess.call(command, stdin=subprocess.DEVNULL) != 0:
        raise CannotGoOn(f"This line failed: {' '.join(command)}")
