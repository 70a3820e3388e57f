"""A trial on a whole desk: jars put up, lots drawn, readings taken. All of it is invented."""

from __future__ import annotations

from brewdesk.services.trialplan import ArmWish, TrialRecipe, TrialWish
from brewdesk.store.records import ReadingDraft, VesselDraft
from culturecore.stages import Material, Method, Quantity, TeaKind, TrialFactor, VesselShape

TEAS = (
    ArmWish(name="Black", level=TeaKind.BLACK.value),
    ArmWish(name="Green", level=TeaKind.GREEN.value),
)


def jars(desk, count, **fields):
    """Put like jars up on the shelf and return their ids."""
    draft = {
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 1.1,
        "working_volume_l": 1.0,
        "inner_diameter_cm": 9.8,
        "place_id": desk.vessels.ensure_place().id,
    }
    made = [
        desk.vessels.add(VesselDraft(**({"name": f"Jar {n + 1}"} | draft | fields)))
        for n in range(count)
    ]
    return tuple(one.id for one in made)


def planned_trial(desk, count=4, **fields):
    """Plan a trial of two teas."""
    wish = {"name": "Two teas", "factor": TrialFactor.TEA, "arms": TEAS, "is_blind": True}
    return desk.trials.plan(TrialWish(**(wish | {"vessel_ids": jars(desk, count)} | fields)))


def souring_trial(desk, count=4, **fields):
    """Plan it, start it, and cover all its jars now."""
    trial = planned_trial(desk, count, **fields)
    desk.trials.start(trial.id, TrialRecipe())
    for jar in desk.trials.view(trial.id).jars:
        desk.brewing.note_already_in(jar.batch.id, desk.clock.now(), 25.0)
    return trial


def read_jars(desk, trial, *, green=6.0, black=9.0, days=(2, 4, 6, 8, 10, 12)):
    """Read all jars over days; they pass pH 3.2 about on the days given, a little apart."""
    before = 0
    for day in days:
        desk.clock.advance(days=day - before)
        before = day
        for n, jar in enumerate(desk.trials.view(trial.id).jars):
            passes = (green if jar.batch.tea_kind is TeaKind.GREEN else black) + 0.12 * (n % 4)
            enter(desk, jar.batch.id, Quantity.PH, round(4.1 - 0.9 * day / passes, 2))


def enter(desk, batch_id, quantity, value, method=Method.METER):
    """Enter one reading, taken now."""
    desk.readings.record(
        [
            ReadingDraft(
                batch_id=batch_id, at=desk.clock.now(), quantity=quantity, method=method,
                value=value,
            )
        ]
    )  # fmt: skip
