"""Temperatures of places: typed, logged, merged, taken back, and swept when nobody needs them."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.changes import Topic
from brewdesk.services.packedsamples import (
    CHUNK_SAMPLES,
    hourly,
    last_of,
    pack,
    pack_pairs,
    unpack,
)
from brewdesk.services.placelog import PlaceLog
from brewdesk.store.records import PlaceDraft
from culturecore.errors import ImpossibleInput
from tests.services.history_places import samples_before


@pytest.fixture
def log(kit):
    return PlaceLog(kit.door)


@pytest.fixture
def cellar(kit):
    return kit.vessels.add_place(PlaceDraft(name="Cellar", temperature_c=14.0))


def _contents(path):
    with closing(sqlite3.connect(path)) as connection:
        rows = connection.execute("SELECT DISTINCT content_hash FROM temperature_chunk")
        return {row[0] for row in rows}


def test_a_typed_temperature_is_the_latest_until_a_newer_one(kit, log, cellar):
    assert log.latest(cellar.id) is None
    log.read_place(cellar.id, 13.5, kit.clock.now() - timedelta(hours=3))
    assert log.latest(cellar.id).temperature_c == 13.5
    log.add_log(cellar.id, "a.csv", samples_before(kit, 12.0, 12.25))
    latest = log.latest(cellar.id)
    assert (latest.temperature_c, latest.is_typed) == (12.25, False)
    assert latest.at == kit.clock.now()


@pytest.mark.parametrize("celsius", [-41.0, 61.0, float("nan"), float("inf")])
def test_a_temperature_no_room_has_is_refused(log, cellar, celsius):
    with pytest.raises(ImpossibleInput) as refused:
        log.read_place(cellar.id, celsius)
    assert refused.value.field == "temperature_c"
    assert log.typed(cellar.id) == ()


def test_a_temperature_still_to_come_is_refused(kit, log, cellar):
    with pytest.raises(ImpossibleInput) as refused:
        log.read_place(cellar.id, 14.0, kit.clock.now() + timedelta(hours=1))
    assert refused.value.reason == "in_future"


def test_the_same_samples_are_entered_once(kit, log, cellar):
    samples = samples_before(kit, 12.0, 12.5)
    log.add_log(cellar.id, "a.csv", samples)
    with pytest.raises(ImpossibleInput) as refused:
        log.add_log(cellar.id, "b.csv", samples)
    assert refused.value.reason == "taken"
    assert [row.name for row in log.logs(cellar.id)] == ["a.csv"]


def test_a_change_is_announced_as_one_of_places(kit, log, cellar):
    kit.heard.clear()
    log.add_log(cellar.id, "a.csv", samples_before(kit, 12.0, 12.5))
    assert [change.topics for change in kit.heard] == [Topic.PLACES]


def test_steps_hold_the_mean_of_what_was_logged_and_typed_ones_fill_the_gaps(kit, log, cellar):
    now = kit.clock.now().replace(minute=30)
    kit.clock.set_now(now)
    hour_s = int(now.timestamp()) // 3600 * 3600
    # Three samples in the hour before this one, none in the hour before that.
    samples = [(hour_s - 3600, 10.0), (hour_s - 3000, 11.0), (hour_s - 600, 15.0)]
    log.add_log(cellar.id, "a.csv", pack_pairs(samples))
    log.read_place(cellar.id, 20.0, now - timedelta(hours=1))  # an hour the logger saw
    log.read_place(cellar.id, 17.0, now - timedelta(hours=2))  # an hour it did not see
    course = log.course_of(cellar.id, now - timedelta(days=1), now)
    assert course.step_h == 1
    assert [(point.temperature_c, point.is_typed) for point in course.points] == [
        (17.0, True),
        (12.0, False),
    ]
    assert (course.points[1].low_c, course.points[1].high_c) == (10.0, 15.0)
    assert course.points[1].at.timestamp() == hour_s - 1800


def test_long_courses_come_in_wider_steps(kit, log, cellar):
    now = kit.clock.now()
    assert log.course_of(cellar.id, now - timedelta(days=30), now).step_h == 6
    assert log.course_of(cellar.id, now - timedelta(days=700), now).step_h == 24


def test_two_logs_of_one_hour_count_by_their_samples(kit, log, cellar):
    hour_s = int(kit.clock.now().timestamp()) // 3600 * 3600 - 7200
    log.add_log(cellar.id, "a.csv", pack_pairs([(hour_s, 10.0)]))
    log.add_log(cellar.id, "b.csv", pack_pairs([(hour_s + n, 14.0) for n in (1, 2, 3)]))
    now = kit.clock.now()
    (point,) = log.course_of(cellar.id, now - timedelta(days=1), now).points
    assert point.temperature_c == pytest.approx(13.0)


def test_the_log_proposes_another_usual_temperature(kit, log, cellar):
    assert log.suggestion(cellar) is None
    log.add_log(cellar.id, "a.csv", samples_before(kit, *([16.0] * 24 * 5)))
    found = log.suggestion(cellar)
    assert found.mean_c == pytest.approx(16.0)
    assert found.usual_c == 14.0
    assert found.days in (5, 6)
    near = kit.vessels.edit_place(cellar.id, temperature_c=16.2)
    assert log.suggestion(near) is None


def test_a_day_by_the_minute_counts_no_more_than_a_day_read_once(kit, log, cellar):
    now_s = int(kit.clock.now().timestamp())
    log.add_log(cellar.id, "a.csv", pack_pairs([(now_s - 60 * n, 20.0) for n in range(60)]))
    for days in (2, 3, 4):
        log.read_place(cellar.id, 10.0, kit.clock.now() - timedelta(days=days))
    assert log.suggestion(cellar).mean_c == pytest.approx(12.5)


def test_a_place_with_vessels_stays(kit, log, cellar):
    jar = kit.vessel(place_id=cellar.id)
    with pytest.raises(ImpossibleInput) as refused:
        log.remove_place(cellar.id)
    assert (refused.value.reason, refused.value.value) == ("vessels_here", 1)
    kit.vessels.retire(jar.id)
    with pytest.raises(ImpossibleInput) as refused:
        log.remove_place(cellar.id)
    assert refused.value.reason == "retired_vessels_here"


def test_samples_stay_while_undo_or_redo_could_want_them(kit, log, cellar):
    samples = samples_before(kit, 12.0, 12.5)
    entered = log.add_log(cellar.id, "a.csv", samples)
    log.drop_log(entered.id)
    log.prepare()
    assert _contents(kit.path) == {samples.content_hash}  # the dropping can be taken back
    kit.history.undo()
    kit.history.undo()
    log.prepare()
    assert _contents(kit.path) == {samples.content_hash}  # the import can be done again
    kit.history.redo()
    now = kit.clock.now()
    assert len(PlaceLog(kit.door).course_of(cellar.id, now - timedelta(days=1), now).points) == 2


def test_samples_that_nothing_names_any_more_are_swept(kit, log, cellar):
    log.add_log(cellar.id, "a.csv", samples_before(kit, 12.0, 12.5))
    kit.history.undo()
    log.read_place(cellar.id, 13.0)  # from here on the import cannot be done again
    kept = samples_before(kit, 9.0)
    log.add_log(cellar.id, "b.csv", kept)
    log.keep_samples(samples_before(kit, 1.0, 2.0))  # an import that was given up half-way
    log.prepare()
    assert _contents(kit.path) == {kept.content_hash}


pairs = st.lists(
    st.tuples(st.integers(0, 4_000_000_000), st.floats(-40.0, 60.0, width=32)),
    min_size=1,
    max_size=300,
    unique_by=lambda pair: pair[0],
)


@given(pairs)
def test_what_is_packed_is_unpacked_bit_by_bit_and_both_ways_of_packing_agree(samples):
    packed = pack_pairs(samples)
    at_s, celsius = unpack(packed.chunks)
    ordered = sorted(samples)
    assert list(zip(at_s.tolist(), celsius.tolist(), strict=True)) == ordered
    assert pack(at_s, celsius) == packed
    assert last_of(packed.chunks[-1]) == ordered[-1]


@given(pairs)
def test_hourly_means_lie_between_their_ends_and_count_every_sample(samples):
    means = hourly(pack_pairs(samples).chunks)
    assert sum(means.counts) == len(samples)
    assert list(means.hours) == sorted({at_s // 3600 for at_s, _ in samples})
    for low, mean, high in zip(means.lows_c, means.means_c, means.highs_c, strict=True):
        assert low - 1e-9 <= mean <= high + 1e-9
    total = sum(mean * count for mean, count in zip(means.means_c, means.counts, strict=True))
    assert total == pytest.approx(sum(celsius for _, celsius in samples), abs=1e-6)


def test_many_samples_are_kept_in_chunks_of_one_size(kit, log, cellar):
    first_s = int(kit.clock.now().timestamp()) - 70_000
    packed = pack_pairs((first_s + n, 14.0) for n in range(70_000))
    assert [len(chunk) for chunk in packed.chunks] == [
        12 * CHUNK_SAMPLES,
        12 * (70_000 - CHUNK_SAMPLES),
    ]
    entered = log.add_log(cellar.id, "a.csv", packed)
    with kit.store.read() as unit:
        assert unit.temperature_samples.chunks(entered.content_hash) == packed.chunks
    assert (entered.sample_count, entered.first_at.timestamp()) == (70_000, first_s)
