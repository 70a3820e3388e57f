"""What in the pantry may get a label: every vessel, batch and culture, as plain values."""

from __future__ import annotations

from collections.abc import Callable

from brewdesk.services.door import Door
from brewdesk.services.labels import LabelFacts, LabelKind
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.reminders import no_window
from brewdesk.services.wording.labels import in_vessel_words, suspect_words
from brewdesk.services.wording.stages import name_of
from brewdesk.store.records import Batch, Culture, Vessel
from culturecore.stages import BatchStage, CultureState

_OVER = (BatchStage.DRAWN_OFF, BatchStage.CLOSED)
_GONE = (CultureState.RETIRED, CultureState.GIVEN_AWAY, CultureState.LOST)


class LabelSources:
    """Read what may be labelled. ``window_of`` gives a batch's forecast tasting window."""

    def __init__(
        self, door: Door, *, window_of: Callable[[int], TastingWindow | None] = no_window
    ) -> None:
        self._door = door
        self._window_of = window_of

    def jars(self) -> tuple[LabelFacts, ...]:
        """Return the vessels on the shelf, with what is in them."""
        with self._door.store.read() as unit:
            vessels = unit.vessels.where(order_by="shelf_order", retired_at=None)
            live = tuple(stage for stage in BatchStage if stage.is_live)
            batch_in = {row.vessel_id: row for row in unit.batches.where(stage=live)}
            resting = unit.cultures.where(state=CultureState.RESTING)
            resting_in = {row.vessel_id: row for row in resting if row.vessel_id is not None}
        return tuple(
            self.of_vessel(vessel, batch_in.get(vessel.id), resting_in.get(vessel.id))
            for vessel in vessels
        )

    def batches(self) -> tuple[LabelFacts, ...]:
        """Return every batch that was not discarded, newest first."""
        stages = tuple(stage for stage in BatchStage if stage is not BatchStage.DISCARDED)
        with self._door.store.read() as unit:
            rows = unit.batches.where(order_by=("-planned_at", "-id"), stage=stages)
        return tuple(self.of_batch(row) for row in rows)

    def cultures(self) -> tuple[LabelFacts, ...]:
        """Return the cultures that are here, newest first."""
        with self._door.store.read() as unit:
            rows = unit.cultures.where(order_by=("-born_at", "-id"))
        return tuple(self.of_culture(row) for row in rows if row.state not in _GONE)

    def of_batch(self, batch: Batch) -> LabelFacts:
        """Return what a batch's label starts from; once drawn off it is in bottles."""
        window = self._window_of(batch.id) if batch.stage is BatchStage.SOURING else None
        return LabelFacts(
            record="batch",
            record_id=batch.id,
            kind=LabelKind.BOTTLE if batch.stage in _OVER else LabelKind.JAR,
            name=batch.name,
            stage=_stage_words(batch),
            made_on=batch.started_at or batch.planned_at,
            taste_from=window.opens_at if window is not None else None,
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

    def of_vessel(self, vessel: Vessel, batch: Batch | None, resting: Culture | None) -> LabelFacts:
        """Return what a vessel's own label starts from, with what is in it now."""
        stage, made_on, taste_from = "", None, None
        if batch is not None:
            inside = self.of_batch(batch)
            stage = in_vessel_words(batch.name, inside.stage)
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
        )


def _stage_words(batch: Batch) -> str:
    return suspect_words() if batch.suspect_at is not None else name_of(batch.stage)
