"""For every kind of act on liquids: what has to be there before, and the act itself."""

from __future__ import annotations

from brewdesk.services.acts import ActKind
from culturecore.stages import CultureState, TeaKind


def two_souring(kit):
    first = kit.souring(kit.vessel("One"), kit.culture("Left"), "Left tea", fill_volume_l=2.0)
    second = kit.souring(kit.vessel("Two"), kit.culture("Right"), "Right tea", fill_volume_l=2.0)
    return first, second


def souring_and_store(kit):
    batch = kit.souring(kit.vessel("One"))
    store = kit.culture(
        "Hotel",
        state=CultureState.RESTING,
        vessel_id=kit.vessel("Store").id,
        rest_volume_l=0.5,
    )
    return batch, store


def souring_and_plan(kit):
    batch = kit.souring(kit.vessel("One"), kit.culture())
    return batch, kit.plan(kit.vessel("Two"), name="Next tea")


def souring_and_empty(kit):
    return kit.souring(kit.vessel("One"), kit.culture()), kit.vessel("Two")


LIQUID_ACTS = {
    ActKind.DRAW_PART: (
        lambda kit: kit.souring(),
        lambda kit, batch: kit.liquids.draw_part(batch.id, 1.5),
    ),
    ActKind.KEEP_STARTER: (
        souring_and_store,
        lambda kit, pair: kit.liquids.keep_starter(pair[0].id, 0.4, pair[1].id),
    ),
    ActKind.TOP_UP_BATCH: (
        lambda kit: kit.souring(fill_volume_l=2.0),
        lambda kit, batch: kit.liquids.top_up(batch.id, 1.0, 60.0, TeaKind.BLACK, 5.0, 24.0),
    ),
    ActKind.MERGE_BATCHES: (
        two_souring,
        lambda kit, pair: kit.liquids.merge(pair[0].id, pair[1].id, culture_name="Both"),
    ),
    ActKind.MOVE_BATCH: (
        souring_and_empty,
        lambda kit, pair: kit.liquids.move_batch(pair[0].id, pair[1].id),
    ),
    ActKind.LEND_STARTER: (
        souring_and_plan,
        lambda kit, pair: kit.liquids.lend_starter(
            0.3, from_batch_id=pair[0].id, to_batch_id=pair[1].id
        ),
    ),
}
