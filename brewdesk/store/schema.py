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
    MetaData,
    PrimaryKeyConstraint,
    Table,
    Text,
    UniqueConstraint,
    text,
)

from brewdesk.store.columns import Choice, Finite, Instant, Words, YesNo
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
    TasteMark,
    TeaKind,
    VesselShape,
)

SCHEMA_NUMBER = 1
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
    _rule("has_value", "value IS NOT NULL OR quantity IN ('taste', 'note')"),
    _rule("ph_range", "quantity <> 'ph' OR value BETWEEN 0 AND 14"),
    _number("sd", 0, 1_000_000, optional=True),
    _number("temperature_c", -50, 200, optional=True),
    _words("text", 20_000),
    _rule("taste_mark", f"quantity <> 'taste' OR {_one_of('text', _values(TasteMark))}"),
    _words("entered", 20_000),
)
Index("ix_reading_batch_id_at", reading.c.batch_id, reading.c.at)

reminder = _table(
    "reminder",
    _link("batch_id", "batch", optional=True, cascade=True),
    _choice("kind", ReminderKind),
    _words("occurrence", 200),
    _instant("due_at"),
    _instant("window_end", optional=True),
    _choice("state", ReminderState),
    _instant("shown_at", optional=True),
    _instant("snoozed_until", optional=True),
    _instant("done_at", optional=True),
    _words("text", 20_000),
    [UniqueConstraint("batch_id", "kind", "occurrence", name="uq_reminder_occurrence")],
)
# NULLs are all different to a unique constraint, so reminders without a batch need their own.
Index(
    "uq_reminder_occurrence_no_batch",
    reminder.c.kind,
    reminder.c.occurrence,
    unique=True,
    sqlite_where=text("batch_id IS NULL"),
    postgresql_where=text("batch_id IS NULL"),
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
SHELF_TABLES = (place, vessel, culture, culture_parent, batch, step, reading, reminder)
