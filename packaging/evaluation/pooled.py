"""What earlier series of a culture teach of later ones: a block of its own in the report.

A series is taught by those listed before it that name the same source and the same culture.
Only series that had a teacher are scored, each with and without it, so that both columns
speak of the same jars.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from culturecore.knownculture import learn_culture
from culturecore.stages import Quantity
from evaluation.baselines import BASELINES
from evaluation.scores import CUT_DAYS, Score, score_series
from evaluation.series import Series

MOST_TEACHERS = 6  # the latest; each costs a fit


def taught(all_series: Sequence[Series]) -> list[tuple[Series, Series]]:
    """Pair each series that had a teacher with itself as taught."""
    found: list[tuple[Series, Series]] = []
    earlier: dict[tuple[str, str], list[Series]] = {}
    for series in all_series:
        if not series.culture:
            continue
        teachers = earlier.setdefault((series.source_key, series.culture), [])
        if teachers and len(series.of(Quantity.PH)) >= 2:
            known = learn_culture([(t.conditions, t.readings) for t in teachers[-MOST_TEACHERS:]])
            pupil = replace(series, conditions=replace(series.conditions, known=known))
            found.append((series, pupil))
        teachers.append(series)
    return found


def pooled(all_series: Sequence[Series]) -> dict[str, object]:
    """Score every series that had a teacher, taught and untaught; empty where none had."""
    pairs = taught(all_series)
    if not pairs:
        return {}
    cuts: dict[str, object] = {}
    for cut_day in CUT_DAYS:
        columns = {}
        for at, name in enumerate(("untaught", "taught")):
            scores = {way: Score() for way in ("forecast", *BASELINES)}
            for pair in pairs:
                score_series(pair[at], cut_day, scores)
            columns[name] = scores["forecast"].summary()
        cuts[f"after_day_{cut_day:g}"] = columns
    return {"series_with_a_teacher": len(pairs), "cuts": cuts}
