"""Score what was told against what was read later."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from time import process_time

import numpy as np

from culturecore.forecast import Band, Forecast, Observation, forecast
from culturecore.outcome import Caveat
from culturecore.stages import Quantity
from evaluation.baselines import BASELINES
from evaluation.series import Series
from evaluation.told import DAYS, HORIZON_DAYS, QUANTILES, Told, first_crossing, from_curves

CROSSING_PH = 3.2
CUT_DAYS = (0.0, 3.0, 5.0, 7.0)
FAR_OFF = 3.0  # half widths of the 80 % band: a miss as far as this was confident and wrong


@dataclass
class Score:
    """What came out for one way of foretelling after one cut."""

    ph_off: list[float] = field(default_factory=list)
    ph_in_80: list[bool] = field(default_factory=list)
    ph_in_50: list[bool] = field(default_factory=list)
    ph_width_80: list[float] = field(default_factory=list)
    ph_width_50: list[float] = field(default_factory=list)
    day_off: list[float] = field(default_factory=list)
    day_in_80: list[bool] = field(default_factory=list)
    day_in_50: list[bool] = field(default_factory=list)
    day_width_80: list[float] = field(default_factory=list)
    day_width_50: list[float] = field(default_factory=list)
    confident_and_wrong: list[str] = field(default_factory=list)
    milliseconds: list[float] = field(default_factory=list)
    said_unlike_known: int = 0

    def add_ph(self, told: Told, later: Observation, series: str) -> None:
        """Score one later pH reading."""
        low, lower, middle, upper, high = told.ph_at(later.day, later.sd)
        self.ph_off.append(abs(middle - later.value))
        self.ph_in_80.append(bool(low <= later.value <= high))
        self.ph_in_50.append(bool(lower <= later.value <= upper))
        self.ph_width_80.append(high - low)
        self.ph_width_50.append(upper - lower)
        half = max(high - middle if later.value > middle else middle - low, 1e-9)
        if abs(later.value - middle) > FAR_OFF * half:
            self.confident_and_wrong.append(f"{series} day {later.day:g}")

    def add_day(self, told: Told, crossing_day: float) -> None:
        """Score the day of crossing."""
        low, lower, middle, upper, high = np.minimum(told.crossing_days, HORIZON_DAYS)
        open_end = math.inf if told.crossing_days[-1] >= HORIZON_DAYS else high
        open_half = math.inf if told.crossing_days[-2] >= HORIZON_DAYS else upper
        self.day_off.append(abs(middle - crossing_day))
        self.day_in_80.append(bool(low <= crossing_day <= open_end))
        self.day_in_50.append(bool(lower <= crossing_day <= open_half))
        self.day_width_80.append(high - low)
        self.day_width_50.append(upper - lower)

    def summary(self) -> dict[str, object]:
        """Numbers for the report; None where there was nothing to score."""
        return {
            "later_ph_readings": len(self.ph_off),
            "median_absolute_error_ph": _median(self.ph_off),
            "coverage_80_ph": _mean(self.ph_in_80),
            "coverage_50_ph": _mean(self.ph_in_50),
            "median_width_80_ph": _median(self.ph_width_80),
            "median_width_50_ph": _median(self.ph_width_50),
            "crossings": len(self.day_off),
            "median_absolute_error_days": _median(self.day_off),
            "coverage_80_days": _mean(self.day_in_80),
            "coverage_50_days": _mean(self.day_in_50),
            "median_width_80_days": _median(self.day_width_80),
            "median_width_50_days": _median(self.day_width_50),
            "confident_and_wrong": self.confident_and_wrong,
        }


def scored(all_series: Sequence[Series]) -> dict[str, dict[str, Score]]:
    """Score the forecast and the baselines after each cut; series without pH are left out."""
    found: dict[str, dict[str, Score]] = {}
    for cut_day in CUT_DAYS:
        scores = {name: Score() for name in ("forecast", *BASELINES)}
        for series in all_series:
            score_series(series, cut_day, scores)
        found[f"after_day_{cut_day:g}"] = scores
    return found


def score_series(series: Series, cut_day: float, scores: dict[str, Score]) -> None:
    """Score one series after one cut, where something is left to foretell."""
    ph = series.of(Quantity.PH)
    later = [r for r in ph if r.day > cut_day and r.day <= HORIZON_DAYS]
    if not later:
        return
    known = [r for r in series.readings if r.day <= cut_day]
    known_ph = [r for r in ph if r.day <= cut_day]
    answer, milliseconds = asked(series, known, cut_day)
    scores["forecast"].milliseconds.append(milliseconds)
    scores["forecast"].said_unlike_known += Caveat.UNLIKE_KNOWN in answer.caveats
    told = {"forecast": curves_of(answer)}
    for name, baseline in BASELINES.items():
        told[name] = baseline(known_ph, CROSSING_PH)
    crossing_day = crossing_of(ph)
    for name, said in told.items():
        for reading in later:
            scores[name].add_ph(said, reading, series.key)
        if cut_day < crossing_day < math.inf:
            scores[name].add_day(said, crossing_day)


def asked(series: Series, known: Sequence[Observation], now_day: float) -> tuple[Forecast, float]:
    """Ask for a forecast with the readings and the temperatures up to a day; time it [ms]."""
    course = tuple(point for point in series.temperatures if point[0] <= now_day)
    conditions = replace(series.conditions, temperature_course=course)
    if course:
        mean = sum(celsius for _, celsius in course) / len(course)
        conditions = replace(conditions, temperature_c=min(max(mean, 5.0), 45.0))
    band = Band(first_taste_ph=CROSSING_PH, too_sour_ph=CROSSING_PH - 0.4)
    started = process_time()
    answer = forecast(conditions, known, now_day=now_day, band=band, horizon_days=HORIZON_DAYS)
    return answer, 1000.0 * (process_time() - started)


def curves_of(answer: Forecast) -> Told:
    """Bring a forecast into the shape of the others.

    A jar only sours, so the chance of having crossed by a day is that of a pH below the
    limit on that day: crossing days are read off the quantile curves.
    """
    curves = np.array([np.interp(DAYS, answer.days, answer.ph[q]) for q in QUANTILES])
    return from_curves(curves, CROSSING_PH)


def crossing_of(ph: Sequence[Observation]) -> float:
    """Day on which the read course crosses, after the noise of readings is taken out.

    Notes: the closest course that never rises (pooling adjacent violators), then straight
    between its points. Infinite if it never crosses, or had crossed at its first reading.
    """
    if len(ph) < 2:
        return math.inf
    blocks: list[list[float]] = []
    for reading in ph:
        weight = 1.0 / reading.sd**2
        blocks.append([reading.value, weight, 1.0])
        while len(blocks) > 1 and blocks[-1][0] > blocks[-2][0]:
            value, weight, count = blocks.pop()
            before = blocks[-1]
            total = before[1] + weight
            blocks[-1] = [
                (before[0] * before[1] + value * weight) / total,
                total,
                before[2] + count,
            ]
    smooth = np.array([value for value, _, count in blocks for _ in range(int(count))])
    days = np.array([reading.day for reading in ph])
    if smooth[0] <= CROSSING_PH:
        return math.inf
    return first_crossing(days, smooth, CROSSING_PH)


def _median(values: Sequence[float]) -> float | None:
    return round(float(np.median(values)), 3) if values else None


def _mean(values: Sequence[bool]) -> float | None:
    return round(float(np.mean(values)), 3) if values else None
