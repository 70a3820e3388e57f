"""Measure how long a shelf of souring batches takes to be forecast anew, and print it as JSON.

A real window stands open without a screen while it happens, and a timer of 60 ticks a second
on its thread tells how long it could not have painted, and how much the thread itself worked
between two ticks. The first depends on what else the machine does, the second hardly. The same
window, left alone, is the measure. Nothing is asserted: clocks differ, and so do machines. Run
from the repository: ``python3 packaging/dev.py bench-refresh``.
"""

from __future__ import annotations

import argparse
import gc
import json
import math
import os
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta, tzinfo
from functools import partial
from itertools import pairwise
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from brewdesk.bootstrap import Program
    from brewdesk.store.store import Store

ROOT = Path(__file__).resolve().parents[1]
FRAME_S = 1.0 / 60.0
PATIENCE_S = 300.0


@dataclass
class RealClock:
    """The machine's clock in one zone for all machines, which can be set forward."""

    ahead: timedelta = timedelta()

    def now(self) -> datetime:
        """Return the machine's instant, or a later one."""
        return datetime.now(UTC) + self.ahead

    def monotonic(self) -> float:
        """Return the machine's monotonic seconds."""
        return time.monotonic()

    def zone(self) -> tzinfo:
        """Return the one zone."""
        return UTC


@dataclass
class Ticks:
    """When the window's thread had time, 60 times a second."""

    instants: list[float] = field(default_factory=list)
    worked_s: list[float] = field(default_factory=list)  # by this thread until then

    def note(self) -> None:
        """Keep the present instant."""
        self.instants.append(time.perf_counter())
        self.worked_s.append(time.thread_time())

    def told(self) -> dict[str, object]:
        """Return the gaps between the ticks, in milliseconds, and how many were long."""
        gaps = _differences_ms(self.instants)
        # What the window itself did in a gap; the rest it waited, also for other programs.
        worked = _differences_ms(self.worked_s)
        return {
            "ticks": len(gaps),
            "longest_gap_ms": round(max(gaps), 1),
            "five_longest_ms": [round(gap, 1) for gap in sorted(gaps)[-5:]],
            "gaps_over_16_7_ms": sum(gap > 16.7 for gap in gaps),
            "gaps_over_20_ms": sum(gap > 20.0 for gap in gaps),
            "gaps_over_33_ms": sum(gap > 33.3 for gap in gaps),
            "own_work_s": round(sum(worked) / 1000.0, 3),
            "most_own_work_in_a_gap_ms": round(max(worked), 1),
            "five_most_own_work_ms": [round(work, 1) for work in sorted(worked)[-5:]],
            "gaps_with_over_10_ms_of_own_work": sum(work > 10.0 for work in worked),
            "gaps_with_over_16_7_ms_of_own_work": sum(work > 16.7 for work in worked),
        }


def _differences_ms(seconds: list[float]) -> list[float]:
    return [1000.0 * (after - before) for before, after in pairwise(seconds)]


def main(argv: list[str]) -> int:
    """Print one JSON object: seconds and frames of each refresh, and of the window at rest."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--batches", type=int, default=200)
    parser.add_argument("--readings", type=int, default=30)
    parser.add_argument("--cultures", type=int, default=200, help="among which the batches share")
    parser.add_argument("--refreshes", type=int, default=3)
    parser.add_argument("--rest-s", type=float, default=4.0)
    options = parser.parse_args(argv)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    sys.path[:0] = [str(ROOT), str(ROOT / "shared")]
    from PySide6.QtWidgets import QApplication

    from brewdesk.bootstrap import Program
    from brewdesk.services.jobs import Jobs
    from brewdesk.services.notices.silent import SilentNotifier
    from brewdesk.services.settings import FIRST_TASTE_PH
    from brewdesk.store.store import Store

    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)  # another kind of application cannot be here
    clock = RealClock()
    with tempfile.TemporaryDirectory(prefix="brewdesk-bench-") as folder:
        path = Path(folder) / "pantry.brewdesk"
        store = Store.open(path, now=clock.now())
        fill(store, clock.now(), options)
        store.close()
        program = Program(app, path, clock=clock, notifier=SilentNotifier())
        program.window.resize(1280, 800)
        program.has_begun.connect(gc.freeze)  # as the program does
        program.has_settled.connect(gc.freeze)
        refreshes: list[object] = []
        report: dict[str, object] = {
            "opening": measure(program, program.start, options.batches),
            "at_rest": at_rest(options.rest_s),
            "taste_changed": refreshes,
        }
        # As by a maker whose taste has changed: each forecast is another then.
        tastes = [
            partial(program.desk.settings.put, FIRST_TASTE_PH, 3.3 - 0.01 * number)
            for number in range(1, options.refreshes + 1)
        ]
        refreshes.extend(measure(program, change, options.batches) for change in tastes)
        report["a_day_later"] = measure(program, partial(let_a_day_pass, program), options.batches)
        report["one_reading_added"] = measure(program, partial(read_one, program), 1)
        report["at_rest_again"] = at_rest(options.rest_s)
        assert isinstance(program.jobs, Jobs)  # none other was given
        report["garbage_collected"] = gc.get_stats()
        report["memory_mb"] = {
            "window": memory_mb(os.getpid()),
            "processes_for_figures": [memory_mb(one) for one in program.jobs.process_ids()],
        }
        program.leave()
    print(json.dumps(report, indent=2))
    return 0


def let_a_day_pass(program: Program) -> None:
    """Set the clock forward, and do what the program does each half hour and each minute."""
    clock = program.clock
    assert isinstance(clock, RealClock)  # none other was given
    clock.ahead += timedelta(days=1)
    program.desk.forecasts.request_all_live()
    program.window.shelf.refresh_words()


def read_one(program: Program) -> None:
    """Add one pH to the jar on show."""
    from brewdesk.services.records import Method, Quantity, ReadingDraft

    jar = program.window.shelf.chosen()
    assert jar is not None  # the shelf is full
    assert jar.batch is not None
    draft = ReadingDraft(
        batch_id=jar.batch.id,
        at=program.clock.now(),
        quantity=Quantity.PH,
        method=Method.METER,
        value=3.25,
        sd=0.05,
    )
    program.desk.readings.record((draft,))


def memory_mb(process_id: int) -> int:
    """Return the memory a process holds at present (Linux; elsewhere 0)."""
    status = Path(f"/proc/{process_id}/status")
    lines = status.read_text().splitlines() if status.exists() else []
    return sum(int(line.split()[1]) // 1024 for line in lines if line.startswith("VmRSS:"))


def measure(program: Program, begin: Callable[[], None], batches: int) -> dict[str, object]:
    """Begin a refresh, wait until each batch has its forecast, and tell how it went."""
    from PySide6.QtCore import QEventLoop, QTimer

    from brewdesk.services.changes import Change, Topic

    loop, heard, arrivals = QEventLoop(), set[int](), list[float]()
    ended: list[float] = []

    def on_ready(batch_id: int) -> None:
        heard.add(batch_id)
        arrivals.append(time.perf_counter())
        if len(heard) == batches and not ended:
            ended.append(arrivals[-1])
            QTimer.singleShot(1000, loop.quit)  # what follows from it is part of the matter

    def on_changed(change: Change) -> None:
        if change.concerns(Topic.FORECASTS):
            announced.append(time.perf_counter())

    announced: list[float] = []
    program.desk.forecasts.ready.connect(on_ready)
    program.desk.changes.changed.connect(on_changed)
    QTimer.singleShot(round(1000 * PATIENCE_S), loop, loop.quit)
    began, spent = time.perf_counter(), time.process_time()
    with_ticks = ticking()
    with_ticks.note()
    QTimer.singleShot(0, begin)
    loop.exec()
    ticks = stop(with_ticks)
    program.desk.forecasts.ready.disconnect(on_ready)
    program.desk.changes.changed.disconnect(on_changed)
    return {
        "seconds": round(ended[0] - began, 2) if ended else math.nan,
        "first_forecast_s": round(arrivals[0] - began, 3) if arrivals else math.nan,
        "forecasts": len(heard),
        "announcements": len(announced),
        "processor_s_of_the_window": round(time.process_time() - spent, 2),
        "load_average": round(os.getloadavg()[0], 2),
        **ticks.told(),
    }


def at_rest(seconds: float) -> dict[str, object]:
    """Tell how the same window ticks when nothing is asked of it."""
    from PySide6.QtCore import QEventLoop, QTimer

    loop, spent = QEventLoop(), time.process_time()
    QTimer.singleShot(round(1000 * seconds), loop.quit)
    ticks = ticking()
    loop.exec()
    told = stop(ticks).told()
    return {"processor_s_of_the_window": round(time.process_time() - spent, 3), **told}


_TIMERS: dict[int, object] = {}


def ticking() -> Ticks:
    """Begin to tick, 60 times a second."""
    from PySide6.QtCore import Qt, QTimer

    ticks, timer = Ticks(), QTimer()
    timer.setTimerType(Qt.TimerType.PreciseTimer)
    timer.setInterval(16)
    timer.timeout.connect(ticks.note)
    timer.start()
    _TIMERS[id(ticks)] = timer
    return ticks


def stop(ticks: Ticks) -> Ticks:
    """End the ticking."""
    from PySide6.QtCore import QTimer

    timer = _TIMERS.pop(id(ticks))
    assert isinstance(timer, QTimer)
    timer.stop()
    return ticks


def fill(store: Store, now: datetime, options: argparse.Namespace) -> None:
    """Put souring batches on the shelf, each read as often as asked. All of it is invented."""
    import numpy as np

    from brewdesk.store.records import (
        BatchDraft,
        CultureDraft,
        PlaceDraft,
        ReadingDraft,
        VesselDraft,
    )
    from culturecore.stages import (
        BatchStage,
        CultureOrigin,
        CultureState,
        Material,
        Method,
        Quantity,
        TeaKind,
        VesselShape,
    )

    rng = np.random.default_rng(7)
    with store.write() as unit:
        place = unit.places.add(PlaceDraft(name="Bench", temperature_c=24.0))
        cultures = [
            unit.cultures.add(
                CultureDraft(
                    name=f"Culture {number}",
                    origin=CultureOrigin.GIFT,
                    state=CultureState.RESTING,
                    born_at=now - timedelta(days=200),
                )
            )
            for number in range(options.cultures)
        ]
        for number in range(options.batches):
            vessel = unit.vessels.add(
                VesselDraft(
                    name=f"Jar {number}",
                    shape=VesselShape.CYLINDER,
                    material=Material.GLASS,
                    brim_volume_l=4.0,
                    working_volume_l=3.5,
                    inner_diameter_cm=15.0,
                    place_id=place.id,
                    shelf_order=number,
                )
            )
            started_at = now - timedelta(days=8.0 + (number % 60) / 10.0)
            batch = unit.batches.add(
                BatchDraft(
                    name=f"Batch {number}",
                    vessel_id=vessel.id,
                    culture_id=cultures[number % len(cultures)].id,
                    stage=BatchStage.SOURING,
                    planned_at=started_at,
                    started_at=started_at,
                    fill_volume_l=3.0,
                    sugar_g_per_l=55.0,
                    tea_kind=TeaKind.BLACK,
                    tea_g_per_l=4.0,
                    bag_g=2.0,
                    starter_ph=3.1,
                    starter_ta_g_per_l=None,
                    starter_taste=None,
                    target_start_ph=4.2,
                    water_alkalinity_meq_per_l=1.5,
                    hot_water_c=90.0,
                    cold_water_c=15.0,
                    culture_limit_c=30.0,
                    place_temperature_c=24.0,
                    sugar_g=150.0,
                    tea_g=11.0,
                    starter_volume_l=0.4,
                    hot_water_g=1000.0,
                    cold_water_g=1500.0,
                    mixed_temperature_c=27.0,
                    start_ph=4.1,
                    start_ph_low=3.9,
                    start_ph_high=4.3,
                )
            )
            span = (now - started_at) / timedelta(days=1)
            for day in np.linspace(0.1, span - 0.1, options.readings):
                ph = 2.95 + 1.15 * math.exp(-day / 7.0) + float(rng.normal(0.0, 0.03))
                unit.readings.add(
                    ReadingDraft(
                        batch_id=batch.id,
                        at=started_at + timedelta(days=float(day)),
                        quantity=Quantity.PH,
                        method=Method.METER,
                        value=round(ph, 2),
                        sd=0.05,
                    )
                )


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
