"""On which day a pH was reached, and what readings cannot tell."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.crossing import SLIP_PH, Crossing, Reach, crossing_of
from culturecore.errors import ImpossibleInput

START = (4.3, 4.25)
falling = st.lists(
    st.tuples(st.floats(min_value=0.1, max_value=3.0), st.floats(min_value=0.01, max_value=0.4)),
    min_size=1,
    max_size=12,
)


def _readings(steps):
    day, ph, found = 0.0, 4.2, []
    for gap, drop in steps:
        day, ph = day + gap, ph - drop
        found.append((day, ph))
    return found


@given(steps=falling, mark=st.floats(min_value=2.5, max_value=4.2))
def test_a_falling_course_crosses_between_the_two_readings(steps, mark):
    readings = _readings(steps)
    found = crossing_of(readings, mark, start=START)
    above = [row for row in readings if row[1] > mark]
    if len(above) == len(readings):
        assert found == Crossing(reach=Reach.NOT_YET, earliest=readings[-1][0])
        return
    assert found.reach is Reach.REACHED
    assert found.earliest == pytest.approx(above[-1][0] if above else 0.0)
    assert found.latest == readings[len(above)][0]
    assert found.earliest <= found.day <= found.latest


@given(steps=falling)
def test_a_lower_mark_is_reached_later(steps):
    readings = _readings(steps)
    marks = [4.1, 3.8, 3.5, 3.2]
    days = [crossing_of(readings, mark, start=START).day for mark in marks]
    reached = [day for day in days if day is not None]
    assert reached == sorted(reached)
    assert all(day is None for day in days[len(reached) :])


def test_between_two_readings_the_ph_falls_evenly():
    found = crossing_of([(6.0, 3.4), (10.0, 3.0)], 3.2, start=START)
    assert found.day == pytest.approx(8.0)
    assert (found.earliest, found.latest) == (6.0, 10.0)


def test_before_the_first_reading_the_reckoned_start_stands_in():
    found = crossing_of([(4.0, 3.1)], 3.2, start=(4.3, 4.25))
    assert found.day == pytest.approx(4.0 * (4.3 - 3.2) / (4.3 - 3.1))
    assert found.earliest == 0.0


def test_what_may_have_been_that_sour_from_the_start_has_no_day():
    assert crossing_of([(2.0, 4.0)], 4.2, start=(4.25, 4.1)).reach is Reach.FROM_START


def test_no_reading_and_none_so_low_are_two_things():
    assert crossing_of([], 3.2, start=START).reach is Reach.UNREAD
    assert crossing_of([(3.0, 3.9)], 3.2, start=START).earliest == 3.0


def test_a_slip_that_the_next_reading_takes_back_does_not_count():
    slip = [(1.0, 4.1), (2.0, 3.1), (3.0, 3.9), (8.0, 3.3), (9.0, 3.15)]
    assert 8.0 < crossing_of(slip, 3.2, start=START).day < 9.0
    wobble = [(1.0, 4.1), (8.0, 3.19), (9.0, 3.2 + SLIP_PH / 2), (10.0, 3.1)]
    assert crossing_of(wobble, 3.2, start=START).latest == 8.0


@given(steps=falling, mark=st.floats(min_value=2.8, max_value=4.1))
def test_the_order_of_readings_does_not_matter(steps, mark):
    readings = _readings(steps)
    assert crossing_of(readings[::-1], mark, start=START) == crossing_of(
        readings, mark, start=START
    )


@pytest.mark.parametrize(
    ("readings", "mark"), [([(1.0, math.nan)], 3.2), ([(math.inf, 3.0)], 3.2), ([], math.nan)]
)
def test_what_is_no_number_is_refused(readings, mark):
    with pytest.raises(ImpossibleInput):
        crossing_of(readings, mark, start=START)
