"""Frozen records that leave the store, and the drafts that enter it.

Field names equal column names. Times are aware UTC datetimes. A draft is a record
without its id: ``XDraft`` goes in, ``X`` comes out.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from culturecore.stages import (
    BatchStage,
    CultureOrigin,
    CultureState,
    Material,
    Method,
    Quantity,
    ReminderKind,
    ReminderState,
    StarterTaste,
    StepKind,
    StepState,
    TeaKind,
    VesselShape,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceDraft:
    """A spot with its usual temperature: pantry, kitchen, cellar."""

    name: str
    temperature_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Place(PlaceDraft):
    """A stored place."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class VesselDraft:
    """Anything that holds liquid and stands on the shelf."""

    name: str
    shape: VesselShape
    material: Material
    brim_volume_l: float
    working_volume_l: float
    inner_diameter_cm: float
    place_id: int
    shelf_order: int = 0
    note: str = ""
    retired_at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Vessel(VesselDraft):
    """A stored vessel."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CultureDraft:
    """A living line: pellicle and/or starter liquid."""

    name: str
    origin: CultureOrigin
    state: CultureState
    born_at: datetime
    vessel_id: int | None = None
    pellicle_mm: float | None = None
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Culture(CultureDraft):
    """A stored culture."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CultureParentDraft:
    """One parent link of a culture."""

    culture_id: int
    parent_id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CultureParent(CultureParentDraft):
    """A stored parent link."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchDraft:
    """One first fermentation in one vessel: the wish, and the amounts as they were weighed out."""

    name: str
    vessel_id: int
    culture_id: int | None
    stage: BatchStage
    planned_at: datetime
    started_at: datetime | None = None
    ended_at: datetime | None = None
    end_reason: str = ""
    # the wish
    fill_volume_l: float
    sugar_g_per_l: float
    tea_kind: TeaKind
    tea_g_per_l: float
    bag_g: float
    starter_ph: float | None
    starter_ta_g_per_l: float | None
    starter_taste: StarterTaste | None
    target_start_ph: float
    water_alkalinity_meq_per_l: float
    hot_water_c: float
    cold_water_c: float
    culture_limit_c: float
    place_temperature_c: float
    # the amounts
    sugar_g: float
    tea_g: float
    starter_volume_l: float
    hot_water_g: float
    cold_water_g: float
    mixed_temperature_c: float
    start_ph: float
    start_ph_low: float
    start_ph_high: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch(BatchDraft):
    """A stored batch."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class StepDraft:
    """One step of a batch's run sheet. A step without ``planned_s`` has no timer."""

    batch_id: int
    position: int
    kind: StepKind
    state: StepState = StepState.WAITING
    planned_s: int | None = None
    ends_at: datetime | None = None  # while running
    remaining_s: float | None = None  # while paused
    started_at: datetime | None = None
    finished_at: datetime | None = None
    temperature_c: float | None = None
    override_reason: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step(StepDraft):
    """A stored run-sheet step."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingDraft:
    """One measured value (or taste mark, or note) of a batch."""

    batch_id: int
    at: datetime
    quantity: Quantity
    method: Method
    value: float | None = None  # in the unit of its quantity; None for taste and notes
    sd: float | None = None  # standard uncertainty in the same unit
    temperature_c: float | None = None  # of the sample, where it matters
    text: str = ""  # note words, or the TasteMark value for a taste
    entered: str = ""  # exactly what the maker typed


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading(ReadingDraft):
    """A stored reading."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ReminderDraft:
    """One occurrence of something to do. Unique by (batch_id, kind, occurrence)."""

    batch_id: int | None
    kind: ReminderKind
    occurrence: str
    due_at: datetime
    window_end: datetime | None = None
    state: ReminderState = ReminderState.WAITING
    shown_at: datetime | None = None
    snoozed_until: datetime | None = None
    done_at: datetime | None = None
    text: str = ""  # the maker's own words for an OWN reminder


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminder(ReminderDraft):
    """A stored reminder."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class RowDelta:
    """One row before and after a change, as plain column values; None = no row."""

    table: str
    row_id: int
    before: dict[str, object] | None
    after: dict[str, object] | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Act:
    """One thing the maker did: what happened, to what, and how to take it back."""

    id: int
    at: datetime
    kind: str
    facts: dict[str, object]
    batch_id: int | None
    vessel_id: int | None
    culture_id: int | None
    state: str  # done | undone | dropped


@dataclass(frozen=True, slots=True, kw_only=True)
class PantryInfo:
    """What a store says about itself. A demo pantry holds invented data only."""

    uid: str
    created_at: datetime
    is_demo: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class BackupInfo:
    """One finished, verified backup, as its sidecar describes it."""

    path: Path
    made_at: datetime
    reason: str  # before-migration | daily | manual
    schema_number: int
    pantry_uid: str
    size_bytes: int
    sha256: str
    row_counts: dict[str, int]
