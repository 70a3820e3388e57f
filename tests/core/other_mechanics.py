"""Invented jars that sour by other mechanics than the program's: a stress for its forecasts.

Cells grow logistically and make acid as they grow and as they stand (Luedeking and Piret
1959), held back by their own acid. The liquid is buffered by an acid that the program does
not know. Jars may wait, stall for days, or stand in a place that swings between warm and
cool; every culture has its own habits. The numbers are judgement, chosen to give courses
between 4 and 40 days.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

STEP_DAYS = 0.125
LAST_DAY = 35.0


@dataclass(frozen=True, kw_only=True)
class Culture:
    """Habits that batches of one culture share."""

    growth_per_day: float
    acid_by_growth_meq: float
    acid_by_standing_meq_per_day: float
    gluconic_share: float
    excess_meq: float


@dataclass(frozen=True, kw_only=True)
class InventedBatch:
    """A batch with its true course; ``readings`` are (day, pH) with the meter's noise."""

    temperature_c: float
    starter_share: float
    sugar_g_per_l: float
    surface_per_cm: float
    meter_sd_ph: float
    days: np.ndarray
    ph: np.ndarray
    acid_meq_per_l: np.ndarray
    readings: tuple[tuple[float, float], ...]
    temperatures: tuple[tuple[float, float], ...] = ()  # (day, degC), where they were logged

    def crossing_day(self, ph: float) -> float:
        """Day on which the true course first falls to a pH; infinite when it never does."""
        below = np.flatnonzero(self.ph <= ph)
        return float(self.days[below[0]]) if len(below) else math.inf


def invented_culture(rng: np.random.Generator) -> Culture:
    """Draw the habits of a culture."""
    return Culture(
        growth_per_day=0.45 * 1.35 ** rng.normal(),
        acid_by_growth_meq=25.0 * 1.5 ** rng.normal(),
        acid_by_standing_meq_per_day=5.5 * 1.45 ** rng.normal(),
        gluconic_share=float(rng.uniform(0.05, 0.5)),
        excess_meq=2.5 * 1.6 ** rng.normal(),
    )


def invented_batch(
    rng: np.random.Generator,
    culture: Culture | None = None,
    *,
    read_days: tuple[float, ...] = (0, 1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 15, 18, 21, 25, 30),
    meter_sd_ph: float | None = None,
) -> InventedBatch:
    """Let one jar sour, with its troubles."""
    culture = culture or invented_culture(rng)
    temperature = float(rng.uniform(20.0, 29.0))
    share = float(rng.uniform(0.06, 0.2))
    surface = 0.08 * 1.35 ** float(rng.normal())
    meter = meter_sd_ph if meter_sd_ph is not None else float(rng.choice([0.03, 0.05, 0.1]))
    days = np.arange(0.0, LAST_DAY + STEP_DAYS, STEP_DAYS)
    pace = _pace(rng, days, temperature) * (surface / 0.08) ** float(rng.uniform(0.3, 0.8))
    acid = _acid(culture, pace, share, start_meq=share * 90.0 * 1.4 ** rng.normal())
    ph = _ph(acid, culture.gluconic_share, culture.excess_meq, buffer_meq=float(rng.uniform(1, 5)))
    return InventedBatch(
        temperature_c=temperature,
        starter_share=share,
        sugar_g_per_l=float(rng.uniform(50.0, 90.0)),
        surface_per_cm=surface,
        meter_sd_ph=meter,
        days=days,
        ph=ph,
        acid_meq_per_l=acid,
        readings=noisy_readings(rng, days, ph, read_days, meter),
    )


def noisy_readings(
    rng: np.random.Generator,
    days: np.ndarray,
    ph: np.ndarray,
    read_days: tuple[float, ...],
    meter_sd_ph: float,
) -> tuple[tuple[float, float], ...]:
    """Read a course with a meter: (day, pH) to two places."""
    seen = np.interp(np.array(read_days), days, ph) + rng.normal(0.0, meter_sd_ph, len(read_days))
    return tuple(zip(map(float, read_days), np.round(seen, 2).tolist(), strict=True))


def _pace(rng: np.random.Generator, days: np.ndarray, temperature_c: float) -> np.ndarray:
    """Speed of life at each time: warmth, its swings, a wait, a stall."""
    swing = rng.uniform(0.0, 3.0) * np.sin(
        2.0 * np.pi * days / rng.uniform(4.0, 12.0) + rng.uniform(0, 6)
    )
    drift = rng.normal(0.0, 0.1) * days if rng.random() < 0.3 else 0.0
    warmth = np.minimum(temperature_c + swing + drift, 32.0)
    kelvin = warmth + 273.15
    # Arrhenius instead of a factor per ten degrees
    pace = np.exp(-60_000.0 / 8.314 * (1.0 / kelvin - 1.0 / 298.15))
    if rng.random() < 0.3:
        pace = pace / (1.0 + np.exp(-(days - rng.uniform(0.5, 4.0)) / 0.3))
    if rng.random() < 0.25:
        begins, lasts = rng.uniform(2.0, 12.0), rng.uniform(2.0, 5.0)
        pace = np.where((days > begins) & (days < begins + lasts), 0.15 * pace, pace)
    return pace


def _acid(culture: Culture, pace: np.ndarray, share: float, start_meq: float) -> np.ndarray:
    cells, acid = 0.15 + 1.5 * share, start_meq
    course = []
    for speed in pace:
        course.append(acid)
        held_back = max(1.0 - acid / 260.0, 0.0)
        growth = speed * culture.growth_per_day * cells * (1.0 - cells) * held_back
        standing = speed * culture.acid_by_standing_meq_per_day * cells * held_back
        cells += STEP_DAYS * growth
        acid += STEP_DAYS * (culture.acid_by_growth_meq * growth + standing)
    return np.array(course)


def _ph(acid_meq: np.ndarray, share: float, excess_meq: float, *, buffer_meq: float) -> np.ndarray:
    """Charge balance by halving, without activities; the tea's own acid has a pK of 4.5."""
    low, high = np.full(len(acid_meq), 1.5), np.full(len(acid_meq), 8.0)
    excess = excess_meq + 0.5 * buffer_meq  # a fresh tea has half of its acid neutralised
    for _ in range(40):
        middle = 0.5 * (low + high)
        hydrogen = 10.0**-middle
        bound = acid_meq * (
            (1.0 - share) * 10**-4.72 / (10**-4.72 + hydrogen)
            + share * 10**-3.66 / (10**-3.66 + hydrogen)
        )
        bound = bound + buffer_meq * 10**-4.5 / (10**-4.5 + hydrogen)
        too_acid = excess + 1000.0 * hydrogen > bound
        low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
    return middle
