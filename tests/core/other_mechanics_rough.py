"""Invented jars of four further mechanics, on which no prior was chosen.

Warm jars with much starter whose hydrogen ions approach a ceiling; cool ones that sour in two
phases; sugar-fed cells in a place of changing warmth, with hard water; and rough readings of a
stretched exponential with stalls. Meters of 0.03 to 0.1 pH, uneven days, days left out. The
numbers are judgement.
"""

from __future__ import annotations

import numpy as np

from tests.core.other_mechanics import LAST_DAY, STEP_DAYS, InventedBatch, noisy_readings

DAYS = np.arange(0.0, LAST_DAY + STEP_DAYS, STEP_DAYS)
READ_DAYS = (
    tuple(range(22)),
    (0, 2, 4, 6, 8, 10, 12, 14, 17, 20, 24, 28),
    (0, 1, 3, 5, 7, 9, 11, 14, 18, 21, 25, 30),
    (0, 3, 5, 7, 10, 12, 15, 18, 21, 26, 31, 35),
)


def warm_batch(rng: np.random.Generator) -> InventedBatch:
    """Much starter, a warm place, a meter that is off by a little."""
    temperature, share = float(rng.uniform(25.0, 31.0)), float(rng.uniform(0.12, 0.3))
    first, last = float(rng.uniform(3.4, 4.1)), float(rng.uniform(2.6, 3.0))
    slow = 6.0 * 1.45 ** float(rng.normal()) * 1.9 ** ((27.0 - temperature) / 10.0)
    risen = 1.0 - np.exp(-((DAYS / slow) ** rng.uniform(0.9, 1.4)))
    hydrogen = 10**-first + (10**-last - 10**-first) * risen
    return _batch(rng, temperature, share, rng.normal(0.0, 0.04) - np.log10(hydrogen), wobble=0.03)


def cool_batch(rng: np.random.Generator) -> InventedBatch:
    """Two waves of acid after each other, slowly, one weak acid against the tea's ions."""
    temperature, share = float(rng.uniform(17.0, 22.0)), float(rng.uniform(0.08, 0.2))
    swing = rng.uniform(0.0, 2.0) * np.sin(2.0 * np.pi * DAYS / rng.uniform(5.0, 14.0))
    pace = 2.1 ** ((temperature + swing[:-1] - 25.0) / 10.0)
    ripe = np.concatenate([[0.0], np.cumsum(pace * STEP_DAYS)])
    wait = float(rng.uniform(0.0, 3.0))
    acid = share * 85.0 * 1.35 ** float(rng.normal())
    for most, speed, later in ((35.0, 6.0, 0.0), (60.0, 5.5, rng.uniform(3.0, 7.0))):
        most = most * 1.35 ** float(rng.normal())
        fastest = speed * 1.4 ** float(rng.normal()) * np.e / most
        acid = acid + most * np.exp(-np.exp(fastest * (wait + later - ripe) + 1.0))
    excess = 3.0 * 1.5 ** float(rng.normal())
    constant = 1000.0 * 10.0 ** -float(rng.uniform(4.3, 4.75))
    half = 0.5 * (excess + constant)
    hydrogen = np.sqrt(half**2 + constant * np.maximum(acid - excess, 0.05)) - half
    return _batch(rng, temperature, share, np.minimum(3.0 - np.log10(hydrogen), 5.4))


def rough_batch(rng: np.random.Generator) -> InventedBatch:
    """Every reading by a meter of 0.1 pH, and the jar itself wobbles."""
    temperature, share = float(rng.uniform(20.0, 29.0)), float(rng.uniform(0.05, 0.2))
    slow = 6.5 * 1.4 ** float(rng.normal())
    last = float(np.clip(rng.normal(2.85, 0.13), 2.5, 3.12))
    swing = rng.uniform(0.5, 3.0) * np.sin(2.0 * np.pi * DAYS / rng.uniform(1.0, 12.0))
    pace = 2.0 ** ((temperature + swing - 25.0) / 10.0)
    if rng.random() < 0.3:
        begins = rng.uniform(1.0, 9.0)
        stalled = (begins < DAYS) & (begins + rng.uniform(2.0, 5.0) > DAYS)
        pace = pace * (1.0 - 0.85 * stalled)
    ripe = np.concatenate([[0.0], np.cumsum(pace[:-1] * STEP_DAYS)])
    wait = float(rng.uniform(0.0, 3.0)) if rng.random() < 0.4 else 0.0
    first = float(rng.normal(4.25, 0.25)) - 1.2 * (share - 0.12)
    fallen = np.exp(-((np.maximum(ripe - wait, 0.0) / slow) ** rng.uniform(0.9, 1.6)))
    ph = last + (first - last) * fallen
    return _batch(rng, temperature, share, ph, meter=0.1, wobble=0.03)


def fed_batch(rng: np.random.Generator) -> InventedBatch:
    """Monod's law in a place of changing warmth; hard water holds the pH up, often above 3.2."""
    temperature, share = float(rng.uniform(20.0, 29.0)), float(rng.uniform(0.06, 0.2))
    place, at = np.full(len(DAYS), temperature), float(rng.exponential(5.0))
    while at < LAST_DAY:
        place[at <= DAYS] = np.clip(temperature + rng.normal(0.0, 3.0), 16.0, 32.0)
        at += 2.0 + float(rng.exponential(5.0))
    cells, sugar = 0.08 + 0.8 * share * 1.3 ** float(rng.normal()), float(rng.uniform(50, 100))
    acid, course = share * 80.0 * 1.35 ** float(rng.normal()), []
    growth, souring = 0.55 * 1.3 ** float(rng.normal()), 9.5 * 1.35 ** float(rng.normal())
    for warmth in np.exp((16.0 - (place - 29.0) ** 2) / 121.0):
        course.append(acid)
        held = 1.0 + (acid / 120.0) ** 2
        grown = STEP_DAYS * growth * warmth * cells * (1.0 - cells / 1.2) * sugar / (sugar + 15)
        made = STEP_DAYS * souring * warmth * cells * sugar / (sugar + 5.0) / held
        cells, acid, sugar = cells + grown / held, acid + made, max(sugar - 0.09 * made, 0.0)
    ph = np.linspace(2.3, 6.0, 800)
    ions = 2.8 * 1.5 ** float(rng.normal()) + rng.uniform(0.7, 2.8) * (4.9 - ph)
    needed = (ions + 1000.0 * 10.0**-ph) * (1.0 + 10.0 ** (4.76 - ph))
    needed = np.maximum.accumulate(needed[::-1])
    return _batch(rng, temperature, share, np.interp(course, needed, ph[::-1]))


def _batch(
    rng: np.random.Generator,
    temperature_c: float,
    share: float,
    ph: np.ndarray,
    *,
    meter: float | None = None,
    wobble: float = 0.0,
) -> InventedBatch:
    meter = meter or float(rng.choice([0.03, 0.05, 0.1]))
    days = np.array(READ_DAYS[rng.integers(len(READ_DAYS))], dtype=float)
    kept = rng.random(len(days)) > 0.15  # days on which nobody read
    kept[0] = True
    uneven = np.clip(days[kept] + rng.uniform(-0.3, 0.3, kept.sum()) * (days[kept] > 0), 0.0, 35.0)
    readings = noisy_readings(rng, DAYS, ph, tuple(uneven.tolist()), float(np.hypot(meter, wobble)))
    return InventedBatch(
        temperature_c=temperature_c,
        starter_share=share,
        sugar_g_per_l=float(rng.uniform(50.0, 90.0)),
        surface_per_cm=0.08 * 1.3 ** float(rng.normal()),
        meter_sd_ph=meter,
        days=DAYS,
        ph=ph,
        acid_meq_per_l=np.full(len(DAYS), np.nan),
        readings=readings,
    )
