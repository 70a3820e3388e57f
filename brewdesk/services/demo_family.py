"""The invented pantry's cultures through the month: split, merged, rested, one grown."""

from __future__ import annotations

from collections.abc import Callable
from datetime import time
from typing import Any

from brewdesk.services.demo_brews import RUN, Entry, finishing, recording
from brewdesk.services.demo_furniture import adding_culture
from brewdesk.services.demo_story import BREWING_HOUR, READING_HOUR, Story, t
from culturecore.stages import (
    CultureOrigin,
    CultureState,
    Look,
    Method,
    Quantity,
)


def keep_a_family(story: Story) -> None:
    """Split, merge, rest, feed and give away, so that the family has something to show."""
    note = t("Invented for the example pantry.")

    def split(key: str, name: str, parent: str) -> Callable[[], None]:
        def do() -> None:
            made = story.care.split(story.ids[parent], name=name, vessel_id=None, note=note)
            story.ids[key] = made.id

        return do

    def merge() -> None:
        both = (story.ids["dune"], story.ids["reed"])
        merged = story.care.merge(both, name=t("Marsh"), vessel_id=None)
        story.ids["marsh"] = story.cultures.edit(merged.id, note=note, pellicle_mm=5.0).id

    story.at(44, time(18, 0), split("jetty", t("Jetty"), "first"))
    story.at(41, time(18, 0), split("reed", t("Reed"), "second"))
    story.at(41, time(19, 0), adding_culture(story, "dune", _fourth_culture()))
    neighbour = t("a neighbour (invented)")
    story.at(35, time(18, 0), lambda: story.care.give_away(story.ids["jetty"], neighbour))
    story.at(34, time(18, 0), merge)
    story.at(
        34,
        time(18, 30),
        lambda: story.care.rest(story.ids["marsh"], story.ids["store"], 0.8),
    )
    smooth = t("Smooth and wet all over. (Invented)")
    story.at(20, time(18, 0), lambda: story.care.look(story.ids["marsh"], Look.FINE, smooth))
    story.at(20, time(18, 5), lambda: story.care.feed(story.ids["marsh"], 0.1, 5.0))
    story.at(7, time(18, 0), lambda: story.care.top_up(story.ids["marsh"], 0.05))
    story.at(7, time(18, 2), lambda: story.care.measure_ph(story.ids["marsh"], 2.92, 0.05))


def grow_one(story: Story) -> None:
    """Grow a culture from a bottle; nine days on it has its first film."""
    source = t("A raw, unflavoured bottle. Invented for the example pantry.")

    def begin() -> None:
        vessel_id = story.ids["seed"]
        wish = story.growing.default_wish(vessel_id)
        batch = story.growing.start(vessel_id, name=t("Sandbar"), wish=wish, source=source)
        story.ids["growing"] = batch.id

    story.at(9, BREWING_HOUR, begin)
    story.at(9, BREWING_HOUR, lambda: story.brewing.start(story.ids["growing"]), 10)
    for kind, minutes, temperature_c in RUN:
        do = finishing(story, "growing", kind, temperature_c)
        story.at(9, BREWING_HOUR, do, minutes)
    story.at(4, READING_HOUR, lambda: story.growing.look(story.ids["growing"], Look.FINE), 4)
    for day, ph in ((2, 3.92), (5, 3.61), (7, 3.38)):
        entry = Entry(Quantity.PH, Method.METER, ph)
        story.at(9 - day, READING_HOUR, recording(story, "growing", (entry,)), 2)
    film = t("A thin, pale film. (Invented)")
    story.at(
        1,
        READING_HOUR,
        lambda: story.growing.look(story.ids["growing"], Look.FINE, film_mm=1.0, text=film),
        4,
    )


def _fourth_culture() -> dict[str, Any]:
    return {
        "name": t("Dune"),
        "origin": CultureOrigin.BOUGHT,
        "state": CultureState.RESTING,
        "note": t("Bought. Invented for the example pantry."),
    }
