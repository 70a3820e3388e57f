"""What has a life of its own in the pantry: a batch, a culture, a vessel, a place."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from brewdesk.store.rows import ReadRows
    from brewdesk.store.unitofwork import ReadUnit


class SubjectKind(Enum):
    """The values are the names by which the history knows them."""

    BATCH = "batch"
    CULTURE = "culture"
    VESSEL = "vessel"
    PLACE = "place"


@dataclass(frozen=True, slots=True)
class Subject:
    """One batch, culture, vessel or place."""

    kind: SubjectKind
    id: int


def known(named: Iterable[tuple[str, int]]) -> tuple[Subject, ...]:
    """Return the subjects of those names of the history that have a time line here."""
    kinds = {kind.value: kind for kind in SubjectKind}
    return tuple(Subject(kinds[kind], number) for kind, number in named if kind in kinds)


def names_of(unit: ReadUnit, subjects: Iterable[Subject]) -> dict[Subject, str]:
    """Return the names that subjects have now; one that is gone has none."""
    wanted: dict[SubjectKind, set[int]] = {}
    for subject in subjects:
        wanted.setdefault(subject.kind, set()).add(subject.id)
    names: dict[Subject, str] = {}
    tables: dict[SubjectKind, ReadRows[Any]] = {
        SubjectKind.BATCH: unit.batches,
        SubjectKind.CULTURE: unit.cultures,
        SubjectKind.VESSEL: unit.vessels,
        SubjectKind.PLACE: unit.places,
    }
    for kind, ids in wanted.items():
        names |= {Subject(kind, row.id): row.name for row in tables[kind].where(id=ids)}
    return names
