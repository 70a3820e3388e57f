"""A batch sours by the real course of the places where it stood."""

from __future__ import annotations

from datetime import timedelta
from itertools import pairwise

import pytest

from brewdesk.services.jarcourse import JarCourse, conditions_of, temperatures_of
from brewdesk.services.jarcourse import usual_temperature_c as usual_of
from brewdesk.services.packedsamples import pack_pairs
from brewdesk.services.placecourse import SampleMeans
from brewdesk.services.placelog import PlaceLog
from brewdesk.services.surroundings import Stay, stays_of, surroundings_of
from brewdesk.store.records import PlaceDraft, ReadingDraft, VesselMoveDraft
from culturecore.stages import Method, Quantity
from tests.helpers.pantry_desk import open_desk, souring_batch

DAY = timedelta(days=1)


@pytest.fixture
def log(kit):
    return PlaceLog(kit.door)


@pytest.fixture
def cellar(kit):
    kit.vessels.ensure_place()  # the pantry, in which vessels stand
    return kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))


def _hourly(first, hours, celsius):
    first_s = int(first.timestamp())
    return pack_pairs((first_s + 3600 * n, celsius) for n in range(hours))


def _course(kit, batch):
    with kit.store.read() as unit:
        batch = unit.batches.get(batch.id)
        return JarCourse(
            batch,
            unit.vessels.get(batch.vessel_id),
            unit.readings.where(batch_id=batch.id, order_by=("at", "id")),
            surroundings=surroundings_of(unit, SampleMeans(), batch),
        )


def _stays(kit, batch):
    with kit.store.read() as unit:
        return stays_of(unit, unit.batches.get(batch.id))


def _warm(kit, batch, celsius):
    reading = ReadingDraft(
        batch_id=batch.id,
        at=kit.clock.now(),
        quantity=Quantity.TEMPERATURE_C,
        method=Method.THERMOMETER,
        value=celsius,
        entered=str(celsius),
    )
    return kit.readings.record([reading])[0]


def test_without_a_log_the_usual_temperature_of_the_plan_holds(kit):
    course = _course(kit, kit.souring())
    assert temperatures_of(course) == ()
    assert usual_of(course) == course.batch.place_temperature_c


def test_the_places_log_is_the_batchs_course_in_steps_of_six_hours(kit, log):
    batch = kit.souring()
    place = kit.vessels.places()[0]
    log.add_log(place.id, "a.csv", _hourly(batch.started_at - DAY, 24 * 4, 16.0))
    course = _course(kit, batch)
    days = [day for day, _ in temperatures_of(course)]
    assert {degrees for _, degrees in temperatures_of(course)} == {16.0}
    assert days[0] >= 0.0  # what was before it began says nothing of it
    steps = [later - day for day, later in pairwise(days)]
    assert steps == pytest.approx([0.25] * len(steps))
    assert usual_of(course) == 16.0
    assert conditions_of(course).temperature_c == 16.0


def test_what_was_measured_in_the_jar_comes_before_the_place(kit, log):
    batch = kit.souring()
    place = kit.vessels.places()[0]
    kit.clock.advance(days=2)
    _warm(kit, batch, 25.0)
    log.add_log(place.id, "a.csv", _hourly(batch.started_at, 24 * 4, 16.0))
    known = temperatures_of(_course(kit, batch))
    assert (2.0, 25.0) in [(pytest.approx(day, abs=1e-6), degrees) for day, degrees in known]
    near = [degrees for day, degrees in known if abs(day - 2.0) < 0.5]
    assert near == [25.0]
    assert {degrees for day, degrees in known if abs(day - 2.0) > 0.5} == {16.0}
    assert known == tuple(sorted(known))


def test_a_batch_poured_over_into_a_jar_elsewhere_takes_that_places_course(kit, log, cellar):
    batch = kit.souring()
    pantry = kit.vessels.places()[0]
    other = kit.vessel("Cellar jar", place_id=cellar.id)
    kit.clock.advance(days=3)
    moved_at = kit.clock.now()

    def move(unit):
        unit.vessel_moves.add(
            VesselMoveDraft(
                batch_id=batch.id,
                from_vessel_id=batch.vessel_id,
                to_vessel_id=other.id,
                at=moved_at,
            )
        )
        unit.batches.change(batch.id, vessel_id=other.id)

    kit.door.quiet(move)
    first, last = _stays(kit, batch)
    assert first == Stay(pantry.id, batch.started_at, moved_at)
    assert (last.place_id, last.from_at) == (cellar.id, moved_at)
    assert usual_of(_course(kit, batch)) == 14.0  # the cellar's usual, for want of better
    log.add_log(pantry.id, "pantry.csv", _hourly(batch.started_at, 24 * 8, 22.0))
    log.add_log(cellar.id, "cellar.csv", _hourly(batch.started_at, 24 * 8, 12.0))
    known = temperatures_of(_course(kit, batch))
    assert {degrees for day, degrees in known if day < 2.9} == {22.0}
    assert {degrees for day, degrees in known if day > 3.1} == {12.0}
    assert usual_of(_course(kit, batch)) == 12.0


def test_a_jar_carried_to_another_place_takes_its_batch_along(kit, log, cellar):
    batch = kit.souring()
    kit.clock.advance(days=2)
    kit.vessels.edit(batch.vessel_id, place_id=cellar.id)
    carried_at = kit.clock.now()
    kit.clock.advance(days=2)
    kit.vessels.edit(batch.vessel_id, note="a chip in the rim")
    first, last = _stays(kit, batch)
    assert (first.to_at, last.from_at) == (carried_at, carried_at)
    assert last.place_id == cellar.id
    kit.history.undo()
    kit.history.undo()
    assert len(_stays(kit, batch)) == 1


def test_a_batch_that_has_ended_keeps_the_course_it_had(kit, log):
    batch = kit.souring()
    kit.clock.advance(days=3)
    kit.batches.draw_off(batch.id)
    place = kit.vessels.places()[0]
    log.add_log(place.id, "a.csv", _hourly(batch.started_at, 24 * 9, 16.0))
    assert max(day for day, _ in temperatures_of(_course(kit, batch))) <= 3.0


def test_the_forecast_is_worked_out_anew_when_the_log_changes(tmp_path, qapp):
    desk = open_desk(tmp_path, with_forecasts=True)
    batch = souring_batch(desk)
    desk.clock.advance(days=3)
    desk.forecasts.request(batch.id)
    at_22 = desk.forecasts.now(batch.id).forecast
    place = desk.vessels.places()[0]
    desk.place_log.add_log(place.id, "a.csv", _hourly(batch.started_at, 72, 15.0))
    at_15 = desk.forecasts.now(batch.id).forecast
    # Souring slows with the cold, so the course lies higher.
    on_day_3 = at_22.days.index(3.0)
    assert at_15.ph[0.5][on_day_3] > at_22.ph[0.5][on_day_3] + 0.02
    desk.history.undo()
    assert desk.forecasts.now(batch.id).forecast == at_22
    desk.store.close()


@pytest.mark.parametrize(
    ("celsius", "codes"), [(15.0, ["place_now_cold"]), (22.0, []), (34.0, ["place_now_warm"])]
)
def test_the_shelf_warns_when_the_place_is_not_what_cultures_like(kit, log, celsius, codes):
    batch = kit.souring()
    place = kit.vessels.places()[0]
    log.read_place(place.id, celsius)
    (jar,) = kit.shelf.jars()
    assert [alert.code for alert in jar.alerts] == codes
    kit.clock.advance(days=4)  # by then it says nothing of today
    (jar,) = kit.shelf.jars()
    assert not any(alert.code.startswith("place_") for alert in jar.alerts)
    kit.batches.draw_off(batch.id)
    log.read_place(place.id, celsius)
    assert kit.shelf.jars()[0].alerts == ()


def test_the_newest_of_typed_and_logged_decides_the_warning(kit, log):
    kit.souring()
    place = kit.vessels.places()[0]
    kit.clock.advance(hours=5)
    log.read_place(place.id, 22.0, kit.clock.now() - timedelta(hours=2))
    log.add_log(place.id, "a.csv", pack_pairs([(int(kit.clock.now().timestamp()), 12.0)]))
    (jar,) = kit.shelf.jars()
    assert [alert.code for alert in jar.alerts] == ["place_now_cold"]
    log.read_place(place.id, 21.0)
    assert kit.shelf.jars()[0].alerts == ()
