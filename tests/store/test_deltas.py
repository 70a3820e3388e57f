"""Changes can be taken back and done again, exactly, or not at all."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from brewdesk.store.deltas import deltas_from_json, deltas_to_json
from brewdesk.store.errors import RowRefused, StaleRow
from brewdesk.store.records import CultureParentDraft, PlaceDraft, RowDelta
from brewdesk.store.store import Store
from culturecore.stages import BatchStage, StepState
from tests.helpers.dump import dump
from tests.store.drafts import (
    NOW,
    PLACE,
    batch_draft,
    culture_draft,
    reading_draft,
    reminder_draft,
    step_draft,
    vessel_draft,
)


def a_day_at_the_shelf(unit, shelf):
    """Touch every table, with rows that depend on one another."""
    place = unit.places.add(PlaceDraft(name="Invented cellar", temperature_c=17.0))
    vessel = unit.vessels.add(vessel_draft(place.id, name="Invented crock"))
    culture = unit.cultures.add(culture_draft(vessel_id=vessel.id))
    unit.culture_parents.add(CultureParentDraft(culture_id=culture.id, parent_id=shelf.culture.id))
    batch = unit.batches.add(batch_draft(vessel.id, culture.id))
    unit.batches.change(batch.id, stage=BatchStage.SOURING, started_at=NOW)
    step = unit.steps.add(step_draft(batch.id))
    unit.steps.change(step.id, state=StepState.DONE, finished_at=NOW)
    reading = unit.readings.add(reading_draft(batch.id))
    unit.readings.remove(reading.id)
    unit.readings.add(reading_draft(batch.id, value=3.2))
    unit.reminders.add(reminder_draft(batch.id))
    unit.reminders.add(reminder_draft(shelf.batch.id))
    unit.batches.remove(shelf.batch.id)  # takes its reminder along


def test_a_day_is_taken_back_and_done_again(store, shelf):
    before = dump(store)
    with store.write() as unit:
        a_day_at_the_shelf(unit, shelf)
    after = dump(store)

    with store.write() as again:
        again.apply(unit.deltas, backwards=True)
    taken_back = dump(store)
    with store.write() as again:
        again.apply(unit.deltas, backwards=False)

    assert before != after
    assert taken_back == before
    assert dump(store) == after


def test_the_text_form_of_a_day_does_the_same_in_another_run(store, shelf, open_store):
    before = dump(store)
    with store.write() as unit:
        a_day_at_the_shelf(unit, shelf)
    text = deltas_to_json(unit.deltas)
    store.close()

    reopened = open_store()
    with reopened.write() as unit:
        unit.apply(deltas_from_json(text), backwards=True)

    assert dump(reopened) == before


PLACES = st.sampled_from(range(4))
TEMPERATURES = st.floats(-20, 60, allow_nan=False)
STEPS = st.lists(
    st.one_of(
        st.tuples(st.just("add"), PLACES, TEMPERATURES),
        st.tuples(st.just("change"), PLACES, TEMPERATURES),
        st.tuples(st.just("remove"), PLACES, st.none()),
    ),
    max_size=12,
)


@settings(max_examples=30)
@given(groups=st.lists(STEPS, min_size=1, max_size=4))
def test_any_row_of_acts_is_taken_back_one_by_one(groups, tmp_path_factory):
    store = Store.open(tmp_path_factory.mktemp("any") / "pantry.sqlite", now=NOW)
    dumps, acts = [dump(store)], []
    for group in groups:
        with store.write() as unit:
            for what, which, temperature_c in group:
                places = unit.places.where()
                if what == "add":
                    unit.places.add(replace(PLACE, temperature_c=temperature_c))
                elif which < len(places) and what == "change":
                    unit.places.change(places[which].id, temperature_c=temperature_c)
                elif which < len(places):
                    unit.places.remove(places[which].id)
        acts.append(tuple(unit.deltas))
        dumps.append(dump(store))

    for number in reversed(range(len(acts))):
        with store.write() as unit:
            unit.apply(acts[number], backwards=True)
        assert dump(store) == dumps[number]
    for number, deltas in enumerate(acts):
        with store.write() as unit:
            unit.apply(deltas, backwards=False)
        assert dump(store) == dumps[number + 1]
    store.close()


def test_a_change_that_changes_nothing_leaves_no_delta(store, shelf):
    with store.write() as unit:
        unit.places.change(shelf.place.id, name=shelf.place.name)
        unit.places.change(shelf.place.id)

    assert unit.deltas == []


def test_deltas_hold_plain_values_of_every_column(store, shelf):
    with store.write() as unit:
        unit.vessels.change(shelf.vessel.id, retired_at=NOW)

    (delta,) = unit.deltas
    assert delta.before == {
        "id": shelf.vessel.id,
        "name": "Invented tall jar",
        "shape": "cylinder",
        "material": "glass",
        "brim_volume_l": 4.2,
        "working_volume_l": 3.8,
        "inner_diameter_cm": 15.0,
        "place_id": shelf.place.id,
        "shelf_order": 0,
        "note": "",
        "retired_at": None,
    }
    assert delta.after == {**delta.before, "retired_at": "2026-11-25T09:12:58.123456Z"}


def test_a_row_changed_since_is_not_taken_back_nor_is_the_rest(store, shelf):
    with store.write() as act:
        act.places.change(shelf.place.id, temperature_c=18.0)
        act.vessels.change(shelf.vessel.id, note="Invented note")
    with store.write() as unit:
        unit.places.change(shelf.place.id, name="Renamed since")
    before = dump(store)

    with pytest.raises(StaleRow) as caught, store.write() as unit:
        unit.apply(act.deltas, backwards=True)

    assert (caught.value.table, caught.value.row_id) == ("place", shelf.place.id)
    assert dump(store) == before


def test_a_row_removed_since_is_not_taken_back(store):
    with store.write() as act:
        place = act.places.add(PLACE)
    with store.write() as unit:
        unit.places.remove(place.id)

    with pytest.raises(StaleRow), store.write() as unit:
        unit.apply(act.deltas, backwards=True)


def test_what_is_done_is_not_done_twice(store):
    with store.write() as act:
        act.places.add(PLACE)

    with pytest.raises(StaleRow), store.write() as unit:
        unit.apply(act.deltas, backwards=False)


def test_a_delta_of_another_schema_is_refused(store, shelf):
    known = {"id": shelf.place.id, "name": shelf.place.name, "temperature_c": 22.5}
    older = {"id": shelf.place.id, "name": shelf.place.name}
    deltas = [
        RowDelta(table="place", row_id=shelf.place.id, before=older, after=known),
        RowDelta(table="act", row_id=1, before=None, after=None),
    ]

    for delta in deltas:
        with pytest.raises(StaleRow), store.write() as unit:
            unit.apply([delta], backwards=True)


def test_taking_back_stops_at_rows_that_came_to_depend_on_it(store):
    with store.write() as act:
        place = act.places.add(PLACE)
    with store.write() as unit:
        unit.vessels.add(vessel_draft(place.id))

    with pytest.raises(RowRefused), store.write() as unit:
        unit.apply(act.deltas, backwards=True)


def test_reminders_made_since_go_with_the_batch_they_belong_to(store, shelf):
    with store.write() as unit:
        unit.batches.remove(shelf.batch.id)
    with store.write() as act:
        batch = act.batches.add(batch_draft(shelf.vessel.id))
    with store.write() as unit:
        unit.reminders.add(reminder_draft(batch.id))

    with store.write() as unit:
        unit.apply(act.deltas, backwards=True)

    with store.read() as unit:
        assert unit.reminders.where() == ()


@pytest.mark.parametrize("number", [0.1, 1e-300, 1.7976931348623157e308, -0.0, 3.0])
def test_numbers_survive_the_text_form_bit_by_bit(number):
    delta = RowDelta(table="place", row_id=1, before=None, after={"temperature_c": number})

    (back,) = deltas_from_json(deltas_to_json([delta]))

    assert back.after["temperature_c"].hex() == number.hex()


def test_what_is_no_number_has_no_text_form():
    delta = RowDelta(table="place", row_id=1, before=None, after={"temperature_c": math.nan})

    with pytest.raises(ValueError, match="not JSON compliant"):
        deltas_to_json([delta])
