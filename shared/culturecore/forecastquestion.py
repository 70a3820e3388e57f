"""Refuse questions about jars that cannot be."""

from __future__ import annotations

import math
from collections.abc import Sequence

from culturecore.errors import ImpossibleInput
from culturecore.souringcase import Band, Conditions, Observation
from culturecore.stages import Quantity

_MOST = {  # of each quantity that tells of souring
    Quantity.PH: 14.0,
    Quantity.TA_G_PER_L: 200.0,
    Quantity.BRIX: 60.0,
    Quantity.SPECIFIC_GRAVITY: 1.4,
    Quantity.TASTE: math.inf,
}


def check_question(
    conditions: Conditions,
    observations: Sequence[Observation],
    band: Band,
    now_day: float | None,
    horizon_days: float,
) -> None:
    """Refuse what no jar can have.

    Raises: `ImpossibleInput` with the name of the field.
    """
    _within("volume_l", conditions.volume_l, 0.01, 10_000.0, "L")
    _within("surface_cm2", conditions.surface_cm2, 0.1, 1e6, "cm2")
    _within("starter_share", conditions.starter_share, 0.0, 1.0, "")
    _within("temperature_c", conditions.temperature_c, 0.0, 60.0, "degC")
    for day, celsius in conditions.temperature_course:
        _within("day", day, -1.0, 4000.0, "days")
        _within("temperature_c", celsius, 0.0, 60.0, "degC")
    for draw in conditions.drawn:
        _within("day", draw.day, -1.0, 4000.0, "days")
        _within("share", draw.share, 0.0, 1.0, "")
        if draw.sugar_g_per_l is not None:
            _within("sugar_g_per_l", draw.sugar_g_per_l, 0.0, 700.0, "g/L")
    _within("sugar_g_per_l", conditions.sugar_g_per_l, 0.0, 700.0, "g/L")
    if conditions.starter_ta_g_per_l is not None:
        _within("starter_ta_g_per_l", conditions.starter_ta_g_per_l, 0.0, 200.0, "g/L")
    if conditions.start_ph is not None:
        for bound in (conditions.start_ph.low, conditions.start_ph.value, conditions.start_ph.high):
            _within("start_ph", bound, 0.0, 14.0, "")
    for reading in observations:
        if reading.quantity not in _MOST:
            raise ImpossibleInput("quantity", reading.quantity, reason="tells_no_souring")
        if reading.quantity is not Quantity.TASTE:
            _within("value", reading.value, 0.0, _MOST[reading.quantity], "")
            _within("sd", reading.sd, 1e-6, 100.0, "")
        _within("day", reading.day, -1.0, 4000.0, "days")
    _within("first_taste_ph", band.first_taste_ph, 0.0, 14.0, "")
    _within("too_sour_ph", band.too_sour_ph, 0.0, band.first_taste_ph, "")
    _within("horizon_days", horizon_days, 1.0, 400.0, "days")
    if now_day is not None:
        _within("now_day", now_day, -4000.0, 4000.0, "days")


def _within(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not math.isfinite(value) or not low <= value <= high:
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
