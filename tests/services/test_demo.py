"""The invented pantry: whole, marked as invented, the same every time."""

from __future__ import annotations

import itertools
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from brewdesk.services import demo
from brewdesk.services.changes import Changes, Topic
from brewdesk.services.demo_brews import course_ph
from brewdesk.services.desk import build_desk
from brewdesk.services.door import Door
from brewdesk.services.fizzforecasts import FizzForecasts
from brewdesk.services.growing import Growing
from brewdesk.services.settings import Settings
from brewdesk.services.shelf import Shelf
from brewdesk.store.store import Store
from culturecore.stages import (
    BatchPurpose,
    BatchStage,
    BottlingState,
    CultureOrigin,
    CultureState,
    Quantity,
)
from tests.helpers.dump import dump
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs

MOMENTS = [
    FakeClock(),
    FakeClock(datetime(2027, 3, 28, 0, 5, tzinfo=UTC), ZoneInfo("Europe/Berlin")),
    FakeClock(datetime(2026, 11, 1, 23, 59, tzinfo=UTC), ZoneInfo("America/New_York")),
    FakeClock(datetime(2028, 2, 29, 12, 0, tzinfo=UTC), ZoneInfo("Pacific/Auckland")),
]


def _filled(path, clock):
    store = Store.open(path, now=clock.now(), is_demo=True)
    demo.fill(store, clock)
    return store


def _rows(path):
    """Return the content without the pantry's own random name."""
    return [line for line in dump(path).splitlines() if not line.startswith("pantry:")]


@pytest.fixture(scope="module", params=MOMENTS, ids=lambda clock: clock.now().isoformat())
def filled(request, tmp_path_factory):
    """A filled store that these tests only read."""
    store = _filled(tmp_path_factory.mktemp("demo") / "demo.sqlite", request.param)
    yield store, request.param
    store.close()


def test_every_stage_of_a_jar_is_on_the_shelf(filled):
    store, clock = filled
    changes = Changes()
    shelf = Shelf(Door(store, clock, changes), Settings(store, changes))
    jars = {jar.stage_code: jar for jar in shelf.jars()}
    assert set(jars) == {"empty", "planned", "brewing", "souring", "tasting", "drawn_off"}
    assert jars["souring"].day_number == 3
    assert jars["brewing"].next_at > clock.now()
    assert not any(jar.alerts for jar in jars.values())
    with store.read() as unit:
        stages = {batch.stage for batch in unit.batches.where()}
        discarded = unit.batches.where(stage=BatchStage.DISCARDED, order_by="-ended_at")
    assert stages == set(BatchStage)
    assert "mold" in discarded[0].end_reason
    assert all("nvented" in batch.end_reason for batch in discarded)


def test_the_cultures_are_a_family(filled):
    store, _ = filled
    with store.read() as unit:
        cultures = {row.name: row for row in unit.cultures.where()}
        links = {(link.culture_id, link.parent_id) for link in unit.culture_parents.where()}
    bottle, split, gift = (cultures[name] for name in ("Lighthouse", "Ferry", "Harbour"))
    assert [row.origin for row in (bottle, split, gift)] == [
        CultureOrigin.RAW_BOTTLE,
        CultureOrigin.SPLIT,
        CultureOrigin.GIFT,
    ]
    assert {(split.id, bottle.id), (gift.id, split.id)} <= links
    assert {row.state for row in cultures.values()} == set(CultureState)
    merged = cultures["Marsh"]
    assert {parent for child, parent in links if child == merged.id} == {
        cultures["Dune"].id,
        cultures["Reed"].id,
    }


def test_a_culture_grows_from_a_bottle_and_another_rests(filled):
    store, clock = filled
    changes = Changes()
    door = Door(store, clock, changes)
    jars = {jar.vessel.name: jar for jar in Shelf(door, Settings(store, changes)).jars()}
    assert jars["Seed jar"].batch.purpose is BatchPurpose.CULTURE
    growth = Growing(door, Settings(store, changes)).growth_of(jars["Seed jar"].culture.id)
    assert (growth.day, growth.thickness_mm) == (9, 1.0)
    assert jars["Store jar"].culture.name == "Marsh"
    assert 0.5 < jars["Store jar"].fill_volume_l < 1.0


def test_one_bottling_stands_and_one_is_in_the_cold(filled):
    store, clock = filled
    views = FizzForecasts(Door(store, clock, Changes())).all_open()
    states = {view.bottling.state: view for view in views}
    assert set(states) == {BottlingState.CONDITIONING, BottlingState.CHILLED}
    assert all("nvented" in view.bottling.name for view in views)
    assert all(view.parts.checks for view in views)
    assert not any(view.is_urgent for view in views)
    assert all(view.bottling.override_reason == "" for view in views)


def test_the_readings_fall_as_kombucha_does(filled):
    store, _ = filled
    with store.read() as unit:
        in_trials = {jar.batch_id for jar in unit.trial_jars.where()}
        over = unit.batches.where(stage=BatchStage.CLOSED, order_by="-started_at")
        closed = next(batch for batch in over if batch.id not in in_trials)
        rows = unit.readings.where(batch_id=closed.id, quantity=Quantity.PH, order_by="at")
        everything = unit.readings.where()
    values = [row.value for row in rows]
    assert len(everything) > 50
    # Chen and Liu 2000 and others: about pH 3.1 to 3.4 after a week, near 3 after two.
    assert 3.8 <= values[0] <= 4.2
    assert 3.0 <= values[-1] <= 3.25
    assert all(later < earlier + 0.05 for earlier, later in itertools.pairwise(values))


def test_nothing_in_it_happens_in_the_future_or_out_of_order(filled):
    store, clock = filled
    with store.read() as unit:
        acts = unit.acts.recent(10_000)
        readings = unit.readings.where()
    assert all(act.at <= clock.now() for act in acts)
    assert all(later.at >= earlier.at for later, earlier in itertools.pairwise(acts))
    assert all(reading.at <= clock.now() for reading in readings)


def test_it_says_that_it_is_invented(filled):
    store, _ = filled
    with store.read() as unit:
        assert "invented" in unit.places.where()[0].name
        assert all("nvented" in row.note for row in unit.vessels.where())
        assert all("nvented" in row.note for row in unit.cultures.where())
    assert store.info.is_demo


def test_the_same_instant_gives_the_same_pantry(tmp_path):
    contents = []
    for name in ("one", "two"):
        store = _filled(tmp_path / f"{name}.sqlite", FakeClock())
        with closing(sqlite3.connect(store.path)) as connection:
            acts = connection.execute("SELECT * FROM act ORDER BY id").fetchall()
        contents.append((_rows(store.path), acts))
        store.close()
    assert contents[0] == contents[1]


def test_all_its_acts_can_be_taken_back_one_by_one(tmp_path):
    clock = FakeClock()
    store = _filled(tmp_path / "demo.sqlite", clock)
    desk = build_desk(store, clock, jobs=InlineJobs(hold=True), notifier=FakeNotifier())
    troubles = []
    desk.history.trouble.connect(troubles.append)
    full = _rows(store.path)

    count = 0
    while desk.history.undo_act() is not None and not troubles:
        desk.history.undo()
        count += 1
    assert troubles == []
    assert _rows(store.path) == []
    for _ in range(count):
        desk.history.redo()
    assert _rows(store.path) == full
    store.close()


def test_only_an_empty_pantry_is_filled_and_it_is_told(tmp_path):
    clock = FakeClock()
    store = Store.open(tmp_path / "demo.sqlite", now=clock.now(), is_demo=True)
    desk = build_desk(store, clock, jobs=InlineJobs(hold=True), notifier=FakeNotifier())
    heard = []
    desk.changes.changed.connect(heard.append)

    demo.fill_if_empty(desk)
    content = _rows(store.path)
    demo.fill_if_empty(desk)

    assert _rows(store.path) == content
    assert [change.topics for change in heard] == [Topic.EVERYTHING]
    store.close()


def test_a_pantry_that_cannot_be_filled_whole_stays_empty(tmp_path):
    clock = FakeClock()
    store = Store.open(tmp_path / "demo.sqlite", now=clock.now(), is_demo=True)
    empty = _rows(store.path)

    class StoppedError(Exception):
        pass

    class Stopping(FakeClock):
        asked = 0

        def now(self):
            self.asked += 1
            if self.asked > 40:
                raise StoppedError
            return super().now()

    with pytest.raises(StoppedError):
        demo.fill(store, Stopping())
    assert _rows(store.path) == empty
    store.close()


def test_the_invented_courses_pass_through_the_usual_band():
    assert course_ph(0.0, 1.0) == pytest.approx(4.1, abs=0.05)
    assert course_ph(12.0, 1.0) == pytest.approx(3.1, abs=0.05)
