"""How warm the invented pantry's places were."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import time

from brewdesk.services.demo_story import PANTRY_C, Story, t
from brewdesk.services.packedsamples import pack_pairs

_LOGGED_DAYS = 30


def log_places(story: Story) -> None:
    """Two loggers, read out this morning, and a thermometer that is looked at now and then."""
    for key, every_h, course in (("pantry", 1, _pantry_c), ("cellar", 2, _cellar_c)):
        story.at(0, time(7, 30), _logging(story, key, every_h, course))
    for days in (12, 9, 6, 4, 2, 1):
        celsius = round(21.0 + 1.2 * math.sin(1.7 * days), 1)
        story.at(days, time(7, 45), _reading_place(story, "kitchen", celsius))

    def carry_down() -> None:
        story.vessels.edit(story.ids["steel"], place_id=story.ids["cellar"])

    story.at(1, time(19, 0), carry_down)


def _logging(
    story: Story, key: str, every_h: int, course: Callable[[float], float]
) -> Callable[[], None]:
    def do() -> None:
        last_s = int(story.clock.now().timestamp()) // 3600 * 3600
        hours = range(_LOGGED_DAYS * 24, -1, -every_h)
        samples = [(last_s - 3600 * back, round(course(-back / 24.0), 1)) for back in hours]
        name = t("{place}-logger.csv (invented)").format(place=key)
        story.place_log.add_log(story.ids[key], name, pack_pairs(samples))

    return do


def _reading_place(story: Story, key: str, celsius: float) -> Callable[[], object]:
    return lambda: story.place_log.read_place(story.ids[key], celsius)


def _pantry_c(day: float) -> float:
    """Return the pantry's invented course: a swing by day and a slower one."""
    return PANTRY_C + 0.7 * math.sin(2.0 * math.pi * day - 1.0) + 0.6 * math.sin(0.45 * day)


def _cellar_c(day: float) -> float:
    """Return the cellar's invented course: it has cooled through the month."""
    return 13.1 - 0.06 * day + 0.25 * math.sin(2.0 * math.pi * day) + 0.3 * math.sin(0.7 * day)
