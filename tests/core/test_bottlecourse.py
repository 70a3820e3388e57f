"""Fizz by day in closed bottles: bounds, what checks do to them, the day to chill by."""

from __future__ import annotations

import math
import time
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from culturecore import bottle
from culturecore import bottlearrays as arrays
from culturecore.bottle import Filling
from culturecore.bottlecourse import DANGER_PROBABILITY, HORIZON_DAYS, course_of
from culturecore.bottled import BOTTLED_RANGES, Bottled, Check, WarmStep
from culturecore.bottledraws import Case, likelihood, normal_share
from culturecore.conditioning import FizzWish, plan_fizz
from culturecore.errors import ImpossibleInput
from culturecore.fizzpace import BINS, PRIOR_LOG_RATE, PRIOR_SD, Pace, bin_edges, pooled
from culturecore.stages import CheckKind, Feel, Opened

FILLING = Filling(brim_volume_l=0.5, headspace_share=0.04)
SWEET = Bottled(filling=FILLING, ceiling_bar=3.7, sugar_low_g_per_l=15.0, sugar_high_g_per_l=30.0)
DAYS = (0.0, 1.0, 3.0, 7.0, 14.0)


def felt(day: float, feel: Feel) -> Check:
    return Check(day=day, kind=CheckKind.FEEL, feel=feel)


def gauged(day: float, bar: float, sd: float = 0.1) -> Check:
    return Check(day=day, kind=CheckKind.GAUGE, gauge_bar=bar, sd_bar=sd)


def by_day(bottled: Bottled) -> float:
    chill_by = course_of(bottled).chill_by_day
    return math.inf if chill_by is None else chill_by


def bars(bottled: Bottled, days: tuple[float, ...] = DAYS) -> list[float]:
    curve = course_of(bottled).gauge_bar
    found = [curve.at(day) for day in days]
    return [number for one in found for number in (one.low, one.value, one.high)]


@settings(max_examples=60, deadline=None)
@given(
    st.floats(0.2, 2.0),
    st.floats(0.03, 0.2),
    st.floats(2.0, 30.0),
    st.floats(0.0, 38.0),
    st.floats(0.0, 80.0),
    st.floats(0.2, 14.0),
)
def test_arrays_agree_with_single_bottles(
    brim_l: float, share: float, filled_c: float, now_c: float, sugar: float, gas: float
) -> None:
    """`bottle.pressure` is itself checked against PHREEQC in tests/core/test_bottle."""
    filling = Filling(brim_volume_l=brim_l, headspace_share=share, filled_at_c=filled_c)
    alone = bottle.pressure(filling, co2_g_per_l=gas, temperature_c=now_c, sugar_g_per_l=sugar)
    closed = arrays.closed_at(filling, now_c, sugar)
    factors = arrays.solute_factors(np.array([sugar]), np.array([0.0]))
    pressure = arrays.co2_bar(closed, np.array([gas]), factors)
    trapped = float(arrays.trapped_bar(closed, pressure)[0])
    if alone.air_trapped_bar is None:
        assert trapped == pytest.approx(arrays.TOP_BAR, abs=1e-3)
        return
    assert trapped == pytest.approx(alone.air_trapped_bar, abs=1e-3)
    if alone.air_dissolved_bar is not None and alone.volumes is not None:
        settled = float(arrays.settled_bar(closed, pressure)[0])
        assert settled == pytest.approx(alone.air_dissolved_bar, abs=1e-3)


def test_a_brimful_bottle_has_no_upper_bound_in_arrays_either() -> None:
    full = Filling(brim_volume_l=0.5, headspace_share=0.0, filled_at_c=4.0)
    closed = arrays.closed_at(full, 30.0)
    assert closed.is_brimful
    pressure = arrays.co2_bar(closed, np.array([4.0]), np.array([1.0]))
    assert arrays.trapped_bar(closed, pressure)[0] == arrays.TOP_BAR
    course = course_of(replace(SWEET, filling=full, place_temperature_c=20.0))
    assert course.chill_by_day == 0.0
    vented = replace(
        SWEET,
        filling=full,
        place_temperature_c=25.0,
        checks=(Check(day=1.0, kind=CheckKind.VENTED),),
    )
    assert course_of(vented).gauge_bar.at(2.0).high == arrays.TOP_BAR


def test_the_normal_distribution_is_as_the_standard_library_has_it() -> None:
    values = np.linspace(-6.0, 6.0, 241)
    exact = [0.5 * math.erfc(-value / math.sqrt(2.0)) for value in values]
    assert normal_share(values) == pytest.approx(exact, abs=2e-7)


def test_the_first_gas_is_what_an_open_jar_holds_at_most() -> None:
    course = course_of(SWEET)
    start = course.volumes.at(0.0)
    assert 0.1 < start.low < start.value < start.high < 0.85  # saturated at 22 degC: 0.83 vol
    assert course.ethanol_abv.at(0.0).high == 0.0


def test_bounds_are_in_order_and_pressure_rises_at_an_even_temperature() -> None:
    course = course_of(SWEET)
    for curve in (course.gauge_bar, course.volumes, course.ethanol_abv):
        for line in (curve.low, curve.likely, curve.high):
            assert all(b >= a - 1e-6 for a, b in pairwise(line))
        for low, likely, high in zip(curve.low, curve.likely, curve.high, strict=True):
            assert low <= likely <= high
    over = course.over_ceiling_day
    assert over is not None
    assert over.low < over.value < over.high <= HORIZON_DAYS
    assert over.level == pytest.approx(1.0 - 2.0 * DANGER_PROBABILITY)


def test_the_worst_case_plan_is_no_later_than_the_course() -> None:
    """The plan's day takes every bound at once; one draw in twenty cannot come before it."""
    plan = plan_fizz(
        FizzWish(
            volume_l=4.0,
            filling=FILLING,
            ceiling_bar=3.7,
            residual_sugar_low_g_per_l=15.0,
            residual_sugar_high_g_per_l=30.0,
            priming_sugar_g=0.0,
        )
    )
    assert plan.chill_by_day is not None
    assert plan.chill_by_day < by_day(SWEET) < 8.0 * plan.chill_by_day


def test_a_dry_drink_never_comes_near_its_ceiling() -> None:
    dry = replace(SWEET, sugar_low_g_per_l=0.0, sugar_high_g_per_l=1.0)
    course = course_of(dry)
    assert course.over_ceiling_day is None
    assert course.chill_by_day is None
    assert course.gauge_bar.at(35.0).high < 3.0


def test_values_between_days_and_beyond_the_ends() -> None:
    curve = course_of(SWEET).gauge_bar
    assert curve.at(-1.0).value == curve.likely[0]
    assert curve.at(99.0).high == curve.high[-1]
    between = curve.at(0.125).value
    assert curve.likely[0] < between < curve.likely[1]


@settings(max_examples=15, deadline=None)
@given(st.floats(0.0, 40.0), st.floats(0.0, 25.0))
def test_more_sugar_never_lowers_the_pressure_nor_delays_the_danger(
    sugar: float, more: float
) -> None:
    less = replace(SWEET, sugar_low_g_per_l=sugar, sugar_high_g_per_l=sugar + 5.0)
    much = replace(SWEET, sugar_low_g_per_l=sugar + more, sugar_high_g_per_l=sugar + 5.0 + more)
    # a sweeter drink also swells more and holds less gas: both only add to the pressure
    assert all(b >= a - 2e-3 for a, b in zip(bars(less), bars(much), strict=True))
    assert by_day(much) <= by_day(less) + 1e-6


@settings(max_examples=15, deadline=None)
@given(st.floats(10.0, 28.0), st.floats(0.0, 10.0), st.floats(0.0, 6.0))
def test_warmer_never_means_later_to_chill(place_c: float, warmer: float, ahead: float) -> None:
    cool = replace(SWEET, place_temperature_c=place_c, warmest_c=place_c + ahead)
    warm = replace(
        SWEET, place_temperature_c=place_c + warmer, warmest_c=min(place_c + ahead + warmer, 40.0)
    )
    assert by_day(warm) <= by_day(cool) + 1e-6


@settings(max_examples=10, deadline=None)
@given(st.floats(23.0, 34.0), st.floats(0.2, 1.0))
def test_warm_days_that_were_read_bring_the_deadline_forward(warm_c: float, day: float) -> None:
    usual = replace(SWEET, steps=(WarmStep(day=0.0, temperature_c=22.0),))
    warm = replace(
        SWEET,
        steps=(WarmStep(day=0.0, temperature_c=22.0), WarmStep(day=day, temperature_c=warm_c)),
    )
    assert by_day(warm) <= by_day(usual)


@settings(max_examples=15, deadline=None)
@given(st.floats(0.5, 6.0), st.floats(5.0, 40.0))
def test_a_hard_bottle_never_lowers_the_forecast(day: float, sugar: float) -> None:
    before = replace(SWEET, sugar_low_g_per_l=sugar, sugar_high_g_per_l=sugar + 10.0)
    after = replace(before, checks=(felt(day, Feel.HARD),))
    slack = 0.02  # bar: two sets of draws of one distribution differ by as much
    assert all(b >= a - slack for a, b in zip(bars(before), bars(after), strict=True))


def test_feels_are_in_order() -> None:
    found = [
        course_of(replace(SWEET, checks=(felt(2.0, feel),))).gauge_bar.at(3.0).value
        for feel in Feel
    ]
    assert found == sorted(found)
    days = [by_day(replace(SWEET, checks=(felt(2.0, feel),))) for feel in Feel]
    assert days == sorted(days, reverse=True)


def test_openings_are_in_order() -> None:
    found = [
        course_of(replace(SWEET, checks=(Check(day=2.0, kind=CheckKind.OPENED, opened=opened),)))
        .volumes.at(2.0)
        .value
        for opened in Opened
    ]
    assert found == sorted(found)


def test_a_gauge_narrows_the_pace_and_the_band() -> None:
    told = course_of(replace(SWEET, checks=(gauged(2.0, 1.4),)))
    plain = course_of(SWEET)
    assert told.pace.sd < 0.8 * plain.pace.sd
    now, was = told.gauge_bar.at(2.0), plain.gauge_bar.at(2.0)
    assert now.high - now.low < 0.6 * (was.high - was.low)
    assert now.low < 1.4 < now.high
    assert told.effective_draws > 100.0


def test_a_check_at_its_own_temperature_is_read_at_that() -> None:
    cold = replace(gauged(2.0, 1.0), temperature_c=4.0)
    warm = gauged(2.0, 1.0)
    volumes = [
        course_of(replace(SWEET, checks=(check,))).volumes.at(2.0).value for check in (warm, cold)
    ]
    assert volumes[1] > volumes[0]


def test_a_note_says_nothing() -> None:
    noted = replace(SWEET, checks=(Check(day=2.0, kind=CheckKind.NOTE),))
    assert course_of(noted).pace == Pace()
    assert by_day(noted) == pytest.approx(by_day(SWEET))


def test_venting_lets_gas_out_and_the_rest_comes_back() -> None:
    told = (gauged(3.0, 2.5),)
    closed = course_of(replace(SWEET, checks=told))
    vent = Check(day=3.0, kind=CheckKind.VENTED)
    vented = course_of(replace(SWEET, checks=(*told, vent)))
    twice = course_of(replace(SWEET, checks=(*told, vent, replace(vent, day=4.0))))
    assert vented.gauge_bar.at(3.5).value < closed.gauge_bar.at(3.5).value
    assert twice.gauge_bar.at(4.5).value < vented.gauge_bar.at(4.5).value
    assert vented.gauge_bar.at(9.0).value > vented.gauge_bar.at(3.5).value
    assert vented.chill_by_day is not None
    assert closed.chill_by_day is not None
    assert vented.chill_by_day > closed.chill_by_day
    # what was felt before the cap was lifted still counts as it was
    assert vented.pace.log_rate == pytest.approx(closed.pace.log_rate, abs=0.15)


def test_cold_drops_the_gauge_and_slows_the_rise() -> None:
    warm = course_of(replace(SWEET, checks=(gauged(3.0, 2.0),)))
    cold = course_of(replace(SWEET, checks=(gauged(3.0, 2.0),), chilled_day=3.0, cold_c=4.0))
    assert cold.gauge_bar.at(3.25).value < 1.5
    assert cold.gauge_bar.at(20.0).value > cold.gauge_bar.at(4.0).value
    assert cold.gauge_bar.at(20.0).value < warm.gauge_bar.at(20.0).value
    assert cold.chill_by_day is None or cold.chill_by_day > 10.0


def test_a_stretch_nobody_read_goes_back_to_the_usual() -> None:
    read = WarmStep(day=0.0, temperature_c=30.0)
    ended = WarmStep(day=1.0, temperature_c=None)
    bottled = replace(SWEET, steps=(read, ended))
    assert (bottled.read_c(0.5), bottled.read_c(1.5)) == (30.0, None)
    assert bottled.likely_c(1.5) == bottled.place_temperature_c
    assert replace(SWEET, steps=(ended,)).read_c(0.5) is None
    assert bottled.warmest_by(0.5) == 30.0
    assert replace(bottled, chilled_day=2.0).warmest_by(3.0) == bottled.cold_c
    assert by_day(replace(SWEET, steps=(read,))) <= by_day(bottled) <= by_day(SWEET)


def test_each_likelihood_is_a_chance() -> None:
    bars_ = np.linspace(0.0, 8.0, 81)
    for values, checks in (
        (bars_, [felt(1.0, feel) for feel in Feel]),
        (bars_, [Check(day=1.0, kind=CheckKind.OPENED, opened=one) for one in Opened]),
    ):
        chances = [likelihood(check, values, values) for check in checks]
        assert sum(chances) == pytest.approx(np.ones_like(values))
        assert all((chance > 0.0).all() for chance in chances)
    # a gauge's chances over all it may show add up to one
    shown = np.linspace(-1.0, 30.0, 3101)
    total = sum(float(likelihood(gauged(1.0, bar), np.array([2.0]), bars_)[0]) for bar in shown)
    assert total * 0.01 == pytest.approx(1.0, abs=0.01)


@pytest.mark.parametrize(
    ("change", "field"),
    [
        *(({name: low - 1.0}, name) for name, (low, _, _) in BOTTLED_RANGES.items()),
        *(({name: high + 1.0}, name) for name, (_, high, _) in BOTTLED_RANGES.items()),
        ({"sugar_high_g_per_l": 10.0}, "sugar_high_g_per_l"),
        ({"sugar_high_g_per_l": math.nan}, "sugar_high_g_per_l"),
        ({"chilled_day": -1.0}, "chilled_day"),
        ({"steps": (WarmStep(day=-1.0, temperature_c=20.0),)}, "day"),
        ({"steps": (WarmStep(day=1.0, temperature_c=50.0),)}, "temperature_c"),
        ({"checks": (felt(99.0, Feel.SOFT),)}, "day"),
        ({"checks": (Check(day=1.0, kind=CheckKind.FEEL),)}, "feel"),
        ({"checks": (Check(day=1.0, kind=CheckKind.GAUGE),)}, "gauge_bar"),
        ({"checks": (Check(day=1.0, kind=CheckKind.OPENED),)}, "opened"),
        ({"checks": (gauged(1.0, 40.0),)}, "gauge_bar"),
        ({"checks": (gauged(1.0, 2.0, sd=9.0),)}, "sd_bar"),
        ({"checks": (replace(felt(1.0, Feel.SOFT), temperature_c=60.0),)}, "temperature_c"),
        ({"filling": replace(FILLING, brim_volume_l=0.001)}, "brim_volume_l"),
    ],
)
def test_what_cannot_be_is_refused_by_name(change: dict[str, object], field: str) -> None:
    with pytest.raises(ImpossibleInput) as refused:
        course_of(replace(SWEET, **change))
    assert refused.value.field == field


@pytest.mark.parametrize("horizon", [0.5, 500.0, math.nan])
def test_the_horizon_has_ends(horizon: float) -> None:
    with pytest.raises(ImpossibleInput, match="horizon_days"):
        course_of(SWEET, horizon_days=horizon)
    assert course_of(SWEET, horizon_days=90.0).gauge_bar.days[-1] == 90.0


def test_the_same_question_gets_the_same_answer_quickly() -> None:
    first = course_of(SWEET)
    began = time.process_time()
    again = [course_of(SWEET) for _ in range(5)]
    spent = (time.process_time() - began) / 5.0
    assert all(one == first for one in again)
    assert spent < 0.06  # a third of this on an idle desktop


# --- what earlier bottlings teach ----------------------------------------------------------


def lesson(log_rate: float, sd: float) -> tuple[float, ...]:
    """What a bottling leaves whose checks say so of its pace, as weights in the parts."""
    edges = np.array(bin_edges(Pace()))
    draws = np.random.default_rng(5).normal(log_rate, sd, 20_000)
    return tuple(np.bincount(np.searchsorted(edges, draws), minlength=BINS) / 20_000)


def test_without_lessons_nothing_is_learnt() -> None:
    assert pooled(()).sd == pytest.approx(PRIOR_SD, rel=1e-3)
    assert pooled(()).log_rate == pytest.approx(PRIOR_LOG_RATE)
    says_nothing = course_of(SWEET).lesson
    assert sum(says_nothing) == pytest.approx(1.0)
    assert pooled((says_nothing,)).log_rate == pytest.approx(PRIOR_LOG_RATE, abs=0.05)


def test_lessons_pull_and_never_make_certain() -> None:
    lively = lesson(PRIOR_LOG_RATE + 1.0, 0.2)
    one, many = pooled((lively,)), pooled((lively,) * 50)
    assert PRIOR_LOG_RATE + 0.3 < one.log_rate < many.log_rate < PRIOR_LOG_RATE + 1.3
    assert many.sd < one.sd < PRIOR_SD
    assert many.sd > math.sqrt(0.5) * PRIOR_SD - 1e-9
    rate = many.rate_g_per_l_day
    assert rate.low < rate.value < rate.high


def test_pooling_is_as_normal_theory_has_it() -> None:
    """Normal-normal: a bottling whose pace is all but known is worth its own scatter.

    Half the variance lies between kitchens: one such lesson moves the middle half way, and
    leaves the variance between at half of what it was.
    """
    truth = PRIOR_LOG_RATE + 0.5
    found = pooled((lesson(truth, 0.05),))
    assert found.log_rate == pytest.approx(PRIOR_LOG_RATE + 0.25, abs=0.05)
    assert found.sd**2 == pytest.approx(0.75 * PRIOR_SD**2, rel=0.05)


@pytest.mark.parametrize(
    "bad", [(), (1.0,) * (BINS - 1), (-1.0, *(1.0,) * (BINS - 1)), (0.0,) * BINS]
)
def test_a_lesson_has_one_weight_a_part(bad: tuple[float, ...]) -> None:
    with pytest.raises(ImpossibleInput, match="lesson"):
        pooled((bad,))


def test_a_lively_pantry_is_told_to_chill_sooner() -> None:
    hard = course_of(replace(SWEET, checks=(felt(1.0, Feel.HARD),))).lesson
    soft = course_of(replace(SWEET, checks=(felt(4.0, Feel.SOFT),))).lesson
    assert by_day(replace(SWEET, pace=pooled((hard,)))) < by_day(SWEET)
    assert by_day(replace(SWEET, pace=pooled((soft,)))) > by_day(SWEET)


def test_the_pace_learnt_is_calibrated() -> None:
    """Bottlings drawn from the belief itself: the truth falls evenly into what was learnt.

    Simulation-based calibration (Talts et al. 2018, from memory): the share of the learnt
    pace below the truth must be uniform. 200 bottlings, each felt twice and gauged once.
    """
    rng = np.random.default_rng(8)
    looks, shares = (1.0, 2.0, 3.0), []
    case = Case(SWEET)
    for number in range(200):
        truth = rng.standard_normal((1, case.dimensions))
        shown = case.shown(case.grow(truth, looks), [22.0] * 3)
        middle = 0.5 * (shown.settled_bar + shown.trapped_bar)[0]
        checks = []
        for day, bar in zip(looks[:2], middle[:2], strict=True):
            chances = [
                likelihood(felt(day, feel), np.array([bar]), np.array([0.0]))[0] for feel in Feel
            ]
            checks.append(felt(day, list(Feel)[rng.choice(3, p=np.array(chances) / sum(chances))]))
        is_slip = rng.random() < 0.04
        spread = math.hypot(math.hypot(0.1, 0.1), 0.04 * middle[2])
        bar = rng.uniform(-1.0, 30.0) if is_slip else rng.normal(middle[2], spread)
        checks.append(gauged(3.0, float(np.clip(bar, -1.0, 30.0))))
        learnt = course_of(replace(SWEET, checks=tuple(checks)), seed=number).pace
        true_log_rate = PRIOR_LOG_RATE + PRIOR_SD * truth[0, 0]
        away = (true_log_rate - learnt.log_rate) / learnt.sd
        shares.append(0.5 * math.erfc(-away / math.sqrt(2.0)))
    counts, _ = np.histogram(shares, bins=5, range=(0.0, 1.0))
    chi_square = float(((counts - 40.0) ** 2 / 40.0).sum())
    assert chi_square < 16.9  # 4 degrees of freedom: one run in five hundred is above 16.9
    inside = np.mean([0.1 < share < 0.9 for share in shares])
    assert 0.72 < inside < 0.88
