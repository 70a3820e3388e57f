"""Which group a line of the due list belongs to."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from brewdesk.models.due import DueGroup, group_of, grouped, place_of
from tests.helpers.fakes import FakeClock
from tests.helpers.pantry_desk import open_desk, souring_batch

AUCKLAND = ZoneInfo("Pacific/Auckland")


@pytest.fixture
def desk(tmp_path, qapp):
    # 09:00 UTC is 22:00 of the same day in Auckland, in summer time.
    opened = open_desk(tmp_path, FakeClock(datetime(2026, 11, 25, 9, tzinfo=UTC), AUCKLAND))
    yield opened
    opened.store.close()


def test_today_ends_at_the_makers_own_midnight(desk):
    now = desk.clock.now()
    for hours in (1, 3):
        desk.reminders.add_own(None, now + timedelta(hours=hours), f"in {hours} h")
    groups = dict(grouped(desk.reminders.listed(now), now, AUCKLAND))
    assert [item.title for item in groups[DueGroup.TODAY]] == ["in 1 h"]
    assert [item.title for item in groups[DueGroup.COMING]] == ["in 3 h"]
    assert DueGroup.NOW not in groups
    in_utc = dict(grouped(desk.reminders.listed(now), now, UTC))
    assert len(in_utc[DueGroup.TODAY]) == 2


def test_what_has_come_due_is_now(desk):
    desk.reminders.add_own(None, desk.clock.now() + timedelta(minutes=1), "Look")
    desk.clock.advance(minutes=2)
    (item,) = desk.reminders.listed()
    assert group_of(item, desk.clock.now(), AUCKLAND) is DueGroup.NOW


def test_a_line_names_its_jar_and_batch(desk):
    batch = souring_batch(desk, name="Amber", vessel="Tall jar")
    desk.reminders.add_own(batch.id, desk.clock.now() + timedelta(hours=1), "Stir")
    desk.reminders.add_own(None, desk.clock.now() + timedelta(hours=2), "Buy sugar")
    places = {item.title: place_of(item) for item in desk.reminders.listed()}
    assert places["Stir"] == "Tall jar · Amber"
    assert places["Buy sugar"] == ""
