"""What was thrown away: batches, cultures, bottles, each with the maker's reason."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime
from enum import Enum

from brewdesk.services.lookbackfacts import Past
from brewdesk.services.lookbackgroups import LookBackSieve, in_time
from brewdesk.services.losscauses import Cause, cause_of
from culturecore.stages import BatchStage, BottlingState


class LossKind(Enum):
    """What was lost."""

    BATCH = "batch"
    CULTURE = "culture"
    BOTTLES = "bottles"


@dataclass(frozen=True, slots=True, kw_only=True)
class Loss:
    """Something thrown away, with the maker's reason; ``subject_id`` is by its kind."""

    kind: LossKind
    subject_id: int
    batch_id: int | None
    name: str
    at: datetime
    reason: str
    cause: Cause
    volume_l: float | None = None
    bottle_count: int = 0


def losses_of(past: Past, sieve: LookBackSieve, ids: Collection[int]) -> tuple[Loss, ...]:
    """Return what was thrown away, newest first. Bottles and batches go by their batch."""
    found = [
        Loss(
            kind=LossKind.BATCH,
            subject_id=batch.batch_id,
            batch_id=batch.batch_id,
            name=batch.name,
            at=batch.ended_at,
            reason=batch.end_reason,
            cause=cause_of(batch.end_reason, saw_mold=batch.saw_mold),
            volume_l=batch.lost_l or None,
        )
        for batch in past.batches
        if batch.batch_id in ids
        and batch.stage is BatchStage.DISCARDED
        and batch.ended_at is not None
    ]
    found += [
        Loss(
            kind=LossKind.BOTTLES,
            subject_id=bottling.bottling_id,
            batch_id=bottling.batch_id,
            name=bottling.name,
            at=bottling.ended_at,
            reason=bottling.end_reason,
            cause=cause_of(bottling.end_reason),
            volume_l=bottling.left_l or None,
            bottle_count=bottling.left_count,
        )
        for bottling in past.bottlings
        if bottling.batch_id in ids
        and bottling.state is BottlingState.DISCARDED
        and bottling.ended_at is not None
    ]
    if sieve.tea is None and sieve.place_id is None:
        found += [
            Loss(
                kind=LossKind.CULTURE,
                subject_id=culture.culture_id,
                batch_id=None,
                name=culture.name,
                at=culture.at,
                reason=culture.reason,
                cause=cause_of(culture.reason),
            )
            for culture in past.lost_cultures
            if sieve.culture_id in (None, culture.culture_id)
            and in_time(sieve, culture.at.astimezone(past.zone).date())
        ]
    return tuple(sorted(found, key=lambda loss: (loss.at, loss.name), reverse=True))
