"""The inside of a vessel: its outline, and from it heights, surfaces and volumes.

A vessel is described by what a maker can measure: the shape, the widest inner diameter
and the volume to the brim. The rest of the outline follows from fixed proportions, which
are an assumption (no source); the volume to the brim is always met exactly.
"""

from __future__ import annotations

import itertools
import math

from culturecore.errors import ImpossibleInput
from culturecore.stages import VesselShape

# Outlines from foot to rim as (share of the brim height, share of the widest radius).
# vessel_proportions: drawn from ordinary jars; assumption, no source.
_OUTLINES: dict[VesselShape, tuple[tuple[float, float], ...]] = {
    VesselShape.CYLINDER: ((0.0, 1.0), (1.0, 1.0)),
    VesselShape.SHOULDERED: ((0.0, 1.0), (0.70, 1.0), (0.88, 0.5), (1.0, 0.5)),
    VesselShape.TAPERED: ((0.0, 0.75), (1.0, 1.0)),
}
# exclusive below, so that no quotient runs out of numbers; no vessel is that small
_MIN_DIAMETER_CM, _MAX_DIAMETER_CM = 0.01, 200.0
_MIN_VOLUME_L, _MAX_VOLUME_L = 1e-6, 1000.0
_CM3_PER_L = 1000.0


def profile(
    shape: VesselShape, diameter_cm: float, brim_volume_l: float
) -> tuple[tuple[float, float], ...]:
    """Return the inner outline from foot to rim as (height_cm, radius_cm) points.

    Straight lines between the points; turned about the upright axis they enclose
    exactly ``brim_volume_l`` (geometry: stacked frusta).

    Parameters
    ----------
    shape : VesselShape
        How the inside is modelled.
    diameter_cm : float
        Widest inner diameter [cm], above 0.01 and up to 200.
    brim_volume_l : float
        Volume to the brim [L], above 1e-6 and up to 1000.

    Raises
    ------
    ImpossibleInput
        For a diameter or volume outside those ranges.
    """
    _check("diameter_cm", diameter_cm, _MIN_DIAMETER_CM, _MAX_DIAMETER_CM, "cm")
    _check("brim_volume_l", brim_volume_l, _MIN_VOLUME_L, _MAX_VOLUME_L, "L")
    radius_cm = diameter_cm / 2.0
    outline = _OUTLINES[shape]
    # volume of the outline with unit height and radius, times pi r² H, is the brim volume
    share = sum(_frustum(h1 - h0, r0, r1) for (h0, r0), (h1, r1) in _pairs(outline))
    height_cm = brim_volume_l * _CM3_PER_L / (share * radius_cm**2)
    return tuple((height * height_cm, radius * radius_cm) for height, radius in outline)


def brim_height_cm(shape: VesselShape, diameter_cm: float, brim_volume_l: float) -> float:
    """Return the inner height from foot to brim [cm]. Raises as :func:`profile` does."""
    return profile(shape, diameter_cm, brim_volume_l)[-1][0]


def liquid_height_cm(
    shape: VesselShape, diameter_cm: float, brim_volume_l: float, volume_l: float
) -> float:
    """Return how high ``volume_l`` of liquid stands above the foot [cm].

    Raises
    ------
    ImpossibleInput
        As :func:`profile`, and for a volume below 0 or above the brim.
    """
    return _level(shape, diameter_cm, brim_volume_l, volume_l)[0]


def surface_area_cm2(
    shape: VesselShape, diameter_cm: float, brim_volume_l: float, volume_l: float
) -> float:
    """Return the area of the open liquid surface [cm²]. Raises as :func:`liquid_height_cm`."""
    return math.pi * _level(shape, diameter_cm, brim_volume_l, volume_l)[1] ** 2


def surface_to_volume_per_cm(
    shape: VesselShape, diameter_cm: float, brim_volume_l: float, volume_l: float
) -> float:
    """Return surface over volume [1/cm], what the air can reach of each part of the liquid.

    The idea is that of cvetkovic_2008.

    Raises
    ------
    ImpossibleInput
        As :func:`liquid_height_cm`, and for an empty vessel.
    """
    _check("volume_l", volume_l, _MIN_VOLUME_L, brim_volume_l, "L")
    surface_cm2 = surface_area_cm2(shape, diameter_cm, brim_volume_l, volume_l)
    return surface_cm2 / (volume_l * _CM3_PER_L)


def volume_to_height_l(
    shape: VesselShape, diameter_cm: float, brim_volume_l: float, height_cm: float
) -> float:
    """Return the volume [L] that stands ``height_cm`` above the foot.

    Raises
    ------
    ImpossibleInput
        As :func:`profile`, and for a height below 0 or above the brim.
    """
    outline = profile(shape, diameter_cm, brim_volume_l)
    if not 0.0 <= height_cm <= outline[-1][0] * (1.0 + 1e-12):
        raise ImpossibleInput("height_cm", height_cm, low=0.0, high=outline[-1][0], unit="cm")
    volume_cm3 = 0.0
    for (h0, r0), (h1, r1) in _pairs(outline):
        top_cm = min(height_cm, h1)
        if top_cm > h0:
            r_top = r0 + (r1 - r0) * (top_cm - h0) / (h1 - h0)
            volume_cm3 += _frustum(top_cm - h0, r0, r_top)
    return volume_cm3 / _CM3_PER_L


def _level(
    shape: VesselShape, diameter_cm: float, brim_volume_l: float, volume_l: float
) -> tuple[float, float]:
    """Return (height, radius) of the liquid surface in cm."""
    outline = profile(shape, diameter_cm, brim_volume_l)
    if not 0.0 <= volume_l <= brim_volume_l:
        raise ImpossibleInput("volume_l", volume_l, low=0.0, high=brim_volume_l, unit="L")
    left_cm3 = volume_l * _CM3_PER_L
    sections = _pairs(outline)
    for (h0, r0), (h1, r1) in sections[:-1]:
        section_cm3 = _frustum(h1 - h0, r0, r1)
        if left_cm3 <= section_cm3:
            break
        left_cm3 -= section_cm3
    else:
        (h0, r0), (h1, r1) = sections[-1]
    # rounding may leave a hair more than the section holds
    rise_cm = min(_rise(left_cm3, r0, (r1 - r0) / (h1 - h0)), h1 - h0)
    return h0 + rise_cm, r0 + (r1 - r0) * rise_cm / (h1 - h0)


def _rise(volume_cm3: float, radius_cm: float, slope: float) -> float:
    """Return the height that a volume fills of a frustum starting at ``radius_cm``."""
    if abs(slope) < 1e-9:
        return volume_cm3 / (math.pi * radius_cm**2)
    # the cube is at least that of the smaller end; rounding may leave it a hair below zero
    cube = max(3.0 * slope * volume_cm3 / math.pi + radius_cm**3, 0.0)
    return max((math.cbrt(cube) - radius_cm) / slope, 0.0)


def _frustum(height: float, radius_low: float, radius_high: float) -> float:
    return math.pi * height * (radius_low**2 + radius_low * radius_high + radius_high**2) / 3.0


def _pairs(
    outline: tuple[tuple[float, float], ...],
) -> tuple[tuple[tuple[float, float], tuple[float, float]], ...]:
    return tuple(itertools.pairwise(outline))


def _check(field: str, value: float, above: float, up_to: float, unit: str) -> None:
    if not above < value <= up_to:  # NaN fails too
        raise ImpossibleInput(field, value, low=above, high=up_to, unit=unit)
