"""One batch with its vessel and readings, and what of it the figures need.

Plain values and pure functions: nothing here needs a store or a clock, so all of it may
run in any thread.
"""

from __future__ import annotations

import math
import statistics
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from brewdesk.services.ledger import balance_of
from brewdesk.store.records import Batch, Reading, Transfer, Vessel
from culturecore.outcome import Estimate
from culturecore.stages import BatchStage, Quantity, TasteMark, TransferKind

if TYPE_CHECKING:
    from culturecore.forecast import Conditions, DrawOff, KnownCulture, Observation

CURVES = (Quantity.PH, Quantity.TA_G_PER_L)
OBSERVED = (*CURVES, Quantity.BRIX, Quantity.SPECIFIC_GRAVITY, Quantity.TASTE)
READ = (*OBSERVED, Quantity.TEMPERATURE_C)
DAY = timedelta(days=1)
# The form keeps minutes: the first reading may seem to come just before the start.
START_SLACK = timedelta(minutes=2)
# Until then the sweet tea still cools, and tells nothing of the place.
_SETTLED_AFTER = timedelta(hours=12)
# For a reading that came without its uncertainty: that of the roughest method.
_ROUGH_SD = {
    Quantity.PH: 0.3,
    Quantity.TA_G_PER_L: 1.0,
    Quantity.BRIX: 0.5,
    Quantity.SPECIFIC_GRAVITY: 0.002,
}
_LEAST_SD = {Quantity.SPECIFIC_GRAVITY: 0.0002}
_USUAL_LEAST_SD = 0.005
_STEP_DAYS = 0.01  # a quarter of an hour: pouring over is a step, not a slope
_TASTE_SD = 1.0  # not looked at: a verdict has its own model


@dataclass(frozen=True, slots=True)
class Stay:
    """Since when a batch stood somewhere, and how warm it usually is there."""

    since: datetime
    temperature_c: float


@dataclass(frozen=True, slots=True)
class JarCourse:
    """A batch that has begun to sour, where it stands, and its readings by time.

    ``transfers`` are what went in and out, by time; ``stays`` where it stood, only if it was
    poured over into another vessel.
    """

    batch: Batch
    vessel: Vessel
    readings: tuple[Reading, ...]
    transfers: tuple[Transfer, ...] = ()
    stays: tuple[Stay, ...] = ()

    @property
    def start(self) -> datetime:
        """When the starter went in."""
        return self.batch.started_at or self.batch.planned_at


def day_of(course: JarCourse, at: datetime) -> float:
    """Return the days from the start to an instant."""
    return (at - course.start) / DAY


def sd_of(reading: Reading) -> float:
    """Return a reading's standard uncertainty; a rough one where it came without."""
    least = _LEAST_SD.get(reading.quantity, _USUAL_LEAST_SD)
    return max(least, _ROUGH_SD[reading.quantity] if reading.sd is None else reading.sd)


def observed(course: JarCourse) -> tuple[Reading, ...]:
    """Return the readings of the blend itself: what was measured before is water or starter."""
    return tuple(
        reading
        for reading in course.readings
        if reading.quantity in OBSERVED
        and reading.at >= course.start - START_SLACK
        and (reading.value is not None or taste_of(reading) is not None)
    )


def taste_of(reading: Reading) -> TasteMark | None:
    """Return a tasting's verdict, None for any other reading."""
    if reading.quantity is not Quantity.TASTE:
        return None
    try:
        return TasteMark(reading.text)
    except ValueError:  # kept by another program version
        return None


def observations_of(course: JarCourse, readings: Iterable[Reading]) -> list[Observation]:
    """Turn readings into what a forecast takes, one for one."""
    from culturecore.forecast import Observation

    return [
        Observation(
            day=max(0.0, day_of(course, reading.at)),
            quantity=reading.quantity,
            value=reading.value or 0.0,
            sd=_TASTE_SD if reading.quantity is Quantity.TASTE else sd_of(reading),
            taste=taste_of(reading),
        )
        for reading in readings
    ]


def conditions_of(course: JarCourse, known: KnownCulture | None = None) -> Conditions:
    """Return what is known of a batch without reading it.

    Volume and surface are those of the jar as it stands: what is ahead sours in it. That it
    stood otherwise before shows in the readings, from which its pace is learnt.

    Raises
    ------
    ImpossibleInput
        If its amounts are such as no jar can have.
    """
    from culturecore import vessels
    from culturecore.forecast import Conditions

    batch, vessel = course.batch, course.vessel
    volume_l = min(standing_volume_l(course), vessel.brim_volume_l)
    return Conditions(
        volume_l=volume_l,
        surface_cm2=vessels.surface_area_cm2(
            vessel.shape, vessel.inner_diameter_cm, vessel.brim_volume_l, volume_l
        ),
        starter_share=batch.starter_volume_l / batch.fill_volume_l,
        start_ph=Estimate(value=batch.start_ph, low=batch.start_ph_low, high=batch.start_ph_high),
        starter_ta_g_per_l=batch.starter_ta_g_per_l,
        temperature_c=usual_temperature_c(course),
        sugar_g_per_l=batch.sugar_g / batch.fill_volume_l,
        tea_kind=batch.tea_kind,
        temperature_course=temperatures_of(course) or temperatures_of_stays(course),
        known=known,
        drawn=thinnings_of(course),
    )


def standing_volume_l(course: JarCourse) -> float:
    """Return what stands in the jar; for a batch that has ended, what stood there before."""
    batch, ended_at = course.batch, course.batch.ended_at
    before = [row for row in course.transfers if ended_at is None or row.at < ended_at]
    going_on = replace(batch, stage=BatchStage.SOURING, ended_at=None)
    return balance_of(going_on, before).now_l


def thinnings_of(course: JarCourse) -> tuple[DrawOff, ...]:
    """Return what was poured in, as the share of the jar that fresh sweet tea took over.

    Drawing off alone changes neither acid nor sugar of what stays behind. Liquid of another
    batch thins the acid by as much as it is less sour; nothing thins it if it is as sour.
    """
    from culturecore.forecast import DrawOff

    found = []
    volume_l = course.batch.fill_volume_l
    for row in course.transfers:
        if row.from_batch_id == course.batch.id:
            volume_l = max(volume_l - row.volume_l, 0.0)
        elif row.kind in (TransferKind.TOP_UP, TransferKind.MERGE):
            share = row.volume_l / (volume_l + row.volume_l)
            volume_l += row.volume_l
            if row.kind is TransferKind.TOP_UP:
                sugar_g_per_l = row.sugar_g / row.volume_l
                found.append(
                    DrawOff(day=_day(course, row), share=share, sugar_g_per_l=sugar_g_per_l)
                )
            elif thinned := _thinned_by(course, row, share):
                found.append(DrawOff(day=_day(course, row), share=thinned))
    return tuple(found)


def _thinned_by(course: JarCourse, poured: Transfer, share: float) -> float:
    from culturecore.blending import dilution_share

    if poured.ph is None:  # as sour as this jar, for all that is known
        return 0.0
    here = [
        reading.value
        for reading in observed(course)
        if reading.quantity is Quantity.PH and reading.value is not None and reading.at <= poured.at
    ]
    ph_here = here[-1] if here else course.batch.start_ph
    return dilution_share(volume_share=share, ph_here=ph_here, ph_coming=poured.ph)


def _day(course: JarCourse, row: Transfer) -> float:
    return max(0.0, day_of(course, row.at))


def temperatures_of_stays(course: JarCourse) -> tuple[tuple[float, float], ...]:
    """Return the usual temperatures of the places where a batch stood, as (day, degC)."""
    found: list[tuple[float, float]] = []
    for stay in course.stays:
        day = max(0.0, (stay.since - course.start) / DAY)
        if found:  # the old place's temperature holds until just before
            found.append((max(day - _STEP_DAYS, found[-1][0]), found[-1][1]))
        found.append((day, stay.temperature_c))
    return tuple(found)


def usual_temperature_c(course: JarCourse) -> float:
    """Return the middle of what was measured in the jar, else the place's usual temperature."""
    measured = [degrees for _, degrees in temperatures_of(course)]
    return statistics.median(measured) if measured else course.batch.place_temperature_c


def temperatures_of(course: JarCourse) -> tuple[tuple[float, float], ...]:
    """Return the temperatures measured once the liquid had settled, as (day, degC)."""
    return tuple(
        (day_of(course, reading.at), reading.value)
        for reading in course.readings
        if reading.quantity is Quantity.TEMPERATURE_C
        and reading.value is not None
        and reading.at >= course.start + _SETTLED_AFTER
    )


def value_at(
    days: tuple[float, ...], curves: dict[float, tuple[float, ...]], day: float
) -> Estimate:
    """Read the median and the 80 % bounds off quantile curves on a day within them."""
    low, middle, high = (_between(days, curves[share], day) for share in (0.1, 0.5, 0.9))
    return Estimate(value=middle, low=min(low, high), high=max(low, high))


def _between(days: tuple[float, ...], curve: tuple[float, ...], day: float) -> float:
    if day <= days[0]:
        return curve[0]
    for n in range(1, len(days)):
        if day <= days[n]:
            share = (day - days[n - 1]) / (days[n] - days[n - 1])
            return curve[n - 1] + share * (curve[n] - curve[n - 1])
    return curve[-1]


def sd_from_bounds(estimate: Estimate) -> float:
    """Return the standard deviation of a normal curve with these 80 % bounds."""
    return max((estimate.high - estimate.low) / (2.0 * _Z80), _USUAL_LEAST_SD)


_Z80 = math.sqrt(2.0) * 0.9061938024368232  # 90 % point of the standard normal, 1.2816
