"""A month with the window open leaves nothing behind: no memory, window, thread, file, listener.

The month is lived in a process of its own, see `tests.helpers.month`. What is compared is the
last week with the week after the warm-up: the pantry goes through the same in each week.
"""

from __future__ import annotations

import faulthandler
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.helpers.month import DIALOGS, growth_share

ROOT = Path(__file__).resolve().parents[2]
DAYS, WARM_UP, WEEK = 28, 9, 7
MOST_GROWTH = 0.02
PATIENCE_S = 1500


@pytest.fixture(scope="module")
def month(tmp_path_factory):
    # A month may take longer than a test is watched for; the process has a limit of its own.
    faulthandler.cancel_dump_traceback_later()
    folder = tmp_path_factory.mktemp("month")
    done = subprocess.run(
        [sys.executable, "-m", "tests.helpers.month", str(DAYS)],
        cwd=ROOT,
        env={
            **os.environ,
            "PYTHONPATH": os.pathsep.join((str(ROOT), str(ROOT / "shared"))),
            "QT_QPA_PLATFORM": "offscreen",
            "TMPDIR": str(folder),
        },
        capture_output=True,
        text=True,
        timeout=PATIENCE_S,
        check=False,
    )
    assert done.returncode == 0, done.stderr[-4000:]
    return json.loads(done.stdout)


@pytest.fixture(scope="module")
def weeks(month):
    days = month["days"]
    return days[WARM_UP : WARM_UP + WEEK], days[-WEEK:]


def most(days, key: str) -> int:
    return max(day[key] for day in days)


def test_the_month_was_lived_without_an_error_and_every_dialog_was_seen(month):
    assert len(month["days"]) == DAYS
    assert month["errors"] == []
    assert [key for key in DIALOGS if month["dialogs"].get(key, 0) < 5] == []
    assert month["readings"] > 10
    assert month["bottlings"] >= 4


def test_memory_grows_by_less_than_two_percent(month, record_property):
    memory_kb = [day["rss_anon_kb"] for day in month["days"][WARM_UP:]]
    record_property("growth_percent", round(100 * growth_share(memory_kb), 2))
    assert growth_share(memory_kb) < MOST_GROWTH, memory_kb


@pytest.mark.parametrize(
    "key",
    ["threads", "file_descriptors", "connections_of_services", "connections_of_windows"],
)
def test_what_is_held_open_is_no_more_than_after_the_first_week(weeks, key):
    first, last = weeks
    assert most(last, key) <= most(first, key)


@pytest.mark.parametrize("key", ["top_level_widgets", "widgets", "qobjects", "system_threads"])
def test_nothing_is_added_day_by_day(weeks, key):
    """A card or two more stand there some days; what is left each day would be fourteen more."""
    first, last = weeks
    limit = {"top_level_widgets": 4, "widgets": 60, "qobjects": 120, "system_threads": 2}
    assert most(last, key) - most(first, key) <= limit[key]


def test_no_dialog_is_held_after_it_was_closed(month):
    last = month["days"][-1]
    for names in (last["kinds"], last["qt_kinds"]):
        assert {name for name in names if name.endswith("Dialog")} == set()


def test_no_kind_of_the_programs_own_objects_grows(weeks):
    """Objects that Python keeps, also those that Qt has deleted already."""
    first, last = weeks
    names = {name for day in last for name in day["kinds"]}
    grown = {
        name: (max(day["kinds"].get(name, 0) for day in first),
               max(day["kinds"].get(name, 0) for day in last))
        for name in names
    }  # fmt: skip
    assert {name: pair for name, pair in grown.items() if pair[1] > pair[0] + 3} == {}


def test_an_untouched_window_has_no_timer_that_beats_often_or_sharply(month):
    for day in month["days"]:
        assert day["fast_timers"] == []
        assert day["sharp_timers"] == []


def test_the_slope_is_that_of_most_pairs_and_not_of_a_spike():
    assert growth_share([100, 100, 100, 400, 100, 100, 100]) == 0
    assert growth_share([100, 101, 102, 103, 104]) == pytest.approx(4 / 102)
