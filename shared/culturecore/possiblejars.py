"""The jars that could be behind a recipe, and how well each explains the readings.

Latents are independent standard normals, one column a parameter; here they become acid,
rate and all the rest, by the priors and the batch's own recipe, temperature and vessel.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import TYPE_CHECKING

from culturecore import priors, souring
from culturecore.outcome import Estimate
from culturecore.stages import Quantity, TeaKind

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.souringcase import Conditions, Observation

    Floats: TypeAlias = NDArray[float64]

LATENTS = 6  # starter acid, rate, curvature, strong ions, gluconic share, lag

START_READING_DAYS = 0.5  # a pH read by then replaces the reckoned one
SURFACE_REACH = 4.0  # known vessels lie within this factor of the usual surface

_STUDENT_FREEDOM = 4.0  # of the likelihood: one wild reading costs little
_START_ESTIMATE_LEAST_SD = 0.15  # a start pH that was reckoned, not read
_LEAST_START_MEQ_PER_L = 0.5  # tea's own acids, where there is no starter at all
_LEAST_TA_SD_G_PER_L = 0.1
_LEAST_CURVATURE = 0.5
_LAG_FROM_LATENT = 0.6  # a standard normal lies above this in about one jar of four
_LONGEST_LAG_DAYS = 4.0
_Z80 = 1.2815515655446004


@dataclass(frozen=True, slots=True, kw_only=True)
class PossibleJars:
    """Many possible jars: one value of each parameter a draw, shape (draws, 1)."""

    start_meq_per_l: Floats
    rate_meq_per_l_day: Floats
    curvature: Floats
    lag_days: Floats
    ceiling_meq_per_l: Floats
    excess_meq_per_l: Floats
    gluconic_share: Floats

    def acid(self, days: Floats) -> Floats:
        """Acid equivalents (meq/L), draws by days."""
        return souring.acid_meq_per_l(
            days,
            start_meq_per_l=self.start_meq_per_l,
            rate_meq_per_l_day=self.rate_meq_per_l_day,
            curvature=self.curvature,
            lag_days=self.lag_days,
            ceiling_meq_per_l=self.ceiling_meq_per_l,
        )

    def ph(self, acid: Floats) -> Floats:
        """Give the pH at these acid equivalents."""
        return souring.ph_of_acid(
            acid,
            gluconic_share=self.gluconic_share,
            strong_ion_excess_meq_per_l=self.excess_meq_per_l,
        )

    def ta(self, acid: Floats) -> Floats:
        """Titratable acidity (g/L as acetic) at these acid equivalents."""
        return souring.ta_g_per_l(acid, self.excess_meq_per_l)

    def day_of_ph(self, ph: Floats) -> Floats:
        """Day on which each jar gets down to a pH of its own (draws by 1)."""
        import numpy as np

        inside = np.clip(ph, souring.PH_FLOOR, souring.PH_CAP)
        acid = souring.acid_of_ph(
            inside,
            gluconic_share=self.gluconic_share,
            strong_ion_excess_meq_per_l=self.excess_meq_per_l,
        )
        day = souring.day_of_acid(
            acid,
            start_meq_per_l=self.start_meq_per_l,
            rate_meq_per_l_day=self.rate_meq_per_l_day,
            curvature=self.curvature,
            lag_days=self.lag_days,
            ceiling_meq_per_l=self.ceiling_meq_per_l,
        )
        never: Floats = np.where(ph < souring.PH_FLOOR, np.inf, day)
        at_once: Floats = np.where(ph >= souring.PH_CAP, 0.0, never)
        return at_once


@dataclass(frozen=True, slots=True, kw_only=True)
class Readings:
    """Observations as arrays, pH first; ``scales`` hold the reading's and the jar's own error.

    ``indexes`` point into the caller's observations; -1 stands for the reckoned start pH.
    """

    days: Floats
    values: Floats
    scales: Floats
    ph_count: int
    indexes: tuple[int, ...]

    def widened(self, factor: float) -> Readings:
        """Take every reading as less exact by a factor."""
        return replace(self, scales=self.scales * factor)

    def expected(self, jars: PossibleJars) -> Floats:
        """Give what each jar would show at these readings (draws by readings)."""
        import numpy as np

        acid = jars.acid(self.days[None, :])
        count = self.ph_count
        if count == len(self.values):
            return jars.ph(acid)
        return np.hstack([jars.ph(acid[:, :count]), jars.ta(acid[:, count:])])

    def log_likelihood(self, jars: PossibleJars) -> Floats:
        """Give each jar's log likelihood, but for a constant (Student-t, four degrees)."""
        import numpy as np

        off = (self.expected(jars) - self.values) / self.scales
        terms = np.log1p(off * off / _STUDENT_FREEDOM)
        answer: Floats = -0.5 * (_STUDENT_FREEDOM + 1.0) * terms.sum(axis=1)
        return answer


def uses_start_estimate(start_ph: Estimate | None, observations: Sequence[Observation]) -> bool:
    """Tell whether the reckoned start pH counts: only where no pH was read on day 0."""
    return start_ph is not None and not any(
        o.quantity is Quantity.PH and o.day <= START_READING_DAYS for o in observations
    )


def arranged(conditions: Conditions, observations: Sequence[Observation]) -> Readings:
    """Sort observations into arrays, with the reckoned start pH as a weak one of day 0."""
    import numpy as np

    ph_rows: list[tuple[int, float, float, float]] = []
    ta_rows: list[tuple[int, float, float, float]] = []
    start = conditions.start_ph
    if start is not None and uses_start_estimate(start, observations):
        sd = max((start.high - start.low) / (2.0 * _Z80), _START_ESTIMATE_LEAST_SD)
        ph_rows.append((-1, 0.0, start.value, math.hypot(sd, priors.PH_WOBBLE.spread)))
    for index, reading in enumerate(observations):
        if reading.quantity is Quantity.PH:
            scale = math.hypot(reading.sd, priors.PH_WOBBLE.spread)
            ph_rows.append((index, reading.day, reading.value, scale))
        elif reading.quantity is Quantity.TA_G_PER_L:
            least = max(priors.TA_WOBBLE.spread * reading.value, _LEAST_TA_SD_G_PER_L)
            ta_rows.append((index, reading.day, reading.value, max(reading.sd, least)))
    table = np.array([row[1:] for row in ph_rows + ta_rows], dtype=float).reshape(-1, 3)
    return Readings(
        days=table[:, 0],
        values=table[:, 1],
        scales=table[:, 2],
        ph_count=len(ph_rows),
        indexes=tuple(row[0] for row in ph_rows + ta_rows),
    )


def possible_jars(conditions: Conditions, latents: Floats) -> PossibleJars:
    """Turn standard normal latents into the parameters they stand for."""
    import numpy as np

    columns = latents.T[:, :, None]
    ions = _ion_prior(conditions)
    start, start_spread = _start_prior(conditions)
    log_rate, log_rate_sd = _log_rate_prior(conditions)
    start_acid = start * np.exp(start_spread * columns[0])
    share = _gluconic_share(columns[4])
    return PossibleJars(
        start_meq_per_l=start_acid,
        rate_meq_per_l_day=np.exp(log_rate + log_rate_sd * columns[1]),
        curvature=np.maximum(
            priors.CURVATURE.centre + priors.CURVATURE.spread * columns[2], _LEAST_CURVATURE
        ),
        lag_days=np.clip(
            priors.LAG_DAYS.spread * (columns[5] - _LAG_FROM_LATENT), 0.0, _LONGEST_LAG_DAYS
        ),
        ceiling_meq_per_l=souring.acid_ceiling_meq_per_l(
            start_meq_per_l=start_acid,
            sugar_g_per_l=conditions.sugar_g_per_l,
            gluconic_share=share,
        ),
        excess_meq_per_l=ions.centre * np.exp(math.log(ions.spread) * columns[3]),
        gluconic_share=share,
    )


def _ion_prior(conditions: Conditions) -> priors.Prior:
    if conditions.tea_kind is TeaKind.HERBAL:
        return priors.HERBAL_STRONG_ION_EXCESS_MEQ_PER_L
    return priors.STRONG_ION_EXCESS_MEQ_PER_L


def _start_prior(conditions: Conditions) -> tuple[float, float]:
    """Median (meq/L) and log spread of the acid the starter brought."""
    measured = conditions.starter_ta_g_per_l
    if measured is None:
        per_litre, spread = priors.STARTER_ACID_MEQ_PER_L.centre, priors.STARTER_ACID_MEQ_PER_L
    else:
        free = measured / souring.ACETIC_G_PER_MEQ
        per_litre = free + priors.STRONG_ION_EXCESS_MEQ_PER_L.centre
        spread = priors.MEASURED_STARTER_SPREAD
    median = max(conditions.starter_share * per_litre, _LEAST_START_MEQ_PER_L)
    return median, math.log(spread.spread)


def _log_rate_prior(conditions: Conditions) -> tuple[float, float]:
    """Mean and sd of the log of the rate at this temperature, surface and tea."""
    rate = priors.RATE_MEQ_PER_L_DAY
    warmth = min(conditions.temperature_c, souring.TESTED_HIGH_C)
    warmth = (warmth - souring.REFERENCE_TEMPERATURE_C) / 10.0
    per_cm = conditions.surface_cm2 / (conditions.volume_l * 1000.0)
    reach = math.log(SURFACE_REACH)
    surface = math.log(per_cm / priors.REFERENCE_SURFACE_PER_CM.centre)
    surface = min(max(surface, -reach), reach)
    mean = (
        math.log(rate.centre)
        + math.log(priors.Q10.centre) * warmth
        + priors.SURFACE_EXPONENT.centre * surface
    )
    beyond = max(
        souring.TESTED_LOW_C - conditions.temperature_c,
        conditions.temperature_c - souring.TESTED_HIGH_C,
        0.0,
    )
    sd = math.hypot(
        math.log(rate.spread),
        priors.RATE_BEYOND_TESTED_PER_10_C.spread * beyond / 10.0,
        math.log(priors.Q10.spread) * warmth,
        priors.SURFACE_EXPONENT.spread * surface,
        math.log(priors.TEA_FACTOR.spread),
    )
    return mean, sd


def _gluconic_share(latent: Floats) -> Floats:
    """Beta(2, 5) from a standard normal, by a table of both distribution functions."""
    import numpy as np

    normal, table = _gluconic_table()
    share: Floats = np.interp(latent, normal, table)
    return share


@cache
def _gluconic_table() -> tuple[Floats, Floats]:
    import numpy as np

    shares = np.linspace(0.0, 0.95, 96)
    below = 1.0 - (1.0 - shares) ** 5 * (1.0 + 5.0 * shares)
    normal = np.linspace(-4.5, 4.5, 181)
    cumulative = np.array([0.5 * math.erfc(-x / math.sqrt(2.0)) for x in normal])
    return normal, np.interp(cumulative, below, shares)
