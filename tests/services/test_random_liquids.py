"""Random acts with liquid in them: it balances whatever is done, undone and done again."""

from __future__ import annotations

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import initialize, invariant, rule, run_state_machine_as_test

from brewdesk.services.carrying import Answers
from brewdesk.services.drops import Carried, CarriedKind, ChoiceKind, Target, Tray
from brewdesk.services.ledger import ROUNDING_L
from culturecore.stages import BatchStage, CultureState, TeaKind, TransferKind
from tests.services.test_random_acts import PICK, RandomActs, having

VOLUME = st.sampled_from([0.0, 1e-5, 0.05, 0.3, 1.0, 2.5, 9.0])
SHARE = st.sampled_from([0.0, 0.2, 0.5, 0.9, 1.0, 1.4])  # of what is there or fits
DRAWN = st.sampled_from([TransferKind.DRINK, TransferKind.SAMPLE, TransferKind.LOSS])


class RandomLiquids(RandomActs):
    """The same maker, with a ladle."""

    @initialize()
    def open_pantry(self):
        super().open_pantry()
        for litres in (3.0, 5.0):
            self.add_vessel(litres)
            self.bring_in_what_is_souring_already(len(self.desk.vessels.all()) - 1, 1, 6)
        self.add_vessel(5.0)
        store = self._vessel(len(self.desk.vessels.all()) - 1)
        self.add_culture(0, 0, is_in_vessel=False)
        culture = self.desk.cultures.all()[-1]
        self._try(lambda: self.desk.culture_care.rest(culture.id, store.id, 0.8))

    def _now_l(self, batch):
        return self.desk.liquids.volume_now_l(batch.id)

    def _room_l(self, batch):
        return self.desk.vessels.get(batch.vessel_id).brim_volume_l - self._now_l(batch)

    def _souring(self, number):
        return self._batch(number, BatchStage.SOURING)

    @having(BatchStage.SOURING)
    @rule(number=PICK, share=SHARE, kind=DRAWN)
    def draw_part(self, number, share, kind):
        batch = self._souring(number)
        volume_l = share * self._now_l(batch)
        self._try(lambda: self.desk.liquids.draw_part(batch.id, volume_l, kind))

    @having(BatchStage.SOURING)
    @rule(number=PICK, share=SHARE, degrees=st.sampled_from([20.0, 29.0, 70.0, None]))
    def top_up(self, number, share, degrees):
        batch = self._souring(number)
        fresh = (share * self._room_l(batch), 60.0, TeaKind.GREEN, 5.0, degrees)
        self._try(lambda: self.desk.liquids.top_up(batch.id, *fresh))

    @having(BatchStage.SOURING)
    @rule(number=PICK, other=PICK, share=st.one_of(st.none(), SHARE), joins=st.booleans())
    def pour_together(self, number, other, share, joins):
        batch, into = self._souring(number), self._souring(other)
        fits_l = min(self._now_l(batch), self._room_l(into))
        volume_l = None if share is None else share * fits_l
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
    @rule(number=PICK, share=SHARE)
    def draw_off_and_keep(self, number, share):
        batch = self._souring(number)
        kept_l = share * self._now_l(batch)
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
        if choice is None or choice.kind is ChoiceKind.FILL_BOTTLES:  # leads to a page
            return
        answers = Answers(
            volume_l=volume_l,
            name=self._name() if choice.kind is ChoiceKind.SPLIT_CULTURE else "",
            vessel_id=self._pick(choice.vessel_ids, which),
            store_id=self._pick(choice.store_ids, which),
        )
        self._try(lambda: self.desk.carrying.perform(choice, answers))

    @rule(number=PICK, where=PICK, is_moved=st.booleans())
    def change_culture(self, number, where, is_moved):
        """Corrections by hand may say anything of a culture; here she is really moved."""
        culture = self._pick(self.desk.cultures.all(), number)
        vessel = self._vessel(where)
        if culture is None or vessel is None:
            return
        if is_moved:
            self._try(lambda: self.desk.culture_care.move(culture.id, vessel.id))
        else:
            self._try(lambda: self.desk.cultures.edit(culture.id, pellicle_mm=float(where)))

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
