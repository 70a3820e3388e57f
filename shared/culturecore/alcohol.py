"""How much alcohol a brew may hold, from sugar or from two instruments: always a range.

Neither way can settle a legal threshold. Only a laboratory can (headspace gas
chromatography, AOAC 2016.12); what is given here is an estimate and says so.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from culturecore import safety
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.ethanol import (
    ACETIC_PER_ETHANOL,
    ETHANOL_G_PER_ML,
    SugarKind,
    abv_from_g_per_l,
    abv_from_mass_percent,
    density_kg_per_l,
    ethanol_g_per_g,
)
from culturecore.outcome import Caveat, Estimate, Level, Verdict
from culturecore.sugar import sg_from_brix

# lorentz_lorenz_ethanol: a percent by mass of each on a refractometer [°Bx], and the
# density of dilute acetic acid
BRIX_PER_ETHANOL_PERCENT: Final = 0.45
BRIX_PER_ACID_PERCENT: Final = 0.49
SG_PER_ACID_PERCENT: Final = 0.0014
MODEL_DOUBT_ABV: Final = 0.5  # acids and leaf count as sugar; at best, assumption
_YEAST_YIELD_LOW = 0.9  # bottle_yeast_assumption
_LEAST_SHARE_TO_YEAST = 0.5  # the glucose half of the sugar may all turn to gluconic acid
_NEAR_SHARE = 0.8  # of the threshold; safety_choice

# The thresholds a maker may choose from: keys of safety.LIMITS.
THRESHOLD_KEYS: Final = (
    "abv_us",
    "abv_canada",
    "abv_canada_provinces",
    "abv_bc_ontario",
    "abv_anz_statement",
    "abv_anz_soft_drink",
    "abv_eu_statement",
    "abv_uk_low",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class TwoReadings:
    """A hydrometer and a refractometer in the same degassed sample, both at 20 degC."""

    specific_gravity: float
    brix: float
    specific_gravity_sd: float = 0.001
    brix_sd: float = 0.2
    acid_g_per_l: float = 0.0


def from_sugar(
    *,
    start_sugar_g_per_l: float,
    left_sugar_low_g_per_l: float,
    left_sugar_high_g_per_l: float,
    acid_formed_g_per_l: float = 0.0,
) -> Estimate:
    """Return the range of alcohol that the lost sugar can have left behind [% vol].

    Parameters
    ----------
    start_sugar_g_per_l : float
        Sucrose at the start [g/L of brew], 0 to 300.
    left_sugar_low_g_per_l, left_sugar_high_g_per_l : float
        Bounds of the sugar still there [g/L]; 0 and the start sugar if nothing is known.
    acid_formed_g_per_l : float
        Titratable acidity formed, as acetic acid [g/L], 0 to 60.

    Returns
    -------
    Estimate
        High: all lost sugar became ethanol and none of the acid came from it. Low: half
        the lost sugar at 90 % yield, less the ethanol that all the acid would have taken.
        Value: midway. The sugar that the culture built itself from is left out.

    Raises
    ------
    ImpossibleInput
        Outside the ranges, or with more sugar left than there was.

    Notes
    -----
    stoichiometry: 0.5383 g ethanol a gram of sucrose, 1.3035 g acetic acid a gram of it.
    """
    _check("start_sugar_g_per_l", start_sugar_g_per_l, 0.0, 300.0, "g/L")
    _check("left_sugar_low_g_per_l", left_sugar_low_g_per_l, 0.0, start_sugar_g_per_l, "g/L")
    _check(
        "left_sugar_high_g_per_l",
        left_sugar_high_g_per_l,
        left_sugar_low_g_per_l,
        start_sugar_g_per_l,
        "g/L",
    )
    _check("acid_formed_g_per_l", acid_formed_g_per_l, 0.0, 60.0, "g/L")
    per_g = ethanol_g_per_g(SugarKind.SUCROSE)
    most = (start_sugar_g_per_l - left_sugar_low_g_per_l) * per_g
    surely_lost = start_sugar_g_per_l - left_sugar_high_g_per_l
    made = surely_lost * per_g * _YEAST_YIELD_LOW * _LEAST_SHARE_TO_YEAST
    least = max(made - acid_formed_g_per_l / ACETIC_PER_ETHANOL, 0.0)
    low, high = abv_from_g_per_l(least), abv_from_g_per_l(most)
    sources = ("stoichiometry", "bottle_yeast_assumption")
    return Estimate((low + high) / 2.0, low, high, sources=sources)


def from_two_readings(readings: TwoReadings) -> Estimate:
    """Return alcohol from a hydrometer and a refractometer together [% vol].

    Sugar raises both readings, ethanol raises one and lowers the other: two equations for
    two unknowns. Acids count as sugar in both, nearly; an acidity that was measured is taken
    out with half its size as doubt.

    Parameters
    ----------
    readings : TwoReadings
        Gravity 0.98 to 1.15, 0 to 35 °Bx, standard uncertainties above 0, acid 0 to 60 g/L.

    Returns
    -------
    Estimate
        80 % range from the instruments, and at least 0.5 % vol either way; never below 0.
        Caveat.UNLIKE_KNOWN: a brew is not the sugar water the equations are for.

    Raises
    ------
    ImpossibleInput
        Outside the ranges; "readings_disagree" when no drink reads so.

    Notes
    -----
    Sources: emmerich_icumsa for sugar, oiml_r22 for ethanol's density,
    lorentz_lorenz_ethanol for its refraction and for the acid.
    """
    _check_readings(readings)
    acid_percent = readings.acid_g_per_l / 10.0
    brix = max(readings.brix - BRIX_PER_ACID_PERCENT * acid_percent, 0.0)
    gravity = readings.specific_gravity - SG_PER_ACID_PERCENT * acid_percent
    per_percent = _gravity_lost_per_percent(brix)
    ethanol_percent = (sg_from_brix(brix) - gravity) / per_percent
    sugar_step = sg_from_brix(brix + 1.0) - sg_from_brix(brix)
    sd = math.hypot(sugar_step * readings.brix_sd, readings.specific_gravity_sd) / per_percent
    acid_doubt = (
        abs(sugar_step * BRIX_PER_ACID_PERCENT - SG_PER_ACID_PERCENT) * acid_percent / per_percent
    )
    spread = math.hypot(1.2816 * sd, MODEL_DOUBT_ABV * ETHANOL_G_PER_ML, acid_doubt / 2.0)
    low, high = ethanol_percent - spread, ethanol_percent + spread
    if high < 0.0 or low > 15.0:
        raise ImpossibleInput(
            "specific_gravity", readings.specific_gravity, reason="readings_disagree"
        )
    return Estimate(
        _told_abv(ethanol_percent),
        _told_abv(low),
        _told_abv(high),
        caveats=(Caveat.UNLIKE_KNOWN,),
        sources=("emmerich_icumsa", "oiml_r22", "lorentz_lorenz_ethanol"),
    )


def readings_of(*, sugar_percent: float, ethanol_percent: float) -> tuple[float, float]:
    """Return what hydrometer and refractometer read in sugar, ethanol and water.

    Parameters
    ----------
    sugar_percent, ethanol_percent : float
        By mass, 0 to 30 and 0 to 15.

    Returns
    -------
    tuple of float
        Specific gravity 20/20 and degrees Brix.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.
    """
    _check("sugar_percent", sugar_percent, 0.0, 30.0, "%")
    _check("ethanol_percent", ethanol_percent, 0.0, 15.0, "%")
    of_ethanol = density_kg_per_l(ethanol_percent) / density_kg_per_l(0.0) - 1.0
    return (
        sg_from_brix(sugar_percent) + of_ethanol,
        sugar_percent + BRIX_PER_ETHANOL_PERCENT * ethanol_percent,
    )


def threshold_verdict(abv: Estimate, threshold_key: str) -> Verdict:
    """Judge how near an estimate comes to a threshold that the maker chose.

    Parameters
    ----------
    abv : Estimate
        Alcohol [% vol] with its bounds.
    threshold_key : str
        One of :data:`THRESHOLD_KEYS`.

    Returns
    -------
    Verdict
        WARN "alcohol_likely_over" when even the low end reaches it, WARN
        "alcohol_may_be_over" when the high end comes within a fifth of it, else INFORM
        "alcohol_likely_below". None of them certifies anything.

    Raises
    ------
    NotAssessed
        "alcohol_unknown" when the estimate has no number.
    ImpossibleInput
        For a key that is not among the thresholds.
    """
    if threshold_key not in THRESHOLD_KEYS:
        raise ImpossibleInput("threshold_key", threshold_key, reason="not_offered")
    if any(math.isnan(number) for number in (abv.value, abv.low, abv.high)):
        raise NotAssessed("alcohol_unknown")
    threshold = safety.LIMITS[threshold_key]
    numbers = {"low_abv": abv.low, "high_abv": abv.high, "threshold_abv": threshold.value}
    if abv.low >= threshold.value:
        return Verdict("alcohol_likely_over", Level.WARN, numbers, threshold.source_keys)
    if abv.high >= _NEAR_SHARE * threshold.value:
        return Verdict("alcohol_may_be_over", Level.WARN, numbers, threshold.source_keys)
    return Verdict("alcohol_likely_below", Level.INFORM, numbers, threshold.source_keys)


VERDICT_CODES: Final = frozenset(
    {"alcohol_likely_over", "alcohol_may_be_over", "alcohol_likely_below"}
)


def _gravity_lost_per_percent(brix: float) -> float:
    """Return by how much a percent of ethanol puts the two instruments apart [SG]."""
    sugar_step = sg_from_brix(brix + 1.0) - sg_from_brix(brix)
    ethanol_step = 1.0 - density_kg_per_l(1.0) / density_kg_per_l(0.0)
    return BRIX_PER_ETHANOL_PERCENT * sugar_step + ethanol_step


def _told_abv(mass_percent: float) -> float:
    return abv_from_mass_percent(min(max(mass_percent, 0.0), 100.0))


def _check_readings(readings: TwoReadings) -> None:
    _check("specific_gravity", readings.specific_gravity, 0.98, 1.15, "SG")
    _check("brix", readings.brix, 0.0, 35.0, "°Bx")
    _check("specific_gravity_sd", readings.specific_gravity_sd, 1e-5, 0.05, "SG")
    _check("brix_sd", readings.brix_sd, 1e-3, 5.0, "°Bx")
    _check("acid_g_per_l", readings.acid_g_per_l, 0.0, 60.0, "g/L")


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
