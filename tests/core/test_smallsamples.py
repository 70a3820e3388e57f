"""Medians, shares and differences of a few values: what holds whatever the values are."""

from __future__ import annotations

import itertools
import math
import random
import statistics

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.smallsamples import (
    LEAST_COUNT,
    difference_of,
    median_interval,
    share_interval,
    shrink,
    spread_of,
)

days = st.floats(min_value=0.1, max_value=60.0, allow_nan=False)
some = st.lists(days, min_size=1, max_size=25)
enough = st.lists(days, min_size=LEAST_COUNT, max_size=15)


@given(values=some)
def test_an_interval_holds_the_median_of_its_own_values(values):
    found = median_interval(values)
    assert (found is None) == (len(values) < LEAST_COUNT)
    if found is not None:
        assert min(values) <= found.low <= statistics.median(values) <= found.high <= max(values)
        assert 0.9 <= found.coverage < 1.0


@given(
    values=enough, shift=st.floats(min_value=-20, max_value=20), factor=st.sampled_from([0.5, 2.0])
)
def test_an_interval_moves_and_stretches_with_the_values(values, shift, factor):
    found = median_interval(values)
    moved = median_interval([factor * value + shift for value in values])
    assert moved.low == pytest.approx(factor * found.low + shift)
    assert moved.high == pytest.approx(factor * found.high + shift)


def test_the_coverage_is_what_it_says_counted_out_over_every_order():
    """Each value lies below the true median with an even chance: count all patterns of signs."""
    for n in range(5, 13):
        found = median_interval([float(k) for k in range(1, n + 1)])
        k = int(found.low)
        held = sum(k <= sum(signs) <= n - k for signs in itertools.product((0, 1), repeat=n))
        assert held / 2**n == pytest.approx(found.coverage)


def test_few_values_are_said_to_be_too_few():
    assert spread_of([8.0, 9.0, 10.0, 12.0]).interval is None
    assert not spread_of([8.0, 9.0, 10.0, 12.0]).is_enough
    assert spread_of([8.0, 9.0, 10.0, 12.0, 13.0]).is_enough
    assert difference_of(([8.0, 9.0, 9.5, 10.0], []), ([1.0] * 9, [])) is None


@given(reached=some)
def test_without_open_durations_a_spread_is_plain(reached):
    found = spread_of(reached)
    assert found.median == statistics.median(reached)
    assert (found.count, found.open_count) == (len(reached), 0)
    assert (found.low, found.high) == (min(reached), max(reached))


@given(reached=some, still=st.lists(days, max_size=10), longer=days)
def test_open_durations_never_make_the_median_shorter(reached, still, longer):
    """One more that took longer than anything can only move the median up, or leave it open."""
    before = spread_of(reached, still)
    after = spread_of(reached, [*still, max((*reached, *still)) + longer])
    lift = math.inf if after.median is None else after.median
    floor = math.inf if before.median is None else before.median
    assert lift >= floor - 1e-9
    assert after.longest_seen > before.longest_seen


@given(reached=enough, at=st.floats(min_value=0.0, max_value=0.05))
def test_a_batch_open_from_the_start_says_nothing_of_the_median(reached, at):
    assert spread_of(reached, [at]).median == pytest.approx(spread_of(reached).median)


def test_nothing_reached_has_no_spread():
    assert spread_of([], [3.0, 4.0]) is None


@given(first=enough, second=enough)
def test_a_difference_turns_its_sign_with_the_groups(first, second):
    one = difference_of((first, []), (second, []))
    other = difference_of((second, []), (first, []))
    assert one.estimate == pytest.approx(-other.estimate)
    assert one.interval.low == pytest.approx(-other.interval.high)
    assert one.interval.low <= one.estimate <= one.interval.high


@given(first=enough, second=enough, shift=st.floats(min_value=-30, max_value=30))
def test_a_difference_grows_with_a_shift(first, second, shift):
    one = difference_of((first, []), (second, []))
    other = difference_of(([value + shift for value in first], []), (second, []))
    assert other.interval.low == pytest.approx(one.interval.low + shift, abs=1e-9)
    assert other.interval.high == pytest.approx(one.interval.high + shift, abs=1e-9)


@given(values=enough)
def test_a_group_does_not_differ_from_itself(values):
    assert not difference_of((values, []), (values, [])).is_told


@given(first=enough, second=enough, still=st.lists(days, min_size=1, max_size=4), more=some)
def test_whatever_becomes_of_open_durations_the_interval_holds_it(first, second, still, more):
    """As if each open duration went on by some time: the finished interval lies within."""
    ended = [at + extra for at, extra in zip(still, itertools.cycle(more), strict=False)]
    open_one = difference_of((first, still), (second, []))
    done = difference_of(([*first, *ended], []), (second, []))
    assert open_one.interval.low <= done.interval.low + 1e-9
    assert open_one.interval.high >= done.interval.high - 1e-9


def test_many_values_go_by_the_curve_and_agree_with_counting():
    """Twenty of each are counted out; one more of each goes by the normal curve."""
    chance = random.Random(7)
    a = [chance.gauss(9.0, 1.5) for _ in range(21)]
    b = [chance.gauss(8.0, 1.5) for _ in range(21)]
    counted = difference_of((a[:20], []), (b[:20], []))
    curved = difference_of((a, []), (b, []))
    assert counted.interval.high - counted.interval.low == pytest.approx(
        curved.interval.high - curved.interval.low, rel=0.15
    )


@given(count=st.integers(min_value=1, max_value=400), data=st.data())
def test_a_share_lies_in_its_interval_and_within_nought_and_one(count, data):
    hits = data.draw(st.integers(min_value=0, max_value=count))
    found = share_interval(hits, count)
    assert 0.0 <= found.low <= hits / count <= found.high <= 1.0
    mirrored = share_interval(count - hits, count)
    assert mirrored.low == pytest.approx(1.0 - found.high, abs=1e-12)


@pytest.mark.parametrize(
    ("hits", "count", "field"), [(0, 0, "count"), (3, 2, "hits"), (-1, 2, "hits")]
)
def test_a_share_of_nothing_is_refused(hits, count, field):
    with pytest.raises(ImpossibleInput) as refused:
        share_interval(hits, count)
    assert refused.value.field == field


@given(groups=st.lists(st.lists(days, min_size=1, max_size=8), min_size=2, max_size=6))
def test_a_drawn_mean_lies_between_its_own_and_that_of_all(groups):
    found = shrink(groups)
    if found is None:
        return
    for group, mean, weight in zip(groups, found.means, found.weights, strict=True):
        own = statistics.fmean(group)
        low, high = sorted((own, found.overall_mean))
        assert low - 1e-9 <= mean <= high + 1e-9
        assert 0.0 <= weight <= 1.0
    sizes = [len(group) for group in groups]
    by_size = sorted(zip(sizes, found.weights, strict=True))
    assert all(a[1] <= b[1] + 1e-12 for a, b in itertools.pairwise(by_size) if a[0] <= b[0])


def test_groups_that_differ_by_chance_alone_are_given_one_mean():
    found = shrink([[8.0, 9.0, 10.0], [8.5, 9.0, 9.5], [7.0, 9.0, 11.0]])
    assert found.between_sd == 0.0
    assert set(found.means) == {found.overall_mean}


def test_groups_far_apart_keep_their_own():
    found = shrink([[5.0, 5.1, 4.9, 5.0], [15.0, 15.1, 14.9, 15.0]])
    assert found.means[0] == pytest.approx(5.0, abs=0.01)
    assert found.means[1] == pytest.approx(15.0, abs=0.01)


@pytest.mark.parametrize(
    "groups", [[], [[1.0, 2.0, 3.0, 4.0]], [[1.0], [2.0]], [[3.0] * 4, [5.0] * 4]]
)
def test_too_little_to_draw_from(groups):
    assert shrink(groups) is None


@pytest.mark.parametrize("work", [median_interval, spread_of])
def test_what_is_no_number_is_refused(work):
    with pytest.raises(ImpossibleInput):
        work([1.0, math.nan, 2.0])
