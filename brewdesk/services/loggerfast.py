"""Read many regular rows at once. What is not regular is left to be read row by row.

A block qualifies when all of its times have one shape ("2026-11-25 10:00:00", "25.11.2026
10:00", with the same ending) and all of its temperatures are plain numbers. Both readers
give the same answer for such a block; a test compares them.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TYPE_CHECKING

from brewdesk.services.loggertext import DateOrder, Degrees, TimeReader, to_celsius

if TYPE_CHECKING:
    from typing import Any, TypeAlias

    from numpy import bool_, float64, uint8
    from numpy.typing import NDArray

    from brewdesk.services.packedsamples import Instants

    Letters: TypeAlias = NDArray[uint8]
    Floats: TypeAlias = NDArray[float64]
    Truths: TypeAlias = NDArray[bool_]

_SHAPE = re.compile(
    r"(?:(?P<ymd>\d{4}[-/.]\d{2}[-/.]\d{2})|(?P<xxy>\d{2}[-/.]\d{2}[-/.]\d{4}))"
    r"(?P<gap>[T ]|, )(?P<clock>\d{2}:\d{2}(?::\d{2})?)(?P<end>[^APap]*)",
    re.ASCII,
)
_PLAIN = re.compile(r"[0-9.,\-+\n]*", re.ASCII)
_LENGTHS = (0, 31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)


def fast_times(texts: Sequence[str], order: DateOrder) -> tuple[Instants, int | None] | None:
    """Return seconds on the file's clock and the offset all rows name; None if irregular."""
    import numpy as np

    shape = _SHAPE.fullmatch(texts[0])
    if shape is None or len(set(map(len, texts))) != 1:
        return None
    try:
        letters = np.frombuffer("".join(texts).encode("ascii"), dtype=np.uint8)
    except UnicodeEncodeError:
        return None
    table = letters.reshape(len(texts), len(texts[0]))
    named = TimeReader(order).read(texts[0])
    if isinstance(named, str):
        return None
    date = shape["ymd"] or shape["xxy"]
    start = shape.start("clock")
    two = ((0, 4), (5, 7), (8, 10)) if shape["ymd"] else ((6, 10), (3, 5), (0, 2))
    clock = [(start, start + 2), (start + 3, start + 5)]
    if len(shape["clock"]) == 8:
        clock.append((start + 6, start + 8))
    spans = [*two, *clock]
    counted = {column for first, last in spans for column in range(first, last)}
    same = [column for column in range(len(texts[0])) if column not in counted]
    if len(date) != 10 or not bool((table[:, same] == table[0, same]).all()):
        return None
    if order is DateOrder.MONTH and not shape["ymd"]:
        spans[1], spans[2] = spans[2], spans[1]
    numbers = [_number(table, first, last) for first, last in spans]
    if any(number is None for number in numbers):
        return None
    seconds = _seconds(numbers)
    return None if seconds is None else (seconds, named[1])


def fast_celsius(
    texts: Sequence[str], scale: Degrees, least_c: float, most_c: float
) -> Floats | None:
    """Return temperatures [degC]; None if one is no plain number or is absurd."""
    import numpy as np

    joined = "\n".join(texts)
    if _PLAIN.fullmatch(joined) is None:
        return None
    try:
        values = np.array(list(map(float, joined.replace(",", ".").split("\n"))))
    except ValueError:
        return None
    celsius: Floats = to_celsius(values, scale)  # type: ignore[arg-type,assignment]  # elementwise
    within = bool(((celsius >= least_c) & (celsius <= most_c)).all())
    return celsius if within and len(celsius) == len(texts) else None


def _number(table: Letters, first: int, last: int) -> Instants | None:
    import numpy as np

    digits = table[:, first:last].astype(np.int64) - ord("0")
    if not bool(((digits >= 0) & (digits <= 9)).all()):
        return None
    answer: Instants = digits @ (10 ** np.arange(last - first - 1, -1, -1))
    return answer


def _seconds(numbers: Sequence[Any]) -> Instants | None:
    import numpy as np

    year, month, day, hour, minute, *rest = numbers
    second = rest[0] if rest else np.zeros_like(minute)
    if not _all(year >= 1970, year < 2100, month >= 1, month <= 12, day >= 1):
        return None
    if not _all(hour < 24, minute < 60, second < 60):
        return None
    is_leap = (year % 4 == 0) & ((year % 100 != 0) | (year % 400 == 0))
    if not _all(day <= np.array(_LENGTHS)[month] + (is_leap & (month == 2))):
        return None
    # Days from the civil date, years counted from March: H. Hinnant, "chrono-compatible
    # low-level date algorithms" (from memory; a test compares with the standard library).
    shifted = year - (month <= 2)
    of_year = (153 * ((month + 9) % 12) + 2) // 5 + day - 1
    days = 365 * shifted + shifted // 4 - shifted // 100 + shifted // 400 + of_year - 719_468
    answer: Instants = days * 86_400 + hour * 3600 + minute * 60 + second
    return answer


def _all(*truths: Truths) -> bool:
    return all(bool(truth.all()) for truth in truths)
