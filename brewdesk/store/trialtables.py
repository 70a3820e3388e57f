"""The tables of trials: jars alike but for one factor, and what was said of them.

Private to the store, like ``schema``, which lists them.
"""

from __future__ import annotations

from sqlalchemy import CheckConstraint, Column, Index, UniqueConstraint

from brewdesk.store.columns import YesNo
from brewdesk.store.tableparts import choice, instant, link, number, rule, table, whole, words
from culturecore.stages import TasteMark, TrialFactor, TrialState

trial = table(
    "trial",
    words("name", 200, least=1),
    choice("factor", TrialFactor),
    words("question", 2000),
    choice("state", TrialState),
    whole("seed", 0, 2_147_483_647),
    [
        Column("is_blind", YesNo(), nullable=False),
        CheckConstraint("is_blind IN (0, 1)", "is_blind"),
    ],
    instant("created_at"),
    instant("started_at", optional=True),
    instant("revealed_at", optional=True),
    instant("ended_at", optional=True),
    rule("ended", "(state IN ('ended', 'dropped')) = (ended_at IS NOT NULL)"),
    words("conclusion", 20_000),
    words("note", 20_000),
)

trial_arm = table(
    "trial_arm",
    link("trial_id", "trial"),
    whole("position", 0, 1000),
    words("name", 200, least=1),
    words("level", 200),
    [UniqueConstraint("trial_id", "position", name="uq_trial_arm_position")],
)

# The code is what a blind label shows; which arm it stands for is shown when all is tasted.
trial_jar = table(
    "trial_jar",
    link("trial_id", "trial"),
    link("arm_id", "trial_arm"),
    whole("position", 0, 1000),
    words("code", 20, least=1),
    link("vessel_id", "vessel", optional=True),
    link("batch_id", "batch", optional=True),
    words("left_out_reason", 2000),
    [
        UniqueConstraint("trial_id", "position", name="uq_trial_jar_position"),
        UniqueConstraint("trial_id", "code", name="uq_trial_jar_code"),
        UniqueConstraint("batch_id", name="uq_trial_jar_batch_id"),
    ],
)
Index("ix_trial_jar_arm_id", trial_jar.c.arm_id)

trial_score = table(
    "trial_score",
    link("jar_id", "trial_jar"),
    instant("at"),
    words("taster", 200),
    number("liking", 0, 10, optional=True),
    choice("mark", TasteMark, optional=True),
    rule("says_something", "liking IS NOT NULL OR mark IS NOT NULL OR length(text) > 0"),
    words("text", 20_000),
)
Index("ix_trial_score_jar_id", trial_score.c.jar_id)
