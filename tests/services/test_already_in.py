"""A batch that was brewed before the program knew of it."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services.brewing import StepShut
from brewdesk.services.records import BatchStage, CultureState, ImpossibleInput
from brewdesk.services.wording.acts import act_text
from tests.helpers.dump import dump


@pytest.fixture
def planned(kit):
    return kit.plan(culture=kit.culture(), name="Amber")


def test_it_sours_from_the_day_the_maker_names(kit, planned):
    began = kit.clock.now() - timedelta(days=4)
    batch = kit.brewing.note_already_in(planned.id, began, temperature_c=26.0)
    assert batch.stage is BatchStage.SOURING
    assert batch.started_at == began
    culture = kit.cultures.get(planned.culture_id)
    assert culture.state is CultureState.AT_WORK
    assert culture.vessel_id == planned.vessel_id
    (jar,) = kit.shelf.jars()
    assert jar.day_number == 4


@pytest.mark.parametrize("temperature_c", [None, 31.0, 60.0])
def test_without_a_good_temperature_it_needs_a_reason(kit, planned, temperature_c):
    began = kit.clock.now() - timedelta(days=1)
    with pytest.raises(StepShut):
        kit.brewing.note_already_in(planned.id, began, temperature_c=temperature_c)
    assert kit.batches.get(planned.id).stage is BatchStage.PLANNED
    batch = kit.brewing.note_already_in(
        planned.id, began, temperature_c=temperature_c, override_reason="not measured"
    )
    assert batch.stage is BatchStage.SOURING
    assert "not measured" in act_text(kit.history.undo_act())


def test_it_cannot_have_begun_in_the_future(kit, planned):
    with pytest.raises(ImpossibleInput) as told:
        kit.brewing.note_already_in(planned.id, kit.clock.now() + timedelta(hours=1), 25.0)
    assert told.value.field == "started_at"


def test_only_a_plan_can_be_entered_so(kit, planned):
    began = kit.clock.now() - timedelta(days=1)
    kit.brewing.note_already_in(planned.id, began, temperature_c=25.0)
    with pytest.raises(ImpossibleInput) as told:
        kit.brewing.note_already_in(planned.id, began, temperature_c=25.0)
    assert told.value.reason == "not_planned"


def test_undo_brings_the_plan_back_as_it_was(kit, planned):
    before = dump(kit.store.path)
    kit.brewing.note_already_in(planned.id, kit.clock.now() - timedelta(days=1), 25.0)
    kit.history.undo()
    assert dump(kit.store.path) == before
