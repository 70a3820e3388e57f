"""What every test stands on: no screen, no home folder, no bus, nothing left behind."""

from __future__ import annotations

import gc
import logging
import os
import re
import shutil
import sys
import tempfile
import threading
from pathlib import Path

import pytest
from hypothesis import settings

_HOME = Path(tempfile.mkdtemp(prefix="brewdesk-tests-"))


def _leave_the_person_alone() -> None:
    """Point every folder that Qt, platformdirs and the program look up into a throw-away one."""
    for variable, folder in {
        "HOME": "",
        "USERPROFILE": "",
        "APPDATA": "AppData/Roaming",
        "LOCALAPPDATA": "AppData/Local",
        "XDG_CONFIG_HOME": ".config",
        "XDG_DATA_HOME": ".local/share",
        "XDG_STATE_HOME": ".local/state",
        "XDG_CACHE_HOME": ".cache",
        "XDG_RUNTIME_DIR": "run",
    }.items():
        path = _HOME / folder
        path.mkdir(parents=True, exist_ok=True, mode=0o700)
        os.environ[variable] = str(path)
    # A test that wants a message bus starts its own; none may speak on the desktop's.
    os.environ.pop("DBUS_SESSION_BUS_ADDRESS", None)
    os.environ["LC_ALL"] = "C.UTF-8"
    # Before the first import of Qt: the platform is chosen once in a process.
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


_leave_the_person_alone()

# "ci" gives the same examples in each run; "search" looks for new ones.
settings.register_profile("ci", deadline=None, derandomize=True, database=None, print_blob=True)
settings.register_profile("search", deadline=None, max_examples=1000, database=None)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "ci"))


_LONGEST = (
    "tests/longrun/",
    "tests/faults/test_whole_program.py",
    "tests/faults/test_kills.py",
    "tests/services/test_demo.py",
    "tests/journeys/test_main_job.py",
)


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Take the screen tests out of a windowless run: a drag does nothing there.

    And what needs a database server where the tool that runs the tests can bring none. The
    longest files come first, so that no worker is left alone with one in the end.
    """
    items.sort(key=lambda item: not item.nodeid.startswith(_LONGEST))
    if not sys.platform.startswith("linux"):
        on_server = [item for item in items if _needs_server(item)]
        config.hook.pytest_deselected(items=on_server)
        items[:] = [item for item in items if item not in on_server]
    if os.environ["QT_QPA_PLATFORM"] != "offscreen":
        return
    screen_items = [item for item in items if item.get_closest_marker("screen")]
    if screen_items:
        config.hook.pytest_deselected(items=screen_items)
        items[:] = [item for item in items if item not in screen_items]


def _needs_server(item: pytest.Item) -> bool:
    names = getattr(item, "fixturenames", ())
    parameters = getattr(getattr(item, "callspec", None), "params", {})
    return "pg_server" in names or parameters.get("lies_on") == "server"


def pytest_collection_finish() -> None:
    """Set aside what the imports made, so that each later collection looks at little."""
    gc.collect()
    gc.freeze()


def pytest_unconfigure() -> None:
    """Remove the throw-away home."""
    shutil.rmtree(_HOME, ignore_errors=True)


@pytest.fixture(autouse=True)
def _nothing_left_behind(request):
    """Fail a test that leaves a visible window or a running thread; collect between tests only.

    Python's collector may run inside Qt's event dispatch and delete a QObject there, so it
    rests while a Qt test runs.
    """
    uses_qt = not {"qapp", "qtbot", "qapp_cls"}.isdisjoint(request.fixturenames)
    threads_before = set(threading.enumerate())
    if uses_qt:
        gc.disable()
    yield
    if uses_qt:
        gc.enable()
        leaked_windows = _close_visible_windows()
        # Young objects only: what this test made and the one before (pytest held on to that
        # until now). To look at everything each time would double the length of the run.
        gc.collect(1)
        assert not leaked_windows, f"windows left open: {leaked_windows}"
        assert _loops_still_run(), "the application was told to quit: every later wait would fail"
    leaked_threads = [
        thread.name
        for thread in set(threading.enumerate()) - threads_before
        if thread.is_alive() and not isinstance(thread, threading._DummyThread)
    ]
    assert not leaked_threads, f"threads left running: {leaked_threads}"


def _close_visible_windows() -> list[str]:
    from PySide6.QtCore import QCoreApplication, QEvent
    from PySide6.QtWidgets import QApplication

    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    left = [widget for widget in QApplication.topLevelWidgets() if widget.isVisible()]
    names = [f"{type(widget).__name__} '{widget.objectName()}'" for widget in left]
    for widget in left:
        widget.hide()  # the next test must not pay for this one
        widget.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    return names


def _loops_still_run() -> bool:
    """Say whether an event loop lasts until it is ended: after ``app.quit()`` none does."""
    from PySide6.QtCore import QEventLoop, QTimer

    loop = QEventLoop()
    QTimer.singleShot(0, lambda: loop.exit(1))
    return loop.exec() == 1


class ErrorLog(logging.Handler):
    """Collects log records of level ERROR and above, and knows which were to come."""

    def __init__(self) -> None:
        super().__init__(level=logging.ERROR)
        self.texts: list[str] = []
        self._expected: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.texts.append(f"{record.name}: {record.getMessage()}")

    def expect(self, pattern: str) -> None:
        """Allow, and demand, an error that matches ``pattern`` anywhere."""
        self._expected.append(pattern)

    def complaints(self) -> list[str]:
        """Return unexpected errors and expectations that nothing met."""
        unexpected = [
            f"unexpected error in the log: {text}"
            for text in self.texts
            if not any(re.search(pattern, text) for pattern in self._expected)
        ]
        unmet = [
            f"no error in the log matched: {pattern}"
            for pattern in self._expected
            if not any(re.search(pattern, text) for text in self.texts)
        ]
        return unexpected + unmet


@pytest.fixture(autouse=True)
def error_log():
    """Fail a test during which an ERROR was logged that it did not announce by ``expect``."""
    log = ErrorLog()
    logging.getLogger().addHandler(log)
    yield log
    logging.getLogger().removeHandler(log)
    assert not log.complaints(), "\n".join(log.complaints())


@pytest.fixture(scope="session")
def pg_server():
    """A PostgreSQL server of this run's own; a database of it is as good as a fresh file."""
    from tests.helpers.pgserver import PgServer

    server = PgServer()
    server.start()
    yield server
    server.close()
