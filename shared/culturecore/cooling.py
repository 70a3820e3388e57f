"""From temperatures read while a pot cools to when a culture may go in."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from culturecore import heat
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate

READING_SD_C: Final = 0.5  # of a kitchen thermometer; assumption
AMBIENT_SD_C: Final = 1.0  # a room is no thermostat; assumption
LATEST_READINGS: Final = 4  # older ones tell of a hotter pot
LEAST_FALL_C: Final = 0.5  # below that two readings say nothing
Z_80: Final = 1.2816


@dataclass(frozen=True, slots=True, kw_only=True)
class PotReading:
    """A temperature [degC] and when it was taken [min since any fixed moment]."""

    minute: float
    temperature_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CoolingCurve:
    """How a pot cools: ``rate_per_min`` towards ``ambient_c``, from the latest reading on.

    ``is_earliest`` says that the pot steamed when it was read: real cooling is slower, so
    times are the earliest possible.
    """

    rate_per_min: Estimate
    ambient_c: float
    latest: PotReading
    is_earliest: bool
    sources: tuple[str, ...]

    def temperature_c(self, minute: float) -> float:
        """Return the temperature at a later moment [degC]."""
        gone = minute - self.latest.minute
        if not 0.0 <= gone < math.inf:  # NaN fails too
            raise ImpossibleInput("minute", minute, low=self.latest.minute, unit="min")
        above = self.latest.temperature_c - self.ambient_c
        return self.ambient_c + cooled(above, self.rate_per_min.value * gone)


def cooled(above_c: float, decay: float) -> float:
    """Return what is left of a temperature difference after ``decay`` time constants."""
    return above_c * math.exp(-decay)


def fit_cooling(readings: Sequence[PotReading], *, ambient_c: float) -> CoolingCurve:
    """Return the cooling curve through two or more readings.

    Parameters
    ----------
    readings : sequence of PotReading
        In any order, two or more moments apart; -20 to 105 degC. The latest four count.
    ambient_c : float
        Of the room, -20 to 60 degC; it is given, never fitted, since hot readings do not
        show where the curve ends.

    Raises
    ------
    ImpossibleInput
        ``reason`` "too_few" for less than two readings, "same_moment", "not_cooling" when
        the latest are not at least half a degree cooler than the first, "at_ambient" when
        one is not above the room; or a value out of range.

    Notes
    -----
    newton_cooling: the logarithm of the distance from the room falls evenly; a straight line
    by least squares, weighted by what half a degree means there. Above 58 degC an open pot
    also cools by evaporation (evaporating_pot).
    """
    latest = _latest(readings, ambient_c)
    distances = [reading.temperature_c - ambient_c for reading in latest]
    rate, rate_sd = _line(latest, distances)
    # a room that is cooler or warmer by one sd turns the line
    moved = [
        _line(latest, [distance + shift for distance in distances])[0]
        for shift in (-AMBIENT_SD_C, AMBIENT_SD_C)
        if min(distances) + shift > LEAST_FALL_C
    ]
    sd = math.hypot(rate_sd, *((other - rate) / len(moved) for other in moved))
    is_earliest = latest[0].temperature_c > heat.EVAPORATION_MATTERS_ABOVE_C
    estimate = Estimate(
        rate,
        max(rate - Z_80 * sd, 0.05 * rate),
        rate + Z_80 * sd,
        caveats=(Caveat.EXTRAPOLATED,) if is_earliest else (),
        sources=("newton_cooling",),
    )
    return CoolingCurve(
        rate_per_min=estimate,
        ambient_c=ambient_c,
        latest=latest[-1],
        is_earliest=is_earliest,
        sources=("newton_cooling", "evaporating_pot"),
    )


def minutes_until_safe(curve: CoolingCurve, *, limit_c: float) -> Estimate:
    """Return how long after the latest reading a culture may go in [min], 80 % bounds.

    Parameters
    ----------
    curve : CoolingCurve
        From :func:`fit_cooling`.
    limit_c : float
        The warmest that the culture may be given, 15 to 45 degC.

    Raises
    ------
    ImpossibleInput
        Outside that range, and ``reason`` "never" when the room is not cooler.

    Notes
    -----
    For a pot read while it steamed the value is the earliest time: ``low`` equals it and
    ``high`` is at least twice as long (evaporating_pot). A thermometer decides, not
    this.
    """
    if not 15.0 <= limit_c <= 45.0:  # NaN fails too
        raise ImpossibleInput("limit_c", limit_c, low=15.0, high=45.0, unit="°C")
    if limit_c <= curve.ambient_c:
        raise ImpossibleInput("limit_c", limit_c, low=curve.ambient_c, unit="°C", reason="never")
    above, aim = curve.latest.temperature_c - curve.ambient_c, limit_c - curve.ambient_c
    if above <= aim:
        return Estimate(0.0, 0.0, 0.0, sources=curve.sources)
    decay = math.log(above / aim)
    rate = curve.rate_per_min
    estimate = Estimate(
        decay / rate.value,
        decay / rate.high,
        # near the room's own temperature the room's doubt is what counts
        (decay + Z_80 * AMBIENT_SD_C / aim) / rate.low,
        caveats=rate.caveats,
        sources=curve.sources,
    )
    if not curve.is_earliest:
        return estimate
    latest = max(estimate.high, heat.HOT_READING_STRETCH * estimate.value)
    return replace(estimate, low=estimate.value, high=latest)


def _latest(readings: Sequence[PotReading], ambient_c: float) -> list[PotReading]:
    """Return the latest readings in order, checked."""
    _check("ambient_c", ambient_c, -20.0, 60.0, "°C")
    for reading in readings:
        _check("temperature_c", reading.temperature_c, -20.0, 105.0, "°C")
        _check("minute", reading.minute, -1e6, 1e6, "min")
    latest = sorted(readings, key=lambda reading: reading.minute)[-LATEST_READINGS:]
    if len(latest) < 2:
        raise ImpossibleInput("readings", len(latest), low=2, reason="too_few")
    if any(b.minute - a.minute < 1e-3 for a, b in itertools.pairwise(latest)):
        raise ImpossibleInput("readings", latest[-1].minute, unit="min", reason="same_moment")
    if latest[0].temperature_c - latest[-1].temperature_c < LEAST_FALL_C:
        raise ImpossibleInput("readings", latest[-1].temperature_c, unit="°C", reason="not_cooling")
    coolest = min(reading.temperature_c for reading in latest)
    if coolest <= ambient_c:
        raise ImpossibleInput("readings", coolest, low=ambient_c, unit="°C", reason="at_ambient")
    return latest


def _line(latest: list[PotReading], distances: list[float]) -> tuple[float, float]:
    """Return (cooling rate, its standard deviation) per minute, by weighted least squares."""
    weights = [(distance / READING_SD_C) ** 2 for distance in distances]
    minutes = [reading.minute for reading in latest]
    logs = [math.log(distance) for distance in distances]
    total = sum(weights)
    mean_minute = sum(w * m for w, m in zip(weights, minutes, strict=True)) / total
    mean_log = sum(w * y for w, y in zip(weights, logs, strict=True)) / total
    spread = sum(w * (m - mean_minute) ** 2 for w, m in zip(weights, minutes, strict=True))
    slope = sum(
        w * (m - mean_minute) * (y - mean_log)
        for w, m, y in zip(weights, minutes, logs, strict=True)
    )
    return -slope / spread, 1.0 / math.sqrt(spread)


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
