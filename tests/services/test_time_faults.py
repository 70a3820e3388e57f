"""What machines and people do to the clock, and what must come of it: each fault by itself.

The due instants are kept in the store and every look compares them with the wall clock, so a
fault is an injected clock that moves in its own way between two looks.
"""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import QCoreApplication, QElapsedTimer, Qt, QTimer

from brewdesk.services.acts import ActKind
from brewdesk.services.changes import Topic
from brewdesk.services.notices.port import NoticeAction, Urgency
from brewdesk.services.reminder_clock import SUMMARY_KEY
from brewdesk.services.reminder_rules import QuietHours, wall_instant
from brewdesk.store.records import CalibrationDraft
from culturecore.stages import BatchStage, ReminderKind, ReminderState
from tests.helpers.fakes import FakeClock, InlineJobs
from tests.helpers.watched_pantry import WatchedPantry

ROOT = Path(__file__).resolve().parents[2]
NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
NIGHT = QuietHours(time(22), time(7))
LONDON = ZoneInfo("Europe/London")


@pytest.fixture
def clock() -> FakeClock:
    return FakeClock(NOON)


@pytest.fixture
def pantry(tmp_path, clock, qapp) -> Iterator[WatchedPantry]:
    made = WatchedPantry(tmp_path / "pantry.brewdesk", clock)
    yield made
    made.close()


def chills(pantry: WatchedPantry) -> list[Urgency]:
    """Return the urgency of every notice to chill, in order."""
    return [one.urgency for one in pantry.notifier.shown if one.title.startswith("Chill")]


# asleep, stopped, busy


def test_a_process_stopped_for_five_minutes_tells_once_and_its_countdown_is_right(pantry):
    batch = pantry.add_batch(stage=BatchStage.BREWING)
    step_id = pantry.run_step(batch, 1, minutes=9)
    pantry.own("Wash the cloths", minutes=2)
    pantry.watch.evaluate()
    pantry.tick(minutes=5)  # one look when it goes on: running time went on too
    pantry.tick(5, seconds=10)
    assert pantry.titles == ["Wash the cloths"]
    with pantry.store.read() as unit:
        left = unit.steps.get(step_id).ends_at - pantry.clock.now()
    assert left == timedelta(minutes=9) - timedelta(minutes=5, seconds=50)


def test_a_thread_that_was_busy_for_many_ticks_looks_once_afterwards(pantry):
    looks: list[float] = []
    pantry.watch.start()
    tick = pantry.watch.findChild(QTimer, "reminder_tick")
    tick.setTimerType(Qt.TimerType.PreciseTimer)  # a very coarse one counts in whole seconds
    tick.setInterval(4)
    tick.timeout.connect(lambda: looks.append(1.0))
    busy = QElapsedTimer()
    busy.start()
    while busy.elapsed() < 120:  # thirty ticks long, as a slot that does not return
        pass
    QCoreApplication.processEvents()
    tick.stop()
    assert len(looks) == 1


def test_a_reminder_two_months_away_needs_no_long_timer(pantry):
    pantry.own("Order tea", days=60)
    pantry.watch.start()
    armed = [one.interval() for one in pantry.watch.findChildren(QTimer) if one.isActive()]
    assert max(armed) <= 60_000
    pantry.tick(59, days=1)
    assert pantry.titles == []
    pantry.tick(days=1)
    assert pantry.titles == ["Order tea"]


def test_a_tick_that_comes_early_tells_nothing_early(pantry):
    pantry.own("Wash the cloths", minutes=1)
    pantry.watch.evaluate()
    pantry.tick(seconds=59.9)
    assert pantry.titles == []
    pantry.tick(seconds=0.1)
    assert pantry.titles == ["Wash the cloths"]


# the clock set by hand or by the network


def test_a_clock_put_back_two_days_repeats_nothing_and_says_so(pantry, qtbot):
    pantry.add_batch(days_ago=4)
    pantry.watch.evaluate()
    pantry.tick(72, hours=1)
    before = list(pantry.titles)
    assert before
    with qtbot.waitSignal(pantry.watch.clock_moved) as moved:
        pantry.clock.jump(days=-2)
        pantry.watch.evaluate()
    assert moved.args == [-2 * 86400.0]
    pantry.tick(47, hours=1)
    assert pantry.titles == before
    pantry.tick(24 * 4, hours=1)
    assert len(pantry.titles) > len(before), "what was still to come did come"
    assert len(set(pantry.notifier.keys)) == len(pantry.notifier.keys)


def test_after_a_year_ahead_by_mistake_what_was_shown_too_early_comes_at_its_time(pantry, qtbot):
    pantry.own("Order tea", days=40)
    pantry.watch.evaluate()
    pantry.clock.jump(days=365)
    pantry.watch.evaluate()
    assert pantry.titles == ["Order tea"]
    pantry.own("written a year ahead", days=1)
    with qtbot.assertNotEmitted(pantry.watch.clock_doubt):
        pantry.clock.jump(days=-365)
        pantry.tick(3)
    pantry.tick(39, days=1)
    assert pantry.titles == ["Order tea"]
    pantry.tick(2, days=1)
    assert pantry.titles == ["Order tea", "Order tea"]


def test_a_clock_two_days_back_is_doubted_until_the_maker_says_that_it_is_right(pantry, qtbot):
    pantry.own("Wash the cloths", minutes=30)
    pantry.clock.jump(days=2)
    pantry.own("written two days ahead", days=9)
    pantry.clock.jump(days=-2)
    with qtbot.waitSignal(pantry.watch.clock_doubt):
        pantry.watch.evaluate()
    pantry.tick(minutes=31)
    assert pantry.titles == []
    with qtbot.waitSignal(pantry.watch.clock_trusted):
        pantry.watch.trust_clock()
    assert pantry.titles == ["Wash the cloths"]
    pantry.reopen()
    with qtbot.assertNotEmitted(pantry.watch.clock_doubt):
        pantry.watch.evaluate()


# zones and summer time


@pytest.mark.parametrize(
    ("night", "shown_at"), [(date(2026, 3, 29), time(2, 30)), (date(2026, 10, 25), time(1, 30))]
)
def test_a_time_that_is_left_out_or_comes_twice_is_told_once(tmp_path, qapp, night, shown_at):
    due_at = wall_instant(night, time(1, 30), LONDON)
    clock = FakeClock(due_at - timedelta(hours=5), LONDON)
    pantry = WatchedPantry(tmp_path / "pantry.brewdesk", clock)
    pantry.reminders.add_own(None, due_at, "Look at the jar")
    pantry.watch.evaluate()
    told: list[time] = []
    for _ in range(10 * 6):
        pantry.tick(minutes=10)
        if len(pantry.titles) > len(told):
            told.append(clock.now().astimezone(LONDON).time())
    (row,) = pantry.kept(ReminderKind.OWN)
    pantry.close()
    assert told == [shown_at]
    assert row.due_at == due_at


@pytest.mark.parametrize("begins", [date(2026, 3, 26), date(2026, 10, 22)])
def test_a_daily_reminder_stays_at_nine_on_the_wall_over_a_change_of_the_clocks(
    tmp_path, qapp, begins
):
    clock = FakeClock(datetime.combine(begins, time(20), tzinfo=LONDON), LONDON)
    pantry = WatchedPantry(tmp_path / "pantry.brewdesk", clock)
    pantry.add_bottling()
    pantry.watch.evaluate()
    told: list[datetime] = []
    for _ in range(6 * 24):
        pantry.tick(hours=1)
        while len(told) < sum(title.startswith("Press") for title in pantry.titles):
            told.append(clock.now().astimezone(LONDON))
    pantry.close()
    assert [moment.time() for moment in told] == [time(9)] * 6
    assert [moment.date() for moment in told] == [
        begins + timedelta(days=number) for number in range(1, 7)
    ]


def test_a_timer_of_37_hours_over_a_change_of_the_clocks_is_37_hours(tmp_path, qapp):
    saturday = datetime(2026, 3, 28, 22, 0, tzinfo=LONDON)
    pantry = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(saturday, LONDON))
    step_id = pantry.run_step(pantry.add_batch(stage=BatchStage.BREWING), 1, hours=37)
    pantry.timers.start()
    pantry.clock.advance(hours=36, minutes=59)
    pantry.timers.evaluate()
    assert pantry.rung == []
    pantry.clock.advance(minutes=1)
    pantry.timers.evaluate()
    pantry.close()
    assert pantry.rung == [step_id]


def test_a_journey_moves_reminders_of_a_day_and_nothing_is_told_twice(pantry):
    pantry.add_bottling()
    own = pantry.own("Call about the crate", hours=30)
    pantry.watch.evaluate()
    pantry.tick(24, hours=1)
    pressed = [title for title in pantry.titles if title.startswith("Press")]
    assert len(pressed) == 1
    pantry.clock.travel(ZoneInfo("America/New_York"))
    pantry.tick(5, hours=1)
    assert pantry.titles == pressed, "nine o'clock comes again on the way west"
    (row,) = pantry.kept(ReminderKind.OWN)
    assert row.due_at == own.due_at
    pantry.tick(1, hours=1)
    assert pantry.titles[-1] == "Call about the crate"
    coming = [row for row in pantry.kept(ReminderKind.PRESSURE_CHECK) if row.shown_at is None]
    assert coming[-1].due_at.astimezone(pantry.clock.zone()).time() == time(9)


def test_without_the_systems_time_zones_those_of_the_package_are_used(tmp_path):
    script = """
import zoneinfo
from datetime import UTC, datetime
from brewdesk.services.clock import zone_by_name
assert zoneinfo.TZPATH == ()
zone = zone_by_name("Australia/Lord_Howe")
print(datetime(2026, 1, 1, tzinfo=UTC).astimezone(zone).utcoffset())
"""
    environment = {
        **os.environ,
        "PYTHONTZPATH": "",
        "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared"))),
        "PYTHONDONTWRITEBYTECODE": "1",
    }
    result = subprocess.run(
        [sys.executable, "-c", script],
        cwd=tmp_path,
        env=environment,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert result.stdout.strip() == "11:00:00", result.stderr


def test_reminders_of_a_day_are_worked_out_anew_when_a_zone_has_other_rules(pantry):
    pantry.add_bottling()
    pantry.watch.evaluate()
    before = pantry.kept(ReminderKind.PRESSURE_CHECK)[0]
    pantry.clock.travel(ZoneInfo("Etc/GMT-3"))  # as if the country had moved its clocks
    pantry.tick()
    after = pantry.kept(ReminderKind.PRESSURE_CHECK)[0]
    assert after.due_at == before.due_at - timedelta(hours=3)
    assert after.revision == before.revision + 1


# closed, killed, restarted


def test_after_three_weeks_closed_bottles_come_first_and_by_themselves(pantry):
    for name in ("Amber", "Birch"):
        pantry.add_batch(name)
    pantry.add_bottling("Ginger", danger_in=timedelta(days=6))
    pantry.watch.evaluate()
    pantry.close()
    pantry.clock.advance(days=21)
    pantry._open()
    pantry.watch.evaluate()
    pantry.tick(5)
    assert pantry.notifier.keys[0] == f"reminder-{pantry.kept(ReminderKind.CHILL)[0].id}"
    assert pantry.notifier.keys[1:] == [SUMMARY_KEY]
    assert pantry.notifier.shown[0].urgency is Urgency.CRITICAL
    first, second = pantry.reminders.listed()[:2]
    assert (first.reminder.kind, second.reminder.kind) == (
        ReminderKind.CHILL,
        ReminderKind.PRESSURE_CHECK,
    )
    states = {item.reminder.state for item in pantry.reminders.listed() if item.is_due}
    assert states == {ReminderState.SHOWN}, "nothing was ticked off by itself"


def killed(pantry: WatchedPantry) -> None:
    """Leave everything as a killed process does, and start another one."""
    pantry.watch.stop()
    pantry.timers.stop()
    pantry.store.close()
    pantry._open()


def test_killed_right_after_the_commit_it_is_not_told_again(pantry):
    pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=10)
    killed(pantry)
    pantry.tick(3, seconds=10)
    assert pantry.titles == []


def test_a_snooze_that_ended_while_killed_is_told_at_the_next_start(pantry):
    own = pantry.own("Wash the cloths", minutes=10)
    pantry.watch.evaluate()
    pantry.tick(minutes=11)
    pantry.answer(f"reminder-{own.id}", NoticeAction.SNOOZE)
    killed(pantry)
    pantry.clock.advance(hours=3)
    pantry.watch.evaluate()
    assert pantry.titles == ["Wash the cloths"]
    (item,) = pantry.reminders.listed()
    assert item.is_due
    assert item.lateness == timedelta(hours=3, minutes=1)


# the maker's own doings


def test_a_batch_moved_in_time_takes_its_notice_along(pantry):
    batch = pantry.add_batch(days_ago=4)
    pantry.watch.evaluate()
    (key,) = pantry.notifier.keys
    moved_at = batch.started_at + timedelta(days=3)
    pantry.door.quiet(lambda unit: unit.batches.change(batch.id, started_at=moved_at))
    pantry.tick(2)
    assert pantry.notifier.withdrawn == [key]
    assert [item for item in pantry.reminders.listed() if item.is_due] == []
    pantry.tick(24 * 2 + 1, hours=1)
    assert pantry.notifier.keys == [key, key], "once more, at its new time"


def test_a_dropped_plan_takes_its_reminders_along_and_undo_brings_them_back_untold(pantry):
    batch = pantry.add_batch(stage=BatchStage.PLANNED)
    own = pantry.own("Buy tea", batch=batch, minutes=1)
    pantry.watch.evaluate()
    pantry.tick(minutes=2)
    pantry.door.perform(
        ActKind.DROP_PLAN,
        {"name": batch.name},
        lambda unit: unit.batches.remove(batch.id),
        topics=Topic.BATCHES,
    )
    pantry.tick(2)
    assert pantry.notifier.withdrawn == [f"reminder-{own.id}"]
    assert pantry.reminders.listed() == ()
    pantry.history.undo()
    pantry.tick(3)
    assert pantry.titles == ["Buy tea"]
    assert [item.title for item in pantry.reminders.listed()] == ["Buy tea"]


# bottles


def test_a_danger_is_told_louder_and_more_often_until_the_bottles_are_cold(pantry):
    bottling = pantry.add_bottling(danger_in=timedelta(days=3))
    pantry.watch.evaluate()
    pantry.tick(24 * 4 * 3, minutes=15)  # to the danger
    assert chills(pantry)[0] is Urgency.NORMAL
    before = len(chills(pantry))
    assert before == 1 + 4 + 1, "in good time, four times in twelve hours, then the danger"
    assert chills(pantry)[-1] is Urgency.CRITICAL
    pantry.tick(4 * 5, minutes=15)
    assert chills(pantry)[before:] == [Urgency.CRITICAL] * 5
    pantry.chill(bottling)
    pantry.tick(4 * 24, minutes=15)
    assert len(chills(pantry)) == before + 5
    key = f"reminder-{pantry.kept(ReminderKind.CHILL)[0].id}"
    assert key in pantry.notifier.withdrawn


def test_a_danger_breaks_through_quiet_hours_and_a_calm_notice_does_not(pantry):
    pantry.quiet = NIGHT
    pantry.clock.advance(hours=8)  # 20:00
    pantry.add_bottling("Ginger", danger_in=timedelta(hours=7))  # 03:00
    pantry.watch.evaluate()
    first = len(chills(pantry))
    pantry.own("In the night", hours=4)
    pantry.tick(8 * 4, minutes=15)  # to 04:00
    assert first == 1
    assert len(chills(pantry)) >= 4
    assert "In the night" not in pantry.titles
    pantry.tick(3 * 4, minutes=15)
    assert "In the night" in pantry.titles


def test_a_notice_to_chill_with_time_to_spare_keeps_the_quiet_hours(pantry):
    pantry.quiet = NIGHT
    bottling = pantry.add_bottling(danger_in=timedelta(days=9))
    pantry.clock.advance(hours=14)  # 02:00
    pantry.watch.evaluate()
    facts = pantry.bottlings[bottling]
    pantry.bottlings[bottling] = type(facts)(
        bottling_id=facts.bottling_id,
        state=facts.state,
        filled_at=facts.filled_at,
        # A hot night: due since yesterday, and eighteen hours away.
        chill_by_low_at=pantry.clock.now() + timedelta(hours=18, minutes=30),
    )
    pantry.tick(59, minutes=5)
    assert chills(pantry) == []
    pantry.tick(2, minutes=5)
    assert chills(pantry) == [Urgency.NORMAL]


def test_a_danger_does_not_wait_for_the_end_of_a_snooze(pantry):
    pantry.add_bottling(danger_in=timedelta(hours=20))
    pantry.watch.evaluate()
    (row,) = pantry.kept(ReminderKind.CHILL)
    until = pantry.clock.now() + timedelta(days=2)
    assert "Thu 26 Nov at 08:00" in pantry.reminders.snooze_problem(row.id, until)
    pantry.reminders.snooze(row.id, until)
    pantry.tick(19, hours=1)
    assert len(chills(pantry)) == 1
    pantry.tick(1, hours=1)
    assert chills(pantry)[1:] == [Urgency.CRITICAL]


def test_a_full_disk_does_not_silence_a_danger(pantry, monkeypatch):
    pantry.add_bottling(danger_in=timedelta(hours=1))
    pantry.watch.evaluate()
    from brewdesk.store.errors import StoreTrouble

    def full():
        raise StoreTrouble("disk_full")

    real_quiet = pantry.door.quiet

    def quiet(work, **how):
        real_quiet(lambda unit: work(unit) or full(), **how)

    monkeypatch.setattr(pantry.door, "quiet", quiet)
    pantry.tick(5, hours=1)
    assert len(chills(pantry)) == 1 + 5
    pantry.tick(20, seconds=30)
    assert len(chills(pantry)) == 1 + 5


def test_ticked_off_without_being_chilled_it_comes_back_with_the_danger(pantry):
    pantry.add_bottling(danger_in=timedelta(hours=20))
    pantry.watch.evaluate()
    (row,) = pantry.kept(ReminderKind.CHILL)
    pantry.reminders.done(row.id)
    pantry.tick(19, hours=1)
    assert len(chills(pantry)) == 1
    pantry.tick(1, hours=1)
    assert chills(pantry)[1:] == [Urgency.CRITICAL]


def test_a_check_of_the_day_takes_the_reminder_away(pantry):
    bottling = pantry.add_bottling()
    pantry.watch.evaluate()
    pantry.tick(24, hours=1)
    (due,) = [item for item in pantry.reminders.listed() if item.is_due]
    assert due.reminder.kind is ReminderKind.PRESSURE_CHECK
    assert due.bottling.name == "Ginger"
    facts = pantry.bottlings[bottling]
    pantry.bottlings[bottling] = type(facts)(
        bottling_id=facts.bottling_id,
        state=facts.state,
        filled_at=facts.filled_at,
        last_check_at=pantry.clock.now(),
    )
    pantry.tick()
    assert [item for item in pantry.reminders.listed() if item.is_due] == []


# many at once


def test_forty_at_once_are_one_summary_and_the_danger_by_itself(pantry):
    for number in range(40):
        pantry.own(f"Number {number}", minutes=10)
    pantry.add_bottling(danger_in=timedelta(hours=2))
    pantry.clock.advance(minutes=11)
    pantry.watch.evaluate()
    (chill,) = pantry.kept(ReminderKind.CHILL)
    assert pantry.notifier.keys == [f"reminder-{chill.id}", SUMMARY_KEY]
    assert pantry.notifier.shown[1].title.startswith("40 things")


class SlowJobs(InlineJobs):
    """Holds the work until it is released."""

    def __init__(self) -> None:
        super().__init__(hold=True)


def test_two_hundred_at_once_are_told_at_once_and_marked_on_another_thread(tmp_path, qapp, clock):
    jobs = SlowJobs()
    pantry = WatchedPantry(tmp_path / "pantry.brewdesk", clock, jobs)
    for number in range(200):
        pantry.own(f"Number {number}", minutes=10)
    pantry.watch.evaluate()
    pantry.clock.advance(days=1)
    pantry.watch.evaluate()
    assert pantry.notifier.keys == [SUMMARY_KEY]
    assert jobs.keys == ["reminders-shown"]
    waiting = [row for row in pantry.kept(ReminderKind.OWN) if row.shown_at is None]
    assert len(waiting) == 200, "nothing was written on the window's thread"
    pantry.tick(5)
    assert pantry.notifier.keys == [SUMMARY_KEY]
    assert pantry.notifier.withdrawn == []
    ticked = pantry.kept(ReminderKind.OWN)[7]
    pantry.reminders.done(ticked.id)  # between the telling and the marking
    jobs.release()
    rows = pantry.kept(ReminderKind.OWN)
    pantry.tick(5)
    pantry.close()
    assert [row.id for row in rows if row.state is not ReminderState.SHOWN] == [ticked.id]
    assert pantry.notifier.keys == [SUMMARY_KEY]
    assert pantry.chimes == 1


def test_killed_between_telling_many_and_marking_them_they_are_told_again(tmp_path, qapp, clock):
    pantry = WatchedPantry(tmp_path / "pantry.brewdesk", clock, SlowJobs())
    for number in range(30):
        pantry.own(f"Number {number}", minutes=10)
    pantry.clock.advance(hours=1)
    pantry.watch.evaluate()
    assert pantry.notifier.keys == [SUMMARY_KEY]
    pantry.jobs = InlineJobs()
    killed(pantry)
    pantry.watch.evaluate()
    pantry.tick(3)
    assert pantry.notifier.keys == [SUMMARY_KEY]
    states = {row.state for row in pantry.kept(ReminderKind.OWN)}
    pantry.close()
    assert states == {ReminderState.SHOWN}


def test_a_crowd_of_batches_brings_bottles_in_line_on_another_thread_too(tmp_path, qapp, clock):
    jobs = InlineJobs()
    pantry = WatchedPantry(tmp_path / "pantry.brewdesk", clock, jobs)
    for number in range(10):
        pantry.add_batch(f"Batch {number}")
    pantry.add_bottling(danger_in=timedelta(hours=1))
    pantry.watch.evaluate()
    QCoreApplication.processEvents()  # showing has a turn of its own
    told = chills(pantry)
    pantry.close()
    assert "reminders" in jobs.keys
    assert told == [Urgency.NORMAL]


# the meter


def test_a_meter_in_use_is_to_be_calibrated_and_one_in_a_drawer_is_not(pantry):
    pantry.add_ph(pantry.add_batch(), 3.6)
    pantry.watch.evaluate()
    pantry.tick(8, days=1)
    assert pantry.titles.count("Calibrate the pH meter") == 1
    draft = CalibrationDraft(at=pantry.clock.now(), meter="Yellow meter")
    pantry.door.quiet(lambda unit: unit.calibrations.add(draft))
    pantry.tick(6, days=1)
    assert pantry.titles.count("Calibrate the pH meter") == 1
    pantry.tick(2, days=1)
    assert pantry.titles.count("Calibrate the pH meter") == 2
    pantry.tick(30, days=1)
    assert pantry.titles.count("Calibrate the pH meter") <= 3
    listed = [item.reminder.kind for item in pantry.reminders.listed()]
    assert ReminderKind.CALIBRATE not in listed
