"""Readings as arrays, and how well each possible jar explains them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from culturecore import priors
from culturecore.outcome import Estimate
from culturecore.souringcase import Band
from culturecore.stages import Quantity, TasteMark

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.possiblejars import PossibleJars
    from culturecore.souringcase import Conditions, Observation

    Floats: TypeAlias = NDArray[float64]

START_READING_DAYS = 0.5  # a pH read by then replaces the reckoned one
STUDENT_FREEDOM = 4.0  # of the likelihood: one wild reading costs little

_START_ESTIMATE_LEAST_SD = 0.15  # a start pH that was reckoned, not read
_LEAST_TA_SD_G_PER_L = 0.1
_Z80 = 1.2815515655446004

# Sugar by refraction and by weight, first order, sources: slope of the sucrose tables near
# 5 degBx; ethanol's part from the density and index of its dilute solutions.
_BRIX_PER_G_PER_L = 0.0982
_BRIX_PER_PERCENT_ETHANOL = 0.35
_GRAVITY_PER_G_PER_L = 0.000386
_GRAVITY_PER_PERCENT_ETHANOL = -0.0014
_BRIX_DOUBT = 0.7  # acids, tea and the split sugars are read as sugar too: judgement
_GRAVITY_DOUBT = 0.003

# How far each verdict reaches, in pH: beyond these a taste is more likely another one.
_FAR_SWEETER_PH = 0.35
_FAR_SOURER_PH = 0.25
_TASTE_SD_PH = 0.2  # tongues differ from day to day, and sugar hides acid: judgement
_MISTAKEN = 0.05  # a verdict that means nothing
_ORDER = (Quantity.PH, Quantity.TA_G_PER_L, Quantity.BRIX, Quantity.SPECIFIC_GRAVITY)
SUGAR_QUANTITIES = (Quantity.BRIX, Quantity.SPECIFIC_GRAVITY)


@dataclass(frozen=True, slots=True, kw_only=True)
class Readings:
    """Observations as arrays, by quantity; ``scales`` hold the reading's and the jar's own error.

    ``indexes`` point into the caller's observations; -1 stands for the reckoned start pH.
    Tastes are kept apart: ``taste_bounds`` are the pH between which each verdict is given.
    """

    days: Floats
    values: Floats
    scales: Floats
    counts: tuple[int, int, int, int]
    indexes: tuple[int, ...]
    taste_days: Floats
    taste_bounds: Floats

    @property
    def tells_sugar(self) -> bool:
        """Whether any reading depends on sugar or ethanol."""
        return sum(self.counts[2:]) > 0

    @property
    def last_day(self) -> float:
        """Day of the last reading, 0 if there is none."""
        days = [*self.days.tolist(), *self.taste_days.tolist()]
        return max(days, default=0.0)

    def widened(self, factor: float) -> Readings:
        """Take every reading as less exact by a factor."""
        return replace(self, scales=self.scales * factor)

    def expected(self, jars: PossibleJars) -> Floats:
        """Give what each jar would show at these readings (draws by readings)."""
        import numpy as np

        acid = jars.acid(self.days[None, :])
        ph, ta, brix, _ = self.counts
        if ph == len(self.values):
            return jars.ph(acid)
        parts = [jars.ph(acid[:, :ph]), jars.ta(acid[:, ph : ph + ta])]
        if self.tells_sugar:
            days = self.days[None, ph + ta :]
            ethanol = jars.ethanol_percent(days)
            sugar = jars.sugar(days, acid[:, ph + ta :], ethanol)
            parts.append(
                _BRIX_PER_G_PER_L * sugar[:, :brix] + _BRIX_PER_PERCENT_ETHANOL * ethanol[:, :brix]
            )
            parts.append(
                1.0
                + _GRAVITY_PER_G_PER_L * sugar[:, brix:]
                + _GRAVITY_PER_PERCENT_ETHANOL * ethanol[:, brix:]
            )
        return np.hstack(parts)

    def off(self, jars: PossibleJars) -> Floats:
        """Standardised distance of each jar from each measured reading."""
        distance: Floats = (self.expected(jars) - self.values) / self.scales
        return distance

    def log_likelihood(self, jars: PossibleJars) -> Floats:
        """Give each jar's log likelihood, but for a constant (Student-t, four degrees)."""
        import numpy as np

        answer: Floats = np.zeros(len(jars.rate_meq_per_l_day))
        if len(self.values):
            off = self.off(jars)
            terms = np.log1p(off * off / STUDENT_FREEDOM).sum(axis=1)
            answer = answer - 0.5 * (STUDENT_FREEDOM + 1.0) * terms
        if len(self.taste_days):
            ph = jars.ph(jars.acid(self.taste_days[None, :]))
            above = _logistic((ph - self.taste_bounds[0]) / _TASTE_SD_PH)
            below = _logistic((ph - self.taste_bounds[1]) / _TASTE_SD_PH)
            answer = answer + np.log(_MISTAKEN + (1.0 - _MISTAKEN) * (above - below)).sum(axis=1)
        return answer


def uses_start_estimate(start_ph: Estimate | None, observations: Sequence[Observation]) -> bool:
    """Tell whether the reckoned start pH counts: only where no pH was read on day 0."""
    return start_ph is not None and not any(
        o.quantity is Quantity.PH and o.day <= START_READING_DAYS for o in observations
    )


def arranged(
    conditions: Conditions, observations: Sequence[Observation], band: Band | None = None
) -> Readings:
    """Sort observations into arrays, with the reckoned start pH as a weak one of day 0.

    ``band`` says what the maker calls sweet and sour.
    """
    import numpy as np

    rows: dict[Quantity, list[tuple[int, float, float, float]]] = {q: [] for q in _ORDER}
    tastes: list[tuple[float, float, float]] = []
    start = conditions.start_ph
    if start is not None and uses_start_estimate(start, observations):
        sd = max((start.high - start.low) / (2.0 * _Z80), _START_ESTIMATE_LEAST_SD)
        scale = math.hypot(sd, priors.PH_WOBBLE.spread)
        rows[Quantity.PH].append((-1, 0.0, start.value, scale))
    for index, reading in enumerate(observations):
        if reading.quantity is Quantity.TASTE:
            if reading.taste is not None:
                tastes.append((reading.day, *_bounds(reading.taste, band or Band())))
            continue
        rows[reading.quantity].append((index, reading.day, reading.value, _scale(reading)))
    flat = [row for quantity in _ORDER for row in rows[quantity]]
    table = np.array([row[1:] for row in flat], dtype=float).reshape(-1, 3)
    tasted = np.array(tastes, dtype=float).reshape(-1, 3)
    ph, ta, brix, gravity = (len(rows[quantity]) for quantity in _ORDER)
    return Readings(
        days=table[:, 0],
        values=table[:, 1],
        scales=table[:, 2],
        counts=(ph, ta, brix, gravity),
        indexes=tuple(row[0] for row in flat),
        taste_days=tasted[:, 0],
        taste_bounds=tasted[:, 1:].T,
    )


def _scale(reading: Observation) -> float:
    """Return the reading's error with what the jar adds to it."""
    if reading.quantity is Quantity.PH:
        return math.hypot(reading.sd, priors.PH_WOBBLE.spread)
    if reading.quantity is Quantity.TA_G_PER_L:
        least = max(priors.TA_WOBBLE.spread * reading.value, _LEAST_TA_SD_G_PER_L)
        return max(reading.sd, least)
    doubt = _BRIX_DOUBT if reading.quantity is Quantity.BRIX else _GRAVITY_DOUBT
    return math.hypot(reading.sd, doubt)


def _bounds(taste: TasteMark, band: Band) -> tuple[float, float]:
    """Lower and upper pH of a verdict."""
    sweet, sour = band.first_taste_ph, band.too_sour_ph
    edges = (math.inf, sweet + _FAR_SWEETER_PH, sweet, sour, sour - _FAR_SOURER_PH, -math.inf)
    at = list(TasteMark).index(taste)
    return edges[at + 1], edges[at]


def _logistic(x: Floats) -> Floats:
    import numpy as np

    answer: Floats = 0.5 * (1.0 + np.tanh(0.85 * x))  # 1.7 x: close to a normal of sd 1
    return answer
