"""Undo and redo: every kind of act there and back, and what happens when it cannot be."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Changes, Topic
from brewdesk.services.door import Door
from brewdesk.services.history import History
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.reminders import Reminders
from brewdesk.services.wording.acts import act_text, redo_text, undo_text
from brewdesk.store.errors import StaleRow
from brewdesk.store.records import PlaceDraft, ReadingDraft
from brewdesk.store.store import Store
from culturecore.stages import BatchStage, Method, Quantity, StepKind
from tests.helpers.dump import dump
from tests.services import history_cultures, history_meters, history_stores, history_trials
from tests.services.history_bottles import BOTTLE_ACTS
from tests.services.history_liquids import LIQUID_ACTS
from tests.services.history_photos import PHOTO_ACTS
from tests.services.history_places import PLACE_ACTS
from tests.services.history_readings import READINGS_ACTS


def _step(kit, kind=StepKind.BOIL, *, begun=False, paused=False):
    batch = kit.plan()
    step = next(step for step in kit.brewing.start(batch.id) if step.kind is kind)
    if begun:
        kit.brewing.begin(step.id)
    if paused:
        kit.clock.advance(seconds=30)
        kit.brewing.pause(step.id)
    return step.id


def _reading(kit, batch_id, value=3.42):
    return ReadingDraft(
        batch_id=batch_id,
        at=kit.clock.now(),
        quantity=Quantity.PH,
        method=Method.METER,
        value=value,
        entered=str(value),
    )


def _recorded(kit):
    batch = kit.souring()
    return kit.readings.record([_reading(kit, batch.id)])[0]


def _own_reminder(kit):
    batch = kit.plan()
    at = kit.clock.now() + timedelta(hours=3)
    return Reminders(kit.door).add_own(batch.id, at, "buy tea")


def _almost_covered(kit):
    batch = kit.plan(culture=kit.culture())
    steps = kit.brewing.start(batch.id)
    for step in steps[:-1]:
        kit.brewing.finish(step.id, 24.0)
    return steps[-1].id


def _edit_plan(kit, batch):
    wish = replace(kit.batches.wish_of(batch), fill_volume_l=3.0)
    kit.batches.edit_plan(
        batch.id, vessel_id=batch.vessel_id, culture_id=None, name="Other", wish=wish
    )


def _drawn_off(kit):
    batch = kit.souring()
    kit.batches.draw_off(batch.id)
    return batch


# For every kind of act: what has to be there before, and the act itself.
ACTS = {
    ActKind.ADD_PLACE: (
        lambda kit: None,
        lambda kit, _: kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0)),
    ),
    ActKind.EDIT_PLACE: (
        lambda kit: kit.vessels.ensure_place(),
        lambda kit, place: kit.vessels.edit_place(place.id, temperature_c=19.0),
    ),
    ActKind.ADD_VESSEL: (lambda kit: kit.vessels.ensure_place(), lambda kit, _: kit.vessel()),
    ActKind.EDIT_VESSEL: (
        lambda kit: kit.vessel(),
        lambda kit, vessel: kit.vessels.edit(vessel.id, name="Short jar", note="chipped"),
    ),
    ActKind.RETIRE_VESSEL: (
        lambda kit: kit.vessel(),
        lambda kit, vessel: kit.vessels.retire(vessel.id),
    ),
    ActKind.RESTORE_VESSEL: (
        lambda kit: kit.vessels.retire(kit.vessel().id),
        lambda kit, vessel: kit.vessels.restore(vessel.id),
    ),
    ActKind.ADD_CULTURE: (
        lambda kit: kit.culture("Mother"),
        lambda kit, mother: kit.culture("Daughter", parents=(mother.id,)),
    ),
    ActKind.EDIT_CULTURE: (
        lambda kit: kit.culture(),
        lambda kit, culture: kit.cultures.edit(culture.id, pellicle_mm=5.0),
    ),
    ActKind.PLAN_BATCH: (lambda kit: kit.vessel(), lambda kit, vessel: kit.plan(vessel)),
    ActKind.EDIT_PLAN: (lambda kit: kit.plan(), _edit_plan),
    ActKind.DROP_PLAN: (
        lambda kit: _own_reminder(kit).batch_id,
        lambda kit, batch_id: kit.batches.drop_plan(batch_id),
    ),
    ActKind.START_BREW: (
        lambda kit: kit.plan(),
        lambda kit, batch: kit.brewing.start(batch.id),
    ),
    ActKind.START_STEP: (_step, lambda kit, step_id: kit.brewing.begin(step_id)),
    ActKind.PAUSE_STEP: (
        lambda kit: _step(kit, begun=True),
        lambda kit, step_id: kit.brewing.pause(step_id),
    ),
    ActKind.RESUME_STEP: (
        lambda kit: _step(kit, begun=True, paused=True),
        lambda kit, step_id: kit.brewing.resume(step_id),
    ),
    ActKind.EXTEND_STEP: (
        lambda kit: _step(kit, begun=True),
        lambda kit, step_id: kit.brewing.extend(step_id, 60.0),
    ),
    ActKind.FINISH_STEP: (
        lambda kit: _step(kit, StepKind.COOL),
        lambda kit, step_id: kit.brewing.finish(step_id, 25.0),
    ),
    ActKind.START_SOURING: (
        _almost_covered,
        lambda kit, step_id: kit.brewing.finish(step_id),
    ),
    ActKind.NOTE_ALREADY_IN: (
        lambda kit: kit.plan(culture=kit.culture()),
        lambda kit, batch: kit.brewing.note_already_in(batch.id, kit.clock.now(), 24.0),
    ),
    ActKind.ADD_READINGS: (
        lambda kit: kit.souring(),
        lambda kit, batch: kit.readings.record(
            [_reading(kit, batch.id), _reading(kit, batch.id, 3.4)]
        ),
    ),
    ActKind.EDIT_READING: (
        _recorded,
        lambda kit, reading: kit.readings.edit(reading.id, value=3.24),
    ),
    ActKind.REMOVE_READING: (
        _recorded,
        lambda kit, reading: kit.readings.remove(reading.id),
    ),
    ActKind.DRAW_OFF: (
        lambda kit: kit.souring(culture=kit.culture()),
        lambda kit, batch: kit.batches.draw_off(batch.id, "right"),
    ),
    ActKind.CLOSE_BATCH: (_drawn_off, lambda kit, batch: kit.batches.close(batch.id)),
    ActKind.DISCARD_BATCH: (
        lambda kit: kit.souring(culture=kit.culture()),
        lambda kit, batch: kit.batches.discard(batch.id, "mold", culture_lost=True),
    ),
    ActKind.ADD_REMINDER: (
        lambda kit: kit.plan(),
        lambda kit, batch: Reminders(kit.door).add_own(
            batch.id, kit.clock.now() + timedelta(days=1), "buy tea"
        ),
    ),
    ActKind.SNOOZE_REMINDER: (
        _own_reminder,
        lambda kit, reminder: Reminders(kit.door).snooze(
            reminder.id, kit.clock.now() + timedelta(hours=9)
        ),
    ),
    ActKind.FINISH_REMINDER: (
        _own_reminder,
        lambda kit, reminder: Reminders(kit.door).done(reminder.id),
    ),
    **PHOTO_ACTS,
}
ACTS |= LIQUID_ACTS
ACTS |= BOTTLE_ACTS

ACTS |= history_cultures.ACTS
ACTS |= history_meters.ACTS
ACTS |= history_stores.ACTS

ACTS |= PLACE_ACTS

ACTS |= READINGS_ACTS
ACTS |= history_trials.ACTS


def test_every_kind_of_act_is_tried_here():
    assert set(ACTS) == set(ActKind)


@pytest.mark.parametrize("kind", list(ActKind), ids=lambda kind: kind.value)
def test_an_act_is_taken_back_and_done_again_without_a_trace(kit, kind):
    prepare, act = ACTS[kind]
    prepared = prepare(kit)
    before = dump(kit.path)

    act(kit, prepared)

    after = dump(kit.path)
    assert after != before
    done = kit.history.undo_act()
    assert done.kind == kind.value

    kit.history.undo()
    assert dump(kit.path) == before
    assert kit.history.redo_act().id == done.id

    kit.history.redo()
    assert dump(kit.path) == after
    assert kit.history.redo_act() is None


@pytest.mark.parametrize("kind", list(ActKind), ids=lambda kind: kind.value)
def test_every_act_has_words_without_gaps(kit, kind):
    prepare, act = ACTS[kind]
    act(kit, prepare(kit))
    done = kit.history.undo_act()

    text = act_text(done, kit.quantities.show)

    assert text
    assert not set("{}") & set(text)
    assert "None" not in text
    assert text in undo_text(done, kit.quantities.show)
    assert text in redo_text(done, kit.quantities.show)


def test_undo_goes_back_act_by_act_and_redo_comes_forward_again(kit):
    kit.vessels.ensure_place()  # the program's own doing, no act
    states = [dump(kit.path)]
    vessel = kit.vessel()
    states.append(dump(kit.path))
    for name in ("A", "B", "C"):
        kit.vessels.edit(vessel.id, name=name)
        states.append(dump(kit.path))

    for state in reversed(states[:-1]):
        kit.history.undo()
        assert dump(kit.path) == state
    for state in states[1:]:
        kit.history.redo()
        assert dump(kit.path) == state


def test_nothing_to_undo_or_redo_is_no_trouble(kit):
    troubles = []
    kit.history.trouble.connect(troubles.append)
    kit.history.undo()
    kit.history.redo()
    assert kit.history.undo_act() is None
    assert troubles == []


def test_a_new_act_ends_what_could_be_redone(kit):
    vessel = kit.vessel()
    kit.vessels.edit(vessel.id, name="A")
    kit.history.undo()
    kit.vessels.edit(vessel.id, name="B")
    assert kit.history.redo_act() is None
    kit.history.redo()
    assert kit.vessels.get(vessel.id).name == "B"


def test_undo_tells_what_changed(kit):
    batch = kit.souring()
    kit.heard.clear()

    kit.history.undo()

    (change,) = kit.heard
    assert change.concerns(Topic.BATCHES)
    assert change.concerns(Topic.STEPS)
    assert change.batch_ids == {batch.id}
    assert batch.vessel_id in change.vessel_ids
    assert kit.batches.get(batch.id).stage is BatchStage.BREWING


def test_an_act_whose_row_changed_since_is_not_taken_back(kit):
    vessel = kit.vessel()
    kit.vessels.edit(vessel.id, name="A")
    kit.door.quiet(lambda unit: unit.vessels.change(vessel.id, note="moved meanwhile"))
    before = dump(kit.path)
    troubles = []
    kit.history.trouble.connect(troubles.append)
    kit.heard.clear()

    kit.history.undo()

    assert [type(trouble) for trouble in troubles] == [StaleRow]
    assert dump(kit.path) == before
    assert kit.heard == []
    assert kit.history.undo_act() is not None


def test_the_history_outlives_the_program(kit, clock):
    vessel = kit.vessel()
    kit.vessels.edit(vessel.id, name="A")
    kit.store.close()

    store = Store.open(kit.path, now=clock.now())
    history = History(Door(store, clock, Changes()))
    history.undo()
    with store.read() as unit:
        assert unit.vessels.get(vessel.id).name == "Tall jar"
    store.close()


def test_the_history_says_when_it_may_read_differently(kit):
    heard = []
    kit.history.changed.connect(lambda: heard.append(True))
    kit.vessel()
    assert heard


def _already_in(kit):
    """A batch that has been souring for six days: its reminders are the program's own."""
    batch = kit.plan()
    kit.brewing.note_already_in(batch.id, kit.clock.now() - timedelta(days=6), 24.0)
    return batch


def _undo_all(kit, reminders):
    while kit.history.undo_act() is not None:
        kit.history.undo()
        reminders.sync()


def _redo_all(kit, troubles):
    while kit.history.redo_act() is not None and not troubles:
        kit.history.redo()


@pytest.fixture
def troubles(kit):
    found = []
    kit.history.trouble.connect(found.append)
    return found


@pytest.mark.parametrize("looks_between", [False, True], ids=["at once", "after a look"])
def test_an_answered_reminder_of_the_programs_own_is_done_again_with_its_batch(
    kit, troubles, looks_between
):
    """Taking back the batch takes its reminders along; they come back as other rows."""
    batch = _already_in(kit)
    reminders = Reminders(kit.door)
    reminders.sync()
    looked = next(i.reminder for i in reminders.listed() if i.reminder.kind.value == "mold_look")
    reminders.done(looked.id)
    _undo_all(kit, reminders)

    while kit.history.redo_act() is not None and not troubles:
        kit.history.redo()
        if looks_between:
            reminders.sync()

    assert troubles == []
    with kit.store.read() as unit:
        (again,) = unit.reminders.where(
            batch_id=batch.id, kind=looked.kind, occurrence=looked.occurrence
        )
    assert again.state.value == "done"
    assert again.done_at == kit.clock.now()


def test_a_dropped_plan_whose_reminders_went_with_it_is_dropped_again(kit, troubles):
    batch = _already_in(kit)
    reminders = Reminders(kit.door)
    reminders.sync()
    kit.history.undo()  # planned again, with reminders that wait to be wanted
    reminders.sync()
    kit.batches.drop_plan(batch.id)
    _undo_all(kit, reminders)

    _redo_all(kit, troubles)

    assert troubles == []
    assert kit.batches.all() == ()


def test_a_snooze_is_taken_back_though_the_forecast_has_moved_since(kit, troubles):
    batch = _already_in(kit)
    opens_at = kit.clock.now() + timedelta(days=3)
    windows = [TastingWindow(opens_at=opens_at, opens_earliest=opens_at)]
    reminders = Reminders(kit.door, window_of=lambda _batch_id: windows[-1])
    reminders.sync()
    taste = next(i.reminder for i in reminders.listed() if i.reminder.kind.value == "taste")
    reminders.snooze(taste.id, kit.clock.now() + timedelta(days=5))
    later = opens_at + timedelta(days=1)
    windows.append(TastingWindow(opens_at=later, opens_earliest=later))
    reminders.sync()

    kit.history.undo()

    assert troubles == []
    with kit.store.read() as unit:
        assert unit.reminders.get(taste.id).state.value == "waiting"
    assert kit.batches.get(batch.id).stage is BatchStage.SOURING


def test_an_edit_that_changes_nothing_is_no_act_and_leaves_what_can_be_redone(kit):
    vessel = kit.vessel()
    kit.vessels.edit(vessel.id, note="chipped")
    kit.history.undo()
    undone = kit.history.redo_act()

    kit.vessels.edit(vessel.id, note=vessel.note)

    assert kit.history.redo_act() == undone
    assert kit.history.undo_act().kind == ActKind.ADD_VESSEL.value
