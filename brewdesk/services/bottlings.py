"""Bottles: filled from a batch, looked after, chilled, drunk. Each act can be taken back."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from brewdesk.services import lending, suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.bottledraws import check_bottling_supplies
from brewdesk.services.bottlefilling import fill_bottles
from brewdesk.services.bottlelooks import BottleLooks
from brewdesk.services.bottlingparts import (
    has_culture,
    kitchen_c,
    warmest_jar_c,
    wish_as_filled,
)
from brewdesk.services.bottlingplan import Known, outlook_of, room_for_drink_l
from brewdesk.services.bottlingrows import OPEN_STATES
from brewdesk.services.bottlingwish import (
    BottleGroupWish,
    BottlingOutlook,
    BottlingWish,
)
from brewdesk.services.changes import Topic
from brewdesk.services.ledger import balance_in, check_volume
from brewdesk.services.movingover import check_souring
from brewdesk.services.names import tidy_name
from brewdesk.services.toppingup import check_room
from brewdesk.store.records import (
    Batch,
    Bottling,
    BottlingDraft,
)
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.safety import limit
from culturecore.stages import (
    BatchStage,
    BottleKind,
    BottlingState,
    Quantity,
)

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

__all__ = ["OPEN_STATES", "USUAL_COLD_C", "Bottlings", "StoppedBottling"]

WARMER_THAN_USUAL_C = 5.0  # how much warmer than usual a place may get; an assumption
_FITS = 1.005  # of the bottles' room: what a hand that fills them makes up for
USUAL_COLD_C = 4.0


class StoppedBottling(Exception):  # noqa: N818  # named for what happens, not a fault
    """A bottling that is stopped unless the maker writes down why it is done all the same."""

    def __init__(self, verdicts: tuple[Verdict, ...]) -> None:
        self.verdicts = verdicts
        super().__init__(", ".join(verdict.code for verdict in verdicts))


class Bottlings(BottleLooks):
    """Fill bottles and look after them."""

    def candidates(self) -> tuple[Batch, ...]:
        """Return the batches that can be bottled, the oldest first."""
        with self._door.store.read() as unit:
            return unit.batches.where(stage=BatchStage.SOURING, order_by=("started_at", "id"))

    def wish_for(self, batch_id: int) -> BottlingWish:
        """Return a wish to begin with: all of the batch, in its place, into half-litre bottles.

        Raises
        ------
        NoSuchRow
            If there is no batch with this id.
        """
        with self._door.store.read() as unit:
            batch = unit.batches.get(batch_id)
            place = unit.places.get(unit.vessels.get(batch.vessel_id).place_id)
            now_l = balance_in(unit, batch).now_l
            warmest_c = warmest_jar_c(unit, batch, place.temperature_c)
        group = BottleGroupWish(
            bottle_count=1,
            kind=BottleKind.FIZZY_GLASS,
            brim_volume_l=0.52,
            headspace_share=limit("headspace_share_usual"),
        )
        count = max(int(now_l / group.filled_l), 1)
        return BottlingWish(
            batch_id=batch_id,
            name=batch.name,
            groups=(replace(group, bottle_count=count),),
            place_id=place.id,
            place_temperature_c=kitchen_c(place.temperature_c),
            warmest_c=kitchen_c(place.temperature_c + WARMER_THAN_USUAL_C),
            open_jar_c=kitchen_c(warmest_c),
        )

    def may_keep_in_jar(self, batch_id: int) -> bool:
        """Whether starter may stay in an emptied jar, since its culture is in it."""
        with self._door.store.read() as unit:
            return has_culture(unit, unit.batches.get(batch_id))

    def outlook(self, wish: BottlingWish) -> BottlingOutlook:
        """Reckon what a bottling comes to; nothing is kept.

        Raises
        ------
        ImpossibleInput
            As :func:`brewdesk.services.bottlingplan.outlook_of`; "drink_volume_l" for more
            than there is.
        """
        filled_at = wish.filled_at or self._door.clock.now()
        with self._door.store.read() as unit:
            batch = unit.batches.get(wish.batch_id)
            now_l = balance_in(unit, batch).now_l
            flagged = self._is_flagged(unit, batch)
        free_l = max(now_l - wish.starter_kept_l, 0.0)
        volume_l = wish.drink_volume_l
        if volume_l is None:
            volume_l = min(free_l, room_for_drink_l(wish))
        low, high = self._residual(batch)
        known = Known(
            drink_volume_l=check_volume("drink_volume_l", volume_l, now_l),
            left_in_jar_l=free_l - volume_l if wish.drink_volume_l is None else 0.0,
            residual_low_g_per_l=low,
            residual_high_g_per_l=high,
            verdicts=(self._drinkable(batch, flagged),),
            pace=self._pace_of(),
        )
        return outlook_of(wish, known, filled_at)

    def fill(self, wish: BottlingWish, override_reason: str = "") -> Bottling:
        """Fill the bottles: drink out of the jar, starter kept, bottles and additions noted.

        Raises
        ------
        StoppedBottling
            When a verdict stops it and there is no written reason.
        ImpossibleInput
            As `outlook`; "name"; "drink_volume_l" with reason "bottles_too_few"; "batch_id"
            with reason "no_liquid"; "starter_kept_l", "starter_culture_id" as
            `Liquids.keep_starter`; "filled_at" with reason "in_future".
        """
        name, reason = tidy_name(wish.name), override_reason.strip()
        outlook = self.outlook(wish)
        now = self._door.clock.now()
        if outlook.filled_at > now:
            raise ImpossibleInput("filled_at", outlook.filled_at, reason="in_future")
        is_typed = wish.drink_volume_l is not None
        if is_typed and outlook.left_over_l > outlook.capacity_l * (_FITS - 1.0):
            raise ImpossibleInput(
                "drink_volume_l",
                outlook.drink_volume_l,
                high=outlook.capacity_l,
                unit="L",
                reason="bottles_too_few",
            )
        with self._door.store.read() as unit:
            batch = unit.batches.get(wish.batch_id)
            check_souring("batch_id", batch)
            check_bottling_supplies(unit, wish)
            self._check_starter(unit, batch, wish, outlook.drink_volume_l, now)
        if outlook.is_stopped and not reason:
            stops = tuple(one for one in outlook.verdicts if one.level is Level.STOP)
            raise StoppedBottling(stops)
        draft = self._draft(batch, wish, outlook, name, reason if outlook.is_stopped else "")
        return self._door.perform(
            ActKind.FILL_BOTTLES,
            {
                "name": name,
                "volume_l": outlook.drink_volume_l,
                "count": sum(group.bottle_count for group in wish.groups),
                "override_reason": draft.override_reason,
            },
            lambda unit: fill_bottles(unit, batch, wish, draft, now),
            topics=Topic.BOTTLINGS | Topic.BATCHES | Topic.CULTURES,
            batch_id=batch.id,
            vessel_id=batch.vessel_id,
            culture_id=batch.culture_id,
        )

    def outlook_as_filled(self, bottling_id: int) -> BottlingOutlook:
        """Return what a bottling was reckoned to come to, for its printed sheet. Raises as `get`.

        What was learnt since is in `FizzForecasts.now`.
        """
        parts = self.parts_of(bottling_id)
        bottling = parts.bottling
        known = Known(
            drink_volume_l=bottling.drink_volume_l,
            residual_low_g_per_l=bottling.residual_sugar_low_g_per_l,
            residual_high_g_per_l=bottling.residual_sugar_high_g_per_l,
            pace=self._pace_of(),
        )
        return outlook_of(wish_as_filled(parts), known, bottling.filled_at)

    def chill(
        self,
        bottling_id: int,
        at: datetime | None = None,
        cold_temperature_c: float = USUAL_COLD_C,
    ) -> Bottling:
        """Note that the bottles went into the cold.

        Best before is a month from then: in the cold the gas still rises slowly, and so does
        the alcohol.

        Raises
        ------
        ImpossibleInput
            Field "bottling_id" with reason "not_conditioning"; "at" with reason "in_future" or
            "before_filling"; "cold_temperature_c" outside -5 to 20 degC.
        """
        bottling = self.get(bottling_id)
        if bottling.state is not BottlingState.CONDITIONING:
            raise ImpossibleInput("bottling_id", bottling_id, reason="not_conditioning")
        moment = self._moment(bottling, at)
        if not -5.0 <= cold_temperature_c <= 20.0:
            raise ImpossibleInput(
                "cold_temperature_c", cold_temperature_c, low=-5.0, high=20.0, unit="°C"
            )
        return self._perform(
            ActKind.CHILL_BOTTLES,
            bottling,
            {"name": bottling.name, "temperature_c": cold_temperature_c},
            lambda unit: unit.bottlings.change(
                bottling_id,
                state=BottlingState.CHILLED,
                chilled_at=moment,
                cold_temperature_c=cold_temperature_c,
                best_before=moment + timedelta(days=limit("keeping_days")),
            ),
        )

    def finish(self, bottling_id: int) -> Bottling:
        """Note that the bottles are drunk up. Raises as `discard`."""
        bottling = self._open(bottling_id)
        return self._end(bottling, ActKind.FINISH_BOTTLES, BottlingState.FINISHED, "")

    def discard(self, bottling_id: int, reason: str) -> Bottling:
        """Note that the bottles were poured away, and why.

        Raises
        ------
        ImpossibleInput
            Field "bottling_id" with reason "ended"; "reason" with reason "empty".
        """
        bottling, why = self._open(bottling_id), reason.strip()
        if not why:
            raise ImpossibleInput("reason", reason, reason="empty")
        return self._end(bottling, ActKind.DISCARD_BOTTLES, BottlingState.DISCARDED, why)

    # --- what is known of the batch ---------------------------------------------------------

    def _residual(self, batch: Batch) -> tuple[float, float]:
        """Return the least and most sugar in the drink [g/L]; without a forecast, anything."""
        sugar = self._liquid_of(batch.id).sugar_g_per_l
        if sugar is None:
            return 0.0, min(batch.sugar_g_per_l, 200.0)
        return max(sugar.low, 0.0), min(max(sugar.high, sugar.low, 0.0), 200.0)

    def _is_flagged(self, unit: ReadUnit, batch: Batch) -> bool:
        if batch.suspect_at is not None:
            return True
        if batch.culture_id is None:
            return False
        return unit.cultures.get(batch.culture_id).suspect_at is not None

    def _drinkable(self, batch: Batch, flagged: bool) -> Verdict:
        """Judge the drink: in a closed bottle what is not known counts as not sour enough."""
        if flagged:
            return suspicion.suspect_verdict()
        verdict = self._batches.drinkable_verdict(batch.id)
        if verdict.code == "finished_ph_unknown":
            return replace(verdict, level=Level.STOP)
        return verdict

    def _check_starter(
        self, unit: ReadUnit, batch: Batch, wish: BottlingWish, drink_l: float, now: datetime
    ) -> None:
        """Refuse starter that is not there, or has nowhere to go."""
        left_l = balance_in(unit, batch).now_l - drink_l
        kept_l = wish.starter_kept_l
        if kept_l <= 0.0:
            return
        check_volume("starter_kept_l", kept_l, left_l)
        if wish.starter_culture_id is None:
            if wish.closes_batch and not has_culture(unit, batch):
                raise ImpossibleInput("starter_kept_l", kept_l, reason="no_culture")
            return
        culture = unit.cultures.get(wish.starter_culture_id)
        lending.check_store("starter_culture_id", culture)
        vessel = unit.vessels.get(culture.vessel_id or 0)
        resting = unit.cultures.where(vessel_id=vessel.id)
        resting_l = sum(lending.resting_now_l(unit, row, now) for row in resting)
        check_room("starter_kept_l", kept_l, resting_l, vessel)

    def _draft(
        self,
        batch: Batch,
        wish: BottlingWish,
        outlook: BottlingOutlook,
        name: str,
        override_reason: str,
    ) -> BottlingDraft:
        with self._door.store.read() as unit:
            rows = unit.readings.where(
                order_by=("-at", "-id"), limit=1, batch_id=batch.id, quantity=Quantity.PH
            )
        reading = rows[0] if rows else None
        low, high = outlook.residual_sugar_g_per_l
        return BottlingDraft(
            name=name,
            batch_id=batch.id,
            filled_at=outlook.filled_at,
            drink_volume_l=outlook.drink_volume_l,
            residual_sugar_low_g_per_l=low,
            residual_sugar_high_g_per_l=high,
            target_volumes=wish.target_volumes,
            priming_sugar_g=outlook.priming_sugar_g,
            priming_kind=wish.priming_kind,
            place_id=wish.place_id,
            place_temperature_c=wish.place_temperature_c,
            open_jar_c=wish.open_jar_c,
            warmest_c=wish.warmest_c,
            ph=None if reading is None else reading.value,
            ph_sd=None if reading is None else reading.sd,
            override_reason=override_reason,
            note=wish.note.strip(),
        )

    # --- ends ---------------------------------------------------------------------------

    def _end(
        self, bottling: Bottling, kind: ActKind, state: BottlingState, reason: str
    ) -> Bottling:
        now = self._door.clock.now()
        return self._perform(
            kind,
            bottling,
            {"name": bottling.name, "reason": reason},
            lambda unit: unit.bottlings.change(
                bottling.id, state=state, ended_at=now, end_reason=reason
            ),
        )
