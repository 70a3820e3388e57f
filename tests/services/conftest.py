"""A real store in a throw-away folder, a clock that stands still, and the services on both."""

from __future__ import annotations

import shutil
from dataclasses import replace
from types import SimpleNamespace

import pytest

from brewdesk.services.batches import Batches
from brewdesk.services.bottlings import Bottlings
from brewdesk.services.brewing import Brewing
from brewdesk.services.changes import Change, Changes
from brewdesk.services.cultures import Cultures
from brewdesk.services.door import Door
from brewdesk.services.fizzforecasts import FizzForecasts
from brewdesk.services.history import History
from brewdesk.services.jarnow import JarNow
from brewdesk.services.journal import Journal
from brewdesk.services.liquids import Liquids
from brewdesk.services.photos import Photos
from brewdesk.services.quantities import Quantities
from brewdesk.services.readings import Readings
from brewdesk.services.settings import Settings
from brewdesk.services.shelf import Shelf
from brewdesk.services.vessels import Vessels
from brewdesk.store.records import CultureDraft, VesselDraft
from brewdesk.store.store import Store
from culturecore.stages import CultureOrigin, CultureState, Material, VesselShape
from tests.helpers.fakes import DEFAULT_START, FakeClock, InlineJobs


class Kit(SimpleNamespace):
    """The services of one store, and short ways to put something on the shelf."""

    def vessel(self, name="Tall jar", **fields):
        draft = {
            "name": name,
            "shape": VesselShape.CYLINDER,
            "material": Material.GLASS,
            "brim_volume_l": 4.5,
            "working_volume_l": 4.0,
            "inner_diameter_cm": 15.0,
            "place_id": self.vessels.ensure_place().id,
        }
        return self.vessels.add(VesselDraft(**(draft | fields)))

    def culture(self, name="Old Faithful", **fields):
        draft = {
            "name": name,
            "origin": CultureOrigin.GIFT,
            "state": CultureState.RESTING,
            "born_at": self.clock.now(),
        }
        parents = fields.pop("parents", ())
        return self.cultures.add(CultureDraft(**(draft | fields)), parents)

    def plan(self, vessel=None, culture=None, name="Black tea 1", **wish):
        vessel = vessel or self.vessel()
        full = replace(self.batches.default_wish(vessel.id), **wish)
        return self.batches.plan(vessel.id, culture.id if culture else None, name, full)

    def souring(self, vessel=None, culture=None, name="Black tea 1", **wish):
        """Plan a batch and follow its run sheet to the end; it sours from now on."""
        batch = self.plan(vessel, culture, name, **wish)
        for step in self.brewing.start(batch.id):
            self.brewing.finish(step.id, 25.0)
        return self.batches.get(batch.id)


@pytest.fixture
def clock():
    return FakeClock()


@pytest.fixture(scope="session")
def new_store(tmp_path_factory):
    """The file of a new store: making one from its migrations takes longer than most tests."""
    path = tmp_path_factory.mktemp("new") / "pantry.sqlite"
    Store.open(path, now=DEFAULT_START).close()
    return path


@pytest.fixture
def kit(tmp_path, clock, new_store):
    shutil.copy(new_store, tmp_path / "pantry.sqlite")
    store = Store.open(tmp_path / "pantry.sqlite", now=clock.now())
    changes = Changes()
    door = Door(store, clock, changes)
    settings = Settings(store, changes)
    batches = Batches(door, settings)
    quantities = Quantities(settings)
    fizz_forecasts = FizzForecasts(door)
    heard: list[Change] = []
    changes.changed.connect(heard.append)
    yield Kit(
        path=store.path,
        store=store,
        clock=clock,
        changes=changes,
        heard=heard,
        door=door,
        settings=settings,
        quantities=quantities,
        vessels=Vessels(door),
        cultures=Cultures(door),
        batches=batches,
        liquids=Liquids(door, batches, JarNow(door)),
        bottlings=Bottlings(door, batches, JarNow(door).liquid, fizz_forecasts.pace),
        fizz_forecasts=fizz_forecasts,
        brewing=Brewing(door),
        readings=Readings(door, quantities),
        photos=Photos(door, InlineJobs(), store.path),
        journal=Journal(door, quantities),
        history=History(door),
        shelf=Shelf(door, settings),
    )
    store.close()
