"""Picks up, and puts down: the picture of the shelf for the rule book, and the deed itself."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime
from typing import TYPE_CHECKING, Protocol

from brewdesk.services.batches import Batches
from brewdesk.services.brewing import Brewing, gate_verdict
from brewdesk.services.cultures import GONE
from brewdesk.services.door import Door
from brewdesk.services.drops import (
    Carried,
    Choice,
    ChoiceKind,
    Drop,
    JarFacts,
    ShelfFacts,
    Target,
    can_be_carried,
    choices,
)
from brewdesk.services.ledger import balance_of
from brewdesk.services.lending import resting_now_l
from brewdesk.services.liquids import Liquids
from brewdesk.services.vessels import LIVE_STAGES
from brewdesk.store.records import Batch, Culture, Step, Transfer, Vessel
from culturecore.errors import ImpossibleInput
from culturecore.stages import BatchStage, CultureState, StepKind, StepState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import ReadUnit

_LIVE_STEPS = (StepKind.STARTER_IN, StepKind.CULTURE_IN)


class CultureActs(Protocol):
    """What carrying needs of the care for cultures."""

    def move(self, culture_id: int, vessel_id: int | None) -> Culture:
        """Put a culture into another vessel."""
        ...

    def rest(self, culture_id: int, vessel_id: int, volume_l: float) -> Culture:
        """Put a culture to rest in so much liquid."""
        ...

    def split(
        self,
        culture_id: int,
        *,
        name: str,
        vessel_id: int | None,
        pellicle_mm: float | None = None,
        rest_volume_l: float | None = None,
        note: str = "",
    ) -> Culture:
        """Take a daughter off a culture."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Answers:
    """What a choice asked for, as far as it did."""

    volume_l: float | None = None
    name: str = ""
    pellicle_mm: float | None = None
    vessel_id: int | None = None
    store_id: int | None = None
    note: str = ""


class Carrying:
    """Carry cultures and batches over the shelf."""

    def __init__(
        self,
        door: Door,
        *,
        liquids: Liquids,
        batches: Batches,
        brewing: Brewing,
        care: CultureActs,
    ) -> None:
        self._door = door
        self._liquids = liquids
        self._batches = batches
        self._brewing = brewing
        self._care = care

    def facts(self) -> ShelfFacts:
        """Return the shelf as it is now; take it once for each carrying."""
        with self._door.store.read() as unit:
            facts = _read_facts(unit, self._door.clock.now())
        suggestion = self._liquids.starter_suggestion()
        if suggestion.plan_name is None:
            return facts
        return replace(facts, starter_l=suggestion.volume_l)

    def can_be_carried(self, carried: Carried) -> Drop:
        """Return whether something may be picked up now."""
        return can_be_carried(self.facts(), carried)

    def choices(self, carried: Carried, target: Target) -> Drop:
        """Return what can be done now with something carried at a target."""
        return choices(self.facts(), carried, target)

    def perform(self, choice: Choice, answers: Answers | None = None) -> object:
        """Do what was chosen.

        Raises
        ------
        ImpossibleInput
            As the service behind it; "volume_l" with reason "empty" if it was not given.
        StepShut
            For a culture put into tea that is not known to be cool.
        """
        given = answers or Answers()
        carried_id, vessel_id = choice.carried.id, choice.target.vessel_id
        match choice.kind:
            case ChoiceKind.MOVE_CULTURE:
                return self._care.move(carried_id, vessel_id)
            case ChoiceKind.SPLIT_CULTURE:
                return self._care.split(
                    carried_id,
                    name=given.name,
                    vessel_id=vessel_id,
                    pellicle_mm=given.pellicle_mm,
                    rest_volume_l=given.volume_l,
                    note=given.note,
                )
            case ChoiceKind.REST:
                return self._care.rest(
                    carried_id, _needed("vessel_id", given.vessel_id), _litres(given)
                )
            case ChoiceKind.USE_IN_PLAN:
                return self._use_in_plan(_needed("to_batch_id", choice.to_batch_id), carried_id)
            case ChoiceKind.PUT_IN:
                return self._brewing.finish(_needed("step_id", choice.step_id))
        return self._pour(choice, given)

    def _pour(self, choice: Choice, given: Answers) -> object:
        liquids = self._liquids
        if choice.kind is ChoiceKind.LEND:
            plan_id = choice.to_batch_id
            return liquids.lend_starter(
                _litres(given),
                from_batch_id=choice.from_batch_id,
                from_culture_id=choice.from_culture_id,
                to_batch_id=plan_id,
                to_vessel_id=None if plan_id is not None else choice.target.vessel_id,
            )
        batch_id = _needed("batch_id", choice.from_batch_id)
        match choice.kind:
            case ChoiceKind.POUR_OVER:
                vessel_id = _needed("vessel_id", choice.target.vessel_id)
                return liquids.move_batch(batch_id, vessel_id)
            case ChoiceKind.MERGE_ALL:
                into_id = _needed("into_batch_id", choice.to_batch_id)
                return liquids.merge(batch_id, into_id, culture_name=given.name)
            case ChoiceKind.MERGE_PART:
                into_id = _needed("into_batch_id", choice.to_batch_id)
                return liquids.merge(batch_id, into_id, _litres(given))
            case ChoiceKind.KEEP:
                store_id = _needed("culture_id", _store_id(choice, given))
                return liquids.keep_starter(batch_id, _litres(given), store_id)
            case ChoiceKind.DRAW_PART:
                return liquids.draw_part(batch_id, _litres(given), note=given.note)
            case ChoiceKind.FILL_BOTTLES:
                raise ValueError("bottles are reckoned and filled on a page of their own")
        return self._batches.draw_off(batch_id, given.note, kept_l=given.volume_l or 0.0)

    def _use_in_plan(self, batch_id: int, culture_id: int) -> Batch:
        batch = self._batches.get(batch_id)
        return self._batches.edit_plan(
            batch_id,
            vessel_id=batch.vessel_id,
            culture_id=culture_id,
            name=batch.name,
            wish=self._batches.wish_of(batch),
        )


def _store_id(choice: Choice, given: Answers) -> int | None:
    if given.store_id is not None:
        return given.store_id
    return choice.store_ids[0] if len(choice.store_ids) == 1 else None


def _needed(name: str, value: int | None) -> int:
    if value is None:
        raise ImpossibleInput(name, value, reason="empty")
    return value


def _litres(given: Answers) -> float:
    if given.volume_l is None:
        raise ImpossibleInput("volume_l", None, reason="empty")
    return given.volume_l


def _read_facts(unit: ReadUnit, now: datetime) -> ShelfFacts:
    vessels = unit.vessels.where(order_by=("shelf_order", "id"), retired_at=None)
    live = {row.vessel_id: row for row in unit.batches.where(stage=LIVE_STAGES)}
    cultures = {row.id: row for row in unit.cultures.where() if row.state not in GONE}
    resting: dict[int, list[Culture]] = {}
    for culture in cultures.values():
        if culture.vessel_id is not None and culture.state is CultureState.RESTING:
            resting.setdefault(culture.vessel_id, []).append(culture)
    ids = tuple(batch.id for batch in live.values())
    # What was poured from one live batch into another is found by both of its ends.
    transfers = {
        row.id: row
        for row in (
            *unit.transfers.where(from_batch_id=ids),
            *unit.transfers.where(to_batch_id=ids),
        )
    }.values()
    brewing = tuple(row.id for row in live.values() if row.stage is BatchStage.BREWING)
    steps = unit.steps.where(batch_id=brewing, order_by="position")
    jars = {}
    for vessel in vessels:
        batch = live.get(vessel.id)
        of_batch = [] if batch is None else [row for row in steps if row.batch_id == batch.id]
        jars[vessel.id] = _jar(
            vessel, batch, tuple(of_batch), transfers, tuple(resting.get(vessel.id, ()))
        )
    return ShelfFacts(
        jars=jars,
        cultures=cultures,
        batch_jars={batch.id: vessel_id for vessel_id, batch in live.items()},
        resting_l={
            culture.id: resting_now_l(unit, culture, now)
            for in_vessel in resting.values()
            for culture in in_vessel
        },
    )


def _jar(
    vessel: Vessel,
    batch: Batch | None,
    sheet: tuple[Step, ...],
    transfers: Iterable[Transfer],
    resting: tuple[Culture, ...],
) -> JarFacts:
    if batch is None:
        return JarFacts(vessel=vessel, resting=resting)
    is_brewing = batch.stage is BatchStage.BREWING
    return JarFacts(
        vessel=vessel,
        batch=batch,
        now_l=balance_of(batch, transfers).now_l,
        heat=gate_verdict(sheet, batch.culture_limit_c, None) if is_brewing else None,
        open_step=_first_live_step(sheet),
        resting=resting,
    )


def _first_live_step(sheet: tuple[Step, ...]) -> tuple[int, StepKind] | None:
    for step in sheet:
        if step.kind in _LIVE_STEPS and step.state is not StepState.DONE:
            return step.id, step.kind
    return None
