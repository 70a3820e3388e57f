"""Bottles at the edges of what they may hold."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from culturecore.bottle import BottlePressure, Filling
from culturecore.bottleverdicts import (
    VERDICT_CODES,
    BottleKind,
    bottle_verdicts,
    ceiling_bar,
    chill_verdict,
    gauge_verdict,
)
from culturecore.conditioning import FizzPlan, FizzWish, plan_fizz
from culturecore.errors import ImpossibleInput, NotAssessed
from culturecore.outcome import Level
from culturecore.sources import SOURCES

FILLING = Filling(brim_volume_l=0.52, headspace_share=0.04)
PLAN = plan_fizz(FizzWish(volume_l=4.0, filling=FILLING, ceiling_bar=3.7, target_volumes=1.5))


def plan_at(bar: float | None, volumes: float | None = 2.0, **changes: object) -> FizzPlan:
    """A plan whose target comes to a pressure, with all sugar harmless."""
    target = BottlePressure(air_dissolved_bar=bar, air_trapped_bar=bar, volumes=volumes)
    calm = BottlePressure(air_dissolved_bar=1.0, air_trapped_bar=1.0, volumes=1.5)
    return replace(PLAN, **{"on_target": target, "all_sugar": calm, **changes})


def codes(*args: object, **kwargs: object) -> list[str]:
    verdicts = bottle_verdicts(*args, **kwargs)
    assert {verdict.code for verdict in verdicts} <= VERDICT_CODES
    assert all(set(verdict.sources) <= set(SOURCES) for verdict in verdicts)
    levels = [list(Level).index(verdict.level) for verdict in verdicts]
    assert levels == sorted(levels, reverse=True)
    return [verdict.code for verdict in verdicts]


def test_ceiling_is_the_rating_or_the_cautious_reading_of_the_trade() -> None:
    """British Glass TEC 7 prints 4.7 bar without saying gauge: 3.7 on a gauge if absolute."""
    assert ceiling_bar(BottleKind.FIZZY_GLASS) == 3.7
    assert ceiling_bar(BottleKind.FIZZY_PLASTIC) == 3.7
    assert ceiling_bar(BottleKind.RATED, 6.0) == 6.0
    assert ceiling_bar(BottleKind.RATED, 12.0) == 8.0  # no figure is given beyond


@pytest.mark.parametrize(
    ("kind", "rated_bar", "reason"),
    [
        (BottleKind.NOT_FOR_PRESSURE, None, "not_for_pressure"),
        (BottleKind.RATED, None, "rating_unknown"),
        (BottleKind.RATED, math.nan, "rating_unknown"),
    ],
)
def test_unknown_ceiling_is_not_assessed(
    kind: BottleKind, rated_bar: float | None, reason: str
) -> None:
    with pytest.raises(NotAssessed) as refusal:
        ceiling_bar(kind, rated_bar)
    assert refusal.value.reason == reason


@pytest.mark.parametrize("rated_bar", [0.0, 31.0])
def test_impossible_rating_is_refused(rated_bar: float) -> None:
    with pytest.raises(ImpossibleInput):
        ceiling_bar(BottleKind.RATED, rated_bar)


@pytest.mark.parametrize(
    ("bar", "volumes", "code"),
    [
        (1.5, 1.5, "bottle_within_ceiling"),
        (2.8, 2.0, "bottle_within_ceiling"),  # 2.95 with its doubt
        (2.9, 2.0, "bottle_near_ceiling"),  # 3.06
        (2.0, 3.5, "bottle_very_fizzy"),
        (3.2, 3.5, "bottle_near_ceiling"),
        (3.5, 2.5, "bottle_near_ceiling"),  # 3.68
        (3.6, 2.5, "bottle_over_ceiling"),  # 3.78
        (2.0, 4.0, "bottle_too_fizzy"),
        (3.6, 4.0, "bottle_over_ceiling"),
        (None, 4.0, "bottle_over_8_bar"),
        (None, None, "bottle_over_8_bar"),
    ],
)
def test_glass_of_unknown_rating(bar: float | None, volumes: float | None, code: str) -> None:
    assert codes(BottleKind.FIZZY_GLASS, FILLING, plan_at(bar, volumes)) == [
        code,
        "bottle_handling",
    ]


@pytest.mark.parametrize(
    ("bar", "code"),
    [
        (4.0, "bottle_within_ceiling"),  # 4.20 of 6, with its doubt
        (4.4, "bottle_near_ceiling"),  # 4.62
        (5.8, "bottle_over_ceiling"),  # 6.07
    ],
)
def test_rated_bottle(bar: float, code: str) -> None:
    found = codes(BottleKind.RATED, FILLING, plan_at(bar, 4.2), rated_bar=6.0)
    assert found == [code, "bottle_handling"]


def test_drink_that_fills_the_bottle_is_a_stop() -> None:
    full = BottlePressure(
        air_dissolved_bar=None, air_trapped_bar=None, volumes=None, is_brimful=True
    )
    found = codes(BottleKind.FIZZY_PLASTIC, FILLING, replace(plan_at(1.0), on_target=full))
    assert found[0] == "bottle_no_room"


def test_bottle_not_for_pressure_is_a_stop_whatever_the_plan() -> None:
    found = bottle_verdicts(BottleKind.NOT_FOR_PRESSURE, FILLING, plan_at(0.5))
    assert [(v.code, v.level) for v in found] == [
        ("bottle_not_for_pressure", Level.STOP),
        ("bottle_handling", Level.INFORM),
    ]


def test_damaged_and_large_bottles_are_stops() -> None:
    large = replace(FILLING, brim_volume_l=1.2)
    found = codes(BottleKind.FIZZY_GLASS, large, plan_at(1.0), is_damaged=True)
    assert found[:2] == ["bottle_damaged", "bottle_too_large"]
    edge = replace(FILLING, brim_volume_l=1.15)  # British Glass TEC 7
    assert "bottle_too_large" not in codes(BottleKind.FIZZY_GLASS, edge, plan_at(1.0))


@pytest.mark.parametrize(
    ("bar", "code"),
    [(3.5, None), (3.6, "all_sugar_over_ceiling"), (None, "all_sugar_over_8_bar")],
)
def test_what_all_the_sugar_could_do_is_said(bar: float | None, code: str | None) -> None:
    worst = BottlePressure(air_dissolved_bar=bar, air_trapped_bar=bar, volumes=None)
    found = codes(BottleKind.FIZZY_GLASS, FILLING, plan_at(1.0, all_sugar=worst))
    assert (code in found) if code else not any(each.startswith("all_sugar") for each in found)


@pytest.mark.parametrize(
    ("share", "code"),
    [(0.029, "headspace_small"), (0.03, None), (0.10, None), (0.11, "headspace_large")],
)
def test_headspace_is_judged(share: float, code: str | None) -> None:
    found = codes(BottleKind.FIZZY_GLASS, replace(FILLING, headspace_share=share), plan_at(1.0))
    assert [each for each in found if each.startswith("headspace")] == ([code] if code else [])


def test_chilling_is_asked_for_in_time() -> None:
    plan = plan_at(1.0, chill_by_day=5.0)
    early, late = plan.days_to_target.low - 0.01, plan.days_to_target.low
    assert late < 5.0
    assert chill_verdict(plan, day=early).code == "chill_later"
    assert chill_verdict(plan, day=late).code == "chill_once_right"
    assert chill_verdict(plan, day=5.0).code == "chill_now"
    harmless = replace(plan, chill_by_day=None, days_to_target=None)
    assert chill_verdict(harmless, day=50.0).code == "chill_later"


def test_day_that_cannot_be_is_refused() -> None:
    with pytest.raises(NotAssessed):
        chill_verdict(PLAN, day=math.nan)
    with pytest.raises(ImpossibleInput):
        chill_verdict(PLAN, day=-0.1)


@pytest.mark.parametrize(
    ("gauge", "sd", "code"),
    [
        (2.3, 0.1, "gauge_within"),
        (2.3, 0.25, "gauge_chill"),
        (3.6, 0.1, "gauge_chill"),
        (3.65, 0.1, "gauge_over_ceiling"),
    ],
)
def test_gauge_with_its_doubt_is_judged(gauge: float, sd: float, code: str) -> None:
    assert gauge_verdict(gauge_bar=gauge, sd_bar=sd, ceiling=3.7).code == code


@pytest.mark.parametrize(
    ("gauge", "sd", "trouble"),
    [
        (math.nan, 0.1, NotAssessed),
        (1.0, math.nan, NotAssessed),
        (31.0, 0.1, ImpossibleInput),
        (1.0, -0.1, ImpossibleInput),
    ],
)
def test_gauge_that_cannot_be_is_refused(gauge: float, sd: float, trouble: type) -> None:
    with pytest.raises(trouble):
        gauge_verdict(gauge_bar=gauge, sd_bar=sd, ceiling=3.7)
