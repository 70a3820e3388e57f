"""From a souring jar to chilled bottles, through the whole window."""

from __future__ import annotations

from brewdesk.services.records import BatchStage, BottlingState, Feel
from tests.helpers.everystore import on_every_store
from tests.journeys.person import Person
from tests.journeys.test_main_job import brew, only_batch, plan_and_begin, put_up_a_jar


@on_every_store
def test_a_souring_jar_becomes_chilled_bottles(pantry):
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    plan_and_begin(person)
    brew(person)
    sheet = program.window.shelf.sheet
    pantry.qtbot.waitUntil(lambda: sheet.jar().stage_code == "souring")
    pantry.pass_time(days=5)
    person.click("next_act")
    person.type("reading_ph", "3,1")
    person.click("reading_save")

    person.choose_from_menu(sheet._menu, "Bottle it")
    person.click("fill_bottles")
    (bottling,) = program.desk.bottlings.all()
    batch = only_batch(program)
    assert bottling.batch_id == batch.id
    # no culture is in this jar: the starter stays behind, and the batch goes on
    assert batch.stage is BatchStage.SOURING
    left_l = program.desk.liquids.volume_now_l(batch.id)
    assert 0.0 < left_l == batch.fill_volume_l - bottling.drink_volume_l

    pantry.pass_time(days=1)
    person.click("feel_soft")
    pantry.pass_time(hours=12)
    person.click("feel_hard")
    (card,) = program.window.page("bottles").stand.cards()
    assert card.urgency.text() == "Chill now"
    assert program.window.rail.buttons["bottles"].text().endswith("· 1")
    person.click("chill_now")
    cold = program.desk.bottlings.get(bottling.id)
    assert cold.state is BottlingState.CHILLED
    assert cold.best_before > pantry.clock.now()
    felt = [check.feel for check in program.desk.bottlings.parts_of(bottling.id).checks]
    assert felt == [Feel.SOFT, Feel.HARD]

    program = pantry.reopen()
    assert [row.id for row in program.desk.bottlings.all()] == [bottling.id]
    assert program.desk.history.undo_act() is not None
