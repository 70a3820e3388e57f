"""Random care of cultures, undone and redone: each in one place, no jar too full, no trace left."""

from __future__ import annotations

import shutil
import tempfile
from pathlib import Path

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    initialize,
    invariant,
    rule,
    run_state_machine_as_test,
)
from sqlalchemy import event

from brewdesk.services.brewing import StepShut
from brewdesk.services.cultures import GONE
from brewdesk.services.desk import build_desk
from brewdesk.services.reminders import Reminders
from brewdesk.store.records import CultureDraft, VesselDraft
from brewdesk.store.store import Store
from culturecore.errors import ImpossibleInput
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    CultureOrigin,
    CultureState,
    Look,
    Material,
    VesselShape,
)
from tests.helpers.dump import dump
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs

PICK = st.integers(0, 5)
LITRES = st.floats(0.05, 1.2)


def _without_sync(connection, _record):
    connection.execute("PRAGMA synchronous=OFF")


class RandomCare(RuleBasedStateMachine):
    """A keeper without a plan. What is refused is no act and must change nothing."""

    new_store: Path

    @initialize()
    def open_pantry(self):
        self.folder = Path(tempfile.mkdtemp(prefix="brewdesk-care-"))
        path = self.folder / "pantry.sqlite"
        shutil.copy(self.new_store, path)
        self.clock = FakeClock()
        self.store = Store.open(path, now=self.clock.now())
        event.listen(self.store._engine, "connect", _without_sync)
        self.store._engine.dispose()
        self.desk = build_desk(
            self.store, self.clock, jobs=InlineJobs(hold=True), notifier=FakeNotifier()
        )
        self.reminders = Reminders(self.desk.door)
        self.place_id = self.desk.vessels.ensure_place().id
        self.start = dump(path)
        self.troubles = []
        self.desk.history.trouble.connect(self.troubles.append)
        self.count = 0
        for number in range(3):
            self.desk.vessels.add(
                VesselDraft(
                    name=f"Jar {number}",
                    shape=VesselShape.CYLINDER,
                    material=Material.GLASS,
                    brim_volume_l=1.5,
                    working_volume_l=1.2,
                    inner_diameter_cm=11.0,
                    place_id=self.place_id,
                )
            )
        for name in ("Mother", "Other"):
            self.desk.cultures.add(
                CultureDraft(
                    name=name,
                    origin=CultureOrigin.GIFT,
                    state=CultureState.RESTING,
                    born_at=self.clock.now(),
                )
            )

    def teardown(self):
        if not hasattr(self, "store"):
            return
        try:
            while self.desk.history.redo_act() is not None and not self.troubles:
                self.desk.history.redo()
            after = dump(self.store.path)
            while self.desk.history.undo_act() is not None and not self.troubles:
                self.desk.history.undo()
            assert not self.troubles
            self.reminders.sync()
            assert dump(self.store.path) == self.start
            while self.desk.history.redo_act() is not None and not self.troubles:
                self.desk.history.redo()
            assert not self.troubles
            assert _without_reminders(dump(self.store.path)) == _without_reminders(after)
        finally:
            self.store.close()
            shutil.rmtree(self.folder)

    # --- what a keeper may do --------------------------------------------------------

    def _try(self, act):
        before = dump(self.store.path)
        try:
            act()
        except (ImpossibleInput, StepShut):
            assert dump(self.store.path) == before

    def _one(self, pick):
        cultures = self.desk.cultures.all()
        return cultures[pick % len(cultures)].id

    def _jar(self, pick):
        return self.desk.vessels.all()[pick % 3].id

    def _name(self):
        self.count += 1
        return f"C{self.count}"

    @rule(who=PICK, where=PICK, litres=LITRES, has_jar=st.booleans())
    def split(self, who, where, litres, has_jar):
        jar = self._jar(where) if has_jar else None
        self._try(
            lambda: self.desk.culture_care.split(
                self._one(who), name=self._name(), vessel_id=jar, rest_volume_l=litres
            )
        )

    @rule(who=PICK, other=PICK, where=PICK)
    def merge(self, who, other, where):
        ids = (self._one(who), self._one(other))
        self._try(
            lambda: self.desk.culture_care.merge(ids, name=self._name(), vessel_id=self._jar(where))
        )

    @rule(who=PICK, where=PICK, litres=LITRES)
    def rest(self, who, where, litres):
        self._try(lambda: self.desk.culture_care.rest(self._one(who), self._jar(where), litres))

    @rule(who=PICK, where=PICK, out=st.booleans())
    def move(self, who, where, out):
        jar = None if out else self._jar(where)
        self._try(lambda: self.desk.culture_care.move(self._one(who), jar))

    @rule(who=PICK, litres=LITRES)
    def feed(self, who, litres):
        self._try(lambda: self.desk.culture_care.feed(self._one(who), litres, 50.0 * litres))

    @rule(who=PICK, litres=LITRES)
    def top_up(self, who, litres):
        self._try(lambda: self.desk.culture_care.top_up(self._one(who), litres))

    @rule(who=PICK, look=st.sampled_from(list(Look)))
    def look(self, who, look):
        self._try(lambda: self.desk.culture_care.look(self._one(who), look))

    @rule(who=PICK, flag=st.booleans())
    def lose(self, who, flag):
        self._try(lambda: self.desk.culture_care.lose(self._one(who), "spots", flag=flag))

    @rule(who=PICK)
    def give_away(self, who):
        self._try(lambda: self.desk.culture_care.give_away(self._one(who), "a friend"))

    @rule(who=PICK)
    def clear(self, who):
        self._try(lambda: self.desk.suspicion.clear(culture_id=self._one(who), reason="clean"))

    @rule(where=PICK)
    def grow(self, where):
        wish = self.desk.growing.default_wish(self._jar(where))
        self._try(lambda: self.desk.growing.start(self._jar(where), name=self._name(), wish=wish))

    @rule(who=PICK, where=PICK)
    def plan(self, who, where):
        wish = self.desk.batches.default_wish(self._jar(where))
        self._try(
            lambda: self.desk.batches.plan(self._jar(where), self._one(who), self._name(), wish)
        )

    @rule(who=PICK)
    def mix(self, who):
        planned = self.desk.batches.all(stages=(BatchStage.PLANNED,))
        if planned:
            batch = planned[who % len(planned)]
            self._try(lambda: self.desk.brewing.note_already_in(batch.id, self.clock.now(), 24.0))

    @rule(who=PICK, how=st.sampled_from(["drop", "draw", "discard", "mold", "grown"]))
    def end(self, who, how):
        live = [batch for batch in self.desk.batches.all() if batch.stage.is_live]
        if not live:
            return
        batch = live[who % len(live)]
        acts = {
            "drop": lambda: self.desk.batches.drop_plan(batch.id),
            "draw": lambda: self.desk.batches.draw_off(batch.id),
            "discard": lambda: self.desk.batches.discard(batch.id, "no"),
            "mold": lambda: self.desk.batches.discard(batch.id, "mold", culture_lost=True),
            "grown": lambda: self.desk.growing.finish(batch.id, 4.0),
        }
        self._try(acts[how])

    @rule(days=st.integers(1, 30))
    def time_passes(self, days):
        self.clock.advance(days=days)
        self.reminders.sync()

    @rule()
    def undo(self):
        act = self.desk.history.undo_act()
        if act is not None and act.kind not in ("add_vessel", "add_culture"):  # keep the furniture
            self.desk.history.undo()

    @rule()
    def redo(self):
        self.desk.history.redo()

    # --- what must hold --------------------------------------------------------------

    @invariant()
    def a_culture_is_in_one_place_and_what_is_gone_in_none(self):
        if not hasattr(self, "desk"):
            return
        assert not self.troubles
        batches = self.desk.batches.all()
        for culture in self.desk.cultures.all():
            if culture.state in GONE:
                assert culture.vessel_id is None
                assert culture.gone_at is not None
            if culture.state is not CultureState.RESTING or culture.vessel_id is None:
                assert culture.rest_volume_l is None
            if culture.state is CultureState.AT_WORK:
                works = [
                    batch
                    for batch in batches
                    if batch.culture_id == culture.id and batch.vessel_id == culture.vessel_id
                ]
                assert works
            if culture.state is CultureState.FORMING:
                grown_in = [
                    batch
                    for batch in batches
                    if batch.culture_id == culture.id and batch.purpose is BatchPurpose.CULTURE
                ]
                assert any(batch.stage.is_live for batch in grown_in)

    @invariant()
    def no_jar_is_too_full(self):
        if not hasattr(self, "desk"):
            return
        for vessel in self.desk.vessels.all():
            resting = [
                culture.rest_volume_l or 0.0
                for culture in self.desk.cultures.all()
                if culture.vessel_id == vessel.id
            ]
            # What was stated may have dried up since and been made good in another's name.
            assert max(resting, default=0.0) <= vessel.brim_volume_l + 1e-9

    @invariant()
    def what_is_doubtful_says_why(self):
        if not hasattr(self, "desk"):
            return
        for row in (*self.desk.cultures.all(), *self.desk.batches.all()):
            assert (row.suspect_at is None) == (row.suspect_reason == "")

    @invariant()
    def the_family_can_be_drawn(self):
        if not hasattr(self, "desk"):
            return
        nodes = {node.culture.id: node for node in self.desk.lineage.tree().nodes}
        for node in nodes.values():
            above = [nodes[one].generation for one in node.parent_ids]
            assert node.generation == (1 + max(above) if above else 0)


def _without_reminders(text):
    """Reminders are the program's own: after undo they come back as other rows."""
    return [line for line in text.splitlines() if not line.startswith("reminder:")]


def test_random_care_leaves_no_trace_once_undone(new_store, qapp):
    RandomCare.new_store = new_store
    run_state_machine_as_test(
        RandomCare,
        settings=settings(settings.default, max_examples=15, stateful_step_count=25),
    )
