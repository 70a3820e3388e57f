"""Desks at one store on a real server; clock, notices and threads are the test's."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtWidgets import QApplication

from brewdesk.bootstrap import Program, open_shared
from brewdesk.services.desk import build_desk
from brewdesk.services.settings import DESK_NAME
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs
from tests.helpers.worn_theme import look_kept

START = datetime(2026, 11, 2, 15, 0, tzinfo=UTC)
# It takes milliseconds; a machine with much else to do must not fail a test.
PATIENCE_MS = 20_000


class BareDesk:
    """A desk's services without its window, which takes longer to build than most tests."""

    def __init__(self, address: str, path: Path, clock: FakeClock) -> None:
        self.store = open_shared(address, path, now=clock.now())
        self.notifier = FakeNotifier()
        self.desk = build_desk(self.store, clock, jobs=InlineJobs(), notifier=self.notifier)
        self.desk.desks.became_keeper.connect(self.desk.reminder_clock.evaluate)
        self.desk.desks.start()
        self.desk.reminder_clock.start()

    def leave(self) -> None:
        self.desk.desks.stop()
        self.desk.reminder_clock.stop()
        self.store.close()


class SharedPantry:
    """One store on a server, and the desks that are open on it."""

    def __init__(self, app: QApplication, folder: Path, address: str, qtbot) -> None:
        self.app = app
        self.folder = folder
        self.address = address
        self.qtbot = qtbot
        self.clock = FakeClock(START, ZoneInfo("Europe/Berlin"))
        self.open_ones: list[Program | BareDesk] = []

    def open(self, name: str) -> Program:
        """Open a desk; a name stands for a computer with a data folder of its own."""
        program = Program(
            self.app,
            self.folder / name / "shared-pantry.brewdesk",
            server=self.address,
            clock=self.clock,
            jobs=InlineJobs(),
            notifier=FakeNotifier(),
        )
        self.open_ones.append(program)
        program.desk.settings.put(DESK_NAME, f"{name}'s desk")
        program.start()
        self.qtbot.waitExposed(program.window)
        self.qtbot.waitUntil(lambda: program.is_running)
        return program

    def open_bare(self, name: str) -> BareDesk:
        """Open a desk without a window."""
        made = BareDesk(self.address, self.folder / name / "shared-pantry.brewdesk", self.clock)
        made.desk.settings.put(DESK_NAME, f"{name}'s desk")
        self.open_ones.append(made)
        return made

    def close(self, program: Program | BareDesk) -> None:
        program.leave()
        self.open_ones.remove(program)

    def soon(self, is_so) -> None:
        """Wait until something holds, which only what comes from the server can bring about."""
        self.qtbot.waitUntil(is_so, timeout=PATIENCE_MS)


@pytest.fixture
def shared(qapp, qtbot, tmp_path, pg_server) -> Iterator[SharedPantry]:
    with look_kept(qapp):
        address = pg_server.make_store()
        made = SharedPantry(qapp, tmp_path, address, qtbot)
        yield made
        for program in tuple(made.open_ones):
            made.close(program)
        pg_server.drop(address)


@pytest.fixture
def anna(shared) -> Program:
    """An invented maker's desk."""
    return shared.open("Anna")


@pytest.fixture
def ben(shared, anna) -> Program:
    """Another's, opened after hers."""
    return shared.open("Ben")
