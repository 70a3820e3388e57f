"""Measure looking back over ten invented years, and print JSON.

500 batches and 50 000 readings, as in ``bench_search.py``. Nothing is asserted: clocks
differ, and so do machines. Run from the repository: ``python packaging/bench_lookback.py``.
"""

from __future__ import annotations

import json
import os
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]


def main() -> None:
    """Print one JSON object in seconds: the first question, the same again, others."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    sys.path[:0] = [str(ROOT), str(ROOT / "shared"), str(ROOT / "packaging")]
    from bench_search import ten_years

    from brewdesk.services.lookbackgroups import Factor, Question

    with tempfile.TemporaryDirectory() as folder:
        desk = ten_years(Path(folder) / "pantry.brewdesk")
        views: list[object] = []
        desk.look_back.ready.connect(views.append)
        results = {}
        for name, factor in (
            ("first_s", Factor.TEA),
            ("again_s", Factor.TEA),
            *((f"by_{factor.value}_s", factor) for factor in Factor),
        ):
            begun = time.perf_counter()
            desk.look_back.ask(Question(factor=factor))
            results[name] = time.perf_counter() - begun
        reading = desk.readings.of_batch(2)[0]
        desk.readings.edit(reading.id, value=3.0)
        begun = time.perf_counter()
        desk.look_back.ask(Question())
        results["after_one_reading_s"] = time.perf_counter() - begun
        results["views"] = len(views)
        desk.store.close()
    print(json.dumps({k: round(v, 4) for k, v in results.items()}, indent=2))


if __name__ == "__main__":
    main()
