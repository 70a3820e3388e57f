"""A batch into another vessel, or into another batch: what may be poured where."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services.cultures import GONE
from brewdesk.services.ending import close_drawn_off, culture_in_jar, end_batch
from brewdesk.services.jarnow import starter_of_batch
from brewdesk.services.ledger import DROP_L, balance_in, check_volume, is_souring
from brewdesk.services.names import is_same_name
from brewdesk.services.toppingup import check_room
from brewdesk.services.vessels import LIVE_STAGES
from brewdesk.services.wording.liquids import poured_into_words
from brewdesk.store.records import (
    Batch,
    CultureDraft,
    CultureParentDraft,
    TransferDraft,
    Vessel,
    VesselMoveDraft,
)
from culturecore import safety
from culturecore.blending import Liquid
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import BatchStage, CultureOrigin, CultureState, TransferKind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork


@dataclass(frozen=True, slots=True, kw_only=True)
class MergePreview:
    """What pouring one batch into another would do."""

    poured_l: float
    left_l: float
    before: Liquid
    after: Liquid


def check_clean(field: str, row: Batch | None) -> None:
    """Refuse liquid that may share mold with another.

    Raises
    ------
    ImpossibleInput
        Field ``field`` with reason "suspect".
    """
    if row is not None and row.suspect_at is not None:
        raise ImpossibleInput(field, row.id, reason="suspect")


def check_souring(field: str, batch: Batch) -> None:
    """Refuse a batch whose liquid is not there yet, or not any more.

    Raises
    ------
    ImpossibleInput
        Field ``field`` with reason "no_liquid".
    """
    if not is_souring(batch):
        raise ImpossibleInput(field, batch.id, reason="no_liquid")


def check_new_vessel(unit: ReadUnit, batch: Batch, vessel: Vessel, volume_l: float) -> None:
    """Refuse a vessel that cannot take a batch.

    Raises
    ------
    ImpossibleInput
        Field "vessel_id" with reason "same_vessel", "retired", "material", "occupied" or
        "resting_culture"; "volume_l" with reason "above_brim".
    """
    if vessel.id == batch.vessel_id:
        raise ImpossibleInput("vessel_id", vessel.id, reason="same_vessel")
    if vessel.retired_at is not None:
        raise ImpossibleInput("vessel_id", vessel.id, reason="retired")
    if safety.material_verdict(vessel.material).level is Level.STOP:
        raise ImpossibleInput("vessel_id", vessel.id, reason="material")
    if unit.batches.where(vessel_id=vessel.id, stage=LIVE_STAGES):
        raise ImpossibleInput("vessel_id", vessel.id, reason="occupied")
    if unit.cultures.where(vessel_id=vessel.id):
        raise ImpossibleInput("vessel_id", vessel.id, reason="resting_culture")
    if volume_l > vessel.brim_volume_l:
        raise ImpossibleInput(
            "volume_l",
            volume_l,
            low=0.0,
            high=vessel.brim_volume_l,
            unit="L",
            reason="above_brim",
        )


def move_over(unit: UnitOfWork, batch: Batch, vessel: Vessel, now: datetime) -> Batch:
    """Pour a batch over into another vessel within a unit of work; its culture goes along."""
    culture = culture_in_jar(unit, batch)
    if culture is not None:
        unit.cultures.change(culture.id, vessel_id=vessel.id)
    close_drawn_off(unit, vessel.id)
    unit.vessel_moves.add(
        VesselMoveDraft(
            batch_id=batch.id, from_vessel_id=batch.vessel_id, to_vessel_id=vessel.id, at=now
        )
    )
    place = unit.places.get(vessel.place_id)
    return unit.batches.change(
        batch.id, vessel_id=vessel.id, place_temperature_c=place.temperature_c
    )


def checked_pour(
    unit: ReadUnit, source: Batch, into: Batch, volume_l: float | None
) -> tuple[float, float]:
    """Return (how much is poured, how much stays behind) of one batch into another.

    ``volume_l`` None means all of it.

    Raises
    ------
    ImpossibleInput
        Field "from_batch_id" or "into_batch_id" with reason "no_liquid", "suspect" or
        "same_batch"; "volume_l" for more than there is, or than there is room for.
    """
    if source.id == into.id:
        raise ImpossibleInput("into_batch_id", into.id, reason="same_batch")
    for field, batch in (("from_batch_id", source), ("into_batch_id", into)):
        check_souring(field, batch)
        check_clean(field, batch)
    there_l = balance_in(unit, source).now_l
    poured_l = check_volume("volume_l", there_l if volume_l is None else volume_l, there_l)
    vessel = unit.vessels.get(into.vessel_id)
    check_room("volume_l", poured_l, balance_in(unit, into).now_l, vessel)
    left_l = there_l - poured_l
    return (there_l, 0.0) if left_l < DROP_L else (poured_l, left_l)


def pour_together(
    unit: UnitOfWork,
    source: Batch,
    into: Batch,
    *,
    poured_l: float,
    left_l: float,
    culture_name: str,
    now: datetime,
) -> Batch:
    """Pour one batch into another within a unit of work; the emptied one ends with it."""
    known = starter_of_batch(unit, source)
    unit.transfers.add(
        TransferDraft(
            at=now,
            kind=TransferKind.MERGE,
            volume_l=poured_l,
            from_batch_id=source.id,
            to_batch_id=into.id,
            ph=known.ph,
            ta_g_per_l=known.ta_g_per_l,
        )
    )
    if left_l:
        return unit.batches.get(into.id)
    end_batch(unit, source, BatchStage.DRAWN_OFF, now=now, reason=poured_into_words(into.name))
    if culture_name:
        _join_cultures(unit, source, into, culture_name, now)
    return unit.batches.get(into.id)


def check_joined_name(unit: ReadUnit, source: Batch, into: Batch, name: str, left_l: float) -> None:
    """Refuse a name for the joined culture, or joining where there are no two in the jars.

    Raises
    ------
    ImpossibleInput
        Field "culture_name" with reason "not_all", "no_two_cultures" or "taken".
    """
    if left_l:
        raise ImpossibleInput("culture_name", name, reason="not_all")
    ids = {batch.culture_id for batch in (source, into) if batch.culture_id is not None}
    at_work = [
        unit.cultures.get(batch.culture_id)
        for batch in (source, into)
        if batch.culture_id is not None
    ]
    here = [
        culture.vessel_id in (source.vessel_id, into.vessel_id)
        and culture.state in (CultureState.AT_WORK, CultureState.FORMING)
        for culture in at_work
    ]
    if len(ids) < len((source, into)) or not all(here):
        raise ImpossibleInput("culture_name", name, reason="no_two_cultures")
    for other in unit.cultures.where():
        if other.state not in GONE and other.id not in ids and is_same_name(other.name, name):
            raise ImpossibleInput("culture_name", name, reason="taken")


def part_of(liquid: Liquid, volume_l: float) -> Liquid:
    """Return part of a liquid: less of it, as sour and as sweet."""
    return replace(liquid, volume_l=volume_l)


def _join_cultures(unit: UnitOfWork, source: Batch, into: Batch, name: str, now: datetime) -> None:
    """Let one new culture work on where the two that were poured together did."""
    parent_ids = tuple(
        dict.fromkeys(batch.culture_id for batch in (into, source) if batch.culture_id is not None)
    )
    parents = [unit.cultures.get(parent_id) for parent_id in parent_ids]
    joined = unit.cultures.add(
        CultureDraft(
            name=name,
            origin=CultureOrigin.MERGED,
            state=CultureState.AT_WORK,
            born_at=now,
            vessel_id=into.vessel_id,
            pellicle_mm=parents[0].pellicle_mm,
        )
    )
    for parent in parents:
        unit.culture_parents.add(CultureParentDraft(culture_id=joined.id, parent_id=parent.id))
        unit.cultures.change(
            parent.id,
            state=CultureState.RETIRED,
            vessel_id=None,
            rest_volume_l=None,
            gone_at=now,
            gone_to=name,
        )
    unit.batches.change(into.id, culture_id=joined.id)
