"""The report on a folder of series."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from culturecore.stages import Quantity
from evaluation.pooled import pooled
from evaluation.scores import CROSSING_PH, Score, scored
from evaluation.series import all_series


def report(folder: Path) -> dict[str, object]:
    """Read the folder and score what can be scored."""
    found = list(all_series(folder))
    usable = [series for series in found if len(series.of(Quantity.PH)) >= 2]
    scores = scored(usable)
    times = [ms for cut in scores.values() for ms in cut["forecast"].milliseconds]
    by_source = {
        source: _cuts(scored([s for s in usable if s.source_key == source]))
        for source in sorted({series.source_key for series in usable})
    }
    return {
        "folder": str(folder),
        "series_found": len(found),
        "series_with_a_course_of_ph": len(usable),
        "crossing_ph": CROSSING_PH,
        "cuts": _cuts(scores),
        "by_source": by_source if len(by_source) > 1 else {},
        "pooled": pooled(found),
        "milliseconds_per_forecast": {
            "forecasts": len(times),
            "median": round(float(np.median(times)), 1) if times else None,
            "most": round(max(times), 1) if times else None,
        },
        "notes": [
            "Bands of pH are widened by each later reading's own standard error.",
            "Days are scored where the course crosses after the cut and within its readings.",
            "pooled: series whose culture an earlier one of the same source had; not in cuts.",
            "confident_and_wrong lists readings 3 half widths of the 80 % band away or more.",
        ],
    }


def _cuts(scores: dict[str, dict[str, Score]]) -> dict[str, object]:
    told: dict[str, object] = {}
    for cut, by_name in scores.items():
        days = {n: s.summary()["median_absolute_error_days"] for n, s in by_name.items()}
        own, others = days.pop("forecast"), [d for d in days.values() if isinstance(d, float)]
        part = {
            "series": len(by_name["forecast"].milliseconds),
            "said_unlike_any_known": by_name["forecast"].said_unlike_known,
            "day_error_against_best_baseline": (
                round(own / min(others), 3)
                if isinstance(own, float) and others and min(others) > 0.0
                else None
            ),
        }
        told[cut] = {**part, **{name: score.summary() for name, score in by_name.items()}}
    return told
