"""Reads what batches' figures need from the store: vessels, readings, transfers, stays."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING, TypeVar

from brewdesk.services.changes import Change, Topic
from brewdesk.services.door import Door
from brewdesk.services.jarcourse import CURVES, READ, JarCourse, UsualStay, observed
from brewdesk.services.placecourse import SampleMeans
from brewdesk.services.surroundings import Whereabouts, surroundings_of
from brewdesk.store.records import Batch, Transfer, Vessel, VesselMove

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

T = TypeVar("T")

TOPICS = Topic.BATCHES | Topic.READINGS | Topic.VESSELS | Topic.PLACES


class CourseReader:
    """The courses of batches: read in groups, and kept until something of them changes."""

    def __init__(self, door: Door, means: SampleMeans | None = None) -> None:
        self.means = means if means is not None else SampleMeans()
        self._whereabouts = Whereabouts()
        self._courses: dict[int, JarCourse] = {}
        self._counts: dict[int, int] = {}
        door.changes.changed.connect(self._on_changed)

    def has(self, batch_id: int) -> bool:
        """Whether a batch's course is known without reading."""
        return batch_id in self._courses

    def of(self, unit: ReadUnit, batch: Batch) -> JarCourse:
        """Return a batch's course, read if it is not known."""
        if batch.id not in self._courses:
            self.read(unit, (batch,))
        return self._courses[batch.id]

    def read(self, unit: ReadUnit, batches: Sequence[Batch]) -> None:
        """Read the courses of a few batches together, a query a table."""
        self.take_over(read_courses(unit, batches, self.means, self._whereabouts))

    def take_over(self, courses: Iterable[JarCourse]) -> None:
        """Keep courses that were read elsewhere, and of which nothing has changed since."""
        self._courses.update({course.batch.id: course for course in courses})

    def readings_on_curves(self, batch_id: int) -> int:
        """Return how many readings of a known course lie on its curves."""
        count = self._counts.get(batch_id)
        if count is None:
            count = sum(1 for row in observed(self._courses[batch_id]) if row.quantity in CURVES)
            self._counts[batch_id] = count
        return count

    def _on_changed(self, change: Change) -> None:
        if not change.concerns(TOPICS):
            return
        if change.concerns(Topic.VESSELS):
            self._whereabouts.forget_vessels(change.vessel_ids)
        if change.concerns(Topic.PLACES):
            self._whereabouts.forget_places()
        for batch_id, course in tuple(self._courses.items()):
            # Where a batch stood before, another vessel may have been carried since.
            has_moved = bool(course.stays) and change.concerns(Topic.VESSELS)
            is_meant = change.concerns_batch(batch_id) or course.vessel.id in change.vessel_ids
            if is_meant or has_moved:
                del self._courses[batch_id]
                self._counts.pop(batch_id, None)


def read_course(unit: ReadUnit, batch: Batch, means: SampleMeans | None = None) -> JarCourse:
    """Return a batch with all that its forecast depends on; ``means`` of the places' logs."""
    (course,) = read_courses(unit, (batch,), means if means is not None else SampleMeans())
    return course


def read_courses(
    unit: ReadUnit,
    batches: Sequence[Batch],
    means: SampleMeans,
    whereabouts: Whereabouts | None = None,
) -> tuple[JarCourse, ...]:
    """Return the courses of several batches, from one query a table however many they are."""
    ids = tuple(batch.id for batch in batches)
    readings = _grouped(
        unit.readings.where(batch_id=ids, quantity=READ, order_by=("at", "id")),
        lambda row: row.batch_id,
    )
    moves = _grouped(
        unit.vessel_moves.where(batch_id=ids, order_by=("at", "id")), lambda row: row.batch_id
    )
    transfers = _transfers_of(unit, ids)
    vessel_ids = {batch.vessel_id for batch in batches}
    for rows in moves.values():
        vessel_ids.update(row.from_vessel_id for row in rows)
        vessel_ids.update(row.to_vessel_id for row in rows)
    vessels = {row.id: row for row in unit.vessels.where(id=tuple(vessel_ids))}
    known = whereabouts if whereabouts is not None else Whereabouts()
    known.note(vessels.values())
    return tuple(
        JarCourse(
            batch,
            vessels[batch.vessel_id],
            tuple(readings.get(batch.id, ())),
            transfers=transfers.get(batch.id, ()),
            stays=_stays(unit, batch, moves.get(batch.id, ()), vessels),
            surroundings=surroundings_of(
                unit, means, batch, moves=moves.get(batch.id, ()), whereabouts=known
            ),
        )
        for batch in batches
    )


def _transfers_of(unit: ReadUnit, ids: tuple[int, ...]) -> dict[int, tuple[Transfer, ...]]:
    """Return what went into each batch and out of it, in the order of time."""
    out = unit.transfers.where(from_batch_id=ids)
    into = unit.transfers.where(to_batch_id=ids)
    found: dict[int, list[Transfer]] = {}
    for row, batch_id in (
        *((row, row.from_batch_id) for row in out),
        *((row, row.to_batch_id) for row in into),
    ):
        if batch_id is not None:
            found.setdefault(batch_id, []).append(row)
    return {
        batch_id: tuple(sorted(rows, key=lambda row: (row.at, row.id)))
        for batch_id, rows in found.items()
    }


def _stays(
    unit: ReadUnit, batch: Batch, moves: Sequence[VesselMove], vessels: dict[int, Vessel]
) -> tuple[UsualStay, ...]:
    """Return where a batch that was poured over stood, and how warm it usually is there."""
    if not moves:
        return ()
    vessel_ids = (moves[0].from_vessel_id, *(move.to_vessel_id for move in moves))
    begins = (batch.started_at or batch.planned_at, *(move.at for move in moves))
    return tuple(
        UsualStay(begin, unit.places.get(vessels[vessel_id].place_id).temperature_c)
        for begin, vessel_id in zip(begins, vessel_ids, strict=True)
    )


def _grouped(rows: Iterable[T], key: Callable[[T], int]) -> dict[int, list[T]]:
    groups: dict[int, list[T]] = {}
    for row in rows:
        groups.setdefault(key(row), []).append(row)
    return groups
