"""Verdicts on the finished drink: how sour, how kept, how much, for whom; and on cleaning.

As in safety: nothing is called safe, what is not known is not assessed, and the doubt of a
reading counts against the maker.
"""

from __future__ import annotations

import math
from typing import Final

from culturecore.constants import FLUID_OUNCE_L
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.safety import LIMITS, limit

VERDICT_CODES: Final = frozenset(
    {
        "finished_ph_high", "finished_ph_needs_meter", "finished_ph_over_acid",
        "finished_ph_within", "storage_cold", "storage_warm", "keeping_short", "keeping_long",
        "serving_small", "serving_large", "not_for_everyone", "flavour_fresh", "flavour_heated",
        "pasteurise_sealed", "pasteurise_cool", "pasteurise_hot", "chlorine_within",
        "chlorine_strong", "caffeine_within", "caffeine_much",
    }
)  # fmt: skip


def finished_ph_verdict(ph: float, sd: float, *, by_strip: bool = False) -> Verdict:
    """Judge the pH of a drink that is to be drunk or bottled, flavouring included.

    Parameters
    ----------
    ph : float
        The reading, 0 to 14.
    sd : float
        Its standard uncertainty, 0 to 5: ph + sd must not pass 4.2, nor ph - sd fall
        below 2.5.
    by_strip : bool
        A strip alone is not taken above 4.0 (21 CFR 114.80, by analogy).

    Raises
    ------
    NotAssessed
        "ph_unknown", "uncertainty_unknown" for NaN.
    ImpossibleInput
        Outside the ranges.
    """
    _known(ph, "ph_unknown")
    _known(sd, "uncertainty_unknown")
    _check("ph", ph, 0.0, 14.0, "pH")
    _check("sd", sd, 0.0, 5.0, "pH")
    most, least, strip = (
        limit("ph_finished_max"),
        limit("ph_finished_min"),
        limit("ph_strip_max"),
    )
    numbers = {"ph": ph, "sd": sd, "limit": most}
    if ph + sd > most + 1e-9:  # 3.9 + 0.3 counts as 4.2 in spite of binary fractions
        return Verdict("finished_ph_high", Level.STOP, numbers, _sources("ph_finished_max"))
    if by_strip and ph > strip:
        numbers["limit"] = strip
        return Verdict("finished_ph_needs_meter", Level.STOP, numbers, _sources("ph_strip_max"))
    if ph - sd < least - 1e-9:
        numbers["limit"] = least
        return Verdict("finished_ph_over_acid", Level.WARN, numbers, _sources("ph_finished_min"))
    return Verdict("finished_ph_within", Level.INFORM, numbers, _sources("ph_finished_max"))


def storage_verdict(temperature_c: float, sd_c: float = 0.0) -> Verdict:
    """Judge where the drink is kept: temperature plus doubt at most 5 degC.

    Raises
    ------
    NotAssessed
        "temperature_unknown" for NaN.
    ImpossibleInput
        Outside -20 to 60 degC, or for a doubt outside 0 to 10 degC.
    """
    _known(temperature_c, "temperature_unknown")
    _known(sd_c, "uncertainty_unknown")
    _check("temperature_c", temperature_c, -20.0, 60.0, "°C")
    _check("sd_c", sd_c, 0.0, 10.0, "°C")
    numbers = {"temperature_c": temperature_c, "limit_c": limit("cold_max_c")}
    if temperature_c + sd_c > numbers["limit_c"]:
        return Verdict("storage_warm", Level.WARN, numbers, _sources("cold_max_c"))
    return Verdict("storage_cold", Level.INFORM, numbers, _sources("cold_max_c"))


def keeping_verdict(days: float) -> Verdict:
    """Judge how many days a drink has been kept cold.

    Raises
    ------
    NotAssessed
        "time_unknown" for NaN.
    ImpossibleInput
        For a negative time.
    """
    _known(days, "time_unknown")
    _check("days", days, 0.0, math.inf, "d")
    numbers = {"days": days, "limit_days": limit("keeping_days")}
    sources = (*_sources("keeping_days"), "talebi_2017")
    if days > numbers["limit_days"]:
        return Verdict("keeping_long", Level.WARN, numbers, sources)
    return Verdict("keeping_short", Level.INFORM, numbers, sources)


def serving_verdict(litres_a_day: float) -> Verdict:
    """Judge how much is drunk in a day against the most cautious advice, 4 US fl oz.

    Raises
    ------
    NotAssessed
        "amount_unknown" for NaN.
    ImpossibleInput
        Below 0 or above 10 L.
    """
    _known(litres_a_day, "amount_unknown")
    _check("litres_a_day", litres_a_day, 0.0, 10.0, "L")
    most = limit("serving_day_fl_oz") * FLUID_OUNCE_L
    code = "serving_large" if litres_a_day > most + 1e-9 else "serving_small"
    numbers = {"drunk_l": litres_a_day, "limit_l": most}
    return Verdict(code, Level.INFORM, numbers, _sources("serving_day_fl_oz"))


def audience_verdict() -> Verdict:
    """Return for whom the drink is not: what every label and every page of it should say."""
    return Verdict("not_for_everyone", Level.INFORM, sources=("advice_who_not",))


def flavouring_verdict(*, is_pasteurised: bool | None) -> Verdict:
    """Judge juice or fruit that goes into the drink; not knowing counts as fresh."""
    if is_pasteurised:
        return Verdict("flavour_heated", Level.INFORM, sources=("acharya_juice", "fpt_2025"))
    return Verdict("flavour_fresh", Level.WARN, sources=("acharya_juice", "fpt_2025"))


def pasteurising_verdict(
    temperature_c: float, sd_c: float = 0.0, *, is_sealed: bool = False
) -> Verdict:
    """Judge heating a drink to end its fermenting: 82 degC, and never in a closed bottle.

    Raises
    ------
    NotAssessed
        "temperature_unknown" for NaN, unless the bottle is sealed: that is a STOP anyway.
    ImpossibleInput
        Outside 0 to 105 degC, or for a doubt outside 0 to 10 degC.
    """
    if is_sealed:
        return Verdict("pasteurise_sealed", Level.STOP, sources=("safety_choice", "kuhn_2004"))
    _known(temperature_c, "temperature_unknown")
    _known(sd_c, "uncertainty_unknown")
    _check("temperature_c", temperature_c, 0.0, 105.0, "°C")
    _check("sd_c", sd_c, 0.0, 10.0, "°C")
    numbers = {"temperature_c": temperature_c, "limit_c": limit("pasteurise_min_c")}
    if temperature_c - sd_c < numbers["limit_c"]:
        return Verdict("pasteurise_cool", Level.WARN, numbers, _sources("pasteurise_min_c"))
    return Verdict("pasteurise_hot", Level.INFORM, numbers, _sources("pasteurise_min_c"))


def chlorine_ppm(*, bleach_ml: float, water_l: float, chlorine_percent: float) -> float:
    """Return free chlorine of bleach in water [ppm = mg/L].

    Parameters
    ----------
    bleach_ml, water_l : float
        What is mixed: 0 to 1000 mL, above 0 to 1000 L.
    chlorine_percent : float
        Grams in 100 mL of bleach, from its label: 0 to 20.

    Raises
    ------
    ImpossibleInput
        Outside the ranges.

    Notes
    -----
    Derived: mass over volume. A tablespoon of 5.25 % to the US gallon gives 205, the 200 of
    nc_state_2004.
    """
    _check("bleach_ml", bleach_ml, 0.0, 1000.0, "mL")
    _check("water_l", water_l, 0.001, 1000.0, "L")
    _check("chlorine_percent", chlorine_percent, 0.0, 20.0, "%")
    return bleach_ml * chlorine_percent * 10.0 / (water_l + bleach_ml / 1000.0)


def chlorine_verdict(ppm: float, sd_ppm: float = 0.0) -> Verdict:
    """Judge a bleach rinse for clean vessels: strength plus doubt at most 200 ppm.

    Raises
    ------
    NotAssessed
        "chlorine_unknown" for NaN.
    ImpossibleInput
        Below 0.
    """
    _known(ppm, "chlorine_unknown")
    _known(sd_ppm, "uncertainty_unknown")
    _check("ppm", ppm, 0.0, math.inf, "ppm")
    _check("sd_ppm", sd_ppm, 0.0, math.inf, "ppm")
    numbers = {"chlorine_ppm": ppm, "limit_ppm": limit("chlorine_max_ppm")}
    # the recipe behind the 200 comes to 205 when reckoned; it is not to be called too strong
    if ppm + sd_ppm > numbers["limit_ppm"] * 1.05:
        return Verdict("chlorine_strong", Level.WARN, numbers, _sources("chlorine_max_ppm"))
    return Verdict("chlorine_within", Level.INFORM, numbers, _sources("chlorine_max_ppm"))


def caffeine_verdict(caffeine_mg: Estimate) -> Verdict:
    """Judge the caffeine that is drunk at once; the high end of the estimate counts.

    Raises
    ------
    NotAssessed
        "caffeine_unknown" when the estimate has no number.
    """
    for number in (caffeine_mg.value, caffeine_mg.low, caffeine_mg.high):
        _known(number, "caffeine_unknown")
    numbers = {
        "high_mg": caffeine_mg.high,
        "once_mg": limit("caffeine_once_mg"),
        "day_mg": limit("caffeine_day_mg"),
    }
    if caffeine_mg.high > numbers["once_mg"]:
        return Verdict("caffeine_much", Level.WARN, numbers, _sources("caffeine_once_mg"))
    return Verdict("caffeine_within", Level.INFORM, numbers, _sources("caffeine_once_mg"))


def _sources(key: str) -> tuple[str, ...]:
    return LIMITS[key].source_keys


def _known(value: float, reason: str) -> None:
    if math.isnan(value):
        raise NotAssessed(reason)


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
