"""Liquid from jar to jar: drawing off part, keeping starter, topping up, pouring over."""

from __future__ import annotations

from typing import TYPE_CHECKING

from brewdesk.services import lending, movingover, toppingup
from brewdesk.services.acts import ActKind
from brewdesk.services.batches import Batches, changed_plan
from brewdesk.services.brewing import StepShut, check_temperature, gate_verdict
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.ending import close_drawn_off
from brewdesk.services.jarnow import JarNow, StarterKnown
from brewdesk.services.ledger import Balance, balance_in, check_part, transfers_of
from brewdesk.services.lending import StarterSuggestion
from brewdesk.services.movingover import MergePreview, check_clean, check_souring
from brewdesk.services.names import tidy_name
from brewdesk.services.toppingup import FreshWish, TopUpPreview
from brewdesk.store.records import Batch, BatchDraft, Culture, Transfer, TransferDraft, Vessel
from culturecore.blending import poured_together
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, TeaKind, TransferKind

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

# Why part of a batch may be drawn; the other kinds of transfers have acts of their own.
DRAWN_FOR = (TransferKind.DRINK, TransferKind.SAMPLE, TransferKind.LOSS)


class Liquids:
    """Move liquid; every volume balances, and each act can be taken back."""

    def __init__(self, door: Door, batches: Batches, jar_now: JarNow) -> None:
        self._door = door
        self._batches = batches
        self._jar_now = jar_now

    def balance(self, batch_id: int) -> Balance:
        """Return what a batch was filled with, what came and went, and what is there now.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        with self._door.store.read() as unit:
            return balance_in(unit, unit.batches.get(batch_id))

    def volume_now_l(self, batch_id: int) -> float:
        """Return what is in a batch's jar now [L]. Raises as `balance`."""
        return self.balance(batch_id).now_l

    def transfers(self, batch_id: int) -> tuple[Transfer, ...]:
        """Return what went into a batch and out of it, in the order of time."""
        with self._door.store.read() as unit:
            return transfers_of(unit, batch_id)

    def draw_part(
        self,
        batch_id: int,
        volume_l: float,
        kind: TransferKind = TransferKind.DRINK,
        note: str = "",
    ) -> Transfer:
        """Draw part of a souring batch; the rest sours on.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "no_liquid", or "suspect" if it was for drinking;
            "volume_l" for less than a drop, for more than there is, or with reason
            "all_of_it"; "kind" for one that is an act of its own.
        """
        if kind not in DRAWN_FOR:
            raise ImpossibleInput("kind", kind, reason="not_offered")
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            check_souring("batch_id", batch)
            if kind is TransferKind.DRINK:
                check_clean("batch_id", batch)
            volume_l = check_part("volume_l", volume_l, balance_in(unit, batch).now_l)
        draft = TransferDraft(
            at=self._door.clock.now(),
            kind=kind,
            volume_l=volume_l,
            from_batch_id=batch_id,
            note=note.strip(),
        )
        return self._door.perform(
            ActKind.DRAW_PART,
            {"name": batch.name, "volume_l": volume_l, "kind": kind.value},
            lambda unit: unit.transfers.add(draft),
            topics=Topic.BATCHES,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
        )

    def stores(self) -> tuple[Culture, ...]:
        """Return the cultures at rest into whose liquid starter may go, by name."""
        with self._door.store.read() as unit:
            rows = unit.cultures.where(order_by="name")
        return tuple(row for row in rows if lending.may_keep(row))

    def keep_starter(self, batch_id: int, volume_l: float, culture_id: int) -> Transfer:
        """Keep part of a souring batch as starter, in the vessel where a culture rests.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" or "culture_id" with reason "no_liquid" or "suspect";
            "volume_l" for more than there is or than the vessel holds.
        """
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            check_souring("batch_id", batch)
            check_clean("batch_id", batch)
            culture = unit.cultures.get(culture_id)
            lending.check_store("culture_id", culture)
            volume_l = check_part("volume_l", volume_l, balance_in(unit, batch).now_l)
            vessel = unit.vessels.get(culture.vessel_id or 0)
            resting = unit.cultures.where(vessel_id=vessel.id)
            now = self._door.clock.now()
            resting_l = sum(lending.resting_now_l(unit, row, now) for row in resting)
            toppingup.check_room("volume_l", volume_l, resting_l, vessel)
        now = self._door.clock.now()
        return self._door.perform(
            ActKind.KEEP_STARTER,
            {"name": batch.name, "volume_l": volume_l, "to": culture.name},
            lambda unit: lending.keep_with(unit, batch, culture, volume_l, now),
            topics=Topic.BATCHES | Topic.CULTURES,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
            culture_id=culture_id,
        )

    def suggested_starter_l(self, vessel_id: int | None = None) -> float:
        """Return how much starter to keep back [L]; 0 if nothing tells."""
        return self.starter_suggestion(vessel_id).volume_l

    def starter_suggestion(self, vessel_id: int | None = None) -> StarterSuggestion:
        """Return how much starter to keep back, and for what.

        The next plan that has none lent yet tells; without one, filling ``vessel_id`` again.
        """
        with self._door.store.read() as unit:
            plans = unit.batches.where(stage=BatchStage.PLANNED, order_by=("planned_at", "id"))
        for plan in plans:
            if plan.starter_batch_id is None and plan.starter_culture_id is None:
                return StarterSuggestion(volume_l=plan.starter_volume_l, plan_name=plan.name)
        if vessel_id is None:
            return StarterSuggestion(volume_l=0.0)
        again = self._batches.plan_preview(self._batches.default_wish(vessel_id))
        return StarterSuggestion(volume_l=again.starter_volume_l)

    def fresh_like(self, batch_id: int) -> FreshWish:
        """Return the sweet tea to begin with: the batch's own, up to its first volume."""
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            vessel = unit.vessels.get(batch.vessel_id)
            now_l = balance_in(unit, batch).now_l
        full_l = min(max(batch.fill_volume_l, vessel.working_volume_l), vessel.brim_volume_l)
        return FreshWish(
            volume_l=max(full_l - now_l, 0.0),
            sugar_g_per_l=batch.sugar_g_per_l,
            tea_kind=batch.tea_kind,
            tea_g_per_l=batch.tea_g_per_l,
        )

    def preview_top_up(self, batch_id: int, fresh: FreshWish) -> TopUpPreview:
        """Reckon what topping up makes of volume, pH and sugar; nothing is kept.

        Raises
        ------
        ImpossibleInput
            As `top_up`, but for the temperature.
        """
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            vessel = unit.vessels.get(batch.vessel_id)
        check_souring("batch_id", batch)
        return toppingup.preview(batch, vessel, self._jar_now.liquid(batch_id), fresh)

    def top_up(
        self,
        batch_id: int,
        volume_l: float,
        sugar_g_per_l: float,
        tea_kind: TeaKind,
        tea_g_per_l: float,
        temperature_c: float | None,
        override_reason: str = "",
    ) -> Transfer:
        """Pour fresh sweet tea into a souring jar.

        It must be known to be no warmer than the batch's limit, as on brewing day, or the
        maker writes down why it goes in all the same.

        Raises
        ------
        StepShut
            Without a temperature that allows it, and without a reason.
        ImpossibleInput
            Field "batch_id" with reason "no_liquid"; "volume_l" for less than a drop or with
            reason "above_brim_by_now"; "sugar_g_per_l", "tea_g_per_l", "temperature_c".
        """
        fresh = FreshWish(
            volume_l=volume_l,
            sugar_g_per_l=sugar_g_per_l,
            tea_kind=tea_kind,
            tea_g_per_l=tea_g_per_l,
        )
        toppingup.check_fresh(fresh)
        check_temperature(temperature_c)
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            check_souring("batch_id", batch)
            vessel = unit.vessels.get(batch.vessel_id)
            toppingup.check_room("volume_l", volume_l, balance_in(unit, batch).now_l, vessel)
        reason = override_reason.strip()
        verdict = gate_verdict((), batch.culture_limit_c, temperature_c)
        if verdict is not None and not reason:
            raise StepShut(verdict)
        draft = TransferDraft(
            at=self._door.clock.now(),
            kind=TransferKind.TOP_UP,
            volume_l=volume_l,
            to_batch_id=batch_id,
            sugar_g=fresh.sugar_g,
            tea_kind=tea_kind,
            tea_g=fresh.tea_g,
            temperature_c=temperature_c,
            override_reason=reason if verdict is not None else "",
        )
        return self._door.perform(
            ActKind.TOP_UP_BATCH,
            {"name": batch.name, "volume_l": volume_l},
            lambda unit: unit.transfers.add(draft),
            topics=Topic.BATCHES,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
        )

    def preview_merge(
        self, from_batch_id: int, into_batch_id: int, volume_l: float | None = None
    ) -> MergePreview:
        """Reckon what pouring one batch into another makes of it; nothing is kept.

        Raises
        ------
        ImpossibleInput
            As `merge`.
        """
        with self._door.store.read() as unit:
            source, into = unit.batches.get(from_batch_id), unit.batches.get(into_batch_id)
            poured_l, left_l = movingover.checked_pour(unit, source, into, volume_l)
        jar, other = (self._jar_now.liquid(batch.id) for batch in (into, source))
        after = poured_together(jar, movingover.part_of(other, poured_l))
        return MergePreview(poured_l=poured_l, left_l=left_l, before=jar, after=after)

    def merge(
        self,
        from_batch_id: int,
        into_batch_id: int,
        volume_l: float | None = None,
        *,
        culture_name: str = "",
    ) -> Batch:
        """Pour a batch, or part of it, into another; both keep their histories.

        A batch of which nothing is left ends with it, and its culture rests in its vessel;
        given ``culture_name``, the two cultures work on as one new culture instead.

        Raises
        ------
        ImpossibleInput
            Field "from_batch_id" or "into_batch_id" with reason "no_liquid", "suspect" or
            "same_batch"; "volume_l" for more than there is or than there is room for;
            "culture_name" with reason "no_two_cultures" or "not_all", or as a name.
        """
        with self._door.store.read() as unit:
            source, into = unit.batches.get(from_batch_id), unit.batches.get(into_batch_id)
            poured_l, left_l = movingover.checked_pour(unit, source, into, volume_l)
            name = tidy_name(culture_name) if culture_name.strip() else ""
            if name:
                movingover.check_joined_name(unit, source, into, name, left_l)
        now = self._door.clock.now()
        return self._door.perform(
            ActKind.MERGE_BATCHES,
            {"name": source.name, "into": into.name, "volume_l": poured_l},
            lambda unit: movingover.pour_together(
                unit,
                source,
                into,
                poured_l=poured_l,
                left_l=left_l,
                culture_name=name,
                now=now,
            ),
            topics=Topic.BATCHES | Topic.CULTURES,
            batch_id=into_batch_id,
            vessel_id=into.vessel_id,
            culture_id=into.culture_id,
        )

    def move_batch(self, batch_id: int, vessel_id: int) -> Batch:
        """Pour a souring batch over into another vessel, and its culture with it.

        From then on it stands as warm as the new vessel's place usually is.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "no_liquid" or "suspect"; "vessel_id" with reason
            "same_vessel", "retired", "material", "occupied" or "resting_culture";
            "volume_l" with reason "above_brim".
        """
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            check_souring("batch_id", batch)
            check_clean("batch_id", batch)
            vessel = unit.vessels.get(vessel_id)
            movingover.check_new_vessel(unit, batch, vessel, balance_in(unit, batch).now_l)
        now = self._door.clock.now()
        return self._door.perform(
            ActKind.MOVE_BATCH,
            {"name": batch.name, "vessel": vessel.name},
            lambda unit: movingover.move_over(unit, batch, vessel, now),
            topics=Topic.BATCHES | Topic.CULTURES | Topic.VESSELS,
            batch_id=batch_id,
            vessel_id=vessel_id,
            culture_id=batch.culture_id,
        )

    def lend_starter(
        self,
        volume_l: float,
        *,
        from_batch_id: int | None = None,
        from_culture_id: int | None = None,
        to_batch_id: int | None = None,
        to_vessel_id: int | None = None,
    ) -> Batch:
        """Lend starter to a plan, or to an empty vessel, for which a plan is opened.

        The plan is reckoned anew with all the starter lent to it and with what was measured
        of it, and keeps where it came from.

        Raises
        ------
        ImpossibleInput
            Field "from_batch_id" or "from_culture_id" with reason "no_liquid" or "suspect";
            "to_batch_id" with reason "not_planned"; "volume_l" for more than there is;
            "vessel_id" as for a plan, or a field of the wish.
        """
        with self._door.store.read() as unit:
            lender = lending.find_lender(unit, from_batch_id, from_culture_id)
            volume_l = lending.check_loan(unit, lender, volume_l, self._door.clock.now())
            known = lending.known_of(unit, lender)
            plan = lending.find_plan(unit, to_batch_id, to_vessel_id)
            lent_l = 0.0 if plan is None else lending.lent_already_l(unit, plan.id)
        draft, vessel = self._plan_with(plan, to_vessel_id, known, lent_l + volume_l)
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> Batch:
            batch = plan
            changes = {} if plan is None else changed_plan(plan, draft)
            if batch is None:
                close_drawn_off(unit, vessel.id)
                batch = unit.batches.add(draft)
            return lending.lend(unit, lender, batch, volume_l, known=known, plan=changes, now=now)

        return self._door.perform(
            ActKind.LEND_STARTER,
            {"name": lender.name, "to": draft.name, "volume_l": volume_l},
            work,
            topics=Topic.BATCHES | Topic.CULTURES,
            batch_id=lambda batch: batch.id,
            vessel_id=vessel.id,
            culture_id=lender.columns.get("starter_culture_id"),
        )

    def _plan_with(
        self, plan: Batch | None, vessel_id: int | None, known: StarterKnown, starter_l: float
    ) -> tuple[BatchDraft, Vessel]:
        """Reckon a plan, or a new one for a vessel, with so much of a known starter."""
        batches = self._batches
        if plan is not None:
            wish = lending.with_starter(batches.wish_of(plan), known, starter_l)
            place = (plan.vessel_id, plan.culture_id, plan.name)
            return batches.checked_draft(*place, wish, batch_id=plan.id)
        assert vessel_id is not None  # find_plan has seen to it
        wish = lending.with_starter(batches.default_wish(vessel_id), known, starter_l)
        return batches.checked_draft(vessel_id, None, batches.suggested_name(wish.tea_kind), wish)
