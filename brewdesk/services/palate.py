"""The maker's own taste, learnt from tastings; the band in the settings is where it begins.

Learnt in the background and kept until a reading or a setting changes. Nothing is stored:
the tastings are.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.jarcourse import (
    OBSERVED,
    READ,
    JarCourse,
    conditions_of,
    day_of,
    observations_of,
    sd_from_bounds,
    sd_of,
    taste_of,
    value_at,
)
from brewdesk.services.jarcourse import observed as observed_of
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.settings import FIRST_TASTE_PH, LEARN_TASTE, TOO_SOUR_PH, Settings
from brewdesk.services.tasteband import TasteBand as TasteBand
from brewdesk.store.records import Reading
from culturecore.errors import ImpossibleInput
from culturecore.stages import Quantity

if TYPE_CHECKING:
    from culturecore.palate import PreferredBand, TastingVerdict

MOST_TASTINGS = 60  # tastes change; the newest count
NEAR_DAYS = 1.0  # how far from a tasting a measured pH still tells of it
_PH_DRIFT_PER_DAY = 0.1  # by which a jar sours meanwhile, at most usual; an assumption
_TA_DRIFT_PER_DAY = 0.1  # as a share
_TOPICS = Topic.READINGS | Topic.BATCHES | Topic.SETTINGS
_BAND_STEP_PH = 0.01


@dataclass(frozen=True, slots=True)
class _Asked:
    """Everything that a learnt band depends on."""

    courses: tuple[JarCourse, ...]
    prior: TasteBand


def set_band(settings: Settings) -> TasteBand:
    """Return the band that the maker has set by hand."""
    return TasteBand(
        first_taste_ph=settings.get(FIRST_TASTE_PH), too_sour_ph=settings.get(TOO_SOUR_PH)
    )


class Palate(QObject):
    """The band in force: the one set by hand, moved by tastings if the maker allows it.

    ``learned`` is emitted when the band in force, or what is known of it, has changed.
    """

    learned = Signal()

    def __init__(
        self, door: Door, jobs: JobRunner, settings: Settings, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._jobs = jobs
        self._settings = settings
        self._asked: _Asked | None = None
        self._learnt: PreferredBand | None = None
        self._is_awake = False
        door.changes.changed.connect(self._on_changed)

    def band(self) -> TasteBand:
        """Return the band in force now; the first call begins the learning."""
        if not self._is_awake:
            self._is_awake = True
            self.refresh()
        return self._in_force()

    def learnt(self) -> PreferredBand | None:
        """Return what tastings have taught; None while nothing has or learning is off."""
        learnt = self._learnt
        if learnt is None or learnt.verdict_count == 0 or not self._settings.get(LEARN_TASTE):
            return None
        return learnt

    def refresh(self) -> None:
        """Learn anew in the background, unless nothing has changed."""
        self._jobs.run(self._collect, self._on_collected, key="palate-tastings", pool=Pool.STORE)

    def _in_force(self) -> TasteBand:
        learnt = self.learnt()
        if learnt is None:
            return set_band(self._settings)
        return TasteBand(
            first_taste_ph=_stepped(learnt.first_taste_ph.value),
            too_sour_ph=_stepped(learnt.too_sour_ph.value),
        )

    def _collect(self) -> tuple[JarCourse, ...]:
        """Read the tastings with everything else that was read of their batches."""
        with self._door.store.read() as unit:
            tastings = unit.readings.where(quantity=Quantity.TASTE, order_by=("-at", "-id"))
            ids = tuple(dict.fromkeys(reading.batch_id for reading in tastings[:MOST_TASTINGS]))
            if not ids:
                return ()
            readings = unit.readings.where(
                batch_id=ids, quantity=READ, order_by=("batch_id", "at", "id")
            )
            batches = unit.batches.where(id=ids, order_by="id")
            vessels = {batch.id: unit.vessels.get(batch.vessel_id) for batch in batches}
        by_batch: dict[int, list[Reading]] = {}
        for reading in readings:
            by_batch.setdefault(reading.batch_id, []).append(reading)
        return tuple(
            JarCourse(batch, vessels[batch.id], tuple(by_batch.get(batch.id, ())))
            for batch in batches
            if batch.started_at is not None
        )

    def _on_collected(self, courses: tuple[JarCourse, ...]) -> None:
        asked = _Asked(courses, set_band(self._settings))
        if asked == self._asked:
            return
        self._asked = asked
        self._jobs.run(lambda: learn(asked), self._on_learnt, key="palate", pool=Pool.FIGURES)

    def _on_learnt(self, learnt: PreferredBand) -> None:
        before = (self._in_force(), self.learnt())
        self._learnt = learnt
        if (self._in_force(), self.learnt()) != before:
            self.learned.emit()

    def _on_changed(self, change: Change) -> None:
        if self._is_awake and change.concerns(_TOPICS):
            self.refresh()


def learn(asked: _Asked) -> PreferredBand:
    """Learn the band from tastings. Slow: run it as a job."""
    from culturecore.forecast import Band
    from culturecore.palate import learn_band

    prior = Band(first_taste_ph=asked.prior.first_taste_ph, too_sour_ph=asked.prior.too_sour_ph)
    verdicts = [verdict for course in asked.courses for verdict in verdicts_of(course)]
    return learn_band(verdicts, prior)


def verdicts_of(course: JarCourse) -> list[TastingVerdict]:
    """Join a batch's tastings with the pH and acidity of that moment.

    A pH that was measured within a day counts; without one, what the other readings make
    likely does. The taste itself is then left out, or it would confirm itself.
    """
    from culturecore.palate import TastingVerdict

    readings = observed_of(course)
    expected = _expected_ph(course)
    found = []
    for tasting in readings:
        mark = taste_of(tasting)
        if mark is None:
            continue
        ph = _near(readings, tasting, Quantity.PH, lambda _: _PH_DRIFT_PER_DAY)
        ph = ph or expected(day_of(course, tasting.at))
        if ph is None:
            continue
        acid = _near(readings, tasting, Quantity.TA_G_PER_L, lambda ta: _TA_DRIFT_PER_DAY * ta)
        found.append(
            TastingVerdict(
                mark=mark,
                ph=ph[0],
                ph_sd=ph[1],
                ta_g_per_l=acid[0] if acid is not None and acid[0] > 0.0 else None,
                ta_sd_g_per_l=acid[1] if acid is not None and acid[0] > 0.0 else None,
            )
        )
    return found


def _near(
    readings: tuple[Reading, ...],
    tasting: Reading,
    quantity: Quantity,
    drift_per_day: Callable[[float], float],
) -> tuple[float, float] | None:
    """Return the nearest reading of a quantity with its uncertainty at the time of a tasting."""
    measured = [
        (abs((reading.at - tasting.at).total_seconds()) / 86_400.0, reading.value, sd_of(reading))
        for reading in readings
        if reading.quantity is quantity and reading.value is not None
    ]
    if not measured:
        return None
    away_days, value, sd = min(measured)
    if away_days > NEAR_DAYS:
        return None
    return value, math.hypot(sd, drift_per_day(value) * away_days)


def _expected_ph(course: JarCourse) -> Callable[[float], tuple[float, float] | None]:
    """Return how to ask what the measured values make of the pH on a day."""
    from culturecore.forecast import Forecast, forecast

    made: list[Forecast | None] = []

    def expected(day: float) -> tuple[float, float] | None:
        if not made:
            untasted = replace(
                course,
                readings=tuple(r for r in course.readings if r.quantity is not Quantity.TASTE),
            )
            measured = [r for r in observed_of(untasted) if r.quantity in OBSERVED]
            try:
                conditions = conditions_of(untasted)
                made.append(forecast(conditions, observations_of(untasted, measured)))
            except ImpossibleInput:
                made.append(None)
        course_of = made[0]
        if course_of is None or not 0.0 <= day <= course_of.days[-1]:
            return None
        ph = value_at(course_of.days, course_of.ph, day)
        return ph.value, sd_from_bounds(ph)

    return expected


def _stepped(ph: float) -> float:
    """Round so that a hardly moved band does not have every forecast worked out anew."""
    return round(ph / _BAND_STEP_PH) * _BAND_STEP_PH
