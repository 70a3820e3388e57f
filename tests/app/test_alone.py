"""The program keeps to itself: no network, and files that only their owner reads.

One run of the whole program, without a shared store (no BREWDESK_DATABASE_URL), with the file mask
at 0, is looked at from within (an audit hook of Python's) and, where strace is installed, from
without: Qt's own sockets would not pass Python's hook.
"""

from __future__ import annotations

import ast
import json
import os
import re
import shutil
import stat
import subprocess
import sys
from pathlib import Path

import pytest

from tests.faults.forker import ROOT, surroundings

PATIENCE_S = 170
# What belongs to the test, not to the program.
OF_THE_TEST = {"picture.png", "calls.txt"}
REACHING_MODULES = {
    "urllib.request", "http", "http.client", "http.server", "ftplib", "smtplib", "poplib",
    "imaplib", "telnetlib", "xmlrpc", "socketserver", "ssl", "asyncio", "requests", "httpx",
}  # fmt: skip
SOCKET_USERS = {  # modules that may use Python's sockets, and what for
    "brewdesk/endsignals.py": "a pair that wakes the window's loop",
    "brewdesk/services/notices/session_bus.py": "the session's bus, a file",
    "brewdesk/services/notices/freedesktop.py": "the session's bus, a file",
    "brewdesk/store/serverlisten.py": "waits on the shared store's connection",
}


@pytest.fixture(scope="module")
def lived(tmp_path_factory):
    folder = tmp_path_factory.mktemp("alone")
    calls = folder / "calls.txt"
    strace = shutil.which("strace")
    before = (
        [strace, "-f", "-qq", "-e", "trace=connect,bind,sendto", "-o", str(calls)] if strace else []
    )
    env = surroundings() | {"QT_QPA_PLATFORM": "offscreen", "HOME": str(folder / "home")}
    for name in [name for name in env if name.startswith("XDG_")] + ["BREWDESK_DATABASE_URL"]:
        env.pop(name, None)
    (folder / "home").mkdir()
    done = subprocess.run(
        [*before, sys.executable, "-m", "tests.helpers.guardedrun", str(folder)],
        cwd=ROOT, env=env, capture_output=True, text=True, timeout=PATIENCE_S, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr[-3000:]
    told = json.loads(done.stdout.splitlines()[-1])
    return folder, told, calls.read_text(errors="replace") if strace else ""


def test_the_run_went_through(lived):
    _folder, told, _calls = lived
    assert told["errors"] == []
    assert told["code"] == 0


def test_nothing_reaches_for_a_network(lived):
    _folder, told, calls = lived
    assert told["reached"] == []
    assert told["loaded"] == []
    outside = [line for line in calls.splitlines() if re.search(r"\bAF_(INET6?|PACKET)\b", line)]
    assert outside == []


REACHING = """
import socket, sys
from tests.helpers import guardedrun

sys.addaudithook(guardedrun.watch)
socket.socket(socket.AF_INET, socket.SOCK_DGRAM).connect(("127.0.0.1", 9))
socket.socketpair()
socket.getaddrinfo("127.0.0.1", 9)
print(len(guardedrun.reached))
"""


def test_the_guard_would_have_seen_it():
    seen = subprocess.run(
        [sys.executable, "-c", REACHING],
        cwd=ROOT,
        env=surroundings(),
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    assert seen.strip() == "2"


def test_every_file_is_its_owners_alone_whatever_the_file_mask(lived):
    folder, _told, _calls = lived
    files, folders = modes_below(folder)
    names = {path.name for path in files}
    kinds = {
        "store": "pantry.brewdesk" in names,
        "backup": any("backups" in path.parts for path in files),
        "log": "brewdesk.log" in names,
        "calendar": {"due.ics", "given.ics"} <= names,
        "photo": any(path.suffix == ".png" and path.name != "picture.png" for path in files),
    }
    assert kinds == dict.fromkeys(kinds, True)
    assert {str(path): oct(mode) for path, mode in files.items() if mode & 0o077} == {}
    assert {str(path): oct(mode) for path, mode in folders.items() if mode & 0o077} == {}


def modes_below(folder: Path) -> tuple[dict[Path, int], dict[Path, int]]:
    files: dict[Path, int] = {}
    folders: dict[Path, int] = {}
    for place, below, names in os.walk(folder):
        for name in names:
            if name not in OF_THE_TEST:
                files[Path(place) / name] = mode_of(Path(place) / name)
        for name in below:
            if name != "home":
                folders[Path(place) / name] = mode_of(Path(place) / name)
    return files, folders


def mode_of(path: Path) -> int:
    return stat.S_IMODE(path.lstat().st_mode)


WHILE_RUNNING = """
import os, sys
from pathlib import Path

os.umask(0)
from PySide6.QtCore import QCoreApplication
from brewdesk import faults
from brewdesk.instance import Instance

app = QCoreApplication([])
folder = Path(sys.argv[1]) / "a" / "b"
instance = Instance(folder / "pantry.brewdesk")
assert instance.take()
faults.start_log(folder / "state")
faults.log.error("invented")
assert not faults.RunMark(folder / "state", folder / "p").set()
stream = faults.start_crash_log(folder / "state", folder / "p")
assert stream is not None
for place, below, names in os.walk(sys.argv[1]):
    for name in (*below, *names):
        mode = os.lstat(os.path.join(place, name)).st_mode & 0o077
        print(oct(mode), name)
"""


def test_what_lies_there_only_while_the_program_runs_is_its_owners_alone(tmp_path):
    """The lock, the mark of a run, the log and the log of crashes."""
    said = subprocess.run(
        [sys.executable, "-c", WHILE_RUNNING, str(tmp_path)],
        cwd=ROOT,
        env=surroundings(),
        capture_output=True,
        text=True,
        check=True,
    ).stdout.splitlines()
    assert len(said) == 7
    assert [line for line in said if not line.startswith("0o0 ")] == []


def test_no_module_imports_what_could_reach_a_network():
    used: dict[str, set[str]] = {}
    for root in ("brewdesk", "shared/culturecore"):
        for path in sorted((ROOT / root).rglob("*.py")):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                names = []
                if isinstance(node, ast.Import):
                    names = [one.name for one in node.names]
                elif isinstance(node, ast.ImportFrom) and node.module:
                    names = [node.module, *(f"{node.module}.{one.name}" for one in node.names)]
                for name in names:
                    used.setdefault(name, set()).add(path.relative_to(ROOT).as_posix())
    assert {name: used[name] for name in REACHING_MODULES & used.keys()} == {}
    assert used.get("socket", set()) <= SOCKET_USERS.keys()
    qt = {name for name in used if name.startswith("PySide6.QtNetwork.")}
    assert qt <= {"PySide6.QtNetwork.QLocalServer", "PySide6.QtNetwork.QLocalSocket"}
