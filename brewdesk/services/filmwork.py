"""The film that grows on a jar, from everything that it depends on: pure figures.

Plain values without Qt, store and clock, so that it may run in any thread or process.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from brewdesk.services.jarcourse import JarCourse, conditions_of, day_of
from brewdesk.store.records import Reading
from culturecore.errors import ImpossibleInput

if TYPE_CHECKING:
    from culturecore.pellicle import FilmForecast

_ROUGH_SD_MM = 2.0  # of a reading without its own: judged by eye


@dataclass(frozen=True, slots=True)
class FilmInputs:
    """What a film depends on beside its jar's course.

    ``measured`` are the jar's own films by time. ``is_from_raw``: no culture at work went
    in; ``old_pellicle_mm`` is the pellicle that did.
    """

    measured: tuple[Reading, ...] = ()
    is_from_raw: bool = True
    old_pellicle_mm: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Film:
    """What is expected of a jar's film. ``is_from_raw``: no culture at work went in."""

    forecast: FilmForecast
    is_from_raw: bool
    has_been_seen: bool


def film_of(course: JarCourse, inputs: FilmInputs) -> Film | None:
    """Forecast a jar's film, None if its amounts allow none. Slow: run it as a job."""
    # Loaded here, since it brings numpy: nothing of it is needed to paint the first window.
    from culturecore.pellicle import FilmReading, film_forecast

    try:
        made = film_forecast(
            conditions_of(course),
            [
                FilmReading(
                    day=day_of(course, reading.at),
                    thickness_mm=reading.value or 0.0,
                    sd_mm=reading.sd if reading.sd is not None else _ROUGH_SD_MM,
                )
                for reading in inputs.measured
            ],
            is_lively=not inputs.is_from_raw,
            old_pellicle_mm=inputs.old_pellicle_mm,
        )
    except ImpossibleInput:
        return None
    return Film(
        forecast=made,
        is_from_raw=inputs.is_from_raw,
        has_been_seen=any(reading.value for reading in inputs.measured),
    )
