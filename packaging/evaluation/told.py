"""What a way of foretelling says of a series, in one shape for all: quantiles over days."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

QUANTILES = (0.1, 0.25, 0.5, 0.75, 0.9)
NORMAL = (-1.2815515655446004, -0.6744897501960817, 0.0, 0.6744897501960817, 1.2815515655446004)
HORIZON_DAYS = 35.0
DAYS = np.arange(0.0, HORIZON_DAYS + 0.25, 0.5)


@dataclass(frozen=True)
class Told:
    """pH quantiles by day (quantiles by days), and quantiles of the crossing day.

    A crossing day is infinite where the horizon ends before it.
    """

    ph: Floats
    crossing_days: Floats

    def ph_at(self, day: float, reading_sd: float) -> Floats:
        """Quantiles of what a reading of this exactness would show."""
        at = np.array([np.interp(day, DAYS, curve) for curve in self.ph])
        return blurred(at, reading_sd)


def blurred(quantiles: Floats, sd: float) -> Floats:
    """Widen quantiles by an independent normal error, half by half."""
    middle = quantiles[2]
    reach = np.hypot(quantiles - middle, np.array(NORMAL) * sd)
    wide: Floats = middle + np.sign(np.array(NORMAL)) * reach
    return wide


def from_curves(ph: Floats, limit_ph: float) -> Told:
    """Read the crossing days off falling quantile curves."""
    return Told(ph, np.array([first_crossing(DAYS, curve, limit_ph) for curve in ph]))


def from_draws(course: Callable[[Floats], Floats], limit_ph: float, sd: float) -> Told:
    """Make quantiles of draws by days; ``sd`` is what readings scatter around them."""
    draws = course(DAYS)
    ph = np.array([blurred(q, sd) for q in np.quantile(draws, QUANTILES, axis=0).T]).T
    crossing = [first_crossing(DAYS, draw, limit_ph) for draw in draws]
    found = np.quantile(np.minimum(crossing, 1e6), QUANTILES, method="nearest")
    return Told(ph, np.where(found >= HORIZON_DAYS, np.inf, found))


def first_crossing(days: Floats, ph: Floats, limit_ph: float) -> float:
    """Day on which a course first falls to a pH, straight between its points."""
    below = np.flatnonzero(ph <= limit_ph)
    if not len(below):
        return float("inf")
    at = int(below[0])
    if at == 0:
        return float(days[0])
    above, under = ph[at - 1], ph[at]
    return float(days[at - 1] + (days[at] - days[at - 1]) * (above - limit_ph) / (above - under))
