"""The forecast follows the liquid: what was poured in, what stands there, and where."""

from __future__ import annotations

import pytest

from brewdesk.services.coursereader import CourseReader, read_course, read_courses
from brewdesk.services.jarcourse import conditions_of, standing_volume_l
from brewdesk.services.placecourse import SampleMeans
from brewdesk.services.whatif import as_it_is
from brewdesk.store.records import PlaceDraft
from culturecore import vessels
from culturecore.forecast import forecast
from culturecore.stages import TeaKind
from tests.services.history_liquids import souring_and_empty, two_souring
from tests.services.test_liquids import read_ph


def course(kit, batch_id):
    with kit.store.read() as unit:
        return read_course(unit, unit.batches.get(batch_id), SampleMeans())


def conditions(kit, batch_id):
    return conditions_of(course(kit, batch_id))


def test_drawing_off_changes_volume_and_surface_but_thins_nothing(kit):
    batch = kit.souring(fill_volume_l=4.0)
    kit.liquids.draw_part(batch.id, 3.0)
    found = conditions(kit, batch.id)
    assert found.volume_l == pytest.approx(1.0)
    assert found.drawn == ()
    assert found.sugar_g_per_l == pytest.approx(batch.sugar_g / 4.0)


def test_topping_up_thins_by_its_share_on_its_day(kit):
    batch = kit.souring(fill_volume_l=3.0)
    kit.clock.advance(days=6)
    kit.liquids.draw_part(batch.id, 1.0)
    kit.liquids.top_up(batch.id, 1.0, 70.0, TeaKind.BLACK, 5.0, 22.0)
    (draw,) = conditions(kit, batch.id).drawn
    assert draw.day == pytest.approx(6.0)
    assert draw.share == pytest.approx(1.0 / 3.0)
    assert draw.sugar_g_per_l == pytest.approx(70.0)


def test_a_topped_up_jar_is_forecast_to_be_less_sour_for_a_while(kit):
    batch = kit.souring(fill_volume_l=3.0)
    kit.clock.advance(days=8)
    before = forecast(conditions(kit, batch.id), (), now_day=8.0)
    kit.liquids.draw_part(batch.id, 2.0)
    kit.liquids.top_up(batch.id, 2.0, 70.0, TeaKind.BLACK, 5.0, 22.0)
    after = forecast(conditions(kit, batch.id), (), now_day=8.0)
    at = before.days.index(8.5)
    assert after.ph[0.5][at] > before.ph[0.5][at] + 0.2
    assert after.sugar_g_per_l[0.5][at] > before.sugar_g_per_l[0.5][at]
    assert after.ph[0.5][at - 2] == pytest.approx(before.ph[0.5][at - 2], abs=0.1)


def test_sour_liquid_poured_in_thins_nothing_and_sweet_liquid_something(kit):
    first, second = two_souring(kit)
    read_ph(kit, second, 3.3)
    read_ph(kit, first, 3.0)
    kit.liquids.merge(first.id, second.id, 0.5)
    assert conditions(kit, second.id).drawn == ()
    kit.clock.advance(hours=1)
    read_ph(kit, second, 3.4)
    kit.liquids.merge(second.id, first.id, 0.5)
    (draw,) = conditions(kit, first.id).drawn
    assert 0.0 < draw.share < 0.5 / 2.0


def test_the_surface_is_that_of_the_new_vessel(kit):
    batch, vessel = souring_and_empty(kit)
    kit.vessels.edit(vessel.id, inner_diameter_cm=20.0)
    kit.liquids.move_batch(batch.id, vessel.id)
    found = conditions(kit, batch.id)
    wanted = vessels.surface_area_cm2(vessel.shape, 20.0, 4.5, 4.0)
    assert found.surface_cm2 == pytest.approx(wanted)
    assert as_it_is(course(kit, batch.id)).diameter_cm == 20.0


def test_it_is_as_warm_as_the_place_it_stood_in_at_the_time(kit):
    batch, vessel = souring_and_empty(kit)
    cellar = kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    kit.vessels.edit(vessel.id, place_id=cellar.id)
    kit.clock.advance(days=5)
    kit.liquids.move_batch(batch.id, vessel.id)
    found = conditions(kit, batch.id)
    assert found.temperature_c == 14.0
    first, until, since = found.temperature_course
    assert first == (0.0, 22.0)
    assert until[1] == 22.0
    assert until[0] < since[0] == pytest.approx(5.0)
    assert since[1] == 14.0


def test_a_batch_that_never_moved_needs_no_course_of_places(kit):
    batch = kit.souring()
    assert conditions(kit, batch.id).temperature_course == ()


def test_what_stood_there_before_the_end_counts_for_a_batch_that_has_ended(kit):
    batch = kit.souring(fill_volume_l=3.0)
    kit.clock.advance(days=6)
    kit.liquids.draw_part(batch.id, 1.0)
    kit.clock.advance(days=1)
    kit.batches.draw_off(batch.id)
    assert standing_volume_l(course(kit, batch.id)) == pytest.approx(2.0)


def test_courses_read_together_are_those_read_one_by_one(kit):
    batch, vessel = souring_and_empty(kit)
    read_ph(kit, batch, 3.6)
    kit.clock.advance(days=2)
    kit.liquids.draw_part(batch.id, 0.5)
    kit.liquids.move_batch(batch.id, vessel.id)
    other = kit.souring(kit.vessel("Other"), name="Other")
    read_ph(kit, other, 3.4)
    with kit.store.read() as unit:
        batches = [unit.batches.get(one.id) for one in (batch, other)]
        together = read_courses(unit, batches, SampleMeans())
        assert together == tuple(read_course(unit, one) for one in batches)


def test_a_course_is_read_once_and_again_when_it_changes(kit):
    batch = kit.souring()
    reader = CourseReader(kit.door)
    with kit.store.read() as unit:
        row = unit.batches.get(batch.id)
        first = reader.of(unit, row)
        assert reader.of(unit, row) is first
    read_ph(kit, batch, 3.5)
    assert not reader.has(batch.id)
    with kit.store.read() as unit:
        assert len(reader.of(unit, row).readings) == len(first.readings) + 1


def test_a_vessel_that_is_carried_changes_where_its_batch_stands(kit):
    batch = kit.souring()
    cellar = kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))
    reader = CourseReader(kit.door)
    with kit.store.read() as unit:
        row = unit.batches.get(batch.id)
        assert reader.of(unit, row).surroundings.usual_c is None
    kit.clock.advance(days=2)
    kit.vessels.edit(batch.vessel_id, place_id=cellar.id)
    with kit.store.read() as unit:
        assert reader.of(unit, row).surroundings.usual_c == 14.0
