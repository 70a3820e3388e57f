"""Which reminders a batch wants, through zones, readings, forecasts and undone acts."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.services.reminder_rules import (
    BatchFacts,
    LookTaken,
    PhReading,
    QuietHours,
    TastingWindow,
    is_sour_enough,
    merge,
    read_span,
    span_text,
    wall_instant,
    wanted,
)
from brewdesk.store.records import Reminder, ReminderDraft
from culturecore.stages import BatchStage, Look, ReminderKind, ReminderState

START = datetime(2026, 11, 25, 18, 30, tzinfo=UTC)
# A half hour of summer time, a negative one, one that pauses for a month, none at all.
ZONES = (
    *("UTC", "Europe/London", "America/New_York", "Australia/Lord_Howe"),
    *("Europe/Dublin", "Africa/Casablanca", "Asia/Kolkata", "Pacific/Chatham"),
)
FACTS = BatchFacts(batch_id=3, stage=BatchStage.SOURING, started_at=START)
INSTANTS = st.datetimes(
    min_value=datetime(2026, 1, 1), max_value=datetime(2027, 12, 31), timezones=st.just(UTC)
)


def window(opens_in_days: float, **other: float) -> TastingWindow:
    days = {"opens_at": opens_in_days, "closes_at": opens_in_days + 4, **other}
    return TastingWindow(**{name: START + timedelta(days=value) for name, value in days.items()})


def dues(facts=FACTS, *, now=START, zone=UTC) -> dict[tuple[ReminderKind, str], datetime]:
    return {(one.kind, one.occurrence): one.due_at for one in wanted(facts, now=now, zone=zone)}


def stored(draft: ReminderDraft, number: int = 1, **fields) -> Reminder:
    values = {name: getattr(draft, name) for name in draft.__dataclass_fields__}
    return Reminder(id=number, **{**values, **fields})


def settle(facts: BatchFacts, kept: list[Reminder], *, now=START, zone=UTC) -> list[Reminder]:
    """Write a merge as the service would, onto a list."""
    result = merge(facts, kept, wanted(facts, now=now, zone=zone))
    rows = [replace(row, **result.change.get(row.id, {})) for row in kept]
    first = max((row.id for row in rows), default=0) + 1
    return rows + [stored(draft, first + i) for i, draft in enumerate(result.add)]


def only(rows: list[Reminder], kind: ReminderKind) -> Reminder:
    (row,) = [row for row in rows if row.kind is kind]
    return row


def test_the_ph_is_to_be_checked_on_days_five_and_seven_at_nine():
    found = dues(zone=ZoneInfo("America/New_York"))
    assert found[ReminderKind.PH_CHECK, "day5"] == datetime(2026, 11, 30, 14, 0, tzinfo=UTC)
    assert found[ReminderKind.PH_CHECK, "day7"] == datetime(2026, 12, 2, 14, 0, tzinfo=UTC)


@given(started_at=INSTANTS, zone_name=st.sampled_from(ZONES))
def test_the_last_ph_check_comes_before_seven_full_days_are_over_if_started_after_nine(
    started_at, zone_name
):
    zone = ZoneInfo(zone_name)
    facts = replace(FACTS, started_at=started_at)
    last = dues(facts, now=started_at, zone=zone)[ReminderKind.PH_CHECK, "day7"]
    local_start = started_at.astimezone(zone)
    days_later = last.astimezone(zone).date() - local_start.date()
    assert days_later == timedelta(days=7)
    # An hour of slack: the seven days may hold a change to summer time.
    if local_start.time() >= time(10, 0):
        assert last - started_at <= timedelta(days=7)


@pytest.mark.parametrize(
    ("ph", "sd", "is_enough"),
    [
        (4.15, 0.05, True),
        (4.19, 0.05, False),
        (3.9, 0.3, True),
        (4.0, 0.3, False),
        (3.0, None, False),
    ],
)
def test_a_ph_settles_the_check_only_with_its_doubt_included(ph, sd, is_enough):
    facts = replace(FACTS, ph_readings=(PhReading(START + timedelta(days=4), ph, sd),))
    assert is_sour_enough(facts) is is_enough
    asks = any(kind is ReminderKind.PH_CHECK for kind, _ in dues(facts))
    assert asks is not is_enough


def ph_checks(*readings: tuple[float, float], on_day: float) -> list[str]:
    """Name the pH checks wanted on a day, after readings (day, pH) that settle nothing."""
    facts = replace(
        FACTS,
        ph_readings=tuple(PhReading(START + timedelta(days=day), ph, 0.05) for day, ph in readings),
    )
    found = dues(facts, now=START + timedelta(days=on_day))
    return [name for kind, name in found if kind is ReminderKind.PH_CHECK]


def test_a_check_is_answered_by_a_reading_of_its_day_even_if_it_is_not_sour_yet():
    assert ph_checks((4.2, 4.6), on_day=5) == ["day5", "day7"]
    assert ph_checks((4.9, 4.6), (5.1, 4.5), on_day=5.2) == ["day7"]
    assert ph_checks((6.0, 4.5), on_day=6.1) == ["day7"]
    assert ph_checks((7.0, 4.4), on_day=7.1) == []


def test_only_the_newest_check_that_is_due_is_asked_for():
    assert ph_checks(on_day=6) == ["day5", "day7"]
    assert ph_checks(on_day=7) == ["day7"]
    assert ph_checks(on_day=20) == ["day7"]


def test_a_ph_from_before_the_start_settles_nothing():
    facts = replace(FACTS, ph_readings=(PhReading(START - timedelta(hours=1), 3.0, 0.05),))
    assert not is_sour_enough(facts)


@pytest.mark.parametrize(
    ("day", "expected"),
    [
        (0, ["day3"]),
        (2.9, ["day3", "day7"]),
        (6, ["day3", "day7"]),
        (9, ["day7", "day11"]),
        (40, ["day39", "day43"]),
    ],
)
def test_one_mold_look_is_due_and_one_to_come_however_long_nobody_looked(day, expected):
    found = dues(now=START + timedelta(days=day))
    assert [name for kind, name in found if kind is ReminderKind.MOLD_LOOK] == expected


@given(
    ago=st.timedeltas(min_value=timedelta(0), max_value=timedelta(days=90)),
    zone_name=st.sampled_from(ZONES),
)
def test_the_next_mold_look_is_never_more_than_four_days_away(ago, zone_name):
    now = START + ago
    found = dues(now=now, zone=ZoneInfo(zone_name))
    looks = [due for (kind, _), due in found.items() if kind is ReminderKind.MOLD_LOOK]
    assert sum(due > now for due in looks) == 1
    assert sum(due <= now for due in looks) == (1 if len(looks) == 2 else 0)
    assert max(looks) - now <= timedelta(days=4, hours=1)


@pytest.mark.parametrize(
    "stage", [stage for stage in BatchStage if stage is not BatchStage.SOURING]
)
def test_a_batch_that_is_not_souring_wants_nothing(stage):
    assert wanted(replace(FACTS, stage=stage, window=window(8)), now=START, zone=UTC) == ()


def test_tasting_is_due_at_nine_on_the_day_of_the_median_opening():
    facts = replace(FACTS, window=window(8, opens_earliest=6.0, opens_latest=10.0))
    (taste,) = [one for one in wanted(facts, now=START, zone=UTC) if one.kind is ReminderKind.TASTE]
    assert taste.due_at == datetime(2026, 12, 3, 9, 0, tzinfo=UTC)
    assert taste.window_end == datetime(2026, 12, 7, 18, 0, tzinfo=UTC)
    assert read_span(taste.text) == (
        datetime(2026, 12, 1, 18, 0, tzinfo=UTC),
        datetime(2026, 12, 5, 18, 0, tzinfo=UTC),
    )


def test_a_window_beyond_the_horizon_asks_for_no_tasting():
    found = dues(replace(FACTS, window=TastingWindow()))
    assert not any(kind is ReminderKind.TASTE for kind, _ in found)


def test_the_makers_hour_is_kept_through_a_change_to_summer_time():
    zone = ZoneInfo("Europe/London")
    before = wall_instant(date(2026, 3, 28), time(9), zone)
    after = wall_instant(date(2026, 3, 29), time(9), zone)
    assert after - before == timedelta(hours=23)


def test_an_hour_that_is_left_out_moves_on_and_one_that_repeats_means_the_first():
    zone = ZoneInfo("Europe/London")
    left_out = wall_instant(date(2026, 3, 29), time(1, 30), zone)
    assert left_out.astimezone(zone).time() == time(2, 30)
    repeated = wall_instant(date(2026, 10, 25), time(1, 30), zone)
    assert repeated == datetime(2026, 10, 25, 0, 30, tzinfo=UTC)


@given(
    day=st.dates(date(2026, 1, 1), date(2028, 12, 31)),
    at=st.times(),
    zone_name=st.sampled_from(ZONES),
)
def test_a_wall_time_is_shown_by_the_wall_clock_at_its_instant_or_within_the_gap(
    day, at, zone_name
):
    zone = ZoneInfo(zone_name)
    shown = wall_instant(day, at, zone).astimezone(zone).replace(tzinfo=None)
    late = shown - datetime.combine(day, at.replace(fold=0))
    assert timedelta(0) <= late <= timedelta(hours=1)


@given(
    now=INSTANTS,
    opens=st.floats(0, 40),
    stage=st.sampled_from(BatchStage),
    zone_name=st.sampled_from(ZONES),
    states=st.lists(st.sampled_from(ReminderState), min_size=6, max_size=6),
)
def test_merging_twice_changes_nothing_the_second_time(now, opens, stage, zone_name, states):
    zone = ZoneInfo(zone_name)
    fresh = settle(replace(FACTS, window=window(3)), [], now=START, zone=zone)
    kept = [replace(row, state=state) for row, state in zip(fresh, states, strict=False)]
    facts = replace(FACTS, stage=stage, window=window(opens))
    once = settle(facts, kept, now=now, zone=zone)
    assert settle(facts, once, now=now, zone=zone) == once
    keys = [(row.kind, row.occurrence) for row in once]
    assert len(keys) == len(set(keys))


def test_a_waiting_reminder_moves_with_the_forecast():
    rows = settle(replace(FACTS, window=window(8)), [])
    moved = settle(replace(FACTS, window=window(5)), rows)
    taste = only(moved, ReminderKind.TASTE)
    assert taste.due_at == datetime(2026, 11, 30, 9, 0, tzinfo=UTC)
    assert taste.state is ReminderState.WAITING


@pytest.mark.parametrize(
    ("new_day", "state"),
    [(7.9, ReminderState.SHOWN), (2.0, ReminderState.SHOWN), (8.9, ReminderState.WAITING)],
)
def test_a_shown_reminder_returns_only_if_it_moves_a_day_or_more_ahead(new_day, state):
    first = only(settle(replace(FACTS, window=window(7.9)), []), ReminderKind.TASTE)
    shown = replace(first, state=ReminderState.SHOWN, shown_at=first.due_at)
    facts = replace(FACTS, window=window(new_day))
    taste = only(settle(facts, [shown]), ReminderKind.TASTE)
    assert taste.state is state


def test_a_forecast_that_wanders_over_midnight_and_back_shows_nothing_twice():
    first = only(settle(replace(FACTS, window=window(7.9)), []), ReminderKind.TASTE)
    shown = replace(first, state=ReminderState.SHOWN, shown_at=first.due_at + timedelta(hours=1))
    later = settle(replace(FACTS, window=window(8.9)), [shown])
    assert only(later, ReminderKind.TASTE).state is ReminderState.WAITING
    back = settle(replace(FACTS, window=window(7.9)), later)
    assert only(back, ReminderKind.TASTE).state is ReminderState.SHOWN
    gone = settle(replace(FACTS, window=TastingWindow()), later)
    again = settle(replace(FACTS, window=window(8.9)), gone)
    assert only(again, ReminderKind.TASTE).state is ReminderState.WAITING


def test_a_shown_reminder_does_not_return_because_of_a_journey():
    first = only(settle(replace(FACTS, window=window(8)), []), ReminderKind.TASTE)
    shown = replace(first, state=ReminderState.SHOWN, shown_at=first.due_at)
    facts = replace(FACTS, window=window(8))
    away = settle(facts, [shown], zone=ZoneInfo("America/New_York"))
    assert only(away, ReminderKind.TASTE) == shown


def test_what_is_done_stays_done_when_the_forecast_moves():
    first = only(settle(replace(FACTS, window=window(8)), []), ReminderKind.TASTE)
    done = replace(first, state=ReminderState.DONE, done_at=START)
    assert only(settle(replace(FACTS, window=window(20)), [done]), ReminderKind.TASTE) == done


def test_a_snooze_outlives_a_moved_forecast():
    first = only(settle(replace(FACTS, window=window(8)), []), ReminderKind.TASTE)
    until = START + timedelta(days=9)
    snoozed = replace(first, state=ReminderState.SNOOZED, snoozed_until=until)
    taste = only(settle(replace(FACTS, window=window(12)), [snoozed]), ReminderKind.TASTE)
    assert (taste.state, taste.snoozed_until) == (ReminderState.SNOOZED, until)
    assert taste.window_end == datetime(2026, 12, 11, 18, 0, tzinfo=UTC)


@pytest.mark.parametrize("stage", [BatchStage.DRAWN_OFF, BatchStage.CLOSED, BatchStage.DISCARDED])
def test_the_end_of_a_batch_drops_what_is_open_and_undoing_it_brings_it_back_once(stage):
    own = stored(ReminderDraft(batch_id=3, kind=ReminderKind.OWN, occurrence="a", due_at=START), 90)
    rows = [*settle(replace(FACTS, window=window(8)), []), own]
    ended = settle(replace(FACTS, stage=stage), rows)
    assert {row.state for row in ended} == {ReminderState.DROPPED}
    assert settle(replace(FACTS, window=window(8)), ended) == rows


@pytest.mark.parametrize("stage", [BatchStage.DRAWN_OFF, BatchStage.CLOSED, BatchStage.DISCARDED])
def test_what_the_maker_wrote_for_a_time_after_the_end_stays(stage):
    ended_at = START + timedelta(days=8)
    before, after = (
        stored(
            ReminderDraft(batch_id=3, kind=ReminderKind.OWN, occurrence=name, due_at=due_at), number
        )
        for name, due_at, number in (
            ("stir", ended_at - timedelta(hours=1), 90),
            ("give the neighbour two bottles", ended_at + timedelta(days=2), 91),
        )
    )
    put_off = replace(
        before,
        id=92,
        occurrence="put off",
        state=ReminderState.SNOOZED,
        snoozed_until=ended_at + timedelta(hours=3),
    )
    facts = replace(FACTS, stage=stage, ended_at=ended_at)
    ended = {row.id: row for row in settle(facts, [before, after, put_off])}
    assert ended[90].state is ReminderState.DROPPED
    assert ended[91] == after
    assert ended[92] == put_off


def test_a_calendar_is_told_of_a_move_by_a_higher_revision_and_of_nothing_else():
    rows = settle(replace(FACTS, window=window(8)), [])
    assert {row.revision for row in rows} == {0}
    moved = settle(replace(FACTS, window=window(5)), rows)
    assert only(moved, ReminderKind.TASTE).revision == 1
    closes_later = settle(replace(FACTS, window=window(5, closes_at=11)), moved)
    assert only(closes_later, ReminderKind.TASTE).revision == 2
    wider = settle(
        replace(FACTS, window=window(5, closes_at=11, opens_earliest=4.0, opens_latest=7.0)),
        closes_later,
    )
    assert only(wider, ReminderKind.TASTE).revision == 3
    others = [row for row in wider if row.kind is not ReminderKind.TASTE]
    assert {row.revision for row in others} == {0}
    gone = settle(replace(FACTS, window=TastingWindow()), wider)
    assert only(gone, ReminderKind.TASTE).revision == 3


def test_a_reminder_that_was_seen_does_not_return_as_new_when_an_end_is_undone():
    first = only(settle(replace(FACTS, window=window(8)), []), ReminderKind.TASTE)
    shown = replace(first, state=ReminderState.SHOWN, shown_at=first.due_at)
    ended = settle(replace(FACTS, stage=BatchStage.DRAWN_OFF), [shown])
    back = only(settle(replace(FACTS, window=window(8)), ended), ReminderKind.TASTE)
    assert back == shown


def test_before_the_first_forecast_of_a_run_the_kept_tasting_stays():
    rows = settle(replace(FACTS, window=window(8)), [])
    assert settle(replace(FACTS, window=None), rows) == rows
    gone = settle(replace(FACTS, window=TastingWindow()), rows)
    assert only(gone, ReminderKind.TASTE).state is ReminderState.DROPPED


def test_a_sour_enough_reading_drops_the_ph_checks_and_removing_it_brings_them_back():
    rows = settle(FACTS, [])
    sour = replace(FACTS, ph_readings=(PhReading(START + timedelta(days=2), 3.6, 0.05),))
    dropped = settle(sour, rows)
    states = {row.state for row in dropped if row.kind is ReminderKind.PH_CHECK}
    assert states == {ReminderState.DROPPED}
    assert settle(FACTS, dropped) == rows


def test_a_journey_moves_reminders_of_a_day_but_not_the_makers_own():
    own = stored(ReminderDraft(batch_id=3, kind=ReminderKind.OWN, occurrence="a", due_at=START), 90)
    rows = [*settle(FACTS, []), own]
    away = settle(FACTS, rows, zone=ZoneInfo("America/New_York"))
    by_key = {(row.kind, row.occurrence): row.due_at for row in away}
    assert by_key[ReminderKind.PH_CHECK, "day5"] == datetime(2026, 11, 30, 14, tzinfo=UTC)
    assert by_key[ReminderKind.OWN, "a"] == START


def test_a_span_survives_being_written():
    earliest, latest = START, START + timedelta(days=2)
    assert read_span(span_text(earliest, latest)) == (earliest, latest)
    assert read_span(span_text(earliest, None)) == (earliest, None)
    for nonsense in ("", "taste it", "2026-12-01/2026-12-04", "/"):
        assert read_span(nonsense) is None


@given(now=INSTANTS, begins=st.times(), ends=st.times(), zone_name=st.sampled_from(ZONES))
def test_quiet_hours_and_their_complement_cover_the_day_once(now, begins, ends, zone_name):
    zone = ZoneInfo(zone_name)
    covered = QuietHours(begins, ends).covers(now, zone)
    if begins == ends:
        assert not covered
    else:
        assert covered is not QuietHours(ends, begins).covers(now, zone)


@pytest.mark.parametrize(
    ("clock", "is_quiet"),
    [("21:59", False), ("22:00", True), ("03:00", True), ("06:59", True), ("07:00", False)],
)
def test_quiet_hours_reach_over_midnight(clock, is_quiet):
    now = datetime.combine(date(2026, 11, 25), time.fromisoformat(clock), tzinfo=UTC)
    assert QuietHours(time(22), time(7)).covers(now, UTC) is is_quiet


def test_in_the_night_of_a_clock_change_quiet_hours_follow_the_wall():
    zone = ZoneInfo("Europe/London")
    quiet = QuietHours(time(22), time(7))
    for change_day in (date(2026, 3, 29), date(2026, 10, 25)):
        ends = wall_instant(change_day, time(7), zone)
        assert quiet.covers(ends - timedelta(seconds=1), zone)
        assert not quiet.covers(ends, zone)


# looks at the surface


def looked(look: Look, day: float) -> LookTaken:
    return LookTaken(START + timedelta(days=day), look)


def look_days(facts: BatchFacts, day: float) -> list[str]:
    found = dues(facts, now=START + timedelta(days=day))
    return [name for kind, name in found if kind is ReminderKind.MOLD_LOOK]


@pytest.mark.parametrize(
    ("looks", "day", "expected"),
    [
        ([], 3.1, ["day3", "day7"]),
        ([(Look.FINE, 3.0)], 3.1, ["day7"]),
        ([(Look.FINE, 5.0)], 5.1, ["day7"]),
        ([(Look.FINE, 2.0)], 3.1, ["day3", "day7"]),
        ([(Look.FINE, 3.0)], 7.1, ["day7", "day11"]),
        ([(Look.UNSURE, 3.0)], 3.1, ["day4", "day7"]),
        ([(Look.UNSURE, 3.0)], 6.0, ["day4", "day7"]),
        ([(Look.UNSURE, 6.0)], 6.1, ["day7"]),
        ([(Look.UNSURE, 3.0), (Look.FINE, 4.0)], 4.1, ["day7"]),
        ([(Look.FINE, 3.0), (Look.UNSURE, 3.1)], 3.15, ["day4", "day7"]),
        ([(Look.MOLD, 3.0)], 3.1, ["day3", "day7"]),
    ],
)
def test_a_look_answers_what_was_due_and_doubt_asks_for_another(looks, day, expected):
    facts = replace(FACTS, looks=tuple(looked(look, at) for look, at in looks))
    assert look_days(facts, day) == expected


def test_a_look_that_is_taken_back_brings_its_reminder_back():
    now = START + timedelta(days=3.1)
    rows = settle(FACTS, [], now=now)
    fine = replace(FACTS, looks=(looked(Look.FINE, 3.0),))
    rows = settle(fine, rows, now=now)
    states = {row.occurrence: row.state for row in rows if row.kind is ReminderKind.MOLD_LOOK}
    assert states == {"day3": ReminderState.DROPPED, "day7": ReminderState.WAITING}
    rows = settle(FACTS, rows, now=now)
    assert all(
        row.state is ReminderState.WAITING for row in rows if row.kind is ReminderKind.MOLD_LOOK
    )
