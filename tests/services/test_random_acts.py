"""Random acts, undone and redone in any order, while the program writes in between."""

from __future__ import annotations

import shutil
import tempfile
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    initialize,
    invariant,
    precondition,
    rule,
    run_state_machine_as_test,
)
from sqlalchemy import event

from brewdesk.services.brewing import StepShut
from brewdesk.services.desk import build_desk
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.reminders import Reminders
from brewdesk.services.stock_reminder_rules import PREFIX, is_of_stock
from brewdesk.store.errors import StoreTrouble
from brewdesk.store.records import CultureDraft, PlaceDraft, ReadingDraft, VesselDraft
from brewdesk.store.store import Store
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    BatchStage,
    CultureOrigin,
    CultureState,
    Material,
    Method,
    Quantity,
    ReminderKind,
    ReminderState,
    StepKind,
    VesselShape,
)
from tests.helpers.dump import dump
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs

PICK = st.integers(0, 9)
REFUSED = (ImpossibleInput, StepShut)


def _without_sync(connection, _record):
    connection.execute("PRAGMA synchronous=OFF")


def having(*stages):
    """Let a rule run only if a batch of these stages is there: others would be wasted steps."""
    return precondition(lambda machine: machine.desk.batches.all(stages=stages))


def makers_part(path):
    """Return the store but for the program's own reminders of the meter and of what runs low:
    they are about no row that could take them along, and keep that they were dropped."""
    owned = (" kind='calibrate' ", f" occurrence='{PREFIX}")
    lines = dump(path).splitlines()
    return [line for line in lines if not any(mark in line for mark in owned)]


class RandomActs(RuleBasedStateMachine):
    """A maker without a plan. What a service refuses is no act and must change nothing."""

    new_store: Path

    @initialize()
    def open_pantry(self):
        self.folder = Path(tempfile.mkdtemp(prefix="brewdesk-acts-"))
        path = self.folder / "pantry.sqlite"
        shutil.copy(self.new_store, path)
        self.clock = FakeClock()
        self.store = Store.open(path, now=self.clock.now())
        # No power cut is played here, and thousands of commits wait for no disk.
        event.listen(self.store._engine, "connect", _without_sync)
        self.store._engine.dispose()
        self.desk = build_desk(
            self.store, self.clock, jobs=InlineJobs(hold=True), notifier=FakeNotifier()
        )
        self.window = None
        self.reminders = Reminders(self.desk.door, window_of=lambda _batch_id: self.window)
        self.place_id = self.desk.vessels.ensure_place().id  # the program's own doing, no act
        self.start = makers_part(path)
        self.troubles: list[StoreTrouble] = []
        self.desk.history.trouble.connect(self.troubles.append)
        self.count = 0
        for litres in (1.0, 5.0):
            self.add_vessel(litres)
        self.add_culture(0, 0, is_in_vessel=False)
        self.bring_in_what_is_souring_already(0, 1, 6)
        self.time_passes(1, 5)
        self.plan(1, 0)

    def teardown(self):
        if not hasattr(self, "store"):
            return
        try:
            while self.desk.history.redo_act() is not None:
                self.desk.history.redo()
                assert not self.troubles
            self._check_there_and_back()
        finally:
            self.store.close()
            shutil.rmtree(self.folder)

    def _check_there_and_back(self):
        path, history = self.store.path, self.desk.history
        before, kept_before = self._dump(), self._kept_reminders()
        while history.undo_act() is not None:
            history.undo()
            assert not self.troubles
            self.reminders.sync()
        assert makers_part(path) == self.start
        while history.redo_act() is not None:
            history.redo()
            assert not self.troubles
            self.reminders.sync()
        assert self._dump() == before
        assert self._kept_reminders() == kept_before

    def _dump(self):
        lines = dump(self.store.path).splitlines()
        return [line for line in lines if not line.startswith("reminder:")]

    def _kept_reminders(self):
        """What the maker made of reminders; when they were shown is the program's affair."""
        with self.store.read() as unit:
            rows = unit.reminders.where()
        makers = [row for row in rows if not is_of_stock(row)]
        own = {(row.id, row.text) for row in makers if row.kind is ReminderKind.OWN}
        done = {
            (row.batch_id, row.kind, row.occurrence, row.done_at)
            for row in rows
            if row.state is ReminderState.DONE
        }
        return own, done

    # --- what is there ----------------------------------------------------------------

    def _pick(self, rows, number):
        return rows[number % len(rows)] if rows else None

    def _vessel(self, number):
        return self._pick(self.desk.vessels.all(include_retired=True), number)

    def _batch(self, number, *stages):
        return self._pick(self.desk.batches.all(stages=stages), number)

    def _name(self):
        self.count += 1
        return f"Number {self.count}"

    def _try(self, act):
        before = self.store.path.read_bytes()
        try:
            act()
        except REFUSED:
            assert self.store.path.read_bytes() == before

    # --- vessels, places, cultures ----------------------------------------------------

    @rule(litres=st.sampled_from([1.0, 3.0, 5.0]))
    def add_vessel(self, litres):
        draft = VesselDraft(
            name=self._name(),
            shape=VesselShape.CYLINDER,
            material=Material.GLASS,
            brim_volume_l=litres,
            working_volume_l=0.9 * litres,
            inner_diameter_cm=12.0,
            place_id=self.place_id,
        )
        self._try(lambda: self.desk.vessels.add(draft))

    @rule(number=PICK, what=st.sampled_from(["edit", "same", "retire", "restore"]))
    def change_vessel(self, number, what):
        vessel, vessels = self._vessel(number), self.desk.vessels
        if vessel is None:
            return
        acts = {
            "edit": lambda: vessels.edit(vessel.id, note=self._name(), brim_volume_l=2.9),
            "same": lambda: vessels.edit(vessel.id, note=vessel.note),
            "retire": lambda: vessels.retire(vessel.id),
            "restore": lambda: vessels.restore(vessel.id),
        }
        self._try(acts[what])

    @rule(degrees=st.sampled_from([18.0, 24.0]), is_new=st.booleans())
    def change_place(self, degrees, is_new):
        vessels = self.desk.vessels
        if is_new:
            draft = PlaceDraft(name=self._name(), temperature_c=degrees)
            self._try(lambda: vessels.add_place(draft))
        else:
            self._try(lambda: vessels.edit_place(self.place_id, temperature_c=degrees))

    @rule(number=PICK, parent=PICK, is_in_vessel=st.booleans())
    def add_culture(self, number, parent, is_in_vessel):
        vessel = self._vessel(number) if is_in_vessel else None
        mother = self._pick(self.desk.cultures.all(), parent)
        draft = CultureDraft(
            name=self._name(),
            origin=CultureOrigin.SPLIT,
            state=CultureState.RESTING,
            born_at=self.clock.now(),
            vessel_id=vessel.id if vessel else None,
        )
        self._try(lambda: self.desk.cultures.add(draft, (mother.id,) if mother else ()))

    @rule(number=PICK, where=PICK, state=st.sampled_from(CultureState))
    def change_culture(self, number, where, state):
        culture = self._pick(self.desk.cultures.all(), number)
        vessel = self._vessel(where)
        if culture is None or vessel is None:
            return
        fields = {"state": state, "vessel_id": vessel.id, "pellicle_mm": float(where)}
        self._try(lambda: self.desk.cultures.edit(culture.id, **fields))

    # --- batches ----------------------------------------------------------------------

    @rule(number=PICK, living=PICK)
    def plan(self, number, living):
        vessel = self._vessel(number)
        if vessel is None:
            return
        culture = self._pick((None, *self.desk.cultures.all()), living)
        wish = self.desk.batches.default_wish(vessel.id)
        culture_id = culture.id if culture else None
        self._try(lambda: self.desk.batches.plan(vessel.id, culture_id, self._name(), wish))

    @having(BatchStage.PLANNED)
    @rule(
        number=PICK,
        where=PICK,
        what=st.sampled_from(["begin", "begin", "already_in", "edit", "drop"]),
    )
    def change_plan(self, number, where, what):
        batch, vessel = self._batch(number, BatchStage.PLANNED), self._vessel(where)
        if batch is None or vessel is None:
            return
        desk = self.desk
        wish = replace(desk.batches.wish_of(batch), fill_volume_l=0.8)
        since = self.clock.now() - timedelta(days=where)
        acts = {
            "edit": lambda: desk.batches.edit_plan(
                batch.id,
                vessel_id=vessel.id,
                culture_id=batch.culture_id,
                name=batch.name,
                wish=wish,
            ),
            "drop": lambda: desk.batches.drop_plan(batch.id),
            "begin": lambda: desk.brewing.start(batch.id),
            "already_in": lambda: desk.brewing.note_already_in(batch.id, since, 24.0),
        }
        self._try(acts[what])

    @having(BatchStage.BREWING)
    @rule(
        number=PICK,
        step_number=PICK,
        degrees=st.sampled_from([None, 25.0, 60.0]),
        what=st.sampled_from(["begin", "pause", "resume", "extend", "finish", "finish"]),
    )
    def do_step(self, number, step_number, degrees, what):
        batch = self._batch(number, BatchStage.BREWING)
        if batch is None:
            return
        brewing = self.desk.brewing
        step = self._pick(brewing.steps(batch.id), step_number)
        acts = {
            "begin": lambda: brewing.begin(step.id),
            "pause": lambda: brewing.pause(step.id),
            "resume": lambda: brewing.resume(step.id),
            "extend": lambda: brewing.extend(step.id, 90.0),
            "finish": lambda: brewing.finish(step.id, degrees),
        }
        self._try(acts[what])

    @rule(number=PICK, living=PICK, days=st.integers(0, 9))
    def bring_in_what_is_souring_already(self, number, living, days):
        """Get far in one rule: much of what can go wrong needs a souring batch."""
        self.plan(number, living)
        self.change_plan(0, days, "already_in")

    @having(BatchStage.BREWING)
    @rule(number=PICK)
    def follow_the_run_sheet(self, number):
        batch = self._batch(number, BatchStage.BREWING)
        if batch is None:
            return
        for step in self.desk.brewing.steps(batch.id):
            if self.desk.batches.get(batch.id).stage is BatchStage.BREWING:
                self._try(lambda step=step: self.desk.brewing.finish(step.id, 24.0))

    @having()
    @rule(
        number=PICK,
        what=st.sampled_from(["draw_off", "close", "discard", "discard_all"]),
    )
    def end(self, number, what):
        batch, batches = self._batch(number), self.desk.batches
        if batch is None:
            return
        acts = {
            "draw_off": lambda: batches.draw_off(batch.id, "right"),
            "close": lambda: batches.close(batch.id),
            "discard": lambda: batches.discard(batch.id, "smelt odd"),
            "discard_all": lambda: batches.discard(batch.id, "mold", culture_lost=True),
        }
        self._try(acts[what])

    # --- readings and reminders -------------------------------------------------------

    @having()
    @rule(number=PICK, ph=st.sampled_from([3.1, 3.9, 4.6]))
    def read_ph(self, number, ph):
        batch = self._batch(number)
        if batch is None:
            return
        draft = ReadingDraft(
            batch_id=batch.id,
            at=self.clock.now(),
            quantity=Quantity.PH,
            method=Method.METER,
            value=ph,
        )
        self._try(lambda: self.desk.readings.record([draft]))

    @having()
    @rule(number=PICK, which=PICK, is_removed=st.booleans())
    def change_reading(self, number, which, is_removed):
        batch, readings = self._batch(number), self.desk.readings
        reading = self._pick(readings.of_batch(batch.id), which) if batch else None
        if reading is None:
            return
        if is_removed:
            self._try(lambda: readings.remove(reading.id))
        else:
            self._try(lambda: readings.edit(reading.id, value=3.5))

    @rule(number=PICK, what=st.sampled_from(["own", "done", "done", "later"]))
    def remind(self, number, what):
        now = self.clock.now()
        if what == "own":
            batch = self._pick((None, *self.desk.batches.all()), number)
            at, batch_id = now + timedelta(hours=20), batch.id if batch else None
            self._try(lambda: self.reminders.add_own(batch_id, at, self._name()))
            return
        item = self._pick(self.reminders.listed(), number)
        if item is None:
            return
        if what == "done":
            self._try(lambda: self.reminders.done(item.reminder.id))
        else:
            self._try(lambda: self.reminders.snooze(item.reminder.id, now + timedelta(hours=30)))

    # --- the program itself, and time -------------------------------------------------

    @rule(hours=st.sampled_from([1, 30, 100]), opens_in_days=st.sampled_from([None, 5, 9]))
    def time_passes(self, hours, opens_in_days):
        """The forecast moves, reminders are made, moved and shown: none of it an act."""
        self.clock.advance(hours=hours)
        opens_at = None
        if opens_in_days is not None:
            opens_at = self.clock.now() + timedelta(days=opens_in_days)
            earliest = opens_at - timedelta(days=1)
            self.window = TastingWindow(opens_at=opens_at, opens_earliest=earliest)
        self.reminders.sync()
        now = self.clock.now()
        due = [item.reminder.id for item in self.reminders.listed(now) if item.is_due]

        def show(unit):
            for row_id in due:
                unit.reminders.change(
                    row_id, state=ReminderState.SHOWN, shown_at=now, snoozed_until=None
                )

        self.desk.door.quiet(show)

    @rule(times=st.sampled_from([1, 1, 2, 5]))
    def undo(self, times):
        for _ in range(times):
            self.desk.history.undo()

    @precondition(lambda machine: machine.desk.history.redo_act())
    @rule(times=st.sampled_from([1, 1, 2, 5]))
    def redo(self, times):
        for _ in range(times):
            self.desk.history.redo()

    # --- what always holds ------------------------------------------------------------

    @invariant()
    def nothing_was_in_the_way_of_undo_and_redo(self):
        if hasattr(self, "troubles"):
            assert self.troubles == []

    @invariant()
    def a_vessel_holds_one_live_batch(self):
        if not hasattr(self, "store"):
            return
        live = [batch.vessel_id for batch in self.desk.batches.all() if batch.stage.is_live]
        assert len(live) == len(set(live))

    @invariant()
    def a_culture_that_is_gone_is_nowhere_and_one_at_rest_shares_with_no_souring_batch(self):
        if not hasattr(self, "store"):
            return
        souring = {batch.vessel_id for batch in self.desk.batches.all(stages=(BatchStage.SOURING,))}
        for culture in self.desk.cultures.all():
            if culture.state in (
                CultureState.LOST,
                CultureState.GIVEN_AWAY,
                CultureState.RETIRED,
            ):
                assert culture.vessel_id is None
            if culture.state is CultureState.RESTING:
                assert culture.vessel_id not in souring

    @invariant()
    def what_sours_got_something_live_at_a_known_time(self):
        if not hasattr(self, "store"):
            return
        for batch in self.desk.batches.all(stages=(BatchStage.SOURING,)):
            live = [
                step
                for step in self.desk.brewing.steps(batch.id)
                if step.kind in (StepKind.STARTER_IN, StepKind.CULTURE_IN)
                and step.finished_at is not None
            ]
            assert live
            assert batch.started_at == min(step.finished_at for step in live)


@pytest.fixture
def machine(new_store):
    return type("RandomActsHere", (RandomActs,), {"new_store": new_store})


def test_random_acts_leave_no_trace_when_undone_and_return_when_redone(machine):
    run_state_machine_as_test(
        machine, settings=settings(settings.default, max_examples=20, stateful_step_count=30)
    )
