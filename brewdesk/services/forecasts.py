"""Forecasts of the batches: worked out in the background, kept for as long as they are true.

Nothing is stored here. What a restart must know before the first forecast has run (when
to taste) is in the reminders.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.coursereader import read_course
from brewdesk.services.culturelore import CultureLore, Teachers, learn
from brewdesk.services.door import Door
from brewdesk.services.films import Films
from brewdesk.services.jarcourse import (
    CURVES,
    DAY,
    JarCourse,
    conditions_of,
    day_of,
    observations_of,
    observed,
    sd_of,
    value_at,
)
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.palate import TasteBand as TasteBand
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.whatif import AsItIs, WhatIf, as_it_is, imagine
from brewdesk.services.wording.forecasts import (
    no_forecast_words,
    point_words,
    summary_words,
    suspect_words,
    waiting_words,
)
from brewdesk.services.wording.outlook import (
    drink_words,
    imagined_words,
    moved_words,
    next_reading_words,
)
from brewdesk.services.wording.shownunits import UnitOf, metric_unit
from brewdesk.store.records import Batch, Reading
from culturecore import safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate
from culturecore.stages import BatchStage, Method

if TYPE_CHECKING:
    from culturecore.forecast import Band, Forecast

_TOPICS = Topic.READINGS | Topic.BATCHES | Topic.VESSELS | Topic.SETTINGS
YESTERDAY = timedelta(hours=24)
# How long asking for many forecasts may keep the window's thread at a time: a third of a frame.
_TURN_S = 0.005
_MANY = 30


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
    ``notes`` are short sentences beside the summary: what moved, what to read next, what
    is in the drink. ``forecast`` is None while none is known; the points are there all the same.
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
    notes: tuple[str, ...] = ()
    as_it_is: AsItIs | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Imagined:
    """The course of a batch as it would be otherwise; only looked at, never kept."""

    batch_id: int
    change: WhatIf
    days: tuple[float, ...]
    ph_median: tuple[float, ...]
    ta_median: tuple[float, ...]
    text: str


@dataclass(frozen=True, slots=True)
class _Inputs:
    """Everything a forecast depends on; equal inputs have equal forecasts."""

    course: JarCourse
    band: TasteBand
    age_days: int
    teachers: Teachers
    fresh: frozenset[int]  # ids of readings of the last day

    @property
    def batch(self) -> Batch:
        return self.course.batch


@dataclass(frozen=True, slots=True)
class _Outcome:
    """A forecast, and the one of a day ago if there is something new since."""

    now: Forecast
    day_ago: Forecast | None


@dataclass(frozen=True, slots=True)
class _Known:
    """A forecast with what it was made of; None if none can be made."""

    inputs: _Inputs
    forecast: Forecast | None
    day_ago: Forecast | None = None


def usual_band() -> TasteBand:
    """Return the band of a maker who has not said otherwise."""
    return TasteBand()


class Forecasts(QObject):
    """The newest forecast of each batch.

    ``ready`` carries the id of a batch whose forecast is new, ``imagined`` an `Imagined`.
    """

    ready = Signal(int)
    imagined = Signal(object)

    def __init__(
        self,
        door: Door,
        jobs: JobRunner,
        *,
        band: Callable[[], TasteBand] = usual_band,
        unit_of: UnitOf = metric_unit,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._jobs = jobs
        self._band = band
        self._unit_of = unit_of
        self._lore = CultureLore(door)
        self._films = Films(door)
        self._known: dict[int, _Known] = {}
        self._asked: dict[int, _Inputs] = {}
        self._waiting: dict[int, None] = {}  # in the order of asking
        self._running: set[int] = set()
        self._told_late: set[int] = set()
        self._turn = QTimer(self)
        self._turn.setObjectName("forecasts_turn")
        self._turn.setSingleShot(True)
        self._turn.setInterval(0)
        self._turn.timeout.connect(self._take_turn)
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
        self._waiting.pop(batch_id, None)
        inputs = self._inputs(batch_id)
        if inputs is None or inputs == self._asked.get(batch_id):
            return
        self._asked[batch_id] = inputs
        self._running.add(batch_id)
        self._jobs.run(
            lambda: _outcome(inputs),
            lambda done: self._on_done(_Known(inputs, done.now, done.day_ago)),
            lambda error: self._on_failed(inputs, error),
            key=f"forecast-{batch_id}",
            pool=Pool.FIGURES,
        )

    def request_all_live(self) -> None:
        """Have the forecasts of all souring batches worked out that do not hold any more.

        However many there are, the window's thread is kept for a part of a frame at a time.
        """
        with self._door.store.read() as unit:
            batches = unit.batches.where(stage=BatchStage.SOURING)
        self._waiting.update(dict.fromkeys(batch.id for batch in batches))
        self._begin_turns()

    def what_if(self, batch_id: int, change: WhatIf) -> None:
        """Work out how a batch would go otherwise; `imagined` brings the newest asked for.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        inputs = self._inputs(batch_id)
        if inputs is None:
            return
        moment = self._moment(inputs.batch)
        now_day = day_of(inputs.course, moment)
        self._jobs.run(
            lambda: imagine(
                inputs.course, inputs.teachers, _band_of(inputs), max(0.0, now_day), change
            ),
            lambda forecast: self._on_imagined(inputs, change, forecast),
            lambda error: self._on_unimagined(error),
            key="what-if",
            pool=Pool.FIGURES,
        )

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
            opens_at=start + opens.value * DAY,
            opens_earliest=start + opens.low * DAY,
            opens_latest=start + opens.high * DAY if opens.high < horizon else None,
            closes_at=start + closes.value * DAY if closes is not None else None,
        )

    def _inputs(self, batch_id: int) -> _Inputs | None:
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            if batch.started_at is None:
                return None
            course = read_course(unit, batch)
            teachers = self._lore.teachers_of(batch, unit)
        moment = self._moment(batch)
        return _Inputs(
            course,
            self._band(),
            int(day_of(course, moment)),
            teachers,
            frozenset(reading.id for reading in course.readings if reading.at > moment - YESTERDAY),
        )

    def _moment(self, batch: Batch) -> datetime:
        now = self._door.clock.now()
        return min(now, batch.ended_at) if batch.ended_at is not None else now

    def _view(self, inputs: _Inputs, known: _Known | None) -> CurveView:
        zone = self._door.clock.zone()
        batch, course = inputs.batch, inputs.course
        forecast = known.forecast if known is not None else None
        suspects = _suspects(known)
        points, ta_points = (
            tuple(
                _point(
                    reading, course, point_words(reading, zone, self._unit_of), reading in suspects
                )
                for reading in course.readings
                if reading.quantity is quantity and reading.value is not None
            )
            for quantity in CURVES
        )
        now_day = day_of(course, self._moment(batch))
        safe_ph, deadline_day = safety.limit("ph_finished_max"), safety.limit("ph_deadline_days")
        if forecast is not None and known is not None:
            text = summary_words(
                forecast,
                started_at=course.start,
                now_day=now_day,
                deadline_day=deadline_day,
                safe_ph=safe_ph,
                is_known_safe=any(
                    point.day >= 0 and point.value + point.sd <= safe_ph for point in points
                ),
                zone=zone,
                suspects=tuple(
                    suspect_words(reading, reason, zone, self._unit_of)
                    for reading, reason in suspects.items()
                ),
            )
        else:
            text = waiting_words() if known is None else no_forecast_words()
        return CurveView(
            batch_id=batch.id,
            started_at=course.start.astimezone(zone),
            points=points,
            ta_points=ta_points,
            forecast=forecast,
            first_taste_ph=inputs.band.first_taste_ph,
            too_sour_ph=inputs.band.too_sour_ph,
            safe_ph=safe_ph,
            least_ph=safety.limit("ph_finished_min"),
            now_day=now_day,
            deadline_day=deadline_day,
            opens_on=_date_of(forecast.window_opens_day if forecast else None, course.start, zone),
            closes_on=_date_of(
                forecast.window_closes_day if forecast else None, course.start, zone
            ),
            text_summary=text,
            as_it_is=as_it_is(course),
            notes=(
                (
                    *_notes(known, now_day, zone, self._unit_of),
                    *self._films.notes(course, self._moment(batch), zone),
                )
                if known is not None
                else ()
            ),
        )

    def _begin_turns(self) -> None:
        """Begin at once, unless listing so many has taken its share of a frame already."""
        if len(self._waiting) > _MANY:
            self._turn.start()
        else:
            self._take_turn()

    def _take_turn(self) -> None:
        """Ask for waiting forecasts for as long as the window can spare its thread."""
        clock = self._door.clock
        began = clock.monotonic()
        while self._waiting and clock.monotonic() - began < _TURN_S:
            self.request(next(iter(self._waiting)))
        if self._waiting:
            self._turn.start()

    def _on_done(self, known: _Known) -> None:
        batch_id = known.inputs.batch.id
        self._running.discard(batch_id)
        self._known[batch_id] = known
        self.ready.emit(batch_id)
        # Of many that come at once the others hear once: each hearing looks at the whole shelf.
        self._told_late.add(batch_id)
        if not self._running and not self._waiting:
            told, self._told_late = self._told_late, set()
            self._door.changes.announce(Topic.FORECASTS, batch_ids=told)

    def _on_failed(self, inputs: _Inputs, error: BaseException) -> None:
        if not isinstance(error, ImpossibleInput):
            self._running.discard(inputs.batch.id)
            raise error
        self._on_done(_Known(inputs, None))

    def _on_imagined(self, inputs: _Inputs, change: WhatIf, forecast: Forecast) -> None:
        zone = self._door.clock.zone()
        known = self._known.get(inputs.batch.id)
        self.imagined.emit(
            Imagined(
                batch_id=inputs.batch.id,
                change=change,
                days=forecast.days,
                ph_median=forecast.ph[0.5],
                ta_median=forecast.ta_g_per_l[0.5],
                text=imagined_words(
                    forecast,
                    known.forecast if known is not None else None,
                    started_at=inputs.course.start,
                    is_from_the_start=change.is_from_the_start(),
                    zone=zone,
                ),
            )
        )

    def _on_unimagined(self, error: BaseException) -> None:
        if not isinstance(error, ImpossibleInput):
            raise error

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        with self._door.store.read() as unit:
            souring = unit.batches.where(stage=BatchStage.SOURING)
        for batch in souring:
            is_meant = change.concerns_batch(batch.id) or batch.vessel_id in change.vessel_ids
            if is_meant or change.concerns(Topic.SETTINGS):
                self._waiting[batch.id] = None
        self._begin_turns()


def work_out(inputs: _Inputs) -> Forecast:
    """Forecast one batch. Needs no store and no clock, so it may run in any thread.

    Raises
    ------
    ImpossibleInput
        If its amounts or readings are such as no jar can have.
    """
    # Loaded here, since it brings numpy: nothing of it is needed to paint the first window.
    from culturecore.forecast import forecast

    return forecast(
        conditions_of(inputs.course, learn(inputs.teachers)),
        observations_of(inputs.course, observed(inputs.course)),
        now_day=float(inputs.age_days),
        band=_band_of(inputs),
    )


def _outcome(inputs: _Inputs) -> _Outcome:
    now = work_out(inputs)
    course = inputs.course
    earlier = tuple(reading for reading in course.readings if reading.id not in inputs.fresh)
    # On the first day there was no forecast yet that could have moved.
    if not inputs.fresh or inputs.age_days < 1:
        return _Outcome(now, None)
    return _Outcome(
        now, work_out(replace(inputs, course=replace(course, readings=earlier), fresh=frozenset()))
    )


def _band_of(inputs: _Inputs) -> Band:
    return inputs.band.as_core()


def _notes(known: _Known, now_day: float, zone: tzinfo, unit_of: UnitOf) -> tuple[str, ...]:
    """Say what moved, what to read next and what is in the drink, as far as it is known."""
    forecast, start = known.forecast, known.inputs.course.start
    if forecast is None:
        return ()
    found = []
    if known.day_ago is not None:
        found.append(moved_words(known.day_ago, forecast, start, zone))
    if known.inputs.batch.stage is BatchStage.SOURING:
        found.append(next_reading_words(forecast.next_reading, start, now_day, zone))
    if 0.0 <= now_day <= forecast.days[-1]:
        alcohol, sugar = (
            value_at(forecast.days, curves, now_day) if curves else None
            for curves in (forecast.ethanol_percent_vv, forecast.sugar_g_per_l)
        )
        found.append(drink_words(alcohol, sugar, unit_of))
    return tuple(note for note in found if note)


def _suspects(known: _Known | None) -> dict[Reading, str]:
    """Return the readings that do not fit the others, each with the code of why."""
    if known is None or known.forecast is None:
        return {}
    readings, forecast = observed(known.inputs.course), known.forecast
    reasons = forecast.suspect_reasons or ("",) * len(forecast.suspects)
    return {
        readings[index]: reason for index, reason in zip(forecast.suspects, reasons, strict=True)
    }


def _point(reading: Reading, course: JarCourse, text: str, is_suspect: bool) -> CurvePoint:
    return CurvePoint(
        day=day_of(course, reading.at),
        value=reading.value if reading.value is not None else 0.0,
        sd=sd_of(reading),
        text=text,
        method=reading.method,
        is_suspect=is_suspect,
    )


def _date_of(estimate: Estimate | None, start: datetime, zone: tzinfo) -> date | None:
    if estimate is None:
        return None
    return (start + estimate.value * DAY).astimezone(zone).date()
