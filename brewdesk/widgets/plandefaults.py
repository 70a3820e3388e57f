"""What a new plan begins with: the vessel's own figures, and the maker's last choices."""

from __future__ import annotations

from dataclasses import replace

from brewdesk.services.desk import Desk
from brewdesk.services.records import (
    Batch,
    BatchPurpose,
    BatchStage,
    CultureState,
    Vessel,
    Wish,
)

LIVE_STAGES = tuple(stage for stage in BatchStage if stage.is_live)
# What a maker carries from batch to batch; the rest belongs to the vessel and its place.
_CARRIED = (
    "sugar_g_per_l",
    "tea_kind",
    "tea_g_per_l",
    "bag_g",
    "starter",
    "target_start_ph",
    "water_alkalinity_meq_per_l",
    "hot_water_c",
    "cold_water_c",
)


def free_vessels(desk: Desk, own_vessel_id: int | None = None) -> tuple[Vessel, ...]:
    """Return the vessels without a live batch, and ``own_vessel_id``, in shelf order."""
    taken = {batch.vessel_id for batch in desk.batches.all(stages=LIVE_STAGES)}
    taken.discard(own_vessel_id or 0)
    return tuple(vessel for vessel in desk.vessels.all() if vessel.id not in taken)


def first_wish(desk: Desk, vessel_id: int) -> Wish:
    """Return the wish to begin with: the last batch's recipe in this vessel's volume."""
    wish = desk.batches.default_wish(vessel_id)
    former = _drinks(desk)
    if not former:
        return wish
    last = desk.batches.wish_of(former[0])
    return replace(wish, **{field: getattr(last, field) for field in _CARRIED})


def first_culture(desk: Desk, vessel_id: int) -> int | None:
    """Return the culture that rests in the vessel, else the last one used, else one at rest."""
    known = desk.cultures.all(include_gone=False)
    former = _drinks(desk)
    last_id = former[0].culture_id if former else None
    known = tuple(
        culture
        for culture in known
        if culture.state is not CultureState.FORMING and culture.suspect_at is None
    )
    resting = [culture for culture in known if culture.state is CultureState.RESTING]
    here = [culture for culture in resting if culture.vessel_id == vessel_id]
    usual = [culture for culture in known if culture.id == last_id]
    first = next(iter(here or usual or resting or known), None)
    return None if first is None else first.id


def _drinks(desk: Desk) -> tuple[Batch, ...]:
    """Return the batches to drink, newest first: growing a culture follows another recipe."""
    return tuple(row for row in desk.batches.all() if row.purpose is BatchPurpose.DRINK)
