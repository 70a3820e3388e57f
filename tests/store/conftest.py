"""A store in a real file, empty or with one of everything on the shelf."""

from __future__ import annotations

from dataclasses import dataclass

import pytest

from brewdesk.store.desklocal import DeskIdentity
from brewdesk.store.records import Batch, Culture, Place, Vessel
from brewdesk.store.serverstore import ServerStore
from brewdesk.store.store import Store
from tests.store.drafts import NOW, PLACE, batch_draft, culture_draft, vessel_draft

DESK = DeskIdentity("d" * 32, "Invented desk")


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


# What these say of rows, acts and deltas holds wherever the rows lie.
OF_EVERY_STORE = frozenset({"test_rows", "test_deltas", "test_acts"})


def pytest_generate_tests(metafunc):
    """Run the tests of rows, acts and deltas on a file and on a server."""
    is_of_every = metafunc.module.__name__.rpartition(".")[2] in OF_EVERY_STORE
    if is_of_every and "lies_on" in metafunc.fixturenames:
        metafunc.parametrize("lies_on", ["file", "server"], scope="module")


@pytest.fixture(scope="module")
def lies_on():
    """Where the store lies, unless a test asks for both."""
    return "file"


@pytest.fixture
def open_store(lies_on, path, request):
    """Open the test's one store, as often as is asked."""
    opened = []
    address = "" if lies_on == "file" else request.getfixturevalue("pg_server").make_store()

    def opening(**asked):
        if lies_on == "file":
            opened.append(Store.open(path, now=NOW, **asked))
        else:
            opened.append(ServerStore.open(address, path, desk=DESK, now=NOW, **asked))
        return opened[-1]

    yield opening
    for each in opened:
        each.close()
    if address:
        request.getfixturevalue("pg_server").drop(address)


@pytest.fixture
def store(open_store):
    return open_store()


@pytest.fixture
def shelf(store):
    with store.write() as unit:
        place = unit.places.add(PLACE)
        vessel = unit.vessels.add(vessel_draft(place.id))
        culture = unit.cultures.add(culture_draft())
        batch = unit.batches.add(batch_draft(vessel.id, culture.id))
    return Shelf(place, vessel, culture, batch)
