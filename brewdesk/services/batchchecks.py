"""What a plan of a batch is checked for, and how a wish becomes its columns."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from brewdesk.services import forming
from brewdesk.services.batchrows import live_in_vessel
from brewdesk.services.cultures import GONE
from brewdesk.store.records import Batch, BatchDraft, Vessel
from culturecore import safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level
from culturecore.stages import CultureState
from culturecore.sweettea import Wish

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

# What a draft knows nothing of: a changed plan keeps it.
_NOT_OF_THE_WISH = (
    "planned_at",
    "purpose",
    "starter_batch_id",
    "starter_culture_id",
    "suspect_at",
    "suspect_reason",
)


def wish_columns(wish: Wish) -> dict[str, Any]:
    """Return a wish as columns of a batch."""
    return {
        "fill_volume_l": wish.fill_volume_l,
        "sugar_g_per_l": wish.sugar_g_per_l,
        "tea_kind": wish.tea_kind,
        "tea_g_per_l": wish.tea_g_per_l,
        "bag_g": wish.bag_g,
        "starter_ph": wish.starter.ph,
        "starter_ta_g_per_l": wish.starter.ta_g_per_l,
        "starter_taste": wish.starter.taste,
        "target_start_ph": wish.target_start_ph,
        "water_alkalinity_meq_per_l": wish.water_alkalinity_meq_per_l,
        "hot_water_c": wish.hot_water_c,
        "cold_water_c": wish.cold_water_c,
        "culture_limit_c": wish.culture_limit_c,
        "place_temperature_c": wish.place_temperature_c,
    }


def changed_plan(batch: Batch, draft: BatchDraft) -> dict[str, Any]:
    """Return the columns in which a new draft of a plan differs from the plan.

    When it was planned, and where its starter comes from, stay as they are.
    """
    return {
        field: getattr(draft, field)
        for field in BatchDraft.__dataclass_fields__
        if field not in _NOT_OF_THE_WISH and getattr(draft, field) != getattr(batch, field)
    }


def check_vessel(
    unit: ReadUnit, vessel: Vessel, culture_id: int | None, batch_id: int | None = None
) -> None:
    """Refuse a vessel that cannot take a batch of this culture.

    Raises
    ------
    ImpossibleInput
        Field "vessel_id" with reason "retired", "material", "occupied" or
        "resting_culture".
    """
    if vessel.retired_at is not None:
        raise ImpossibleInput("vessel_id", vessel.id, reason="retired")
    if safety.material_verdict(vessel.material).level is Level.STOP:
        raise ImpossibleInput("vessel_id", vessel.id, reason="material")
    live = live_in_vessel(unit, vessel.id)
    if live is not None and live.id != batch_id:
        raise ImpossibleInput("vessel_id", vessel.id, reason="occupied")
    resting = unit.cultures.where(vessel_id=vessel.id, state=CultureState.RESTING)
    if any(culture.id != culture_id for culture in resting):
        raise ImpossibleInput("vessel_id", vessel.id, reason="resting_culture")


def check_culture(unit: ReadUnit, culture_id: int | None, batch_id: int | None = None) -> None:
    """Refuse a culture that cannot be used for a batch.

    Raises
    ------
    ImpossibleInput
        Field "culture_id" with reason "gone", "suspect" or "forming".
    """
    if culture_id is None:
        return
    culture = unit.cultures.get(culture_id)
    if culture.state in GONE:
        raise ImpossibleInput("culture_id", culture_id, reason="gone")
    if culture.suspect_at is not None:
        raise ImpossibleInput("culture_id", culture_id, reason="suspect")
    grown_in = forming.growing_batch(unit, culture_id)
    if grown_in is not None and grown_in.id != batch_id:
        raise ImpossibleInput("culture_id", culture_id, reason="forming")
