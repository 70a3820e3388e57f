"""Measure what a forecast costs and print it as JSON, beside a plain numpy work for scale.

Nothing is asserted: clocks differ, and so do machines. Run from the repository:
``python packaging/bench_forecast.py``.
"""

from __future__ import annotations

import json
import math
import os
import sys
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
READINGS = (0, 1, 4, 8, 30)
REPEATS = 9
SCALE_SIZE = 1_000_000  # exponentials to which a forecast is compared


def main() -> None:
    """Print one JSON object: processor time of a forecast by number of readings."""
    for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
        os.environ.setdefault(name, "1")
    sys.path[:0] = [str(ROOT / "shared")]
    import numpy as np

    from culturecore.forecast import Conditions, Observation, forecast
    from culturecore.stages import Quantity, TeaKind

    conditions = Conditions(
        volume_l=1.0,
        surface_cm2=80.0,
        starter_share=0.1,
        start_ph=None,
        starter_ta_g_per_l=None,
        temperature_c=25.0,
        sugar_g_per_l=60.0,
        tea_kind=TeaKind.BLACK,
    )
    rng = np.random.default_rng(3)
    numbers = rng.normal(size=SCALE_SIZE)
    scale = _best(lambda: np.exp(numbers))
    found = {}
    for count in READINGS:
        course = [
            Observation(
                day=float(day),
                quantity=Quantity.PH,
                value=2.95 + 1.25 * math.exp(-day / 7.0) + float(rng.normal(0.0, 0.05)),
                sd=0.05,
            )
            for day in np.linspace(0.0, 14.0, count)
        ]
        found[count] = _best(lambda course=course: forecast(conditions, course))  # type: ignore[misc]
    report = {
        "milliseconds_by_readings": {n: round(1000.0 * t, 1) for n, t in found.items()},
        "times_a_million_exponentials": {n: round(t / scale, 1) for n, t in found.items()},
    }
    print(json.dumps(report, indent=2))


def _best(work: Callable[[], object]) -> float:
    """Return the least processor time of several runs [s]."""
    times = []
    for _ in range(REPEATS):
        started = time.process_time()
        work()
        times.append(time.process_time() - started)
    return min(times)


if __name__ == "__main__":
    main()
