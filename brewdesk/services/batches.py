"""Batches from plan to end. What happens on brewing day is in ``brewing``."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from brewdesk.services import forming
from brewdesk.services.acts import ActKind
from brewdesk.services.batchchecks import (
    changed_plan,
    check_culture,
    check_vessel,
    wish_columns,
)
from brewdesk.services.batchends import BatchEnds
from brewdesk.services.changes import Topic
from brewdesk.services.ending import close_drawn_off
from brewdesk.services.names import tidy_name
from brewdesk.services.settings import CULTURE_LIMIT_C
from brewdesk.services.stockdraws import (
    PlanSupplies,
    check_supplies,
    drop_plan_supplies,
    lay_out,
)
from brewdesk.services.trialjars import forget_batch
from brewdesk.services.vessels import LIVE_STAGES
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.trials import given_up_reason
from brewdesk.store.records import Batch, BatchDraft, Vessel
from culturecore import sweettea
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import (
    BatchStage,
    StarterTaste,
    TeaKind,
)
from culturecore.sweettea import Plan, Starter, Wish

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

__all__ = ["Batches", "changed_plan", "check_vessel"]

_SAME_AMOUNT_L = 1e-6
_NAMES_LOOKED_AT = 60


class Batches(BatchEnds):
    """Plan batches, look them up, end them."""

    def default_wish(self, vessel_id: int) -> Wish:
        """Return the wish a plan for this vessel begins with: filled to its working volume."""
        with self._door.store.read() as unit:
            vessel = unit.vessels.get(vessel_id)
            place = unit.places.get(vessel.place_id)
        return Wish(
            fill_volume_l=vessel.working_volume_l,
            working_volume_l=vessel.working_volume_l,
            starter=Starter(ph=None, ta_g_per_l=None, taste=StarterTaste.SOUR),
            place_temperature_c=place.temperature_c,
            culture_limit_c=self._settings.get(CULTURE_LIMIT_C),
        )

    def wish_of(self, batch: Batch) -> Wish:
        """Return the wish a batch was planned with, to look at or change it."""
        with self._door.store.read() as unit:
            vessel = unit.vessels.get(batch.vessel_id)
        wish = Wish(
            fill_volume_l=batch.fill_volume_l,
            sugar_g_per_l=batch.sugar_g_per_l,
            tea_kind=batch.tea_kind,
            tea_g_per_l=batch.tea_g_per_l,
            bag_g=batch.bag_g,
            starter=Starter(
                ph=batch.starter_ph,
                ta_g_per_l=batch.starter_ta_g_per_l,
                taste=batch.starter_taste,
            ),
            target_start_ph=batch.target_start_ph,
            water_alkalinity_meq_per_l=batch.water_alkalinity_meq_per_l,
            hot_water_c=batch.hot_water_c,
            cold_water_c=batch.cold_water_c,
            culture_limit_c=batch.culture_limit_c,
            working_volume_l=vessel.working_volume_l,
            place_temperature_c=batch.place_temperature_c,
        )
        # The maker's own starter amount is not kept apart from the reckoned one; it is the
        # maker's own if the reckoning would have given another.
        reckoned_l = self.plan_preview(wish).starter_volume_l
        if abs(reckoned_l - batch.starter_volume_l) > _SAME_AMOUNT_L:
            return replace(wish, starter_volume_l=batch.starter_volume_l)
        return wish

    def plan_preview(self, wish: Wish) -> Plan:
        """Reckon the amounts for a wish; nothing is kept.

        Raises
        ------
        ImpossibleInput
            For a wish no jar can hold; ``field`` is the wish's field.
        """
        return sweettea.plan(wish)

    def suggested_name(self, tea_kind: TeaKind) -> str:
        """Return a name for a batch: the tea and the number after the last one used."""
        tea = name_of(tea_kind)
        start = f"{tea} ".casefold()
        with self._door.store.read() as unit:
            # The newest ones tell how far the count has come; years of others need no reading.
            newest = unit.batches.where(order_by="-id", limit=_NAMES_LOOKED_AT)
        endings = [
            batch.name.casefold().removeprefix(start)
            for batch in newest
            if batch.name.casefold().startswith(start)
        ]
        numbers = [int(ending) for ending in endings if ending.isdecimal()]
        return f"{tea} {max(numbers, default=0) + 1}"

    def plan(
        self,
        vessel_id: int,
        culture_id: int | None,
        name: str,
        wish: Wish,
        *,
        supplies: PlanSupplies | None = None,
    ) -> Batch:
        """Plan a batch: keep the wish and its amounts; the vessel is taken from now on.

        What was drawn off from this vessel before is closed by it. ``supplies`` is what will
        be taken out of the stores when the brew starts.

        Raises
        ------
        ImpossibleInput
            Field "vessel_id" with reason "material", "occupied", "retired" or
            "resting_culture"; "culture_id" with reason "gone"; "name" with reason
            "empty" or "too_long"; a field of the wish; or as
            :func:`brewdesk.services.stockdraws.check_supplies`.
        """
        draft, vessel = self.checked_draft(vessel_id, culture_id, name, wish)
        self._check_supplies(supplies)

        def work(unit: UnitOfWork) -> Batch:
            close_drawn_off(unit, vessel_id)
            batch = unit.batches.add(draft)
            lay_out(unit, batch, supplies)
            return batch

        return self._door.perform(
            ActKind.PLAN_BATCH,
            {"name": draft.name, "vessel": vessel.name, "fill_volume_l": draft.fill_volume_l},
            work,
            topics=Topic.BATCHES,
            batch_id=lambda batch: batch.id,
            vessel_id=vessel_id,
            culture_id=culture_id,
        )

    def edit_plan(
        self,
        batch_id: int,
        *,
        vessel_id: int,
        culture_id: int | None,
        name: str,
        wish: Wish,
        supplies: PlanSupplies | None = None,
    ) -> Batch:
        """Change a plan that has not been begun.

        Without ``supplies`` it takes from the stores what it took before, in new amounts.

        Raises
        ------
        ImpossibleInput
            As for `plan`; field "batch_id" with reason "not_planned" once brewing began.
        """
        batch = self._expect(batch_id, BatchStage.PLANNED, reason="not_planned")
        draft, vessel = self.checked_draft(vessel_id, culture_id, name, wish, batch_id=batch_id)
        fields = changed_plan(batch, draft)
        self._check_supplies(supplies)

        def work(unit: UnitOfWork) -> Batch:
            changed = unit.batches.change(batch_id, **fields)
            lay_out(unit, changed, supplies)
            return changed

        return self._door.perform(
            ActKind.EDIT_PLAN,
            {"name": draft.name, "vessel": vessel.name},
            work,
            topics=Topic.BATCHES,
            batch_id=batch_id,
            vessel_id=vessel_id,
            culture_id=culture_id,
        )

    def drop_plan(self, batch_id: int) -> None:
        """Give up a plan: the batch is gone and its vessel free, until undone.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "not_planned" once brewing began.
        """
        batch = self._expect(batch_id, BatchStage.PLANNED, reason="not_planned")

        def work(unit: UnitOfWork) -> None:
            for photo in unit.photos.where(batch_id=batch_id):
                unit.photos.remove(photo.id)
            for reading in unit.readings.where(batch_id=batch_id):
                unit.readings.remove(reading.id)
            # Starter lent to it has left its jar all the same, but went nowhere that is known.
            for lent in unit.transfers.where(to_batch_id=batch_id):
                unit.transfers.change(lent.id, to_batch_id=None)
            drop_plan_supplies(unit, batch_id)
            forget_batch(unit, batch_id, given_up_reason())
            unit.batches.remove(batch_id)
            forming.drop(unit, batch, self._door.clock.now())

        self._door.perform(
            ActKind.DROP_PLAN,
            {"name": batch.name},
            work,
            topics=Topic.BATCHES,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
        )

    def culture_verdicts(
        self, culture_id: int | None, *, batch_id: int | None = None
    ) -> tuple[Verdict, ...]:
        """Warn of a chosen culture that is bound elsewhere already; it refuses nothing.

        A culture is in one place: whichever batch is brewed first takes it. ``batch_id`` is
        the plan being changed, which does not count.
        """
        if culture_id is None:
            return ()
        with self._door.store.read() as unit:
            others = unit.batches.where(culture_id=culture_id, stage=LIVE_STAGES)
        codes = {
            BatchStage.PLANNED: "culture_planned_elsewhere",
            BatchStage.BREWING: "culture_planned_elsewhere",
            BatchStage.SOURING: "culture_at_work_elsewhere",
        }
        found = dict.fromkeys(codes[other.stage] for other in others if other.id != batch_id)
        return tuple(Verdict(code, Level.WARN) for code in found)

    def checked_draft(
        self,
        vessel_id: int,
        culture_id: int | None,
        name: str,
        wish: Wish,
        *,
        batch_id: int | None = None,
    ) -> tuple[BatchDraft, Vessel]:
        """Check a plan and reckon its amounts; nothing is kept.

        ``batch_id`` is the plan that this one takes the place of.

        Raises
        ------
        ImpossibleInput
            As `plan`.
        """
        with self._door.store.read() as unit:
            vessel = unit.vessels.get(vessel_id)
            check_vessel(unit, vessel, culture_id, batch_id)
            check_culture(unit, culture_id, batch_id)
        return self.draft(vessel, culture_id, name, wish), vessel

    def draft(self, vessel: Vessel, culture_id: int | None, name: str, wish: Wish) -> BatchDraft:
        """Turn a wish into a batch to be planned, amounts and all; nothing is kept.

        Raises
        ------
        ImpossibleInput
            As for `plan`, but for the vessel and the culture, which are not looked at.
        """
        tidy = tidy_name(name)
        if wish.fill_volume_l > vessel.brim_volume_l:
            raise ImpossibleInput(
                "fill_volume_l",
                wish.fill_volume_l,
                low=0.0,
                high=vessel.brim_volume_l,
                unit="L",
                reason="above_brim",
            )
        plan = self.plan_preview(replace(wish, working_volume_l=vessel.working_volume_l))
        return BatchDraft(
            name=tidy,
            vessel_id=vessel.id,
            culture_id=culture_id,
            stage=BatchStage.PLANNED,
            planned_at=self._door.clock.now(),
            **wish_columns(wish),
            sugar_g=plan.sugar_g,
            tea_g=plan.tea_g,
            starter_volume_l=plan.starter_volume_l,
            hot_water_g=plan.hot_water_g,
            cold_water_g=plan.cold_water_g,
            mixed_temperature_c=plan.mixed_temperature_c.value,
            start_ph=plan.start_ph.value,
            start_ph_low=plan.start_ph.low,
            start_ph_high=plan.start_ph.high,
        )

    def _check_supplies(self, supplies: PlanSupplies | None) -> None:
        with self._door.store.read() as unit:
            check_supplies(unit, supplies)
