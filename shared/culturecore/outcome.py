"""What calculations return: a value with its bounds, and verdicts with their reasons."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum


class Caveat(Enum):
    """Why an estimate is wider or weaker than its digits suggest."""

    STARTER_ACID_ASSUMED = "starter_acid_assumed"
    STARTER_PH_ASSUMED = "starter_ph_assumed"
    WATER_ASSUMED = "water_assumed"
    TEA_ASSUMED = "tea_assumed"
    EXTRAPOLATED = "extrapolated"
    TEMPERATURE_ASSUMED = "temperature_assumed"
    RECIPE_ONLY = "recipe_only"
    UNLIKE_KNOWN = "unlike_known"


@dataclass(frozen=True, slots=True)
class Estimate:
    """A value with the bounds of its central ``level`` interval (0.8 = 80 %)."""

    value: float
    low: float
    high: float
    level: float = 0.8
    caveats: tuple[Caveat, ...] = ()
    sources: tuple[str, ...] = ()


class Level(Enum):
    """How loudly a verdict speaks."""

    INFORM = "inform"
    WARN = "warn"
    STOP = "stop"


@dataclass(frozen=True, slots=True)
class Verdict:
    """One judgement of ``safety``: a code, how serious, the numbers in it, sources.

    The sentence (fact, reason, what to do) is made from ``code`` and ``numbers``
    where people read it, so that it can be translated.
    """

    code: str
    level: Level
    numbers: dict[str, float] = field(default_factory=dict)
    sources: tuple[str, ...] = ()
