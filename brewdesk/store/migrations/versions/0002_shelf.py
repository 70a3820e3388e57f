"""Cultures at rest, liquid from jar to jar, bottlings, photos, temperatures of places.

Four tables are built anew, since SQLite can change neither a check nor a reference. Written
out in full, so that it stays as it was when ``schema.py`` moves on.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

NUMBER: sa.types.TypeEngine[float] = sa.Double().with_variant(sa.REAL(), "sqlite")

# What the rows that are there already get in their new columns.
NEW_COLUMNS: dict[str, dict[str, object]] = {
    "culture": {
        "diameter_cm": None,
        "wet_mass_g": None,
        "rest_volume_l": None,
        "fed_at": None,
        "suspect_at": None,
        "suspect_reason": "",
        "gone_at": None,
        "gone_to": "",
    },
    "batch": {
        "purpose": "drink",
        "starter_batch_id": None,
        "starter_culture_id": None,
        "suspect_at": None,
        "suspect_reason": "",
    },
    "reading": {},
    "reminder": {"culture_id": None, "bottling_id": None, "revision": 0},
}

# Which column of which table names which subject of an act.
LINKS = {
    "vessel": {"place_id": "place"},
    "culture": {"vessel_id": "vessel"},
    "culture_parent": {"culture_id": "culture", "parent_id": "culture"},
    "batch": {"vessel_id": "vessel", "culture_id": "culture"},
    "step": {"batch_id": "batch"},
    "reading": {"batch_id": "batch"},
    "reminder": {"batch_id": "batch"},
}
SUBJECTS = ("place", "vessel", "culture", "batch")


def upgrade() -> None:
    _rebuild("culture", _create_culture, ("ix_culture_vessel_id",))
    _rebuild(
        "batch",
        _create_batch,
        ("ix_batch_culture_id", "ix_batch_vessel_id", "uq_batch_live_vessel"),
    )
    _rebuild("reading", _create_reading, ("ix_reading_batch_id_at",))
    _rebuild(
        "reminder",
        _create_reminder,
        ("ix_reminder_due_at", "uq_reminder_occurrence_no_batch"),
    )
    _create_vessel_move()
    _create_transfer()
    _create_care()
    _create_bottling()
    _create_bottle_group()
    _create_addition()
    _create_bottle_check()
    _create_calibration()
    _create_photo()
    _create_place_temperature()
    _create_temperature_log()
    _create_act_subject()
    _create_temperature_chunk()
    _bring_history_along()


def _rebuild(name: str, create: Callable[[], None], indexes: tuple[str, ...]) -> None:
    """Make a table anew under its name, with all its rows and the count of its ids."""
    connection = op.get_bind()
    old = f"old_{name}"
    columns = [column["name"] for column in sa.inspect(connection).get_columns(name)]
    for index in indexes:
        op.drop_index(index, name)
    # Without this the references of other tables would follow the old one to its new name.
    connection.exec_driver_sql("PRAGMA legacy_alter_table=ON")
    connection.exec_driver_sql(f'ALTER TABLE "{name}" RENAME TO "{old}"')
    connection.exec_driver_sql("PRAGMA legacy_alter_table=OFF")
    create()
    added = NEW_COLUMNS[name]
    source, target = (
        sa.table(old, *map(sa.column, columns)),
        sa.table(name, *map(sa.column, (*columns, *added))),
    )
    values: list[sa.ColumnElement[Any]] = [source.c[column] for column in columns]
    values += [sa.literal(value) for value in added.values()]
    connection.execute(target.insert().from_select([*columns, *added], sa.select(*values)))
    # Ids are never used again, also those of rows that are gone.
    last = connection.exec_driver_sql(
        "SELECT seq FROM sqlite_sequence WHERE name = ?", (old,)
    ).scalar()
    connection.exec_driver_sql(f'DROP TABLE "{old}"')
    if last is not None:
        connection.exec_driver_sql("DELETE FROM sqlite_sequence WHERE name = ?", (name,))
        connection.exec_driver_sql(
            "INSERT INTO sqlite_sequence (name, seq) VALUES (?, ?)", (name, last)
        )


def _bring_history_along() -> None:
    """Give the rows kept in the history their new columns, and say what each act was about."""
    connection = op.get_bind()
    act = sa.table("act", *map(sa.column, ("id", "deltas", "batch_id", "vessel_id", "culture_id")))
    subject = sa.table("act_subject", *map(sa.column, ("subject", "subject_id", "act_id")))
    for row in connection.execute(sa.select(act).order_by(act.c.id)).mappings().all():
        deltas: list[tuple[str, int, Any, Any]] = json.loads(row["deltas"])
        about = {
            (name, row[f"{name}_id"])
            for name in ("batch", "vessel", "culture")
            if row[f"{name}_id"] is not None
        }
        for table, row_id, before, after in deltas:
            if table in SUBJECTS:
                about.add((table, row_id))
            for kept in (before, after):
                if kept is not None:
                    about |= {
                        (name, kept[column])
                        for column, name in LINKS.get(table, {}).items()
                        if kept[column] is not None
                    }
                    kept.update(NEW_COLUMNS.get(table, {}))
        said = json.dumps(deltas, ensure_ascii=False, allow_nan=False, separators=(",", ":"))
        connection.execute(act.update().where(act.c.id == row["id"]).values(deltas=said))
        if about:
            connection.execute(
                subject.insert(),
                [
                    {"subject": name, "subject_id": number, "act_id": row["id"]}
                    for name, number in sorted(about)
                ],
            )


def _create_culture() -> None:
    op.create_table(
        "culture",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("origin", sa.Text(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("born_at", sa.Text(), nullable=False),
        sa.Column("vessel_id", sa.Integer()),
        sa.Column("pellicle_mm", NUMBER),
        sa.Column("diameter_cm", NUMBER),
        sa.Column("wet_mass_g", NUMBER),
        sa.Column("rest_volume_l", NUMBER),
        sa.Column("fed_at", sa.Text()),
        sa.Column("suspect_at", sa.Text()),
        sa.Column("suspect_reason", sa.Text(), nullable=False),
        sa.Column("gone_at", sa.Text()),
        sa.Column("gone_to", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.CheckConstraint("born_at LIKE '____-__-__T__:__:__.______Z'", name="ck_culture_born_at"),
        sa.CheckConstraint("diameter_cm BETWEEN 0 AND 1000", name="ck_culture_diameter_cm"),
        sa.CheckConstraint("fed_at LIKE '____-__-__T__:__:__.______Z'", name="ck_culture_fed_at"),
        sa.CheckConstraint("gone_at LIKE '____-__-__T__:__:__.______Z'", name="ck_culture_gone_at"),
        sa.CheckConstraint("length(gone_to) BETWEEN 0 AND 200", name="ck_culture_gone_to"),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_culture_name"),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_culture_note"),
        sa.CheckConstraint(
            "origin IN ('raw_bottle', 'gift', 'bought', 'split', 'merged', 'starter')",
            name="ck_culture_origin",
        ),
        sa.CheckConstraint("pellicle_mm BETWEEN 0 AND 1000", name="ck_culture_pellicle_mm"),
        sa.CheckConstraint("rest_volume_l BETWEEN 0 AND 10000", name="ck_culture_rest_volume_l"),
        sa.CheckConstraint(
            "state IN ('forming', 'at_work', 'resting', 'retired', 'given_away', 'lost')",
            name="ck_culture_state",
        ),
        sa.CheckConstraint(
            "suspect_at LIKE '____-__-__T__:__:__.______Z'", name="ck_culture_suspect_at"
        ),
        sa.CheckConstraint(
            "length(suspect_reason) BETWEEN 0 AND 20000", name="ck_culture_suspect_reason"
        ),
        sa.CheckConstraint("wet_mass_g BETWEEN 0 AND 1e+06", name="ck_culture_wet_mass_g"),
        sa.PrimaryKeyConstraint("id", name="pk_culture"),
        sa.ForeignKeyConstraint(["vessel_id"], ["vessel.id"], name="fk_culture_vessel_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_culture_vessel_id", "culture", ["vessel_id"])


def _create_batch() -> None:
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
        sa.Column("purpose", sa.Text(), nullable=False),
        sa.Column("starter_batch_id", sa.Integer()),
        sa.Column("starter_culture_id", sa.Integer()),
        sa.Column("suspect_at", sa.Text()),
        sa.Column("suspect_reason", sa.Text(), nullable=False),
        sa.CheckConstraint("bag_g BETWEEN 0 AND 1000", name="ck_batch_bag_g"),
        sa.CheckConstraint("cold_water_c BETWEEN -20 AND 150", name="ck_batch_cold_water_c"),
        sa.CheckConstraint("cold_water_g BETWEEN 0 AND 1e+07", name="ck_batch_cold_water_g"),
        sa.CheckConstraint("culture_limit_c BETWEEN -20 AND 150", name="ck_batch_culture_limit_c"),
        sa.CheckConstraint("length(end_reason) BETWEEN 0 AND 20000", name="ck_batch_end_reason"),
        sa.CheckConstraint(
            "(stage IN ('planned', 'brewing', 'souring')) = (ended_at IS NULL)",
            name="ck_batch_ended",
        ),
        sa.CheckConstraint("ended_at LIKE '____-__-__T__:__:__.______Z'", name="ck_batch_ended_at"),
        sa.CheckConstraint("fill_volume_l BETWEEN 0.001 AND 10000", name="ck_batch_fill_volume_l"),
        sa.CheckConstraint("hot_water_c BETWEEN -20 AND 150", name="ck_batch_hot_water_c"),
        sa.CheckConstraint("hot_water_g BETWEEN 0 AND 1e+07", name="ck_batch_hot_water_g"),
        sa.CheckConstraint(
            "mixed_temperature_c BETWEEN -20 AND 150", name="ck_batch_mixed_temperature_c"
        ),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_batch_name"),
        sa.CheckConstraint(
            "place_temperature_c BETWEEN -20 AND 60", name="ck_batch_place_temperature_c"
        ),
        sa.CheckConstraint(
            "planned_at LIKE '____-__-__T__:__:__.______Z'", name="ck_batch_planned_at"
        ),
        sa.CheckConstraint("purpose IN ('drink', 'culture')", name="ck_batch_purpose"),
        sa.CheckConstraint(
            "stage IN ('planned', 'brewing', 'souring', 'drawn_off', 'closed', 'discarded')",
            name="ck_batch_stage",
        ),
        sa.CheckConstraint("start_ph BETWEEN 0 AND 14", name="ck_batch_start_ph"),
        sa.CheckConstraint("start_ph_high BETWEEN 0 AND 14", name="ck_batch_start_ph_high"),
        sa.CheckConstraint("start_ph_low BETWEEN 0 AND 14", name="ck_batch_start_ph_low"),
        sa.CheckConstraint("start_ph_low <= start_ph_high", name="ck_batch_start_ph_order"),
        sa.CheckConstraint(
            "stage NOT IN ('souring', 'drawn_off') OR started_at IS NOT NULL",
            name="ck_batch_started",
        ),
        sa.CheckConstraint(
            "started_at LIKE '____-__-__T__:__:__.______Z'", name="ck_batch_started_at"
        ),
        sa.CheckConstraint("starter_ph BETWEEN 0 AND 14", name="ck_batch_starter_ph"),
        sa.CheckConstraint(
            "starter_ta_g_per_l BETWEEN 0 AND 1000", name="ck_batch_starter_ta_g_per_l"
        ),
        sa.CheckConstraint(
            "starter_taste IN ('sweet', 'balanced', 'sour', 'vinegary')",
            name="ck_batch_starter_taste",
        ),
        sa.CheckConstraint(
            "starter_volume_l BETWEEN 0 AND 10000", name="ck_batch_starter_volume_l"
        ),
        sa.CheckConstraint("sugar_g BETWEEN 0 AND 1e+07", name="ck_batch_sugar_g"),
        sa.CheckConstraint("sugar_g_per_l BETWEEN 0 AND 1000", name="ck_batch_sugar_g_per_l"),
        sa.CheckConstraint(
            "suspect_at LIKE '____-__-__T__:__:__.______Z'", name="ck_batch_suspect_at"
        ),
        sa.CheckConstraint(
            "length(suspect_reason) BETWEEN 0 AND 20000", name="ck_batch_suspect_reason"
        ),
        sa.CheckConstraint("target_start_ph BETWEEN 0 AND 14", name="ck_batch_target_start_ph"),
        sa.CheckConstraint("tea_g BETWEEN 0 AND 1e+07", name="ck_batch_tea_g"),
        sa.CheckConstraint("tea_g_per_l BETWEEN 0 AND 1000", name="ck_batch_tea_g_per_l"),
        sa.CheckConstraint(
            "tea_kind IN ('black', 'green', 'oolong', 'white', 'mixed', 'herbal')",
            name="ck_batch_tea_kind",
        ),
        sa.CheckConstraint(
            "water_alkalinity_meq_per_l BETWEEN -100 AND 100",
            name="ck_batch_water_alkalinity_meq_per_l",
        ),
        sa.PrimaryKeyConstraint("id", name="pk_batch"),
        sa.ForeignKeyConstraint(["culture_id"], ["culture.id"], name="fk_batch_culture_id"),
        sa.ForeignKeyConstraint(
            ["starter_batch_id"], ["batch.id"], name="fk_batch_starter_batch_id"
        ),
        sa.ForeignKeyConstraint(
            ["starter_culture_id"], ["culture.id"], name="fk_batch_starter_culture_id"
        ),
        sa.ForeignKeyConstraint(["vessel_id"], ["vessel.id"], name="fk_batch_vessel_id"),
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


def _create_reading() -> None:
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
        sa.CheckConstraint("length(entered) BETWEEN 0 AND 20000", name="ck_reading_entered"),
        sa.CheckConstraint(
            "value IS NOT NULL OR quantity IN ('taste', 'note', 'look')",
            name="ck_reading_has_value",
        ),
        sa.CheckConstraint(
            "quantity <> 'look' OR text IN ('fine', 'unsure', 'mold')", name="ck_reading_look"
        ),
        sa.CheckConstraint(
            "method IN ('meter', 'strip', 'thermometer', 'refractometer', "
            "'hydrometer', 'titration', 'tongue', 'ruler', 'eye')",
            name="ck_reading_method",
        ),
        sa.CheckConstraint(
            "quantity <> 'ph' OR value BETWEEN 0 AND 14", name="ck_reading_ph_range"
        ),
        sa.CheckConstraint(
            "quantity IN ('ph', 'temperature_c', 'brix', 'specific_gravity', "
            "'ta_g_per_l', 'taste', 'pellicle_mm', 'note', 'look')",
            name="ck_reading_quantity",
        ),
        sa.CheckConstraint("sd BETWEEN 0 AND 1e+06", name="ck_reading_sd"),
        sa.CheckConstraint(
            "quantity <> 'taste' OR text IN ('far_too_sweet', 'too_sweet', "
            "'right', 'too_sour', 'far_too_sour')",
            name="ck_reading_taste_mark",
        ),
        sa.CheckConstraint("temperature_c BETWEEN -50 AND 200", name="ck_reading_temperature_c"),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_reading_text"),
        sa.CheckConstraint("value BETWEEN -1e+06 AND 1e+06", name="ck_reading_value"),
        sa.PrimaryKeyConstraint("id", name="pk_reading"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_reading_batch_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_reading_batch_id_at", "reading", ["batch_id", "at"])


def _create_reminder() -> None:
    op.create_table(
        "reminder",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer()),
        sa.Column("culture_id", sa.Integer()),
        sa.Column("bottling_id", sa.Integer()),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("occurrence", sa.Text(), nullable=False),
        sa.Column("due_at", sa.Text(), nullable=False),
        sa.Column("window_end", sa.Text()),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("shown_at", sa.Text()),
        sa.Column("snoozed_until", sa.Text()),
        sa.Column("done_at", sa.Text()),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "done_at LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_done_at"
        ),
        sa.CheckConstraint("due_at LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_due_at"),
        sa.CheckConstraint(
            "kind IN ('taste', 'ph_check', 'mold_look', 'own', 'feed', "
            "'top_up', 'film_look', 'chill', 'pressure_check', 'open_test', "
            "'best_before', 'calibrate')",
            name="ck_reminder_kind",
        ),
        sa.CheckConstraint("length(occurrence) BETWEEN 0 AND 200", name="ck_reminder_occurrence"),
        sa.CheckConstraint(
            "batch_id IS NULL AND culture_id IS NULL OR batch_id IS NULL AND "
            "bottling_id IS NULL OR culture_id IS NULL AND bottling_id IS NULL",
            name="ck_reminder_one_subject",
        ),
        sa.CheckConstraint("revision BETWEEN 0 AND 1000000000", name="ck_reminder_revision"),
        sa.CheckConstraint(
            "shown_at LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_shown_at"
        ),
        sa.CheckConstraint(
            "snoozed_until LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_snoozed_until"
        ),
        sa.CheckConstraint(
            "state IN ('waiting', 'shown', 'snoozed', 'done', 'dropped')", name="ck_reminder_state"
        ),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_reminder_text"),
        sa.CheckConstraint(
            "window_end LIKE '____-__-__T__:__:__.______Z'", name="ck_reminder_window_end"
        ),
        sa.UniqueConstraint("batch_id", "kind", "occurrence", name="uq_reminder_occurrence"),
        sa.PrimaryKeyConstraint("id", name="pk_reminder"),
        sa.ForeignKeyConstraint(
            ["batch_id"], ["batch.id"], name="fk_reminder_batch_id", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(
            ["bottling_id"], ["bottling.id"], name="fk_reminder_bottling_id", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(
            ["culture_id"], ["culture.id"], name="fk_reminder_culture_id", ondelete="CASCADE"
        ),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_reminder_due_at", "reminder", ["due_at"])
    op.create_index(
        "uq_reminder_occurrence_bottling",
        "reminder",
        ["bottling_id", "kind", "occurrence"],
        unique=True,
    )
    op.create_index(
        "uq_reminder_occurrence_culture",
        "reminder",
        ["culture_id", "kind", "occurrence"],
        unique=True,
    )
    op.create_index(
        "uq_reminder_occurrence_no_subject",
        "reminder",
        ["kind", "occurrence"],
        unique=True,
        sqlite_where=sa.text("batch_id IS NULL AND culture_id IS NULL AND bottling_id IS NULL"),
        postgresql_where=sa.text("batch_id IS NULL AND culture_id IS NULL AND bottling_id IS NULL"),
    )


def _create_vessel_move() -> None:
    op.create_table(
        "vessel_move",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer(), nullable=False),
        sa.Column("from_vessel_id", sa.Integer(), nullable=False),
        sa.Column("to_vessel_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_vessel_move_at"),
        sa.PrimaryKeyConstraint("id", name="pk_vessel_move"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_vessel_move_batch_id"),
        sa.ForeignKeyConstraint(
            ["from_vessel_id"], ["vessel.id"], name="fk_vessel_move_from_vessel_id"
        ),
        sa.ForeignKeyConstraint(
            ["to_vessel_id"], ["vessel.id"], name="fk_vessel_move_to_vessel_id"
        ),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_vessel_move_batch_id", "vessel_move", ["batch_id"])


def _create_transfer() -> None:
    op.create_table(
        "transfer",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("volume_l", NUMBER, nullable=False),
        sa.Column("from_batch_id", sa.Integer()),
        sa.Column("to_batch_id", sa.Integer()),
        sa.Column("from_culture_id", sa.Integer()),
        sa.Column("to_culture_id", sa.Integer()),
        sa.Column("sugar_g", NUMBER, nullable=False),
        sa.Column("tea_kind", sa.Text()),
        sa.Column("tea_g", NUMBER, nullable=False),
        sa.Column("ph", NUMBER),
        sa.Column("ta_g_per_l", NUMBER),
        sa.Column("temperature_c", NUMBER),
        sa.Column("override_reason", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_transfer_at"),
        sa.CheckConstraint(
            "coalesce(from_batch_id, to_batch_id, from_culture_id, to_culture_id) IS NOT NULL",
            name="ck_transfer_has_an_end",
        ),
        sa.CheckConstraint(
            "kind IN ('drink', 'starter', 'top_up', 'merge', 'sample', 'loss')",
            name="ck_transfer_kind",
        ),
        sa.CheckConstraint("from_batch_id <> to_batch_id", name="ck_transfer_not_into_itself"),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_transfer_note"),
        sa.CheckConstraint(
            "length(override_reason) BETWEEN 0 AND 20000", name="ck_transfer_override_reason"
        ),
        sa.CheckConstraint("ph BETWEEN 0 AND 14", name="ck_transfer_ph"),
        sa.CheckConstraint("sugar_g BETWEEN 0 AND 1e+07", name="ck_transfer_sugar_g"),
        sa.CheckConstraint("ta_g_per_l BETWEEN 0 AND 1000", name="ck_transfer_ta_g_per_l"),
        sa.CheckConstraint("tea_g BETWEEN 0 AND 1e+07", name="ck_transfer_tea_g"),
        sa.CheckConstraint(
            "tea_kind IN ('black', 'green', 'oolong', 'white', 'mixed', 'herbal')",
            name="ck_transfer_tea_kind",
        ),
        sa.CheckConstraint("temperature_c BETWEEN -20 AND 150", name="ck_transfer_temperature_c"),
        sa.CheckConstraint("volume_l > 0 AND volume_l <= 10000", name="ck_transfer_volume_l"),
        sa.PrimaryKeyConstraint("id", name="pk_transfer"),
        sa.ForeignKeyConstraint(["from_batch_id"], ["batch.id"], name="fk_transfer_from_batch_id"),
        sa.ForeignKeyConstraint(
            ["from_culture_id"], ["culture.id"], name="fk_transfer_from_culture_id"
        ),
        sa.ForeignKeyConstraint(["to_batch_id"], ["batch.id"], name="fk_transfer_to_batch_id"),
        sa.ForeignKeyConstraint(
            ["to_culture_id"], ["culture.id"], name="fk_transfer_to_culture_id"
        ),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_transfer_from_batch_id", "transfer", ["from_batch_id"])
    op.create_index("ix_transfer_from_culture_id", "transfer", ["from_culture_id"])
    op.create_index("ix_transfer_to_batch_id", "transfer", ["to_batch_id"])
    op.create_index("ix_transfer_to_culture_id", "transfer", ["to_culture_id"])


def _create_care() -> None:
    op.create_table(
        "care",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("culture_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("volume_l", NUMBER),
        sa.Column("sugar_g", NUMBER),
        sa.Column("ph", NUMBER),
        sa.Column("sd", NUMBER),
        sa.Column("look", sa.Text()),
        sa.Column("text", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_care_at"),
        sa.CheckConstraint("kind <> 'looked' OR look IS NOT NULL", name="ck_care_has_look"),
        sa.CheckConstraint("kind <> 'ph' OR ph IS NOT NULL", name="ck_care_has_ph"),
        sa.CheckConstraint(
            "kind IN ('fed', 'topped_up', 'starter_taken', 'looked', 'ph', 'note')",
            name="ck_care_kind",
        ),
        sa.CheckConstraint("look IN ('fine', 'unsure', 'mold')", name="ck_care_look"),
        sa.CheckConstraint("ph BETWEEN 0 AND 14", name="ck_care_ph"),
        sa.CheckConstraint("sd BETWEEN 0 AND 14", name="ck_care_sd"),
        sa.CheckConstraint("sugar_g BETWEEN 0 AND 1e+07", name="ck_care_sugar_g"),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_care_text"),
        sa.CheckConstraint("volume_l BETWEEN 0 AND 10000", name="ck_care_volume_l"),
        sa.PrimaryKeyConstraint("id", name="pk_care"),
        sa.ForeignKeyConstraint(["culture_id"], ["culture.id"], name="fk_care_culture_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_care_culture_id_at", "care", ["culture_id", "at"])


def _create_bottling() -> None:
    op.create_table(
        "bottling",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("batch_id", sa.Integer(), nullable=False),
        sa.Column("transfer_id", sa.Integer()),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("filled_at", sa.Text(), nullable=False),
        sa.Column("chilled_at", sa.Text()),
        sa.Column("ended_at", sa.Text()),
        sa.Column("end_reason", sa.Text(), nullable=False),
        sa.Column("drink_volume_l", NUMBER, nullable=False),
        sa.Column("residual_sugar_low_g_per_l", NUMBER, nullable=False),
        sa.Column("residual_sugar_high_g_per_l", NUMBER, nullable=False),
        sa.Column("target_volumes", NUMBER, nullable=False),
        sa.Column("priming_kind", sa.Text(), nullable=False),
        sa.Column("priming_sugar_g", NUMBER, nullable=False),
        sa.Column("open_jar_c", NUMBER, nullable=False),
        sa.Column("place_id", sa.Integer()),
        sa.Column("place_temperature_c", NUMBER, nullable=False),
        sa.Column("warmest_c", NUMBER, nullable=False),
        sa.Column("cold_temperature_c", NUMBER),
        sa.Column("ph", NUMBER),
        sa.Column("ph_sd", NUMBER),
        sa.Column("best_before", sa.Text()),
        sa.Column("override_reason", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.CheckConstraint(
            "best_before LIKE '____-__-__T__:__:__.______Z'", name="ck_bottling_best_before"
        ),
        sa.CheckConstraint(
            "state <> 'chilled' OR chilled_at IS NOT NULL", name="ck_bottling_chilled"
        ),
        sa.CheckConstraint(
            "chilled_at LIKE '____-__-__T__:__:__.______Z'", name="ck_bottling_chilled_at"
        ),
        sa.CheckConstraint(
            "cold_temperature_c BETWEEN -20 AND 60", name="ck_bottling_cold_temperature_c"
        ),
        sa.CheckConstraint(
            "drink_volume_l > 0 AND drink_volume_l <= 10000", name="ck_bottling_drink_volume_l"
        ),
        sa.CheckConstraint("length(end_reason) BETWEEN 0 AND 20000", name="ck_bottling_end_reason"),
        sa.CheckConstraint(
            "(state IN ('conditioning', 'chilled')) = (ended_at IS NULL)", name="ck_bottling_ended"
        ),
        sa.CheckConstraint(
            "ended_at LIKE '____-__-__T__:__:__.______Z'", name="ck_bottling_ended_at"
        ),
        sa.CheckConstraint(
            "filled_at LIKE '____-__-__T__:__:__.______Z'", name="ck_bottling_filled_at"
        ),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_bottling_name"),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_bottling_note"),
        sa.CheckConstraint("open_jar_c BETWEEN -20 AND 60", name="ck_bottling_open_jar_c"),
        sa.CheckConstraint(
            "length(override_reason) BETWEEN 0 AND 20000", name="ck_bottling_override_reason"
        ),
        sa.CheckConstraint("ph BETWEEN 0 AND 14", name="ck_bottling_ph"),
        sa.CheckConstraint("ph_sd BETWEEN 0 AND 14", name="ck_bottling_ph_sd"),
        sa.CheckConstraint(
            "place_temperature_c BETWEEN -20 AND 60", name="ck_bottling_place_temperature_c"
        ),
        sa.CheckConstraint(
            "priming_kind IN ('sucrose', 'hexose')", name="ck_bottling_priming_kind"
        ),
        sa.CheckConstraint(
            "priming_sugar_g BETWEEN 0 AND 1e+07", name="ck_bottling_priming_sugar_g"
        ),
        sa.CheckConstraint(
            "residual_sugar_low_g_per_l <= residual_sugar_high_g_per_l",
            name="ck_bottling_residual_sugar",
        ),
        sa.CheckConstraint(
            "residual_sugar_high_g_per_l BETWEEN 0 AND 1000",
            name="ck_bottling_residual_sugar_high_g_per_l",
        ),
        sa.CheckConstraint(
            "residual_sugar_low_g_per_l BETWEEN 0 AND 1000",
            name="ck_bottling_residual_sugar_low_g_per_l",
        ),
        sa.CheckConstraint(
            "state IN ('conditioning', 'chilled', 'finished', 'discarded')",
            name="ck_bottling_state",
        ),
        sa.CheckConstraint("target_volumes BETWEEN 0 AND 20", name="ck_bottling_target_volumes"),
        sa.CheckConstraint("warmest_c BETWEEN -20 AND 60", name="ck_bottling_warmest_c"),
        sa.PrimaryKeyConstraint("id", name="pk_bottling"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_bottling_batch_id"),
        sa.ForeignKeyConstraint(["place_id"], ["place.id"], name="fk_bottling_place_id"),
        sa.ForeignKeyConstraint(["transfer_id"], ["transfer.id"], name="fk_bottling_transfer_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_bottling_batch_id", "bottling", ["batch_id"])
    op.create_index("ix_bottling_state", "bottling", ["state"])


def _create_bottle_group() -> None:
    op.create_table(
        "bottle_group",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("bottling_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("bottle_count", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("brim_volume_l", NUMBER, nullable=False),
        sa.Column("headspace_share", NUMBER, nullable=False),
        sa.Column("rated_bar", NUMBER),
        sa.Column("is_test", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.CheckConstraint(
            "bottle_count BETWEEN 1 AND 100000", name="ck_bottle_group_bottle_count"
        ),
        sa.CheckConstraint(
            "brim_volume_l > 0 AND brim_volume_l <= 1000", name="ck_bottle_group_brim_volume_l"
        ),
        sa.CheckConstraint(
            "headspace_share BETWEEN 0 AND 1", name="ck_bottle_group_headspace_share"
        ),
        sa.CheckConstraint("is_test IN (0, 1)", name="ck_bottle_group_is_test"),
        sa.CheckConstraint(
            "kind IN ('rated', 'fizzy_glass', 'fizzy_plastic', 'not_for_pressure')",
            name="ck_bottle_group_kind",
        ),
        sa.CheckConstraint("length(name) BETWEEN 0 AND 200", name="ck_bottle_group_name"),
        sa.CheckConstraint("position BETWEEN 0 AND 1000", name="ck_bottle_group_position"),
        sa.CheckConstraint("rated_bar BETWEEN 0 AND 100", name="ck_bottle_group_rated_bar"),
        sa.PrimaryKeyConstraint("id", name="pk_bottle_group"),
        sa.ForeignKeyConstraint(
            ["bottling_id"], ["bottling.id"], name="fk_bottle_group_bottling_id"
        ),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_bottle_group_bottling_id", "bottle_group", ["bottling_id"])


def _create_addition() -> None:
    op.create_table(
        "addition",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("bottling_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("mass_g", NUMBER, nullable=False),
        sa.Column("sugar_share_low", NUMBER, nullable=False),
        sa.Column("sugar_share_high", NUMBER, nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.CheckConstraint(
            "kind IN ('sugar', 'honey', 'syrup', 'juice', 'fruit', 'ginger', 'other')",
            name="ck_addition_kind",
        ),
        sa.CheckConstraint("mass_g BETWEEN 0 AND 1e+07", name="ck_addition_mass_g"),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_addition_name"),
        sa.CheckConstraint("position BETWEEN 0 AND 1000", name="ck_addition_position"),
        sa.CheckConstraint("length(source) BETWEEN 0 AND 2000", name="ck_addition_source"),
        sa.CheckConstraint("sugar_share_low <= sugar_share_high", name="ck_addition_sugar_share"),
        sa.CheckConstraint("sugar_share_high BETWEEN 0 AND 1", name="ck_addition_sugar_share_high"),
        sa.CheckConstraint("sugar_share_low BETWEEN 0 AND 1", name="ck_addition_sugar_share_low"),
        sa.PrimaryKeyConstraint("id", name="pk_addition"),
        sa.ForeignKeyConstraint(["bottling_id"], ["bottling.id"], name="fk_addition_bottling_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_addition_bottling_id", "addition", ["bottling_id"])


def _create_bottle_check() -> None:
    op.create_table(
        "bottle_check",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("bottling_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("feel", sa.Text()),
        sa.Column("gauge_bar", NUMBER),
        sa.Column("sd_bar", NUMBER),
        sa.Column("opened", sa.Text()),
        sa.Column("bottle_count", sa.Integer(), nullable=False),
        sa.Column("temperature_c", NUMBER),
        sa.Column("text", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_bottle_check_at"),
        sa.CheckConstraint(
            "bottle_count BETWEEN 0 AND 100000", name="ck_bottle_check_bottle_count"
        ),
        sa.CheckConstraint("feel IN ('soft', 'firm', 'hard')", name="ck_bottle_check_feel"),
        sa.CheckConstraint("gauge_bar BETWEEN -1 AND 100", name="ck_bottle_check_gauge_bar"),
        sa.CheckConstraint("kind <> 'feel' OR feel IS NOT NULL", name="ck_bottle_check_has_feel"),
        sa.CheckConstraint(
            "kind <> 'gauge' OR gauge_bar IS NOT NULL", name="ck_bottle_check_has_gauge"
        ),
        sa.CheckConstraint(
            "kind <> 'opened' OR opened IS NOT NULL", name="ck_bottle_check_has_opened"
        ),
        sa.CheckConstraint(
            "kind IN ('feel', 'gauge', 'opened', 'vented', 'note')", name="ck_bottle_check_kind"
        ),
        sa.CheckConstraint(
            "opened IN ('too_flat', 'right', 'gusher')", name="ck_bottle_check_opened"
        ),
        sa.CheckConstraint("sd_bar BETWEEN 0 AND 100", name="ck_bottle_check_sd_bar"),
        sa.CheckConstraint(
            "temperature_c BETWEEN -20 AND 60", name="ck_bottle_check_temperature_c"
        ),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_bottle_check_text"),
        sa.PrimaryKeyConstraint("id", name="pk_bottle_check"),
        sa.ForeignKeyConstraint(
            ["bottling_id"], ["bottling.id"], name="fk_bottle_check_bottling_id"
        ),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_bottle_check_bottling_id_at", "bottle_check", ["bottling_id", "at"])


def _create_calibration() -> None:
    op.create_table(
        "calibration",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("meter", sa.Text(), nullable=False),
        sa.Column("slope_percent", NUMBER),
        sa.Column("offset_mv", NUMBER),
        sa.Column("temperature_c", NUMBER),
        sa.Column("buffers", sa.Text(), nullable=False),
        sa.Column("verdict", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_calibration_at"),
        sa.CheckConstraint("length(buffers) BETWEEN 0 AND 2000", name="ck_calibration_buffers"),
        sa.CheckConstraint("length(meter) BETWEEN 1 AND 200", name="ck_calibration_meter"),
        sa.CheckConstraint("offset_mv BETWEEN -10000 AND 10000", name="ck_calibration_offset_mv"),
        sa.CheckConstraint("slope_percent BETWEEN 0 AND 1000", name="ck_calibration_slope_percent"),
        sa.CheckConstraint(
            "temperature_c BETWEEN -20 AND 150", name="ck_calibration_temperature_c"
        ),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_calibration_text"),
        sa.CheckConstraint("length(verdict) BETWEEN 0 AND 200", name="ck_calibration_verdict"),
        sa.PrimaryKeyConstraint("id", name="pk_calibration"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )


def _create_photo() -> None:
    op.create_table(
        "photo",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer()),
        sa.Column("culture_id", sa.Integer()),
        sa.Column("reading_id", sa.Integer()),
        sa.Column("content_hash", sa.Text(), nullable=False),
        sa.Column("media_type", sa.Text(), nullable=False),
        sa.Column("width_px", sa.Integer(), nullable=False),
        sa.Column("height_px", sa.Integer(), nullable=False),
        sa.Column("size_bytes", sa.Integer(), nullable=False),
        sa.Column("taken_at", sa.Text(), nullable=False),
        sa.Column("caption", sa.Text(), nullable=False),
        sa.CheckConstraint("length(caption) BETWEEN 0 AND 2000", name="ck_photo_caption"),
        sa.CheckConstraint("length(content_hash) BETWEEN 64 AND 64", name="ck_photo_content_hash"),
        sa.CheckConstraint(
            "coalesce(batch_id, culture_id) IS NOT NULL", name="ck_photo_has_a_subject"
        ),
        sa.CheckConstraint("height_px BETWEEN 1 AND 1000000", name="ck_photo_height_px"),
        sa.CheckConstraint("length(media_type) BETWEEN 1 AND 50", name="ck_photo_media_type"),
        sa.CheckConstraint("size_bytes BETWEEN 1 AND 2000000000", name="ck_photo_size_bytes"),
        sa.CheckConstraint("taken_at LIKE '____-__-__T__:__:__.______Z'", name="ck_photo_taken_at"),
        sa.CheckConstraint("width_px BETWEEN 1 AND 1000000", name="ck_photo_width_px"),
        sa.PrimaryKeyConstraint("id", name="pk_photo"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_photo_batch_id"),
        sa.ForeignKeyConstraint(["culture_id"], ["culture.id"], name="fk_photo_culture_id"),
        sa.ForeignKeyConstraint(["reading_id"], ["reading.id"], name="fk_photo_reading_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_photo_batch_id", "photo", ["batch_id"])
    op.create_index("ix_photo_culture_id", "photo", ["culture_id"])
    op.create_index("ix_photo_reading_id", "photo", ["reading_id"])


def _create_place_temperature() -> None:
    op.create_table(
        "place_temperature",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("temperature_c", NUMBER, nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_place_temperature_at"),
        sa.CheckConstraint(
            "temperature_c BETWEEN -50 AND 100", name="ck_place_temperature_temperature_c"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_place_temperature"),
        sa.ForeignKeyConstraint(["place_id"], ["place.id"], name="fk_place_temperature_place_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_place_temperature_place_id_at", "place_temperature", ["place_id", "at"])


def _create_temperature_log() -> None:
    op.create_table(
        "temperature_log",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("content_hash", sa.Text(), nullable=False),
        sa.Column("sample_count", sa.Integer(), nullable=False),
        sa.Column("first_at", sa.Text(), nullable=False),
        sa.Column("last_at", sa.Text(), nullable=False),
        sa.CheckConstraint(
            "length(content_hash) BETWEEN 64 AND 64", name="ck_temperature_log_content_hash"
        ),
        sa.CheckConstraint(
            "first_at LIKE '____-__-__T__:__:__.______Z'", name="ck_temperature_log_first_at"
        ),
        sa.CheckConstraint(
            "last_at LIKE '____-__-__T__:__:__.______Z'", name="ck_temperature_log_last_at"
        ),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_temperature_log_name"),
        sa.CheckConstraint(
            "sample_count BETWEEN 1 AND 100000000", name="ck_temperature_log_sample_count"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_temperature_log"),
        sa.ForeignKeyConstraint(["place_id"], ["place.id"], name="fk_temperature_log_place_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_temperature_log_place_id", "temperature_log", ["place_id"])


def _create_act_subject() -> None:
    op.create_table(
        "act_subject",
        sa.Column("subject", sa.Text(), nullable=False),
        sa.Column("subject_id", sa.Integer(), nullable=False),
        sa.Column("act_id", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "subject IN ('place', 'vessel', 'culture', 'batch', 'bottling')",
            name="ck_act_subject_subject",
        ),
        sa.PrimaryKeyConstraint("subject", "subject_id", "act_id", name="pk_act_subject"),
        sa.ForeignKeyConstraint(["act_id"], ["act.id"], name="fk_act_subject_act_id"),
        sqlite_strict=True,
    )
    op.create_index("ix_act_subject_act_id", "act_subject", ["act_id"])


def _create_temperature_chunk() -> None:
    op.create_table(
        "temperature_chunk",
        sa.Column("content_hash", sa.Text(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("samples", sa.LargeBinary(), nullable=False),
        sa.CheckConstraint("length(content_hash) = 64", name="ck_temperature_chunk_content_hash"),
        sa.CheckConstraint("position >= 0", name="ck_temperature_chunk_position"),
        sa.PrimaryKeyConstraint("content_hash", "position", name="pk_temperature_chunk"),
        sqlite_strict=True,
    )
