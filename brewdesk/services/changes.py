"""How the program says that rows have changed. Carries what changed, never the rows."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Flag, auto

from PySide6.QtCore import QObject, Signal


class Topic(Flag):
    """What kind of rows a change touched."""

    NOTHING = 0
    PLACES = auto()
    VESSELS = auto()
    CULTURES = auto()
    BATCHES = auto()
    STEPS = auto()
    READINGS = auto()
    REMINDERS = auto()
    SETTINGS = auto()
    FORECASTS = auto()
    PHOTOS = auto()
    BOTTLINGS = auto()
    METERS = auto()
    STORES = auto()
    TRIALS = auto()
    EVERYTHING = (
        PLACES
        | VESSELS
        | CULTURES
        | BATCHES
        | STEPS
        | READINGS
        | REMINDERS
        | (SETTINGS | FORECASTS | PHOTOS | BOTTLINGS | METERS)
        | STORES
        | TRIALS
    )


@dataclass(frozen=True, slots=True)
class Change:
    """One committed change. Empty id sets mean that no single batch or vessel is meant."""

    topics: Topic
    batch_ids: frozenset[int] = frozenset()
    vessel_ids: frozenset[int] = frozenset()

    def concerns(self, topics: Topic) -> bool:
        """Whether any of ``topics`` was touched."""
        return bool(self.topics & topics)

    def concerns_batch(self, batch_id: int) -> bool:
        """Whether this batch may have changed: it is named, or no batch is."""
        return not self.batch_ids or batch_id in self.batch_ids


class Changes(QObject):
    """The one place where committed changes are announced.

    ``changed`` carries a `Change` and is emitted on the window's thread, after the
    commit.
    """

    changed = Signal(object)

    def announce(
        self,
        topics: Topic,
        *,
        batch_ids: Iterable[int] = (),
        vessel_ids: Iterable[int] = (),
    ) -> None:
        """Emit ``changed`` with a `Change` of these topics and ids."""
        self.changed.emit(Change(topics, frozenset(batch_ids), frozenset(vessel_ids)))
