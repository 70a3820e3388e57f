"""What a curve's picture consists of, ready to draw: numbers and words, no chemistry."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class PlotPoint:
    """One reading: day of the batch, value, standard uncertainty and its words."""

    day: float
    value: float
    sd: float
    text: str
    is_rough: bool = False  # read off a strip: another symbol
    is_doubted: bool = False  # does not fit the others: hollow


@dataclass(frozen=True, slots=True, kw_only=True)
class PlotLine:
    """A level to watch, with its words above it at the left or the right."""

    value: float
    label: str
    is_right: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class PlotForecast:
    """The course to expect: ``outer`` is the 80 % band, ``inner`` the 50 % band."""

    days: tuple[float, ...]
    outer_low: tuple[float, ...]
    outer_high: tuple[float, ...]
    inner_low: tuple[float, ...]
    inner_high: tuple[float, ...]
    median: tuple[float, ...]

    def at(self, day: float) -> tuple[float, float, float] | None:
        """Return low, median and high of the 80 % band at ``day``; None outside the curve."""
        if not self.days[0] <= day <= self.days[-1]:
            return None
        low, mid, high = (
            _between(self.days, curve, day)
            for curve in (self.outer_low, self.median, self.outer_high)
        )
        return low, mid, high


@dataclass(frozen=True, slots=True, kw_only=True)
class PlotCourse:
    """One line over the days."""

    days: tuple[float, ...]
    values: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PlotSpec:
    """Everything one plot shows. Days count from the start of the batch.

    ``window`` are the median days at which it opens and closes, ``window_bounds`` the
    days between which each of the two is likely to lie.
    """

    day_range: tuple[float, float]
    value_range: tuple[float, float]
    value_digits: int
    tick_digits: int
    unit_text: str
    forecast: PlotForecast | None = None
    imagined: PlotCourse | None = None  # how it would go otherwise
    points: tuple[PlotPoint, ...] = ()
    window: tuple[float, float] | None = None
    window_bounds: tuple[float, ...] = ()
    band: tuple[float, float] | None = None
    band_label: str = ""
    lines: tuple[PlotLine, ...] = ()
    deadline: tuple[float, float] | None = None
    now_day: float | None = None
    now_label: str = ""


def _between(days: tuple[float, ...], curve: tuple[float, ...], day: float) -> float:
    for n in range(1, len(days)):
        if day <= days[n]:
            share = (day - days[n - 1]) / (days[n] - days[n - 1])
            return curve[n - 1] + share * (curve[n] - curve[n - 1])
    return curve[-1]
