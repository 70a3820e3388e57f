"""An invented pantry to look around in: half a year of brewing that never happened.

It is made by the same services that a maker uses, under a clock that is led through
that time, so that its journal and its history are as real as any. Nothing in it is
left to chance: the same instant gives the same pantry.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from brewdesk.services import (
    demo_bottles,
    demo_brews,
    demo_family,
    demo_furniture,
    demo_past,
    demo_places,
    demotrial,
)
from brewdesk.services.changes import Topic
from brewdesk.services.clock import Clock
from brewdesk.services.demo_story import OneUnit, Story
from brewdesk.services.door import Units

if TYPE_CHECKING:
    from brewdesk.services.desk import Desk

# Each part enters its instants into the story; what is told at one instant keeps this order.
_PARTS = (
    demo_furniture.furnish,
    demo_furniture.fill_stores,
    demo_past.brew_before,
    demo_past.lose_one,
    demo_past.open_bottles,
    demo_brews.brew_all,
    demo_family.keep_a_family,
    demo_family.grow_one,
    demo_places.log_places,
    demo_bottles.fill_bottles,
    demotrial.run_trial,
    demo_brews.plan_tomorrow,
    demo_brews.brew_now,
)


def fill(store: Units, clock: Clock) -> None:
    """Fill an empty store with the invented pantry as it would stand at ``clock.now()``.

    All of it is written in one unit of work: it is there as a whole or not at all.
    """
    with store.write() as unit:
        story = Story(OneUnit(store, unit), clock)
        for part in _PARTS:
            part(story)
        story.tell()


def fill_if_empty(desk: Desk) -> bool:
    """Fill the desk's store if nothing stands on its shelf, announce it, and say whether it was."""
    if desk.vessels.all(include_retired=True):
        return False
    fill(desk.store, desk.clock)
    desk.changes.announce(Topic.EVERYTHING)
    return True
