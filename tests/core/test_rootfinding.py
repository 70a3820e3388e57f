"""Fixed points and roots end in bounded time, found or not."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.rootfinding import root_of_rising, settle


def test_fixed_point_of_the_cosine() -> None:
    """0.739085133215161, the Dottie number (from memory); it solves x = cos x."""
    found = settle(math.cos, 1.0, tolerance=1e-15, rounds=200)
    assert found == pytest.approx(math.cos(found), abs=1e-14)
    assert found == pytest.approx(0.739085133215161, abs=1e-12)


def test_what_swings_for_ever_is_given_up_after_the_rounds() -> None:
    calls = []

    def swing(value: float) -> float:
        calls.append(value)
        return -value

    assert settle(swing, 1.0, tolerance=1e-9, rounds=7) == -1.0
    assert len(calls) == 7


@given(root=st.floats(-5.0, 5.0))
def test_root_of_a_line(root: float) -> None:
    assert root_of_rising(lambda x: x - root, -6.0, 6.0, tolerance=1e-12) == pytest.approx(
        root, abs=1e-11
    )


@pytest.mark.parametrize(("offset", "end"), [(1.0, 0.0), (-2.0, 1.0)])
def test_without_a_root_the_nearer_end_comes_back(offset: float, end: float) -> None:
    found = root_of_rising(lambda x: x + offset, 0.0, 1.0, tolerance=1e-9)
    assert found == pytest.approx(end, abs=1e-8)


def test_tolerance_finer_than_floats_still_ends() -> None:
    assert root_of_rising(lambda x: x - 1e9, 0.0, 2e9, tolerance=1e-30) == pytest.approx(1e9)
