"""What would be otherwise: the same culture in a warmer place, with more starter, a wider jar.

Never stored, and never mistaken for the forecast.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from brewdesk.services.jarcourse import (
    JarCourse,
    conditions_of,
    observations_of,
    usual_temperature_c,
)
from brewdesk.services.jarcourse import observed as observed_of
from brewdesk.services.teaching import Teachers, learn
from culturecore.sweettea import Starter, Wish, plan

if TYPE_CHECKING:
    from culturecore.forecast import Band, Conditions, Forecast
    from culturecore.outcome import Estimate

# Beyond these the model knows nothing, and a kitchen offers nothing.
MOST_WARMER_C = 6
MOST_STARTER_SHARE = 0.4
LEAST_STARTER_SHARE = 0.02
_RAMP_DAYS = 0.01
_EVER_AFTER_DAYS = 60.0


@dataclass(frozen=True, slots=True, kw_only=True)
class AsItIs:
    """What a batch has now of all that can be imagined otherwise."""

    temperature_c: float
    starter_share: float
    diameter_cm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class WhatIf:
    """What is imagined otherwise. The place changes from now on; the rest from the start."""

    warmer_c: float = 0.0
    starter_factor: float = 1.0
    diameter_factor: float = 1.0

    def is_as_it_is(self) -> bool:
        """Whether nothing is imagined otherwise."""
        return self == WhatIf()

    def is_from_the_start(self) -> bool:
        """Whether it would have to have begun otherwise."""
        return (self.starter_factor, self.diameter_factor) != (1.0, 1.0)


def as_it_is(course: JarCourse) -> AsItIs:
    """Return what a batch has now, with the temperature that its forecast goes on with."""
    return AsItIs(
        temperature_c=usual_temperature_c(course),
        starter_share=course.batch.starter_volume_l / course.batch.fill_volume_l,
        diameter_cm=course.vessel.inner_diameter_cm,
    )


def imagined_share(real: float, change: WhatIf) -> float:
    """Return the starter's imagined part of the blend, within what can be imagined."""
    if change.starter_factor == 1.0:
        return real
    return min(max(real * change.starter_factor, LEAST_STARTER_SHARE), MOST_STARTER_SHARE)


def imagine(
    course: JarCourse, teachers: Teachers, band: Band, now_day: float, change: WhatIf
) -> Forecast:
    """Forecast the batch as it would be otherwise. Slow: run it as a job.

    A warmer place acts on this jar from now on, so its readings hold. Other starter or
    another jar would have been another batch: what the readings tell of the culture is
    learnt, and a like batch is forecast from its start.

    Raises
    ------
    ImpossibleInput
        For amounts such as no jar can have.
    """
    from culturecore.forecast import forecast

    if not change.is_from_the_start():
        conditions = conditions_of(course, learn(teachers))
        observations = observations_of(course, observed_of(course))
        return forecast(
            _warmer_from(conditions, now_day, change.warmer_c),
            observations,
            now_day=now_day,
            band=band,
        )
    known = learn(Teachers((course, *teachers.own), teachers.pantry))
    conditions = conditions_of(course, known)
    share = imagined_share(conditions.starter_share, change)
    otherwise = replace(
        conditions,
        surface_cm2=conditions.surface_cm2 * change.diameter_factor**2,
        starter_share=share,
        start_ph=_start_ph(course, share) if change.starter_factor != 1.0 else conditions.start_ph,
        temperature_c=conditions.temperature_c + change.warmer_c,
        temperature_course=tuple(
            (day, degrees + change.warmer_c) for day, degrees in conditions.temperature_course
        ),
    )
    return forecast(otherwise, (), now_day=now_day, band=band)


def _warmer_from(conditions: Conditions, now_day: float, warmer_c: float) -> Conditions:
    """Let the place be warmer from a day on."""
    if warmer_c == 0.0:
        return conditions
    now = conditions.temperature_c
    logged = tuple(entry for entry in conditions.temperature_course if entry[0] < now_day)
    return replace(
        conditions,
        temperature_course=(
            *(logged or ((0.0, now),)),
            (max(now_day, _RAMP_DAYS), now),
            (max(now_day, _RAMP_DAYS) + _RAMP_DAYS, now + warmer_c),
            # Behind the last entry the usual temperature would hold again.
            (max(now_day, _RAMP_DAYS) + _EVER_AFTER_DAYS, now + warmer_c),
        ),
    )


def _start_ph(course: JarCourse, share: float) -> Estimate:
    """Return the start pH of the batch's recipe with another amount of starter."""
    batch = course.batch
    return plan(
        Wish(
            fill_volume_l=batch.fill_volume_l,
            sugar_g_per_l=batch.sugar_g_per_l,
            tea_kind=batch.tea_kind,
            tea_g_per_l=batch.tea_g_per_l,
            bag_g=batch.bag_g,
            starter=Starter(
                ph=batch.starter_ph,
                ta_g_per_l=batch.starter_ta_g_per_l,
                taste=batch.starter_taste,
            ),
            target_start_ph=batch.target_start_ph,
            water_alkalinity_meq_per_l=batch.water_alkalinity_meq_per_l,
            hot_water_c=batch.hot_water_c,
            cold_water_c=batch.cold_water_c,
            culture_limit_c=batch.culture_limit_c,
            place_temperature_c=batch.place_temperature_c,
            starter_volume_l=share * batch.fill_volume_l,
        )
    ).start_ph
