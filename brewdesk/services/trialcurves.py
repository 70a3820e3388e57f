"""The curves of a trial's jars as plain numbers, for the screen and for paper alike."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass

from brewdesk.services.trialview import TrialPoint, TrialView

_ROOM_PH = 0.15
_LEAST_DAYS = 7.0


@dataclass(frozen=True, slots=True)
class JarCurve:
    """The readings of one jar; ``arm`` counts the arms from 0 and is None while hidden."""

    code: str
    arm: int | None
    points: tuple[TrialPoint, ...]
    is_counted: bool


@dataclass(frozen=True, slots=True)
class TrialCurves:
    """All curves of a trial. ``means`` has a line for each arm of two jars or more."""

    jars: tuple[JarCurve, ...]
    means: tuple[tuple[int, tuple[tuple[float, float], ...]], ...]
    last_day: float
    ph_range: tuple[float, float]


def curves_of(view: TrialView) -> TrialCurves | None:
    """Return the curves of a trial; None while no pH was read."""
    number = {arm.id: n for n, arm in enumerate(view.arms)}
    jars = tuple(
        JarCurve(
            code=jar.jar.code,
            arm=None if jar.arm is None else number[jar.arm.id],
            points=jar.points,
            is_counted=jar.is_counted,
        )
        for jar in view.jars
        if jar.points
    )
    if not jars:
        return None
    values = [point.value for jar in jars for point in jar.points] + [view.threshold_ph]
    means = []
    for n in range(len(view.arms)):
        mine = [jar.points for jar in jars if jar.arm == n and jar.is_counted]
        line = mean_line(mine) if len(mine) > 1 else ()
        if len(line) > 1:
            means.append((n, line))
    return TrialCurves(
        jars=jars,
        means=tuple(means),
        last_day=max(_LEAST_DAYS, math.ceil(max(jar.points[-1].day for jar in jars) + 0.5)),
        ph_range=(
            math.floor((min(values) - _ROOM_PH) * 10) / 10,
            math.ceil((max(values) + _ROOM_PH) * 10) / 10,
        ),
    )


def mean_line(jars: Sequence[Sequence[TrialPoint]]) -> tuple[tuple[float, float], ...]:
    """Return the mean of jars over the days on which all of them were watched."""
    if not jars:
        return ()
    first = max(points[0].day for points in jars)
    last = min(points[-1].day for points in jars)
    days = sorted({p.day for points in jars for p in points if first <= p.day <= last})
    return tuple((day, sum(_at(points, day) for points in jars) / len(jars)) for day in days)


def _at(points: Sequence[TrialPoint], day: float) -> float:
    for before, after in itertools.pairwise(points):
        if day <= after.day:
            span = after.day - before.day
            share = (day - before.day) / span if span > 0 else 1.0
            return before.value + share * (after.value - before.value)
    return points[-1].value
