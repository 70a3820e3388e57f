"""Forecasts of the batches: worked out in the background, kept for as long as they are true.

Nothing is stored here. What a restart must know before the first forecast has run (when
to taste) is in the reminders.
"""

from __future__ import annotations

import statistics
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.wording.forecasts import (
    no_forecast_words,
    point_words,
    summary_words,
    waiting_words,
)
from brewdesk.store.records import Batch, Reading, Vessel
from culturecore import safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate
from culturecore.stages import BatchStage, Method, Quantity

if TYPE_CHECKING:
    from culturecore.forecast import Forecast

_CURVES = (Quantity.PH, Quantity.TA_G_PER_L)
_READ = (*_CURVES, Quantity.TEMPERATURE_C)
_DAY = timedelta(days=1)
# The form keeps minutes: the first reading may seem to come just before the start.
_START_SLACK = timedelta(minutes=2)
# Until then the sweet tea still cools, and tells nothing of the place.
_SETTLED_AFTER = timedelta(hours=12)
# For a reading that came without its uncertainty: that of the roughest method.
_ROUGH_SD = {Quantity.PH: 0.3, Quantity.TA_G_PER_L: 1.0}
_LEAST_SD = 0.005
_TOPICS = Topic.READINGS | Topic.BATCHES | Topic.VESSELS | Topic.SETTINGS


@dataclass(frozen=True, slots=True, kw_only=True)
class TasteBand:
    """The pH between which the maker likes the drink."""

    first_taste_ph: float = 3.3
    too_sour_ph: float = 2.9


@dataclass(frozen=True, slots=True, kw_only=True)
class CurvePoint:
    """One reading on a curve: day since the start, value, standard uncertainty, and in words."""

    day: float
    value: float
    sd: float
    text: str
    method: Method
    is_suspect: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class CurveView:
    """All that a picture of a batch's souring shows, and the same in sentences.

    ``started_at`` is on the maker's clock, days count from it. ``opens_on`` and
    ``closes_on`` are the median days of the tasting window on the maker's calendar.
    ``forecast`` is None while none is known; the points are there all the same.
    """

    batch_id: int
    started_at: datetime
    points: tuple[CurvePoint, ...]
    ta_points: tuple[CurvePoint, ...]
    forecast: Forecast | None
    first_taste_ph: float
    too_sour_ph: float
    safe_ph: float
    least_ph: float
    now_day: float
    deadline_day: float
    opens_on: date | None
    closes_on: date | None
    text_summary: str


@dataclass(frozen=True, slots=True)
class _Inputs:
    """Everything a forecast depends on; equal inputs have equal forecasts."""

    batch: Batch
    vessel: Vessel
    readings: tuple[Reading, ...]
    band: TasteBand
    age_days: int


@dataclass(frozen=True, slots=True)
class _Known:
    """A forecast with what it was made of; None if none can be made."""

    inputs: _Inputs
    forecast: Forecast | None


def usual_band() -> TasteBand:
    """Return the band of a maker who has not said otherwise."""
    return TasteBand()


class Forecasts(QObject):
    """The newest forecast of each batch.

    ``ready`` carries the id of a batch whose forecast is new.
    """

    ready = Signal(int)

    def __init__(
        self,
        door: Door,
        jobs: JobRunner,
        *,
        band: Callable[[], TasteBand] = usual_band,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._jobs = jobs
        self._band = band
        self._known: dict[int, _Known] = {}
        self._asked: dict[int, _Inputs] = {}
        door.changes.changed.connect(self._on_changed)

    def now(self, batch_id: int) -> CurveView | None:
        """Return a batch's readings with its newest forecast; None before it began to sour.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        inputs = self._inputs(batch_id)
        if inputs is None:
            return None
        return self._view(inputs, self._known.get(batch_id))

    def request(self, batch_id: int) -> None:
        """Have a batch's forecast worked out, unless the newest one still holds.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        inputs = self._inputs(batch_id)
        if inputs is None or inputs == self._asked.get(batch_id):
            return
        self._asked[batch_id] = inputs
        self._jobs.run(
            lambda: work_out(inputs),
            lambda forecast: self._on_done(_Known(inputs, forecast)),
            lambda error: self._on_failed(inputs, error),
            key=f"forecast-{batch_id}",
            pool=Pool.FIGURES,
        )

    def request_all_live(self) -> None:
        """Have the forecasts of all souring batches worked out that do not hold any more."""
        with self._door.store.read() as unit:
            batches = unit.batches.where(stage=BatchStage.SOURING)
        for batch in batches:
            self.request(batch.id)

    def window_of(self, batch_id: int) -> TastingWindow | None:
        """Return the forecast tasting window; None while there is no forecast."""
        known = self._known.get(batch_id)
        if known is None or known.forecast is None or known.inputs.batch.started_at is None:
            return None
        opens, closes = known.forecast.window_opens_day, known.forecast.window_closes_day
        if opens is None:
            return TastingWindow()
        start, horizon = known.inputs.batch.started_at, known.forecast.days[-1]
        return TastingWindow(
            opens_at=start + opens.value * _DAY,
            opens_earliest=start + opens.low * _DAY,
            opens_latest=start + opens.high * _DAY if opens.high < horizon else None,
            closes_at=start + closes.value * _DAY if closes is not None else None,
        )

    def _inputs(self, batch_id: int) -> _Inputs | None:
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            if batch.started_at is None:
                return None
            vessel = unit.vessels.get(batch.vessel_id)
            readings = unit.readings.where(batch_id=batch_id, quantity=_READ, order_by=("at", "id"))
        age_days = int(_days_since_start(batch, self._moment(batch)))
        return _Inputs(batch, vessel, readings, self._band(), age_days)

    def _moment(self, batch: Batch) -> datetime:
        now = self._door.clock.now()
        return min(now, batch.ended_at) if batch.ended_at is not None else now

    def _view(self, inputs: _Inputs, known: _Known | None) -> CurveView:
        zone = self._door.clock.zone()
        batch = inputs.batch
        start = batch.started_at or batch.planned_at
        forecast = known.forecast if known is not None else None
        suspects = _suspect_ids(known)
        points, ta_points = (
            tuple(
                _point(reading, start, point_words(reading, zone), reading.id in suspects)
                for reading in inputs.readings
                if reading.quantity is quantity and reading.value is not None
            )
            for quantity in _CURVES
        )
        now_day = _days_since_start(batch, self._moment(batch))
        safe_ph, deadline_day = safety.limit("ph_finished_max"), safety.limit("ph_deadline_days")
        if forecast is not None:
            text = summary_words(
                forecast,
                started_at=start,
                now_day=now_day,
                deadline_day=deadline_day,
                safe_ph=safe_ph,
                is_known_safe=any(
                    point.day >= 0 and point.value + point.sd <= safe_ph for point in points
                ),
                zone=zone,
            )
        else:
            text = waiting_words() if known is None else no_forecast_words()
        return CurveView(
            batch_id=batch.id,
            started_at=start.astimezone(zone),
            points=points,
            ta_points=ta_points,
            forecast=forecast,
            first_taste_ph=inputs.band.first_taste_ph,
            too_sour_ph=inputs.band.too_sour_ph,
            safe_ph=safe_ph,
            least_ph=safety.limit("ph_finished_min"),
            now_day=now_day,
            deadline_day=deadline_day,
            opens_on=_date_of(forecast.window_opens_day if forecast else None, start, zone),
            closes_on=_date_of(forecast.window_closes_day if forecast else None, start, zone),
            text_summary=text,
        )

    def _on_done(self, known: _Known) -> None:
        batch_id = known.inputs.batch.id
        self._known[batch_id] = known
        self.ready.emit(batch_id)
        self._door.changes.announce(Topic.FORECASTS, batch_ids=(batch_id,))

    def _on_failed(self, inputs: _Inputs, error: BaseException) -> None:
        if not isinstance(error, ImpossibleInput):
            raise error
        self._on_done(_Known(inputs, None))

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        with self._door.store.read() as unit:
            souring = unit.batches.where(stage=BatchStage.SOURING)
        for batch in souring:
            is_meant = change.concerns_batch(batch.id) or batch.vessel_id in change.vessel_ids
            if is_meant or change.concerns(Topic.SETTINGS):
                self.request(batch.id)


def work_out(inputs: _Inputs) -> Forecast:
    """Forecast one batch. Needs no store and no clock, so it may run in any thread.

    Raises
    ------
    ImpossibleInput
        If its amounts or readings are such as no jar can have.
    """
    # Loaded here, since it brings numpy: nothing of it is needed to paint the first window.
    from culturecore import vessels
    from culturecore.forecast import Band, Conditions, Observation, forecast

    batch, vessel = inputs.batch, inputs.vessel
    conditions = Conditions(
        volume_l=batch.fill_volume_l,
        surface_cm2=vessels.surface_area_cm2(
            vessel.shape, vessel.inner_diameter_cm, vessel.brim_volume_l, batch.fill_volume_l
        ),
        starter_share=batch.starter_volume_l / batch.fill_volume_l,
        start_ph=Estimate(value=batch.start_ph, low=batch.start_ph_low, high=batch.start_ph_high),
        starter_ta_g_per_l=batch.starter_ta_g_per_l,
        temperature_c=_temperature_c(batch, inputs.readings),
        sugar_g_per_l=batch.sugar_g / batch.fill_volume_l,
        tea_kind=batch.tea_kind,
    )
    observations = [
        Observation(
            day=max(0.0, _days_since_start(batch, reading.at)),
            quantity=reading.quantity,
            value=reading.value,
            sd=_sd(reading),
        )
        for reading in _observed(batch, inputs.readings)
        if reading.value is not None
    ]
    return forecast(
        conditions,
        observations,
        now_day=float(inputs.age_days),
        band=Band(first_taste_ph=inputs.band.first_taste_ph, too_sour_ph=inputs.band.too_sour_ph),
    )


def _observed(batch: Batch, readings: tuple[Reading, ...]) -> tuple[Reading, ...]:
    """Return the readings of the blend itself: what was measured before is water or starter."""
    return tuple(
        reading
        for reading in readings
        if reading.quantity in _CURVES
        and reading.value is not None
        and batch.started_at is not None
        and reading.at >= batch.started_at - _START_SLACK
    )


def _temperature_c(batch: Batch, readings: tuple[Reading, ...]) -> float:
    """Return what was measured once the liquid had settled, else the place's usual temperature."""
    measured = [
        reading.value
        for reading in readings
        if reading.quantity is Quantity.TEMPERATURE_C
        and reading.value is not None
        and batch.started_at is not None
        and reading.at >= batch.started_at + _SETTLED_AFTER
    ]
    return statistics.median(measured) if measured else batch.place_temperature_c


def _suspect_ids(known: _Known | None) -> frozenset[int]:
    if known is None or known.forecast is None:
        return frozenset()
    observed = _observed(known.inputs.batch, known.inputs.readings)
    return frozenset(observed[index].id for index in known.forecast.suspects)


def _point(reading: Reading, start: datetime, text: str, is_suspect: bool) -> CurvePoint:
    return CurvePoint(
        day=(reading.at - start) / _DAY,
        value=reading.value if reading.value is not None else 0.0,
        sd=_sd(reading),
        text=text,
        method=reading.method,
        is_suspect=is_suspect,
    )


def _sd(reading: Reading) -> float:
    return max(_LEAST_SD, _ROUGH_SD[reading.quantity] if reading.sd is None else reading.sd)


def _days_since_start(batch: Batch, at: datetime) -> float:
    return (at - (batch.started_at or batch.planned_at)) / _DAY


def _date_of(estimate: Estimate | None, start: datetime, zone: tzinfo) -> date | None:
    if estimate is None:
        return None
    return (start + estimate.value * _DAY).astimezone(zone).date()
