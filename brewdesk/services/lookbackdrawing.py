"""A look back's dots as a drawing for paper."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from brewdesk.services.paperdoc import Dot, Drawing, Label, Stroke
from brewdesk.services.wording.amounts import number_text

WIDTH = 520.0
_LEFT, _RIGHT, _ROW, _FOOT, _TOP = 170.0, 12.0, 26.0, 24.0, 4.0
_RADIUS = 2.6
_TICKS_DAYS = (1, 2, 5, 7, 14, 28, 56, 91, 182)
_MOST_TICKS = 12
_MOST_LEVELS = 3
_NAME_LETTERS, _ABOUT_LETTERS = 30, 34


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnGroup:
    """One row: its names, its batches as (days, is open), median and band."""

    name: str
    about: str
    dots: tuple[tuple[float, bool], ...]
    median: float | None
    band: tuple[float, float] | None


def dots_drawing(groups: Sequence[DrawnGroup], *, day_label: str, words: str) -> Drawing:
    """Draw a row of dots for each group; ``words`` say the same."""
    longest = max((days for group in groups for days, _ in group.dots), default=14.0)
    last_day = max(longest * 1.06, 7.0)

    def x_of(days: float) -> float:
        return _LEFT + min(days / last_day, 1.0) * (WIDTH - _LEFT - _RIGHT)

    bottom = _TOP + len(groups) * _ROW
    shapes: list[Stroke | Dot | Label] = []
    step = next((one for one in _TICKS_DAYS if last_day / one <= _MOST_TICKS), _TICKS_DAYS[-1])
    for day in range(0, int(last_day) + 1, step):
        x = x_of(float(day))
        shapes.append(Stroke(points=((x, _TOP), (x, bottom)), ink="line", width=0.3))
        shapes.append(Label(x=x, y=bottom + 9.0, text=number_text(float(day), 0), anchor="middle"))
    shapes.append(Label(x=WIDTH - _RIGHT, y=bottom + 19.0, text=day_label, anchor="end"))
    for number, group in enumerate(groups):
        shapes += _row(group, _TOP + (number + 0.5) * _ROW, x_of, last_day)
    return Drawing(width=WIDTH, height=bottom + _FOOT, shapes=tuple(shapes), words=words)


def _row(
    group: DrawnGroup, middle: float, x_of: Callable[[float], float], last_day: float
) -> list[Stroke | Dot | Label]:
    half = _ROW / 2.0 - 3.0
    shapes: list[Stroke | Dot | Label] = []
    if group.band is not None:
        left, right = x_of(group.band[0]), x_of(min(group.band[1], last_day))
        corners = (
            (left, middle - half),
            (right, middle - half),
            (right, middle + half),
            (left, middle + half),
        )
        shapes.append(Stroke(points=corners, ink="band", is_filled=True))
    if group.median is not None:
        x = x_of(group.median)
        line = ((x, middle - half), (x, middle + half))
        shapes.append(Stroke(points=line, ink="ink", width=1.4))
    shapes.append(
        Label(x=0.0, y=middle - 2.0, text=_cut(group.name, _NAME_LETTERS), ink="ink", size=9.0)
    )
    shapes.append(Label(x=0.0, y=middle + 8.0, text=_cut(group.about, _ABOUT_LETTERS), size=7.5))
    ends: list[float] = []
    for days, is_open in sorted(group.dots):
        x = x_of(days)
        level = next((n for n, end in enumerate(ends) if x - end >= 2 * _RADIUS), len(ends))
        level = min(level, _MOST_LEVELS - 1)
        if level == len(ends):
            ends.append(x)
        else:
            ends[level] = x
        shift = (level + 1) // 2 * 2 * _RADIUS * (1 if level % 2 else -1)
        shapes.append(Dot(x=x, y=middle + shift, radius=_RADIUS, ink="accent", is_hollow=is_open))
    return shapes


def _cut(text: str, letters: int) -> str:
    return text if len(text) <= letters else text[: letters - 1] + "…"
