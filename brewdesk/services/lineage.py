"""The family of cultures: who came from whom, how old, where now, and how their batches did."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from statistics import median
from typing import TYPE_CHECKING

from brewdesk.services.cultures import GONE
from brewdesk.services.door import Door
from brewdesk.store.records import Batch, Culture, Reading
from culturecore import safety
from culturecore.crossing import Reach, crossing_of
from culturecore.stages import BatchPurpose, BatchStage, Quantity, TasteMark

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

SOUR_ENOUGH_PH = safety.limit("ph_finished_max")
# Where many makers begin to taste; a mark to compare by, from memory, no limit.
FIRST_TASTE_MARK_PH = 3.2
_RUN = (BatchStage.SOURING, BatchStage.DRAWN_OFF, BatchStage.CLOSED, BatchStage.DISCARDED)


@dataclass(frozen=True, slots=True, kw_only=True)
class FamilyNode:
    """One culture in its family.

    ``generation`` is the longest way from a founder, who has 0. ``age_days`` runs until
    today, or until the day it was gone.
    """

    culture: Culture
    generation: int
    age_days: int
    parent_ids: tuple[int, ...]
    child_ids: tuple[int, ...]
    vessel_name: str
    batch_count: int

    @property
    def is_gone(self) -> bool:
        """Whether it is retired, given away or lost."""
        return self.culture.state in GONE

    @property
    def is_suspect(self) -> bool:
        """Whether it may share mold with another, and is still here."""
        return self.culture.suspect_at is not None and not self.is_gone


@dataclass(frozen=True, slots=True)
class Family:
    """All cultures, oldest first."""

    nodes: tuple[FamilyNode, ...]

    def node(self, culture_id: int) -> FamilyNode | None:
        """Return the node of a culture, or None."""
        return next((node for node in self.nodes if node.culture.id == culture_id), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Pace:
    """How fast batches came down to a pH.

    ``median_days`` is over the ``counted`` batches whose readings show it; ``not_shown``
    have readings, but none that low; ``below_from_start`` were that low when first read.
    """

    ph: float
    median_days: float | None
    counted: int
    not_shown: int
    below_from_start: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Mishap:
    """A batch that was thrown away, and why."""

    batch_id: int
    batch_name: str
    at: datetime
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CultureStory:
    """What a culture's batches tell of it. Batches that grew a culture have no pace."""

    culture_id: int
    batches: tuple[Batch, ...]  # newest first
    drawn_off: int
    souring: int
    paces: tuple[Pace, ...]
    tastes: Mapping[TasteMark, int]
    mishaps: tuple[Mishap, ...]


class Lineage:
    """Look at the family of cultures."""

    def __init__(self, door: Door) -> None:
        self._door = door

    def tree(self) -> Family:
        """Return all cultures with their generation, age, kin and place."""
        with self._door.store.read() as unit:
            cultures = unit.cultures.where(order_by=("born_at", "id"))
            links = unit.culture_parents.where(order_by="id")
            vessels = {row.id: row.name for row in unit.vessels.where()}
            batches = unit.batches.where(stage=_RUN)
        parents: dict[int, list[int]] = {}
        children: dict[int, list[int]] = {}
        for link in links:
            parents.setdefault(link.culture_id, []).append(link.parent_id)
            children.setdefault(link.parent_id, []).append(link.culture_id)
        generation = generations([culture.id for culture in cultures], parents)
        counts: dict[int, int] = {}
        for batch in batches:
            if batch.culture_id is not None:
                counts[batch.culture_id] = counts.get(batch.culture_id, 0) + 1
        return Family(
            tuple(
                FamilyNode(
                    culture=culture,
                    generation=generation[culture.id],
                    age_days=self._age_days(culture),
                    parent_ids=tuple(parents.get(culture.id, ())),
                    child_ids=tuple(children.get(culture.id, ())),
                    vessel_name=vessels.get(culture.vessel_id or 0, ""),
                    batch_count=counts.get(culture.id, 0),
                )
                for culture in cultures
            )
        )

    def story(self, culture_id: int) -> CultureStory:
        """Tell how a culture's batches did.

        Raises
        ------
        NoSuchRow
            If there is no culture with this id.
        """
        with self._door.store.read() as unit:
            unit.cultures.get(culture_id)
            batches = unit.batches.where(
                culture_id=culture_id, stage=_RUN, order_by=("-started_at", "-id")
            )
            readings = _readings_of(unit, batches)
        brewed = [batch for batch in batches if batch.purpose is BatchPurpose.DRINK]
        tastes: dict[TasteMark, int] = {}
        for batch in brewed:
            for reading in readings.get(batch.id, ()):
                if reading.quantity is Quantity.TASTE:
                    mark = TasteMark(reading.text)
                    tastes[mark] = tastes.get(mark, 0) + 1
        drawn = (BatchStage.DRAWN_OFF, BatchStage.CLOSED)
        return CultureStory(
            culture_id=culture_id,
            batches=batches,
            drawn_off=sum(batch.stage in drawn for batch in brewed),
            souring=sum(batch.stage is BatchStage.SOURING for batch in brewed),
            paces=tuple(
                pace_of(brewed, readings, ph) for ph in (SOUR_ENOUGH_PH, FIRST_TASTE_MARK_PH)
            ),
            tastes=tastes,
            mishaps=tuple(
                Mishap(
                    batch_id=batch.id,
                    batch_name=batch.name,
                    at=batch.ended_at,
                    reason=batch.end_reason,
                )
                for batch in batches
                if batch.stage is BatchStage.DISCARDED and batch.ended_at is not None
            ),
        )

    def _age_days(self, culture: Culture) -> int:
        zone = self._door.clock.zone()
        until = culture.gone_at or self._door.clock.now()
        days = until.astimezone(zone).date() - culture.born_at.astimezone(zone).date()
        return max(0, days.days)


def generations(ids: Sequence[int], parents: Mapping[int, Sequence[int]]) -> dict[int, int]:
    """Return the longest way from a founder for each id; parents not in ``ids`` do not count.

    A ring of parents, which no birth can make, is cut where it is met again.
    """
    known = set(ids)
    found: dict[int, int] = {}
    for first in ids:
        path: list[int] = [first]
        on_path = {first}
        while path:
            here = path[-1]
            above = [one for one in parents.get(here, ()) if one in known and one != here]
            ready = [one for one in above if one in found or one in on_path]
            missing = [one for one in above if one not in found and one not in on_path]
            if missing:
                path.append(missing[0])
                on_path.add(missing[0])
                continue
            found[here] = max((found[one] + 1 for one in ready if one in found), default=0)
            path.pop()
            on_path.discard(here)
    return found


def pace_of(batches: Sequence[Batch], readings: Mapping[int, Sequence[Reading]], ph: float) -> Pace:
    """Tell how many days batches took to come down to ``ph``, from what was read of them.

    Between two readings the pH is taken to fall evenly. Before the first reading the
    start pH as reckoned stands in, if it lies above the mark for certain.
    """
    days: list[float] = []
    not_shown = below = 0
    for batch in batches:
        measured = [
            reading
            for reading in readings.get(batch.id, ())
            if reading.quantity is Quantity.PH
            and reading.value is not None
            and batch.started_at is not None
            and reading.at >= batch.started_at
        ]
        if not measured:
            continue
        crossed = _crossed_at(batch, measured, ph)
        if crossed is None:
            not_shown += 1
        elif crossed <= 0.0:
            below += 1
        else:
            days.append(crossed)
    return Pace(
        ph=ph,
        median_days=median(days) if days else None,
        counted=len(days),
        not_shown=not_shown,
        below_from_start=below,
    )


def _crossed_at(batch: Batch, measured: Sequence[Reading], ph: float) -> float | None:
    """Return the day on which a pH was reached: 0 if from the start, None if never read."""
    started_at = batch.started_at or batch.planned_at
    points = [
        ((reading.at - started_at) / timedelta(days=1), reading.value)
        for reading in measured
        if reading.value is not None
    ]
    found = crossing_of(points, ph, start=(batch.start_ph, batch.start_ph_low))
    if found.reach is Reach.FROM_START:
        return 0.0
    return None if found.day is None else max(found.day, 1e-6)


def _readings_of(unit: ReadUnit, batches: Sequence[Batch]) -> dict[int, list[Reading]]:
    ids = tuple(batch.id for batch in batches)
    found: dict[int, list[Reading]] = {}
    if ids:
        rows = unit.readings.where(
            batch_id=ids, quantity=(Quantity.PH, Quantity.TASTE), order_by=("at", "id")
        )
        for row in rows:
            found.setdefault(row.batch_id, []).append(row)
    return found
