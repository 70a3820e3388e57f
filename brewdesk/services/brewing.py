"""Brewing day: the run sheet from boiling water to the covered vessel.

Steps keep instants, never a running count, so a timer outlives sleep and restart.
Ringing is in ``timers``.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any

from brewdesk.services import forming, suspicion
from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.door import Door
from brewdesk.services.stockdraws import draw_for_batch
from brewdesk.store.records import Batch, Step, StepDraft
from culturecore import heat, safety
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Level, Verdict
from culturecore.stages import BatchPurpose, BatchStage, CultureState, StepKind, StepState

if TYPE_CHECKING:
    from brewdesk.store.unitofwork import UnitOfWork

# A rolling boil of some minutes drives out dissolved gas; common practice, no source.
BOIL_S = 300
# Virginia Tech Extension FST-297, Table 1: boil, then steep for 10 min. The maker may extend it.
STEEP_S = 600
# Stirring until no grain is left; common practice, no source.
DISSOLVE_SUGAR_S = 120

# Still air takes about this much from a vessel's walls by convection and radiation together;
# from memory, good to a factor of two. The estimate built on it is only a time to look.
LOSS_W_PER_M2_K = 15.0
HEAT_J_PER_M3_K = 4.18e6  # water
COOLING_HIGH_MIN = 12 * 60.0

TEMPERATURE_LOW_C, TEMPERATURE_HIGH_C = -5.0, 105.0
EXTEND_HIGH_S = 24 * 3600.0

# Live liquid or a live pellicle goes in at these steps: both have to be spared the heat.
_LIVE_STEPS = (StepKind.STARTER_IN, StepKind.CULTURE_IN)


class StepShut(Exception):  # noqa: N818  # named for the maker's view: the step is not open yet
    """A step that must not be done yet, with the verdict that says why."""

    def __init__(self, verdict: Verdict) -> None:
        self.verdict = verdict
        super().__init__(verdict.code)


class Brewing:
    """Follow the run sheet of a batch."""

    def __init__(self, door: Door) -> None:
        self._door = door

    def start(self, batch_id: int) -> tuple[Step, ...]:
        """Begin brewing a planned batch: lay out its run sheet, take its tea and sugar.

        Raises
        ------
        ImpossibleInput
            Field "batch_id" with reason "not_planned".
        """
        batch = self._batch(batch_id)
        if batch.stage is not BatchStage.PLANNED:
            raise ImpossibleInput("batch_id", batch_id, reason="not_planned")
        drafts = _run_sheet(batch)
        now = self._door.clock.now()

        def work(unit: UnitOfWork) -> tuple[Step, ...]:
            unit.batches.change(batch_id, stage=BatchStage.BREWING)
            draw_for_batch(unit, batch, now)
            return tuple(unit.steps.add(draft) for draft in drafts)

        return self._door.perform(
            ActKind.START_BREW,
            {"name": batch.name},
            work,
            topics=Topic.BATCHES | Topic.STEPS,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
        )

    def steps(self, batch_id: int) -> tuple[Step, ...]:
        """Return a batch's run sheet in order; empty before it was begun."""
        with self._door.store.read() as unit:
            return unit.steps.where(batch_id=batch_id, order_by="position")

    def step(self, step_id: int) -> Step:
        """Return one step.

        Raises
        ------
        NoSuchRow
            If there is no step with this id.
        """
        with self._door.store.read() as unit:
            return unit.steps.get(step_id)

    def running_steps(self) -> tuple[Step, ...]:
        """Return the steps of all batches whose timer runs, the next to end first."""
        with self._door.store.read() as unit:
            rows = unit.steps.where(state=StepState.RUNNING)
        timed = [row for row in rows if row.ends_at is not None]
        return tuple(sorted(timed, key=lambda row: (row.ends_at, row.id)))

    def remaining_s(self, step: Step) -> float | None:
        """Return the seconds left on a step's timer, negative once it has ended.

        None for a step without a timer, and for one that is done.
        """
        if step.state is StepState.DONE:
            return None
        if step.ends_at is not None:
            return (step.ends_at - self._door.clock.now()).total_seconds()
        if step.state is StepState.PAUSED:
            return step.remaining_s
        return None if step.planned_s is None else float(step.planned_s)

    def begin(self, step_id: int) -> Step:
        """Begin a step; its timer runs from now.

        Raises
        ------
        ImpossibleInput
            Field "step_id" with reason "not_waiting" or "not_brewing".
        """
        step, batch = self._expect(step_id, StepState.WAITING, reason="not_waiting")
        now = self._door.clock.now()
        ends_at = None if step.planned_s is None else now + timedelta(seconds=step.planned_s)
        return self._change(
            ActKind.START_STEP,
            step,
            batch,
            state=StepState.RUNNING,
            started_at=now,
            ends_at=ends_at,
        )

    def pause(self, step_id: int) -> Step:
        """Stop a step's timer where it is.

        Raises
        ------
        ImpossibleInput
            Field "step_id" with reason "not_running" or "not_brewing".
        """
        step, batch = self._expect(step_id, StepState.RUNNING, reason="not_running")
        left = self.remaining_s(step)
        return self._change(
            ActKind.PAUSE_STEP,
            step,
            batch,
            state=StepState.PAUSED,
            ends_at=None,
            remaining_s=None if step.ends_at is None or left is None else max(0.0, left),
        )

    def resume(self, step_id: int) -> Step:
        """Let a paused step's timer run on.

        Raises
        ------
        ImpossibleInput
            Field "step_id" with reason "not_paused" or "not_brewing".
        """
        step, batch = self._expect(step_id, StepState.PAUSED, reason="not_paused")
        left = step.remaining_s
        ends_at = None if left is None else self._door.clock.now() + timedelta(seconds=left)
        return self._change(
            ActKind.RESUME_STEP,
            step,
            batch,
            state=StepState.RUNNING,
            ends_at=ends_at,
            remaining_s=None,
        )

    def extend(self, step_id: int, seconds: float) -> Step:
        """Give a step more time; one that has already rung runs on from now.

        Raises
        ------
        ImpossibleInput
            Field "seconds" out of range; "step_id" with reason "done" or "not_brewing".
        """
        if not (math.isfinite(seconds) and 0.0 < seconds <= EXTEND_HIGH_S):
            raise ImpossibleInput("seconds", seconds, low=0.0, high=EXTEND_HIGH_S, unit="s")
        step, batch = self._step(step_id)
        if step.state is StepState.DONE:
            raise ImpossibleInput("step_id", step_id, reason="done")
        fields: dict[str, Any] = {"planned_s": round((step.planned_s or 0) + seconds)}
        if step.state is StepState.RUNNING:
            now = self._door.clock.now()
            fields["ends_at"] = max(step.ends_at or now, now) + timedelta(seconds=seconds)
        elif step.state is StepState.PAUSED:
            fields["remaining_s"] = (step.remaining_s or 0.0) + seconds
        return self._change(ActKind.EXTEND_STEP, step, batch, {"seconds": seconds}, **fields)

    def finish(
        self, step_id: int, temperature_c: float | None = None, override_reason: str = ""
    ) -> Step:
        """Tick a step off, with the liquid's temperature if it was taken.

        Starter and culture stay out until the liquid is known to be no warmer than the
        batch's limit, or the maker writes down why it goes in all the same. Putting the
        culture in moves it to the vessel; covering the vessel makes the batch souring,
        counted from when the first live part went in.

        Raises
        ------
        StepShut
            For a live step without a temperature that allows it, and without a reason; and
            whatever the reason while culture or starter may carry mold.
        ImpossibleInput
            Field "temperature_c" out of range; "step_id" with reason "done",
            "not_brewing" or "nothing_live_in".
        """
        check_temperature(temperature_c)
        step, batch = self._step(step_id)
        if step.state is StepState.DONE:
            raise ImpossibleInput("step_id", step_id, reason="done")
        reason = override_reason.strip() if step.kind in _LIVE_STEPS else ""
        sheet = self.steps(batch.id)
        if step.kind in _LIVE_STEPS:
            self._check_not_suspect(batch)
        if step.kind in _LIVE_STEPS and not reason:
            verdict = gate_verdict(sheet, batch.culture_limit_c, temperature_c)
            if verdict is not None:
                raise StepShut(verdict)
        now = self._door.clock.now()
        fields: dict[str, Any] = {
            "state": StepState.DONE,
            "started_at": step.started_at or now,
            "finished_at": now,
            "ends_at": None,
            "remaining_s": None,
            "temperature_c": temperature_c,
            "override_reason": reason,
        }
        facts: dict[str, object] = {"temperature_c": temperature_c, "override_reason": reason}
        if step.kind is StepKind.COVER and batch.stage is BatchStage.BREWING:
            started_at = _live_since(sheet)
            if started_at is None:
                raise ImpossibleInput("step_id", step_id, reason="nothing_live_in")
            facts["started_at"] = started_at.isoformat()
            return self._change(
                ActKind.START_SOURING,
                step,
                batch,
                facts,
                also=lambda unit: _start_souring(unit, batch, started_at),
                **fields,
            )
        also = None
        if step.kind is StepKind.CULTURE_IN:
            also = lambda unit: _move_culture(unit, batch)  # noqa: E731  # one act with the step
        return self._change(ActKind.FINISH_STEP, step, batch, facts, also=also, **fields)

    def note_already_in(
        self,
        batch_id: int,
        started_at: datetime,
        temperature_c: float | None = None,
        override_reason: str = "",
    ) -> Batch:
        """Enter a planned batch that was already brewed, without its run sheet.

        ``started_at`` is when the starter or culture went in, ``temperature_c`` what the
        liquid had then. As on the run sheet, a missing or too high temperature needs the
        maker's written reason.

        Raises
        ------
        StepShut
            Without a temperature that allows it, and without a reason.
        ImpossibleInput
            Field "batch_id" with reason "not_planned"; "started_at" with reason
            "in_future"; "temperature_c" out of range.
        """
        check_temperature(temperature_c)
        batch = self._batch(batch_id)
        if batch.stage is not BatchStage.PLANNED:
            raise ImpossibleInput("batch_id", batch_id, reason="not_planned")
        if started_at > self._door.clock.now():
            raise ImpossibleInput("started_at", started_at, reason="in_future")
        reason = override_reason.strip()
        verdict = gate_verdict((), batch.culture_limit_c, temperature_c)
        if verdict is not None and not reason:
            raise StepShut(verdict)
        has_culture = batch.culture_id is not None and batch.purpose is BatchPurpose.DRINK
        live = StepKind.CULTURE_IN if has_culture else StepKind.STARTER_IN

        def work(unit: UnitOfWork) -> Batch:
            unit.steps.add(
                StepDraft(
                    batch_id=batch_id,
                    position=1,
                    kind=live,
                    state=StepState.DONE,
                    started_at=started_at,
                    finished_at=started_at,
                    temperature_c=temperature_c,
                    override_reason=reason,
                )
            )
            _move_culture(unit, batch)
            forming.settle(unit, batch, started_at)
            draw_for_batch(unit, batch, started_at)
            return unit.batches.change(
                batch_id,
                stage=BatchStage.SOURING,
                started_at=started_at,
                **suspicion.inherited(unit, batch),
            )

        return self._door.perform(
            ActKind.NOTE_ALREADY_IN,
            {
                "name": batch.name,
                "started_at": started_at.isoformat(),
                "temperature_c": temperature_c,
                "override_reason": reason,
            },
            work,
            topics=Topic.BATCHES | Topic.STEPS | Topic.CULTURES,
            batch_id=batch_id,
            vessel_id=batch.vessel_id,
            culture_id=batch.culture_id,
        )

    def standing_verdict(self, batch_id: int) -> Verdict | None:
        """Judge how long the sweet tea has stood without starter; None while that is short.

        Counted from when the cold water went in, since about then it falls below 57 degC;
        the rule itself counts from that temperature.
        """
        done = {
            step.kind: step.finished_at
            for step in self.steps(batch_id)
            if step.finished_at is not None
        }
        mixed_at = done.get(StepKind.ADD_COLD_WATER)
        if mixed_at is None or any(kind in done for kind in _LIVE_STEPS):
            return None
        hours = (self._door.clock.now() - mixed_at) / timedelta(hours=1)
        verdict = safety.uncultured_verdict(max(0.0, hours))
        return None if verdict.level is Level.INFORM else verdict

    def gate(self, step_id: int, temperature_c: float | None = None) -> Verdict | None:
        """Return what keeps a step shut at this temperature, or None if it is open."""
        step, batch = self._step(step_id)
        if step.kind not in _LIVE_STEPS:
            return None
        with self._door.store.read() as unit:
            if suspicion.inherited(unit, batch):
                return suspicion.suspect_verdict()
        return gate_verdict(self.steps(batch.id), batch.culture_limit_c, temperature_c)

    def _check_not_suspect(self, batch: Batch) -> None:
        """Keep what may carry mold out; no reason opens this, only clearing it first does."""
        with self._door.store.read() as unit:
            if suspicion.inherited(unit, batch):
                raise StepShut(suspicion.suspect_verdict())

    def _change(
        self,
        kind: ActKind,
        step: Step,
        batch: Batch,
        facts: dict[str, object] | None = None,
        *,
        also: Callable[[UnitOfWork], None] | None = None,
        **fields: object,
    ) -> Step:
        def work(unit: UnitOfWork) -> Step:
            changed = unit.steps.change(step.id, **fields)
            if also is not None:
                also(unit)
            return changed

        return self._door.perform(
            kind,
            {"name": batch.name, "step": step.kind.value} | (facts or {}),
            work,
            topics=Topic.STEPS,
            batch_id=batch.id,
            vessel_id=batch.vessel_id,
        )

    def _batch(self, batch_id: int) -> Batch:
        with self._door.store.read() as unit:
            return unit.batches.get(batch_id)

    def _step(self, step_id: int) -> tuple[Step, Batch]:
        with self._door.store.read() as unit:
            step = unit.steps.get(step_id)
            batch = unit.batches.get(step.batch_id)
        if batch.stage not in (BatchStage.BREWING, BatchStage.SOURING):
            raise ImpossibleInput("step_id", step_id, reason="not_brewing")
        return step, batch

    def _expect(self, step_id: int, state: StepState, *, reason: str) -> tuple[Step, Batch]:
        step, batch = self._step(step_id)
        if step.state is not state:
            raise ImpossibleInput("step_id", step_id, reason=reason)
        return step, batch


def gate_verdict(
    sheet: tuple[Step, ...], limit_c: float, temperature_c: float | None
) -> Verdict | None:
    """Judge whether something live may go in now; None if it may.

    The temperature given with the step counts; without one, the lowest entered at an
    earlier step from cooling on, since liquid on the shelf does not warm up again.
    """
    if temperature_c is None:
        known = [
            step.temperature_c
            for step in sheet
            if step.kind in (StepKind.COOL, *_LIVE_STEPS) and step.temperature_c is not None
        ]
        if not known:
            return Verdict("culture_temperature_unknown", Level.STOP, {"limit_c": limit_c})
        temperature_c = min(known)
    verdict = safety.culture_temperature_verdict(temperature_c, limit_c)
    return verdict if verdict.level is Level.STOP else None


def _run_sheet(batch: Batch) -> tuple[StepDraft, ...]:
    timed: list[tuple[StepKind, int | None]] = [
        (StepKind.BOIL, BOIL_S),
        (StepKind.STEEP, STEEP_S),
        (StepKind.LIFT_TEA, None),
        (StepKind.DISSOLVE_SUGAR, DISSOLVE_SUGAR_S),
        (StepKind.ADD_COLD_WATER, None),
        (StepKind.COOL, cooling_estimate_s(batch)),
        (StepKind.STARTER_IN, None),
    ]
    if batch.culture_id is not None and batch.purpose is BatchPurpose.DRINK:
        timed.append((StepKind.CULTURE_IN, None))
    timed.append((StepKind.COVER, None))
    return tuple(
        StepDraft(batch_id=batch.id, position=position, kind=kind, planned_s=planned_s)
        for position, (kind, planned_s) in enumerate(timed, start=1)
    )


def cooling_estimate_s(batch: Batch) -> int | None:
    """Estimate how long the mixed sweet tea needs to cool to the culture's limit, in s.

    None if it needs no cooling, or if it would take more than half a day, as in a place
    about as warm as the limit. Only the reading at the end of the step counts; this
    tells when to take it.
    """
    room_c, limit_c = batch.place_temperature_c, batch.culture_limit_c
    if batch.mixed_temperature_c <= limit_c or room_c >= limit_c:
        return None
    volume_m3 = (batch.fill_volume_l - batch.starter_volume_l) / 1000.0
    # A cylinder as high as it is wide has 5.54 V^(2/3) of wall, foot and open surface.
    loss_w_per_k = LOSS_W_PER_M2_K * 5.54 * volume_m3 ** (2 / 3)
    k_per_min = 60.0 * loss_w_per_k / (volume_m3 * HEAT_J_PER_M3_K)
    minutes = heat.minutes_until(
        now_c=batch.mixed_temperature_c,
        target_c=limit_c,
        ambient_c=room_c,
        k_per_min=k_per_min,
        read_at_c=batch.mixed_temperature_c,
    ).value
    return round(minutes * 60.0) if minutes <= COOLING_HIGH_MIN else None


def check_temperature(temperature_c: float | None) -> None:
    """Refuse a temperature that no liquid in a kitchen has.

    Raises
    ------
    ImpossibleInput
        Field "temperature_c" out of range.
    """
    if temperature_c is None:
        return
    if not TEMPERATURE_LOW_C <= temperature_c <= TEMPERATURE_HIGH_C:  # a NaN fails this too
        raise ImpossibleInput(
            "temperature_c",
            temperature_c,
            low=TEMPERATURE_LOW_C,
            high=TEMPERATURE_HIGH_C,
            unit="degC",
        )


def _live_since(sheet: tuple[Step, ...]) -> datetime | None:
    moments = [
        step.finished_at
        for step in sheet
        if step.kind in _LIVE_STEPS and step.finished_at is not None
    ]
    return min(moments, default=None)


def _start_souring(unit: UnitOfWork, batch: Batch, started_at: datetime) -> None:
    unit.batches.change(batch.id, stage=BatchStage.SOURING, started_at=started_at)
    forming.settle(unit, batch, started_at)


def _move_culture(unit: UnitOfWork, batch: Batch) -> None:
    if batch.culture_id is not None and batch.purpose is BatchPurpose.DRINK:
        unit.cultures.change(
            batch.culture_id,
            vessel_id=batch.vessel_id,
            state=CultureState.AT_WORK,
            rest_volume_l=None,  # the liquid it rested in went in with it
        )
