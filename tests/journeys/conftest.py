"""The whole program with a clock, notices and threads that the test commands."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtWidgets import QApplication

from brewdesk.bootstrap import Program
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs
from tests.helpers.worn_theme import look_kept

START = datetime(2026, 11, 2, 15, 0, tzinfo=UTC)


class Pantry:
    """One store on disk, and the program that is open on it now."""

    def __init__(self, app: QApplication, path: Path, qtbot, server: str = "") -> None:
        self.app = app
        self.path = path
        self.server = server
        self.qtbot = qtbot
        self.clock = FakeClock(START, ZoneInfo("Europe/Berlin"))
        self.program: Program | None = None
        self.notifier = FakeNotifier()

    def open(self, *, is_demo: bool = False, notifier=None) -> Program:
        self.notifier = notifier or FakeNotifier()
        self.program = Program(
            self.app,
            self.path,
            is_demo=is_demo,
            server=self.server,
            clock=self.clock,
            jobs=InlineJobs(),
            notifier=self.notifier,
        )
        self.program.start()
        self.qtbot.waitExposed(self.program.window)
        self.qtbot.waitUntil(lambda: self.program.is_running)
        return self.program

    def close(self) -> None:
        if self.program is not None:
            self.program.leave()
            self.program = None

    def reopen(self) -> Program:
        self.close()
        return self.open()

    def pass_time(self, **span: float) -> None:
        """Let time pass, then look at the clock as the minute's tick would."""
        self.clock.advance(**span)
        assert self.program is not None
        self.program.desk.timers.evaluate()
        self.program.desk.reminder_clock.evaluate()


@pytest.fixture
def lies_on() -> str:
    """Where the pantry lies, unless a test asks for both."""
    return "file"


@pytest.fixture
def pantry(qapp, qtbot, tmp_path, lies_on, request) -> Callable[..., Program]:
    server = request.getfixturevalue("pg_server") if lies_on == "server" else None
    address = "" if server is None else server.make_store()
    with look_kept(qapp):
        made = Pantry(qapp, tmp_path / "pantry.brewdesk", qtbot, address)
        yield made
        made.close()
    if server is not None:
        server.drop(address)
