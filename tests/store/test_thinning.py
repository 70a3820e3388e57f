"""Old backups thin out with age and never run out."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from hypothesis import given
from hypothesis import strategies as st

from brewdesk.store.thinning import kept

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)  # a Wednesday
AGES_H = st.lists(st.integers(-100, 24 * 800), max_size=60)


def days_ago(days, hour=12):
    return (NOW - timedelta(days=days)).replace(hour=hour)


def test_all_of_the_last_two_days_stay():
    made_at = [NOW - timedelta(hours=hours) for hours in range(48)]

    assert kept(made_at, NOW) == set(made_at)


def test_before_that_the_newest_of_a_day_stays():
    made_at = [days_ago(day, hour) for day in range(3, 10) for hour in (8, 20)]

    stay = kept(made_at, NOW)

    assert {days_ago(day, 20) for day in range(3, 10)} <= stay
    assert len(stay) == 7


def test_a_year_of_daily_backups_thins_to_days_weeks_and_months():
    made_at = [days_ago(day) for day in range(400)]

    stay = kept(made_at, NOW)

    days = {days_ago(day) for day in range(14)}
    # The newest of each week is a Sunday; today's week counts with its Wednesday.
    weeks = {NOW, *(datetime(2026, 11, 22, 12, tzinfo=UTC) - timedelta(weeks=n) for n in range(7))}
    # 25 November counts for its month, then the last day of each of the eleven before.
    months = {
        NOW,
        *(
            datetime(2026, month + 1, 1, 12, tzinfo=UTC) - timedelta(days=1)
            for month in range(1, 11)
        ),
        datetime(2025, 12, 31, 12, tzinfo=UTC),
    }
    assert stay == days | weeks | months


def test_after_years_away_the_last_ones_are_still_there():
    made_at = [days_ago(day) for day in range(2000, 2010)]

    assert max(made_at) in kept(made_at, NOW)


@given(ages_h=AGES_H)
def test_the_newest_and_the_young_always_stay_and_nothing_is_invented(ages_h):
    made_at = [NOW - timedelta(hours=age) for age in ages_h]

    stay = kept(made_at, NOW)

    assert stay <= set(made_at)
    assert {at for at in made_at if at > NOW - timedelta(days=2)} <= stay
    assert not made_at or max(made_at) in stay


@given(ages_h=AGES_H)
def test_thinning_twice_is_thinning_once(ages_h):
    once = kept([NOW - timedelta(hours=age) for age in ages_h], NOW)

    assert kept(sorted(once), NOW) == once
