"""The film on top: when it first shows and how thick it gets, with wide bounds.

Nobody has published thickness against days for jars like these, so the pace is an assumption
fenced in by the few figures there are; the jar's own readings soon outweigh it.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from culturecore import priors, souring
from culturecore.equivalenttime import equivalent_days, plain_day
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Caveat, Estimate
from culturecore.possiblejars import in_single_precision
from culturecore.quantilecurves import QUANTILES as QUANTILES
from culturecore.quantilecurves import even_normals, quantiles
from culturecore.reweighting import equal_draws
from culturecore.sources import Source, Standing

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.souringcase import Conditions

    Floats: TypeAlias = NDArray[float64]

FILM_SOURCES: Final[dict[str, Source]] = {
    "huang_2022": Source(
        "huang_2022",
        "Huang, Xin and Lu 2022, eLife 11:76401: from washed cells, no pellicle added, a film "
        "can be seen only after day 6",
        Standing.READ,
    ),
    "coatings_2020": Source(
        "coatings_2020",
        "Coatings 2020, 10(11):1132, abstract: films from two kombucha consortia in green tea "
        "were observed between days 6 and 9",
        Standing.READ,
    ),
    "agustina_boontawan_2026": Source(
        "agustina_boontawan_2026",
        "Agustina and Boontawan 2026, Trends Sci. 23(2):11128, abstract: 74.53 to 259.54 g/L wet "
        "after 15 d at about 30 °C, 10 % culture",
        Standing.READ,
    ),
    "upm_2024": Source(
        "upm_2024",
        "Processes 2024, 12(7):1301, abstract: Gompertz growth, fastest 7.3 to 10.0 g/L a day wet",
        Standing.READ,
    ),
    "film_assumption": Source(
        "film_assumption",
        "Chosen: 5-10 d to a first film from raw kombucha alone, 3-5 d with lively starter, "
        "3-5 mm after 2-3 weeks at 25 °C",
        Standing.ASSUMPTION,
    ),
}

REFERENCE_C = 25.0
# Days to a first film at 25 °C, as the 80 % bounds of what is believed.
FIRST_FILM_RAW_DAYS = (5.0, 10.0)
FIRST_FILM_LIVELY_DAYS = (3.0, 5.0)
LIVELY_SHARE = 0.10  # with this much lively starter it begins as fast as it can
FIRST_FILM_MM = 0.1  # a skin; less is not seen
# A film grows where the air is, so its pace is a thickness a day, whatever lies below it.
GROWTH_MM_PER_DAY = 0.32
GROWTH_FACTOR = 1.9
# What the liquid can feed in all (wet); a shallow jar runs out sooner.
MOST_WET_G_PER_L = 140.0
MOST_WET_FACTOR = 1.6
WET_DENSITY_G_PER_CM3 = 1.0  # about one part in a hundred is cellulose, the rest is liquid
USABLE_MM = 3.0
LATE_SHARE = 0.95  # of like jars show a film by the day from which its absence is a worry

DAY_STEP = 1.0
_UNEVEN_MM, _UNEVEN_SHARE = 0.3, 0.2  # a film is no sheet of glass: how far readings scatter
_DRAWS = 4_000  # that readings weigh
_KEPT_DRAWS = 1_200  # equal ones from which the bands are read
_LEAST_EFFECTIVE = 60.0
_Z80 = 1.2816  # 90 % point of the standard normal
_MOST_MM = 200.0


@dataclass(frozen=True, slots=True, kw_only=True)
class FilmReading:
    """A thickness (mm) measured on a day; 0 where no film was to be seen."""

    day: float
    thickness_mm: float
    sd_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class FilmForecast:
    """The film's thickness over the days, and the days that matter.

    ``thickness_mm`` maps a quantile (0.1 to 0.9) to its curve over ``days``.
    ``late_day`` is the day by which 95 of 100 like jars show a film.
    """

    days: tuple[float, ...]
    thickness_mm: dict[float, tuple[float, ...]]
    first_film_day: Estimate
    usable_day: Estimate | None
    late_day: float


def wet_thickness_mm(wet_g_per_l: float, volume_l: float, surface_cm2: float) -> float:
    """Turn a film's wet mass (g per litre of liquid) into its thickness over the surface.

    Raises: `ImpossibleInput` for a mass, volume or surface that no jar has.
    """
    _within("wet_g_per_l", wet_g_per_l, 0.0, 1000.0, "g/L")
    _within("volume_l", volume_l, 0.01, 10_000.0, "L")
    _within("surface_cm2", surface_cm2, 0.1, 1e6, "cm2")
    return 10.0 * wet_g_per_l * volume_l / (WET_DENSITY_G_PER_CM3 * surface_cm2)


def film_forecast(
    conditions: Conditions,
    readings: Sequence[FilmReading] = (),
    *,
    is_lively: bool,
    old_pellicle_mm: float = 0.0,
    horizon_days: float = 35.0,
    seed: int = 20261125,
) -> FilmForecast:
    """Forecast the new film of a jar from its surface, its warmth and its own readings.

    Parameters: ``is_lively`` tells a culture at work from raw kombucha alone;
    ``old_pellicle_mm`` is the pellicle that went in. A reading may be of the new film or of
    both together, which a ruler cannot tell, so both are held possible.

    Raises: `ImpossibleInput` for numbers that no jar can have.

    Validity: black, green, white or oolong tea at 18 to 30 degC. Outside, and as long as
    there is no reading, take it as an order of magnitude.
    """
    import numpy as np

    _check(conditions, readings, old_pellicle_mm, horizon_days)
    films = _possible_films(conditions, is_lively, even_normals(seed, _KEPT_DRAWS, 3).T)
    late = float(np.quantile(films[0], LATE_SHARE))
    if readings:
        many = _possible_films(conditions, is_lively, even_normals(seed, _DRAWS, 3).T)
        weights = _weights(conditions, readings, many, old_pellicle_mm)
        films = many[:, equal_draws(weights, _KEPT_DRAWS)]
    onset, pace, most = films
    days = np.arange(0.0, horizon_days + 0.5 * DAY_STEP, DAY_STEP)
    clock = in_single_precision(_clock(conditions, days))[:, None]
    by_day = quantiles(_thickness(clock, *in_single_precision(films)), QUANTILES)
    rising = np.maximum.accumulate(by_day, axis=1)
    to_usable = onset + np.where(
        most > USABLE_MM, -most / pace * np.log1p(-np.minimum(USABLE_MM / most, 0.999)), np.inf
    )
    return FilmForecast(
        days=tuple(days.tolist()),
        thickness_mm={q: tuple(mm.tolist()) for q, mm in zip(QUANTILES, rising, strict=True)},
        first_film_day=_day(conditions, onset, readings),
        usable_day=_usable(conditions, to_usable, horizon_days, readings),
        late_day=float(_plain(conditions, np.array([late]))[0]),
    )


def _possible_films(conditions: Conditions, is_lively: bool, normals: Floats) -> Floats:
    """Draw first days, paces and greatest thicknesses (three rows), in days of 25 degC and mm."""
    import numpy as np

    lively = min(conditions.starter_share / LIVELY_SHARE, 1.0) if is_lively else 0.0
    low, high = (
        raw ** (1.0 - lively) * quick**lively
        for raw, quick in zip(FIRST_FILM_RAW_DAYS, FIRST_FILM_LIVELY_DAYS, strict=True)
    )
    middle, spread = 0.5 * math.log(low * high), math.log(high / low) / (2.0 * _Z80)
    most = wet_thickness_mm(MOST_WET_G_PER_L, conditions.volume_l, conditions.surface_cm2)
    onset = np.exp(middle + spread * normals[0])
    pace = GROWTH_MM_PER_DAY * GROWTH_FACTOR ** normals[1]
    return np.array([onset, pace, most * MOST_WET_FACTOR ** normals[2]])


def _thickness(day: float | Floats, onset: Floats, pace: Floats, most: Floats) -> Floats:
    """Thickness on a day of 25 degC: steady at first, slower as the liquid is used up."""
    import numpy as np

    grown: Floats = -most * np.expm1(-pace * np.maximum(day - onset, 0.0) / most)
    return grown


def _clock(conditions: Conditions, days: Floats) -> Floats:
    """Turn days into days of 25 degC."""
    factor = souring.temperature_factor(conditions.temperature_c, priors.Q10.centre)
    answer: Floats = equivalent_days(conditions, days) * factor
    return answer


def _plain(conditions: Conditions, even_days: Floats) -> Floats:
    """Turn days of 25 degC back into days."""
    factor = souring.temperature_factor(conditions.temperature_c, priors.Q10.centre)
    return plain_day(conditions, even_days / factor)


def _weights(
    conditions: Conditions,
    readings: Sequence[FilmReading],
    films: Floats,
    old_pellicle_mm: float,
) -> Floats:
    """Weigh the possible films by the readings; flattened where hardly any film fits them."""
    import numpy as np

    onset, pace, most = films
    log_weight = np.zeros(len(onset))
    for reading in readings:
        even = float(_clock(conditions, np.array([max(reading.day, 0.0)]))[0])
        film = _thickness(even, onset, pace, most)
        near = [_nearness(reading, film)]
        if old_pellicle_mm > 0.0:
            near.append(_nearness(reading, film + old_pellicle_mm))
        log_weight += np.log(np.mean(near, axis=0) + 1e-12)
    power = 1.0
    while True:
        weights: Floats = np.exp(power * (log_weight - log_weight.max()))
        weights /= weights.sum()
        if 1.0 / float(np.square(weights).sum()) >= _LEAST_EFFECTIVE:
            return weights
        power *= 0.5


def _nearness(reading: FilmReading, film: Floats) -> Floats:
    """Chance density of a reading for each film; a film hardly seen counts as none."""
    import numpy as np

    seen = np.where(film < FIRST_FILM_MM, 0.0, film)
    scale = np.hypot(reading.sd_mm, _UNEVEN_MM + _UNEVEN_SHARE * seen)
    off = (reading.thickness_mm - seen) / scale
    density: Floats = np.exp(-0.5 * np.square(off)) / scale
    return density


def _day(conditions: Conditions, even_days: Floats, readings: Sequence[FilmReading]) -> Estimate:
    import numpy as np

    low, middle, high = np.quantile(_plain(conditions, even_days), (0.1, 0.5, 0.9)).tolist()
    return Estimate(
        value=middle,
        low=low,
        high=high,
        caveats=() if readings else (Caveat.RECIPE_ONLY,),
        sources=tuple(FILM_SOURCES),
    )


def _usable(
    conditions: Conditions,
    even_days: Floats,
    horizon_days: float,
    readings: Sequence[FilmReading],
) -> Estimate | None:
    """Tell when it is thick enough to be used, or None if most films are not so in time."""
    import numpy as np

    horizon = float(_clock(conditions, np.array([horizon_days]))[0])
    found = _day(conditions, np.minimum(even_days, horizon), readings)
    return found if found.value < horizon_days else None


def _check(
    conditions: Conditions,
    readings: Sequence[FilmReading],
    old_pellicle_mm: float,
    horizon_days: float,
) -> None:
    _within("temperature_c", conditions.temperature_c, 0.0, 60.0, "degC")
    _within("starter_share", conditions.starter_share, 0.0, 1.0, "")
    _within("pellicle_mm", old_pellicle_mm, 0.0, _MOST_MM, "mm")
    _within("horizon_days", horizon_days, 1.0, 400.0, "days")
    for reading in readings:
        _within("day", reading.day, -1.0, 4000.0, "days")
        _within("pellicle_mm", reading.thickness_mm, 0.0, _MOST_MM, "mm")
        _within("sd", reading.sd_mm, 0.0, 100.0, "mm")


def _within(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not math.isfinite(value) or not low <= value <= high:
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
