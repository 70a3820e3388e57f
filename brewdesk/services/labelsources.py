"""What in the pantry may get a label: vessels, batches, bottles, cultures, as plain values."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import datetime, timedelta

from brewdesk.services.bottlingparts import BottlingParts, parts_in
from brewdesk.services.bottlings import OPEN_STATES
from brewdesk.services.door import Door
from brewdesk.services.labelingredients import ingredients_of_batch, ingredients_of_bottling
from brewdesk.services.labels import LabelFacts, LabelKind
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.reminders import no_window
from brewdesk.services.trialjars import hidden_codes
from brewdesk.services.wording.labels import bottles_words, in_vessel_words, suspect_words
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Batch, Culture, Vessel
from culturecore.safety import limit
from culturecore.stages import BatchStage, BottlingState, CultureState

_OVER = (BatchStage.DRAWN_OFF, BatchStage.CLOSED)
_LATELY = timedelta(days=1)
_GONE = (CultureState.RETIRED, CultureState.GIVEN_AWAY, CultureState.LOST)


class LabelSources:
    """Read what may be labelled.

    A jar of a blind trial has its code for a name and no ingredients, until the codes are
    opened; so have its bottles.

    ``window_of`` gives a batch's forecast tasting window, ``danger_of`` when a bottling may be
    in danger at the earliest.
    """

    def __init__(
        self,
        door: Door,
        *,
        window_of: Callable[[int], TastingWindow | None] = no_window,
        danger_of: Callable[[int], datetime | None] = lambda _bottling_id: None,
    ) -> None:
        self._door = door
        self._window_of = window_of
        self._danger_of = danger_of

    def jars(self) -> tuple[LabelFacts, ...]:
        """Return the vessels on the shelf, with what is in them."""
        with self._door.store.read() as unit:
            vessels = unit.vessels.where(order_by="shelf_order", retired_at=None)
            live = tuple(stage for stage in BatchStage if stage.is_live)
            batch_in = {row.vessel_id: row for row in unit.batches.where(stage=live)}
            resting = unit.cultures.where(state=CultureState.RESTING)
            resting_in = {row.vessel_id: row for row in resting if row.vessel_id is not None}
            codes = hidden_codes(unit)
        return tuple(
            self._of_vessel(vessel, batch_in.get(vessel.id), resting_in.get(vessel.id), codes)
            for vessel in vessels
        )

    def batches(self) -> tuple[LabelFacts, ...]:
        """Return every batch that was not discarded, newest first."""
        stages = tuple(stage for stage in BatchStage if stage is not BatchStage.DISCARDED)
        with self._door.store.read() as unit:
            rows = unit.batches.where(order_by=("-planned_at", "-id"), stage=stages)
            codes = hidden_codes(unit)
        return tuple(self._of_batch(row, codes) for row in rows)

    def bottlings(self) -> tuple[LabelFacts, ...]:
        """Return the bottles that stand or are in the cold, the newest first.

        By when they are to be chilled is not among it: see `with_danger`.
        """
        with self._door.store.read() as unit:
            rows = unit.bottlings.where(state=OPEN_STATES, order_by=("-filled_at", "-id"))
            found = [(unit.batches.get(row.batch_id), parts_in(unit, row.id)) for row in rows]
            codes = hidden_codes(unit)
        return tuple(self._of_bottling(batch, parts, codes) for batch, parts in found)

    def with_danger(self, facts: LabelFacts) -> LabelFacts:
        """Add by when bottles are to be chilled; it takes too long to be reckoned for all."""
        with self._door.store.read() as unit:
            is_warm = unit.bottlings.get(facts.record_id).state is BottlingState.CONDITIONING
        return replace(facts, chill_by=self._danger_of(facts.record_id)) if is_warm else facts

    def cultures(self) -> tuple[LabelFacts, ...]:
        """Return the cultures that are here, newest first."""
        with self._door.store.read() as unit:
            rows = unit.cultures.where(order_by=("-born_at", "-id"))
        return tuple(self.of_culture(row) for row in rows if row.state not in _GONE)

    def _of_batch(self, batch: Batch, codes: Mapping[int, str]) -> LabelFacts:
        """Return what a batch's label starts from; once drawn off it is in bottles."""
        window = self._window_of(batch.id) if batch.stage is BatchStage.SOURING else None
        return LabelFacts(
            record="batch",
            record_id=batch.id,
            kind=LabelKind.BOTTLE if batch.stage in _OVER else LabelKind.JAR,
            name=codes.get(batch.id, batch.name),
            stage=_stage_words(batch),
            made_on=batch.started_at or batch.planned_at,
            taste_from=window.opens_at if window is not None else None,
            ingredients="" if batch.id in codes else ingredients_of_batch(batch),
            is_likely=batch.stage is BatchStage.SOURING and batch.suspect_at is None,
        )

    def _of_bottling(
        self, batch: Batch, parts: BottlingParts, codes: Mapping[int, str]
    ) -> LabelFacts:
        """Return what a bottling's label starts from: one for each bottle that is still closed.

        Bottles that are not chilled yet have no best-before date in the records. Theirs is
        reckoned from the filling, as if they were chilled at once: the earliest it can be.
        """
        bottling = parts.bottling
        keeps = timedelta(days=limit("keeping_days"))
        return LabelFacts(
            record="bottling",
            record_id=bottling.id,
            kind=LabelKind.BOTTLE,
            name=codes.get(batch.id, bottling.name),
            stage=bottles_words(name_of(bottling.state), parts.bottles_left),
            made_on=bottling.filled_at,
            best_before=bottling.best_before or bottling.filled_at + keeps,
            ingredients="" if batch.id in codes else ingredients_of_bottling(batch, parts),
            usual_copies=max(1, parts.bottles_left),
            batch_key=f"batch:{batch.id}",
            is_likely=self._door.clock.now() - bottling.filled_at <= _LATELY,
        )

    def of_culture(self, culture: Culture) -> LabelFacts:
        """Return what a culture's label starts from; one at rest in a vessel has a jar."""
        rests = culture.state is CultureState.RESTING and culture.vessel_id is not None
        is_suspect = culture.suspect_at is not None
        return LabelFacts(
            record="culture",
            record_id=culture.id,
            kind=LabelKind.RESTING_JAR if rests else LabelKind.CULTURE,
            name=culture.name,
            stage=suspect_words() if is_suspect else name_of(culture.state),
            made_on=culture.born_at,
        )

    def _of_vessel(
        self,
        vessel: Vessel,
        batch: Batch | None,
        resting: Culture | None,
        codes: Mapping[int, str],
    ) -> LabelFacts:
        """Return what a vessel's own label starts from, with what is in it now."""
        stage, made_on, taste_from, ingredients = "", None, None, ""
        if batch is not None:
            inside = self._of_batch(batch, codes)
            ingredients = inside.ingredients
            stage = in_vessel_words(inside.name, inside.stage)
            made_on, taste_from = inside.made_on, inside.taste_from
        elif resting is not None:
            stage = in_vessel_words(resting.name, self.of_culture(resting).stage)
            made_on = resting.born_at
        return LabelFacts(
            record="vessel",
            record_id=vessel.id,
            kind=LabelKind.RESTING_JAR if batch is None and resting else LabelKind.JAR,
            name=vessel.name,
            stage=stage,
            made_on=made_on,
            taste_from=taste_from,
            ingredients=ingredients,
            batch_key=f"batch:{batch.id}" if batch is not None else "",
        )


def _stage_words(batch: Batch) -> str:
    return suspect_words() if batch.suspect_at is not None else name_of(batch.stage)
