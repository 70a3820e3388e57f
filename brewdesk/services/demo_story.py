"""An invented pantry's story: instants, and what is done at them by the program's own services."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from datetime import datetime, time, timedelta, tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from brewdesk.services.batches import Batches
from brewdesk.services.bottlings import Bottlings
from brewdesk.services.brewing import Brewing
from brewdesk.services.changes import Changes
from brewdesk.services.clock import Clock
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.cultures import Cultures
from brewdesk.services.demostores import DemoStores
from brewdesk.services.door import Door, Units
from brewdesk.services.growing import Growing
from brewdesk.services.jarnow import JarNow
from brewdesk.services.placelog import PlaceLog
from brewdesk.services.quantities import Quantities
from brewdesk.services.readings import Readings
from brewdesk.services.reminder_rules import wall_instant
from brewdesk.services.settings import Settings
from brewdesk.services.stores import Stores
from brewdesk.services.vessels import Vessels

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

PANTRY_C = 22.5
BREWING_HOUR = time(17, 0)
READING_HOUR = time(8, 15)


def t(text: str) -> str:
    """Translate a text of the invented pantry."""
    return QCoreApplication.translate("Demo", text)


class OneUnit:
    """Let many acts share one unit of work, each with its own deltas."""

    def __init__(self, store: Units, unit: UnitOfWork) -> None:
        self._store = store
        self._unit = unit

    def read(self) -> AbstractContextManager[ReadUnit]:
        """Return a look at the store as it is."""
        return self._store.read()

    @contextmanager
    def write(self) -> Iterator[UnitOfWork]:
        """Return the one unit, with the deltas of the act to come only."""
        self._unit.deltas.clear()
        yield self._unit


class LedClock:
    """A clock that shows what the story wants."""

    def __init__(self, outside: Clock) -> None:
        self._outside = outside
        self.instant = outside.now()

    def now(self) -> datetime:
        """Return the story's instant."""
        return self.instant

    def monotonic(self) -> float:
        """Return the running seconds of the clock outside."""
        return self._outside.monotonic()

    def zone(self) -> tzinfo:
        """Return the zone of the clock outside."""
        return self._outside.zone()


class Story:
    """The month, as instants and what is done at them."""

    def __init__(self, units: Units, clock: Clock) -> None:
        self.outside = clock
        self.clock = LedClock(clock)
        changes = Changes()
        self.door = door = Door(units, self.clock, changes)
        self.settings = settings = Settings(units, changes)
        self.vessels = Vessels(door)
        self.place_log = PlaceLog(door)
        self.cultures = Cultures(door)
        self.care = CultureCare(door, settings)
        self.growing = Growing(door, settings)
        self.batches = Batches(door, settings)
        self.brewing = Brewing(door)
        self.readings = Readings(door, Quantities(settings))
        self.bottlings = Bottlings(door, self.batches, JarNow(door).liquid)
        self.stores = DemoStores(Stores(door), self.clock)
        self.ids: dict[str, int] = {}
        self._events: list[tuple[datetime, int, Callable[[], object]]] = []

    def tell(self) -> None:
        """Do everything in order of time."""
        for instant, _, do in sorted(self._events, key=lambda event: event[:2]):
            self.clock.instant = instant
            do()

    def at(self, days_ago: int, hour: time, do: Callable[[], object], minutes: float = 0) -> None:
        """Have something done at a local time of a day so many days ago; never later than now."""
        now, zone = self.outside.now(), self.outside.zone()
        day = now.astimezone(zone).date() - timedelta(days=days_ago)
        instant = wall_instant(day, hour, zone) + timedelta(minutes=minutes)
        self._events.append((min(instant, now), len(self._events), do))

    def ago(self, minutes: float, do: Callable[[], object]) -> None:
        """Have something done so many minutes ago."""
        instant = self.outside.now() - timedelta(minutes=minutes)
        self._events.append((instant, len(self._events), do))
