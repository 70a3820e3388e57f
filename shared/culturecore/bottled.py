"""Closed bottles as they were filled, where they stand, and what was seen of them since."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass, field
from typing import Final

from culturecore import co2
from culturecore.bottle import Filling
from culturecore.errors import ImpossibleInput
from culturecore.fizzpace import Pace
from culturecore.stages import CheckKind, Feel, Opened


@dataclass(frozen=True, slots=True, kw_only=True)
class WarmStep:
    """From a day on the bottles stood at a temperature that was read; None: not known."""

    day: float
    temperature_c: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Check:
    """A look at the bottles on a day after filling.

    FEEL has ``feel``, GAUGE ``gauge_bar`` and ``sd_bar``, OPENED ``opened``; VENTED needs
    none. ``temperature_c`` of the bottle, None for that of its place. Other kinds say nothing.
    """

    day: float
    kind: CheckKind
    feel: Feel | None = None
    gauge_bar: float | None = None
    sd_bar: float = 0.2
    opened: Opened | None = None
    temperature_c: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Bottled:
    """Bottles of one kind as they were filled, and what happened to them since.

    ``sugar_low/high_g_per_l`` bound all the sugar that can ferment. ``warmest_c`` is how
    warm the closed bottles may get. ``steps`` are the temperatures that were read. From
    ``chilled_day`` on they stand at ``cold_c``.
    """

    filling: Filling
    ceiling_bar: float
    sugar_low_g_per_l: float
    sugar_high_g_per_l: float
    open_jar_c: float = 22.0
    place_temperature_c: float = 22.0
    warmest_c: float = 30.0
    steps: tuple[WarmStep, ...] = field(default=())
    checks: tuple[Check, ...] = field(default=())
    chilled_day: float | None = None
    cold_c: float = 4.0
    pace: Pace = field(default_factory=Pace)

    def read_c(self, day: float) -> float | None:
        """The temperature around the bottles on a day; None where nobody read it."""
        if self.chilled_day is not None and day >= self.chilled_day:
            return self.cold_c
        place = bisect_right([step.day for step in self.steps], day)
        return self.steps[place - 1].temperature_c if place else None

    def likely_c(self, day: float) -> float:
        """The temperature on a day: as read, else the usual one of the place."""
        read_c = self.read_c(day)
        return self.place_temperature_c if read_c is None else read_c

    def warmest_by(self, day: float) -> float:
        """How warm the bottles may be on a day: in the cold no warmer than that."""
        if self.chilled_day is not None and day >= self.chilled_day:
            return self.cold_c
        return max(self.warmest_c, self.likely_c(day))


BOTTLED_RANGES: Final[dict[str, tuple[float, float, str]]] = {
    "ceiling_bar": (0.1, co2.MODEL_TOP_BAR, "bar"),
    "sugar_low_g_per_l": (0.0, 300.0, "g/L"),
    "open_jar_c": (0.0, 40.0, "°C"),
    "place_temperature_c": (0.0, 40.0, "°C"),
    "warmest_c": (0.0, 40.0, "°C"),
    "cold_c": (0.0, 40.0, "°C"),
}


def check_bottled(bottled: Bottled, horizon_days: float) -> None:
    """Refuse bottles, checks and temperatures that cannot be.

    Raises
    ------
    ImpossibleInput
        Outside BOTTLED_RANGES, for sugar bounds in the wrong order, for a day before filling
        or past the horizon, for a check that lacks what its kind needs.
    """
    for name, (low, high, unit) in BOTTLED_RANGES.items():
        _check(name, getattr(bottled, name), low, high, unit)
    _check(
        "sugar_high_g_per_l", bottled.sugar_high_g_per_l, bottled.sugar_low_g_per_l, 300.0, "g/L"
    )
    _check("horizon_days", horizon_days, 1.0, 400.0, "d")
    if bottled.chilled_day is not None:
        _check("chilled_day", bottled.chilled_day, 0.0, horizon_days, "d")
    for step in bottled.steps:
        _check("day", step.day, 0.0, horizon_days, "d")
        if step.temperature_c is not None:
            _check("temperature_c", step.temperature_c, 0.0, 40.0, "°C")
    for check in bottled.checks:
        _check_one(check, horizon_days)


def _check_one(check: Check, horizon_days: float) -> None:
    _check("day", check.day, 0.0, horizon_days, "d")
    if check.temperature_c is not None:
        _check("temperature_c", check.temperature_c, 0.0, 40.0, "°C")
    needed = {
        CheckKind.FEEL: ("feel", check.feel),
        CheckKind.GAUGE: ("gauge_bar", check.gauge_bar),
        CheckKind.OPENED: ("opened", check.opened),
    }.get(check.kind)
    if needed is not None and needed[1] is None:
        raise ImpossibleInput(needed[0], None, reason="empty")
    if check.gauge_bar is not None:
        _check("gauge_bar", check.gauge_bar, -1.0, 30.0, "bar")
        _check("sd_bar", check.sd_bar, 0.0, 5.0, "bar")


def _check(field_name: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:  # NaN fails too
        raise ImpossibleInput(field_name, value, low=low, high=high, unit=unit)
