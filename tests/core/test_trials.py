"""Drawing lots, codes, and when a jar's pH passed a threshold."""

from __future__ import annotations

import math
from collections import Counter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.trials import (
    CODE_DIGITS,
    CODE_SIGNS,
    DayReading,
    JarSize,
    Passed,
    allocate,
    crossing_of,
    draw_codes,
    likely_bounds,
    size_groups,
)

SIZES = st.sampled_from(
    [
        JarSize(working_volume_l=1.0, inner_diameter_cm=9.8),
        JarSize(working_volume_l=1.01, inner_diameter_cm=9.8),
        JarSize(working_volume_l=2.0, inner_diameter_cm=11.0),
        JarSize(working_volume_l=4.0, inner_diameter_cm=15.0),
        JarSize(working_volume_l=4.0, inner_diameter_cm=18.0),
    ]
)


@given(st.lists(SIZES, min_size=2, max_size=24), st.integers(2, 6), st.integers(0, 2**31 - 1))
def test_lots_are_balanced_over_all_jars_and_within_each_size(sizes, arm_count, seed):
    if len(sizes) < arm_count:
        with pytest.raises(ImpossibleInput, match="fewer_than_arms"):
            allocate(sizes, arm_count, seed=seed)
        return
    arms = allocate(sizes, arm_count, seed=seed)
    counts = Counter(arms)
    assert max(counts.values()) - min(counts[arm] for arm in range(arm_count)) <= 1
    groups = size_groups(sizes)
    for group in set(groups):
        of_size = Counter(arm for arm, g in zip(arms, groups, strict=True) if g == group)
        # A size may begin and end within a block that it shares with another: one more each.
        assert max(of_size.values()) - min(of_size[arm] for arm in range(arm_count)) <= 2
    assert arms == allocate(sizes, arm_count, seed=seed)


def test_every_dealing_of_four_like_jars_comes_up_about_as_often():
    jar = JarSize(working_volume_l=1.0, inner_diameter_cm=9.8)
    seen = Counter(allocate([jar] * 4, 2, seed=seed) for seed in range(6000))
    assert len(seen) == math.comb(4, 2)
    # Six dealings of 1000 expected each; five standard deviations of a binomial are 145.
    assert all(abs(count - 1000) < 145 for count in seen.values())


def test_jars_within_two_percent_are_of_one_size():
    one = JarSize(working_volume_l=1.0, inner_diameter_cm=10.0)
    assert one.is_like(JarSize(working_volume_l=1.015, inner_diameter_cm=10.1))
    assert not one.is_like(JarSize(working_volume_l=1.05, inner_diameter_cm=10.0))
    assert not one.is_like(JarSize(working_volume_l=1.0, inner_diameter_cm=11.0))


@given(st.integers(0, 24), st.integers(0, 2**31 - 1))
def test_codes_differ_in_two_signs_and_use_none_that_is_mistaken(count, seed):
    codes = draw_codes(count, seed=seed)
    assert len(codes) == count
    assert all(set(code[:2]) <= set(CODE_SIGNS) and code[2] in CODE_DIGITS for code in codes)
    assert not {"0", "O", "1", "I", "L", "5", "S", "8", "B", "A", "E", "U"} & set("".join(codes))
    for n, one in enumerate(codes):
        for other in codes[n + 1 :]:
            assert sum(a != b for a, b in zip(one, other, strict=True)) >= 2


def test_a_further_code_is_unlike_those_taken():
    taken = draw_codes(20, seed=3)
    (code,) = draw_codes(1, seed=3, taken=taken)
    assert all(sum(a != b for a, b in zip(code, one, strict=True)) >= 2 for one in taken)


def test_more_codes_than_there_are_is_refused():
    with pytest.raises(ImpossibleInput, match="too_many"):
        draw_codes(500, seed=1)


def test_a_crossing_is_on_the_straight_line_between_two_readings():
    readings = [DayReading(4.0, 3.4, 0.05), DayReading(6.0, 3.3, 0.05), DayReading(10.0, 3.1, 0.05)]
    crossing = crossing_of(readings, 3.2)
    assert crossing.how is Passed.BETWEEN
    assert crossing.day == pytest.approx(8.0)
    assert (crossing.low, crossing.high) == (6.0, 10.0)
    # Half way: the noise of both readings at half weight, over a slope of 0.05 a day.
    assert crossing.sd == pytest.approx(math.hypot(0.025, 0.025) / 0.05)


def test_bounds_of_a_crossing_never_leave_the_two_readings():
    crossing = crossing_of([DayReading(6.0, 3.25, 0.3), DayReading(7.0, 3.15, 0.3)], 3.2)
    low, high = likely_bounds(crossing)
    assert 6.0 <= low < crossing.day < high <= 7.0


def test_a_jar_not_there_yet_says_only_until_when_it_was_not():
    crossing = crossing_of([DayReading(3.0, 3.8, 0.05), DayReading(5.0, 3.5, 0.05)], 3.2)
    assert (crossing.how, crossing.day, crossing.low) == (Passed.NOT_YET, None, 5.0)
    assert likely_bounds(crossing) is None


def test_a_jar_below_from_the_first_reading_says_only_that_it_was_before():
    crossing = crossing_of([DayReading(5.0, 3.1, 0.05)], 3.2)
    assert (crossing.how, crossing.high) == (Passed.BEFORE, 5.0)


def test_a_jar_without_readings_says_nothing():
    assert crossing_of([], 3.2).how is Passed.UNREAD


def test_a_reading_that_bounces_is_pooled_with_its_neighbour():
    steady = [DayReading(4.0, 3.5, 0.05), DayReading(8.0, 3.1, 0.05)]
    bounced = [*steady[:1], DayReading(5.0, 3.15, 0.05), DayReading(6.0, 3.35, 0.05), steady[1]]
    crossing = crossing_of(bounced, 3.2)
    # 3.15 and 3.35 together are 3.25: the jar had not passed when the one low reading was taken.
    assert crossing.how is Passed.BETWEEN
    assert crossing.low == 6.0
    assert crossing.day == pytest.approx(6.0 + 2.0 * 0.05 / 0.15)


@given(
    st.lists(
        st.tuples(st.floats(0, 40), st.floats(2.5, 4.5), st.floats(0.01, 0.4)),
        min_size=1,
        max_size=12,
    )
)
def test_a_crossing_lies_where_there_are_readings(rows):
    crossing = crossing_of([DayReading(*row) for row in rows], 3.2)
    days = [row[0] for row in rows]
    if crossing.how is Passed.BETWEEN:
        assert min(days) <= crossing.low <= crossing.day <= crossing.high <= max(days)
        assert crossing.sd >= 0.0
    elif crossing.how is Passed.NOT_YET:
        assert crossing.low == pytest.approx(max(days))
    else:
        assert crossing.high == pytest.approx(min(days))
