"""Which other batches teach something of a culture, and what they teach.

A batch is never its own teacher: what it taught would count twice in its forecast.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from brewdesk.services.changes import Change, Topic
from brewdesk.services.coursereader import read_course
from brewdesk.services.door import Door
from brewdesk.services.jarcourse import CURVES, JarCourse, conditions_of, observations_of
from brewdesk.services.jarcourse import observed as observed_of
from brewdesk.store.records import Batch
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit
    from culturecore.forecast import Conditions, KnownCulture, Observation

MOST_TEACHERS = 10  # older batches tell less of what a culture is now
LEAST_READINGS = 2
_FINISHED = (BatchStage.DRAWN_OFF, BatchStage.CLOSED)
_TEACHING = (*_FINISHED, BatchStage.SOURING)
_TOPICS = Topic.BATCHES | Topic.READINGS | Topic.VESSELS
_KEPT = 64


@dataclass(frozen=True, slots=True)
class Teachers:
    """The courses that teach of one batch's culture, and those of the same pantry."""

    own: tuple[JarCourse, ...] = ()
    pantry: tuple[JarCourse, ...] = ()


class CultureLore:
    """Find the teachers of a batch; their courses are kept until they change."""

    def __init__(self, door: Door) -> None:
        self._batches: tuple[Batch, ...] | None = None
        self._courses: dict[int, JarCourse] = {}
        door.changes.changed.connect(self._on_changed)

    def teachers_of(self, batch: Batch, unit: ReadUnit) -> Teachers:
        """Return the newest batches that teach of this one's culture, itself left out."""
        if self._batches is None:
            self._batches = unit.batches.where(stage=_TEACHING, order_by=("-started_at", "-id"))
        others = [
            other
            for other in self._batches
            if other.id != batch.id and other.started_at is not None
        ]
        own = [
            other
            for other in others
            if batch.culture_id is not None and other.culture_id == batch.culture_id
        ]
        own_ids = {other.id for other in own}
        pantry = [other for other in others if other.stage in _FINISHED and other.id not in own_ids]
        return Teachers(self._taught(own, unit), self._taught(pantry, unit))

    def _taught(self, batches: Iterable[Batch], unit: ReadUnit) -> tuple[JarCourse, ...]:
        found: list[JarCourse] = []
        for batch in batches:
            course = self._course(batch, unit)
            if sum(1 for r in observed_of(course) if r.quantity in CURVES) >= LEAST_READINGS:
                found.append(course)
            if len(found) == MOST_TEACHERS:
                break
        return tuple(found)

    def _course(self, batch: Batch, unit: ReadUnit) -> JarCourse:
        course = self._courses.get(batch.id)
        if course is None:
            course = read_course(unit, batch)
            self._courses[batch.id] = course
        return course

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(_TOPICS):
            return
        if change.concerns(Topic.BATCHES):
            self._batches = None
        for batch_id, course in tuple(self._courses.items()):
            if change.concerns_batch(batch_id) or course.vessel.id in change.vessel_ids:
                del self._courses[batch_id]


@lru_cache(maxsize=_KEPT)
def learn(teachers: Teachers) -> KnownCulture | None:
    """Learn a culture's habits; None if there is no teacher. Slow: run it as a job."""
    from culturecore.knownculture import learn_culture

    if not teachers.own and not teachers.pantry:
        return None
    return learn_culture(_cases(teachers.own), _cases(teachers.pantry))


def _cases(courses: tuple[JarCourse, ...]) -> list[tuple[Conditions, list[Observation]]]:
    found = []
    for course in courses:
        try:
            found.append((conditions_of(course), observations_of(course, observed_of(course))))
        except ImpossibleInput:  # mistyped amounts of one batch must not spoil the others
            continue
    return found
