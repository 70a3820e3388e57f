"""Which other batches teach something of a culture; what they teach is worked out as a job.

A batch is never its own teacher: what it taught would count twice in its forecast.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from brewdesk.services.batchbook import BatchBook
from brewdesk.services.coursereader import CourseReader
from brewdesk.services.door import Door
from brewdesk.services.jarcourse import JarCourse
from brewdesk.services.teaching import Teachers as Teachers
from brewdesk.services.teaching import learn as learn
from brewdesk.store.records import Batch

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

MOST_TEACHERS = 10  # older batches tell less of what a culture is now
LEAST_READINGS = 2


class CultureLore:
    """Find the teachers of a batch; their courses are kept until they change."""

    def __init__(
        self, door: Door, book: BatchBook | None = None, courses: CourseReader | None = None
    ) -> None:
        self._book = book if book is not None else BatchBook(door)
        self._courses = courses if courses is not None else CourseReader(door)

    def teachers_of(self, batch: Batch, unit: ReadUnit) -> Teachers:
        """Return the newest batches that teach of this one's culture, itself left out."""
        own, pantry = self._candidates(batch, unit)
        return Teachers(self._taught(own, unit), self._taught(pantry, unit))

    def unread(self, batch: Batch, unit: ReadUnit, most: int) -> tuple[Batch, ...]:
        """Return at most so many batches whose courses `teachers_of` would have to read."""
        found: list[Batch] = []
        for candidates in self._candidates(batch, unit):
            room = MOST_TEACHERS
            for other in candidates:
                if room == 0 or len(found) == most:
                    break
                if not self._courses.has(other.id):
                    found.append(other)
                    room -= 1
                elif self._teaches(other):
                    room -= 1
        return tuple(found)

    def _candidates(self, batch: Batch, unit: ReadUnit) -> tuple[Iterable[Batch], Iterable[Batch]]:
        """Return the batches of the culture, and the finished others of the pantry."""
        culture_id = batch.culture_id
        own = [] if culture_id is None else self._book.of_culture(unit, culture_id)
        return (
            (other for other in own if other.id != batch.id),
            (
                other
                for other in self._book.finished(unit)
                if other.id != batch.id and (culture_id is None or other.culture_id != culture_id)
            ),
        )

    def _teaches(self, batch: Batch) -> bool:
        return self._courses.readings_on_curves(batch.id) >= LEAST_READINGS

    def _taught(self, batches: Iterable[Batch], unit: ReadUnit) -> tuple[JarCourse, ...]:
        found: list[JarCourse] = []
        for batch in batches:
            course = self._courses.of(unit, batch)
            if self._teaches(batch):
                found.append(course)
            if len(found) == MOST_TEACHERS:
                break
        return tuple(found)
