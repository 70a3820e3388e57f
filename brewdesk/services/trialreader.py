"""Reads a trial out of the pantry: its jars, their readings and tastings, what differs."""

from __future__ import annotations

import statistics
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from brewdesk.services.door import Door
from brewdesk.services.jarcourse import DAY, START_SLACK
from brewdesk.services.trialcompare import Jar, compare_arms, value_of
from brewdesk.services.trialdifferences import differences
from brewdesk.services.trialview import (
    Comparison,
    JarMeasures,
    TrialJarView,
    TrialOutcome,
    TrialPoint,
    TrialView,
    is_hidden,
)
from brewdesk.store.records import Batch, Place, Reading, Vessel
from brewdesk.store.trialrecords import Trial, TrialArm, TrialJar, TrialScore
from culturecore.outcome import Estimate
from culturecore.stages import Quantity
from culturecore.trials import (
    THRESHOLD_PH,
    Crossing,
    DayReading,
    JarSize,
    Passed,
    crossing_of,
    size_groups,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit
    from culturecore.forecast import Forecast

ForecastOf = Callable[[int], "Forecast | None"]
_READ = (Quantity.PH, Quantity.TA_G_PER_L, Quantity.PELLICLE_MM)
_SAME_DAY = timedelta(days=1.5)  # readings of different jars that may be laid side by side
_ROUGH_PH_SD = 0.3  # a reading without its uncertainty counts as one by strip
_Z80 = 1.2815515655446004


def no_forecast(_batch_id: int) -> Forecast | None:
    """Say that no forecast is known."""
    return None


@dataclass(frozen=True, slots=True)
class _Rows:
    trial: Trial
    arms: tuple[TrialArm, ...]
    jars: tuple[TrialJar, ...]
    batches: dict[int, Batch]
    vessels: dict[int, Vessel]
    places: dict[int, Place]
    culture_names: dict[int, str]
    readings: dict[int, tuple[Reading, ...]]
    scores: dict[int, tuple[TrialScore, ...]]

    def batch_of(self, jar: TrialJar) -> Batch | None:
        return None if jar.batch_id is None else self.batches.get(jar.batch_id)

    def vessel_of(self, jar: TrialJar) -> Vessel | None:
        batch = self.batch_of(jar)
        vessel_id = jar.vessel_id if batch is None else batch.vessel_id
        return None if vessel_id is None else self.vessels.get(vessel_id)


class TrialReader:
    """Reads trials. ``forecast_of`` gives a batch's newest forecast, if there is one."""

    def __init__(self, door: Door, forecast_of: ForecastOf = no_forecast) -> None:
        self._door = door
        self._forecast_of = forecast_of
        # The last comparisons: dealing many jars out anew takes longer than a frame.
        self._known: tuple[object, tuple[Comparison, ...]] = (None, ())

    def view(self, trial_id: int) -> TrialView:
        """Return a trial as it stands.

        Raises
        ------
        NoSuchRow
            If there is no trial with this id.
        """
        with self._door.store.read() as unit:
            rows = _read(unit, trial_id)
        hidden = is_hidden(rows.trial)
        days = {
            TrialOutcome.ACIDITY: _common_day(rows, Quantity.TA_G_PER_L),
            TrialOutcome.PELLICLE: _common_day(rows, Quantity.PELLICLE_MM),
        }
        arms = {arm.id: arm for arm in rows.arms}
        jars = tuple(
            TrialJarView(
                jar=jar,
                arm=None if hidden else arms[jar.arm_id],
                batch=rows.batch_of(jar),
                vessel=rows.vessel_of(jar),
                points=_points(rows, jar, Quantity.PH),
                measures=self._measures(rows, jar, days),
                scores=rows.scores.get(jar.id, ()),
            )
            for jar in rows.jars
        )
        counted = [jar for jar in jars if jar.is_counted]
        return TrialView(
            trial=rows.trial,
            arms=() if hidden else rows.arms,
            jars=jars,
            comparisons=() if hidden else self._compared(rows, counted, days),
            differences=differences(
                rows.trial, counted, rows.places, rows.culture_names, tells_arms=not hidden
            ),
            is_hidden=hidden,
            threshold_ph=THRESHOLD_PH,
            arm_counts=()
            if hidden
            else tuple(sum(jar.jar.arm_id == arm.id for jar in counted) for arm in rows.arms),
        )

    def values_of_arms(self, trial_id: int, outcome: TrialOutcome) -> tuple[tuple[float, ...], ...]:
        """Return what was measured of the counted jars of each arm; nothing while hidden."""
        view = self.view(trial_id)
        return tuple(
            tuple(
                value
                for jar in view.counted
                if jar.jar.arm_id == arm.id
                and (value := value_of(jar.measures, outcome)) is not None
            )
            for arm in view.arms
        )

    def _compared(
        self,
        rows: _Rows,
        jars: Sequence[TrialJarView],
        days: dict[TrialOutcome, float | None],
    ) -> tuple[Comparison, ...]:
        sizes = [
            JarSize(
                working_volume_l=jar.vessel.working_volume_l,
                inner_diameter_cm=jar.vessel.inner_diameter_cm,
            )
            if jar.vessel is not None
            else JarSize(working_volume_l=0.0, inner_diameter_cm=0.0)
            for jar in jars
        ]
        counted = [
            Jar(arm_id=jar.jar.arm_id, block=block, measures=jar.measures)
            for jar, block in zip(jars, size_groups(sizes), strict=True)
        ]
        asked = (rows.trial.seed, rows.arms, counted, days)
        if self._known[0] != asked:
            made = compare_arms(rows.arms, counted, seed=rows.trial.seed, days=days)
            self._known = (asked, made)
        return self._known[1]

    def _measures(
        self, rows: _Rows, jar: TrialJar, days: dict[TrialOutcome, float | None]
    ) -> JarMeasures:
        crossing, is_reckoned = _crossing(rows, jar)
        expected = None
        if crossing.how is Passed.NOT_YET and jar.batch_id is not None:
            expected = _expected(self._forecast_of(jar.batch_id), crossing)
        scores = rows.scores.get(jar.id, ())
        likings = [score.liking for score in scores if score.liking is not None]
        return JarMeasures(
            crossing=crossing,
            starts_reckoned=is_reckoned,
            expected=expected,
            acidity_g_per_l=_near(rows, jar, Quantity.TA_G_PER_L, days[TrialOutcome.ACIDITY]),
            pellicle_mm=_near(rows, jar, Quantity.PELLICLE_MM, days[TrialOutcome.PELLICLE]),
            liking=statistics.median(likings) if likings else None,
            marks=tuple(score.mark for score in scores if score.mark is not None),
            tastings=len(scores),
        )


def _read(unit: ReadUnit, trial_id: int) -> _Rows:
    jars = unit.trial_jars.where(trial_id=trial_id, order_by="position")
    batch_ids = tuple(jar.batch_id for jar in jars if jar.batch_id is not None)
    batches = unit.batches.where(id=batch_ids) if batch_ids else ()
    vessel_ids = {batch.vessel_id for batch in batches}
    vessel_ids |= {jar.vessel_id for jar in jars if jar.vessel_id is not None}
    readings = (
        unit.readings.where(batch_id=batch_ids, quantity=_READ, order_by="at") if batch_ids else ()
    )
    jar_ids = tuple(jar.id for jar in jars)
    scores = unit.trial_scores.where(jar_id=jar_ids, order_by=("at", "id")) if jar_ids else ()
    culture_ids = tuple(batch.culture_id for batch in batches if batch.culture_id is not None)
    cultures = unit.cultures.where(id=culture_ids) if culture_ids else ()
    return _Rows(
        trial=unit.trials.get(trial_id),
        arms=unit.trial_arms.where(trial_id=trial_id, order_by="position"),
        jars=jars,
        batches={batch.id: batch for batch in batches},
        vessels={row.id: row for row in unit.vessels.where(id=tuple(vessel_ids))}
        if vessel_ids
        else {},
        places={place.id: place for place in unit.places.where()},
        culture_names={culture.id: culture.name for culture in cultures},
        readings={one: tuple(r for r in readings if r.batch_id == one) for one in batch_ids},
        scores={one: tuple(s for s in scores if s.jar_id == one) for one in jar_ids},
    )


def _points(rows: _Rows, jar: TrialJar, quantity: Quantity) -> tuple[TrialPoint, ...]:
    """Return what was read of the blend itself; before the start it was water or starter."""
    batch = rows.batch_of(jar)
    if batch is None or batch.started_at is None:
        return ()
    return tuple(
        TrialPoint(
            max(0.0, (reading.at - batch.started_at) / DAY),
            reading.value,
            _ROUGH_PH_SD if reading.sd is None else reading.sd,
        )
        for reading in rows.readings.get(batch.id, ())
        if reading.quantity is quantity
        and reading.value is not None
        and reading.at >= batch.started_at - START_SLACK
    )


def _crossing(rows: _Rows, jar: TrialJar) -> tuple[Crossing, bool]:
    """Return when the threshold was passed, and whether the plan's start pH stood in."""
    points = [DayReading(p.day, p.value, p.sd) for p in _points(rows, jar, Quantity.PH)]
    crossing = crossing_of(points, THRESHOLD_PH)
    batch = rows.batch_of(jar)
    if crossing.how is not Passed.BEFORE or batch is None or batch.start_ph <= THRESHOLD_PH:
        return crossing, False
    sd = max(0.05, (batch.start_ph_high - batch.start_ph_low) / (2.0 * _Z80))
    return crossing_of([DayReading(0.0, batch.start_ph, sd), *points], THRESHOLD_PH), True


def _expected(forecast: Forecast | None, crossing: Crossing) -> Estimate | None:
    """Return the day on which the forecast's courses pass the threshold."""
    if forecast is None:
        return None
    low, middle, high = (_passes(forecast.days, forecast.ph[q]) for q in (0.1, 0.5, 0.9))
    if middle is None:
        return None
    least = crossing.low or 0.0
    last = forecast.days[-1]
    return Estimate(
        value=max(middle, least),
        low=max(middle if low is None else low, least),
        high=max(last if high is None else high, least),
    )


def _passes(days: Sequence[float], curve: Sequence[float]) -> float | None:
    return next((day for day, ph in zip(days, curve, strict=True) if ph <= THRESHOLD_PH), None)


def _common_day(rows: _Rows, quantity: Quantity) -> float | None:
    """Return the latest day on which most jars have a reading: the median of their last ones."""
    last = [
        points[-1].day
        for jar in rows.jars
        if not jar.left_out_reason and (points := _points(rows, jar, quantity))
    ]
    return statistics.median_low(last) if last else None


def _near(rows: _Rows, jar: TrialJar, quantity: Quantity, day: float | None) -> float | None:
    if day is None:
        return None
    points = _points(rows, jar, quantity)
    nearest = min(points, key=lambda point: abs(point.day - day), default=None)
    if nearest is None or abs(nearest.day - day) > _SAME_DAY / DAY:
        return None
    return nearest.value
