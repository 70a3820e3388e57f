"""What a culture rests in: how much was stated, what is left, and where it may stand."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services.cultures import check_can_rest_in
from brewdesk.services.evaporation import evaporated_l
from brewdesk.store.records import Care, CareDraft, Culture
from culturecore import safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate, Level
from culturecore.stages import CareKind, CultureState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork


@dataclass(frozen=True, slots=True, kw_only=True)
class RestingLiquid:
    """What a culture rests in: as last stated, and what is likely left of it now, in L."""

    stated_l: float
    stated_at: datetime
    now_l: Estimate
    evaporated_l: Estimate


def is_stated(care: Care) -> bool:
    """Whether a note of care states how much liquid the culture was put to rest in."""
    return care.kind is CareKind.NOTE and care.volume_l is not None


def stated(culture_id: int, at: datetime, volume_l: float) -> CareDraft:
    """Write down how much liquid a culture was put to rest in."""
    return CareDraft(culture_id=culture_id, at=at, kind=CareKind.NOTE, volume_l=volume_l)


def check_rest(
    unit: ReadUnit,
    culture_id: int | None,
    vessel_id: int | None,
    volume_l: float | None,
    now: datetime,
    *,
    leaving: tuple[int, ...] = (),
    field: str = "rest_volume_l",
) -> str | None:
    """Refuse a vessel that no culture can rest in; return its name."""
    if volume_l is not None:
        check_volume(volume_l, field)
    if vessel_id is None:
        return None
    vessel = unit.vessels.get(vessel_id)
    if vessel.retired_at is not None:
        raise ImpossibleInput("vessel_id", vessel_id, reason="retired")
    if safety.material_verdict(vessel.material).level is Level.STOP:
        raise ImpossibleInput("vessel_id", vessel_id, reason="material")
    check_can_rest_in(unit, vessel_id, culture_id)
    others_l = 0.0
    for other in unit.cultures.where(vessel_id=vessel_id, state=CultureState.RESTING):
        if other.id == culture_id or other.id in leaving:
            continue
        liquid = liquid_of(unit, other, now)
        others_l += 0.0 if liquid is None else liquid.now_l.value
    if volume_l is not None and others_l + volume_l > vessel.brim_volume_l:
        raise ImpossibleInput(
            field, volume_l, high=vessel.brim_volume_l - others_l, unit="L", reason="above_brim"
        )
    return vessel.name


def sum_of_liquids(unit: ReadUnit, cultures: tuple[Culture, ...], now: datetime) -> float | None:
    """Add up what cultures rest in, in L; None if nothing is known of any."""
    liquids = [liquid_of(unit, culture, now) for culture in cultures]
    known = [liquid.now_l.value for liquid in liquids if liquid is not None]
    return sum(known) if known else None


def after_pouring(
    unit: ReadUnit | UnitOfWork, culture: Culture, volume_l: float, at: datetime
) -> float | None:
    """Return what there is after pouring, in L; None if what was there is not known."""
    if culture.vessel_id is None:
        return None
    brim_l = unit.vessels.get(culture.vessel_id).brim_volume_l
    liquid = liquid_of(unit, culture, at)
    least_l = 0.0 if liquid is None else liquid.now_l.low
    if least_l + volume_l > brim_l:
        raise ImpossibleInput("volume_l", volume_l, high=brim_l, unit="L", reason="above_brim")
    return None if liquid is None else min(brim_l, liquid.now_l.value + volume_l)


def liquid_of(unit: ReadUnit | UnitOfWork, culture: Culture, now: datetime) -> RestingLiquid | None:
    """Estimate what a culture rests in at an instant; None while nothing is known of it."""
    if culture.rest_volume_l is None or culture.vessel_id is None:
        return None
    volume_l = culture.rest_volume_l
    poured = [
        care.at for care in unit.care.where(culture_id=culture.id) if care.volume_l is not None
    ]
    poured += [row.at for row in unit.transfers.where(to_culture_id=culture.id)]
    stated_at = max(poured, default=culture.born_at)
    if volume_l <= 0.0:
        nothing = Estimate(0.0, 0.0, 0.0)
        return RestingLiquid(stated_l=0.0, stated_at=stated_at, now_l=nothing, evaporated_l=nothing)
    vessel = unit.vessels.get(culture.vessel_id)
    lost = evaporated_l(vessel, min(volume_l, vessel.brim_volume_l), stated_at, now)
    return RestingLiquid(
        stated_l=volume_l,
        stated_at=stated_at,
        now_l=Estimate(
            volume_l - lost.value, volume_l - lost.high, volume_l - lost.low, caveats=lost.caveats
        ),
        evaporated_l=lost,
    )


def check_volume(volume_l: float, field: str = "volume_l") -> None:
    """Refuse what is no amount of liquid; ``field`` names it."""
    if not (math.isfinite(volume_l) and volume_l > 0.0):
        raise ImpossibleInput(field, volume_l, low=0.001, unit="L")
