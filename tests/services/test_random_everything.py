"""Random acts of every kind in one pantry: care, growing, photos, looks, places, liquid, stores.

What is undone must be undone to the last row, whatever lay between. The machine below adds
to those of batches and of liquids what they leave out; their invariants hold here too.
"""

from __future__ import annotations

import hashlib
from datetime import timedelta

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import invariant, rule, run_state_machine_as_test

from brewdesk.services.cultures import GONE
from brewdesk.services.packedsamples import pack_pairs
from brewdesk.services.photos import PhotoOwner, PictureFacts, TakenIn
from brewdesk.store.records import PlaceDraft
from culturecore.stages import BatchPurpose, BatchStage, CultureState, Look, Quantity
from tests.services.test_random_acts import PICK
from tests.services.test_random_stores import RandomStores

LOOKS = st.sampled_from([Look.FINE, Look.FINE, Look.UNSURE, Look.MOLD])
LIVE = tuple(stage for stage in BatchStage if stage.is_live)


class RandomEverything(RandomStores):
    """The maker with stores, who also looks after cultures, takes photos, reads thermometers."""

    def _culture(self, number):
        return self._pick(self.desk.cultures.all(), number)

    # --- cultures -----------------------------------------------------------------------

    @rule(number=PICK, other=PICK, where=PICK, has_jar=st.booleans())
    def split_or_merge(self, number, other, where, has_jar):
        one, two, vessel = self._culture(number), self._culture(other), self._vessel(where)
        if one is None or two is None or vessel is None:
            return
        care, jar_id = self.desk.culture_care, vessel.id if has_jar else None
        if number < 5:
            self._try(lambda: care.split(one.id, name=self._name(), vessel_id=jar_id))
        else:
            self._try(lambda: care.merge((one.id, two.id), name=self._name(), vessel_id=jar_id))

    @rule(number=PICK, how=st.sampled_from(["lose", "lose_plain", "give", "retire", "clear"]))
    def let_go(self, number, how):
        culture, care = self._culture(number), self.desk.culture_care
        if culture is None:
            return
        acts = {
            "lose": lambda: care.lose(culture.id, "spots"),
            "lose_plain": lambda: care.lose(culture.id, "fell", flag=False),
            "give": lambda: care.give_away(culture.id, "a friend"),
            "retire": lambda: care.retire(culture.id),
            "clear": lambda: self.desk.suspicion.clear(culture_id=culture.id, reason="clean"),
        }
        self._try(acts[how])

    @rule(number=PICK, look=LOOKS, is_batch=st.booleans())
    def look(self, number, look, is_batch):
        if is_batch:
            batch = self._batch(number, *LIVE)
            if batch is not None:
                self._try(lambda: self.desk.readings.record_look(batch.id, look, "seen"))
        elif (culture := self._culture(number)) is not None:
            self._try(lambda: self.desk.culture_care.look(culture.id, look))

    @rule(number=PICK)
    def clear_batch(self, number):
        batch = self._batch(number)
        if batch is not None:
            self._try(lambda: self.desk.suspicion.clear(batch_id=batch.id, reason="clean"))

    @rule(where=PICK, is_mixed=st.booleans())
    def grow(self, where, is_mixed):
        vessel = self._vessel(where)
        if vessel is None:
            return
        growing, name = self.desk.growing, self._name()
        wish = growing.default_wish(vessel.id)
        self._try(lambda: growing.start(vessel.id, name=name, wish=wish))
        plan = next((row for row in self.desk.batches.all() if row.name == name), None)
        if plan is not None and is_mixed:
            now = self.clock.now()
            self._try(lambda: self.desk.brewing.note_already_in(plan.id, now, 24.0))

    @rule(number=PICK, look=LOOKS, is_finished=st.booleans())
    def tend_growing(self, number, look, is_finished):
        growing = [b for b in self.desk.batches.all() if b.purpose is BatchPurpose.CULTURE]
        batch = self._pick(growing, number)
        if batch is None:
            return
        if is_finished:
            self._try(lambda: self.desk.growing.finish(batch.id, 4.0))
        else:
            self._try(lambda: self.desk.growing.look(batch.id, look, film_mm=1.0))

    # --- photos -------------------------------------------------------------------------

    @rule(number=PICK, of=st.sampled_from(["batch", "culture", "reading"]), seed=PICK)
    def take_photo(self, number, of, seed):
        with self.store.read() as unit:
            rows = {"batch": unit.batches, "culture": unit.cultures, "reading": unit.readings}
            row = self._pick(rows[of].where(), number)
        if row is None:
            return
        taken = TakenIn(
            content_hash=hashlib.sha256(bytes([seed])).hexdigest(),
            facts=PictureFacts("image/jpeg", 64, 48),
            size_bytes=100,
            taken_at=self.clock.now(),
        )
        owner = PhotoOwner(**{f"{of}_id": row.id})
        self._try(lambda: self.desk.photos.add(owner, [taken]))

    @rule(number=PICK, is_removed=st.booleans())
    def change_photo(self, number, is_removed):
        with self.store.read() as unit:
            photo = self._pick(unit.photos.where(), number)
        if photo is None:
            return
        photos = self.desk.photos
        if is_removed:
            self._try(lambda: photos.remove(photo.id))
        else:
            self._try(lambda: photos.edit(photo.id, caption=self._name()))

    # --- places -------------------------------------------------------------------------

    @rule(number=PICK, what=st.sampled_from(["add", "read", "log", "unlog", "remove"]), first=PICK)
    def change_places(self, number, what, first):
        place = self._pick(self.desk.vessels.places(), number)
        log, now = self.desk.place_log, self.clock.now()
        if place is None:
            return
        logs = log.logs(place.id)
        start_s = int(now.timestamp()) - 90_000 * (first + 1)
        samples = pack_pairs((start_s + 600 * n, 15.0 + n) for n in range(4))
        draft = PlaceDraft(name=self._name(), temperature_c=19.0)
        acts = {
            "add": lambda: self.desk.vessels.add_place(draft),
            "read": lambda: log.read_place(place.id, 21.0, now - timedelta(hours=first)),
            "log": lambda: log.add_log(place.id, f"{first}.csv", samples),
            "remove": lambda: log.remove_place(place.id),
        }
        if what in acts:
            self._try(acts[what])
        elif logs:
            self._try(lambda: log.drop_log(logs[first % len(logs)].id))

    # --- what always holds --------------------------------------------------------------

    @invariant()
    def what_grows_has_a_jar_and_what_is_gone_has_none(self):
        if not hasattr(self, "store"):
            return
        growing = {
            batch.culture_id
            for batch in self.desk.batches.all(stages=LIVE)
            if batch.purpose is BatchPurpose.CULTURE
        }
        for culture in self.desk.cultures.all():
            if culture.state is CultureState.FORMING:
                assert culture.id in growing
            if culture.state in GONE:
                assert (culture.vessel_id, culture.rest_volume_l) == (None, None)
                assert culture.gone_at is not None

    @invariant()
    def what_mold_was_seen_in_is_under_suspicion_until_it_is_cleared(self):
        if not hasattr(self, "store"):
            return
        with self.store.read() as unit:
            for batch in unit.batches.where(stage=LIVE, suspect_at=None):
                seen = unit.readings.where(batch_id=batch.id, quantity=Quantity.LOOK, order_by="id")
                notes = unit.readings.where(
                    batch_id=batch.id, quantity=Quantity.NOTE, text="clean", order_by="id"
                )
                moldy = [look.id for look in seen if look.text == Look.MOLD.value]
                assert not moldy or (notes and notes[-1].id > moldy[-1])

    @invariant()
    def what_is_doubtful_says_why(self):
        if not hasattr(self, "store"):
            return
        for row in (*self.desk.cultures.all(), *self.desk.batches.all()):
            assert (row.suspect_at is None) == (row.suspect_reason == "")


@pytest.fixture
def machine(new_store):
    return type("RandomEverythingHere", (RandomEverything,), {"new_store": new_store})


def test_acts_of_every_kind_leave_no_trace_when_undone_and_return_when_redone(machine):
    run_state_machine_as_test(
        machine, settings=settings(settings.default, max_examples=10, stateful_step_count=30)
    )
