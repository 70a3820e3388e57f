"""Batches from plan to end. What happens on brewing day is in ``brewing``."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from brewdesk.services import forming, suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.cultures import GONE
from brewdesk.services.door import Door
from brewdesk.services.ending import close_drawn_off, end_batch
from brewdesk.services.names import tidy_name
from brewdesk.services.settings import CULTURE_LIMIT_C, Settings
from brewdesk.services.trialjars import forget_batch
from brewdesk.services.vessels import LIVE_STAGES
from brewdesk.services.wording.stages import name_of
from brewdesk.services.wording.trials import given_up_reason
from brewdesk.store.records import Batch, BatchDraft, Vessel
from culturecore import drinkverdicts, safety, sweettea
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import (
    BatchStage,
    CultureState,
    Method,
    Quantity,
    StarterTaste,
    TeaKind,
)
from culturecore.sweettea import Plan, Starter, Wish

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit, UnitOfWork

_SAME_AMOUNT_L = 1e-6
_NAMES_LOOKED_AT = 60
# What a draft knows nothing of: a changed plan keeps it.
_NOT_OF_THE_WISH = (
    "planned_at",
    "purpose",
    "starter_batch_id",
    "starter_culture_id",
    "suspect_at",
    "suspect_reason",
)


class Batches:
    """Plan batches, look them up, end them."""

    def __init__(self, door: Door, settings: Settings) -> None:
        self._door = door
        self._settings = settings

    def get(self, batch_id: int) -> Batch:
        """Return one batch.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        with self._door.store.read() as unit:
            return unit.batches.get(batch_id)

    def all(self, *, stages: Iterable[BatchStage] = ()) -> tuple[Batch, ...]:
        """Return the batches, newest first; only those in ``stages`` if any are given."""
        wanted = tuple(stages)
        with self._door.store.read() as unit:
            if wanted:
                return unit.batches.where(order_by=("-planned_at", "-id"), stage=wanted)
            return unit.batches.where(order_by=("-planned_at", "-id"))

    def live_in(self, vessel_id: int) -> Batch | None:
        """Return the batch that occupies a vessel, or None."""
        with self._door.store.read() as unit:
            return _live_in(unit, vessel_id)

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

    def plan(self, vessel_id: int, culture_id: int | None, name: str, wish: Wish) -> Batch:
        """Plan a batch: keep the wish and its amounts; the vessel is taken from now on.

        What was drawn off from this vessel before is closed by it.

        Raises
        ------
        ImpossibleInput
            Field "vessel_id" with reason "material", "occupied", "retired" or
            "resting_culture"; "culture_id" with reason "gone"; "name" with reason
            "empty" or "too_long"; or a field of the wish.
        """
        draft, vessel = self.checked_draft(vessel_id, culture_id, name, wish)

        def work(unit: UnitOfWork) -> Batch:
            close_drawn_off(unit, vessel_id)
            return unit.batches.add(draft)

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
        self, batch_id: int, *, vessel_id: int, culture_id: int | None, name: str, wish: Wish
    ) -> Batch:
        """Change a plan that has not been begun.

        Raises
        ------
        ImpossibleInput
            As for `plan`; field "batch_id" with reason "not_planned" once brewing began.
        """
        batch = self._expect(batch_id, BatchStage.PLANNED, reason="not_planned")
        draft, vessel = self.checked_draft(vessel_id, culture_id, name, wish, batch_id=batch_id)
        fields = changed_plan(batch, draft)
        return self._door.perform(
            ActKind.EDIT_PLAN,
            {"name": draft.name, "vessel": vessel.name},
            lambda unit: unit.batches.change(batch_id, **fields),
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
            _check_culture(unit, culture_id, batch_id)
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
            **_wish_columns(wish),
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

    def _expect(self, batch_id: int, stage: BatchStage, *, reason: str) -> Batch:
        batch = self.get(batch_id)
        if batch.stage is not stage:
            raise ImpossibleInput("batch_id", batch_id, reason=reason)
        return batch


def _wish_columns(wish: Wish) -> dict[str, Any]:
    return {
        "fill_volume_l": wish.fill_volume_l,
        "sugar_g_per_l": wish.sugar_g_per_l,
        "tea_kind": wish.tea_kind,
        "tea_g_per_l": wish.tea_g_per_l,
        "bag_g": wish.bag_g,
        "starter_ph": wish.starter.ph,
        "starter_ta_g_per_l": wish.starter.ta_g_per_l,
        "starter_taste": wish.starter.taste,
        "target_start_ph": wish.target_start_ph,
        "water_alkalinity_meq_per_l": wish.water_alkalinity_meq_per_l,
        "hot_water_c": wish.hot_water_c,
        "cold_water_c": wish.cold_water_c,
        "culture_limit_c": wish.culture_limit_c,
        "place_temperature_c": wish.place_temperature_c,
    }


def _live_in(unit: ReadUnit, vessel_id: int) -> Batch | None:
    rows = unit.batches.where(vessel_id=vessel_id, stage=LIVE_STAGES)
    return rows[0] if rows else None


def changed_plan(batch: Batch, draft: BatchDraft) -> dict[str, Any]:
    """Return the columns in which a new draft of a plan differs from the plan.

    When it was planned, and where its starter comes from, stay as they are.
    """
    return {
        field: getattr(draft, field)
        for field in BatchDraft.__dataclass_fields__
        if field not in _NOT_OF_THE_WISH and getattr(draft, field) != getattr(batch, field)
    }


def check_vessel(
    unit: ReadUnit, vessel: Vessel, culture_id: int | None, batch_id: int | None = None
) -> None:
    """Refuse a vessel that cannot take a batch of this culture.

    Raises
    ------
    ImpossibleInput
        Field "vessel_id" with reason "retired", "material", "occupied" or
        "resting_culture".
    """
    if vessel.retired_at is not None:
        raise ImpossibleInput("vessel_id", vessel.id, reason="retired")
    if safety.material_verdict(vessel.material).level is Level.STOP:
        raise ImpossibleInput("vessel_id", vessel.id, reason="material")
    live = _live_in(unit, vessel.id)
    if live is not None and live.id != batch_id:
        raise ImpossibleInput("vessel_id", vessel.id, reason="occupied")
    resting = unit.cultures.where(vessel_id=vessel.id, state=CultureState.RESTING)
    if any(culture.id != culture_id for culture in resting):
        raise ImpossibleInput("vessel_id", vessel.id, reason="resting_culture")


def _check_culture(unit: ReadUnit, culture_id: int | None, batch_id: int | None = None) -> None:
    if culture_id is None:
        return
    culture = unit.cultures.get(culture_id)
    if culture.state in GONE:
        raise ImpossibleInput("culture_id", culture_id, reason="gone")
    if culture.suspect_at is not None:
        raise ImpossibleInput("culture_id", culture_id, reason="suspect")
    grown_in = forming.growing_batch(unit, culture_id)
    if grown_in is not None and grown_in.id != batch_id:
        raise ImpossibleInput("culture_id", culture_id, reason="forming")
