"""The end of a batch: judged by its pH, drawn off, closed, thrown away."""

from __future__ import annotations

from typing import TYPE_CHECKING

from brewdesk.services import suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.batchrows import BatchRows
from brewdesk.services.changes import Topic
from brewdesk.services.ending import end_batch
from brewdesk.store.records import Batch
from culturecore import drinkverdicts, safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import BatchStage, Method, Quantity

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork


class BatchEnds(BatchRows):
    """End batches."""

    def drinkable_verdict(self, batch_id: int) -> Verdict:
        """Judge by the newest pH since the start whether a batch may be drunk or bottled.

        WARN "finished_ph_unknown" without such a reading, STOP "mold_suspected" while it may
        share mold with another. No verdict says that a drink is safe.
        """
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            rows = unit.readings.where(order_by="-at", batch_id=batch_id, quantity=Quantity.PH)
        if batch.suspect_at is not None:
            return suspicion.suspect_verdict()
        for row in rows:
            is_of_it = batch.started_at is not None and row.at >= batch.started_at
            if is_of_it and row.value is not None and row.sd is not None:
                by_strip = row.method is Method.STRIP
                return drinkverdicts.finished_ph_verdict(row.value, row.sd, by_strip=by_strip)
        return Verdict(
            "finished_ph_unknown", Level.WARN, {"limit": safety.limit("ph_finished_max")}
        )

    def draw_off(self, batch_id: int, reason: str = "", *, kept_l: float = 0.0) -> Batch:
        """End a souring batch: the drink is out, the culture rests in the vessel.

        ``kept_l`` is how much stays with the culture, as its liquid and as starter.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "not_souring" or "suspect"; "kept_l" for more than
            there is, or with reason "no_culture".
        """
        batch = self._expect(batch_id, BatchStage.SOURING, reason="not_souring")
        if batch.suspect_at is not None:
            raise ImpossibleInput("batch_id", batch_id, reason="suspect")
        return self._end(batch, ActKind.DRAW_OFF, BatchStage.DRAWN_OFF, reason, kept_l=kept_l)

    def close(self, batch_id: int) -> Batch:
        """Put a drawn-off batch among the finished ones.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "not_drawn_off".
        """
        batch = self._expect(batch_id, BatchStage.DRAWN_OFF, reason="not_drawn_off")
        return self._door.perform(
            ActKind.CLOSE_BATCH,
            {"name": batch.name},
            lambda unit: unit.batches.change(batch_id, stage=BatchStage.CLOSED),
            topics=Topic.BATCHES,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
        )

    def discard(self, batch_id: int, reason: str, *, culture_lost: bool = False) -> Batch:
        """Throw a batch away, with its reason; with mold its culture goes too.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "already_ended"; "reason" with reason "empty".
        """
        if not reason.strip():
            raise ImpossibleInput("reason", reason, reason="empty")
        batch = self.get(batch_id)
        if batch.stage in (BatchStage.CLOSED, BatchStage.DISCARDED):
            raise ImpossibleInput("batch_id", batch_id, reason="already_ended")
        return self._end(
            batch,
            ActKind.DISCARD_BATCH,
            BatchStage.DISCARDED,
            reason.strip(),
            culture_lost=culture_lost,
        )

    def _end(
        self,
        batch: Batch,
        kind: ActKind,
        stage: BatchStage,
        reason: str,
        *,
        culture_lost: bool = False,
        kept_l: float = 0.0,
    ) -> Batch:
        now = self._door.clock.now()
        with self._door.store.read() as unit:
            vessel = unit.vessels.get(batch.vessel_id)

        def work(unit: UnitOfWork) -> Batch:
            return end_batch(
                unit,
                batch,
                stage,
                now=now,
                reason=reason,
                culture_lost=culture_lost,
                kept_l=kept_l,
            )

        return self._door.perform(
            kind,
            {
                "name": batch.name,
                "vessel": vessel.name,
                "reason": reason,
                "culture_lost": culture_lost,
            },
            work,
            topics=Topic.BATCHES,
            batch_id=batch.id,
            vessel_id=batch.vessel_id,
            culture_id=batch.culture_id,
        )
