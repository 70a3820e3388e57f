"""Measure a month with the window open, and the open window left alone; print it as JSON.

Memory at the end of each simulated day (how, and what is done in a day, says
``tests/helpers/month.py``), then the processor time and the wake-ups of the same process while
nobody touches the window. Nothing is asserted here; ``tests/longrun`` does that. Run from the
repository: ``python3 packaging/dev.py bench-month``.
"""

from __future__ import annotations

import argparse
import json
import os
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]


def main(argv: list[str]) -> int:
    """Print one JSON object: memory by day, what is held first and last, the window at rest."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--days", type=int, default=30)
    parser.add_argument("--warm-up-days", type=int, default=9)
    parser.add_argument("--rest-s", type=float, default=60.0)
    options = parser.parse_args(argv)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    sys.path[:0] = [str(ROOT), str(ROOT / "shared")]
    from tests.helpers.month import Month, growth_share, held, run

    days: list[dict[str, object]] = []

    def note(month: Month) -> None:
        told = held(month)
        days.append({key: value for key, value in told.items() if "kinds" not in key})

    month = run(options.days, note, is_demo=True)
    memory_kb = [int(str(day["rss_anon_kb"])) for day in days]
    after = memory_kb[options.warm_up_days :]
    report = {
        "memory_kb_by_day": memory_kb,
        "growth_after_warm_up_percent": (
            round(100 * growth_share(after), 2) if len(after) > 1 else None
        ),
        "first_day": days[0],
        "last_day": days[-1],
        "at_rest": at_rest(options.rest_s),
    }
    month.end()
    print(json.dumps(report, indent=2))
    return 0


def at_rest(seconds: float) -> dict[str, object]:
    """Leave the window alone and tell what its process did meanwhile."""
    from PySide6.QtCore import QEventLoop, Qt, QTimer

    loop = QEventLoop()
    end = QTimer(singleShot=True, timerType=Qt.TimerType.CoarseTimer)
    end.timeout.connect(loop.quit)
    end.start(round(1000 * seconds))
    began, spent, before = time.monotonic(), time.process_time(), sleeps()
    loop.exec()
    passed, after = time.monotonic() - began, sleeps()
    woken = sum(count - before.get(thread, 0) for thread, count in after.items())
    return {
        "seconds": round(passed, 1),
        "processor_percent_of_a_core": round(100 * (time.process_time() - spent) / passed, 3),
        "wake_ups": woken,
        "wake_ups_per_s": round(woken / passed, 2),
    }


def sleeps() -> dict[str, int]:
    """Count how often each thread of this process went to sleep by itself (Linux; else none)."""
    counts = {}
    for status in Path("/proc/self/task").glob("*/status"):
        for line in status.read_text().splitlines():
            if line.startswith("voluntary_ctxt_switches:"):
                counts[status.parent.name] = int(line.split()[1])
    return counts


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
