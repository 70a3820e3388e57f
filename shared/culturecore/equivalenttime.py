"""Days of an even temperature that stand for days of a changing one.

A warm day counts for more than a cool one, by ``Q10^((T - T_ref)/10)`` with T_ref the
batch's own ``temperature_c``.
"""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from culturecore import priors, souring

if TYPE_CHECKING:
    from typing import TypeAlias

    from numpy import float64
    from numpy.typing import NDArray

    from culturecore.souringcase import Conditions

    Floats: TypeAlias = NDArray[float64]

_STEP_DAYS = 0.25


def equivalent_days(conditions: Conditions, days: Floats) -> Floats:
    """Turn days into equivalent days at ``temperature_c``.

    Logged temperatures are joined by straight lines; the first holds before its day. After
    the last one ``temperature_c`` holds again.
    """
    if not conditions.temperature_course:
        return days
    import numpy as np

    plain, even = _clock(conditions.temperature_course, conditions.temperature_c)
    answer: Floats = np.interp(days, plain, even) + np.maximum(days - plain[-1], 0.0)
    return answer


def plain_day(conditions: Conditions, even_days: Floats) -> Floats:
    """Turn equivalent days back into days."""
    if not conditions.temperature_course:
        return even_days
    import numpy as np

    plain, even = _clock(conditions.temperature_course, conditions.temperature_c)
    answer: Floats = np.interp(even_days, even, plain) + np.maximum(even_days - even[-1], 0.0)
    return answer


def warmer_by_piece(conditions: Conditions, starts: tuple[float, ...]) -> tuple[float, ...]:
    """Tell how much warmer (K) than ``temperature_c`` each piece of equivalent days was.

    Nothing beyond the last logged day; heat above `souring.TESTED_HIGH_C` does not count.
    """
    if not conditions.temperature_course:
        return (0.0,) * len(starts)
    return _warmer(conditions.temperature_course, conditions.temperature_c, starts)


@lru_cache(maxsize=64)
def _warmer(
    course: tuple[tuple[float, float], ...], temperature_c: float, starts: tuple[float, ...]
) -> tuple[float, ...]:
    import numpy as np

    plain, even = _clock(course, temperature_c)
    warmer = _logged(course, plain) - min(temperature_c, souring.TESTED_HIGH_C)
    steps = np.diff(even, prepend=0.0)
    found = []
    for start, end in zip(starts, (*starts[1:], np.inf), strict=True):
        inside = (even > start) & (even <= end)
        logged = float(steps[inside].sum())
        # Days of the piece that were not logged stand at ``temperature_c``.
        whole = end - start if np.isfinite(end) else logged
        found.append(float((steps * warmer)[inside].sum()) / max(whole, logged, _STEP_DAYS))
    return tuple(found)


def _logged(course: tuple[tuple[float, float], ...], plain: Floats) -> Floats:
    """Temperatures at these days, as far as warmth counts."""
    import numpy as np

    points = sorted(course)
    warm = np.interp(plain, [day for day, _ in points], [celsius for _, celsius in points])
    counting: Floats = np.minimum(warm, souring.TESTED_HIGH_C)
    return counting


@lru_cache(maxsize=64)
def _clock(course: tuple[tuple[float, float], ...], temperature_c: float) -> tuple[Floats, Floats]:
    """Plain and equivalent days side by side, from day 0 to the last logged one."""
    import numpy as np

    last = max(max(day for day, _ in course), _STEP_DAYS)
    plain = np.linspace(0.0, last, int(np.ceil(last / _STEP_DAYS)) + 1)
    pace = souring.temperature_factor(
        _logged(course, plain), priors.Q10.centre
    ) / souring.temperature_factor(temperature_c, priors.Q10.centre)
    even = np.zeros_like(plain)
    np.cumsum(0.5 * (pace[1:] + pace[:-1]) * np.diff(plain), out=even[1:])
    return plain, even
