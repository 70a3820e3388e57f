"""Reminders are shown once, at their time, whatever happens to the machine and its clock."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import QTimer

from brewdesk.services.notices.port import NoticeAction
from brewdesk.services.reminder_clock import SUMMARY_KEY, TICK_MS
from brewdesk.services.reminder_rules import QuietHours, TastingWindow
from brewdesk.store.errors import StoreTrouble
from culturecore.stages import BatchStage, ReminderKind, ReminderState
from tests.helpers.fakes import FakeClock
from tests.helpers.watched_pantry import WatchedPantry


@pytest.fixture
def clock() -> FakeClock:
    return FakeClock(datetime(2026, 11, 25, 12, 0, tzinfo=UTC))


@pytest.fixture
def pantry(tmp_path, clock, qapp) -> Iterator[WatchedPantry]:
    made = WatchedPantry(tmp_path / "pantry.brewdesk", clock)
    yield made
    made.close()


def test_what_is_due_is_shown_once_over_many_ticks(pantry):
    pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(12, minutes=1)
    pantry.tick(200)
    assert pantry.titles == ["Wash the cloths"]
    assert pantry.chimes == 1


def test_nothing_is_shown_before_its_time(pantry):
    pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=9, seconds=59)
    assert pantry.titles == []
    pantry.tick(seconds=1)
    assert pantry.titles == ["Wash the cloths"]


def test_what_was_shown_is_not_shown_again_after_a_restart(pantry):
    pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    assert pantry.titles == ["Wash the cloths"]
    pantry.reopen()
    pantry.watch.evaluate()
    pantry.tick(5)
    assert pantry.titles == []
    assert [item.title for item in pantry.reminders.listed()] == ["Wash the cloths"]


def test_what_came_due_while_the_program_was_closed_is_shown_at_its_start(pantry):
    pantry.own("Wash the cloths", minutes=10)
    pantry.close()
    pantry.clock.advance(days=3)
    pantry._open()
    pantry.watch.evaluate()
    pantry.tick(5)
    assert pantry.titles == ["Wash the cloths"]
    (item,) = pantry.reminders.listed()
    assert item.lateness >= timedelta(days=2, hours=23)
    assert "2 days ago" in item.when_text


def test_three_weeks_away_end_in_one_summary_and_nothing_is_lost(pantry):
    batches = [pantry.add_batch(name) for name in ("Amber", "Birch", "Cedar")]
    pantry.watch.evaluate()
    pantry.close()
    pantry.clock.advance(days=21)
    pantry._open()
    pantry.watch.evaluate()
    pantry.tick(10)
    assert pantry.notifier.keys == [SUMMARY_KEY]
    due = [item for item in pantry.reminders.listed() if item.is_due]
    # The newest pH check and the newest mold look of each: one makes up for those before it.
    assert len(due) == 2 * len(batches)
    assert "6 things" in pantry.titles[0]
    assert [item.reminder.kind for item in due[:3]] == [ReminderKind.PH_CHECK] * 3
    assert pantry.chimes == 1


def test_after_being_away_a_single_reminder_is_shown_as_itself(pantry):
    pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.clock.jump(hours=8)
    pantry.watch.evaluate()
    assert pantry.titles == ["Wash the cloths"]
    assert pantry.notifier.shown[0].actions[1][0] is NoticeAction.DONE


def test_a_night_asleep_ends_in_one_summary(pantry, qtbot):
    for minutes in (10, 20):
        pantry.own(f"In {minutes} minutes", minutes=minutes)
    pantry.watch.evaluate()
    with qtbot.waitSignal(pantry.watch.clock_moved) as moved:
        pantry.clock.jump(hours=8)
        pantry.watch.evaluate()
    assert moved.args == [8 * 3600.0]
    pantry.tick(10)
    assert pantry.notifier.keys == [SUMMARY_KEY]
    assert pantry.titles[0].startswith("2 things came due")


def test_two_due_together_while_awake_are_shown_one_by_one(pantry):
    for name in ("first", "second"):
        pantry.own(name, minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    assert pantry.titles == ["first", "second"]
    assert pantry.chimes == 1


def test_three_due_together_become_one_notice(pantry):
    for name in ("first", "second", "third"):
        pantry.own(name, minutes=10)
    pantry.watch.evaluate()
    pantry.tick(2, minutes=11)
    assert pantry.titles == ["3 things are due"]
    assert pantry.notifier.shown[0].body == "first\nsecond\nthird"


def test_forty_due_together_are_named_in_part(pantry):
    for number in range(40):
        pantry.own(f"Number {number}", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    (notice,) = pantry.notifier.shown
    assert notice.body.endswith("36 more are in the due list.")


def test_a_clock_put_forward_shows_what_is_due_by_it(pantry):
    pantry.own("Wash the cloths", hours=2)
    pantry.watch.evaluate()
    pantry.clock.jump(hours=3)
    pantry.watch.evaluate()
    assert pantry.titles == ["Wash the cloths"]


def test_a_clock_put_back_shows_nothing_twice_and_nothing_early(pantry, qtbot):
    pantry.own("Shown already", minutes=10)
    pantry.own("Still to come", minutes=50)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    with qtbot.waitSignal(pantry.watch.clock_moved) as moved:
        pantry.clock.jump(minutes=-40)
        pantry.watch.evaluate()
    assert moved.args == [-2400.0]
    pantry.tick(30, minutes=1)
    assert pantry.titles == ["Shown already"]
    pantry.tick(60, minutes=1)
    assert pantry.titles == ["Shown already", "Still to come"]


def test_small_corrections_of_the_clock_are_no_news(pantry, qtbot):
    pantry.watch.evaluate()
    with qtbot.assertNotEmitted(pantry.watch.clock_moved):
        pantry.clock.jump(seconds=-1)
        pantry.tick()
        pantry.clock.jump(seconds=5)
        pantry.tick()


def test_a_clock_far_before_the_newest_record_shows_and_changes_nothing(pantry, qtbot):
    pantry.own("Wash the cloths", minutes=10)
    batch = pantry.add_batch(days_ago=4)
    right_now = pantry.clock.now()
    pantry.clock.set_now(datetime(1970, 1, 2, tzinfo=UTC))
    with qtbot.waitSignal(pantry.watch.clock_doubt) as doubt:
        pantry.watch.evaluate()
    assert doubt.args == [right_now]
    with qtbot.assertNotEmitted(pantry.watch.clock_doubt):
        pantry.tick(5)
    assert pantry.titles == []
    assert pantry.kept(ReminderKind.MOLD_LOOK) == ()
    with qtbot.waitSignal(pantry.watch.clock_trusted):
        pantry.clock.set_now(right_now + timedelta(minutes=20))
        pantry.watch.evaluate()
    pantry.tick(5)
    assert pantry.notifier.keys == [SUMMARY_KEY]
    assert {row.batch_id for row in pantry.kept(ReminderKind.MOLD_LOOK)} == {batch.id}


def test_quiet_hours_put_off_and_never_drop(pantry):
    pantry.quiet = QuietHours(time(22), time(7))
    pantry.own("In the night", hours=15)  # 03:00
    pantry.own("In the evening", hours=9, minutes=50)  # 21:50
    pantry.watch.evaluate()
    pantry.tick(18 * 6, minutes=10)  # to 06:00
    assert pantry.titles == ["In the evening"]
    assert [item.is_due for item in pantry.reminders.listed()] == [True, True]
    pantry.tick(59, minutes=1)  # to 06:59
    assert pantry.titles == ["In the evening"]
    pantry.tick(1, minutes=1)
    assert pantry.titles == ["In the evening", "In the night"]


@pytest.mark.parametrize("day", ["2026-03-28", "2026-10-24"])
def test_quiet_hours_end_at_seven_on_the_wall_in_the_night_of_a_clock_change(tmp_path, qapp, day):
    zone = ZoneInfo("Europe/London")
    evening = datetime.combine(datetime.fromisoformat(day), time(20), tzinfo=zone)
    pantry = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(evening, zone))
    pantry.quiet = QuietHours(time(22), time(7))
    pantry.own("In the night", hours=5)
    pantry.watch.evaluate()
    shown_at = None
    for _ in range(24 * 12):
        pantry.tick(minutes=5)
        if pantry.titles and shown_at is None:
            shown_at = pantry.clock.now().astimezone(zone).time()
    pantry.close()
    assert shown_at == time(7)
    assert pantry.titles == ["In the night"]


def test_a_snoozed_reminder_returns_once_at_its_time_even_over_a_restart(pantry):
    own = pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    pantry.answer(f"reminder-{own.id}", NoticeAction.SNOOZE)
    pantry.tick(100, minutes=1)
    assert pantry.titles == ["Wash the cloths"]
    pantry.reopen()
    pantry.watch.evaluate()
    pantry.tick(10, minutes=1)
    assert pantry.titles == []
    pantry.tick(60, minutes=1)
    assert pantry.titles == ["Wash the cloths"]


def test_snoozing_takes_the_notice_away_and_pressing_twice_snoozes_once(pantry):
    own = pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    key = f"reminder-{own.id}"
    for _ in range(2):
        pantry.answer(key, NoticeAction.SNOOZE)
    pantry.watch.evaluate()
    assert pantry.notifier.withdrawn == [key]
    assert pantry.history.undo_act().kind == "snooze_reminder"
    pantry.history.undo()
    assert pantry.history.undo_act().kind == "add_reminder"


def test_done_in_the_window_takes_the_notice_away_and_a_late_button_does_nothing(pantry, qtbot):
    own = pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    pantry.reminders.done(own.id)
    act_before = pantry.history.undo_act()
    with qtbot.waitSignal(pantry.watch.open_asked):
        pantry.answer(f"reminder-{own.id}", NoticeAction.DONE)
    assert pantry.history.undo_act() == act_before
    pantry.watch.evaluate()
    assert pantry.notifier.withdrawn == [f"reminder-{own.id}"]


def test_done_on_the_notice_is_an_act_that_can_be_undone_without_a_second_notice(pantry):
    own = pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    pantry.answer(f"reminder-{own.id}", NoticeAction.DONE)
    assert pantry.reminders.listed() == ()
    pantry.history.undo()
    pantry.tick(5)
    assert [item.title for item in pantry.reminders.listed()] == ["Wash the cloths"]
    assert pantry.titles == ["Wash the cloths"]


def test_open_on_a_notice_names_the_batch(pantry, qtbot):
    batch = pantry.add_batch()
    own = pantry.own("Wash the cloths", batch=batch, minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    with qtbot.waitSignal(pantry.watch.open_asked) as asked:
        pantry.answer(f"reminder-{own.id}", NoticeAction.OPEN)
    assert asked.args == [batch.id]


def test_a_summary_goes_when_its_last_item_is_handled(pantry):
    rows = [pantry.own(name, minutes=10) for name in ("first", "second", "third")]
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    for row in rows[:2]:
        pantry.reminders.done(row.id)
        pantry.watch.evaluate()
    assert pantry.notifier.withdrawn == []
    pantry.reminders.done(rows[2].id)
    pantry.watch.evaluate()
    assert pantry.notifier.withdrawn == [SUMMARY_KEY]


def test_a_forecast_that_moves_the_window_a_little_does_not_nag(pantry):
    batch = pantry.add_batch(days_ago=5)
    opens = pantry.clock.now() - timedelta(hours=1)
    pantry.add_ph(batch, 3.5)
    pantry.windows[batch.id] = TastingWindow(opens_at=opens, closes_at=opens + timedelta(days=5))
    pantry.watch.evaluate()
    for row in pantry.kept(ReminderKind.MOLD_LOOK):
        if row.state is ReminderState.SHOWN:
            pantry.reminders.done(row.id)
    before = len(pantry.titles)
    for hours in (3, 9, 20):
        moved = opens + timedelta(hours=hours)
        pantry.windows[batch.id] = TastingWindow(opens_at=moved)
        pantry.tick(3)
    assert len(pantry.titles) == before
    pantry.windows[batch.id] = TastingWindow(opens_at=opens + timedelta(days=3))
    pantry.tick(3)
    assert len(pantry.titles) == before
    assert pantry.kept(ReminderKind.TASTE)[0].state is ReminderState.WAITING
    pantry.tick(24 * 3, hours=1)
    assert sum(title.startswith("Taste") for title in pantry.titles[before:]) == 1


def test_drawing_a_batch_off_withdraws_its_notice_and_undoing_it_does_not_show_it_again(pantry):
    batch = pantry.add_batch(days_ago=4)
    pantry.watch.evaluate()
    (look,) = [row for row in pantry.kept(ReminderKind.MOLD_LOOK) if row.state.value == "shown"]
    pantry.door.quiet(
        lambda unit: unit.batches.change(
            batch.id, stage=BatchStage.DRAWN_OFF, ended_at=pantry.clock.now()
        )
    )
    pantry.watch.evaluate()
    assert pantry.reminders.listed() == ()
    assert pantry.notifier.withdrawn == [f"reminder-{look.id}"]
    pantry.door.quiet(
        lambda unit: unit.batches.change(batch.id, stage=BatchStage.SOURING, ended_at=None)
    )
    pantry.tick(3)
    assert len(pantry.titles) == 1
    assert look.id in [item.reminder.id for item in pantry.reminders.listed()]


def test_a_store_that_takes_no_writing_says_so_once_and_shows_the_notice_once(
    pantry, monkeypatch, qtbot
):
    pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.clock.advance(minutes=11)
    troubles: list[StoreTrouble] = []
    pantry.watch.trouble.connect(troubles.append)
    real_write = pantry.store.write

    class FullDisk:
        def __enter__(self):
            self.unit = real_write()
            return self.unit.__enter__()

        def __exit__(self, *_):
            trouble = StoreTrouble("disk_full")
            self.unit.__exit__(StoreTrouble, trouble, None)
            raise trouble

    monkeypatch.setattr(pantry.store, "write", FullDisk)
    pantry.tick(5)
    assert [trouble.code for trouble in troubles] == ["disk_full"]
    assert pantry.titles == ["Wash the cloths"]
    monkeypatch.undo()
    pantry.tick(5)
    assert pantry.titles == ["Wash the cloths"]
    assert pantry.kept(ReminderKind.OWN)[0].state is ReminderState.SHOWN


def test_a_program_that_dies_before_the_commit_shows_the_reminder_again(pantry, monkeypatch):
    pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.clock.advance(minutes=11)

    def die(notice):
        raise KeyboardInterrupt

    monkeypatch.setattr(pantry.notifier, "show", die)
    with pytest.raises(KeyboardInterrupt):
        pantry.watch.evaluate()
    pantry.reopen()
    pantry.watch.evaluate()
    assert pantry.titles == ["Wash the cloths"]


def test_a_change_is_followed_by_a_look_and_no_look_follows_itself(pantry, qtbot):
    pantry.watch.start()
    with qtbot.waitSignal(pantry.watch.came_due) as came:
        pantry.own("Due at once", seconds=0)
    assert [item.title for item in came.args[0]] == ["Due at once"]
    soon = pantry.watch.findChild(QTimer, "reminder_soon")
    qtbot.waitUntil(lambda: not soon.isActive())
    pantry.watch.stop()
    assert pantry.titles == ["Due at once"]


def test_coming_to_the_window_is_a_look(pantry):
    pantry.own("Wash the cloths", minutes=10)
    pantry.clock.advance(minutes=10)
    pantry.watch.window_activated()
    assert pantry.titles == ["Wash the cloths"]


def test_the_tick_is_under_a_minute_even_when_it_is_late(pantry):
    pantry.watch.start()
    tick = pantry.watch.findChild(QTimer, "reminder_tick")
    assert tick.isActive()
    assert TICK_MS * 1.05 < 60_000
    assert tick.interval() == TICK_MS
    pantry.watch.stop()
    assert not tick.isActive()
