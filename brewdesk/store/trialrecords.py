"""Records of trials: the factor, its levels, the jars, and what tasters said."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from culturecore.stages import TasteMark, TrialFactor, TrialState


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialDraft:
    """Jars alike but for one factor. ``seed`` makes the drawing of lots repeatable."""

    name: str
    factor: TrialFactor
    seed: int
    created_at: datetime
    question: str = ""
    state: TrialState = TrialState.PLANNED
    is_blind: bool = False
    started_at: datetime | None = None
    revealed_at: datetime | None = None  # when the codes of a blind trial were opened
    ended_at: datetime | None = None
    conclusion: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial(TrialDraft):
    """A stored trial."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialArmDraft:
    """One level of the factor, such as green tea."""

    trial_id: int
    position: int
    name: str
    level: str = ""  # the level as the plan takes it, such as a tea's stored name or a number


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialArm(TrialArmDraft):
    """A stored level of the factor."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialJarDraft:
    """One jar of a trial. ``code`` is all that a blind label shows."""

    trial_id: int
    arm_id: int
    position: int
    code: str
    vessel_id: int | None = None
    batch_id: int | None = None
    left_out_reason: str = ""  # not empty: counted in no result, and why


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialJar(TrialJarDraft):
    """A stored jar of a trial."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialScoreDraft:
    """What one taster said of one jar."""

    jar_id: int
    at: datetime
    taster: str = ""
    liking: float | None = None  # 0 to 10
    mark: TasteMark | None = None
    text: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialScore(TrialScoreDraft):
    """A stored tasting of a trial's jar."""

    id: int
