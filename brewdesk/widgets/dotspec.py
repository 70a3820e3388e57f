"""What a dot plot shows: rows of dots, each with its median and band."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class PlotDot:
    """One dot: where it stands, whether that is only "longer than", what it is in words."""

    key: int
    days: float
    is_open: bool = False
    words: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlotRow:
    """One group. ``low`` to ``high`` is where its median lies; the guess is for the next one."""

    name: str
    about: str
    dots: tuple[PlotDot, ...]
    median: float | None = None
    low: float | None = None
    high: float | None = None  # may be infinite
    guess: float | None = None
