"""A whole desk on a throw-away store, and short ways to put something on the shelf."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from brewdesk.services.desk import Desk, build_desk
from brewdesk.store.records import Batch, CultureDraft, VesselDraft
from brewdesk.store.store import Store
from culturecore.stages import CultureOrigin, CultureState, Material, VesselShape
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs


def open_desk(
    folder: Path, clock: FakeClock | None = None, *, with_forecasts: bool = False
) -> Desk:
    """Open a new pantry in ``folder``. Forecasts are worked out at once, or not at all."""
    clock = clock or FakeClock()
    store = Store.open(folder / "pantry.sqlite", now=clock.now())
    jobs = InlineJobs(hold=not with_forecasts)
    return build_desk(store, clock, jobs=jobs, notifier=FakeNotifier())


def plan_batch(desk: Desk, name: str = "Black tea 1", vessel: str = "Tall jar") -> Batch:
    """Plan a batch with a culture in a new jar. Names are invented."""
    jar = desk.vessels.add(
        VesselDraft(
            name=vessel,
            shape=VesselShape.CYLINDER,
            material=Material.GLASS,
            brim_volume_l=4.5,
            working_volume_l=4.0,
            inner_diameter_cm=15.0,
            place_id=desk.vessels.ensure_place().id,
        )
    )
    culture = desk.cultures.add(
        CultureDraft(
            name=f"Culture of {vessel}",
            origin=CultureOrigin.GIFT,
            state=CultureState.RESTING,
            born_at=desk.clock.now(),
        )
    )
    wish = replace(desk.batches.default_wish(jar.id), hot_water_c=90.0)
    return desk.batches.plan(jar.id, culture.id, name, wish)


def brewing_batch(desk: Desk, name: str = "Black tea 1", vessel: str = "Tall jar") -> Batch:
    """Plan a batch and lay out its run sheet."""
    batch = plan_batch(desk, name, vessel)
    desk.brewing.start(batch.id)
    return desk.batches.get(batch.id)


def souring_batch(desk: Desk, name: str = "Black tea 1", vessel: str = "Tall jar") -> Batch:
    """Plan a batch and follow its run sheet to the end; it sours from now on."""
    batch = brewing_batch(desk, name, vessel)
    for step in desk.brewing.steps(batch.id):
        desk.brewing.finish(step.id, 25.0)
    return desk.batches.get(batch.id)
