"""What a forecast says besides: what moved, what to read next, what is in the drink, what if."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services import forecastwork
from brewdesk.services.culturelore import CultureLore, learn
from brewdesk.services.forecasts import Forecasts
from brewdesk.services.jobs import Jobs
from brewdesk.services.whatif import WhatIf
from brewdesk.services.wording.outlook import (
    drink_words,
    imagined_words,
    moved_words,
    next_reading_words,
)
from brewdesk.store.records import CultureDraft, ReadingDraft
from culturecore.forecast import Forecast, NextReading
from culturecore.outcome import Estimate
from culturecore.stages import (
    BatchStage,
    CultureOrigin,
    CultureState,
    Method,
    Quantity,
)
from tests.helpers.fakes import FakeClock, InlineJobs
from tests.helpers.watched_pantry import WatchedPantry

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture(autouse=True)
def _plain_locale():
    before = QLocale()
    QLocale.setDefault(QLocale.c())
    yield
    QLocale.setDefault(before)


@pytest.fixture
def pantry(tmp_path, qapp):
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(NOON))
    yield made
    made.close()


@pytest.fixture
def forecasts(pantry):
    return Forecasts(pantry.door, InlineJobs())


def add_ph(pantry, batch, ph, days_ago=0.0):
    draft = ReadingDraft(
        batch_id=batch.id,
        at=pantry.clock.now() - timedelta(days=days_ago),
        quantity=Quantity.PH,
        method=Method.METER,
        value=ph,
        sd=0.05,
    )
    return pantry.door.quiet(lambda unit: unit.readings.add(draft))


def opening(value, low=None, high=None, closes=None):
    window = None
    if value is not None:
        window = Estimate(
            float(value),
            float(value - 2 if low is None else low),
            float(value + 2 if high is None else high),
        )
    return Forecast(
        days=(0.0, 35.0),
        ph={},
        ta_g_per_l={},
        window_opens_day=window,
        window_closes_day=closes,
        safe_ph_day=None,
        probability_safe_by_deadline=0.7,
        effective_draws=500.0,
        caveats=(),
        suspects=(),
    )


def moved(before, now):
    return moved_words(before, now, NOON, UTC)


def test_what_moved_is_said_with_both_days():
    assert moved(opening(8), opening(6)) == (
        "Since yesterday the window has moved earlier: Tue 1 Dec instead of Thu 3 Dec."
    )
    assert "later" in moved(opening(6), opening(8))
    assert "not within 35 days" in moved(opening(None), opening(8))
    assert "no longer expected" in moved(opening(8), opening(None))


def test_what_hardly_moved_is_not_said():
    assert moved(opening(8), opening(8.2)) == ""
    assert moved(opening(None), opening(None)) == ""


def test_the_same_day_but_surer_is_worth_a_sentence():
    assert "still about Thu 3 Dec, but surer by 6 days" in moved(
        opening(8, 4, 12), opening(8, 7, 9)
    )


def upcoming(quantity, day, narrows, now_day=2.0):
    reading = NextReading(quantity=quantity, day=day, narrows_days=narrows)
    return next_reading_words(reading, NOON, now_day, UTC)


def test_the_next_useful_reading_is_named_with_its_gain():
    assert upcoming(Quantity.PH, 5.0, 3.2) == (
        "A pH on Mon 30 Nov would narrow the window by about 3 days."
    )
    assert upcoming(Quantity.TA_G_PER_L, 2.2, 1.1) == (
        "A titration today would narrow the window by about 1 day."
    )


@pytest.mark.parametrize(("day", "narrows"), [(5.0, 0.2), (0.5, 3.0)])
def test_a_reading_that_tells_little_or_is_past_is_not_asked_for(day, narrows):
    assert upcoming(Quantity.PH, day, narrows) == ""
    assert next_reading_words(None, NOON, 2.0, UTC) == ""


def test_the_drink_is_told_with_its_range_and_never_as_certified():
    words = drink_words(Estimate(0.42, 0.14, 1.2), Estimate(38.0, 30.0, 45.0))
    assert words == (
        "Estimate for now: alcohol 0.4 % vol (0.1 to 1.2), sugar 38 g/L (30 to 45); only a "
        "laboratory can certify."
    )
    hardly_any = drink_words(Estimate(0.02, 0.001, 0.08), None)
    assert "alcohol 0.1 % vol (perhaps 0.1)" in hardly_any
    assert "0.0" not in hardly_any
    assert drink_words(None, None) == ""


def test_what_would_be_is_told_beside_what_is_forecast():
    words = imagined_words(
        opening(5.0, closes=Estimate(9.0, 8.0, 11.0)),
        opening(8.0),
        started_at=NOON,
        is_from_the_start=True,
        zone=UTC,
    )
    assert words == (
        "What if (dashed): from about Mon 30 Nov (Sat 28 Nov to Wed 2 Dec) to about "
        "Fri 4 Dec. About 3 days earlier than forecast. As if it had begun so."
    )
    never = imagined_words(opening(None), None, started_at=NOON, is_from_the_start=False, zone=UTC)
    assert never == "What if (dashed): probably not sour enough for you within 35 days."


def test_a_sour_reading_of_today_moves_the_window_and_says_so(pantry, forecasts):
    batch = pantry.add_batch(days_ago=4)
    add_ph(pantry, batch, 3.95, days_ago=3)
    assert not any("Since yesterday" in note for note in forecasts.now(batch.id).notes)
    add_ph(pantry, batch, 3.35)
    notes = forecasts.now(batch.id).notes
    assert any("moved earlier" in note for note in notes)
    pantry.clock.advance(days=1, minutes=1)
    forecasts.request(batch.id)
    assert not any("Since yesterday" in note for note in forecasts.now(batch.id).notes)


def test_alcohol_and_sugar_are_told_once_it_sours(pantry, forecasts):
    batch = pantry.add_batch(days_ago=8)
    add_ph(pantry, batch, 3.3)
    (note,) = [note for note in forecasts.now(batch.id).notes if "alcohol" in note]
    assert "sugar" in note
    assert "only a laboratory can certify" in note


def window_days(forecasts, batch, change):
    heard = []
    forecasts.imagined.connect(heard.append)
    forecasts.what_if(batch.id, change)
    forecasts.imagined.disconnect(heard.append)
    (imagined,) = heard
    assert imagined.change == change
    return imagined


def first_day_below(imagined, ph):
    return next(
        day for day, value in zip(imagined.days, imagined.ph_median, strict=True) if value <= ph
    )


@pytest.mark.parametrize(
    "change",
    [WhatIf(warmer_c=5.0), WhatIf(starter_factor=2.0), WhatIf(diameter_factor=1.5)],
    ids=["warmer", "more starter", "wider"],
)
def test_what_makes_it_sour_sooner_does_so(pantry, forecasts, change):
    batch = pantry.add_batch(days_ago=3)
    add_ph(pantry, batch, 3.85, days_ago=1)
    as_it_is = window_days(forecasts, batch, WhatIf())
    otherwise = window_days(forecasts, batch, change)
    assert first_day_below(otherwise, 3.2) < first_day_below(as_it_is, 3.2)


def test_a_warmer_place_leaves_the_past_as_it_was(pantry, forecasts):
    batch = pantry.add_batch(days_ago=6)
    add_ph(pantry, batch, 3.5, days_ago=1)
    as_it_is = window_days(forecasts, batch, WhatIf())
    warmer = window_days(forecasts, batch, WhatIf(warmer_c=6.0))
    past = [n for n, day in enumerate(as_it_is.days) if day <= 5.0]
    for n in past:
        assert warmer.ph_median[n] == pytest.approx(as_it_is.ph_median[n], abs=0.08)
    later = as_it_is.days.index(12.0)
    assert warmer.ph_median[later] < as_it_is.ph_median[later]


def test_what_is_imagined_changes_neither_forecast_nor_store(pantry, forecasts):
    batch = pantry.add_batch(days_ago=3)
    before = forecasts.now(batch.id)
    with pantry.store.read() as unit:
        rows = unit.batches.get(batch.id)
    window_days(forecasts, batch, WhatIf(warmer_c=5.0, starter_factor=2.0))
    assert forecasts.now(batch.id) == before
    with pantry.store.read() as unit:
        assert unit.batches.get(batch.id) == rows


def add_culture(pantry, name):
    draft = CultureDraft(
        name=name, origin=CultureOrigin.GIFT, state=CultureState.AT_WORK, born_at=NOON
    )
    return pantry.door.quiet(lambda unit: unit.cultures.add(draft)).id


def finished(pantry, name, culture_id, phs):
    batch = pantry.add_batch(
        name,
        days_ago=20,
        culture_id=culture_id,
        stage=BatchStage.DRAWN_OFF,
        ended_at=NOON - timedelta(days=5),
    )
    for day, ph in phs:
        add_ph(pantry, batch, ph, days_ago=20 - day)
    return batch


FAST = ((1, 3.7), (3, 3.3), (5, 3.05), (7, 2.9))


def test_teachers_are_the_others_of_the_culture_and_the_finished_of_the_pantry(pantry):
    amber, birch = add_culture(pantry, "Amber line"), add_culture(pantry, "Birch line")
    own = finished(pantry, "Old amber", amber, FAST)
    other = finished(pantry, "Old birch", birch, FAST)
    finished(pantry, "Never read", amber, ())
    sibling = pantry.add_batch("Sibling", days_ago=6, culture_id=amber)
    add_ph(pantry, sibling, 3.6, 3)
    add_ph(pantry, sibling, 3.4, 1)
    running_stranger = pantry.add_batch("Stranger", days_ago=6, culture_id=birch)
    add_ph(pantry, running_stranger, 3.6, 3)
    add_ph(pantry, running_stranger, 3.4, 1)
    batch = pantry.add_batch("New", days_ago=1, culture_id=amber)
    lore = CultureLore(pantry.door)
    with pantry.store.read() as unit:
        teachers = lore.teachers_of(unit.batches.get(batch.id), unit)
    assert {course.batch.id for course in teachers.own} == {own.id, sibling.id}
    assert {course.batch.id for course in teachers.pantry} == {other.id}


def test_a_batch_is_never_its_own_teacher_and_a_new_reading_is_seen(pantry):
    amber = add_culture(pantry, "Amber line")
    first = pantry.add_batch("First", days_ago=6, culture_id=amber)
    second = pantry.add_batch("Second", days_ago=6, culture_id=amber)
    lore = CultureLore(pantry.door)

    def own_of(batch):
        with pantry.store.read() as unit:
            return lore.teachers_of(unit.batches.get(batch.id), unit).own

    assert own_of(first) == ()
    add_ph(pantry, second, 3.6, 3)
    add_ph(pantry, second, 3.4, 1)
    assert [course.batch.id for course in own_of(first)] == [second.id]
    assert own_of(second) == ()


def test_a_fast_culture_sharpens_the_next_batch(pantry, forecasts):
    amber, birch = add_culture(pantry, "Amber line"), add_culture(pantry, "Birch line")
    for number in range(3):
        finished(pantry, f"Old {number}", amber, FAST)
    fast = pantry.add_batch("Fast", days_ago=0.5, culture_id=amber)
    plain = pantry.add_batch("Plain", days_ago=0.5, culture_id=birch)
    for batch in (fast, plain):
        forecasts.request(batch.id)
    known, unknown = (forecasts.window_of(batch.id) for batch in (fast, plain))
    assert known.opens_at < unknown.opens_at
    assert known.opens_latest - known.opens_earliest < (
        unknown.opens_latest - unknown.opens_earliest
    )


def test_without_teachers_nothing_is_known_of_the_culture(pantry):
    batch = pantry.add_batch(days_ago=3)
    with pantry.store.read() as unit:
        teachers = CultureLore(pantry.door).teachers_of(batch, unit)
    assert learn(teachers) is None


def test_many_batches_are_told_of_once_and_worked_out_one_by_one(pantry, qtbot, monkeypatch):
    monkeypatch.setattr(forecastwork, "work_out", lambda inputs: opening(8.0))
    count = 12
    batches = [pantry.add_batch(f"Batch {n}", days_ago=3) for n in range(count)]
    told = []
    jobs = Jobs()
    forecasts = Forecasts(pantry.door, jobs)
    ready = []
    forecasts.ready.connect(ready.append)
    pantry.changes.changed.connect(told.append)
    try:
        forecasts.request_all_live()
        qtbot.waitUntil(lambda: len(ready) == count, timeout=10_000)
        qtbot.waitUntil(lambda: bool(told), timeout=10_000)
    finally:
        jobs.shutdown()
    assert sorted(ready) == sorted(batch.id for batch in batches)
    assert frozenset().union(*(change.batch_ids for change in told)) == frozenset(ready)
    assert len(told) < count


def test_asking_for_many_gives_the_window_its_thread_back(pantry, qtbot, monkeypatch):
    """With a clock on which every look costs a frame, one forecast is asked for at a time."""
    for number in range(4):
        pantry.add_batch(f"Batch {number}", days_ago=3)
    jobs = InlineJobs(hold=True)
    forecasts = Forecasts(pantry.door, jobs)
    real = pantry.clock.monotonic

    def slow():
        pantry.clock.advance(seconds=0.004)
        return real()

    monkeypatch.setattr(pantry.clock, "monotonic", slow)
    forecasts.request_all_live()
    assert len(jobs.keys) == 1
    qtbot.waitUntil(lambda: len(jobs.keys) == 4, timeout=5_000)
