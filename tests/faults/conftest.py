"""An invented pantry with a souring batch on a real disk."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest

from brewdesk.store.records import CultureDraft, VesselDraft
from culturecore.stages import CultureOrigin, CultureState, Material, VesselShape
from tests.helpers.pantry_desk import open_desk, souring_batch


@dataclass(frozen=True)
class Pantry:
    """A closed pantry's file, and the id of its souring batch."""

    path: Path
    batch_id: int


@pytest.fixture(scope="session")
def souring_file(tmp_path_factory):
    """Make the pantry once; the tests work on copies."""
    desk = open_desk(tmp_path_factory.mktemp("souring"))
    batch = souring_batch(desk)
    jars = {}
    for name in ("Empty jar", "Jar of the mother"):
        jars[name] = desk.vessels.add(
            VesselDraft(
                name=name,
                shape=VesselShape.CYLINDER,
                material=Material.GLASS,
                brim_volume_l=2.5,
                working_volume_l=2.0,
                inner_diameter_cm=12.0,
                place_id=desk.vessels.ensure_place().id,
            )
        )
    mother = desk.cultures.add(
        CultureDraft(
            name="Invented mother",
            origin=CultureOrigin.GIFT,
            state=CultureState.RESTING,
            born_at=desk.clock.now(),
        )
    )
    desk.culture_care.rest(mother.id, jars["Jar of the mother"].id, 0.8)
    desk.store.close()
    return desk.store.path.read_bytes(), batch.id


@pytest.fixture
def pantry(tmp_path, souring_file):
    content, batch_id = souring_file
    path = tmp_path / "pantry.brewdesk"
    path.write_bytes(content)
    return Pantry(path, batch_id)
