"""Invented jars that sour as fast as air gets through the film on top: a straight line of acid.

A film closes over some days; from then on the acid made is a flow of oxygen times the open
surface, even in time but for warmth, which changes by steps (heating off, windows open) and
is logged in some of the jars. Sometimes the film sinks and a new one must grow. There are no
cells and no sugar in it. The numbers are judgement.
"""

from __future__ import annotations

import numpy as np

from tests.core.other_mechanics import LAST_DAY, STEP_DAYS, InventedBatch, noisy_readings

READ_DAYS = (
    (0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 19, 22, 26, 30, 34),
    (0, 3, 6, 9, 12, 15, 18, 21, 25, 30),
    (0, 2, 5, 7, 9, 12, 14, 16, 19, 21, 26, 33),
)


def film_batch(rng: np.random.Generator) -> InventedBatch:
    """Let one jar sour under its film."""
    share = float(rng.uniform(0.05, 0.25))
    surface = 0.08 * 1.4 ** float(rng.normal())
    days = np.arange(0.0, LAST_DAY + STEP_DAYS, STEP_DAYS)
    place = _place(rng, days)
    film = 1.0 - (1.0 - rng.uniform(0.1, 0.7)) * np.exp(-days / rng.uniform(1.0, 5.0))
    if rng.random() < 0.2:  # the film sinks
        sinks = rng.uniform(3.0, 15.0)
        film = np.where(days > sinks, 1.0 - 0.7 * np.exp(-(days - sinks) / 3.0), film)
    flow = 6.0 * 1.45 ** float(rng.normal()) * (surface / 0.08) ** 0.7
    warmth = np.clip(1.0 + 0.07 * (place - 25.0), 0.1, 1.45)  # a straight line of warmth too
    made = np.concatenate([[0.0], np.cumsum(flow * (film * warmth)[:-1] * STEP_DAYS)])
    acid = share * 95.0 * 1.4 ** float(rng.normal()) + made
    ph = _ph(acid, pk=float(rng.uniform(4.1, 4.7)), excess_meq=2.8 * 1.5 ** float(rng.normal()))
    meter = float(rng.choice([0.03, 0.05, 0.1]))
    logged = [(float(d), float(round(np.interp(d, days, place), 1))) for d in range(0, 35, 2)]
    return InventedBatch(
        temperature_c=float(round(place[0])),
        starter_share=share,
        sugar_g_per_l=float(rng.uniform(45.0, 100.0)),
        surface_per_cm=surface,
        meter_sd_ph=meter,
        days=days,
        ph=ph,
        acid_meq_per_l=acid,
        readings=noisy_readings(rng, days, ph, READ_DAYS[rng.integers(len(READ_DAYS))], meter),
        temperatures=tuple(logged) if rng.random() < 0.5 else (),
    )


def _place(rng: np.random.Generator, days: np.ndarray) -> np.ndarray:
    """Temperature of the place: level for some days, then another level."""
    level = float(rng.uniform(19.0, 29.0))
    place = np.full(len(days), level)
    begins = float(rng.exponential(6.0))
    while begins < LAST_DAY:
        level = float(np.clip(level + rng.normal(0.0, 2.5), 16.0, 31.0))
        place[days >= begins] = level
        begins += 1.0 + float(rng.exponential(6.0))
    return place


def _ph(acid_meq: np.ndarray, *, pk: float, excess_meq: float) -> np.ndarray:
    """One acid of a middling strength: Henderson and Hasselbalch with hydrogen's own charge."""
    constant = 1000.0 * 10.0**-pk
    half = 0.5 * (excess_meq + constant)
    lack = np.maximum(acid_meq - excess_meq, 0.02)
    ph: np.ndarray = 3.0 - np.log10(np.sqrt(half**2 + constant * lack) - half)
    return np.minimum(ph, 5.6)
