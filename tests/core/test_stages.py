"""The stages of a batch: what occupies a vessel, and values that the store relies on."""

from __future__ import annotations

import enum

from culturecore import stages
from culturecore.stages import BatchStage


def test_a_batch_occupies_its_vessel_from_plan_to_souring():
    live = {stage for stage in BatchStage if stage.is_live}
    assert live == {BatchStage.PLANNED, BatchStage.BREWING, BatchStage.SOURING}


def test_every_enum_value_is_a_word_that_can_be_stored():
    enums = [kind for kind in vars(stages).values() if isinstance(kind, enum.EnumMeta)]
    values = [member.value for kind in enums if kind is not enum.Enum for member in kind]
    assert len(values) > 50
    assert all(value.isidentifier() and value == value.lower() for value in values)
