"""For every kind of act on bottles: what has to be there before, and the act itself."""

from __future__ import annotations

from dataclasses import replace

from brewdesk.services.acts import ActKind
from brewdesk.services.bottlingwish import AdditionWish, BottleGroupWish
from brewdesk.store.records import BottleCheckDraft, ReadingDraft
from culturecore.stages import (
    AdditionKind,
    BottleKind,
    CheckKind,
    CultureState,
    Feel,
    Method,
    Quantity,
)

GLASS = BottleGroupWish(bottle_count=5, kind=BottleKind.FIZZY_GLASS, brim_volume_l=0.52)
TEST = BottleGroupWish(
    bottle_count=1, kind=BottleKind.FIZZY_PLASTIC, brim_volume_l=0.5, is_test=True
)
GINGER = AdditionWish(
    kind=AdditionKind.GINGER,
    name="Ginger root",
    mass_g=20.0,
    sugar_share_low=0.01,
    sugar_share_high=0.03,
)


def sour(kit, *, value=3.1, **wish):
    """A batch that is sour enough for its bottles, eight days old."""
    number = len(kit.vessels.all()) + 1
    batch = kit.souring(kit.vessel(f"Jar {number}"), kit.culture(f"Culture {number}"), **wish)
    kit.clock.advance(days=8)
    kit.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now(),
                quantity=Quantity.PH,
                method=Method.METER,
                value=value,
                sd=0.05,
            )
        ]
    )
    return batch


def wish_of(kit, batch, **changes):
    wish = kit.bottlings.wish_for(batch.id)
    plain = replace(
        wish,
        groups=(GLASS, TEST),
        drink_volume_l=2.8,
        residual_sugar_low_g_per_l=5.0,
        residual_sugar_high_g_per_l=15.0,
        target_volumes=2.0,
    )
    return replace(plain, **changes)


def filled(kit, **changes):
    return kit.bottlings.fill(wish_of(kit, sour(kit), **changes))


def felt(kit, bottling, feel=Feel.FIRM, **fields):
    at = fields.pop("at", kit.clock.now())
    draft = {"bottling_id": bottling.id, "at": at, "kind": CheckKind.FEEL, "feel": feel}
    return kit.bottlings.check(BottleCheckDraft(**(draft | fields)))


def sour_and_store(kit):
    batch = sour(kit)
    store = kit.culture(
        "Hotel",
        state=CultureState.RESTING,
        vessel_id=kit.vessel("Store").id,
        rest_volume_l=0.5,
    )
    return batch, store


def filled_a_day_ago(kit):
    bottling = filled(kit)
    kit.clock.advance(days=1)
    return bottling


def checked(kit):
    return felt(kit, filled_a_day_ago(kit))


BOTTLE_ACTS = {
    ActKind.FILL_BOTTLES: (
        sour_and_store,
        lambda kit, pair: kit.bottlings.fill(
            wish_of(
                kit,
                pair[0],
                additions=(GINGER,),
                starter_kept_l=0.4,
                starter_culture_id=pair[1].id,
                closes_batch=True,
            )
        ),
    ),
    ActKind.CHECK_BOTTLES: (filled_a_day_ago, lambda kit, bottling: felt(kit, bottling)),
    ActKind.EDIT_BOTTLE_CHECK: (
        checked,
        lambda kit, check: kit.bottlings.edit_check(check.id, feel=Feel.HARD),
    ),
    ActKind.REMOVE_BOTTLE_CHECK: (
        checked,
        lambda kit, check: kit.bottlings.remove_check(check.id),
    ),
    ActKind.CHILL_BOTTLES: (
        filled_a_day_ago,
        lambda kit, bottling: kit.bottlings.chill(bottling.id),
    ),
    ActKind.FINISH_BOTTLES: (filled, lambda kit, bottling: kit.bottlings.finish(bottling.id)),
    ActKind.DISCARD_BOTTLES: (
        filled,
        lambda kit, bottling: kit.bottlings.discard(bottling.id, "cork taste"),
    ),
}
