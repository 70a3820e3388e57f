"""What is asked of the search and what it answers: plain frozen values."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from enum import Enum

from brewdesk.services.subjects import Subject
from culturecore.stages import BatchStage, TeaKind


class FoundKind(Enum):
    """What can be found, in the order in which equally good finds are told."""

    BATCH = "batch"
    CULTURE = "culture"
    VESSEL = "vessel"
    PLACE = "place"
    NOTE = "note"  # of a batch's readings
    CARE = "care"
    PHOTO = "photo"
    REMINDER = "reminder"
    ACT = "act"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sieve:
    """What is let through. A field that is None lets everything through.

    What has no tea, culture, place or stage of its own, nor a batch that has, is held
    back by that field. A vessel or a batch is there from its first act to its last;
    a place always.
    """

    kind: FoundKind | None = None
    tea: TeaKind | None = None
    culture_id: int | None = None
    place_id: int | None = None
    stage: BatchStage | None = None
    since: datetime | None = None
    until: datetime | None = None  # this instant is let through no more

    def used(self) -> tuple[str, ...]:
        """Return the fields that hold something back; the two ends of a time are one, "time"."""
        names = [
            name
            for name in ("kind", "tea", "culture_id", "place_id", "stage")
            if getattr(self, name) is not None
        ]
        if self.since is not None or self.until is not None:
            names.append("time")
        return tuple(names)

    def without(self, name: str) -> Sieve:
        """Return the sieve with one of the `used` fields open."""
        if name == "time":
            return replace(self, since=None, until=None)
        return replace(self, **{name: None})


@dataclass(frozen=True, slots=True, kw_only=True)
class Find:
    """One thing found. ``subject`` is whose time line tells of it, ``act_id`` the line there."""

    kind: FoundKind
    id: int
    name: str
    text: str
    at: datetime | None
    subject: Subject | None
    act_id: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """The best finds, how many there are in all, and what each filter holds back.

    ``hidden_by`` says, for each filter in use, how many would be found without it; it is
    reckoned only when nothing is found. ``without_filters`` is the same for all at once.
    """

    text: str
    sieve: Sieve
    finds: tuple[Find, ...]
    total: int
    hidden_by: tuple[tuple[str, int], ...] = ()
    without_filters: int = 0

    @property
    def more(self) -> int:
        """How many were found and are not in ``finds``."""
        return self.total - len(self.finds)
