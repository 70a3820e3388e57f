"""The tables as they are now. Private to the store; records are what leaves it.

Changing a table here needs a migration beside it: a test compares both, word by word.
"""

from __future__ import annotations

from sqlalchemy import (
    CheckConstraint,
    Column,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    PrimaryKeyConstraint,
    Table,
    Text,
    UniqueConstraint,
    text,
)

from brewdesk.store.columns import Finite, Words, YesNo
from brewdesk.store.stocktables import batch_supply, supply, supply_draw, supply_lot
from brewdesk.store.tableparts import (
    choice,
    instant,
    link,
    metadata,
    number,
    one_of,
    rule,
    table,
    values,
    whole,
    words,
)
from brewdesk.store.trialtables import trial, trial_arm, trial_jar, trial_score
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

SCHEMA_NUMBER = 3
APPLICATION_ID = 0x4252444B  # "BRDK"

ACT_STATES = ("done", "undone", "dropped")

pantry = table(
    "pantry",
    rule("one_row", "id = 1"),
    words("uid", 36, least=32),
    instant("created_at"),
    [Column("is_demo", YesNo(), nullable=False), CheckConstraint("is_demo IN (0, 1)", "is_demo")],
)

place = table(
    "place",
    words("name", 200, least=1),
    number("temperature_c", -20, 60),
)

vessel = table(
    "vessel",
    words("name", 200, least=1),
    choice("shape", VesselShape),
    choice("material", Material),
    [Column("brim_volume_l", Finite(), nullable=False)],
    rule("brim_volume_l", "brim_volume_l > 0 AND brim_volume_l <= 10000"),
    [Column("working_volume_l", Finite(), nullable=False)],
    rule("working_volume_l", "working_volume_l > 0 AND working_volume_l <= brim_volume_l"),
    [Column("inner_diameter_cm", Finite(), nullable=False)],
    rule("inner_diameter_cm", "inner_diameter_cm > 0 AND inner_diameter_cm <= 1000"),
    link("place_id", "place"),
    whole("shelf_order", -1_000_000, 1_000_000),
    words("note", 20_000),
    instant("retired_at", optional=True),
)
Index("ix_vessel_place_id", vessel.c.place_id)

culture = table(
    "culture",
    words("name", 200, least=1),
    choice("origin", CultureOrigin),
    choice("state", CultureState),
    instant("born_at"),
    link("vessel_id", "vessel", optional=True),
    number("pellicle_mm", 0, 1000, optional=True),
    number("diameter_cm", 0, 1000, optional=True),
    number("wet_mass_g", 0, 1_000_000, optional=True),
    number("rest_volume_l", 0, 10_000, optional=True),
    instant("fed_at", optional=True),
    instant("suspect_at", optional=True),
    words("suspect_reason", 20_000),
    instant("gone_at", optional=True),
    words("gone_to", 200),
    words("note", 20_000),
)
Index("ix_culture_vessel_id", culture.c.vessel_id)

culture_parent = table(
    "culture_parent",
    link("culture_id", "culture"),
    link("parent_id", "culture"),
    rule("not_itself", "culture_id <> parent_id"),
    [UniqueConstraint("culture_id", "parent_id", name="uq_culture_parent_pair")],
)
Index("ix_culture_parent_parent_id", culture_parent.c.parent_id)

batch = table(
    "batch",
    words("name", 200, least=1),
    link("vessel_id", "vessel"),
    link("culture_id", "culture", optional=True),
    choice("stage", BatchStage),
    instant("planned_at"),
    instant("started_at", optional=True),
    rule("started", "stage NOT IN ('souring', 'drawn_off') OR started_at IS NOT NULL"),
    instant("ended_at", optional=True),
    rule("ended", "(stage IN ('planned', 'brewing', 'souring')) = (ended_at IS NULL)"),
    words("end_reason", 20_000),
    number("fill_volume_l", 0.001, 10_000),
    number("sugar_g_per_l", 0, 1000),
    choice("tea_kind", TeaKind),
    number("tea_g_per_l", 0, 1000),
    number("bag_g", 0, 1000),
    number("starter_ph", 0, 14, optional=True),
    number("starter_ta_g_per_l", 0, 1000, optional=True),
    choice("starter_taste", StarterTaste, optional=True),
    number("target_start_ph", 0, 14),
    number("water_alkalinity_meq_per_l", -100, 100),
    number("hot_water_c", -20, 150),
    number("cold_water_c", -20, 150),
    number("culture_limit_c", -20, 150),
    number("place_temperature_c", -20, 60),
    number("sugar_g", 0, 10_000_000),
    number("tea_g", 0, 10_000_000),
    number("starter_volume_l", 0, 10_000),
    number("hot_water_g", 0, 10_000_000),
    number("cold_water_g", 0, 10_000_000),
    number("mixed_temperature_c", -20, 150),
    number("start_ph", 0, 14),
    number("start_ph_low", 0, 14),
    number("start_ph_high", 0, 14),
    rule("start_ph_order", "start_ph_low <= start_ph_high"),
    choice("purpose", BatchPurpose),
    link("starter_batch_id", "batch", optional=True),
    link("starter_culture_id", "culture", optional=True),
    instant("suspect_at", optional=True),
    words("suspect_reason", 20_000),
)
_LIVE = one_of("stage", tuple(stage.value for stage in BatchStage if stage.is_live))
Index(
    "uq_batch_live_vessel",
    batch.c.vessel_id,
    unique=True,
    sqlite_where=text(_LIVE),
    postgresql_where=text(_LIVE),
)
Index("ix_batch_vessel_id", batch.c.vessel_id)
Index("ix_batch_culture_id", batch.c.culture_id)

vessel_move = table(
    "vessel_move",
    link("batch_id", "batch"),
    link("from_vessel_id", "vessel"),
    link("to_vessel_id", "vessel"),
    instant("at"),
)
Index("ix_vessel_move_batch_id", vessel_move.c.batch_id)

transfer = table(
    "transfer",
    instant("at"),
    choice("kind", TransferKind),
    [Column("volume_l", Finite(), nullable=False)],
    rule("volume_l", "volume_l > 0 AND volume_l <= 10000"),
    link("from_batch_id", "batch", optional=True),
    link("to_batch_id", "batch", optional=True),
    link("from_culture_id", "culture", optional=True),
    link("to_culture_id", "culture", optional=True),
    rule(
        "has_an_end",
        "coalesce(from_batch_id, to_batch_id, from_culture_id, to_culture_id) IS NOT NULL",
    ),
    rule("not_into_itself", "from_batch_id <> to_batch_id"),
    number("sugar_g", 0, 10_000_000),
    choice("tea_kind", TeaKind, optional=True),
    number("tea_g", 0, 10_000_000),
    number("ph", 0, 14, optional=True),
    number("ta_g_per_l", 0, 1000, optional=True),
    number("temperature_c", -20, 150, optional=True),
    words("override_reason", 20_000),
    words("note", 20_000),
)
Index("ix_transfer_from_batch_id", transfer.c.from_batch_id)
Index("ix_transfer_to_batch_id", transfer.c.to_batch_id)
Index("ix_transfer_from_culture_id", transfer.c.from_culture_id)
Index("ix_transfer_to_culture_id", transfer.c.to_culture_id)

care = table(
    "care",
    link("culture_id", "culture"),
    instant("at"),
    choice("kind", CareKind),
    number("volume_l", 0, 10_000, optional=True),
    number("sugar_g", 0, 10_000_000, optional=True),
    number("ph", 0, 14, optional=True),
    number("sd", 0, 14, optional=True),
    choice("look", Look, optional=True),
    rule("has_look", "kind <> 'looked' OR look IS NOT NULL"),
    rule("has_ph", "kind <> 'ph' OR ph IS NOT NULL"),
    words("text", 20_000),
)
Index("ix_care_culture_id_at", care.c.culture_id, care.c.at)

bottling = table(
    "bottling",
    words("name", 200, least=1),
    link("batch_id", "batch"),
    link("transfer_id", "transfer", optional=True),
    choice("state", BottlingState),
    instant("filled_at"),
    instant("chilled_at", optional=True),
    rule("chilled", "state <> 'chilled' OR chilled_at IS NOT NULL"),
    instant("ended_at", optional=True),
    rule("ended", "(state IN ('conditioning', 'chilled')) = (ended_at IS NULL)"),
    words("end_reason", 20_000),
    [Column("drink_volume_l", Finite(), nullable=False)],
    rule("drink_volume_l", "drink_volume_l > 0 AND drink_volume_l <= 10000"),
    number("residual_sugar_low_g_per_l", 0, 1000),
    number("residual_sugar_high_g_per_l", 0, 1000),
    rule("residual_sugar", "residual_sugar_low_g_per_l <= residual_sugar_high_g_per_l"),
    number("target_volumes", 0, 20),
    choice("priming_kind", SugarKind),
    number("priming_sugar_g", 0, 10_000_000),
    number("open_jar_c", -20, 60),
    link("place_id", "place", optional=True),
    number("place_temperature_c", -20, 60),
    number("warmest_c", -20, 60),
    number("cold_temperature_c", -20, 60, optional=True),
    number("ph", 0, 14, optional=True),
    number("ph_sd", 0, 14, optional=True),
    instant("best_before", optional=True),
    words("override_reason", 20_000),
    words("note", 20_000),
)
Index("ix_bottling_batch_id", bottling.c.batch_id)
Index("ix_bottling_state", bottling.c.state)

bottle_group = table(
    "bottle_group",
    link("bottling_id", "bottling"),
    whole("position", 0, 1000),
    whole("bottle_count", 1, 100_000),
    choice("kind", BottleKind),
    [Column("brim_volume_l", Finite(), nullable=False)],
    rule("brim_volume_l", "brim_volume_l > 0 AND brim_volume_l <= 1000"),
    number("headspace_share", 0, 1),
    number("rated_bar", 0, 100, optional=True),
    [Column("is_test", YesNo(), nullable=False), CheckConstraint("is_test IN (0, 1)", "is_test")],
    words("name", 200),
)
Index("ix_bottle_group_bottling_id", bottle_group.c.bottling_id)

addition = table(
    "addition",
    link("bottling_id", "bottling"),
    whole("position", 0, 1000),
    choice("kind", AdditionKind),
    words("name", 200, least=1),
    number("mass_g", 0, 10_000_000),
    number("sugar_share_low", 0, 1),
    number("sugar_share_high", 0, 1),
    rule("sugar_share", "sugar_share_low <= sugar_share_high"),
    words("source", 2000),
)
Index("ix_addition_bottling_id", addition.c.bottling_id)

bottle_check = table(
    "bottle_check",
    link("bottling_id", "bottling"),
    instant("at"),
    choice("kind", CheckKind),
    choice("feel", Feel, optional=True),
    rule("has_feel", "kind <> 'feel' OR feel IS NOT NULL"),
    number("gauge_bar", -1, 100, optional=True),
    rule("has_gauge", "kind <> 'gauge' OR gauge_bar IS NOT NULL"),
    number("sd_bar", 0, 100, optional=True),
    choice("opened", Opened, optional=True),
    rule("has_opened", "kind <> 'opened' OR opened IS NOT NULL"),
    whole("bottle_count", 0, 100_000),
    number("temperature_c", -20, 60, optional=True),
    words("text", 20_000),
)
Index("ix_bottle_check_bottling_id_at", bottle_check.c.bottling_id, bottle_check.c.at)

calibration = table(
    "calibration",
    instant("at"),
    words("meter", 200, least=1),
    number("slope_percent", 0, 1000, optional=True),
    number("offset_mv", -10_000, 10_000, optional=True),
    number("temperature_c", -20, 150, optional=True),
    words("buffers", 2000),
    words("verdict", 200),
    words("text", 20_000),
)

step = table(
    "step",
    link("batch_id", "batch"),
    whole("position", 0, 1000),
    choice("kind", StepKind),
    choice("state", StepState),
    whole("planned_s", 0, 100_000_000, optional=True),
    instant("ends_at", optional=True),
    number("remaining_s", 0, 100_000_000, optional=True),
    instant("started_at", optional=True),
    instant("finished_at", optional=True),
    number("temperature_c", -50, 200, optional=True),
    words("override_reason", 20_000),
)
Index("ix_step_batch_id", step.c.batch_id)

reading = table(
    "reading",
    link("batch_id", "batch"),
    instant("at"),
    choice("quantity", Quantity),
    choice("method", Method),
    number("value", -1_000_000, 1_000_000, optional=True),
    rule("has_value", "value IS NOT NULL OR quantity IN ('taste', 'note', 'look')"),
    rule("ph_range", "quantity <> 'ph' OR value BETWEEN 0 AND 14"),
    number("sd", 0, 1_000_000, optional=True),
    number("temperature_c", -50, 200, optional=True),
    words("text", 20_000),
    rule("taste_mark", f"quantity <> 'taste' OR {one_of('text', values(TasteMark))}"),
    rule("look", f"quantity <> 'look' OR {one_of('text', values(Look))}"),
    words("entered", 20_000),
)
Index("ix_reading_batch_id_at", reading.c.batch_id, reading.c.at)

photo = table(
    "photo",
    link("batch_id", "batch", optional=True),
    link("culture_id", "culture", optional=True),
    link("reading_id", "reading", optional=True),
    rule("has_a_subject", "coalesce(batch_id, culture_id) IS NOT NULL"),
    words("content_hash", 64, least=64),
    words("media_type", 50, least=1),
    whole("width_px", 1, 1_000_000),
    whole("height_px", 1, 1_000_000),
    whole("size_bytes", 1, 2_000_000_000),
    instant("taken_at"),
    words("caption", 2000),
)
Index("ix_photo_batch_id", photo.c.batch_id)
Index("ix_photo_culture_id", photo.c.culture_id)
Index("ix_photo_reading_id", photo.c.reading_id)

place_temperature = table(
    "place_temperature",
    link("place_id", "place"),
    instant("at"),
    number("temperature_c", -50, 100),
)
Index("ix_place_temperature_place_id_at", place_temperature.c.place_id, place_temperature.c.at)

temperature_log = table(
    "temperature_log",
    link("place_id", "place"),
    words("name", 200, least=1),
    words("content_hash", 64, least=64),
    whole("sample_count", 1, 100_000_000),
    instant("first_at"),
    instant("last_at"),
)
Index("ix_temperature_log_place_id", temperature_log.c.place_id)

reminder = table(
    "reminder",
    link("batch_id", "batch", optional=True, cascade=True),
    link("culture_id", "culture", optional=True, cascade=True),
    link("bottling_id", "bottling", optional=True, cascade=True),
    rule(
        "one_subject",
        "batch_id IS NULL AND culture_id IS NULL"
        " OR batch_id IS NULL AND bottling_id IS NULL"
        " OR culture_id IS NULL AND bottling_id IS NULL",
    ),
    choice("kind", ReminderKind),
    words("occurrence", 200),
    instant("due_at"),
    instant("window_end", optional=True),
    choice("state", ReminderState),
    instant("shown_at", optional=True),
    instant("snoozed_until", optional=True),
    instant("done_at", optional=True),
    words("text", 20_000),
    whole("revision", 0, 1_000_000_000),
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
act = table(
    "act",
    instant("at"),
    words("kind", 100, least=1),
    [Column("facts", Text(), nullable=False)],
    [
        Column("batch_id", Integer()),
        Column("vessel_id", Integer()),
        Column("culture_id", Integer()),
    ],
    [Column("state", Text(), nullable=False)],
    rule("state", one_of("state", ACT_STATES)),
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
    CheckConstraint(one_of("subject", SUBJECTS), name="subject"),
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
    supply,
    supply_lot,
    supply_draw,
    batch_supply,
    trial,
    trial_arm,
    trial_jar,
    trial_score,
)
