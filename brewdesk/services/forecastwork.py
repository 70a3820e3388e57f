"""The figures of one batch's forecast, from everything that they depend on.

Plain values and pure functions without Qt, store and clock, so that all of it may run in
any thread, and in a process that has never seen a window.
"""

from __future__ import annotations

import pickle
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from brewdesk.services.filmwork import Film, FilmInputs, film_of
from brewdesk.services.jarcourse import JarCourse, conditions_of, observations_of, observed
from brewdesk.services.tasteband import TasteBand
from brewdesk.services.teaching import Teachers, learn
from brewdesk.services.whatif import WhatIf, imagine
from brewdesk.store.records import Batch
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate
from culturecore.stages import BatchStage

if TYPE_CHECKING:
    from culturecore.forecast import Forecast


_NO_FILM = FilmInputs()
_KEPT_UNPACKED = 8  # one jar is looked at at a time


@dataclass(frozen=True, slots=True)
class ForecastInputs:
    """Everything a forecast depends on; equal inputs have equal forecasts."""

    course: JarCourse
    band: TasteBand
    age_days: int
    teachers: Teachers
    fresh: frozenset[int]  # ids of readings of the last day
    film: FilmInputs = _NO_FILM

    @property
    def batch(self) -> Batch:
        """The batch that is forecast."""
        return self.course.batch


@dataclass(frozen=True, slots=True)
class Outcome:
    """A forecast, the one of a day ago if there is something new since, and the film's.

    ``now`` is None if the amounts or readings are such as no jar can have, ``film`` also for
    a batch that has left its jar.
    """

    now: Forecast | None
    day_ago: Forecast | None = None
    film: Film | None = None


@dataclass(frozen=True, slots=True)
class PackedOutcome:
    """An outcome on its way from another process, and as it is kept: quick to take and small.

    What is asked of every jar stands outside: the window's ends in days from the start, and
    ``horizon_days``, None if there is no forecast. Unpacked is the one that is looked at.
    """

    opens: Estimate | None
    closes: Estimate | None
    horizon_days: float | None
    packed: bytes

    def whole(self) -> Outcome:
        """Return all of it."""
        return _unpacked(self.packed)


@lru_cache(maxsize=_KEPT_UNPACKED)
def _unpacked(packed: bytes) -> Outcome:
    outcome = pickle.loads(packed)  # made by this program's own process
    assert isinstance(outcome, Outcome)  # see `packed_outcome_of`
    return outcome


def work_out(inputs: ForecastInputs) -> Forecast:
    """Forecast one batch. Slow: run it as a job.

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
        band=inputs.band.as_core(),
    )


def outcome_of(inputs: ForecastInputs) -> Outcome:
    """Forecast one batch and its film and, if that may have moved, the batch of a day ago."""
    try:
        now = work_out(inputs)
    except ImpossibleInput:
        return Outcome(None)
    course = inputs.course
    is_in_its_jar = course.batch.stage is BatchStage.SOURING
    film = film_of(course, inputs.film) if is_in_its_jar else None
    earlier = tuple(reading for reading in course.readings if reading.id not in inputs.fresh)
    # On the first day there was no forecast yet that could have moved.
    if not inputs.fresh or inputs.age_days < 1:
        return Outcome(now, film=film)
    try:
        day_ago = work_out(
            replace(inputs, course=replace(course, readings=earlier), fresh=frozenset())
        )
    except ImpossibleInput:
        return Outcome(None)
    return Outcome(now, day_ago, film)


def packed_outcome_of(inputs: ForecastInputs) -> PackedOutcome:
    """Do as `outcome_of`, and pack what comes of it."""
    outcome = outcome_of(inputs)
    forecast = outcome.now
    return PackedOutcome(
        opens=forecast.window_opens_day if forecast is not None else None,
        closes=forecast.window_closes_day if forecast is not None else None,
        horizon_days=forecast.days[-1] if forecast is not None else None,
        packed=pickle.dumps(outcome, pickle.HIGHEST_PROTOCOL),
    )


def imagined_of(inputs: ForecastInputs, now_day: float, change: WhatIf) -> Forecast | None:
    """Forecast one batch as it would be otherwise; None for amounts that no jar can have."""
    try:
        return imagine(inputs.course, inputs.teachers, inputs.band.as_core(), now_day, change)
    except ImpossibleInput:
        return None
