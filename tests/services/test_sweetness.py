"""Tastings and the words of notes teach sweetness too; the window and the sentences follow."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import QLocale

from brewdesk.services.forecasts import Forecasts
from brewdesk.services.palate import Palate, TasteBand, mark_of_words, verdicts_of
from brewdesk.services.settings import LEARN_TASTE, Settings, unit_key
from brewdesk.services.wording.forecasts import point_words, summary_words, suspect_words
from brewdesk.services.wording.outlook import drink_words
from brewdesk.services.wording.palate import learnt_words, read_as_words
from brewdesk.services.wording.shownunits import estimate_words, reading_words
from brewdesk.store.records import Reading, ReadingDraft
from culturecore.forecast import Forecast
from culturecore.outcome import Estimate
from culturecore.palate import PreferredBand
from culturecore.stages import Method, Quantity, TasteMark
from culturecore.tastewindow import SweetnessSays
from culturecore.units import Kind
from tests.helpers.fakes import DEFAULT_START, FakeClock, InlineJobs
from tests.helpers.pantry_desk import open_desk, souring_batch
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
    made = WatchedPantry(tmp_path / "pantry.brewdesk", FakeClock(DEFAULT_START))
    yield made
    made.close()


@pytest.fixture
def settings(pantry):
    return Settings(pantry.store, pantry.changes)


@pytest.fixture
def palate(pantry, settings):
    return Palate(pantry.door, InlineJobs(), settings)


def keep(pantry, batch, quantity, *, text="", value=None, days_ago=0.0):
    method = {Quantity.PH: Method.METER, Quantity.TASTE: Method.TONGUE}.get(quantity, Method.EYE)
    draft = ReadingDraft(
        batch_id=batch.id,
        at=pantry.clock.now() - timedelta(days=days_ago),
        quantity=quantity,
        method=method,
        value=value,
        sd=0.05 if value is not None else None,
        text=text,
    )
    return pantry.door.quiet(lambda unit: unit.readings.add(draft))


def verdicts(palate):
    (course,) = palate._collect()
    return verdicts_of(course)


def test_a_tasting_comes_with_the_sugar_of_its_day(pantry, palate):
    batch = pantry.add_batch(days_ago=14)
    keep(pantry, batch, Quantity.TASTE, text="too_sweet", days_ago=13)
    keep(pantry, batch, Quantity.TASTE, text="right", days_ago=1)
    early, late = verdicts(palate)
    assert late.sugar_g_per_l < early.sugar_g_per_l <= batch.sugar_g / batch.fill_volume_l
    assert late.sugar_sd_g_per_l > early.sugar_sd_g_per_l > 0.0


def test_the_words_of_a_note_are_a_tasting_and_other_notes_are_none(pantry, palate):
    batch = pantry.add_batch(days_ago=10)
    keep(pantry, batch, Quantity.NOTE, text="moved to the window sill", days_ago=5)
    assert palate._collect() == ()
    keep(pantry, batch, Quantity.NOTE, text="a bit sweet still", days_ago=3)
    (read,) = verdicts(palate)
    assert (read.mark, read.is_from_words) == (TasteMark.TOO_SWEET, True)


def test_a_mark_of_the_same_moment_is_never_overridden_by_words(pantry, palate):
    batch = pantry.add_batch(days_ago=10)
    keep(pantry, batch, Quantity.TASTE, text="right", days_ago=3)
    keep(pantry, batch, Quantity.NOTE, text="vinegary", days_ago=3)
    (read,) = verdicts(palate)
    assert (read.mark, read.is_from_words) == (TasteMark.RIGHT, False)


def test_a_note_from_before_the_start_is_no_tasting(pantry, palate):
    batch = pantry.add_batch(days_ago=10)
    keep(pantry, batch, Quantity.NOTE, text="the starter is vinegary", days_ago=10.5)
    assert verdicts(palate) == ()


def test_only_notes_have_words():
    taste = Reading(
        id=1, batch_id=1, at=NOON, quantity=Quantity.TASTE, method=Method.TONGUE, text="too sweet"
    )
    assert mark_of_words(taste) is None


def dry_maker(pantry, count=8):
    """Batches of a maker who finds sugar of the first days too sweet, and later right."""
    for number in range(count):
        batch = pantry.add_batch(f"Batch {number}", days_ago=30)
        for ago, ph, mark in ((27, 3.7, "too_sweet"), (20, 3.2, "too_sweet"), (8, 3.15, "right")):
            keep(pantry, batch, Quantity.PH, value=ph, days_ago=ago)
            keep(pantry, batch, Quantity.TASTE, text=mark, days_ago=ago)


def test_what_is_surely_too_sweet_is_in_force_rounded_outwards(pantry, palate, settings):
    dry_maker(pantry)
    palate.band()
    band, learnt = palate.band(), palate.learnt()
    assert learnt.sweetest_g_per_l is not None
    assert learnt.sweetest_g_per_l.high <= band.too_sweet_g_per_l < learnt.sweetest_g_per_l.high + 1
    assert band.too_dry_g_per_l is None
    settings.put(LEARN_TASTE, False)
    assert palate.band().too_sweet_g_per_l is None


def test_a_band_of_sweetness_reaches_window_and_what_if(pantry):
    taught = TasteBand(too_sweet_g_per_l=38.0)
    plain, sweet = (
        Forecasts(pantry.door, InlineJobs(), band=lambda band=band: band)
        for band in (TasteBand(), taught)
    )
    batch = pantry.add_batch(days_ago=2)
    for made in (plain, sweet):
        made.request(batch.id)
    assert sweet.window_of(batch.id).opens_at > plain.window_of(batch.id).opens_at
    assert "still too sweet for you" in sweet.now(batch.id).text_summary
    assert "too sweet" not in plain.now(batch.id).text_summary


# sentences


def made_forecast(sweetness):
    return Forecast(
        days=(0.0, 35.0),
        ph={},
        ta_g_per_l={},
        window_opens_day=Estimate(8.0, 6.0, 11.0),
        window_closes_day=Estimate(14.0, 12.0, 20.0),
        safe_ph_day=None,
        probability_safe_by_deadline=0.7,
        effective_draws=500.0,
        caveats=(),
        suspects=(),
        sweetness=sweetness,
    )


def said(forecast, now_day=2.0):
    return summary_words(
        forecast,
        started_at=NOON,
        now_day=now_day,
        deadline_day=7.0,
        safe_ph=4.2,
        is_known_safe=True,
        zone=UTC,
    )


def test_a_window_that_sweetness_opens_says_so_until_it_is_open():
    words = "It will be sour enough before that, but probably still too sweet for you."
    assert words in said(made_forecast(SweetnessSays.OPENS_LATER))
    assert words in said(made_forecast(SweetnessSays.NARROWS_BOTH))
    assert "too sweet" not in said(made_forecast(SweetnessSays.OPENS_LATER), now_day=9.0)
    assert "too sweet" not in said(made_forecast(None))


def test_a_window_that_sweetness_closes_is_not_called_too_sour():
    for sweetness in (SweetnessSays.CLOSES_EARLIER, SweetnessSays.NARROWS_BOTH):
        words = said(made_forecast(sweetness))
        assert "It will probably be hardly sweet enough for you after Wed 9 Dec" in words
        assert "too sour" not in words
    late = said(made_forecast(SweetnessSays.CLOSES_EARLIER), now_day=15.0)
    assert "has probably been hardly sweet enough for you since Wed 9 Dec" in late
    assert "too sour for you after Wed 9 Dec" in said(made_forecast(SweetnessSays.OPENS_LATER))


def test_a_jar_never_right_in_both_is_told_as_such():
    words = said(made_forecast(SweetnessSays.NEVER_TOGETHER))
    assert "sourness and its sweetness may never be right for you at once" in words
    assert "these days go by sourness alone" not in said(made_forecast(None))
    assert "these days go by sourness alone" in words


def us_unit(kind):
    return {Kind.SUGAR: "oz/gal", Kind.ACIDITY: "g/L"}[kind]


def test_sugar_is_told_in_the_makers_unit_with_no_more_digits_than_are_known():
    sugar = Estimate(38.0, 30.0, 45.0)
    assert estimate_words(sugar, Kind.SUGAR) == "38 g/L (30 to 45)"
    # 1 oz/gal is 28.3495 g in 3.785412 L: 7.489 g/L (NIST SP 811, avoirdupois ounce, US gallon).
    assert estimate_words(sugar, Kind.SUGAR, us_unit) == "5.1 oz/gal (4.0 to 6.0)"
    assert "sugar 5.1 oz/gal (4.0 to 6.0); only" in drink_words(None, sugar, us_unit)
    assert estimate_words(Estimate(38.0, 38.0, 38.0), Kind.SUGAR) == "38 g/L (38 to 38)"


def test_a_measured_acidity_is_told_with_its_uncertainty():
    assert reading_words(6.13, 0.31, Kind.ACIDITY) == "6.1 ± 0.3 g/L"
    assert reading_words(6.13, None, Kind.ACIDITY) == "6.1 g/L"
    assert reading_words(37.4, 7.5, Kind.SUGAR, us_unit) == "5 ± 1 oz/gal"


def test_points_and_suspects_go_through_the_makers_units():
    asked = []

    def unit_of(kind):
        asked.append(kind)
        return "g/L"

    acid = Reading(
        id=1,
        batch_id=1,
        at=NOON,
        quantity=Quantity.TA_G_PER_L,
        method=Method.TITRATION,
        value=6.1,
        sd=0.3,
    )
    assert point_words(acid, UTC, unit_of) == (
        "6.1 ± 0.3 g/L acidity (titration), Wed 25 Nov at 12:00"
    )
    assert suspect_words(acid, "", UTC, unit_of).startswith("6.1 g/L acidity of Wed 25 Nov does")
    assert asked == [Kind.ACIDITY, Kind.ACIDITY]


def test_the_desk_tells_sugar_in_us_units_at_once(tmp_path, qapp):
    desk = open_desk(tmp_path, with_forecasts=True)
    try:
        batch = souring_batch(desk)
        desk.clock.advance(days=5)
        desk.forecasts.request(batch.id)
        assert "g/L" in " ".join(desk.forecasts.now(batch.id).notes)
        desk.settings.put(unit_key(Kind.SUGAR), "oz/gal")
        notes = " ".join(desk.forecasts.now(batch.id).notes)
        assert "oz/gal" in notes
        assert "g/L" not in notes
    finally:
        desk.store.close()


def learnt(**fields):
    return PreferredBand(
        first_taste_ph=Estimate(3.4, 3.3, 3.5),
        too_sour_ph=Estimate(3.0, 2.9, 3.1),
        verdict_count=9,
        caveats=(),
        **fields,
    )


def test_the_settings_tell_the_learnt_sweetness_and_what_it_is_worth():
    sweet, dry = Estimate(42.0, 33.0, 53.0), Estimate(20.0, 15.0, 27.0)
    both = learnt_words(learnt(sweetest_g_per_l=sweet, driest_g_per_l=dry), us_unit)
    assert "Too sweet from about 5.6 oz/gal (4.4 to 7.1) of sugar" in both
    assert "hardly sweet enough below about 2.7 oz/gal (2.0 to 3.6)" in both
    only_sweet = learnt_words(learnt(sweetest_g_per_l=sweet))
    assert "surely above this narrows" in only_sweet
    assert "hardly sweet" not in only_sweet
    only_dry = learnt_words(learnt(driest_g_per_l=dry))
    assert only_dry.endswith("surely below this narrows a window.")
    assert "sugar" not in learnt_words(learnt())


def test_the_settings_own_up_to_what_was_read_from_words():
    assert "One tasting was read from the words of a note." in learnt_words(learnt(words_count=1))
    assert "3 tastings were read from the words" in learnt_words(learnt(words_count=3))
    assert "words" not in learnt_words(learnt())


@pytest.mark.parametrize(
    ("note", "words"),
    [
        ("a bit sweet still", "read as: too sweet"),
        ("vinegary", "read as: too sour"),
        ("lovely", "read as: right"),
        ("thin", ""),
    ],
)
def test_a_note_says_what_it_was_read_as(note, words):
    assert read_as_words(note) == words
