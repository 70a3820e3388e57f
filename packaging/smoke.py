"""Open the program in a real window, look at the screen, close the window, read the log.

Starts an X server of its own, a window manager on it, and the program with invented data in a
throw-away folder. Fails when the window does not come, when it stays blank, when it does not
end with exit code 0 after being closed as a person closes it, or when its log holds a
traceback or a complaint of Qt's painter.

    python3 packaging/dev.py smoke [--picture FILE.png]
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TypeVar

from devtool.display import virtual_screen
from devtool.pixels import Picture, read_xwd
from devtool.speech import ROOT, CannotGoOn, say

T = TypeVar("T")

WIDTH_PX, HEIGHT_PX = 1280, 800
WINDOW_LIMIT_S = 60.0  # a cold disk and two busy cores
PAINT_LIMIT_S = 30.0
END_LIMIT_S = 30.0
POLL_S = 0.1
TITLE_BAR_PX = 40  # left out of the look: the window manager paints it, not the program
# An empty window of this size shows some hundred colours in its frame and shadows, and its
# commonest fills 99.9 %; a window with a page of text shows five hundred, and 90 %.
COLOURS_AT_LEAST = 200
COMMONEST_AT_MOST = 0.97
BAD_SIGNS = ("Traceback", "QPainter", "QObject::", "Fatal Python error")


def main() -> int:
    """Run the whole course; 0 means that every look was good."""
    parser = argparse.ArgumentParser(description="Open, look at and close one real window.")
    parser.add_argument("--picture", type=Path, help="keep the screenshot here")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory(prefix="brewdesk-smoke-") as folder:
        try:
            picture = _course(Path(folder), asked.picture)
        except CannotGoOn as trouble:
            say(f"Smoke run failed: {trouble}")
            return 1
    say(f"Smoke run passed: {_what_is_seen(picture)}; exit code 0")
    return 0


def _course(folder: Path, picture_path: Path | None) -> Picture:
    pixels = folder / "pixels"
    home = folder / "home"
    for each in (pixels, home, home / "run"):
        each.mkdir(mode=0o700)
    log_path = folder / "log.txt"
    with virtual_screen(WIDTH_PX, HEIGHT_PX, picture_folder=pixels) as display:
        variables = _variables(display, home)
        with _window_manager(variables), log_path.open("wb") as log:
            started = time.monotonic()
            program = subprocess.Popen(
                [sys.executable, "-m", "brewdesk", "--demo", "--data-dir", str(folder / "data")],
                env=variables,
                cwd=ROOT,
                stdin=subprocess.DEVNULL,
                stdout=log,
                stderr=subprocess.STDOUT,
            )
            try:
                window = _wait_for_window(program, variables, log_path)
                say(f"The window came after {time.monotonic() - started:.1f} s: {window}")
                picture = _wait_for_picture(pixels / "Xvfb_screen0")
                if picture_path is not None:
                    picture.write_png(picture_path)
                if _is_blank(picture):
                    raise CannotGoOn(f"the window is blank: {_what_is_seen(picture)}")
                _close(window, variables)
                code = _wait_for_end(program)
            finally:
                program.kill()  # does nothing if it has ended
                program.wait()
    _judge(code, log_path.read_text(encoding="utf-8", errors="replace"))
    return picture


def _variables(display: str, home: Path) -> dict[str, str]:
    variables = {
        **os.environ,
        "DISPLAY": display,
        "QT_QPA_PLATFORM": "xcb",
        "HOME": str(home),
        "XDG_RUNTIME_DIR": str(home / "run"),
        "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared"))),
        "PYTHONFAULTHANDLER": "1",
        "PYTHONUNBUFFERED": "1",
    }
    # The program must open without a message bus, too, and must not speak on the desktop's.
    for name in ("DBUS_SESSION_BUS_ADDRESS", "WAYLAND_DISPLAY", "XDG_CONFIG_HOME"):
        variables.pop(name, None)
    return variables


@contextmanager
def _window_manager(variables: dict[str, str]) -> Iterator[None]:
    manager = subprocess.Popen(
        ["openbox"], env=variables, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    )
    try:
        _wait(lambda: _window_list(variables) is not None, 20.0, "openbox did not start")
        yield
    finally:
        manager.terminate()
        manager.wait()


def _window_list(variables: dict[str, str]) -> list[list[str]] | None:
    """Return id, desktop, pid, machine, title of each managed window; None without a manager."""
    result = subprocess.run(
        ["wmctrl", "-l", "-p"], env=variables, capture_output=True, text=True, check=False
    )
    if result.returncode != 0:
        return None
    return [line.split(None, 4) for line in result.stdout.splitlines()]


def _wait_for_window(
    program: subprocess.Popen[bytes], variables: dict[str, str], log_path: Path
) -> str:
    def find() -> str | None:
        if program.poll() is not None:
            text = log_path.read_text(encoding="utf-8", errors="replace")
            raise CannotGoOn(f"the program ended with {program.returncode} at once:\n{text}")
        windows = _window_list(variables) or []
        own = [window for window in windows if window[2] == str(program.pid)]
        return " ".join((own[0][0], *own[0][4:])) if own else None

    return _wait(find, WINDOW_LIMIT_S, "no window came")


def _wait_for_picture(path: Path) -> Picture:
    """Wait until something is painted and two looks in a row see the same pixels."""
    looks: list[Picture] = []

    def settled() -> Picture | None:
        looks.append(read_xwd(path.read_bytes()))
        newest = looks[-1]
        is_still = len(looks) > 1 and looks[-2].rgb == newest.rgb
        return newest if is_still and not _is_blank(newest) else None

    try:
        return _wait(settled, PAINT_LIMIT_S, "")
    except CannotGoOn:
        return looks[-1]  # whether it is blank is judged next, with its numbers


def _is_blank(picture: Picture) -> bool:
    painted = picture.without_top(TITLE_BAR_PX)
    return (
        painted.colour_count() < COLOURS_AT_LEAST
        or painted.share_of_commonest() > COMMONEST_AT_MOST
    )


def _what_is_seen(picture: Picture) -> str:
    painted = picture.without_top(TITLE_BAR_PX)
    return (
        f"{painted.colour_count()} colours, the commonest fills {painted.share_of_commonest():.1%}"
    )


def _close(window: str, variables: dict[str, str]) -> None:
    window_id = window.split()[0]
    if subprocess.call(["wmctrl", "-i", "-c", window_id], env=variables) != 0:
        raise CannotGoOn("the window manager refused to close the window")


def _wait_for_end(program: subprocess.Popen[bytes]) -> int:
    try:
        return program.wait(timeout=END_LIMIT_S)
    except subprocess.TimeoutExpired:
        raise CannotGoOn(
            f"the program still ran {END_LIMIT_S:.0f} s after its window was closed"
        ) from None


def _judge(code: int, log: str) -> None:
    if log:
        say(f"Its log:\n{log.rstrip()}")
    if code != 0:
        raise CannotGoOn(f"the program ended with exit code {code}")
    signs = [sign for sign in BAD_SIGNS if sign in log]
    if signs:
        raise CannotGoOn(f"the log holds: {', '.join(signs)}")


def _wait(look: Callable[[], T | None], limit_s: float, complaint: str) -> T:
    end = time.monotonic() + limit_s
    while time.monotonic() < end:
        if found := look():
            return found
        time.sleep(POLL_S)
    raise CannotGoOn(f"{complaint} within {limit_s:.0f} s")


if __name__ == "__main__":
    sys.exit(main())
