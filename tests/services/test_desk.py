"""The desk: joined once, started by nobody, and its backups."""

from __future__ import annotations

from datetime import time

import pytest

from brewdesk.services.desk import build_desk, quiet_hours
from brewdesk.services.palate import set_band
from brewdesk.services.settings import FIRST_TASTE_PH, QUIET_FROM, QUIET_TO, SOUND_ON
from brewdesk.store.records import PlaceDraft
from brewdesk.store.store import Store
from culturecore.stages import Method, Quantity
from tests.helpers.fakes import FakeClock, FakeNotifier, InlineJobs


@pytest.fixture
def desk(tmp_path, clock):
    store = Store.open(tmp_path / "pantry.sqlite", now=clock.now())
    yield build_desk(store, clock, jobs=InlineJobs(), notifier=FakeNotifier())
    store.close()


def _add_place(desk, name="Cellar"):
    desk.vessels.add_place(PlaceDraft(name=name, temperature_c=14.0))


def test_a_new_desk_has_started_nothing(desk):
    assert desk.timers.wait_ms() is None
    assert desk.notifier.shown == []
    assert desk.store.backups() == ()


def test_all_services_share_one_store_and_hear_each_other(desk):
    heard = []
    desk.changes.changed.connect(heard.append)
    _add_place(desk)
    assert [place.name for place in desk.vessels.places()] == ["Cellar"]
    assert desk.history.undo_act().kind == "add_place"
    assert len(heard) == 1
    assert desk.store_path == desk.store.path


def test_settings_reach_the_services_that_heed_them(desk):
    desk.settings.put(FIRST_TASTE_PH, 3.5)
    desk.settings.put(QUIET_FROM, time(20, 0))
    desk.settings.put(QUIET_TO, time(9, 0))
    assert set_band(desk.settings).first_taste_ph == 3.5
    hours = quiet_hours(desk.settings)
    assert (hours.begins, hours.ends) == (time(20, 0), time(9, 0))
    desk.settings.put(SOUND_ON, False)
    assert desk.settings.get(SOUND_ON) is False


def test_a_maker_may_back_up_at_any_time(desk):
    first = desk.back_up()
    desk.clock.advance(seconds=1)
    second = desk.back_up()
    assert first != second
    assert {info.path for info in desk.store.backups()} == {first, second}
    assert {info.reason for info in desk.store.backups()} == {"manual"}


def test_the_days_backup_is_made_once_a_day_and_only_if_something_was_done(desk):
    assert desk.back_up_if_changed() is None  # nothing was ever done
    _add_place(desk)
    desk.clock.advance(minutes=1)
    assert desk.back_up_if_changed() is not None
    _add_place(desk, "Attic")
    desk.clock.advance(hours=23)
    assert desk.back_up_if_changed() is None  # not a day old
    desk.clock.advance(hours=1)
    assert desk.back_up_if_changed() is not None
    desk.clock.advance(days=3)
    assert desk.back_up_if_changed() is None  # still the same


def test_the_shelf_follows_the_forecast(desk):
    from dataclasses import replace

    from brewdesk.store.records import ReadingDraft, VesselDraft
    from culturecore.stages import Material, VesselShape

    vessel = desk.vessels.add(
        VesselDraft(
            name="Tall jar",
            shape=VesselShape.CYLINDER,
            material=Material.GLASS,
            brim_volume_l=4.5,
            working_volume_l=4.0,
            inner_diameter_cm=15.0,
            place_id=desk.vessels.ensure_place().id,
        )
    )
    wish = replace(desk.batches.default_wish(vessel.id), sugar_g_per_l=60.0)
    batch = desk.batches.plan(vessel.id, None, "Black tea 1", wish)
    for step in desk.brewing.start(batch.id):
        desk.brewing.finish(step.id, 25.0)
    for day, ph in ((1, 3.95), (2, 3.8), (2, 3.65)):
        desk.clock.advance(days=day)
        desk.readings.record(
            [
                ReadingDraft(
                    batch_id=batch.id,
                    at=desk.clock.now(),
                    quantity=Quantity.PH,
                    method=Method.METER,
                    value=ph,
                )
            ]
        )
    window = desk.forecasts.window_of(batch.id)
    assert window is not None
    (jar,) = desk.shelf.jars()
    assert jar.stage_code == "souring"
    assert jar.next_at == window.opens_at
    desk.clock.set_now(window.opens_at)
    assert desk.shelf.jars()[0].stage_code == "tasting"


def test_a_clock_in_another_zone_changes_no_instant(tmp_path):
    from zoneinfo import ZoneInfo

    clock = FakeClock(zone=ZoneInfo("Asia/Tokyo"))
    store = Store.open(tmp_path / "pantry.sqlite", now=clock.now())
    desk = build_desk(store, clock, jobs=InlineJobs(), notifier=FakeNotifier())
    _add_place(desk)
    assert desk.history.undo_act().at == clock.now()
    store.close()
