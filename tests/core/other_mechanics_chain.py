"""Invented jars in which yeast feeds bacteria: sugar to ethanol to acetic acid, by Monod's law.

Yeast splits sucrose, grows on what that gives and makes ethanol; bacteria grow on the ethanol
that there is and turn it into acetic acid, later also glucose into gluconic acid. Either may
be the slow one, either may start thin, and both are held back by acid. The tea buffers with
two acids the program does not know. No power law and no lag is put in: waits come from thin
cells and from ethanol that is not there yet. The numbers are judgement.
"""

from __future__ import annotations

import numpy as np

from tests.core.other_mechanics import LAST_DAY, STEP_DAYS, InventedBatch, noisy_readings

READ_DAYS = (
    (0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 21, 24, 28, 32),
    (0, 2, 4, 6, 8, 10, 12, 14, 17, 20, 24, 28, 33),
    (0, 3, 5, 7, 10, 14, 17, 21, 28, 34),
)


def chain_batch(rng: np.random.Generator) -> InventedBatch:
    """Let one jar sour, yeast first and bacteria after it."""
    temperature = float(rng.uniform(19.0, 30.0))
    share = float(rng.uniform(0.05, 0.2))
    sugar = float(rng.choice([50.0, 60.0, 70.0, 80.0, 100.0]))
    surface = 0.08 * 1.4 ** float(rng.normal())
    days = np.arange(0.0, LAST_DAY + STEP_DAYS, STEP_DAYS)
    pace = _warmth(rng, days, temperature)
    acetic, gluconic = _acids(rng, pace, share, sugar, (surface / 0.08) ** rng.uniform(0.2, 0.9))
    ph = _ph(
        acetic,
        gluconic,
        excess_meq=2.2 * 1.5 ** float(rng.normal()),
        buffer_meq=float(rng.uniform(0.5, 3.5)),
    )
    meter = float(rng.choice([0.02, 0.05, 0.1]))
    return InventedBatch(
        temperature_c=temperature,
        starter_share=share,
        sugar_g_per_l=sugar,
        surface_per_cm=surface,
        meter_sd_ph=meter,
        days=days,
        ph=ph,
        acid_meq_per_l=acetic + gluconic,
        readings=noisy_readings(rng, days, ph, READ_DAYS[rng.integers(len(READ_DAYS))], meter),
    )


def _warmth(rng: np.random.Generator, days: np.ndarray, temperature_c: float) -> np.ndarray:
    """Speed of life: days and nights, a cold or warm spell; too hot is slower again."""
    place = temperature_c + rng.uniform(0.0, 2.5) * np.sin(2.0 * np.pi * days)
    if rng.random() < 0.4:
        begins, lasts = rng.uniform(0.0, 15.0), rng.uniform(2.0, 8.0)
        place = place + rng.uniform(-5.0, 4.0) * ((days > begins) & (days < begins + lasts))
    rise = 2.1 ** ((place - 25.0) / 10.0)
    pace: np.ndarray = rise / (1.0 + np.exp((place - 34.0) / 1.2))
    return pace


def _acids(
    rng: np.random.Generator, pace: np.ndarray, share: float, sugar_g_per_l: float, air: float
) -> tuple[np.ndarray, np.ndarray]:
    """Acetic and gluconic acid (meq/L) at each step, by Euler's method."""
    yeast_rate, bacteria_rate = 0.9 * 1.3 ** rng.normal(), 0.8 * 1.3 ** rng.normal()
    splits, brews = 9.0 * 1.4 ** rng.normal(), 45.0 * 1.4 ** rng.normal()
    oxidises, glucono = 15.0 * 1.45 ** rng.normal(), 3.0 * 2.0 ** rng.normal()
    thin = 0.1 if rng.random() < 0.15 else 1.0  # a starter kept too long
    yeast, bacteria = (thin * share * 1.8 ** float(rng.normal()) for _ in range(2))
    sucrose, hexose, ethanol = sugar_g_per_l * (1.0 - share), 2.0, 50.0 * share
    acetic = share * 80.0 * 1.35 ** float(rng.normal())
    gluconic = 0.25 * acetic
    course = []
    for speed in pace:
        course.append((acetic, gluconic))
        step = STEP_DAYS * speed
        held_back = 1.0 / (1.0 + ((acetic + gluconic) / 160.0) ** 2)
        split = step * splits * yeast * sucrose / (sucrose + 8.0)
        fed = hexose / (hexose + 3.0)
        brewed = step * brews * yeast * fed * held_back  # mmol/L of ethanol
        soured = step * air * oxidises * bacteria * ethanol / (ethanol + 12.0) * held_back
        glucosed = step * air * glucono * bacteria * hexose / (hexose + 10.0) * held_back
        yeast += step * yeast_rate * yeast * (1.0 - yeast) * fed
        bacteria += step * bacteria_rate * bacteria * (1.0 - bacteria) * ethanol / (ethanol + 8.0)
        sucrose = max(sucrose - split, 0.0)
        hexose = max(hexose + 1.05 * split - 0.09 * brewed - 0.18 * glucosed, 0.0)
        ethanol = max(ethanol + brewed - soured, 0.0)
        acetic, gluconic = acetic + soured, gluconic + glucosed
    both = np.array(course)
    return both[:, 0], both[:, 1]


def _ph(
    acetic_meq: np.ndarray, gluconic_meq: np.ndarray, *, excess_meq: float, buffer_meq: float
) -> np.ndarray:
    """Charge balance by halving; the tea holds acids of pK 4.2 and 6.0, half neutralised."""
    low, high = np.full(len(acetic_meq), 1.5), np.full(len(acetic_meq), 8.0)
    for _ in range(40):
        middle = 0.5 * (low + high)
        hydrogen = 10.0**-middle
        charge = acetic_meq / (1.0 + hydrogen / 10**-4.74) + gluconic_meq / (
            1.0 + hydrogen / 10**-3.75
        )
        charge = charge + buffer_meq * (
            1.0 / (1.0 + hydrogen / 10**-4.2) + 1.0 / (1.0 + hydrogen / 10**-6.0) - 1.0
        )
        too_acid = excess_meq + 1000.0 * hydrogen > charge
        low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
    return middle
