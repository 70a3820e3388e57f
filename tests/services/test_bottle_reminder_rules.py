"""Which reminders a bottling wants, as its forecast moves and its bottles are looked after."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.bottle_reminder_rules import (
    BottlingFacts,
    chill_due_at,
    merge_of_bottling,
    wanted_of_bottling,
)
from brewdesk.services.escalation import (
    DANGER_AGAIN,
    PRESSING_BEFORE,
    Step,
    is_to_be_repeated,
    latest_snooze,
    step_of,
)
from brewdesk.store.records import Reminder
from culturecore.stages import BottlingState, ReminderKind, ReminderState

FILLED = datetime(2026, 11, 25, 16, 0, tzinfo=UTC)
DANGER = FILLED + timedelta(days=5, hours=4)  # 30 Nov 20:00
NINE = time(9)
FACTS = BottlingFacts(
    bottling_id=4,
    state=BottlingState.CONDITIONING,
    filled_at=FILLED,
    chill_by_low_at=DANGER,
    chill_by_at=DANGER + timedelta(days=3),
    name="Ginger",
)
ZONES = ("UTC", "Europe/London", "Australia/Lord_Howe", "Asia/Kolkata", "America/New_York")


def settle(facts, kept=(), *, now=FILLED, zone=UTC) -> list[Reminder]:
    """Write a merge as the service would, onto a list."""
    asked = wanted_of_bottling(facts, kept, now=now, zone=zone, hour=NINE)
    result = merge_of_bottling(facts, kept, asked)
    rows = [replace(row, **result.change.get(row.id, {})) for row in kept]
    first = max((row.id for row in rows), default=0) + 1
    added = [
        Reminder(
            id=first + number,
            **{name: getattr(draft, name) for name in draft.__dataclass_fields__},
        )
        for number, draft in enumerate(result.add)
    ]
    return rows + added


def open_rows(rows, kind) -> list[Reminder]:
    gone = (ReminderState.DROPPED, ReminderState.DONE)
    return [row for row in rows if row.kind is kind and row.state not in gone]


def chill(rows) -> Reminder:
    return next(row for row in rows if row.kind is ReminderKind.CHILL)


def days_asked(facts, now) -> list[str]:
    found = wanted_of_bottling(facts, now=now, zone=UTC, hour=NINE)
    return [one.occurrence for one in found if one.kind is ReminderKind.PRESSURE_CHECK]


def test_chilling_is_told_at_the_makers_hour_in_good_time_before_the_earliest_danger():
    row = chill(settle(FACTS))
    assert row.window_end == DANGER
    assert row.due_at == datetime(2026, 11, 29, 9, tzinfo=UTC)  # on the 30th 11 h would be left
    assert DANGER - row.due_at >= PRESSING_BEFORE
    assert row.bottling_id == 4
    assert row.batch_id is None


@given(
    filled_at=st.datetimes(datetime(2026, 1, 1), datetime(2027, 12, 1), timezones=st.just(UTC)),
    ahead=st.timedeltas(timedelta(0), timedelta(days=60)),
    hour=st.times(),
    zone_name=st.sampled_from(ZONES),
)
def test_the_notice_leaves_twelve_hours_and_at_most_a_day_more_or_comes_with_the_filling(
    filled_at, ahead, hour, zone_name
):
    danger_at, zone = filled_at + ahead, ZoneInfo(zone_name)
    due_at = chill_due_at(filled_at, danger_at, zone, hour.replace(fold=0))
    assert due_at >= filled_at
    if due_at > filled_at:
        assert timedelta(hours=12) <= danger_at - due_at <= timedelta(hours=12 + 26)
    else:
        assert danger_at - filled_at <= timedelta(hours=12 + 26)


def test_the_notice_follows_the_forecast_both_ways():
    rows = settle(FACTS)
    warmer = settle(replace(FACTS, chill_by_low_at=DANGER - timedelta(days=2)), rows)
    assert chill(warmer).due_at == chill(rows).due_at - timedelta(days=2)
    assert chill(warmer).window_end == DANGER - timedelta(days=2)
    cooler = settle(replace(FACTS, chill_by_low_at=DANGER + timedelta(days=3)), warmer)
    assert chill(cooler).due_at == chill(rows).due_at + timedelta(days=3)
    assert chill(cooler).revision == 2


def test_a_danger_that_moves_off_by_an_hour_is_kept_and_one_that_comes_nearer_never():
    rows = settle(FACTS)
    later = settle(replace(FACTS, chill_by_low_at=DANGER + timedelta(minutes=100)), rows)
    assert later == rows
    nearer = settle(replace(FACTS, chill_by_low_at=DANGER - timedelta(minutes=10)), rows)
    assert chill(nearer).window_end == DANGER - timedelta(hours=1)


def test_a_shown_notice_stays_shown_when_the_forecast_moves_by_hours():
    (row,) = [chill(settle(FACTS))]
    shown = replace(row, state=ReminderState.SHOWN, shown_at=row.due_at)
    for hours in (-6, 6, 20):
        facts = replace(FACTS, chill_by_low_at=DANGER + timedelta(hours=hours))
        moved = chill(settle(facts, [shown]))
        assert moved.state is ReminderState.SHOWN
        assert moved.window_end == DANGER + timedelta(hours=hours)
    far_off = chill(settle(replace(FACTS, chill_by_low_at=DANGER + timedelta(days=2)), [shown]))
    assert far_off.state is ReminderState.WAITING


def test_without_a_forecast_after_a_restart_the_kept_notice_stays():
    rows = settle(FACTS)
    unknown = replace(FACTS, chill_by_low_at=None, chill_by_at=None)
    assert open_rows(settle(unknown, rows), ReminderKind.CHILL) == [chill(rows)]


def test_bottles_said_to_be_urgent_are_in_danger_at_once():
    looked_at = FILLED + timedelta(days=2)
    facts = replace(FACTS, is_urgent=True, last_check_at=looked_at)
    row = chill(settle(facts, now=looked_at))
    assert row.due_at <= looked_at
    assert step_of(row, looked_at) is Step.DANGER


def test_chilled_bottles_want_no_chilling_and_undoing_it_asks_again():
    rows = settle(FACTS)
    chilled = settle(replace(FACTS, state=BottlingState.CHILLED), rows)
    assert open_rows(chilled, ReminderKind.CHILL) == []
    assert open_rows(chilled, ReminderKind.PRESSURE_CHECK) == []
    assert len(open_rows(chilled, ReminderKind.OPEN_TEST)) == 1
    assert settle(FACTS, chilled) == rows


@pytest.mark.parametrize("state", [BottlingState.FINISHED, BottlingState.DISCARDED])
def test_a_bottling_that_has_ended_wants_nothing(state):
    rows = settle(replace(FACTS, best_before=FILLED + timedelta(days=30)))
    ended = settle(replace(FACTS, state=state), rows)
    assert {row.state for row in ended} == {ReminderState.DROPPED}


def test_ticked_off_but_still_warm_is_asked_once_more_with_the_danger():
    rows = settle(FACTS)
    done_at = DANGER - timedelta(days=1)
    ticked = [
        replace(row, state=ReminderState.DONE, done_at=done_at)
        if row.kind is ReminderKind.CHILL
        else row
        for row in rows
    ]
    (again,) = open_rows(settle(FACTS, ticked), ReminderKind.CHILL)
    assert again.due_at == DANGER
    assert settle(FACTS, settle(FACTS, ticked)) == settle(FACTS, ticked)


def test_the_test_bottle_is_to_be_pressed_every_day_from_the_first():
    nine = datetime(2026, 11, 26, 9, tzinfo=UTC)
    assert days_asked(FACTS, FILLED) == ["day1"]
    assert days_asked(FACTS, nine) == ["day1", "day2"]
    assert days_asked(FACTS, nine + timedelta(days=3)) == ["day4", "day5"]


def test_a_check_of_the_day_settles_it_even_before_the_hour():
    nine = datetime(2026, 11, 29, 9, tzinfo=UTC)
    early = replace(FACTS, last_check_at=nine - timedelta(hours=2))
    assert days_asked(early, nine - timedelta(hours=1)) == ["day5"]
    assert days_asked(early, nine) == ["day5"]
    yesterday = replace(FACTS, last_check_at=nine - timedelta(days=1))
    assert days_asked(yesterday, nine) == ["day4", "day5"]


@given(
    ago=st.timedeltas(timedelta(0), timedelta(days=200)),
    checked=st.none() | st.floats(0, 1),
    zone_name=st.sampled_from(ZONES),
)
def test_one_check_is_to_come_within_two_days_and_at_most_one_is_due(ago, checked, zone_name):
    now = FILLED + ago
    last = None if checked is None else FILLED + ago * checked
    facts = replace(FACTS, last_check_at=last)
    found = wanted_of_bottling(facts, now=now, zone=ZoneInfo(zone_name), hour=NINE)
    dues = [one.due_at for one in found if one.kind is ReminderKind.PRESSURE_CHECK]
    assert sum(due > now for due in dues) == 1
    assert sum(due <= now for due in dues) <= 1
    assert max(dues) - now <= timedelta(days=2)


def test_a_bottle_is_opened_half_way_and_not_when_chilling_comes_first():
    (row,) = open_rows(settle(FACTS), ReminderKind.OPEN_TEST)
    assert row.due_at == datetime(2026, 11, 28, 9, tzinfo=UTC)
    quick = replace(FACTS, chill_by_low_at=FILLED + timedelta(days=2))
    assert open_rows(settle(quick), ReminderKind.OPEN_TEST) == []
    opened = replace(FACTS, opened_at=FILLED + timedelta(days=2))
    assert open_rows(settle(opened), ReminderKind.OPEN_TEST) == []


def test_drinking_up_is_told_three_days_before_the_date():
    best = datetime(2026, 12, 24, 12, tzinfo=UTC)
    facts = replace(FACTS, state=BottlingState.CHILLED, best_before=best)
    (row,) = open_rows(settle(facts), ReminderKind.BEST_BEFORE)
    assert (row.due_at, row.window_end) == (datetime(2026, 12, 21, 9, tzinfo=UTC), best)


@given(
    hours=st.floats(0, 24 * 20),
    danger=st.none() | st.floats(0, 24 * 30),
    is_urgent=st.booleans(),
    state=st.sampled_from(BottlingState),
    states=st.lists(st.sampled_from(ReminderState), min_size=8, max_size=8),
    zone_name=st.sampled_from(ZONES),
)
def test_merging_twice_changes_nothing_the_second_time(
    hours, danger, is_urgent, state, states, zone_name
):
    zone, now = ZoneInfo(zone_name), FILLED + timedelta(hours=hours)
    done = {"done_at": FILLED}
    kept = [
        replace(row, state=one, **(done if one is ReminderState.DONE else {}))
        for row, one in zip(settle(FACTS, zone=zone), states, strict=False)
    ]
    low = None if danger is None else FILLED + timedelta(hours=danger)
    facts = replace(FACTS, chill_by_low_at=low, is_urgent=is_urgent, state=state)
    once = settle(facts, kept, now=now, zone=zone)
    assert settle(facts, once, now=now, zone=zone) == once


# rising urgency


def shown(at: datetime) -> Reminder:
    row = chill(settle(FACTS))
    return replace(row, state=ReminderState.SHOWN, shown_at=at)


@pytest.mark.parametrize(
    ("before", "step"),
    [
        (timedelta(hours=13), Step.CALM),
        (timedelta(hours=12), Step.PRESSING),
        (timedelta(minutes=1), Step.PRESSING),
        (timedelta(0), Step.DANGER),
        (timedelta(days=-9), Step.DANGER),
    ],
)
def test_it_grows_louder_as_the_danger_comes_nearer(before, step):
    assert step_of(chill(settle(FACTS)), DANGER - before) is step


def test_only_bottles_grow_louder():
    for kind in ReminderKind:
        row = replace(shown(FILLED), kind=kind)
        is_loud = step_of(row, DANGER + timedelta(days=1)) is not Step.CALM
        assert is_loud is (kind is ReminderKind.CHILL)


def test_a_shown_one_is_repeated_when_it_grows_louder_and_then_by_its_rhythm():
    calm = shown(DANGER - timedelta(hours=35))
    assert not is_to_be_repeated(calm, DANGER - timedelta(hours=12, minutes=1))
    assert is_to_be_repeated(calm, DANGER - timedelta(hours=12))
    pressing = shown(DANGER - timedelta(hours=12))
    assert not is_to_be_repeated(pressing, DANGER - timedelta(hours=9, minutes=1))
    assert is_to_be_repeated(pressing, DANGER - timedelta(hours=9))
    danger = shown(DANGER)
    assert not is_to_be_repeated(danger, DANGER + timedelta(minutes=59))
    assert is_to_be_repeated(danger, DANGER + DANGER_AGAIN)


def test_a_showing_by_a_clock_that_ran_ahead_does_not_silence_the_danger():
    assert is_to_be_repeated(shown(DANGER + timedelta(days=300)), DANGER + timedelta(hours=1))


def test_a_snooze_ends_with_the_danger_and_in_danger_with_the_next_repeat():
    row = shown(DANGER - timedelta(days=1))
    tomorrow = DANGER + timedelta(hours=13)
    assert latest_snooze(row, tomorrow, DANGER - timedelta(hours=11)) == DANGER
    in_danger = DANGER + timedelta(minutes=5)
    assert latest_snooze(row, tomorrow, in_danger) == in_danger + DANGER_AGAIN
    short = DANGER - timedelta(hours=10)
    assert latest_snooze(row, short, DANGER - timedelta(hours=11)) == short


def test_a_snooze_is_cut_when_the_danger_comes_nearer_meanwhile():
    row = replace(
        chill(settle(FACTS)),
        state=ReminderState.SNOOZED,
        snoozed_until=DANGER - timedelta(hours=1),
    )
    facts = replace(FACTS, chill_by_low_at=DANGER - timedelta(hours=20))
    assert chill(settle(facts, [row])).snoozed_until == DANGER - timedelta(hours=20)
