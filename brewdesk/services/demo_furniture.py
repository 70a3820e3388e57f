"""What stands in the invented pantry: places, vessels and the first cultures."""

from __future__ import annotations

from collections.abc import Callable
from datetime import time
from functools import partial
from typing import Any

from brewdesk.services.demo_story import PANTRY_C, Story, t
from brewdesk.services.demostores import PURCHASES, SPOILED
from brewdesk.store.records import (
    CultureDraft,
    PlaceDraft,
    VesselDraft,
)
from culturecore.stages import (
    CultureOrigin,
    CultureState,
    Material,
    VesselShape,
)

_FURNISHED = 200  # days ago


def furnish(story: Story) -> None:
    """Put up the places, the vessels and the first cultures."""
    for number, (key, temperature_c) in enumerate(_PLACES):
        story.at(_FURNISHED, time(10, 0), _adding_place(story, key, temperature_c), minutes=number)
    for number, fields in enumerate(_VESSELS):
        story.at(_FURNISHED, time(10, 5), _adding_vessel(story, fields), minutes=number)
    story.at(_FURNISHED, time(11, 0), adding_culture(story, "first", _first_culture()))
    story.at(175, time(11, 0), adding_culture(story, "second", _second_culture(), "first"))
    story.at(30, time(11, 0), adding_culture(story, "third", _third_culture(), "second"))


def _adding_place(story: Story, key: str, temperature_c: float) -> Callable[[], None]:
    def do() -> None:
        draft = PlaceDraft(name=_place_names()[key], temperature_c=temperature_c)
        story.ids[key] = story.vessels.add_place(draft).id

    return do


def _adding_vessel(story: Story, fields: dict[str, Any]) -> Callable[[], None]:
    def do() -> None:
        names = _vessel_names()
        draft = VesselDraft(
            **(fields | {"name": names[fields["name"]], "place_id": story.ids["pantry"]}),
            note=t("Invented for the example pantry."),
        )
        story.ids[fields["name"]] = story.vessels.add(draft).id

    return do


def adding_culture(
    story: Story, key: str, fields: dict[str, Any], parent: str | None = None
) -> Callable[[], None]:
    """Return what adds a culture, as ``key``."""

    def do() -> None:
        draft = CultureDraft(born_at=story.clock.now(), **fields)
        parents = () if parent is None else (story.ids[parent],)
        story.ids[key] = story.cultures.add(draft, parents).id

    return do


_VESSELS: tuple[dict[str, Any], ...] = (
    {
        "name": "tall",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 4.5,
        "working_volume_l": 4.0,
        "inner_diameter_cm": 15.0,
    },
    {
        "name": "crock",
        "shape": VesselShape.TAPERED,
        "material": Material.CERAMIC_FOOD_SAFE,
        "brim_volume_l": 8.0,
        "working_volume_l": 7.0,
        "inner_diameter_cm": 25.0,
    },
    {
        "name": "store",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 1.5,
        "working_volume_l": 1.2,
        "inner_diameter_cm": 11.0,
    },
    {
        "name": "seed",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 1.0,
        "working_volume_l": 0.8,
        "inner_diameter_cm": 9.5,
    },
    {
        "name": "flask",
        "shape": VesselShape.SHOULDERED,
        "material": Material.GLASS,
        "brim_volume_l": 5.2,
        "working_volume_l": 4.4,
        "inner_diameter_cm": 18.0,
    },
    {
        "name": "little",
        "shape": VesselShape.CYLINDER,
        "material": Material.GLASS,
        "brim_volume_l": 2.0,
        "working_volume_l": 1.8,
        "inner_diameter_cm": 11.0,
    },
    {
        "name": "steel",
        "shape": VesselShape.CYLINDER,
        "material": Material.STAINLESS_STEEL,
        "brim_volume_l": 6.0,
        "working_volume_l": 5.5,
        "inner_diameter_cm": 20.0,
    },
)


_PLACES = (("pantry", PANTRY_C), ("kitchen", 21.5), ("cellar", 15.0))


def _place_names() -> dict[str, str]:
    return {
        "pantry": t("Example pantry (invented)"),
        "kitchen": t("Example kitchen (invented)"),
        "cellar": t("Example cellar (invented)"),
    }


def _vessel_names() -> dict[str, str]:
    return {
        "tall": t("Tall jar"),
        "crock": t("Grey crock"),
        "flask": t("Big flask"),
        "little": t("Little jar"),
        "steel": t("Steel pot"),
        "store": t("Store jar"),
        "seed": t("Seed jar"),
    }


def _first_culture() -> dict[str, Any]:
    return {
        "name": t("Lighthouse"),
        "origin": CultureOrigin.RAW_BOTTLE,
        "state": CultureState.RESTING,
        "pellicle_mm": 6.0,
        "note": t("Grown from a raw bottle. Invented for the example pantry."),
    }


def _second_culture() -> dict[str, Any]:
    return {
        "name": t("Ferry"),
        "origin": CultureOrigin.SPLIT,
        "state": CultureState.RESTING,
        "pellicle_mm": 4.0,
        "note": t("Split off Lighthouse. Invented for the example pantry."),
    }


def _third_culture() -> dict[str, Any]:
    return {
        "name": t("Harbour"),
        "origin": CultureOrigin.GIFT,
        "state": CultureState.RESTING,
        "pellicle_mm": 3.0,
        "note": t("A gift from somebody who had a piece of Ferry. Invented."),
    }


def fill_stores(story: Story) -> None:
    """Buy tea, sugar, ginger and bottles through the two months; break a bottle."""
    story.at(59, time(12, 0), story.stores.furnish)
    for number, purchase in enumerate(PURCHASES):
        story.at(
            purchase.days_ago, time(11, 30), partial(story.stores.buy, purchase), minutes=number
        )
    story.at(SPOILED[1], time(19, 30), story.stores.spoil)
