"""A vessel that was measured instead of modelled: marks or heights, and their volumes.

Water poured in by the measured litre gives a table; between its rows the volume follows a
smooth curve that never falls (fritsch_carlson_1980). Its slope is the open surface.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate
from culturecore.rootfinding import root_of_rising

MOST_ROWS: Final = 200
MAX_HEIGHT_CM: Final = 300.0
MAX_VOLUME_L: Final = 1000.0
LEAST_VOLUME_L: Final = 1e-6
READING_SD_CM: Final = 0.1  # of a ruler at a curved surface; assumption
JUG_SD_SHARE: Final = 0.01  # of the measuring jug; assumption
Z_80: Final = 1.2816
_CM3_PER_L = 1000.0


@dataclass(frozen=True, slots=True)
class FillTable:
    """Rows of (height_cm, volume_l), rising from (0, 0) to the brim; see :func:`fill_table`.

    Marks of no known height may stand for heights, in any even unit; then only volumes
    come back, no surfaces.
    """

    rows: tuple[tuple[float, float], ...]
    slopes: tuple[float, ...]  # L per cm at each row
    sources: tuple[str, ...] = ("fritsch_carlson_1980",)

    @property
    def brim_height_cm(self) -> float:
        """Height of the last row."""
        return self.rows[-1][0]

    @property
    def brim_volume_l(self) -> float:
        """Volume of the last row."""
        return self.rows[-1][1]


def fill_table(rows: Sequence[tuple[float, float]]) -> FillTable:
    """Return a fill table from measured (height_cm, volume_l) rows.

    Parameters
    ----------
    rows : sequence of (float, float)
        One to 199 rows in any order; (0, 0) is added if it is missing. Heights up to
        300 cm, volumes up to 1000 L.

    Raises
    ------
    ImpossibleInput
        ``reason`` "too_few", "too_many" or "not_rising" when a higher mark does not hold
        more; or a value out of range.
    """
    for height_cm, volume_l in rows:
        _check("height_cm", height_cm, 0.0, MAX_HEIGHT_CM, "cm")
        _check("volume_l", volume_l, 0.0, MAX_VOLUME_L, "L")
    kept = sorted({(0.0, 0.0), *((float(h), float(v)) for h, v in rows)})
    if len(kept) < 2:
        raise ImpossibleInput("rows", len(kept), low=2, reason="too_few")
    if len(kept) > MOST_ROWS:
        raise ImpossibleInput("rows", len(kept), high=MOST_ROWS, reason="too_many")
    for (low_cm, low_l), (high_cm, high_l) in itertools.pairwise(kept):
        # a hair apart would make a slope without bounds
        if high_cm - low_cm < 1e-3 or high_l - low_l < 1e-6:
            raise ImpossibleInput("rows", high_l, low=low_l, unit="L", reason="not_rising")
    return FillTable(tuple(kept), _slopes(kept))


def volume_at(table: FillTable, height_cm: float) -> Estimate:
    """Return the volume [L] up to a height, 80 % bounds.

    Raises
    ------
    ImpossibleInput
        Below 0 or above the last row.
    """
    _check("height_cm", height_cm, 0.0, table.brim_height_cm, "cm")
    volume_l, slope = _at(table, height_cm)
    sd_l = math.hypot(READING_SD_CM * slope, JUG_SD_SHARE * volume_l)
    return Estimate(
        volume_l,
        max(volume_l - Z_80 * sd_l, 0.0),
        volume_l + Z_80 * sd_l,
        sources=table.sources,
    )


def height_at(table: FillTable, volume_l: float) -> float:
    """Return the height [cm] that a volume stands at.

    Raises
    ------
    ImpossibleInput
        Below 0 or above the brim.
    """
    _check("volume_l", volume_l, 0.0, table.brim_volume_l, "L")
    return root_of_rising(
        lambda height_cm: _at(table, height_cm)[0] - volume_l,
        0.0,
        table.brim_height_cm,
        tolerance=1e-10,
    )


def surface_at_cm2(table: FillTable, volume_l: float) -> float:
    """Return the open surface [cm²] at a volume: how fast the volume grows with height.

    Raises as :func:`height_at` does.
    """
    return _CM3_PER_L * _at(table, height_at(table, volume_l))[1]


def surface_to_volume_per_cm(table: FillTable, volume_l: float) -> Estimate:
    """Return surface over volume [1/cm], 80 % bounds (cvetkovic_2008 for the idea).

    Raises
    ------
    ImpossibleInput
        As :func:`height_at`, and for an empty vessel.

    Notes
    -----
    A surface from the slope of a table is worth about a tenth.
    """
    _check("volume_l", volume_l, LEAST_VOLUME_L, table.brim_volume_l, "L")
    ratio = surface_at_cm2(table, volume_l) / (volume_l * _CM3_PER_L)
    return Estimate(ratio, 0.9 * ratio, 1.1 * ratio, sources=(*table.sources, "cvetkovic_2008"))


def _slopes(rows: list[tuple[float, float]]) -> tuple[float, ...]:
    """Return slopes at the rows that keep the curve from ever falling.

    fritsch_carlson_1980 in the harmonic form of Butland: inside, the weighted harmonic
    mean of the two neighbours; at the ends a parabola, cut off at three times the chord.
    """
    steps = [b[0] - a[0] for a, b in itertools.pairwise(rows)]
    chords = [(b[1] - a[1]) / (b[0] - a[0]) for a, b in itertools.pairwise(rows)]
    if len(chords) == 1:
        return (chords[0], chords[0])
    inner = []
    for index in range(1, len(chords)):
        before, after = steps[index - 1], steps[index]
        near, far = 2.0 * after + before, after + 2.0 * before
        inner.append((near + far) / (near / chords[index - 1] + far / chords[index]))
    first = _end_slope(steps[0], steps[1], chords[0], chords[1])
    last = _end_slope(steps[-1], steps[-2], chords[-1], chords[-2])
    return (first, *inner, last)


def _end_slope(step: float, next_step: float, chord: float, next_chord: float) -> float:
    parabola = ((2.0 * step + next_step) * chord - step * next_chord) / (step + next_step)
    return min(max(parabola, 0.0), 3.0 * chord)


def _at(table: FillTable, height_cm: float) -> tuple[float, float]:
    """Return (volume, slope) at a height by the cubic between two rows."""
    rows = table.rows
    index = min(sum(row[0] <= height_cm for row in rows), len(rows) - 1)
    (low_cm, low_l), (high_cm, high_l) = rows[index - 1], rows[index]
    low_slope, high_slope = table.slopes[index - 1], table.slopes[index]
    step, chord = high_cm - low_cm, (high_l - low_l) / (high_cm - low_cm)
    bend = (low_slope + high_slope - 2.0 * chord) / step**2
    curve = (3.0 * chord - 2.0 * low_slope - high_slope) / step
    up = height_cm - low_cm
    volume = low_l + up * (low_slope + up * (curve + up * bend))
    slope = low_slope + up * (2.0 * curve + 3.0 * up * bend)
    # rounding may leave a hair below a flat spot
    return min(max(volume, low_l), high_l), max(slope, 0.0)


def _check(field: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field, value, low=low, high=high, unit=unit)
