"""What a trial is planned from: its one factor, its levels, the recipe that all jars share."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from brewdesk.store.records import Vessel
from culturecore.errors import ImpossibleInput
from culturecore.stages import TeaKind, TrialFactor
from culturecore.sweettea import Starter, Wish

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

# The maker says which jar has which level; lots cannot be drawn for what a jar is.
BY_HAND = frozenset({TrialFactor.VESSEL})
NUMBERS = frozenset({TrialFactor.TEA_STRENGTH, TrialFactor.SUGAR, TrialFactor.STARTER_SHARE})
_SHARE_LOW, _SHARE_HIGH = 0.02, 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class ArmWish:
    """One level: its name for people, and the level as `level_of` reads it."""

    name: str
    level: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialWish:
    """A trial as the maker wants it.

    ``by_hand`` gives the arm of each vessel, counted from 0; None draws lots.
    """

    name: str
    factor: TrialFactor
    arms: tuple[ArmWish, ...]
    vessel_ids: tuple[int, ...] = ()
    question: str = ""
    note: str = ""
    is_blind: bool = False
    by_hand: tuple[int, ...] | None = None
    seed: int | None = None  # None lets the clock choose


_STARTER_UNKNOWN = Starter(ph=None, ta_g_per_l=None, taste=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialRecipe:
    """What all jars of a trial have in common; the factor's own part is overruled by its level.

    ``fill_volume_l`` None fills each to its working volume. ``starter_share`` is of the fill.
    """

    tea_kind: TeaKind = TeaKind.BLACK
    tea_g_per_l: float = 4.0
    sugar_g_per_l: float = 50.0
    starter_share: float = 0.12
    starter: Starter = _STARTER_UNKNOWN
    fill_volume_l: float | None = None
    culture_id: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class JarPlan:
    """One jar's batch to be planned: its wish, its culture, and the place it is to stand at."""

    wish: Wish
    culture_id: int | None
    place_id: int


def check_level(unit: ReadUnit, factor: TrialFactor, level: str) -> None:
    """Refuse a level that the plan of a batch could not take.

    Raises
    ------
    ImpossibleInput
        Field "level" with reason "unknown_level", or out of its range.
    """
    if factor in NUMBERS:
        _number(level, *_range(factor))
    elif factor is TrialFactor.TEA:
        _tea(level)
    elif factor in (TrialFactor.CULTURE, TrialFactor.PLACE):
        rows = unit.cultures if factor is TrialFactor.CULTURE else unit.places
        if not rows.where(id=_row_id(level)):
            raise ImpossibleInput("level", level, reason="unknown_level")


def jar_plan(
    factor: TrialFactor,
    level: str,
    recipe: TrialRecipe,
    vessel: Vessel,
    default_wish: Callable[[int], Wish],
    place_temperature_c: Callable[[int], float],
) -> JarPlan:
    """Return the plan of one jar: the common recipe with just the factor at its level.

    Raises
    ------
    ImpossibleInput
        As `check_level`; field "starter_share" for one that no jar should have.
    """
    changed, culture_id, place_id = recipe, recipe.culture_id, vessel.place_id
    if factor is TrialFactor.TEA:
        changed = replace(recipe, tea_kind=_tea(level))
    elif factor is TrialFactor.TEA_STRENGTH:
        changed = replace(recipe, tea_g_per_l=_number(level, *_range(factor)))
    elif factor is TrialFactor.SUGAR:
        changed = replace(recipe, sugar_g_per_l=_number(level, *_range(factor)))
    elif factor is TrialFactor.STARTER_SHARE:
        changed = replace(recipe, starter_share=_number(level, *_range(factor)))
    elif factor is TrialFactor.CULTURE:
        culture_id = _row_id(level)
    elif factor is TrialFactor.PLACE:
        place_id = _row_id(level)
    share = changed.starter_share
    if not _SHARE_LOW <= share <= _SHARE_HIGH:
        raise ImpossibleInput("starter_share", share, low=_SHARE_LOW, high=_SHARE_HIGH)
    fill_l = vessel.working_volume_l if recipe.fill_volume_l is None else recipe.fill_volume_l
    wish = replace(
        default_wish(vessel.id),
        fill_volume_l=fill_l,
        tea_kind=changed.tea_kind,
        tea_g_per_l=changed.tea_g_per_l,
        sugar_g_per_l=changed.sugar_g_per_l,
        starter_volume_l=share * fill_l,
        place_temperature_c=place_temperature_c(place_id),
    )
    if recipe.starter.ph is not None or recipe.starter.taste is not None:
        wish = replace(wish, starter=recipe.starter)
    return JarPlan(wish=wish, culture_id=culture_id, place_id=place_id)


def _range(factor: TrialFactor) -> tuple[float, float]:
    """Return what a level may be; the planner itself has closer limits."""
    return {
        TrialFactor.TEA_STRENGTH: (0.1, 50.0),
        TrialFactor.SUGAR: (1.0, 300.0),
        TrialFactor.STARTER_SHARE: (_SHARE_LOW, _SHARE_HIGH),
    }[factor]


def _number(level: str, low: float, high: float) -> float:
    try:
        value = float(level)
    except ValueError:
        raise ImpossibleInput("level", level, reason="unknown_level") from None
    if not math.isfinite(value) or not low <= value <= high:
        raise ImpossibleInput("level", value, low=low, high=high)
    return value


def _tea(level: str) -> TeaKind:
    try:
        return TeaKind(level)
    except ValueError:
        raise ImpossibleInput("level", level, reason="unknown_level") from None


def _row_id(level: str) -> int:
    if not level.isascii() or not level.isdecimal() or len(level) > 15:
        raise ImpossibleInput("level", level, reason="unknown_level")
    return int(level)
