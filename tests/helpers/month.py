"""A month of the whole window in a process of its own, and what it holds at each day's end.

``python -m tests.helpers.month DAYS [demo]`` prints one JSON object. The clock is led; all else
is real: the event loop, the threads, the processes for figures, the file. The pantry has two jars,
or is the invented one with its half year of records. Each day the maker looks at every page and
at two jars, draws their curves, writes down a reading, takes some back, opens and closes a third
of the dialogs, answers what is due; each week a batch is bottled, the bottles of the week before
are finished, and a new batch goes into the jar. All timers that beat in seconds or slower beat by
hand, some times a day.

Memory is what the process holds for itself (RssAnon and VmSwap of Linux): pages of libraries
come and go with what else the machine does. It is taken after Python's collector has run and the
C library has given back what is free (malloc_trim). Its growth is the median of the slopes
between all pairs of days (Theil and Sen), for days that are no part of the warm-up. The store of
painted jars has a bound of 16 MB, which a month does not reach: with two jars it gets a smaller
one, so that it is full after the warm-up and what grows beside it can be seen.
"""

from __future__ import annotations

import ctypes
import gc
import json
import os
import sys
import tempfile
import threading
import time
from collections import Counter
from collections.abc import Callable
from dataclasses import fields, is_dataclass, replace
from datetime import UTC, datetime, timedelta
from itertools import combinations
from pathlib import Path
from statistics import median
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication, QEvent, QMetaMethod, QObject, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLineEdit, QMenu, QPushButton
from shiboken6 import getCppPointer

from brewdesk.bootstrap import Program
from brewdesk.services.jobs import Jobs
from brewdesk.services.notices.silent import SilentNotifier
from brewdesk.services.records import BatchStage, Quantity
from brewdesk.widgets import jarpictures
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import souring_batch

BEGINS = datetime(2026, 11, 2, 7, 0, tzinfo=UTC)
LOOKS_A_DAY = 6
BOTTLES_FOR = timedelta(days=6)
DIALOGS = (
    "add_vessel", "add_culture", "places", "past", "retired", "backups", "copy", "export",
    "import", "process_log", "safety", "about", "print_sheet", "batch_report", "read_readings",
    "draw_off", "discard", "edit_vessel", "draw_part", "keep_starter", "top_up", "pour_over",
)  # fmt: skip
SMALL_STORE_PX = 400_000
FAST_MS = 10_000  # an untouched window has no reason to wake up more often
DIALOGS_EVERY = 3  # days
PATIENCE_S = 300.0
OURS = ("brewdesk", "pyqtgraph")


def mapped_kb() -> int:
    """Return what this process holds in memory for itself, in KiB (Linux)."""
    ctypes.CDLL(None).malloc_trim(0)
    lines = Path("/proc/self/status").read_text().splitlines()
    held_kb = [int(one.split()[1]) for one in lines if one.startswith(("RssAnon:", "VmSwap:"))]
    assert len(held_kb) == 2, "the system does not say how much memory a process holds"
    return sum(held_kb)


class Month:
    """The program, its maker and the clock."""

    def __init__(self, app: QApplication, folder: Path, *, is_demo: bool) -> None:
        self.clock = FakeClock(BEGINS, ZoneInfo("Europe/Berlin"))
        self.app = app
        if not is_demo:
            jarpictures._MOST_PX = SMALL_STORE_PX
        self.program = Program(
            app,
            folder / "example.brewdesk",
            is_demo=is_demo,
            clock=self.clock,
            notifier=SilentNotifier(),
        )
        self.window = self.program.window
        self.desk = self.program.desk
        self.day = 0
        self.jar_id = 0
        self.filled: list[tuple[int, datetime]] = []
        self.opened = Counter[str]()
        self.readings = 0
        self.bottlings = 0
        self.window.resize(1280, 800)
        self.program.has_begun.connect(gc.freeze)  # as the program does
        self.program.has_settled.connect(gc.freeze)

    def begin(self) -> None:
        """Open the window and wait for the first forecasts."""
        self.program.start()
        deadline = time.monotonic() + PATIENCE_S
        while not self.program.is_running and time.monotonic() < deadline:
            QTest.qWait(20)
        self.jar_id = souring_batch(self.desk, "Batch of day 0", "Jar of the month").vessel_id
        souring_batch(self.desk, "Batch that stays", "Jar that waits")
        self.settle()

    def settle(self) -> None:
        """Let the loop run until no job, no turn and no short timer is under way."""
        jobs = self.program.jobs
        assert isinstance(jobs, Jobs)
        deadline = time.monotonic() + PATIENCE_S
        calm = 0
        while calm < 3:
            assert time.monotonic() < deadline, "the program does not come to rest"
            QTest.qWait(15)
            is_calm = jobs.is_idle() and not self._short_timers()
            calm = calm + 1 if is_calm else 0
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)

    def _timers(self) -> list[QTimer]:
        roots: list[QObject] = [self.program, self.app, *QApplication.topLevelWidgets()]
        roots += services(self.desk)
        found = {timer for root in roots for timer in root.findChildren(QTimer)}
        return [timer for timer in found if timer.isActive()]

    def _short_timers(self) -> list[str]:
        return [
            timer.objectName()
            for timer in self._timers()
            if timer.isSingleShot() and timer.remainingTime() < 1500
        ]

    def live_a_day(self) -> None:
        """Do what a careful maker does in a day, and let the day pass."""
        self.day += 1
        for look in range(LOOKS_A_DAY):
            self.clock.advance(hours=24 / LOOKS_A_DAY)
            for timer in self._timers():
                if not timer.isSingleShot() and timer.interval() >= 1000:
                    timer.timeout.emit()
            if look == 2:
                self._see_everything()
            if look == 4:
                self._take_a_reading()
                self._open_every_dialog()
            self.app.processEvents()
        if self.day % 7 == 3:
            self._bottle_one()
        self._finish_bottles()
        self._answer_everything()
        self.window.show_page("shelf")
        self.window.shelf.choose_vessel(self._souring()[0].vessel_id)
        self.window.shelf.sheet.show_tab("run")
        self.settle()

    def _souring(self):
        return sorted(
            (one for one in self.desk.batches.all() if one.stage is BatchStage.SOURING),
            key=lambda one: one.id,
        )

    def _see_everything(self) -> None:
        for page in self.window.rail.buttons:
            self.window.show_page(page)
            self.window.grab()
            self.app.processEvents()
        self.window.show_page("shelf")
        sheet = self.window.shelf.sheet
        batches = self._souring()
        for batch in (batches[self.day % len(batches)], batches[(self.day + 1) % len(batches)]):
            self.window.open_batch(batch.id)
            for index in range(sheet.tabs.count()):
                sheet.tabs.setCurrentIndex(index)
                self.app.processEvents()
            sheet.show_tab("curve")
            self.app.processEvents()
            self.window.show_batch_history(batch.id)
            self.app.processEvents()
            self.window.open_batch(batch.id)
        self.window.grab()
        self.settle()

    def _take_a_reading(self) -> None:
        batches = self._souring()
        batch = batches[self.day % len(batches)]
        self.window.open_batch(batch.id)
        self.window.add_reading()
        self.app.processEvents()
        field = self.window.shelf.sheet.findChild(QLineEdit, "reading_ph")
        before = {one.id for one in self.desk.readings.of_batch(batch.id)}
        days = (self.clock.now() - batch.started_at) / timedelta(days=1)
        # A window manager gives the keyboard back when a dialog closes; offscreen nobody does.
        self.window.activateWindow()
        field.setFocus()
        self.app.processEvents()
        field.selectAll()
        QTest.keyClicks(field, f"{2.95 + 1.1 * 0.87**days:.2f}")
        QTest.keyClick(field, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
        self.app.processEvents()
        anyway = self.window.shelf.sheet.findChild(QPushButton, "reading_anyway")
        if anyway.isVisible():  # an odd one is meant
            anyway.click()
            self.app.processEvents()
        found = [
            one
            for one in self.desk.readings.of_batch(batch.id)
            if one.id not in before and one.quantity is Quantity.PH
        ]
        self.readings += len(found)
        if found and self.day % 3 == 0:
            self.window.actions_by_key["undo"].trigger()
            self.app.processEvents()
            self.window.actions_by_key["redo"].trigger()
            self.app.processEvents()
            self.window.actions_by_key["undo"].trigger()
        self.settle()

    def _open_every_dialog(self) -> None:
        self.window.open_batch(self._souring()[0].id)
        self.app.processEvents()
        for key in DIALOGS[self.day % DIALOGS_EVERY :: DIALOGS_EVERY]:
            action = self.window.actions_by_key[key]
            if not action.isEnabled():
                continue
            action.trigger()
            self.app.processEvents()
            for top in QApplication.topLevelWidgets():
                if isinstance(top, QDialog) and top.isVisible():
                    self.opened[key] += 1
                    top.grab()
                    top.reject()
                    self.app.processEvents()
            QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        for menu in self.window.findChildren(QMenu):
            menu.aboutToShow.emit()
        self.settle()

    def _bottle_one(self) -> None:
        """Bottle the batch of the jar that is this month's own, and fill the jar anew."""
        batch = next(one for one in self._souring() if one.vessel_id == self.jar_id)
        wish = self.desk.bottlings.wish_for(batch.id)
        bottling = self.desk.bottlings.fill(wish, override_reason="invented")
        self.filled.append((bottling.id, self.clock.now()))
        self.bottlings += 1
        self.settle()
        if self.desk.batches.get(batch.id).stage is BatchStage.SOURING:
            self.desk.batches.draw_off(batch.id, "invented")
        plan = replace(self.desk.batches.default_wish(self.jar_id), hot_water_c=90.0)
        anew = self.desk.batches.plan(
            self.jar_id, batch.culture_id, f"Batch of day {self.day}", plan
        )
        self.desk.brewing.start(anew.id)
        for step in self.desk.brewing.steps(anew.id):
            self.desk.brewing.finish(step.id, 25.0)

    def _finish_bottles(self) -> None:
        for bottling_id, at in list(self.filled):
            if self.clock.now() - at > BOTTLES_FOR:
                self.filled.remove((bottling_id, at))
                self.desk.bottlings.finish(bottling_id)

    def _answer_everything(self) -> None:
        for item in self.desk.reminders.listed():
            if item.is_due:
                self.desk.reminders.done(item.reminder.id)
        self.settle()

    def end(self) -> None:
        """Leave the program."""
        self.program.leave()
        self.app.processEvents()


def services(desk: object) -> list[QObject]:
    """Return the services of a desk that are objects of Qt's, and what they hold of that kind."""
    found: dict[int, QObject] = {}
    waiting = [desk]
    seen: set[int] = set()
    while waiting:
        one = waiting.pop()
        if id(one) in seen:
            continue
        seen.add(id(one))
        if isinstance(one, QObject):
            found[id(one)] = one
        if is_dataclass(one):
            waiting += [getattr(one, each.name) for each in fields(one)]
        elif type(one).__module__.startswith("brewdesk.services"):
            waiting += list(getattr(one, "__dict__", {}).values())
    return list(found.values())


def connections(objects: list[QObject]) -> int:
    """Count who listens to the signals of these objects."""
    count = 0
    for one in objects:
        kind = one.metaObject()
        for number in range(kind.methodCount()):
            method = kind.method(number)
            if method.methodType() == QMetaMethod.MethodType.Signal:
                signature = bytes(method.methodSignature().data()).decode()
                count += one.receivers("2" + signature)
    return count


def held(month: Month) -> dict[str, object]:
    """Return what the process holds now: memory, and everything that can be counted."""
    for _ in range(3):
        gc.collect()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        month.app.processEvents()
    memory_kb = mapped_kb()  # before the counting, which makes wrappers of its own
    kinds = Counter(
        f"{type(one).__module__}.{type(one).__qualname__}"
        for one in gc.get_objects()
        if isinstance(one, QObject) and type(one).__module__.startswith(OURS)
    )
    roots: list[QObject] = [month.program, month.app, *QApplication.topLevelWidgets()]
    roots += services(month.desk)
    every = {
        getCppPointer(one)[0]: one.metaObject().className()
        for root in roots
        for one in (root, *root.findChildren(QObject))
    }
    qt_kinds = Counter(every.values())
    return {
        "day": month.day,
        "rss_anon_kb": memory_kb,
        "python_objects": len(gc.get_objects()),
        "top_level_widgets": len(QApplication.topLevelWidgets()),
        "widgets": len(QApplication.allWidgets()),
        "qobjects": len(every),
        "threads": len(threading.enumerate()),
        "system_threads": len(os.listdir("/proc/self/task")),
        "file_descriptors": len(os.listdir("/proc/self/fd")),
        "connections_of_services": connections(services(month.desk)),
        "connections_of_windows": connections([month.program, month.window, month.app]),
        "active_timers": len(month._timers()),
        "fast_timers": sorted(
            one.objectName()
            for one in month._timers()
            if not one.isSingleShot() and one.interval() < FAST_MS
        ),
        "sharp_timers": sorted(
            one.objectName()
            for one in month._timers()
            if not one.isSingleShot() and one.timerType() is Qt.TimerType.PreciseTimer
        ),
        "kinds": dict(kinds),
        "qt_kinds": dict(qt_kinds),
    }


def growth_share(memory_kb: list[int]) -> float:
    """Return by what share memory grew over these days: the median slope, times the days."""
    slopes = [
        (later - sooner) / (day - before)
        for (before, sooner), (day, later) in combinations(enumerate(memory_kb), 2)
    ]
    return median(slopes) * (len(memory_kb) - 1) / median(memory_kb)


def run(days: int, each_day: Callable[[Month], None], *, is_demo: bool) -> Month:
    """Live so many days and hand the month to ``each_day`` at the end of each.

    ``is_demo`` takes the invented pantry with its half year of records instead of two jars.
    """
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    app.setQuitOnLastWindowClosed(False)
    folder = tempfile.mkdtemp(prefix="brewdesk-month-")
    month = Month(app, Path(folder), is_demo=is_demo)
    month.begin()
    for _ in range(days):
        month.live_a_day()
        each_day(month)
    return month


def main(words: list[str]) -> int:
    """Print what is held at the end of each day."""
    rows: list[dict[str, object]] = []
    errors: list[str] = []

    def on_error(kind, error, trace) -> None:
        errors.append(f"{kind.__name__}: {error}")
        sys.__excepthook__(kind, error, trace)

    sys.excepthook = on_error

    def note(month: Month) -> None:
        rows.append(held(month))
        print(f"day {month.day}: {rows[-1]['rss_anon_kb']} KiB", file=sys.stderr, flush=True)

    month = run(int(words[0]), note, is_demo="demo" in words)
    told = {
        "days": rows,
        "dialogs": dict(month.opened),
        "readings": month.readings,
        "bottlings": month.bottlings,
        "errors": errors,
    }
    month.end()
    print(json.dumps(told))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
