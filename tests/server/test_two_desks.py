"""What is done at one desk is seen at the other, and is not done over."""

from __future__ import annotations

import pytest

from brewdesk.services.records import Quantity
from brewdesk.services.settings import FIRST_TASTE_PH, THEME
from brewdesk.services.wording.problems import trouble_words
from brewdesk.store.errors import ChangedElsewhere
from brewdesk.store.records import ReadingDraft
from brewdesk.widgets.vesselform import VesselDialog
from culturecore.errors import ImpossibleInput
from culturecore.stages import Method
from tests.helpers.pantry_desk import plan_batch, souring_batch


def jars(program):
    return [jar.vessel.name for jar in program.desk.shelf.jars()]


def vessel_of(program, name):
    return next(v for v in program.desk.vessels.all() if v.name == name)


def ph(batch, clock, value):
    return ReadingDraft(
        batch_id=batch.id, at=clock.now(), quantity=Quantity.PH, method=Method.METER,
        value=value, sd=0.05, entered=str(value),
    )  # fmt: skip


def both_are_told(shared, anna, ben):
    """Wait until each desk has been shown the newest change."""
    newest = anna.store.serial()
    shared.soon(lambda: ben.store.seen() >= newest)


def test_a_jar_appears_in_the_other_window_by_itself(shared, anna, ben):
    plan_batch(anna.desk, vessel="Invented crock")

    shared.soon(lambda: ben.window.shelf.view.model().rowCount() == 1)
    assert jars(ben) == ["Invented crock"]


def test_a_reading_moves_the_other_desks_forecast(shared, anna, ben):
    batch = souring_batch(anna.desk)
    both_are_told(shared, anna, ben)
    shared.clock.advance(days=4)
    heard = []
    ben.desk.changes.changed.connect(heard.append)

    anna.desk.readings.record((ph(batch, shared.clock, 3.6),))

    shared.soon(lambda: any(change.concerns_batch(batch.id) for change in heard))
    shared.soon(lambda: ben.desk.forecasts.now(batch.id) is not None)
    points = ben.desk.forecasts.now(batch.id).points
    assert [round(point.value, 2) for point in points] == [3.6]


def test_a_choice_of_all_is_taken_over_and_one_of_a_desk_is_not(shared, anna, ben):
    before = ben.desk.settings.get(THEME)

    anna.desk.settings.put(THEME, "dark")
    anna.desk.settings.put(FIRST_TASTE_PH, 3.5)

    shared.soon(lambda: ben.desk.settings.get(FIRST_TASTE_PH) == 3.5)
    assert (anna.desk.settings.get(THEME), ben.desk.settings.get(THEME)) == ("dark", before)


def test_each_desk_takes_back_its_own_acts(shared, anna, ben):
    plan_batch(anna.desk, vessel="Invented crock")
    both_are_told(shared, anna, ben)
    plan_batch(ben.desk, name="Invented batch of Ben", vessel="Invented tall jar")
    newest = ben.store.serial()
    shared.soon(lambda: anna.store.seen() >= newest)

    for _ in range(3):  # the plan, the culture, the jar
        anna.desk.history.undo()

    assert jars(anna) == ["Invented tall jar"]
    shared.soon(lambda: ben.window.shelf.view.model().rowCount() == 1)
    assert ben.desk.history.undo_act() is not None
    anna.desk.history.redo()
    assert jars(anna) == ["Invented crock", "Invented tall jar"]


def test_an_act_is_not_taken_back_over_what_another_desk_did_since(shared, anna, ben):
    plan_batch(anna.desk, vessel="Invented crock")
    crock = vessel_of(anna, "Invented crock")
    anna.desk.vessels.edit(crock.id, name="Invented crock of Anna")
    both_are_told(shared, anna, ben)
    ben.desk.vessels.edit(crock.id, name="Invented crock of Ben")
    troubles = []
    anna.desk.history.trouble.connect(troubles.append)

    anna.desk.history.undo()

    (trouble,) = troubles
    assert (trouble.code, trouble.desk_name) == ("changed_elsewhere", "Ben's desk")
    shared.soon(lambda: jars(anna) == ["Invented crock of Ben"])


def test_a_form_that_was_open_before_does_not_write_over_the_other_desk(shared, anna, ben, qtbot):
    plan_batch(anna.desk, vessel="Invented crock")
    crock = vessel_of(anna, "Invented crock")
    both_are_told(shared, anna, ben)
    form = VesselDialog(ben.desk, vessel_of(ben, "Invented crock"))
    qtbot.addWidget(form)
    form.open()
    form.name.setText("What Ben typed")
    anna.desk.vessels.edit(crock.id, name="Invented crock of Anna")
    both_are_told(shared, anna, ben)

    form.save.click()

    assert form.isVisible()
    assert form.name.text() == "What Ben typed"
    assert "Anna's desk" in form.trouble.text()
    assert "this jar" in form.trouble.text()
    assert jars(anna) == ["Invented crock of Anna"]
    form.save.click()  # he has been told, and means it
    assert not form.isVisible()
    shared.soon(lambda: jars(anna) == ["What Ben typed"])


def test_an_act_on_what_nobody_here_has_seen_yet_is_refused(shared, anna, ben):
    batch = souring_batch(anna.desk)
    both_are_told(shared, anna, ben)
    anna.desk.batches.draw_off(batch.id)  # no event is let through: Ben's window cannot know

    with pytest.raises(ChangedElsewhere) as caught:
        ben.desk.batches.discard(batch.id, "Invented reason")

    assert caught.value.desk_name == "Anna's desk"
    assert trouble_words(caught.value).startswith("The desk “Anna's desk” changed this batch")
    assert anna.desk.batches.get(batch.id).end_reason == ""


def test_both_may_read_the_same_jar(shared, anna, ben):
    batch = souring_batch(anna.desk)
    both_are_told(shared, anna, ben)

    anna.desk.readings.record((ph(batch, shared.clock, 3.6),))
    ben.desk.readings.record((ph(batch, shared.clock, 3.5),))

    values = [reading.value for reading in anna.desk.readings.of_batch(batch.id)]
    assert sorted(values) == [3.5, 3.6]


def test_a_vessel_takes_one_live_batch_of_all_desks(shared, anna, ben):
    plan_batch(anna.desk, vessel="Invented crock")
    both_are_told(shared, anna, ben)
    crock = vessel_of(ben, "Invented crock")

    with pytest.raises(ImpossibleInput) as caught:
        ben.desk.batches.plan(
            crock.id, None, "Invented second", ben.desk.batches.default_wish(crock.id)
        )

    assert caught.value.reason == "occupied"
    assert len(anna.desk.batches.all()) == 1
