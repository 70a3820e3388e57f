"""The machine's clock, its zone, and what a change says."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from brewdesk.services import clock as clock_module
from brewdesk.services.changes import Change, Topic
from brewdesk.services.clock import SystemClock, zone_by_name


def test_now_is_aware_and_in_utc():
    clock = SystemClock()
    before = datetime.now(UTC)
    now = clock.now()
    assert before <= now <= datetime.now(UTC)
    assert now.utcoffset() == timedelta(0)


def test_running_time_never_goes_back():
    clock = SystemClock()
    assert clock.monotonic() <= clock.monotonic()


def test_the_chosen_zone_comes_before_the_machines(monkeypatch):
    monkeypatch.setenv("TZ", "America/New_York")
    assert SystemClock(lambda: "Europe/London").zone() == ZoneInfo("Europe/London")
    assert SystemClock(lambda: "").zone() == ZoneInfo("America/New_York")
    assert SystemClock().zone() == ZoneInfo("America/New_York")


def test_a_changed_setting_is_noticed_without_a_restart():
    chosen = ["Europe/London"]
    clock = SystemClock(lambda: chosen[0])
    clock.zone()
    chosen[0] = "Asia/Kolkata"
    assert clock.zone() == ZoneInfo("Asia/Kolkata")


def test_an_unknown_zone_falls_back_to_the_machines(monkeypatch):
    monkeypatch.setenv("TZ", "Not/AZone")
    monkeypatch.setattr(clock_module, "_machine_zone_name", lambda: "Asia/Kolkata")
    assert SystemClock(lambda: "Nowhere/AtAll").zone() == ZoneInfo("Asia/Kolkata")


def test_without_any_zone_the_present_offset_is_better_than_none(monkeypatch):
    monkeypatch.setattr(clock_module, "zone_by_name", lambda name: None)
    zone = SystemClock().zone()
    assert datetime.now(zone).utcoffset() == datetime.now().astimezone().utcoffset()


def test_hostile_zone_names_are_unknown():
    for name in ("", "../../etc/passwd", "/etc/localtime", "a\x00b", "Europe"):
        assert zone_by_name(name) is None


def test_a_change_tells_what_and_whom_it_concerns():
    change = Change(Topic.READINGS, frozenset({3}))
    assert change.concerns(Topic.READINGS | Topic.BATCHES)
    assert not change.concerns(Topic.STEPS)
    assert change.concerns_batch(3)
    assert not change.concerns_batch(4)
    assert Change(Topic.BATCHES).concerns_batch(4)
    assert all(topic in Topic.EVERYTHING for topic in Topic)
