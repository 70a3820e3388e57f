"""What the cells of a logger's file say: times and temperatures as text.

Times come back as seconds since 1970-01-01 on the clock they were written by, with the
offset from UTC where the text names one. Python's `datetime` is not asked: a cell that
cannot be is a code in an error list, never an exception of somebody else's.
"""

from __future__ import annotations

import math
import re
from datetime import date
from enum import Enum

SECONDS_PER_DAY = 86_400
_EPOCH = date(1970, 1, 1).toordinal()
_LEAST_YEAR, _MOST_YEAR = 1970, 2100
_CENTURY = 2000  # two digits of a year: no logger's file is older

_MONTHS = {
    name: number
    for number, name in enumerate(
        ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"), 1
    )
}
_YEAR_FIRST = re.compile(r"(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})", re.ASCII)
_YEAR_LAST = re.compile(r"(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d{2})", re.ASCII)
_MONTH_NAMED = re.compile(r"(\d{1,2})[-/. ]([A-Za-z]{3,9})\.?[-/. ](\d{4}|\d{2})", re.ASCII)
_CLOCK = re.compile(
    r"(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d{1,9})?)?(?:\s*([ap])\.?m\.?)?",
    re.ASCII | re.IGNORECASE,
)
_ZONE = re.compile(r"(?:z|utc|gmt)?(?:([+-])(\d{2}):?(\d{2})?)?", re.ASCII | re.IGNORECASE)
_SPLIT = re.compile(
    r"(?P<date>\d{1,4}[-/. ](?:\d{1,2}|[A-Za-z]{3,9})\.?[-/. ]\d{1,4})"
    r"(?:(?:[T,]\s*|\s+)(?P<clock>\d{1,2}:.*))?",
    re.ASCII,
)
_CLOCK_AND_ZONE = re.compile(
    r"(?P<clock>\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d{1,9})?)?(?:\s*[ap]\.?m\.?)?)"
    r"\s*(?P<zone>(?:z|utc|gmt)?(?:[+-]\d{2}:?(?:\d{2})?)?)",
    re.ASCII | re.IGNORECASE,
)
_NUMBER = re.compile(
    r"([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(?:°|º|deg)?\s*([cf])?", re.IGNORECASE | re.ASCII
)


class DateOrder(Enum):
    """Which of two small numbers in a date comes first."""

    DAY = "day"
    MONTH = "month"


class Degrees(Enum):
    """The scale a temperature is written in."""

    CELSIUS = "celsius"
    FAHRENHEIT = "fahrenheit"


def day_of(text: str, order: DateOrder) -> int | str:
    """Return the days since 1970-01-01 of a date, or the code of what is wrong with it."""
    found = _YEAR_FIRST.fullmatch(text)
    if found is not None:
        year, month, day = (int(part) for part in found.groups())
    elif (found := _YEAR_LAST.fullmatch(text)) is not None:
        one, two, year = (int(part) for part in found.groups())
        day, month = (one, two) if order is DateOrder.DAY else (two, one)
    elif (found := _MONTH_NAMED.fullmatch(text)) is not None:
        name = _MONTHS.get(found[2][:3].lower())
        if name is None:
            return "time_unreadable"
        day, month, year = int(found[1]), name, int(found[3])
    else:
        return "time_unreadable"
    if year < 100:
        year += _CENTURY
    if not _LEAST_YEAR <= year < _MOST_YEAR:
        return "date_impossible"
    try:
        return date(year, month, day).toordinal() - _EPOCH
    except ValueError:
        return "date_impossible"


def clock_of(text: str) -> tuple[int, int | None] | str:
    """Return the second of the day and the offset from UTC [s], or the code of what is wrong.

    The offset is None where the text names no zone. Fractions of a second are cut off.
    """
    found = _CLOCK_AND_ZONE.fullmatch(text)
    if found is None:
        return "time_unreadable"
    clock = _CLOCK.fullmatch(found["clock"])
    if clock is None:
        return "time_unreadable"
    hour, minute, second = int(clock[1]), int(clock[2]), int(clock[3] or 0)
    if clock[4]:
        if not 1 <= hour <= 12:
            return "time_impossible"
        hour = hour % 12 + (12 if clock[4].lower() == "p" else 0)
    is_midnight = (hour, minute, second) == (24, 0, 0)  # the day's end, as ISO 8601 writes it
    if not is_midnight and not (hour < 24 and minute < 60 and second < 60):
        return "time_impossible"
    offset = _offset_of(found["zone"])
    if isinstance(offset, str):
        return offset
    return hour * 3600 + minute * 60 + second, offset


def _offset_of(text: str) -> int | str | None:
    if not text:
        return None
    found = _ZONE.fullmatch(text)
    if found is None:
        return "time_unreadable"
    if found[1] is None:
        return 0
    hours, minutes = int(found[2]), int(found[3] or 0)
    if hours > 14 or minutes > 59:
        return "time_impossible"
    return (hours * 3600 + minutes * 60) * (-1 if found[1] == "-" else 1)


class TimeReader:
    """Reads times cell by cell, and remembers dates and clocks: a day's date comes often."""

    def __init__(self, order: DateOrder) -> None:
        self._order = order
        self._days: dict[str, int | str] = {}
        self._clocks: dict[str, tuple[int, int | None] | str] = {}

    def read(self, text: str) -> tuple[int, int | None] | str:
        """Return seconds on the clock it was written by and the offset from UTC [s] or None.

        A text that is no time gives the code of what is wrong with it.
        """
        found = _SPLIT.fullmatch(text.strip())
        if found is None:
            return "time_unreadable"
        day = self.day(found["date"])
        if isinstance(day, str):
            return day
        if found["clock"] is None:
            return day * SECONDS_PER_DAY, None
        clock = self.clock(found["clock"].strip())
        if isinstance(clock, str):
            return clock
        return day * SECONDS_PER_DAY + clock[0], clock[1]

    def day(self, text: str) -> int | str:
        """Return the days since 1970-01-01 of a date, or the code of what is wrong with it."""
        day = self._days.get(text)
        if day is None:
            day = self._days[text] = day_of(text, self._order)
        return day

    def clock(self, text: str) -> tuple[int, int | None] | str:
        """Return the second of the day and the offset from UTC [s], or what is wrong."""
        clock = self._clocks.get(text)
        if clock is None:
            if len(self._clocks) > 2 * SECONDS_PER_DAY:  # fractions of seconds: no end of them
                self._clocks.clear()
            clock = self._clocks[text] = clock_of(text)
        return clock


def is_clock(text: str) -> bool:
    """Whether a cell is a time of day without a date."""
    return not isinstance(clock_of(text.strip()), str)


def celsius_of(text: str, scale: Degrees, least_c: float, most_c: float) -> float | str:
    """Return a temperature [degC], or the code of what is wrong with the text.

    A point or a comma stands before the decimals. A letter behind the number outweighs
    ``scale``. Digits are never grouped.
    """
    plain = text.strip().replace("\u2212", "-")  # the minus of typesetters
    if not plain:
        return "temperature_missing"
    found = _NUMBER.fullmatch(plain)
    if found is None:
        return _why_no_number(plain)
    value = float(found[1].replace(",", "."))
    letter = (found[2] or "").lower()
    if letter:
        scale = Degrees.FAHRENHEIT if letter == "f" else Degrees.CELSIUS
    celsius = to_celsius(value, scale)
    return celsius if least_c <= celsius <= most_c else "temperature_absurd"


def to_celsius(value: float, scale: Degrees) -> float:
    """Return a temperature in degC."""
    return (value - 32.0) / 1.8 if scale is Degrees.FAHRENHEIT else value


def scale_named(text: str) -> Degrees | None:
    """Return the scale that a column's title or a cell names, if it does."""
    plain = text.casefold().replace("º", "°")
    if re.search(r"fahrenheit|°\s*f\b|\bdeg\.?\s*f\b|[(\[_ ]f[)\]]?\s*$", plain):
        return Degrees.FAHRENHEIT
    if re.search(r"celsius|centigrade|°\s*c\b|\bdeg\.?\s*c\b|[(\[_ ]c[)\]]?\s*$", plain):
        return Degrees.CELSIUS
    return None


def _why_no_number(text: str) -> str:
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        return "temperature_unreadable"
    return "temperature_unreadable" if math.isfinite(value) else "temperature_not_finite"
