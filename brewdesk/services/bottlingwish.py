"""What is to be bottled, and what that comes to: plain values for form, print and service."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from typing import TYPE_CHECKING

from culturecore.bottle import BottlePressure
from culturecore.conditioning import FizzPlan
from culturecore.outcome import Estimate, Level, Verdict
from culturecore.stages import AdditionKind, BottleKind, SugarKind

if TYPE_CHECKING:
    from culturecore.bottlecourse import BottleCourse


@dataclass(frozen=True, slots=True, kw_only=True)
class BottleGroupWish:
    """Bottles of one kind. ``rated_bar`` is a gauge pressure, as their maker states it.

    ``supply_id`` is what they are in the stores; None: they do not come from there.
    """

    bottle_count: int
    kind: BottleKind
    brim_volume_l: float
    headspace_share: float = 0.04
    rated_bar: float | None = None
    is_test: bool = False
    name: str = ""
    supply_id: int | None = None

    @property
    def filled_l(self) -> float:
        """What goes into one of them [L]."""
        return self.brim_volume_l * (1.0 - self.headspace_share)


@dataclass(frozen=True, slots=True, kw_only=True)
class AdditionWish:
    """What goes into all the bottles together, and the share of it that is sugar.

    ``supply_id`` is what it is in the stores; None: it does not come from there.
    """

    kind: AdditionKind
    name: str
    mass_g: float
    sugar_share_low: float
    sugar_share_high: float
    source: str = ""
    supply_id: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BottlingWish:
    """One bottling as the maker wants it.

    None stands for what the program knows itself: all of the batch that is not kept back,
    the sugar still in it, the sugar to add, the time now. ``starter_culture_id`` is the
    culture at rest with which the starter is kept; without one it stays in the jar.
    ``closes_batch``: the rest of the jar is drawn off too, and the batch is over.
    """

    batch_id: int
    name: str
    groups: tuple[BottleGroupWish, ...]
    additions: tuple[AdditionWish, ...] = field(default=())
    drink_volume_l: float | None = None
    target_volumes: float = 2.2
    priming_kind: SugarKind = SugarKind.SUCROSE
    priming_sugar_g: float | None = None
    priming_supply_id: int | None = None  # what the sugar is in the stores
    closure_supply_id: int | None = None  # the caps or corks: one for each bottle
    residual_sugar_low_g_per_l: float | None = None
    residual_sugar_high_g_per_l: float | None = None
    place_id: int | None = None
    place_temperature_c: float = 22.0
    warmest_c: float = 28.0
    open_jar_c: float = 22.0
    starter_kept_l: float = 0.0
    starter_culture_id: int | None = None
    closes_batch: bool = False
    filled_at: datetime | None = None
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupOutlook:
    """What a wish comes to in bottles of one kind.

    ``ceiling_bar`` is None for bottles that must not be put under pressure.
    ``ceiling_is_assumed`` says that their maker's rating is not known.
    """

    group: BottleGroupWish
    plan: FizzPlan
    course: BottleCourse
    ceiling_bar: float | None
    ceiling_is_assumed: bool
    sugar_per_bottle_g: float
    additions_per_bottle_g: tuple[float, ...]
    sugar_measure: str
    verdicts: tuple[Verdict, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class BottlingOutlook:
    """What a whole wish comes to; nothing is kept.

    ``chill_by_day`` counts from filling, its low end is the earliest danger; the instants are
    those of its ends. All of it is of the kind of bottles that is in danger first.
    ``bottles_needed`` of the first kind would take up ``left_over_l``.
    """

    wish: BottlingWish
    drink_volume_l: float
    filled_at: datetime
    groups: tuple[GroupOutlook, ...]
    sugar_to_add_g: Estimate
    priming_sugar_g: float
    residual_sugar_g_per_l: tuple[float, float]
    chill_by_day: Estimate | None
    chill_by_at: datetime | None
    chill_likely_at: datetime | None
    days_to_target: Estimate | None
    ethanol_gained_abv: Estimate
    ethanol_all_sugar_abv: float
    all_sugar: BottlePressure
    capacity_l: float
    left_over_l: float
    bottles_needed: int
    spare_bottles: int
    verdicts: tuple[Verdict, ...]
    remedies: tuple[str, ...]

    @property
    def worst(self) -> GroupOutlook:
        """The kind of bottles that is in danger first."""
        return min(self.groups, key=danger_order)

    @property
    def is_stopped(self) -> bool:
        """Whether it needs the maker's written reason."""
        return any(verdict.level is Level.STOP for verdict in self.verdicts)


def danger_order(group: GroupOutlook) -> tuple[float, float]:
    """Sort kinds of bottles: not for pressure, earliest danger, then the lowest ceiling."""
    day, ceiling = group.course.chill_by_day, group.ceiling_bar
    if ceiling is None:  # any pressure is too much
        return (-1.0, 0.0)
    return (float("inf") if day is None else day, ceiling)
