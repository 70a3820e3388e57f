"""The film that grows on each jar: what is expected of it, beside the forecast of its souring."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, tzinfo
from functools import lru_cache
from typing import TYPE_CHECKING

from brewdesk.services.door import Door
from brewdesk.services.jarcourse import JarCourse, conditions_of, day_of
from brewdesk.services.wording.films import film_words
from brewdesk.store.records import Reading
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, CultureState, Quantity

if TYPE_CHECKING:
    from culturecore.pellicle import FilmForecast

_ROUGH_SD_MM = 2.0  # of a reading without its own: judged by eye
_KEPT = 64


@dataclass(frozen=True, slots=True, kw_only=True)
class Film:
    """What is expected of a jar's film. ``is_from_raw``: no culture at work went in."""

    forecast: FilmForecast
    is_from_raw: bool
    has_been_seen: bool


class Films:
    """Look at the films; what was worked out is kept for as long as it holds."""

    def __init__(self, door: Door) -> None:
        self._door = door

    def of_course(self, course: JarCourse) -> Film | None:
        """Return what is expected of a jar's film, None if its amounts allow no forecast."""
        batch = course.batch
        with self._door.store.read() as unit:
            measured = unit.readings.where(
                batch_id=batch.id, quantity=Quantity.PELLICLE_MM, order_by=("at", "id")
            )
            culture = unit.cultures.get(batch.culture_id) if batch.culture_id is not None else None
        # A film is no younger than the jar: what was measured before is the old pellicle.
        own = tuple(
            reading
            for reading in measured
            if reading.at > course.start and reading.value is not None
        )
        is_from_raw = culture is None or culture.state is CultureState.FORMING
        old_mm = 0.0 if culture is None or is_from_raw else culture.pellicle_mm or 0.0
        try:
            made = _worked_out(course, own, is_from_raw, old_mm)
        except ImpossibleInput:
            return None
        return Film(
            forecast=made,
            is_from_raw=is_from_raw,
            has_been_seen=any(reading.value for reading in own),
        )

    def notes(self, course: JarCourse, moment: datetime, zone: tzinfo) -> tuple[str, ...]:
        """Say what is expected of the film; nothing once the batch has left the jar."""
        if course.batch.stage is not BatchStage.SOURING:
            return ()
        film = self.of_course(course)
        if film is None:
            return ()
        words = film_words(
            film.forecast,
            started_at=course.start,
            now_day=max(0.0, day_of(course, moment)),
            is_from_raw=film.is_from_raw,
            has_been_seen=film.has_been_seen,
            zone=zone,
        )
        return (words,) if words else ()


@lru_cache(maxsize=_KEPT)
def _worked_out(
    course: JarCourse, measured: tuple[Reading, ...], is_from_raw: bool, old_mm: float
) -> FilmForecast:
    from culturecore.pellicle import FilmReading, film_forecast

    return film_forecast(
        conditions_of(course),
        [
            FilmReading(
                day=day_of(course, reading.at),
                thickness_mm=reading.value or 0.0,
                sd_mm=reading.sd if reading.sd is not None else _ROUGH_SD_MM,
            )
            for reading in measured
        ],
        is_lively=not is_from_raw,
        old_pellicle_mm=old_mm,
    )
