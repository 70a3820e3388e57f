"""The curves and intervals of a trial as drawings for paper: levels told by dashes and marks."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Sequence

from brewdesk.services.paperdoc import Dot, Drawing, Ink, Label, Stroke
from brewdesk.services.trialcurves import TrialCurves
from brewdesk.services.trialview import Comparison
from brewdesk.services.wording.amounts import number_text

WIDTH, HEIGHT = 520.0, 210.0
_LEFT, _RIGHT, _TOP, _BOTTOM = 30.0, 10.0, 20.0, 26.0
_ROW = 34.0
_MOST_TICKS = 15
_INKS: tuple[Ink, ...] = ("accent", "ink", "muted", "danger", "line", "ink")
_DASHES: tuple[tuple[float, float], ...] = ((0, 0), (6, 3), (1.5, 2), (8, 2), (3, 3), (2, 4))
Shape = Stroke | Dot | Label
Place = Callable[[float, float], tuple[float, float]]


def curves_drawing(
    curves: TrialCurves,
    names: Sequence[str],
    *,
    threshold_ph: float,
    day_label: str,
    ph_label: str,
    threshold_label: str,
    words: str,
) -> Drawing:
    """Draw all jars thinly and the mean of each level thickly.

    ``names`` are of the levels in their order; none while the codes are closed, then each
    jar has its code at its end.
    """
    low, high = curves.ph_range

    def at(day: float, ph: float) -> tuple[float, float]:
        room = _RIGHT if names else _RIGHT + 24.0
        return (
            _LEFT + day / curves.last_day * (WIDTH - _LEFT - room),
            HEIGHT - _BOTTOM - (ph - low) / (high - low) * (HEIGHT - _TOP - _BOTTOM),
        )

    shapes = _axes(curves, at, day_label, ph_label)
    left, right = at(0.0, threshold_ph), at(curves.last_day, threshold_ph)
    shapes.append(Stroke(points=(left, right), ink="ink", width=0.6, is_dashed=True))
    shapes.append(Label(x=right[0], y=right[1] - 3, text=threshold_label, anchor="end", size=7.5))
    for jar in curves.jars:
        arm = jar.arm or 0
        line = [at(point.day, point.value) for point in jar.points]
        shapes += _dashed(line, arm, 0.6 if jar.is_counted else 0.3)
        for x, y in line:
            shapes.append(_mark(x, y, arm, is_hollow=not jar.is_counted))
        if jar.arm is None:
            x, y = line[-1]
            shapes.append(Label(x=x + 4, y=y + 2.5, text=jar.code, size=7.0))
    for arm, mean in curves.means:
        shapes += _dashed([at(day, ph) for day, ph in mean], arm, 2.0)
    x = _LEFT
    for arm, name in enumerate(names):
        shown = name if len(name) <= 24 else f"{name[:23]}…"
        shapes += _dashed([(x, 9.0), (x + 26, 9.0)], arm, 2.0)
        shapes.append(_mark(x + 13, 9.0, arm, is_hollow=False))
        shapes.append(Label(x=x + 31, y=11.8, text=shown, ink="ink", size=8.0))
        x += 31 + 4.6 * len(shown) + 18
    return Drawing(width=WIDTH, height=HEIGHT, shapes=tuple(shapes), words=words)


def effects_drawing(
    comparisons: Sequence[Comparison], titles: Sequence[tuple[str, str, str]], words: str
) -> Drawing:
    """Draw each interval on a line of its own with zero in the middle.

    ``titles`` hold what was compared, and the words of the low and the high end.
    """
    shapes: list[Shape] = []
    middle, half = WIDTH * 0.62, WIDTH * 0.36
    for n, (one, (title, low, high)) in enumerate(zip(comparisons, titles, strict=True)):
        effect = one.effect
        assert effect is not None
        y = n * _ROW + 13.0
        reach = max(abs(effect.low), abs(effect.high)) * 1.15 or 1.0

        def x(value: float, reach: float = reach) -> float:
            return middle + value / reach * half

        shapes.append(Label(x=0, y=y + 3, text=title, ink="ink", size=8.5))
        shapes.append(
            Stroke(points=((middle - half, y), (middle + half, y)), ink="line", width=0.4)
        )
        shapes.append(Stroke(points=((middle, y - 9), (middle, y + 9)), ink="ink", width=0.8))
        shapes.append(
            Stroke(points=((x(effect.low), y), (x(effect.high), y)), ink="accent", width=3)
        )
        shapes.append(Dot(x=x(effect.difference), y=y, radius=3.2, ink="accent"))
        shapes.append(Label(x=middle - half, y=y + 15, text=low, size=7.0))
        shapes.append(Label(x=middle + half, y=y + 15, text=high, anchor="end", size=7.0))
    return Drawing(width=WIDTH, height=_ROW * len(comparisons), shapes=tuple(shapes), words=words)


def _axes(curves: TrialCurves, at: Place, day_label: str, ph_label: str) -> list[Shape]:
    shapes: list[Shape] = []
    low, high = curves.ph_range
    step = 0.1 if high - low < 0.8 else 0.25 if high - low < 1.6 else 0.5
    for n in range(math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9) + 1):
        ph = n * step
        left, right = at(0.0, ph), at(curves.last_day, ph)
        shapes.append(Stroke(points=(left, right), ink="shade", width=0.5))
        digits = 2 if step == 0.25 else 1
        text = number_text(ph, digits)
        shapes.append(Label(x=left[0] - 4, y=left[1] + 2.6, text=text, anchor="end", size=7.5))
    foot = at(0.0, low), at(curves.last_day, low)
    shapes.append(Stroke(points=foot, ink="line"))
    every = next(k for k in (1, 2, 5, 7, 14, 28, 56, 10**6) if curves.last_day / k <= _MOST_TICKS)
    for day in range(0, int(curves.last_day) + 1, every):
        x, y = at(day, low)
        shapes.append(Stroke(points=((x, y), (x, y + 3)), ink="line"))
        shapes.append(Label(x=x, y=y + 11, text=str(day), anchor="middle", size=7.5))
    shapes.append(Label(x=WIDTH - _RIGHT, y=HEIGHT - 3, text=day_label, anchor="end", size=7.5))
    shapes.append(Label(x=2, y=HEIGHT - 3, text=ph_label, size=7.5))
    return shapes


def _dashed(line: Sequence[tuple[float, float]], arm: int, width: float) -> list[Shape]:
    """Cut a line into its level's dashes: paper knows one kind of dashes only."""
    ink = _INKS[arm % len(_INKS)]
    on, off = _DASHES[arm % len(_DASHES)]
    if not on:
        return [Stroke(points=tuple(line), ink=ink, width=width)]
    shapes: list[Shape] = []
    piece: list[tuple[float, float]] = [line[0]]
    is_on, left = True, on
    for (x0, y0), (x1, y1) in itertools.pairwise(line):
        length, done = math.hypot(x1 - x0, y1 - y0), 0.0
        while length - done > left:
            done += left
            point = x0 + (x1 - x0) * done / length, y0 + (y1 - y0) * done / length
            if is_on:
                shapes.append(Stroke(points=(*piece, point), ink=ink, width=width))
            is_on, piece = not is_on, [point]
            left = on if is_on else off
        left -= length - done
        piece.append((x1, y1))
    if is_on and len(piece) > 1:
        shapes.append(Stroke(points=tuple(piece), ink=ink, width=width))
    return shapes


def _mark(x: float, y: float, arm: int, *, is_hollow: bool) -> Shape:
    ink = _INKS[arm % len(_INKS)]
    kind = arm % 4
    if kind == 0 or is_hollow:
        return Dot(x=x, y=y, radius=2.0, ink=ink, is_hollow=is_hollow)
    corners = {
        1: ((-1, -1), (1, -1), (1, 1), (-1, 1)),
        2: ((0, -1.2), (1.1, 0.9), (-1.1, 0.9)),
        3: ((0, -1.4), (1.2, 0), (0, 1.4), (-1.2, 0)),
    }[kind]
    points = tuple((x + 2.1 * a, y + 2.1 * b) for a, b in corners)
    return Stroke(points=points, ink=ink, is_filled=True)
