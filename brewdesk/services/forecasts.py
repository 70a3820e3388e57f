"""Forecasts of the batches: worked out in the background, kept for as long as they are true.

Nothing is stored here. What a restart must know before the first forecast has run (when
to taste) is in the reminders.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from functools import partial
from itertools import islice
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from brewdesk.services.batchbook import BatchBook
from brewdesk.services.changes import Change, Topic
from brewdesk.services.coursereader import CourseReader, read_courses
from brewdesk.services.culturelore import CultureLore
from brewdesk.services.curveview import CurvePoint as CurvePoint
from brewdesk.services.curveview import CurveView as CurveView
from brewdesk.services.curveview import Known, curve_view, window_of
from brewdesk.services.door import Door
from brewdesk.services.films import FilmReader, film_notes, read_films
from brewdesk.services.filmwork import FilmInputs
from brewdesk.services.forecastwork import (
    ForecastInputs,
    PackedOutcome,
    imagined_of,
    packed_outcome_of,
)
from brewdesk.services.forecastwork import work_out as work_out
from brewdesk.services.jarcourse import JarCourse, day_of
from brewdesk.services.jobs import JobRunner, Pool
from brewdesk.services.placecourse import SampleMeans
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.tasteband import TasteBand as TasteBand
from brewdesk.services.tasteband import usual_band as usual_band
from brewdesk.services.turns import Turns
from brewdesk.services.whatif import WhatIf
from brewdesk.services.wording.outlook import imagined_words
from brewdesk.services.wording.shownunits import UnitOf, metric_unit
from brewdesk.store.records import Batch
from culturecore.stages import BatchPurpose

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit
    from culturecore.forecast import Forecast

_TOPICS = Topic.READINGS | Topic.BATCHES | Topic.VESSELS | Topic.SETTINGS | Topic.PLACES
_Found = tuple[tuple[JarCourse, ...], dict[int, FilmInputs]]
YESTERDAY = timedelta(hours=24)
# How long asking for forecasts may keep the window's thread before it is asked for in turns.
_AT_ONCE_S = 0.005
_MANY = 30
_TOGETHER = 2  # as many as are read, or asked for, in a small part of a turn
_FEW = 8  # are read at once
_READ_APART = 24  # as many as keep the figures busy while the next are read
_TURN = "forecasts"


@dataclass(frozen=True, slots=True, kw_only=True)
class Imagined:
    """The course of a batch as it would be otherwise; only looked at, never kept."""

    batch_id: int
    change: WhatIf
    days: tuple[float, ...]
    ph_median: tuple[float, ...]
    ta_median: tuple[float, ...]
    text: str


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
        means: SampleMeans | None = None,
        turns: Turns | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._door = door
        self._jobs = jobs
        self._band = band
        self._unit_of = unit_of
        # These hear of a change before this does, and so before anyone asks again.
        self._book = BatchBook(door)
        self._courses = CourseReader(door, means)
        self._lore = CultureLore(door, self._book, self._courses)
        self._films = FilmReader(door)
        self._known: dict[int, Known] = {}
        self._asked: dict[int, ForecastInputs] = {}
        self._next: dict[int, None] = {}  # what the maker has just changed
        self._waiting: dict[int, None] = {}  # in the order of asking
        self._looked_at: set[int] = set()
        self._running: dict[int, bool] = {}  # whether it was asked for at once
        self._told_late: set[int] = set()
        self._changes = 0
        self._is_reading = False  # in another thread
        self._turns = turns if turns is not None else Turns(door.clock, self)
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
        moment, zone = self._moment(inputs.batch), self._door.clock.zone()
        known = self._known.get(batch_id)
        view = curve_view(inputs, known, moment, zone, self._unit_of)
        is_growing = inputs.batch.purpose is BatchPurpose.CULTURE  # its guide tells of its film
        if known is None or is_growing:
            return view
        film_words = film_notes(known.film, inputs.course, moment, zone)
        return replace(view, notes=(*view.notes, *film_words))

    def request(self, batch_id: int) -> None:
        """Have a batch's forecast worked out at once, unless the newest one still holds.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        with self._door.store.read() as unit:
            asked = self._asked_of(unit, batch_id, is_urgent=True)
        self._run(asked, is_urgent=True)

    def request_all_live(self) -> None:
        """Have the forecasts of all souring batches worked out that do not hold any more.

        However many there are, the window's thread is kept for a part of a frame at a time.
        """
        self._waiting.update(dict.fromkeys(batch.id for batch in self._book.souring()))
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
        now_day = max(0.0, day_of(inputs.course, self._moment(inputs.batch)))
        self._jobs.run(
            partial(imagined_of, inputs, now_day, change),
            lambda forecast: self._on_imagined(inputs, change, forecast),
            key="what-if",
            pool=Pool.APART,
            is_urgent=True,
        )

    def window_of(self, batch_id: int) -> TastingWindow | None:
        """Return the forecast tasting window; None while there is no forecast."""
        return window_of(self._known.get(batch_id))

    def newest(self, batch_id: int) -> Forecast | None:
        """Return a batch's newest forecast as it was worked out; None while there is none."""
        known = self._known.get(batch_id)
        return None if known is None else known.forecast

    def _inputs(self, batch_id: int) -> ForecastInputs | None:
        with self._door.store.read() as unit:
            return self._inputs_in(unit, batch_id)

    def _inputs_in(self, unit: ReadUnit, batch_id: int) -> ForecastInputs | None:
        batch = self._book.get(unit, batch_id)
        if batch.started_at is None:
            return None
        course = self._courses.of(unit, batch)
        teachers = self._lore.teachers_of(batch, unit)
        film = self._films.of(unit, batch)
        moment = self._moment(batch)
        return ForecastInputs(
            course,
            self._band(),
            int(day_of(course, moment)),
            teachers,
            frozenset(reading.id for reading in course.readings if reading.at > moment - YESTERDAY),
            film,
        )

    def _unread(self, unit: ReadUnit) -> tuple[Batch, ...] | None:
        """Read a few courses that the next forecast lacks; of a crowd return them instead.

        None says that it lacks none.
        """
        queue = self._next or self._waiting
        first = self._book.find(unit, next(iter(queue)))
        if first is None:
            return None
        is_crowd = not self._next and len(self._waiting) > _FEW
        missing = self._missing(unit, first, queue, _READ_APART if is_crowd else _TOGETHER)
        if is_crowd or not missing:
            return missing or None
        self._courses.read(unit, missing)
        self._films.read(unit, missing)
        return ()

    def _missing(
        self, unit: ReadUnit, first: Batch, queue: Iterable[int], most: int
    ) -> tuple[Batch, ...]:
        """Return some batches to read for the first of a queue, begun ones only."""
        if self._courses.has(first.id):
            return self._lore.unread(first, unit, most)
        # Those that wait behind it are read with it: they are asked for next.
        waiting = (self._book.find(unit, one) for one in islice(queue, most))
        return tuple(
            batch
            for batch in waiting
            if batch is not None and batch.started_at and not self._courses.has(batch.id)
        )

    def _begin_reading(self, batches: tuple[Batch, ...]) -> None:
        """Read these where the store is written too: neither waits for the other then."""
        self._is_reading = True
        self._jobs.run(
            partial(self._read, batches),
            partial(self._on_read, self._changes),
            self._on_unread,
            key="courses",
            pool=Pool.STORE,
            is_urgent=True,
        )

    def _read(self, batches: tuple[Batch, ...]) -> _Found:
        with self._door.store.read() as unit:
            courses = read_courses(unit, batches, self._courses.means)
            return courses, read_films(unit, batches)

    def _on_read(self, changes: int, found: _Found) -> None:
        self._is_reading = False
        if changes == self._changes:  # else some of it may be old: it is read again
            courses, films = found
            self._courses.take_over(courses)
            self._films.take_over(films)
        self._begin_turns()

    def _on_unread(self, error: BaseException) -> None:
        self._is_reading = False
        raise error

    def _moment(self, batch: Batch) -> datetime:
        now = self._door.clock.now()
        return min(now, batch.ended_at) if batch.ended_at is not None else now

    def _asked_of(self, unit: ReadUnit, batch_id: int, *, is_urgent: bool) -> ForecastInputs | None:
        """Return what a forecast is to be worked out from; None if the newest one holds."""
        for queue in (self._next, self._waiting):
            queue.pop(batch_id, None)
        inputs = self._inputs_in(unit, batch_id)
        if inputs is None:
            return None
        if is_urgent:
            self._looked_at.add(batch_id)
        elif batch_id not in self._looked_at:
            # What moved since yesterday is told where somebody looks; it costs as much again.
            inputs = replace(inputs, fresh=frozenset())
        # One that still waits behind others is asked for again, to be taken before them.
        is_to_be_hurried = is_urgent and self._running.get(batch_id) is False
        if inputs == self._asked.get(batch_id) and not is_to_be_hurried:
            return None
        return inputs

    def _run(self, inputs: ForecastInputs | None, *, is_urgent: bool) -> None:
        if inputs is None:
            return
        batch_id = inputs.batch.id
        self._asked[batch_id] = inputs
        self._running[batch_id] = is_urgent
        self._jobs.run(
            partial(packed_outcome_of, inputs),
            lambda outcome: self._on_done(inputs, outcome),
            lambda error: self._on_failed(batch_id, error),
            key=f"forecast-{batch_id}",
            pool=Pool.APART,
            is_urgent=is_urgent,
        )

    def _begin_turns(self) -> None:
        """Begin at once, unless listing so many has taken its share of a frame already."""
        if self._turns.has(_TURN):
            return
        work = self._asking()
        if len(self._waiting) + len(self._next) <= _MANY:
            clock = self._door.clock
            began = clock.monotonic()
            while clock.monotonic() - began < _AT_ONCE_S:
                if next(work, _TURN) is _TURN:
                    return
        self._turns.begin(_TURN, work)

    def _asking(self) -> Iterator[None]:
        """Ask for the waiting forecasts, a few at a step."""
        while self._next or (self._waiting and not self._is_reading):
            for _ in range(_TOGETHER):
                self._ask_one()
            yield

    def _ask_one(self) -> None:
        """Ask for the next forecast, or read some of what it lacks."""
        if not self._next and (not self._waiting or self._is_reading):
            return
        is_urgent, asked = bool(self._next), None
        with self._door.store.read() as unit:
            unread = self._unread(unit)
            if unread is None:
                first = next(iter(self._next or self._waiting))
                asked = self._asked_of(unit, first, is_urgent=is_urgent)
        # Out of the unit: what comes of it may be written.
        if unread:
            self._begin_reading(unread)
        self._run(asked, is_urgent=is_urgent)

    def _on_done(self, inputs: ForecastInputs, outcome: PackedOutcome) -> None:
        batch_id = inputs.batch.id
        self._running.pop(batch_id, None)
        self._known[batch_id] = Known(inputs, outcome)
        self.ready.emit(batch_id)
        # Of many that come at once the others hear once: each hearing looks at the whole shelf.
        self._told_late.add(batch_id)
        if not self._running and not self._waiting and not self._next:
            told, self._told_late = self._told_late, set()
            self._door.changes.announce(Topic.FORECASTS, batch_ids=told)

    def _on_failed(self, batch_id: int, error: BaseException) -> None:
        self._running.pop(batch_id, None)
        raise error

    def _on_imagined(
        self, inputs: ForecastInputs, change: WhatIf, forecast: Forecast | None
    ) -> None:
        if forecast is None:
            return
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
                    zone=self._door.clock.zone(),
                ),
            )
        )

    def _on_changed(self, change: Change) -> None:
        if change.concerns(_TOPICS | Topic.CULTURES):
            self._changes += 1
        if not change.concerns(_TOPICS):
            return
        for batch in self._book.souring():
            if batch.id in change.batch_ids:
                self._next[batch.id] = None
            elif (
                change.concerns_batch(batch.id)
                or batch.vessel_id in change.vessel_ids
                or change.concerns(Topic.SETTINGS)
            ):
                self._waiting[batch.id] = None
        self._begin_turns()
