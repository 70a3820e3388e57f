"""The tool that makes the environment: its lock files, its stamp, what it says is missing."""

from __future__ import annotations

import re
import struct
import sys
import tomllib
from pathlib import Path

import pytest
from devtool import commands, environment, needs
from devtool.environment import DEV_LOCK, RUN_LOCK, Environment
from devtool.needs import Need
from devtool.pixels import read_xwd
from devtool.speech import CannotGoOn
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name
from PySide6.QtGui import QImage

import brewdesk

PROJECT = tomllib.loads((RUN_LOCK.parents[1] / "pyproject.toml").read_text(encoding="utf-8"))[
    "project"
]
ABSENT_LIBRARY = Need("libno-such-thing.so.9", "libno-such-thing9", "no-such-thing", "nothing")


def pins(lock: Path) -> dict[str, str]:
    """Return name -> version of each line of a lock file, whatever its marker."""
    lines = lock.read_text(encoding="utf-8").replace("\\\n", " ").splitlines()
    found = [re.match(r"([A-Za-z0-9._-]+)==(\S+)", line) for line in lines]
    return {canonicalize_name(match[1]): match[2] for match in found if match}


@pytest.mark.parametrize(
    ("lock", "wanted"),
    [
        (RUN_LOCK, PROJECT["dependencies"]),
        (DEV_LOCK, PROJECT["dependencies"] + PROJECT["optional-dependencies"]["dev"]),
    ],
    ids=["run", "dev"],
)
def test_the_lock_pins_what_the_project_asks_for(lock, wanted):
    pinned = pins(lock)

    unmet = [
        text
        for text in wanted
        if not (need := Requirement(text)).specifier.contains(
            pinned.get(canonicalize_name(need.name), "0")
        )
    ]

    assert not unmet


def test_the_dev_lock_holds_the_whole_run_lock():
    assert pins(RUN_LOCK).items() <= pins(DEV_LOCK).items()


@pytest.mark.parametrize("lock", [RUN_LOCK, DEV_LOCK], ids=["run", "dev"])
def test_every_pin_carries_a_hash(lock):
    lines = lock.read_text(encoding="utf-8").replace("\\\n", " ").splitlines()

    assert lines
    assert all("--hash=sha256:" in line for line in lines)


def test_the_program_and_the_package_have_one_version():
    assert PROJECT["version"] == brewdesk.__version__


def test_the_qt_release_that_loses_references_is_not_pinned():
    assert pins(RUN_LOCK)["pyside6-essentials"] != "6.12.0"


def test_a_library_and_a_program_that_are_absent_are_missed(monkeypatch):
    monkeypatch.setattr(sys, "platform", "linux")
    program = Need("no-such-program", "a", "b", "c")

    assert needs.missing([ABSENT_LIBRARY, program]) == (ABSENT_LIBRARY, program)


def test_nothing_is_missed_where_qt_brings_its_own(monkeypatch):
    monkeypatch.setattr(sys, "platform", "darwin")

    assert needs.missing([ABSENT_LIBRARY]) == ()


@pytest.mark.parametrize(
    ("manager", "line"),
    [
        ("apt-get", "apt-get install -y --no-install-recommends libno-such-thing9"),
        ("dnf", "dnf install -y no-such-thing"),
        ("pacman", "pacman -S --needed --noconfirm nothing"),
    ],
)
def test_the_refusal_names_the_library_and_the_line_that_installs_it(monkeypatch, manager, line):
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setattr(needs.shutil, "which", lambda name: name if name == manager else None)

    with pytest.raises(CannotGoOn) as refusal:
        needs.require([ABSENT_LIBRARY], install=False)

    assert "libno-such-thing.so.9" in str(refusal.value)
    assert line in str(refusal.value)


def test_a_person_who_is_not_root_installs_with_sudo(monkeypatch):
    monkeypatch.setattr(needs.shutil, "which", lambda name: name if name == "apt-get" else None)
    monkeypatch.setattr(needs.os, "geteuid", lambda: 1000, raising=False)

    assert needs.install_command([ABSENT_LIBRARY])[:2] == ["sudo", "apt-get"]


def test_a_package_is_named_once():
    shared = [need for need in needs.SCREEN if need.dnf == "libxcb"]

    command = needs.install_command(shared + shared)

    assert len(shared) > 1
    assert command is None or len(set(command)) == len(command)


@pytest.mark.parametrize(
    ("variables", "wanted"),
    [
        ({"DISPLAY": ":0"}, needs.SCREEN),
        ({"DISPLAY": ":0", "WAYLAND_DISPLAY": "wayland-0"}, needs.SCREEN),
        ({"WAYLAND_DISPLAY": "wayland-0"}, needs.WAYLAND),
        ({"QT_QPA_PLATFORM": "offscreen"}, ()),
    ],
)
def test_the_screen_decides_which_libraries_are_asked_for(monkeypatch, variables, wanted):
    monkeypatch.setattr(commands, "ON_LINUX", True)

    assert commands.screen_needs(variables) == wanted


def test_running_without_a_screen_is_refused_in_words(monkeypatch):
    monkeypatch.setattr(commands, "ON_LINUX", True)

    with pytest.raises(CannotGoOn, match="no screen"):
        commands.screen_needs({})


def test_the_due_list_is_printed_where_there_is_no_screen(monkeypatch):
    monkeypatch.setattr(commands, "ON_LINUX", True)
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    started = []
    monkeypatch.setattr(
        commands, "_prepared", lambda _options, _lock: Environment(Path("somewhere"))
    )
    monkeypatch.setattr(commands.os, "execve", lambda *words: started.append(words[1][1:]))
    monkeypatch.setattr(commands.subprocess, "call", lambda words, env: started.append(words[1:]))
    options = commands.Options(install_system=False, fresh=False, use_uv=False)

    commands.run(options, ["due", "--json"])

    assert started[0] == ["-m", "brewdesk", "due", "--json"]
    monkeypatch.setattr(needs, "OFFSCREEN", ())
    with pytest.raises(CannotGoOn, match="no screen"):
        commands.run(options, ["--demo"])


@pytest.fixture
def installed(monkeypatch):
    """Record installations instead of making them; the interpreter is an empty file."""
    done: list[str] = []

    def make(self, *, install_system):
        self.python.parent.mkdir(parents=True, exist_ok=True)
        self.python.touch()
        done.append("make")

    monkeypatch.setattr(Environment, "_make", make)
    monkeypatch.setattr(Environment, "_install", lambda self, lock: done.append(lock.name))
    return done


def prepare(folder, lock, *, fresh=False):
    Environment(folder).prepare(lock, fresh=fresh, install_system=False)


def test_a_second_start_installs_nothing(tmp_path, installed):
    prepare(tmp_path / "env", RUN_LOCK)
    prepare(tmp_path / "env", RUN_LOCK)

    assert installed == ["make", RUN_LOCK.name]


def test_the_dev_set_serves_the_program_too(tmp_path, installed):
    prepare(tmp_path / "env", DEV_LOCK)
    prepare(tmp_path / "env", RUN_LOCK)

    assert installed == ["make", DEV_LOCK.name]


def test_the_tests_add_to_an_environment_made_for_running(tmp_path, installed):
    prepare(tmp_path / "env", RUN_LOCK)
    prepare(tmp_path / "env", DEV_LOCK)

    assert installed == ["make", RUN_LOCK.name, DEV_LOCK.name]


def test_a_changed_lock_is_installed_again(tmp_path, installed, monkeypatch):
    lock = tmp_path / "run.lock"
    monkeypatch.setattr(environment, "RUN_LOCK", lock)
    lock.write_text("a==1\n", encoding="utf-8")
    prepare(tmp_path / "env", lock)
    lock.write_text("a==2\n", encoding="utf-8")
    prepare(tmp_path / "env", lock)

    assert installed == ["make", "run.lock", "run.lock"]


def test_a_moved_environment_is_made_anew(tmp_path, installed, monkeypatch):
    prepare(tmp_path / "here", RUN_LOCK)
    (tmp_path / "here").rename(tmp_path / "there")
    monkeypatch.setattr(
        Environment, "_make", lambda self, *, install_system: installed.append("make")
    )
    prepare(tmp_path / "there", RUN_LOCK)

    assert installed == ["make", RUN_LOCK.name, "make", RUN_LOCK.name]


def test_an_installation_that_failed_is_tried_again(tmp_path, installed, monkeypatch):
    def fail(self, lock):
        raise CannotGoOn("no network")

    with monkeypatch.context() as broken:
        broken.setattr(Environment, "_install", fail)
        with pytest.raises(CannotGoOn):
            prepare(tmp_path / "env", RUN_LOCK)
    prepare(tmp_path / "env", RUN_LOCK)

    assert installed[-1] == RUN_LOCK.name


def test_fresh_removes_the_old_environment(tmp_path, installed):
    prepare(tmp_path / "env", RUN_LOCK)
    prepare(tmp_path / "env", RUN_LOCK, fresh=True)

    assert installed == ["make", RUN_LOCK.name] * 2


def xwd_picture(rows: list[list[tuple[int, int, int]]], *, little_endian: bool) -> bytes:
    """Write a 32-bit XWD file as XWDFile.h lays it out, with one (unused) colour entry."""
    height_px, width_px = len(rows), len(rows[0])
    words = [0] * 25
    words[0], words[1], words[4], words[5] = 104, 7, width_px, height_px
    words[7], words[11], words[12], words[19] = int(not little_endian), 32, width_px * 4 + 4, 1
    pixels = b""
    for row in rows:
        for red, green, blue in row:
            number = red << 16 | green << 8 | blue
            pixels += number.to_bytes(4, "little" if little_endian else "big")
        pixels += b"\xee" * 4  # padding at the end of each line
    return struct.pack(">25I", *words) + b"name" + b"\0" * 12 + pixels


ROWS = [[(255, 0, 0), (0, 128, 0)], [(0, 0, 64), (255, 0, 0)]]


@pytest.mark.parametrize("little_endian", [True, False])
def test_the_screen_is_read_in_either_byte_order(little_endian):
    picture = read_xwd(xwd_picture(ROWS, little_endian=little_endian))

    assert picture.rgb == bytes([255, 0, 0, 0, 128, 0, 0, 0, 64, 255, 0, 0])
    assert picture.colour_count() == 3
    assert picture.share_of_commonest() == 0.5


def test_rows_under_the_title_bar_are_what_is_left():
    picture = read_xwd(xwd_picture(ROWS, little_endian=True)).without_top(1)

    assert (picture.width_px, picture.height_px) == (2, 1)
    assert picture.rgb == bytes([0, 0, 64, 255, 0, 0])


def test_another_kind_of_picture_is_refused():
    with pytest.raises(ValueError, match="not a 32-bit XWD"):
        read_xwd(b"\x89PNG" + bytes(200))


def test_the_written_png_is_read_back_by_qt(tmp_path):
    path = tmp_path / "screen.png"

    read_xwd(xwd_picture(ROWS, little_endian=True)).write_png(path)

    image = QImage(str(path))
    read = [[image.pixelColor(x, y).getRgb()[:3] for x in (0, 1)] for y in (0, 1)]
    assert read == ROWS
