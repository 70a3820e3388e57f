"""The run sheet's sentences carry grams and what a kitchen without scales needs."""

from __future__ import annotations

from dataclasses import replace

import pytest

from brewdesk.services.amounts import Part, amount_rows
from brewdesk.services.records import StepKind
from brewdesk.services.wording.measures import measure_words
from brewdesk.widgets.stepwords import step_words
from tests.helpers.pantry_desk import brewing_batch

PARTS = {
    StepKind.BOIL: Part.HOT_WATER,
    StepKind.STEEP: Part.TEA,
    StepKind.DISSOLVE_SUGAR: Part.SUGAR,
    StepKind.STARTER_IN: Part.STARTER,
}


@pytest.mark.parametrize("kind", PARTS)
def test_a_step_says_the_same_measure_as_the_plan(desk, kind):
    batch = brewing_batch(desk)
    wish = desk.batches.wish_of(batch)
    rows = {row.part: row for row in amount_rows(desk.batches.plan_preview(wish), wish)}
    measure = measure_words(rows[PARTS[kind]].measures)
    step = next(step for step in desk.brewing.steps(batch.id) if step.kind is kind)
    assert measure
    assert measure in step_words(step, batch, desk.quantities)


def test_less_than_a_litre_of_starter_is_said_in_millilitres(desk):
    batch = replace(brewing_batch(desk), starter_volume_l=0.3124)
    step = next(s for s in desk.brewing.steps(batch.id) if s.kind is StepKind.STARTER_IN)
    assert "312 mL of starter" in step_words(step, batch, desk.quantities)
    more = replace(batch, starter_volume_l=1.25)
    assert "1.25 L of starter" in step_words(step, more, desk.quantities)
