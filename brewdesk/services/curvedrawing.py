"""A batch's curve as a drawing for paper: readings with their uncertainty, bands, the limit."""

from __future__ import annotations

import math
from collections.abc import Sequence

from brewdesk.services.curveview import CurveView
from brewdesk.services.paperdoc import Dot, Drawing, Label, Stroke
from brewdesk.services.wording.amounts import number_text

WIDTH, HEIGHT = 520.0, 190.0
_LEFT, _RIGHT, _TOP, _BOTTOM = 30.0, 8.0, 8.0, 26.0
_LEAST_DAYS = 7.0
_MOST_TICKS = 12


class _Frame:
    """Turns days and pH into points of the drawing."""

    def __init__(self, last_day: float, low: float, high: float, first_day: float) -> None:
        self.first_day, self.last_day, self.low, self.high = first_day, last_day, low, high

    def at(self, day: float, ph: float) -> tuple[float, float]:
        across = (day - self.first_day) / (self.last_day - self.first_day)
        up = (min(max(ph, self.low), self.high) - self.low) / (self.high - self.low)
        return (
            _LEFT + across * (WIDTH - _LEFT - _RIGHT),
            HEIGHT - _BOTTOM - up * (HEIGHT - _TOP - _BOTTOM),
        )


def curve_drawing(
    view: CurveView, *, day_label: str, ph_label: str, limit_label: str, is_over: bool
) -> Drawing:
    """Draw a curve. Of a batch that is over only what was read is shown.

    Parameters
    ----------
    view
        The batch's readings and forecast.
    day_label, ph_label, limit_label
        The words at the axes and at the line of the pH that has to be reached.
    is_over
        Whether the batch has ended.
    """
    forecast = None if is_over else view.forecast
    frame = _frame(view, is_over=is_over)
    shapes: list[Stroke | Dot | Label] = []
    if forecast is not None:
        days = [day for day in forecast.days if day <= frame.last_day]
        low, middle, high = (forecast.ph[q][: len(days)] for q in (0.1, 0.5, 0.9))
        upper = [frame.at(day, ph) for day, ph in zip(days, high, strict=True)]
        lower = [frame.at(day, ph) for day, ph in zip(days, low, strict=True)]
        shapes.append(Stroke(points=(*upper, *lower[::-1]), ink="band", is_filled=True))
    shapes += _axes(frame, day_label, ph_label)
    limit = frame.at(frame.first_day, view.safe_ph), frame.at(frame.last_day, view.safe_ph)
    shapes.append(Stroke(points=limit, ink="danger", width=0.8, is_dashed=True))
    x, y = limit[1]
    shapes.append(Label(x=x, y=y - 3, text=limit_label, anchor="end", ink="danger", size=7.5))
    if forecast is not None:
        line = tuple(frame.at(day, ph) for day, ph in zip(days, middle, strict=True))
        shapes.append(Stroke(points=line, ink="accent", width=0.9, is_dashed=True))
    for point in view.points:
        ends = (
            frame.at(point.day, point.value - point.sd),
            frame.at(point.day, point.value + point.sd),
        )
        shapes.append(Stroke(points=ends, ink="accent", width=0.8))
    for point in view.points:
        x, y = frame.at(point.day, point.value)
        shapes.append(Dot(x=x, y=y, radius=2.4, ink="accent", is_hollow=point.is_suspect))
    return Drawing(width=WIDTH, height=HEIGHT, shapes=tuple(shapes), words=view.text_summary)


def _frame(view: CurveView, *, is_over: bool) -> _Frame:
    days = [point.day for point in view.points]
    last = max([_LEAST_DAYS, *days, 0.0 if is_over else view.now_day])
    if view.forecast is not None and not is_over:
        last = min(view.forecast.days[-1], max(last + 4.0, 14.0))
    values: Sequence[float] = [point.value for point in view.points] or [view.safe_ph]
    low = math.floor(min(*values, view.least_ph, 2.5) * 2) / 2
    high = math.ceil(max(*values, view.safe_ph + 0.3) * 2) / 2
    return _Frame(max(last, 1.0), low, high, min([0.0, *days]))


def _axes(frame: _Frame, day_label: str, ph_label: str) -> list[Stroke | Dot | Label]:
    shapes: list[Stroke | Dot | Label] = []
    for step in range(round((frame.high - frame.low) * 2) + 1):
        ph = frame.low + step / 2
        left, right = frame.at(frame.first_day, ph), frame.at(frame.last_day, ph)
        ink, width = ("line", 0.6) if step == 0 else ("shade", 0.5)
        shapes.append(Stroke(points=(left, right), ink=ink, width=width))  # type: ignore[arg-type]  # one of two inks
        text = number_text(ph, 1)
        shapes.append(Label(x=left[0] - 4, y=left[1] + 2.6, text=text, anchor="end", size=7.5))
    span = frame.last_day - frame.first_day
    every = next(n for n in (1, 2, 5, 7, 14, 28, 56, 364, 10**6) if span / n <= _MOST_TICKS)
    for day in range(math.ceil(frame.first_day / every) * every, int(frame.last_day) + 1, every):
        x, y = frame.at(day, frame.low)
        shapes.append(Stroke(points=((x, y), (x, y + 3)), ink="line"))
        shapes.append(Label(x=x, y=y + 11, text=str(day), anchor="middle", size=7.5))
    shapes.append(Label(x=WIDTH - _RIGHT, y=HEIGHT - 4, text=day_label, anchor="end", size=7.5))
    shapes.append(Label(x=2, y=HEIGHT - 4, text=ph_label, size=7.5))
    return shapes
