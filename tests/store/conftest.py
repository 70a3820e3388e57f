"""A store in a real file, empty or with one of everything on the shelf."""

from __future__ import annotations

from dataclasses import dataclass

import pytest

from brewdesk.store.records import Batch, Culture, Place, Vessel
from brewdesk.store.store import Store
from tests.store.drafts import NOW, PLACE, batch_draft, culture_draft, vessel_draft


@dataclass(frozen=True)
class Shelf:
    """One place, jar, culture and planned batch, as stored."""

    place: Place
    vessel: Vessel
    culture: Culture
    batch: Batch


@pytest.fixture
def path(tmp_path):
    return tmp_path / "data" / "pantry.sqlite"


@pytest.fixture
def store(path):
    opened = Store.open(path, now=NOW)
    yield opened
    opened.close()


@pytest.fixture
def shelf(store):
    with store.write() as unit:
        place = unit.places.add(PLACE)
        vessel = unit.vessels.add(vessel_draft(place.id))
        culture = unit.cultures.add(culture_draft())
        batch = unit.batches.add(batch_draft(vessel.id, culture.id))
    return Shelf(place, vessel, culture, batch)
