"""Tastings move the maker's band, from the setting on, and only while the maker lets them."""

from __future__ import annotations

from datetime import timedelta

import pytest

from brewdesk.services.forecasts import Forecasts
from brewdesk.services.palate import Palate, TasteBand, set_band, verdicts_of
from brewdesk.services.settings import FIRST_TASTE_PH, LEARN_TASTE, TOO_SOUR_PH, Settings
from brewdesk.store.records import ReadingDraft
from culturecore.stages import Method, Quantity, TasteMark
from tests.helpers.fakes import DEFAULT_START, FakeClock, InlineJobs
from tests.helpers.watched_pantry import WatchedPantry


@pytest.fixture
def pantry(tmp_path, qapp):
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(DEFAULT_START))
    yield made
    made.close()


@pytest.fixture
def settings(pantry):
    return Settings(pantry.store, pantry.changes)


@pytest.fixture
def jobs():
    return InlineJobs()


@pytest.fixture
def palate(pantry, jobs, settings):
    return Palate(pantry.door, jobs, settings)


def read(pantry, batch, quantity, *, value=None, text="", days_ago=0.0, sd=None):
    method = Method.TONGUE if quantity is Quantity.TASTE else Method.METER
    draft = ReadingDraft(
        batch_id=batch.id,
        at=pantry.clock.now() - timedelta(days=days_ago),
        quantity=quantity,
        method=method,
        value=value,
        sd=sd,
        text=text,
    )
    return pantry.door.quiet(lambda unit: unit.readings.add(draft))


def taste(pantry, batch, mark, ph, days_ago):
    read(pantry, batch, Quantity.PH, value=ph, sd=0.05, days_ago=days_ago)
    read(pantry, batch, Quantity.TASTE, text=mark.value, days_ago=days_ago)


def mild_maker(pantry, count=5):
    """Batches of a maker who finds pH 3.2 too sour and 3.5 right."""
    for number in range(count):
        batch = pantry.add_batch(f"Batch {number}", days_ago=12)
        taste(pantry, batch, TasteMark.RIGHT, 3.5, 4)
        taste(pantry, batch, TasteMark.TOO_SOUR, 3.2, 1)


def learnt_band(palate):
    palate.band()
    return palate.band()


def test_without_tastings_the_band_is_exactly_the_setting(palate, settings):
    settings.put(FIRST_TASTE_PH, 3.45)
    assert learnt_band(palate) == TasteBand(first_taste_ph=3.45, too_sour_ph=2.9)
    assert palate.learnt() is None


def test_tastings_move_the_band_towards_the_maker(pantry, palate):
    mild_maker(pantry)
    band = learnt_band(palate)
    assert band.first_taste_ph > 3.4
    assert 3.1 < band.too_sour_ph < 3.5
    assert palate.learnt().verdict_count == 10


def test_switched_off_the_setting_holds_and_on_again_the_learning(pantry, palate, settings):
    mild_maker(pantry)
    learnt = learnt_band(palate)
    settings.put(LEARN_TASTE, False)
    assert palate.band() == set_band(settings)
    assert palate.learnt() is None
    settings.put(LEARN_TASTE, True)
    assert palate.band() == learnt


def test_the_setting_is_where_learning_begins(pantry, palate, settings):
    batch = pantry.add_batch(days_ago=10)
    taste(pantry, batch, TasteMark.RIGHT, 3.2, 1)
    before = learnt_band(palate)
    settings.put(TOO_SOUR_PH, 2.6)
    assert palate.band().too_sour_ph < before.too_sour_ph - 0.1


def test_a_new_tasting_is_learnt_and_announced(pantry, palate, qtbot):
    palate.band()
    batch = pantry.add_batch(days_ago=10)
    with qtbot.waitSignal(palate.learned):
        taste(pantry, batch, TasteMark.TOO_SOUR, 3.3, 1)
    assert palate.band().too_sour_ph > 2.95


def test_nothing_is_learnt_twice(pantry, palate, jobs):
    mild_maker(pantry, 1)
    palate.band()
    learnings = jobs.keys.count("palate")
    other = pantry.add_batch("Never tasted", days_ago=3)
    read(pantry, other, Quantity.PH, value=3.9, sd=0.05, days_ago=1)
    palate.refresh()
    assert jobs.keys.count("palate") == learnings


def course_of(palate):
    (course,) = palate._collect()
    return course


def test_a_measured_ph_of_the_same_hour_counts_as_it_is(pantry, palate):
    batch = pantry.add_batch(days_ago=10)
    taste(pantry, batch, TasteMark.RIGHT, 3.21, 2)
    (verdict,) = verdicts_of(course_of(palate))
    assert (verdict.mark, verdict.ph, verdict.ph_sd) == (TasteMark.RIGHT, 3.21, 0.05)


def test_an_older_ph_is_less_sure_and_a_far_one_gives_way_to_the_forecast(pantry, palate):
    batch = pantry.add_batch(days_ago=10)
    read(pantry, batch, Quantity.PH, value=3.6, sd=0.05, days_ago=5)
    read(pantry, batch, Quantity.TASTE, text=TasteMark.RIGHT.value, days_ago=4.5)
    read(pantry, batch, Quantity.TASTE, text=TasteMark.TOO_SOUR.value, days_ago=0)
    near, far = verdicts_of(course_of(palate))
    assert near.ph == 3.6
    assert near.ph_sd > 0.06
    assert 2.8 < far.ph < 3.55, "it went on souring"
    assert far.ph_sd > near.ph_sd


def test_a_tasting_does_not_confirm_itself(pantry, palate):
    batch = pantry.add_batch(days_ago=10)
    read(pantry, batch, Quantity.PH, value=3.6, sd=0.05, days_ago=5)
    odd = read(pantry, batch, Quantity.TASTE, text=TasteMark.FAR_TOO_SWEET.value)
    (sweet,) = verdicts_of(course_of(palate))
    pantry.door.quiet(lambda unit: unit.readings.change(odd.id, text=TasteMark.FAR_TOO_SOUR.value))
    (sour,) = verdicts_of(course_of(palate))
    assert sweet.ph == sour.ph


def test_the_acidity_of_the_moment_comes_along(pantry, palate):
    batch = pantry.add_batch(days_ago=10)
    taste(pantry, batch, TasteMark.RIGHT, 3.2, 2)
    read(pantry, batch, Quantity.TA_G_PER_L, value=5.0, sd=0.3, days_ago=2)
    (verdict,) = verdicts_of(course_of(palate))
    assert (verdict.ta_g_per_l, verdict.ta_sd_g_per_l) == (5.0, 0.3)


def test_the_learnt_band_makes_the_window(pantry, palate, jobs):
    mild_maker(pantry)
    plain = Forecasts(pantry.door, jobs)
    taught = Forecasts(pantry.door, jobs, band=palate.band)
    palate.learned.connect(taught.request_all_live)
    batch = pantry.add_batch("New", days_ago=1)
    for made in (plain, taught):
        made.request(batch.id)
    assert taught.window_of(batch.id).opens_at < plain.window_of(batch.id).opens_at
    assert taught.now(batch.id).first_taste_ph == palate.band().first_taste_ph
