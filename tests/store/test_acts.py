"""The history keeps what was done, in order, and what takes it back; settings keep text."""

from __future__ import annotations

import pytest

from brewdesk.store.errors import NoSuchRow, RowRefused
from tests.helpers.dump import dump
from tests.store.drafts import NOW, PLACE, culture_draft, vessel_draft


def add_place(store, name, **links):
    with store.write() as unit:
        place = unit.places.add(PLACE)
        return unit.acts.add(
            kind="add_place",
            facts={"name": name, "temperature_c": place.temperature_c, "tags": ["a", None]},
            at=NOW,
            deltas=unit.deltas,
            **links,
        )


def test_an_act_comes_back_as_it_was_written(store):
    act = add_place(store, "Larder ½ “quoted”", batch_id=3, vessel_id=4, culture_id=5)

    with store.read() as unit:
        found = unit.acts.get(act.id)

    assert found == act
    assert (found.kind, found.at, found.state) == ("add_place", NOW, "done")
    assert (found.batch_id, found.vessel_id, found.culture_id) == (3, 4, 5)
    assert found.facts == {"name": "Larder ½ “quoted”", "temperature_c": 22.5, "tags": ["a", None]}


def test_an_act_takes_its_changes_back_after_a_restart(store, open_store):
    before = dump(store)
    act = add_place(store, "Larder")
    after = dump(store)
    store.close()

    reopened = open_store()
    with reopened.write() as unit:
        last = unit.acts.last_done()
        unit.apply(unit.acts.deltas(last.id), backwards=True)
        unit.acts.mark(last.id, "undone")
    undone = dump(reopened)
    with reopened.write() as unit:
        last = unit.acts.last_undone()
        unit.apply(unit.acts.deltas(last.id), backwards=False)
        unit.acts.mark(last.id, "done")

    assert last.id == act.id
    assert undone == before
    assert dump(reopened) == after


def test_undo_goes_from_the_newest_back_and_redo_from_the_oldest_on(store):
    first, second, third = (add_place(store, name) for name in "abc")
    with store.write() as unit:
        assert unit.acts.last_done() == third
        unit.acts.mark(third.id, "undone")
        assert unit.acts.last_done() == second
        unit.acts.mark(second.id, "undone")
        assert unit.acts.last_done() == first
        assert unit.acts.last_undone().id == second.id
        unit.acts.mark(second.id, "done")
        assert unit.acts.last_undone().id == third.id


def test_undone_acts_are_given_up_when_something_new_is_done(store):
    first, second = add_place(store, "a"), add_place(store, "b")
    with store.write() as unit:
        unit.acts.mark(second.id, "undone")
        unit.acts.drop_undone()

    with store.read() as unit:
        assert unit.acts.last_undone() is None
        assert unit.acts.last_done() == first
        assert unit.acts.get(second.id).state == "dropped"


def test_an_empty_history_has_no_last_act(store):
    with store.read() as unit:
        assert unit.acts.last_done() is None
        assert unit.acts.last_undone() is None
        assert unit.acts.recent(5) == ()


def test_a_batch_has_its_done_acts_newest_first(store):
    first = add_place(store, "a", batch_id=1)
    undone = add_place(store, "b", batch_id=1)
    other = add_place(store, "c", batch_id=2)
    last = add_place(store, "d", batch_id=1)
    with store.write() as unit:
        unit.acts.mark(undone.id, "undone")

    with store.read() as unit:
        assert unit.acts.for_batch(1) == (last, first)
        assert unit.acts.recent(2) == (last, other)


def test_the_acts_about_one_thing_are_found_by_what_they_changed(store):
    first, other = add_place(store, "a"), add_place(store, "b")
    with store.write() as unit:
        vessel = unit.vessels.add(vessel_draft(1))
        culture = unit.cultures.add(culture_draft(vessel_id=vessel.id))
        moved = unit.acts.add(kind="add", facts={}, at=NOW, culture_id=7, deltas=unit.deltas)
    with store.write() as unit:
        unit.cultures.change(culture.id, vessel_id=None)
        out = unit.acts.add(kind="take_out", facts={}, at=NOW, deltas=unit.deltas)
    with store.write() as unit:
        unit.cultures.change(culture.id, note="x")
        undone = unit.acts.add(kind="note", facts={}, at=NOW, deltas=unit.deltas)
        unit.acts.mark(undone.id, "undone")

    with store.read() as unit:
        assert unit.acts.about("place", 1) == (moved, first)
        assert unit.acts.about("place", 2) == (other,)
        assert unit.acts.about("vessel", vessel.id) == (out, moved)
        assert unit.acts.about("culture", culture.id) == (out, moved)
        assert unit.acts.about("culture", culture.id, limit=1) == (out,)
        assert unit.acts.about("culture", 7) == (moved,)
        assert unit.acts.about("batch", 1) == ()
        with pytest.raises(ValueError, match="reading"):
            unit.acts.about("reading", 1)


def test_what_a_change_holds_is_named_until_the_act_is_given_up(store):
    act = add_place(store, "Larder")
    words = PLACE.name
    with store.write() as unit:
        assert unit.acts.is_named(words)
        assert not unit.acts.is_named(f"{words}%")  # a sign of the query language is no sign here
        unit.acts.mark(act.id, "undone")
        assert unit.acts.is_named(words)
        unit.acts.drop_undone()
        assert not unit.acts.is_named(words)


def test_a_missing_act_is_said(store):
    for ask in (
        lambda unit: unit.acts.get(9),
        lambda unit: unit.acts.deltas(9),
        lambda unit: unit.acts.mark(9, "done"),
    ):
        with pytest.raises(NoSuchRow), store.write() as unit:
            ask(unit)


def test_an_unknown_state_is_refused(store):
    act = add_place(store, "a")

    with pytest.raises(ValueError, match="forgotten"), store.write() as unit:
        unit.acts.mark(act.id, "forgotten")


def test_facts_that_json_cannot_say_are_refused(store):
    with pytest.raises(TypeError), store.write() as unit:
        unit.acts.add(kind="add_place", facts={"at": NOW}, at=NOW)


def test_an_act_and_its_changes_are_written_together_or_not_at_all(store):
    before = dump(store)

    def change_and_fail_to_note_it():
        with store.write() as unit:
            unit.places.add(PLACE)
            unit.acts.add(kind="", facts={}, at=NOW, deltas=unit.deltas)

    with pytest.raises(RowRefused):
        change_and_fail_to_note_it()

    assert dump(store) == before
    with store.read() as unit:
        assert unit.acts.last_done() is None


def test_settings_are_kept_replaced_and_listed(store, open_store):
    with store.read() as unit:
        before = unit.settings.all()
    with store.write() as unit:
        unit.settings.put("theme", "light")
        unit.settings.put("zone", "Europe/Lisbon")
    with store.write() as unit:
        unit.settings.put("theme", "dark")
        assert unit.deltas == []
    store.close()

    reopened = open_store()
    with reopened.read() as unit:
        assert unit.settings.get("theme") == "dark"
        assert unit.settings.get("sound") is None
        assert unit.settings.all() == before | {"theme": "dark", "zone": "Europe/Lisbon"}
    reopened.close()
