"""Random acts with liquid in them: it balances whatever is done, undone and done again."""

from __future__ import annotations

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import invariant, rule, run_state_machine_as_test

from brewdesk.services.carrying import Answers
from brewdesk.services.drops import Carried, CarriedKind, ChoiceKind, Target, Tray
from brewdesk.services.ledger import ROUNDING_L
from culturecore.stages import BatchStage, CultureState, TeaKind, TransferKind
from tests.services.test_random_acts import PICK, RandomActs, having

VOLUME = st.sampled_from([0.0, 1e-5, 0.05, 0.3, 1.0, 2.5, 9.0])
DRAWN = st.sampled_from([TransferKind.DRINK, TransferKind.SAMPLE, TransferKind.LOSS])


class RandomLiquids(RandomActs):
    """The same maker, with a ladle."""

    def _souring(self, number):
        return self._batch(number, BatchStage.SOURING)

    @having(BatchStage.SOURING)
    @rule(number=PICK, volume_l=VOLUME, kind=DRAWN)
    def draw_part(self, number, volume_l, kind):
        batch = self._souring(number)
        self._try(lambda: self.desk.liquids.draw_part(batch.id, volume_l, kind))

    @having(BatchStage.SOURING)
    @rule(number=PICK, volume_l=VOLUME, degrees=st.sampled_from([None, 20.0, 70.0]))
    def top_up(self, number, volume_l, degrees):
        batch = self._souring(number)
        fresh = (volume_l, 60.0, TeaKind.GREEN, 5.0, degrees)
        self._try(lambda: self.desk.liquids.top_up(batch.id, *fresh))

    @having(BatchStage.SOURING)
    @rule(number=PICK, other=PICK, volume_l=st.one_of(st.none(), VOLUME), joins=st.booleans())
    def pour_together(self, number, other, volume_l, joins):
        batch, into = self._souring(number), self._souring(other)
        name = self._name() if joins else ""
        merge = self.desk.liquids.merge
        self._try(lambda: merge(batch.id, into.id, volume_l, culture_name=name))

    @having(BatchStage.SOURING)
    @rule(number=PICK, where=PICK)
    def pour_over(self, number, where):
        batch, vessel = self._souring(number), self._vessel(where)
        self._try(lambda: self.desk.liquids.move_batch(batch.id, vessel.id))

    @having(BatchStage.SOURING)
    @rule(number=PICK, living=PICK, volume_l=VOLUME)
    def keep_starter(self, number, living, volume_l):
        batch, culture = self._souring(number), self._pick(self.desk.cultures.all(), living)
        if culture is not None:
            keep = self.desk.liquids.keep_starter
            self._try(lambda: keep(batch.id, volume_l, culture.id))

    @rule(number=PICK, living=PICK, where=PICK, volume_l=VOLUME, is_new=st.booleans())
    def lend(self, number, living, where, volume_l, is_new):
        lender = self._pick((*self.desk.batches.all(), *self.desk.cultures.all()), number + living)
        plan, vessel = self._batch(where, BatchStage.PLANNED), self._vessel(where)
        if lender is None or vessel is None or (plan is None and not is_new):
            return
        is_batch = hasattr(lender, "stage")
        self._try(
            lambda: self.desk.liquids.lend_starter(
                volume_l,
                from_batch_id=lender.id if is_batch else None,
                from_culture_id=None if is_batch else lender.id,
                to_batch_id=None if is_new else plan.id,
                to_vessel_id=vessel.id if is_new else None,
            )
        )

    @having(BatchStage.SOURING)
    @rule(number=PICK, kept_l=VOLUME)
    def draw_off_and_keep(self, number, kept_l):
        batch = self._souring(number)
        self._try(lambda: self.desk.batches.draw_off(batch.id, kept_l=kept_l))

    @rule(living=PICK, where=PICK, volume_l=VOLUME, what=st.sampled_from(["rest", "top", "feed"]))
    def care(self, living, where, volume_l, what):
        culture, vessel = self._pick(self.desk.cultures.all(), living), self._vessel(where)
        if culture is None or vessel is None:
            return
        care = self.desk.culture_care
        acts = {
            "rest": lambda: care.rest(culture.id, vessel.id, volume_l),
            "top": lambda: care.top_up(culture.id, volume_l),
            "feed": lambda: care.feed(culture.id, volume_l, 10.0),
        }
        self._try(acts[what])

    @rule(number=PICK, where=PICK, which=PICK, volume_l=VOLUME, is_batch=st.booleans())
    def carry(self, number, where, which, volume_l, is_batch):
        rows = self.desk.batches.all() if is_batch else self.desk.cultures.all()
        row, vessel = self._pick(rows, number), self._vessel(where)
        if row is None or vessel is None:
            return
        carried = Carried(CarriedKind.BATCH if is_batch else CarriedKind.CULTURE, row.id)
        target = Target(vessel_id=vessel.id) if which < 7 else Target(tray=list(Tray)[which % 2])
        drop = self.desk.carrying.choices(carried, target)
        assert bool(drop.choices) == (drop.refusal is None)
        choice = self._pick(drop.choices, which)
        if choice is None:
            return
        answers = Answers(
            volume_l=volume_l,
            name=self._name() if choice.kind is ChoiceKind.SPLIT_CULTURE else "",
            vessel_id=self._pick(choice.vessel_ids, which),
            store_id=self._pick(choice.store_ids, which),
        )
        self._try(lambda: self.desk.carrying.perform(choice, answers))

    # --- what always holds ------------------------------------------------------------

    @invariant()
    def every_volume_balances_and_fits_its_vessel(self):
        if not hasattr(self, "store"):
            return
        with self.store.read() as unit:
            transfers = unit.transfers.where()
            brims = {row.id: row.brim_volume_l for row in unit.vessels.where()}
            batches = unit.batches.where()
        for batch in batches:
            balance = self.desk.liquids.balance(batch.id)
            out = sum(row.volume_l for row in transfers if row.from_batch_id == batch.id)
            poured = sum(
                row.volume_l
                for row in transfers
                if row.to_batch_id == batch.id and row.kind is not TransferKind.STARTER
            )
            filled = batch.fill_volume_l if batch.started_at is not None else 0.0
            assert abs(balance.filled_l + balance.in_l - balance.out_l - balance.now_l) < 1e-8
            assert abs(filled + poured - out - balance.now_l) < 1e-4  # less than two drops
            assert -ROUNDING_L < balance.now_l <= brims[batch.vessel_id] + 1e-8

    @invariant()
    def what_rests_fits_its_vessel(self):
        if not hasattr(self, "store"):
            return
        for culture in self.desk.cultures.all():
            if culture.state is CultureState.AT_WORK:
                assert culture.rest_volume_l is None
            if culture.rest_volume_l is not None and culture.vessel_id is not None:
                brim_l = self.desk.vessels.get(culture.vessel_id).brim_volume_l
                assert 0.0 <= culture.rest_volume_l <= brim_l + 1e-8


@pytest.fixture
def machine(new_store):
    return type("RandomLiquidsHere", (RandomLiquids,), {"new_store": new_store})


def test_liquid_balances_through_random_acts_undone_and_redone(machine):
    run_state_machine_as_test(
        machine, settings=settings(settings.default, max_examples=20, stateful_step_count=30)
    )
