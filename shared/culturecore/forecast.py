"""A forecast of one jar: what is believed of souring, sharpened by this jar's readings.

Every answer is a band or a window, never a date, and it widens when the jar behaves like
none that the priors know. The model is in `culturecore.souring`, the beliefs in
`culturecore.priors`.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from culturecore import pace, priors, souring
from culturecore.equivalenttime import warmer_by_piece
from culturecore.forecastquestion import check_question
from culturecore.modes import find_mode
from culturecore.nextreading import next_reading
from culturecore.outcome import Caveat, Estimate
from culturecore.possiblejars import (
    BASE,
    FIRST_PACE,
    FIRST_SUGAR,
    LAG,
    LATENTS,
    SURFACE_REACH,
    WARMTH,
    PossibleJars,
    possible_jars,
)
from culturecore.readingarrays import STUDENT_FREEDOM, Readings, arranged, uses_start_estimate
from culturecore.reweighting import WeightedDraws, equal_draws, reweigh
from culturecore.safety import limit
from culturecore.souringcase import (
    Band as Band,
)
from culturecore.souringcase import (
    Conditions as Conditions,
)
from culturecore.souringcase import (
    DrawOff as DrawOff,
)
from culturecore.souringcase import (
    KnownCulture as KnownCulture,
)
from culturecore.souringcase import (
    NextReading as NextReading,
)
from culturecore.souringcase import (
    Observation as Observation,
)
from culturecore.stages import Quantity, TeaKind
from culturecore.suspicion import reason
from culturecore.tastewindow import SweetnessSays, crossing, taste_window

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.random import Generator
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]

USUAL_BAND = Band()
QUANTILES = (0.1, 0.25, 0.5, 0.75, 0.9)
DAY_STEP = 0.5

_DRAWS = 1_500  # of each round
_ENOUGH_EFFECTIVE = 200.0
_A_WAIT = 1.5  # latent of a lag from which the search starts too
_KEPT_DRAWS = 800  # equal draws from which bands and windows are read
_JUDGING_DRAWS = 300  # equal draws by which readings are judged
_BLOCK = 16_000  # draws times days worked on at a time

_FEW = 4  # days' steps between which ethanol and sugar run straight
_FEW_DRAWS = 2
# What a careful maker's next reading scatters by, with the jar's own wobble.
_NEXT_SD = {Quantity.PH: 0.08, Quantity.TA_G_PER_L: 0.25}

_SUSPECT_AT = 3.5  # standardised distance from the jar's own curve
_SUSPECT_SHARE = 0.5  # when more readings than this look wrong, it is the jar that is strange
_FAR_FROM_PRIOR = 18.5  # 99 % point of chi-square with seven degrees of freedom
_POOR_FIT = 2.0  # typical standardised distance that marks a course of no known shape
_LEAST_TEMPERING = 0.5  # of the readings' weight: below this no known jar explains them
_NORMAL_MEDIAN = 0.6745  # median of the absolute value of a standard normal
_FEW_READINGS = 7
_HARDLY_EVER = 2.5  # standard deviations
_LEAST_WIDENING = 2.0
_MOST_WIDENING = 12.0
_LONGEST_KNOWN_DAYS = 20.0  # the published courses end here


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """Quantile curves over the days, the window, and how far to trust them.

    ``ph`` and ``ta_g_per_l`` map a quantile (0.1 to 0.9) to its curve over ``days``: what a
    careful reading of that day would show. The windows are None when fewer than half of the
    draws get there within the horizon; an upper bound equal to the horizon means "or later".
    ``suspects`` are indexes of observations that do not fit the rest.
    """

    days: tuple[float, ...]
    ph: dict[float, tuple[float, ...]]
    ta_g_per_l: dict[float, tuple[float, ...]]
    window_opens_day: Estimate | None
    window_closes_day: Estimate | None
    safe_ph_day: Estimate | None
    probability_safe_by_deadline: float
    effective_draws: float
    caveats: tuple[Caveat, ...]
    suspects: tuple[int, ...]
    suspect_reasons: tuple[str, ...] = ()  # one code a suspect
    ethanol_percent_vv: dict[float, tuple[float, ...]] | None = None
    sugar_g_per_l: dict[float, tuple[float, ...]] | None = None
    next_reading: NextReading | None = None
    sweetness: SweetnessSays | None = None  # what it does to the window


def forecast(
    conditions: Conditions,
    observations: Sequence[Observation],
    *,
    now_day: float | None = None,
    band: Band = USUAL_BAND,
    horizon_days: float = 35.0,
    seed: int = 20261125,
) -> Forecast:
    """Forecast a batch from its recipe and its readings.

    Parameters: days count from the moment the starter went in. ``now_day`` only decides
    whether the answer lies beyond the published courses. The same arguments give the same
    answer.

    Raises: `ImpossibleInput` for numbers that no jar can have.

    Validity: black, green, white or oolong tea at 18 to 30 degC, to day 20; beyond this
    `Caveat.EXTRAPOLATED`. If the readings look like no known jar, `Caveat.UNLIKE_KNOWN`
    comes with widened bands.

    Notes: draws around the likeliest jar, weighted by prior and a Student-t likelihood
    (nu = 4), with further rounds of importance sampling where the weights pile up. What the
    readings cannot tell (the pace of days to come) is drawn from its prior.
    """
    import numpy as np

    check_question(conditions, observations, band, now_day, horizon_days)
    readings = arranged(conditions, observations, band)
    rng = np.random.default_rng(seed)
    fitted = _weighted(conditions, readings, rng)
    judged = _judged(conditions, readings, fitted)
    widening = judged.widening
    if judged.is_unlike_known:
        fitted = _weighted(conditions, readings.widened(widening), rng, around=fitted)
    chosen = fitted.latents[equal_draws(fitted.weights, _KEPT_DRAWS)]
    jars = possible_jars(conditions, _filled(chosen, _active(conditions, readings), rng))
    days = np.arange(0.0, horizon_days + 0.5 * DAY_STEP, DAY_STEP)
    acid = jars.acid(days[None, :])
    ph_shift = rng.standard_normal((len(chosen), 1)) * priors.PH_WOBBLE.spread * widening
    ta_factor = np.exp(rng.standard_normal((len(chosen), 1)) * priors.TA_WOBBLE.spread * widening)
    columns = max(_BLOCK // _KEPT_DRAWS, 1)
    smooth = np.hstack([jars.ph(acid[:, at : at + columns]) for at in range(0, len(days), columns)])
    ph = np.clip(smooth + ph_shift, souring.PH_FLOOR, souring.PH_CAP)
    ta = jars.ta(acid) * ta_factor
    safe_days = jars.day_of_ph(limit("ph_finished_max") - ph_shift)
    opens = jars.day_of_ph(band.first_taste_ph - ph_shift)
    few = slice(None, None, _FEW)
    ethanol = jars.ethanol_percent(days[None, few])
    sugar = jars.sugar(days[None, few], acid[:, few], ethanol)
    too_sour = jars.day_of_ph(band.too_sour_ph - ph_shift)
    window = taste_window(opens, too_sour, days[few], sugar, band, horizon_days)
    shown = {Quantity.PH: ph}
    if any(o.quantity is Quantity.TA_G_PER_L for o in observations):
        shown[Quantity.TA_G_PER_L] = ta
    return Forecast(
        days=tuple(days.tolist()),
        ph=_curves(ph),
        ta_g_per_l=_curves(ta),
        window_opens_day=window.opening(horizon_days),
        window_closes_day=window.closing(horizon_days),
        safe_ph_day=crossing(safe_days, horizon_days),
        probability_safe_by_deadline=float(np.mean(safe_days <= limit("ph_deadline_days"))),
        effective_draws=min(fitted.effective_draws, float(_KEPT_DRAWS)),
        caveats=_caveats(conditions, observations, now_day, judged),
        suspects=judged.suspects,
        suspect_reasons=judged.reasons,
        ethanol_percent_vv=_stretched(ethanol, days),
        sugar_g_per_l=_stretched(sugar, days),
        next_reading=next_reading(
            shown,
            _NEXT_SD,
            days,
            np.minimum(window.opens, horizon_days),
            now_day=readings.last_day if now_day is None else max(now_day, 0.0),
            rng=rng,
        ),
        sweetness=window.sweetness,
    )


def latent_moments(
    conditions: Conditions, observations: Sequence[Observation], *, seed: int = 20261125
) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Give the means and variances of a batch's first latents, once it has been read.

    Raises: `ImpossibleInput` for numbers that no jar can have.
    """
    import numpy as np

    check_question(conditions, observations, USUAL_BAND, None, 35.0)
    readings = arranged(conditions, observations)
    fitted = _weighted(conditions, readings, np.random.default_rng(seed))
    base = fitted.latents[:, :BASE]
    means = fitted.weights @ base
    variances = fitted.weights @ np.square(base - means)
    return tuple(means.tolist()), tuple(variances.tolist())


def _active(conditions: Conditions, readings: Readings) -> list[int]:
    """Latents that these readings can tell something about; the others stay as believed."""
    active = list(range(BASE))
    if readings.indexes or len(readings.taste_days):
        begun = pace.pieces_begun(readings.last_day)
        active += range(FIRST_PACE, FIRST_PACE + begun)
    if readings.tells_sugar:
        active += range(FIRST_SUGAR, WARMTH)
    if any(warmer_by_piece(conditions, pace.PIECE_STARTS)):
        active.append(WARMTH)
    return active


def _filled(latents: Floats, active: list[int], rng: Generator | None) -> Floats:
    """Give the latents that were left out: drawn from their prior, or in its middle."""
    import numpy as np

    count = len(latents)
    everything = np.zeros((count, LATENTS)) if rng is None else _normals(rng, count)
    everything[:, active] = latents
    return everything


def _normals(rng: Generator, count: int) -> Floats:
    return rng.standard_normal((count, LATENTS))


def _weighted(
    conditions: Conditions,
    readings: Readings,
    rng: Generator,
    *,
    around: WeightedDraws | None = None,
) -> WeightedDraws:
    """Weigh draws of the prior by the readings."""
    import numpy as np

    active = _active(conditions, readings)
    rows = max(_BLOCK // max(len(readings.values), 1), 1)

    def jars_of(latents: Floats) -> PossibleJars:
        return possible_jars(conditions, _filled(latents, active, None))

    def log_likelihood(latents: Floats) -> Floats:
        # In blocks that stay in the processor's cache: twice as fast as all at once.
        blocks = [latents[at : at + rows] for at in range(0, len(latents), rows)]
        return np.concatenate([readings.log_likelihood(jars_of(block)) for block in blocks])

    mode = None
    if around is None and len(readings.values):
        starts = np.zeros((2, len(active)))
        starts[1, LAG] = _A_WAIT
        mode = find_mode(lambda latents: readings.off(jars_of(latents)), starts, STUDENT_FREEDOM)
    return reweigh(
        log_likelihood,
        dimensions=len(active),
        first_draws=_DRAWS,
        further_draws=_DRAWS,
        enough_effective=_ENOUGH_EFFECTIVE,
        rng=rng,
        around=around,
        mode=mode,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Judged:
    """Whether the readings make sense together, and with any jar that is known."""

    is_unlike_known: bool
    widening: float
    suspects: tuple[int, ...]
    reasons: tuple[str, ...] = ()


def _judged(conditions: Conditions, readings: Readings, fitted: WeightedDraws) -> _Judged:
    """Judge the readings by the jars they were fitted with."""
    import numpy as np

    if not readings.indexes:
        return _Judged(is_unlike_known=False, widening=1.0, suspects=())
    latents = fitted.latents[equal_draws(fitted.weights, _JUDGING_DRAWS)]
    latents = _filled(latents, _active(conditions, readings), None)
    expected = readings.expected(possible_jars(conditions, latents))
    middle = np.median(expected, axis=0)
    off = np.abs(readings.values - middle)
    distance = off / np.hypot(readings.scales, expected.std(axis=0))
    wrong = distance > _SUSPECT_AT
    typical = _typical_distance(off / readings.scales)
    from_prior = float(np.square(fitted.weights @ fitted.latents[:, :BASE]).sum())
    unlike = (
        from_prior > _FAR_FROM_PRIOR
        or typical > _POOR_FIT
        or float(wrong.mean()) > _SUSPECT_SHARE
        or fitted.tempering < _LEAST_TEMPERING
    )
    widening = min(max(typical, _LEAST_WIDENING), _MOST_WIDENING) if unlike else 1.0
    suspects = {
        index: reason(readings, at, middle)
        for at, index in enumerate(readings.indexes)
        if wrong[at] and index >= 0
    }
    return _Judged(
        is_unlike_known=unlike,
        widening=widening,
        suspects=tuple(sorted(suspects)),
        reasons=tuple(suspects[index] for index in sorted(suspects)),
    )


def _typical_distance(distances: Floats) -> float:
    """Robust standard deviation of standardised distances; about 1 where all is well.

    A few readings have no spread to speak of: there the farthest but one (which may be a
    slip) counts, against the distance that a fitting reading hardly ever shows.
    """
    import numpy as np

    if len(distances) < _FEW_READINGS:
        return float(np.sort(distances)[-2:][0]) / _HARDLY_EVER
    return float(np.median(distances)) / _NORMAL_MEDIAN


def _curves(values: Floats) -> dict[float, tuple[float, ...]]:
    """Quantile curves over the days from draws by days."""
    import numpy as np

    by_day = np.quantile(np.ascontiguousarray(values.T), QUANTILES, axis=1)
    return {q: tuple(curve.tolist()) for q, curve in zip(QUANTILES, by_day, strict=True)}


def _stretched(values: Floats, days: Floats) -> dict[float, tuple[float, ...]]:
    """Quantile curves over all days of values that were worked out for every few of them."""
    import numpy as np

    some = days[::_FEW]
    by_day = np.quantile(values[::_FEW_DRAWS].T.copy(), QUANTILES, axis=1)
    return {
        q: tuple(np.interp(days, some, curve).tolist())
        for q, curve in zip(QUANTILES, by_day, strict=True)
    }


def _caveats(
    conditions: Conditions,
    observations: Sequence[Observation],
    now_day: float | None,
    judged: _Judged,
) -> tuple[Caveat, ...]:
    """Collect why this forecast is weaker than its digits suggest."""
    found: list[Caveat] = []
    start = conditions.start_ph
    if not observations and start is None:
        found.append(Caveat.RECIPE_ONLY)
    if not observations and conditions.starter_ta_g_per_l is None:
        found.append(Caveat.STARTER_ACID_ASSUMED)
    if start is not None and uses_start_estimate(start, observations):
        found.extend(start.caveats)
    if conditions.tea_kind is TeaKind.HERBAL:
        found.append(Caveat.TEA_ASSUMED)
    if _is_extrapolated(conditions, observations, now_day):
        found.append(Caveat.EXTRAPOLATED)
    if judged.is_unlike_known:
        found.append(Caveat.UNLIKE_KNOWN)
    return tuple(dict.fromkeys(found))


def _is_extrapolated(
    conditions: Conditions, observations: Sequence[Observation], now_day: float | None
) -> bool:
    """Tell whether temperature, vessel or age lies outside what was ever published."""
    warm = souring.TESTED_LOW_C <= conditions.temperature_c <= souring.TESTED_HIGH_C
    per_cm = conditions.surface_cm2 / (conditions.volume_l * 1000.0)
    surface = abs(math.log(per_cm / priors.REFERENCE_SURFACE_PER_CM.centre))
    last_day = max([now_day or 0.0, *(o.day for o in observations)])
    return not warm or surface > math.log(SURFACE_REACH) or last_day > _LONGEST_KNOWN_DAYS
