"""The courses of bottles: pure figures, for any thread or process."""

from __future__ import annotations

from culturecore.bottlecourse import BottleCourse, course_of
from culturecore.bottled import Bottled

CourseKey = tuple[Bottled, float]  # what was bottled, and how many days to look ahead


def courses_of(keys: tuple[CourseKey, ...]) -> tuple[BottleCourse, ...]:
    """Work out several courses. Slow: run it as a job."""
    return tuple(course_of(bottled, horizon_days=horizon) for bottled, horizon in keys)
