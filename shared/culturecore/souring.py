"""How sweet tea turns sour: acid against time, and pH from acid.

The state of a jar is its acid equivalents N (meq/L, acetic and gluconic acid together),
not its pH. N grows as ``N0 + K tanh(7 r (t/7)^p / K)`` after a wait: a power law that is
held back as the acid nears the room K there is for it. pH follows from the charge balance
of both acids with the strong ions of tea and water.

All functions take plain floats or numpy arrays that broadcast together. numpy is imported
inside them, so that importing this module costs nothing.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from culturecore.constants import ACETIC_ACID_G_PER_MOL, LN_10
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate
from culturecore.priors import (
    ETHANOL_PLATEAU_PERCENT,
    REFERENCE_SURFACE_PER_CM,
    SUCROSE_LOSS_PER_DAY,
)

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]
    Numbers: TypeAlias = float | Floats

ACETIC_PK = (
    4.756  # NIST Critically Selected Stability Constants 46, as in minteq.v4 (4.757), 25 degC
)
GLUCONIC_PK = 3.70  # 25 degC; zubiaur_1998: published values run from 3.30 to 3.92
DAVIES_A = 0.5092  # (L/mol)^0.5 at 25 degC; davies_1962
ACETIC_G_PER_MEQ = ACETIC_ACID_G_PER_MOL / 1000.0

PH_FLOOR = 2.5  # no published kombucha of tea went lower, and pH stalls while acid goes on
PH_CAP = 5.5  # sweet tea without starter begins near 5.0; above this the balance has no meaning

REFERENCE_TEMPERATURE_C = 25.0
TESTED_LOW_C = 18.0
TESTED_HIGH_C = 30.0  # warmer than this is not taken to be faster
REFERENCE_DAYS = 7.0
NEARLY_FULL = 1.0 - 1e-6  # share of its room that the acid gets to at most
ENDLESS_ROOM_MEQ_PER_L = 1e9

SUCROSE_G_PER_MEQ_ACETIC = 342.30 / 4.0 / 1000.0  # 1 sucrose -> 4 ethanol -> 4 acetic acid
SUCROSE_G_PER_MEQ_GLUCONIC = 342.30 / 2.0 / 1000.0  # 1 sucrose -> 2 hexoses -> 2 gluconic at most
ETHANOL_RISE_DAYS = 14.0  # Chen & Liu 2000: rises to day 14, the same on day 20

_Z80 = 1.2815515655446004  # standard normal quantile of 0.9: half of a central 80 % interval
_HALLEY_STEPS = 2
_ACTIVITY_ROUNDS = 3
_SMALLEST_H_EQ_PER_L = 1e-7


def temperature_factor(temperature_c: Numbers, q10: Numbers) -> Floats:
    """Scale a rate from 25 degC to another temperature by ``q10^((T - 25)/10)``.

    Validity: 18 to 30 degC; above 30 degC the factor stays at its value for 30 degC,
    because cultures are not known to sour faster there.
    """
    import numpy as np

    warmth = np.minimum(temperature_c, TESTED_HIGH_C) - REFERENCE_TEMPERATURE_C
    factor: Floats = np.power(q10, warmth / 10.0)
    return factor


def surface_factor(surface_per_cm: Numbers, exponent: Numbers) -> Floats:
    """Scale a rate by the open surface per volume (cm2 per cm3) against the usual one.

    Sources: direction from Cvetkovic et al. 2008 (J. Food Eng. 85:387); the reference of
    0.08 per cm is an assumption.
    """
    import numpy as np

    factor: Floats = np.power(np.divide(surface_per_cm, REFERENCE_SURFACE_PER_CM.centre), exponent)
    return factor


def sugar_per_meq(gluconic_share: Numbers) -> Floats:
    """Give the sucrose (g) that a milliequivalent of acid takes at least, by mass balance."""
    import numpy as np

    grams: Floats = (
        np.subtract(1.0, gluconic_share) * SUCROSE_G_PER_MEQ_ACETIC
        + np.asarray(gluconic_share) * SUCROSE_G_PER_MEQ_GLUCONIC
    )
    return grams


def acid_ceiling_meq_per_l(
    *, start_meq_per_l: Numbers, sugar_g_per_l: Numbers, gluconic_share: Numbers
) -> Floats:
    """Give the acid that all the sugar could become, on top of what the starter brought.

    Notes: by mass balance one sucrose gives four acetic or two gluconic acids at most.
    """
    import numpy as np

    ceiling: Floats = start_meq_per_l + np.divide(sugar_g_per_l, sugar_per_meq(gluconic_share))
    return ceiling


def acid_meq_per_l(
    day: Numbers,
    *,
    start_meq_per_l: Numbers,
    rate_meq_per_l_day: Numbers,
    curvature: Numbers,
    lag_days: Numbers = 0.0,
    room_meq_per_l: Numbers = ENDLESS_ROOM_MEQ_PER_L,
) -> Floats:
    """Give the acid equivalents (meq/L) on a day: ``N0 + K tanh(7 r ((t - lag)/7)^p / K)``.

    ``rate_meq_per_l_day`` is the mean over the first seven days of souring, at the jar's
    own temperature and surface and as long as nothing holds it back; ``room_meq_per_l`` is
    K. Days before the end of the lag give N0.

    Validity: fitted to courses of up to 20 days (Chen & Liu 2000; Sievers et al. 1995).
    """
    import numpy as np

    weeks = np.maximum(np.subtract(day, lag_days), 0.0) / REFERENCE_DAYS
    unhindered = REFERENCE_DAYS * np.asarray(rate_meq_per_l_day) * np.power(weeks, curvature)
    acid: Floats = start_meq_per_l + room_meq_per_l * np.tanh(unhindered / room_meq_per_l)
    return acid


def day_of_acid(
    acid_wanted_meq_per_l: Numbers,
    *,
    start_meq_per_l: Numbers,
    rate_meq_per_l_day: Numbers,
    curvature: Numbers,
    lag_days: Numbers = 0.0,
    room_meq_per_l: Numbers = ENDLESS_ROOM_MEQ_PER_L,
) -> Floats:
    """Give the day on which the acid first reaches a value (meq/L).

    Zero where the start already has it, infinity where there is no room for it.
    """
    import numpy as np

    missing = np.subtract(acid_wanted_meq_per_l, start_meq_per_l)
    full = np.clip(missing / room_meq_per_l, 0.0, NEARLY_FULL)
    weekly = REFERENCE_DAYS * np.asarray(rate_meq_per_l_day) / room_meq_per_l
    day = lag_days + REFERENCE_DAYS * np.power(np.arctanh(full) / weekly, np.divide(1.0, curvature))
    reached = np.where(missing > NEARLY_FULL * np.asarray(room_meq_per_l), np.inf, day)
    answer: Floats = np.where(missing <= 0.0, 0.0, reached)
    return answer


def acid_of_ph(
    ph: Numbers, *, gluconic_share: Numbers, strong_ion_excess_meq_per_l: Numbers
) -> Floats:
    """Give the acid equivalents (meq/L) a liquid of this pH must hold.

    Parameters: ``gluconic_share`` is gluconic acid's share of the equivalents (0 to 1),
    ``strong_ion_excess_meq_per_l`` the strong cations over the strong anions.

    Notes: charge balance ``SID + [H+] = N (share of the acid that is dissociated)``, solved
    for N directly. Activity by Davies at the ionic strength ``SID + [H+]``.
    """
    import numpy as np

    activity = np.exp(-LN_10 * np.asarray(ph))
    excess = np.asarray(strong_ion_excess_meq_per_l) / 1000.0
    gamma = _activity_coefficient(excess + activity)
    gamma = _activity_coefficient(excess + activity / gamma)
    hydrogen = activity / gamma
    acid: Floats = 1000.0 * (excess + hydrogen) / _dissociated(hydrogen, gamma, gluconic_share)
    return acid


def strong_ion_excess_meq_per_l(
    *, ph: Numbers, acid_meq_per_l: Numbers, gluconic_share: Numbers
) -> Floats:
    """Give the strong-ion excess (meq/L) that reconciles a pH with a known acid content.

    Notes: the same balance as in `acid_of_ph`. A negative answer means that the liquid
    holds a stronger acid than the two counted here.
    """
    import numpy as np

    activity = np.exp(-LN_10 * np.asarray(ph, dtype=float))
    gamma = _activity_coefficient(activity)
    excess = np.asarray(0.0)
    for _ in range(_ACTIVITY_ROUNDS):
        hydrogen = activity / gamma
        bound = np.asarray(acid_meq_per_l) / 1000.0 * _dissociated(hydrogen, gamma, gluconic_share)
        excess = bound - hydrogen
        gamma = _activity_coefficient(bound)
    answer: Floats = 1000.0 * excess
    return answer


def ph_of_acid(
    acid_meq_per_l: Numbers, *, gluconic_share: Numbers, strong_ion_excess_meq_per_l: Numbers
) -> Floats:
    """Give the pH of a liquid that holds these acid equivalents, between 2.5 and 5.5.

    Arguments as in `acid_of_ph`, whose inverse this is inside the limits.

    Validity: kombucha of tea at room temperature; against a pH meter no better than 0.15.

    Notes: Halley's steps in [H+] on the charge balance, two of which come to within 2e-6 pH
    of its root. Arrays of single precision are worked out in single precision, which is as
    exact and three times as fast.
    """
    import numpy as np

    acid = np.asarray(acid_meq_per_l) / 1000.0
    excess = np.asarray(strong_ion_excess_meq_per_l) / 1000.0
    share = np.asarray(gluconic_share)
    acetic = acid * (1.0 - share)
    gluconic = acid * share
    gamma = _activity_coefficient(excess + 6e-4)
    # A single acid of in-between strength gives the start; it is within 0.1 pH.
    blend_pk = ACETIC_PK + share * (GLUCONIC_PK - ACETIC_PK)
    constant = np.exp(-LN_10 * blend_pk) / (gamma * gamma)
    middle = excess + constant
    root = np.maximum(middle * middle + (4.0 * constant) * (acid - excess), 0.0)
    hydrogen = np.maximum(0.5 * (np.sqrt(root) - middle), _SMALLEST_H_EQ_PER_L)
    gamma = _activity_coefficient(excess + hydrogen)
    acetic_constant, gluconic_constant = _constants(gamma)
    acetic = acetic * acetic_constant
    gluconic = gluconic * gluconic_constant
    for _ in range(_HALLEY_STEPS):
        acetic_room = 1.0 / (acetic_constant + hydrogen)
        gluconic_room = 1.0 / (gluconic_constant + hydrogen)
        acetic_ion = acetic * acetic_room
        gluconic_ion = gluconic * gluconic_room
        lack = excess + hydrogen - acetic_ion - gluconic_ion
        acetic_ion = acetic_ion * acetic_room
        gluconic_ion = gluconic_ion * gluconic_room
        slope = 1.0 + acetic_ion + gluconic_ion
        half_bend = acetic_ion * acetic_room + gluconic_ion * gluconic_room  # and downwards
        hydrogen = hydrogen - lack / (slope + lack * half_bend / slope)
        hydrogen = np.maximum(hydrogen, _SMALLEST_H_EQ_PER_L)
    ph: Floats = np.minimum(np.maximum(-np.log10(gamma * hydrogen), PH_FLOOR), PH_CAP)
    return ph


def ta_g_per_l(acid_meq_per_l: Numbers, strong_ion_excess_meq_per_l: Numbers) -> Floats:
    """Give the titratable acidity (g/L as acetic acid): the acid that is not yet neutralised."""
    import numpy as np

    unbound = np.subtract(acid_meq_per_l, strong_ion_excess_meq_per_l)
    ta: Floats = np.maximum(unbound, 0.0) * ACETIC_G_PER_MEQ
    return ta


def sucrose_left_g_per_l(*, day: float, sugar_g_per_l: float, temperature_c: float) -> Estimate:
    """Estimate the sucrose still whole on a day (g/L), very roughly.

    The sucrose that is gone is mostly glucose and fructose now, which also taste sweet.

    Raises: `ImpossibleInput` for a negative or endless number.

    Sources: first-order loss of 0.032 per day (Chen & Liu 2000, standing) and 0.13
    (Sievers et al. 1995, stirred); temperature by the same factor as the acid, an assumption.
    """
    _require_not_negative("day", day, "days")
    _require_not_negative("sugar_g_per_l", sugar_g_per_l, "g/L")
    warmth = min(temperature_c, TESTED_HIGH_C) - REFERENCE_TEMPERATURE_C
    middle = SUCROSE_LOSS_PER_DAY.centre * 2.0 ** (warmth / 10.0)
    factor = SUCROSE_LOSS_PER_DAY.spread**_Z80
    return Estimate(
        value=sugar_g_per_l * math.exp(-middle * day),
        low=sugar_g_per_l * math.exp(-middle * factor * day),
        high=sugar_g_per_l * math.exp(-middle / factor * day),
        caveats=_temperature_caveats(temperature_c),
        sources=SUCROSE_LOSS_PER_DAY.sources,
    )


def ethanol_percent(*, day: float, temperature_c: float) -> Estimate:
    """Estimate the ethanol of an open first stage (% by volume), very roughly.

    It rises evenly to day 14 and stays. The bounds span a factor of three up and down:
    this is no ground for saying that a drink is free of alcohol.

    Raises: `ImpossibleInput` for a negative or endless day.

    Sources: course of Chen & Liu 2000; level and spread see `ETHANOL_PLATEAU_PERCENT`.
    """
    _require_not_negative("day", day, "days")
    rise = min(day / ETHANOL_RISE_DAYS, 1.0)
    middle = ETHANOL_PLATEAU_PERCENT.centre * rise
    factor = ETHANOL_PLATEAU_PERCENT.spread**_Z80
    return Estimate(
        value=middle,
        low=middle / factor,
        high=middle * factor,
        caveats=_temperature_caveats(temperature_c),
        sources=ETHANOL_PLATEAU_PERCENT.sources,
    )


def _temperature_caveats(temperature_c: float) -> tuple[Caveat, ...]:
    inside = TESTED_LOW_C <= temperature_c <= TESTED_HIGH_C
    return () if inside else (Caveat.EXTRAPOLATED,)


def _require_not_negative(field: str, value: float, unit: str) -> None:
    if not math.isfinite(value) or value < 0.0:
        raise ImpossibleInput(field, value, low=0.0, unit=unit)


def _activity_coefficient(ionic_strength_mol_per_l: Floats) -> Floats:
    """Davies 1962 for an ion of charge one; valid to about 0.1 mol/L."""
    import numpy as np

    root = np.sqrt(np.maximum(ionic_strength_mol_per_l, 0.0))
    log10_gamma = -DAVIES_A * (root / (1.0 + root) - 0.3 * ionic_strength_mol_per_l)
    gamma: Floats = np.exp(LN_10 * log10_gamma)
    return gamma


def _constants(gamma: Floats) -> tuple[Floats, Floats]:
    """Acetic and gluconic dissociation constants in concentrations (mol/L)."""
    pair = 1.0 / (gamma * gamma)
    return 10.0**-ACETIC_PK * pair, 10.0**-GLUCONIC_PK * pair


def _dissociated(hydrogen_eq_per_l: Floats, gamma: Floats, gluconic_share: Numbers) -> Floats:
    """Share of the acid equivalents that is dissociated at this [H+]."""
    import numpy as np

    share = np.asarray(gluconic_share)
    acetic_constant, gluconic_constant = _constants(gamma)
    acetic = (1.0 - share) * acetic_constant / (acetic_constant + hydrogen_eq_per_l)
    gluconic = share * gluconic_constant / (gluconic_constant + hydrogen_eq_per_l)
    dissociated: Floats = acetic + gluconic
    return dissociated
