"""The journal: what was done, newest first, without what was undone."""

from __future__ import annotations

import pytest

from brewdesk.services.wording.acts import act_text
from brewdesk.store.records import ReadingDraft
from culturecore.stages import CultureState, Method, Quantity, StepKind
from culturecore.units import Kind


def test_the_journal_tells_a_batch_from_plan_to_end(kit):
    batch = kit.souring(culture=kit.culture())
    other = kit.plan(kit.vessel("Other"), name="Other")
    kit.clock.advance(days=8)
    kit.batches.draw_off(batch.id, "right")

    lines = kit.journal.of_batch(batch.id)

    assert lines[0].text == "Black tea 1 drawn off from Tall jar: right"
    assert lines[0].at == kit.clock.now()
    assert lines[-1].text == "Black tea 1 planned, 4.00 L in Tall jar"
    assert lines[-2].text == "Brewing of Black tea 1 begun"
    assert lines[1].text == "Black tea 1 covered and souring"
    assert len(lines) == 3 + len(kit.brewing.steps(batch.id))
    assert [line.kind for line in kit.journal.of_batch(other.id)] == ["plan_batch"]


def test_what_was_undone_is_not_in_the_journal(kit):
    batch = kit.plan()
    kit.brewing.start(batch.id)
    kit.history.undo()
    assert [line.kind for line in kit.journal.of_batch(batch.id)] == ["plan_batch"]
    kit.history.redo()
    assert [line.kind for line in kit.journal.of_batch(batch.id)] == ["start_brew", "plan_batch"]


def test_the_journal_speaks_in_the_makers_units(kit):
    batch = kit.souring()
    kit.readings.record(
        [
            ReadingDraft(
                batch_id=batch.id,
                at=kit.clock.now(),
                quantity=Quantity.TEMPERATURE_C,
                method=Method.THERMOMETER,
                value=20.0,
            )
        ]
    )
    assert kit.journal.of_batch(batch.id)[0].text == "20.0 °C on Tall jar"
    kit.settings.put_unit(Kind.TEMPERATURE, "°F")
    assert kit.journal.of_batch(batch.id)[0].text == "68.0 °F on Tall jar"


def test_the_journal_keeps_the_names_of_its_day(kit):
    batch = kit.plan()
    kit.vessels.edit(batch.vessel_id, name="Renamed")
    assert "Tall jar" in kit.journal.of_batch(batch.id)[-1].text


def _newest(kit):
    return act_text(kit.history.undo_act())


@pytest.mark.parametrize(
    ("state", "text"),
    [
        (CultureState.FORMING, "Old Faithful is forming"),
        (CultureState.AT_WORK, "Old Faithful is at work"),
        (CultureState.RETIRED, "Old Faithful retired"),
        (CultureState.GIVEN_AWAY, "Old Faithful given away"),
        (CultureState.LOST, "Old Faithful lost"),
    ],
)
def test_a_culture_is_told_by_what_became_of_it(kit, state, text):
    kit.cultures.edit(kit.culture().id, state=state)
    assert _newest(kit) == text


def test_a_culture_that_rests_again_is_told_so(kit):
    culture = kit.culture(state=CultureState.AT_WORK)
    kit.cultures.edit(culture.id, state=CultureState.RESTING)
    assert _newest(kit) == "Old Faithful is resting"


def test_a_new_name_is_told_with_the_old_one(kit):
    kit.cultures.edit(kit.culture().id, name="Young Hopeful")
    assert _newest(kit) == "Old Faithful renamed Young Hopeful"
    kit.vessels.edit(kit.vessel().id, note="chipped")
    assert _newest(kit) == "Tall jar changed"


def test_a_step_is_told_with_its_temperature_and_the_reason_against_the_warning(kit):
    batch = kit.plan(culture=kit.culture())
    sheet = {step.kind: step.id for step in kit.brewing.start(batch.id)}
    kit.brewing.finish(sheet[StepKind.LIFT_TEA])
    assert _newest(kit) == "Black tea 1: “Lift the tea out” done"
    kit.brewing.finish(sheet[StepKind.COOL], 33.0)
    assert _newest(kit) == "Black tea 1: “Let it cool” done at 33.0 °C"
    kit.brewing.finish(sheet[StepKind.STARTER_IN], None, "late")
    assert _newest(kit) == (
        "Black tea 1: “Pour in the starter” done, in spite of the warning: late"
    )
    kit.brewing.finish(sheet[StepKind.CULTURE_IN], 32.0, "late")
    assert _newest(kit) == (
        "Black tea 1: “Put in the culture” done at 32.0 °C, in spite of the warning: late"
    )


def test_ends_are_told_with_their_reasons(kit):
    kit.batches.draw_off(kit.souring(kit.vessel("One")).id)
    assert _newest(kit) == "Black tea 1 drawn off from One"
    kit.batches.discard(kit.souring(kit.vessel("Two")).id, "mold", culture_lost=False)
    assert _newest(kit) == "Black tea 1 discarded: mold"
    culture = kit.culture()
    batch = kit.souring(kit.vessel("Three"), culture)
    kit.batches.discard(batch.id, "mold", culture_lost=True)
    assert _newest(kit) == "Black tea 1 and its culture discarded: mold"


def test_a_correction_that_changes_no_number_is_told_as_one(kit):
    batch = kit.souring()
    draft = ReadingDraft(
        batch_id=batch.id,
        at=kit.clock.now(),
        quantity=Quantity.PH,
        method=Method.METER,
        value=3.42,
    )
    (reading,) = kit.readings.record([draft])
    kit.readings.edit(reading.id, method=Method.STRIP)
    assert _newest(kit) == "pH 3.42 on Tall jar corrected"
