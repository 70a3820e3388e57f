"""The tables that are searched: which changes touch them, and what is looked at in each row."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING, Any

from brewdesk.services.changes import Topic
from brewdesk.services.folding import fold
from brewdesk.services.searchwords import FoundKind
from brewdesk.services.subjects import Subject, SubjectKind
from brewdesk.store.records import Batch, Care, Culture, Photo, Place, Reading, Reminder, Vessel
from culturecore.stages import Quantity

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

ALWAYS = float("inf")


@dataclass(slots=True)
class Entry:
    """One thing to find: folded texts, its time span in seconds, and what it belongs to."""

    kind: FoundKind
    id: int
    name: str  # folded
    rest: str  # folded
    since: float
    until: float
    batch_id: int | None = None
    vessel_id: int | None = None
    culture_id: int | None = None
    place_id: int | None = None

    def subject(self) -> Subject | None:
        """Return whose time line tells of it: the nearest of batch, culture, vessel, place."""
        for kind, number in (
            (SubjectKind.BATCH, self.batch_id),
            (SubjectKind.CULTURE, self.culture_id),
            (SubjectKind.VESSEL, self.vessel_id),
            (SubjectKind.PLACE, self.place_id),
        ):
            if number is not None:
                return Subject(kind, number)
        return None


@dataclass(frozen=True, slots=True)
class Part:
    """One table: the topics that make it stale, its rows, and the entry of a row."""

    topics: Topic
    rows: Callable[[ReadUnit], Sequence[Any]]
    entry: Callable[[Any], Entry]


def _seconds(at: datetime | None, otherwise: float = ALWAYS) -> float:
    return otherwise if at is None else at.timestamp()


def _joined(*texts: str) -> str:
    return fold("\n".join(text for text in texts if text))


def _batch(row: Batch) -> Entry:
    begun = row.planned_at if row.started_at is None else min(row.planned_at, row.started_at)
    return Entry(
        FoundKind.BATCH,
        row.id,
        fold(row.name),
        _joined(row.end_reason, row.suspect_reason),
        begun.timestamp(),
        _seconds(row.ended_at),
        batch_id=row.id,
    )


def _culture(row: Culture) -> Entry:
    return Entry(
        FoundKind.CULTURE,
        row.id,
        fold(row.name),
        _joined(row.note, row.gone_to, row.suspect_reason),
        row.born_at.timestamp(),
        _seconds(row.gone_at),
        culture_id=row.id,
    )


def _vessel(row: Vessel) -> Entry:
    note, retired = fold(row.note), _seconds(row.retired_at)
    name = fold(row.name)
    return Entry(FoundKind.VESSEL, row.id, name, note, -ALWAYS, retired, vessel_id=row.id)


def _place(row: Place) -> Entry:
    return Entry(FoundKind.PLACE, row.id, fold(row.name), "", -ALWAYS, ALWAYS, place_id=row.id)


def _note(row: Reading) -> Entry:
    at = row.at.timestamp()
    return Entry(FoundKind.NOTE, row.id, "", fold(row.text), at, at, batch_id=row.batch_id)


def _care(row: Care) -> Entry:
    at = row.at.timestamp()
    return Entry(FoundKind.CARE, row.id, "", fold(row.text), at, at, culture_id=row.culture_id)


def _photo(row: Photo) -> Entry:
    at, words = row.taken_at.timestamp(), fold(row.caption)
    return Entry(
        FoundKind.PHOTO,
        row.id,
        "",
        words,
        at,
        at,
        batch_id=row.batch_id,
        culture_id=row.culture_id,
    )


def _reminder(row: Reminder) -> Entry:
    at, words = row.due_at.timestamp(), fold(row.text)
    return Entry(
        FoundKind.REMINDER,
        row.id,
        "",
        words,
        at,
        at,
        batch_id=row.batch_id,
        culture_id=row.culture_id,
    )


PARTS: dict[str, Part] = {
    "batches": Part(Topic.BATCHES, lambda unit: unit.batches.where(), _batch),
    "cultures": Part(Topic.CULTURES, lambda unit: unit.cultures.where(), _culture),
    "vessels": Part(Topic.VESSELS, lambda unit: unit.vessels.where(), _vessel),
    "places": Part(Topic.PLACES, lambda unit: unit.places.where(), _place),
    "notes": Part(Topic.READINGS, lambda unit: unit.readings.where(quantity=Quantity.NOTE), _note),
    "care": Part(
        Topic.CULTURES, lambda unit: [row for row in unit.care.where() if row.text], _care
    ),
    "photos": Part(
        Topic.PHOTOS, lambda unit: [row for row in unit.photos.where() if row.caption], _photo
    ),
    # Only those in the maker's own words; what the program asks for is told by the acts.
    "reminders": Part(
        Topic.REMINDERS, lambda unit: [row for row in unit.reminders.where() if row.text], _reminder
    ),
}
