"""What ends with a batch: its run sheet, its liquid, its culture's work."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING

from brewdesk.services import forming, suspicion
from brewdesk.services.ledger import DROP_L, balance_in, check_volume
from brewdesk.services.stockdraws import drop_plan_supplies
from brewdesk.store.records import Batch, Culture, TransferDraft
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchPurpose, BatchStage, CultureState, StepState, TransferKind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

_WHERE_IT_WENT = {
    BatchStage.DRAWN_OFF: TransferKind.DRINK,
    BatchStage.DISCARDED: TransferKind.LOSS,
}


def end_batch(
    unit: UnitOfWork,
    batch: Batch,
    stage: BatchStage,
    *,
    now: datetime,
    reason: str,
    culture_lost: bool = False,
    kept_l: float = 0.0,
) -> Batch:
    """End a batch within a unit of work.

    What is left in the jar counts as drawn, or as lost if it is discarded; ``kept_l`` of it
    stays in the jar with the culture, which rests in it from now on.

    Raises
    ------
    ImpossibleInput
        Field "kept_l": more than there is, or reason "no_culture" if none stays in the jar.
    """
    _pause_run_sheet(unit, batch, now)
    drop_plan_supplies(unit, batch.id)
    culture = culture_in_jar(unit, batch)
    left_l = balance_in(unit, batch).now_l
    if kept_l:
        kept_l = check_volume("kept_l", kept_l, left_l)
        if culture is None or culture_lost:
            raise ImpossibleInput("kept_l", kept_l, reason="no_culture")
        unit.transfers.add(
            TransferDraft(
                at=now,
                kind=TransferKind.STARTER,
                volume_l=kept_l,
                from_batch_id=batch.id,
                to_culture_id=culture.id,
            )
        )
    if left_l - kept_l >= DROP_L:
        unit.transfers.add(
            TransferDraft(
                at=now,
                kind=_WHERE_IT_WENT[stage],
                volume_l=left_l - kept_l,
                from_batch_id=batch.id,
            )
        )
    if culture_lost:
        suspicion.flag_contacts(unit, suspicion.BATCH, batch.id, batch.name, reason, now)
    if stage is BatchStage.DISCARDED and batch.purpose is BatchPurpose.CULTURE:
        forming.lose(unit, batch, reason, now)
    elif culture is not None and culture_lost:
        unit.cultures.change(culture.id, **suspicion.lost_fields(reason, now))
    elif culture is not None and culture.state is CultureState.AT_WORK:
        unit.cultures.change(
            culture.id,
            state=CultureState.RESTING,
            rest_volume_l=kept_l or culture.rest_volume_l,
        )
    return unit.batches.change(batch.id, stage=stage, ended_at=now, end_reason=reason)


def culture_in_jar(unit: UnitOfWork, batch: Batch) -> Culture | None:
    """Return a batch's culture if it is in the batch's vessel."""
    if batch.culture_id is None:
        return None
    culture = unit.cultures.get(batch.culture_id)
    return culture if culture.vessel_id == batch.vessel_id else None


def close_drawn_off(unit: UnitOfWork, vessel_id: int) -> None:
    """Put what was drawn off from a vessel before among the finished: something new comes in."""
    for done in unit.batches.where(vessel_id=vessel_id, stage=BatchStage.DRAWN_OFF):
        unit.batches.change(done.id, stage=BatchStage.CLOSED)


def _pause_run_sheet(unit: UnitOfWork, batch: Batch, now: datetime) -> None:
    for step in unit.steps.where(batch_id=batch.id, state=StepState.RUNNING):
        left_s = None if step.ends_at is None else max(0.0, (step.ends_at - now).total_seconds())
        unit.steps.change(step.id, state=StepState.PAUSED, ends_at=None, remaining_s=left_s)
