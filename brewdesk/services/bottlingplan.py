"""What a bottling wish comes to. Pure: nothing here reads or writes the store."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta

from brewdesk.services.bottlingwish import (
    BottleGroupWish,
    BottlingOutlook,
    BottlingWish,
    GroupOutlook,
    danger_order,
)
from brewdesk.services.wording.bottlings import remedy_words
from brewdesk.services.wording.measures import sugar_measure_words
from culturecore import bottleverdicts, bottlingverdicts, drinkverdicts
from culturecore.bottle import Filling
from culturecore.bottlecourse import course_of
from culturecore.bottled import Bottled
from culturecore.conditioning import FizzPlan, FizzWish, Fruit, plan_fizz
from culturecore.errors import ImpossibleInput
from culturecore.fizzpace import Pace
from culturecore.outcome import Level, Verdict
from culturecore.safety import limit
from culturecore.stages import AdditionKind, BottleKind, SugarKind

DAY = timedelta(days=1)
# Kilograms to the litre of what is poured in; common practice, no source.
_DENSITY = {
    AdditionKind.JUICE: 1.04,
    AdditionKind.SYRUP: 1.33,
    AdditionKind.HONEY: 1.4,
    AdditionKind.SUGAR: 1.6,
}
_OTHER_DENSITY = 1.0
_FRESH = (AdditionKind.JUICE, AdditionKind.FRUIT, AdditionKind.GINGER, AdditionKind.OTHER)
_GLASS = (BottleKind.FIZZY_GLASS, BottleKind.RATED, BottleKind.NOT_FOR_PRESSURE)
_STEP_VOLUMES = 0.1  # of the remedy "at most so much fizz"
_LEAST_VOLUMES = 1.0
_ROUNDING_L = 1e-6


def density_kg_per_l(kind: AdditionKind) -> float:
    """Return how much a litre of what is poured in weighs; common practice, no source."""
    return _DENSITY.get(kind, _OTHER_DENSITY)


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """What the program knows of the batch: how much there is, its sugar, verdicts on it."""

    drink_volume_l: float
    left_in_jar_l: float = 0.0  # that could be bottled too, were there bottles
    residual_low_g_per_l: float = 0.0
    residual_high_g_per_l: float = 0.0
    verdicts: tuple[Verdict, ...] = ()
    pace: Pace = field(default_factory=Pace)


def outlook_of(wish: BottlingWish, known: Known, filled_at: datetime) -> BottlingOutlook:
    """Reckon a bottling.

    Raises
    ------
    ImpossibleInput
        Field "groups" with reason "empty", "drink_volume_l" with reason "bottles_too_few",
        "rated_bar" with reason "empty"; the fields of a group, an addition or the wish.
    """
    _check_groups(wish.groups)
    volume_l = known.drink_volume_l if wish.drink_volume_l is None else wish.drink_volume_l
    residual = _residual(wish, known)
    filled_l = volume_l + _added_l(wish)
    groups = tuple(
        _group(wish, group, volume_l, filled_l, residual, known.pace) for group in wish.groups
    )
    worst = min(groups, key=danger_order)
    capacity_l = sum(group.bottle_count * group.filled_l for group in wish.groups)
    left_over_l = max(filled_l - capacity_l, known.left_in_jar_l, 0.0)
    first_l = wish.groups[0].filled_l
    chill_by = worst.course.over_ceiling_day
    verdicts = _loudest_first((*known.verdicts, *_of_whole(wish, groups, worst)))
    return BottlingOutlook(
        wish=wish,
        drink_volume_l=volume_l,
        filled_at=filled_at,
        groups=groups,
        sugar_to_add_g=worst.plan.sugar_to_add_g,
        priming_sugar_g=worst.plan.priming_sugar_g,
        residual_sugar_g_per_l=residual,
        chill_by_day=chill_by,
        chill_by_at=None if chill_by is None else filled_at + DAY * chill_by.low,
        chill_likely_at=None if chill_by is None else filled_at + DAY * chill_by.value,
        days_to_target=worst.plan.days_to_target,
        ethanol_gained_abv=worst.plan.ethanol_gained_abv,
        ethanol_all_sugar_abv=worst.plan.ethanol_all_sugar_abv,
        all_sugar=worst.plan.all_sugar,
        capacity_l=capacity_l,
        left_over_l=0.0 if left_over_l < _ROUNDING_L else left_over_l,
        bottles_needed=math.ceil(left_over_l / first_l - _ROUNDING_L),
        spare_bottles=math.floor(max(capacity_l - filled_l, 0.0) / first_l + _ROUNDING_L),
        verdicts=verdicts,
        remedies=_remedies(wish, groups, volume_l, residual),
    )


def room_for_drink_l(wish: BottlingWish) -> float:
    """Return how much drink the bottles take, beside what else goes in [L].

    Raises
    ------
    ImpossibleInput
        Field "groups" with reason "empty", as `outlook_of`.
    """
    _check_groups(wish.groups)
    room_l = sum(group.bottle_count * group.filled_l for group in wish.groups)
    return max(room_l - _added_l(wish), 0.0)


def _added_l(wish: BottlingWish) -> float:
    return sum(
        addition.mass_g / 1000.0 / _DENSITY.get(addition.kind, _OTHER_DENSITY)
        for addition in wish.additions
    )


def ceiling_of(group: BottleGroupWish) -> float | None:
    """Return the gauge pressure a kind of bottles must not pass [bar]; None if not any.

    Raises
    ------
    ImpossibleInput
        Field "rated_bar": with reason "empty", or outside 0.1 to 30 bar.
    """
    if group.kind is BottleKind.NOT_FOR_PRESSURE:
        return None
    if group.kind is BottleKind.RATED and group.rated_bar is None:
        raise ImpossibleInput("rated_bar", None, low=0.1, high=30.0, unit="bar", reason="empty")
    return bottleverdicts.ceiling_bar(group.kind, group.rated_bar)


def filling_of(group: BottleGroupWish, filled_at_c: float) -> Filling:
    """Return a bottle as it is closed."""
    return Filling(
        brim_volume_l=group.brim_volume_l,
        headspace_share=group.headspace_share,
        filled_at_c=min(max(filled_at_c, 0.0), 40.0),
    )


def _check_groups(groups: tuple[BottleGroupWish, ...]) -> None:
    if not groups:
        raise ImpossibleInput("groups", groups, reason="empty")
    for group in groups:
        if not 1 <= group.bottle_count <= 1000:
            raise ImpossibleInput("bottle_count", group.bottle_count, low=1, high=1000)


def _residual(wish: BottlingWish, known: Known) -> tuple[float, float]:
    low, high = wish.residual_sugar_low_g_per_l, wish.residual_sugar_high_g_per_l
    return (
        known.residual_low_g_per_l if low is None else low,
        known.residual_high_g_per_l if high is None else high,
    )


def _fizz_wish(
    wish: BottlingWish, group: BottleGroupWish, volume_l: float, residual: tuple[float, float]
) -> FizzWish:
    ceiling = ceiling_of(group)
    return FizzWish(
        volume_l=volume_l,
        filling=filling_of(group, wish.place_temperature_c),
        ceiling_bar=limit("bottle_ceiling_bar") if ceiling is None else ceiling,
        target_volumes=wish.target_volumes,
        residual_sugar_low_g_per_l=residual[0],
        residual_sugar_high_g_per_l=residual[1],
        fruit=tuple(
            Fruit(
                mass_g=addition.mass_g,
                sugar_share_low=addition.sugar_share_low,
                sugar_share_high=addition.sugar_share_high,
            )
            for addition in wish.additions
        ),
        sugar_kind=wish.priming_kind,
        priming_sugar_g=wish.priming_sugar_g,
        open_jar_c=wish.open_jar_c,
        place_temperature_c=wish.place_temperature_c,
        warmest_c=max(wish.warmest_c, wish.place_temperature_c),
    )


def _group(
    wish: BottlingWish,
    group: BottleGroupWish,
    volume_l: float,
    filled_l: float,
    residual: tuple[float, float],
    pace: Pace,
) -> GroupOutlook:
    fizz = _fizz_wish(wish, group, volume_l, residual)
    plan = plan_fizz(fizz)
    low, high = sugar_bounds(wish, volume_l, residual, plan.priming_sugar_g)
    course = course_of(
        Bottled(
            filling=fizz.filling,
            ceiling_bar=fizz.ceiling_bar,
            sugar_low_g_per_l=low,
            sugar_high_g_per_l=high,
            open_jar_c=fizz.open_jar_c,
            place_temperature_c=fizz.place_temperature_c,
            warmest_c=fizz.warmest_c,
            pace=pace,
        )
    )
    per_bottle = group.filled_l / filled_l
    sugar_g = plan.priming_sugar_g * per_bottle
    is_white = wish.priming_kind is SugarKind.SUCROSE
    return GroupOutlook(
        group=group,
        plan=plan,
        course=course,
        ceiling_bar=ceiling_of(group),
        ceiling_is_assumed=group.kind in (BottleKind.FIZZY_GLASS, BottleKind.FIZZY_PLASTIC),
        sugar_per_bottle_g=sugar_g,
        additions_per_bottle_g=tuple(one.mass_g * per_bottle for one in wish.additions),
        sugar_measure=sugar_measure_words(sugar_g) if is_white else "",
        verdicts=_verdicts_of(group, fizz, plan),
    )


def sugar_bounds(
    wish: BottlingWish, volume_l: float, residual: tuple[float, float], priming_g: float
) -> tuple[float, float]:
    """Return the least and most sugar that can ferment in the bottles [g/L]."""
    low, high = residual
    for addition in wish.additions:
        low += addition.mass_g * addition.sugar_share_low / volume_l
        high += addition.mass_g * addition.sugar_share_high / volume_l
    return low + priming_g / volume_l, high + priming_g / volume_l


def _verdicts_of(group: BottleGroupWish, fizz: FizzWish, plan: FizzPlan) -> tuple[Verdict, ...]:
    return bottleverdicts.bottle_verdicts(group.kind, fizz.filling, plan, rated_bar=group.rated_bar)


def _of_whole(
    wish: BottlingWish, groups: tuple[GroupOutlook, ...], worst: GroupOutlook
) -> list[Verdict]:
    """Judge the bottling beyond each kind of bottles; the same code is said once, at its worst."""
    found: dict[str, Verdict] = {}
    for group in sorted(groups, key=danger_order):
        for verdict in group.verdicts:
            found.setdefault(verdict.code, verdict)
    found.pop("bottle_handling", None)
    answer = list(found.values())
    no_time = bottlingverdicts.no_time_verdict(worst.course)
    if no_time is not None:
        answer.append(no_time)
    if any(group.ceiling_is_assumed for group in groups):
        answer.append(bottlingverdicts.unrated_verdict())
    if not any(group.is_test for group in wish.groups):
        answer.append(bottlingverdicts.no_test_verdict())
    plan = worst.plan
    answer.append(
        bottlingverdicts.alcohol_verdict(plan.ethanol_gained_abv, plan.ethanol_all_sugar_abv)
    )
    if any(addition.kind in _FRESH for addition in wish.additions):
        answer.append(drinkverdicts.flavouring_verdict(is_pasteurised=None))
    is_glass = any(group.kind in _GLASS for group in wish.groups)
    answer.append(bottlingverdicts.handling_verdict(is_glass=is_glass))
    answer.append(drinkverdicts.audience_verdict())
    return answer


def _loudest_first(verdicts: Iterable[Verdict]) -> tuple[Verdict, ...]:
    loudness = list(Level)
    return tuple(sorted(verdicts, key=lambda verdict: -loudness.index(verdict.level)))


def _remedies(
    wish: BottlingWish,
    groups: tuple[GroupOutlook, ...],
    volume_l: float,
    residual: tuple[float, float],
) -> tuple[str, ...]:
    """Say what would help the kinds of bottles that are stopped, in numbers where it can be."""
    stopped = [
        group for group in groups if any(verdict.level is Level.STOP for verdict in group.verdicts)
    ]
    if not stopped:
        return ()
    fitting = [_most_volumes(wish, group.group, volume_l, residual) for group in stopped]
    most = None if None in fitting else min(one for one in fitting if one is not None)
    codes = {verdict.code for group in stopped for verdict in group.verdicts}
    return remedy_words(
        most_volumes=most,
        place_temperature_c=wish.place_temperature_c,
        is_warmer=wish.warmest_c > wish.place_temperature_c,
        wants_other_bottles=bool(codes & {"bottle_not_for_pressure", "bottle_too_large"}),
        wants_headspace=bool(codes & {"bottle_no_room", "headspace_small"}),
        wants_test=not any(group.is_test for group in wish.groups),
    )


def _most_volumes(
    wish: BottlingWish, group: BottleGroupWish, volume_l: float, residual: tuple[float, float]
) -> float | None:
    """Return the most fizz that these bottles are not stopped for; None if there is none."""
    volumes = math.floor(wish.target_volumes / _STEP_VOLUMES) * _STEP_VOLUMES
    while volumes >= _LEAST_VOLUMES - 1e-9:
        fizz = replace(
            _fizz_wish(wish, group, volume_l, residual),
            target_volumes=volumes,
            priming_sugar_g=None,
        )
        judged = _verdicts_of(group, fizz, plan_fizz(fizz))
        if not any(verdict.level is Level.STOP for verdict in judged):
            return volumes
        volumes -= _STEP_VOLUMES
    return None
