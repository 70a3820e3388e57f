"""How batches are put into groups for a look back, and how long each took. Plain values."""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass
from datetime import date
from enum import Enum

from brewdesk.services.jarcourse import DAY
from brewdesk.services.lookbackfacts import Past, PastBatch
from culturecore.crossing import Reach, crossing_of
from culturecore.safety import limit
from culturecore.stages import BatchStage, TeaKind

WARMTH_EDGES_C = (18.0, 20.0, 22.0, 24.0, 26.0, 28.0)
STARTER_EDGES = (0.08, 0.12, 0.17, 0.25)  # shares of the jar
AGE_EDGES_DAYS = (90.0, 180.0, 365.0)
_LIVE = BatchStage.SOURING
DONE = (BatchStage.DRAWN_OFF, BatchStage.CLOSED)


class Factor(Enum):
    """What batches are put side by side by."""

    TEA = "tea"
    CULTURE = "culture"
    PLACE = "place"
    WARMTH = "warmth"
    MONTH = "month"
    STARTER = "starter"
    GENERATION = "generation"
    CULTURE_AGE = "culture_age"


class Measure(Enum):
    """How long it took until when."""

    SAFE_PH = "safe_ph"
    RIPE_PH = "ripe_ph"
    DRAWN_OFF = "drawn_off"


@dataclass(frozen=True, slots=True, kw_only=True)
class LookBackSieve:
    """What is looked at: batches by tea, culture and place, and what happened in some time."""

    tea: TeaKind | None = None
    culture_id: int | None = None
    place_id: int | None = None
    since: date | None = None
    until: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """What a look back is asked. ``ripe_ph`` is the pH that `Measure.RIPE_PH` goes by."""

    sieve: LookBackSieve = LookBackSieve()
    factor: Factor = Factor.TEA
    measure: Measure = Measure.RIPE_PH
    ripe_ph: float = 3.2

    @property
    def ph(self) -> float | None:
        """The pH that is waited for; None if it is the drawing off."""
        if self.measure is Measure.SAFE_PH:
            return limit("ph_finished_max")
        return self.ripe_ph if self.measure is Measure.RIPE_PH else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Dot:
    """How long one batch took, in days; one that is open took longer, or is still at it.

    ``earliest`` and ``latest`` are the readings between which it was.
    """

    batch: PastBatch
    days: float
    is_open: bool = False
    earliest: float | None = None
    latest: float | None = None


@dataclass(frozen=True, slots=True)
class GroupKey:
    """What a group has in common. ``order`` puts groups into an order that is no ranking."""

    order: tuple[float | str, ...]
    value: Hashable  # a TeaKind, an id, a number of a band; None for "not known"
    name: str = ""  # the maker's own name of it, where it has one


def lets_through(sieve: LookBackSieve, batch: PastBatch, past: Past) -> bool:
    """Whether a batch is looked at; its time is that of its start."""
    if sieve.tea is not None and batch.tea_kind is not sieve.tea:
        return False
    if sieve.culture_id is not None and batch.culture_id != sieve.culture_id:
        return False
    if sieve.place_id is not None and batch.place_id != sieve.place_id:
        return False
    return in_time(sieve, batch.started_at.astimezone(past.zone).date())


def in_time(sieve: LookBackSieve, day: date) -> bool:
    """Whether a day lies in the time looked at."""
    if sieve.since is not None and day < sieve.since:
        return False
    return sieve.until is None or day <= sieve.until


def dot_of(batch: PastBatch, question: Question, past: Past) -> Dot | Reach:
    """Return how long a batch took, or why it has no say."""
    ph = question.ph
    if ph is None:
        return _until_drawn_off(batch, past)
    found = crossing_of(batch.ph, ph, start=(batch.start_ph, batch.start_ph_low))
    if found.reach is Reach.REACHED and found.day is not None:
        return Dot(batch=batch, days=found.day, earliest=found.earliest, latest=found.latest)
    if found.reach is Reach.NOT_YET and found.earliest:
        return Dot(batch=batch, days=found.earliest, is_open=True)
    return Reach.UNREAD if found.reach is Reach.NOT_YET else found.reach


def _until_drawn_off(batch: PastBatch, past: Past) -> Dot | Reach:
    if batch.stage in DONE and batch.ended_at is not None:
        return Dot(batch=batch, days=max((batch.ended_at - batch.started_at) / DAY, 0.0))
    if batch.stage is _LIVE:
        return Dot(batch=batch, days=max((past.now - batch.started_at) / DAY, 0.0), is_open=True)
    return Reach.UNREAD


def key_of(batch: PastBatch, factor: Factor, past: Past) -> GroupKey:
    """Return the group that a batch belongs to."""
    if factor is Factor.TEA:
        return GroupKey((list(TeaKind).index(batch.tea_kind),), batch.tea_kind)
    if factor is Factor.CULTURE:
        if batch.culture_id is None:
            return GroupKey((1.0, ""), None)
        order = (0.0, batch.culture_name.casefold(), batch.culture_id)
        return GroupKey(order, batch.culture_id, batch.culture_name)
    if factor is Factor.PLACE:
        place_order = (batch.place_name.casefold(), batch.place_id)
        return GroupKey(place_order, batch.place_id, batch.place_name)
    if factor is Factor.MONTH:
        month = batch.started_at.astimezone(past.zone).month
        return GroupKey((month,), month)
    return _banded(batch, factor)


def _banded(batch: PastBatch, factor: Factor) -> GroupKey:
    if factor is Factor.WARMTH:
        return _in_band(batch.temperature_c, WARMTH_EDGES_C)
    if factor is Factor.STARTER:
        return _in_band(batch.starter_share, STARTER_EDGES)
    if factor is Factor.CULTURE_AGE:
        return _in_band(batch.culture_age_days, AGE_EDGES_DAYS)
    number = batch.generation
    return GroupKey((-1.0 if number is None else number,), number)


def _in_band(value: float | None, edges: tuple[float, ...]) -> GroupKey:
    """Return the number of the band that a value lies in: 0 below the first edge."""
    if value is None:
        return GroupKey((-1.0,), None)
    number = sum(value >= edge for edge in edges)
    return GroupKey((number,), number)
