"""Stores with their lots and draws, and trials with their jars.

Written out in full, so that it stays as it was when ``schema.py`` moves on.
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

NUMBER: sa.types.TypeEngine[float] = sa.Double().with_variant(sa.REAL(), "sqlite")


def upgrade() -> None:
    _create_supply()
    _create_supply_lot()
    _create_supply_draw()
    _create_batch_supply()
    _create_trial()
    _create_trial_arm()
    _create_trial_jar()
    _create_trial_score()


def _create_supply() -> None:
    op.create_table(
        "supply",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("measure", sa.Text(), nullable=False),
        sa.Column("tea_kind", sa.Text()),
        sa.Column("addition_kind", sa.Text()),
        sa.Column("sugar_share_low", NUMBER),
        sa.Column("sugar_share_high", NUMBER),
        sa.Column("bottle_kind", sa.Text()),
        sa.Column("brim_volume_l", NUMBER),
        sa.Column("rated_bar", NUMBER),
        sa.Column("low_amount", NUMBER),
        sa.Column("ingredients", sa.Text(), nullable=False),
        sa.Column("allergens", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("retired_at", sa.Text()),
        sa.CheckConstraint(
            "addition_kind IN ('sugar', 'honey', 'syrup', 'juice', 'fruit', 'ginger', 'other')",
            name="ck_supply_addition_kind",
        ),
        sa.CheckConstraint("length(allergens) BETWEEN 0 AND 2000", name="ck_supply_allergens"),
        sa.CheckConstraint(
            "bottle_kind IN ('rated', 'fizzy_glass', 'fizzy_plastic', 'not_for_pressure')",
            name="ck_supply_bottle_kind",
        ),
        sa.CheckConstraint("brim_volume_l BETWEEN 0 AND 1000", name="ck_supply_brim_volume_l"),
        sa.CheckConstraint("length(ingredients) BETWEEN 0 AND 2000", name="ck_supply_ingredients"),
        sa.CheckConstraint(
            "kind IN ('tea', 'sugar', 'flavouring', 'bottle', 'closure', 'other')",
            name="ck_supply_kind",
        ),
        sa.CheckConstraint("low_amount BETWEEN 0 AND 1e+07", name="ck_supply_low_amount"),
        sa.CheckConstraint("measure IN ('mass_g', 'volume_l', 'pieces')", name="ck_supply_measure"),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_supply_name"),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_supply_note"),
        sa.CheckConstraint("rated_bar BETWEEN 0 AND 100", name="ck_supply_rated_bar"),
        sa.CheckConstraint(
            "retired_at LIKE '____-__-__T__:__:__.______Z'", name="ck_supply_retired_at"
        ),
        sa.CheckConstraint("sugar_share_low <= sugar_share_high", name="ck_supply_sugar_share"),
        sa.CheckConstraint("sugar_share_high BETWEEN 0 AND 1", name="ck_supply_sugar_share_high"),
        sa.CheckConstraint("sugar_share_low BETWEEN 0 AND 1", name="ck_supply_sugar_share_low"),
        sa.CheckConstraint(
            "tea_kind IN ('black', 'green', 'oolong', 'white', 'mixed', 'herbal')",
            name="ck_supply_tea_kind",
        ),
        sa.PrimaryKeyConstraint("id", name="pk_supply"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )


def _create_supply_lot() -> None:
    op.create_table(
        "supply_lot",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("supply_id", sa.Integer(), nullable=False),
        sa.Column("bought_at", sa.Text(), nullable=False),
        sa.Column("amount", NUMBER, nullable=False),
        sa.Column("price_minor", sa.Integer()),
        sa.Column("currency", sa.Text(), nullable=False),
        sa.Column("lot_code", sa.Text(), nullable=False),
        sa.Column("seller", sa.Text(), nullable=False),
        sa.Column("best_before", sa.Text()),
        sa.Column("note", sa.Text(), nullable=False),
        sa.CheckConstraint("amount > 0 AND amount <= 10000000", name="ck_supply_lot_amount"),
        sa.CheckConstraint(
            "best_before LIKE '____-__-__T__:__:__.______Z'", name="ck_supply_lot_best_before"
        ),
        sa.CheckConstraint(
            "bought_at LIKE '____-__-__T__:__:__.______Z'", name="ck_supply_lot_bought_at"
        ),
        sa.CheckConstraint("length(currency) BETWEEN 0 AND 3", name="ck_supply_lot_currency"),
        sa.CheckConstraint(
            "price_minor IS NULL OR length(currency) = 3", name="ck_supply_lot_has_currency"
        ),
        sa.CheckConstraint("length(lot_code) BETWEEN 0 AND 200", name="ck_supply_lot_lot_code"),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_supply_lot_note"),
        sa.CheckConstraint(
            "price_minor BETWEEN 0 AND 1000000000", name="ck_supply_lot_price_minor"
        ),
        sa.CheckConstraint("length(seller) BETWEEN 0 AND 200", name="ck_supply_lot_seller"),
        sa.PrimaryKeyConstraint("id", name="pk_supply_lot"),
        sa.ForeignKeyConstraint(["supply_id"], ["supply.id"], name="fk_supply_lot_supply_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_supply_lot_supply_id", "supply_lot", ["supply_id"])


def _create_supply_draw() -> None:
    op.create_table(
        "supply_draw",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("supply_id", sa.Integer(), nullable=False),
        sa.Column("lot_id", sa.Integer()),
        sa.Column("batch_id", sa.Integer()),
        sa.Column("bottling_id", sa.Integer()),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("amount", NUMBER, nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.CheckConstraint(
            "amount <> 0 AND amount BETWEEN -10000000 AND 10000000", name="ck_supply_draw_amount"
        ),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_supply_draw_at"),
        sa.CheckConstraint(
            "reason IN ('brewed', 'bottled', 'spoiled', 'counted', 'returned', 'other')",
            name="ck_supply_draw_reason",
        ),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 2000", name="ck_supply_draw_text"),
        sa.PrimaryKeyConstraint("id", name="pk_supply_draw"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_supply_draw_batch_id"),
        sa.ForeignKeyConstraint(
            ["bottling_id"], ["bottling.id"], name="fk_supply_draw_bottling_id"
        ),
        sa.ForeignKeyConstraint(["lot_id"], ["supply_lot.id"], name="fk_supply_draw_lot_id"),
        sa.ForeignKeyConstraint(["supply_id"], ["supply.id"], name="fk_supply_draw_supply_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_supply_draw_batch_id", "supply_draw", ["batch_id"])
    op.create_index("ix_supply_draw_bottling_id", "supply_draw", ["bottling_id"])
    op.create_index("ix_supply_draw_lot_id", "supply_draw", ["lot_id"])
    op.create_index("ix_supply_draw_supply_id", "supply_draw", ["supply_id"])


def _create_batch_supply() -> None:
    op.create_table(
        "batch_supply",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer(), nullable=False),
        sa.Column("supply_id", sa.Integer(), nullable=False),
        sa.Column("amount", NUMBER, nullable=False),
        sa.CheckConstraint("amount > 0 AND amount <= 10000000", name="ck_batch_supply_amount"),
        sa.PrimaryKeyConstraint("id", name="pk_batch_supply"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_batch_supply_batch_id"),
        sa.ForeignKeyConstraint(["supply_id"], ["supply.id"], name="fk_batch_supply_supply_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_batch_supply_batch_id", "batch_supply", ["batch_id"])


def _create_trial() -> None:
    op.create_table(
        "trial",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("factor", sa.Text(), nullable=False),
        sa.Column("question", sa.Text(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("seed", sa.Integer(), nullable=False),
        sa.Column("is_blind", sa.Integer(), nullable=False),
        sa.Column("created_at", sa.Text(), nullable=False),
        sa.Column("started_at", sa.Text()),
        sa.Column("revealed_at", sa.Text()),
        sa.Column("ended_at", sa.Text()),
        sa.Column("conclusion", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.CheckConstraint("length(conclusion) BETWEEN 0 AND 20000", name="ck_trial_conclusion"),
        sa.CheckConstraint(
            "created_at LIKE '____-__-__T__:__:__.______Z'", name="ck_trial_created_at"
        ),
        sa.CheckConstraint(
            "(state IN ('ended', 'dropped')) = (ended_at IS NOT NULL)", name="ck_trial_ended"
        ),
        sa.CheckConstraint("ended_at LIKE '____-__-__T__:__:__.______Z'", name="ck_trial_ended_at"),
        sa.CheckConstraint(
            "factor IN ('tea', 'tea_strength', 'sugar', 'starter_share', 'culture', "
            "'place', 'vessel', 'other')",
            name="ck_trial_factor",
        ),
        sa.CheckConstraint("is_blind IN (0, 1)", name="ck_trial_is_blind"),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_trial_name"),
        sa.CheckConstraint("length(note) BETWEEN 0 AND 20000", name="ck_trial_note"),
        sa.CheckConstraint("length(question) BETWEEN 0 AND 2000", name="ck_trial_question"),
        sa.CheckConstraint(
            "revealed_at LIKE '____-__-__T__:__:__.______Z'", name="ck_trial_revealed_at"
        ),
        sa.CheckConstraint("seed BETWEEN 0 AND 2147483647", name="ck_trial_seed"),
        sa.CheckConstraint(
            "started_at LIKE '____-__-__T__:__:__.______Z'", name="ck_trial_started_at"
        ),
        sa.CheckConstraint(
            "state IN ('planned', 'running', 'ended', 'dropped')", name="ck_trial_state"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_trial"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )


def _create_trial_arm() -> None:
    op.create_table(
        "trial_arm",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("trial_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("level", sa.Text(), nullable=False),
        sa.CheckConstraint("length(level) BETWEEN 0 AND 200", name="ck_trial_arm_level"),
        sa.CheckConstraint("length(name) BETWEEN 1 AND 200", name="ck_trial_arm_name"),
        sa.CheckConstraint("position BETWEEN 0 AND 1000", name="ck_trial_arm_position"),
        sa.PrimaryKeyConstraint("id", name="pk_trial_arm"),
        sa.ForeignKeyConstraint(["trial_id"], ["trial.id"], name="fk_trial_arm_trial_id"),
        sa.UniqueConstraint("trial_id", "position", name="uq_trial_arm_position"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )


def _create_trial_jar() -> None:
    op.create_table(
        "trial_jar",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("trial_id", sa.Integer(), nullable=False),
        sa.Column("arm_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("vessel_id", sa.Integer()),
        sa.Column("batch_id", sa.Integer()),
        sa.Column("left_out_reason", sa.Text(), nullable=False),
        sa.CheckConstraint("length(code) BETWEEN 1 AND 20", name="ck_trial_jar_code"),
        sa.CheckConstraint(
            "length(left_out_reason) BETWEEN 0 AND 2000", name="ck_trial_jar_left_out_reason"
        ),
        sa.CheckConstraint("position BETWEEN 0 AND 1000", name="ck_trial_jar_position"),
        sa.PrimaryKeyConstraint("id", name="pk_trial_jar"),
        sa.ForeignKeyConstraint(["arm_id"], ["trial_arm.id"], name="fk_trial_jar_arm_id"),
        sa.ForeignKeyConstraint(["batch_id"], ["batch.id"], name="fk_trial_jar_batch_id"),
        sa.ForeignKeyConstraint(["trial_id"], ["trial.id"], name="fk_trial_jar_trial_id"),
        sa.ForeignKeyConstraint(["vessel_id"], ["vessel.id"], name="fk_trial_jar_vessel_id"),
        sa.UniqueConstraint("batch_id", name="uq_trial_jar_batch_id"),
        sa.UniqueConstraint("trial_id", "code", name="uq_trial_jar_code"),
        sa.UniqueConstraint("trial_id", "position", name="uq_trial_jar_position"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_trial_jar_arm_id", "trial_jar", ["arm_id"])


def _create_trial_score() -> None:
    op.create_table(
        "trial_score",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("jar_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("taster", sa.Text(), nullable=False),
        sa.Column("liking", NUMBER),
        sa.Column("mark", sa.Text()),
        sa.Column("text", sa.Text(), nullable=False),
        sa.CheckConstraint("at LIKE '____-__-__T__:__:__.______Z'", name="ck_trial_score_at"),
        sa.CheckConstraint("liking BETWEEN 0 AND 10", name="ck_trial_score_liking"),
        sa.CheckConstraint(
            "mark IN ('far_too_sweet', 'too_sweet', 'right', 'too_sour', 'far_too_sour')",
            name="ck_trial_score_mark",
        ),
        sa.CheckConstraint(
            "liking IS NOT NULL OR mark IS NOT NULL OR length(text) > 0",
            name="ck_trial_score_says_something",
        ),
        sa.CheckConstraint("length(taster) BETWEEN 0 AND 200", name="ck_trial_score_taster"),
        sa.CheckConstraint("length(text) BETWEEN 0 AND 20000", name="ck_trial_score_text"),
        sa.PrimaryKeyConstraint("id", name="pk_trial_score"),
        sa.ForeignKeyConstraint(["jar_id"], ["trial_jar.id"], name="fk_trial_score_jar_id"),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index("ix_trial_score_jar_id", "trial_score", ["jar_id"])
