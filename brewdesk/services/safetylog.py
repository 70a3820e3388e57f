"""What has to do with safety: overrides, looks, discards, suspicions, the pH by day 7."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import Enum
from typing import TYPE_CHECKING

from brewdesk.services.acts import ActKind
from brewdesk.store.records import Batch, Reading
from culturecore import safety
from culturecore.stages import BatchStage, BottlingState, CareKind, Look, Quantity, StepKind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

DAY = timedelta(days=1)


class SafetyKind(Enum):
    """What an entry tells of."""

    STEP_OVERRIDE = "step_override"
    LIQUID_OVERRIDE = "liquid_override"
    BOTTLE_OVERRIDE = "bottle_override"
    LOOK = "look"
    DISCARD = "discard"
    BOTTLES_DISCARDED = "bottles_discarded"
    SUSPICION = "suspicion"
    CLEARED = "cleared"


@dataclass(frozen=True, slots=True, kw_only=True)
class SafetyEntry:
    """One thing; ``reason`` is in the maker's own words, ``name`` is the batch or culture."""

    at: datetime
    kind: SafetyKind
    name: str
    reason: str = ""
    temperature_c: float | None = None
    step: StepKind | None = None
    look: Look | None = None


class SafePh(Enum):
    """Whether the pH came down in time, as far as readings show it."""

    IN_TIME = "in_time"
    LATE = "late"
    PENDING = "pending"  # no reading shows it, and the days are not over
    NOT_SHOWN = "not_shown"  # no reading shows it, and they are


@dataclass(frozen=True, slots=True, kw_only=True)
class SafePhStory:
    """When the pH was first read at or below the limit; days count from the start.

    ``day`` is that of the reading: the pH may have come there earlier. ``start`` is the
    reading nearest to the start, within a day of it, and before anything is soured.
    """

    code: SafePh
    start: Reading | None
    reached: Reading | None
    day: float | None
    limit_ph: float
    deadline_days: float


def safe_ph_story(batch: Batch, readings: Iterable[Reading], now: datetime) -> SafePhStory:
    """Tell when a batch's pH came down, from its readings of pH alone."""
    limit_ph, deadline = safety.limit("ph_finished_max"), safety.limit("ph_deadline_days")
    taken = sorted(
        (r for r in readings if r.quantity is Quantity.PH and r.value is not None),
        key=lambda reading: reading.at,
    )
    begin = batch.started_at
    if begin is None:
        return SafePhStory(
            code=SafePh.PENDING, start=None, reached=None, day=None, limit_ph=limit_ph,
            deadline_days=deadline,
        )  # fmt: skip
    near = [reading for reading in taken if abs(reading.at - begin) <= DAY]
    start = min(near, key=lambda reading: abs(reading.at - begin), default=None)
    reached = next(
        (r for r in taken if r.at >= begin and r.value is not None and r.value <= limit_ph), None
    )
    day = None if reached is None else (reached.at - begin) / DAY
    end = min(now, batch.ended_at) if batch.ended_at is not None else now
    if day is not None:
        code = SafePh.IN_TIME if day <= deadline else SafePh.LATE
    else:
        is_open = batch.stage.is_live and (end - begin) / DAY <= deadline
        code = SafePh.PENDING if is_open else SafePh.NOT_SHOWN
    return SafePhStory(
        code=code, start=start, reached=reached, day=day, limit_ph=limit_ph, deadline_days=deadline
    )


def entries_of_batch(unit: ReadUnit, batch: Batch) -> list[SafetyEntry]:
    """Return what a batch's rows and acts say, in order of time."""
    found = [
        SafetyEntry(
            at=step.finished_at or step.started_at or batch.planned_at,
            kind=SafetyKind.STEP_OVERRIDE,
            name=batch.name,
            reason=step.override_reason,
            temperature_c=step.temperature_c,
            step=step.kind,
        )
        for step in unit.steps.where(batch_id=batch.id)
        if step.override_reason
    ]
    found += [
        SafetyEntry(at=each.at, kind=SafetyKind.LIQUID_OVERRIDE, name=batch.name,
                    reason=each.override_reason, temperature_c=each.temperature_c)
        for each in unit.transfers.where(to_batch_id=batch.id)
        if each.override_reason
    ]  # fmt: skip
    for bottles in unit.bottlings.where(batch_id=batch.id):
        if bottles.override_reason:
            found.append(
                SafetyEntry(
                    at=bottles.filled_at,
                    kind=SafetyKind.BOTTLE_OVERRIDE,
                    name=bottles.name,
                    reason=bottles.override_reason,
                )
            )
        if bottles.state is BottlingState.DISCARDED and bottles.ended_at is not None:
            found.append(SafetyEntry(at=bottles.ended_at, kind=SafetyKind.BOTTLES_DISCARDED,
                                     name=bottles.name, reason=bottles.end_reason))  # fmt: skip
    found += _looks(batch, unit.readings.where(batch_id=batch.id))
    if batch.stage is BatchStage.DISCARDED and batch.ended_at is not None:
        found.append(
            SafetyEntry(at=batch.ended_at, kind=SafetyKind.DISCARD, name=batch.name,
                        reason=batch.end_reason)
        )  # fmt: skip
    if batch.suspect_at is not None:
        found.append(
            SafetyEntry(at=batch.suspect_at, kind=SafetyKind.SUSPICION, name=batch.name,
                        reason=batch.suspect_reason)
        )  # fmt: skip
    found += _cleared(unit, "batch", batch.id, batch.name)
    return sorted(found, key=lambda entry: entry.at)


def entries_of_cultures(unit: ReadUnit) -> list[SafetyEntry]:
    """Return what the rows and acts of all cultures say, in order of time."""
    found: list[SafetyEntry] = []
    for culture in unit.cultures.where():
        found += [
            SafetyEntry(at=care.at, kind=SafetyKind.LOOK, name=culture.name, reason=care.text,
                        look=care.look)
            for care in unit.care.where(culture_id=culture.id, kind=CareKind.LOOKED)
        ]  # fmt: skip
        if culture.suspect_at is not None:
            found.append(SafetyEntry(at=culture.suspect_at, kind=SafetyKind.SUSPICION,
                                     name=culture.name, reason=culture.suspect_reason))  # fmt: skip
        # An act that names a batch is told there.
        found += _cleared(unit, "culture", culture.id, culture.name, is_without_batch=True)
    return sorted(found, key=lambda entry: entry.at)


def _looks(batch: Batch, readings: Sequence[Reading]) -> list[SafetyEntry]:
    notes = {r.at: r.text for r in readings if r.quantity is Quantity.NOTE}
    return [
        SafetyEntry(at=r.at, kind=SafetyKind.LOOK, name=batch.name, look=Look(r.text),
                    reason=notes.get(r.at, ""))
        for r in readings
        if r.quantity is Quantity.LOOK
    ]  # fmt: skip


def _cleared(
    unit: ReadUnit, subject: str, number: int, name: str, *, is_without_batch: bool = False
) -> list[SafetyEntry]:
    acts = unit.acts.about(subject, number, kinds=[ActKind.CLEAR_SUSPICION.value])
    return [
        SafetyEntry(at=act.at, kind=SafetyKind.CLEARED, name=name,
                    reason=str(act.facts.get("reason", "")))
        for act in acts
        if not (is_without_batch and act.batch_id is not None)
    ]  # fmt: skip
