"""Random acts in the stores among those with liquids: nothing is invented, nothing is lost.

What was bought and not drawn is what is left, lot by lot, whatever was done and undone.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from fractions import Fraction

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import initialize, invariant, rule, run_state_machine_as_test

from brewdesk.services.stockdraws import PlanSupplies
from brewdesk.store.stockrecords import SupplyDraft, SupplyLotDraft
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    BottlingState,
    DrawReason,
    SupplyKind,
    SupplyMeasure,
    TeaKind,
)
from culturecore.stockcost import exact
from tests.services.test_random_acts import PICK
from tests.services.test_random_liquids import RandomLiquids

KINDS = (SupplyKind.TEA, SupplyKind.SUGAR, SupplyKind.BOTTLE)
PRICES = st.sampled_from([None, 0, 129, 1999])
SHARES = st.sampled_from([0.0, 0.3, 1.0, 1.7])
STOCK_ACTS = st.sampled_from(["use", "count", "edit", "retire", "correct", "remove"])


class RandomStores(RandomLiquids):
    """The maker of liquids, who also buys, counts and breaks things."""

    @initialize()
    def open_pantry(self):
        """Begin with full shelves and a plan that takes from them: else few acts reach it."""
        super().open_pantry()
        for number, kind in enumerate((*KINDS, SupplyKind.TEA)):
            self.add_supply(kind, 50.0)
            self.buy(number, 12.3, 1999, 20)
            self.buy(number, 500.0, 129, 3)
        self.brew_from_the_stores(0, 0, 0, is_started=False)
        self.bottle_from_the_stores(0, 0, 2, "fill")

    # --- stores -------------------------------------------------------------------------

    def _supply(self, number, *kinds):
        views = [view for view in self.desk.stores.all() if view.supply.kind in (kinds or KINDS)]
        return self._pick(views, number)

    @rule(kind=st.sampled_from(KINDS), low=st.sampled_from([None, 50.0]))
    def add_supply(self, kind, low):
        is_bottle = kind is SupplyKind.BOTTLE
        draft = SupplyDraft(
            name=self._name(),
            kind=kind,
            measure=SupplyMeasure.PIECES if is_bottle else SupplyMeasure.MASS_G,
            tea_kind=TeaKind.BLACK if kind is SupplyKind.TEA else None,
            low_amount=low,
        )
        self._try(lambda: self.desk.stores.add(draft))

    @rule(number=PICK, amount=st.sampled_from([5.0, 12.3, 500.0]), price=PRICES, days=PICK)
    def buy(self, number, amount, price, days):
        view = self._supply(number)
        if view is None:
            return
        draft = SupplyLotDraft(
            supply_id=view.supply.id,
            bought_at=self.clock.now() - timedelta(days=days),
            amount=amount,
            price_minor=price,
            currency="" if price is None else ["EUR", "CHF"][days % 2],
        )
        self._try(lambda: self.desk.stores.buy(draft))

    @rule(acts=st.lists(st.tuples(PICK, SHARES, PICK, STOCK_ACTS), min_size=1, max_size=4))
    def keep_the_books(self, acts):
        for act in acts:
            self._change_stock(*act)

    def _change_stock(self, number, share, first, what):
        view, stores = self._supply(number), self.desk.stores
        if view is None:
            return
        supply_id, amount = view.supply.id, round(view.left * share, 3)
        acts = {
            "use": lambda: stores.use(supply_id, amount, DrawReason.SPOILED, "fell"),
            "count": lambda: stores.count(supply_id, amount),
            "edit": lambda: stores.edit(supply_id, low_amount=amount, note="seen"),
            "retire": lambda: stores.retire(supply_id),
        }
        if what in acts:
            self._try(acts[what])
        elif (lot := self._pick(view.lots, first)) is not None:
            correct = {"amount": lot.lot.amount * (0.5 + share), "price_minor": None}
            if what == "correct":
                self._try(lambda: stores.edit_lot(lot.lot.id, **correct))
            else:
                self._try(lambda: stores.remove_lot(lot.lot.id))

    @rule(where=PICK, tea=PICK, sugar=PICK, is_started=st.booleans())
    def brew_from_the_stores(self, where, tea, sugar, is_started):
        plan = self._batch(where, BatchStage.PLANNED)
        one, two = self._supply(tea, SupplyKind.TEA), self._supply(sugar, SupplyKind.SUGAR)
        if plan is None or plan.purpose is not BatchPurpose.DRINK:
            return
        chosen = PlanSupplies(
            tea_id=None if one is None else one.supply.id,
            sugar_id=None if two is None else two.supply.id,
        )
        batches = self.desk.batches
        self._try(
            lambda: batches.edit_plan(
                plan.id,
                vessel_id=plan.vessel_id,
                culture_id=plan.culture_id,
                name=plan.name,
                wish=batches.wish_of(plan),
                supplies=chosen,
            )
        )
        if is_started:
            self._try(lambda: self.desk.brewing.start(plan.id))

    @rule(number=PICK, glass=PICK, count=st.integers(1, 3), how=st.sampled_from(["fill", "end"]))
    def bottle_from_the_stores(self, number, glass, count, how):
        bottlings, stores = self.desk.bottlings, self.desk.stores
        standing = self._pick(bottlings.all(tuple(BottlingState)), number)
        if how == "end" and standing is not None:
            self._try(lambda: bottlings.finish(standing.id))
            self._try(lambda: stores.return_bottles(standing.id))
            return
        batch = self._batch(number, BatchStage.SOURING)
        view = self._supply(glass, SupplyKind.BOTTLE)
        sugar = self._supply(glass, SupplyKind.SUGAR)
        if batch is None or batch.purpose is not BatchPurpose.DRINK:
            return
        wish = bottlings.wish_for(batch.id)
        group = replace(
            wish.groups[0],
            bottle_count=count,
            brim_volume_l=0.1,
            supply_id=None if view is None else view.supply.id,
        )
        wish = replace(
            wish,
            groups=(group,),
            priming_sugar_g=1.5,
            priming_supply_id=None if sugar is None else sugar.supply.id,
        )
        self._try(lambda: bottlings.fill(wish, "for the books"))

    @invariant()
    def the_stores_never_invent_matter(self):
        if not hasattr(self, "store"):
            return
        with self.store.read() as unit:
            lots, draws = unit.supply_lots.where(), unit.supply_draws.where()
            plans = unit.batch_supplies.where()
            planned = {row.id for row in unit.batches.where(stage=BatchStage.PLANNED)}
        for lot in lots:
            drawn = sum(exact(draw.amount) for draw in draws if draw.lot_id == lot.id)
            assert 0 <= drawn <= exact(lot.amount)
        for view in self.desk.stores.all(include_retired=True):
            booked = [draw for draw in view.draws if draw.lot_id is not None]
            gone = sum(exact(draw.amount) for draw in booked)
            assert exact(view.bought) - gone == exact(view.left)
            assert view.unbooked >= 0
        assert {plan.batch_id for plan in plans} <= planned

    @invariant()
    def a_cost_is_that_of_its_pieces(self):
        """Every gram is priced by its own lot; the oracle knows neither portions nor sums."""
        if not hasattr(self, "store"):
            return
        with self.store.read() as unit:
            lots = {row.id: row for row in unit.supply_lots.where()}
            draws = unit.supply_draws.where(reason=DrawReason.BREWED)
            teas = {row.id for row in unit.supplies.where(kind=SupplyKind.TEA)}
        for batch_id in {draw.batch_id for draw in draws}:
            parts = dict(self.desk.batch_costs.of_batch(batch_id).parts)
            known = parts[SupplyKind.TEA].known if SupplyKind.TEA in parts else ()
            assert dict(known) == self._of(teas, batch_id, draws, lots)

    def _of(self, supply_ids, batch_id, draws, lots):
        sums: dict[str, Fraction] = {}
        for draw in draws:
            lot = lots.get(draw.lot_id)
            if draw.batch_id != batch_id or draw.supply_id not in supply_ids or lot is None:
                continue
            if lot.price_minor:
                each = lot.price_minor / exact(lot.amount)
                before = sums.get(lot.currency, Fraction(0))
                sums[lot.currency] = before + each * exact(draw.amount)
        return sums


@pytest.fixture
def machine(new_store):
    return type("RandomStoresHere", (RandomStores,), {"new_store": new_store})


def test_stores_leave_no_trace_when_undone_and_return_when_redone(machine):
    run_state_machine_as_test(
        machine, settings=settings(settings.default, max_examples=10, stateful_step_count=30)
    )
