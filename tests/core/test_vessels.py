"""Vessel geometry: closed forms, there-and-back, refusals."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from culturecore.errors import ImpossibleInput
from culturecore.stages import VesselShape
from culturecore.vessels import (
    brim_height_cm,
    liquid_height_cm,
    profile,
    surface_area_cm2,
    surface_to_volume_per_cm,
    volume_to_height_l,
)

SHAPES = st.sampled_from(VesselShape)
DIAMETERS_CM = st.floats(2.0, 60.0)
BRIMS_L = st.floats(0.1, 100.0)
SHARES = st.floats(0.0, 1.0)


def _outline_volume_l(outline: tuple[tuple[float, float], ...]) -> float:
    """Turn the outline about its axis by thin slices, without the formula under test."""
    total_cm3 = 0.0
    for (h0, r0), (h1, r1) in itertools.pairwise(outline):
        for slice_number in range(2000):
            radius = r0 + (r1 - r0) * (slice_number + 0.5) / 2000
            total_cm3 += math.pi * radius**2 * (h1 - h0) / 2000
    return total_cm3 / 1000.0


@pytest.mark.parametrize("shape", VesselShape)
def test_outline_encloses_the_brim_volume(shape: VesselShape) -> None:
    assert _outline_volume_l(profile(shape, 15.0, 5.0)) == pytest.approx(5.0, rel=1e-6)


@pytest.mark.parametrize("shape", VesselShape)
def test_outline_rises_and_is_as_wide_as_measured(shape: VesselShape) -> None:
    outline = profile(shape, 15.0, 5.0)
    heights = [height for height, _ in outline]
    assert heights[0] == 0.0
    assert heights == sorted(set(heights))
    assert max(radius for _, radius in outline) == pytest.approx(7.5)


def test_straight_jar_is_a_cylinder() -> None:
    height_cm = 4000.0 / (math.pi * 7.5**2)
    args = (VesselShape.CYLINDER, 15.0, 5.0)
    assert liquid_height_cm(*args, 4.0) == pytest.approx(height_cm)
    assert surface_area_cm2(*args, 4.0) == pytest.approx(math.pi * 7.5**2)
    assert surface_to_volume_per_cm(*args, 4.0) == pytest.approx(1.0 / height_cm)
    assert brim_height_cm(*args) == pytest.approx(1.25 * height_cm)


def test_tapered_crock_has_the_widest_surface_at_the_brim() -> None:
    args = (VesselShape.TAPERED, 20.0, 8.0)
    assert surface_area_cm2(*args, 8.0) == pytest.approx(math.pi * 100.0)
    assert surface_area_cm2(*args, 0.0) == pytest.approx(math.pi * 7.5**2)


def test_neck_of_a_bottle_leaves_little_surface() -> None:
    args = (VesselShape.SHOULDERED, 10.0, 1.0)
    assert surface_area_cm2(*args, 1.0) == pytest.approx(surface_area_cm2(*args, 0.5) / 4.0)


@given(shape=SHAPES, diameter_cm=DIAMETERS_CM, brim_l=BRIMS_L, share=SHARES)
def test_height_and_back_is_the_volume(
    shape: VesselShape, diameter_cm: float, brim_l: float, share: float
) -> None:
    volume_l = share * brim_l
    height_cm = liquid_height_cm(shape, diameter_cm, brim_l, volume_l)
    back_l = volume_to_height_l(shape, diameter_cm, brim_l, height_cm)
    assert back_l == pytest.approx(volume_l, rel=1e-9, abs=1e-9 * brim_l)


@given(shape=SHAPES, diameter_cm=DIAMETERS_CM, brim_l=BRIMS_L, shares=st.tuples(SHARES, SHARES))
def test_more_liquid_stands_at_least_as_high(
    shape: VesselShape, diameter_cm: float, brim_l: float, shares: tuple[float, float]
) -> None:
    low, high = (
        liquid_height_cm(shape, diameter_cm, brim_l, share * brim_l) for share in sorted(shares)
    )
    assert 0.0 <= low <= high <= brim_height_cm(shape, diameter_cm, brim_l) * (1 + 1e-12)


@pytest.mark.parametrize(
    ("diameter_cm", "brim_l", "volume_l", "field"),
    [
        (0.0, 5.0, 1.0, "diameter_cm"),
        (-1.0, 5.0, 1.0, "diameter_cm"),
        (201.0, 5.0, 1.0, "diameter_cm"),
        (math.nan, 5.0, 1.0, "diameter_cm"),
        (15.0, 0.0, 0.0, "brim_volume_l"),
        (15.0, math.inf, 1.0, "brim_volume_l"),
        (15.0, 5.0, -0.1, "volume_l"),
        (15.0, 5.0, 5.1, "volume_l"),
        (15.0, 5.0, math.nan, "volume_l"),
    ],
)
def test_impossible_vessels_are_refused(
    diameter_cm: float, brim_l: float, volume_l: float, field: str
) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        liquid_height_cm(VesselShape.TAPERED, diameter_cm, brim_l, volume_l)
    assert refusal.value.field == field


def test_empty_vessel_has_no_surface_to_volume() -> None:
    with pytest.raises(ImpossibleInput):
        surface_to_volume_per_cm(VesselShape.CYLINDER, 15.0, 5.0, 0.0)


@pytest.mark.parametrize("height_cm", [-0.1, 100.0, math.nan])
def test_height_outside_the_vessel_is_refused(height_cm: float) -> None:
    with pytest.raises(ImpossibleInput) as refusal:
        volume_to_height_l(VesselShape.CYLINDER, 15.0, 5.0, height_cm)
    assert refusal.value.field == "height_cm"
