"""The process log of a span of time: what was brewed, how sour it got when, what was decided."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from brewdesk.services.door import Door
from brewdesk.services.safetylog import (
    SafePhStory,
    SafetyEntry,
    entries_of_batch,
    entries_of_cultures,
    safe_ph_story,
)
from brewdesk.store.records import Batch, Calibration
from culturecore.stages import BatchStage


@dataclass(frozen=True, slots=True, kw_only=True)
class LoggedBatch:
    """One batch of the log."""

    batch: Batch
    vessel_name: str
    culture_name: str
    safe_ph: SafePhStory


@dataclass(frozen=True, slots=True, kw_only=True)
class ProcessLog:
    """All facts of a log: batches that were under way in the span, and what fell into it."""

    first_at: datetime
    last_at: datetime
    now: datetime
    is_demo: bool
    batches: tuple[LoggedBatch, ...]
    calibrations: tuple[Calibration, ...]
    entries: tuple[SafetyEntry, ...]


def process_log(
    door: Door, first_at: datetime, last_at: datetime, *, is_demo: bool = False
) -> ProcessLog:
    """Read the log of a span, both ends in it. May be slow for years: run it as a job.

    Raises
    ------
    StoreTrouble
        If the store cannot be read.
    """
    now = door.clock.now()
    with door.store.read() as unit:
        vessels = {vessel.id: vessel.name for vessel in unit.vessels.where()}
        cultures = {culture.id: culture.name for culture in unit.cultures.where()}
        logged, entries = [], entries_of_cultures(unit)
        for batch in sorted(
            unit.batches.where(), key=lambda each: each.started_at or each.planned_at
        ):
            entries += entries_of_batch(unit, batch)
            if not _is_under_way(batch, first_at, last_at):
                continue
            readings = unit.readings.where(batch_id=batch.id)
            logged.append(
                LoggedBatch(
                    batch=batch,
                    vessel_name=vessels[batch.vessel_id],
                    culture_name=cultures.get(batch.culture_id or 0, ""),
                    safe_ph=safe_ph_story(batch, readings, now),
                )
            )
        calibrations = unit.calibrations.where(order_by="at")
    return ProcessLog(
        first_at=first_at,
        last_at=last_at,
        now=now,
        is_demo=is_demo,
        batches=tuple(logged),
        calibrations=tuple(c for c in calibrations if first_at <= c.at <= last_at),
        entries=tuple(
            sorted((e for e in entries if first_at <= e.at <= last_at), key=lambda entry: entry.at)
        ),
    )


def _is_under_way(batch: Batch, first_at: datetime, last_at: datetime) -> bool:
    """Whether a batch was in its jar in the span; a plan that was not begun is none."""
    if batch.stage is BatchStage.PLANNED:
        return False
    begin = batch.started_at or batch.planned_at
    return begin <= last_at and (batch.ended_at is None or batch.ended_at >= first_at)
