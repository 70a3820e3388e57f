"""The film that grows on each jar: what its forecast is made of, and what is said of it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime, tzinfo
from typing import TYPE_CHECKING

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.filmwork import Film, FilmInputs
from brewdesk.services.jarcourse import JarCourse, day_of
from brewdesk.services.wording.films import film_words
from brewdesk.store.records import Batch, Culture, Reading
from culturecore.stages import BatchStage, CultureState, Quantity

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

_TOPICS = Topic.BATCHES | Topic.READINGS | Topic.CULTURES


class FilmReader:
    """Read what films depend on, in groups; kept until something of it changes."""

    def __init__(self, door: Door) -> None:
        self._inputs: dict[int, FilmInputs] = {}
        door.changes.changed.connect(self._on_changed)

    def of(self, unit: ReadUnit, batch: Batch) -> FilmInputs:
        """Return what the film of a batch that has begun to sour depends on."""
        if batch.id not in self._inputs:
            self.read(unit, (batch,))
        return self._inputs[batch.id]

    def read(self, unit: ReadUnit, batches: Sequence[Batch]) -> None:
        """Read it for a few batches together, a query a table."""
        self.take_over(read_films(unit, batches))

    def take_over(self, inputs: Mapping[int, FilmInputs]) -> None:
        """Keep what was read elsewhere by batch, and of which nothing has changed since."""
        self._inputs.update(inputs)

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        if change.concerns(Topic.CULTURES):  # whose jars it stands in is not said
            self._inputs.clear()
        for batch_id in tuple(self._inputs):
            if change.concerns_batch(batch_id):
                del self._inputs[batch_id]


def read_films(unit: ReadUnit, batches: Sequence[Batch]) -> dict[int, FilmInputs]:
    """Return what the films of several batches depend on, from a query a table."""
    measured = unit.readings.where(
        batch_id=tuple(batch.id for batch in batches),
        quantity=Quantity.PELLICLE_MM,
        order_by=("at", "id"),
    )
    ids = {batch.culture_id for batch in batches if batch.culture_id is not None}
    cultures = {row.id: row for row in unit.cultures.where(id=tuple(ids))} if ids else {}
    found: dict[int, FilmInputs] = {}
    for batch in batches:
        own = tuple(row for row in measured if row.batch_id == batch.id)
        culture = cultures[batch.culture_id] if batch.culture_id is not None else None
        found[batch.id] = film_inputs(batch, own, culture)
    return found


def film_inputs(batch: Batch, measured: Sequence[Reading], culture: Culture | None) -> FilmInputs:
    """Return what a batch's film depends on, from its film readings by time and its culture."""
    # A film is no younger than the jar: what was measured before is the old pellicle.
    start = batch.started_at or batch.planned_at
    own = tuple(row for row in measured if row.at > start and row.value is not None)
    is_from_raw = culture is None or culture.state is CultureState.FORMING
    old_mm = 0.0 if culture is None or is_from_raw else culture.pellicle_mm or 0.0
    return FilmInputs(own, is_from_raw, old_mm)


def film_notes(
    film: Film | None, course: JarCourse, moment: datetime, zone: tzinfo
) -> tuple[str, ...]:
    """Say what is expected of the film; nothing once the batch has left the jar."""
    if film is None or course.batch.stage is not BatchStage.SOURING:
        return ()
    words = film_words(
        film.forecast,
        started_at=course.start,
        now_day=max(0.0, day_of(course, moment)),
        is_from_raw=film.is_from_raw,
        has_been_seen=film.has_been_seen,
        zone=zone,
    )
    return (words,) if words else ()
