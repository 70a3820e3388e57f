"""Invented jars whose pH itself follows a textbook curve; there is no acid in them at all.

Logistic, Gompertz or exponential from a start to an end pH, in days that warm and cold
stretch, after a wait, with stalls and a drift of the meter. So a paper would fit its own
readings. The numbers are judgement: ends as in published drinks (2.6 to 3.3).
"""

from __future__ import annotations

import numpy as np

from tests.core.other_mechanics import LAST_DAY, STEP_DAYS, InventedBatch, noisy_readings

READ_DAYS = (
    tuple(range(22)),
    (0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 21, 24, 28),
    (0, 3, 6, 9, 12, 15, 18, 21, 24),
    (0, 1, 3, 5, 7, 10, 14, 21, 28),
)


def curve_batch(rng: np.random.Generator) -> InventedBatch:
    """Let the pH of one jar fall along a curve."""
    temperature = float(rng.uniform(20.0, 30.0))
    share = float(rng.uniform(0.05, 0.2))
    days = np.arange(0.0, LAST_DAY + STEP_DAYS, STEP_DAYS)
    first, last = float(rng.uniform(3.7, 4.8)), float(np.clip(rng.normal(2.9, 0.18), 2.5, 3.3))
    swing = rng.uniform(0.0, 2.5) * np.sin(
        2.0 * np.pi * days / rng.uniform(5.0, 20.0) + rng.uniform(0.0, 6.0)
    )
    pace = 2.0 ** ((temperature + swing - 25.0) / 10.0)
    if rng.random() < 0.25:
        begins = rng.uniform(1.0, 10.0)
        pace = pace * (1.0 - 0.9 * ((days > begins) & (days < begins + rng.uniform(1.0, 5.0))))
    ripe = np.concatenate([[0.0], np.cumsum(pace[:-1] * STEP_DAYS)])
    wait = float(rng.uniform(1.0, 5.0)) if rng.random() < 0.35 else 0.0
    shape, speed = rng.integers(3), 1.4 ** float(rng.normal())
    if shape == 0:
        fallen = 1.0 - np.exp(-np.maximum(ripe - wait, 0.0) / (5.5 * speed))
    elif shape == 1:
        middle, width = wait + 4.5 * speed, 1.9 * speed
        fallen = 1.0 / (1.0 + np.exp((middle - ripe) / width))
        fallen = (fallen - fallen[0]) / (1.0 - fallen[0])
    else:
        fallen = np.exp(-np.exp(1.2 - (ripe - wait) / (3.2 * speed)))
        fallen = (fallen - fallen[0]) / (1.0 - fallen[0])
    ph = first + (last - first) * fallen
    meter = float(rng.choice([0.03, 0.05, 0.1]))
    read_days = READ_DAYS[rng.integers(len(READ_DAYS))]
    return InventedBatch(
        temperature_c=temperature,
        starter_share=share,
        sugar_g_per_l=float(rng.choice([50.0, 60.0, 80.0, 100.0])),
        surface_per_cm=0.08,
        meter_sd_ph=meter,
        days=days,
        ph=ph,
        acid_meq_per_l=np.full(len(days), np.nan),
        readings=noisy_readings(rng, days, ph, read_days, meter),
    )
