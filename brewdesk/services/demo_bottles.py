"""The invented pantry's bottles."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import time

from brewdesk.services.bottlingwish import AdditionWish, BottleGroupWish
from brewdesk.services.demo_story import READING_HOUR, Story, t
from brewdesk.store.records import (
    BottleCheckDraft,
)
from culturecore.stages import (
    AdditionKind,
    BottleKind,
    CheckKind,
    Feel,
    Opened,
)

_DEMO_BOTTLES = (
    BottleGroupWish(bottle_count=3, kind=BottleKind.FIZZY_GLASS, brim_volume_l=0.52),
    BottleGroupWish(bottle_count=1, kind=BottleKind.FIZZY_PLASTIC, brim_volume_l=0.5, is_test=True),
)


def fill_bottles(story: Story) -> None:
    """Bottle part of two batches: one stands and was felt, one is in the cold."""
    story.at(16, time(18, 20), filling(story, "batch 0", "cold", with_ginger=True))
    story.at(14, READING_HOUR, _feeling(story, "cold", Feel.FIRM))
    story.at(14, time(18, 0), lambda: story.bottlings.chill(story.ids["cold"]))
    story.at(2, time(18, 20), filling(story, "batch 2", "warm"))
    story.at(1, READING_HOUR, _feeling(story, "warm", Feel.SOFT))


def filling(story: Story, batch: str, key: str, *, with_ginger: bool = False) -> Callable[[], None]:
    """Return what fills some bottles from a batch."""

    def do() -> None:
        ginger = AdditionWish(
            kind=AdditionKind.GINGER,
            name=t("Ginger root"),
            mass_g=24.0,
            sugar_share_low=0.01,
            sugar_share_high=0.03,
            supply_id=story.stores.ids.get("ginger"),
        )
        glass, test = _DEMO_BOTTLES
        wish = story.bottlings.wish_for(story.ids[batch])
        wish = replace(
            wish,
            name=t("{name}, in bottles (invented)").format(name=wish.name),
            groups=(
                replace(glass, supply_id=story.stores.ids.get("bottles")),
                replace(test, supply_id=story.stores.ids.get("test")),
            ),
            priming_supply_id=story.stores.ids.get("sugar"),
            additions=(ginger,) if with_ginger else (),
            residual_sugar_low_g_per_l=4.0,
            residual_sugar_high_g_per_l=12.0,
            warmest_c=25.0,
            target_volumes=2.0,
        )
        story.ids[key] = story.bottlings.fill(wish).id

    return do


def _feeling(story: Story, key: str, feel: Feel) -> Callable[[], None]:
    def do() -> None:
        story.bottlings.check(
            BottleCheckDraft(
                bottling_id=story.ids[key],
                at=story.clock.now(),
                kind=CheckKind.FEEL,
                feel=feel,
            )
        )

    return do


def opening(story: Story, key: str, how: Opened, count: int) -> Callable[[], None]:
    """Return what notes that some bottles were opened."""

    def do() -> None:
        story.bottlings.check(
            BottleCheckDraft(
                bottling_id=story.ids[key],
                at=story.clock.now(),
                kind=CheckKind.OPENED,
                opened=how,
                bottle_count=count,
            )
        )

    return do
