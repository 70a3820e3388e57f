"""Measured vessels: the table is kept, nothing falls, surfaces are slopes."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator

from culturecore.errors import ImpossibleInput
from culturecore.filltable import (
    fill_table,
    height_at,
    surface_at_cm2,
    surface_to_volume_per_cm,
    volume_at,
)
from culturecore.stages import VesselShape
from culturecore.vessels import brim_height_cm, surface_area_cm2, volume_to_height_l

STEPS = st.lists(st.tuples(st.floats(0.1, 10.0), st.floats(0.01, 5.0)), min_size=1, max_size=12)


def _summed(steps: list[tuple[float, float]]) -> list[tuple[float, float]]:
    rows, height, volume = [], 0.0, 0.0
    for up, more in steps:
        height, volume = height + up, volume + more
        rows.append((height, volume))
    return rows


@given(STEPS)
def test_table_gives_back_its_rows(steps: list[tuple[float, float]]) -> None:
    rows = _summed(steps)
    table = fill_table(rows)
    for height, volume in rows:
        assert volume_at(table, height).value == pytest.approx(volume)
    assert (table.brim_height_cm, table.brim_volume_l) == rows[-1]


@given(STEPS, st.tuples(st.floats(0.0, 1.0), st.floats(0.0, 1.0)))
def test_higher_never_holds_less(
    steps: list[tuple[float, float]], shares: tuple[float, float]
) -> None:
    table = fill_table(_summed(steps))
    low, high = (volume_at(table, share * table.brim_height_cm) for share in sorted(shares))
    assert 0.0 <= low.value <= high.value <= table.brim_volume_l
    assert low.low <= low.value <= low.high


@given(STEPS, st.floats(0.0, 1.0))
def test_height_of_a_volume_holds_it(steps: list[tuple[float, float]], share: float) -> None:
    table = fill_table(_summed(steps))
    volume = share * table.brim_volume_l
    back = volume_at(table, height_at(table, volume)).value
    assert back == pytest.approx(volume, abs=1e-7 * table.brim_volume_l + 1e-7)


@given(STEPS, st.floats(0.0, 1.0))
def test_curve_is_that_of_scipy(steps: list[tuple[float, float]], share: float) -> None:
    """scipy's PchipInterpolator, the same rule of Fritsch & Butland inside the table."""
    rows = [(0.0, 0.0), *_summed(steps)]
    table = fill_table(rows)
    height = share * table.brim_height_cm
    expected = float(PchipInterpolator(*zip(*rows, strict=True))(height))
    assert volume_at(table, height).value == pytest.approx(expected, abs=1e-9, rel=1e-9)


@pytest.mark.parametrize("shape", VesselShape)
def test_table_of_a_modelled_vessel_has_its_volumes_and_surfaces(shape: VesselShape) -> None:
    outline = (shape, 16.0, 4.0)
    brim_cm = brim_height_cm(*outline)
    heights = [brim_cm * step / 24.0 for step in range(1, 25)]
    table = fill_table([(height, volume_to_height_l(*outline, height)) for height in heights])
    for volume in (0.5, 1.3, 2.7):
        height = height_at(table, volume)
        assert volume_to_height_l(*outline, height) == pytest.approx(volume, rel=2e-3)
        surface = surface_area_cm2(*outline, volume)
        assert surface_at_cm2(table, volume) == pytest.approx(surface, rel=0.03)
        ratio = surface_to_volume_per_cm(table, volume)
        assert ratio.low < surface / volume / 1000.0 < ratio.high
        assert ratio.sources


def test_one_mark_is_a_straight_jar() -> None:
    table = fill_table([(20.0, 4.0)])
    assert volume_at(table, 5.0).value == pytest.approx(1.0)
    assert surface_at_cm2(table, 2.0) == pytest.approx(200.0)


def test_rows_may_come_in_any_order_and_twice() -> None:
    assert fill_table([(10.0, 2.0), (0.0, 0.0), (5.0, 1.0), (5.0, 1.0)]) == fill_table(
        [(5.0, 1.0), (10.0, 2.0)]
    )


@pytest.mark.parametrize(
    ("rows", "field", "reason"),
    [
        ([], "rows", "too_few"),
        ([(0.0, 0.0)], "rows", "too_few"),
        ([(float(n), float(n)) for n in range(1, 202)], "rows", "too_many"),
        ([(5.0, 1.0), (10.0, 1.0)], "rows", "not_rising"),
        ([(5.0, 1.0), (5.0, 2.0)], "rows", "not_rising"),
        ([(5.0, 2.0), (10.0, 1.0)], "rows", "not_rising"),
        ([(301.0, 2.0)], "height_cm", "out_of_range"),
        ([(5.0, math.nan)], "volume_l", "out_of_range"),
    ],
)
def test_tables_that_fit_no_vessel_are_refused(rows, field: str, reason: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        fill_table(rows)
    assert (refusal.value.field, refusal.value.reason) == (field, reason)


@pytest.mark.parametrize(
    ("function", "value", "field"),
    [
        (volume_at, -0.1, "height_cm"),
        (volume_at, math.nan, "height_cm"),
        (height_at, 4.1, "volume_l"),
        (surface_at_cm2, -0.1, "volume_l"),
        (surface_to_volume_per_cm, 0.0, "volume_l"),
    ],
)
def test_outside_the_table_nothing_is_told(function, value: float, field: str) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        function(fill_table([(20.0, 4.0)]), value)
    assert refusal.value.field == field
