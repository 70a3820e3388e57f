"""Forecasts come in the background, hold as long as nothing changed, and say what they are."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services import forecastwork
from brewdesk.services.changes import Topic
from brewdesk.services.forecasts import Forecasts, TasteBand
from brewdesk.services.forecastwork import outcome_of
from brewdesk.services.jobs import Jobs
from brewdesk.services.reminder_rules import TastingWindow
from brewdesk.services.wording.forecasts import summary_words
from brewdesk.store.records import ReadingDraft
from culturecore.errors import ImpossibleInput
from culturecore.forecast import Forecast
from culturecore.outcome import Caveat, Estimate
from culturecore.stages import BatchStage, Method, Quantity, ReminderKind
from tests.helpers.fakes import FakeClock, InlineJobs
from tests.helpers.watched_pantry import WatchedPantry

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture(autouse=True)
def _plain_locale() -> Iterator[None]:
    before = QLocale()
    QLocale.setDefault(QLocale.c())
    yield
    QLocale.setDefault(before)


@pytest.fixture
def pantry(tmp_path, qapp) -> Iterator[WatchedPantry]:
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(NOON))
    yield made
    made.close()


@pytest.fixture
def jobs() -> InlineJobs:
    return InlineJobs()


@pytest.fixture
def forecasts(pantry, jobs) -> Forecasts:
    return Forecasts(pantry.door, jobs)


def add_reading(pantry, batch, quantity, value, *, sd=None, method=Method.METER, **ago):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=pantry.clock.now() - timedelta(**ago),
        quantity=quantity,
        method=method,
        value=value,
        sd=sd,
    )
    return pantry.door.quiet(lambda unit: unit.readings.add(draft))


def test_a_batch_that_has_not_begun_to_sour_has_no_curve(pantry, forecasts, jobs):
    batch = pantry.add_batch(stage=BatchStage.BREWING, started_at=None)
    forecasts.request(batch.id)
    assert forecasts.now(batch.id) is None
    assert forecasts.window_of(batch.id) is None
    assert jobs.keys == []


def test_points_are_shown_before_the_forecast_is_ready(pantry, jobs):
    jobs.hold = True
    forecasts = Forecasts(pantry.door, jobs)
    batch = pantry.add_batch(days_ago=4)
    pantry.add_ph(batch, 3.55)
    view = forecasts.now(batch.id)
    assert view.forecast is None
    assert [(point.day, point.value, point.sd) for point in view.points] == [(4.0, 3.55, 0.05)]
    assert view.text_summary == "The forecast is being worked out."
    assert view.points[0].text == "pH 3.55 ± 0.05 (meter), Wed 25 Nov at 12:00"
    jobs.release()
    assert forecasts.now(batch.id).forecast is not None


def test_a_ready_forecast_is_announced_to_the_views_and_to_the_reminders(pantry, forecasts, qtbot):
    changes = []
    pantry.changes.changed.connect(changes.append)
    with qtbot.waitSignal(forecasts.ready) as ready:
        batch = pantry.add_batch(days_ago=4)
    assert ready.args == [batch.id]
    told = [change for change in changes if change.topics == Topic.FORECASTS]
    assert [change.batch_ids for change in told] == [frozenset({batch.id})]


def test_what_has_not_changed_is_not_worked_out_again(pantry, forecasts, jobs):
    batch = pantry.add_batch(days_ago=4)
    first = len(jobs.keys)
    forecasts.request(batch.id)
    forecasts.request_all_live()
    pantry.own("Wash the cloths", hours=1)
    assert len(jobs.keys) == first
    pantry.add_ph(batch, 3.5)
    assert len(jobs.keys) == first + 1
    pantry.clock.advance(days=1)
    forecasts.request(batch.id)
    assert len(jobs.keys) == first + 2


def test_a_reading_of_one_batch_leaves_the_others_alone(pantry, forecasts, jobs):
    amber, birch = pantry.add_batch("Amber", days_ago=4), pantry.add_batch("Birch", days_ago=4)
    jobs.keys.clear()
    pantry.add_ph(birch, 3.4)
    assert jobs.keys == [f"forecast-{birch.id}"]
    assert forecasts.now(amber.id).points == ()


def test_another_taste_moves_the_window(pantry, jobs):
    band = {"now": TasteBand(first_taste_ph=3.3, too_sour_ph=2.9)}
    forecasts = Forecasts(pantry.door, jobs, band=lambda: band["now"])
    batch = pantry.add_batch(days_ago=2)
    before = forecasts.window_of(batch.id)
    band["now"] = TasteBand(first_taste_ph=3.1, too_sour_ph=2.9)
    pantry.changes.announce(Topic.SETTINGS)
    after = forecasts.window_of(batch.id)
    assert after.opens_at > before.opens_at
    view = forecasts.now(batch.id)
    assert (view.first_taste_ph, view.too_sour_ph) == (3.1, 2.9)


def test_the_window_and_the_view_tell_the_same_days(pantry, forecasts):
    batch = pantry.add_batch(days_ago=3)
    pantry.add_ph(batch, 3.7)
    window, view = forecasts.window_of(batch.id), forecasts.now(batch.id)
    assert window.opens_earliest < window.opens_at < window.closes_at
    assert view.opens_on == window.opens_at.date()
    assert view.closes_on == window.closes_at.date()
    assert view.opens_on > date(2026, 11, 25)
    assert (view.safe_ph, view.deadline_day, view.least_ph) == (4.2, 7.0, 2.5)


def test_a_sour_jar_has_an_open_window_and_says_so(pantry, forecasts):
    batch = pantry.add_batch(days_ago=9)
    pantry.add_ph(batch, 3.05)
    view = forecasts.now(batch.id)
    assert view.forecast.window_opens_day.value < 9.0
    assert "has probably been open since" in view.text_summary


def test_readings_of_the_sweet_tea_and_the_starter_are_no_observations(pantry, forecasts):
    batch = pantry.add_batch(days_ago=1)
    plain = forecasts.window_of(batch.id)
    add_reading(pantry, batch, Quantity.PH, 6.2, sd=0.05, days=1, minutes=20)
    add_reading(pantry, batch, Quantity.PH, 2.8, sd=0.05, days=1, minutes=10)
    assert forecasts.window_of(batch.id) == plain
    assert len(forecasts.now(batch.id).points) == 2


def test_a_warmer_pantry_sours_sooner_once_it_is_measured(pantry, forecasts):
    batch = pantry.add_batch(days_ago=1)
    usual = forecasts.window_of(batch.id)
    add_reading(pantry, batch, Quantity.TEMPERATURE_C, 30.0, method=Method.THERMOMETER, hours=20)
    assert forecasts.window_of(batch.id) == usual, "the tea was still cooling then"
    add_reading(pantry, batch, Quantity.TEMPERATURE_C, 29.0, method=Method.THERMOMETER)
    assert forecasts.window_of(batch.id).opens_at < usual.opens_at


def test_a_reading_that_does_not_fit_is_marked_on_its_point(pantry, forecasts):
    batch = pantry.add_batch(days_ago=10)
    for days_ago, ph in ((8, 3.75), (6, 3.55), (4, 3.4), (2, 3.28)):
        add_reading(pantry, batch, Quantity.PH, ph, sd=0.05, days=days_ago)
    odd = add_reading(pantry, batch, Quantity.PH, 5.4, sd=0.05, days=5)
    view = forecasts.now(batch.id)
    suspects = [point.value for point in view.points if point.is_suspect]
    assert suspects == [odd.value]
    assert (
        "pH 5.40 of Fri 20 Nov is less sour than the readings before and after it"
        in view.text_summary
    )


def test_a_batch_that_was_drawn_off_stands_still(pantry, forecasts):
    ended_at = NOON - timedelta(days=20)
    batch = pantry.add_batch(days_ago=30, stage=BatchStage.DRAWN_OFF, ended_at=ended_at)
    forecasts.request(batch.id)
    assert forecasts.now(batch.id).now_day == pytest.approx(10.0)


def test_impossible_amounts_give_no_forecast_and_a_sentence(pantry, forecasts, monkeypatch):
    def refuse(inputs):
        raise ImpossibleInput("surface_cm2", 0.0)

    monkeypatch.setattr(forecastwork, "work_out", refuse)
    batch = pantry.add_batch(days_ago=4)
    view = forecasts.now(batch.id)
    assert view.forecast is None
    assert "No forecast can be made" in view.text_summary
    assert forecasts.window_of(batch.id) is None


def test_a_fault_in_the_figures_is_not_swallowed(pantry, forecasts, monkeypatch):
    def break_down(inputs):
        raise ZeroDivisionError

    monkeypatch.setattr(forecastwork, "work_out", break_down)
    batch = pantry.add_batch(days_ago=4, stage=BatchStage.CLOSED, ended_at=NOON)
    with pytest.raises(ZeroDivisionError):
        forecasts.request(batch.id)


def test_the_reminder_to_taste_follows_the_forecast(pantry, jobs):
    forecasts = Forecasts(pantry.door, jobs)
    pantry.windows = None
    pantry.reminders._window_of = forecasts.window_of
    batch = pantry.add_batch(days_ago=2)
    pantry.reminders.sync()
    (first,) = pantry.kept(ReminderKind.TASTE)
    assert first.due_at.date() == forecasts.now(batch.id).opens_on
    pantry.add_ph(batch, 3.35)
    pantry.reminders.sync()
    (moved,) = pantry.kept(ReminderKind.TASTE)
    assert moved.id == first.id
    assert moved.due_at < first.due_at


def test_the_figures_run_in_another_process(pantry, qtbot):
    jobs = Jobs()
    try:
        forecasts = Forecasts(pantry.door, jobs)
        with qtbot.waitSignal(forecasts.ready, timeout=20_000) as ready:
            batch = pantry.add_batch(days_ago=4)
        assert ready.args == [batch.id]
        (process_id,) = jobs.process_ids()
        assert process_id != os.getpid()
        in_this_process = outcome_of(forecasts._inputs(batch.id)).now
        assert forecasts.now(batch.id).forecast == in_this_process
    finally:
        jobs.shutdown()


def test_what_the_figures_need_brings_no_qt_and_no_store(tmp_path):
    code = (
        "import sys; import brewdesk.services.forecastwork, brewdesk.services.figureprocess;"
        "print([name for name in ('PySide6', 'sqlalchemy', 'numpy') if name in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def made_forecast(**fields) -> Forecast:
    values = {
        "days": (0.0, 35.0),
        "ph": {},
        "ta_g_per_l": {},
        "window_opens_day": Estimate(value=8.0, low=6.0, high=11.0),
        "window_closes_day": Estimate(value=14.0, low=12.0, high=20.0),
        "safe_ph_day": None,
        "probability_safe_by_deadline": 0.7,
        "effective_draws": 500.0,
        "caveats": (),
        "suspects": (),
    }
    return Forecast(**{**values, **fields})


def said(forecast: Forecast, *, now_day: float = 2.0, is_known_safe: bool = False) -> str:
    return summary_words(
        forecast,
        started_at=NOON,
        now_day=now_day,
        deadline_day=7.0,
        safe_ph=4.2,
        is_known_safe=is_known_safe,
        zone=UTC,
    )


def test_the_sentences_give_days_with_their_chances():
    assert said(made_forecast()) == (
        "Worth tasting from about Thu 3 Dec (4 in 5 chance that it begins between Tue 1 Dec and "
        "Sun 6 Dec). It will probably be too sour for you after Wed 9 Dec (between Mon 7 Dec and "
        "Tue 15 Dec). The chance that pH 4.2 is reached by day 7 is about 70 %; only a reading "
        "shows whether it was."
    )


@pytest.mark.parametrize(
    ("fields", "now_day", "words"),
    [
        ({"window_opens_day": None, "window_closes_day": None}, 2, "within 35 days"),
        ({"window_opens_day": Estimate(8.0, 6.0, 35.0)}, 2, "Tue 1 Dec, or much later"),
        ({"window_closes_day": Estimate(14.0, 12.0, 35.0)}, 2, "perhaps from Mon 7 Dec on"),
        ({}, 9, "has probably been open since Thu 3 Dec"),
        ({}, 15, "has probably been too sour for you since Wed 9 Dec"),
        ({"caveats": (Caveat.UNLIKE_KNOWN,)}, 2, "like no known course"),
        ({"caveats": (Caveat.EXTRAPOLATED,)}, 2, "trust it less"),
        ({"caveats": (Caveat.RECIPE_ONLY,)}, 2, "rests on the recipe alone"),
    ],
)
def test_the_sentences_follow_the_forecast(fields, now_day, words):
    assert words in said(made_forecast(**fields), now_day=now_day)


@pytest.mark.parametrize("probability", [0.0, 0.01, 0.5, 0.97, 0.999, 1.0])
def test_a_chance_is_never_told_as_certain(probability):
    words = said(made_forecast(probability_safe_by_deadline=probability))
    assert "100 %" not in words
    assert " 0 %" not in words
    assert "only a reading shows" in words


def test_the_chance_is_silent_once_a_reading_has_settled_it_or_the_day_has_passed():
    assert "chance that pH" not in said(made_forecast(), is_known_safe=True)
    assert "chance that pH" not in said(made_forecast(), now_day=8.0)


def test_nothing_of_numpy_is_loaded_before_the_first_forecast():
    code = (
        "import sys; import brewdesk.services.forecasts, brewdesk.services.reminder_clock;"
        "print([name for name in ('numpy', 'pint', 'jeepney') if name in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def test_a_window_beyond_the_horizon_is_known_to_be_none(pantry, forecasts, monkeypatch):
    never = made_forecast(window_opens_day=None, window_closes_day=None)
    monkeypatch.setattr(forecastwork, "work_out", lambda inputs: never)
    batch = pantry.add_batch(days_ago=4)
    assert forecasts.window_of(batch.id) == TastingWindow()
