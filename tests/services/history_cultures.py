"""Acts on cultures for the history test: what has to be there before, and the act itself."""

from __future__ import annotations

from brewdesk.services.acts import ActKind
from brewdesk.services.culturecare import CultureCare
from brewdesk.services.growing import Growing
from brewdesk.services.suspicion import Suspicion
from culturecore.stages import Look


def care(kit):
    return CultureCare(kit.door, kit.settings)


def growing(kit):
    return Growing(kit.door, kit.settings)


def resting(kit):
    vessel = kit.vessel("Store")
    culture = kit.culture()
    return care(kit).rest(culture.id, vessel.id, 0.5)


def _mother_and_batch(kit):
    mother = kit.culture("Mother")
    kit.souring(culture=mother)
    care(kit).split(mother.id, name="Daughter", vessel_id=None)
    return mother


def _suspect(kit):
    mother = _mother_and_batch(kit)
    care(kit).lose(mother.id, "fuzzy spot")
    return kit.cultures.all(include_gone=False)[0]


def _start(kit, vessel):
    wish = growing(kit).default_wish(vessel.id)
    return growing(kit).start(vessel.id, name="Sprout", wish=wish, source="corner shop")


def grown(kit):
    batch = _start(kit, kit.vessel())
    for step in kit.brewing.start(batch.id):
        kit.brewing.finish(step.id, 25.0)
    return kit.batches.get(batch.id)


ACTS = {
    ActKind.SPLIT_CULTURE: (
        resting,
        lambda kit, culture: care(kit).split(
            culture.id,
            name="Daughter",
            vessel_id=kit.vessels.all()[0].id,
            pellicle_mm=3.0,
            rest_volume_l=0.3,
        ),
    ),
    ActKind.MERGE_CULTURES: (
        lambda kit: (resting(kit), kit.culture("Other")),
        lambda kit, both: care(kit).merge(
            [one.id for one in both], name="Both", vessel_id=both[0].vessel_id
        ),
    ),
    ActKind.MOVE_CULTURE: (
        lambda kit: (resting(kit), kit.vessel("Other jar")),
        lambda kit, pair: care(kit).move(pair[0].id, pair[1].id),
    ),
    ActKind.REST_CULTURE: (
        lambda kit: (kit.culture(), kit.vessel()),
        lambda kit, pair: care(kit).rest(pair[0].id, pair[1].id, 0.5),
    ),
    ActKind.FEED_CULTURE: (
        resting,
        lambda kit, culture: care(kit).feed(culture.id, 0.1, 5.0),
    ),
    ActKind.TOP_UP_CULTURE: (
        resting,
        lambda kit, culture: care(kit).top_up(culture.id, 0.1),
    ),
    ActKind.CARE_FOR_CULTURE: (
        resting,
        lambda kit, culture: care(kit).look(culture.id, Look.FINE, "smooth"),
    ),
    ActKind.GIVE_CULTURE: (
        resting,
        lambda kit, culture: care(kit).give_away(culture.id, "a neighbour"),
    ),
    ActKind.RETIRE_CULTURE: (resting, lambda kit, culture: care(kit).retire(culture.id)),
    ActKind.LOSE_CULTURE: (
        _mother_and_batch,
        lambda kit, culture: care(kit).lose(culture.id, "fuzzy spot"),
    ),
    ActKind.CLEAR_SUSPICION: (
        _suspect,
        lambda kit, culture: Suspicion(kit.door).clear(culture_id=culture.id, reason="clean"),
    ),
    ActKind.START_GROWING: (lambda kit: kit.vessel(), _start),
    ActKind.FINISH_GROWING: (
        grown,
        lambda kit, batch: growing(kit).finish(batch.id, 4.0),
    ),
}
