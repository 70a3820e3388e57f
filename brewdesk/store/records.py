"""Frozen records that leave the store, and the drafts that enter it.

Field names equal column names. Times are aware UTC datetimes. A draft is a record
without its id: ``XDraft`` goes in, ``X`` comes out.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from culturecore.stages import (
    AdditionKind,
    BatchPurpose,
    BatchStage,
    BottleKind,
    BottlingState,
    CareKind,
    CheckKind,
    CultureOrigin,
    CultureState,
    Feel,
    Look,
    Material,
    Method,
    Opened,
    Quantity,
    ReminderKind,
    ReminderState,
    StarterTaste,
    StepKind,
    StepState,
    SugarKind,
    TeaKind,
    TransferKind,
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
    diameter_cm: float | None = None  # of the pellicle
    wet_mass_g: float | None = None  # of the pellicle, dripped off
    rest_volume_l: float | None = None  # liquid it rests in; None while at work
    fed_at: datetime | None = None  # last fresh sweet tea while resting
    suspect_at: datetime | None = None  # since when it may share mold with another
    suspect_reason: str = ""
    gone_at: datetime | None = None
    gone_to: str = ""  # to whom, or what became of it
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
    purpose: BatchPurpose = BatchPurpose.DRINK
    starter_batch_id: int | None = None  # the batch its starter liquid came from
    starter_culture_id: int | None = None  # the culture its starter liquid came from
    suspect_at: datetime | None = None  # since when it may share mold with another
    suspect_reason: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch(BatchDraft):
    """A stored batch."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class VesselMoveDraft:
    """A batch poured over into another vessel."""

    batch_id: int
    from_vessel_id: int
    to_vessel_id: int
    at: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class VesselMove(VesselMoveDraft):
    """A stored pouring over."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TransferDraft:
    """Liquid that went into a jar, out of it, or from one to another.

    An end without a batch or a culture is the world outside: a glass, a kettle.
    ``sugar_g`` and ``tea_g`` are what fresh sweet tea brought along.
    """

    at: datetime
    kind: TransferKind
    volume_l: float
    from_batch_id: int | None = None
    to_batch_id: int | None = None
    from_culture_id: int | None = None  # the liquid a culture rests in
    to_culture_id: int | None = None
    sugar_g: float = 0.0
    tea_kind: TeaKind | None = None
    tea_g: float = 0.0
    ph: float | None = None
    ta_g_per_l: float | None = None
    temperature_c: float | None = None
    override_reason: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Transfer(TransferDraft):
    """A stored transfer."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CareDraft:
    """Something done for a resting culture, or seen at it."""

    culture_id: int
    at: datetime
    kind: CareKind
    volume_l: float | None = None
    sugar_g: float | None = None
    ph: float | None = None
    sd: float | None = None  # standard uncertainty of the pH
    look: Look | None = None
    text: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Care(CareDraft):
    """A stored piece of care."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BottlingDraft:
    """The bottles filled from one batch on one day, and what was reckoned with."""

    name: str
    batch_id: int
    filled_at: datetime
    drink_volume_l: float
    residual_sugar_low_g_per_l: float
    residual_sugar_high_g_per_l: float
    target_volumes: float
    priming_sugar_g: float
    place_temperature_c: float
    open_jar_c: float  # warmest the open jar has been
    warmest_c: float  # that the closed bottles may get
    priming_kind: SugarKind = SugarKind.SUCROSE
    state: BottlingState = BottlingState.CONDITIONING
    transfer_id: int | None = None  # the drawing off that filled them
    place_id: int | None = None
    chilled_at: datetime | None = None
    cold_temperature_c: float | None = None  # of the fridge or cellar they went into
    ended_at: datetime | None = None
    end_reason: str = ""
    ph: float | None = None
    ph_sd: float | None = None
    best_before: datetime | None = None
    override_reason: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bottling(BottlingDraft):
    """A stored bottling."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BottleGroupDraft:
    """Bottles of one kind in a bottling."""

    bottling_id: int
    position: int
    bottle_count: int
    kind: BottleKind
    brim_volume_l: float
    headspace_share: float
    rated_bar: float | None = None  # gauge, as their maker states it
    is_test: bool = False  # one to be felt, or with a gauge
    name: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class BottleGroup(BottleGroupDraft):
    """A stored kind of bottles."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class AdditionDraft:
    """What went into all the bottles of a bottling together, beside the drink."""

    bottling_id: int
    position: int
    kind: AdditionKind
    name: str
    mass_g: float
    sugar_share_low: float
    sugar_share_high: float
    source: str = ""  # where the share of sugar is from


@dataclass(frozen=True, slots=True, kw_only=True)
class Addition(AdditionDraft):
    """A stored addition."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BottleCheckDraft:
    """A look at the bottles: felt, gauged, opened, vented."""

    bottling_id: int
    at: datetime
    kind: CheckKind
    feel: Feel | None = None
    gauge_bar: float | None = None
    sd_bar: float | None = None
    opened: Opened | None = None
    bottle_count: int = 0  # that were opened
    temperature_c: float | None = None
    text: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class BottleCheck(BottleCheckDraft):
    """A stored look at the bottles."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrationDraft:
    """A calibration of a pH meter."""

    at: datetime
    meter: str
    slope_percent: float | None = None
    offset_mv: float | None = None
    temperature_c: float | None = None
    buffers: str = ""
    verdict: str = ""
    text: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Calibration(CalibrationDraft):
    """A stored calibration."""

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
class PhotoDraft:
    """A picture of a batch, a culture or a reading. The file is named by its content."""

    content_hash: str  # SHA-256, hex
    media_type: str
    width_px: int
    height_px: int
    size_bytes: int
    taken_at: datetime
    batch_id: int | None = None
    culture_id: int | None = None
    reading_id: int | None = None
    caption: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Photo(PhotoDraft):
    """A stored picture's entry."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceTemperatureDraft:
    """One temperature of a place, read by the maker."""

    place_id: int
    at: datetime
    temperature_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceTemperature(PlaceTemperatureDraft):
    """A stored temperature of a place."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TemperatureLogDraft:
    """A logger's file of a place; its samples are kept packed under ``content_hash``."""

    place_id: int
    name: str
    content_hash: str  # SHA-256 of the packed samples, hex
    sample_count: int
    first_at: datetime
    last_at: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class TemperatureLog(TemperatureLogDraft):
    """A stored logger's file."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ReminderDraft:
    """One occurrence of something to do. Unique by what it is about, kind, occurrence."""

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
    culture_id: int | None = None
    bottling_id: int | None = None
    revision: int = 0  # how often it has moved, for calendars that were told before


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
    reason: str  # one of backup.REASONS
    schema_number: int
    pantry_uid: str
    size_bytes: int
    sha256: str
    row_counts: dict[str, int]
