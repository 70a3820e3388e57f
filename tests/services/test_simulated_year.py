"""A year of a pantry with forty batches: every due instant is shown once, and none is lost.

Looks come late and at uneven times, the machine sleeps for hours to weeks, the program is
closed and opened, the clocks change twice, and the maker ticks off and puts off at random.
The books are kept beside the program: a due instant is a reminder with the instant at which
it was to be shown, read from the store just before each look.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from sqlalchemy import Engine, event

from brewdesk.services.escalation import PRESSING_BEFORE, Step, step_of
from brewdesk.services.reminder_rules import QuietHours, TastingWindow, effective_due
from brewdesk.services.reminders import OPEN_STATES
from brewdesk.store.records import Batch, Reminder
from culturecore.stages import BatchStage, ReminderKind, ReminderState
from tests.helpers.fakes import FakeClock
from tests.helpers.watched_pantry import WatchedPantry

BEGINS = datetime(2026, 1, 3, 11, 0, tzinfo=UTC)
ENDS = BEGINS + timedelta(days=365)
BATCHES = 40
QUIET = QuietHours(time(22), time(7))
Occasion = tuple[int, datetime]


class Year:
    """The pantry, its maker, and the books."""

    def __init__(self, path, zone: ZoneInfo, seed: int) -> None:
        self.chance = random.Random(seed)
        self.clock = FakeClock(BEGINS, zone)
        self.pantry = WatchedPantry(path, self.clock)
        self.pantry.quiet = QUIET
        self.starts = [BEGINS + timedelta(days=365 * n / BATCHES) for n in range(BATCHES)]
        self.live: list[Batch] = []
        self.bottles: list[int] = []
        self.shown: Counter[Occasion] = Counter()
        self.late: list[str] = []  # due, loud enough, looked for, and not shown
        self.early: list[str] = []
        self.loud: list[tuple[Reminder, datetime]] = []
        self.own_due: dict[int, list[datetime]] = {}
        self.answered_early: set[Occasion] = set()
        self.restarts = 0
        self.naps = 0
        self._listen()

    def _listen(self) -> None:
        self.pantry.watch.came_due.connect(self._on_came_due)

    def _on_came_due(self, items) -> None:
        now = self.clock.now()
        for item in items:
            if item.due_at > now:
                self.early.append(item.title)
            if item.reminder.kind is ReminderKind.CHILL:
                self.loud.append((item.reminder, now))
            else:
                self.shown[item.reminder.id, item.due_at] += 1

    def rows(self) -> tuple[Reminder, ...]:
        with self.pantry.store.read() as unit:
            return unit.reminders.where(state=OPEN_STATES)

    def look(self) -> None:
        """Look once, and check that nothing that was to be shown was left out."""
        self.pantry.watch.evaluate()
        now = self.clock.now()
        is_quiet = QUIET.covers(now, self.clock.zone())
        for row in self.rows():
            is_due = row.state is not ReminderState.SHOWN and effective_due(row) <= now
            if is_due and not (is_quiet and step_of(row, now) is Step.CALM):
                self.late.append(f"{row.kind} {row.due_at} at {now}")

    def pass_time(self) -> None:
        """Let time pass: mostly a late tick, sometimes a sleep, sometimes a restart."""
        kind = self.chance.random()
        if kind < 0.86:
            self.clock.advance(hours=self.chance.uniform(0.3, 26))
        elif kind < 0.95:
            self.naps += 1
            self.clock.jump(hours=self.chance.uniform(1, 60))
        elif kind < 0.96:
            self.naps += 1
            self.clock.jump(days=self.chance.uniform(5, 16))
        else:
            self.restarts += 1
            self.pantry.close()
            self.clock.advance(hours=self.chance.uniform(0.01, 40))
            self.pantry._open()
            self._listen()

    def do_something(self) -> None:
        """Be a maker: brew, draw off, bottle, chill, write reminders, answer some."""
        now = self.clock.now()
        while self.starts and self.starts[0] <= now:
            self.starts.pop(0)
            batch = self.pantry.add_batch(f"Batch {BATCHES - len(self.starts)}")
            self.live.append(batch)
            for _ in range(2):
                self.write_own(batch)
        for batch in list(self.live):
            age = now - batch.started_at
            if batch.id not in self.pantry.windows or not self.chance.randrange(3):
                opens = batch.started_at + timedelta(days=8 + self.chance.uniform(-0.6, 0.6))
                self.pantry.windows[batch.id] = TastingWindow(
                    opens_at=opens, closes_at=opens + timedelta(days=5)
                )
            if age > timedelta(days=6) and not self.chance.randrange(12):
                self.pantry.add_ph(batch, 3.4)
            if age > timedelta(days=13):
                self.end(batch)
        for bottling_id in list(self.bottles):
            facts = self.pantry.bottlings[bottling_id]
            # The forecast is restless, and looked at anew.
            moved = facts.chill_by_low_at + timedelta(hours=self.chance.uniform(-2, 2))
            self.pantry.bottlings[bottling_id] = replace(facts, chill_by_low_at=moved)
            if now > moved + timedelta(hours=8):
                self.pantry.chill(bottling_id)
                self.bottles.remove(bottling_id)
        self.answer()

    def end(self, batch: Batch) -> None:
        now = self.clock.now()
        self.live.remove(batch)
        self.pantry.door.quiet(
            lambda unit: unit.batches.change(batch.id, stage=BatchStage.CLOSED, ended_at=now)
        )
        if not self.chance.randrange(2):
            danger_in = timedelta(days=self.chance.uniform(0.3, 7))
            self.bottles.append(self.pantry.add_bottling(batch.name, danger_in=danger_in))

    def write_own(self, batch: Batch | None) -> None:
        span = timedelta(hours=self.chance.uniform(1, 24 * 12))
        at = self.clock.now() + span
        row = self.pantry.reminders.add_own(None, at, f"Own {len(self.own_due)}")
        self.own_due[row.id] = [row.due_at]

    def answer(self) -> None:
        """Tick some of what is listed off, and put some of it off, by chance."""
        now = self.clock.now()
        for row in self.rows():
            chance = self.chance.random()
            if row.state is not ReminderState.SHOWN:
                continue
            if chance < 0.06 and row.kind is not ReminderKind.CHILL:
                until = now + timedelta(hours=self.chance.uniform(0.5, 40))
                self.pantry.reminders.snooze(row.id, until)
                if row.id in self.own_due:
                    self.own_due[row.id].append(until)
            elif chance < 0.25 and row.kind is not ReminderKind.CHILL:
                self.pantry.reminders.done(row.id)

    def live_through(self) -> None:
        while self.clock.now() < ENDS:
            self.look()
            self.do_something()
            self.pass_time()
        # Let the last of it come due in the morning, so that the books can be closed.
        self.clock.advance(days=14)
        local = self.clock.now().astimezone(self.clock.zone())
        noon = datetime.combine(local.date() + timedelta(days=1), time(12), tzinfo=local.tzinfo)
        self.clock.set_now(noon)
        self.look()
        self.look()


@pytest.fixture(autouse=True)
def _no_waiting_for_the_disk() -> Iterator[None]:
    """Nothing here cuts the power, and five thousand waits are most of the time."""

    def hurry(connection, _record) -> None:
        connection.execute("PRAGMA synchronous=OFF")

    event.listen(Engine, "connect", hurry)
    yield
    event.remove(Engine, "connect", hurry)


@pytest.mark.parametrize(("zone_name", "seed"), [("Europe/London", 5), ("Australia/Lord_Howe", 6)])
def test_every_due_instant_of_a_year_is_shown_once_and_none_is_lost(
    tmp_path, qapp, zone_name, seed
):
    zone = ZoneInfo(zone_name)
    year = Year(tmp_path / "pantry.brewdesk", zone, seed)
    year.live_through()
    with year.pantry.store.read() as unit:
        everything = unit.reminders.where()
    year.pantry.close()

    assert year.starts == []
    assert year.restarts > 10
    assert year.naps > 20
    offsets = {(BEGINS + timedelta(days=n)).astimezone(zone).utcoffset() for n in range(365)}
    assert len(offsets) == 2, "the clocks were to change"

    assert year.early == []
    assert year.late == []
    kind_of = {row.id: row.kind.value for row in everything}
    twice = [(kind_of[key[0]], key[1]) for key, count in year.shown.items() if count != 1]
    assert twice == [], "something was shown twice"

    # What the maker wrote: each instant, and each end of a snooze, once; nothing else.
    own_shown = {key for key in year.shown if key[0] in year.own_due}
    assert own_shown == {(row_id, at) for row_id, dues in year.own_due.items() for at in dues}
    assert len(own_shown) > 2 * BATCHES

    never = [
        row
        for row in everything
        if row.state is ReminderState.WAITING and row.due_at <= year.clock.now()
    ]
    assert never == []
    kinds = {row.kind for row in everything if row.shown_at is not None}
    assert kinds >= {
        ReminderKind.TASTE,
        ReminderKind.PH_CHECK,
        ReminderKind.MOLD_LOOK,
        ReminderKind.PRESSURE_CHECK,
        ReminderKind.CHILL,
    }
    check_the_loud_ones(year)


def check_the_loud_ones(year: Year) -> None:
    """Hold the rule of dangers: at least once, and no oftener than its step repeats."""
    by_id: dict[int, list[tuple[Reminder, datetime]]] = {}
    for row, at in year.loud:
        by_id.setdefault(row.id, []).append((row, at))
    assert len(by_id) > 10
    asked = {row.bottling_id for row, _ in year.loud}
    assert asked == set(year.pantry.bottlings), "every bottling was warned of"
    for told in by_id.values():
        for (_, before), (row, at) in pairwise(told):
            has_grown = step_of(row, at) > step_of(row, before)
            assert at - before >= timedelta(hours=1) or has_grown
            near = row.window_end - PRESSING_BEFORE - timedelta(days=1)
            assert at >= near, "a danger far away is told once"
