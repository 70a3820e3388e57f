"""What goes in comes out, and what breaks a rule does not go in."""

from __future__ import annotations

import math
from dataclasses import asdict, fields, replace
from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from brewdesk.store import schema
from brewdesk.store.errors import NoSuchRow, RowRefused
from brewdesk.store.records import (
    Batch,
    BottleCheckDraft,
    BottlingDraft,
    CareDraft,
    Culture,
    CultureParent,
    CultureParentDraft,
    PhotoDraft,
    Place,
    PlaceDraft,
    Reading,
    Reminder,
    Step,
    TemperatureLogDraft,
    TransferDraft,
    Vessel,
)
from culturecore.stages import (
    BatchStage,
    BottlingState,
    CareKind,
    CheckKind,
    Quantity,
    ReminderKind,
    StepState,
    TeaKind,
    TransferKind,
)
from tests.store import drafts
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

# One store serves all examples of a test: each example brings a row of its own.
ONE_STORE = settings(max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])


def without_id(record):
    return {name: value for name, value in asdict(record).items() if name != "id"}


@pytest.mark.parametrize(
    ("table", "record"),
    [
        (schema.place, Place),
        (schema.vessel, Vessel),
        (schema.culture, Culture),
        (schema.culture_parent, CultureParent),
        (schema.batch, Batch),
        (schema.step, Step),
        (schema.reading, Reading),
        (schema.reminder, Reminder),
    ],
)
def test_each_field_has_its_column_and_may_be_none_alike(table, record):
    optional = {field.name for field in fields(record) if field.type.endswith("| None")}

    assert set(table.columns.keys()) == {field.name for field in fields(record)}
    assert {column.name for column in table.columns if column.nullable} == optional


class Rounds:
    """Stores a draft, reads it back in another unit, and compares."""

    def __init__(self, store, rows_name):
        self.store = store
        self.rows_name = rows_name

    def check(self, draft):
        with self.store.write() as unit:
            added = getattr(unit, self.rows_name).add(draft)
        with self.store.read() as unit:
            found = getattr(unit, self.rows_name).get(added.id)
        assert found == added
        assert without_id(found) == asdict(draft)


@ONE_STORE
@given(draft=drafts.PLACES)
def test_any_place_comes_back(store, draft):
    Rounds(store, "places").check(draft)


@ONE_STORE
@given(data=st.data())
def test_any_vessel_comes_back(store, shelf, data):
    Rounds(store, "vessels").check(data.draw(drafts.vessels(shelf.place.id)))


@ONE_STORE
@given(draft=drafts.CULTURES)
def test_any_culture_comes_back(store, draft):
    Rounds(store, "cultures").check(draft)


@ONE_STORE
@given(data=st.data())
def test_any_batch_comes_back(store, shelf, data):
    Rounds(store, "batches").check(data.draw(drafts.batches(shelf.vessel.id, shelf.culture.id)))


@ONE_STORE
@given(data=st.data())
def test_any_step_comes_back(store, shelf, data):
    Rounds(store, "steps").check(data.draw(drafts.steps(shelf.batch.id)))


@ONE_STORE
@given(data=st.data())
def test_any_reading_comes_back(store, shelf, data):
    Rounds(store, "readings").check(data.draw(drafts.readings(shelf.batch.id)))


@ONE_STORE
@given(data=st.data())
def test_any_reminder_comes_back(store, shelf, data):
    draft = data.draw(drafts.reminders(shelf.batch.id))
    with store.write() as unit:  # an earlier example may have had the same occurrence
        for reminder in unit.reminders.where(occurrence=draft.occurrence):
            unit.reminders.remove(reminder.id)

    Rounds(store, "reminders").check(draft)


def test_a_parent_link_comes_back(store, shelf):
    with store.write() as unit:
        daughter = unit.cultures.add(culture_draft(name="Invented daughter"))
    draft = CultureParentDraft(culture_id=daughter.id, parent_id=shelf.culture.id)

    Rounds(store, "culture_parents").check(draft)


def test_a_time_of_another_zone_comes_back_as_the_same_instant_in_utc(store):
    born = datetime(2026, 7, 1, 8, 0, tzinfo=timezone(timedelta(hours=2)))

    with store.write() as unit:
        culture = unit.cultures.add(culture_draft(born_at=born))

    assert culture.born_at == born
    assert culture.born_at.tzinfo is UTC


def test_a_time_without_zone_is_refused(store):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.cultures.add(culture_draft(born_at=datetime(2026, 7, 1, 8, 0)))


@pytest.mark.parametrize("temperature_c", [math.nan, math.inf, -math.inf, 9e99, -20.001, "22"])
def test_a_number_that_no_place_can_have_is_refused(store, temperature_c):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.places.add(PlaceDraft(name="Invented larder", temperature_c=temperature_c))

    with store.read() as unit:
        assert unit.places.where() == ()


@pytest.mark.parametrize("name", ["", "a\x00b", "\ud800", "x" * 201])
def test_a_name_that_cannot_be_kept_is_refused(store, name):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.places.add(PlaceDraft(name=name, temperature_c=20.0))


@pytest.mark.parametrize(
    "changed",
    [
        {"brim_volume_l": 0.0},
        {"working_volume_l": 4.3},  # more than the brim holds
        {"inner_diameter_cm": -1.0},
        {"shape": "cylinder"},  # text is no member
        {"place_id": 999},
        {"shelf_order": 2**70},
    ],
)
def test_a_vessel_that_cannot_be_is_refused(store, shelf, changed):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.vessels.add(replace(vessel_draft(shelf.place.id), **changed))


@pytest.mark.parametrize(
    "changed",
    [
        {"stage": BatchStage.SOURING},  # without the time it began
        {"stage": BatchStage.CLOSED},  # without the time it ended
        {"ended_at": NOW},  # live, yet ended
        {"start_ph_low": 4.4},  # above the upper bound
        {"sugar_g": math.inf},
        {"culture_id": 999},
    ],
)
def test_a_batch_that_cannot_be_is_refused(store, shelf, changed):
    with store.write() as unit:
        unit.batches.remove(shelf.batch.id)

    with pytest.raises(RowRefused), store.write() as unit:
        unit.batches.add(batch_draft(shelf.vessel.id, **changed))


@pytest.mark.parametrize(
    "changed",
    [
        {"value": 14.5},
        {"value": None},
        {"quantity": Quantity.TASTE, "value": None, "text": "nice"},
        {"quantity": Quantity.LOOK, "value": None, "text": "hairy"},
        {"sd": -0.1},
        {"text": "x" * 20_001},
    ],
)
def test_a_reading_that_cannot_be_is_refused(store, shelf, changed):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.readings.add(reading_draft(shelf.batch.id, **changed))


def test_a_second_live_batch_in_one_vessel_is_refused(store, shelf):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.batches.add(batch_draft(shelf.vessel.id))


@pytest.mark.parametrize("stage", [BatchStage.BREWING, BatchStage.SOURING])
def test_each_live_stage_occupies_the_vessel(store, shelf, stage):
    with store.write() as unit:
        unit.batches.change(shelf.batch.id, stage=stage, started_at=NOW)

    with pytest.raises(RowRefused), store.write() as unit:
        unit.batches.add(batch_draft(shelf.vessel.id))


def test_an_ended_batch_leaves_its_vessel_free(store, shelf):
    with store.write() as unit:
        unit.batches.change(
            shelf.batch.id, stage=BatchStage.DRAWN_OFF, started_at=NOW, ended_at=NOW
        )

    with store.write() as unit:
        second = unit.batches.add(batch_draft(shelf.vessel.id))

    assert second.vessel_id == shelf.vessel.id


@pytest.mark.parametrize("with_batch", [True, False])
def test_the_same_occurrence_of_a_reminder_is_refused(store, shelf, with_batch):
    batch_id = shelf.batch.id if with_batch else None
    with store.write() as unit:
        unit.reminders.add(reminder_draft(batch_id))
        unit.reminders.add(reminder_draft(batch_id, kind=ReminderKind.OWN))
        unit.reminders.add(reminder_draft(batch_id, occurrence="second"))

    with pytest.raises(RowRefused), store.write() as unit:
        unit.reminders.add(reminder_draft(batch_id))


def test_a_culture_is_not_its_own_parent_and_no_parent_twice(store, shelf):
    own = shelf.culture.id
    with pytest.raises(RowRefused), store.write() as unit:
        unit.culture_parents.add(CultureParentDraft(culture_id=own, parent_id=own))

    with store.write() as unit:
        daughter = unit.cultures.add(culture_draft())
        link = CultureParentDraft(culture_id=daughter.id, parent_id=own)
        unit.culture_parents.add(link)
    with pytest.raises(RowRefused), store.write() as unit:
        unit.culture_parents.add(link)


def test_a_row_that_others_point_at_stays(store, shelf):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.vessels.remove(shelf.vessel.id)

    with store.read() as unit:
        assert unit.vessels.get(shelf.vessel.id) == shelf.vessel


def test_a_batch_takes_its_reminders_with_it_but_not_its_readings(store, shelf):
    with store.write() as unit:
        unit.reminders.add(reminder_draft(shelf.batch.id))
        unit.reminders.add(reminder_draft(None))
        reading = unit.readings.add(reading_draft(shelf.batch.id))

    with pytest.raises(RowRefused), store.write() as unit:
        unit.batches.remove(shelf.batch.id)
    with store.write() as unit:
        unit.readings.remove(reading.id)
        unit.batches.remove(shelf.batch.id)

    with store.read() as unit:
        assert [reminder.batch_id for reminder in unit.reminders.where()] == [None]


def test_a_missing_row_is_said_by_name(store):
    with store.read() as unit, pytest.raises(NoSuchRow) as caught:
        unit.places.get(7)

    assert (caught.value.code, caught.value.table, caught.value.row_id) == (
        "no_such_row",
        "place",
        7,
    )


def test_a_missing_row_is_neither_changed_nor_removed(store):
    with store.write() as unit:
        with pytest.raises(NoSuchRow):
            unit.places.change(7, name="Invented")
        with pytest.raises(NoSuchRow):
            unit.places.remove(7)


def test_a_change_sets_its_fields_and_leaves_the_others(store, shelf):
    with store.write() as unit:
        changed = unit.batches.change(shelf.batch.id, tea_kind=TeaKind.GREEN, starter_ph=None)

    assert asdict(changed) == {
        **asdict(shelf.batch),
        "tea_kind": TeaKind.GREEN,
        "starter_ph": None,
    }


@pytest.mark.parametrize("field", ["id", "colour"])
def test_the_id_and_unknown_fields_are_not_changed(store, shelf, field):
    with pytest.raises(TypeError), store.write() as unit:
        unit.places.change(shelf.place.id, **{field: 5})


def test_rows_are_found_by_value_by_none_and_by_any_of_several(store, shelf):
    with store.write() as unit:
        for position, state in enumerate([StepState.DONE, StepState.RUNNING, StepState.WAITING]):
            unit.steps.add(
                step_draft(
                    shelf.batch.id,
                    position=position,
                    state=state,
                    planned_s=None if position else 60,
                )
            )

    with store.read() as unit:
        waiting = unit.steps.where(state=StepState.WAITING)
        untimed = unit.steps.where(planned_s=None)
        begun = unit.steps.where(state=(StepState.DONE, StepState.RUNNING))
        none = unit.steps.where(state=())

    assert [step.position for step in waiting] == [2]
    assert [step.position for step in untimed] == [1, 2]
    assert [step.position for step in begun] == [0, 1]
    assert none == ()


def test_rows_come_in_the_order_asked_for_and_no_more_than_wanted(store):
    with store.write() as unit:
        for name, temperature_c in [("b", 20.0), ("a", 21.0), ("c", 20.0)]:
            unit.places.add(PlaceDraft(name=name, temperature_c=temperature_c))

    with store.read() as unit:
        by_id = unit.places.where()
        by_two = unit.places.where(order_by=("temperature_c", "-name"))
        last = unit.places.where(order_by="-id", limit=1)

    assert [place.name for place in by_id] == ["b", "a", "c"]
    assert [place.name for place in by_two] == ["c", "b", "a"]
    assert [place.name for place in last] == ["c"]


def test_an_unknown_field_is_not_searched(store):
    with store.read() as unit, pytest.raises(TypeError):
        unit.places.where(colour="red")


def test_readings_come_in_time_order_whatever_zone_they_were_typed_in(store, shelf):
    times = [
        datetime(2026, 3, 1, 12, 0, tzinfo=timezone(timedelta(hours=9))),
        datetime(2026, 3, 1, 4, 0, tzinfo=UTC),
        datetime(2026, 3, 1, 4, 0, 0, 1, tzinfo=UTC),
        datetime(2026, 3, 1, 0, 0, tzinfo=timezone(timedelta(hours=-5))),
    ]
    with store.write() as unit:
        for at in reversed(times):
            unit.readings.add(reading_draft(shelf.batch.id, at=at))

    with store.read() as unit:
        found = [reading.at for reading in unit.readings.where(order_by="at")]

    assert found == times


def test_an_id_is_never_used_again(store):
    with store.write() as unit:
        first = unit.places.add(PLACE)
    with store.write() as unit:
        unit.places.remove(first.id)
    with store.write() as unit:
        second = unit.places.add(PLACE)

    assert second.id > first.id


def transfer_draft(**changed):
    draft = TransferDraft(at=NOW, kind=TransferKind.DRINK, volume_l=0.5)
    return replace(draft, **changed)


def test_liquid_goes_from_somewhere_to_somewhere(store, shelf):
    with store.write() as unit:
        kept = unit.transfers.add(
            transfer_draft(from_batch_id=shelf.batch.id, sugar_g=1.5, tea_kind=TeaKind.GREEN)
        )

    with store.read() as unit:
        assert unit.transfers.where(from_batch_id=shelf.batch.id) == (kept,)


@pytest.mark.parametrize(
    "changed",
    [
        {"from_batch_id": None},
        {"volume_l": 0.0},
        {"volume_l": -1.0},
        {"volume_l": 10_001.0},
        {"to_batch_id": 1},
        {"ph": 14.5},
        {"sugar_g": -1.0},
    ],
)
def test_a_transfer_that_cannot_be_is_refused(store, shelf, changed):
    assert shelf.batch.id == 1
    with pytest.raises(RowRefused), store.write() as unit:
        unit.transfers.add(transfer_draft(**({"from_batch_id": 1} | changed)))


@pytest.mark.parametrize(
    "changed",
    [
        {"kind": CareKind.LOOKED, "look": None},
        {"kind": CareKind.PH, "ph": None},
        {"kind": CareKind.FED, "volume_l": -0.1},
    ],
)
def test_care_that_says_nothing_is_refused(store, shelf, changed):
    with store.write() as unit:
        culture = unit.cultures.add(culture_draft())
    with pytest.raises(RowRefused), store.write() as unit:
        unit.care.add(CareDraft(culture_id=culture.id, at=NOW, **changed))


def test_a_photo_of_nothing_is_refused(store):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.photos.add(
            PhotoDraft(
                content_hash="ab" * 32,
                media_type="image/png",
                width_px=4,
                height_px=3,
                size_bytes=9,
                taken_at=NOW,
            )
        )


def test_a_culture_takes_its_reminders_along_and_brings_them_back(store):
    with store.write() as unit:
        culture = unit.cultures.add(culture_draft())
        kept = unit.reminders.add(
            reminder_draft(None, culture_id=culture.id, kind=ReminderKind.FEED)
        )
    with store.write() as unit:
        unit.cultures.remove(culture.id)
        deltas = tuple(unit.deltas)
        assert unit.reminders.where() == ()
    with store.write() as unit:
        unit.apply(deltas, backwards=True)
        assert unit.reminders.where() == (kept,)


def test_one_culture_is_not_reminded_twice_of_the_same(store):
    with store.write() as unit:
        one, other = unit.cultures.add(culture_draft()), unit.cultures.add(culture_draft())
        for culture in (one, other):
            unit.reminders.add(reminder_draft(None, culture_id=culture.id))

    with pytest.raises(RowRefused), store.write() as unit:
        unit.reminders.add(reminder_draft(None, culture_id=one.id))


def test_a_reminder_is_about_one_thing(store, shelf):
    with store.write() as unit:
        culture = unit.cultures.add(culture_draft())
    with pytest.raises(RowRefused), store.write() as unit:
        unit.reminders.add(reminder_draft(shelf.batch.id, culture_id=culture.id))


def bottling_draft(batch_id, **changed):
    draft = BottlingDraft(
        name="Bottles",
        batch_id=batch_id,
        filled_at=NOW,
        drink_volume_l=2.0,
        residual_sugar_low_g_per_l=20.0,
        residual_sugar_high_g_per_l=40.0,
        target_volumes=2.2,
        priming_sugar_g=5.0,
        place_temperature_c=22.0,
        open_jar_c=23.0,
        warmest_c=30.0,
    )
    return replace(draft, **changed)


@pytest.mark.parametrize(
    "changed",
    [
        {"state": BottlingState.CHILLED},
        {"state": BottlingState.FINISHED},
        {"ended_at": NOW},
        {"residual_sugar_low_g_per_l": 41.0},
        {"drink_volume_l": 0.0},
        {"priming_sugar_g": -1.0},
    ],
)
def test_a_bottling_that_cannot_be_is_refused(store, shelf, changed):
    with pytest.raises(RowRefused), store.write() as unit:
        unit.bottlings.add(bottling_draft(shelf.batch.id, **changed))


@pytest.mark.parametrize("kind", [CheckKind.FEEL, CheckKind.GAUGE, CheckKind.OPENED])
def test_a_look_at_bottles_that_says_nothing_is_refused(store, shelf, kind):
    with store.write() as unit:
        bottles = unit.bottlings.add(bottling_draft(shelf.batch.id))
    with pytest.raises(RowRefused), store.write() as unit:
        unit.bottle_checks.add(BottleCheckDraft(bottling_id=bottles.id, at=NOW, kind=kind))


def test_bottles_take_their_reminders_along(store, shelf):
    with store.write() as unit:
        bottles = unit.bottlings.add(bottling_draft(shelf.batch.id))
        unit.reminders.add(reminder_draft(None, bottling_id=bottles.id, kind=ReminderKind.CHILL))
    with pytest.raises(RowRefused), store.write() as unit:
        unit.reminders.add(reminder_draft(None, bottling_id=bottles.id, kind=ReminderKind.CHILL))
    with store.write() as unit:
        unit.bottlings.remove(bottles.id)
        assert unit.reminders.where() == ()


def test_packed_samples_come_back_in_order(store):
    with store.write() as unit:
        unit.temperature_samples.keep("ab" * 32, [b"one", b"two", b""])
        unit.temperature_samples.keep("cd" * 32, [b"other"])
        unit.temperature_samples.keep("ab" * 32, [b"one", b"two"])

    with store.read() as unit:
        assert unit.temperature_samples.chunks("ab" * 32) == (b"one", b"two")
        assert unit.temperature_samples.chunks("ef" * 32) == ()


def test_samples_that_nothing_names_are_swept_out(store, shelf):
    with store.write() as unit:
        for content in ("ab" * 32, "cd" * 32, "ef" * 32):
            unit.temperature_samples.keep(content, [b"x"])
        place = unit.places.where()[0]
        unit.temperature_logs.add(
            TemperatureLogDraft(
                place_id=place.id,
                name="invented.csv",
                content_hash="ab" * 32,
                sample_count=1,
                first_at=NOW,
                last_at=NOW,
            )
        )
        unit.temperature_samples.sweep(["cd" * 32])

    with store.read() as unit:
        left = [c for c in ("ab", "cd", "ef") if unit.temperature_samples.chunks(c * 32)]
    assert left == ["ab", "cd"]


def test_counting_gives_as_many_as_there_are_records(store):
    with store.write() as unit:
        for name in ("Cupboard", "Shelf", "Cellar"):
            unit.places.add(PlaceDraft(name=name, temperature_c=20.0))
    with store.read() as unit:
        assert unit.places.count() == len(unit.places.where()) == 3
        assert unit.places.count(name=("Shelf", "Cellar", "Loft")) == 2
        assert unit.places.count(name="Loft") == 0
