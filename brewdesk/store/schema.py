"""The tables as they are now. Private to the store; records are what leaves it.

Changing a table here needs a migration beside it: a test compares both, word by word.
"""

from __future__ import annotations

from enum import Enum
from typing import Any

from sqlalchemy import (
    CheckConstraint,
    Column,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    PrimaryKeyConstraint,
    Table,
    Text,
    UniqueConstraint,
    text,
)

from brewdesk.store.columns import Choice, Finite, Instant, Words, YesNo
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
    TasteMark,
    TeaKind,
    TransferKind,
    VesselShape,
)

SCHEMA_NUMBER = 2
APPLICATION_ID = 0x4252444B  # "BRDK"

ACT_STATES = ("done", "undone", "dropped")

metadata = MetaData(
    naming_convention={
        "pk": "pk_%(table_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
    }
)

Item = Column[Any] | CheckConstraint | UniqueConstraint


def _one_of(column: str, values: tuple[str, ...]) -> str:
    listed = ", ".join(f"'{value}'" for value in values)
    return f"{column} IN ({listed})"


def _values(kind: type[Enum]) -> tuple[str, ...]:
    return tuple(str(member.value) for member in kind)


def _number(name: str, low: float, high: float, *, optional: bool = False) -> list[Item]:
    """Make a number column that keeps to a range; the range also keeps infinity out."""
    check = CheckConstraint(f"{name} BETWEEN {low:g} AND {high:g}", name=name)
    return [Column(name, Finite(), nullable=optional), check]


def _whole(name: str, low: int, high: int, *, optional: bool = False) -> list[Item]:
    check = CheckConstraint(f"{name} BETWEEN {low} AND {high}", name=name)
    return [Column(name, Integer(), nullable=optional), check]


def _choice(name: str, kind: type[Enum], *, optional: bool = False) -> list[Item]:
    check = CheckConstraint(_one_of(name, _values(kind)), name=name)
    return [Column(name, Choice(kind), nullable=optional), check]


def _instant(name: str, *, optional: bool = False) -> list[Item]:
    check = CheckConstraint(f"{name} LIKE '____-__-__T__:__:__.______Z'", name=name)
    return [Column(name, Instant(), nullable=optional), check]


def _words(name: str, most: int, *, least: int = 0) -> list[Item]:
    check = CheckConstraint(f"length({name}) BETWEEN {least} AND {most}", name=name)
    return [Column(name, Words(), nullable=False), check]


def _link(name: str, table: str, *, optional: bool = False, cascade: bool = False) -> list[Item]:
    target = ForeignKey(f"{table}.id", ondelete="CASCADE" if cascade else None)
    return [Column(name, Integer(), target, nullable=optional)]


def _rule(name: str, condition: str) -> list[Item]:
    return [CheckConstraint(condition, name=name)]


def _table(name: str, *groups: list[Item]) -> Table:
    # Ids are never used again: acts in the history go on naming rows that are gone.
    items = [item for group in groups for item in group]
    number = Column("id", Integer(), nullable=False)
    key = PrimaryKeyConstraint("id")
    return Table(name, metadata, number, *items, key, sqlite_strict=True, sqlite_autoincrement=True)


pantry = _table(
    "pantry",
    _rule("one_row", "id = 1"),
    _words("uid", 36, least=32),
    _instant("created_at"),
    [Column("is_demo", YesNo(), nullable=False), CheckConstraint("is_demo IN (0, 1)", "is_demo")],
)

place = _table(
    "place",
    _words("name", 200, least=1),
    _number("temperature_c", -20, 60),
)

vessel = _table(
    "vessel",
    _words("name", 200, least=1),
    _choice("shape", VesselShape),
    _choice("material", Material),
    [Column("brim_volume_l", Finite(), nullable=False)],
    _rule("brim_volume_l", "brim_volume_l > 0 AND brim_volume_l <= 10000"),
    [Column("working_volume_l", Finite(), nullable=False)],
    _rule("working_volume_l", "working_volume_l > 0 AND working_volume_l <= brim_volume_l"),
    [Column("inner_diameter_cm", Finite(), nullable=False)],
    _rule("inner_diameter_cm", "inner_diameter_cm > 0 AND inner_diameter_cm <= 1000"),
    _link("place_id", "place"),
    _whole("shelf_order", -1_000_000, 1_000_000),
    _words("note", 20_000),
    _instant("retired_at", optional=True),
)
Index("ix_vessel_place_id", vessel.c.place_id)

culture = _table(
    "culture",
    _words("name", 200, least=1),
    _choice("origin", CultureOrigin),
    _choice("state", CultureState),
    _instant("born_at"),
    _link("vessel_id", "vessel", optional=True),
    _number("pellicle_mm", 0, 1000, optional=True),
    _number("diameter_cm", 0, 1000, optional=True),
    _number("wet_mass_g", 0, 1_000_000, optional=True),
    _number("rest_volume_l", 0, 10_000, optional=True),
    _instant("fed_at", optional=True),
    _instant("suspect_at", optional=True),
    _words("suspect_reason", 20_000),
    _instant("gone_at", optional=True),
    _words("gone_to", 200),
    _words("note", 20_000),
)
Index("ix_culture_vessel_id", culture.c.vessel_id)

culture_parent = _table(
    "culture_parent",
    _link("culture_id", "culture"),
    _link("parent_id", "culture"),
    _rule("not_itself", "culture_id <> parent_id"),
    [UniqueConstraint("culture_id", "parent_id", name="uq_culture_parent_pair")],
)
Index("ix_culture_parent_parent_id", culture_parent.c.parent_id)

batch = _table(
    "batch",
    _words("name", 200, least=1),
    _link("vessel_id", "vessel"),
    _link("culture_id", "culture", optional=True),
    _choice("stage", BatchStage),
    _instant("planned_at"),
    _instant("started_at", optional=True),
    _rule("started", "stage NOT IN ('souring', 'drawn_off') OR started_at IS NOT NULL"),
    _instant("ended_at", optional=True),
    _rule("ended", "(stage IN ('planned', 'brewing', 'souring')) = (ended_at IS NULL)"),
    _words("end_reason", 20_000),
    _number("fill_volume_l", 0.001, 10_000),
    _number("sugar_g_per_l", 0, 1000),
    _choice("tea_kind", TeaKind),
    _number("tea_g_per_l", 0, 1000),
    _number("bag_g", 0, 1000),
    _number("starter_ph", 0, 14, optional=True),
    _number("starter_ta_g_per_l", 0, 1000, optional=True),
    _choice("starter_taste", StarterTaste, optional=True),
    _number("target_start_ph", 0, 14),
    _number("water_alkalinity_meq_per_l", -100, 100),
    _number("hot_water_c", -20, 150),
    _number("cold_water_c", -20, 150),
    _number("culture_limit_c", -20, 150),
    _number("place_temperature_c", -20, 60),
    _number("sugar_g", 0, 10_000_000),
    _number("tea_g", 0, 10_000_000),
    _number("starter_volume_l", 0, 10_000),
    _number("hot_water_g", 0, 10_000_000),
    _number("cold_water_g", 0, 10_000_000),
    _number("mixed_temperature_c", -20, 150),
    _number("start_ph", 0, 14),
    _number("start_ph_low", 0, 14),
    _number("start_ph_high", 0, 14),
    _rule("start_ph_order", "start_ph_low <= start_ph_high"),
    _choice("purpose", BatchPurpose),
    _link("starter_batch_id", "batch", optional=True),
    _link("starter_culture_id", "culture", optional=True),
    _instant("suspect_at", optional=True),
    _words("suspect_reason", 20_000),
)
_LIVE = _one_of("stage", tuple(stage.value for stage in BatchStage if stage.is_live))
Index(
    "uq_batch_live_vessel",
    batch.c.vessel_id,
    unique=True,
    sqlite_where=text(_LIVE),
    postgresql_where=text(_LIVE),
)
Index("ix_batch_vessel_id", batch.c.vessel_id)
Index("ix_batch_culture_id", batch.c.culture_id)

vessel_move = _table(
    "vessel_move",
    _link("batch_id", "batch"),
    _link("from_vessel_id", "vessel"),
    _link("to_vessel_id", "vessel"),
    _instant("at"),
)
Index("ix_vessel_move_batch_id", vessel_move.c.batch_id)

transfer = _table(
    "transfer",
    _instant("at"),
    _choice("kind", TransferKind),
    [Column("volume_l", Finite(), nullable=False)],
    _rule("volume_l", "volume_l > 0 AND volume_l <= 10000"),
    _link("from_batch_id", "batch", optional=True),
    _link("to_batch_id", "batch", optional=True),
    _link("from_culture_id", "culture", optional=True),
    _link("to_culture_id", "culture", optional=True),
    _rule(
        "has_an_end",
        "coalesce(from_batch_id, to_batch_id, from_culture_id, to_culture_id) IS NOT NULL",
    ),
    _rule("not_into_itself", "from_batch_id <> to_batch_id"),
    _number("sugar_g", 0, 10_000_000),
    _choice("tea_kind", TeaKind, optional=True),
    _number("tea_g", 0, 10_000_000),
    _number("ph", 0, 14, optional=True),
    _number("ta_g_per_l", 0, 1000, optional=True),
    _number("temperature_c", -20, 150, optional=True),
    _words("override_reason", 20_000),
    _words("note", 20_000),
)
Index("ix_transfer_from_batch_id", transfer.c.from_batch_id)
Index("ix_transfer_to_batch_id", transfer.c.to_batch_id)
Index("ix_transfer_from_culture_id", transfer.c.from_culture_id)
Index("ix_transfer_to_culture_id", transfer.c.to_culture_id)

care = _table(
    "care",
    _link("culture_id", "culture"),
    _instant("at"),
    _choice("kind", CareKind),
    _number("volume_l", 0, 10_000, optional=True),
    _number("sugar_g", 0, 10_000_000, optional=True),
    _number("ph", 0, 14, optional=True),
    _number("sd", 0, 14, optional=True),
    _choice("look", Look, optional=True),
    _rule("has_look", "kind <> 'looked' OR look IS NOT NULL"),
    _rule("has_ph", "kind <> 'ph' OR ph IS NOT NULL"),
    _words("text", 20_000),
)
Index("ix_care_culture_id_at", care.c.culture_id, care.c.at)

bottling = _table(
    "bottling",
    _words("name", 200, least=1),
    _link("batch_id", "batch"),
    _link("transfer_id", "transfer", optional=True),
    _choice("state", BottlingState),
    _instant("filled_at"),
    _instant("chilled_at", optional=True),
    _rule("chilled", "state <> 'chilled' OR chilled_at IS NOT NULL"),
    _instant("ended_at", optional=True),
    _rule("ended", "(state IN ('conditioning', 'chilled')) = (ended_at IS NULL)"),
    _words("end_reason", 20_000),
    [Column("drink_volume_l", Finite(), nullable=False)],
    _rule("drink_volume_l", "drink_volume_l > 0 AND drink_volume_l <= 10000"),
    _number("residual_sugar_low_g_per_l", 0, 1000),
    _number("residual_sugar_high_g_per_l", 0, 1000),
    _rule("residual_sugar", "residual_sugar_low_g_per_l <= residual_sugar_high_g_per_l"),
    _number("target_volumes", 0, 20),
    _choice("priming_kind", SugarKind),
    _number("priming_sugar_g", 0, 10_000_000),
    _number("open_jar_c", -20, 60),
    _link("place_id", "place", optional=True),
    _number("place_temperature_c", -20, 60),
    _number("warmest_c", -20, 60),
    _number("cold_temperature_c", -20, 60, optional=True),
    _number("ph", 0, 14, optional=True),
    _number("ph_sd", 0, 14, optional=True),
    _instant("best_before", optional=True),
    _words("override_reason", 20_000),
    _words("note", 20_000),
)
Index("ix_bottling_batch_id", bottling.c.batch_id)
Index("ix_bottling_state", bottling.c.state)

bottle_group = _table(
    "bottle_group",
    _link("bottling_id", "bottling"),
    _whole("position", 0, 1000),
    _whole("bottle_count", 1, 100_000),
    _choice("kind", BottleKind),
    [Column("brim_volume_l", Finite(), nullable=False)],
    _rule("brim_volume_l", "brim_volume_l > 0 AND brim_volume_l <= 1000"),
    _number("headspace_share", 0, 1),
    _number("rated_bar", 0, 100, optional=True),
    [Column("is_test", YesNo(), nullable=False), CheckConstraint("is_test IN (0, 1)", "is_test")],
    _words("name", 200),
)
Index("ix_bottle_group_bottling_id", bottle_group.c.bottling_id)

addition = _table(
    "addition",
    _link("bottling_id", "bottling"),
    _whole("position", 0, 1000),
    _choice("kind", AdditionKind),
    _words("name", 200, least=1),
    _number("mass_g", 0, 10_000_000),
    _number("sugar_share_low", 0, 1),
    _number("sugar_share_high", 0, 1),
    _rule("sugar_share", "sugar_share_low <= sugar_share_high"),
    _words("source", 2000),
)
Index("ix_addition_bottling_id", addition.c.bottling_id)

bottle_check = _table(
    "bottle_check",
    _link("bottling_id", "bottling"),
    _instant("at"),
    _choice("kind", CheckKind),
    _choice("feel", Feel, optional=True),
    _rule("has_feel", "kind <> 'feel' OR feel IS NOT NULL"),
    _number("gauge_bar", -1, 100, optional=True),
    _rule("has_gauge", "kind <> 'gauge' OR gauge_bar IS NOT NULL"),
    _number("sd_bar", 0, 100, optional=True),
    _choice("opened", Opened, optional=True),
    _rule("has_opened", "kind <> 'opened' OR opened IS NOT NULL"),
    _whole("bottle_count", 0, 100_000),
    _number("temperature_c", -20, 60, optional=True),
    _words("text", 20_000),
)
Index("ix_bottle_check_bottling_id_at", bottle_check.c.bottling_id, bottle_check.c.at)

calibration = _table(
    "calibration",
    _instant("at"),
    _words("meter", 200, least=1),
    _number("slope_percent", 0, 1000, optional=True),
    _number("offset_mv", -10_000, 10_000, optional=True),
    _number("temperature_c", -20, 150, optional=True),
    _words("buffers", 2000),
    _words("verdict", 200),
    _words("text", 20_000),
)

step = _table(
    "step",
    _link("batch_id", "batch"),
    _whole("position", 0, 1000),
    _choice("kind", StepKind),
    _choice("state", StepState),
    _whole("planned_s", 0, 100_000_000, optional=True),
    _instant("ends_at", optional=True),
    _number("remaining_s", 0, 100_000_000, optional=True),
    _instant("started_at", optional=True),
    _instant("finished_at", optional=True),
    _number("temperature_c", -50, 200, optional=True),
    _words("override_reason", 20_000),
)
Index("ix_step_batch_id", step.c.batch_id)

reading = _table(
    "reading",
    _link("batch_id", "batch"),
    _instant("at"),
    _choice("quantity", Quantity),
    _choice("method", Method),
    _number("value", -1_000_000, 1_000_000, optional=True),
    _rule("has_value", "value IS NOT NULL OR quantity IN ('taste', 'note', 'look')"),
    _rule("ph_range", "quantity <> 'ph' OR value BETWEEN 0 AND 14"),
    _number("sd", 0, 1_000_000, optional=True),
    _number("temperature_c", -50, 200, optional=True),
    _words("text", 20_000),
    _rule("taste_mark", f"quantity <> 'taste' OR {_one_of('text', _values(TasteMark))}"),
    _rule("look", f"quantity <> 'look' OR {_one_of('text', _values(Look))}"),
    _words("entered", 20_000),
)
Index("ix_reading_batch_id_at", reading.c.batch_id, reading.c.at)

photo = _table(
    "photo",
    _link("batch_id", "batch", optional=True),
    _link("culture_id", "culture", optional=True),
    _link("reading_id", "reading", optional=True),
    _rule("has_a_subject", "coalesce(batch_id, culture_id) IS NOT NULL"),
    _words("content_hash", 64, least=64),
    _words("media_type", 50, least=1),
    _whole("width_px", 1, 1_000_000),
    _whole("height_px", 1, 1_000_000),
    _whole("size_bytes", 1, 2_000_000_000),
    _instant("taken_at"),
    _words("caption", 2000),
)
Index("ix_photo_batch_id", photo.c.batch_id)
Index("ix_photo_culture_id", photo.c.culture_id)
Index("ix_photo_reading_id", photo.c.reading_id)

place_temperature = _table(
    "place_temperature",
    _link("place_id", "place"),
    _instant("at"),
    _number("temperature_c", -50, 100),
)
Index("ix_place_temperature_place_id_at", place_temperature.c.place_id, place_temperature.c.at)

temperature_log = _table(
    "temperature_log",
    _link("place_id", "place"),
    _words("name", 200, least=1),
    _words("content_hash", 64, least=64),
    _whole("sample_count", 1, 100_000_000),
    _instant("first_at"),
    _instant("last_at"),
)
Index("ix_temperature_log_place_id", temperature_log.c.place_id)

reminder = _table(
    "reminder",
    _link("batch_id", "batch", optional=True, cascade=True),
    _link("culture_id", "culture", optional=True, cascade=True),
    _link("bottling_id", "bottling", optional=True, cascade=True),
    _rule(
        "one_subject",
        "batch_id IS NULL AND culture_id IS NULL"
        " OR batch_id IS NULL AND bottling_id IS NULL"
        " OR culture_id IS NULL AND bottling_id IS NULL",
    ),
    _choice("kind", ReminderKind),
    _words("occurrence", 200),
    _instant("due_at"),
    _instant("window_end", optional=True),
    _choice("state", ReminderState),
    _instant("shown_at", optional=True),
    _instant("snoozed_until", optional=True),
    _instant("done_at", optional=True),
    _words("text", 20_000),
    _whole("revision", 0, 1_000_000_000),
    [UniqueConstraint("batch_id", "kind", "occurrence", name="uq_reminder_occurrence")],
)
Index(
    "uq_reminder_occurrence_culture",
    reminder.c.culture_id,
    reminder.c.kind,
    reminder.c.occurrence,
    unique=True,
)
Index(
    "uq_reminder_occurrence_bottling",
    reminder.c.bottling_id,
    reminder.c.kind,
    reminder.c.occurrence,
    unique=True,
)
# NULLs are all different to a unique constraint, so reminders about nothing need their own.
_ABOUT_NOTHING = "batch_id IS NULL AND culture_id IS NULL AND bottling_id IS NULL"
Index(
    "uq_reminder_occurrence_no_subject",
    reminder.c.kind,
    reminder.c.occurrence,
    unique=True,
    sqlite_where=text(_ABOUT_NOTHING),
    postgresql_where=text(_ABOUT_NOTHING),
)
Index("ix_reminder_due_at", reminder.c.due_at)

# No references out of the history: it goes on naming rows that were taken back.
act = _table(
    "act",
    _instant("at"),
    _words("kind", 100, least=1),
    [Column("facts", Text(), nullable=False)],
    [
        Column("batch_id", Integer()),
        Column("vessel_id", Integer()),
        Column("culture_id", Integer()),
    ],
    [Column("state", Text(), nullable=False)],
    _rule("state", _one_of("state", ACT_STATES)),
    [Column("deltas", Text(), nullable=False)],
)
Index("ix_act_batch_id", act.c.batch_id)
Index("ix_act_state", act.c.state)

# What an act was about, found in its row changes: the life of one vessel, culture or batch.
SUBJECTS = ("place", "vessel", "culture", "batch", "bottling")
act_subject = Table(
    "act_subject",
    metadata,
    Column("subject", Text(), nullable=False),
    Column("subject_id", Integer(), nullable=False),
    Column("act_id", Integer(), ForeignKey("act.id"), nullable=False),
    CheckConstraint(_one_of("subject", SUBJECTS), name="subject"),
    PrimaryKeyConstraint("subject", "subject_id", "act_id"),
    sqlite_strict=True,
)
Index("ix_act_subject_act_id", act_subject.c.act_id)

# The samples of a logger's file, packed; too many to be rows of their own, or part of an act.
temperature_chunk = Table(
    "temperature_chunk",
    metadata,
    Column("content_hash", Words(), nullable=False),
    Column("position", Integer(), nullable=False),
    Column("samples", LargeBinary(), nullable=False),
    CheckConstraint("length(content_hash) = 64", name="content_hash"),
    CheckConstraint("position >= 0", name="position"),
    PrimaryKeyConstraint("content_hash", "position"),
    sqlite_strict=True,
)

setting = Table(
    "setting",
    metadata,
    Column("key", Words(), nullable=False),
    Column("value", Words(), nullable=False),
    CheckConstraint("length(key) BETWEEN 1 AND 200", name="key"),
    PrimaryKeyConstraint("key"),
    sqlite_strict=True,
)

# The tables whose rows acts change; parents before children.
SHELF_TABLES = (
    place,
    vessel,
    culture,
    culture_parent,
    batch,
    vessel_move,
    transfer,
    care,
    bottling,
    bottle_group,
    addition,
    bottle_check,
    calibration,
    step,
    reading,
    photo,
    place_temperature,
    temperature_log,
    reminder,
)
