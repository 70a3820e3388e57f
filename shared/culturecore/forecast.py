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

from culturecore import priors, souring
from culturecore.forecastquestion import check_question
from culturecore.jarfit import Judged, active_latents, filled, judged, keep_freed_memory, weighted
from culturecore.nextreading import next_reading
from culturecore.outcome import Caveat, Estimate
from culturecore.possiblejars import BASE, LATENTS, SURFACE_REACH, PossibleJars, possible_jars
from culturecore.quantilecurves import QUANTILES as QUANTILES
from culturecore.quantilecurves import all_days, curves, even_normals, telling_days
from culturecore.readingarrays import arranged, uses_start_estimate
from culturecore.reweighting import equal_draws
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
from culturecore.tastewindow import SweetnessSays, crossing, taste_window

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[float64]

USUAL_BAND = Band()
_NOISES = 4  # of pH, of acidity, and of a next reading of either

_KEPT_DRAWS = 600  # equal draws from which bands and windows are read
_FEW_DRAWS = 2  # of which every so many tell ethanol and sugar
_FEW = 4  # days' steps between which ethanol and sugar run straight
# What a careful maker's next reading scatters by, with the jar's own wobble.
_NEXT_SD = {Quantity.PH: 0.08, Quantity.TA_G_PER_L: 0.25}
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
    keep_freed_memory()
    readings = arranged(conditions, observations, band)
    rng = np.random.default_rng(seed)
    fitted = weighted(conditions, readings, rng)
    found = judged(conditions, readings, fitted)
    if found.is_unlike_known:
        fitted = weighted(conditions, readings.widened(found.widening), rng, around=fitted)
    normals = even_normals(seed, _KEPT_DRAWS, LATENTS + _NOISES)
    chosen = fitted.latents[equal_draws(fitted.weights, _KEPT_DRAWS)]
    jars = possible_jars(
        conditions, filled(chosen, active_latents(conditions, readings), normals[:, :LATENTS])
    )
    noise = normals[:, LATENTS:, None]
    ph_shift = noise[:, 0] * (priors.PH_WOBBLE.spread * found.widening)
    ta_factor = np.exp(noise[:, 1] * (priors.TA_WOBBLE.spread * found.widening))
    days = all_days(horizon_days)
    shown = _shown(jars, days, ph_shift, ta_factor)
    levels = (limit("ph_finished_max"), band.first_taste_ph, band.too_sour_ph)
    safe_days, opens, too_sour = jars.day_of_ph(np.array(levels) - ph_shift).T
    window = taste_window(opens, too_sour, shown.few_days, shown.sugar, band, horizon_days)
    tells_next = {Quantity.PH: shown.ph}
    if any(o.quantity is Quantity.TA_G_PER_L for o in observations):
        tells_next[Quantity.TA_G_PER_L] = shown.ta
    return Forecast(
        days=days,
        ph=curves(shown.ph, shown.days, days),
        ta_g_per_l=curves(shown.ta, shown.days, days),
        window_opens_day=window.opening(horizon_days),
        window_closes_day=window.closing(horizon_days),
        safe_ph_day=crossing(safe_days, horizon_days),
        probability_safe_by_deadline=float(np.mean(safe_days <= limit("ph_deadline_days"))),
        effective_draws=min(fitted.effective_draws, float(_KEPT_DRAWS)),
        caveats=_caveats(conditions, observations, now_day, found),
        suspects=found.suspects,
        suspect_reasons=found.reasons,
        ethanol_percent_vv=curves(shown.ethanol[::_FEW_DRAWS], shown.few_days, days),
        sugar_g_per_l=curves(shown.sugar[::_FEW_DRAWS], shown.few_days, days),
        next_reading=next_reading(
            tells_next,
            _NEXT_SD,
            shown.days,
            np.minimum(window.opens, horizon_days),
            now_day=readings.last_day if now_day is None else max(now_day, 0.0),
            noise=noise[:, 2:, 0],
        ),
        sweetness=window.sweetness,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Shown:
    """What the possible jars would show, jars by days."""

    days: Floats
    ph: Floats
    ta: Floats
    few_days: Floats
    ethanol: Floats
    sugar: Floats


def _shown(
    jars: PossibleJars, days: tuple[float, ...], ph_shift: Floats, ta_factor: Floats
) -> _Shown:
    """Work out the course of each jar, in single precision."""
    import numpy as np

    single = jars.in_single_precision()
    some = telling_days(days, is_smooth=not jars.conditions.drawn)
    few = np.array(days[::_FEW])
    acid = single.acid(some[None, :])
    ph = single.ph(acid) + ph_shift.astype(acid.dtype)
    ethanol = single.ethanol_percent(few[None, :])
    return _Shown(
        days=some,
        ph=np.minimum(np.maximum(ph, souring.PH_FLOOR), souring.PH_CAP),
        ta=single.ta(acid) * ta_factor.astype(acid.dtype),
        few_days=few,
        ethanol=ethanol,
        sugar=single.sugar(few[None, :], single.acid(few[None, :]), ethanol),
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
    fitted = weighted(conditions, readings, np.random.default_rng(seed))
    base = fitted.latents[:, :BASE]
    means = fitted.weights @ base
    variances = fitted.weights @ np.square(base - means)
    return tuple(means.tolist()), tuple(variances.tolist())


def _caveats(
    conditions: Conditions,
    observations: Sequence[Observation],
    now_day: float | None,
    verdict: Judged,
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
    if verdict.is_unlike_known:
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
