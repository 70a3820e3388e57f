"""All that a picture of a batch's souring shows, and the same in sentences."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime, tzinfo
from typing import TYPE_CHECKING

from brewdesk.services.filmwork import Film
from brewdesk.services.forecastwork import ForecastInputs, PackedOutcome
from brewdesk.services.jarcourse import CURVES, DAY, JarCourse, day_of, observed, sd_of, value_at
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.whatif import AsItIs, as_it_is
from brewdesk.services.wording.forecasts import (
    growing_words,
    no_forecast_words,
    point_words,
    summary_words,
    suspect_words,
    waiting_words,
)
from brewdesk.services.wording.outlook import drink_words, moved_words, next_reading_words
from brewdesk.services.wording.shownunits import UnitOf, metric_unit
from brewdesk.store.records import Reading
from culturecore import safety
from culturecore.outcome import Estimate
from culturecore.stages import BatchPurpose, BatchStage, Method

if TYPE_CHECKING:
    from culturecore.forecast import Forecast


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


@dataclass(frozen=True, slots=True)
class Known:
    """A forecast with what it was made of; None if none can be made."""

    inputs: ForecastInputs
    outcome: PackedOutcome

    @property
    def forecast(self) -> Forecast | None:
        """The newest forecast."""
        return self.outcome.whole().now

    @property
    def day_ago(self) -> Forecast | None:
        """That of a day ago, if something new has been known since."""
        return self.outcome.whole().day_ago

    @property
    def film(self) -> Film | None:
        """What is expected of the jar's film."""
        return self.outcome.whole().film


def window_of(known: Known | None) -> TastingWindow | None:
    """Return the forecast tasting window; None while there is no forecast."""
    if known is None or known.inputs.batch.started_at is None:
        return None
    opens, closes = known.outcome.opens, known.outcome.closes
    start, horizon = known.inputs.batch.started_at, known.outcome.horizon_days
    if horizon is None:
        return None
    if opens is None:
        return TastingWindow()
    return TastingWindow(
        opens_at=start + opens.value * DAY,
        opens_earliest=start + opens.low * DAY,
        opens_latest=start + opens.high * DAY if opens.high < horizon else None,
        closes_at=start + closes.value * DAY if closes is not None else None,
    )


def curve_view(
    inputs: ForecastInputs,
    known: Known | None,
    moment: datetime,
    zone: tzinfo,
    unit_of: UnitOf = metric_unit,
) -> CurveView:
    """Show a batch as it is at ``moment``, with its newest forecast if one is known."""
    batch, course = inputs.batch, inputs.course
    forecast = known.forecast if known is not None else None
    is_grown = batch.purpose is BatchPurpose.CULTURE  # to keep, not to drink: no window
    if forecast is not None and is_grown:
        forecast = replace(forecast, window_opens_day=None, window_closes_day=None)
    suspects = _suspects(known)
    points, ta_points = (
        tuple(
            _point(reading, course, point_words(reading, zone, unit_of), reading in suspects)
            for reading in course.readings
            if reading.quantity is quantity and reading.value is not None
        )
        for quantity in CURVES
    )
    now_day = day_of(course, moment)
    safe_ph, deadline_day = safety.limit("ph_finished_max"), safety.limit("ph_deadline_days")
    if is_grown:
        text = growing_words()
    elif forecast is not None and known is not None:
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
                suspect_words(reading, reason, zone, unit_of)
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
        closes_on=_date_of(forecast.window_closes_day if forecast else None, course.start, zone),
        text_summary=text,
        as_it_is=as_it_is(course),
        notes=_notes(known, now_day, zone, unit_of) if known is not None and not is_grown else (),
    )


def _notes(known: Known, now_day: float, zone: tzinfo, unit_of: UnitOf) -> tuple[str, ...]:
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


def _suspects(known: Known | None) -> dict[Reading, str]:
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
