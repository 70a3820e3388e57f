"""A small invented pantry, with everything that watches the time; it can be closed and opened."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta
from pathlib import Path

from brewdesk.services.bottle_reminder_rules import BottlingFacts
from brewdesk.services.changes import Changes
from brewdesk.services.door import Door
from brewdesk.services.history import History
from brewdesk.services.jobs import JobRunner
from brewdesk.services.notices.port import NoticeAction
from brewdesk.services.reminder_clock import ReminderClock
from brewdesk.services.reminder_rules import QuietHours, TastingWindow
from brewdesk.services.reminders import Reminders
from brewdesk.services.timers import Timers
from brewdesk.store.records import (
    Batch,
    BatchDraft,
    BottlingDraft,
    PlaceDraft,
    ReadingDraft,
    Reminder,
    StepDraft,
    VesselDraft,
)
from brewdesk.store.store import Store
from culturecore.stages import (
    BatchStage,
    BottlingState,
    Material,
    Method,
    Quantity,
    ReminderKind,
    StepKind,
    StepState,
    TeaKind,
    VesselShape,
)
from tests.helpers.fakes import FakeClock, FakeNotifier

ALWAYS_LOUD = QuietHours(time(0), time(0))

# Invented, like every name and amount here.
_BATCH = BatchDraft(
    name="Amber",
    vessel_id=0,
    culture_id=None,
    stage=BatchStage.SOURING,
    planned_at=datetime.max,
    fill_volume_l=3.0,
    sugar_g_per_l=55.0,
    tea_kind=TeaKind.BLACK,
    tea_g_per_l=4.0,
    bag_g=2.0,
    starter_ph=3.1,
    starter_ta_g_per_l=None,
    starter_taste=None,
    target_start_ph=4.2,
    water_alkalinity_meq_per_l=1.5,
    hot_water_c=90.0,
    cold_water_c=15.0,
    culture_limit_c=30.0,
    place_temperature_c=24.0,
    sugar_g=150.0,
    tea_g=11.0,
    starter_volume_l=0.4,
    hot_water_g=1000.0,
    cold_water_g=1500.0,
    mixed_temperature_c=27.0,
    start_ph=4.1,
    start_ph_low=3.9,
    start_ph_high=4.3,
)


class WatchedPantry:
    """One store on disk and one run of the services over it; `reopen` begins another run."""

    def __init__(self, path: Path, clock: FakeClock, jobs: JobRunner | None = None) -> None:
        self.path = path
        self.clock = clock
        self.jobs = jobs
        self.bottlings: dict[int, BottlingFacts] = {}
        self.windows: dict[int, TastingWindow] = {}
        self.quiet = ALWAYS_LOUD
        self._open()

    def _open(self) -> None:
        self.store = Store.open(self.path, now=self.clock.now())
        self.changes = Changes()
        self.door = Door(self.store, self.clock, self.changes)
        self.history = History(self.door)
        self.notifier = FakeNotifier()
        self.chimes = 0
        self.reminders = Reminders(
            self.door,
            window_of=self.windows.get,
            bottlings_of=lambda: tuple(self.bottlings.values()),
        )
        self.watch = ReminderClock(
            self.door,
            self.reminders,
            self.notifier,
            quiet_hours=lambda: self.quiet,
            chime=self._count_chime,
            jobs=self.jobs,
        )
        self.timers = Timers(self.door)
        self.rung: list[int] = []
        self.timers.alarm.connect(self.rung.append)
        self.missed: list[tuple[int, ...]] = []
        self.timers.missed.connect(self.missed.append)

    def _count_chime(self) -> None:
        self.chimes += 1

    def close(self) -> None:
        self.watch.stop()
        self.timers.stop()
        self.store.close()

    def reopen(self) -> None:
        """Close the program and open it again, now."""
        self.close()
        self._open()

    def tick(self, times: int = 1, **span: float) -> None:
        """Let ordinary time pass and look, some times over."""
        for _ in range(times):
            self.clock.advance(**(span or {"seconds": 50}))
            self.watch.evaluate()

    def add_batch(self, name: str = "Amber", *, days_ago: float = 0.0, **fields) -> Batch:
        """Put a batch into a vessel of its own, as the program found it."""
        now = self.clock.now()
        started_at = now - timedelta(days=days_ago)

        def work(unit) -> Batch:
            place = unit.places.add(PlaceDraft(name=f"Shelf of {name}", temperature_c=24.0))
            vessel = unit.vessels.add(
                VesselDraft(
                    name=f"Jar of {name}",
                    shape=VesselShape.CYLINDER,
                    material=Material.GLASS,
                    brim_volume_l=4.0,
                    working_volume_l=3.5,
                    inner_diameter_cm=15.0,
                    place_id=place.id,
                )
            )
            values = {
                "name": name,
                "vessel_id": vessel.id,
                "planned_at": started_at,
                "started_at": started_at,
                **fields,
            }
            return unit.batches.add(replace(_BATCH, **values))

        return self.door.quiet(work)

    def add_bottling(self, name: str = "Ginger", *, danger_in: timedelta | None = None) -> int:
        """Fill some bottles now; the earliest danger is known if it is given. Return the id."""
        now = self.clock.now()
        batch = self.add_batch(f"Base of {name}", stage=BatchStage.CLOSED, ended_at=now)
        draft = BottlingDraft(
            name=name,
            batch_id=batch.id,
            filled_at=now,
            drink_volume_l=2.0,
            residual_sugar_low_g_per_l=20.0,
            residual_sugar_high_g_per_l=40.0,
            target_volumes=2.5,
            priming_sugar_g=10.0,
            place_temperature_c=22.0,
            open_jar_c=24.0,
            warmest_c=26.0,
        )
        bottling_id = self.door.quiet(lambda unit: unit.bottlings.add(draft)).id
        self.bottlings[bottling_id] = BottlingFacts(
            bottling_id=bottling_id,
            state=BottlingState.CONDITIONING,
            filled_at=now,
            chill_by_low_at=None if danger_in is None else now + danger_in,
            name=name,
        )
        return bottling_id

    def chill(self, bottling_id: int) -> None:
        """Put the bottles into the fridge, as the records have it."""
        self.door.quiet(
            lambda unit: unit.bottlings.change(
                bottling_id, state=BottlingState.CHILLED, chilled_at=self.clock.now()
            )
        )
        self.bottlings[bottling_id] = replace(
            self.bottlings[bottling_id], state=BottlingState.CHILLED
        )

    def add_ph(self, batch: Batch, ph: float, sd: float = 0.05) -> None:
        draft = ReadingDraft(
            batch_id=batch.id,
            at=self.clock.now(),
            quantity=Quantity.PH,
            method=Method.METER,
            value=ph,
            sd=sd,
        )
        self.door.quiet(lambda unit: unit.readings.add(draft))

    def run_step(self, batch: Batch, position: int, **span: float) -> int:
        """Set a step running that ends after this span; return its id."""
        draft = StepDraft(
            batch_id=batch.id,
            position=position,
            kind=StepKind.STEEP,
            state=StepState.RUNNING,
            planned_s=int(timedelta(**span).total_seconds()),
            ends_at=self.clock.now() + timedelta(**span),
            started_at=self.clock.now(),
        )
        return self.door.quiet(lambda unit: unit.steps.add(draft)).id

    def change_step(self, step_id: int, **fields: object) -> None:
        self.door.quiet(lambda unit: unit.steps.change(step_id, **fields))

    def own(self, text: str, *, batch: Batch | None = None, **span: float) -> Reminder:
        at = self.clock.now() + timedelta(**span)
        return self.reminders.add_own(batch.id if batch else None, at, text)

    def kept(self, kind: ReminderKind) -> tuple[Reminder, ...]:
        with self.store.read() as unit:
            return unit.reminders.where(kind=kind, order_by="due_at")

    def answer(self, key: str, action: NoticeAction) -> None:
        self.notifier.answer(key, action)

    @property
    def titles(self) -> list[str]:
        return [notice.title for notice in self.notifier.shown]
