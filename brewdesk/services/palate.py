"""The maker's own taste, learnt from tastings; the band in the settings is where it begins.

Learnt in the background and kept until a reading or a setting changes. Nothing is stored:
the tastings are.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import islice
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.jarcourse import (
    OBSERVED,
    READ,
    START_SLACK,
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
from culturecore.outcome import Estimate
from culturecore.stages import Quantity, TasteMark
from culturecore.tastewords import Leaning, read_words

if TYPE_CHECKING:
    from culturecore.palate import PreferredBand, TastingVerdict

MOST_TASTINGS = 60  # tastes change; the newest count
NEAR_DAYS = 1.0  # how far from a tasting a measured pH still tells of it
_PH_DRIFT_PER_DAY = 0.1  # by which a jar sours meanwhile, at most usual; an assumption
_TA_DRIFT_PER_DAY = 0.1  # as a share
_TOPICS = Topic.READINGS | Topic.BATCHES | Topic.SETTINGS
_BAND_STEP_PH = 0.01
_KEPT_COURSES = 4 * MOST_TASTINGS
_LEAST_SUGAR_G_PER_L = 0.1  # less has no taste, and no logarithm

OnDay = Callable[[float], tuple[float, float] | None]  # value and standard deviation

_SAID = (Quantity.TASTE, Quantity.NOTE)
_MARKS = {
    Leaning.TOO_SWEET: TasteMark.TOO_SWEET,
    Leaning.RIGHT: TasteMark.RIGHT,
    Leaning.TOO_SOUR: TasteMark.TOO_SOUR,
}


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
            too_sweet_g_per_l=_surely(learnt.sweetest_g_per_l, is_upper=True),
            too_dry_g_per_l=_surely(learnt.driest_g_per_l, is_upper=False),
        )

    def _collect(self) -> tuple[JarCourse, ...]:
        """Read the tastings with everything else that was read of their batches."""
        with self._door.store.read() as unit:
            said = unit.readings.where(quantity=_SAID, order_by=("-at", "-id"))
            tastings = islice((r for r in said if _says_something(r)), MOST_TASTINGS)
            ids = tuple(dict.fromkeys(reading.batch_id for reading in tastings))
            if not ids:
                return ()
            readings = unit.readings.where(
                batch_id=ids, quantity=(*READ, Quantity.NOTE), order_by=("batch_id", "at", "id")
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
    from culturecore.palate import learn_band

    verdicts = [verdict for course in asked.courses for verdict in verdicts_of(course)]
    return learn_band(verdicts, asked.prior.as_core())


def mark_of_words(reading: Reading) -> TasteMark | None:
    """Return what a note says of a sip, None for a note that says nothing of it."""
    if reading.quantity is not Quantity.NOTE:
        return None
    return _MARKS.get(read_words(reading.text).leaning)


@lru_cache(maxsize=_KEPT_COURSES)
def verdicts_of(course: JarCourse) -> tuple[TastingVerdict, ...]:
    """Join a batch's tastings with the pH, acidity and sugar of that moment.

    A pH that was measured within a day counts; without one, what the other readings make
    likely does. The taste itself is then left out, or it would confirm itself. The words of
    a note count where no mark was given with them.
    """
    from culturecore.palate import TastingVerdict

    readings = observed_of(course)
    ph_on, sugar_on = _expected(course)
    found = []
    for tasting, mark in _sips(course):
        day = day_of(course, tasting.at)
        ph = _near(readings, tasting, Quantity.PH, lambda _: _PH_DRIFT_PER_DAY) or ph_on(day)
        if ph is None:
            continue
        acid = _near(readings, tasting, Quantity.TA_G_PER_L, lambda ta: _TA_DRIFT_PER_DAY * ta)
        sugar = sugar_on(day)
        found.append(
            TastingVerdict(
                mark=mark,
                ph=ph[0],
                ph_sd=ph[1],
                ta_g_per_l=acid[0] if acid is not None and acid[0] > 0.0 else None,
                ta_sd_g_per_l=acid[1] if acid is not None and acid[0] > 0.0 else None,
                sugar_g_per_l=max(sugar[0], _LEAST_SUGAR_G_PER_L) if sugar is not None else None,
                sugar_sd_g_per_l=sugar[1] if sugar is not None else None,
                is_from_words=tasting.quantity is Quantity.NOTE,
            )
        )
    return tuple(found)


def _sips(course: JarCourse) -> list[tuple[Reading, TasteMark]]:
    """Find the tastings with their verdicts; a note beside a mark is left to the mark."""
    since = course.start - START_SLACK
    marked = [(reading, taste_of(reading)) for reading in observed_of(course)]
    given = {reading.at for reading, mark in marked if mark is not None}
    said = [
        (reading, mark_of_words(reading))
        for reading in course.readings
        if reading.at >= since and reading.at not in given
    ]
    sips = [(reading, mark) for reading, mark in (*marked, *said) if mark is not None]
    return sorted(sips, key=lambda sip: (sip[0].at, sip[0].id))


def _says_something(reading: Reading) -> bool:
    return reading.quantity is Quantity.TASTE or mark_of_words(reading) is not None


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


def _expected(course: JarCourse) -> tuple[OnDay, OnDay]:
    """Return how to ask what the measured values make of the pH, and of the sugar, on a day."""
    from culturecore.forecast import Forecast, forecast

    made: list[Forecast | None] = []

    def expected() -> Forecast | None:
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
        return made[0]

    def ph_on(day: float) -> tuple[float, float] | None:
        course_of = expected()
        return None if course_of is None else _on(course_of.days, course_of.ph, day)

    def sugar_on(day: float) -> tuple[float, float] | None:
        course_of = expected()
        if course_of is None or course_of.sugar_g_per_l is None:
            return None
        return _on(course_of.days, course_of.sugar_g_per_l, day)

    return ph_on, sugar_on


def _on(
    days: tuple[float, ...], curves: dict[float, tuple[float, ...]], day: float
) -> tuple[float, float] | None:
    """Read a value with its standard deviation off quantile curves."""
    if not 0.0 <= day <= days[-1]:
        return None
    value = value_at(days, curves, day)
    return value.value, sd_from_bounds(value)


def _surely(end: Estimate | None, *, is_upper: bool) -> float | None:
    """Return the outer bound of an end: only what is surely beyond it narrows a window."""
    if end is None:
        return None
    return float(math.ceil(end.high) if is_upper else math.floor(end.low))


def _stepped(ph: float) -> float:
    """Round so that a hardly moved band does not have every forecast worked out anew."""
    return round(ph / _BAND_STEP_PH) * _BAND_STEP_PH
