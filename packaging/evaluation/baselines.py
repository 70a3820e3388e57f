"""Three simpler ways of foretelling, to which the forecast is held.

Each falls back on the one before it while it has too few readings.
"""

from __future__ import annotations

from collections.abc import Sequence
from warnings import catch_warnings, simplefilter

import numpy as np
from scipy.optimize import OptimizeWarning, curve_fit  # type: ignore[import-untyped]

from culturecore.forecast import Observation
from evaluation.told import DAYS as DAYS
from evaluation.told import NORMAL, Floats, Told, first_crossing, from_draws

FIXED_DAYS = (7.0, 7.75, 8.5, 9.25, 10.0)
_USUAL_START_PH = 4.3
_LAST = 3
_LEAST_SD_PH = 0.05
_DRAWS = 400
_LONGEST_SLOPE_PH = -1e-4


def fixed(readings: Sequence[Observation], limit_ph: float) -> Told:
    """Seven to ten days whatever the jar: straight from the first pH to the limit, then flat."""
    start = readings[0].value if readings else _USUAL_START_PH
    start = max(start, limit_ph)
    curves = [np.interp(DAYS, (0.0, day), (start, limit_ph)) for day in FIXED_DAYS]
    return Told(np.array(curves), np.array(FIXED_DAYS))


def straight_line(readings: Sequence[Observation], limit_ph: float) -> Told:
    """Go on straight through the last three readings."""
    if len({r.day for r in readings[-_LAST:]}) < 2:
        return fixed(readings, limit_ph)
    last = readings[-_LAST:]
    days, ph = np.array([r.day for r in last]), np.array([r.value for r in last])
    slope, level = np.polyfit(days, ph, 1)
    off = ph - (level + slope * days)
    sd = max(float(np.sqrt((off @ off) / max(len(last) - 2, 1))), _LEAST_SD_PH)
    spread = days - days.mean()
    slope_sd = sd / float(np.sqrt(spread @ spread))
    level_sd = sd / np.sqrt(len(last))
    away = np.hypot(level_sd, slope_sd * (DAYS - days.mean()))
    middle = level + slope * DAYS
    curves = np.array([middle + z * np.hypot(away, sd) for z in NORMAL])
    crossing = []
    for z in NORMAL:
        tilt = min(slope + z * slope_sd, _LONGEST_SLOPE_PH)
        crossing.append(max((limit_ph - ph.mean()) / tilt + days.mean(), float(days[-1])))
    found = np.where(np.array(crossing) > DAYS[-1], np.inf, crossing)
    return Told(curves, found)


def sigmoid(readings: Sequence[Observation], limit_ph: float) -> Told:
    """Fit a falling sigmoid to this batch alone (scipy, least squares)."""
    if len({r.day for r in readings}) < 4:
        return straight_line(readings, limit_ph)
    days, ph = np.array([r.day for r in readings]), np.array([r.value for r in readings])
    sds = np.array([r.sd for r in readings])
    low, high = np.array((3.0, 2.0, -20.0, 0.3)), np.array((8.0, 3.6, 40.0, 20.0))
    first = np.clip((max(ph[0], 3.5), 2.9, 6.0, 3.0), low + 1e-3, high - 1e-3)
    try:
        with catch_warnings():
            simplefilter("ignore", OptimizeWarning)
            fitted, spread = curve_fit(
                _falling, days, ph, p0=first, sigma=sds, absolute_sigma=True, bounds=(low, high)
            )
    except RuntimeError:
        return straight_line(readings, limit_ph)
    off = ph - _falling(days, *fitted)
    sd = max(float(np.sqrt((off @ off) / max(len(ph) - 4, 1))), _LEAST_SD_PH)
    rng = np.random.default_rng(1)
    spread = np.where(np.isfinite(spread), spread, 0.0)
    draws = rng.multivariate_normal(fitted, spread, _DRAWS, check_valid="ignore")
    draws = np.clip(draws, low, high)
    told = from_draws(lambda at: np.array([_falling(at, *draw) for draw in draws]), limit_ph, sd)
    best = first_crossing(DAYS, _falling(DAYS, *fitted), limit_ph)
    crossing = told.crossing_days.copy()
    crossing[2] = best
    ph_curves = told.ph.copy()
    ph_curves[2] = _falling(DAYS, *fitted)
    return Told(np.sort(ph_curves, axis=0), np.sort(crossing))


def _falling(day: Floats, top: float, bottom: float, middle: float, width: float) -> Floats:
    fallen: Floats = bottom + (top - bottom) / (1.0 + np.exp((day - middle) / width))
    return fallen


BASELINES = {
    "fixed_7_to_10_days": fixed,
    "straight_line_through_last_readings": straight_line,
    "sigmoid_of_this_batch": sigmoid,
}
