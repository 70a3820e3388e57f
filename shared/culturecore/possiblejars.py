"""The jars that could be behind a recipe: standard normal latents made into parameters.

Latents are independent standard normals, one column a parameter; here they become acid,
rate and all the rest, by the priors and the batch's own recipe, temperature and vessel.
The first `BASE` columns are the jar, then come the pieces of its pace, then sugar.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from culturecore import pace, priors, souring
from culturecore.equivalenttime import equivalent_days, plain_day
from culturecore.stages import TeaKind

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.souringcase import Conditions

    Floats: TypeAlias = NDArray[float64]

BASE = 6  # starter acid, rate, curvature, strong ions, gluconic share, lag
RATE, CURVATURE, EXCESS = 1, 2, 3  # columns that finished batches teach something about
LAG = 5
FIRST_PACE = BASE
FIRST_SUGAR = BASE + pace.PIECES
SUGAR = 2  # ethanol, sugar used beside the acids
LATENTS = FIRST_SUGAR + SUGAR

SURFACE_REACH = 4.0  # known vessels lie within this factor of the usual surface

_LEAST_START_MEQ_PER_L = 0.5  # tea's own acids, where there is no starter at all
_LEAST_CURVATURE = 0.5
_LAG_FROM_LATENT = 0.6  # a standard normal lies above this in about one jar of four
_LONGEST_LAG_DAYS = 4.0
_ETHANOL_G_PER_L_PER_PERCENT = 7.892
_SUCROSE_PER_ETHANOL = 342.30 / (4.0 * 46.07)


@dataclass(frozen=True, slots=True, kw_only=True)
class PossibleJars:
    """Many possible jars: one value of each parameter a draw, shape (draws, 1)."""

    conditions: Conditions
    start_meq_per_l: Floats
    rate_meq_per_l_day: Floats
    curvature: Floats
    lag_days: Floats
    pace_factors: Floats
    ceiling_meq_per_l: Floats
    excess_meq_per_l: Floats
    gluconic_share: Floats
    ethanol_plateau_percent: Floats
    sugar_factor: Floats

    def acid(self, days: Floats) -> Floats:
        """Acid equivalents (meq/L), draws by days."""
        acid = self._undrawn_acid(days)
        for day, taken in self._taken():
            acid = acid - taken * (days > day)
        return acid

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

    def ethanol_percent(self, days: Floats) -> Floats:
        """Ethanol (% by volume), draws by days: it rises evenly to day 14 and stays."""
        import numpy as np

        ripe = equivalent_days(self.conditions, days) * self._warmth() / souring.ETHANOL_RISE_DAYS
        rise = np.minimum(np.maximum(ripe, 0.0), 1.0)
        kept = np.ones_like(days)
        for draw in self.conditions.drawn:
            kept = kept * np.where(days > draw.day, 1.0 - draw.share, 1.0)
        # What the starter brings and what the sugar could give bound it.
        most = self.conditions.sugar_g_per_l / _SUCROSE_PER_ETHANOL / _ETHANOL_G_PER_L_PER_PERCENT
        ethanol: Floats = np.minimum(self.ethanol_plateau_percent, most) * (rise * kept)
        return ethanol

    def sugar(self, days: Floats, acid: Floats, ethanol_percent: Floats) -> Floats:
        """All sugars left (g/L, as sucrose), draws by days, by mass balance."""
        import numpy as np

        sugar_g_per_l = np.full_like(days, self.conditions.sugar_g_per_l)
        fresh_acid = np.zeros_like(days)
        for draw in self.conditions.drawn:
            fresh = draw.sugar_g_per_l
            fresh = self.conditions.sugar_g_per_l if fresh is None else fresh
            later = days > draw.day
            mixed = (1.0 - draw.share) * sugar_g_per_l + draw.share * fresh
            sugar_g_per_l = np.where(later, mixed, sugar_g_per_l)
            fresh_acid = np.where(later, draw.share + (1.0 - draw.share) * fresh_acid, fresh_acid)
        per_meq = souring.sugar_per_meq(self.gluconic_share)
        formed = np.maximum(acid - self.start_meq_per_l * (1.0 - fresh_acid), 0.0)
        used = formed * per_meq * self.sugar_factor
        used = used + ethanol_percent * (_ETHANOL_G_PER_L_PER_PERCENT * _SUCROSE_PER_ETHANOL)
        left: Floats = np.maximum(sugar_g_per_l - used, 0.0)
        return left

    def day_of_ph(self, ph: Floats) -> Floats:
        """Day on which each jar gets down to a pH of its own (draws by 1).

        After a draw-off, the day on which it gets there again.
        """
        import numpy as np

        inside = np.clip(ph, souring.PH_FLOOR, souring.PH_CAP)
        wanted = souring.acid_of_ph(
            inside,
            gluconic_share=self.gluconic_share,
            strong_ion_excess_meq_per_l=self.excess_meq_per_l,
        )
        earliest = 0.0
        for drawn_on, taken in self._taken():
            wanted, earliest = wanted + taken, max(drawn_on, earliest)
        missing = (wanted - self.start_meq_per_l) / self.rate_meq_per_l_day
        even = pace.day_grown(
            np.maximum(missing, 0.0), self.curvature, self.lag_days, self.pace_factors
        )
        day = np.maximum(plain_day(self.conditions, even), earliest)
        day = np.where(wanted > self.ceiling_meq_per_l, np.inf, day)
        day = np.where(missing <= 0.0, earliest, day)
        never: Floats = np.where(ph < souring.PH_FLOOR, np.inf, day)
        at_once: Floats = np.where(ph >= souring.PH_CAP, earliest, never)
        return at_once

    def _undrawn_acid(self, days: Floats) -> Floats:
        import numpy as np

        even = equivalent_days(self.conditions, days)
        formed = self.rate_meq_per_l_day * pace.grown(
            even, self.curvature, self.lag_days, self.pace_factors
        )
        acid: Floats = np.minimum(self.start_meq_per_l + formed, self.ceiling_meq_per_l)
        return acid

    def _taken(self) -> list[tuple[float, Floats]]:
        """Day of each draw-off and the acid (meq/L) that the jar lost by it."""
        import numpy as np

        taken: list[tuple[float, Floats]] = []
        for draw in sorted(self.conditions.drawn, key=lambda d: d.day):
            there = self._undrawn_acid(np.array([[draw.day]]))
            there = there - sum((lost for _, lost in taken), np.zeros_like(there))
            taken.append((draw.day, draw.share * there))
        return taken

    def _warmth(self) -> float:
        warm = min(self.conditions.temperature_c, souring.TESTED_HIGH_C)
        factor: float = priors.Q10.centre ** ((warm - souring.REFERENCE_TEMPERATURE_C) / 10.0)
        return factor


def possible_jars(conditions: Conditions, latents: Floats) -> PossibleJars:
    """Turn standard normal latents (draws by `LATENTS`) into the parameters they stand for."""
    import numpy as np

    columns = latents.T[:, :, None]
    start, start_spread = _start_prior(conditions)
    log_rate, log_rate_sd = log_rate_prior(conditions)
    log_excess, log_excess_sd = log_excess_prior(conditions)
    curvature, curvature_sd = curvature_prior(conditions)
    start_acid = start * np.exp(start_spread * columns[0])
    share = _gluconic_share(columns[4])
    ethanol, sugar = priors.ETHANOL_PLATEAU_PERCENT, priors.SUGAR_BESIDE_ACIDS
    return PossibleJars(
        conditions=conditions,
        start_meq_per_l=start_acid,
        rate_meq_per_l_day=np.exp(log_rate + log_rate_sd * pace.slower(columns[RATE])),
        curvature=np.maximum(curvature + curvature_sd * columns[2], _LEAST_CURVATURE),
        lag_days=np.clip(
            priors.LAG_DAYS.spread * (columns[LAG] - _LAG_FROM_LATENT), 0.0, _LONGEST_LAG_DAYS
        ),
        pace_factors=pace.pace_factors(latents[:, FIRST_PACE:FIRST_SUGAR]),
        ceiling_meq_per_l=souring.acid_ceiling_meq_per_l(
            start_meq_per_l=start_acid,
            sugar_g_per_l=_all_sugar_g_per_l(conditions),
            gluconic_share=share,
        ),
        excess_meq_per_l=np.exp(log_excess + log_excess_sd * columns[3]),
        gluconic_share=share,
        ethanol_plateau_percent=ethanol.centre
        * np.exp(math.log(ethanol.spread) * columns[FIRST_SUGAR]),
        sugar_factor=1.0
        + (sugar.centre - 1.0) * np.exp(math.log(sugar.spread) * columns[FIRST_SUGAR + 1]),
    )


def _all_sugar_g_per_l(conditions: Conditions) -> float:
    """Sugar that the jar has had, with what draw-offs brought."""
    fresh = [
        d.share * (conditions.sugar_g_per_l if d.sugar_g_per_l is None else d.sugar_g_per_l)
        for d in conditions.drawn
    ]
    return conditions.sugar_g_per_l + sum(fresh)


def log_excess_prior(conditions: Conditions) -> tuple[float, float]:
    """Mean and sd of the log of the strong-ion excess (meq/L)."""
    herbal = conditions.tea_kind is TeaKind.HERBAL
    prior = (
        priors.HERBAL_STRONG_ION_EXCESS_MEQ_PER_L if herbal else priors.STRONG_ION_EXCESS_MEQ_PER_L
    )
    known = conditions.known
    if known is None or herbal:
        return math.log(prior.centre), math.log(prior.spread)
    return math.log(prior.centre) + known.log_excess_offset, known.log_excess_sd


def curvature_prior(conditions: Conditions) -> tuple[float, float]:
    """Mean and sd of the curvature."""
    prior, known = priors.CURVATURE, conditions.known
    if known is None:
        return prior.centre, prior.spread
    return prior.centre + known.curvature_offset, known.curvature_sd


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


def log_rate_prior(conditions: Conditions) -> tuple[float, float]:
    """Mean and sd of the log of the rate at this temperature, surface and tea."""
    rate, known = priors.RATE_MEQ_PER_L_DAY, conditions.known
    warmth = min(conditions.temperature_c, souring.TESTED_HIGH_C)
    warmth = (warmth - souring.REFERENCE_TEMPERATURE_C) / 10.0
    per_cm = conditions.surface_cm2 / (conditions.volume_l * 1000.0)
    reach = math.log(SURFACE_REACH)
    surface = math.log(per_cm / priors.REFERENCE_SURFACE_PER_CM.centre)
    surface = min(max(surface, -reach), reach)
    mean = (
        math.log(rate.centre)
        + (known.log_rate_offset if known is not None else 0.0)
        + math.log(priors.Q10.centre) * warmth
        + priors.SURFACE_EXPONENT.centre * surface
    )
    beyond = max(
        souring.TESTED_LOW_C - conditions.temperature_c,
        conditions.temperature_c - souring.TESTED_HIGH_C,
        0.0,
    )
    sd = math.hypot(
        known.log_rate_sd if known is not None else math.log(rate.spread),
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
