"""Random acts on places, undone and redone in any order: what was, is again, to the last row."""

from __future__ import annotations

import shutil
import tempfile
from datetime import timedelta
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

from brewdesk.services.desk import build_desk
from brewdesk.services.packedsamples import pack_pairs
from brewdesk.services.placecourse import SampleMeans
from brewdesk.store.records import PlaceDraft
from brewdesk.store.store import Store
from culturecore.errors import ImpossibleInput
from tests.helpers.dump import dump
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs

PICK = st.integers(0, 9)
NAMES = st.sampled_from(["Pantry", "Kitchen", "Cellar", "Attic"])


class RandomPlaces(RuleBasedStateMachine):
    """A maker who does anything with places. What is refused changes nothing."""

    new_store: Path

    @initialize()
    def open_pantry(self):
        self.folder = Path(tempfile.mkdtemp(prefix="brewdesk-places-"))
        self.path = self.folder / "pantry.sqlite"
        shutil.copy(self.new_store, self.path)
        self.clock = FakeClock()
        self.store = Store.open(self.path, now=self.clock.now())
        self.desk = build_desk(
            self.store, self.clock, jobs=InlineJobs(hold=True), notifier=FakeNotifier()
        )
        self.troubles = []
        self.desk.history.trouble.connect(self.troubles.append)
        self.done = [dump(self.path)]  # after each act that could be undone
        self.undone = []

    def teardown(self):
        if not hasattr(self, "store"):
            return
        while self.desk.history.undo_act() is not None and not self.troubles:
            self.desk.history.undo()
            self.done.pop()
            assert dump(self.path) == self.done[-1]
        assert len(self.done) == 1
        self.store.close()
        shutil.rmtree(self.folder)

    def _try(self, act):
        before = dump(self.path)
        last = self.desk.history.undo_act()
        try:
            act()
        except ImpossibleInput:
            assert dump(self.path) == before
            return
        if self.desk.history.undo_act() != last:
            self.done.append(dump(self.path))
            self.undone.clear()

    def _place(self, pick):
        places = self.desk.vessels.places()
        return places[pick % len(places)] if places else None

    @rule(name=NAMES, celsius=st.sampled_from([-5.0, 14.0, 22.0]))
    def add_place(self, name, celsius):
        self._try(lambda: self.desk.vessels.add_place(PlaceDraft(name=name, temperature_c=celsius)))

    @rule(pick=PICK, celsius=st.sampled_from([13.0, 21.5, 99.0]), hours=st.integers(-2, 60))
    def read(self, pick, celsius, hours):
        place = self._place(pick)
        if place is not None:
            at = self.clock.now() - timedelta(hours=hours)
            self._try(lambda: self.desk.place_log.read_place(place.id, celsius, at))

    @rule(pick=PICK, first=st.integers(0, 3), count=st.integers(0, 5))
    def log(self, pick, first, count):
        place = self._place(pick)
        if place is not None:
            start_s = int(self.clock.now().timestamp()) - 90_000 * (first + 1)
            samples = pack_pairs((start_s + 600 * n, 15.0 + n) for n in range(count))
            self._try(lambda: self.desk.place_log.add_log(place.id, f"{first}.csv", samples))

    @rule(pick=PICK, entry=PICK)
    def drop(self, pick, entry):
        place = self._place(pick)
        if place is None:
            return
        rows = self.desk.place_log.typed(place.id)
        logs = self.desk.place_log.logs(place.id)
        if rows and entry % 2:
            self._try(lambda: self.desk.place_log.drop_reading(rows[entry % len(rows)].id))
        elif logs:
            self._try(lambda: self.desk.place_log.drop_log(logs[entry % len(logs)].id))

    @rule(pick=PICK)
    def remove_place(self, pick):
        place = self._place(pick)
        if place is not None:
            self._try(lambda: self.desk.place_log.remove_place(place.id))

    @rule(count=st.integers(1, 4))
    def undo(self, count):
        for _ in range(count):
            if self.desk.history.undo_act() is None:
                return
            self.desk.history.undo()
            self.undone.append(self.done.pop())
            assert dump(self.path) == self.done[-1]

    @rule(count=st.integers(1, 4))
    def redo(self, count):
        for _ in range(count):
            if self.desk.history.redo_act() is None:
                return
            self.desk.history.redo()
            self.done.append(self.undone.pop())
            assert dump(self.path) == self.done[-1]

    @rule()
    def start_again(self):
        """What a restart sweeps away must be missed by nobody, whatever is undone or redone."""
        self.desk.place_log.prepare()
        self.desk.place_log.means = SampleMeans()

    @invariant()
    def every_log_has_its_samples(self):
        if not hasattr(self, "store"):
            return
        assert self.troubles == []
        with self.store.read() as unit:
            for log in unit.temperature_logs.where():
                chunks = unit.temperature_samples.chunks(log.content_hash)
                assert sum(map(len, chunks)) == 12 * log.sample_count
        now = self.clock.now()
        for place in self.desk.vessels.places():
            points = self.desk.place_log.course_of(place.id, now - timedelta(days=9), now).points
            has_any = self.desk.place_log.latest(place.id) is not None
            assert bool(points) == has_any


def test_random_acts_on_places_hold_what_must_hold(new_store, qapp):
    RandomPlaces.new_store = new_store
    run_state_machine_as_test(
        RandomPlaces,
        settings=settings(max_examples=12, stateful_step_count=25, deadline=None),
    )
