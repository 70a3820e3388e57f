"""The journal: what was done, newest first, without what was undone."""

from __future__ import annotations

from brewdesk.store.records import ReadingDraft
from culturecore.stages import Method, Quantity
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
