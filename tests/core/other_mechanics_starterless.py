"""Invented jars set up with hardly any sour starter: they begin near pH 5 and wait for days.

A little thin culture grows by Gompertz's law in acid, not in cells, and what the pH does is
told by a buffer of the tea. Some never get sour. The numbers are judgement, in the range of
Huang et al. 2022 (eLife 11:76401): pH 5 at the start, 3.5 after ten days of a lively pair of
cells, 2.8 to 3.6 after fourteen days of four cultures.
"""

from __future__ import annotations

import numpy as np

from tests.core.other_mechanics import LAST_DAY, STEP_DAYS, InventedBatch, noisy_readings

READ_DAYS = (
    (0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 25, 28, 31, 34),
    (0, 3, 5, 7, 10, 12, 14, 17, 21, 25, 30, 35),
)


def starterless_batch(rng: np.random.Generator) -> InventedBatch:
    """Let one jar sour from next to nothing."""
    temperature = float(rng.uniform(22.0, 30.0))
    share = float(rng.choice([0.0, 0.01, 0.02, 0.03]))
    days = np.arange(0.0, LAST_DAY + STEP_DAYS, STEP_DAYS)
    place = temperature + rng.uniform(0.0, 2.0) * np.sin(
        2.0 * np.pi * days / rng.uniform(3.0, 14.0) + rng.uniform(0.0, 6.0)
    )
    ripe = np.concatenate([[0.0], np.cumsum(1.9 ** ((place[:-1] - 26.0) / 10.0) * STEP_DAYS)])
    most, fastest = 75.0 * 1.5 ** float(rng.normal()), 5.5 * 1.5 ** float(rng.normal())
    wait = rng.uniform(0.5, 6.0) if share < 0.02 else rng.uniform(0.0, 3.5)
    made = most * np.exp(-np.exp(fastest * np.e / most * (wait - ripe) + 1.0))
    acid = share * 70.0 * 1.5 ** float(rng.normal()) + made - made[0]
    ph = _ph(
        acid,
        first_ph=float(rng.uniform(4.8, 5.5)),
        buffer_meq=2.5 * 1.6 ** float(rng.normal()),
        share=float(rng.uniform(0.0, 0.4)),
        excess_meq=1.2 * 1.8 ** float(rng.normal()),
    )
    meter = float(rng.choice([0.03, 0.05, 0.1]))
    return InventedBatch(
        temperature_c=temperature,
        starter_share=share,
        sugar_g_per_l=float(rng.choice([50.0, 70.0, 100.0])),
        surface_per_cm=0.08 * 1.4 ** float(rng.normal()),
        meter_sd_ph=meter,
        days=days,
        ph=ph,
        acid_meq_per_l=acid,
        readings=noisy_readings(rng, days, ph, READ_DAYS[rng.integers(len(READ_DAYS))], meter),
    )


def _ph(
    acid_meq: np.ndarray, *, first_ph: float, buffer_meq: float, share: float, excess_meq: float
) -> np.ndarray:
    """Charge balance by halving; a buffer of pK 5 is at ``first_ph`` before any acid comes."""
    at_first = buffer_meq / (1.0 + 10.0 ** (5.0 - first_ph)) + excess_meq
    low, high = np.full(len(acid_meq), 1.5), np.full(len(acid_meq), 8.0)
    for _ in range(40):
        middle = 0.5 * (low + high)
        charge = acid_meq * (
            (1.0 - share) / (1.0 + 10.0 ** (4.75 - middle)) + share / (1.0 + 10.0 ** (3.7 - middle))
        )
        # What the bicarbonate of the water and the leaves' potassium have taken up before.
        charge = charge + buffer_meq / (1.0 + 10.0 ** (5.0 - middle))
        charge = charge + excess_meq / (1.0 + 10.0 ** (3.0 - middle))
        too_acid = at_first + 1000.0 * 10.0**-middle > charge
        low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
    return middle
