"""The first schema: places, vessels, cultures, batches, readings, reminders, history.

Written out in full, so that it stays as it was when ``schema.py`` moves on.
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

NUMBER: sa.types.TypeEngine[float] = sa.Double().with_variant(sa.REAL(), "sqlite")


def one_of(column: str, *values: str) -> str:
    """Give the condition that a column holds one of the texts."""
    listed = ", ".join(f"'{value}'" for value in values)
    return f"{column} IN ({listed})"


def upgrade() -> None:
    op.create_table(
        "act",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("facts", sa.Text(), nullable=False),
        sa.Column("batch_id", sa.Integer()),
        sa.Column("vessel_id", sa.Integer()),
        sa.Column("culture_id", sa.Integer()),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("deltas", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_act_at"),
        sa.CheckConstraint("length(kind) BETWEEN 1 AND 100", name="ck_act_kind"),
        sa.CheckConstraint("state IN ('done', 'undone', 'dropped')", name="ck_act_state"),
        sa.PrimaryKeyConstraint("id", name="pk_act"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_act_batch_id", "act", ["batch_id"])
    op.create_index("ix_act_state", "act", ["state"])
    op.create_table(
        "pantry",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uid", sa.Text(), nullable=False),
        sa.Column("created_at", sa.Text(), nullable=False),
        sa.Column("is_demo", sa.Integer(), nullable=False),
        sa.CheckConstraint("id = 1", name="ck_pantry_one_row"),
        sa.CheckConstraint("length(uid) BETWEEN 32 AND 36", name="ck_pantry_uid"),
        sa.CheckConstraint(
            "created_at LIKE '____-__-__T__:__:__.______Z'", name="ck_pantry_created_at"
        ),
        sa.CheckConstraint("is_demo IN (0, 1)", name="ck_pantry_is_demo"),
        sa.PrimaryKeyConstraint("id", name="pk_pantry"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_table(
        "place",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("temperature_c", NUMBER, nullable=False),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_place_name"),
        sa.CheckConstraint("temperature_c BETWEEN -20 AND 60", name="ck_place_temperature_c"),
        sa.PrimaryKeyConstraint("id", name="pk_place"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_table(
        "setting",
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.CheckConstraint("length(key) BETWEEN 1 AND 200", name="ck_setting_key"),
        sa.PrimaryKeyConstraint("key", name="pk_setting"),
        sqlite_strict=True,
    )
    op.create_table(
        "vessel",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("shape", sa.Text(), nullable=False),
        sa.Column("material", sa.Text(), nullable=False),
        sa.Column("brim_volume_l", NUMBER, nullable=False),
        sa.Column("working_volume_l", NUMBER, nullable=False),
        sa.Column("inner_diameter_cm", NUMBER, nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("shelf_order", sa.Integer(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("retired_at", sa.Text()),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_vessel_name"),
        sa.CheckConstraint(
            "shape IN ('cylinder', 'shouldered', 'tapered')", name="ck_vessel_shape"
        ),
        sa.CheckConstraint(
            one_of(
                "material",
                "glass",
                "stainless_steel",
                "food_plastic",
                "ceramic_food_safe",
                "ceramic_unknown_glaze",
                "lead_crystal",
                "reactive_metal",
                "other_plastic",
                "wood",
            ),
            name="ck_vessel_material",
        ),
        sa.CheckConstraint(
            "brim_volume_l > 0 AND brim_volume_l <= 10000", name="ck_vessel_brim_volume_l"
        ),
        sa.CheckConstraint(
            "working_volume_l > 0 AND working_volume_l <= brim_volume_l",
            name="ck_vessel_working_volume_l",
        ),
        sa.CheckConstraint(
            "inner_diameter_cm > 0 AND inner_diameter_cm <= 1000",
            name="ck_vessel_inner_diameter_cm",
        ),
        sa.CheckConstraint(
            "shelf_order BETWEEN -1000000 AND 1000000", name="ck_vessel_shelf_order"
        ),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_vessel_note"),
        sa.CheckConstraint(
            "retired_at LIKE '____-__-__T__:__:__.______Z'", name="ck_vessel_retired_at"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_vessel"),
        sa.ForeignKeyConstraint(["place_id"], ["place.id"], name="fk_vessel_place_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_vessel_place_id", "vessel", ["place_id"])
    op.create_table(
        "culture",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("origin", sa.Text(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("born_at", sa.Text(), nullable=False),
        sa.Column("vessel_id", sa.Integer()),
        sa.Column("pellicle_mm", NUMBER),
        sa.Column("note", sa.Text(), nullable=False),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_culture_name"),
        sa.CheckConstraint(
            "origin IN ('raw_bottle', 'gift', 'bought', 'split', 'merged')",
            name="ck_culture_origin",
        ),
        sa.CheckConstraint(
            one_of("state", "forming", "at_work", "resting", "retired", "given_away", "lost"),
            name="ck_culture_state",
        ),
        sa.CheckConstraint("born_at LIKE '____-__-__T__:__:__.______Z'", name="ck_culture_born_at"),
        sa.CheckConstraint("pellicle_mm BETWEEN 0 AND 1000", name="ck_culture_pellicle_mm"),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_culture_note"),
        sa.PrimaryKeyConstraint("id", name="pk_culture"),
        sa.ForeignKeyConstraint(["vessel_id"], ["vessel.id"], name="fk_culture_vessel_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_culture_vessel_id", "culture", ["vessel_id"])
    op.create_table(
        "batch",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("vessel_id", sa.Integer(), nullable=False),
        sa.Column("culture_id", sa.Integer()),
        sa.Column("stage", sa.Text(), nullable=False),
        sa.Column("planned_at", sa.Text(), nullable=False),
        sa.Column("started_at", sa.Text()),
        sa.Column("ended_at", sa.Text()),
        sa.Column("end_reason", sa.Text(), nullable=False),
        sa.Column("fill_volume_l", NUMBER, nullable=False),
        sa.Column("sugar_g_per_l", NUMBER, nullable=False),
        sa.Column("tea_kind", sa.Text(), nullable=False),
        sa.Column("tea_g_per_l", NUMBER, nullable=False),
        sa.Column("bag_g", NUMBER, nullable=False),
        sa.Column("starter_ph", NUMBER),
        sa.Column("starter_ta_g_per_l", NUMBER),
        sa.Column("starter_taste", sa.Text()),
        sa.Column("target_start_ph", NUMBER, nullable=False),
        sa.Column("water_alkalinity_meq_per_l", NUMBER, nullable=False),
        sa.Column("hot_water_c", NUMBER, nullable=False),
        sa.Column("cold_water_c", NUMBER, nullable=False),
        sa.Column("culture_limit_c", NUMBER, nullable=False),
        sa.Column("place_temperature_c", NUMBER, nullable=False),
        sa.Column("sugar_g", NUMBER, nullable=False),
        sa.Column("tea_g", NUMBER, nullable=False),
        sa.Column("starter_volume_l", NUMBER, nullable=False),
        sa.Column("hot_water_g", NUMBER, nullable=False),
        sa.Column("cold_water_g", NUMBER, nullable=False),
        sa.Column("mixed_temperature_c", NUMBER, nullable=False),
        sa.Column("start_ph", NUMBER, nullable=False),
        sa.Column("start_ph_low", NUMBER, nullable=False),
        sa.Column("start_ph_high", NUMBER, nullable=False),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_batch_name"),
        sa.CheckConstraint(
            one_of("stage", "planned", "brewing", "souring", "drawn_off", "closed", "discarded"),
            name="ck_batch_stage",
        ),
        sa.CheckConstraint(
            "planned_at LIKE '____-__-__T__:__:__.______Z'", name="ck_batch_planned_at"
        ),
        sa.CheckConstraint(
            "started_at LIKE '____-__-__T__:__:__.______Z'", name="ck_batch_started_at"
        ),
        sa.CheckConstraint(
            "stage NOT IN ('souring', 'drawn_off') OR started_at IS NOT NULL",
            name="ck_batch_started",
        ),
        sa.CheckConstraint("ended_at LIKE '____-__-__T__:__:__.______Z'", name="ck_batch_ended_at"),
        sa.CheckConstraint(
            "(stage IN ('planned', 'brewing', 'souring')) = (ended_at IS NULL)",
            name="ck_batch_ended",
        ),
        sa.CheckConstraint("length(end_reason) BETWEEN 0 AND 20000", name="ck_batch_end_reason"),
        sa.CheckConstraint("fill_volume_l BETWEEN 0.001 AND 10000", name="ck_batch_fill_volume_l"),
        sa.CheckConstraint("sugar_g_per_l BETWEEN 0 AND 1000", name="ck_batch_sugar_g_per_l"),
        sa.CheckConstraint(
            "tea_kind IN ('black', 'green', 'oolong', 'white', 'mixed', 'herbal')",
            name="ck_batch_tea_kind",
        ),
        sa.CheckConstraint("tea_g_per_l BETWEEN 0 AND 1000", name="ck_batch_tea_g_per_l"),
        sa.CheckConstraint("bag_g BETWEEN 0 AND 1000", name="ck_batch_bag_g"),
        sa.CheckConstraint("starter_ph BETWEEN 0 AND 14", name="ck_batch_starter_ph"),
        sa.CheckConstraint(
            "starter_ta_g_per_l BETWEEN 0 AND 1000", name="ck_batch_starter_ta_g_per_l"
        ),
        sa.CheckConstraint(
            "starter_taste IN ('sweet', 'balanced', 'sour', 'vinegary')",
            name="ck_batch_starter_taste",
        ),
        sa.CheckConstraint("target_start_ph BETWEEN 0 AND 14", name="ck_batch_target_start_ph"),
        sa.CheckConstraint(
            "water_alkalinity_meq_per_l BETWEEN -100 AND 100",
            name="ck_batch_water_alkalinity_meq_per_l",
        ),
        sa.CheckConstraint("hot_water_c BETWEEN -20 AND 150", name="ck_batch_hot_water_c"),
        sa.CheckConstraint("cold_water_c BETWEEN -20 AND 150", name="ck_batch_cold_water_c"),
        sa.CheckConstraint("culture_limit_c BETWEEN -20 AND 150", name="ck_batch_culture_limit_c"),
        sa.CheckConstraint(
            "place_temperature_c BETWEEN -20 AND 60", name="ck_batch_place_temperature_c"
        ),
        sa.CheckConstraint("sugar_g BETWEEN 0 AND 1e+07", name="ck_batch_sugar_g"),
        sa.CheckConstraint("tea_g BETWEEN 0 AND 1e+07", name="ck_batch_tea_g"),
        sa.CheckConstraint(
            "starter_volume_l BETWEEN 0 AND 10000", name="ck_batch_starter_volume_l"
        ),
        sa.CheckConstraint("hot_water_g BETWEEN 0 AND 1e+07", name="ck_batch_hot_water_g"),
        sa.CheckConstraint("cold_water_g BETWEEN 0 AND 1e+07", name="ck_batch_cold_water_g"),
        sa.CheckConstraint(
            "mixed_temperature_c BETWEEN -20 AND 150", name="ck_batch_mixed_temperature_c"
        ),
        sa.CheckConstraint("start_ph BETWEEN 0 AND 14", name="ck_batch_start_ph"),
        sa.CheckConstraint("start_ph_low BETWEEN 0 AND 14", name="ck_batch_start_ph_low"),
        sa.CheckConstraint("start_ph_high BETWEEN 0 AND 14", name="ck_batch_start_ph_high"),
        sa.CheckConstraint("start_ph_low <= start_ph_high", name="ck_batch_start_ph_order"),
        sa.PrimaryKeyConstraint("id", name="pk_batch"),
        sa.ForeignKeyConstraint(["vessel_id"], ["vessel.id"], name="fk_batch_vessel_id"),
        sa.ForeignKeyConstraint(["culture_id"], ["culture.id"], name="fk_batch_culture_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_batch_culture_id", "batch", ["culture_id"])
    op.create_index("ix_batch_vessel_id", "batch", ["vessel_id"])
    op.create_index(
        "uq_batch_live_vessel",
        "batch",
        ["vessel_id"],
        unique=True,
        sqlite_where=sa.text("stage IN ('planned', 'brewing', 'souring')"),
        postgresql_where=sa.text("stage IN ('planned', 'brewing', 'souring')"),
    )
    op.create_table(
        "culture_parent",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("culture_id", sa.Integer(), nullable=False),
        sa.Column("parent_id", sa.Integer(), nullable=False),
        sa.CheckConstraint("culture_id <> parent_id", name="ck_culture_parent_not_itself"),
        sa.UniqueConstraint("culture_id", "parent_id", name="uq_culture_parent_pair"),
        sa.PrimaryKeyConstraint("id", name="pk_culture_parent"),
        sa.ForeignKeyConstraint(
            ["culture_id"], ["culture.id"], name="fk_culture_parent_culture_id"
        ),
        sa.ForeignKeyConstraint(["parent_id"], ["culture.id"], name="fk_culture_parent_parent_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_culture_parent_parent_id", "culture_parent", ["parent_id"])
    op.create_table(
        "reading",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("quantity", sa.Text(), nullable=False),
        sa.Column("method", sa.Text(), nullable=False),
        sa.Column("value", NUMBER),
        sa.Column("sd", NUMBER),
        sa.Column("temperature_c", NUMBER),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_reading_at"),
        sa.CheckConstraint(
            one_of(
                "quantity",
                "ph",
                "temperature_c",
                "brix",
                "specific_gravity",
                "ta_g_per_l",
                "taste",
                "pellicle_mm",
                "note",
            ),
            name="ck_reading_quantity",
        ),
        sa.CheckConstraint(
            one_of(
                "method",
                "meter",
                "strip",
                "thermometer",
                "refractometer",
                "hydrometer",
                "titration",
                "tongue",
                "ruler",
                "eye",
            ),
            name="ck_reading_method",
        ),
        sa.CheckConstraint("value BETWEEN -1e+06 AND 1e+06", name="ck_reading_value"),
        sa.CheckConstraint(
            "value IS NOT NULL OR quantity IN ('taste', 'note')", name="ck_reading_has_value"
        ),
        sa.CheckConstraint(
            "quantity <> 'ph' OR value BETWEEN 0 AND 14", name="ck_reading_ph_range"
        ),
        sa.CheckConstraint("sd BETWEEN 0 AND 1e+06", name="ck_reading_sd"),
        sa.CheckConstraint("temperature_c BETWEEN -50 AND 200", name="ck_reading_temperature_c"),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_reading_text"),
        sa.CheckConstraint(
            "quantity <> 'taste' OR "
            + one_of("text", "far_too_sweet", "too_sweet", "right", "too_sour", "far_too_sour"),
            name="ck_reading_taste_mark",
        ),
        sa.CheckConstraint("length(entered) BETWEEN 0 AND 20000", name="ck_reading_entered"),
        sa.PrimaryKeyConstraint("id", name="pk_reading"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_reading_batch_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_reading_batch_id_at", "reading", ["batch_id", "at"])
    op.create_table(
        "reminder",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer()),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("occurrence", sa.Text(), nullable=False),
        sa.Column("due_at", sa.Text(), nullable=False),
        sa.Column("window_end", sa.Text()),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("shown_at", sa.Text()),
        sa.Column("snoozed_until", sa.Text()),
        sa.Column("done_at", sa.Text()),
        sa.Column("text", sa.Text(), nullable=False),
        sa.CheckConstraint(
            "kind IN ('taste', 'ph_check', 'mold_look', 'own')", name="ck_reminder_kind"
        ),
        sa.CheckConstraint("length(occurrence) BETWEEN 0 AND 200", name="ck_reminder_occurrence"),
        sa.CheckConstraint("due_at LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_due_at"),
        sa.CheckConstraint(
            "window_end LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_window_end"
        ),
        sa.CheckConstraint(
            "state IN ('waiting', 'shown', 'snoozed', 'done', 'dropped')", name="ck_reminder_state"
        ),
        sa.CheckConstraint(
            "shown_at LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_shown_at"
        ),
        sa.CheckConstraint(
            "snoozed_until LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_snoozed_until"
        ),
        sa.CheckConstraint(
            "done_at LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_done_at"
        ),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_reminder_text"),
        sa.UniqueConstraint("batch_id", "kind", "occurrence", name="uq_reminder_occurrence"),
        sa.PrimaryKeyConstraint("id", name="pk_reminder"),
        sa.ForeignKeyConstraint(
            ["batch_id"], ["batch.id"], name="fk_reminder_batch_id", ondelete="CASCADE"
        ),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_reminder_due_at", "reminder", ["due_at"])
    op.create_index(
        "uq_reminder_occurrence_no_batch",
        "reminder",
        ["kind", "occurrence"],
        unique=True,
        sqlite_where=sa.text("batch_id IS NULL"),
        postgresql_where=sa.text("batch_id IS NULL"),
    )
    op.create_table(
        "step",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("planned_s", sa.Integer()),
        sa.Column("ends_at", sa.Text()),
        sa.Column("remaining_s", NUMBER),
        sa.Column("started_at", sa.Text()),
        sa.Column("finished_at", sa.Text()),
        sa.Column("temperature_c", NUMBER),
        sa.Column("override_reason", sa.Text(), nullable=False),
        sa.CheckConstraint("position BETWEEN 0 AND 1000", name="ck_step_position"),
        sa.CheckConstraint(
            one_of(
                "kind",
                "boil",
                "steep",
                "lift_tea",
                "dissolve_sugar",
                "add_cold_water",
                "cool",
                "starter_in",
                "culture_in",
                "cover",
            ),
            name="ck_step_kind",
        ),
        sa.CheckConstraint(
            "state IN ('waiting', 'running', 'paused', 'done')", name="ck_step_state"
        ),
        sa.CheckConstraint("planned_s BETWEEN 0 AND 100000000", name="ck_step_planned_s"),
        sa.CheckConstraint("ends_at LIKE '____-__-__T__:__:__.______Z'", name="ck_step_ends_at"),
        sa.CheckConstraint("remaining_s BETWEEN 0 AND 1e+08", name="ck_step_remaining_s"),
        sa.CheckConstraint(
            "started_at LIKE '____-__-__T__:__:__.______Z'", name="ck_step_started_at"
        ),
        sa.CheckConstraint(
            "finished_at LIKE '____-__-__T__:__:__.______Z'", name="ck_step_finished_at"
        ),
        sa.CheckConstraint("temperature_c BETWEEN -50 AND 200", name="ck_step_temperature_c"),
        sa.CheckConstraint(
            "length(override_reason) BETWEEN 0 AND 20000", name="ck_step_override_reason"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_step"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_step_batch_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_step_batch_id", "step", ["batch_id"])
