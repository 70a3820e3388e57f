"""What other batches teach of a culture: pure figures, for any thread or process."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from brewdesk.services.jarcourse import JarCourse, conditions_of, observations_of
from brewdesk.services.jarcourse import observed as observed_of
from culturecore.errors import ImpossibleInput

if TYPE_CHECKING:
    from culturecore.forecast import Conditions, KnownCulture, Observation

_KEPT = 64


@dataclass(frozen=True, slots=True)
class Teachers:
    """The courses that teach of one batch's culture, and those of the same pantry."""

    own: tuple[JarCourse, ...] = ()
    pantry: tuple[JarCourse, ...] = ()


@lru_cache(maxsize=_KEPT)
def learn(teachers: Teachers) -> KnownCulture | None:
    """Learn a culture's habits; None if there is no teacher. Slow: run it as a job."""
    from culturecore.knownculture import learn_culture

    if not teachers.own and not teachers.pantry:
        return None
    return learn_culture(_cases(teachers.own), _cases(teachers.pantry))


def _cases(courses: tuple[JarCourse, ...]) -> list[tuple[Conditions, list[Observation]]]:
    found = []
    for course in courses:
        try:
            found.append((conditions_of(course), observations_of(course, observed_of(course))))
        except ImpossibleInput:  # mistyped amounts of one batch must not spoil the others
            continue
    return found
