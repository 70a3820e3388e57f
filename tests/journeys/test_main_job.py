"""The main job, from an empty pantry to a tasting day, through the whole window."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt

from brewdesk.services.notices.port import NoticeAction
from brewdesk.services.records import BatchStage, ReminderKind, StepKind
from tests.helpers.everystore import on_every_store
from tests.journeys.person import Person

STEPS_BEFORE_COOLING = (
    StepKind.BOIL,
    StepKind.STEEP,
    StepKind.LIFT_TEA,
    StepKind.DISSOLVE_SUGAR,
    StepKind.ADD_COLD_WATER,
)


def put_up_a_jar(person: Person) -> None:
    person.click("add_first_vessel")
    person.type("vessel_name", "Tall jar")
    person.type("vessel_brim", "4 l")
    person.click("vessel_save")


def plan_and_begin(person: Person) -> None:
    person.click("next_act")
    person.click("plan_and_start")


def done_button(person: Person, kind: StepKind):
    return person.find("step_done", within=person.find(f"step_{kind.value}"))


def finish(person: Person, kind: StepKind) -> None:
    row = person.find(f"step_{kind.value}")
    person.click("step_done", within=row)


def brew(person: Person, temperature: str = "26,5") -> None:
    """Follow the run sheet to its end, as somebody who watches the pot without the timers."""
    for kind in STEPS_BEFORE_COOLING:
        finish(person, kind)
    person.type("step_temperature", temperature, within=person.find("step_cool"))
    for kind in (StepKind.COOL, StepKind.STARTER_IN, StepKind.COVER):
        finish(person, kind)


@pytest.fixture
def souring(pantry):
    """A pantry with one jar that has just been covered."""
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    plan_and_begin(person)
    brew(person)
    return pantry, person


def only_batch(program):
    (batch,) = program.desk.batches.all()
    return batch


def is_tasting_due(program) -> bool:
    return any(
        item.is_due and item.reminder.kind is ReminderKind.TASTE
        for item in program.desk.reminders.listed()
    )


def tick_off_all_but_tasting(program) -> None:
    for item in program.desk.reminders.listed():
        if item.is_due and item.reminder.kind is not ReminderKind.TASTE:
            program.desk.reminders.done(item.reminder.id)


@on_every_store
def test_an_empty_pantry_becomes_a_souring_jar_with_reminders(souring):
    pantry, _ = souring
    batch = only_batch(pantry.program)
    assert batch.stage is BatchStage.SOURING
    assert batch.started_at == pantry.clock.now()
    kinds = {item.reminder.kind for item in pantry.program.desk.reminders.listed()}
    assert {ReminderKind.TASTE, ReminderKind.PH_CHECK, ReminderKind.MOLD_LOOK} <= kinds


def test_the_culture_step_stays_shut_while_the_tea_is_hot(pantry):
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    plan_and_begin(person)
    for kind in STEPS_BEFORE_COOLING:
        finish(person, kind)
    person.type("step_temperature", "45", within=person.find("step_cool"))
    finish(person, StepKind.COOL)
    row = person.find("step_starter_in")
    assert not person.find("step_done", within=row).isEnabled()
    person.type("step_temperature", "27", within=row)
    finish(person, StepKind.STARTER_IN)
    finish(person, StepKind.COVER)
    assert only_batch(program).stage is BatchStage.SOURING


def test_hot_tea_takes_the_culture_only_with_a_written_reason(pantry):
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    plan_and_begin(person)
    for kind in STEPS_BEFORE_COOLING:
        finish(person, kind)
    person.type("step_temperature", "34", within=person.find("step_cool"))
    finish(person, StepKind.COOL)
    row = person.find("step_starter_in")
    person.click("gate_open", within=row)
    person.type("gate_reason", "a spare starter, to learn what it does", within=row)
    person.click("gate_override", within=row)
    batch = only_batch(program)
    (step,) = [s for s in program.desk.brewing.steps(batch.id) if s.kind is StepKind.STARTER_IN]
    assert step.override_reason == "a spare starter, to learn what it does"
    texts = " ".join(line.text for line in program.desk.journal.of_batch(batch.id))
    assert "a spare starter" in texts


def test_readings_typed_with_comma_or_point_land_in_the_curve(souring):
    pantry, person = souring
    program = pantry.program
    for days, typed in ((0, "4,10"), (3, "3.62"), (3, "3,35")):
        pantry.pass_time(days=days)
        person.click("next_act")
        person.type("reading_ph", typed)
        person.press(Qt.Key.Key_Return, "reading_ph", modifier=Qt.KeyboardModifier.ControlModifier)
    batch = only_batch(program)
    view = program.desk.forecasts.now(batch.id)
    assert [point.value for point in view.points] == [4.10, 3.62, 3.35]
    program.window.shelf.sheet.show_tab("curve")
    assert program.window.shelf.sheet.chart.view() is not None
    assert view.forecast is not None
    assert view.forecast.window_opens_day is not None


@on_every_store
def test_the_tasting_day_is_told_once_and_found_again_after_a_restart(souring):
    pantry, person = souring
    program = pantry.program
    person.click("next_act")
    person.type("reading_ph", "4.0")
    person.click("reading_save")
    batch = only_batch(program)
    while not is_tasting_due(program):
        tick_off_all_but_tasting(program)
        pantry.pass_time(hours=4)
        assert pantry.clock.now() - batch.started_at < timedelta(days=40)
    for _ in range(5):
        pantry.pass_time(seconds=50)
    told = [n for n in pantry.notifier.shown if "aste" in n.title]
    assert len(told) == 1
    assert "Tall jar" in told[0].title + told[0].body
    assert {action for action, _ in told[0].actions} == set(NoticeAction)

    program = pantry.reopen()
    pantry.pass_time(minutes=1)
    assert not [n for n in pantry.notifier.shown if "aste" in n.title], "shown a second time"
    assert program.desk.batches.get(batch.id) == batch
    assert [r.value for r in program.desk.readings.of_batch(batch.id)] == [4.0]
    kinds = {i.reminder.kind for i in program.desk.reminders.listed() if i.is_due}
    assert ReminderKind.TASTE in kinds
    (jar,) = program.desk.shelf.jars()
    assert jar.vessel.name == "Tall jar"
    assert jar.latest_ph == 4.0


def test_answering_the_notice_opens_the_jar_or_ticks_it_off(souring):
    pantry, _ = souring
    program = pantry.program
    pantry.pass_time(days=3, hours=18)
    notice = next(n for n in pantry.notifier.shown if "mold" in n.title.lower())
    program.window.show_page("settings")
    pantry.notifier.answer(notice.key, NoticeAction.OPEN)
    assert program.window.stack.currentWidget() is program.window.shelf
    pantry.notifier.answer(notice.key, NoticeAction.DONE)
    assert not [
        item
        for item in program.desk.reminders.listed()
        if item.reminder.kind is ReminderKind.MOLD_LOOK and item.is_due
    ]


def test_what_fell_due_while_closed_comes_as_one_summary(souring):
    pantry, _ = souring
    pantry.close()
    pantry.clock.advance(days=6, hours=20)
    pantry.open()
    assert len(pantry.notifier.shown) == 1
    due = [item for item in pantry.program.desk.reminders.listed() if item.is_due]
    assert len(due) >= 2


@on_every_store
def test_every_act_of_the_journey_can_be_undone_to_an_empty_pantry_and_redone(souring):
    pantry, person = souring
    program = pantry.program
    person.click("next_act")
    person.type("reading_ph", "3.42")
    person.click("reading_save")
    undo = program.window.actions_by_key["undo"]
    assert "pH 3.42" in undo.text()
    assert "Tall jar" in undo.text()
    count = 0
    while undo.isEnabled():
        undo.trigger()
        count += 1
        assert count < 50
    assert program.desk.shelf.jars() == ()
    redo = program.window.actions_by_key["redo"]
    while redo.isEnabled():
        redo.trigger()
        count -= 1
    assert count == 0
    (jar,) = program.desk.shelf.jars()
    assert jar.latest_ph == 3.42


def test_the_shelf_says_in_words_what_it_draws(souring):
    pantry, _ = souring
    index = pantry.program.window.shelf.model.index(0)
    sentence = index.data(Qt.ItemDataRole.AccessibleTextRole)
    assert "Tall jar" in sentence
    assert "Day 0" in sentence


def test_a_newcomer_needs_at_most_twelve_acts_to_a_batch_with_reminders(pantry):
    """From the empty window to a batch that sours and is watched: clicks and entries counted."""
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    person.click("next_act")
    person.click("plan_it")
    sheet = program.window.shelf.sheet
    person.choose_from_menu(sheet.more_button.menu(), "It is already in the jar")
    person.type("already_temperature", "25")
    person.click("already_go")
    assert only_batch(program).stage is BatchStage.SOURING
    kinds = {item.reminder.kind for item in program.desk.reminders.listed()}
    assert {ReminderKind.TASTE, ReminderKind.PH_CHECK, ReminderKind.MOLD_LOOK} <= kinds
    assert person.acts <= 12


def test_a_newcomer_reaches_the_run_sheet_in_half_of_that(pantry):
    program = pantry.open()
    person = Person(program.window)
    put_up_a_jar(person)
    plan_and_begin(person)
    assert only_batch(program).stage is BatchStage.BREWING
    assert person.find("step_boil")
    assert person.acts <= 6


def test_the_jar_menu_offers_what_can_be_done_with_the_jar_as_it_is(pantry):
    program = pantry.open()
    actions = program.window.actions_by_key
    jar_acts = ("reading", "brew", "already_in", "draw_off", "discard", "edit_vessel", "retire")

    def offered() -> set[str]:
        return {key for key in jar_acts if actions[key].isEnabled()}

    assert offered() == set()
    person = Person(program.window)
    put_up_a_jar(person)
    assert offered() == {"edit_vessel", "retire"}
    person.click("next_act")
    person.click("plan_it")
    assert offered() == {"brew", "already_in", "edit_vessel"}
    actions["brew"].trigger()
    pantry.app.processEvents()
    person.find("step_boil")
    assert offered() == {"discard", "edit_vessel"}
    brew(person)
    pantry.app.processEvents()
    assert offered() == {"reading", "draw_off", "discard", "edit_vessel"}
